"""A name above a plot, where it hides nothing; without room for it in its corner, on a ground of its own."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QColor, QFont, QPen
from PySide6.QtWidgets import QGraphicsItem, QGraphicsRectItem, QGraphicsSimpleTextItem

_ABOVE_CURVES = 40


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
        self._ground = QGraphicsRectItem(self.boundingRect(), self)
        self._ground.setFlag(QGraphicsItem.GraphicsItemFlag.ItemStacksBehindParent)
        self._ground.setPen(QPen(Qt.PenStyle.NoPen))
        self._ground.hide()
        self.setZValue(_ABOVE_CURVES)

    def recolour(self, ink: QColor) -> None:
        """Set the colour of the text."""
        self.setBrush(ink)

    def stand(self, corner: QGraphicsItem, left_px: float) -> None:
        """Stand above another plot's corner, or further from it."""
        self.setParentItem(corner)
        self.setPos(left_px, 0)

    @property
    def is_inside(self) -> bool:
        """Whether it stands in the plot."""
        return self._ground.isVisibleTo(self)

    def show_inside(self, ground: QColor | None) -> None:
        """Stand in the plot, on a ground of this colour; or above it, which needs none."""
        self._ground.setVisible(ground is not None)
        if ground is not None:
            self._ground.setRect(self.boundingRect())
            self._ground.setBrush(ground)
