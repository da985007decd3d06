"""A rest in the spot: it speaks for the place where it wanders, a little against it where it is calm."""

from __future__ import annotations

import numpy as np
import pytest

from analysis.captures.memory import make_capture
from analysis.captures.model import Capture, Role, Step
from analysis.diagnosis.examine import examine
from analysis.diagnosis.findings import VerdictCode
from analysis.diagnosis.profiles import load_profile
from analysis.diagnosis.rests import ODDS_LIMITS, places_of, rest_odds
from analysis.diagnosis.studies import Studies, study
from analysis.intervals import Interval
from tests.diagnosis.examples import RATE_HZ, THREE, bursts, record, sweep, visit, worn
from tests.signals.examples import Floats, rest

BAND = Interval(42.0, 48.0)


def _held(place: float, *, opens: bool, step: Step | None = Step.HOLD, seconds: float = 4.0) -> Capture:
    path = rest(place, seconds, RATE_HZ)
    opened = _now_and_then(len(path)) if opens else np.zeros(len(path))
    swept = sweep(4)
    return make_capture(
        [
            record("001", Step.SWEEP, swept, opened=worn(swept, BAND), roles=THREE),
            record("002", step, path, opened=opened, roles=THREE),
        ]
    )


def _now_and_then(count: int) -> Floats:
    opened = np.zeros(count)
    for first in range(400, count - 100, 900):
        opened[first : first + 60] = 0.9
    return opened


def _studied(capture: Capture) -> Studies:
    return study(capture, load_profile(None))


def _odds(capture: Capture) -> float:
    studies = _studied(capture)
    role, place = places_of(studies)[0]
    return rest_odds(place, role, studies.every)


def test_a_hold_that_wanders_in_the_spot_speaks_for_the_place_and_a_calm_one_a_little_against_it() -> None:
    assert 1.0 < _odds(_held(45.0, opens=True)) <= ODDS_LIMITS[1]
    assert ODDS_LIMITS[0] <= _odds(_held(45.0, opens=False)) < 0.0


@pytest.mark.parametrize("place", [20.0, 60.0])
def test_a_hold_elsewhere_says_nothing_of_the_place(place: float) -> None:
    assert _odds(_held(place, opens=True)) == 0.0


def test_a_harness_that_is_wiggled_says_nothing_of_a_place() -> None:
    assert _odds(_held(45.0, opens=True, step=Step.WIGGLE)) == 0.0


def test_the_places_carry_what_the_rests_add() -> None:
    with_hold, without = _held(45.0, opens=True), make_capture(_held(45.0, opens=True).records[:1])
    assert places_of(_studied(with_hold))[0][1].log_odds > places_of(_studied(without))[0][1].log_odds


def test_the_spot_at_the_rest_height_is_no_bad_wire_though_the_signal_breaks_up_while_it_is_wiggled() -> None:
    path = rest(45.0, 4.0, RATE_HZ)
    wiggled = record("009", Step.WIGGLE, path, opened=_now_and_then(len(path)), roles=THREE)
    found = examine(visit(bands=[BAND], extra=[wiggled]))
    assert found.verdict.code is VerdictCode.WORN_TRACK
    assert found.bands[0].track is Role.SIGNAL


def test_a_record_at_rest_that_nobody_named_tells_of_a_bad_wire() -> None:
    path = rest(60.0, 4.0, RATE_HZ)
    still = record("002", None, path, opened=bursts(len(path), seed=3), roles=THREE)
    found = examine(make_capture([record("001", Step.SWEEP, sweep(6), roles=THREE), still]))
    assert found.verdict.code is VerdictCode.SIGNAL_WIRING
