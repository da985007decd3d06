"""Whether a series of readings rises or falls from one to the next, whatever its distribution."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray
from scipy.special import ndtr


@dataclass(frozen=True, slots=True)
class Trend:
    """Kendall's rank correlation of a series with its order.

    Parameters
    ----------
    tau : float
        Tau-b, -1 to 1; 0 where all readings are alike.
    p_value : float
        Probability of a tau as far from 0 or further where there is no trend, two-sided; 1 where it cannot
        be told.
    """

    tau: float
    p_value: float


def trend(readings: ArrayLike, groups: ArrayLike | None = None) -> Trend:
    """Test a series for a trend (Mann 1945, Kendall 1948), ties accounted for.

    Parameters
    ----------
    readings : array_like, shape (n,)
        In their order; NaN counts nothing.
    groups : array_like, shape (n,), or None
        Only readings of one group are compared: records swept at different speeds. None for one group.

    Returns
    -------
    Trend
        No trend where fewer than three readings are left or all are alike.

    Notes
    -----
    S counts the pairs in order less those out of order; without a trend it is normal with variance
    ``[n (n - 1) (2 n + 5) - sum t (t - 1) (2 t + 5)] / 18`` for sets of t tied readings. Scores and variances
    of several groups add up (Hirsch, Slack and Smith 1982, for seasons).
    """
    values = np.asarray(readings, dtype=np.float64).ravel()
    labels = np.zeros(len(values), np.int64) if groups is None else np.unique(groups, return_inverse=True)[1]
    known = np.isfinite(values)
    parts = [_score(values[known & (labels == label)]) for label in np.unique(labels)]
    score, most, variance = (float(sum(part[index] for part in parts)) for index in range(3))
    if known.sum() < 3 or most == 0.0 or variance <= 0.0:
        return Trend(0.0, 1.0)
    return Trend(score / most, 2.0 * float(ndtr(-abs(score) / np.sqrt(variance))))


def _score(values: NDArray[np.float64]) -> tuple[float, float, float]:
    """S, the largest that it could be (tau-b), and its variance."""
    count = float(len(values))
    _, ranks, alike = np.unique(values, return_inverse=True, return_counts=True)
    ties = alike.astype(np.float64)
    pairs = 0.5 * count * (count - 1.0)
    untied = pairs - float((0.5 * ties * (ties - 1.0)).sum())
    return (
        float(_rising_less_falling(ranks)),
        float(np.sqrt(pairs * untied)),
        (_spread(np.array([count])) - _spread(ties)) / 18.0,
    )


def _rising_less_falling(ranks: NDArray[np.int64]) -> int:
    """Pairs in order less those out of order, bit by bit, so that thousands of readings take no time.

    Which of two ranks is the larger is settled by the highest bit in which they differ. Of ``m`` readings
    that are alike in all higher bits, the k-th has k before it and ``m - 1 - k`` behind it: where its bit is
    set, it adds the former and takes off the latter (two set bits cancel out).
    """
    score, places = 0, np.arange(len(ranks))
    for bit in range(int(ranks.max(initial=0)).bit_length()):
        higher = ranks >> (bit + 1)
        order = np.argsort(higher, kind="stable")
        groups = higher[order]
        first, stop = np.searchsorted(groups, groups), np.searchsorted(groups, groups, side="right")
        is_set = (ranks[order] >> bit & 1).astype(np.bool_)
        score += int((2 * places + 1 - first - stop)[is_set].sum())
    return score


def _spread(counts: NDArray[np.float64]) -> float:
    return float((counts * (counts - 1.0) * (2.0 * counts + 5.0)).sum())
