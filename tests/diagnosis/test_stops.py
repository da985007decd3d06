"""An arm that is swept onto a stop near ground or reference is an arm, and no contact that opens."""

from __future__ import annotations

import numpy as np
import pytest

from analysis.captures.memory import make_capture
from analysis.captures.model import Step
from analysis.diagnosis.examine import examine
from analysis.diagnosis.findings import VerdictCode
from analysis.intervals import Interval
from tests.diagnosis.examples import RATE_HZ, record, standing, sweep, visit
from tests.signals.examples import Floats

# A stop may stand as near as the end voltage of a track, 0.5 % (Bourns 6657 data sheet).
STOPS = [(0.6, 90.0), (1.0, 90.0), (10.0, 99.4)]


@pytest.mark.parametrize(("low", "high"), STOPS)
@pytest.mark.parametrize("seconds", [0.8, 0.5, 0.3])
def test_a_sound_sensor_swept_onto_a_stop_near_a_rail_has_no_band(
    low: float, high: float, seconds: float
) -> None:
    found = examine(visit(travel=sweep(10, low=low, high=high, seconds=seconds, pause_s=0.05)))
    assert found.verdict.code is VerdictCode.NO_FAULT_FOUND
    assert not [band for band in found.bands if band.confidence >= 0.1]
    assert not found.events


@pytest.mark.parametrize(("low", "high"), STOPS)
def test_a_worn_band_is_found_though_the_arm_is_swept_onto_such_a_stop(low: float, high: float) -> None:
    path = sweep(10, low=low, high=high, seconds=0.5, pause_s=0.05)
    found = examine(visit(travel=path, bands=[Interval(40.0, 46.0)]))
    assert found.verdict.code is VerdictCode.WORN_TRACK
    (band,) = (item for item in found.bands if item.confidence >= 0.5)
    assert band.travel.start == pytest.approx(40.0, abs=1.0)
    assert band.travel.stop == pytest.approx(46.0, abs=1.0)


def _through_a_filter(path: Floats, opened: Floats, *, sinks_s: float = 0.010) -> Floats:
    """How open the contact looks behind a capacitor that the pull resistor empties and the track fills."""
    left, fill, sink = 0.0, 1.0 - np.exp(-1.0 / (RATE_HZ * 0.0005)), np.exp(-1.0 / (RATE_HZ * sinks_s))
    seen = np.empty(len(path))
    for index, gone in enumerate(opened):
        left = left * sink if gone else left + (1.0 - left) * fill
        seen[index] = left
    return 1.0 - seen


@pytest.mark.parametrize("place", [8.0, 20.0, 50.0])
def test_a_contact_that_lets_the_signal_sink_through_a_filter_is_still_told_from_a_stop(place: float) -> None:
    # Open all through the band: from wherever the arm is the signal sinks to ground within some 30 ms.
    path = sweep(10, low=2.0, high=90.0, seconds=0.8)
    inside = ((path >= place) & (path < place + 5.0)).astype(np.float64)
    swept = record("004", Step.SWEEP, path, opened=_through_a_filter(path, inside))
    found = examine(make_capture([*standing(), swept]))
    assert found.verdict.code is VerdictCode.WORN_TRACK
    band = max(found.bands, key=lambda item: item.confidence)
    assert band.travel.overlap(Interval(place, place + 5.0)) > 2.5
