"""End voltages, span, linearity and play, through the door: judged where the capture allows it."""

from __future__ import annotations

from itertools import pairwise

import numpy as np
import pytest

from analysis.captures.memory import make_capture, make_channel, make_record
from analysis.captures.model import Capture, Record, Role, Scaling, Step
from analysis.diagnosis.examine import examine
from analysis.diagnosis.findings import Check, Findings, Result, State, Statement
from tests.diagnosis.examples import RATE_HZ, Meter, Wires, channel, record, standing, sweep, visit
from tests.signals.examples import Floats, noise, rest, stroke

FINE = Meter(noise_v=0.0005, step_v=0.001, gain_error=0.0005, offset_error_v=0.001)


def _check(found: Findings, code: str) -> Check | None:
    return next((item for item in found.checks if item.code == code), None)


def _known(found: Findings, code: str) -> Check:
    made = _check(found, code)
    assert made is not None
    return made


def _said(found: Findings, code: str) -> Statement:
    (made,) = (item for item in found.evidence if item.code == code)
    return made


# -- ends and span --------------------------------------------------------------------------------


def _throttle(low: float, high: float, *, meter: Meter = FINE, wires: Wires | None = None) -> Findings:
    """Sweeps between two stops, in % of the feed."""
    path = sweep(6, low=low, high=high)
    still = standing(place=low + 1.0, meter=meter, wires=wires or Wires(ground_v=0.0))
    swept = record("004", Step.SWEEP, path, wires=wires or Wires(ground_v=0.0), meter=meter)
    return examine(make_capture([*still, swept], attributes={"profile": "throttle"}))


# Closed 0.4-0.6 V, open 3.5-4.3 V: Kia Sephia 1997, Throttle Position Sensor; the profile's limits allow
# 0.3-1.0 V and 3.5-4.8 V.
@pytest.mark.parametrize(
    ("low", "high", "expected"),
    [
        (10.0, 80.0, (Result.PASS, Result.PASS, Result.PASS)),
        (5.6, 80.0, (Result.FAIL, Result.PASS, Result.PASS)),
        (20.6, 80.0, (Result.FAIL, Result.PASS, Result.PASS)),
        (10.0, 69.0, (Result.PASS, Result.FAIL, Result.PASS)),
        (16.0, 71.0, (Result.PASS, Result.PASS, Result.FAIL)),
    ],
)
def test_ends_that_a_stop_shows_are_held_against_the_profile(
    low: float, high: float, expected: tuple[Result, Result, Result]
) -> None:
    found = _throttle(low, high)
    made = [_known(found, code) for code in ("low_end", "high_end", "signal_span")]
    assert [item.value for item in made] == pytest.approx([low / 20, high / 20, (high - low) / 20], abs=0.01)
    assert tuple(item.result for item in made) == expected
    assert all("not reached" not in item.title for item in made)


def test_an_end_too_near_its_limit_for_the_recorder_cannot_be_told() -> None:
    coarse = Meter(gain_error=0.005, offset_error_v=0.02)
    assert _known(_throttle(6.1, 80.0, meter=coarse), "low_end").result is Result.CANNOT_TELL
    assert _known(_throttle(6.1, 80.0), "low_end").result is not Result.FAIL


def test_the_limits_go_with_the_feed_of_a_ratiometric_sensor() -> None:
    found = _throttle(10.0, 80.0, wires=Wires(reference_v=4.9, ground_v=0.0))
    made = _known(found, "high_end")
    assert made.value == pytest.approx(0.8 * 4.9, abs=0.01)
    assert made.lower_limit == pytest.approx(3.5 * 0.98, rel=1e-3)


def test_a_sweep_that_turns_round_before_the_stops_is_said_not_to_reach_them_and_does_not_fail() -> None:
    turns = (30.0, 55.0, 34.0, 58.5, 37.5, 61.0, 41.0)
    path = np.concatenate([stroke(*ends, 1.0) for ends in pairwise(turns)])
    still = standing(place=45.0, meter=FINE)
    swept = record("004", Step.SWEEP, path, meter=FINE)
    found = examine(make_capture([*still, swept], attributes={"profile": "throttle"}))
    for code in ("low_end", "high_end"):
        made = _known(found, code)
        assert made.result is Result.CANNOT_TELL
        assert "not reached" in made.title
    assert _known(found, "signal_span").result is Result.CANNOT_TELL


def test_a_profile_without_ends_has_no_such_checks() -> None:
    found = examine(visit(travel=sweep(2)))
    assert [_check(found, code) for code in ("low_end", "high_end", "signal_span")] == [None] * 3


def test_an_end_out_of_its_limits_changes_no_verdict() -> None:
    sound, short = _throttle(10.0, 80.0), _throttle(10.0, 69.0)
    assert _known(short, "high_end").result is Result.FAIL
    assert short.verdict.code is sound.verdict.code
    assert short.verdict.confidence == pytest.approx(sound.verdict.confidence, abs=0.02)


# -- linearity and play ---------------------------------------------------------------------------


def _dual(first_percent: Floats, second_percent: Floats) -> Capture:
    """Both tracks in volts on a feed of exactly 5 V, 16 bits."""
    volts = {Role.SIGNAL: first_percent / 20.0, Role.SECOND_SIGNAL: second_percent / 20.0}
    volts[Role.REFERENCE] = np.full(len(first_percent), 5.0)
    channels = [
        make_channel(
            role,
            np.rint((values + noise(len(values), 0.0003, place)) / 0.0002).astype(np.int16),
            Scaling(0.0002),
        )
        for place, (role, values) in enumerate(volts.items())
    ]
    return make_capture([make_record("001", 1.0 / RATE_HZ, channels, step=Step.SWEEP)])


TRAVEL = sweep(6, low=0.5, high=99.5, seconds=2.0)
SHARE = TRAVEL / 100.0

# Three outputs whose linearity is known in closed form or by exact minimax (20,001 points, linear programme):
# y = x - 0.01 sin 2 pi x: independent 0.6825 %, terminal 1.0000 %; y = x - 0.1 x^2 (1 - x), the loading of
# a potentiometer: 0.7407 % and 1.4815 %; y = x + 0.04 (x^2 - x): 0.5 % and 1.0 %.
KNOWN = {
    "sine": (SHARE - 0.01 * np.sin(2.0 * np.pi * SHARE), 0.6825, 1.0),
    "loaded": (SHARE - 0.1 * SHARE**2 * (1.0 - SHARE), 0.7407, 1.4815),
    "bowed": (SHARE + 0.04 * (SHARE**2 - SHARE), 0.5, 1.0),
}


@pytest.mark.parametrize("name", KNOWN)
@pytest.mark.parametrize(("slope", "offset"), [(0.5, 0.0), (-1.0, 100.0)])
def test_linearity_against_a_straight_second_track_is_the_published_one(
    name: str, slope: float, offset: float
) -> None:
    output, independent, terminal = KNOWN[name]
    found = examine(_dual(100.0 * output, offset + slope * TRAVEL))
    made = _known(found, "independent_linearity")
    assert made.value == pytest.approx(independent, abs=0.06)
    assert made.result is Result.PASS
    assert made.upper_limit == 2.0
    ends = _known(found, "terminal_linearity")
    assert ends.value == pytest.approx(terminal, abs=0.12)
    assert (ends.lower_limit, ends.upper_limit, ends.result) == (None, None, Result.CANNOT_TELL)
    assert _said(found, "output_straight").state is State.PROVED


def test_a_bent_track_fails_and_the_verdict_stays() -> None:
    straight = examine(_dual(TRAVEL, 0.5 * TRAVEL))
    bent = examine(_dual(100.0 * (SHARE + 0.12 * (SHARE**2 - SHARE)), 0.5 * TRAVEL))
    # Half of 0.12 / 4, the largest bow, to either side of the best line: 1.5 %.
    assert _known(bent, "independent_linearity").value == pytest.approx(1.5, abs=0.08)
    much = examine(_dual(100.0 * (SHARE + 0.24 * (SHARE**2 - SHARE)), 0.5 * TRAVEL))
    assert _known(much, "independent_linearity").result is Result.FAIL
    assert _said(much, "output_straight").state is State.REFUTED
    assert much.verdict.code is straight.verdict.code


def test_without_a_position_reference_linearity_is_not_shown_and_not_guessed() -> None:
    found = examine(visit(travel=sweep(2)))
    assert _check(found, "independent_linearity") is None
    said = _said(found, "output_straight")
    assert said.state is State.NOT_SHOWN
    assert "nothing but the signal itself" in said.text


def _set_at(*places: float, bow: float = 0.0) -> list[Record]:
    """Records at rest whose position was set by a gauge."""
    made = []
    for number, place in enumerate(places, 10):
        share = place / 100.0
        output = 100.0 * (share + bow * (share**2 - share))
        volts = rest(output, 0.5, RATE_HZ) / 20.0
        one = channel(Role.SIGNAL, volts, seed=number, meter=FINE)
        made.append(
            make_record(
                f"{number:03d}", 1.0 / RATE_HZ, [one], step=Step.CHECK, attributes={"position_percent": place}
            )
        )
    return made


def test_stated_positions_in_steps_of_ten_per_cent_are_a_reference() -> None:
    # Steps of at most 10 % of the travel: MIL-PRF-39002C, 4.6.8.
    swept = record("001", Step.SWEEP, sweep(2), wires=Wires(ground_v=0.0), meter=FINE)
    found = examine(make_capture([swept, *_set_at(*np.arange(0.5, 100.0, 9.9), bow=0.04)]))
    made = _known(found, "independent_linearity")
    assert made.value == pytest.approx(0.5, abs=0.08)
    assert made.upper_limit == 1.0
    assert _said(found, "output_straight").state is State.PROVED


def test_stated_positions_with_a_gap_of_more_than_ten_per_cent_are_refused_with_the_gap() -> None:
    swept = record("001", Step.SWEEP, sweep(2), wires=Wires(ground_v=0.0), meter=FINE)
    found = examine(make_capture([swept, *_set_at(10.0, 19.0, 28.0, 45.0, 54.0)]))
    assert _check(found, "independent_linearity") is None
    said = _said(found, "output_straight")
    assert said.state is State.NOT_SHOWN
    assert "28.0 and 45.0 %" in said.text


@pytest.mark.parametrize("play", [0.0, 1.0])
def test_play_between_the_tracks_is_the_difference_of_the_directions(play: float) -> None:
    moving = np.tanh(np.gradient(TRAVEL) * RATE_HZ / 5.0)
    second = 0.5 * TRAVEL
    made = _known(examine(_dual(TRAVEL + 0.5 * play * moving, second)), "hysteresis")
    assert made.value == pytest.approx(play, abs=0.1)
    assert made.result is (Result.FAIL if play else Result.PASS)
