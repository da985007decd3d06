"""How fast the arm runs: at a speed of its own through each crossing, or at the one that was chosen."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QStyle, QStyleOptionComboBox
from pytestqt.qtbot import QtBot

from analysis.captures.reading import open_capture
from app.main_window import Window
from app.review.arm import Arm
from app.review.focus import Focus
from app.review.playback import SPEEDS, TO_BE_SEEN_S, own_speed
from app.session import Tools
from app.settings import MemoryStore, Settings
from tests.app.clocks import Clock, clock, focus
from tests.app.fakes import worn_findings

__all__ = ["clock", "focus"]  # fixtures


@pytest.fixture
def arm(focus: Focus, clock: Clock) -> Iterator[Arm]:
    made = Arm(focus, clock)
    made.follow(worn_findings().surveys[0])
    yield made
    made.rest()


@pytest.mark.parametrize("length_s", [0.2, 0.26, 0.4, 0.7, 1.1, 1.9, 3.0])
def test_a_crossing_lasts_about_as_long_as_somebody_needs_to_see_it(length_s: float) -> None:
    speed = own_speed(length_s)
    assert speed in SPEEDS
    assert TO_BE_SEEN_S / 1.7 <= length_s / speed <= 1.7 * TO_BE_SEEN_S


@pytest.mark.parametrize(("length_s", "speed"), [(0.02, SPEEDS[0]), (60.0, 1.0)])
def test_the_shortest_takes_the_slowest_speed_and_none_runs_faster_than_it_was(
    length_s: float, speed: float
) -> None:
    assert own_speed(length_s) == speed


def test_as_long_as_none_was_chosen_a_crossing_runs_slowly_and_a_record_as_it_was(
    arm: Arm, focus: Focus, clock: Clock
) -> None:
    assert (arm.own_pace, arm.speed) == (True, 1.0)
    arm.run()
    clock.now_s += 0.5
    arm.advance()
    assert focus.moment_s == pytest.approx(0.5)
    focus.choose_passage(0)
    arm.run_crossing()
    slow = own_speed(focus.window.length)
    assert arm.speed == slow < 1.0
    clock.now_s += 0.5 * focus.window.length / slow
    arm.advance()
    assert focus.moment_s == pytest.approx(focus.window.centre)


def test_a_chosen_speed_holds_for_crossings_too_until_it_is_given_back(
    arm: Arm, focus: Focus, clock: Clock
) -> None:
    focus.choose_passage(0)
    arm.run_crossing()
    arm.set_speed(0.5)
    assert (arm.own_pace, arm.speed) == (False, 0.5)
    arm.step(1)
    assert arm.speed == 0.5
    arm.set_speed(None)
    assert arm.speed == own_speed(focus.window.length)


def test_a_record_that_runs_keeps_its_pace_when_the_speed_is_left_to_the_arm(arm: Arm, focus: Focus) -> None:
    arm.set_speed(5.0)
    arm.run()
    arm.set_speed(None)
    assert arm.speed == 1.0


def test_a_crossing_that_is_singled_out_runs_from_before_it_and_goes_on_where_it_was_stopped(
    arm: Arm, focus: Focus, clock: Clock
) -> None:
    focus.choose_passage(2)
    arm.toggle()
    assert focus.moment_s == focus.window.start
    clock.now_s += 0.4 * focus.window.length / arm.speed
    arm.advance()
    arm.toggle()
    stopped_s = focus.moment_s
    arm.toggle()
    arm.advance()
    assert focus.moment_s == pytest.approx(stopped_s)
    clock.now_s += 60.0
    arm.advance()
    assert not arm.running
    assert focus.window.contains(focus.passages[2].time.centre)  # it runs no further than the crossing
    arm.toggle()
    assert focus.moment_s == focus.window.start


def test_where_the_pointer_chose_another_moment_a_stopped_crossing_begins_again(
    arm: Arm, focus: Focus, clock: Clock
) -> None:
    focus.choose_passage(2)
    arm.toggle()
    clock.now_s += 0.4 * focus.window.length / arm.speed
    arm.advance()
    arm.toggle()
    focus.point(focus.window.start + 0.8 * focus.window.length)
    arm.toggle()
    assert focus.moment_s == focus.window.start


def test_the_speed_is_shown_beside_the_track_and_the_list_begins_with_the_arm_s_own(review: Window) -> None:
    box = review.page.speed
    assert box.currentText() == "auto 1×"
    QTest.keyClick(review, Qt.Key.Key_N)
    assert box.currentText() == f"auto {own_speed(review.focus.window.length):g}×"
    option = QStyleOptionComboBox()
    box.initStyleOption(option)
    field = box.style().subControlRect(
        QStyle.ComplexControl.CC_ComboBox, option, QStyle.SubControl.SC_ComboBoxEditField, box
    )
    assert field.width() >= box.fontMetrics().horizontalAdvance(box.currentText())
    QTest.keyClick(review, Qt.Key.Key_Space)
    assert review.arm.running
    QTest.keyClick(review, Qt.Key.Key_Period)  # faster, from what it was
    faster = SPEEDS[SPEEDS.index(own_speed(review.focus.window.length)) + 1]
    assert box.currentText() == f"{faster:g}×"
    assert box.itemText(0) == "auto"
    QTest.keyClick(review, Qt.Key.Key_Space)
    box.setFocus()
    while box.currentIndex() > 0:
        QTest.keyClick(box, Qt.Key.Key_Up)
    assert box.currentText().startswith("auto ")
    assert review.arm.own_pace


def test_a_chosen_speed_is_there_again_the_next_time(qtbot: QtBot) -> None:
    store = MemoryStore()
    tools = Tools(lambda path, tick: open_capture(path), worn_findings)
    first = Window(tools, Settings(store))
    qtbot.addWidget(first)
    with qtbot.waitActive(first):  # keys go to the window in front
        first.show()
        first.activateWindow()
    QTest.keyClick(first, Qt.Key.Key_Comma)
    assert first.page.speed.currentText() == "0.5×"
    first.close()
    again = Window(tools, Settings(store))
    qtbot.addWidget(again)
    assert again.page.speed.currentText() == "0.5×"
    assert again.arm.speed == 0.5
    again.arm.set_speed(None)
    again.close()
    assert Settings(store).arm_speed is None
