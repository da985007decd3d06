"""A row that stays under the pointer that pressed it, while rows above it open and close."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager

from PySide6.QtWidgets import QBoxLayout, QScrollArea, QWidget


def bring_into_sight(area: QScrollArea, row: QWidget) -> None:
    """Scroll no further than the whole row needs; of one that is higher than what is seen, to its foot.

    There are its buttons, and what is typed in it.
    """
    seen, bar = area.viewport(), area.verticalScrollBar()
    area.ensureWidgetVisible(row, 0, 0)
    if row.height() > seen.height():
        foot_px = row.mapTo(seen, row.rect().bottomLeft()).y()
        bar.setValue(bar.value() + foot_px + 1 - seen.height())


class HeldRow:
    """Scrolls to where the row was; where nothing is left to scroll, room is left above it.

    Parameters
    ----------
    area : QScrollArea
        Where the rows scroll.
    settle : callable
        Gives everything in it its place at once.
    """

    def __init__(self, area: QScrollArea, settle: Callable[[], None]) -> None:
        self._area, self._settle = area, settle
        self._row: QWidget | None = None
        self._blank: QWidget | None = None

    @contextmanager
    def pressed(self, row: QWidget) -> Iterator[None]:
        """While this lasts, a row is being pressed."""
        self._row = row
        try:
            yield
        finally:
            self._row = None

    @contextmanager
    def kept(self, layout: QBoxLayout) -> Iterator[bool]:
        """Hold the pressed row, if there is one, where it is, whatever is done to the rows meanwhile."""
        row, before_px = self._row, self._place(self._row)
        yield row is not None
        if row is None:
            return
        self.let_go()
        self._settle()
        bar = self._area.verticalScrollBar()
        bar.setValue(bar.value() + self._place(row) - before_px)
        missing_px = before_px - self._place(row) - layout.spacing()
        if missing_px > 0 and layout.indexOf(row) >= 0:
            self._blank = QWidget()
            self._blank.setFixedHeight(missing_px)
            layout.insertWidget(layout.indexOf(row), self._blank)
            self._blank.show()  # Qt would do so after the next event
            self._settle()

    def let_go(self) -> None:
        """Close the room again: the pointer has left, or something else is pressed."""
        if self._blank is not None:
            self._blank.hide()
            self._blank.deleteLater()
        self._blank = None

    def _place(self, row: QWidget | None) -> int:
        """Where a row stands, in pixels from the top of what is seen."""
        return 0 if row is None else row.mapTo(self._area.viewport(), row.rect().topLeft()).y()
