"""Where the arm turned round, and so its crossings: one passage in one direction each."""

from __future__ import annotations

from itertools import pairwise

import numpy as np
from numpy.typing import NDArray

from analysis.intervals import Interval
from analysis.signals.facts import ArmPath, Crossing, Direction

LEAST_STROKE_PERCENT = 1.0
"""Shorter moves are tremor or noise, not crossings: tremor of a resting hand moves the arm by some tenths
of a per cent (common practice, no source)."""


def find_crossings(
    path: ArmPath, *, least_stroke_percent: float = LEAST_STROKE_PERCENT
) -> tuple[Crossing, ...]:
    """Split a path at its turning points.

    Parameters
    ----------
    path : ArmPath
        At least one node.
    least_stroke_percent : float
        A turn counts once the arm has moved back by this much.

    Returns
    -------
    tuple of Crossing
        In order of time, each from one turning point to the next; empty where the arm never moved that far.
    """
    turns = turning_points(path.travel_percent, least_stroke_percent)
    places, times_s = path.travel_percent[turns].tolist(), path.time_s[turns].tolist()
    return tuple(
        Crossing(
            record=path.record,
            direction=Direction.UP if there > here else Direction.DOWN,
            time=Interval(begun_s, ended_s),
            travel=Interval(min(here, there), max(here, there)),
        )
        for (here, there), (begun_s, ended_s) in zip(pairwise(places), pairwise(times_s), strict=True)
    )


def turning_points(place: NDArray[np.float64], least_stroke: float) -> list[int]:
    """Indices of the alternating extremes that lie at least `least_stroke` apart.

    Parameters
    ----------
    place : ndarray, shape (n,)
        Position; `n` may be 0.
    least_stroke : float
        In the unit of `place`.

    Returns
    -------
    list of int
        Ascending; empty where the whole range is smaller than `least_stroke`.
    """
    if not len(place):
        return []
    rises = np.sign(np.diff(place))
    inner = np.flatnonzero(rises[1:] * rises[:-1] <= 0) + 1
    indices = [*inner.tolist(), len(place) - 1]
    low = high = 0
    lowest = highest = float(place[0])
    # +1 while the latest extreme looked for is a maximum, -1 a minimum, 0 before the first stroke
    heading = 0
    turns: list[int] = []
    for index, here in zip(indices, place[indices].tolist(), strict=True):
        if here > highest:
            high, highest = index, here
        if here < lowest:
            low, lowest = index, here
        if heading >= 0 and highest - here >= least_stroke:
            turns.append(high)
            heading, low, lowest = -1, index, here
        elif heading <= 0 and here - lowest >= least_stroke:
            turns.append(low)
            heading, high, highest = 1, index, here
    if heading:
        turns.append(high if heading > 0 else low)
    return turns
