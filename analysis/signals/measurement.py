"""What a span of one channel reads: mean, RMS, extremes, noise, each with its standard uncertainty.

Missing samples (NaN) are left out and counted. The statistics behind it: `analysis.signals.statistics`.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import sqrt

import numpy as np
from numpy.typing import ArrayLike, NDArray

from analysis.captures.model import Channel
from analysis.signals.statistics import (
    MeanUncertainty,
    Noise,
    mean,
    mean_uncertainty,
    noise_about_course,
    present_values,
    smallest_step,
)
from analysis.signals.uncertainty import combined, expanded, resolution_uncertainty, standard_uncertainty

# Above half a step of noise the quantiser dithers and the deviation is trustworthy (Widrow & Kollar,
# Quantization Noise, 2008; from memory); below it, what is seen depends on the level.
_DITHER_STEPS = 0.5


@dataclass(frozen=True, slots=True)
class Reading:
    """One figure with what is known of its uncertainty.

    Parameters
    ----------
    value : float
        In volts.
    type_a : float
        Standard uncertainty seen in the samples themselves, autocorrelation included.
    type_b : float
        Standard uncertainty from resolution, gain and offset, as far as they are stated.
    accuracy_known : bool
        Whether the gain and offset errors that matter for this figure are in `type_b`.
    """

    value: float
    type_a: float
    type_b: float
    accuracy_known: bool

    @property
    def standard_uncertainty(self) -> float:
        """Type A and type B together."""
        return combined(self.type_a, self.type_b)

    @property
    def expanded_uncertainty(self) -> float:
        """With k = 2."""
        return expanded(self.standard_uncertainty)


@dataclass(frozen=True, slots=True)
class SpanReading:
    """What one channel reads over a span.

    Parameters
    ----------
    duration_s : float
        Samples, missing ones included, times the sample interval.
    count, missing : int
        Samples that were read, and samples that were missing.
    mean_v, rms_v : Reading
        Of the samples as they are.
    minimum_v, maximum_v, peak_to_peak_v : Reading
        The extremes as recorded, noise and all: they carry no type A.
    noise_v : Reading
        Standard deviation after the slow course was taken out; where `resolution_limited`, an upper bound
        (the deviation of a rounding error), and NaN where not even the resolution is known.
    resolution_limited : bool
        The noise is smaller than this recorder can show. It is then not zero: it is not known.
    effective_count : float
        Independent samples that the mean is worth.
    """

    duration_s: float
    count: int
    missing: int
    mean_v: Reading
    rms_v: Reading
    minimum_v: Reading
    maximum_v: Reading
    peak_to_peak_v: Reading
    noise_v: Reading
    resolution_limited: bool
    effective_count: float


def read_samples(
    voltage_v: ArrayLike,
    *,
    sample_interval_s: float,
    step_v: float = 0.0,
    gain_error: float | None = None,
    offset_error_v: float | None = None,
    course_s: float = 0.02,
) -> SpanReading:
    """Read a span of samples.

    Parameters
    ----------
    voltage_v : array_like, shape (n,)
        In volts; NaN where missing. Meant for the steady stretch of a check: ten million samples take one to
        two seconds and several copies, more than a whole examination may cost.
    sample_interval_s : float
        Seconds between samples.
    step_v : float
        Volts a count; 0 where unknown, and then taken from the samples as far as they show it.
    gain_error, offset_error_v : float or None
        Largest share of reading and largest offset (rectangular, JCGM 100, 4.3.7); None is unknown, left
        out of the uncertainty, and said so in `Reading.accuracy_known`.
    course_s : float
        Anything slower than this belongs to the course, not to the noise.

    Returns
    -------
    SpanReading

    Raises
    ------
    ValueError
        Where no sample is left, or the sample interval is not positive.
    """
    series = np.asarray(voltage_v, dtype=np.float64)
    present = present_values(series)
    if present.size == 0:
        raise ValueError(f"voltage_v must hold a sample that is not missing, got {series.size} missing ones")
    if not sample_interval_s > 0.0:
        raise ValueError(f"sample_interval_s must be positive, got {sample_interval_s}")
    step = step_v if step_v > 0.0 else smallest_step(present)
    accuracy = _Accuracy(step, gain_error, offset_error_v)
    average = mean_uncertainty(present)
    low, high = float(present.min()), float(present.max())
    nothing_moves = Noise(0.0, 0.0)  # decided by the samples, not by what rounding leaves of their deviation
    course = noise_about_course(series, sample_interval_s=sample_interval_s, course_s=course_s)
    noise, limited = _noise(course if high > low else nothing_moves, step, accuracy)
    middle = mean(present)
    return SpanReading(
        duration_s=series.size * sample_interval_s,
        count=present.size,
        missing=series.size - present.size,
        mean_v=accuracy.reading(middle, _stated(average)),
        rms_v=_rms(present, middle, accuracy),
        minimum_v=accuracy.reading(low, 0.0),
        maximum_v=accuracy.reading(high, 0.0),
        peak_to_peak_v=accuracy.difference(high - low),
        noise_v=noise,
        resolution_limited=limited,
        effective_count=average.effective_count,
    )


def read_span(
    channel: Channel,
    *,
    sample_interval_s: float,
    start: int = 0,
    stop: int | None = None,
    course_s: float = 0.02,
) -> SpanReading:
    """Read samples ``[start, stop)`` of a channel, with its own resolution and stated errors.

    Raises
    ------
    ValueError
        Where no sample is left in the span.
    CaptureError
        Where the file is damaged or gone.
    """
    return read_samples(
        channel.volts(start, stop),
        sample_interval_s=sample_interval_s,
        step_v=channel.step_v,
        gain_error=channel.gain_error,
        offset_error_v=channel.offset_error_v,
        course_s=course_s,
    )


@dataclass(frozen=True, slots=True)
class _Accuracy:
    """What is known of a channel, turned into type B uncertainties."""

    step_v: float
    gain_error: float | None
    offset_error_v: float | None

    def reading(self, value: float, type_a: float, *, offset_share: float = 1.0) -> Reading:
        """A level: resolution, gain and offset."""
        type_b = combined(
            resolution_uncertainty(self.step_v), self._gain_u(value), offset_share * self._offset_u()
        )
        known = self.gain_error is not None and self.offset_error_v is not None
        return Reading(value, type_a, type_b, known)

    def difference(self, value: float) -> Reading:
        """A difference of two levels: the offset cancels, the roundings do not."""
        type_b = combined(sqrt(2.0) * resolution_uncertainty(self.step_v), self._gain_u(value))
        return Reading(value, 0.0, type_b, self.gain_error is not None)

    def scatter(self, value: float, type_a: float) -> Reading:
        """A deviation: only the gain matters."""
        return Reading(value, type_a, self._gain_u(value), self.gain_error is not None)

    def _gain_u(self, value: float) -> float:
        return standard_uncertainty(abs(value) * (self.gain_error or 0.0), distribution="rectangular")

    def _offset_u(self) -> float:
        return standard_uncertainty(self.offset_error_v or 0.0, distribution="rectangular")


def _stated(average: MeanUncertainty) -> float:
    """Type A of a mean; 0 for a single sample, which says nothing of its spread: its resolution is type B."""
    return average.standard_uncertainty if np.isfinite(average.standard_uncertainty) else 0.0


def _rms(present: NDArray[np.float64], middle: float, accuracy: _Accuracy) -> Reading:
    """Root of mean square; type A from that of the squares (delta rule), offset by d rms = mean / rms."""
    spread = present - middle
    value = sqrt(middle**2 + float(np.mean(spread**2)))
    if value == 0.0:
        return accuracy.reading(0.0, 0.0)
    type_a = _stated(mean_uncertainty(spread * (spread + 2.0 * middle))) / (2.0 * value)
    return accuracy.reading(value, type_a, offset_share=abs(middle) / value)


def _noise(seen: Noise, step_v: float, accuracy: _Accuracy) -> tuple[Reading, bool]:
    """Noise, and whether it is below what the resolution can show."""
    if seen.deviation > _DITHER_STEPS * step_v:
        return accuracy.scatter(seen.deviation, seen.deviation / sqrt(2.0 * seen.degrees_of_freedom)), False
    floor_v = max(step_v / sqrt(12.0), seen.deviation) if step_v > 0.0 else float("nan")
    return accuracy.scatter(floor_v, 0.0), True
