"""A column in little: its least and greatest values along the file, as one ribbon."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import QPointF, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen, QPolygonF, QResizeEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

_LEAST_PX = 1.5
_RIM_PX = 4


def ribbon(
    low: NDArray[np.float64],
    high: NDArray[np.float64],
    width: float,
    height: float,
    least_span: float = 0.0,
) -> list[QPolygonF]:
    """Outlines of the stretches that have values, in pixels.

    Parameters
    ----------
    low, high : ndarray, shape (n_stretches,)
        Extremes; NaN where all is missing.
    width, height : float
        Of the picture.
    least_span : float
        What the height stands for at least.

    Returns
    -------
    list of QPolygonF
        One for each run without a gap; empty where there is nothing finite.
    """
    good = np.isfinite(low) & np.isfinite(high)
    if not good.any() or width < 2 or height < 2:
        return []
    least, most = float(low[good].min()), float(high[good].max())
    span = max(most - least, least_span)
    least -= (span - (most - least)) / 2
    x = (np.arange(len(low)) + 0.5) * width / len(low)

    def down(value: NDArray[np.float64]) -> NDArray[np.float64]:
        share = (value - least) / span if span > 0 else np.full(value.shape, 0.5)
        return _RIM_PX + (1.0 - share) * (height - 2 * _RIM_PX)

    edges = np.flatnonzero(np.diff(np.concatenate([[False], good, [False]]).astype(np.int8)))
    outlines = []
    for start, stop in edges.reshape(-1, 2):
        part = slice(start, stop)
        top, bottom = down(high[part]) - _LEAST_PX / 2, down(low[part]) + _LEAST_PX / 2
        across = x[part] if stop - start > 1 else np.array([x[start] - 1.0, x[start] + 1.0])
        top, bottom = np.resize(top, across.shape), np.resize(bottom, across.shape)
        points = [QPointF(*at) for at in zip(across, top, strict=True)]
        points += [QPointF(*at) for at in zip(across[::-1], bottom[::-1], strict=True)]
        outlines.append(QPolygonF(points))
    return outlines


class ColumnPicture(QWidget):
    """The ribbon; its name says what is seen, for whoever cannot see it."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self._low: NDArray[np.float64] = np.empty(0)
        self._high: NDArray[np.float64] = np.empty(0)
        self._least_span = 0.0
        self._ink, self._ground, self._line = QColor("black"), QColor("white"), QColor("grey")
        self._outlines: list[QPolygonF] = []

    def show_extremes(
        self, low: NDArray[np.float64], high: NDArray[np.float64], least_span: float = 0.0
    ) -> None:
        """Draw these from now on; as `ribbon` takes them."""
        self._low, self._high, self._least_span = low, high, least_span
        self._prepare()

    def recolour(self, ink: QColor, ground: QColor, line: QColor) -> None:
        """Draw in other colours."""
        self._ink, self._ground, self._line = ink, ground, line
        self.update()

    def sizeHint(self) -> QSize:
        """Wide enough to see a crossing, high enough to see a drop."""
        return QSize(150, 46)

    def minimumSizeHint(self) -> QSize:
        """What can still be seen."""
        return QSize(90, 40)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Lay the ribbon into the new size."""
        super().resizeEvent(event)
        self._prepare()

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint the prepared outlines."""
        painter = QPainter(self)
        try:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            painter.setPen(QPen(self._line, 1))
            painter.setBrush(self._ground)
            painter.drawRoundedRect(self.rect().adjusted(0, 0, -1, -1), 3, 3)
            painter.setPen(QPen(self._ink, 1.0))
            painter.setBrush(self._ink)
            for outline in self._outlines:
                painter.drawPolygon(outline, Qt.FillRule.WindingFill)
        finally:
            painter.end()

    def _prepare(self) -> None:
        size = float(self.width()), float(self.height())
        self._outlines = ribbon(self._low, self._high, *size, self._least_span)
        self.update()
