"""Markers by mouse, key and table, through a window with a review that is kept in memory."""

from __future__ import annotations

import csv
import io
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest
from PySide6.QtCore import QPoint, QRectF, Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLabel, QLineEdit, QWidget
from pytestqt.qtbot import QtBot

from analysis.intervals import Interval
from analysis.review.model import Marker, PointMarker, SpanMarker, TravelSpan, place_of
from analysis.review.readings import TravelReadings
from analysis.signals.proportions import wilson_interval
from app.drawing.mark_item import plate_of
from app.main_window import Window
from app.review.marker_rows import brief
from app.review.marker_words import _at_most, grid
from tests.app import hands
from tests.app.fakes import BAND, worn_findings

CTRL, SHIFT = Qt.KeyboardModifier.ControlModifier, Qt.KeyboardModifier.ShiftModifier


def canvas(window: Window) -> QWidget:
    return window.page.trace.canvas


def at_time(window: Window, time_s: float) -> QPoint:
    return window.page.trace.viewport_point(time_s).toPoint()


def at_travel(window: Window, travel_percent: float, breakup_percent: float = 12.0) -> QPoint:
    return window.page.track.viewport_point(travel_percent, breakup_percent).toPoint()


def only(window: Window) -> Marker:
    (marker,) = window.desk.keeper.review.markers
    return marker


def key(window: Window, which: Qt.Key, held: Qt.KeyboardModifier = Qt.KeyboardModifier.NoModifier) -> None:
    QTest.keyClick(window, which, held)


def test_a_key_places_a_point_on_the_sample_under_the_pointer(qtbot: QtBot, review: Window) -> None:
    hands.point(canvas(review), at_time(review, 2.0))
    key(review, Qt.Key.Key_M)
    marker = only(review)
    assert isinstance(marker, PointMarker)
    assert marker.record == "004"
    assert marker.time_s == pytest.approx(2.0, abs=0.02)
    assert marker.time_s * 10_000 == pytest.approx(round(marker.time_s * 10_000), abs=1e-6)
    assert review.page.markers.rows[0].where.startswith("Sweep 1 · ")


def test_a_double_click_on_empty_trace_places_a_point_and_on_a_crossing_zooms(
    qtbot: QtBot, review: Window
) -> None:
    hands.double_click(canvas(review), at_time(review, 2.0))
    qtbot.waitUntil(lambda: len(review.desk.keeper.review.markers) == 1)
    hands.double_click(canvas(review), at_time(review, 0.9))
    qtbot.waitUntil(lambda: review.focus.passage is not None)
    assert len(review.desk.keeper.review.markers) == 1


def test_a_drag_with_ctrl_places_a_span_and_a_plain_drag_zooms_as_ever(qtbot: QtBot, review: Window) -> None:
    hands.drag(canvas(review), at_time(review, 4.0), at_time(review, 6.0), held=CTRL)
    marker = only(review)
    assert isinstance(marker, SpanMarker)
    assert marker.time.start == pytest.approx(4.0, abs=0.05)
    assert marker.time.stop == pytest.approx(6.0, abs=0.05)
    assert review.focus.window.length == pytest.approx(12.0)
    hands.drag(canvas(review), at_time(review, 7.0), at_time(review, 9.0))
    assert review.focus.window.length == pytest.approx(2.0, abs=0.1)
    assert len(review.desk.keeper.review.markers) == 1


def test_by_keys_alone_a_span_begins_and_ends_where_the_arm_is(review: Window) -> None:
    review.focus.point(1.0)
    key(review, Qt.Key.Key_S)
    assert review.desk.markers.begun
    for _ in range(5):
        key(review, Qt.Key.Key_Right, SHIFT)
    key(review, Qt.Key.Key_S)
    marker = only(review)
    assert isinstance(marker, SpanMarker)
    assert marker.time == pytest.approx(Interval(1.0, 1.15), abs=1e-3) or marker.time.start == 1.0
    assert marker.time.stop == pytest.approx(1.0 + 5 * 12.0 / 400, abs=1e-3)


def test_escape_drops_a_span_that_has_only_begun(review: Window) -> None:
    key(review, Qt.Key.Key_S)
    key(review, Qt.Key.Key_Escape)
    assert not review.desk.markers.begun
    assert review.desk.keeper.review.markers == ()


def test_by_keys_alone_a_stretch_of_travel_begins_and_ends_where_the_arm_is(review: Window) -> None:
    review.focus.point(0.5)
    start = review.page.track.arm_position()
    key(review, Qt.Key.Key_T)
    review.focus.point(1.0)
    stop = review.page.track.arm_position()
    key(review, Qt.Key.Key_T)
    marker = only(review)
    assert isinstance(marker, TravelSpan)
    assert start is not None
    assert stop is not None
    assert marker.travel.start == pytest.approx(start, abs=0.06)
    assert marker.travel.stop == pytest.approx(stop, abs=0.06)


def test_a_double_click_on_empty_track_and_a_drag_with_ctrl_place_stretches_of_travel(
    qtbot: QtBot, review: Window
) -> None:
    sheet = review.page.track.canvas
    hands.double_click(sheet, at_travel(review, 70.0))
    qtbot.waitUntil(lambda: len(review.desk.keeper.review.markers) == 1)
    hands.drag(sheet, at_travel(review, 20.0), at_travel(review, 30.0), held=CTRL)
    narrow, drawn = (place_of(item) for item in review.desk.keeper.review.markers)
    assert isinstance(narrow, Interval)
    assert isinstance(drawn, Interval)
    assert narrow.centre == pytest.approx(70.0, abs=0.3)
    assert narrow.length == pytest.approx(2.0, abs=0.11)
    assert drawn.start == pytest.approx(20.0, abs=0.3)
    assert drawn.stop == pytest.approx(30.0, abs=0.3)


def test_a_point_is_dragged_to_another_sample_in_one_step_that_can_be_undone(review: Window) -> None:
    review.desk.markers.mark_moment(4.0)
    hands.drag(canvas(review), at_time(review, 4.0), at_time(review, 5.0))
    marker = only(review)
    assert isinstance(marker, PointMarker)
    assert marker.time_s == pytest.approx(5.0, abs=0.03)
    assert review.focus.window.length == pytest.approx(12.0)
    key(review, Qt.Key.Key_Z, CTRL)
    assert place_of(only(review)) == pytest.approx(4.0)
    key(review, Qt.Key.Key_Y, CTRL)
    assert place_of(only(review)) == pytest.approx(5.0, abs=0.03)


def test_an_edge_of_a_span_is_dragged_and_the_other_one_stays(review: Window) -> None:
    review.desk.markers.mark_time(Interval(4.0, 6.0))
    hands.drag(canvas(review), at_time(review, 6.0), at_time(review, 8.0))
    place = place_of(only(review))
    assert isinstance(place, Interval)
    assert place.start == pytest.approx(4.0)
    assert place.stop == pytest.approx(8.0, abs=0.03)


def test_an_edge_that_is_dragged_over_the_other_takes_its_place(review: Window) -> None:
    review.desk.markers.mark_stretch(Interval(60.0, 64.0))
    hands.drag(review.page.track.canvas, at_travel(review, 64.0), at_travel(review, 55.0))
    place = place_of(only(review))
    assert isinstance(place, Interval)
    assert place.start == pytest.approx(55.0, abs=0.3)
    assert place.stop == pytest.approx(60.0, abs=0.01)


def test_keys_move_a_point_and_the_edges_of_a_span_to_the_arm(review: Window) -> None:
    review.desk.markers.mark_moment(4.0)
    review.focus.point(2.5)
    key(review, Qt.Key.Key_M, CTRL)
    assert place_of(only(review)) == pytest.approx(2.5)
    key(review, Qt.Key.Key_Delete)
    assert review.desk.keeper.review.markers == ()
    review.desk.markers.mark_time(Interval(1.0, 2.0))
    review.focus.point(0.5)
    key(review, Qt.Key.Key_B, CTRL)
    review.focus.point(3.0)
    key(review, Qt.Key.Key_E, CTRL)
    place = place_of(only(review))
    assert place == Interval(0.5, 3.0) or place == pytest.approx(Interval(0.5, 3.0))


def test_a_span_reads_every_channel_with_uncertainty_and_as_numpy_does(qtbot: QtBot, review: Window) -> None:
    review.focus.show_record("002")
    review.desk.markers.mark_time(Interval(0.5, 1.5))
    qtbot.waitUntil(lambda: bool(review.page.markers.readings.rows))
    shown = review.page.markers.readings
    assert [head.split(",")[0] for head in shown.columns] == ["Signal", "Reference", "Ground"]
    cells = dict(shown.rows)
    volts = review.session.capture.record("002").channels[0].volts(5_000, 15_000)  # type: ignore[union-attr]
    mean, spread = (float(part) for part in cells["Mean"][0].split(" ± "))
    assert mean == pytest.approx(float(np.mean(volts)), abs=spread)
    assert cells["Samples"] == ("10000",) * 3
    assert all("±" in cell for cell in cells["Peak–peak"])
    assert "not stated" in shown.remark


def test_no_figure_of_three_channels_is_cut_on_a_small_screen(qtbot: QtBot, review: Window) -> None:
    review.desk.markers.mark_time(Interval(0.5, 3.5))
    qtbot.waitUntil(lambda: bool(review.page.markers.readings.rows))
    grid = review.page.markers.grid
    qtbot.waitUntil(lambda: grid.columnWidth(0) > 0)
    for column in range(3):
        assert grid.columnWidth(column) >= grid.sizeHintForColumn(column)


def test_no_name_of_three_channels_is_cut_where_there_is_room(qtbot: QtBot, review: Window) -> None:
    review.setMinimumSize(1920, 1080)  # a screen of 800 x 600 would cut it
    review.desk.markers.mark_time(Interval(0.5, 3.5))
    qtbot.waitUntil(lambda: bool(review.page.markers.readings.rows))
    heads = review.page.markers.grid.horizontalHeader()
    wanted = heads.fontMetrics().horizontalAdvance("Reference, V")
    qtbot.waitUntil(lambda: heads.sectionSize(1) > wanted)


def test_a_stretch_of_travel_is_counted_as_a_found_band_is(qtbot: QtBot, review: Window) -> None:
    review.desk.markers.mark_stretch(BAND)
    qtbot.waitUntil(lambda: bool(review.page.markers.readings.rows))
    assert dict(review.page.markers.readings.rows)["Breaks up on"] == ("12 of 12 crossings",)
    shaded = [item for item in review.page.trace.marks.marks if item.fixed]
    assert len(shaded) == 6  # the crossings of the shown record light up


def test_a_marker_is_renamed_in_place_and_gets_a_note(qtbot: QtBot, review: Window) -> None:
    review.desk.markers.mark_moment(4.0)
    key(review, Qt.Key.Key_F2)
    editor = review.page.markers.table.findChild(QLineEdit)
    assert editor is not None
    QTest.keyClicks(editor, "worst drop m")
    review.page.markers.table.updateGeometries()  # as when a reading comes
    assert editor.width() >= editor.fontMetrics().horizontalAdvance("worst drop m")
    QTest.keyClick(editor, Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: only(review).label == "worst drop m")
    key(review, Qt.Key.Key_F2, SHIFT)
    QTest.keyClicks(review.page.markers.note, "felt in the hand")
    QTest.keyClick(review.page.markers.note, Qt.Key.Key_Return)
    assert only(review).note == "felt in the hand"
    assert only(review).label == "worst drop m"  # typing M placed no second marker
    # The next key is meant for the window again, and is not written into the note.
    QTest.keyClick(QApplication.focusWidget() or review, Qt.Key.Key_N)
    assert review.focus.passage is not None
    assert (only(review).note, review.page.markers.note.text()) == ("felt in the hand",) * 2


def test_stepping_through_markers_brings_each_into_view(review: Window) -> None:
    for record, time_s in (("004", 2.0), ("002", 0.5), ("005", 11.0)):
        review.focus.show_record(record)
        review.desk.markers.mark_moment(time_s)
    review.focus.show_window(Interval(0.0, 1.0))
    seen = []
    for _ in range(3):
        key(review, Qt.Key.Key_K)
        assert review.focus.record is not None
        seen.append(review.focus.record.name)
        assert review.focus.window.contains(review.focus.moment_s or -1.0)
    assert seen == ["004", "002", "005"]
    key(review, Qt.Key.Key_K, SHIFT)
    assert review.focus.record is not None
    assert review.focus.record.name == "002"
    key(review, Qt.Key.Key_G)
    assert review.focus.window.length < 0.1


def test_choosing_a_row_goes_to_the_marker(review: Window) -> None:
    review.desk.markers.mark_moment(4.0)
    review.desk.markers.mark_moment(6.0)
    review.focus.show_record("001")
    table = review.page.markers.table
    spot = table.visualRect(table.model().index(0, 1)).center()
    QTest.mouseClick(table.viewport(), Qt.MouseButton.LeftButton, pos=spot)
    assert review.focus.record is not None
    assert review.focus.record.name == "004"
    assert review.focus.moment_s == pytest.approx(4.0)


def test_markers_are_copied_as_text_and_as_csv_that_holds_no_formula(qtbot: QtBot, review: Window) -> None:
    review.desk.markers.mark_moment(4.0)
    review.desk.markers.rename(only(review).marker_id, "=HYPERLINK(1)")
    review.desk.markers.note(only(review).marker_id, "-1+2\nand more")
    qtbot.waitUntil(lambda: bool(review.page.markers.readings.rows))
    key(review, Qt.Key.Key_C, CTRL | Qt.KeyboardModifier.AltModifier)
    heads, *rows = list(csv.reader(io.StringIO(QGuiApplication.clipboard().text())))
    assert len(rows) == 3
    assert rows[0][heads.index("Marker")] == "'=HYPERLINK(1)"
    assert rows[0][heads.index("Note")].startswith("'-1+2")
    assert float(rows[1][heads.index("Mean / V")]) == pytest.approx(5.003, abs=0.01)
    key(review, Qt.Key.Key_C, CTRL | SHIFT)
    lines = QGuiApplication.clipboard().text().splitlines()
    assert len(lines) == 4
    assert {line.count("\t") for line in lines} == {len(heads) - 1}


def test_undo_names_what_it_undoes_and_is_offered_only_where_there_is_something(review: Window) -> None:
    undo, redo = review.actions_by_name["undo"], review.actions_by_name["redo"]
    assert not undo.isEnabled()
    review.desk.markers.mark_moment(4.0)
    assert undo.isEnabled()
    assert "place a marker" in undo.text()
    undo.trigger()
    assert review.desk.keeper.review.markers == ()
    assert not undo.isEnabled()
    assert redo.isEnabled()


def test_points_and_spans_differ_by_shape_and_the_chosen_one_by_its_filling(review: Window) -> None:
    review.desk.markers.mark_moment(4.0)
    review.desk.markers.mark_time(Interval(6.0, 7.0))
    shown = {item.label: (item.stop is None, item.chosen) for item in review.page.trace.marks.marks}
    assert shown == {"1": (True, False), "2": (False, True)}


def test_a_label_never_hides_the_sample_that_it_belongs_to() -> None:
    view = QRectF(0.0, 0.0, 400.0, 100.0)
    foot, head = (plate_of(200.0, (20.0, 14.0), [y], view) for y in (10.0, 97.0))
    assert foot.bottom() < 100.0
    assert foot.top() > 80.0
    assert head.top() < 10.0
    for x in (-50.0, 200.0, 500.0):  # at the edges it stays inside
        assert view.contains(plate_of(x, (20.0, 14.0), [97.0], view))
    # Of samples at both ends the foot hides one as the head would: it stays where labels are looked for.
    assert plate_of(200.0, (20.0, 14.0), [3.0, 97.0], view) == foot


def test_plus_minus_is_said_in_workshop_words_and_in_those_of_metrology_on_asking(
    qtbot: QtBot, review: Window
) -> None:
    review.desk.markers.mark_time(Interval(0.5, 1.5))
    qtbot.waitUntil(lambda: bool(review.page.markers.readings.rows))
    pane = review.page.markers
    (told,) = [item for item in pane.findChildren(QLabel) if item.text().startswith("±")]
    assert told.text().startswith("±: within it 95 times in 100")
    assert "k =" not in told.text()
    # JCGM 100 (GUM), 2.3.5 and 6.3.3: expanded uncertainty, k = 2 for about 95 %.
    assert "expanded uncertainty with k = 2" in told.toolTip()
    assert told.toolTip() == pane.grid.toolTip()


def test_a_sound_stretch_of_travel_is_called_very_unlikely_and_a_worn_one_very_likely() -> None:
    worn = worn_findings().bands[0]
    sound = replace(worn, confidence=0.026, noisy_passes=0)
    for band, words, share in (
        (worn, "very likely", "76–100 % of crossings"),
        (sound, "very unlikely", "0–24 % of crossings"),
    ):
        read = TravelReadings(band, wilson_interval(band.noisy_passes, band.passes))
        rows = dict(grid(read).rows)
        assert brief(read) == words
        assert rows["A band here"][0].startswith(f"{words} (")
        assert rows["Expect it on"] == (share,)  # Wilson 1927, as statsmodels has it for 12 of 12
        assert "95 % interval" in grid(read).tip


def test_noise_below_the_recorder_s_step_is_a_limit_in_two_figures_that_is_never_too_low() -> None:
    assert [_at_most(value) for value in (2.43, 0.0611, 14.2, 0.9)] == ["2.5", "0.062", "15", "0.90"]


def test_another_capture_begins_with_no_marker_of_this_one(qtbot: QtBot, review: Window) -> None:
    review.desk.markers.mark_moment(4.0)
    with qtbot.waitSignal(review.session.findings_changed):
        review.open_file(Path("other.h5"))
    assert review.desk.keeper.review.markers == ()
    assert review.page.markers.rows == ()
    assert not review.actions_by_name["undo"].isEnabled()


def label_on_track(window: Window, travel: Interval) -> QPoint:
    """Where the label of a stretch stands: over its middle, above the dot of the arm."""
    return at_travel(window, travel.centre, 0.0) - QPoint(0, 22)


def test_a_stretch_is_chosen_and_dragged_by_its_label(qtbot: QtBot, review: Window) -> None:
    review.desk.markers.mark_stretch(Interval(60.0, 70.0))
    review.desk.markers.choose(None)
    shown, track = review.page.track.span, review.page.track.canvas
    _, painted, _ = review.page.track.marks._plots[0]
    qtbot.waitUntil(lambda: bool(painted._plates))
    QTest.mouseClick(track, Qt.MouseButton.LeftButton, pos=label_on_track(review, Interval(60.0, 70.0)))
    qtbot.waitUntil(lambda: review.desk.markers.chosen is not None)
    by = at_travel(review, 75.0) - at_travel(review, 65.0)
    start = label_on_track(review, Interval(60.0, 70.0))
    hands.drag(track, start, start + by)
    marker = only(review)
    assert isinstance(marker, TravelSpan)
    assert marker.travel.start == pytest.approx(70.0, abs=0.3)
    assert marker.travel.length == pytest.approx(10.0, abs=0.11)
    assert review.page.track.span == shown


def test_the_chosen_marker_is_painted_over_the_others(review: Window) -> None:
    review.desk.markers.mark_moment(3.0)
    first = only(review).marker_id
    review.desk.markers.mark_moment(3.001)
    review.desk.markers.choose(first)
    painted = [mark for mark, _ in review.page.trace.marks._plots[0][1]._marks]
    assert [mark.chosen for mark in painted] == [False, True]
    assert painted[-1].mark_id == first
