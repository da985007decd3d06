"""Shares: intervals for them, the odds that one is high, and how well stated probabilities hold.

Crossings are counted, not samples: ``k`` noisy crossings of ``n``.
"""

from __future__ import annotations

from math import sqrt

import numpy as np
from scipy.special import betaincinv, betaln, gammaln, ndtri, xlog1py, xlogy
from scipy.stats import fisher_exact

from analysis.intervals import Interval


def wilson_interval(count: int, total: int, *, level: float = 0.95) -> Interval:
    """Score interval of a share (Wilson, JASA 22 (1927) 209-212): the one to print for small numbers.

    Parameters
    ----------
    count, total : int
        ``0 <= count <= total``; with nothing counted the interval is 0 to 1.
    level : float
        Two-sided probability.

    Raises
    ------
    ValueError
        Where count and total do not fit each other.
    """
    _check_counts(count, total)
    if total == 0:
        return Interval(0.0, 1.0)
    z = float(ndtri(0.5 + 0.5 * level))
    share = count / total
    centre = share + z**2 / (2 * total)
    half = z * sqrt(share * (1 - share) / total + z**2 / (4 * total**2))
    scale = 1 + z**2 / total
    lower = 0.0 if count == 0 else (centre - half) / scale
    upper = 1.0 if count == total else (centre + half) / scale
    return Interval(lower, upper)


def clopper_pearson_interval(count: int, total: int, *, level: float = 0.95) -> Interval:
    """Exact interval of a share (Clopper & Pearson, Biometrika 26 (1934) 404-413): never covers too little.

    Parameters, the empty case and errors as in `wilson_interval`.
    """
    _check_counts(count, total)
    tail = 0.5 * (1.0 - level)
    lower = 0.0 if count == 0 else float(betaincinv(count, total - count + 1, tail))
    upper = 1.0 if count == total else float(betaincinv(count + 1, total - count, 1.0 - tail))
    return Interval(lower, upper)


def jeffreys_interval(count: int, total: int, *, level: float = 0.95) -> Interval:
    """Equal-tailed interval under Jeffreys' prior (Brown, Cai & DasGupta, Statist. Sci. 16 (2001) 101-133).

    Parameters, the empty case and errors as in `wilson_interval`. The ends are 0 and 1 where the count is.
    """
    _check_counts(count, total)
    tail = 0.5 * (1.0 - level)
    lower = 0.0 if count == 0 else float(betaincinv(count + 0.5, total - count + 0.5, tail))
    upper = 1.0 if count == total else float(betaincinv(count + 0.5, total - count + 0.5, 1.0 - tail))
    return Interval(lower, upper)


def newcombe_difference(
    first_count: int, first_total: int, second_count: int, second_total: int, *, level: float = 0.95
) -> Interval:
    """Interval of the difference of two shares, first less second, from their Wilson intervals.

    Newcombe, Statistics in Medicine 17 (1998) 873-890, method 10.

    Raises
    ------
    ValueError
        Where a count does not fit its total, or a total is 0.
    """
    if first_total == 0 or second_total == 0:
        raise ValueError(f"both totals must be positive, got {first_total} and {second_total}")
    one = wilson_interval(first_count, first_total, level=level)
    two = wilson_interval(second_count, second_total, level=level)
    first, second = first_count / first_total, second_count / second_total
    below = sqrt((first - one.start) ** 2 + (two.stop - second) ** 2)
    above = sqrt((one.stop - first) ** 2 + (second - two.start) ** 2)
    return Interval(first - second - below, first - second + above)


def fisher_exact_p(first_count: int, first_total: int, second_count: int, second_total: int) -> float:
    """Two-sided probability of shares at least so different if they were the same (Fisher's exact test)."""
    _check_counts(first_count, first_total)
    _check_counts(second_count, second_total)
    table = np.array([[first_count, first_total - first_count], [second_count, second_total - second_count]])
    return float(fisher_exact(table).pvalue)


def log_beta_binomial(count: int, total: int, *, alpha: float, beta: float) -> float:
    """Log probability of `count` in `total` whose share is Beta(alpha, beta) itself; 0 for a total of 0."""
    _check_counts(count, total)
    ways = gammaln(total + 1) - gammaln(count + 1) - gammaln(total - count + 1)
    return float(ways + betaln(count + alpha, total - count + beta) - betaln(alpha, beta))


def log_binomial(count: int, total: int, *, share: float) -> float:
    """Log probability of `count` in `total` at a known share; minus infinity where it cannot be."""
    _check_counts(count, total)
    ways = gammaln(total + 1) - gammaln(count + 1) - gammaln(total - count + 1)
    return float(ways + xlogy(count, share) + xlog1py(total - count, -share))


def log_bayes_factor(
    count: int,
    total: int,
    *,
    background_share: float,
    high_alpha: float = 3.0,
    high_beta: float = 1.0,
) -> float:
    """Log odds that a share is high against that it is the background's, from the counts alone.

    Parameters
    ----------
    count, total : int
        Noisy crossings, and crossings.
    background_share : float
        Share of crossings that are noisy by chance, between 0 and 1 exclusive.
    high_alpha, high_beta : float
        What a share in a bad spot may be: Beta(3, 1) has its mean at three crossings of four.

    Returns
    -------
    float
        Natural logarithm; 0 where nothing was counted, negative where the background explains it better.

    Notes
    -----
    Kass & Raftery, JASA 90 (1995) 773-795, with a beta-binomial marginal likelihood.
    """
    high = log_beta_binomial(count, total, alpha=high_alpha, beta=high_beta)
    return high - log_binomial(count, total, share=background_share)


def _check_counts(count: int, total: int) -> None:
    if not 0 <= count <= total:
        raise ValueError(f"count must lie in 0 to total, got {count} of {total}")
