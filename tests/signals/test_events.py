"""Disturbances in time: begin, end, depth, shape."""

from __future__ import annotations

import numpy as np
import pytest

from analysis.signals.cells import CellSeries
from analysis.signals.events import Disturbance, channel_disturbances
from analysis.signals.roughness import survey_record
from analysis.signals.steadiness import steadiness
from tests.signals.examples import Floats, followed, noise, strokes

CELL_S = 0.0005


def _of_travel(travel: Floats) -> tuple[Disturbance, ...]:
    return survey_record(followed(travel), cell_s=CELL_S, step_percent=0.0, other_percent=None).disturbances


def _of_wire(volts: Floats, start_s: float = 0.0) -> tuple[Disturbance, ...]:
    cells = volts.astype(np.float32)
    steady = steadiness(CellSeries(cells, cells, cells), cell_s=CELL_S, step_v=0.0)
    return channel_disturbances(steady, cell_s=CELL_S, start_s=start_s, travel_percent=None)


def test_a_drop_is_one_event_with_its_begin_its_end_its_depth_and_its_place() -> None:
    truth = strokes(4)
    travel = truth + noise(len(truth), 0.02)
    travel[1200:1230] = 1.0
    (event,) = _of_travel(travel)
    assert event.time.start == pytest.approx(0.6, abs=1e-3)
    assert event.time.stop == pytest.approx(0.615, abs=1e-3)
    assert event.depth == pytest.approx(-(truth[1215] - 1.0), abs=2.0)
    assert event.travel_percent == pytest.approx(truth[1200], abs=0.5)
    assert event.shape == "drop"
    assert (event.first, event.last, event.cells) == (1200, 1229, 30)


@pytest.mark.parametrize(("height", "shape"), [(0.4, "rise"), (-0.4, "drop")])
def test_the_sign_of_a_depth_is_the_side_it_goes_to(height: float, shape: str) -> None:
    volts = 5.0 + noise(20_000, 0.002)
    volts[4000:4020] += height
    (event,) = _of_wire(volts, start_s=10.0)
    assert event.depth == pytest.approx(height, abs=0.02)
    assert event.shape == shape
    assert event.time.start == pytest.approx(12.0)
    assert np.isnan(event.travel_percent)


def test_ringing_goes_both_ways() -> None:
    volts = 5.0 + noise(20_000, 0.002)
    volts[4000:4020] += 0.4 * np.cos(np.arange(20) * np.pi / 2) * np.exp(-np.arange(20) / 10)
    (event,) = _of_wire(volts)
    assert event.shape == "ringing"


@pytest.mark.parametrize(("gap", "count"), [(4, 1), (9, 1), (12, 2), (100, 2)])
def test_openings_within_five_milliseconds_are_one_event(gap: int, count: int) -> None:
    volts = 5.0 + noise(20_000, 0.002)
    volts[4000:4004] -= 1.0
    volts[4004 + gap : 4008 + gap] -= 1.0
    found = _of_wire(volts)
    assert len(found) == count
    assert sum(item.cells for item in found) == 8


def test_a_sound_record_has_no_event() -> None:
    assert _of_wire(np.full(20_000, 5.0)) == ()
    assert len(_of_travel(strokes(4) + noise(len(strokes(4)), 0.02, seed=4))) <= 1


def test_events_of_a_record_run_backwards_are_the_same_events() -> None:
    travel = strokes(4) + noise(len(strokes(4)), 0.02)
    for first in (1100, 3300, 5600):
        travel[first : first + 20] = 1.0
    forward, backward = _of_travel(travel), _of_travel(travel[::-1])
    assert len(forward) == len(backward) == 3
    last = len(travel) - 1
    assert [(item.first, item.last) for item in forward] == [
        (last - item.last, last - item.first) for item in reversed(backward)
    ]
