"""Records: a checklist of the steps, each with its outcome."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication, QItemSelectionModel, Signal
from PySide6.QtGui import QStandardItem, QStandardItemModel
from PySide6.QtWidgets import QListView, QVBoxLayout, QWidget

from analysis.captures.model import Capture, Record, Role, Step
from analysis.diagnosis.findings import Findings, RecordOutcome, Result
from app.drawing.numbers import duration
from app.drawing.plain import plain_tip
from app.drawing.row_delegate import ROW_ROLE, Row, RowDelegate
from app.drawing.theme import Palette
from app.language import said
from app.views.pane import Pane
from app.views.record_form import RecordForm
from app.words import record_names, step_name

_MARKS = {
    Result.PASS: ("pass", "good"),
    Result.FAIL: ("fail", "bad"),
    Result.CANNOT_TELL: ("unsure", "unsure"),
}
_PLAN = (Step.GROUND, Step.REFERENCE, Step.WIGGLE, Step.SWEEP, Step.HOLD)
"""The steps of a full examination, in the order in which they are taken (common practice, no source)."""


_FORM_PX = 260


class RecordsView(Pane):
    """The records of a capture by step, ticked off as they turned out; missing steps stay open.

    Signals
    -------
    chosen(name)
        A record was picked.
    edit_wanted()
        What is said of the picked record is to be edited.
    """

    chosen = Signal(str)
    edit_wanted = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__("", parent)
        self._title.setText(self.tr("Records"))
        self.setAccessibleName(self.tr("Records by step, with their outcome"))
        self._filling = False
        self._model = QStandardItemModel(self)
        self.list = QListView()
        self._delegate = RowDelegate(self.list)
        self.list.setAccessibleName(self.tr("Records"))
        self.list.setModel(self._model)
        self.list.setItemDelegate(self._delegate)
        self.list.setEditTriggers(QListView.EditTrigger.NoEditTriggers)
        self.list.setMouseTracking(True)
        self.list.setResizeMode(QListView.ResizeMode.Adjust)
        self.list.selectionModel().currentChanged.connect(self._picked)
        self.list.activated.connect(self._ask_to_edit)
        self.form = RecordForm()
        self.form.hide()
        content = QWidget()
        column = QVBoxLayout(content)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self.list, 3)
        column.addWidget(self.form, 4)
        self.set_content(content)
        self.show_empty(self.tr("The steps of a capture are ticked off here."))

    def show_capture(self, capture: Capture | None, findings: Findings | None) -> None:
        """List the records of a capture, with outcomes where the findings are known."""
        self._filling = True
        self._model.clear()
        self._filling = False
        if capture is None:
            self.show_empty(self.tr("The steps of a capture are ticked off here."))
            return
        outcomes = {item.record: item for item in findings.record_outcomes} if findings else {}
        order = {step: place for place, step in enumerate(_PLAN)}
        names = record_names(capture)
        rows = [
            (
                order.get(record.step, len(order)) if record.step else len(order),
                _row(names[record.name], record, outcomes.get(record.name)),
                record.name,
            )
            for record in capture.records
        ]
        rows += [(order[step], _missing(step), "") for step in missing_steps(capture)]
        for _, row, name in sorted(rows, key=lambda item: item[0]):
            self._model.appendRow(_item(row, name))
        self.show_content()

    def show_record(self, name: str) -> None:
        """Mark the record that is shown."""
        for number in range(self._model.rowCount()):
            item = self._model.item(number)
            if item.data() == name:
                self._filling = True
                self.list.selectionModel().setCurrentIndex(
                    item.index(), QItemSelectionModel.SelectionFlag.ClearAndSelect
                )
                self._filling = False
                self.list.scrollTo(item.index())

    @property
    def form_shown(self) -> bool:
        """Whether the words of the shown record are open to be edited."""
        return not self.form.isHidden()

    def show_form(self, shown: bool) -> None:
        """Open the words of the shown record below the list, or close them."""
        self.form.setVisible(shown)

    def wanted_height(self) -> int:
        """Height at which every row can be seen."""
        rows = range(self._model.rowCount())
        least = 4 * self.fontMetrics().lineSpacing()  # what stands there while there are none
        form = _FORM_PX if self.form_shown else 0
        return 44 + form + max(sum(self.list.sizeHintForRow(row) for row in rows), least)

    def apply_palette(self, palette: Palette) -> None:
        """Take on the colours of a palette."""
        self._delegate.palette = palette
        self.list.viewport().update()

    def _ask_to_edit(self) -> None:
        item = self._model.itemFromIndex(self.list.currentIndex())
        if item is not None and item.data():
            self.edit_wanted.emit()

    def _picked(self) -> None:
        item = self._model.itemFromIndex(self.list.currentIndex())
        if not self._filling and item is not None and item.data():
            self.chosen.emit(item.data())


def missing_steps(capture: Capture) -> list[Step]:
    """Steps of a full examination that the capture lacks.

    Ground and reference count as taken where a channel watched them, whatever the record's step.
    """
    taken = {record.step for record in capture.records}
    watched = {item.role for record in capture.records for item in record.channels}
    stand_ins = {Step.GROUND: Role.GROUND, Step.REFERENCE: Role.REFERENCE}
    return [step for step in _PLAN if step not in taken and stand_ins.get(step) not in watched]


def _row(name: str, record: Record, outcome: RecordOutcome | None) -> Row:
    mark, tone = _MARKS[outcome.result] if outcome is not None else ("missing", "faint")
    detail = said(outcome.text) if outcome is not None else record.label
    return Row(name, detail, duration(record.duration_s), mark, tone)


def _missing(step: Step) -> Row:
    text = QCoreApplication.translate("RecordsView", "not captured")
    return Row(step_name(step), text, "", "missing", "faint", faded=True)


def _item(row: Row, name: str) -> QStandardItem:
    item = QStandardItem(row.title)
    item.setData(row, ROW_ROLE)
    item.setData(name)
    item.setAccessibleText(f"{row.title}: {row.detail}")
    item.setToolTip(plain_tip(f"{row.title}: {row.detail}"))
    if not name:
        item.setEnabled(False)
    return item
