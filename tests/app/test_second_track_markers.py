"""Markers of a sensor with two tracks: each has an electrical travel of its own, and none is mixed up."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest
from pytestqt.qtbot import QtBot

from analysis.captures.model import Role
from analysis.intervals import Interval
from app.main_window import Window
from tests.app.conftest import Bench
from tests.app.fakes import worn_capture, worn_findings


@pytest.fixture
def bench() -> Bench:
    """The worn capture of a car whose heights are known, with a second track of half the travel."""
    capture = worn_capture()
    made = Bench(
        capture=replace(capture, attributes={**capture.attributes, "profile": "halvorsen-tern-rear-left"})
    )
    base = worn_findings()
    own = base.surveys[0]
    halved = tuple(replace(path, travel_percent=0.5 * path.travel_percent) for path in own.paths)
    second = replace(own, role=Role.SECOND_SIGNAL, paths=halved)
    made.findings = lambda _capture, _tick: replace(base, surveys=(own, second))
    return made


@pytest.fixture
def opened(qtbot: QtBot, window: Window) -> Window:
    with qtbot.waitSignal(window.session.findings_changed):
        window.open_file(Path("pedal.h5"))
    return window


def test_a_point_reads_the_travel_of_both_tracks(qtbot: QtBot, opened: Window) -> None:
    opened.desk.markers.mark_moment(2.0)
    qtbot.waitUntil(lambda: "Travel" in dict(opened.page.markers.readings.rows))
    rows = dict(opened.page.markers.readings.rows)
    travel, second = (float(rows[head][0].split()[0]) for head in ("Travel", "Travel, second signal"))
    assert second == pytest.approx(0.5 * travel, abs=0.06)


def test_a_stretch_of_the_second_track_says_so_and_has_no_height(qtbot: QtBot, opened: Window) -> None:
    opened.circle.show_track_of(Role.SECOND_SIGNAL)
    opened.desk.markers.mark_stretch(Interval(20.0, 25.0))
    (row,) = opened.page.markers.rows
    assert row.where == "20.0–25.0 %, second signal"
    assert "Height" not in dict(opened.page.markers.readings.rows)
    opened.circle.show_track_of(Role.SIGNAL)
    opened.desk.markers.mark_stretch(Interval(30.0, 40.0))
    assert opened.page.markers.rows[1].where.startswith("30.0–40.0 % · ")
    assert opened.page.markers.rows[1].where.endswith(" mm")
