"""A marker that is placed twice, or comes back: there is one, and it is the chosen one."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from analysis.intervals import Interval
from analysis.review.model import place_of
from app.main_window import Window
from tests.app import hands

CTRL = Qt.KeyboardModifier.ControlModifier


def key(window: Window, which: Qt.Key, held: Qt.KeyboardModifier = Qt.KeyboardModifier.NoModifier) -> None:
    QTest.keyClick(window, which, held)


def chosen_label(window: Window) -> str | None:
    chosen = window.desk.markers.chosen
    return chosen.label if chosen is not None else None


def test_the_key_pressed_again_at_the_same_sample_chooses_the_marker_that_stands_there(
    review: Window,
) -> None:
    canvas = review.page.trace.canvas
    hands.point(canvas, review.page.trace.viewport_point(2.0).toPoint())
    key(review, Qt.Key.Key_M)
    key(review, Qt.Key.Key_Escape)
    assert chosen_label(review) is None
    key(review, Qt.Key.Key_M)
    assert chosen_label(review) == "1"
    assert [item.label for item in review.desk.keeper.review.markers] == ["1"]
    assert review.statusBar().currentMessage() == "A marker stands there already: 1"
    hands.point(canvas, review.page.trace.viewport_point(4.0).toPoint())
    key(review, Qt.Key.Key_M)
    assert chosen_label(review) == "2"


@pytest.mark.parametrize("kind", ["time", "travel"])
def test_a_span_or_stretch_over_the_same_place_is_there_once(review: Window, kind: str) -> None:
    place = {"time": review.desk.markers.mark_time, "travel": review.desk.markers.mark_stretch}[kind]
    place(Interval(2.0, 3.0))
    place(Interval(2.0, 3.0))
    place(Interval(2.0, 3.5))
    assert [item.label for item in review.desk.keeper.review.markers] == ["1", "2"]


def test_what_undo_and_redo_bring_back_is_chosen(qtbot: QtBot, review: Window) -> None:
    for moment_s in (1.0, 2.0, 3.0):
        review.desk.markers.mark_moment(moment_s)
    review.desk.markers.step(-1)
    assert chosen_label(review) == "2"
    key(review, Qt.Key.Key_Delete)
    assert chosen_label(review) == "3"
    key(review, Qt.Key.Key_Z, CTRL)
    assert chosen_label(review) == "2"
    review.desk.markers.move(review.desk.markers.chosen.marker_id, 2.5)  # type: ignore[union-attr]
    review.desk.markers.step(1)
    key(review, Qt.Key.Key_Z, CTRL)  # the move
    chosen = review.desk.markers.chosen
    assert chosen is not None
    assert chosen.label == "2"
    assert place_of(chosen) == pytest.approx(2.0)


def test_undoing_what_was_said_of_a_band_leaves_the_choice_alone(qtbot: QtBot, review: Window) -> None:
    review.desk.markers.mark_moment(1.0)
    review.focus.choose_band(0)
    key(review, Qt.Key.Key_A)
    key(review, Qt.Key.Key_Z, CTRL)
    assert review.focus.band == 0
    assert chosen_label(review) is None
