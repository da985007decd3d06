"""A channel drawn from its extremes: one upright stroke a pixel column, or the samples joined."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from math import ceil, floor
from typing import cast

import numpy as np
import shiboken6
from numpy.typing import NDArray
from PySide6.QtCore import QLineF, QRect, QRectF, Qt
from PySide6.QtGui import QBrush, QColor, QPainter, QPen, QTransform
from PySide6.QtWidgets import QStyleOptionGraphicsItem, QWidget

from analysis.captures.model import Channel, Record
from analysis.errors import CaptureError
from app.drawing.bars import bars, merged, strokes
from app.drawing.canvas import Drawing
from app.drawing.dots import Dots
from app.drawing.envelopes import Columns, columns
from app.drawing.held import HeldSource

_LEAST_PX = 2.0
"""A steady channel is a line of this thickness: strokes one pixel wide and this tall."""

_JOINED_PX = 1.8
"""Width of the line that joins single samples."""

_APART_PX = 8
"""Samples at least this far from each other are drawn as dots."""

_NO_STROKES, _NO_LINES, _NO_SAMPLES = np.empty((3, 0)), np.empty((0, 4)), np.empty((0, 2))


def joined(samples: NDArray[np.float64]) -> NDArray[np.float64]:
    """Lines from sample to sample, but none to one that is missing.

    Parameters
    ----------
    samples : ndarray, shape (n, 2)
        Seconds and volts; NaN where missing.

    Returns
    -------
    ndarray, shape (n_lines, 4)
        ``x1, y1, x2, y2``; empty for fewer than two samples.
    """
    lines = np.column_stack((samples[:-1], samples[1:]))
    return lines[np.isfinite(lines).all(axis=1)]


def _on_device(places: NDArray[np.float64], at: QTransform) -> NDArray[np.float64]:
    """The same points, or lines from point to point, in pixels, if the transform neither turns nor shears."""
    device = np.empty(places.shape)
    for column in range(places.shape[1]):
        scale, shift = ((at.m11(), at.dx()), (at.m22(), at.dy()))[column % 2]
        np.multiply(places[:, column], scale, out=device[:, column])
        device[:, column] += shift
    return device


class EnvelopeItem(Drawing):
    """One channel of one record in a plot whose x is seconds and whose y is volts.

    Geometry is prepared once a frame, when the view has changed; `paint` only paints.

    Parameters
    ----------
    report : callable
        Told the error where the file turns out damaged or gone while it is drawn.
    """

    def __init__(self, report: Callable[[CaptureError], None]) -> None:
        super().__init__()
        self._report = report
        self._channel: Channel | None = None
        self._first_sample_s = 0.0
        self._interval_s = 1.0
        self._extent = QRectF()
        self._drawn: tuple[float, float, int, int] | None = None
        self._upright, self._lines, self._samples = _NO_STROKES, _NO_LINES, _NO_SAMPLES
        self._at = QTransform()
        self._runs: NDArray[np.int32] = np.empty((0, 4), dtype=np.int32)
        self._dots = Dots(QColor())
        self._ratio = 1.0
        self._pen = QPen()
        self._brush = QBrush()

    def show_channel(
        self, record: Record, channel: Channel, colour: QColor, extent_v: tuple[float, float]
    ) -> None:
        """Draw this channel from now on, inside a known range of volts."""
        self.prepareGeometryChange()
        self._channel = replace(channel, source=HeldSource(channel.source))
        self._first_sample_s, self._interval_s = record.first_sample_s, record.sample_interval_s
        low_v, high_v = extent_v
        self._extent = QRectF(record.first_sample_s, low_v, record.duration_s, high_v - low_v)
        self._drawn = None
        self.recolour(colour)

    @property
    def colour(self) -> QColor:
        """What it is drawn in."""
        return self._pen.color()

    def recolour(self, colour: QColor) -> None:
        """Draw in another colour."""
        self._pen, self._brush = QPen(colour, 1.0), QBrush(colour)
        self._pen.setCosmetic(True)
        self._dots = Dots(colour)
        self.update()

    def boundingRect(self) -> QRectF:
        """The record's duration by the channel's range."""
        return self._extent

    def viewTransformChanged(self) -> None:  # noqa: N802 - pyqtgraph's own name
        """Called by pyqtgraph once a frame, before it is painted, where the view or its size is another."""
        self.prepare()

    def prepare(self) -> None:
        """Fetch the extremes for what the view shows, unless they are at hand already."""
        view = self.plot_box()
        if view is None or self._channel is None or len(self._channel) == 0:
            return
        time, _ = view.shown()
        width_px, height_px = view.size_px()
        ratio = self._ratio = self.pixel_ratio()
        wanted = (time.start, time.stop, round(width_px), round(height_px * ratio))
        if wanted == self._drawn:
            return
        self._drawn = wanted
        first = floor((time.start - self._first_sample_s) / self._interval_s) - 1
        last = ceil((time.stop - self._first_sample_s) / self._interval_s) + 2
        # One column a pixel of what is shown, and one more, so that no pixel is left bare.
        count = int(width_px * ratio * (last - first) * self._interval_s / time.length) + 1
        try:
            extremes = columns(self._channel, first, last, count)
        except CaptureError as error:
            self._upright, self._lines, self._samples = _NO_STROKES, _NO_LINES, _NO_SAMPLES
            self._report(error)
        else:
            self._take(extremes, wanted[2])
        self.update()

    def _take(self, extremes: Columns, width_px: int) -> None:
        """Keep what is painted: strokes, or lines from sample to sample, with dots where there is room."""
        self._upright, self._lines, self._samples = _NO_STROKES, _NO_LINES, _NO_SAMPLES
        if not extremes.single:
            self._upright = strokes(extremes, self._first_sample_s, self._interval_s)
            self._settle(self.to_pixels())
            return
        time_s = self._first_sample_s + self._interval_s * extremes.index
        samples = np.column_stack((time_s, extremes.low_v))
        self._lines = joined(samples)
        if len(samples) * _APART_PX < width_px:
            self._samples = samples[np.isfinite(samples[:, 1])]

    def paint(
        self, painter: QPainter, option: QStyleOptionGraphicsItem, widget: QWidget | None = None
    ) -> None:
        """Draw the prepared strokes; dots on the samples where they lie far enough apart."""
        # Qt keeps the painter's state around each item.
        if self._upright.size:
            self._paint_bars(painter)
        elif len(self._lines) or len(self._samples):
            self._paint_joined(painter)

    def _settle(self, at: QTransform) -> None:
        """Work out the rectangles to fill under this transform to logical pixels.

        At once with the strokes, while all of it is in the processor's cache: after the axes are painted the
        same takes half as long again (measured).
        """
        self._at = at
        self._runs = np.ascontiguousarray(merged(bars(self._upright, at, self._ratio, _LEAST_PX)).T)

    def _paint_bars(self, painter: QPainter) -> None:
        if painter.worldTransform() != self._at:  # into a picture, say
            self._settle(painter.worldTransform())
        painter.setWorldTransform(QTransform.fromScale(1.0 / self._ratio, 1.0 / self._ratio))
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(self._brush)
        # The array's memory is a run of QRect; wrapping it spares building 2,000 objects a frame.
        runs = cast(QRect, shiboken6.wrapInstance(self._runs.ctypes.data, QRect))
        painter.drawRects(runs, len(self._runs))

    def _paint_joined(self, painter: QPainter) -> None:
        # In device pixels: under a stretched transform Qt strokes every line as a polygon, at five times
        # the cost.
        to_device = painter.worldTransform()
        lines = _on_device(self._lines, to_device)
        painter.setWorldTransform(QTransform())
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, len(self._samples) > 0)
        self._pen.setWidthF(_JOINED_PX * self._ratio)
        painter.setPen(self._pen)
        painter.drawLines(cast(QLineF, shiboken6.wrapInstance(lines.ctypes.data, QLineF)), len(lines))
        self._dots.paint(painter, _on_device(self._samples, to_device), self._ratio)
