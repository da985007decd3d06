"""Place against chance by rank: whether crossings depart further here than they do anywhere.

A bad spot that hardly leaves the recorder's floor begins no disturbance, and no such threshold suits all
recorders. So each crossing of a stretch is asked how many cells that depart as far the time it spent there
would bring, if the place were like all others: the capture itself is the null hypothesis.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray
from scipy.special import logsumexp

from analysis.diagnosis.place_odds import MOST_EXPECTED, RATE_MIXTURE, rate_outside

SHOWN_SHARES = (0.5, 0.8, 0.95)
"""Shares of the crossings on which a bad spot may show, each as likely as the others..."""

STEEPNESS = (0.05, 0.2)
"""...and powers of the chance to which the chance of one that shows may be spread (Lehmann alternatives)."""

LEAST_CHANCE = 1e-6

HIGH = 0.1
"""Cells expected below which a departure is called high."""


def rates_outside(
    levels_s: NDArray[np.float64], dwell_s: NDArray[np.float64], cell_s: float, width: int
) -> NDArray[np.float64]:
    """Cells a second outside each stretch that reach each level; see `rate_outside`.

    Parameters
    ----------
    levels_s : ndarray, shape (n_bins, n_levels)
        Seconds that all crossings spent in each bin at each level.
    dwell_s : ndarray, shape (n_bins,)
        Seconds that all crossings spent in each bin.
    cell_s : float
        Length of a cell, in seconds.
    width : int
        Bins of a stretch; neighbouring stretches are one bin apart.

    Returns
    -------
    ndarray, shape (n_bins - width + 1, n_levels)
    """
    reached = np.cumsum(levels_s[:, ::-1], axis=1)[:, ::-1] / cell_s
    return np.stack([rate_outside(cells, dwell_s, width) for cells in reached.T], axis=1)


def cells_expected(
    level: NDArray[np.int8], rates_per_s: NDArray[np.float64], dwell_s: NDArray[np.float64]
) -> NDArray[np.float64]:
    """Cells that depart as far as the worst did, if the stretch were like all others.

    Parameters
    ----------
    level : ndarray of int, shape (n_crossings, n_stretches)
        Highest level reached, -1 where none.
    rates_per_s : ndarray, shape (n_stretches, n_levels)
        See `rates_outside`.
    dwell_s : ndarray, shape (n_crossings, n_stretches)
        Seconds spent there.

    Returns
    -------
    ndarray, shape (n_crossings, n_stretches)
        Infinite where no level was reached.
    """
    rates = rates_per_s[np.arange(level.shape[1]), np.maximum(level, 0)]
    return np.asarray(np.where(level >= 0, rates * dwell_s, np.inf))


def place_against_rank(counted: NDArray[np.bool_], expected: NDArray[np.float64]) -> NDArray[np.float64]:
    """Log likelihood ratio of "departs further here" against "as far as anywhere", for each stretch.

    By chance the worst of a crossing is as high as it is with probability ``p = 1 - exp(-expected)``, spread
    evenly over 0 to 1; in a bad spot that shows, ``p`` is spread as ``a p^(a-1)``.

    Parameters
    ----------
    counted : ndarray of bool, shape (n_crossings, n_stretches)
        Crossings that count.
    expected : ndarray, shape (n_crossings, n_stretches)
        See `cells_expected`.

    Returns
    -------
    ndarray, shape (n_stretches,)
        Natural logarithm; positive favours place.
    """
    chance = np.maximum(-np.expm1(-expected), LEAST_CHANCE)
    ways = [
        np.log(share * steep * chance ** (steep - 1.0) + 1.0 - share)
        for share in SHOWN_SHARES
        for steep in STEEPNESS
    ]
    place = logsumexp([np.where(counted, way, 0.0).sum(axis=0) for way in ways], axis=0) - np.log(len(ways))
    # The rate is not the same everywhere: noise grows along the travel, an arm shakes more in places.
    total = np.where(counted, np.minimum(expected, MOST_EXPECTED), 0.0).sum(axis=0)
    tried = counted.sum(axis=0)
    anywhere = logsumexp(
        [np.log(weight) + tried * np.log(times) - (times - 1.0) * total for times, weight in RATE_MIXTURE],
        axis=0,
    )
    return np.asarray(place - anywhere)
