"""Closed forms against counted crossings and simulated readings."""

from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.stats import norm

from analysis.control_unit.debounce import ContinuousTimer, UpDownCounter, ripeness, stored_at
from analysis.control_unit.rules import RuleKind
from analysis.exposure.contact import Contact
from analysis.exposure.stays import (
    broken_readings,
    codes_per_s,
    expected_runs,
    inside,
    readings_at,
    readings_needed,
    run_lengths,
    stays_broken,
    storings,
)
from analysis.exposure.visits import chance_within, visits
from analysis.intervals import Interval
from analysis.vehicle.drive import simulate_travel
from analysis.vehicle.geometry import Floats
from analysis.vehicle.quarter_car import GOLDEN_CAR

UP_PER_S = GOLDEN_CAR.up_crossings_per_s
RMS_MM = 10.374  # class C at 80 km/h, closed form
TICK_S = 0.05


@pytest.fixture(scope="module")
def drive() -> Floats:
    """Two hours at 1 kHz."""
    return simulate_travel(np.random.default_rng(80), 7_200_000, 1_000.0)


def _contact(share: float, mean_run_s: float) -> Contact:
    return Contact(RuleKind.RANGE, share, mean_run_s, 10.0)


def test_a_minute_on_class_c_crosses_the_rest_height_228_times_upwards() -> None:
    # Rice's rate, 3.7925 a second (published-form closed value); a wide band entered through one edge.
    half = visits(Interval(0.0, 1e6), 0.0, RMS_MM, UP_PER_S)
    assert 60.0 * half.per_s == pytest.approx(227.55, abs=0.01)
    assert half.share == pytest.approx(0.5)


@pytest.mark.parametrize(
    "band", [Interval(-20.2, -7.2), Interval(-3.0, 4.0), Interval(12.0, 30.0), Interval(5.0, 6.0)]
)
def test_share_visits_and_mean_stay_agree_with_a_simulated_drive_within_5_percent(
    drive: Floats, band: Interval
) -> None:
    closed = visits(band, 0.0, RMS_MM, UP_PER_S)
    flags = inside(drive, band, 0.0, RMS_MM)
    stays = run_lengths(flags)
    assert closed.share == pytest.approx(flags.mean(), rel=0.05)
    assert closed.per_s == pytest.approx(stays.size / 7_200.0, rel=0.05)
    assert closed.mean_stay_s == pytest.approx(stays.mean() / 1_000.0, rel=0.05)


def test_a_narrow_band_is_crossed_as_fast_as_the_wheel_is_there() -> None:
    # At a level the speed has a Rayleigh distribution (Rice), so a stay of more than t has the chance
    # 1 - exp(-w² / 2 (σ' t)²) where the band is so narrow that the speed does not change in it.
    drive = simulate_travel(np.random.default_rng(9), 6_000_000, 20_000.0)
    width = 0.01
    stays = run_lengths(inside(drive, Interval(0.5, 0.5 + width), 0.0, 1.0)) / 20_000.0
    rate = 2.0 * math.pi * UP_PER_S
    for time_s in (0.0006, 0.001):
        expected = -math.expm1(-(width**2) / (2.0 * (rate * time_s) ** 2))
        assert (stays > time_s).mean() == pytest.approx(expected, abs=0.06)


@settings(max_examples=60, deadline=None)
@given(st.floats(-60.0, 60.0), st.floats(0.5, 40.0), st.floats(-40.0, 40.0), st.floats(0.5, 30.0))
def test_the_share_is_that_of_the_normal_distribution_and_both_sides_are_alike(
    start_mm: float, width_mm: float, rest_mm: float, rms_mm: float
) -> None:
    found = visits(Interval(start_mm, start_mm + width_mm), rest_mm, rms_mm, UP_PER_S)
    expected = norm.cdf(start_mm + width_mm, rest_mm, rms_mm) - norm.cdf(start_mm, rest_mm, rms_mm)
    assert found.share == pytest.approx(expected, abs=1e-12)
    mirrored = visits(Interval(-start_mm - width_mm, -start_mm), -rest_mm, rms_mm, UP_PER_S)
    assert mirrored.share == pytest.approx(found.share, rel=1e-6)
    assert mirrored.per_s == pytest.approx(found.per_s, rel=1e-9)


def test_a_vehicle_that_stands_is_in_the_band_or_is_not() -> None:
    band = Interval(-20.0, -7.0)
    assert visits(band, -13.0, 0.0, UP_PER_S).share == 1.0
    assert visits(band, 0.0, 0.0, UP_PER_S).share == 0.0
    assert visits(band, -13.0, 0.0, UP_PER_S).mean_stay_s == math.inf
    assert math.isnan(visits(band, 0.0, 0.0, UP_PER_S).mean_stay_s)


def test_twice_the_speed_is_half_the_visits_a_kilometre_at_the_same_movement() -> None:
    found = visits(Interval(-20.0, -7.0), 0.0, RMS_MM, UP_PER_S)
    assert found.per_km(10.0) == pytest.approx(2.0 * found.per_km(20.0))


def test_one_event_in_three_hours_is_a_chance_of_28_in_100_within_an_hour() -> None:
    assert chance_within(1.0 / 10_800.0, 60.0) == pytest.approx(1.0 - math.exp(-1.0 / 3.0))
    assert chance_within(0.0, 60.0) == 0.0


def test_the_contact_is_broken_the_share_and_the_run_that_it_is_said_to_be() -> None:
    contact = _contact(0.2, 0.3)
    broken = broken_readings(np.random.default_rng(1), 400_000, contact, 0.01)
    assert broken.mean() == pytest.approx(0.2, rel=0.05)
    follows = (broken[:-1] & broken[1:]).sum() / broken[:-1].sum()
    assert follows == pytest.approx(stays_broken(contact, 0.01), abs=0.01)


def test_far_apart_readings_of_a_flickering_contact_know_nothing_of_each_other() -> None:
    assert stays_broken(_contact(0.2, 0.001), 0.05) == pytest.approx(0.2, abs=1e-6)
    assert stays_broken(_contact(0.2, 1e6), 0.05) == pytest.approx(1.0, abs=1e-6)
    assert stays_broken(_contact(1.0, 0.5), 0.05) == 1.0


@pytest.mark.parametrize(("hold_s", "needed"), [(0.0, 1), (0.5, 11), (0.49, 11), (0.51, 12), (2.0, 41)])
def test_a_timer_asks_for_the_reading_that_starts_it_and_those_that_fill_it(
    hold_s: float, needed: int
) -> None:
    assert readings_needed(hold_s, TICK_S) == needed
    failed = np.zeros(100, dtype=np.bool_)
    for length, stored in ((needed - 1, 0), (needed, 1)):
        failed[:] = False
        failed[10 : 10 + length] = True
        assert stored_at(ripeness(failed, ContinuousTimer(hold_s), tick_s=TICK_S)).size == stored


@pytest.mark.parametrize(("share", "run_s", "hold_s"), [(0.6, 0.3, 0.2), (0.9, 2.0, 0.5), (0.3, 0.05, 0.1)])
def test_the_timers_closed_form_agrees_with_readings_that_are_walked_one_by_one(
    drive: Floats, share: float, run_s: float, hold_s: float
) -> None:
    contact, rms_mm = _contact(share, run_s), 5.0
    seen = readings_at(inside(drive, Interval(-10.0, 4.0), 0.0, rms_mm), 1_000.0, TICK_S)
    closed = codes_per_s(seen, contact, ContinuousTimer(hold_s), TICK_S) * seen.shape[0] * TICK_S
    walked = [
        stored_at(
            ripeness(
                seen & broken_readings(np.random.default_rng(seed), seen.shape[0], contact, TICK_S),
                ContinuousTimer(hold_s),
                tick_s=TICK_S,
            )
        ).size
        for seed in range(5)
    ]
    assert closed == pytest.approx(np.mean(walked), rel=0.05)


def test_the_counter_stores_as_the_replay_does_where_it_is_begun_anew() -> None:
    rng = np.random.default_rng(4)
    broken = rng.random(200_000) < 0.3
    counter = UpDownCounter(3, 1, 40)
    count, stored = 0, 0
    for bad in broken:
        count = count + counter.up if bad else max(count - counter.down, 0)
        if count >= counter.limit:
            stored, count = stored + 1, 0
    assert storings(broken, counter) == stored > 10


def test_a_counter_fills_as_fast_as_its_drift_where_bad_readings_outweigh_good_ones() -> None:
    # The mean step is 2 p - (1 - p): with p = 0.6 it is 0.8 a reading, so 127 takes 159 readings.
    seen = np.ones(400_000, dtype=np.bool_)
    rate = codes_per_s(seen, _contact(0.6, 0.001), UpDownCounter(2, 1, 127), TICK_S)
    assert rate * TICK_S == pytest.approx(0.8 / 127.0, rel=0.03)


def test_nothing_seen_or_nothing_broken_stores_nothing() -> None:
    seen = np.ones(1_000, dtype=np.bool_)
    for debounce in (ContinuousTimer(0.1), UpDownCounter()):
        assert codes_per_s(~seen, _contact(0.9, 1.0), debounce, TICK_S) == 0.0
        assert codes_per_s(seen, _contact(0.0, 0.0), debounce, TICK_S) == 0.0
        assert codes_per_s(seen[:0], _contact(0.9, 1.0), debounce, TICK_S) == 0.0


def test_a_contact_that_is_always_open_stores_once_a_stay_that_is_long_enough() -> None:
    stays = np.array([3, 11, 12, 40])
    assert expected_runs(stays, 11, _contact(1.0, 1.0), TICK_S) == 3.0
