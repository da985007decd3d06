from __future__ import annotations

import time
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QComboBox, QGraphicsView, QLabel
from pytestqt.qtbot import QtBot

from analysis.captures.model import Role
from app.drawing.lane_name import LaneName
from app.drawing.track_items import stairs, worst
from app.main_window import Window
from app.review.passages import passages
from app.views.press_row import PressRow
from tests.app import hands
from tests.app.conftest import Bench
from tests.app.fakes import BAND, worn_findings


def at_travel(window: Window, travel_percent: float, breakup_percent: float = 20.0) -> QPoint:
    return window.page.track.viewport_point(travel_percent, breakup_percent).toPoint()


def test_the_wheel_zooms_the_track_at_the_pointer_and_home_shows_all_of_it(review: Window) -> None:
    track = review.page.track
    hands.wheel(track.canvas, at_travel(review, 45.0), 5)
    assert track.span.length == pytest.approx(100 * 0.8**5, rel=1e-3)
    assert track.span.contains(45.0)
    QTest.keyClick(review, Qt.Key.Key_Home)
    assert track.span.start == 0.0
    assert track.span.stop == 100.0


def test_dragging_over_a_stretch_of_travel_shows_that_stretch(review: Window) -> None:
    hands.drag(review.page.track.canvas, at_travel(review, 30.0), at_travel(review, 60.0))
    assert review.page.track.span.start == pytest.approx(30.0, abs=0.5)
    assert review.page.track.span.stop == pytest.approx(60.0, abs=0.5)


def test_pointing_at_a_place_says_how_bad_it_is_and_how_often_it_was_tested(
    qtbot: QtBot, review: Window
) -> None:
    hands.point(review.page.track.canvas, at_travel(review, 45.0))
    qtbot.waitUntil(lambda: "tested 12 times" in review.readout.plain_text())
    assert "45.0 % of travel" in review.readout.plain_text()
    hands.point(review.page.track.canvas, at_travel(review, 97.0))
    qtbot.waitUntil(lambda: "not tested" in review.readout.plain_text())


def test_opening_a_band_shows_it_large_on_the_track_too(review: Window) -> None:
    QTest.keyClick(review, Qt.Key.Key_C)
    span = review.page.track.span
    assert span.start < BAND.start < BAND.stop < span.stop
    assert span.length < 6 * BAND.length


def test_a_band_is_opened_from_its_card_by_keyboard(review: Window) -> None:
    card = next(row for row in review.page.evidence.findChildren(PressRow) if row.objectName() == "bandCard")
    QTest.keyClick(card, Qt.Key.Key_Return)
    assert review.focus.passage is not None


def test_pressing_a_statement_shows_the_record_it_stands_on(review: Window) -> None:
    row = next(
        row
        for row in review.page.evidence.findChildren(PressRow)
        if row.accessibleName().startswith("The sensor ground")
    )
    QTest.mouseClick(row, Qt.MouseButton.LeftButton)
    assert review.focus.record is not None
    assert review.focus.record.name == "001"


def test_clicking_the_dot_lets_the_arm_run_and_rest(qtbot: QtBot, review: Window) -> None:
    review.focus.point(0.5)
    travel = review.page.track.arm_position()
    assert travel is not None
    at = at_travel(review, travel, 0.0)
    QTest.mouseClick(review.page.track.canvas, Qt.MouseButton.LeftButton, pos=at)
    qtbot.waitUntil(lambda: review.arm.running)
    QTest.keyClick(review, Qt.Key.Key_Space)
    assert not review.arm.running


def test_a_sensor_with_two_tracks_offers_both(qtbot: QtBot, window: Window, bench: Bench) -> None:
    base = worn_findings()
    second = replace(base.surveys[0], role=Role.SECOND_SIGNAL)
    bench.findings = lambda capture, tick: replace(base, surveys=(*base.surveys, second))
    with qtbot.waitSignal(window.session.findings_changed):
        window.open_file(Path("pedal.h5"))
    choice = next(box for box in window.page.track.findChildren(QComboBox) if box.count() == 2)
    assert choice.isVisible()
    assert choice.currentText() == "Signal"
    choice.setFocus()
    qtbot.waitUntil(lambda: "% of travel" in window.readout.plain_text())
    assert "second signal" not in window.readout.plain_text()
    QTest.keyClick(choice, Qt.Key.Key_Down)
    assert window.page.track.survey is second
    # Each track has an electrical travel of its own: nobody takes one for the other.
    qtbot.waitUntil(lambda: "% of travel, second signal" in window.readout.plain_text())
    hands.point(window.page.track.canvas, at_travel(window, 70.0))
    qtbot.waitUntil(lambda: "tested" in window.readout.plain_text())
    assert "% of travel, second signal" in window.readout.plain_text()


def test_stairs_leave_a_gap_where_nothing_was_visited() -> None:
    path = stairs(np.arange(5.0), np.array([1.0, np.nan, 2.0, 2.0]))
    moves = [i for i in range(path.elementCount()) if path.elementAt(i).isMoveTo()]
    assert len(moves) == 2


def test_the_worst_of_all_crossings_is_their_largest_and_unknown_where_none_was() -> None:
    rows = np.array([[1.0, np.nan, np.nan], [3.0, 2.0, np.nan]])
    np.testing.assert_array_equal(worst(rows), [3.0, 2.0, np.nan])
    assert np.isnan(worst(np.empty((0, 3)))).all()


def test_pointing_at_a_band_lights_up_every_crossing_of_it_while_it_is_pointed_at(
    qtbot: QtBot, review: Window
) -> None:
    hands.point(review.page.track.canvas, at_travel(review, BAND.centre))
    trace, overview = review.page.trace, review.page.overview
    qtbot.waitUntil(lambda: [item.strong for item in trace.stretches] == [True] * 6)
    assert [item.strong for item in overview.stretches] == [True] * 6
    assert review.focus.band is None
    hands.point(review.page.track.canvas, at_travel(review, 70.0))
    qtbot.waitUntil(lambda: not any(item.strong for item in review.page.trace.stretches))


def test_one_crossing_is_said_to_be_one(qtbot: QtBot, bench: Bench, window: Window) -> None:
    found = worn_findings()
    survey, band = found.surveys[0], found.bands[0]
    lone = replace(survey, crossings=survey.crossings[:1], breakup_percent=survey.breakup_percent[:1])
    once = replace(band, passes=1, noisy_passes=1, crossings=band.crossings[:1])
    bench.findings = lambda _capture, _tick: replace(found, surveys=(lone,), bands=(once,))
    with qtbot.waitSignal(window.session.findings_changed):
        window.open_file(Path("worn.h5"))
    card = " ".join(label.text() for label in window.page.evidence.findChildren(QLabel))
    assert "1 of 1 crossing breaks up" in card
    window.readout.show_place(45.0, 12.0, 1)
    assert window.readout.plain_text().endswith("tested once")


def test_thousands_of_crossings_are_drawn_and_listed_without_holding_the_window_up(
    qtbot: QtBot, bench: Bench, window: Window
) -> None:
    found, times = worn_findings(), 250
    survey, band = found.surveys[0], found.bands[0]
    many = replace(
        survey,
        crossings=survey.crossings * times,
        breakup_percent=np.tile(survey.breakup_percent, (times, 1)),
    )
    lots = replace(band, crossings=band.crossings * times, passes=12 * times, noisy_passes=12 * times)
    with qtbot.waitSignal(window.session.findings_changed):
        window.open_file(Path("worn.h5"))
    begun_s = time.process_time()
    window.page.track.show_findings(replace(found, surveys=(many,), bands=(lots,)), many)
    window.page.events.show_passages(passages(replace(found, bands=(lots,))), window.session.capture, True)
    window.page.track.grab()
    # Limit of the manners, in processor time of this process, three times over for whoever else is at work.
    assert time.process_time() - begun_s < 3 * 0.2


def test_the_track_counts_how_often_places_were_tested_and_evidence_the_crossings_of_the_band(
    review: Window,
) -> None:
    track = review.page.track
    sheet = track.findChild(QGraphicsView)
    assert sheet is not None
    names = [item.text() for item in sheet.scene().items() if isinstance(item, LaneName)]
    assert names == ["tested\n≤ 12×"]
    # How many strokes the arm made is neither of the two, and stands nowhere on the track.
    assert not [label.text() for label in track.findChildren(QLabel) if "crossing" in label.text()]
    card = " ".join(label.text() for label in review.page.evidence.findChildren(QLabel))
    assert "12 of 12 crossings" in card


def test_the_list_of_crossings_says_what_a_crossing_is(review: Window) -> None:
    (title,) = [item for item in review.page.events.findChildren(QLabel) if item.text() == "Crossings"]
    assert "one passage of the arm through the band" in title.toolTip()
