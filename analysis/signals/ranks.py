"""Departures brought to a few levels, so that those of one place can be ranked among those of all.

What stays below the floor says nothing by itself: noise goes as far now and then. That every crossing goes
further at one place than it does anywhere else says something, however low the level.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

LEVELS = tuple(0.35 * 1.2**step for step in range(16))
"""Departures as shares of the floor, from what most cells stay below to five times the floor."""

MOST_RANKED = 64
"""Crossings of a track up to which departures are ranked; more show a place by their number."""


def levels_of(departure: NDArray[np.float32], floor: NDArray[np.float32]) -> NDArray[np.int8]:
    """Highest of `LEVELS` that each departure reaches.

    Parameters
    ----------
    departure, floor : ndarray, shape (n,)
        In % of the feed; the floor is positive, a departure may be NaN, which reaches none.

    Returns
    -------
    ndarray of int8, shape (n,)
        -1 where none is reached.
    """
    shares = np.nan_to_num(departure) / floor
    reached = np.searchsorted(np.asarray(LEVELS, dtype=np.float32), shares, side="right")
    return np.asarray(reached - 1, dtype=np.int8)


def worst_levels(level: NDArray[np.int8], flat: NDArray[np.int64], size: int) -> NDArray[np.int8]:
    """Highest level in each of `size` places, -1 where none; `flat` is the place of each cell."""
    worst = np.full(size, -1, dtype=np.int8)
    some = np.flatnonzero(level >= 0)
    np.maximum.at(worst, flat[some], level[some])
    return worst


def level_counts(level: NDArray[np.int8], bins: NDArray[np.int64], count: int) -> NDArray[np.int64]:
    """Cells at each level in each of `count` bins, shape (count, n_levels); `bins` says each cell's."""
    some = np.flatnonzero(level >= 0)
    flat = bins[some] * len(LEVELS) + level[some]
    return np.bincount(flat, minlength=count * len(LEVELS)).reshape(count, len(LEVELS))
