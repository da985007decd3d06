"""Draws of everything that differs from one visit to the next, over the ranges that the trade meets."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np

from analysis.captures.model import Role, Step
from analysis.intervals import Interval
from analysis.simulation import hand, road
from analysis.simulation.circuit import Circuit, Floats
from analysis.simulation.disturbances import Interference
from analysis.simulation.measurement_faults import ProbeFault
from analysis.simulation.recorder import Recorder
from analysis.simulation.scenario import THREE, RecordPlan
from analysis.simulation.track import Sensor, WornBand

RATES_HZ = (500.0, 1_000.0, 2_000.0, 5_000.0, 10_000.0, 20_000.0, 50_000.0)
RATE_WEIGHTS = (0.12, 0.2, 0.2, 0.2, 0.16, 0.07, 0.05)
MOST_SAMPLES = 220_000  # of a record's channel, so that a corpus of hundreds stays a matter of a minute


@dataclass(frozen=True, slots=True)
class Visit:
    """What a technician brings and finds: everything but the fault.

    Parameters
    ----------
    layout : str
        ``"full"``: ground, reference, wiggle and sweep records; ``"single"``: one sweep record; ``"long"``:
        one record of one probe that goes from wire to wire.
    roles : tuple of Role
        Of the sweep records; one role means a recorder moved from wire to wire.
    crossings : int
        Strokes over all sweep records.
    driving : bool
        Whether the arm is moved by the road instead of the hand.
    """

    sensor: Sensor
    circuit: Circuit
    recorder: Recorder
    style: hand.HandStyle
    interference: Interference
    layout: str
    roles: tuple[Role, ...]
    crossings: int
    driving: bool
    told: bool
    reference_v: float
    ground_v: float
    profile: str


def log_uniform(rng: np.random.Generator, low: float, high: float) -> float:
    """A number between `low` and `high`, uniform in its logarithm."""
    return float(np.exp(rng.uniform(np.log(low), np.log(high))))


def chance(rng: np.random.Generator, share: float) -> bool:
    """True in that share of the draws."""
    return bool(rng.random() < share)


def draw_visit(rng: np.random.Generator, *, nasty: float = 0.15) -> Visit:
    """Draw a visit; `nasty` is the share of visits that each confounder of a sound sensor occurs in."""
    circuit, track_ohm = draw_circuit(rng)
    profile = str(rng.choice(["ride-height", "ride-height", "throttle", "generic-ratiometric", ""]))
    sensor = draw_sensor(rng, track_ohm)
    if profile == "throttle":  # it rests closed
        sensor = replace(sensor, rest_percent=sensor.stops.start + rng.uniform(0.3, 3.0))
    recorder = draw_recorder(rng, nasty)
    full = chance(rng, 0.75)
    roles = THREE if chance(rng, 0.6) else (Role.SIGNAL,)
    layout = "full" if full else "long" if len(roles) == 1 and chance(rng, 0.35) else "single"
    return Visit(
        sensor,
        circuit,
        recorder,
        draw_style(rng, recorder.rate_hz, nasty),
        draw_interference(rng, nasty),
        layout,
        roles,
        int(rng.integers(2, 13)),
        profile != "throttle" and chance(rng, 0.15),
        chance(rng, 0.9),
        float(rng.normal(5.0, 0.02)) if full or len(roles) > 1 else float(rng.normal(5.0, 0.01)),
        float(rng.uniform(0.002, 0.04)),
        profile,
    )


def draw_circuit(rng: np.random.Generator) -> tuple[Circuit, float]:
    """Circuit and track resistance; a designer keeps the pull forty times above the track."""
    pull = None if chance(rng, 0.35) else log_uniform(rng, 50e3, 1e6)
    track_ohm = log_uniform(rng, 1e3, min(10e3, (pull or 1e6) / 40.0))
    filter_f = 0.0 if chance(rng, 0.2) else log_uniform(rng, 0.1e-9, 100e-9)
    series = 0.0 if chance(rng, 0.5) else rng.uniform(100.0, 1_000.0)
    return Circuit(pull, chance(rng, 0.6), filter_f, series, 1e6, rng.uniform(80e-12, 400e-12)), track_ohm


def draw_sensor(rng: np.random.Generator, track_ohm: float) -> Sensor:
    """A sound sensor; it rests mid-travel and spans some 0.5-4.5 V."""
    stops = Interval(rng.uniform(5.0, 13.0), rng.uniform(85.0, 94.0))
    return Sensor(
        track_ohm, rng.uniform(30.0, 300.0), stops, rng.uniform(38.0, 62.0), (), log_uniform(rng, 0.005, 0.09)
    )


def draw_recorder(rng: np.random.Generator, nasty: float) -> Recorder:
    """A recorder, with each weakness in a share `nasty` of the draws."""
    bits = int(rng.choice([8, 10, 12, 14, 16], p=[0.22, 0.14, 0.34, 0.12, 0.18]))
    range_v = float(rng.choice([5.5, 8.0, 10.0, 15.0, 20.0]))
    step_v = 2.0 * range_v / 2**bits
    noise_v = min(max(log_uniform(rng, 0.0004, 0.006), rng.uniform(0.1, 0.5) * min(step_v, 0.03)), 0.02)
    return Recorder(
        rate_hz=float(rng.choice(RATES_HZ, p=RATE_WEIGHTS)),
        bits=bits,
        range_v=range_v,
        noise_v=noise_v,
        noise_growth=rng.uniform(0.5, 4.0) if chance(rng, nasty) else 0.0,
        interleave_v=rng.uniform(0.002, 0.03) if chance(rng, nasty) else 0.0,
        spikes_per_s=log_uniform(rng, 0.05, 2.0) if chance(rng, nasty) else 0.0,
        spike_v=log_uniform(rng, 0.1, 3.0),
        gaps_per_s=log_uniform(rng, 0.05, 1.0) if chance(rng, 0.6 * nasty) else 0.0,
        gap_kind=str(rng.choice(["missing", "held", "spliced", "spliced"])),
        skew=float(rng.choice([0.0, 0.0, 0.25, 0.33])),
        gain_error=float(rng.normal(0.0, 0.0015)),
        offset_v=float(rng.normal(0.0, 0.003)),
        stated_gain_error=0.005 if chance(rng, 0.7) else None,
        stated_offset_error_v=0.01,
        corner_hz=log_uniform(rng, 200.0, 5_000.0) if chance(rng, 0.5 * nasty) else 0.0,
    )


def draw_style(rng: np.random.Generator, rate_hz: float, nasty: float) -> hand.HandStyle:
    """A hand, from calm to clumsy; fast recorders see quick strokes only, to keep records short."""
    slowest = 0.7 if rate_hz > 30e3 else 1.5 if rate_hz > 15e3 else 4.0
    clumsy = 3.0 if chance(rng, 2.0 * nasty) else 1.0
    return hand.HandStyle(
        stroke_s=log_uniform(rng, 0.35, slowest),
        spread=rng.uniform(0.1, 0.5),
        tremor_percent=log_uniform(rng, 0.01, 0.15) * clumsy,
        tremor_hz=rng.uniform(8.5, 11.5),
        stall=0.08 * clumsy,
        slip=0.04 * clumsy,
        turn_back=0.05 * clumsy,
        partial=0.1 * clumsy,
        knock_percent=rng.uniform(0.3, 2.5) if chance(rng, nasty) else 0.0,
        pause_s=rng.uniform(0.05, 0.5) if slowest > 1.0 else 0.1,
        catch_percent=rng.uniform(25.0, 75.0) if chance(rng, 0.4 * nasty) else None,
    )


def draw_interference(rng: np.random.Generator, nasty: float) -> Interference:
    """Ignition spikes, hum and ripple, each in a share `nasty` of the draws."""
    return Interference(
        spark_v=log_uniform(rng, 0.05, 2.0) if chance(rng, nasty) else 0.0,
        spark_hz=rng.uniform(8.0, 60.0),
        ring_hz=log_uniform(rng, 1_000.0, 20_000.0),
        decay_s=log_uniform(rng, 0.0001, 0.0008),
        hum_v=log_uniform(rng, 0.003, 0.05) if chance(rng, nasty) else 0.0,
        hum_hz=float(rng.choice([50.0, 60.0])),
        ripple_v=log_uniform(rng, 0.005, 0.08) if chance(rng, nasty) else 0.0,
        ripple_hz=log_uniform(rng, 100.0, 2_000.0),
        pickup_a=log_uniform(rng, 3e-9, 300e-9) if chance(rng, 0.4) else 0.0,
    )


def draw_band(rng: np.random.Generator, sensor: Sensor, *, wiped: float = 0.0) -> WornBand:
    """A worn band, 0.8-12 % wide, anywhere within the visited travel, often about the rest position."""
    width = log_uniform(rng, 0.8, 12.0)
    low, high = sensor.stops.start, sensor.stops.stop
    if chance(rng, 0.3):
        centre = sensor.rest_percent + rng.normal(0.0, 4.0)
    else:
        centre = rng.uniform(low + 0.3 * width, high - 0.3 * width)
    start = float(np.clip(centre - 0.5 * width, low - 0.4 * width, high - 0.6 * width))
    shares = rng.dirichlet([3.0, 1.5, 1.0, 1.0])
    return WornBand(
        Interval(start, start + width),
        severity=float(rng.random() ** 1.4),  # mild wear is met more often than a bare track
        soft_percent=0.0 if chance(rng, 0.5) else rng.uniform(0.1, 0.35) * width,
        grain_percent=min(log_uniform(rng, 0.03, 0.3), width / 10.0),
        fixed=float(shares[0]),
        crossing=float(shares[1]),
        slow=float(shares[2]),
        chatter=float(shares[3]),
        slow_s=log_uniform(rng, 0.03, 0.6),
        chatter_s=log_uniform(rng, 0.0002, 0.002),
        wiped=wiped,
        decades=6.0 if chance(rng, 0.6) else rng.uniform(2.3, 5.0),
        lean_percent=0.0 if chance(rng, 0.5) else rng.uniform(0.02, 0.25),
    )


def draw_bands(rng: np.random.Generator, sensor: Sensor) -> tuple[WornBand, ...]:
    """One band, or two that stand at least 4 % apart."""
    first = draw_band(rng, sensor)
    if not chance(rng, 0.25):
        return (first,)
    for _ in range(20):
        other = draw_band(rng, sensor)
        if not first.reach.widened(4.0).overlap(other.reach):
            return (first, other)
    return (first,)


def sweep_paths(rng: np.random.Generator, visit: Visit, focus: float | None = None) -> list[Floats]:
    """Paths of the sweep records, `focus` being a place where the technician may dwell."""
    sensor, style = visit.sensor, visit.style
    longest_s = MOST_SAMPLES / visit.recorder.rate_hz
    if visit.driving:
        return [_driven(rng, sensor, min(rng.uniform(8.0, 30.0), longest_s))]
    records = 1 if visit.layout != "full" else int(rng.integers(1, 4))
    paths = []
    for number in range(records):
        share = visit.crossings // records + (1 if number < visit.crossings % records else 0)
        if share == 0:
            continue
        paced = replace(style, stroke_s=style.stroke_s * log_uniform(rng, 0.6, 1.6))
        start = sensor.rest_percent if chance(rng, 0.6) else None
        path = hand.sweep(rng, sensor.stops, share, paced, start=start)
        if focus is not None and chance(rng, 0.3) and longest_s > 10.0:
            count = int(rng.integers(2, 9))
            path = hand.joined(
                path, hand.to_and_fro(rng, focus, rng.uniform(2.0, 14.0), count, style, sensor.stops)
            )
        paths.append(path[: int(longest_s * hand.NODE_HZ)])
    return paths


def _driven(rng: np.random.Generator, sensor: Sensor, seconds: float) -> Floats:
    """A drive on a road of class B to D at town or country speed."""
    return road.road_path(
        rng,
        seconds,
        sensor.stops,
        sensor.rest_percent,
        road_class=str(rng.choice(["B", "C", "D"])),
        speed_km_h=rng.uniform(25.0, 90.0),
        percent_per_m=rng.uniform(300.0, 900.0),
        potholes_per_s=rng.uniform(0.1, 1.0) if chance(rng, 0.4) else 0.0,
    )


def plans(
    rng: np.random.Generator, visit: Visit, *, focus: float | None = None, probe: ProbeFault | None = None
) -> tuple[RecordPlan, ...]:
    """The records of a visit; `probe` is a probe fault of the sweep records."""
    moved = Step.ROAD if visit.driving else Step.SWEEP
    from_wire_to_wire = visit.layout == "long" and len(visit.roles) == 1
    sweeps = [
        RecordPlan(
            moved,
            path,
            visit.roles,
            probe=probe,
            told=visit.told,
            prelude=from_wire_to_wire,
        )
        for path in sweep_paths(rng, visit, focus)
    ]
    if visit.layout != "full":
        return tuple(sweeps)
    held = []
    if focus is not None and chance(rng, 0.5):
        held = [RecordPlan(Step.HOLD, still(rng, visit, focus, 3.0), visit.roles, told=visit.told)]
    return (*standing(rng, visit), *sweeps, *held)


def standing(rng: np.random.Generator, visit: Visit) -> tuple[RecordPlan, ...]:
    """Ground, reference and wiggle records, the arm at rest; one channel goes from wire to wire."""
    wires: Sequence[tuple[Step, Role]] = (
        (Step.GROUND, Role.GROUND),
        (Step.REFERENCE, Role.REFERENCE),
        (Step.WIGGLE, Role.SIGNAL),
    )
    taken = []
    for step, role in wires:
        seconds = rng.uniform(3.0, 6.0) if step is Step.WIGGLE else rng.uniform(1.0, 2.0)
        roles = visit.roles if len(visit.roles) > 1 else (role,)
        path = still(rng, visit, visit.sensor.rest_percent, seconds)
        taken.append(RecordPlan(step, path, roles, told=visit.told))
    return tuple(taken)


def still(rng: np.random.Generator, visit: Visit, place: float, seconds: float) -> Floats:
    """The arm at rest, hands off, for some seconds (fewer with a fast recorder)."""
    longest_s = 0.3 * MOST_SAMPLES / visit.recorder.rate_hz
    return hand.hold(rng, place, min(seconds, longest_s), None, visit.sensor.stops)
