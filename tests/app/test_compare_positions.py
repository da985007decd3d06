"""Compare in the window: what the two sides are to each other, told and refused as the captures state it."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QLabel, QToolButton
from pytestqt.qtbot import QtBot

from analysis.captures.model import Capture, Step
from analysis.comparison.model import Relation
from app.main_window import Window
from tests.app import hands
from tests.app.conftest import Bench
from tests.app.fakes import BAND, sound_capture, worn_or_sound

DELAY_S = 0.7


def other_side(capture: Capture) -> Capture:
    """The same, stated to be of the other corner of the axle."""
    return replace(
        capture,
        title="Ride-height sensor, rear right",
        attributes={**capture.attributes, "mounting": "rear right"},
    )


def driven(capture: Capture, started: str) -> Capture:
    """The same, stated to be recorded over a drive."""
    attributes = {"moved": "road", "started": started}
    records = (replace(item, step=Step.ROAD, attributes=attributes) for item in capture.records)
    return replace(capture, records=tuple(records))


@pytest.fixture
def bench() -> Bench:
    """``new.h5`` is the sound sensor, ``right.h5`` one at the other corner, every other file the worn one."""
    sound = sound_capture(DELAY_S)
    return Bench(others={"new.h5": sound, "right.h5": other_side(sound)}, findings=worn_or_sound(DELAY_S))


@pytest.fixture
def corners(qtbot: QtBot, review: Window) -> Window:
    """The worn capture on the left, that of the other corner on the right, compared."""
    return hands.compare_with(qtbot, review, "right.h5")


@pytest.fixture
def compare(qtbot: QtBot, review: Window) -> Window:
    """The worn capture on the left, the sound one on the right, compared."""
    return hands.compare_with(qtbot, review, "new.h5")


def test_a_mirrored_sensor_is_laid_on_the_other_end_of_the_axis(qtbot: QtBot, corners: Window) -> None:
    desk = corners.compare
    plain = desk.page.track.surveys[0]
    QTest.keyClick(corners, Qt.Key.Key_1)
    turned = desk.page.track.surveys[0]
    assert plain is not None
    assert turned is not None
    np.testing.assert_allclose(turned.breakup_percent, plain.breakup_percent[:, ::-1])
    assert corners.actions_by_name["mirror_first"].isChecked()
    qtbot.waitUntil(lambda: desk.comparison is not None and desk.comparison.bands[0].travel.start > 50.0)
    assert desk.comparison is not None
    assert desk.comparison.bands[0].travel.start == pytest.approx(100.0 - BAND.stop)
    QTest.keyClick(corners, Qt.Key.Key_1)
    assert not corners.actions_by_name["mirror_first"].isChecked()


def test_one_and_the_same_sensor_position_is_not_mirrored_and_says_why(compare: Window) -> None:
    page = compare.compare.page
    button = next(
        item for item in page.findChildren(QToolButton) if item.accessibleName() == "Mirror the first"
    )
    assert button.text() == "Mirror"
    plain = page.track.surveys[0]
    QTest.mouseClick(button, Qt.MouseButton.LeftButton)
    assert "one and the same sensor position, so neither is mirrored" in page.problem_bar.text
    assert not button.isChecked()
    assert page.track.surveys[0] is plain
    QTest.keyClick(compare, Qt.Key.Key_2)
    assert [side.mirrored for side in compare.compare.sides] == [False, False]


def test_a_side_that_was_mirrored_is_so_no_more_beside_a_capture_of_its_own_position(
    qtbot: QtBot, corners: Window
) -> None:
    QTest.keyClick(corners, Qt.Key.Key_1)
    assert corners.compare.sides[0].mirrored
    hands.drop(corners, Path("new.h5"))
    qtbot.waitUntil(lambda: "is gone" in corners.compare.page.summary.text)
    assert not corners.compare.sides[0].mirrored
    assert not corners.actions_by_name["mirror_first"].isChecked()


def test_two_corners_open_as_left_and_right_and_nothing_is_called_gone(corners: Window) -> None:
    page = corners.compare.page
    assert page.summary.text.startswith(
        "The band at 41.9–47.7 % of travel is on the left alone: the output broke up on 12 of 12 crossings"
    )
    assert "two different sensors, mounted rear left and rear right" in page.summary.quiet_text
    assert page.chosen_relation() is Relation.LEFT_RIGHT
    assert page.numbers.texts()[0][3] == "on the left alone"
    assert [name.text() for name in page.track.findChildren(QLabel) if name.text() in ("Left", "Right")] == [
        "Left",
        "Right",
    ]
    assert [item.label.split(":")[0] for item in page.track.labels] == ["Left"]


def test_before_and_after_cannot_be_chosen_for_two_corners_and_its_entry_says_why(corners: Window) -> None:
    box = corners.compare.page.relation
    row = box.findData(Relation.BEFORE_AFTER)
    index = box.model().index(row, 0)
    assert not index.flags() & Qt.ItemFlag.ItemIsEnabled
    inks = [box.model().index(place, 0).data(Qt.ItemDataRole.ForegroundRole).color() for place in (row, 1)]
    assert inks[0] != inks[1]
    assert "mounted rear left and rear right" in index.data(Qt.ItemDataRole.ToolTipRole)
    box.setFocus()
    QTest.keyClick(box, Qt.Key.Key_Home)
    assert box.currentData() != Relation.BEFORE_AFTER


def test_swapped_two_corners_keep_their_names(qtbot: QtBot, corners: Window) -> None:
    page = corners.compare.page
    QTest.keyClick(corners, Qt.Key.Key_F7, Qt.KeyboardModifier.ShiftModifier)
    qtbot.waitUntil(lambda: page.numbers.texts()[0][1] == "0 of 12")
    assert "is on the left alone" in page.summary.text
    assert [item.label.split(":")[0] for item in page.track.labels] == ["Left"]


def test_a_capture_of_the_same_position_after_another_corner_is_before_and_after_again(
    qtbot: QtBot, corners: Window
) -> None:
    page = corners.compare.page
    hands.drop(corners, Path("new.h5"))
    qtbot.waitUntil(lambda: "is gone" in page.summary.text)
    assert page.chosen_relation() is Relation.BEFORE_AFTER
    assert page.summary.quiet_text == ""
    assert [item.label.split(":")[0] for item in page.track.labels] == ["Before"]


def test_the_head_of_each_side_begins_with_what_tells_it_from_the_other(
    qtbot: QtBot, compare: Window
) -> None:
    heads = [trace.accessibleDescription() for trace in compare.compare.page.traces]
    assert heads[0].startswith("rear left · Slow sweep")
    assert heads[1].startswith("new · rear left · Slow sweep")
    hands.drop(compare, Path("right.h5"))
    qtbot.waitUntil(lambda: "on the left alone" in compare.compare.page.summary.text)
    heads = [trace.accessibleDescription() for trace in compare.compare.page.traces]
    assert [head.split(" · ")[0] for head in heads] == ["rear left", "rear right"]


def test_left_against_right_is_shown_in_the_place_of_the_sensor_track(
    qtbot: QtBot, bench: Bench, window: Window
) -> None:
    compare, started = window, "2026-05-11T09:15:00+02:00"
    bench.capture = driven(bench.capture, started)
    bench.others["right.h5"] = driven(bench.others["right.h5"], started)
    with qtbot.waitSignal(window.session.findings_changed):
        window.open_file(Path("worn.h5"))
    QTest.keyClick(window, Qt.Key.Key_F7)
    hands.drop(window, Path("right.h5"))
    qtbot.waitUntil(lambda: window.compare.comparison is not None)
    page = compare.compare.page
    QTest.keyClick(compare, Qt.Key.Key_D)
    assert page.corners_shown
    qtbot.waitUntil(lambda: page.corners.empty_text == "")
    assert "the difference exceeds 9.0 % of travel" in page.corners.said
    page.corners.limit.setValue(90.0)
    qtbot.waitUntil(lambda: "agree within 90.0 %" in page.corners.said)
    before = compare.compare.focus.windows[0]
    hands.wheel(page.corners.canvas, page.corners.viewport_point(6.0).toPoint(), 2)
    assert compare.compare.focus.windows[0].length == pytest.approx(before.length * 0.64)
    QTest.keyClick(compare, Qt.Key.Key_D)
    assert not page.corners_shown


def test_left_against_right_of_hand_sweeps_says_why_not_instead_of_a_fault(
    qtbot: QtBot, corners: Window
) -> None:
    page = corners.compare.page
    buttons = page.track.findChildren(QToolButton)
    (button,) = [item for item in buttons if item.text() == "Left against right"]
    QTest.mouseClick(button, Qt.MouseButton.LeftButton)
    assert page.corners_shown
    assert "The arm was moved by hand (Slow sweep), not both corners together" in page.corners.empty_text
    hands.drop(corners, Path("new.h5"))
    qtbot.waitUntil(lambda: "Both are of one corner, rear left" in page.corners.empty_text)
    qtbot.waitUntil(lambda: not corners.compare.jobs.busy())  # what was still at work brings no fault either
    assert page.corners.empty_text.startswith("Both are of one corner")


def correct(window: Window, key: str, text: str) -> None:
    """Enter a fact of the job on the Report page, and come back to Compare."""
    window.actions_by_name["report"].trigger()
    field = window.report_desk.page.form.facts[key]
    field.setFocus()
    field.clear()
    QTest.keyClicks(field, text)
    QTest.keyClick(window, Qt.Key.Key_F7)


def test_a_mounting_that_is_corrected_on_the_report_page_is_heard(qtbot: QtBot, corners: Window) -> None:
    page = corners.compare.page
    QTest.keyClick(corners, Qt.Key.Key_1)
    correct(corners, "mounting", "rear right")
    qtbot.waitUntil(lambda: "is gone" in page.summary.text)
    assert page.chosen_relation() is Relation.BEFORE_AFTER
    assert page.summary.quiet_text == ""
    assert not corners.compare.sides[0].mirrored
    QTest.keyClick(corners, Qt.Key.Key_D)
    assert "Both are of one corner, rear right" in page.corners.empty_text
    QTest.keyClick(corners, Qt.Key.Key_D)
    corners.actions_by_name["undo"].trigger()
    qtbot.waitUntil(lambda: "on the left alone" in page.summary.text)
    assert page.chosen_relation() is Relation.LEFT_RIGHT
    heads = [trace.accessibleDescription().split(" · ")[0] for trace in page.traces]
    assert heads == ["rear left", "rear right"]


def test_another_fact_of_the_job_compares_nothing_anew(qtbot: QtBot, corners: Window) -> None:
    before = corners.compare.comparison
    correct(corners, "technician", "J. Halvorsen")
    assert corners.compare.comparison is before
    assert not corners.compare.jobs.busy()
