"""Upright strokes of one pixel's width as the rectangles that Qt fills soonest."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray
from PySide6.QtGui import QTransform

_FAR_PX = 1e5
"""Further out nothing is drawn, and whole numbers of pixels are still exact."""

_DENSE_PX = 40
"""Of strokes at least this long on average, what two beside each other share is filled sooner at once: by a
sixth where spikes come back to the floor, by a third for noise; for short ones the sorting takes longer
(measured)."""


def bars(lines: NDArray[np.float64], at: QTransform, ratio: float) -> NDArray[np.int32]:
    """Upright strokes as runs of whole device pixels: left, top, right and bottom, the last two within.

    Qt fills such a run in two thirds of the time that it takes for a line of one pixel's width (measured).
    """
    runs = np.empty((len(lines), 4), dtype=np.int32)
    left = lines[:, 0] * (ratio * at.m11()) + ratio * at.dx()
    low, high = (lines[:, place] * (ratio * at.m22()) + ratio * at.dy() for place in (1, 3))
    runs[:, 0] = runs[:, 2] = np.floor(left, out=left)
    runs[:, 1] = np.clip(np.rint(high, out=high), -_FAR_PX, _FAR_PX)
    runs[:, 3] = np.clip(np.rint(low, out=low) - 1.0, -_FAR_PX, _FAR_PX)
    return runs


def merged(runs: NDArray[np.int32]) -> NDArray[np.int32]:
    """The same pixels by fewer rows: what two strokes beside each other share is one rectangle.

    Parameters
    ----------
    runs : ndarray of int32, shape (n, 4)
        Of `bars`, from left to right.

    Returns
    -------
    ndarray of int32, shape (m, 4)
        Left, top, right and bottom, the last two within; without a row where bottom is above top. The runs
        themselves where they are short, or two that belong together lie apart.
    """
    count = len(runs) // 2
    if int((runs[:, 3] - runs[:, 1]).sum()) < _DENSE_PX * len(runs) or count == 0:
        return runs
    first, second = runs[0 : 2 * count : 2], runs[1 : 2 * count : 2]
    top, bottom = np.maximum(first[:, 1], second[:, 1]), np.minimum(first[:, 3], second[:, 3])
    if int((second[:, 0] - first[:, 0]).max()) > 1 or int((top - bottom).max()) > 1:
        return runs
    shared = np.column_stack((first[:, 0], top, second[:, 0], bottom))
    above, below = shared.copy(), shared.copy()
    above[:, 0] = above[:, 2] = np.where(first[:, 1] < second[:, 1], first[:, 0], second[:, 0])
    above[:, 1], above[:, 3] = np.minimum(first[:, 1], second[:, 1]), top - 1
    below[:, 0] = below[:, 2] = np.where(first[:, 3] > second[:, 3], first[:, 0], second[:, 0])
    below[:, 1], below[:, 3] = bottom + 1, np.maximum(first[:, 3], second[:, 3])
    return np.concatenate((shared, above, below, runs[2 * count :]))
