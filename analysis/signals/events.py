"""Disturbances in time: where each begins and ends, how deep it goes, where the arm was, who shares it."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from analysis.intervals import Interval
from analysis.signals.motion import Motion
from analysis.signals.steadiness import Steadiness

JOINED_S = 0.005
"""Disturbances no further apart than this are one: a contact that chatters opens several times in it."""


@dataclass(frozen=True, slots=True)
class Disturbance:
    """One disturbance of one channel or of the travel.

    Parameters
    ----------
    first, last : int
        First and last disturbed cell, both included.
    time : Interval
        Begin and end, in seconds.
    above, below : float
        Largest departure upwards and downwards, both non-negative, in the unit of the series.
    cells : int
        Disturbed cells, those between joined stretches left out.
    travel_percent : float
        Where the arm was when it began; NaN where that is not known.
    """

    first: int
    last: int
    time: Interval
    above: float
    below: float
    cells: int
    travel_percent: float

    @property
    def depth(self) -> float:
        """The larger departure with its sign: negative is downwards."""
        return self.above if self.above > self.below else -self.below

    @property
    def shape(self) -> str:
        """``"drop"``, ``"rise"`` or ``"ringing"`` (both ways alike)."""
        if min(self.above, self.below) > 0.4 * max(self.above, self.below):
            return "ringing"
        return "rise" if self.above > self.below else "drop"


def travel_disturbances(
    motion: Motion, excess_percent: NDArray[np.float32], *, cell_s: float
) -> tuple[Disturbance, ...]:
    """Break-ups of one record, wherever the arm was, in order of time.

    Parameters
    ----------
    motion : Motion
    excess_percent : ndarray, shape (n_cells,)
        Departure beyond the floor, in % of the feed.
    cell_s : float
        Length of a cell, in seconds.

    Returns
    -------
    tuple of Disturbance
        In % of the feed.
    """
    start_s = float(motion.path.time_s[0]) - 0.5 * _node_s(motion.path.time_s)
    return _group(excess_percent > 0, motion.above, motion.below, cell_s, start_s, motion.travel_percent)


def channel_disturbances(
    steady: Steadiness, *, cell_s: float, start_s: float, travel_percent: NDArray[np.float32] | None
) -> tuple[Disturbance, ...]:
    """Disturbances of ground, reference or supply in one record, in volts, in order of time."""
    return _group(steady.disturbed, steady.above_v, steady.below_v, cell_s, start_s, travel_percent)


def _node_s(time_s: NDArray[np.float64]) -> float:
    return float(time_s[1] - time_s[0]) if len(time_s) > 1 else 0.0


def _group(
    disturbed: NDArray[np.bool_],
    above: NDArray[np.float32],
    below: NDArray[np.float32],
    cell_s: float,
    start_s: float,
    travel: NDArray[np.float32] | None,
) -> tuple[Disturbance, ...]:
    cells = np.flatnonzero(disturbed)
    if not len(cells):
        return ()
    cut = np.flatnonzero(np.diff(cells) * cell_s > max(JOINED_S, 1.5 * cell_s)) + 1
    firsts, lasts = np.concatenate([[0], cut]), np.concatenate([cut, [len(cells)]])
    up = np.maximum.reduceat(np.nan_to_num(above[cells]), firsts)
    down = np.maximum.reduceat(np.nan_to_num(below[cells]), firsts)
    where = np.full(len(firsts), np.nan) if travel is None else travel[cells[firsts]]
    columns = (cells[firsts], cells[lasts - 1], up, down, lasts - firsts, where)
    return tuple(
        Disturbance(
            first=first,
            last=last,
            time=Interval(start_s + cell_s * first, start_s + cell_s * (last + 1)),
            above=rise,
            below=drop,
            cells=count,
            travel_percent=place,
        )
        for first, last, rise, drop, count, place in zip(*(item.tolist() for item in columns), strict=True)
    )
