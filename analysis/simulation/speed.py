"""How long `examine` takes, and how much memory, beside one smoothing pass over each channel.

``python -m analysis.simulation.figures --speed`` measures each length in a fresh process, which is
``python -m analysis.simulation.speed`` here.
"""

from __future__ import annotations

import argparse
import gc
import json
import subprocess
import sys
import time
import tracemalloc
from collections.abc import Callable, Sequence
from dataclasses import asdict, dataclass

import numpy as np
from numpy.typing import NDArray
from scipy.signal import savgol_filter

from analysis.captures.memory import make_capture, make_record
from analysis.captures.model import Capture, Role, Scaling, Step
from analysis.diagnosis.examine import examine
from analysis.intervals import Interval
from analysis.simulation import hand
from analysis.simulation.tables import markdown, number

MOST_RATIO = 1.0
"""Examining takes no longer than the smoothing passes."""

MOST_BYTES_A_SAMPLE = 6.0
"""Memory beyond the input, for each sample of each channel."""

SIZES = ((1_000_000, 10_000.0), (10_000_000, 10_000.0), (30_000_000, 10_000.0))
"""Samples a channel and samples a second: does the time grow with the length alone?"""

RATES = ((10_000_000, 50_000.0), (20_000_000, 50_000.0), (10_000_000, 1_000.0))

LARGEST = (100_000_000, 50_000.0)
"""Must work on a machine of 8 GiB: measured once, memory of the whole process and all."""

LIMITED_FROM = 10_000_000
"""The limits are for records of this length: a short one has fixed costs to bear."""

PATIENCE_S = 20.0
"""Longer repetitions are not worth waiting for."""

BAND = Interval(41.0, 46.0)
STOPS = Interval(8.0, 91.0)
SCALING = Scaling(20.0 / 2**14, 0.0, -32_768.0, -8_192.0, 8_191.0)
BLOCK = 1 << 20
CHANNELS = 3


@dataclass(frozen=True, slots=True)
class Measured:
    """One measurement.

    Parameters
    ----------
    samples : int
        Of each of three channels.
    rate_hz : float
        Samples a second.
    examine_s, smoothing_s : float
        Best of the repetitions, taken in turns.
    bytes_a_sample : float
        Peak of traced memory beyond the input over the samples of all channels.
    process_gib : float
        Most memory that the whole process had taken up once `examine` was through, the input and Python
        itself included, before anything was smoothed; NaN where the system does not tell.
    """

    samples: int
    rate_hz: float
    examine_s: float
    smoothing_s: float
    bytes_a_sample: float
    process_gib: float = float("nan")

    @property
    def ratio(self) -> float:
        """Time of `examine` in smoothing passes over the three channels."""
        return self.examine_s / self.smoothing_s


def long_capture(samples: int, rate_hz: float, seed: int = 7) -> Capture:
    """One long hand sweep of a worn track, three channels of 14 bits with a noise of 2 mV.

    Parameters
    ----------
    samples : int
        Of each channel.
    rate_hz : float
        Samples a second.
    seed : int
        Source of chance.
    """
    rng = np.random.default_rng(seed)
    path = _strokes(rng, samples / rate_hz)
    roles = (Role.SIGNAL, Role.REFERENCE, Role.GROUND)
    counts = {role: np.empty(samples, dtype=np.int16) for role in roles}
    for start in range(0, samples, BLOCK):
        span = slice(start, min(start + BLOCK, samples))
        for role, voltage_v in _voltages(rng, path, span, rate_hz).items():
            noisy = voltage_v + 0.002 * rng.standard_normal(voltage_v.shape[0], dtype=np.float32)
            counts[role][span] = np.rint(noisy / SCALING.scale_factor)
    channels = {role: (taken, SCALING) for role, taken in counts.items()}
    return make_capture([make_record("001", 1.0 / rate_hz, channels, step=Step.SWEEP)])


def _strokes(rng: np.random.Generator, seconds: float) -> NDArray[np.float64]:
    """The arm's path at `hand.NODE_HZ`: twelve strokes of a calm hand, again and again."""
    once = hand.sweep(rng, STOPS, 12, hand.HandStyle(stroke_s=1.5))
    back = np.concatenate([once, once[::-1]])  # so that the end meets the beginning
    return np.tile(back, int(seconds * hand.NODE_HZ / back.shape[0]) + 1)


def _voltages(
    rng: np.random.Generator, path: NDArray[np.float64], span: slice, rate_hz: float
) -> dict[Role, NDArray[np.float64]]:
    time_s = np.arange(span.start, span.stop) / rate_hz
    first = int(time_s[0] * hand.NODE_HZ)
    near = path[first : int(time_s[-1] * hand.NODE_HZ) + 2]
    travel = np.interp(time_s, (first + np.arange(near.shape[0])) / hand.NODE_HZ, near)
    # Openings of about two milliseconds, each of its own depth.
    number_of = (time_s / 0.002).astype(np.intp)
    depth = rng.uniform(0.0, 0.8, number_of[-1] - number_of[0] + 1)[number_of - number_of[0]]
    inside = (travel >= BAND.start) & (travel < BAND.stop)
    signal = 0.01 + 0.0499 * travel * np.where(inside, 1.0 - depth, 1.0)
    return {
        Role.SIGNAL: signal,
        Role.REFERENCE: np.full_like(travel, 5.0),
        Role.GROUND: np.full_like(travel, 0.01),
    }


def measure(samples: int, rate_hz: float, *, repetitions: int = 5) -> Measured:
    """Time `examine` and the smoothing in turns, then trace the memory of another run."""
    capture = long_capture(samples, rate_hz)
    examined = [_seconds(lambda: examine(capture))]
    process_gib = _process_gib()
    smoothed = [_smoothing_s(capture)]
    while len(examined) < repetitions and sum(examined) < PATIENCE_S and samples < LARGEST[0]:
        examined.append(_seconds(lambda: examine(capture)))
        smoothed.append(_smoothing_s(capture))
    gc.collect()
    tracemalloc.start()
    before, _ = tracemalloc.get_traced_memory()
    examine(capture)
    _, peak = tracemalloc.get_traced_memory()
    tracemalloc.stop()
    beyond = (peak - before) / (CHANNELS * samples)
    return Measured(samples, rate_hz, min(examined), min(smoothed), beyond, process_gib)


def _process_gib() -> float:
    """Most memory that this process ever took up, in GiB; NaN where the system does not tell (Windows)."""
    try:
        import resource
    except ImportError:
        return float("nan")
    unit = 1 if sys.platform == "darwin" else 1024
    return resource.getrusage(resource.RUSAGE_SELF).ru_maxrss * unit / 2**30


def _smoothing_s(capture: Capture) -> float:
    """Seconds of one pass over the volts of each channel, their making left out."""
    total = 0.0
    for channel in capture.records[0].channels:
        voltage_v = channel.volts()
        total += _seconds(lambda voltage_v=voltage_v: savgol_filter(voltage_v, 101, 2))  # type: ignore[misc]
    return total


def _seconds(work: Callable[[], object]) -> float:
    begin = time.perf_counter()
    work()
    return time.perf_counter() - begin


def measured_apart(samples: int, rate_hz: float) -> Measured:
    """`measure` in a fresh process."""
    command = [sys.executable, "-m", "analysis.simulation.speed", str(samples), str(rate_hz)]
    done = subprocess.run(command, capture_output=True, text=True, check=True)
    return Measured(**json.loads(done.stdout))


def speed_report(taken: Sequence[Measured]) -> str:
    """A table of the measurements, saying where a limit is missed, and how the time grows."""
    rows = [
        (
            f"{item.samples / 1e6:g} million at {item.rate_hz / 1e3:g} kS/s",
            number(item.examine_s, 2),
            number(item.smoothing_s, 2),
            _held(item, item.ratio, MOST_RATIO),
            _held(item, item.bytes_a_sample, MOST_BYTES_A_SAMPLE),
            number(1e6 * item.examine_s / (CHANNELS * item.samples), 3),
            number(item.process_gib, 2),
        )
        for item in taken
    ]
    head = (
        "3 channels of",
        "examine, s",
        "smoothing, s",
        f"ratio, at most {MOST_RATIO:g}",
        f"bytes a sample, at most {MOST_BYTES_A_SAMPLE:g}",
        "µs a sample",
        "whole process, GiB",
    )
    return "### Speed and memory\n\n" + markdown(head, rows) + _growth(taken)


def _held(item: Measured, value: float, limit: float) -> str:
    if item.samples < LIMITED_FROM:
        return f"{value:.2f}"
    return f"{value:.2f}, {'met' if value <= limit else 'not met'}"


def _growth(taken: Sequence[Measured]) -> str:
    """How the time of each long record compares with that of the next shorter one at the same rate."""
    lines = []
    for longer in sorted(taken, key=lambda item: (item.rate_hz, item.samples)):
        others = [item for item in taken if item.rate_hz == longer.rate_hz and item.samples < longer.samples]
        if longer.samples < LIMITED_FROM or not others:
            continue
        shorter = max(others, key=lambda item: item.samples)
        lines.append(
            f"From {shorter.samples / 1e6:g} to {longer.samples / 1e6:g} million samples at"
            f" {longer.rate_hz / 1e3:g} kS/s, times {longer.samples / shorter.samples:.2g}, the time grows by"
            f" {longer.examine_s / shorter.examine_s:.2g}."
        )
    return "\n\n" + " ".join(lines) if lines else ""


def main() -> None:
    """Measure one length and print it as JSON."""
    parser = argparse.ArgumentParser(description=main.__doc__)
    parser.add_argument("samples", type=int)
    parser.add_argument("rate_hz", type=float)
    chosen = parser.parse_args()
    print(json.dumps(asdict(measure(chosen.samples, chosen.rate_hz))))


if __name__ == "__main__":
    main()
