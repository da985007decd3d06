"""Columns of extremes as upright strokes, one device pixel wide: the rectangles that Qt fills soonest."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray
from PySide6.QtGui import QTransform

from app.drawing.envelopes import Columns

_FAR_PX = 1e5
"""Further out nothing is drawn, and whole numbers of pixels are still exact."""

_DENSE_PX = 40
"""Of strokes at least this long on average, what two beside each other share is filled sooner at once: by a
sixth where spikes come back to the floor, by a third for noise; for short ones the sorting takes longer
(measured)."""


def strokes(extremes: Columns, first_sample_s: float, interval_s: float) -> NDArray[np.float64]:
    """Upright strokes that draw the columns without a gap.

    Parameters
    ----------
    extremes : Columns
        Of one channel.
    first_sample_s, interval_s : float
        Time of sample 0, and seconds between samples.

    Returns
    -------
    ndarray, shape (3, n)
        Seconds, and the lower and upper end in volts; NaN columns are left out. Each row in one piece: numpy
        works along it in a third of the time (measured).
    """
    made = np.empty((3, extremes.index.size))
    time_s, low_v, high_v = made
    np.multiply(extremes.index, interval_s, out=time_s)
    time_s += first_sample_s
    low_v[:1], high_v[:1] = extremes.low_v[:1], extremes.high_v[:1]
    # Each column reaches to its left neighbour's nearer extreme, so that a steep flank stays joined.
    np.fmin(extremes.low_v[1:], extremes.high_v[:-1], out=low_v[1:])
    np.fmax(extremes.high_v[1:], extremes.low_v[:-1], out=high_v[1:])
    return made if np.isfinite(extremes.low_v.sum()) else made[:, np.isfinite(extremes.low_v)]


def bars(
    upright: NDArray[np.float64], at: QTransform, ratio: float, least_px: float = 1.0
) -> NDArray[np.int32]:
    """Upright strokes as runs of whole device pixels.

    Qt fills such a run in two thirds of the time that it takes for a line of one pixel's width (measured).

    Parameters
    ----------
    upright : ndarray, shape (3, n)
        Of `strokes`.
    at : QTransform
        From seconds and volts to logical pixels; it neither turns nor shears.
    ratio : float
        Device pixels a logical pixel.
    least_px : float
        Each is at least this high, in logical pixels, or a steady channel would be hard to see.

    Returns
    -------
    ndarray of int32, shape (4, n)
        Left, top, right and bottom, the last two within.
    """
    runs = np.empty((4, upright.shape[1]), dtype=np.int32)
    left = upright[0] * (ratio * at.m11())
    left += ratio * at.dx()
    runs[0] = runs[2] = np.floor(left, out=left)
    ends = upright[1:] * (ratio * at.m22())
    ends += ratio * at.dy()
    np.rint(ends, out=ends)
    np.maximum(ends, -_FAR_PX, out=ends)
    np.minimum(ends, _FAR_PX, out=ends)
    runs[3], runs[1] = ends
    runs[3] -= 1
    least = round(least_px * ratio)
    np.maximum(runs[3], runs[1] + (least // 2 - 1), out=runs[3])
    np.minimum(runs[1], runs[3] - (least - 1), out=runs[1])
    return runs


def merged(runs: NDArray[np.int32]) -> NDArray[np.int32]:
    """The same pixels by fewer rows: what two strokes beside each other share is one rectangle.

    Parameters
    ----------
    runs : ndarray of int32, shape (4, n)
        Of `bars`, from left to right.

    Returns
    -------
    ndarray of int32, shape (4, m)
        Left, top, right and bottom, the last two within; without a row where bottom is above top. The runs
        themselves where they are short, or two that belong together lie apart.
    """
    if runs.shape[1] < 2 or int((runs[3] - runs[1]).sum()) < _DENSE_PX * runs.shape[1]:
        return runs
    count = runs.shape[1] // 2
    pairs = runs[:, : 2 * count].reshape(4, count, 2)
    first, second = pairs[:, :, 0], pairs[:, :, 1]
    low, high = np.maximum(first[1], second[1]), np.minimum(first[3], second[3])
    if int((second[0] - first[0]).max()) > 1 or int((low - high).max()) > 1:
        return runs
    made = np.empty((4, 3 * count + runs.shape[1] % 2), dtype=np.int32)
    made[:, 3 * count :] = runs[:, 2 * count :]
    shared, above, below = (made[:, part * count : (part + 1) * count] for part in range(3))
    shared[0], shared[1], shared[2], shared[3] = first[0], low, second[0], high
    above[0] = above[2] = np.where(first[1] < second[1], first[0], second[0])
    np.minimum(first[1], second[1], out=above[1])
    np.subtract(low, 1, out=above[3])
    below[0] = below[2] = np.where(first[3] > second[3], first[0], second[0])
    np.add(high, 1, out=below[1])
    np.maximum(first[3], second[3], out=below[3])
    return made
