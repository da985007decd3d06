"""What lies on a sheet, with its place: the same for screen, printer and PDF.

Places are in `UNITS_A_MM` of a millimetre, from the sheet's upper left corner.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TypeAlias

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QImage, QPainter, QPen, QPolygonF, QTextLayout

from analysis.reports.drawing import Box, Drawing, Label, Stroke

UNITS_A_MM = 40.0
"""Fine enough that letters stand where they should, whatever the resolution of what is painted on."""

FAMILIES = ("Segoe UI", "Helvetica Neue", "DejaVu Sans", "Noto Sans", "Liberation Sans", "Arial")
_LABEL_SCALE = 8.0


def report_font(size_units: float, *, bold: bool = False) -> QFont:
    """The report's letters; no ligatures, so that a search in the PDF finds every word."""
    font = QFont()
    font.setFamilies(list(FAMILIES))
    font.setPixelSize(max(1, round(size_units)))
    font.setBold(bold)
    font.setHintingPreference(QFont.HintingPreference.PreferNoHinting)
    font.setFeature(QFont.Tag("liga"), 0)
    return font


@dataclass(frozen=True, slots=True)
class Line:
    """One line of a laid-out text, drawn at an offset."""

    layout: QTextLayout
    number: int
    x: float
    y: float

    def paint(self, painter: QPainter) -> None:
        """Draw it."""
        self.layout.lineAt(self.number).draw(painter, QPointF(self.x, self.y))


@dataclass(frozen=True, slots=True)
class Rule:
    """A straight line."""

    x: float
    y: float
    to_x: float
    to_y: float
    width: float
    colour: str

    def paint(self, painter: QPainter) -> None:
        """Draw it."""
        painter.setPen(QPen(QColor(self.colour), self.width))
        painter.drawLine(QPointF(self.x, self.y), QPointF(self.to_x, self.to_y))


@dataclass(frozen=True, slots=True)
class Frame:
    """A rectangle's edge, with a cross in it where it is ticked."""

    x: float
    y: float
    width: float
    height: float
    pen: float
    ticked: bool = False

    def paint(self, painter: QPainter) -> None:
        """Draw it."""
        painter.setPen(QPen(QColor("#22262b"), self.pen))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        where = QRectF(self.x, self.y, self.width, self.height)
        painter.drawRect(where)
        if self.ticked:
            painter.drawLine(where.topLeft(), where.bottomRight())
            painter.drawLine(where.topRight(), where.bottomLeft())


@dataclass(frozen=True, slots=True)
class Shown:
    """A photo or a logo."""

    image: QImage
    x: float
    y: float
    width: float
    height: float

    def paint(self, painter: QPainter) -> None:
        """Draw it."""
        painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform)
        painter.drawImage(QRectF(self.x, self.y, self.width, self.height), self.image)


@dataclass(frozen=True, slots=True)
class Drawn:
    """A drawing, scaled to a width."""

    drawing: Drawing
    x: float
    y: float
    width: float

    @property
    def height(self) -> float:
        """On the sheet."""
        return self.drawing.height * self.width / self.drawing.width

    def paint(self, painter: QPainter) -> None:
        """Draw every mark of it."""
        painter.save()
        painter.translate(self.x, self.y)
        scale = self.width / self.drawing.width
        painter.scale(scale, scale)
        for mark in self.drawing.marks:
            if isinstance(mark, Stroke):
                _paint_stroke(painter, mark)
            elif isinstance(mark, Box):
                where = QRectF(mark.x, mark.y, mark.width, mark.height)
                painter.fillRect(where, QColor(mark.colour))
            else:
                _paint_label(painter, mark)
        painter.restore()


Placed: TypeAlias = Line | Rule | Frame | Shown | Drawn


def moved(item: Placed, across: float) -> Placed:
    """The same item further to the right."""
    if isinstance(item, Rule):
        return replace(item, x=item.x + across, to_x=item.to_x + across)
    return replace(item, x=item.x + across)


@dataclass(frozen=True, slots=True)
class Sheet:
    """One sheet of paper with everything on it.

    Parameters
    ----------
    width, height : float
        In units.
    items : tuple of Placed
        In the order of drawing.
    begins : str
        Title of the page that begins on this sheet; empty on a further sheet of it.
    """

    width: float
    height: float
    items: tuple[Placed, ...]
    begins: str = ""

    def paint(self, painter: QPainter) -> None:
        """Draw it; the painter's units are those of the sheet."""
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setRenderHint(QPainter.RenderHint.TextAntialiasing)
        for item in self.items:
            painter.setPen(QColor("#22262b"))
            item.paint(painter)


def _paint_stroke(painter: QPainter, stroke: Stroke) -> None:
    colour = QColor(stroke.colour)
    colour.setAlphaF(stroke.opacity)
    pen = QPen(colour, stroke.width)
    pen.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
    pen.setCapStyle(Qt.PenCapStyle.FlatCap)
    if stroke.dashes:
        pen.setDashPattern([part / stroke.width for part in stroke.dashes])
    painter.setPen(pen)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    for points in stroke.lines:
        painter.drawPolyline(QPolygonF([QPointF(x, y) for x, y in points.tolist()]))


def _paint_label(painter: QPainter, label: Label) -> None:
    font = report_font(label.size * _LABEL_SCALE, bold=label.bold)
    wide = QFontMetricsF(font).horizontalAdvance(label.text)
    start = {"middle": -0.5 * wide, "end": -wide}.get(label.anchor, 0.0)
    painter.save()
    painter.translate(label.x, label.y)
    painter.rotate(-90.0 if label.upwards else 0.0)
    painter.scale(1.0 / _LABEL_SCALE, 1.0 / _LABEL_SCALE)
    painter.setFont(font)
    painter.setPen(QColor(label.colour))
    painter.drawText(QPointF(start, 0.0), label.text)
    painter.restore()
