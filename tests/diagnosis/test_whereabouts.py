"""Where the arm was: moving, at rest, and not known while the probe was on another wire."""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pytest

from analysis.captures.memory import make_capture, make_record
from analysis.captures.model import Role
from analysis.captures.reading import open_capture
from analysis.comparison.mirrored import mirrored_survey
from analysis.diagnosis.examine import examine
from analysis.signals.facts import TrackSurvey
from tests.diagnosis.examples import RATE_HZ, channel, sweep

SAMPLE = Path(__file__).resolve().parents[2] / "sample_captures" / "W1041-rear-left-height.h5"
HOLD, WIGGLE, SWEEP = "006", "003", "004"


@pytest.fixture(scope="module")
def survey() -> TrackSurvey:
    with open_capture(SAMPLE) as opened:
        return examine(opened.capture).surveys[0]


def test_an_arm_that_is_held_in_the_bad_spot_stands_there_though_the_reading_wanders(
    survey: TrackSurvey,
) -> None:
    with open_capture(SAMPLE) as opened:
        record = next(item for item in opened.capture.records if item.name == HOLD)
        signal = record.channel(Role.SIGNAL)
        assert signal is not None
        assert np.ptp(signal.volts(0, len(record))) > 1.0
    places = [survey.whereabouts(HOLD, time_s) for time_s in np.linspace(0.0, 6.0, 50)]
    assert all(place == pytest.approx(45.6, abs=1.0) for place in places)


def test_an_arm_at_rest_is_where_its_volts_say_and_a_moving_one_on_its_path(survey: TrackSurvey) -> None:
    assert survey.whereabouts(WIGGLE, 3.0) == pytest.approx(52.1, abs=0.3)
    path = survey.path(SWEEP)
    assert path is not None
    assert survey.whereabouts(SWEEP, 4.0) == path.at(4.0)
    assert survey.path(HOLD) is None  # it was not swept
    assert survey.whereabouts("no such record", 1.0) is None


def test_seen_from_the_other_end_an_arm_at_rest_stands_there_too(survey: TrackSurvey) -> None:
    assert mirrored_survey(survey).whereabouts(HOLD, 1.0) == pytest.approx(54.4, abs=1.0)


def test_while_one_probe_was_on_another_wire_nobody_knows_where_the_arm_was() -> None:
    hum = 0.06 * np.sin(2 * np.pi * 50.0 * np.arange(round(0.5 * RATE_HZ)) / RATE_HZ)
    held = np.full(round(1.5 * RATE_HZ), 5.0)
    volts = np.concatenate([hum, held, hum, 0.05 * sweep(4), hum])
    record = make_record("001", 1.0 / RATE_HZ, [channel(Role.SIGNAL, volts)])
    survey = examine(make_capture([record])).surveys[0]
    assert survey.whereabouts("001", 1.0) is None
    assert survey.whereabouts("001", record.duration_s - 0.1) is None
    assert survey.whereabouts("001", 4.0) is not None


def test_a_long_rest_is_told_by_few_nodes_and_by_the_same_places(survey: TrackSurvey) -> None:
    path = next(item for item in survey.resting if item.record == HOLD)
    few = path.coarser(100)
    assert len(few.time_s) <= 100 < len(path.time_s)
    assert few.time_s[0] == path.time_s[0]
    for time_s in np.linspace(path.time_s[0], path.time_s[-1], 7).tolist():
        assert few.reaches(time_s)
        assert few.at(time_s) == pytest.approx(path.at(time_s), abs=1.0)
    assert path.coarser(len(path.time_s)) is path
    assert max(len(item.time_s) for item in survey.resting) <= 4096
