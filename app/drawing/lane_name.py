"""A name in the corner of a plot, on a plate so that nothing shines through."""

from __future__ import annotations

from typing import cast

from PySide6.QtCore import QRectF
from PySide6.QtGui import QColor, QFont, QPainter
from PySide6.QtWidgets import QGraphicsItem, QGraphicsSimpleTextItem, QStyleOptionGraphicsItem, QWidget


class LaneName(QGraphicsSimpleTextItem):
    """Text that stands in a plot's upper left corner.

    Parameters
    ----------
    text : str
        What it says.
    corner : QGraphicsItem
        The plot area.
    left_px : float
        How far from the left edge: names beside each other.
    """

    def __init__(self, text: str, corner: QGraphicsItem, left_px: float = 7.0) -> None:
        super().__init__(text, corner)
        font = QFont()
        font.setPointSizeF(8.5)
        font.setWeight(QFont.Weight.DemiBold)
        self.setFont(font)
        self.setPos(left_px, 2)
        self.setZValue(40)
        self._plate = QColor("white")

    def recolour(self, ink: QColor, plate: QColor) -> None:
        """Set the colours of the text and of the plate."""
        self.setBrush(ink)
        self._plate = QColor(plate)
        self._plate.setAlphaF(0.85)

    def boundingRect(self) -> QRectF:
        """The text with some air."""
        return super().boundingRect().adjusted(-3, -1, 3, 1)

    def paint(
        self, painter: QPainter, option: QStyleOptionGraphicsItem, widget: QWidget | None = None
    ) -> None:
        """Plate, then text."""
        painter.fillRect(self.boundingRect(), self._plate)
        super().paint(painter, option, cast(QWidget, widget))  # Qt takes none, its stub does not say so
