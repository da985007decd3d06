"""Whether a reading keeps its limits, when the reading itself is uncertain (JCGM 106:2012)."""

from __future__ import annotations

from scipy.special import ndtr

from analysis.diagnosis.findings import Result


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
