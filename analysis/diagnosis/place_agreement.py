"""Whether the crossings of a stretch that broke up began and ended to break up at the same places.

The odds of a place count a crossing once, however much of the stretch broke up. A burst of openings that
comes by chance begins where the arm happens to be and lasts as long as it likes; a bad spot begins and ends
where the track does it, at any speed and from either side. With two or three crossings that is the best
evidence that there is.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from analysis.signals.roughness import BIN_PERCENT

MOST_AGREEMENT = 4.0
"""Log odds that agreement may add."""

MOST_ROWS = 48
"""Crossings that are asked; more agree no better."""

NEAR_PERCENT = 14.0
"""How far from the stretch a burst may begin or end."""

APART = 1 / 3
"""Share of the stretch, and 1 % of travel at least, that may be clean within one burst."""

JITTER = 0.12
"""Share of a bad spot's width by which a crossing misses its edge, and one bin at least..."""

ASTRAY = 0.2
"""...but this share of crossings miss it by anything up to the width."""

LENGTHS = float(np.log(15.0 / BIN_PERCENT))
"""Bursts by chance are as likely to last for one bin as for two to three, up to 15 % of travel."""


def agreement(broken: NDArray[np.bool_], first: int, last: int) -> float:
    """Log likelihood ratio of "the same edges each time" against "wherever a burst happened to be".

    Parameters
    ----------
    broken : ndarray of bool, shape (n_crossings, n_bins)
        Where each crossing that broke up in the stretch did so.
    first, last : int
        Bins ``[first, last)`` of the stretch.

    Returns
    -------
    float
        0 to `MOST_AGREEMENT`; 0 with fewer than two crossings, or where they do not agree.
    """
    low = max(first - round(NEAR_PERCENT / BIN_PERCENT), 0)
    near = broken[:: -(-len(broken) // MOST_ROWS) or 1, low : last + round(NEAR_PERCENT / BIN_PERCENT)]
    bursts = [burst for row in near if (burst := _burst(row, first - low, last - low)) is not None]
    if len(bursts) < 2:
        return 0.0
    edges = np.array(bursts, dtype=np.float64)
    usual = np.median(edges, axis=0)
    width, length = usual[1] - usual[0], edges[:, 1] - edges[:, 0]
    by_chance = -np.log((width + length) * length * LENGTHS)
    ratio = _edge_chances(np.abs(edges - usual), float(width)).sum(axis=1) - by_chance
    # The edges were taken from the crossings themselves: one of them says nothing new.
    told = float(ratio.sum()) * (len(edges) - 1) / len(edges)
    return float(np.clip(told, 0.0, MOST_AGREEMENT))


def _burst(row: NDArray[np.bool_], first: int, last: int) -> tuple[int, int] | None:
    """Bins ``[begin, end)`` of the burst of one crossing that touches the stretch."""
    marks = np.flatnonzero(row)
    if not len(marks):
        return None
    apart = max(round(1.0 / BIN_PERCENT), round(APART * (last - first)))
    parts = np.split(marks, np.flatnonzero(np.diff(marks) > apart) + 1)
    touching = [part for part in parts if part[-1] >= first - 1 and part[0] <= last]
    return (int(touching[0][0]), int(touching[-1][-1]) + 1) if touching else None


def _edge_chances(missed: NDArray[np.float64], width: float) -> NDArray[np.float64]:
    """Log probability that a bad spot's crossing misses each edge by so many bins."""
    scale, widest = max(1.0, JITTER * width), max(width, 4.0)
    close = (1.0 - ASTRAY) * np.exp(-missed / scale) / (2.0 * scale)
    astray = ASTRAY / (2.0 * widest) * (missed < 2.0 * width + 2.0)
    return np.asarray(np.log(close + astray + 1e-4))
