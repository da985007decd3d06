"""The worst break-up of one side over travel, to be laid over that of another."""

from __future__ import annotations

import numpy as np
from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPainterPath, QPen
from PySide6.QtWidgets import QStyleOptionGraphicsItem, QWidget

from analysis.diagnosis.findings import TrackSurvey
from app.drawing.canvas import Drawing
from app.drawing.track_items import stairs, worst


class OutlineItem(Drawing):
    """Every crossing faint, the worst bold; solid or dashed, so that two can be told apart in grey.

    Parameters
    ----------
    dashed : bool
        Of the second side.
    """

    def __init__(self, dashed: bool = False) -> None:
        super().__init__()
        self._style = Qt.PenStyle.DashLine if dashed else Qt.PenStyle.SolidLine
        self._extent = QRectF()
        self._faint: list[QPainterPath] = []
        self._worst = QPainterPath()
        self._colour = QColor("black")

    def show_survey(self, survey: TrackSurvey | None) -> None:
        """Prepare the outlines of a survey, or nothing."""
        self.prepareGeometryChange()
        self._faint, self._worst, self._extent = [], QPainterPath(), QRectF()
        if survey is not None:
            edges, rows = survey.edges_percent, survey.breakup_percent
            self._faint = [stairs(edges, row) for row in rows[-_MOST_FAINT:]]
            self._worst = stairs(edges, worst(rows))
            top = float(np.nanmax(rows)) if np.isfinite(rows).any() else 1.0
            self._extent = QRectF(float(edges[0]), 0.0, float(edges[-1] - edges[0]), top)
        self.update()

    def recolour(self, colour: QColor) -> None:
        """Set the colour."""
        self._colour = colour
        self.update()

    def boundingRect(self) -> QRectF:
        """All bins, up to the worst break-up."""
        return self._extent

    def paint(
        self, painter: QPainter, option: QStyleOptionGraphicsItem, widget: QWidget | None = None
    ) -> None:
        """Stroke the prepared outlines."""
        painter.save()
        try:
            painter.setBrush(Qt.BrushStyle.NoBrush)
            faint = QColor(self._colour)
            faint.setAlphaF(0.16)
            painter.setPen(_cosmetic(faint, 1, Qt.PenStyle.SolidLine))
            for path in self._faint:
                painter.drawPath(path)
            painter.setPen(_cosmetic(self._colour, 2, self._style))
            painter.drawPath(self._worst)
        finally:
            painter.restore()


class KeyLine(QWidget):
    """A short stroke as it is drawn in the plot, to stand beside a name.

    Parameters
    ----------
    dashed : bool
        Of the second side.
    """

    def __init__(self, dashed: bool = False) -> None:
        super().__init__()
        self._style = Qt.PenStyle.DashLine if dashed else Qt.PenStyle.SolidLine
        self._colour = QColor("black")
        self.setFixedSize(26, 12)

    def recolour(self, colour: QColor) -> None:
        """Set the colour."""
        self._colour = colour
        self.update()

    def paintEvent(self, event: object) -> None:
        """A level stroke."""
        painter = QPainter(self)
        try:
            painter.setPen(_cosmetic(self._colour, 2, self._style))
            painter.drawLine(QPointF(0, self.height() / 2), QPointF(self.width(), self.height() / 2))
        finally:
            painter.end()


_MOST_FAINT = 60
"""Crossings drawn one by one; the worst of all is drawn whatever their number."""


def _cosmetic(colour: QColor, width: float, style: Qt.PenStyle) -> QPen:
    pen = QPen(colour, width, style)
    pen.setCosmetic(True)
    return pen
