"""Every reading that is held against a limit carries how probable it is that the limit is kept."""

from __future__ import annotations

import math

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from scipy.stats import norm

from analysis.captures.model import Capture
from analysis.diagnosis.conformance import SURE, conformance_of, decide, probability_of_conformance
from analysis.diagnosis.examine import examine
from analysis.diagnosis.findings import Check, Findings, Result
from analysis.diagnosis.judging import decided
from analysis.diagnosis.profile_model import Limit
from analysis.diagnosis.serialise import findings_object
from analysis.intervals import Interval
from tests.diagnosis.examples import Meter, Wires, sweep, visit

COARSE = Meter(gain_error=0.005, offset_error_v=0.01)
VALUE = st.floats(-10.0, 10.0)
SPREAD = st.floats(1e-3, 5.0)


def _check(found: Findings, code: str) -> Check:
    (made,) = (item for item in found.checks if item.code == code)
    return made


@given(VALUE, SPREAD, st.floats(-5.0, 5.0), st.floats(0.01, 8.0))
def test_the_probability_is_the_normal_distributions_share_between_the_limits(
    value: float, u: float, lower: float, width: float
) -> None:
    # scipy.stats.norm as the reference.
    upper = lower + width
    expected = norm.cdf(upper, value, u) - norm.cdf(lower, value, u)
    assert probability_of_conformance(value, u, lower=lower, upper=upper) == pytest.approx(
        expected, abs=1e-12
    )
    assert probability_of_conformance(value, u, upper=upper) == pytest.approx(norm.cdf(upper, value, u))
    assert probability_of_conformance(value, u, lower=lower) == pytest.approx(norm.sf(lower, value, u))


@given(VALUE, SPREAD, st.floats(-5.0, 5.0))
def test_against_one_limit_the_decision_is_a_guard_band_of_one_expanded_uncertainty(
    value: float, expanded: float, upper: float
) -> None:
    # ILAC-G8:09/2019, 4.2.2: acceptance below upper - U, rejection above upper + U.
    assume(abs(abs(value - upper) - expanded) > 1e-6)
    expected = (
        Result.PASS
        if value < upper - expanded
        else Result.FAIL
        if value > upper + expanded
        else Result.CANNOT_TELL
    )
    assert decide(value, expanded, upper=upper) is expected
    assert decide(-value, expanded, lower=-upper) is expected


@given(VALUE, SPREAD, st.floats(-5.0, 5.0), st.floats(0.01, 8.0))
def test_a_definite_answer_is_wrong_in_less_than_2_3_of_a_hundred_cases(
    value: float, expanded: float, lower: float, width: float
) -> None:
    limits = {"lower": lower, "upper": lower + width}
    result, probability = decide(value, expanded, **limits), conformance_of(value, expanded, **limits)
    assert probability is not None
    if result is Result.PASS:
        assert probability > SURE - 1e-6
    if result is Result.FAIL:
        assert probability < 1.0 - SURE + 1e-6
        assert not lower <= value <= lower + width
    if result is Result.CANNOT_TELL and lower <= value <= lower + width:
        assert probability < SURE + 1e-6


def test_between_limits_that_are_closer_than_the_reading_is_good_nothing_passes_or_fails() -> None:
    # Symmetric limits 4 u apart keep 0.954 of a normal distribution about their middle, not 0.977.
    assert decide(0.0, 2.0, lower=-2.0, upper=2.0) is Result.CANNOT_TELL
    assert decide(0.0, 2.0, lower=-2.4, upper=2.4) is Result.PASS
    assert decide(0.0, 100.0, lower=-0.1, upper=0.1) is Result.CANNOT_TELL
    assert decide(0.2, 100.0, lower=-0.1, upper=0.1) is Result.CANNOT_TELL


@pytest.mark.parametrize("odd", [math.nan, math.inf])
def test_what_is_not_finite_cannot_be_told_and_has_no_probability(odd: float) -> None:
    assert decide(odd, 0.1, upper=5.2) is Result.CANNOT_TELL
    assert decide(5.0, odd, upper=5.2) is Result.CANNOT_TELL
    assert conformance_of(odd, 0.1, upper=5.2) is None
    assert conformance_of(5.0, odd, upper=5.2) is None
    assert conformance_of(5.0, 0.1) is None


@pytest.mark.parametrize(
    ("value", "expanded", "limit", "probability", "result"),
    [
        # JCGM 106:2012, examples of clause 7 (from memory): a diode's voltage, a burst pressure.
        (-5.47, 0.10, Limit(None, -5.40, "V", "x"), 0.92, Result.CANNOT_TELL),
        (509.7, 17.2, Limit(490.0, None, "kPa", "x"), 0.99, Result.PASS),
    ],
)
def test_a_check_of_an_example_of_jcgm_106_has_its_probability(
    value: float, expanded: float, limit: Limit, probability: float, result: Result
) -> None:
    made = decided("example", "Example", "", value, expanded, limit.unit, limit)
    assert made.conformance == pytest.approx(probability, abs=0.005)
    assert made.result is result


def _assert_follows(check: Check) -> None:
    if check.conformance is None:
        assert check.result is Result.CANNOT_TELL
        return
    assert 0.0 <= check.conformance <= 1.0
    u = 0.5 * check.expanded_uncertainty
    if u > 0.0:
        low = -math.inf if check.lower_limit is None else check.lower_limit
        high = math.inf if check.upper_limit is None else check.upper_limit
        expected = norm.cdf(high, check.value, u) - norm.cdf(low, check.value, u)
        assert check.conformance == pytest.approx(expected, abs=1e-9)
    assert (check.result is Result.PASS) is (check.conformance >= SURE - 1e-9)
    if check.result is Result.FAIL:
        assert check.conformance <= 1.0 - SURE + 1e-9


@pytest.mark.parametrize(
    "capture",
    [
        visit(travel=sweep(2)),
        visit(travel=sweep(2), wires=Wires(reference_v=4.81), meter=COARSE),
        visit(travel=sweep(2), wires=Wires(ground_v=0.3)),
        visit(bands=[Interval(40.0, 44.0)], attributes={"profile": "throttle"}),
    ],
    ids=["sound", "too near to tell", "bad ground", "worn throttle"],
)
def test_every_check_through_the_door_follows_from_its_probability(capture: Capture) -> None:
    found = examine(capture)
    assert found.checks
    for check in found.checks:
        _assert_follows(check)
    written = {item["code"]: item["conformance_probability"] for item in findings_object(found)["checks"]}
    assert written == {item.code: item.conformance for item in found.checks}


def test_the_nearer_a_reference_is_to_its_limit_the_less_sure_it_is() -> None:
    sure = [
        _check(
            examine(visit(travel=sweep(2), wires=Wires(reference_v=volts), meter=COARSE)), "reference_level"
        ).conformance
        for volts in (5.0, 4.83, 4.81, 4.79, 4.70)
    ]
    known = [item for item in sure if item is not None]
    assert len(known) == len(sure)
    assert known == sorted(known, reverse=True)
    assert known[0] > 0.999
    assert known[-1] < 0.001
