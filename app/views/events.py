"""Crossings and events: everything that can be stepped to, in the order of the capture."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QCoreApplication, QItemSelectionModel, Signal
from PySide6.QtGui import QStandardItem
from PySide6.QtWidgets import QWidget

from analysis.captures.model import Capture
from analysis.reports.quantities import A_CROSSING
from app.drawing.numbers import depth, percent, seconds
from app.drawing.plain import plain_tip
from app.drawing.row_delegate import ROW_ROLE, Row, RowList
from app.drawing.theme import Palette
from app.language import said
from app.review.passages import Passage
from app.views.pane import Pane
from app.words import record_names, role_name, shape_name


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
        self._filling = False
        self._rows: list[int] = []
        self.list = RowList(self.tr("Crossings and events"))
        self.list.setUniformItemSizes(True)  # thousands of crossings would be measured one by one
        self._model = self.list.rows
        self.list.picked.connect(self._picked)
        self.set_content(self.list)
        self.show_passages((), None, False)

    def show_passages(self, passages: tuple[Passage, ...], capture: Capture | None, examined: bool) -> None:
        """List these passages, by record."""
        self._filling = True
        self._model.clear()
        self._rows = []
        kinds = {item.band is not None for item in passages}
        if len(kinds) > 1:
            self._title.setText(self.tr("Events, crossings"))
        else:
            self._title.setText(self.tr("Events") if kinds == {False} else self.tr("Crossings"))
        self._title.setToolTip(plain_tip(said(A_CROSSING)) if kinds != {False} else "")
        whose = {item.roles for item in passages}
        self.set_note(", ".join(role_name(role) for role in whose.pop()) if len(whose) == 1 else "")
        names = record_names(capture) if capture is not None else {}
        before, most = "", _worst(passages)
        for index, passage in enumerate(passages):
            if passage.record != before:
                before = passage.record
                self._append_heading(names.get(before, before))
            row = _row(passage, worst=index == most)
            item = QStandardItem(row.title)
            item.setData(row, ROW_ROLE)
            item.setData(index)
            item.setAccessibleText(f"{row.title}, {row.reading}")
            item.setToolTip(plain_tip(f"{row.title}, {row.reading}"))
            self._model.appendRow(item)
            self._rows.append(item.row())
        self._filling = False
        if passages:
            self.show_content()
            if most is not None:  # what is looked for first is in sight, however long the list
                worst = self._model.index(self._rows[most], 0)
                self.list.scrollTo(worst, RowList.ScrollHint.PositionAtCenter)
        elif examined:
            self.show_empty(self.tr("Nothing to step to: no band, and no event that counts."))
        else:
            self.show_empty(self.tr("Crossings of a worn band, or events, are listed here to step through."))

    def show_passage(self, index: int | None) -> None:
        """Mark the passage that is singled out."""
        model = self.list.selectionModel()
        self._filling = True
        if index is None or index >= len(self._rows):
            model.clear()
        else:
            row = self._rows[index]
            place = self._model.index(row, 0)
            model.setCurrentIndex(place, QItemSelectionModel.SelectionFlag.ClearAndSelect)
            if row and not self._model.item(row - 1).isEnabled():  # the first of a record, below its name
                self.list.scrollTo(self._model.index(row - 1, 0))
            self.list.scrollTo(place)
        self._filling = False

    def apply_palette(self, palette: Palette) -> None:
        """Take on the colours of a palette."""
        self.list.apply_palette(palette)

    def _append_heading(self, text: str) -> None:
        item = QStandardItem(text)
        item.setData(Row(text, faded=True), ROW_ROLE)
        item.setEnabled(False)
        self._model.appendRow(item)

    def _picked(self, row: int) -> None:
        item = self._model.item(row)
        if not self._filling and item is not None and item.data() is not None:
            self.chosen.emit(item.data())


def _worst(passages: Sequence[Passage]) -> int | None:
    """Index of the crossing with the most break-up; None where there are not several."""
    noisy = [i for i, item in enumerate(passages) if item.band is not None and item.noisy]
    return max(noisy, key=lambda i: passages[i].breakup_percent) if len(noisy) > 1 else None


def _row(passage: Passage, worst: bool) -> Row:
    title = seconds(passage.time.start, 0.01)
    if passage.band is None:
        # A drop or a rise says by its name which way it went.
        named = passage.shape in ("drop", "rise")
        went = depth(abs(passage.depth_v) if named else passage.depth_v)
        return Row(title, "", f"{shape_name(passage.shape)} {went}", "fail", "bad")
    if not passage.noisy:
        return Row(title, "", QCoreApplication.translate("EventsView", "quiet"), "pass", "good")
    if round(passage.breakup_percent) == 0:  # seen by the time it lasts, which is no share of the voltage
        return Row(title, "", QCoreApplication.translate("EventsView", "breaks up"), "fail", "bad")
    reading = percent(passage.breakup_percent, 0)
    if worst:
        reading = QCoreApplication.translate("EventsView", "worst {reading}").format(reading=reading)
    return Row(title, "", reading, "fail", "bad")
