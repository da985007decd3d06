"""What is drawn on the sensor track: break-up lines, crossing counts, and the arm."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import QPointF, QRectF, Qt, Signal
from PySide6.QtGui import QColor, QPainter, QPainterPath, QPen
from PySide6.QtWidgets import QGraphicsItem, QStyleOptionGraphicsItem, QWidget

from analysis.diagnosis.findings import TrackSurvey
from app.drawing.canvas import Drawing, path_of

MOST_FAINT = 300
"""Crossings drawn one by one; of more, as many spread evenly: the picture would be no other, and slower."""


def stairs(edges: NDArray[np.float64], heights: NDArray[np.float64]) -> QPainterPath:
    """Stepped outlines over bins; bins without a value leave a gap.

    Parameters
    ----------
    edges : ndarray, shape (n_bins + 1,)
    heights : ndarray, shape (n_bins,) or (n_outlines, n_bins)
        NaN where a bin was not visited.

    Returns
    -------
    QPainterPath
        All outlines in one.
    """
    rows = np.atleast_2d(heights)
    row, place = np.nonzero(np.isfinite(rows))
    x, y = np.empty(2 * row.size), np.repeat(rows[row, place], 2)
    x[::2], x[1::2] = edges[place], edges[place + 1]
    joined = np.ones(x.size, dtype=np.int32)  # a bin's left end to its right end, and then to the next bin's
    joined[1:-1:2] = (np.diff(row) == 0) & (np.diff(place) == 1)
    return path_of(x, y, joined)


class SurveyItem(Drawing):
    """Outlines of a survey over travel, prepared to be stroked: of each crossing, and of the worst."""

    def __init__(self) -> None:
        super().__init__()
        self._extent = QRectF()
        self._faint, self._worst = QPainterPath(), QPainterPath()

    def boundingRect(self) -> QRectF:
        """All bins, up to the worst break-up."""
        return self._extent

    def _outline(self, survey: TrackSurvey | None, most_faint: int = MOST_FAINT) -> None:
        """Prepare the outlines of a survey, of so many crossings one by one; or nothing."""
        self.prepareGeometryChange()
        self._faint, self._worst, self._extent = QPainterPath(), QPainterPath(), QRectF()
        if survey is not None:
            edges, rows = survey.edges_percent, survey.breakup_percent
            spread = np.linspace(0, max(len(rows) - 1, 0), min(len(rows), most_faint)).round().astype(int)
            self._faint = stairs(edges, rows[spread])
            self._worst = stairs(edges, worst(rows))
            top = float(np.nanmax(rows)) if np.isfinite(rows).any() else 1.0
            self._extent = QRectF(float(edges[0]), 0.0, float(edges[-1] - edges[0]), top)
        self.update()


class BreakupItem(SurveyItem):
    """Break-up over travel: every crossing faint, the worst of them bold; or a chosen one alone."""

    def __init__(self) -> None:
        super().__init__()
        self._floor_percent = 0.0
        self._survey: TrackSurvey | None = None
        self._chosen: QPainterPath | None = None
        self._strokes: tuple[int, ...] = ()
        self._ink, self._bold, self._choice = QColor("grey"), QColor("black"), QColor("blue")

    def show_survey(self, survey: TrackSurvey) -> None:
        """Prepare the outlines of a survey."""
        self._survey, self._floor_percent = survey, survey.floor_percent
        self._chosen, self._strokes = None, ()
        self._outline(survey)

    def single_out(self, strokes: Sequence[int]) -> None:
        """Draw these strokes alone, by their rows in the survey; all of them again where there are none."""
        self._strokes = tuple(strokes) if self._survey is not None else ()
        self._chosen = None
        if self._survey is not None and self._strokes:
            rows = self._survey.breakup_percent[list(self._strokes)]
            self._chosen = stairs(self._survey.edges_percent, rows)
        self.update()

    @property
    def singled_out(self) -> tuple[int, ...]:
        """Rows of the strokes that are drawn alone; empty where all are drawn."""
        return self._strokes

    def recolour(self, ink: QColor, bold: QColor, choice: QColor) -> None:
        """Set the colours of all crossings, of the worst, and of the chosen one."""
        self._ink, self._bold, self._choice = ink, bold, choice
        self.update()

    def paint(
        self, painter: QPainter, option: QStyleOptionGraphicsItem, widget: QWidget | None = None
    ) -> None:
        """Stroke the prepared outlines."""
        painter.save()
        try:
            painter.setBrush(Qt.BrushStyle.NoBrush)
            faint = QColor(self._ink)
            faint.setAlphaF(0.3)
            if self._chosen is None:
                painter.setPen(cosmetic(faint, 1))
                painter.drawPath(self._faint)
            painter.setPen(cosmetic(self._bold if self._chosen is None else self._choice, 2))
            painter.drawPath(self._worst if self._chosen is None else self._chosen)
            # The track itself, for the arm to ride on.
            painter.setPen(cosmetic(faint, 4))
            painter.drawLine(QPointF(self._extent.left(), 0.0), QPointF(self._extent.right(), 0.0))
            painter.setPen(cosmetic(self._ink, 1, Qt.PenStyle.DashLine))
            floor = self._floor_percent
            painter.drawLine(QPointF(self._extent.left(), floor), QPointF(self._extent.right(), floor))
        finally:
            painter.restore()


class CountItem(Drawing):
    """How many crossings visited each bin, as a filled silhouette."""

    def __init__(self) -> None:
        super().__init__()
        self._extent = QRectF()
        self._shape = QPainterPath()
        self._fill = QColor("grey")

    def show_counts(self, edges: NDArray[np.float64], counts: NDArray[np.intp]) -> None:
        """Prepare the silhouette of ``counts`` (shape ``(n_bins,)``) over ``edges`` (``(n_bins + 1,)``)."""
        self.prepareGeometryChange()
        self._shape = stairs(edges, counts.astype(np.float64))
        self._shape.lineTo(float(edges[-1]), 0.0)
        self._shape.lineTo(float(edges[0]), 0.0)
        self._shape.closeSubpath()
        self._extent = QRectF(float(edges[0]), 0.0, float(edges[-1] - edges[0]), float(counts.max(initial=1)))
        self.update()

    def recolour(self, fill: QColor) -> None:
        """Set the fill."""
        self._fill = fill
        self.update()

    def boundingRect(self) -> QRectF:
        """All bins, up to the most crossings."""
        return self._extent

    def paint(
        self, painter: QPainter, option: QStyleOptionGraphicsItem, widget: QWidget | None = None
    ) -> None:
        """Fill the silhouette."""
        painter.fillPath(self._shape, self._fill)


class ArmItem(Drawing):
    """The arm: a dot on the track, to be dragged along it or clicked to let it run.

    Signals
    -------
    dragged(travel_percent, finished)
    clicked()
    """

    dragged = Signal(float, bool)
    clicked = Signal()

    RADIUS_PX = 8.0

    def __init__(self) -> None:
        super().__init__()
        self.setFlag(QGraphicsItem.GraphicsItemFlag.ItemIgnoresTransformations)
        self.setCursor(Qt.CursorShape.SizeHorCursor)
        self.setZValue(50)
        self._fill, self._rim = QColor("black"), QColor("white")

    def recolour(self, fill: QColor, rim: QColor) -> None:
        """Set the colours of the dot and of its rim."""
        self._fill, self._rim = fill, rim
        self.update()

    def boundingRect(self) -> QRectF:
        """A little more than the dot, so that a finger finds it."""
        reach = self.RADIUS_PX + 4
        return QRectF(-reach, -reach, 2 * reach, 2 * reach)

    def paint(
        self, painter: QPainter, option: QStyleOptionGraphicsItem, widget: QWidget | None = None
    ) -> None:
        """A dot with a rim."""
        painter.save()
        try:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            painter.setPen(QPen(self._rim, 2.5))
            painter.setBrush(self._fill)
            painter.drawEllipse(QPointF(0, 0), self.RADIUS_PX, self.RADIUS_PX)
        finally:
            painter.restore()

    def mouseDragEvent(self, ev: Any) -> None:
        """Drag along the track; with Ctrl a stretch is marked, which is the business of the plot below."""
        view = self.plot_box()
        marking = ev.isStart() and ev.modifiers() & Qt.KeyboardModifier.ControlModifier
        if view is None or marking or ev.button() != Qt.MouseButton.LeftButton:
            ev.ignore()
            return
        ev.accept()
        self.dragged.emit(view.x_at(ev.scenePos()), bool(ev.isFinish()))

    def mouseClickEvent(self, ev: Any) -> None:
        """Run, or rest."""
        if ev.button() == Qt.MouseButton.LeftButton:
            ev.accept()
            self.clicked.emit()


def worst(rows: NDArray[np.float64]) -> NDArray[np.float64]:
    """Largest break-up in each bin over all crossings, shape ``(n_bins,)``; NaN where none visited it."""
    if not rows.shape[0]:
        return np.full(rows.shape[1], np.nan)
    filled = np.where(np.isfinite(rows), rows, -np.inf).max(axis=0)
    return np.where(np.isfinite(filled), filled, np.nan)


def cosmetic(colour: QColor, width: float, style: Qt.PenStyle = Qt.PenStyle.SolidLine) -> QPen:
    """A pen whose width is in pixels at every zoom."""
    pen = QPen(colour, width, style)
    pen.setCosmetic(True)
    return pen
