"""Where a bad spot begins and ends: the two changes in the share of noisy visits that explain them best."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from analysis.signals.roughness import BIN_PERCENT

WIDEST_PERCENT = 16.0
"""No wider band is reported as one."""

EDGE_REACH_PERCENT = 13.0
"""How far from a found stretch its edges are looked for."""

CLEAR_PERCENT = 2.0
"""A stroke goes right through a bad spot where it is clean for this much travel on either side."""


def telling_rows(noisy: NDArray[np.float64], first: int, last: int) -> NDArray[np.float64]:
    """Rows that tell the edges best: strokes that were clean before and after, where there are two of them.

    Inside a bad spot the signal does not tell where the arm is; an arm that turned back there has edges
    guessed.
    """
    reach, clear = round(EDGE_REACH_PERCENT / BIN_PERCENT), round(CLEAR_PERCENT / BIN_PERCENT)
    near = noisy[:, max(first - reach, 0) : last + reach]
    visited, bad = ~np.isnan(near), near > 0
    before = _first(bad) - _first(visited)
    after = _first(bad[:, ::-1]) - _first(visited[:, ::-1])
    through = bad.any(axis=1) & (before >= clear) & (after >= clear)
    clean = ~bad.any(axis=1)
    return noisy[through | clean] if int(through.sum()) >= 2 else noisy


def _first(marks: NDArray[np.bool_]) -> NDArray[np.int64]:
    """Index of the first mark of each row."""
    return np.asarray(np.argmax(marks, axis=1))


def find_edges(noisy: NDArray[np.float64], first: int, last: int) -> tuple[int, int, tuple[float, float]]:
    """Edges by maximum likelihood of the share of noisy visits inside and outside, and their slack in bins.

    Each visit of a crossing to a bin is noisy or not (`noisy` is 1, 0, or NaN for no visit); the edges are
    the two changes of that share that explain the visits best.
    """
    reach = round(EDGE_REACH_PERCENT / BIN_PERCENT)
    low, high = max(first - reach, 0), min(last + reach, noisy.shape[1])
    near = noisy[:, low:high]
    hits = np.concatenate([[0], np.cumsum(np.nansum(near, axis=0))])
    tries = np.concatenate([[0], np.cumsum(np.sum(~np.isnan(near), axis=0))])
    # The bin that breaks up most lies inside; the middle need not, where the stretch overhangs the bad spot.
    middle = first + int(np.argmax(np.nansum(noisy[:, first:last], axis=0))) - low
    starts = np.arange(0, middle + 1)[:, None]
    stops = np.arange(middle + 1, high - low + 1)[None, :]
    inside_hits, inside_tries = hits[stops] - hits[starts], tries[stops] - tries[starts]
    fit = _log_share(inside_hits, inside_tries) + _log_share(hits[-1] - inside_hits, tries[-1] - inside_tries)
    fit = np.where(stops - starts <= round(WIDEST_PERCENT / BIN_PERCENT), fit, -np.inf)
    start, stop = np.unravel_index(int(np.argmax(fit)), fit.shape)
    # Two units of log likelihood are two standard deviations (Wilks 1938).
    alike = fit >= fit[start, stop] - 2.0
    slack = (0.5 * np.ptp(np.flatnonzero(alike[:, stop])), 0.5 * np.ptp(np.flatnonzero(alike[start])))
    return int(start) + low, int(stop) + middle + 1 + low, (float(slack[0]), float(slack[1]))


def edge_gain(noisy: NDArray[np.float64], edges: tuple[int, int], others: tuple[int, int]) -> float:
    """By how much these edges explain the visits better than other ones do, as `find_edges` counts it.

    Parameters
    ----------
    noisy : ndarray, shape (n_crossings, n_bins)
        1, 0, or NaN for no visit.
    edges, others : tuple of int
        Bins ``[first, last)``.

    Returns
    -------
    float
        Difference of the log likelihoods, of all bins within `EDGE_REACH_PERCENT` of either.
    """
    reach = round(EDGE_REACH_PERCENT / BIN_PERCENT)
    low = max(min(edges[0], others[0]) - reach, 0)
    near = noisy[:, low : max(edges[1], others[1]) + reach]
    hits, tries = np.nansum(near, axis=0), np.sum(~np.isnan(near), axis=0).astype(np.float64)
    fits = []
    for first, last in (edges, others):
        inside = slice(first - low, last - low)
        hit, tried = hits[inside].sum(), tries[inside].sum()
        fits.append(_log_share(hit, tried) + _log_share(hits.sum() - hit, tries.sum() - tried))
    return float(fits[0] - fits[1])


def _log_share(hits: NDArray[np.float64], tries: NDArray[np.float64]) -> NDArray[np.float64]:
    """Log likelihood of `hits` in `tries` at their own share, half a hit and half a miss added."""
    share = (hits + 0.5) / (tries + 1.0)
    return np.asarray(hits * np.log(share) + (tries - hits) * np.log1p(-share))
