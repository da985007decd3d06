"""State levels, transitions between them, and whether a signal has two levels only (IEEE 181-2011 terms)."""

from __future__ import annotations

from dataclasses import dataclass
from itertools import pairwise

import numpy as np
from numpy.typing import ArrayLike, NDArray

LEAST_NEAR = 0.6
"""Share of the samples near one of two states: a recorder's input filter rounds the edges of a duty cycle."""

LEAST_NEAR_SLOW = 0.95
"""The same where the states last long: hardly any sample is of an edge."""

MOST_LOOKED_AT = 20_000
"""Samples at which a long record is looked at first, since hardly any has two states."""


@dataclass(frozen=True, slots=True)
class StateLevels:
    """The low and the high state of a two-state waveform, in volts."""

    low_v: float
    high_v: float

    @property
    def amplitude_v(self) -> float:
        """High less low."""
        return self.high_v - self.low_v

    def reference_v(self, share: float) -> float:
        """Reference level at a share of the amplitude above the low state: 0.1 for the 10 % level."""
        return self.low_v + share * self.amplitude_v


@dataclass(frozen=True, slots=True)
class Transition:
    """One passage from state to state.

    Parameters
    ----------
    start_s, stop_s : float
        Instants at which the first and the last reference level were crossed, interpolated.
    rising : bool
        From low to high.
    """

    start_s: float
    stop_s: float
    rising: bool

    @property
    def duration_s(self) -> float:
        """Transition duration."""
        return self.stop_s - self.start_s


def state_levels(voltage_v: ArrayLike, *, resolution: float = 0.01) -> StateLevels | None:
    """Low and high state: the modes of the lower and the upper half of the histogram.

    Parameters
    ----------
    voltage_v : array_like, shape (n,)
        NaN counts nothing.
    resolution : float
        Width of a histogram bin as a share of the peak-to-peak value.

    Returns
    -------
    StateLevels or None
        Each level is the mean of the samples in its modal bin. None for a constant or no sample.

    Notes
    -----
    The histogram (mode) method of IEEE 181-2011, 5.2 (clause from memory); compared with others in
    Paulter, NIST TN 2036 (2019).
    """
    samples = np.asarray(voltage_v, dtype=np.float64).ravel()
    samples = samples[np.isfinite(samples)]
    if samples.size == 0 or samples.min() == samples.max():
        return None
    bins = max(2 * round(0.5 / resolution), 2)
    low, high = float(samples.min()), float(samples.max())
    place = np.minimum(((samples - low) / (high - low) * bins).astype(np.intp), bins - 1)
    counts = np.bincount(place, minlength=bins)
    lower = int(np.argmax(counts[: bins // 2]))
    upper = bins // 2 + int(np.argmax(counts[bins // 2 :]))
    return StateLevels(float(samples[place == lower].mean()), float(samples[place == upper].mean()))


def crossing_instants(
    time_s: ArrayLike, voltage_v: ArrayLike, *, level_v: float
) -> tuple[NDArray[np.float64], NDArray[np.bool_]]:
    """When a waveform crosses a level, by linear interpolation between the two samples that straddle it.

    Parameters
    ----------
    time_s, voltage_v : array_like, shape (n,)
        Ascending times; NaN voltages break the waveform.
    level_v : float
        A sample on the level counts as above it.

    Returns
    -------
    instants_s : ndarray, shape (n_crossings,)
    rising : ndarray of bool, shape (n_crossings,)
    """
    time = np.asarray(time_s, dtype=np.float64)
    voltage = np.asarray(voltage_v, dtype=np.float64)
    above = voltage >= level_v
    whole = np.isfinite(voltage)
    before = np.flatnonzero((above[1:] != above[:-1]) & whole[1:] & whole[:-1])
    share = (level_v - voltage[before]) / (voltage[before + 1] - voltage[before])
    return time[before] + share * (time[before + 1] - time[before]), above[before + 1]


def transitions(
    time_s: ArrayLike,
    voltage_v: ArrayLike,
    levels: StateLevels,
    *,
    lower_share: float = 0.1,
    upper_share: float = 0.9,
) -> tuple[Transition, ...]:
    """Transitions from below the lower to above the upper reference level, and back.

    Parameters
    ----------
    time_s, voltage_v : array_like, shape (n,)
        Ascending times; NaN voltages break the waveform.
    levels : StateLevels
        From `state_levels`.
    lower_share, upper_share : float
        Reference levels as shares of the amplitude.

    Returns
    -------
    tuple of Transition
        In order; runts, which return before the second level, are left out. Empty for none.
    """
    low_s, low_rising = crossing_instants(time_s, voltage_v, level_v=levels.reference_v(lower_share))
    high_s, high_rising = crossing_instants(time_s, voltage_v, level_v=levels.reference_v(upper_share))
    marks = sorted(
        [(instant, False, bool(rising)) for instant, rising in zip(low_s, low_rising, strict=True)]
        + [(instant, True, bool(rising)) for instant, rising in zip(high_s, high_rising, strict=True)]
    )
    gaps_s = np.asarray(time_s, dtype=np.float64)[~np.isfinite(np.asarray(voltage_v, dtype=np.float64))]
    found = []
    for (start, at_upper, rising), (stop, to_upper, on) in pairwise(marks):
        whole = np.searchsorted(gaps_s, start) == np.searchsorted(gaps_s, stop)
        if whole and at_upper != to_upper and rising == on:
            found.append(Transition(float(start), float(stop), rising))
    return tuple(found)


def is_two_level(
    voltage_v: ArrayLike,
    *,
    sample_interval_s: float,
    least_amplitude_v: float = 1.0,
    least_edges: int = 10,
    longest_state_s: float = 0.05,
) -> bool:
    """Whether a signal is a duty cycle or digital, and so no voltage that tells a position.

    Parameters
    ----------
    voltage_v : array_like, shape (n,)
        NaN counts nothing.
    sample_interval_s : float
        Seconds between samples.
    least_amplitude_v : float
        Distance of the two states.
    least_edges : int
        Changes of state.
    longest_state_s : float
        No state lasts longer. Duty-cycle sensors repeat at 100 Hz and more (common practice, no source); a
        broken wire that drops out while the arm rests stays connected for longer than this in between.

    Returns
    -------
    bool
        True where most samples lie within 8 % of the amplitude from one of two states, both are
        taken for at least 5 % of the time, and they alternate throughout. False for too little to tell.
    """
    samples = np.asarray(voltage_v, dtype=np.float64).ravel()
    samples = samples[np.isfinite(samples)]
    levels = _two_states(samples, least_amplitude_v, LEAST_NEAR)
    if levels is None:
        return False
    edges = np.flatnonzero(np.diff(samples >= levels.reference_v(0.5)))
    if edges.size < least_edges:
        return False
    longest = np.diff(np.concatenate([[0], edges, [samples.size - 1]])).max()
    return bool(longest * sample_interval_s <= longest_state_s)


def is_regular_two_level(
    voltage_v: ArrayLike,
    *,
    sample_interval_s: float,
    least_amplitude_v: float = 1.0,
    least_periods: int = 5,
    largest_wander: float = 0.03,
) -> bool:
    """Whether a signal goes to and fro between two levels like a clock, however slowly.

    Parameters
    ----------
    voltage_v : array_like, shape (n,)
        NaN counts nothing.
    sample_interval_s : float
        Seconds between samples.
    least_amplitude_v : float
        Distance of the two states.
    least_periods : int
        Fewer periods than this are no clock.
    largest_wander : float
        The longest period is longer than the shortest by this share at most, and by what two samples leave
        open. No hand moves an arm or a loom so evenly, and no wire breaks so (common practice, no source).

    Returns
    -------
    bool
        True where nearly all samples lie in one of two states, and those edges that tell the period, the
        rising or the falling ones, come evenly: a duty cycle moves the others.
    """
    series = np.asarray(voltage_v, dtype=np.float64).ravel()
    thin = series[:: max(1, series.size // MOST_LOOKED_AT)]
    if _two_states(thin[np.isfinite(thin)], least_amplitude_v, LEAST_NEAR_SLOW) is None:
        return False
    known = np.isfinite(series)
    levels = _two_states(series[known], least_amplitude_v, LEAST_NEAR_SLOW)
    if levels is None:
        return False
    time_s = np.arange(series.size) * sample_interval_s
    instants_s, rising = crossing_instants(time_s[known], series[known], level_v=levels.reference_v(0.5))
    return any(
        _even(np.diff(instants_s[chosen]), least_periods, largest_wander, 2.0 * sample_interval_s)
        for chosen in (rising, ~rising)
    )


def _even(periods_s: NDArray[np.float64], least: int, wander: float, unsure_s: float) -> bool:
    if periods_s.size < least:
        return False
    return bool(np.ptp(periods_s) <= wander * float(np.median(periods_s)) + unsure_s)


def _two_states(
    samples: NDArray[np.float64], least_amplitude_v: float, least_near: float
) -> StateLevels | None:
    """Both states, where most samples lie near one of them and each is taken for a twentieth of the time."""
    levels = state_levels(samples)
    if levels is None or levels.amplitude_v < least_amplitude_v:
        return None
    near = 0.08 * levels.amplitude_v
    shares = [float(np.mean(np.abs(samples - level) <= near)) for level in (levels.low_v, levels.high_v)]
    return levels if sum(shares) >= least_near and min(shares) >= 0.05 else None
