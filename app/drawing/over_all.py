"""What is drawn over all that a plot shows, in device pixels: bands and marks alike."""

from __future__ import annotations

from PySide6.QtCore import QRectF
from PySide6.QtGui import QColor

from app.drawing.canvas import Drawing


class OverAll(Drawing):
    """A drawing without an extent of its own, in the colour of what it shows, with labels on paper."""

    def __init__(self) -> None:
        super().__init__()
        self._colour, self._ink, self._paper = QColor("blue"), QColor("black"), QColor("white")

    def recolour(self, colour: QColor, ink: QColor, paper: QColor) -> None:
        """Set the colours of what is shown, of its labels and of the ground."""
        self._colour, self._ink, self._paper = QColor(colour), QColor(ink), QColor(paper)
        self.update()

    def boundingRect(self) -> QRectF:
        """Whatever the view shows."""
        return self.shown_rect()

    def viewRangeChanged(self) -> None:
        """Called by pyqtgraph when x or y moved."""
        self.prepareGeometryChange()
