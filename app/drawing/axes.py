"""Axes with real ticks in SI units, drawn quietly."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import pyqtgraph as pg
from PySide6.QtGui import QColor, QFont

from app.language import window_language

LEFT_AXIS_PX = 46
_BOTTOM_AXIS_PX = 20
_LEAST_FIGURE_PX = 14.0
_BARE_AXIS_PX = 3


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
        pg.AxisItem.__init__(self, orientation, maxTickLength=-4)
        self._base: pg.AxisItem = self
        self._unit = unit
        self._turned: Callable[[float], float] | None = None
        self._turned_unit = ""
        pg.AxisItem.enableAutoSIPrefix(self, False)
        font = QFont()
        font.setPointSizeF(8.0)
        pg.AxisItem.setTickFont(self, font)
        pg.AxisItem.setStyle(
            self, tickTextOffset=3, autoExpandTextSpace=False, hideOverlappingLabels=True, maxTickLevel=0
        )
        if orientation == "left":
            pg.AxisItem.setStyle(self, tickTextWidth=36)
            pg.AxisItem.setWidth(self, LEFT_AXIS_PX)
        else:
            pg.AxisItem.setHeight(self, _BOTTOM_AXIS_PX)

    def join(self, box: pg.ViewBox) -> None:
        """Follow what a plot area shows, drawn above what lies in it."""
        self._base.linkToView(box)
        self._base.setZValue(0.5)

    def recolour(self, line: QColor, text: QColor) -> None:
        """Set the colours of line and figures."""
        self._base.setPen(pg.mkPen(line))
        self._base.setTextPen(pg.mkPen(text))

    def without_figures(self) -> None:
        """Leave the figures out, as for a lane that shares its time with the one below."""
        self._base.setStyle(showValues=False)
        if self.orientation == "bottom":
            self._base.setHeight(_BARE_AXIS_PX)

    def turned(self, value_of: Callable[[float], float] | None, unit: str = "") -> None:
        """Write what a place is worth in another quantity, in whole units; None takes the figures away again.

        The ticks stay where those of the plot above stand.
        """
        self._turned, self._turned_unit = value_of, unit
        self._base.setStyle(showValues=value_of is not None)
        self._base.setHeight(_BOTTOM_AXIS_PX if value_of is not None else _BARE_AXIS_PX)
        self._base.picture = None
        self._base.update()

    @property
    def is_turned(self) -> bool:
        """Whether it says another quantity than its own."""
        return self._turned is not None

    def tickValues(self, low: float, high: float, size: float) -> list[Any]:  # noqa: N802
        """Where the ticks stand; every other figure alone where they would touch each other in a low lane."""
        levels: list[Any] = super().tickValues(low, high, size)
        if self.orientation == "left" and levels and high > low:
            spacing, values = levels[0]
            if spacing * size / (high - low) < _LEAST_FIGURE_PX:
                kept = [value for value in values if round(value / spacing) % 2 == 0]
                levels[0] = (2.0 * spacing, kept or list(values)[:1])
        return levels

    def tickStrings(self, values: Any, scale: float, spacing: float) -> list[str]:  # noqa: N802
        """Plain figures with a true minus sign, and the decimal mark of the window's language."""
        strings: list[str] = super().tickStrings(values, scale, spacing)
        if self._turned is not None:
            turned = (self._turned(float(value) * scale) for value in values)
            return [f"{round(item)}".replace("-", "\N{MINUS SIGN}") + self._turned_unit for item in turned]
        mark = window_language().decimal_mark
        return [text.replace("-", "\N{MINUS SIGN}").replace(".", mark) + self._unit for text in strings]
