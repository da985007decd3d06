"""One frozen description of a visit to a sensor, and the capture and truth that follow from it.

The chain is the vehicle's own: arm -> track and contact -> node with its capacitor -> probes -> recorder.
The same scenario and the same seed give the same bytes.
"""

from __future__ import annotations

import uuid
from collections.abc import Mapping
from dataclasses import dataclass, field, replace

import numpy as np
from numpy.typing import NDArray

from analysis.captures.model import ArraySource, Capture, Channel, Record, Role, Step
from analysis.diagnosis.findings import VerdictCode
from analysis.intervals import Interval
from analysis.simulation import track
from analysis.simulation.circuit import Circuit, Floats, node_voltage
from analysis.simulation.disturbances import Interference, Scene, SupplyFault, WireFault
from analysis.simulation.hand import NODE_HZ
from analysis.simulation.measurement_faults import ProbeFault, duty_cycle
from analysis.simulation.recorder import FILL, Recorder, digitised, gaps, sampled
from analysis.simulation.truth import BandTruth, PathSamples, Truth, band_truths

INNER_HZ = 8_000.0  # a contact opens for a fraction of a millisecond: slow recorders miss it honestly
THREE = (Role.SIGNAL, Role.REFERENCE, Role.GROUND)


@dataclass(frozen=True, slots=True)
class RecordPlan:
    """One record to be taken.

    Parameters
    ----------
    step : Step or None
        What for; written into the record unless `untold`.
    arm_percent : ndarray, shape (n,)
        The arm's path at `hand.NODE_HZ`; its length is the record's.
    roles : tuple of Role
        What the probes touch.
    """

    step: Step | None
    arm_percent: Floats
    roles: tuple[Role, ...] = THREE
    label: str = ""
    attributes: Mapping[str, str | float] = field(default_factory=dict)
    plugged: bool = True
    probe: ProbeFault | None = None
    told: bool = True


@dataclass(frozen=True, slots=True)
class SecondTrack:
    """A second track on the same arm: its unloaded ratio is ``offset + slope * ratio`` of the first."""

    sensor: track.Sensor
    slope: float = 0.5
    offset: float = 0.0


@dataclass(frozen=True, slots=True)
class Scenario:
    """Everything that decides a capture but chance.

    Parameters
    ----------
    code, acceptable : VerdictCode, frozenset of VerdictCode
        What a perfect reader says, and what else may be said.
    physics : str
        Name of the contact model: ``"main"``, or one of `alternatives.PHYSICS`.
    """

    sensor: track.Sensor
    circuit: Circuit
    recorder: Recorder
    plans: tuple[RecordPlan, ...]
    code: VerdictCode
    acceptable: frozenset[VerdictCode] = frozenset()
    reference_v: float = 5.0
    ground_v: float = 0.015
    supply_v: float = 12.4
    wire: WireFault | None = None
    ground: SupplyFault | None = None
    reference: SupplyFault | None = None
    interference: Interference = Interference()
    second: SecondTrack | None = None
    two_level: bool = False
    physics: str = "main"
    attributes: Mapping[str, str | float] = field(default_factory=dict)
    channel_attributes: Mapping[str, str | float] = field(default_factory=dict)
    title: str = ""
    story: str = ""


@dataclass(slots=True)
class _Bench:
    """What lasts from one record to the next: the grain of the tracks, and the crossings so far."""

    scenario: Scenario
    rng: np.random.Generator
    grains: dict[Role, track.TrackGrain]
    crossings: dict[tuple[Role, int], int] = field(default_factory=dict)
    paths: list[PathSamples] = field(default_factory=list)


def simulate(scenario: Scenario, seed: int | tuple[int, ...]) -> tuple[Capture, Truth]:
    """Take the capture.

    Parameters
    ----------
    scenario : Scenario
        What is simulated.
    seed : int or tuple of int
        Source of all chance.

    Returns
    -------
    capture : Capture
        In memory.
    truth : Truth
        What a perfect reader would say of it.
    """
    rng = np.random.default_rng(seed)
    grains = {Role.SIGNAL: track.TrackGrain.drawn(scenario.sensor, rng)}
    if scenario.second:
        grains[Role.SECOND_SIGNAL] = track.TrackGrain.drawn(scenario.second.sensor, rng)
    bench = _Bench(scenario, rng, grains)
    records = tuple(_record(bench, plan, f"{number:03d}") for number, plan in enumerate(scenario.plans, 1))
    capture_id = str(uuid.UUID(bytes=rng.bytes(16), version=4))
    capture = Capture(capture_id, records, scenario.title, dict(scenario.attributes))
    return capture, Truth(scenario.code, scenario.acceptable | {scenario.code}, _bands(bench), scenario.story)


def _record(bench: _Bench, plan: RecordPlan, name: str) -> Record:
    """One record: voltages on the inner time base, then probes, then counts."""
    recorder = bench.scenario.recorder
    factor = _oversampling(bench.scenario)
    count = max(int(len(plan.arm_percent) / NODE_HZ * recorder.rate_hz), 2)
    scene = _scene(plan, count * factor, 1.0 / (recorder.rate_hz * factor))
    inner = _voltages(bench, plan, scene, name, factor)
    taken = {role: sampled(inner[role], factor, recorder, at) for at, role in enumerate(plan.roles)}
    if plan.probe:
        taken = plan.probe.applied(taken, 1.0 / recorder.rate_hz, bench.rng)
    missing = gaps(count, recorder, bench.rng)
    channels = tuple(_channel(bench, role, taken[role], missing) for role in plan.roles)
    told = plan.step if plan.told else None
    return Record(name, 1.0 / recorder.rate_hz, channels, plan.label, told, 0.0, dict(plan.attributes))


def _oversampling(scenario: Scenario) -> int:
    """Inner steps a sample: more than one only where something faster than the recorder can happen."""
    bands = scenario.sensor.bands or (scenario.second and scenario.second.sensor.bands)
    fast = bands or scenario.wire or scenario.recorder.skew or scenario.recorder.averaging
    return max(1, int(np.ceil(INNER_HZ / scenario.recorder.rate_hz))) if fast else 1


def _scene(plan: RecordPlan, count: int, interval_s: float) -> Scene:
    time = np.arange(count) * interval_s
    nodes = np.arange(len(plan.arm_percent)) / NODE_HZ
    arm = np.interp(time, nodes, plan.arm_percent)
    speed = np.interp(time, nodes, np.gradient(plan.arm_percent) * NODE_HZ)
    return Scene(time, arm, speed, interval_s, plan.step)


def _voltages(bench: _Bench, plan: RecordPlan, scene: Scene, name: str, factor: int) -> dict[Role, Floats]:
    """Every wire's voltage against battery negative, interference included."""
    scenario, rng = bench.scenario, bench.rng
    ground = np.full(scene.time_s.shape[0], scenario.ground_v)
    if scenario.ground:
        ground = ground + scenario.ground.shift_v(scene, rng)
    reference = scenario.reference_v + scenario.interference.ripple(scene)
    if scenario.reference:
        reference = np.maximum(reference + scenario.reference.shift_v(scene, rng), 0.02)
    voltages = {Role.GROUND: ground, Role.REFERENCE: reference}
    voltages[Role.SUPPLY] = np.full(ground.shape[0], scenario.supply_v)
    for role in (Role.SIGNAL, Role.SECOND_SIGNAL):
        if role in plan.roles:
            voltages[role] = _signal(bench, plan, scene, role, ground, reference, name, factor)
    common = scenario.interference.common_v(scene, rng)
    if common.any():
        return {role: voltage + common * rng.uniform(0.8, 1.2) for role, voltage in voltages.items()}
    return voltages


def _signal(
    bench: _Bench,
    plan: RecordPlan,
    scene: Scene,
    role: Role,
    ground: Floats,
    reference: Floats,
    name: str,
    factor: int,
) -> Floats:
    """Voltage of one signal wire."""
    scenario, rng = bench.scenario, bench.rng
    second = scenario.second if role is Role.SECOND_SIGNAL else None
    sensor = second.sensor if second else scenario.sensor
    travel = scene.travel_percent
    if second:
        travel = 100.0 * second.offset + second.slope * travel
    if scenario.two_level:
        return duty_cycle(travel, scene.interval_s) + ground
    ratio = (travel + bench.grains[role].fine[track.cell_of(travel)]) / 100.0
    ideal = ground + ratio * (reference - ground)
    source_ohm = sensor.track_ohm * ratio * (1.0 - ratio) + sensor.wiper_ohm
    film = _film(bench, role, sensor, travel, scene.interval_s)
    shunt, shunt_v = None, 0.0
    resistance = source_ohm + film if film is not None else source_ohm
    if scenario.wire and role is Role.SIGNAL:
        acting = scenario.wire.active(scene, rng)
        if scenario.wire.short_to_v is None:
            resistance = resistance + acting * scenario.wire.ohm
        else:
            shunt, shunt_v = acting / 10.0, scenario.wire.short_to_v
    if not plan.plugged:
        resistance = np.full_like(source_ohm, 1e9)
    node = node_voltage(
        scenario.circuit,
        source_v=ideal,
        source_ohm=resistance,
        pull_v=scenario.reference_v if scenario.circuit.pull_up else 0.0,
        interval_s=scene.interval_s,
        shunt_s=shunt,
        shunt_v=shunt_v,
    )
    if sensor.bands:
        node = _alternative(scenario, sensor, scene, travel, node, ideal, rng)
        bench.paths.append(
            PathSamples(name, role, scene.interval_s * factor, travel[::factor], (node - ideal)[::factor])
        )
    return node


def _alternative(
    scenario: Scenario,
    sensor: track.Sensor,
    scene: Scene,
    travel: Floats,
    node: Floats,
    ideal: Floats,
    rng: np.random.Generator,
) -> Floats:
    """Break-up by another contact model, where the scenario names one."""
    if scenario.physics == "main":
        return node
    from analysis.simulation.alternatives import broken_up

    return broken_up(scenario.physics, sensor.bands, travel, ideal, scene.interval_s, rng)


def _film(
    bench: _Bench, role: Role, sensor: track.Sensor, travel: Floats, interval_s: float
) -> Floats | None:
    """Contact resistance added by the bands, or None where there are none."""
    if not sensor.bands or bench.scenario.physics != "main":
        return None
    film = np.zeros(travel.shape[0])
    grain = bench.grains[role]
    for number, band in enumerate(sensor.bands):
        before = bench.crossings.get((role, number), 0)
        where, ohm, after = track.film_ohm(
            band, grain.fixed[number], grain.crossing[number], travel, interval_s, before, bench.rng
        )
        film[where] += ohm
        bench.crossings[role, number] = after
    return film


def _channel(bench: _Bench, role: Role, voltage_v: Floats, missing: NDArray[np.bool_]) -> Channel:
    recorder, scenario = bench.scenario.recorder, bench.scenario
    counts = digitised(voltage_v, recorder, bench.rng)
    counts[missing] = FILL
    counts.setflags(write=False)
    attributes = dict(scenario.channel_attributes)
    return Channel(role.value, role, ArraySource(counts), recorder.scaling, 0.005, 0.01, attributes)


def _bands(bench: _Bench) -> tuple[BandTruth, ...]:
    """Truth of every band of every track."""
    scenario = bench.scenario
    threshold_v = max(5.0 * scenario.recorder.floor_v, 1.2 * scenario.recorder.step_v, 0.015)
    found = band_truths(scenario.sensor.bands, Role.SIGNAL, bench.paths, threshold_v)
    if scenario.second:
        found += band_truths(scenario.second.sensor.bands, Role.SECOND_SIGNAL, bench.paths, threshold_v)
    return found


def without_bands(scenario: Scenario) -> Scenario:
    """The same visit with a new sensor."""
    return replace(scenario, sensor=replace(scenario.sensor, bands=()))


def percent(start: float, stop: float) -> Interval:
    """A stretch of travel, in %."""
    return Interval(start, stop)
