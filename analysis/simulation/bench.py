"""A scenario taken on the bench: the capture, and what a perfect reader would say of it.

The chain is the vehicle's own: arm -> track and contact -> node with its capacitor -> probes -> recorder.
The same scenario and the same seed give the same bytes.
"""

from __future__ import annotations

import uuid
from dataclasses import dataclass, field
from functools import partial

import numpy as np
from numpy.typing import NDArray

from analysis.captures.model import ArraySource, Capture, Channel, Record, Role
from analysis.intervals import Interval
from analysis.simulation import track
from analysis.simulation.alternatives import broken_up
from analysis.simulation.circuit import Floats, node_voltage, settled_voltage
from analysis.simulation.disturbances import Scene
from analysis.simulation.hand import NODE_HZ
from analysis.simulation.measurement_faults import air, duty_cycle
from analysis.simulation.recorder import digitised, gaps, sampled, with_gaps
from analysis.simulation.scenario import RecordPlan, Scenario
from analysis.simulation.truth import BandTruth, FaultTruth, PathSamples, Truth, band_truths, fault_truth

INNER_HZ = 8_000.0  # a contact opens for a fraction of a millisecond: slow recorders miss it honestly


@dataclass(slots=True)
class _Bench:
    """What lasts from one record to the next: the grain of the tracks, and the crossings so far."""

    scenario: Scenario
    rng: np.random.Generator
    grains: dict[Role, track.TrackGrain]
    crossings: dict[tuple[Role, int], int] = field(default_factory=dict)
    paths: list[PathSamples] = field(default_factory=list)
    faults: list[PathSamples] = field(default_factory=list)

    @property
    def threshold_v(self) -> float:
        """Departure that this recorder can show."""
        recorder = self.scenario.recorder
        return max(5.0 * recorder.floor_v, 1.2 * recorder.step_v, 0.015)


@dataclass(frozen=True, slots=True)
class _Taking:
    """One record while it is taken."""

    plan: RecordPlan
    scene: Scene
    name: str
    factor: int


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
    capture, truth, _ = simulate_closely(scenario, seed)
    return capture, truth


def simulate_closely(
    scenario: Scenario, seed: int | tuple[int, ...]
) -> tuple[Capture, Truth, tuple[PathSamples, ...]]:
    """Take the capture, and tell of every sample how far it stands from what a sound contact gives.

    Parameters
    ----------
    scenario, seed
        As of `simulate`.

    Returns
    -------
    capture : Capture
    truth : Truth
    samples : tuple of PathSamples
        One for each record and track with worn bands; without the probe's way to the wire and without the
        recorder's gaps. Empty for a sensor without bands.
    """
    rng = np.random.default_rng(seed)
    grains = {Role.SIGNAL: track.TrackGrain.drawn(scenario.sensor, rng)}
    if scenario.second:
        grains[Role.SECOND_SIGNAL] = track.TrackGrain.drawn(scenario.second.sensor, rng)
    bench = _Bench(scenario, rng, grains)
    records = tuple(_record(bench, plan, f"{number:03d}") for number, plan in enumerate(scenario.plans, 1))
    capture_id = str(uuid.UUID(bytes=rng.bytes(16), version=4))
    capture = Capture(capture_id, records, scenario.title, dict(scenario.attributes))
    acceptable = scenario.acceptable | {scenario.code}
    truth = Truth(scenario.code, acceptable, _bands(bench), _fault(bench), scenario.story)
    return capture, truth, tuple(bench.paths)


def _record(bench: _Bench, plan: RecordPlan, name: str) -> Record:
    """One record: voltages on the inner time base, then probes, then counts."""
    recorder = bench.scenario.recorder
    factor = _oversampling(bench.scenario)
    count = max(int(len(plan.arm_percent) / NODE_HZ * recorder.rate_hz), 2)
    scene = _scene(plan, count * factor, 1.0 / (recorder.rate_hz * factor))
    inner = _voltages(bench, _Taking(plan, scene, name, factor))
    taken = {role: sampled(inner[role], factor, recorder, at) for at, role in enumerate(plan.roles)}
    if plan.prelude:
        taken = {plan.roles[0]: _with_prelude(bench, taken[plan.roles[0]])}
        count = len(taken[plan.roles[0]])
    if plan.probe:
        taken = plan.probe.applied(taken, 1.0 / recorder.rate_hz, bench.rng)
    missing = gaps(count, recorder, bench.rng)
    channels = tuple(_channel(bench, role, taken[role], missing) for role in plan.roles)
    told = plan.step if plan.told else None
    attributes = {"plugged": int(plan.plugged), "ignition": "on", **plan.attributes}
    return Record(name, 1.0 / recorder.rate_hz, channels, plan.label, told, 0.0, attributes)


def _with_prelude(bench: _Bench, signal_v: Floats) -> Floats:
    """One probe on its way: air, ground, air, reference, air, and then the signal."""
    scenario, rng, rate_hz = bench.scenario, bench.rng, bench.scenario.recorder.rate_hz
    ground_v = scenario.ground_v + (scenario.ground.volts if scenario.ground else 0.0)
    reference_v = scenario.reference_v + (scenario.reference.volts if scenario.reference else 0.0)
    on_the_way = []
    for level in (ground_v, reference_v):
        on_the_way.append(air(int(rng.uniform(0.3, 1.0) * rate_hz) + 1, 1.0 / rate_hz, rng))
        on_the_way.append(np.full(int(rng.uniform(1.0, 2.0) * rate_hz) + 1, level))
    on_the_way.append(air(int(rng.uniform(0.2, 0.6) * rate_hz) + 1, 1.0 / rate_hz, rng))
    return np.concatenate([*on_the_way, signal_v])


def _oversampling(scenario: Scenario) -> int:
    """Inner steps a sample: more than one only where something faster than the recorder can happen."""
    bands = scenario.sensor.bands or (scenario.second and scenario.second.sensor.bands)
    recorder = scenario.recorder
    fast = bands or scenario.wire or recorder.skew or recorder.averaging or recorder.corner_hz
    return max(1, int(np.ceil(INNER_HZ / scenario.recorder.rate_hz))) if fast else 1


def _scene(plan: RecordPlan, count: int, interval_s: float) -> Scene:
    time = np.asarray(np.arange(count) * interval_s, dtype=np.float64)
    nodes = np.arange(len(plan.arm_percent)) / NODE_HZ
    arm = np.interp(time, nodes, plan.arm_percent)
    speed = np.interp(time, nodes, np.gradient(plan.arm_percent) * NODE_HZ)
    return Scene(time, arm, speed, interval_s, plan.step)


def _voltages(bench: _Bench, taking: _Taking) -> dict[Role, Floats]:
    """Every wire's voltage against battery negative, interference included."""
    scenario, scene, rng = bench.scenario, taking.scene, bench.rng
    ground = np.full(scene.time_s.shape[0], scenario.ground_v)
    reference = scenario.reference_v + scenario.interference.ripple(scene)
    if scenario.ground:
        lift = scenario.ground.shift_v(scene, rng)
        ground = ground + lift
        _note_fault(bench, taking, Role.GROUND, lift)
    if scenario.reference:
        shift = scenario.reference.shift_v(scene, rng)
        reference = np.maximum(reference + shift, 0.02)
        _note_fault(bench, taking, Role.REFERENCE, shift)
    voltages = {Role.GROUND: ground, Role.REFERENCE: reference}
    voltages[Role.SUPPLY] = np.full(ground.shape[0], scenario.supply_v)
    for role in (Role.SIGNAL, Role.SECOND_SIGNAL):
        if role in taking.plan.roles:
            voltages[role] = _signal(bench, taking, role, ground, reference)
    common = scenario.interference.common_v(scene, rng)
    if common.any():
        return {role: voltage + common * rng.uniform(0.8, 1.2) for role, voltage in voltages.items()}
    return voltages


def _signal(bench: _Bench, taking: _Taking, role: Role, ground: Floats, reference: Floats) -> Floats:
    """Voltage of one signal wire."""
    scenario, scene, rng = bench.scenario, taking.scene, bench.rng
    second = scenario.second if role is Role.SECOND_SIGNAL else None
    sensor = second.sensor if second else scenario.sensor
    travel = scene.travel_percent
    own_arm = taking.plan.second_percent
    if second and own_arm is not None:
        travel = np.interp(scene.time_s, np.arange(len(own_arm)) / NODE_HZ, own_arm)
    elif second:
        travel = 100.0 * second.offset + second.slope * travel
    if scenario.two_level:
        return duty_cycle(travel, scene.interval_s) + ground
    ratio = (travel + bench.grains[role].fine[track.cell_of(travel)]) / 100.0
    ideal_v = ground + ratio * (reference - ground)
    sound_ohm = sensor.track_ohm * ratio * (1.0 - ratio) + sensor.wiper_ohm
    source_ohm, shunt_s, shunt_v = sound_ohm, None, 0.0
    if sensor.bands and scenario.physics == "main":
        source_ohm = source_ohm + _film(bench, taking, role, sensor, travel)
    if scenario.wire and role is Role.SIGNAL:
        if scenario.wire.short_to_v is None:
            source_ohm = source_ohm + scenario.wire.series_ohm(scene, rng)
        else:
            shunt_s, shunt_v = scenario.wire.active(scene, rng) / 10.0, scenario.wire.short_to_v
    if not taking.plan.plugged:
        source_ohm = np.full_like(source_ohm, 1e9)
    pull_v = scenario.reference_v if scenario.circuit.pull_up else 0.0
    node_v = node_voltage(
        scenario.circuit,
        source_v=ideal_v,
        source_ohm=source_ohm,
        pull_v=pull_v,
        interval_s=scene.interval_s,
        shunt_s=shunt_s,
        shunt_v=shunt_v,
        pickup_a=scenario.interference.pickup(scene),
    )
    if sensor.bands and scenario.physics != "main":
        node_v = broken_up(scenario.physics, sensor.bands, travel, node_v, scene.interval_s, rng)
    if sensor.bands or scenario.wire:
        departure = node_v - settled_voltage(scenario.circuit, ideal_v, sound_ohm, pull_v)
        noted = bench.paths if sensor.bands else bench.faults
        noted.append(_noted(bench, taking, role, travel, departure))
    return node_v


def _film(bench: _Bench, taking: _Taking, role: Role, sensor: track.Sensor, travel: Floats) -> Floats:
    """Contact resistance added by the bands."""
    film = np.zeros(travel.shape[0])
    grain, scene = bench.grains[role], taking.scene
    for number, band in enumerate(sensor.bands):
        before = bench.crossings.get((role, number), 0)
        touched = travel - band.lean_percent * np.tanh(scene.speed_percent_s / 5.0)
        where, ohm, after = track.film_ohm(
            band, grain.fixed[number], grain.crossing[number], touched, scene.interval_s, before, bench.rng
        )
        film[where] += ohm
        bench.crossings[role, number] = after
    return film


def _noted(bench: _Bench, taking: _Taking, role: Role, travel: Floats, departure_v: Floats) -> PathSamples:
    """A departure as the recorder's input and sampling leave it, without its noise."""
    recorder, factor = bench.scenario.recorder, taking.factor
    channel = taking.plan.roles.index(role)
    interval_s = taking.scene.interval_s * factor
    return PathSamples(
        taking.name, role, interval_s, travel[::factor], sampled(departure_v, factor, recorder, channel)
    )


def _note_fault(bench: _Bench, taking: _Taking, role: Role, shift_v: Floats) -> None:
    if role in taking.plan.roles:
        bench.faults.append(_noted(bench, taking, role, taking.scene.travel_percent, shift_v))


def _channel(bench: _Bench, role: Role, voltage_v: Floats, missing: NDArray[np.bool_]) -> Channel:
    recorder, scenario = bench.scenario.recorder, bench.scenario
    counts = digitised(voltage_v, recorder, bench.rng)
    counts = with_gaps(counts, missing, recorder)
    counts.setflags(write=False)
    attributes = dict(scenario.channel_attributes)
    attributes.update(scenario.wires.get(role, {}))
    return Channel(
        role.value,
        role,
        ArraySource(counts),
        recorder.scaling,
        recorder.stated_gain_error,
        recorder.stated_offset_error_v,
        attributes,
    )


def _bands(bench: _Bench) -> tuple[BandTruth, ...]:
    """Truth of every band of every track."""
    scenario = bench.scenario
    sensors = {Role.SIGNAL: scenario.sensor}
    if scenario.second:
        sensors[Role.SECOND_SIGNAL] = scenario.second.sensor
    found: tuple[BandTruth, ...] = ()
    for role, sensor in sensors.items():
        as_read = partial(_as_read, scenario, sensor)
        found += band_truths(sensor.bands, role, bench.paths, bench.threshold_v, as_read)
    return found


def _as_read(scenario: Scenario, sensor: track.Sensor, wiper: Interval) -> Interval:
    """Travel that sound contacts at these positions read: the pull resistor and the probe load the track."""
    ratio, feed_v = np.array([wiper.start, wiper.stop]) / 100.0, scenario.reference_v
    pull_v = feed_v if scenario.circuit.pull_up else 0.0
    source_ohm = sensor.track_ohm * ratio * (1.0 - ratio) + sensor.wiper_ohm
    start, stop = 100.0 * settled_voltage(scenario.circuit, ratio * feed_v, source_ohm, pull_v) / feed_v
    return Interval(float(start), float(stop))


def _fault(bench: _Bench) -> FaultTruth | None:
    """What can be seen of a fault that comes and goes; None where none does."""
    scenario = bench.scenario
    fleeting = [fault for fault in (scenario.ground, scenario.reference) if fault and fault.kind != "static"]
    if not (scenario.wire or fleeting):
        return None
    smallest_v = 0.05 if scenario.wire else 0.15
    return fault_truth(bench.faults, max(bench.threshold_v, smallest_v))
