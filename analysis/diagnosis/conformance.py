"""Whether a reading keeps its limits, when the reading itself is uncertain (JCGM 106:2012)."""

from __future__ import annotations

import numpy as np
from numpy.typing import ArrayLike
from scipy.special import ndtr

from analysis.diagnosis.findings import Result
from analysis.intervals import Interval


def probability_of_conformance(
    value: float, standard_uncertainty: float, *, lower: float | None = None, upper: float | None = None
) -> float:
    """Probability that the true value lies within the limits, given what was read.

    Parameters
    ----------
    value, standard_uncertainty : float
        What was read, in the unit of the limits; normal, with nothing else known beforehand.
    lower, upper : float or None
        None where that side is open; with both open the probability is 1.

    Returns
    -------
    float
        0 to 1. With an uncertainty of 0 it is 1 within the limits (edges included) and 0 outside.

    Notes
    -----
    JCGM 106:2012, clause 7.
    """
    if standard_uncertainty == 0.0:
        return float((lower is None or value >= lower) and (upper is None or value <= upper))
    below_upper = 1.0 if upper is None else float(ndtr((upper - value) / standard_uncertainty))
    below_lower = 0.0 if lower is None else float(ndtr((lower - value) / standard_uncertainty))
    return max(below_upper - below_lower, 0.0)


def decide(
    value: float, expanded_uncertainty: float, *, lower: float | None = None, upper: float | None = None
) -> Result:
    """Pass, fail, or cannot tell where ``value ± expanded_uncertainty`` straddles a limit.

    Parameters
    ----------
    value, expanded_uncertainty : float
        What was read, and its expanded uncertainty (k = 2), in the unit of the limits.
    lower, upper : float or None
        None where that side is open. A value on its limit keeps it.

    Returns
    -------
    Result
        A NaN value cannot be told.

    Notes
    -----
    The guard band is the expanded uncertainty on both sides (JCGM 106:2012, 8.3; ILAC-G8:09/2019, 4.2.2),
    so either definite answer is wrong in less than 2.5 % of cases.
    """
    low = float("-inf") if lower is None else lower
    high = float("inf") if upper is None else upper
    if low + expanded_uncertainty <= value <= high - expanded_uncertainty:
        return Result.PASS
    if value + expanded_uncertainty < low or value - expanded_uncertainty > high:
        return Result.FAIL
    return Result.CANNOT_TELL


def spans_beyond(
    values: ArrayLike,
    *,
    sample_interval_s: float,
    lower: float | None = None,
    upper: float | None = None,
    hold_s: float = 0.0,
    first_sample_s: float = 0.0,
) -> tuple[Interval, ...]:
    """Spans of time in which a reading stays outside its limits for longer than `hold_s`.

    A control unit sets its code only after such a time; a short dropout of a worn spot never does.

    Parameters
    ----------
    values : array_like, shape (n,)
        In the unit of the limits; a missing sample (NaN) ends a span.
    sample_interval_s, first_sample_s : float
        Seconds between samples, and time of the first.
    lower, upper : float or None
        None where that side is open. Low and high excursions are spans of their own.
    hold_s : float
        A span that lasts just as long does not count.

    Returns
    -------
    tuple of Interval
        Seconds, ascending; from the first sample outside to one interval past the last.
    """
    series = np.asarray(values, dtype=np.float64)
    below = series < lower if lower is not None else np.zeros(series.shape, dtype=np.bool_)
    above = series > upper if upper is not None else np.zeros(series.shape, dtype=np.bool_)
    found = []
    for outside in (below, above):
        edges = np.flatnonzero(np.diff(outside, prepend=False, append=False))
        for start, stop in edges.reshape(-1, 2):
            # A thousandth of a sample against rounding: 250 samples of 2 ms are not longer than 0.5 s.
            if (stop - start - 1e-3) * sample_interval_s > hold_s:
                found.append(
                    Interval(
                        first_sample_s + start * sample_interval_s, first_sample_s + stop * sample_interval_s
                    )
                )
    return tuple(sorted(found))
