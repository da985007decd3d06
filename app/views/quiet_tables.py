"""The tables of the Markers pane: plain, and giving way where the pane is low."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TypeVar

from PySide6.QtCore import QAbstractItemModel, QSize, Qt, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QAbstractItemView, QHeaderView, QTableView, QWidget

Table = TypeVar("Table", bound=QTableView)

BAR_ON, BAR_OFF = Qt.ScrollBarPolicy.ScrollBarAlwaysOn, Qt.ScrollBarPolicy.ScrollBarAlwaysOff
"""Both are set by what there is room for; none comes as Qt thinks it is needed."""


class Given(QTableView):
    """A table that is as high as it is told to be: by whatever shares the room out among several."""

    def __init__(self) -> None:
        super().__init__()
        self._given_px = 0

    def give(self, given_px: int) -> None:
        """Let it have no more than this for now: as many of its rows as are seen whole."""
        if given_px != self._given_px:
            self._given_px = given_px
            self.setMaximumHeight(given_px)
            self.updateGeometry()

    def sizeHint(self) -> QSize:
        """What it is given."""
        return QSize(super().sizeHint().width(), self._given_px)


class Figures(Given):
    """A table as high as its rows where there is room; else it scrolls.

    Its bar comes by height alone: two bars that come as needed would each take the other's room, and stay.

    Signals
    -------
    barred()
        Its bar has come or gone.
    """

    barred = Signal()
    _settled = Signal()

    def __init__(self) -> None:
        super().__init__()
        self._wanted_px = 0
        self.setVerticalScrollBarPolicy(BAR_OFF)
        # Queued: what it lies in shares its height out after it has said what it wants.
        self._settled.connect(self._fit_bar, Qt.ConnectionType.QueuedConnection)

    def want(self, wanted_px: int, least_px: int) -> None:
        """Ask for a height, and be content with less."""
        self._wanted_px = self._given_px = wanted_px
        self.setMinimumHeight(min(wanted_px, least_px))
        self.setMaximumHeight(wanted_px)
        self.updateGeometry()
        self._settled.emit()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Scroll, or not any more."""
        super().resizeEvent(event)
        self._settled.emit()

    def _fit_bar(self) -> None:
        policy = BAR_OFF if self.height() >= self._wanted_px else BAR_ON
        if policy != self.verticalScrollBarPolicy():
            self.setVerticalScrollBarPolicy(policy)
            self.barred.emit()

    def bar_px(self) -> int:
        """What its bar takes of its width."""
        scrolls = self.verticalScrollBarPolicy() == BAR_ON
        return self.verticalScrollBar().sizeHint().width() if scrolls else 0


class ChosenInSight(Given):
    """A table whose chosen row stays in sight when readings below it take some of its height."""

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Bring the chosen row back."""
        super().resizeEvent(event)
        if self.currentIndex().isValid():
            self.scrollTo(self.currentIndex())


class RowsRoom(QWidget):
    """What tables lie in that share its height out.

    Signals
    -------
    resized()
        It has another height.
    """

    resized = Signal()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Say so."""
        super().resizeEvent(event)
        self.resized.emit()


def whole_rows_px(room_px: int, rows_px: Sequence[int], least: int) -> int:
    """Height of as many rows, from the first, as are whole in a room; of `least` rows where there is none."""
    taken_px = sum(rows_px[:least])
    for row_px in rows_px[least:]:
        if taken_px + row_px > room_px:
            break
        taken_px += row_px
    return taken_px


def quiet_table(table: Table, model: QAbstractItemModel, name: str, row_px: int) -> Table:
    """A table of a model, with this name for a screen reader, and no lines or frame that are in the way."""
    table.setModel(model)
    table.setAccessibleName(name)
    table.setShowGrid(False)
    table.setWordWrap(False)
    table.setTextElideMode(Qt.TextElideMode.ElideRight)
    table.setCornerButtonEnabled(False)
    table.setTabKeyNavigation(False)
    table.setHorizontalScrollBarPolicy(BAR_OFF)
    table.verticalHeader().hide()
    table.verticalHeader().setSectionResizeMode(QHeaderView.ResizeMode.Fixed)
    table.verticalHeader().setMinimumSectionSize(10)
    table.verticalHeader().setDefaultSectionSize(row_px)
    table.horizontalHeader().setHighlightSections(False)
    table.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerItem)  # no row is cut through
    return table
