"""Crossings and events: everything that can be stepped to, in the order of the capture."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication, QItemSelectionModel, Signal
from PySide6.QtGui import QStandardItem, QStandardItemModel
from PySide6.QtWidgets import QListView, QWidget

from analysis.captures.model import Capture
from app.drawing.numbers import percent, seconds, volts
from app.drawing.row_delegate import ROW_ROLE, Row, RowDelegate
from app.drawing.theme import Palette
from app.focus import Passage
from app.views.pane import Pane
from app.words import record_name, shape_name


class EventsView(Pane):
    """The crossings of the bands, or the events of a fault that has no place.

    Signals
    -------
    chosen(index)
        A passage was picked, by its index among those of the focus.
    """

    chosen = Signal(int)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__("", parent)
        self.setAccessibleName(self.tr("Crossings and events"))
        self._model = QStandardItemModel(self)
        self._delegate = RowDelegate()
        self.list = QListView()
        self.list.setAccessibleName(self.tr("Crossings and events"))
        self.list.setModel(self._model)
        self.list.setItemDelegate(self._delegate)
        self.list.setEditTriggers(QListView.EditTrigger.NoEditTriggers)
        self.list.setMouseTracking(True)
        self.list.selectionModel().currentChanged.connect(self._picked)
        self.set_content(self.list)
        self.show_passages((), None, False)

    def show_passages(self, passages: tuple[Passage, ...], capture: Capture | None, examined: bool) -> None:
        """List these passages."""
        self._model.clear()
        crossings = any(item.band is not None for item in passages)
        self._title.setText(self.tr("Crossings") if crossings or not passages else self.tr("Events"))
        for passage in passages:
            row = _row(passage, record_name(capture.record(passage.record)) if capture else passage.record)
            item = QStandardItem(row.title)
            item.setData(row, ROW_ROLE)
            item.setAccessibleText(f"{row.title}, {row.reading}")
            self._model.appendRow(item)
        if passages:
            self.show_content()
        elif examined:
            self.show_empty(self.tr("No break-up and no event to step to."))
        else:
            self.show_empty(self.tr("Crossings of a worn band, or events, are listed here to step through."))

    def show_passage(self, index: int | None) -> None:
        """Mark the passage that is singled out."""
        model = self.list.selectionModel()
        blocked = model.blockSignals(True)
        if index is None:
            model.clear()
        else:
            model.setCurrentIndex(self._model.index(index, 0), QItemSelectionModel.SelectionFlag.ClearAndSelect)
            self.list.scrollTo(self._model.index(index, 0))
        model.blockSignals(blocked)
        self.list.viewport().update()

    def apply_palette(self, palette: Palette) -> None:
        """Take on the colours of a palette."""
        self._delegate.palette = palette
        self.list.viewport().update()

    def _picked(self) -> None:
        if self.list.currentIndex().isValid():
            self.chosen.emit(self.list.currentIndex().row())


def _row(passage: Passage, record: str) -> Row:
    title = f"{record}, {seconds(passage.time.start, 0.01)}"
    if passage.band is None:
        name = shape_name(passage.shape)
        return Row(title, "", f"{name} {volts(passage.depth_v)}", "fail", "bad")
    if not passage.noisy:
        return Row(title, "", QCoreApplication.translate("EventsView", "quiet"), "pass", "good")
    return Row(title, "", percent(passage.breakup_percent, 0), "fail", "bad")
