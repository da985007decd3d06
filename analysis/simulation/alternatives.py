"""Other physics of the break-up than the main model, to see whether the analysis leans on one of them."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace

import numpy as np
from scipy.ndimage import maximum_filter1d
from scipy.signal import lfilter

from analysis.captures.model import Step
from analysis.intervals import Interval
from analysis.simulation.circuit import Floats
from analysis.simulation.scenario import RecordPlan, Scenario
from analysis.simulation.track import WornBand, coloured

BreakUp = Callable[[WornBand, Floats, Floats, float, np.random.Generator], Floats]


def broken_up(
    physics: str,
    bands: Sequence[WornBand],
    travel_percent: Floats,
    sound_v: Floats,
    interval_s: float,
    rng: np.random.Generator,
) -> Floats:
    """Signal with break-up inside the bands, after one of `PHYSICS` or `CONTACTLESS`.

    Parameters
    ----------
    physics : str
        A key of either.
    bands : sequence of WornBand
        Their outline and severity count, not their grain.
    travel_percent, sound_v : ndarray, shape (n,)
        The path, and the voltage of a sound track along it.
    interval_s : float
        Seconds between points.

    Returns
    -------
    ndarray, shape (n,)
        Not below 0 V.
    """
    signal = sound_v
    for band in bands:
        signal = (PHYSICS | CONTACTLESS)[physics](band, travel_percent, signal, interval_s, rng)
    return np.maximum(signal, 0.0)


def noise_bursts(
    band: WornBand, travel: Floats, signal: Floats, interval_s: float, rng: np.random.Generator
) -> Floats:
    """Additive noise of some tenths of a volt, low-passed by the input filter."""
    noise = coloured(rng, travel.shape[0], 10.0 ** rng.uniform(-4.0, -2.7), interval_s)
    return signal + band.outline(travel) * noise * (0.03 + 0.6 * band.severity)


def dropouts(
    band: WornBand, travel: Floats, signal: Floats, interval_s: float, rng: np.random.Generator
) -> Floats:
    """Drop-outs by a factor, each millisecond with a fixed probability; slow recovery."""
    block = max(int(rng.uniform(0.0003, 0.003) / interval_s), 1)
    hits = rng.random(travel.shape[0] // block + 1) < 0.08 + 0.7 * band.severity
    depth = np.repeat(hits * rng.uniform(0.05, 1.0, hits.shape[0]), block)[: travel.shape[0]]
    loss = band.outline(travel) * depth
    keep = float(np.exp(-interval_s / rng.uniform(0.0001, 0.004)))
    loss = np.maximum(loss, lfilter([1.0 - keep], [1.0, -keep], loss))
    return np.asarray(signal * (1.0 - loss), dtype=np.float64)


def sticking(
    band: WornBand, travel: Floats, signal: Floats, interval_s: float, rng: np.random.Generator
) -> Floats:
    """The output hangs and jumps: inside the band it follows in steps with a hysteresis."""
    inside = np.flatnonzero(band.outline(travel) > 0.5)
    stuck = signal.copy()
    if inside.size == 0:
        return stuck
    step = 0.01 + 0.12 * band.severity
    block = max(int(rng.uniform(0.002, 0.02) / interval_s), 1)
    jumps = np.repeat(rng.standard_normal(inside.size // block + 1), block)[: inside.size]
    stuck[inside] = np.round(signal[inside] / step) * step + 0.8 * step * jumps
    return stuck


def humped(
    band: WornBand, travel: Floats, signal: Floats, interval_s: float, rng: np.random.Generator
) -> Floats:
    """A Gaussian hump of contact resistance over a 100 kΩ load, modulated by the sliding contact."""
    sigma = max(band.travel.length / 4.0, 0.1)
    hump = np.exp(-0.5 * ((travel - band.travel.centre) / sigma) ** 2)
    slide = np.exp(1.5 * coloured(rng, travel.shape[0], 0.0005, interval_s))
    ohm = 2e3 * 10.0 ** (2.5 * band.severity) * hump * slide * (hump > 0.13)
    return np.asarray(signal / (1.0 + ohm / 100e3), dtype=np.float64)


def spiking(
    band: WornBand, travel: Floats, signal: Floats, interval_s: float, rng: np.random.Generator
) -> Floats:
    """Openings of a few milliseconds to one rail, a Poisson process in the travelled distance."""
    moved = np.abs(np.diff(travel, prepend=travel[0])) * band.outline(travel)
    begins = rng.random(travel.shape[0]) < moved * (1.0 + 12.0 * band.severity)
    length = max(int(rng.uniform(0.0005, 0.006) / interval_s), 1)
    open_now = maximum_filter1d(begins.astype(np.float64), length) * (band.outline(travel) > 0.0)
    rail = 4.95 if int(band.severity * 1_000) % 3 == 0 else 0.05  # one rail for the whole capture
    return signal + open_now * (rail - signal)


def clamping(
    band: WornBand, travel: Floats, signal: Floats, interval_s: float, rng: np.random.Generator
) -> Floats:
    """A contactless sensor whose electronics see no field there and go to their diagnostic level."""
    inside = band.outline(travel) > 0.5
    doubt = coloured(rng, travel.shape[0], 0.02, interval_s) < 0.5 + 3.0 * band.severity
    level = 0.1 if int(band.severity * 1_000) % 2 else 4.9
    return np.where(inside & doubt, level, signal)


def stepping(
    band: WornBand, travel: Floats, signal: Floats, interval_s: float, rng: np.random.Generator
) -> Floats:
    """A contactless sensor that jumps between two angles which it cannot tell apart."""
    torn = coloured(rng, travel.shape[0], 0.004, interval_s) > 0.0
    return signal + band.outline(travel) * torn * (0.08 + 0.6 * band.severity)


PHYSICS: dict[str, BreakUp] = {
    "noise_bursts": noise_bursts,
    "dropouts": dropouts,
    "sticking": sticking,
    "humped": humped,
    "spiking": spiking,
}
CONTACTLESS: dict[str, BreakUp] = {"clamping": clamping, "stepping": stepping, "sticking": sticking}


def otherwise(scenario: Scenario, rng: np.random.Generator) -> Scenario:
    """The same visit with another contact, often another motion and another kind of sampling."""
    name = list(PHYSICS)[int(rng.integers(0, len(PHYSICS)))]
    if scenario.physics != "main":
        name = scenario.physics
    recorder = replace(scenario.recorder, averaging=bool(rng.random() < 0.3))
    plans = scenario.plans
    if rng.random() < 0.5:
        machine = triangle if rng.random() < 0.5 else sinusoid
        plans = tuple(_driven(plan, scenario.sensor.stops, machine, rng) for plan in plans)
    return replace(scenario, physics=name, recorder=recorder, plans=plans)


def _driven(
    plan: RecordPlan,
    stops: Interval,
    machine: Callable[[int, Interval, int], Floats],
    rng: np.random.Generator,
) -> RecordPlan:
    """A sweep record moved by a machine in the same time, over what it covered before."""
    path = plan.arm_percent
    if plan.step is not Step.SWEEP or np.ptp(path) < 5.0:
        return plan
    covered = Interval(max(float(path.min()), stops.start), min(float(path.max()), stops.stop))
    strokes = max(1, int(np.abs(np.diff(path)).sum() / max(covered.length, 1.0)))
    return replace(plan, arm_percent=machine(path.shape[0], covered, strokes))


def triangle(count: int, stops: Interval, strokes: int) -> Floats:
    """A machine that goes to and fro at constant speed, shape (count,)."""
    phase = np.arange(count) / count * strokes
    return stops.start + stops.length * (1.0 - np.abs(phase % 2.0 - 1.0))


def sinusoid(count: int, stops: Interval, strokes: int) -> Floats:
    """A crank, shape (count,)."""
    phase = np.arange(count) / count * strokes
    return np.asarray(stops.start + stops.length * (0.5 - 0.5 * np.cos(np.pi * phase)), dtype=np.float64)
