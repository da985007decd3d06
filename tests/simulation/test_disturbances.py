"""Interference, faults of wiring and supply, faults of the probe."""

from __future__ import annotations

import numpy as np
import pytest
from scipy.signal import welch

from analysis.captures.model import Role, Step
from analysis.simulation.disturbances import Interference, Scene, SupplyFault, WireFault, bursts
from analysis.simulation.measurement_faults import ProbeFault, ProbeFaultKind, ac_coupled, air, duty_cycle


def _scene(step: Step = Step.SWEEP, *, moving: bool = True, seconds: float = 40.0) -> Scene:
    time = np.arange(0.0, seconds, 1e-4)
    travel = 50.0 + 30.0 * np.sin(time) if moving else np.full(time.shape, 50.0)
    return Scene(time, travel, np.gradient(travel, 1e-4), 1e-4, step)


def _share(fault: WireFault, scene: Scene) -> float:
    return float(fault.active(scene, np.random.default_rng(7)).mean())


def test_bursts_are_as_many_and_as_long_as_told() -> None:
    acting = bursts(np.random.default_rng(1), np.full(2_000_000, 0.5), 0.05, 1e-3)
    assert acting.mean() == pytest.approx(1.0 - np.exp(-0.5 * 0.05), rel=0.1)  # M/G/∞ queue, busy share
    assert not bursts(np.random.default_rng(1), np.zeros(1_000), 0.05, 1e-3).any()


def test_a_wire_that_acts_only_while_the_arm_moves_is_quiet_at_rest() -> None:
    fault = WireFault("moving", per_s=2.0)
    assert _share(fault, _scene()) > 0.02
    assert _share(fault, _scene(moving=False)) == 0.0


def test_a_wire_that_acts_only_when_shaken_is_quiet_in_the_sweep() -> None:
    fault = WireFault("wiggle", per_s=2.0)
    assert _share(fault, _scene(Step.WIGGLE, moving=False)) > 0.02
    assert _share(fault, _scene()) == 0.0


def test_a_stretched_loom_acts_beyond_its_place_only() -> None:
    scene = _scene()
    acting = WireFault("loom", per_s=1.0, burst_s=0.001, place_percent=70.0).active(
        scene, np.random.default_rng(2)
    )
    assert acting[scene.travel_percent > 70.0].mean() > 20 * acting[scene.travel_percent < 65.0].mean()


def test_a_random_wire_does_not_know_the_place() -> None:
    scene = _scene(seconds=200.0)
    acting = WireFault("random", per_s=3.0, burst_s=0.02).active(scene, np.random.default_rng(3))
    low, high = acting[scene.travel_percent < 50.0].mean(), acting[scene.travel_percent >= 50.0].mean()
    assert 0.6 < low / high < 1.6


def test_a_static_fault_shifts_by_its_volts_and_a_load_fault_never_leaves() -> None:
    scene, rng = _scene(), np.random.default_rng(4)
    assert np.all(SupplyFault("static", 0.4).shift_v(scene, rng) == 0.4)
    load = SupplyFault("load", 1.0, 0.5, 0.5).shift_v(scene, rng)
    assert load.min() > 0.25
    assert load.max() > 0.9
    fleeting = SupplyFault("intermittent", -2.0, 0.5, 0.1).shift_v(scene, rng)
    assert np.median(fleeting) == 0.0
    assert fleeting.min() < -1.0


def test_sparks_ring_both_ways_and_come_at_their_rate() -> None:
    common = Interference(spark_v=1.0, spark_hz=25.0).common_v(_scene(), np.random.default_rng(5))
    hits = np.flatnonzero(np.abs(common) > 0.1)
    starts = 1 + np.count_nonzero(np.diff(hits) > 50)
    assert starts == pytest.approx(25 * 40, rel=0.1)
    assert common.max() > 0.5
    assert common.min() < -0.5


def test_hum_has_its_frequency_and_silence_is_silent() -> None:
    common = Interference(hum_v=0.1, hum_hz=60.0).common_v(_scene(), np.random.default_rng(6))
    frequency, density = welch(common, fs=1e4, nperseg=20_000)
    assert frequency[density.argmax()] == pytest.approx(60.0, abs=0.5)
    assert not Interference().common_v(_scene(), np.random.default_rng(6)).any()


def _voltages(count: int = 20_000) -> dict[Role, np.ndarray]:
    wave = 2.5 + 1.5 * np.sin(np.arange(count) / 3_000.0)
    return {Role.SIGNAL: wave, Role.REFERENCE: np.full(count, 5.0), Role.GROUND: np.zeros(count)}


def test_a_poor_return_clip_moves_all_channels_by_the_same_volts() -> None:
    before = _voltages()
    after = ProbeFault(ProbeFaultKind.POOR_RETURN).applied(before, 1e-3, np.random.default_rng(8))
    shifts = [after[role] - before[role] for role in before]
    assert np.ptp(shifts[0]) > 0.3
    assert shifts[1] == pytest.approx(shifts[0], abs=1e-12)
    assert shifts[2] == pytest.approx(shifts[0], abs=1e-12)


def test_a_probe_that_slips_off_changes_its_own_channel_from_then_on() -> None:
    before = _voltages()
    fault = ProbeFault(ProbeFaultKind.SLIPPED_OFF, Role.SIGNAL, 0.5)
    after = fault.applied(before, 1e-3, np.random.default_rng(9))
    assert np.array_equal(after[Role.SIGNAL][:10_000], before[Role.SIGNAL][:10_000])
    assert np.abs(after[Role.SIGNAL][10_000:]).max() < 1.5
    assert np.array_equal(after[Role.REFERENCE], before[Role.REFERENCE])


def test_attenuation_scales_and_swapped_leads_negate() -> None:
    before, rng = _voltages(), np.random.default_rng(10)
    tenth = ProbeFault(ProbeFaultKind.ATTENUATION, factor=0.1).applied(before, 1e-3, rng)
    swapped = ProbeFault(ProbeFaultKind.SWAPPED).applied(before, 1e-3, rng)
    assert tenth[Role.SIGNAL] == pytest.approx(0.1 * before[Role.SIGNAL])
    assert swapped[Role.SIGNAL] == pytest.approx(-before[Role.SIGNAL])


def test_ac_coupling_forgets_a_step_with_its_time_constant() -> None:
    step = np.concatenate([np.full(1_000, 1.0), np.full(9_000, 3.0)])
    coupled = ac_coupled(step, 1e-3, 0.3)
    assert coupled[:1_000] == pytest.approx(np.zeros(1_000))
    assert coupled[1_300] / coupled[1_000] == pytest.approx(np.exp(-1.0), rel=0.01)


def test_a_probe_in_the_air_hums_about_zero() -> None:
    picked_up = air(50_000, 1e-3, np.random.default_rng(11))
    assert abs(picked_up.mean()) < 0.1
    assert 0.003 < picked_up.std() < 0.5


def test_a_duty_cycle_knows_two_levels_only() -> None:
    levels = np.unique(duty_cycle(np.linspace(10.0, 90.0, 10_000), 1e-4))
    assert levels.tolist() == [0.05, 5.0]


def test_a_plug_of_high_resistance_acts_all_the_time_and_wanders_about_its_resistance() -> None:
    ohm = WireFault(ohm=50e3, wander=0.5).series_ohm(_scene(seconds=200.0), np.random.default_rng(5))
    assert ohm.min() > 0.0
    assert float(np.exp(np.log(ohm).mean())) == pytest.approx(50e3, rel=0.1)
    assert float(np.log(ohm).std()) == pytest.approx(0.5, rel=0.1)


def test_a_wire_that_opens_now_and_then_adds_nothing_between() -> None:
    fault, scene = WireFault(per_s=1.0, ohm=1e6), _scene()
    ohm = fault.series_ohm(scene, np.random.default_rng(7))
    assert set(np.unique(ohm)) == {0.0, 1e6}
    assert float((ohm > 0.0).mean()) == _share(fault, scene)
