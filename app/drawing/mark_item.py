"""Marks that the technician placed on an axis: a diamond on the samples, or brackets round a stretch.

They are told apart by their shape and by what is filled, never by colour alone.
"""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QPainter, QPen, QPolygonF, QTransform
from PySide6.QtWidgets import QStyleOptionGraphicsItem, QWidget

from app.drawing.over_all import OverAll

DIAMOND_PX = 5.0
_BRACKET_PX = 7.0
_FOOT_PX = 3.0
_MOST_LABEL_PX = 160.0


@dataclass(frozen=True, slots=True)
class Mark:
    """One mark on an axis.

    Parameters
    ----------
    mark_id : str
        How the review calls it.
    start : float
        Where it is, in the axis's unit.
    stop : float or None
        Where a stretch ends; None for a point.
    label : str
        Written beside it; empty for none.
    chosen : bool
        Drawn filled and firm.
    fixed : bool
        Not to be gripped: half placed yet, or of a band that is not chosen.
    quiet : bool
        Its grips alone are drawn, as those of the band that shades it.
    """

    mark_id: str
    start: float
    stop: float | None = None
    label: str = ""
    chosen: bool = False
    fixed: bool = False
    quiet: bool = False


class MarkItem(OverAll):
    """The marks of one plot.

    Parameters
    ----------
    labels : bool
        Whether labels are written in this plot.
    foot_px : float
        Room that they leave below them.
    """

    def __init__(self, labels: bool, foot_px: float = 0.0) -> None:
        super().__init__()
        self.band_colour = QColor("red")
        self._foot_px = foot_px
        self._labels = labels
        self._marks: tuple[tuple[Mark, tuple[float, ...]], ...] = ()
        self._plates: list[tuple[QRectF, Mark]] = []
        self.setZValue(40)

    def show_marks(self, marks: tuple[tuple[Mark, tuple[float, ...]], ...]) -> None:
        """Draw these, each with the heights of the samples that a point sits on."""
        if marks != self._marks:
            self._marks = marks
            self.update()

    def labelled_at(self, scene_point: QPointF) -> Mark | None:
        """The mark whose label lies there, as they were painted last; the uppermost of some."""
        here = self.mapFromScene(scene_point)
        return next((mark for plate, mark in reversed(self._plates) if plate.contains(here)), None)

    def paint(
        self, painter: QPainter, option: QStyleOptionGraphicsItem, widget: QWidget | None = None
    ) -> None:
        """Draw in device pixels, so that the shapes keep their size at every zoom."""
        to_device = painter.worldTransform()
        to_plot, _ = to_device.inverted()
        view = to_device.mapRect(self.shown_rect())
        self._plates.clear()
        painter.save()
        try:
            painter.setWorldTransform(QTransform())
            painter.setClipRect(view.adjusted(-DIAMOND_PX, 0, DIAMOND_PX, 0))
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            labels: list[tuple[Mark, float, list[float]]] = []
            for mark, heights in self._marks:
                left = to_device.map(QPointF(mark.start, 0.0)).x()
                right = left if mark.stop is None else to_device.map(QPointF(mark.stop, 0.0)).x()
                if right < view.left() - DIAMOND_PX or left > view.right() + DIAMOND_PX:
                    continue
                tops: list[float] = []
                if mark.stop is None:
                    tops = [to_device.map(QPointF(mark.start, height)).y() for height in heights]
                    self._point(painter, mark, left, tops, view)
                else:
                    self._stretch(painter, mark, left, right, view)
                if self._labels and mark.label:
                    labels.append((mark, 0.5 * (left + right), tops))
            for mark, plate in self._placed(labels, QFontMetricsF(painter.font()), view):
                self._plates.append((to_plot.mapRect(plate), mark))
                self._write(painter, mark, plate)
        finally:
            painter.restore()

    def _point(self, painter: QPainter, mark: Mark, x: float, tops: list[float], view: QRectF) -> None:
        painter.setPen(self._pen(mark))
        painter.drawLine(QPointF(x, view.top()), QPointF(x, view.bottom()))
        painter.setPen(QPen(self._colour, 1.5))
        painter.setBrush(self._colour if mark.chosen else self._paper)
        for y in tops:
            reach = DIAMOND_PX + (1 if mark.chosen else 0)
            corners = ((0.0, -reach), (reach, 0.0), (0.0, reach), (-reach, 0.0))
            painter.drawPolygon(QPolygonF([QPointF(x + right, y + down) for right, down in corners]))

    def _stretch(self, painter: QPainter, mark: Mark, left: float, right: float, view: QRectF) -> None:
        if not mark.quiet:
            fill = QColor(self._colour)
            fill.setAlphaF(0.16 if mark.chosen else 0.08)
            painter.fillRect(QRectF(left, view.top(), right - left, view.height()), fill)
            painter.setPen(self._pen(mark))
            for x in (left, right):
                painter.drawLine(QPointF(x, view.top()), QPointF(x, view.bottom()))
            painter.drawLine(QPointF(left, view.bottom() - 1), QPointF(right, view.bottom() - 1))
        if mark.fixed:
            return
        colour = self.band_colour if mark.quiet else self._colour
        painter.setPen(QPen(colour, 2.5 if mark.chosen else 1.5))
        middle = view.center().y()
        for x, inward in ((left, 1.0), (right, -1.0)):
            top, low = QPointF(x, middle - _BRACKET_PX), QPointF(x, middle + _BRACKET_PX)
            foot = QPointF(inward * _FOOT_PX, 0.0)
            painter.drawPolyline(QPolygonF([top + foot, top, low, low + foot]))

    def _pen(self, mark: Mark) -> QPen:
        colour = QColor(self._colour)
        colour.setAlphaF(0.95 if mark.chosen else 0.7)
        style = Qt.PenStyle.DashLine if mark.fixed else Qt.PenStyle.SolidLine
        return QPen(colour, 1.5 if mark.chosen else 1.0, style)

    def _placed(
        self, labels: list[tuple[Mark, float, list[float]]], metrics: QFontMetricsF, view: QRectF
    ) -> list[tuple[Mark, QRectF]]:
        """Where each label stands, in the order of painting; from the left, so that choosing moves none."""
        room, taken = view.adjusted(0, 0, 0, -self._foot_px), dict[int, QRectF]()
        for at in sorted(range(len(labels)), key=lambda place: labels[place][0].start):
            mark, x, tops = labels[at]
            size = metrics.horizontalAdvance(_short(mark, metrics)) + 10, metrics.height() + 2
            taken[at] = beside(plate_of(x, size, tops, room), list(taken.values()), room)
        return [(labels[at][0], taken[at]) for at in range(len(labels))]

    def _write(self, painter: QPainter, mark: Mark, plate: QRectF) -> None:
        painter.setPen(QPen(self._colour, 1))
        painter.setBrush(self._colour if mark.chosen else self._paper)
        painter.drawRoundedRect(plate, 3, 3)
        painter.setPen(self._paper if mark.chosen else self._ink)
        text = _short(mark, QFontMetricsF(painter.font()))
        painter.drawText(plate, Qt.AlignmentFlag.AlignCenter, text)


def _short(mark: Mark, metrics: QFontMetricsF) -> str:
    return metrics.elidedText(mark.label, Qt.TextElideMode.ElideRight, _MOST_LABEL_PX)


def beside(plate: QRectF, others: list[QRectF], view: QRectF) -> QRectF:
    """A label that would cover others, a row further into the plot, or two; where it was if there is no room.

    Parameters
    ----------
    plate : QRectF
        Where it would stand, in pixels.
    others : list of QRectF
        Labels that are placed.
    view : QRectF
        The plot.
    """
    row_px = (plate.height() + 1.0) * (-1.0 if plate.center().y() > view.center().y() else 1.0)
    moved = QRectF(plate)
    while view.contains(moved):
        if not any(moved.intersects(other) for other in others):
            return moved
        moved.translate(0.0, row_px)
    return plate


def plate_of(x: float, size: tuple[float, float], tops: list[float], view: QRectF) -> QRectF:
    """Where a label stands: at the foot of the plot, or at its head where the foot alone hides a sample.

    Parameters
    ----------
    x : float
        Where its middle would be best, in pixels.
    size : tuple of float
        Its width and height.
    tops : list of float
        Heights of the samples that it belongs to, in pixels from the top.
    view : QRectF
        The plot; the label stays inside.
    """
    width, height = size
    left = min(max(x - width / 2, view.left() + 1), view.right() - width - 1)
    foot = QRectF(left, view.bottom() - height - 3, width, height)
    head = QRectF(left, view.top() + 3, width, height)

    def hides(plate: QRectF) -> bool:
        return any(plate.top() - DIAMOND_PX <= y <= plate.bottom() + DIAMOND_PX for y in tops)

    return head if hides(foot) and not hides(head) else foot
