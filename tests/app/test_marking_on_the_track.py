"""Marking on the sensor track by hand: over the edge of a band, at the pointer, from the menu."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QMenu

from analysis.review.model import TravelSpan
from app.drawing.theme import LIGHT
from app.main_window import Window
from tests.app import hands
from tests.app.fakes import BAND
from tests.app.test_markers import CTRL, at_travel, key, only


def test_a_drag_with_ctrl_from_the_edge_of_the_chosen_band_marks_and_leaves_the_band_alone(
    review: Window,
) -> None:
    review.focus.choose_band(0)
    edge = review.page.track.stretches[0].span.stop
    hands.drag(review.page.track.canvas, at_travel(review, edge), at_travel(review, edge + 6.0), held=CTRL)
    marker = only(review)
    assert isinstance(marker, TravelSpan)
    assert marker.travel.start == pytest.approx(edge, abs=0.6)
    assert review.desk.decisions.decisions()[0] is None


def test_t_begins_and_ends_a_stretch_under_the_pointer_and_says_so(review: Window) -> None:
    review.focus.point(0.5)
    hands.point(review.page.track.canvas, at_travel(review, 70.0))
    key(review, Qt.Key.Key_T)
    (drawn,) = [item for item in review.page.track.marks.marks if item.label.startswith("from ")]
    assert drawn.start == pytest.approx(70.0, abs=0.3)
    assert "Esc" in review.statusBar().currentMessage()
    hands.point(review.page.track.canvas, at_travel(review, 80.0))
    key(review, Qt.Key.Key_T)
    marker = only(review)
    assert isinstance(marker, TravelSpan)
    assert marker.travel.start == pytest.approx(70.0, abs=0.3)
    assert marker.travel.stop == pytest.approx(80.0, abs=0.3)
    assert review.statusBar().currentMessage() == ""


def test_escape_cancels_a_stretch_that_has_only_begun_and_takes_its_sign_away(review: Window) -> None:
    hands.point(review.page.track.canvas, at_travel(review, 70.0))
    key(review, Qt.Key.Key_T)
    key(review, Qt.Key.Key_Escape)
    assert not [item for item in review.page.track.marks.marks if item.label.startswith("from ")]
    assert review.statusBar().currentMessage() == ""
    assert review.desk.keeper.review.markers == ()


def test_the_right_button_on_a_band_marks_the_place_that_was_clicked(review: Window) -> None:
    inside = review.page.track.stretches[0].span.centre
    hands.ask(review.page.track.canvas, at_travel(review, inside))
    menu = QApplication.activePopupWidget()
    assert isinstance(menu, QMenu)
    next(item for item in menu.actions() if item.text() == "Mark this place").trigger()
    menu.close()
    marker = only(review)
    assert isinstance(marker, TravelSpan)
    assert marker.travel.centre == pytest.approx(inside, abs=0.4)


def test_the_grips_of_a_found_band_are_in_its_own_colour_not_in_that_of_the_chosen_crossing(
    review: Window,
) -> None:
    key(review, Qt.Key.Key_C)
    canvas = review.page.track.canvas
    edge = review.page.track.viewport_point(BAND.start, 0.0).toPoint()
    picture = canvas.grab().toImage()
    column = {picture.pixelColor(edge.x() + 1, y).name() for y in range(picture.height())}
    assert LIGHT.band.lower() in column
    assert LIGHT.choice.lower() not in column
