"""Statistics of a run of samples: mean, deviation, autocorrelation, noise about a slow course.

Two passes over centred values throughout, so that an offset of 1e7 costs no digit that is there.
Missing samples (NaN) are left out.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import sqrt

import numpy as np
from numpy.typing import ArrayLike, NDArray
from scipy.special import ndtri

MAD_CONSISTENCY = 1.0 / float(ndtri(0.75))
"""Median absolute deviation to standard deviation of a normal distribution: 1.4826 (R, help page `mad`)."""

# A span is averaged into at most this many blocks before its autocorrelation is taken. The mean of the block
# means is the same mean; with more lags to choose from, chance alone would pick a late cut (Zhang's own
# series have 217 and some 470 samples), and the sums stay short however long the span is.
_MOST_BLOCKS = 256

# The resolution shows in any 100,000 samples; sorting ten million to find it would cost a second.
_MOST_SORTED = 100_000


def present_values(values: ArrayLike) -> NDArray[np.float64]:
    """What is not NaN, as one flat float64 array."""
    series = np.asarray(values, dtype=np.float64).ravel()
    keep = np.isfinite(series)
    return series if keep.all() else series[keep]


def mean(values: ArrayLike) -> float:
    """Arithmetic mean of what is not NaN, corrected by the mean of the residuals; NaN for nothing."""
    present = present_values(values)
    if present.size == 0:
        return float("nan")
    first = float(np.mean(present))
    return first + float(np.mean(present - first))


def standard_deviation(values: ArrayLike) -> float:
    """Sample standard deviation (n - 1) of what is not NaN, in two passes; NaN for fewer than two."""
    present = present_values(values)
    if present.size < 2:
        return float("nan")
    residual = present - mean(present)
    return sqrt(float(residual @ residual) / (present.size - 1))


def autocorrelation(values: ArrayLike, *, most_lags: int) -> NDArray[np.float64]:
    """Autocorrelation coefficients at lags 0 to `most_lags`.

    Parameters
    ----------
    values : array_like, shape (n,)
        In time order; NaN counts as the mean.
    most_lags : int
        Cut to n - 1.

    Returns
    -------
    ndarray, shape (min(most_lags, n - 1) + 1,)
        ``sum (y_i - m)(y_{i+k} - m) / sum (y_i - m)**2``; zeros after lag 0 for a constant.

    Raises
    ------
    ValueError
        Where there is no sample.

    Notes
    -----
    NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.12 (normalised by the sum at lag 0).
    """
    series = np.asarray(values, dtype=np.float64)
    if series.ndim != 1 or not np.isfinite(series).any():
        raise ValueError(f"values must be one-dimensional with a sample in it, got shape {series.shape}")
    residual = np.nan_to_num(series - mean(series), nan=0.0)
    power = float(residual @ residual)
    lags = range(1, min(most_lags, series.size - 1) + 1)
    if power == 0.0:
        return np.array([1.0] + [0.0 for _ in lags])
    return np.array([1.0] + [float(residual[:-lag] @ residual[lag:]) / power for lag in lags])


def lag_one_autocorrelation(values: ArrayLike) -> float:
    """Autocorrelation at lag 1; 0 for a constant or a single sample."""
    coefficients = autocorrelation(values, most_lags=1)
    return float(coefficients[1]) if coefficients.size > 1 else 0.0


@dataclass(frozen=True, slots=True)
class MeanUncertainty:
    """Type A uncertainty of a mean of samples that hang together.

    Parameters
    ----------
    standard_uncertainty : float
        Of the mean, in the unit of the samples.
    inflation : float
        Over ``s / sqrt n``, the figure for independent samples.
    cut_lag : int
        Last lag whose autocorrelation counted.
    effective_count : float
        Samples over the square of the inflation.
    """

    standard_uncertainty: float
    inflation: float
    cut_lag: int
    effective_count: float


def mean_uncertainty(values: ArrayLike) -> MeanUncertainty:
    """Standard uncertainty of the mean of autocorrelated samples.

    Parameters
    ----------
    values : array_like, shape (n,)
        In time order; NaN is left out. Spans beyond 256 samples are averaged into blocks first.

    Returns
    -------
    MeanUncertainty
        Infinite uncertainty for fewer than two samples: one sample says nothing of its own spread.

    Notes
    -----
    Zhang, Metrologia 43 (2006) S276-S281: ``u**2 = s**2 / n (1 + 2 sum (1 - k/n) r_k)`` up to the cut lag,
    the last (not above n / 4) whose coefficient stands out of 1.96 deviations of white noise after the
    lags before it. Never less than for independent samples: a pattern that alternates would promise
    more than a gain of chance.
    """
    present = present_values(values)
    if present.size < 2:
        return MeanUncertainty(float("inf"), 1.0, 0, float(present.size))
    block = -(-present.size // _MOST_BLOCKS)
    blocks = present[: present.size // block * block].reshape(-1, block).mean(axis=1)
    plain = standard_deviation(present) / sqrt(present.size)
    if plain == 0.0:
        return MeanUncertainty(0.0, 1.0, 0, float(present.size))
    inflation, cut = _inflation(blocks)
    standard = max(standard_deviation(blocks) / sqrt(blocks.size) * inflation, plain)
    total = standard / plain
    return MeanUncertainty(standard, total, cut * block, present.size / total**2)


def _inflation(series: NDArray[np.float64]) -> tuple[float, int]:
    """How much autocorrelation widens the uncertainty of a mean, and the last lag that counted."""
    count = series.size
    coefficients = autocorrelation(series, most_lags=count // 4)[1:]
    before = np.concatenate([[0.0], np.cumsum(coefficients**2)[:-1]]) if coefficients.size else coefficients
    bound = 1.96 * np.sqrt((1.0 + 2.0 * before) / count)
    outside = np.flatnonzero(np.abs(coefficients) > bound)
    cut = int(outside[-1]) + 1 if outside.size else 0
    lags = np.arange(1, cut + 1)
    squared = 1.0 + 2.0 * float(np.sum((1.0 - lags / count) * coefficients[:cut]))
    return sqrt(max(squared, 1.0)), cut


def median_absolute_deviation(values: ArrayLike) -> float:
    """1.4826 times the median absolute deviation: one wild sample does not move it; NaN for nothing."""
    present = present_values(values)
    if present.size == 0:
        return float("nan")
    return MAD_CONSISTENCY * float(np.median(np.abs(present - np.median(present))))


@dataclass(frozen=True, slots=True)
class Noise:
    """Standard deviation of the noise and its degrees of freedom; NaN and 0 for too few samples."""

    deviation: float
    degrees_of_freedom: float


def noise_about_course(values: ArrayLike, *, sample_interval_s: float, course_s: float = 0.02) -> Noise:
    """Noise left when a straight line is taken out of each stretch of `course_s`.

    Parameters
    ----------
    values : array_like, shape (n,)
        In time order; NaN is left out, stretches of fewer than three samples count nothing.
    sample_interval_s : float
        Seconds between samples.
    course_s : float
        Length of a stretch, at least 8 samples. 20 ms is a full mains period at 50 Hz, and short against a
        hand, which lives below some 15 Hz (common practice, no source).

    Returns
    -------
    Noise
        In the unit of `values`; freed of the bias of the fitted lines.
    """
    series = np.asarray(values, dtype=np.float64)
    length = min(max(round(course_s / sample_interval_s), 8), max(series.size, 1))
    padded = np.full(-(-series.size // length) * length, np.nan)
    padded[: series.size] = series - mean(series)
    stretches = padded.reshape(-1, length)
    valid = np.isfinite(stretches)
    enough = valid.sum(axis=1) > 2
    if not enough.any():
        return Noise(float("nan"), 0.0)
    residual = _without_line(stretches[enough], valid[enough])
    freedom = float(np.sum(valid[enough].sum(axis=1) - 2))
    return Noise(sqrt(float(np.sum(residual**2)) / freedom), freedom)


def _without_line(stretches: NDArray[np.float64], valid: NDArray[np.bool_]) -> NDArray[np.float64]:
    """Each row less its least-squares line; 0 where not valid."""
    counts = valid.sum(axis=1, keepdims=True)
    place = np.where(valid, np.arange(stretches.shape[1], dtype=np.float64), 0.0)
    place = np.where(valid, place - place.sum(axis=1, keepdims=True) / counts, 0.0)
    level = np.where(valid, stretches, 0.0)
    level = np.where(valid, level - level.sum(axis=1, keepdims=True) / counts, 0.0)
    slope = np.sum(place * level, axis=1, keepdims=True) / np.sum(place**2, axis=1, keepdims=True)
    return np.asarray(level - slope * place)


def smallest_step(values: ArrayLike) -> float:
    """Smallest distance between two different samples: the resolution as far as it shows; 0 for a constant.

    For channels whose file states volts but no counts. Rounding noise of the float format is skipped.
    """
    present = present_values(values)
    distinct = np.unique(present[:: max(1, present.size // _MOST_SORTED)])
    if distinct.size < 2:
        return 0.0
    steps = np.diff(distinct)
    real = steps[steps > 1e-9 * float(np.max(np.abs(distinct)))]
    return float(real.min()) if real.size else 0.0
