"""The worst break-up of one side over travel, to be laid over that of another."""

from __future__ import annotations

from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QColor, QPainter
from PySide6.QtWidgets import QStyleOptionGraphicsItem, QWidget

from analysis.diagnosis.findings import TrackSurvey
from app.drawing.track_items import SurveyItem, cosmetic


class OutlineItem(SurveyItem):
    """Every crossing faint, the worst bold; solid or dashed, so that two can be told apart in grey.

    Parameters
    ----------
    dashed : bool
        Of the second side.
    """

    def __init__(self, dashed: bool = False) -> None:
        super().__init__()
        self._style = Qt.PenStyle.DashLine if dashed else Qt.PenStyle.SolidLine
        self._colour = QColor("black")

    def show_survey(self, survey: TrackSurvey | None) -> None:
        """Prepare the outlines of a survey, or nothing."""
        self._outline(survey, _MOST_FAINT)

    def recolour(self, colour: QColor) -> None:
        """Set the colour."""
        self._colour = colour
        self.update()

    def paint(
        self, painter: QPainter, option: QStyleOptionGraphicsItem, widget: QWidget | None = None
    ) -> None:
        """Stroke the prepared outlines."""
        painter.save()
        try:
            painter.setBrush(Qt.BrushStyle.NoBrush)
            faint = QColor(self._colour)
            faint.setAlphaF(0.16)
            painter.setPen(cosmetic(faint, 1, Qt.PenStyle.SolidLine))
            painter.drawPath(self._faint)
            painter.setPen(cosmetic(self._colour, 2, self._style))
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
            painter.setPen(cosmetic(self._colour, 2, self._style))
            painter.drawLine(QPointF(0, self.height() / 2), QPointF(self.width(), self.height() / 2))
        finally:
            painter.end()


_MOST_FAINT = 60
"""Crossings drawn one by one; the worst of all is drawn whatever their number."""
