"""Place against chance: log likelihood ratios of "bad here" for every stretch of travel at once."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray
from scipy.special import betaln, logsumexp

SHOWING = (2.0, 0.7)
"""Beta prior of the share of crossings on which a bad spot shows: most of them, but slow recorders miss
some. Its mean is 0.74."""

RATE_MIXTURE = ((1.0, 0.5), (2.0, 0.33), (4.0, 0.14), (8.0, 0.03))
"""How many times the rate elsewhere the rate at one stretch may be by chance, and how likely that is."""

SHARE_MIXTURE = ((1.0, 0.6), (2.0, 0.3), (4.0, 0.1))
"""The same for the share of noisy crossings, which is counted over many stretches and so is surer."""

AWAY_BINS = 24
"""Stretches nearer than this, 6 % of travel at bins of 0.25 %, may belong to the same bad spot."""

SPOT_BINS = 48
"""Bins of a second bad spot: 12 % of travel, the widest looked for, at bins of 0.25 %."""

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
    every, away = np.arange(len(hits)), width + AWAY_BINS
    first, stop = np.maximum(every - away + 1, 0), np.minimum(every + away, len(hits))
    seen, tried = _outside(hits.astype(float), crossings.astype(float), first, stop, SPOT_BINS + width)
    usual = (seen + 1.0) / (tried + 50.0)
    anywhere = logsumexp(
        [
            np.log(weight) + hits * np.log(share) + (crossings - hits) * np.log1p(-share)
            for times, weight in SHARE_MIXTURE
            for share in (np.minimum(times * usual, 0.95),)
        ],
        axis=0,
    )
    return np.asarray(np.where(hits > usual * crossings, place - anywhere, -np.inf), dtype=np.float64)


def rate_outside(
    events: NDArray[np.float64], dwell_s: NDArray[np.float64], width: int
) -> NDArray[np.float64]:
    """Disturbances a second outside each stretch, one more bad spot left out.

    Parameters
    ----------
    events, dwell_s : ndarray, shape (n_bins,)
        Disturbances that began in each bin of travel, and seconds spent there.
    width : int
        Bins of a stretch; neighbouring stretches are one bin apart.

    Returns
    -------
    ndarray, shape (n_bins - width + 1,)
        One event more than was seen is counted: a rate is never proved to be nought.
    """
    first = np.arange(len(events) - width + 1)
    seen, time_s = _outside(events, dwell_s, first, first + width, SPOT_BINS)
    return np.asarray((seen + 1.0) / np.maximum(time_s, 1e-3))


def share_outside(
    restless_s: NDArray[np.float64], dwell_s: NDArray[np.float64], width: int
) -> NDArray[np.float64]:
    """Share of the time outside each stretch that was restless, one more bad spot left out.

    Parameters
    ----------
    restless_s, dwell_s : ndarray, shape (n_bins,)
        Seconds that all crossings were restless in each bin of travel, and spent there.
    width : int
        Bins of a stretch; neighbouring stretches are one bin apart.

    Returns
    -------
    ndarray, shape (n_bins - width + 1,)
        0 where no time was spent outside.
    """
    first = np.arange(len(restless_s) - width + 1)
    restless, time_s = _outside(restless_s, dwell_s, first, first + width, SPOT_BINS)
    return np.asarray(restless / np.maximum(time_s, 1e-3))


def _outside(
    hits: NDArray[np.float64],
    tries: NDArray[np.float64],
    first: NDArray[np.int64],
    stop: NDArray[np.int64],
    spot: int,
) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """Sums of both beyond each ``[first, stop)``, one more bad spot left out.

    A second bad spot says nothing about the rest: the window of `spot` with the most hits beyond its share of
    the tries is not counted.
    """
    hits_until, tries_until = (np.concatenate([[0.0], np.cumsum(item)]) for item in (hits, tries))
    hits_away = hits_until[-1] - (hits_until[stop] - hits_until[first])
    tries_away = tries_until[-1] - (tries_until[stop] - tries_until[first])
    spot = min(spot, len(hits))
    in_spot, tries_in_spot = (item[spot:] - item[:-spot] for item in (hits_until, tries_until))
    usual = hits_until[-1] / max(tries_until[-1], 1e-3)
    worst = _worst_elsewhere(in_spot - usual * tries_in_spot, first - spot, stop)
    known = worst >= 0
    hits_away -= np.where(known, in_spot[worst], 0.0)
    tries_away -= np.where(known, tries_in_spot[worst], 0.0)
    return hits_away, tries_away


def _worst_elsewhere(
    beyond: NDArray[np.float64], until: NDArray[np.int64], since: NDArray[np.int64]
) -> NDArray[np.int64]:
    """The window with the most beyond its share, up to `until` or from `since` on; -1 where none has more."""
    last = len(beyond) - 1
    before = _running_argmax(beyond)
    after = last - _running_argmax(beyond[::-1])[::-1]
    at_left = np.where(until >= 0, before[np.clip(until, 0, last)], -1)
    at_right = np.where(since <= last, after[np.clip(since, 0, last)], -1)
    there = [np.where(item >= 0, beyond[item], 0.0) for item in (at_left, at_right)]
    best = np.where(there[0] >= there[1], at_left, at_right)
    return np.asarray(np.where(np.maximum(*there) > 0.0, best, -1))


def _running_argmax(values: NDArray[np.float64]) -> NDArray[np.int64]:
    """Index of the largest value up to each one."""
    largest = np.maximum.accumulate(values)
    fresh = values == largest
    return np.maximum.accumulate(np.where(fresh, np.arange(len(values)), 0))


def place_against_time(
    counted: NDArray[np.bool_],
    events: NDArray[np.float64],
    dwell_s: NDArray[np.float64],
    rate_outside_per_s: NDArray[np.float64],
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
    rate_outside_per_s : ndarray, shape (n_stretches,)
        Disturbances a second on the rest of the travel; see `rate_outside`.

    Returns
    -------
    ndarray, shape (n_stretches,)
        Natural logarithm; positive favours place.
    """
    noisy = (events > 0) & counted
    crossings, showing = counted.sum(axis=0), noisy.sum(axis=0)
    place = betaln(showing + SHOWING[0], crossings - showing + SHOWING[1]) - betaln(*SHOWING)
    expected = rate_outside_per_s * np.maximum(dwell_s, 1e-4)
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
