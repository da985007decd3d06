"""A code that the job names, beside rules by which none would be stored."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from analysis.captures.model import Capture
from analysis.control_unit.replay import Readings, Replay, RuleReplay
from analysis.control_unit.rules import RuleKind
from analysis.exposure.picture import Exposure, RuleChance, picture
from analysis.exposure.stored_code import against_record, against_roads, job_codes
from analysis.intervals import Interval
from analysis.review.job import Job, with_fact
from tests.exposure.test_picture import BAND, CONTACT, HEIGHTS, SMOOTH, UNIT

CAPTURE = Capture("3f0e8d0e-5b64-4a36-9a4c-6b1f1c0a2d11", (), attributes={"fault_codes": "RH-214"})


@pytest.fixture(scope="module")
def never() -> Exposure:
    """A drive on which the chance of a code is nought everywhere."""
    made = picture(HEIGHTS, BAND, CONTACT, UNIT, SMOOTH)
    return replace(made, rests=tuple(replace(item, chances=()) for item in made.rests))


def _replayed(*stored_s: float) -> Replay:
    time_s = np.array([0.0, 0.01, 0.02, 0.03])
    rule = RuleReplay(RuleKind.RANGE, np.zeros(4, np.bool_), np.zeros(4), stored_s, "")
    return Replay("004", Readings(time_s, np.full(4, 2.5)), (rule,))


def test_codes_are_those_entered_for_the_job_or_else_of_the_capture() -> None:
    assert job_codes(Job(), CAPTURE) == ("RH-214",)
    assert job_codes(with_fact(Job(), "fault_codes", "RH-216, RH-217"), CAPTURE) == ("RH-216", "RH-217")
    assert job_codes(with_fact(Job(), "fault_codes", "none"), CAPTURE) == ()


def test_a_stored_code_that_no_rule_would_store_on_the_road_is_said_in_one_sentence(never: Exposure) -> None:
    words = against_roads(("RH-214",), [never])
    assert "fault code RH-214" in words
    assert "own rules are not known, or it was stored under other conditions" in words
    assert "on this road" in words
    assert "on these roads" in against_roads(("RH-214",), [never, never])
    assert words.count(".") == 1


def test_nothing_is_said_without_a_code_or_where_one_may_well_be_stored(never: Exposure) -> None:
    assert against_roads((), [never]) == ""
    even = RuleChance(RuleKind.RANGE, 0.5, Interval(0.5, 0.5), 1.4)
    likely = replace(never, rests=(replace(never.rests[0], chances=(even,)), *never.rests[1:]))
    assert against_roads(("RH-214",), [never, likely]) == ""


def test_the_same_is_said_of_a_record_in_which_none_would_have_been_stored(never: Exposure) -> None:
    words = against_record(("RH-214", "RH-216"), _replayed())
    assert "fault codes RH-214, RH-216" in words
    assert "in this record" in words
    assert against_record(("RH-214",), _replayed(0.02)) == ""
    one, other = against_record(("RH-214",), _replayed()), against_roads(("RH-214",), [never])
    assert one.replace("in this record", "on this road") == other
