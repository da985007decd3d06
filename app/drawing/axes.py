"""Axes with real ticks in SI units, drawn quietly."""

from __future__ import annotations

from typing import Any

import pyqtgraph as pg
from PySide6.QtGui import QColor, QFont

LEFT_AXIS_PX = 46


class QuietAxis(pg.AxisItem):
    """An axis with short outward ticks, no scaling prefix, and the unit after each figure.

    Parameters
    ----------
    orientation : str
        ``"left"`` or ``"bottom"``.
    unit : str
        Written after each figure, with the space before it.
    """

    def __init__(self, orientation: str, unit: str = "") -> None:
        super().__init__(orientation, maxTickLength=-4)
        self._unit = unit
        self.enableAutoSIPrefix(False)
        font = QFont()
        font.setPointSizeF(8.0)
        self.setTickFont(font)
        self.setStyle(tickTextOffset=3, autoExpandTextSpace=False, hideOverlappingLabels=True, maxTickLevel=0)
        if orientation == "left":
            self.setStyle(tickTextWidth=36)
            self.setWidth(LEFT_AXIS_PX)
        else:
            self.setHeight(20)

    def recolour(self, line: QColor, text: QColor) -> None:
        """Set the colours of line and figures."""
        self.setPen(pg.mkPen(line))
        self.setTextPen(pg.mkPen(text))

    def tickStrings(self, values: Any, scale: float, spacing: float) -> list[str]:
        """Plain figures with a true minus sign."""
        strings: list[str] = super().tickStrings(values, scale, spacing)
        return [text.replace("-", "\N{MINUS SIGN}") + self._unit for text in strings]
