"""The circuit against closed forms, the handbook's loading formula, and scipy's integrator."""

from __future__ import annotations

import numpy as np
import pytest
from numpy.testing import assert_allclose
from scipy.integrate import solve_ivp
from scipy.signal import lfilter

from analysis.simulation.circuit import (
    Circuit,
    linear_recurrence,
    loaded_ratio,
    node_voltage,
    settled_voltage,
)


@pytest.mark.parametrize("count", [0, 1, 2, 7, 1_000, 4_321])
def test_a_recurrence_solved_in_blocks_equals_the_plain_loop(count: int) -> None:
    rng = np.random.default_rng(count)
    decay, drive = rng.random(count), rng.standard_normal(count)
    state, wanted = 0.7, []
    for factor, push in zip(decay, drive, strict=True):
        state = factor * state + push
        wanted.append(state)
    assert_allclose(linear_recurrence(decay, drive, 0.7), wanted, rtol=1e-12, atol=1e-12)


def test_a_recurrence_of_constant_decay_equals_scipys_filter() -> None:
    drive = np.random.default_rng(5).standard_normal(5_000)
    solved = linear_recurrence(np.full(5_000, 0.93), drive, 0.0)
    assert_allclose(solved, lfilter([1.0], [1.0, -0.93], drive), rtol=1e-10, atol=1e-12)


@pytest.mark.parametrize("pull_ohm", [None, 50e3, 1e6])
def test_an_open_contact_falls_with_the_time_constant_of_its_resistors_and_capacitor(
    pull_ohm: float | None,
) -> None:
    circuit = Circuit(pull_ohm, pull_up=False, filter_f=22e-9, cable_f=0.0)
    interval_s = 1e-5
    ohm = np.full(40_000, 1e13)
    ohm[0] = 1_000.0
    fall = node_voltage(
        circuit, source_v=np.full(40_000, 2.5), source_ohm=ohm, pull_v=0.0, interval_s=interval_s
    )
    resistors = [1e6] if pull_ohm is None else [1e6, pull_ohm]
    tau = 22e-9 / sum(1.0 / ohm for ohm in resistors)
    at = round(tau / interval_s)
    assert circuit.open_time_constant_s == pytest.approx(tau, rel=1e-12)
    assert fall[at] / fall[0] == pytest.approx(np.exp(-at * interval_s / tau), rel=1e-4)


def test_recovery_is_faster_than_the_fall_by_the_ratio_of_the_resistances() -> None:
    circuit = Circuit(pull_ohm=200e3, pull_up=False, filter_f=47e-9, cable_f=0.0)
    ohm = np.concatenate([np.full(10, 2e3), np.full(3_000, 1e12), np.full(3_000, 2e3)])
    node = node_voltage(
        circuit, source_v=np.full(ohm.shape, 3.0), source_ohm=ohm, pull_v=0.0, interval_s=1e-4
    )
    closed_ohm = 1.0 / (1.0 / 2_001.0 + circuit.load_s)
    rise = (node[-1] - node[3_010]) / (node[-1] - node[3_009])
    assert rise == pytest.approx(np.exp(-1e-4 / (47e-9 * closed_ohm)), rel=1e-3)
    assert node[3_009] < 0.01 < node[20]


def test_the_exact_update_agrees_with_scipys_integrator_on_a_chattering_contact() -> None:
    rng = np.random.default_rng(3)
    circuit = Circuit(pull_ohm=300e3, pull_up=True, filter_f=10e-9)
    ohm = 10.0 ** rng.uniform(2.0, 7.0, 60)
    source_v = np.full(60, 1.8)
    node = node_voltage(circuit, source_v=source_v, source_ohm=ohm, pull_v=5.0, interval_s=1e-3)
    state = node[0]
    for number in range(1, 60):
        source_s = 1.0 / (ohm[number] + 1.0)

        def slope(_: float, v: np.ndarray, source_s: float = source_s) -> np.ndarray:
            current = (1.8 - v) * source_s + (5.0 - v) / 300e3 - v / 1e6
            return np.asarray(current / circuit.capacitance_f)

        state = solve_ivp(slope, (0.0, 1e-3), [state], method="LSODA", rtol=1e-8, atol=1e-10).y[0, -1]
        assert node[number] == pytest.approx(state, abs=1e-6)


# Exact maxima of the loading error for RL/RT = 1, 2, 5, 10, 20, 100: Todd, The Potentiometer Handbook
# (Bourns 1975; the page from memory), recomputed from the formula.
@pytest.mark.parametrize(
    ("load", "percent", "place"),
    [
        (1, 12.1585, 0.68889),
        (2, 6.6726, 0.67836),
        (5, 2.8373, 0.67150),
        (10, 1.44933, 0.66911),
        (20, 0.732608, 0.66789),
        (100, 0.147820, 0.66691),
    ],
)
def test_loading_has_the_handbooks_maximum(load: int, percent: float, place: float) -> None:
    position = np.linspace(0.0, 1.0, 100_001)
    error = position - loaded_ratio(position, 1.0 / load)
    assert 100.0 * error.max() == pytest.approx(percent, abs=6e-5)
    assert position[error.argmax()] == pytest.approx(place, abs=2e-5)


def test_a_track_without_a_pull_is_loaded_by_the_recorder_as_the_handbook_says() -> None:
    position = np.linspace(0.02, 0.98, 49)
    circuit = Circuit(None, probe_ohm=1e6)
    settled = settled_voltage(circuit, 5.0 * position, 10e3 * position * (1.0 - position), 0.0)
    assert_allclose(settled, 5.0 * loaded_ratio(position, 10e3 / 1e6), rtol=2e-6)


def test_a_pull_up_lifts_and_a_pull_down_lowers_the_open_signal() -> None:
    assert Circuit(100e3, pull_up=True).parked_v() == pytest.approx(5.0 / 1.1)
    assert Circuit(100e3, pull_up=False).parked_v() == 0.0
    assert Circuit(None).parked_v() == 0.0


def test_an_open_wire_picks_up_hum_and_a_closed_one_does_not() -> None:
    circuit = Circuit(None, filter_f=0.0)
    hum_a = 50e-9 * np.sin(2.0 * np.pi * 50.0 * np.arange(2_000) * 1e-4)
    spread = {}
    for ohm in (1_000.0, 1e12):
        node = node_voltage(
            circuit,
            source_v=np.full(2_000, 2.0),
            source_ohm=np.full(2_000, ohm),
            pull_v=0.0,
            interval_s=1e-4,
            pickup_a=hum_a,
        )
        spread[ohm] = float(np.ptp(node[500:]))
    assert spread[1e12] == pytest.approx(2 * 50e-9 * 1e6, rel=0.02)  # Ohm's law on the probe's 1 MΩ
    assert spread[1_000.0] < 2e-4
