"""Hand-made motion and volts, whose truth is known by construction."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from analysis.captures.memory import make_record
from analysis.captures.model import Record, Role, Scaling, Step
from analysis.signals.cells import CellSeries, Feed, reduce_record
from analysis.signals.facts import ArmPath
from analysis.signals.motion import Motion, follow
from analysis.signals.outline import outline

Floats = NDArray[np.float64]

RATE_HZ = 2_000.0  # one sample a cell: what is put into a sample stands in its cell


def stroke(start: float, stop: float, seconds: float, rate_hz: float = RATE_HZ) -> Floats:
    """One minimum-jerk stroke, the hand's own (Flash and Hogan 1985): 10 u^3 - 15 u^4 + 6 u^5."""
    share = np.arange(round(seconds * rate_hz)) / (seconds * rate_hz)
    return np.asarray(start + (stop - start) * share**3 * (10.0 - 15.0 * share + 6.0 * share**2))


def rest(place: float, seconds: float, rate_hz: float = RATE_HZ) -> Floats:
    """An arm that stands still."""
    return np.full(round(seconds * rate_hz), place)


def strokes(
    count: int,
    *,
    low: float = 10.0,
    high: float = 90.0,
    seconds: float = 1.0,
    pause_s: float = 0.1,
    rate_hz: float = RATE_HZ,
) -> Floats:
    """Strokes to and fro between two stops, beginning and ending at rest."""
    made = [rest(low, pause_s, rate_hz)]
    for index in range(count):
        ends = (low, high) if index % 2 == 0 else (high, low)
        made += [stroke(*ends, seconds, rate_hz), rest(ends[1], pause_s, rate_hz)]
    return np.concatenate(made)


def noise(count: int, rms: float, seed: int = 0) -> Floats:
    """White noise from a seed."""
    return np.random.default_rng(seed).normal(0.0, rms, count)


def record_of(
    travel_percent: Floats,
    *,
    reference_v: Floats | float | None = None,
    ground_v: Floats | float | None = None,
    rate_hz: float = RATE_HZ,
    name: str = "001",
    step: Step | None = Step.SWEEP,
) -> Record:
    """A record in float volts whose signal stands at that share of the feed."""
    high = 5.0 if reference_v is None else reference_v
    low = 0.0 if ground_v is None else ground_v
    size = len(travel_percent)
    channels = {Role.SIGNAL: (low + (high - low) * travel_percent / 100.0, Scaling())}
    for role, volts in ((Role.REFERENCE, reference_v), (Role.GROUND, ground_v)):
        if volts is not None:
            channels[role] = (np.broadcast_to(np.asarray(volts, np.float64), (size,)).copy(), Scaling())
    return make_record(name, 1.0 / rate_hz, channels, step=step)


def travel_cells(travel_percent: Floats, *, rate_hz: float = RATE_HZ) -> tuple[CellSeries, float]:
    """Cells of the travel, and their length in seconds."""
    cells = reduce_record(record_of(travel_percent, rate_hz=rate_hz), Feed())
    return cells.travel[Role.SIGNAL], cells.cell_s


def followed(travel_percent: Floats, *, step_percent: float = 0.0, open_level: float | None = None) -> Motion:
    """The motion that the analysis makes of such a travel."""
    series, cell_s = travel_cells(travel_percent)
    drawn = outline(series, record="001", start_s=0.0, cell_s=cell_s, step_percent=step_percent)
    assert drawn is not None
    return follow(drawn, open_level=open_level)


def path_of(travel_percent: Floats, *, node_s: float = 0.002, record: str = "001") -> ArmPath:
    """A path that is known exactly."""
    time_s = node_s * (np.arange(len(travel_percent), dtype=np.float64) + 0.5)
    return ArmPath(record, time_s, travel_percent, np.full(len(travel_percent), 0.01))
