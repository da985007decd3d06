"""Place against chance: log likelihood ratios of "bad here" for every stretch of travel at once."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray
from scipy.special import betaln, logsumexp

SHOWING = (2.0, 0.7)
"""Beta prior of the share of crossings on which a bad spot shows: most of them, but slow recorders miss
some. Its mean is 0.74."""

RATE_MIXTURE = ((1.0, 0.5), (2.0, 0.35), (4.0, 0.15))
"""How many times the rate elsewhere the rate at one stretch may be by chance, and how likely that is."""

SHARE_MIXTURE = ((1.0, 0.6), (2.0, 0.3), (4.0, 0.1))
"""The same for the share of noisy crossings, which is counted over many stretches and so is surer."""

AWAY_BINS = 24
"""Stretches nearer than this, 6 % of travel at bins of 0.25 %, may belong to the same bad spot."""

MOST_EXPECTED = 3.0
"""Disturbances that a quiet crossing may be said to have missed."""


def place_against_share(
    crossings: NDArray[np.int64], hits: NDArray[np.int64], width: int
) -> NDArray[np.float64]:
    """Log likelihood ratio of "bad here" against "as bad as anywhere", for each stretch.

    Parameters
    ----------
    crossings : ndarray of int, shape (n_stretches,)
        Crossings that count.
    hits : ndarray of int, shape (n_stretches,)
        Those of them that broke up, or were restless, there.
    width : int
        Bins of a stretch; neighbouring stretches are one bin apart.

    Returns
    -------
    ndarray, shape (n_stretches,)
        Natural logarithm; the share elsewhere is counted over all stretches well away. Minus infinity where
        there are no more hits than the share elsewhere would have.
    """
    place = betaln(hits + SHOWING[0], crossings - hits + SHOWING[1]) - betaln(*SHOWING)
    usual = (_elsewhere(hits, width) + 1.0) / (_elsewhere(crossings, width) + 50.0)
    anywhere = logsumexp(
        [
            np.log(weight) + hits * np.log(share) + (crossings - hits) * np.log1p(-share)
            for times, weight in SHARE_MIXTURE
            for share in (np.minimum(times * usual, 0.95),)
        ],
        axis=0,
    )
    return np.asarray(np.where(hits > usual * crossings, place - anywhere, -np.inf), dtype=np.float64)


def _elsewhere(counts: NDArray[np.int64], width: int) -> NDArray[np.int64]:
    """Sum of the counts of all stretches well away from each one: what is beside may be the same."""
    total = np.concatenate([[0], np.cumsum(counts)])
    every, away = np.arange(len(counts)), width + AWAY_BINS
    low, high = np.maximum(every - away + 1, 0), np.minimum(every + away, len(counts))
    return np.asarray(total[-1] - (total[high] - total[low]))


def place_against_time(
    counted: NDArray[np.bool_],
    events: NDArray[np.float64],
    dwell_s: NDArray[np.float64],
    events_outside: NDArray[np.float64],
    time_total_s: float,
) -> NDArray[np.float64]:
    """Log likelihood ratio of "bad here" against "bad now and then", for each stretch.

    Under *place* the number of noisy crossings is beta-binomial with the prior `SHOWING`; under *time*
    disturbances come as a Poisson process at the rate seen outside the stretch, so a crossing of duration
    T shows one with probability ``1 - exp(-rate T)``.

    Parameters
    ----------
    counted : ndarray of bool, shape (n_crossings, n_stretches)
        Crossings that count.
    events : ndarray, shape (n_crossings, n_stretches)
        Disturbances that began in the stretch.
    dwell_s : ndarray, shape (n_crossings, n_stretches)
        Seconds that each crossing spent there.
    events_outside : ndarray, shape (n_stretches,)
        Disturbances on the rest of the travel, those of one burst counted once.
    time_total_s : float
        Seconds on the whole travel.

    Returns
    -------
    ndarray, shape (n_stretches,)
        Natural logarithm; positive favours place.
    """
    noisy = (events > 0) & counted
    crossings, showing = counted.sum(axis=0), noisy.sum(axis=0)
    place = betaln(showing + SHOWING[0], crossings - showing + SHOWING[1]) - betaln(*SHOWING)
    # One more event than was seen: a rate is never proved to be nought.
    rate = (events_outside + 1.0) / np.maximum(time_total_s - dwell_s.sum(axis=0), 1e-3)
    expected = rate * np.maximum(dwell_s, 1e-4)
    # The rate is not the same everywhere: noise grows along the travel, an arm shakes more in places.
    time = logsumexp(
        [
            np.log(weight) + _log_chance(noisy, counted & ~noisy, times * expected)
            for times, weight in RATE_MIXTURE
        ],
        axis=0,
    )
    # Fewer break-ups than chance would have is no sign of a bad spot, however unlikely.
    worse = showing > np.where(counted, -np.expm1(-expected), 0.0).sum(axis=0)
    return np.asarray(np.where(worse, place - time, -np.inf), dtype=np.float64)


def _log_chance(
    noisy: NDArray[np.bool_], quiet: NDArray[np.bool_], expected: NDArray[np.float64]
) -> NDArray[np.float64]:
    """Log probability of just these noisy and quiet crossings, if disturbances come at random in time.

    A long rest without a disturbance is no sign of a bad spot elsewhere; it counts `MOST_EXPECTED` at most.
    """
    showing = np.bincount(np.nonzero(noisy)[1], np.log(-np.expm1(-expected[noisy])), minlength=noisy.shape[1])
    return np.asarray(showing - np.where(quiet, np.minimum(expected, MOST_EXPECTED), 0.0).sum(axis=0))
