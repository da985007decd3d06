"""Records: a checklist of the steps, each with its outcome."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QCoreApplication, QItemSelectionModel, Qt, Signal
from PySide6.QtGui import QStandardItem
from PySide6.QtWidgets import QVBoxLayout, QWidget

from analysis.captures.model import Capture, Record, Role, Step
from analysis.diagnosis.findings import Findings, Part, RecordOutcome, Result
from analysis.intervals import Interval
from analysis.review.records import Edits, RecordEdit, divided, spans_of
from analysis.wording import plural, say
from app.drawing.numbers import duration
from app.drawing.plain import plain_tip
from app.drawing.row_delegate import ROW_ROLE, Row, RowList
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
_FRAME_PX = 52  # title, margins and frame of the pane
_SPAN_ROLE = Qt.ItemDataRole.UserRole + 8


class RecordsView(Pane):
    """The records of a capture by step, ticked off as they turned out; missing steps stay open.

    Signals
    -------
    chosen(name)
        A record was picked.
    span_chosen(name, Interval)
        A span with a step of its own was picked.
    edit_wanted()
        What is said of the picked record is to be edited.
    """

    chosen = Signal(str)
    span_chosen = Signal(str, object)
    edit_wanted = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__("", parent)
        self._title.setText(self.tr("Records"))
        self.setAccessibleName(self.tr("Records by step, with their outcome"))
        self._filling = False
        self.list = RowList(self.tr("Records"))
        self._model = self.list.rows
        self.list.picked.connect(self._picked)
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

    def show_capture(self, capture: Capture | None, findings: Findings | None, edits: Edits = ()) -> None:
        """List the records of a capture and the spans that have a step of their own.

        Parameters
        ----------
        capture : Capture or None
            With what is said of whole records.
        findings : Findings or None
            For the outcomes; None while they are not known.
        edits : tuple of RecordEdit
            What is said of spans.
        """
        self._filling = True
        self._model.clear()
        self._filling = False
        if capture is None:
            self.show_empty(self.tr("The steps of a capture are ticked off here."))
            return
        outcomes = {item.record: item for item in findings.record_outcomes} if findings else {}
        order = {step: place for place, step in enumerate(_PLAN)}
        parts = findings.parts if findings is not None else ()
        names = record_names(capture)
        rows: list[tuple[int, list[QStandardItem]]] = []
        for record in capture.records:
            spans = [_span_item(item) for item in spans_of(edits, record.name)]
            parted = len(spans) or (len(parts) if len(capture.records) == 1 else 0)
            row = _row(names[record.name], record, outcomes.get(record.name), parted)
            own = _item(row, record.name)
            rows.append((order.get(record.step, len(order)) if record.step else len(order), [own, *spans]))
        missing = missing_steps(divided(capture, edits), parts)
        rows += [(order[step], [_item(_missing(step), "")]) for step in missing]
        for _, items in sorted(rows, key=lambda row: row[0]):
            for item in items:
                self._model.appendRow(item)
        self.show_content()

    def show_record(self, name: str) -> None:
        """Mark the record that is shown, unless one of its spans is marked."""
        current = self._model.itemFromIndex(self.list.currentIndex())
        if current is not None and current.data() == name:
            return
        for number in range(self._model.rowCount()):
            item = self._model.item(number)
            if item.data() == name and item.data(_SPAN_ROLE) is None:
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
        return _FRAME_PX + form + max(sum(self.list.sizeHintForRow(row) for row in rows), least)

    def apply_palette(self, palette: Palette) -> None:
        """Take on the colours of a palette."""
        self.list.apply_palette(palette)

    def _ask_to_edit(self) -> None:
        item = self._model.itemFromIndex(self.list.currentIndex())
        if item is not None and item.data():
            self.edit_wanted.emit()

    def _picked(self, row: int) -> None:
        item = self._model.item(row)
        if self._filling or item is None or not item.data():
            return
        span = item.data(_SPAN_ROLE)
        if span is None:
            self.chosen.emit(item.data())
        else:
            self.span_chosen.emit(item.data(), span)


def missing_steps(capture: Capture, parts: Sequence[Part] = ()) -> list[Step]:
    """Steps of a full examination that the capture lacks.

    Ground and reference count as taken where a channel watched them, whatever the record's step.

    Parameters
    ----------
    capture : Capture
        As it is examined: spans with a step of their own are records.
    parts : sequence of Part
        Spans that the examination itself took out of a lone record.
    """
    taken = {record.step for record in capture.records} | {part.step for part in parts}
    watched = {item.role for record in capture.records for item in record.channels}
    watched |= {part.role for part in parts}
    stand_ins = {Step.GROUND: Role.GROUND, Step.REFERENCE: Role.REFERENCE}
    return [step for step in _PLAN if step not in taken and stand_ins.get(step) not in watched]


def _row(name: str, record: Record, outcome: RecordOutcome | None, spans: int) -> Row:
    mark, tone = _MARKS[outcome.result] if outcome is not None else ("missing", "faint")
    detail = said(outcome.text) if outcome is not None else record.label
    if spans and outcome is not None and outcome.result is Result.PASS:
        # The outcome's line is that of one of them.
        detail = said(
            plural("nothing wrong in its {count} span", "nothing wrong in its {count} spans", count=spans)
        )
    return Row(name, detail, duration(record.duration_s), mark, tone)


def _span_item(edit: RecordEdit) -> QStandardItem:
    """A row for a span, below its record: its step, and when."""
    time = edit.time or Interval(0.0, 0.0)
    word = edit.words.get("step", "")
    name = step_name(Step(word)) if word in tuple(Step) else QCoreApplication.translate("RecordsView", "Span")
    when = said(say("{start_s:.2f}–{stop_s:.2f} s", start_s=time.start, stop_s=time.stop))
    item = _item(Row(f"\N{BOX DRAWINGS LIGHT UP AND RIGHT} {name}", "", when), edit.record)
    item.setData(time, _SPAN_ROLE)
    item.setAccessibleText(f"{name}: {when}")
    item.setToolTip(plain_tip(f"{name}: {when}"))
    return item


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
