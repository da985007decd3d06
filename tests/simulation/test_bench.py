"""Whole captures: relations between what is put in and what comes out."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from analysis.captures.model import Capture, Role, Step
from analysis.diagnosis.findings import VerdictCode
from analysis.intervals import Interval
from analysis.simulation import hand
from analysis.simulation.alternatives import PHYSICS, sinusoid, triangle
from analysis.simulation.bench import simulate
from analysis.simulation.circuit import Circuit
from analysis.simulation.disturbances import SupplyFault, WireFault
from analysis.simulation.recorder import Recorder
from analysis.simulation.scenario import RecordPlan, Scenario, without_bands
from analysis.simulation.track import Sensor, WornBand

STOPS = Interval(10.0, 90.0)
BAND = WornBand(Interval(42.0, 48.0), severity=0.5)


def _scenario(
    band: WornBand | None = BAND, recorder: Recorder | None = None, strokes: int = 6, physics: str = "main"
) -> Scenario:
    sensor = Sensor(stops=STOPS, bands=() if band is None else (band,), smoothness_percent=0.001)
    calm = hand.HandStyle(stroke_s=1.0, tremor_percent=0.02, stall=0.0, slip=0.0, turn_back=0.0)
    path = hand.sweep(np.random.default_rng(12), STOPS, strokes, calm)
    code = VerdictCode.NO_FAULT_FOUND if band is None else VerdictCode.WORN_TRACK
    circuit = Circuit(220e3, pull_up=False, filter_f=4.7e-9)
    plans = (RecordPlan(Step.SWEEP, path),)
    return Scenario(sensor, circuit, recorder or Recorder(rate_hz=5_000.0), plans, code, physics=physics)


def _counts(capture: Capture) -> list[bytes]:
    return [
        channel.source.read(0, len(channel)).tobytes()
        for record in capture.records
        for channel in record.channels
    ]


def _ratio(capture: Capture) -> np.ndarray:
    record = capture.records[-1]
    volts = {channel.role: channel.volts() for channel in record.channels}
    ground = volts[Role.GROUND].mean()
    ratio = (volts[Role.SIGNAL] - ground) / (volts[Role.REFERENCE].mean() - ground)
    return np.asarray(100.0 * ratio)


def test_the_same_seed_gives_the_same_bytes_and_another_seed_others() -> None:
    first, again, other = (simulate(_scenario(), seed)[0] for seed in (5, 5, 6))
    assert _counts(first) == _counts(again)
    assert first.capture_id == again.capture_id
    assert _counts(first) != _counts(other)


def test_without_wear_a_signal_at_rest_is_the_recorders_noise_and_no_more() -> None:
    recorder = Recorder(rate_hz=2_000.0, bits=12, range_v=10.0, noise_v=0.004)
    made = _scenario(None, recorder)
    path = hand.hold(np.random.default_rng(1), 50.0, 20.0, None, STOPS)
    capture, truth = simulate(replace(made, plans=(RecordPlan(Step.HOLD, path),)), 1)
    signal = capture.records[0].channel(Role.SIGNAL)
    assert signal is not None
    assert signal.volts().std() == pytest.approx(recorder.floor_v, rel=0.03)
    assert truth.bands == ()


def test_the_ratio_follows_the_arm_within_loading_and_noise() -> None:
    scenario = _scenario(None)
    capture, _ = simulate(scenario, 2)
    arm = scenario.plans[0].arm_percent
    ratio = _ratio(capture)
    wanted = np.interp(np.arange(ratio.shape[0]) / 5_000.0, np.arange(arm.shape[0]) / hand.NODE_HZ, arm)
    error = ratio - wanted
    # 5 kΩ on 180 kΩ loads by 0.41 % of the applied voltage at most (handbook: 4/27·RT/RL)
    assert -0.6 < error.mean() < 0.0
    assert error.std() < 0.2


def test_more_severity_is_more_break_up() -> None:
    spoilt = []
    for severity in (0.0, 0.3, 0.6, 1.0):
        scenario = _scenario(replace(BAND, severity=severity))
        worn, new = _ratio(simulate(scenario, 3)[0]), _ratio(simulate(without_bands(scenario), 3)[0])
        spoilt.append(float(np.mean(np.abs(worn - new) > 1.0)))
    assert spoilt == sorted(spoilt)
    assert spoilt[0] < 0.5 * spoilt[-1]


def test_break_up_stays_inside_the_band_and_falls_towards_the_pull() -> None:
    scenario = _scenario()
    capture, truth = simulate(scenario, 4)
    arm = scenario.plans[0].arm_percent
    ratio = _ratio(capture)
    place = np.interp(np.arange(ratio.shape[0]) / 5_000.0, np.arange(arm.shape[0]) / hand.NODE_HZ, arm)
    off = np.abs(ratio - place) > 3.0
    assert off.any()
    assert place[off].min() > 41.0
    assert place[off].max() < 49.0
    (band,) = truth.bands
    assert band.crossings == band.shown == 6
    assert band.deepest_v < -1.0
    assert band.broken is not None
    assert band.broken.start == pytest.approx(42.0, abs=0.5)
    assert band.broken.stop == pytest.approx(48.0, abs=0.5)


def test_a_slow_recorder_misses_crossings_that_a_fast_one_shows() -> None:
    mild = replace(BAND, travel=Interval(44.0, 45.0), severity=0.05, grain_percent=0.03)
    shown = {}
    for rate_hz in (500.0, 20_000.0):
        recorder = Recorder(rate_hz=rate_hz, bits=14)
        shown[rate_hz] = sum(
            band.shown for seed in range(4) for band in simulate(_scenario(mild, recorder), seed)[1].bands
        )
    assert shown[500.0] < shown[20_000.0]


def test_a_wire_fault_is_counted_and_is_no_band() -> None:
    scenario = replace(_scenario(None), wire=WireFault("moving", per_s=2.0))
    _, truth = simulate(scenario, 6)
    assert truth.bands == ()
    assert truth.fault is not None
    assert truth.fault.events > 2
    assert truth.fault.longest_s <= truth.fault.total_s


def test_a_lifted_ground_lifts_the_signal_less_the_higher_it_stands() -> None:
    sound, lifted = _scenario(None), replace(_scenario(None), ground=SupplyFault("static", 1.0))
    before, after = (simulate(item, 7)[0].records[0] for item in (sound, lifted))
    shift = {
        channel.role: channel.volts() - other.volts()
        for channel, other in zip(after.channels, before.channels, strict=True)
    }
    arm = _scenario(None).plans[0].arm_percent
    low, high = arm.min() / 100.0, arm.max() / 100.0
    assert shift[Role.GROUND].mean() == pytest.approx(1.0, abs=0.01)
    assert shift[Role.REFERENCE].mean() == pytest.approx(0.0, abs=0.01)
    assert shift[Role.SIGNAL].max() == pytest.approx(1.0 - low, abs=0.05)
    assert shift[Role.SIGNAL].min() == pytest.approx(1.0 - high, abs=0.05)


def test_an_unplugged_sensor_parks_at_the_pull_level() -> None:
    made = _scenario(None)
    up = replace(made, circuit=Circuit(100e3, pull_up=True), plans=(replace(made.plans[0], plugged=False),))
    signal = simulate(up, 8)[0].records[0].channel(Role.SIGNAL)
    assert signal is not None
    assert signal.volts().mean() == pytest.approx(up.circuit.parked_v(), abs=0.02)


def test_one_probe_on_its_way_meets_ground_and_reference_before_the_signal() -> None:
    made = _scenario(None)
    plan = replace(made.plans[0], roles=(Role.SIGNAL,), prelude=True)
    record = simulate(replace(made, plans=(plan,)), 9)[0].records[0]
    volts = record.channels[0].volts()
    before = volts[: len(volts) - int(len(plan.arm_percent) / hand.NODE_HZ * 5_000.0)]
    assert np.mean(np.abs(before - 5.0) < 0.05) > 0.15
    assert np.mean(np.abs(before) < 0.2) > 0.3


@pytest.mark.parametrize("physics", sorted(PHYSICS))
def test_every_other_physics_breaks_up_inside_the_band_only(physics: str) -> None:
    capture, truth = simulate(_scenario(physics=physics), 10)
    new = simulate(_scenario(None), 10)[0]
    (band,) = truth.bands
    assert band.shown >= 2
    ratio, sound = _ratio(capture), _ratio(new)
    outside = (sound < 38.0) | (sound > 52.0)
    assert np.abs(ratio - sound)[outside].max() < 1.0


def test_machines_sweep_as_often_as_told() -> None:
    for machine in (triangle, sinusoid):
        path = machine(10_000, STOPS, 5)
        assert np.count_nonzero(np.diff(path > 50.0)) == 5
        assert path.min() >= STOPS.start
        assert path.max() <= STOPS.stop


@pytest.mark.parametrize("pull_up", [False, True])
def test_a_band_lies_where_sound_contacts_read_under_the_load_of_the_pull(pull_up: bool) -> None:
    # A potentiometer of 5 k with 50 k to a rail, at 42 %: k = 0.1, so x / (1 + k x (1 - x)) from that rail.
    scenario = replace(_scenario(), circuit=Circuit(50e3, pull_up=pull_up, probe_ohm=1e9))
    _, truth = simulate(scenario, 4)
    (band,) = truth.bands
    assert band.wiper.start == pytest.approx(42.0, abs=0.05)
    ohm = scenario.sensor.track_ohm / 50e3
    share = (1.0 - 0.42) if pull_up else 0.42
    loaded = share / (1.0 + ohm * share * (1.0 - share))  # handbook: loaded potentiometer, as in test_circuit
    expected = 100.0 * ((1.0 - loaded) if pull_up else loaded)
    # The wiper and the wire have some ohms of their own.
    assert band.travel.start == pytest.approx(expected, abs=0.15)
    assert (band.travel.start > 42.0) is pull_up
