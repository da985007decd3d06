from __future__ import annotations

from collections.abc import Iterator

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QMenu, QToolButton
from pytestqt.qtbot import QtBot

from analysis.intervals import Interval
from app.main_window import Window
from app.review.arm import Arm
from app.review.focus import Focus
from app.review.playback import SPEEDS, Playback
from tests.app.clocks import Clock, clock, focus
from tests.app.fakes import worn_findings

__all__ = ["clock", "focus"]  # fixtures


@pytest.fixture
def arm(focus: Focus, clock: Clock) -> Iterator[Arm]:
    made = Arm(focus, clock)
    made.follow(worn_findings().surveys[0])
    made.set_speed(1.0)
    yield made
    made.rest()


def pass_time(arm: Arm, clock: Clock, seconds: float) -> None:
    clock.now_s += seconds
    arm.advance()


def test_a_run_that_repeats_is_never_through_and_stays_in_its_span() -> None:
    run = Playback(Interval(2.0, 3.0), 2.0, speed=0.5, repeat=True).started(10.0)
    assert run.moment_at(11.0) == pytest.approx(2.5)
    assert run.moment_at(12.5) == pytest.approx(2.25)
    assert run.moment_at(10.0 + 2 * 40 + 0.2) == pytest.approx(2.1)
    assert not run.finished(1e6)
    assert run.repeating(False, 12.5).finished(14.1)


@pytest.mark.parametrize("speed", SPEEDS)
def test_a_crossing_takes_its_length_over_the_speed(
    arm: Arm, focus: Focus, clock: Clock, speed: float
) -> None:
    arm.set_speed(speed)
    arm.run_crossing()
    took_s = focus.window.length / speed
    pass_time(arm, clock, 0.98 * took_s)
    assert arm.running
    pass_time(arm, clock, 0.04 * took_s)
    assert not arm.running


def test_running_through_a_crossing_begins_before_it_and_ends_after_it(
    arm: Arm, focus: Focus, clock: Clock
) -> None:
    focus.choose_passage(3)
    crossing = focus.passages[3].time
    arm.run_crossing()
    assert focus.moment_s is not None
    assert focus.moment_s < crossing.start
    pass_time(arm, clock, 60.0)
    assert focus.moment_s > crossing.stop
    assert not arm.running


def test_a_crossing_that_repeats_begins_again_until_repeating_ends(
    arm: Arm, focus: Focus, clock: Clock
) -> None:
    arm.set_repeat(True)
    focus.choose_passage(2)
    arm.run_crossing()
    window = focus.window
    for _ in range(7):
        pass_time(arm, clock, 0.6 * window.length)
        assert arm.running
        assert focus.moment_s is not None
        assert window.contains(focus.moment_s)
    arm.set_repeat(False)
    pass_time(arm, clock, 2 * window.length)
    assert not arm.running


def test_from_crossing_to_crossing_every_one_is_run_through_over_both_records(
    arm: Arm, focus: Focus, clock: Clock
) -> None:
    focus.choose_passage(0)
    arm.run_crossing(onward=True)
    seen = []
    while arm.running:
        seen.append(focus.passage)
        assert focus.record is not None
        assert focus.record.name == focus.passages[seen[-1] or 0].record
        pass_time(arm, clock, 1.1 * focus.window.length)
    assert seen == list(range(12))


def test_a_running_arm_goes_on_with_the_crossing_that_was_stepped_to(
    arm: Arm, focus: Focus, clock: Clock
) -> None:
    focus.choose_passage(0)
    arm.run()
    arm.step(1)
    assert focus.passage == 1
    pass_time(arm, clock, 0.5 * focus.window.length)
    assert arm.running
    assert focus.moment_s == pytest.approx(focus.window.centre)


def test_a_running_arm_follows_into_another_record(arm: Arm, focus: Focus) -> None:
    focus.choose_passage(0)
    arm.run_crossing()
    arm.choose(11)
    assert focus.record is not None
    assert focus.record.name == "005"
    assert arm.running


def test_an_arm_at_rest_stays_at_rest_when_a_crossing_is_stepped_to(arm: Arm, focus: Focus) -> None:
    arm.step(1)
    assert focus.passage == 0
    assert not arm.running


def test_without_a_choice_the_crossing_at_the_arm_or_the_next_one_is_run_through(
    arm: Arm, focus: Focus
) -> None:
    focus.show_record("005")
    focus.point(5.0)
    arm.run_crossing()
    assert focus.passage is not None
    chosen = focus.passages[focus.passage]
    assert chosen.record == "005"
    assert chosen.time.stop >= 5.0
    earlier = focus.passages[focus.passage - 1]
    assert (earlier.record, earlier.time.stop) < ("005", 5.0)


def test_running_through_crossings_leaves_one_view_to_come_back_to(
    arm: Arm, focus: Focus, clock: Clock
) -> None:
    focus.choose_passage(0)
    views = len(focus.history.views)
    arm.run_crossing(onward=True)
    for _ in range(20):
        pass_time(arm, clock, 2.0)
    assert len(focus.history.views) <= views + 1


def test_by_keys_a_crossing_runs_again_and_again_and_the_next_one_follows(
    qtbot: QtBot, review: Window
) -> None:
    QTest.keyClick(review, Qt.Key.Key_N)
    QTest.keyClick(review, Qt.Key.Key_R)
    QTest.keyClick(review, Qt.Key.Key_Space, Qt.KeyboardModifier.ShiftModifier)
    assert review.arm.running
    assert review.arm.repeat
    first = review.focus.passage
    QTest.keyClick(review, Qt.Key.Key_N)
    assert review.focus.passage != first
    assert review.arm.running
    moment_s = review.focus.moment_s
    qtbot.waitUntil(lambda: review.focus.moment_s != moment_s)
    assert review.focus.moment_s is not None
    assert review.focus.window.contains(review.focus.moment_s)
    QTest.keyClick(review, Qt.Key.Key_Space)
    assert not review.arm.running


def test_by_mouse_the_ways_to_run_are_behind_the_arrow_of_run(review: Window) -> None:
    button = next(
        item for item in review.page.track.findChildren(QToolButton) if item.text() == "Let the arm run"
    )
    ways = button.menu()
    assert isinstance(ways, QMenu)
    actions = [review.actions_by_name[name] for name in ("run_crossing", "run_onward", "repeat")]
    assert ways.actions() == actions
    ways.popup(button.mapToGlobal(QPoint(0, button.height())))
    QTest.mouseClick(ways, Qt.MouseButton.LeftButton, pos=ways.actionGeometry(actions[0]).center())
    assert review.arm.running
    assert review.focus.passage is not None


def test_a_running_arm_stands_where_the_status_line_reads_and_its_crossing_is_marked(
    qtbot: QtBot, review: Window
) -> None:
    run = review.actions_by_name["run"]
    at_rest = run.text()
    seen: list[tuple[str, float | None, float | None]] = []
    review.pointer.read.connect(
        lambda reading, _resolution_s: seen.append(
            (
                review.readout.plain_text(),
                review.page.track.arm_position(),
                review.arm.travel(reading.time_s),
            )
        )
    )
    first = review.focus.passages[0]
    review.focus.show_record(first.record)
    review.focus.point(first.time.start - 0.05)
    QTest.keyClick(review, Qt.Key.Key_Space)
    assert run.text() == "Stop the arm" != at_rest
    qtbot.waitUntil(lambda: review.page.events.list.currentIndex().isValid(), timeout=10_000)
    marked = review.page.events.list.currentIndex().row()
    assert marked == 1  # below the heading of its record
    qtbot.waitUntil(lambda: len(seen) > 2, timeout=10_000)
    while_running = list(seen)
    QTest.keyClick(review, Qt.Key.Key_Space)
    assert run.text() == at_rest
    assert not review.page.events.list.selectionModel().hasSelection()
    for told, drawn, read in while_running[1:]:
        assert drawn == pytest.approx(read)
        assert read is not None
        assert f"{read:.1f} %" in told
