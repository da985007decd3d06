"""A channel drawn from its extremes: one upright stroke a pixel column, or the samples joined."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from typing import cast

import numpy as np
import shiboken6
from numpy.typing import NDArray
from PySide6.QtCore import QLineF, QRect, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPen, QTransform
from PySide6.QtWidgets import QStyleOptionGraphicsItem, QWidget

from analysis.captures.model import Channel, Record
from analysis.errors import CaptureError
from app.drawing.bars import bars, merged
from app.drawing.canvas import Drawing
from app.drawing.dots import Dots
from app.drawing.envelopes import Columns, columns
from app.drawing.held import HeldSource

_LEAST_STROKE_PX = 2.0
"""A steady channel is a line of this thickness: strokes one pixel wide and this tall."""

_JOINED_PX = 1.8
"""Width of the line that joins single samples."""

_APART_PX = 8
"""Samples at least this far from each other are drawn as dots."""


def strokes(
    extremes: Columns, first_sample_s: float, interval_s: float, least_v: float = 0.0
) -> NDArray[np.float64]:
    """Line segments that draw the columns without a gap.

    Parameters
    ----------
    extremes : Columns
        Of one channel.
    first_sample_s, interval_s : float
        Time of sample 0, and seconds between samples.
    least_v : float
        An upright stroke is at least this long, or a steady channel would be drawn as a dotted line.

    Returns
    -------
    ndarray, shape (n_segments, 4)
        ``x1, y1, x2, y2`` in seconds and volts; NaN columns are left out, empty for no columns.
    """
    time_s = first_sample_s + interval_s * extremes.index
    if extremes.single:
        return _lines(time_s[:-1], extremes.low_v[:-1], time_s[1:], extremes.low_v[1:])
    # Each column reaches to its left neighbour's nearer extreme, so that a steep flank stays joined.
    low_v, high_v = extremes.low_v.copy(), extremes.high_v.copy()
    np.fmin(low_v[1:], extremes.high_v[:-1], out=low_v[1:])
    np.fmax(high_v[1:], extremes.low_v[:-1], out=high_v[1:])
    short_v = np.maximum(least_v - (high_v - low_v), 0.0) / 2
    return _lines(time_s, low_v - short_v, time_s, high_v + short_v)


def _lines(*ends: NDArray[np.float64]) -> NDArray[np.float64]:
    """Four arrays as the rows of one, those left out that hold a missing value.

    Each stays in one piece: numpy's broadcasts along rows of four take a tenth of a frame longer (measured).
    """
    lines = np.empty((len(ends), ends[0].size))
    for place, end in enumerate(ends):
        lines[place] = end
    return lines.T if np.isfinite(lines.sum()) else lines[:, np.isfinite(lines).all(axis=0)].T


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
        self._lines: NDArray[np.float64] = np.empty((0, 4))
        self._samples: NDArray[np.float64] = np.empty((0, 2))
        self._dots = Dots(QColor())
        self._upright = False
        self._ratio = 1.0
        self._pen = QPen()

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
        self._pen = QPen(colour, 1.0)
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
        time, volts = view.shown()
        width_px, height_px = view.size_px()
        ratio = self._ratio = self.pixel_ratio()
        wanted = (time.start, time.stop, round(width_px), round(height_px * ratio))
        if wanted == self._drawn:
            return
        self._drawn = wanted
        thick_v = _LEAST_STROKE_PX * volts.length / height_px
        first = int(np.floor((time.start - self._first_sample_s) / self._interval_s)) - 1
        last = int(np.ceil((time.stop - self._first_sample_s) / self._interval_s)) + 2
        # One column a pixel of what is shown, and one more, so that no pixel is left bare.
        count = int(width_px * ratio * (last - first) * self._interval_s / time.length) + 1
        try:
            extremes = columns(self._channel, first, last, count)
        except CaptureError as error:
            self._lines, self._samples = np.empty((0, 4)), np.empty((0, 2))
            self._report(error)
        else:
            self._lines = strokes(extremes, self._first_sample_s, self._interval_s, thick_v)
            self._upright = not extremes.single
            self._pen.setWidthF(_JOINED_PX * ratio if extremes.single else 1.0)
            apart = extremes.single and extremes.index.size * _APART_PX < wanted[2]
            self._samples = self._samples_of(extremes) if apart else np.empty((0, 2))
        self.update()

    def _samples_of(self, extremes: Columns) -> NDArray[np.float64]:
        """Seconds and volts of each sample that is there, where every column is one."""
        time_s = self._first_sample_s + self._interval_s * extremes.index
        samples = np.column_stack((time_s, extremes.low_v))
        return samples[np.isfinite(extremes.low_v)]

    def paint(
        self, painter: QPainter, option: QStyleOptionGraphicsItem, widget: QWidget | None = None
    ) -> None:
        """Draw the prepared strokes; dots on the samples where they lie far enough apart."""
        if not len(self._lines) and not len(self._samples):
            return
        painter.save()
        try:
            if self._upright:
                self._paint_bars(painter)
            else:
                self._paint_joined(painter)
        finally:
            painter.restore()

    def _paint_bars(self, painter: QPainter) -> None:
        at, ratio = painter.worldTransform(), self._ratio
        runs = merged(bars(self._lines, at, ratio))
        painter.setWorldTransform(QTransform.fromScale(1.0 / ratio, 1.0 / ratio))
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(self._pen.color())
        # The array's memory is a run of QRect; wrapping it spares building 2,000 objects a frame.
        painter.drawRects(cast(QRect, shiboken6.wrapInstance(runs.ctypes.data, QRect)), len(runs))

    def _paint_joined(self, painter: QPainter) -> None:
        # In device pixels: under a stretched transform Qt strokes every line as a polygon, at five times
        # the cost.
        to_device = painter.worldTransform()
        lines = _on_device(self._lines, to_device)
        painter.setWorldTransform(QTransform())
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, len(self._samples) > 0)
        painter.setPen(self._pen)
        painter.drawLines(cast(QLineF, shiboken6.wrapInstance(lines.ctypes.data, QLineF)), len(lines))
        self._dots.paint(painter, _on_device(self._samples, to_device), self._ratio)
