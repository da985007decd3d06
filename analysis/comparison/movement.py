"""When the arm first moved: what two records of one event can be laid on each other by."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from analysis.signals.facts import ArmPath

REST_S = 0.05
"""The arm's place at the start is the median over this time: short, for a hand may begin at once."""

LEAST_MOVE_PERCENT = 1.0
"""A smaller departure is tremor or noise: tremor of a resting hand moves the arm by some tenths of a per cent
(common practice, no source)."""


def first_movement_s(path: ArmPath, *, least_percent: float = LEAST_MOVE_PERCENT) -> float | None:
    """When the arm first left where it stood at the start.

    Parameters
    ----------
    path : ArmPath
        Of one record; may hold no node.
    least_percent : float
        Travel by which it must have left; at least six standard uncertainties of the path.

    Returns
    -------
    float or None
        Seconds in the record's own time, between the last node within `least_percent` and the first beyond
        it; None where the arm never moved so far.
    """
    return first_departure_s(
        path.time_s,
        path.travel_percent,
        least=max(least_percent, 6.0 * float(np.median(path.uncertainty_percent, axis=None)))
        if len(path.time_s)
        else least_percent,
    )


def first_departure_s(
    time_s: NDArray[np.float64], values: NDArray[np.float64], *, least: float
) -> float | None:
    """When a series first left its level of the first `REST_S` by `least`; None where it never did.

    Parameters
    ----------
    time_s, values : ndarray, shape (n,)
        Ascending times; `values` may hold NaN, which counts as at rest.
    least : float
        In the unit of `values`.
    """
    known = np.isfinite(values)
    if not known.any():
        return None
    start = known & (time_s <= time_s[known][0] + REST_S)
    away = np.abs(np.where(known, values, np.median(values[start])) - np.median(values[start]))
    beyond = np.flatnonzero(away > least)
    if not beyond.size:
        return None
    last = int(beyond[0])
    if last == 0:
        return float(time_s[0])
    share = (least - away[last - 1]) / (away[last] - away[last - 1])
    return float(time_s[last - 1] + share * (time_s[last] - time_s[last - 1]))
