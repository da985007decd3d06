"""Back and forward through what was looked at: time, track and crossing together, as they were."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from analysis.captures.model import Role
from analysis.intervals import Interval
from app.main_window import Window
from tests.app import hands
from tests.app.conftest import Bench
from tests.app.fakes import BAND, worn_findings

ALT = Qt.KeyboardModifier.AltModifier


def at_travel(window: Window, travel_percent: float) -> QPoint:
    return window.page.track.viewport_point(travel_percent, 20.0).toPoint()


@pytest.fixture
def slow(review: Window, monkeypatch: pytest.MonkeyPatch) -> Window:
    """The window, whose hand waits ten seconds between two gestures: each is a view of its own."""
    now_s = 0.0

    def clock() -> float:
        nonlocal now_s
        now_s += 10.0
        return now_s

    monkeypatch.setattr(review.focus, "_clock", clock)
    return review


def test_after_a_band_was_opened_back_shows_the_whole_record_and_the_whole_track(
    qtbot: QtBot, slow: Window
) -> None:
    focus, track = slow.focus, slow.page.track
    before = focus.window
    hands.double_click(track.canvas, at_travel(slow, BAND.centre))
    qtbot.waitUntil(lambda: focus.passage is not None)
    opened = (focus.window, track.span, focus.passage)
    assert track.span.length < 30.0
    QTest.keyClick(slow, Qt.Key.Key_Left, ALT)
    assert focus.window == before
    assert track.span == Interval(0.0, 100.0)
    assert focus.passage is None
    assert not any(item.data(Qt.ItemDataRole.DisplayRole) for item in slow.page.events.list.selectedIndexes())
    QTest.keyClick(slow, Qt.Key.Key_Right, ALT)
    assert (focus.window, track.span, focus.passage) == opened
    assert focus.moment_s == pytest.approx(focus.passages[opened[2] or 0].time.centre)


def test_back_singles_out_the_crossing_that_was_stepped_away_from(slow: Window) -> None:
    focus = slow.focus
    seen = []
    for _ in range(3):
        QTest.keyClick(slow, Qt.Key.Key_N)
        seen.append((focus.passage, focus.window))
    for passage, shown in reversed(seen[:-1]):
        QTest.keyClick(slow, Qt.Key.Key_Left, ALT)
        assert (focus.passage, focus.window) == (passage, shown)
        assert focus.moment_s is not None
        assert focus.window.contains(focus.moment_s)


def test_a_zoom_of_the_track_is_a_view_to_come_back_to(slow: Window) -> None:
    track = slow.page.track
    hands.wheel(track.canvas, at_travel(slow, 45.0), 3)
    near = track.span
    assert near.length < 60.0
    hands.drag(track.canvas, at_travel(slow, near.start + 5.0), at_travel(slow, near.start + 20.0))
    assert track.span.length == pytest.approx(15.0, abs=0.5)
    QTest.keyClick(slow, Qt.Key.Key_Left, ALT)
    assert track.span == near
    QTest.keyClick(slow, Qt.Key.Key_Left, ALT)
    assert track.span == Interval(0.0, 100.0)
    assert not slow.focus.history.can_go_back


def test_examined_again_the_track_shows_the_same_stretch(qtbot: QtBot, review: Window) -> None:
    track = review.page.track
    hands.wheel(track.canvas, at_travel(review, 45.0), 3)
    near = track.span
    with qtbot.waitSignal(review.session.findings_changed):
        QTest.keyClick(review, Qt.Key.Key_F5)
    assert track.span == near


def test_another_capture_begins_with_the_whole_track(qtbot: QtBot, review: Window) -> None:
    hands.wheel(review.page.track.canvas, at_travel(review, 45.0), 3)
    with qtbot.waitSignal(review.session.findings_changed):
        review.open_file(Path("other.h5"))
    assert review.page.track.span == Interval(0.0, 100.0)


def test_a_band_of_the_other_track_brings_that_track_to_the_front(
    qtbot: QtBot, window: Window, bench: Bench
) -> None:
    base = worn_findings()
    second = replace(base.surveys[0], role=Role.SECOND_SIGNAL)
    other = replace(base.bands[0], track=Role.SECOND_SIGNAL, travel=Interval(70.0, 74.0), confidence=0.8)
    bench.findings = lambda capture, tick: replace(
        base, surveys=(*base.surveys, second), bands=(*base.bands, other)
    )
    with qtbot.waitSignal(window.session.findings_changed):
        window.open_file(Path("pedal.h5"))
    assert window.page.track.survey is not second
    QTest.keyClick(window, Qt.Key.Key_B)
    QTest.keyClick(window, Qt.Key.Key_B)
    assert window.focus.band == 1
    assert window.page.track.survey is second
    assert [item.strong for item in window.page.track.stretches] == [True]


def test_the_dot_that_is_dragged_takes_trace_along(slow: Window) -> None:
    focus, track = slow.focus, slow.page.track
    focus.show_window(Interval(0.0, 0.5))
    focus.point(0.3)
    at = track.arm_position()
    assert at is not None
    start = track.viewport_point(at, 0.0).toPoint()
    hands.drag(track.canvas, start, track.viewport_point(80.0, 0.0).toPoint())
    assert track.arm_position() == pytest.approx(80.0, abs=1.0)
    assert focus.moment_s is not None
    assert focus.moment_s > 1.0
    assert focus.window.contains(focus.moment_s)


def test_a_run_through_a_crossing_ends_with_that_crossing_in_sight(qtbot: QtBot, review: Window) -> None:
    QTest.keyClick(review, Qt.Key.Key_N)
    QTest.keyClick(review, Qt.Key.Key_Period)
    QTest.keyClick(review, Qt.Key.Key_Space, Qt.KeyboardModifier.ShiftModifier)
    qtbot.waitUntil(lambda: not review.arm.running, timeout=20_000)
    assert review.focus.passage is not None
    crossing = review.focus.passages[review.focus.passage].time
    assert review.focus.window.start < crossing.start
    assert crossing.stop < review.focus.window.stop
    assert review.focus.moment_s == pytest.approx(review.focus.window.stop)
