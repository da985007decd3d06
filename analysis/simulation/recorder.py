"""The recorder: it samples, errs, adds noise, clips and quantises.

An ideal quantiser leaves an error of LSB/√12 rms (IEEE 1057/1241, from memory); everything else here is a
weakness seen in recorders: noise that grows with the voltage, a converter made of two interleaved ones
with different offsets (every other sample), a channel multiplexer (skew), single wrong samples, gaps.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from scipy.signal import lfilter

from analysis.captures.model import Scaling
from analysis.simulation.circuit import Floats

FILL = -32_768


@dataclass(frozen=True, slots=True)
class Recorder:
    """A recorder of two's-complement counts over ``±range_v``.

    Parameters
    ----------
    rate_hz : float
        Samples a second of each channel.
    bits : int
        8 to 16.
    range_v : float
        Full scale either way.
    noise_v : float
        Gaussian noise, rms, in volts at the tip of the probe.
    noise_growth : float
        Share by which the noise grows from 0 V to 5 V.
    interleave_v : float
        Offset between odd and even samples.
    spikes_per_s, spike_v : float
        Rate and size of single wrong samples.
    gaps_per_s : float
        Rate of stretches in which its clock or its transfer failed.
    gap_kind : str
        ``"missing"``: marked as missing; ``"held"``: the last value repeated; ``"spliced"``: left out, so
        that the record goes on as if no time had passed.
    skew : float
        Share of the interval between one channel and the next.
    gain_error, offset_v : float
        True error of this specimen; the file states limits, not these.
    averaging : bool
        Whether a sample is the mean over its interval instead of a point.
    corner_hz : float
        Corner of a first-order filter at its input; 0 for none.
    stated_gain_error, stated_offset_error_v : float or None
        What the file says of its accuracy; None where it says nothing.
    """

    rate_hz: float = 10_000.0
    bits: int = 12
    range_v: float = 10.0
    noise_v: float = 0.002
    noise_growth: float = 0.0
    interleave_v: float = 0.0
    spikes_per_s: float = 0.0
    spike_v: float = 0.0
    gaps_per_s: float = 0.0
    gap_kind: str = "missing"
    skew: float = 0.0
    gain_error: float = 0.0
    offset_v: float = 0.0
    averaging: bool = False
    corner_hz: float = 0.0
    stated_gain_error: float | None = 0.005
    stated_offset_error_v: float | None = 0.01

    @property
    def step_v(self) -> float:
        """Volts a count."""
        return 2.0 * self.range_v / 2.0**self.bits

    @property
    def floor_v(self) -> float:
        """Noise and quantisation together, rms at 2.5 V."""
        noise = self.noise_v * (1.0 + 0.5 * self.noise_growth)
        return float(np.hypot(noise, self.step_v / np.sqrt(12.0)))

    @property
    def scaling(self) -> Scaling:
        """How its counts become volts."""
        top = 2.0 ** (self.bits - 1)
        return Scaling(self.step_v, 0.0, float(FILL), max(-top, FILL + 1.0), top - 1.0)


def sampled(inner: Floats, factor: int, recorder: Recorder, channel: int) -> Floats:
    """Take every `factor`-th inner value, later by the multiplexer's skew; shape (n / factor,)."""
    if recorder.corner_hz > 0.0:
        keep = float(np.exp(-2.0 * np.pi * recorder.corner_hz / (recorder.rate_hz * factor)))
        smoothed, _ = lfilter([1.0 - keep], [1.0, -keep], inner, zi=[keep * inner[0]])
        inner = np.asarray(smoothed, dtype=np.float64)
    shift = round(recorder.skew * channel * factor)
    if recorder.averaging and factor > 1:
        return np.asarray(inner.reshape(-1, factor).mean(axis=1), dtype=np.float64)
    if shift == 0:
        return inner[::factor]
    return np.concatenate([inner[shift:], np.full(shift, inner[-1])])[::factor]


def digitised(voltage_v: Floats, recorder: Recorder, rng: np.random.Generator) -> NDArray[np.int16]:
    """Counts of a channel, same shape; clipped at the range, `FILL` in the gaps.

    Parameters
    ----------
    voltage_v : ndarray, shape (n,)
        At the tip of the probe, one value a sample.
    recorder : Recorder
        Whose weaknesses.
    rng : Generator
        Source of chance.
    """
    count = voltage_v.shape[0]
    unit = np.asarray(rng.standard_normal(count, dtype=np.float32), dtype=np.float64)
    noise = unit * recorder.noise_v
    if recorder.noise_growth:
        noise *= 1.0 + recorder.noise_growth * np.abs(voltage_v) / 5.0
    read = voltage_v * (1.0 + recorder.gain_error) + recorder.offset_v + noise
    if recorder.interleave_v:
        read[1::2] += recorder.interleave_v
    wrong = rng.poisson(recorder.spikes_per_s * count / recorder.rate_hz)
    if wrong and count:
        at = rng.integers(0, count, wrong)
        read[at] += recorder.spike_v * rng.choice([-1.0, 1.0], wrong) * rng.uniform(0.3, 1.0, wrong)
    top = 2 ** (recorder.bits - 1)
    counts = np.clip(np.rint(read / recorder.step_v), max(-top, FILL + 1), top - 1)
    return np.asarray(counts, dtype=np.int16)


def gaps(count: int, recorder: Recorder, rng: np.random.Generator) -> NDArray[np.bool_]:
    """Where the recorder lost samples, shape (count,); the same on every channel."""
    missing = np.zeros(count, dtype=np.bool_)
    for _ in range(rng.poisson(recorder.gaps_per_s * count / recorder.rate_hz)):
        start = int(rng.integers(0, max(count, 1)))
        missing[start : start + 1 + int(rng.exponential(0.01) * recorder.rate_hz)] = True
    return missing


def with_gaps(counts: NDArray[np.int16], lost: NDArray[np.bool_], recorder: Recorder) -> NDArray[np.int16]:
    """A channel's counts with its lost samples marked, held or left out; the latter are shorter."""
    if not lost.any():
        return counts
    if recorder.gap_kind == "spliced":
        return counts[~lost]
    if recorder.gap_kind == "held":
        last = np.maximum.accumulate(np.where(lost, 0, np.arange(counts.shape[0])))
        return counts[last]
    marked = counts.copy()
    marked[lost] = FILL
    return marked
