"""Stretches of an axis that stand out: translucent and hatched, so that they survive a grey printer."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QBrush, QColor, QFontMetricsF, QPainter, QPen, QTransform
from PySide6.QtWidgets import QStyleOptionGraphicsItem, QWidget

from analysis.intervals import Interval
from app.drawing.over_all import OverAll

_JOIN_PX = 4.0


@dataclass(frozen=True, slots=True)
class Stretch:
    """One stretch to shade.

    Parameters
    ----------
    span : Interval
        In the axis's unit.
    strong : bool
        Chosen: shaded more, with firm edges.
    label : str
        Written at the top; empty for none.
    hatched : bool
        Whether it was found (hatched) or merely marked (plain).
    """

    span: Interval
    strong: bool = False
    label: str = ""
    hatched: bool = True


class BandItem(OverAll):
    """Stretches along x over the whole height of a view, or their labels.

    Shades and labels are two items, so that the labels can lie above what the shades lie under.

    Parameters
    ----------
    labels : bool
        Draw the labels alone instead of the shades.
    hatch : Qt.BrushStyle
        How found stretches are hatched: two items over each other need two ways.
    least_px : float
        No stretch is drawn narrower than this, or it could not be seen in a long record.
    """

    def __init__(
        self,
        labels: bool = False,
        least_px: float = 3.0,
        hatch: Qt.BrushStyle = Qt.BrushStyle.BDiagPattern,
    ) -> None:
        super().__init__()
        self._hatch = hatch
        self._labels = labels
        self._least_px = least_px
        self._stretches: tuple[Stretch, ...] = ()

    def show_stretches(self, stretches: tuple[Stretch, ...]) -> None:
        """Shade these from now on."""
        if stretches != self._stretches:
            self._stretches = stretches
            self.update()

    def paint(
        self, painter: QPainter, option: QStyleOptionGraphicsItem, widget: QWidget | None = None
    ) -> None:
        """Shade in device pixels, so that the hatching keeps its slope at every zoom."""
        to_device = painter.worldTransform()
        view = to_device.mapRect(self.shown_rect())
        painter.save()
        try:
            painter.setWorldTransform(QTransform())
            painter.setClipRect(view)
            row_end_px: list[float] = []
            for stretch, box in self._boxes(to_device, view):
                if not self._labels:
                    self._shade(painter, stretch, box)
                elif stretch.label:
                    self._write(painter, stretch, box, view, row_end_px)
        finally:
            painter.restore()

    def _boxes(self, to_device: QTransform, view: QRectF) -> list[tuple[Stretch, QRectF]]:
        """What is in view, in device pixels; stretches that would run into each other are drawn as one."""
        boxes: list[tuple[Stretch, QRectF]] = []
        for stretch in self._stretches:
            box = self._device_box(stretch, to_device, view)
            if box.right() < view.left() or box.left() > view.right():
                continue
            if boxes and not stretch.label:
                last, before = boxes[-1]
                if last.strong == stretch.strong and abs(box.left() - before.right()) <= _JOIN_PX:
                    before.setRight(max(box.right(), before.right()))
                    continue
            boxes.append((stretch, box))
        return boxes

    def _device_box(self, stretch: Stretch, to_device: QTransform, view: QRectF) -> QRectF:
        left = to_device.map(QPointF(stretch.span.start, 0.0)).x()
        right = to_device.map(QPointF(stretch.span.stop, 0.0)).x()
        if right - left < self._least_px:
            middle = 0.5 * (left + right)
            left, right = middle - 0.5 * self._least_px, middle + 0.5 * self._least_px
        return QRectF(left, view.top(), right - left, view.height())

    def _shade(self, painter: QPainter, stretch: Stretch, box: QRectF) -> None:
        fill = QColor(self._colour)
        fill.setAlphaF(0.2 if stretch.strong else 0.12)
        painter.fillRect(box, fill)
        if stretch.hatched and box.width() >= 5:
            hatch = QColor(self._colour)
            hatch.setAlphaF(0.38 if stretch.strong else 0.26)
            painter.fillRect(box, QBrush(hatch, self._hatch))
        edge = QColor(self._colour)
        edge.setAlphaF(0.95 if stretch.strong else 0.4)
        painter.setPen(QPen(edge, 1))
        painter.drawLine(box.topLeft(), box.bottomLeft())
        painter.drawLine(box.topRight(), box.bottomRight())

    def _write(
        self, painter: QPainter, stretch: Stretch, box: QRectF, view: QRectF, row_end_px: list[float]
    ) -> None:
        """Write the label centred on the stretch, inside the view, in the first row where it fits."""
        metrics = QFontMetricsF(painter.font())
        width = metrics.horizontalAdvance(stretch.label) + 12
        left = min(max(box.center().x() - width / 2, view.left() + 2), view.right() - width - 2)
        row = next((i for i, end in enumerate(row_end_px) if left > end + 4), len(row_end_px))
        row_end_px[row : row + 1] = [left + width]
        plate = QRectF(left, view.top() + 3 + row * (metrics.height() + 5), width, metrics.height() + 3)
        ground = QColor(self._paper)
        ground.setAlphaF(0.92)
        painter.setPen(QPen(self._colour, 1))
        painter.setBrush(ground)
        painter.drawRoundedRect(plate, 4, 4)
        painter.setPen(self._ink)
        painter.drawText(plate, Qt.AlignmentFlag.AlignCenter, stretch.label)
