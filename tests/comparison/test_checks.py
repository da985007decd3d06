"""Readings of both sides: the difference, its uncertainty after the GUM, and whether it exceeds it."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from analysis.comparison.checks import as_compared, compare_checks, difference_of
from analysis.comparison.compare import compare
from analysis.comparison.model import CheckComparison
from analysis.comparison.side import Side
from analysis.diagnosis.findings import Check, Result
from analysis.reports.comparison_report import check_name
from tests.comparison.examples import BAND, side, side_of, swept
from tests.diagnosis.examples import Meter, Wires, sweep, visit


def _check(value: float, spread: float, *, code: str = "ground_drop", record: str = "001") -> Check:
    return Check(code, record, value, spread, "V", None, 0.1, Result.PASS, "a handbook", code)


def _with_checks(*checks: Check, mirrored: bool = False) -> Side:
    made = side()
    return replace(made, findings=replace(made.findings, checks=checks), mirrored=mirrored)


def _one(first: Check, second: Check, **turned: bool) -> CheckComparison:
    (found,) = compare_checks(_with_checks(first), _with_checks(second, **turned))
    return found


def test_the_uncertainty_of_a_difference_is_the_root_of_the_sum_of_squares() -> None:
    # JCGM 100:2008, eq. 10 with both sensitivities one, checked against a Monte Carlo run (JCGM 101).
    difference, spread = difference_of(_check(0.020, 0.006), _check(0.065, 0.008))
    assert difference == pytest.approx(0.045)
    assert spread == pytest.approx(0.010)
    rng = np.random.default_rng(5)
    drawn = rng.normal(0.065, 0.004, 400_000) - rng.normal(0.020, 0.003, 400_000)
    assert 2.0 * drawn.std() == pytest.approx(spread, rel=0.01)


@pytest.mark.parametrize(
    ("apart", "exceeds"), [(0.0099, False), (0.0101, True), (-0.0101, True), (0.0, False)]
)
def test_a_difference_counts_where_it_is_larger_than_its_uncertainty(apart: float, exceeds: bool) -> None:
    assert _one(_check(0.03, 0.006), _check(0.03 + apart, 0.008)).exceeds is exceeds


def test_swapping_the_sides_turns_the_difference_and_nothing_else() -> None:
    low, high = _check(0.02, 0.006), _check(0.07, 0.008)
    there, back = _one(low, high), _one(high, low)
    assert back.difference == -there.difference
    assert back.expanded_uncertainty == there.expanded_uncertainty
    assert back.exceeds is there.exceeds is True


def test_which_side_noise_went_to_is_no_difference() -> None:
    found = _one(_check(0.007, 0.001, code="rest_variation"), _check(-0.007, 0.001, code="rest_variation"))
    assert found.difference == 0.0
    assert found.worst_seen


@pytest.mark.parametrize("value", [float("nan"), float("inf")])
def test_what_has_no_value_cannot_be_compared(value: float) -> None:
    assert _one(_check(value, 0.01), _check(0.02, 0.01)).exceeds is None
    assert _one(_check(0.02, 0.01), _check(0.02, float("nan"))).exceeds is None


def test_volts_are_not_compared_with_per_cent() -> None:
    assert _one(_check(0.02, 0.01), replace(_check(0.02, 0.01), unit="%")).exceeds is None


def test_volts_of_a_mirrored_signal_are_not_compared_but_its_ground_is() -> None:
    signal = _check(4.4, 0.01, code="signal_range")
    assert _one(signal, replace(signal, value=0.6), mirrored=True).exceeds is None
    assert _one(_check(0.02, 0.01), _check(0.2, 0.01), mirrored=True).exceeds is True


def test_what_one_side_alone_measured_stands_alone() -> None:
    (found,) = compare_checks(_with_checks(_check(0.02, 0.01)), _with_checks())
    assert found.first is not None
    assert found.second is None
    assert found.exceeds is None
    (turned,) = compare_checks(_with_checks(), _with_checks(_check(0.02, 0.01)))
    assert turned.second is not None


def test_a_check_made_for_several_records_is_matched_by_what_they_were_taken_for() -> None:
    ours = [
        _check(0.001 * place, 0.001, code="rest_variation", record=name)
        for place, name in enumerate(("001", "002", "003"))
    ]
    (first, second, third) = compare_checks(_with_checks(*ours), _with_checks(*reversed(ours)))
    assert [item.difference for item in (first, second, third)] == [0.0, 0.0, 0.0]


def test_a_capture_beside_itself_differs_in_no_reading() -> None:
    found = compare_checks(side(BAND), side(BAND))
    assert len(found) > 5
    assert all(item.difference == 0.0 and item.exceeds is False for item in found)


def test_a_lifted_ground_is_a_difference_and_is_said() -> None:
    lifted = side_of(visit(travel=sweep(12), wires=Wires(ground_v=0.31)))
    comparison = compare(side(), lifted)
    (ground,) = [item for item in comparison.checks if item.code == "ground_drop"]
    assert ground.difference == pytest.approx(0.298, abs=0.01)
    assert ground.exceeds
    assert "Sensor ground: 10 mV before, 310 mV after" in comparison.summary


def test_captures_of_another_rate_length_and_range_can_be_compared() -> None:
    path = sweep(20, seconds=0.8, low=20.0, high=80.0)
    coarse = side_of(swept((), path, meter=Meter(noise_v=0.01, step_v=0.02)))
    found = compare_checks(side(), coarse)
    (reference,) = [item for item in found if item.code == "reference_level"]
    assert reference.exceeds is False
    assert reference.second is not None
    assert reference.expanded_uncertainty > reference.second.expanded_uncertainty


def test_where_the_sign_is_chance_the_sizes_stand_that_are_subtracted() -> None:
    found = _one(_check(-0.0049, 0.004, code="rest_variation"), _check(0.0073, 0.004, code="rest_variation"))
    first, second = as_compared(found)
    assert first is not None
    assert second is not None
    assert (first.value, second.value) == (0.0049, 0.0073)
    assert found.difference == pytest.approx(second.value - first.value)
    assert str(check_name(found, compare(side(), side()))).endswith(", in size")
    plain = _one(_check(-0.0049, 0.004), _check(0.0073, 0.004))
    assert as_compared(plain) == (plain.first, plain.second)
    assert plain.difference == pytest.approx(0.0122)
    assert not str(check_name(plain, compare(side(), side()))).endswith(", in size")
