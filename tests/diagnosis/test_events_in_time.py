"""A fault without a place is told as events in time: begin, end, shape, depth, all of them in the JSON."""

from __future__ import annotations

import numpy as np
import pytest

from analysis.captures.memory import make_capture
from analysis.captures.model import Step
from analysis.diagnosis.examine import examine
from analysis.diagnosis.findings import VerdictCode
from analysis.diagnosis.serialise import findings_object
from analysis.diagnosis.summary import MOST_EVENTS
from tests.diagnosis.examples import RATE_HZ, record, standing, sweep

# Seconds from the beginning of the sweep, and how long the wire was open.
OPENINGS = ((0.35, 0.02), (1.12, 0.05), (1.98, 0.01), (2.71, 0.12), (3.9, 0.03), (5.2, 0.04), (6.13, 0.02))


def _found(openings: tuple[tuple[float, float], ...]) -> dict[str, object]:
    path = sweep(8, low=30.0, high=90.0)
    opened = np.zeros(len(path))
    for begin_s, lasting_s in openings:
        opened[round(begin_s * RATE_HZ) : round((begin_s + lasting_s) * RATE_HZ)] = 1.0
    swept = record("004", Step.SWEEP, path, opened=opened, seed=3)
    found = examine(make_capture([*standing(), swept]))
    assert found.verdict.code is VerdictCode.SIGNAL_WIRING
    return findings_object(found)


def test_every_opening_of_the_wire_is_an_event_with_its_begin_end_and_shape() -> None:
    item = _found(OPENINGS)
    events = [event for event in item["events"] if event["record"] == "004"]  # type: ignore[attr-defined]
    assert len(events) == len(OPENINGS)
    for event, (begin_s, lasting_s) in zip(events, OPENINGS, strict=True):
        assert event["start_s"] == pytest.approx(begin_s, abs=0.002)
        assert event["end_s"] == pytest.approx(begin_s + lasting_s, abs=0.002)
        assert event["shape"] == "drop"
        assert event["channels"] == ["signal"]
        assert event["depth_v"] < -1.0
        assert event["travel_percent"] is not None
        assert event["in_band"] is False
    assert item["events_complete"] is True


def test_where_only_the_deepest_are_listed_that_is_said() -> None:
    spacing = 8.8 / (MOST_EVENTS + 40)
    every = tuple((0.05 + spacing * number, 0.005) for number in range(MOST_EVENTS + 40))
    item = _found(every)
    assert len(item["events"]) == MOST_EVENTS  # type: ignore[arg-type]
    assert item["events_complete"] is False
