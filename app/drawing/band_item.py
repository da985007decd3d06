"""Stretches of an axis that stand out: translucent and hatched, so that they survive a grey printer."""

from __future__ import annotations

import re
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import QLineF, QRectF, Qt
from PySide6.QtGui import QBrush, QColor, QFontMetricsF, QPainter, QPen, QTransform
from PySide6.QtWidgets import QStyleOptionGraphicsItem, QWidget

from analysis.intervals import Interval
from app.drawing.over_all import OverAll

_JOIN_PX = 4.0
_PART = " · "
_ODDS = re.compile(r" \([^()]*\)$")
_LEAST_HATCHED_PX = 5.0


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
    pale : bool
        Another one is singled out: no more than an outline.
    """

    span: Interval
    strong: bool = False
    label: str = ""
    hatched: bool = True
    pale: bool = False


def runs_px(
    spans: NDArray[np.float64], at: QTransform, view: QRectF, *, least_px: float, apart: bool
) -> list[tuple[float, float]]:
    """What is in view, in device pixels; what would run into each other as one, unless it is kept apart.

    Parameters
    ----------
    spans : ndarray, shape (n_spans, 2)
        Beginnings, in rising order, and ends.
    at : QTransform
        To the device.
    view : QRectF
        In device pixels.
    least_px : float
        None is narrower.
    apart : bool
        Join none.
    """
    ends = spans * at.m11() + at.dx()
    middle, half = ends.mean(axis=1), 0.5 * np.maximum(ends[:, 1] - ends[:, 0], least_px)
    left, right = middle - half, middle + half
    seen = (right >= view.left()) & (left <= view.right())
    left, right = left[seen], right[seen]
    if not apart and left.size:
        reach = np.maximum.accumulate(right)
        first = np.flatnonzero(np.concatenate([[True], left[1:] - reach[:-1] > _JOIN_PX]))
        left, right = left[first], reach[np.append(first[1:], left.size) - 1]
    return list(zip(left.tolist(), right.tolist(), strict=True))


def label_in(label: str, room_px: float, metrics: QFontMetricsF) -> str:
    """What of a label fits: where it is stays, then what was said of it, and the parts between go.

    Before any part goes, the odds do that stand behind words which say how likely it is.
    """
    parts = label.split(_PART)
    if metrics.horizontalAdvance(label) > room_px:
        parts = [_ODDS.sub("", part) for part in parts]
    while len(parts) > 1 and metrics.horizontalAdvance(_PART.join(parts)) > room_px:
        del parts[-2 if len(parts) > 2 else -1]
    return _PART.join(parts)


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
        self._kinds: dict[tuple[bool, bool, bool], NDArray[np.float64]] = {}
        self._apart = False

    def show_stretches(self, stretches: tuple[Stretch, ...]) -> None:
        """Shade these from now on."""
        if stretches == self._stretches:
            return
        self._stretches = stretches
        kinds: dict[tuple[bool, bool, bool], list[Stretch]] = {}
        for item in sorted(stretches, key=lambda item: item.span.start):
            kinds.setdefault((not item.pale, item.strong, item.hatched), []).append(item)
        self._kinds = {
            kind: np.array([[item.span.start, item.span.stop] for item in items])
            for kind, items in sorted(kinds.items())  # the strong ones over the others, these over pale ones
        }
        self._apart = any(item.label for item in stretches)
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
            if self._labels:
                self._write_all(painter, to_device, view)
                return
            for (plain, strong, hatched), spans in self._kinds.items():
                runs = runs_px(spans, to_device, view, least_px=self._least_px, apart=self._apart)
                boxes = [QRectF(left, view.top(), right - left, view.height()) for left, right in runs]
                if plain:
                    self._shade(painter, boxes, strong, hatched)
                else:
                    self._outline(painter, boxes)
        finally:
            painter.restore()

    def _shade(self, painter: QPainter, boxes: list[QRectF], strong: bool, hatched: bool) -> None:
        """Fill, hatching and edges of boxes of one kind, each in one call for all of them."""
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(self._tinted(0.2 if strong else 0.12))
        painter.drawRects(boxes)
        wide = [box for box in boxes if hatched and box.width() >= _LEAST_HATCHED_PX]
        if wide:
            painter.setBrush(QBrush(self._tinted(0.38 if strong else 0.26), self._hatch))
            painter.drawRects(wide)
        self._edge(painter, boxes, 0.95 if strong else 0.4)

    def _outline(self, painter: QPainter, boxes: list[QRectF]) -> None:
        """No more than can be seen beside one that is singled out."""
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(self._tinted(0.06))
        painter.drawRects(boxes)
        self._edge(painter, boxes, 0.3)

    def _edge(self, painter: QPainter, boxes: list[QRectF], share: float) -> None:
        painter.setPen(QPen(self._tinted(share), 1))
        edges = ((box.left(), box.right()) for box in boxes)
        top, bottom = (boxes[0].top(), boxes[0].bottom()) if boxes else (0.0, 0.0)
        painter.drawLines([QLineF(x, top, x, bottom) for pair in edges for x in pair])

    def _tinted(self, share: float) -> QColor:
        colour = QColor(self._colour)
        colour.setAlphaF(share)
        return colour

    def _write_all(self, painter: QPainter, to_device: QTransform, view: QRectF) -> None:
        row_end_px: list[float] = []
        for stretch in self._stretches:
            span = np.array([[stretch.span.start, stretch.span.stop]])
            for left, right in runs_px(span, to_device, view, least_px=self._least_px, apart=True):
                if stretch.label:
                    box = QRectF(left, view.top(), right - left, view.height())
                    self._write(painter, stretch, box, view, row_end_px)

    def _write(
        self, painter: QPainter, stretch: Stretch, box: QRectF, view: QRectF, row_end_px: list[float]
    ) -> None:
        """Write the label centred on the stretch, inside the view, in the first row where it fits."""
        metrics = QFontMetricsF(painter.font())
        label = label_in(stretch.label, view.width() - 16, metrics)
        width = metrics.horizontalAdvance(label) + 12
        left = min(max(box.center().x() - width / 2, view.left() + 2), view.right() - width - 2)
        row = next((i for i, end in enumerate(row_end_px) if left > end + 4), len(row_end_px))
        row_end_px[row : row + 1] = [left + width]
        top = view.top() + 3 + row * (metrics.height() + 5)
        # On whole pixels and smoothed: else its round corners are two broken lines each.
        plate = QRectF(round(left) + 0.5, round(top) + 0.5, round(width), round(metrics.height() + 3))
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        ground = QColor(self._paper)
        ground.setAlphaF(0.92)
        painter.setPen(QPen(self._colour, 1))
        painter.setBrush(ground)
        painter.drawRoundedRect(plate, 4, 4)
        painter.setPen(self._ink)
        painter.drawText(plate, Qt.AlignmentFlag.AlignCenter, label)
