"""An output that sticks at a place and leaps is a fault of the sensor, and no recorder that lost samples."""

from __future__ import annotations

import numpy as np
import pytest

from analysis.captures.memory import make_capture
from analysis.captures.model import Capture, Step
from analysis.diagnosis.examine import examine
from analysis.diagnosis.findings import VerdictCode
from analysis.intervals import Interval
from tests.diagnosis.examples import RATE_HZ, record, standing, sweep
from tests.signals.examples import Floats

PROFILES = ["ride-height-contactless", "generic-non-ratiometric"]


def _stuck(path: Floats, place: Interval) -> Floats:
    """The output stands where the arm came into the place until the arm has left it."""
    out, held = path.copy(), None
    for index in range(1, len(path)):
        if not place.start <= path[index] < place.stop:
            held = None
            continue
        held = out[index - 1] if held is None else held
        out[index] = held
    return out


def _ahead(path: Floats, place: Interval) -> Floats:
    """The same in a mirror of time: the output leaps ahead and waits for the arm."""
    return _stuck(path[::-1], place)[::-1]


def _capture(travel: Floats, profile: str) -> Capture:
    swept = record("004", Step.SWEEP, travel)
    return make_capture([*standing(place=30.0), swept], attributes={"profile": profile})


@pytest.mark.parametrize("profile", PROFILES)
@pytest.mark.parametrize("width", [1.0, 2.0, 4.0, 8.0])
@pytest.mark.parametrize("seconds", [1.0, 0.5])
@pytest.mark.parametrize("sticks", [_stuck, _ahead])
def test_an_output_that_sticks_at_a_place_breaks_up_there(
    profile: str, width: float, seconds: float, sticks: object
) -> None:
    assert callable(sticks)
    place = Interval(50.0, 50.0 + width)
    found = examine(_capture(sticks(sweep(10, seconds=seconds), place), profile))
    assert found.verdict.code is VerdictCode.SENSOR_OUTPUT_FAULT
    band = max(found.bands, key=lambda item: item.confidence)
    assert band.confidence > 0.9
    assert band.noisy_passes >= 9
    assert band.travel.overlap(place) > 0.4 * width
    assert abs(band.travel.centre - place.centre) < 1.0
    assert "recorder_kept_up" not in {item.code for item in found.evidence}


def test_stands_and_leaps_at_times_of_their_own_are_not_taken_for_a_place() -> None:
    # A recorder that repeats its last reading for 25 ms now and then does so wherever the arm is.
    path = sweep(10)
    rng = np.random.default_rng(4)
    for start in np.sort(rng.choice(np.arange(200, len(path) - 200, 400), 6, replace=False)):
        path[start : start + round(0.025 * RATE_HZ)] = path[start]
    found = examine(_capture(path, PROFILES[0]))
    assert not [band for band in found.bands if band.confidence >= 0.5]
    assert found.verdict.code is not VerdictCode.SENSOR_OUTPUT_FAULT
