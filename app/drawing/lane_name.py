"""A name above a plot, where it hides nothing."""

from __future__ import annotations

from PySide6.QtGui import QColor, QFont
from PySide6.QtWidgets import QGraphicsItem, QGraphicsSimpleTextItem


class LaneName(QGraphicsSimpleTextItem):
    """Text that stands above a plot's upper left corner.

    Parameters
    ----------
    text : str
        What it says.
    corner : QGraphicsItem
        The plot, axes included.
    left_px : float
        How far from the left edge: names beside each other.
    """

    def __init__(self, text: str, corner: QGraphicsItem, left_px: float = 7.0) -> None:
        super().__init__(text, corner)
        font = QFont()
        font.setPointSizeF(8.5)
        font.setWeight(QFont.Weight.DemiBold)
        self.setFont(font)
        self.setPos(left_px, 0)

    def recolour(self, ink: QColor) -> None:
        """Set the colour of the text."""
        self.setBrush(ink)
