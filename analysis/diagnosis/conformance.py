"""Whether a reading keeps its limits, when the reading itself is uncertain (JCGM 106:2012)."""

from __future__ import annotations

from math import isfinite

import numpy as np
from numpy.typing import ArrayLike
from scipy.special import ndtr

from analysis.diagnosis.findings import Result
from analysis.intervals import Interval

SURE = float(ndtr(2.0))
"""Probability from which an answer is definite, 0.977: the reading lies one expanded uncertainty (k = 2)
clear of the limit (ILAC-G8:09/2019, Table 1, w = U; from memory)."""

_ROUNDING = 1e-9


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
    """Pass or fail where the probability of conformance makes one of them sure, else cannot tell.

    Parameters
    ----------
    value, expanded_uncertainty : float
        What was read, and its expanded uncertainty (k = 2), in the unit of the limits.
    lower, upper : float or None
        None where that side is open. A value on its limit keeps it.

    Returns
    -------
    Result
        Pass where the true value keeps both limits with a probability of at least `SURE`; fail where the
        reading lies beyond a limit, and the true value does so with at least `SURE`. A NaN cannot be told.

    Notes
    -----
    The specific risk of JCGM 106:2012, clause 7, held under 2.3 % both for who gets a part that passed and
    for who made one that failed. Against one limit it is the guard band of one expanded uncertainty on
    either side (JCGM 106:2012, 8.3; ILAC-G8:09/2019, 4.2.2); between two limits that are less than
    4.6 standard uncertainties apart nothing passes. A fail is reckoned against the broken limit alone: a
    tolerance that is narrow beside the uncertainty does not make a poor reading a failure.
    """
    u = 0.5 * expanded_uncertainty
    sure = SURE - _ROUNDING
    if not isfinite(value) or not isfinite(u):
        return Result.CANNOT_TELL
    if probability_of_conformance(value, u, lower=lower, upper=upper) >= sure:
        return Result.PASS
    above = 1.0 - probability_of_conformance(value, u, upper=upper)
    below = 1.0 - probability_of_conformance(value, u, lower=lower)
    return Result.FAIL if max(above, below) >= sure else Result.CANNOT_TELL


def conformance_of(
    value: float, expanded_uncertainty: float, *, lower: float | None = None, upper: float | None = None
) -> float | None:
    """Probability of conformance of a reading with its expanded uncertainty (k = 2), or None.

    Parameters
    ----------
    value, expanded_uncertainty, lower, upper : float or None
        As for `decide`.

    Returns
    -------
    float or None
        None where no limit is known, or the reading or its uncertainty is not finite.
    """
    if (lower is None and upper is None) or not isfinite(value) or not isfinite(expanded_uncertainty):
        return None
    return probability_of_conformance(value, 0.5 * expanded_uncertainty, lower=lower, upper=upper)


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
