"""A probe in the air hums about nought and drifts; a sound wire does not, wherever the arm goes.

The signals are made here: mains of 50 and 60 Hz (IEC 60038 has both), a drift, a hand that comes near.
"""

from __future__ import annotations

from collections.abc import Callable

import numpy as np
import pytest

from analysis.captures.memory import make_capture, make_record
from analysis.captures.model import Role, Step
from analysis.diagnosis.measurement_outcome import NOTHING, Outcome
from analysis.diagnosis.probe_contact import in_the_air, slipped_off
from analysis.diagnosis.profiles import load_profile
from analysis.diagnosis.seen import PLAIN
from analysis.diagnosis.studies import Studies, Study, study
from tests.diagnosis.examples import RATE_HZ, channel, sweep
from tests.signals.examples import Floats, noise

SECONDS = 8.0
TIME_S = np.arange(round(SECONDS * RATE_HZ)) / RATE_HZ
Test = Callable[[Study, Studies], Outcome]


def hum(size_v: float, hertz: float = 50.0, seconds: float = SECONDS) -> Floats:
    """Mains as a probe picks it up: the sine and a quarter of its third harmonic."""
    angle = 2.0 * np.pi * hertz * np.arange(round(seconds * RATE_HZ)) / RATE_HZ
    return np.asarray(size_v * (np.sin(angle) + 0.25 * np.sin(3.0 * angle)))


def swing(size_v: float, hertz: float) -> Floats:
    """A slow swing about nought."""
    return np.asarray(size_v * np.sin(2.0 * np.pi * hertz * TIME_S))


def walk(size_v: float, seed: int = 5) -> Floats:
    """A wander about nought that goes as far as `size_v` and no further."""
    steps = np.cumsum(np.random.default_rng(seed).normal(size=TIME_S.size))
    away = steps - steps.mean()
    return np.asarray(size_v * away / np.abs(away).max())


def touched() -> Floats:
    """Ten times as much hum while a hand is near, two seconds in every four."""
    return np.where((TIME_S % 4.0) < 2.0, 1.0, 0.1)


def saw(low_v: float, high_v: float, period_s: float) -> Floats:
    """An arm that goes to and fro at one speed, in volts."""
    share = np.abs((TIME_S / period_s) % 1.0 - 0.5) * 2.0
    return np.asarray(low_v + (high_v - low_v) * share)


def told(test: Test, volts: Floats, step: Step | None = Step.SWEEP, role: Role = Role.SIGNAL) -> Outcome:
    """What a test says of a lone record."""
    capture = make_capture([make_record("001", 1.0 / RATE_HZ, [channel(role, volts)], step=step)])
    made = study(capture, load_profile(None))
    return test(made.every[0], made)


AIR = {
    "hum of 50 Hz": hum(0.08),
    "hum of 60 Hz": hum(0.08, 60.0),
    "hum on a slow drift": hum(0.08) + swing(0.2, 0.1),
    "hum on a wander": hum(0.05) + walk(0.25),
    "a hand that comes near and goes": hum(0.2) * touched(),
    "a hand that comes near, on a drift": hum(0.15) * touched() + swing(0.1, 0.07),
    "hum under noise": hum(0.08) + noise(TIME_S.size, 0.01, 3),
}

SOUND = {
    "a sweep over the travel": sweep(6) / 20.0,
    "an arm that goes to and fro below a third of a volt": saw(0.02, 0.30, 0.5),
    "an arm that rests at its low stop": np.full(TIME_S.size, 0.05),
    "a wander about nought without hum": walk(0.25),
    "noise about nought without hum": noise(TIME_S.size, 0.03, 4),
    "a wire to ground with little hum": hum(0.003),
    "hum on a signal of half the supply": 2.5 + hum(0.15),
    "hum on a sweep": sweep(6)[: TIME_S.size] / 20.0 + hum(0.1)[: len(sweep(6))],
}


def named(cases: dict[str, Floats]) -> list[object]:
    return [pytest.param(volts, id=name.replace(" ", "-")) for name, volts in cases.items()]


@pytest.mark.parametrize("volts", named(AIR))
def test_a_probe_in_the_air_is_told_whatever_it_drifts_and_whoever_comes_near(volts: Floats) -> None:
    strength, text, action = told(in_the_air, volts)
    assert strength >= PLAIN
    assert "hung in the air" in text
    assert "put the probe back" in action


@pytest.mark.parametrize("volts", named(SOUND))
def test_a_sound_wire_is_never_taken_for_the_air(volts: Floats) -> None:
    assert told(in_the_air, volts)[0] == 0.0
    assert told(slipped_off, volts)[0] == 0.0


def test_the_drift_takes_nothing_from_the_hum_and_adds_nothing_to_it() -> None:
    for size_v in (0.011, 0.012, 0.014):  # where it shows in part: neither sure nor out of the question
        still = told(in_the_air, hum(size_v))[0]
        assert 0.2 < still < 0.9
        for drift in (swing(0.25, 0.1), saw(-0.3, 0.3, 1.0)):
            assert told(in_the_air, hum(size_v) + drift)[0] == pytest.approx(still, abs=0.1)


def test_more_hum_never_shows_less_and_turned_round_it_shows_as_much() -> None:
    sizes_v = (0.002, 0.008, 0.010, 0.012, 0.05, 0.2)
    shown = [told(in_the_air, hum(size_v))[0] for size_v in sizes_v]
    assert shown == sorted(shown)
    assert (shown[0], shown[-1]) == (0.0, 1.0)
    drifting = hum(0.012) + walk(0.2)
    same = [told(in_the_air, item)[0] for item in (drifting, -drifting, drifting[::-1])]
    assert 0.2 < same[0] < 0.9
    assert same == pytest.approx([same[0]] * 3, abs=0.05)


def test_who_hums_about_another_level_than_nought_is_on_a_wire() -> None:
    shown = [told(in_the_air, level_v + hum(0.08))[0] for level_v in (0.0, 0.1, 0.3, 0.5, 1.0)]
    assert shown[0] == 1.0
    assert shown == sorted(shown, reverse=True)
    assert shown[-2:] == [0.0, 0.0]


def test_most_of_the_record_must_be_in_the_air() -> None:
    on_s = np.linspace(0.0, SECONDS, 9)
    shown = []
    for seconds in on_s:
        volts = hum(0.08)
        volts[: round(seconds * RATE_HZ)] += 2.5
        shown.append(told(in_the_air, volts)[0])
    assert shown == sorted(shown, reverse=True)
    assert shown[0] == 1.0
    assert set(shown[2:]) == {0.0}  # a quarter of the time and more on a wire


def test_at_rest_it_counts_half_and_without_a_signal_nothing() -> None:
    swept, held = (told(in_the_air, hum(0.08), step)[0] for step in (Step.SWEEP, Step.GROUND))
    assert held == pytest.approx(0.5 * swept)
    assert told(in_the_air, hum(0.08), role=Role.REFERENCE) == NOTHING
    assert told(slipped_off, hum(0.08), role=Role.REFERENCE) == NOTHING


@pytest.mark.parametrize("drift_v", [0.0, 0.2])
def test_a_probe_that_slips_off_is_told_with_its_time_though_it_drifts_then(drift_v: float) -> None:
    on = sweep(4)
    away = hum(0.08) + swing(drift_v, 0.1)
    strength, text, _ = told(slipped_off, np.concatenate([on / 20.0, away]))
    assert strength >= PLAIN
    assert f"slipped off at {len(on) / RATE_HZ:.1f} s" in text
    assert told(in_the_air, np.concatenate([on / 20.0, away]))[0] == 0.0


def test_a_contact_that_opens_for_a_moment_did_not_slip() -> None:
    volts = np.asarray(sweep(6) / 20.0)
    for last_s, slipped in ((0.2, False), (3.0, True)):
        opened = volts.copy()
        opened[-round(last_s * RATE_HZ) :] = hum(0.08, seconds=last_s)
        assert (told(slipped_off, opened)[0] >= PLAIN) is slipped
    middle = volts.copy()
    middle[4000:10_000] = hum(0.08, seconds=3.0)  # it came back, so nobody dropped it
    assert told(slipped_off, middle)[0] == 0.0


def test_a_wire_that_hummed_as_much_before_is_not_said_to_hum_since_it_slipped() -> None:
    volts = np.concatenate([sweep(5) / 20.0, np.zeros(round(4.0 * RATE_HZ))])  # it ends at 4.5 V
    volts = volts + hum(0.08, seconds=len(volts) / RATE_HZ)
    strength, text, _ = told(slipped_off, volts)
    assert strength >= PLAIN  # gone it is, at a jump and for good
    assert "hums" not in text
    assert "the wire is open" in text
