"""Stepping and stopping in Compare."""

from __future__ import annotations

import threading
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from analysis.captures.model import Capture
from analysis.diagnosis.findings import Findings
from analysis.intervals import Interval
from analysis.progress import Tick
from app.compare.stepping import Steps
from app.main_window import Window
from tests.app import hands
from tests.app.conftest import Bench
from tests.app.fakes import BAND, sound_capture, worn_or_sound

FIRST, SECOND, THIRD = Interval(1.0, 1.2), Interval(3.0, 3.2), Interval(5.0, 5.2)


@pytest.fixture
def bench() -> Bench:
    return Bench(others={"new.h5": sound_capture()}, findings=worn_or_sound())


@pytest.fixture
def compare(qtbot: QtBot, review: Window) -> Window:
    return hands.compare_with(qtbot, review, "new.h5")


def test_keys_step_through_the_crossings_of_the_side_that_has_some_and_take_the_other_along(
    compare: Window,
) -> None:
    focus, crossings = compare.compare.focus, compare.compare.steps.crossings[0]
    assert len(crossings) == 6
    seen = []
    for _ in range(3):
        QTest.keyClick(compare, Qt.Key.Key_N)
        assert focus.windows[0] == focus.windows[1]
        seen.append(next(item for item in crossings if focus.windows[0].overlap(item) > 0.99 * item.length))
        assert focus.windows[0].length < 1.0
    assert seen == list(crossings[:3])
    QTest.keyClick(compare, Qt.Key.Key_P)
    assert focus.windows[0].contains(crossings[1].centre)
    QTest.keyClick(compare, Qt.Key.Key_Left, Qt.KeyboardModifier.AltModifier)
    assert focus.windows[0].contains(crossings[2].centre)


def test_a_key_shows_the_next_band_on_the_track_and_then_all_of_it(compare: Window) -> None:
    track = compare.compare.page.track
    QTest.keyClick(compare, Qt.Key.Key_B)
    assert track.span.start < BAND.start < BAND.stop < track.span.stop
    assert track.span.length < 40.0
    QTest.keyClick(compare, Qt.Key.Key_B)
    assert track.span.length == pytest.approx(100.0)


def test_what_cannot_be_stepped_to_is_not_offered(review: Window) -> None:
    QTest.keyClick(review, Qt.Key.Key_F7)
    review.compare.sides[0].choose_record("001")
    for name in ("next", "previous", "next_band"):
        assert not review.actions_by_name[name].isEnabled()


def test_from_the_moment_that_is_pointed_at_the_next_and_the_previous_are_those_beside_it() -> None:
    steps = Steps()
    steps.take(((FIRST, SECOND, THIRD), ()))
    assert steps.crossing(1, (0, 2.0)) == (0, SECOND)
    steps.swap()
    assert steps.crossing(-1, (0, 4.0)) == (0, SECOND)
    assert steps.crossing(-1, (0, 4.0)) == (0, FIRST)
    assert steps.crossing(-1, (0, 4.0)) == (0, THIRD)
    assert Steps().crossing(1, None) is None


def test_a_side_without_crossings_that_is_pointed_at_leaves_the_step_to_the_other() -> None:
    steps = Steps()
    steps.take(((), (THIRD, FIRST)))
    assert steps.crossing(1, (0, 2.0)) == (1, FIRST)


def test_work_on_the_other_capture_is_told_and_stopped_by_its_button(
    qtbot: QtBot, bench: Bench, review: Window
) -> None:
    begun = threading.Event()

    def slow(capture: Capture, tick: Tick) -> Findings:
        begun.set()
        while True:
            tick(0.4)

    bench.findings = slow
    QTest.keyClick(review, Qt.Key.Key_F7)
    hands.drop(review, Path("new.h5"))
    qtbot.waitUntil(lambda: begun.is_set() and review.work.progress.value() == 400)
    assert review.work.progress.isVisible()
    QTest.keyClick(review, Qt.Key.Key_Period, Qt.KeyboardModifier.ControlModifier)
    assert not review.work.progress.isVisible()
    assert "Stopped" in review.compare.page.summary.text
    qtbot.waitUntil(lambda: not review.compare.sides[1].jobs.busy())
    assert not review.actions_by_name["cancel"].isEnabled()


def test_while_the_second_is_examined_nobody_is_asked_to_open_one(
    qtbot: QtBot, review: Window, bench: Bench
) -> None:
    hold, examine = threading.Event(), bench.findings

    def examine_later(capture: Capture, tick: Tick) -> Findings:
        hold.wait(20.0)
        return examine(capture, tick)

    bench.findings = examine_later
    QTest.keyClick(review, Qt.Key.Key_F7)
    page, desk = review.compare.page, review.compare
    hands.drop(review, Path("new.h5"))
    qtbot.waitUntil(lambda: all(side.capture is not None for side in desk.sides))
    assert "Open a second" not in page.numbers.empty_text
    assert "Both captures are open" in page.numbers.empty_text
    hold.set()
    qtbot.waitUntil(lambda: desk.comparison is not None)
