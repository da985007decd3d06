"""Output smoothness: spurious variation of the output inside a small increment of travel."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray

from analysis.intervals import Interval


@dataclass(frozen=True, slots=True)
class Smoothness:
    """Output smoothness along the travel.

    Parameters
    ----------
    centres_percent : ndarray, shape (n_windows,)
        Middle of each window, in % of electrical travel.
    variation_percent : ndarray, shape (n_windows,)
        Peak-to-peak residual inside the window, in % of the applied voltage; NaN where fewer than two
        samples lie in it.
    """

    centres_percent: NDArray[np.float64]
    variation_percent: NDArray[np.float64]

    @property
    def worst_percent(self) -> float:
        """The output smoothness of the track: the worst window; NaN where no window was visited."""
        visited = self.variation_percent[np.isfinite(self.variation_percent)]
        return float(visited.max()) if visited.size else float("nan")


def output_smoothness(
    travel_percent: ArrayLike,
    residual_percent: ArrayLike,
    *,
    increment_percent: float = 1.0,
    span: Interval = Interval(0.0, 100.0),  # noqa: B008 - a frozen value
) -> Smoothness:
    """Variation of the residual inside windows of `increment_percent` that overlap by half.

    Parameters
    ----------
    travel_percent : array_like, shape (n,)
        Where the wiper was, in % of electrical travel; NaN and what lies outside `span` count nothing.
    residual_percent : array_like, shape (n,)
        Output less what the motion explains, in % of the applied voltage; NaN counts nothing. Give one
        crossing at a time, or the hysteresis between two directions counts as roughness.
    increment_percent : float
        Width of a window: 1 % of travel unless the maker states another.
    span : Interval
        Travel to judge.

    Returns
    -------
    Smoothness
        For no samples all windows are NaN.

    Raises
    ------
    ValueError
        Where the shapes differ or the increment is not positive.

    Notes
    -----
    Spurious variation in % of the total applied voltage, wiper moving and loaded: VRCI-P-100A,
    MIL-PRF-39023, IEC 60393-1; the half overlap as for microlinearity (Novotechnik technical reference,
    7.2). Typical limit of a new conductive-plastic track 0.1 % (Bourns, training pages).
    """
    travel = np.asarray(travel_percent, dtype=np.float64)
    residual = np.asarray(residual_percent, dtype=np.float64)
    if travel.shape != residual.shape:
        raise ValueError(
            f"travel_percent and residual_percent must have one shape, got {travel.shape}, {residual.shape}"
        )
    if not increment_percent > 0.0:
        raise ValueError(f"increment_percent must be positive, got {increment_percent}")
    half = 0.5 * increment_percent
    halves = max(round(span.length / half), 2)
    usable = np.isfinite(travel) & np.isfinite(residual) & (travel >= span.start) & (travel <= span.stop)
    place = np.minimum(((travel[usable] - span.start) / half).astype(np.intp), halves - 1)
    lowest, highest = np.full(halves, np.inf), np.full(halves, -np.inf)
    np.minimum.at(lowest, place, residual[usable])
    np.maximum.at(highest, place, residual[usable])
    samples = np.bincount(place, minlength=halves)
    inside = np.minimum(lowest[:-1], lowest[1:]), np.maximum(highest[:-1], highest[1:])
    enough = samples[:-1] + samples[1:] > 1
    variation = np.subtract(inside[1], inside[0], out=np.full(halves - 1, np.nan), where=enough)
    centres = span.start + half * np.arange(1, halves, dtype=np.float64)
    return Smoothness(np.asarray(centres), variation)
