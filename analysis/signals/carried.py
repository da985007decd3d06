"""Where the arm was within a stretch that breaks up, as what surrounds the stretch tells it.

Inside such a stretch the signal tells little, and what it tells may be false; the path of
`analysis.signals.motion` believes some of it. Carried across from outside alone, the place is told by another
way, and how far the two stand apart is what the way makes of it.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from analysis.intervals import Interval
from analysis.signals.facts import ArmPath

RUN_UP_S = 0.008
"""Span over which the arm's speed is read before it comes into the stretch, and after it left it."""

BESIDE_PERCENT = 2.0
"""So far beside the stretch it is carried across from too: where the signal breaks up just beyond an edge as
well, place and speed there are false, and seem to agree with a path that believed them."""


def carried_across(path: ArmPath, time_s: float, stretch: Interval) -> float | None:
    """Where the arm was, by the path before it came into a stretch of travel and after it left it.

    Parameters
    ----------
    path : ArmPath
        Through the record.
    time_s : float
        A moment at which the path lies within the stretch.
    stretch : Interval
        In % of travel.

    Returns
    -------
    float or None
        In % of travel: the cubic with the places and the speeds of both ends (Hermite). None where the path
        begins or ends within the stretch, or too near to it for a speed.
    """
    place = path.travel_percent
    if len(place) < 2:
        return None
    outside = np.flatnonzero((place < stretch.start) | (place >= stretch.stop))
    after = int(np.searchsorted(path.time_s[outside], time_s, side="right"))
    if after in (0, len(outside)):
        return None
    ends = outside[after - 1 : after + 1]
    run_up = max(1, round(RUN_UP_S / float(path.time_s[1] - path.time_s[0])))
    if ends[0] < run_up or ends[1] + run_up >= len(place):
        return None
    speeds = _speeds(path, ends - np.array([run_up, 0]), ends + np.array([0, run_up]))
    return _hermite(path.time_s[ends], place[ends], speeds, time_s)


def apart_percent(path: ArmPath, time_s: float, stretch: Interval) -> float | None:
    """How far the path stands from what is carried across the stretch, in % of travel.

    Parameters
    ----------
    path, time_s, stretch
        As of `carried_across`.

    Returns
    -------
    float or None
        The larger of two: carried across from the edges, and from `BESIDE_PERCENT` beside them, where the
        path goes as far. None where nothing can be carried across from the edges.
    """
    at = path.at(time_s)
    near = carried_across(path, time_s, stretch)
    if near is None:
        return None
    far = carried_across(path, time_s, stretch.widened(BESIDE_PERCENT))
    return max(abs(place - at) for place in (near, far) if place is not None)


def _speeds(path: ArmPath, first: NDArray[np.int64], last: NDArray[np.int64]) -> NDArray[np.float64]:
    """In % of travel a second, between these nodes."""
    moved = path.travel_percent[last] - path.travel_percent[first]
    return np.asarray(moved / (path.time_s[last] - path.time_s[first]))


def _hermite(
    time_s: NDArray[np.float64], place: NDArray[np.float64], speed: NDArray[np.float64], at_s: float
) -> float:
    """The cubic with these places and speeds at both its ends."""
    length_s = float(time_s[1] - time_s[0])
    share = (at_s - float(time_s[0])) / length_s
    rest = 1.0 - share
    weights = rest * rest * (1.0 + 2.0 * share), share * share * (1.0 + 2.0 * rest)
    turns = share * rest * rest * length_s, -share * share * rest * length_s
    return float(np.dot(weights, place) + np.dot(turns, speed))
