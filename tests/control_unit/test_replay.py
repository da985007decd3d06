"""Recorded signals run through a control unit."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from analysis.captures.model import ArraySource, Channel, Record, Role, Scaling
from analysis.control_unit.debounce import ContinuousTimer, Floats, UpDownCounter
from analysis.control_unit.replay import replay
from analysis.control_unit.rules import (
    RATE,
    SIDES,
    ControlUnit,
    RangeRule,
    RuleKind,
    control_unit_for,
)
from analysis.diagnosis.profiles import load_profile
from analysis.errors import ControlUnitError
from analysis.intervals import Interval

RATE_HZ = 1_000.0
# HUMMER H2 2009, DTC C0625 or C0630: less than 0.25 V or more than 4.75 V for more than 500 ms.
RANGE = RangeRule(Interval(0.25, 4.75), ContinuousTimer(0.5), "HUMMER H2 2009, DTC C0625 or C0630")
UNIT = ControlUnit(0.010, RANGE)


def _record(volts_v: Floats, *more: Floats) -> tuple[Record, list[Channel]]:
    roles = (Role.SIGNAL, Role.SECOND_SIGNAL)
    channels = [
        Channel(role.value, role, ArraySource(values))
        for role, values in zip(roles, (volts_v, *more), strict=False)
    ]
    return Record("004", 1.0 / RATE_HZ, tuple(channels), first_sample_s=2.0), channels


def _falling_to(level_v: float, seconds: float) -> Floats:
    volts_v = np.full(5_000, 2.5)
    volts_v[1_000 : 1_000 + round(seconds * RATE_HZ)] = level_v
    return volts_v


@pytest.mark.parametrize(
    ("level_v", "seconds", "stored"),
    [(0.24, 0.52, True), (0.24, 0.48, False), (0.26, 2.0, False), (4.76, 0.52, True), (4.74, 2.0, False)],
)
def test_the_range_rule_stands_at_its_published_edges(level_v: float, seconds: float, stored: bool) -> None:
    record, (signal, *_) = _record(_falling_to(level_v, seconds))
    made = replay(record, signal, UNIT)
    assert bool(made.rules[0].stored_s) is stored
    if stored:
        assert list(made.rules[0].stored_s) == pytest.approx([2.0 + 1.0 + 0.5])


def test_a_reading_on_the_limit_is_good() -> None:
    record, (signal, *_) = _record(_falling_to(0.25, 2.0))
    assert replay(record, signal, UNIT).first is None


def test_a_gap_in_the_recording_breaks_no_rule() -> None:
    record, (signal, *_) = _record(_falling_to(np.nan, 2.0))
    unit = replace(UNIT, rate_rule=RATE, comparison_rule=SIDES)
    made = replay(record, signal, unit, stand_in_v=(np.array([2.0, 7.0]), np.array([2.5, 2.5])))
    assert len(made.rules) == 3
    assert not any(item.failed.any() for item in made.rules)


def test_a_control_unit_that_reads_seldom_misses_what_happens_between() -> None:
    volts_v = np.full(5_000, 2.5)
    volts_v[1_001:1_049] = 0.0
    record, (signal, *_) = _record(volts_v)
    fast, slow = replace(UNIT, tick_s=0.001), replace(UNIT, tick_s=0.050)
    assert replay(record, signal, fast).rules[0].failed.sum() == 48
    assert replay(record, signal, slow).rules[0].failed.sum() == 0


def test_a_jump_breaks_the_rate_rule_once_down_and_once_up() -> None:
    record, (signal, *_) = _record(_falling_to(0.3, 1.0))
    unit = ControlUnit(0.010, None, RATE)
    (made,) = replay(record, signal, unit).rules
    assert made.failed.sum() == 2
    assert made.stored_s == ()
    at_once = replace(unit, rate_rule=replace(RATE, debounce=ContinuousTimer(0.0)))
    assert list(replay(record, signal, at_once).rules[0].stored_s) == pytest.approx([3.0, 4.0])


def test_two_mirrored_sides_that_move_alike_agree_and_a_band_on_one_sets_them_against_each_other() -> None:
    # Volvo XC70 2008, Height Sensor, Suspension: left rises as right falls; their sum stays near 5 V.
    time_s = np.arange(5_000) / RATE_HZ
    left = 2.5 + 0.8 * np.sin(2 * np.pi * time_s)
    right = 5.0 - left
    unit = ControlUnit(0.010, RANGE, None, replace(SIDES, factor=-1.0, offset_v=5.0))
    record, (signal, other) = _record(left, right)
    assert replay(record, signal, unit, other=other).first is None
    worn = left.copy()
    worn[500:3_500] = 0.9
    record, (signal, other) = _record(worn, right)
    made = replay(record, signal, unit, other=other)
    assert made.first is None  # it swings through agreement twice a second
    gathered = replace(SIDES, factor=-1.0, offset_v=5.0, debounce=UpDownCounter(2, 1, 60))
    kind, _ = replay(record, signal, replace(unit, comparison_rule=gathered), other=other).first or (None, 0)
    assert kind is RuleKind.COMPARISON


def test_a_comparison_without_another_signal_is_left_out() -> None:
    record, (signal, *_) = _record(_falling_to(0.2, 1.0))
    kinds = [item.kind for item in replay(record, signal, replace(UNIT, comparison_rule=SIDES)).rules]
    assert kinds == [RuleKind.RANGE]


def test_the_profile_brings_its_own_limits_and_second_track() -> None:
    height = control_unit_for(load_profile("ride-height"))
    assert height.range_rule is not None
    assert (height.range_rule.limits_v, height.range_rule.debounce) == (
        Interval(0.25, 4.75),
        ContinuousTimer(0.5),
    )
    assert height.tick_s == 0.050  # Saab 9-7X 2009, DTC 002: at 50 ms intervals
    pedal = load_profile("pedal")
    pair = control_unit_for(pedal).comparison_rule
    assert pair is not None
    second_v = pedal.expected_second_v(3.0)
    assert second_v is not None
    assert pair.factor * second_v + pair.offset_v == pytest.approx(3.0)


def test_counts_and_a_first_sample_later_than_zero_are_read_as_volts_and_times() -> None:
    counts = np.full(2_000, 500, dtype=np.int16)
    counts[500:1_500] = 10
    channel = Channel("signal", Role.SIGNAL, ArraySource(counts), Scaling(0.005))
    record = Record("007", 0.001, (channel,), first_sample_s=40.0)
    made = replay(record, channel, UNIT)
    assert made.readings.signal_v[0] == pytest.approx(2.5)
    assert made.first is not None
    assert made.first[1] == pytest.approx(41.0)


def test_a_record_slower_than_the_control_unit_is_refused_with_a_sentence() -> None:
    record, (signal, *_) = _record(_falling_to(0.2, 1.0))
    with pytest.raises(ControlUnitError, match=r"reads every 0\.5 ms"):
        replay(replace(record, sample_interval_s=0.1), signal, replace(UNIT, tick_s=0.0005))


def test_an_empty_record_gives_an_empty_replay() -> None:
    record, (signal, *_) = _record(np.empty(0))
    made = replay(record, signal, UNIT)
    assert made.first is None
    assert made.rules[0].longest_share == 0.0


@pytest.mark.parametrize("tick_s", [0.0, -1.0, 10.0, float("nan")])
def test_a_control_unit_that_never_reads_is_refused(tick_s: float) -> None:
    with pytest.raises(ControlUnitError, match="a control unit reads every"):
        ControlUnit(tick_s)
