"""Compare in the window, by mouse and keys, with captures and findings made by hand."""

from __future__ import annotations

import threading
from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import (
    QAbstractButton,
    QComboBox,
    QDoubleSpinBox,
    QGraphicsView,
    QTableView,
    QWidget,
)
from pytestqt.qtbot import QtBot

from analysis.captures.model import Capture, Role
from analysis.comparison.model import Change, Relation
from analysis.diagnosis.findings import Findings
from analysis.intervals import Interval
from analysis.progress import Tick
from analysis.review.model import PointMarker, SpanMarker, TravelSpan
from app.compare.marks import marks_on, spans_on
from app.main_window import Window
from tests.app import hands
from tests.app.conftest import Bench
from tests.app.fakes import BAND, sound_capture, worn_or_sound

DELAY_S = 0.7
CONTROL = Qt.KeyboardModifier.ControlModifier


@pytest.fixture
def bench() -> Bench:
    """``new.h5`` is the sound sensor, every other file the worn one."""
    return Bench(others={"new.h5": sound_capture(DELAY_S)}, findings=worn_or_sound(DELAY_S))


@pytest.fixture
def compare(qtbot: QtBot, review: Window) -> Window:
    """The worn capture on the left, the sound one on the right, compared."""
    return hands.compare_with(qtbot, review, "new.h5")


def at(window: Window, side: int, time_s: float) -> QPoint:
    return window.compare.page.traces[side].viewport_point(time_s).toPoint()


def canvas(window: Window, side: int) -> QWidget:
    return window.compare.page.traces[side].canvas


def test_compare_begins_with_the_capture_of_review_and_says_what_to_do(review: Window) -> None:
    QTest.keyClick(review, Qt.Key.Key_F7)
    page = review.compare.page
    assert review.comparing
    assert page.traces[0].empty_text == ""
    assert page.traces[1].empty_text
    assert "Open a second capture" in page.summary.text
    assert "Open a second capture" in page.numbers.empty_text
    QTest.keyClick(review, Qt.Key.Key_R, CONTROL | Qt.KeyboardModifier.ShiftModifier)
    assert not review.comparing


def test_a_capture_dropped_on_compare_is_set_against_that_of_review(compare: Window) -> None:
    page = compare.compare.page
    assert page.summary.text.startswith(
        "The band at 41.9–47.7 % of travel is gone: the output broke up on 12 of 12"
    )
    assert page.summary.verdicts == (
        "Each capture by itself · Before: Sensor track worn, very likely (97 in 100)"
        " · After: No fault found, likely (92 in 100)"
    )
    assert compare.session.capture is not None
    assert compare.session.capture.title == "Ride-height sensor, rear left"
    assert page.traces[1].record is not None
    assert page.traces[1].record.step is page.traces[0].record.step  # type: ignore[union-attr]


def test_the_numbers_stand_below_each_other_with_their_outcome(compare: Window) -> None:
    texts = compare.compare.page.numbers.texts()
    assert texts[0] == ["Band 41.9–47.7\N{NO-BREAK SPACE}%", "12 of 12", "0 of 12", "gone", "p < 0.001"]


def test_swapped_the_band_has_appeared_and_each_keeps_its_view(qtbot: QtBot, compare: Window) -> None:
    desk = compare.compare
    hands.wheel(canvas(compare, 0), at(compare, 0, 3.0), 4)
    before = desk.focus.windows
    QTest.keyClick(compare, Qt.Key.Key_F7, Qt.KeyboardModifier.ShiftModifier)
    qtbot.waitUntil(lambda: "has appeared" in desk.page.summary.text)
    assert desk.focus.windows == (before[1], before[0])
    assert desk.page.traces[0].record is desk.sides[0].record
    assert desk.sides[1].of_review


def test_the_wheel_over_either_trace_zooms_both_while_they_are_linked(compare: Window) -> None:
    focus = compare.compare.focus
    hands.wheel(canvas(compare, 1), at(compare, 1, 5.0), 3)
    assert focus.windows[0] == focus.windows[1]
    assert focus.windows[0].length == pytest.approx((12.0 + DELAY_S) * 0.8**3, rel=1e-6)


def test_let_go_with_a_key_one_moves_alone_and_linked_again_they_stay_as_they_stand(compare: Window) -> None:
    focus = compare.compare.focus
    QTest.keyClick(compare, Qt.Key.Key_J)
    assert not focus.linked
    whole = focus.windows[0]
    hands.drag(canvas(compare, 1), at(compare, 1, 4.0), at(compare, 1, 6.0))
    assert focus.windows[0] == whole
    assert focus.windows[1].start == pytest.approx(4.0, abs=0.05)
    hands.drag(canvas(compare, 0), at(compare, 0, 3.0), at(compare, 0, 5.0))
    QTest.keyClick(compare, Qt.Key.Key_J)
    assert focus.linked
    assert focus.offset_s == pytest.approx(1.0, abs=0.1)
    hands.wheel(canvas(compare, 0), at(compare, 0, 4.0), 1)
    assert focus.windows[1].start - focus.windows[0].start == pytest.approx(focus.offset_s)


def test_both_are_laid_on_each_other_by_their_first_movement(compare: Window) -> None:
    focus = compare.compare.focus
    QTest.keyClick(compare, Qt.Key.Key_F7, Qt.KeyboardModifier.ControlModifier)
    assert focus.offset_s == pytest.approx(DELAY_S, abs=0.02)
    told = compare.compare.page.summary.quiet_text
    assert told == f"The second trace is moved {1e3 * focus.offset_s:.0f} ms earlier."
    moved = f"the second trace went {1e3 * focus.offset_s:.0f} ms earlier."
    assert compare.statusBar().currentMessage().endswith(moved)
    QTest.keyClick(compare, Qt.Key.Key_F7, Qt.KeyboardModifier.ControlModifier)
    assert compare.statusBar().currentMessage() == (
        "Both arms first move at the same place: nothing was moved."
    )
    QTest.keyClick(compare, Qt.Key.Key_Right, Qt.KeyboardModifier.ControlModifier)
    assert focus.offset_s < DELAY_S - 0.05


def test_a_message_is_not_painted_over_by_the_readings_and_these_come_back(compare: Window) -> None:
    QTest.keyClick(compare, Qt.Key.Key_F7, Qt.KeyboardModifier.ControlModifier)
    assert not compare.readout.isVisible()
    QTest.keyClick(compare, Qt.Key.Key_N)
    assert compare.statusBar().currentMessage()
    assert not compare.readout.isVisible()
    compare.statusBar().clearMessage()
    assert compare.readout.isVisible()


def test_without_a_movement_it_says_so_and_changes_nothing(compare: Window) -> None:
    desk = compare.compare
    desk.sides[0].choose_record("001")
    offset_s = desk.focus.offset_s
    compare.actions_by_name["align"].trigger()
    assert "did not move in both records" in desk.page.problem_bar.text
    assert desk.focus.offset_s == offset_s


@pytest.mark.parametrize(
    ("key", "grows"), [(Qt.Key.Key_Plus, False), (Qt.Key.Key_Minus, True), (Qt.Key.Key_Home, True)]
)
def test_the_keys_of_review_zoom_compare_and_leave_review_alone(
    compare: Window, key: Qt.Key, grows: bool
) -> None:
    focus = compare.compare.focus
    in_review = compare.focus.window
    focus.show_window(0, Interval(4.0, 6.0))
    QTest.keyClick(compare, key)
    assert (focus.windows[0].length > 2.0) is grows
    assert focus.windows[0].length == focus.windows[1].length
    assert compare.focus.window == in_review


def test_views_before_and_after_can_be_gone_through(compare: Window) -> None:
    focus = compare.compare.focus
    whole = focus.windows
    hands.drag(canvas(compare, 0), at(compare, 0, 3.0), at(compare, 0, 5.0))
    QTest.keyClick(compare, Qt.Key.Key_Left, Qt.KeyboardModifier.AltModifier)
    assert focus.windows == whole
    QTest.keyClick(compare, Qt.Key.Key_Right, Qt.KeyboardModifier.AltModifier)
    assert focus.windows[1].start == pytest.approx(3.0, abs=0.05)


def test_pointing_at_one_trace_marks_the_same_moment_in_both_and_reads_it(compare: Window) -> None:
    hands.point(canvas(compare, 1), at(compare, 1, 6.0))
    first, second = compare.compare.focus.moments
    assert first is not None
    assert first == second == pytest.approx(6.0, abs=0.05)
    compare.pointer.settle()
    assert "% of travel" in compare.readout.plain_text()


def test_two_records_of_one_capture_can_be_compared(qtbot: QtBot, compare: Window) -> None:
    desk = compare.compare
    desk.sides[1].take_review()
    box = desk.page.tools[1].records
    box.setFocus()
    QTest.keyClick(box, Qt.Key.Key_End)
    name = box.currentData()
    assert name == "005"
    desk.page.tools[1].record_chosen.emit(name)
    qtbot.waitUntil(
        lambda: (
            desk.comparison is not None
            and (desk.comparison.first.record, desk.comparison.second.record) == ("004", "005")
        )
    )
    assert desk.comparison is not None
    assert [item.change for item in desk.comparison.bands] == [Change.STILL_THERE]
    assert "6 of 6 crossings before, on 6 of 6 after" in desk.page.summary.text


def test_how_they_belong_together_decides_the_words(qtbot: QtBot, compare: Window) -> None:
    page = compare.compare.page
    page.relation.setFocus()
    QTest.keyClick(page.relation, Qt.Key.Key_Down)  # left and right is greyed: both are of the rear left
    page.relation_chosen.emit(page.chosen_relation())
    assert compare.compare.relation is Relation.KNOWN_GOOD
    qtbot.waitUntil(lambda: "is on the known good one alone" in page.summary.text)
    assert page.numbers.texts()[0][3] == "on the known good one alone"
    assert [item.label.split(":")[0] for item in page.track.labels] == ["Known good"]


def test_the_sensor_track_of_both_can_be_zoomed_and_a_band_of_the_table_shown(compare: Window) -> None:
    page = compare.compare.page
    track = page.track
    hands.wheel(track.canvas, track.viewport_point(45.0, 10.0).toPoint(), 3)
    assert track.span.length == pytest.approx(100.0 * 0.8**3)
    start, stop = (track.viewport_point(place, 10.0).toPoint() for place in (40.0, 50.0))
    hands.drag(track.canvas, start, stop)
    assert track.span.start == pytest.approx(40.0, abs=0.5)
    QTest.keyClick(compare, Qt.Key.Key_Home)
    assert track.span == Interval(0.0, 100.0)
    table = page.numbers.table
    QTest.mouseClick(
        table.viewport(), Qt.MouseButton.LeftButton, pos=table.visualRect(table.model().index(0, 0)).center()
    )
    assert track.span.contains(BAND.start)
    assert track.span.length < 40.0


def test_steps_of_review_wait_while_compare_is_shown(compare: Window) -> None:
    passage = compare.focus.passage
    for key in (Qt.Key.Key_N, Qt.Key.Key_B, Qt.Key.Key_Space, Qt.Key.Key_PageDown):
        QTest.keyClick(compare, key)
    assert compare.focus.passage == passage
    assert not compare.arm.running
    QTest.keyClick(compare, Qt.Key.Key_R, CONTROL | Qt.KeyboardModifier.ShiftModifier)
    QTest.keyClick(compare, Qt.Key.Key_N)
    assert compare.focus.passage is not None


def test_a_bad_second_file_gives_one_sentence_and_leaves_the_first(
    qtbot: QtBot, review: Window, bench: Bench
) -> None:
    bench.refuse.add("broken.h5")
    QTest.keyClick(review, Qt.Key.Key_F7)
    page = review.compare.page
    hands.drop(review, Path("broken.h5"))
    qtbot.waitUntil(lambda: page.problem_bar.text != "")
    assert page.problem_bar.text == "Broken.h5 is not a capture; save it from the recorder again."
    assert page.traces[0].empty_text == ""
    assert review.session.findings is not None


def test_another_capture_in_review_takes_the_side_along(qtbot: QtBot, compare: Window) -> None:
    desk = compare.compare
    compare.open_file(Path("new.h5"))
    qtbot.waitUntil(lambda: desk.comparison is not None and desk.comparison.bands == ())
    assert "Neither shows a band" in desk.page.summary.text


def test_a_capture_is_kept_as_known_good_and_compared_with_in_one_step(
    qtbot: QtBot, window: Window, bench: Bench, tmp_path: Path
) -> None:
    good = tmp_path / "new.h5"
    bench.others["new.h5"] = _of_part(bench.others["new.h5"], good)
    bench.capture = _of_part(bench.capture, tmp_path / "worn.h5")
    with qtbot.waitSignal(window.session.findings_changed):
        window.open_file(good)
    QTest.keyClick(window, Qt.Key.Key_G, CONTROL | Qt.KeyboardModifier.ShiftModifier)
    assert window.settings.known_good == {"part hv 7714 203": str(good)}
    with qtbot.waitSignal(window.session.findings_changed):
        window.open_file(tmp_path / "worn.h5")
    QTest.keyClick(window, Qt.Key.Key_G, Qt.KeyboardModifier.ControlModifier)
    desk = window.compare
    qtbot.waitUntil(lambda: desk.comparison is not None)
    assert "is on this one alone" in desk.page.summary.text
    assert [side.of_review for side in desk.sides] == [False, True]


def _of_part(capture: Capture, path: Path) -> Capture:
    return replace(capture, path=path, attributes={**capture.attributes, "part_number": "HV 7714 203"})


def test_without_a_known_good_one_it_says_how_to_keep_one(review: Window) -> None:
    QTest.keyClick(review, Qt.Key.Key_G, Qt.KeyboardModifier.ControlModifier)
    assert "No capture is kept as known good" in review.page.problem_bar.text
    keep = Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.ShiftModifier
    QTest.keyClick(review, Qt.Key.Key_G, keep)
    assert "neither part number nor profile" in review.page.problem_bar.text
    assert review.settings.known_good == {}


def test_the_second_file_is_closed_with_the_window_and_its_work_stopped(
    qtbot: QtBot, review: Window, bench: Bench
) -> None:
    begun = threading.Event()

    def slow(capture: Capture, tick: Tick) -> Findings:
        while True:
            tick(0.4)
            begun.set()
            threading.Event().wait(0.005)

    bench.findings = slow
    QTest.keyClick(review, Qt.Key.Key_F7)
    hands.drop(review, Path("new.h5"))
    qtbot.waitUntil(begun.is_set)
    assert "Examining" in review.compare.page.summary.text
    review.close()
    assert [item.closed for item in bench.opened] == [1, 1]


def test_escape_in_compare_lets_go_of_nothing_that_is_chosen_in_review(qtbot: QtBot, review: Window) -> None:
    review.focus.open_band(0)
    QTest.keyClick(review, Qt.Key.Key_F7)
    QTest.keyClick(review, Qt.Key.Key_Escape)
    QTest.keyClick(review, Qt.Key.Key_R, CONTROL | Qt.KeyboardModifier.ShiftModifier)
    assert review.focus.band == 0
    QTest.keyClick(review, Qt.Key.Key_R, CONTROL)
    QTest.keyClick(review, Qt.Key.Key_Escape)
    QTest.keyClick(review, Qt.Key.Key_R, CONTROL | Qt.KeyboardModifier.ShiftModifier)
    assert review.focus.band == 0
    QTest.keyClick(review, Qt.Key.Key_Escape)
    assert review.focus.band is None


def test_a_curve_at_nothing_lies_above_the_axis(compare: Window) -> None:
    track = compare.compare.page.track
    sheet = track.canvas.height()
    zero, top = track.viewport_point(50.0, 0.0).y(), track.viewport_point(50.0, 10.0).y()
    assert top < zero < sheet
    assert track.floor_percent < 0.0
    shown_below = track.viewport_point(50.0, track.floor_percent).y() - zero
    assert shown_below >= 3.0  # as many pixels as the curve is wide, and a little more


def test_changing_sides_leaves_nothing_behind_in_the_plots(compare: Window) -> None:
    scenes = [trace.findChild(QGraphicsView) for trace in compare.compare.page.traces]
    counts = [len(view.scene().items()) for view in scenes if view is not None]
    for _ in range(4):
        compare.compare.swap()
    assert [len(view.scene().items()) for view in scenes if view is not None] == counts


def test_every_control_of_compare_has_a_name_for_a_screen_reader(compare: Window) -> None:
    kinds = (QAbstractButton, QComboBox, QDoubleSpinBox, QTableView)
    nameless = [
        item
        for kind in kinds
        for item in compare.compare.page.findChildren(kind)
        if not item.accessibleName() and not item.objectName().startswith("qt_") and item.isVisible()
    ]
    assert nameless == []


def test_markers_of_review_stand_on_the_trace_and_the_track_of_their_side(compare: Window) -> None:
    desk = compare.compare
    span = Interval(60.0, 65.0)
    markers = (
        PointMarker("a", "004", 3.0, "here"),
        SpanMarker("b", "004", Interval(4.0, 5.0), "there"),
        PointMarker("c", "005", 1.0, "another record"),
        TravelSpan("d", Role.SIGNAL, span, "mine"),
    )
    compare.keeper.change("mark", replace(compare.keeper.review, markers=markers))
    record = desk.sides[0].record
    assert [(item.start, item.stop, item.label) for item in marks_on(markers, record)] == [
        (3.0, None, "here"),
        (4.0, 5.0, "there"),
    ]
    assert [item.span for item in spans_on(markers, Role.SIGNAL, False)] == [span]
    assert [item.span for item in spans_on(markers, Role.SIGNAL, True)] == [Interval(35.0, 40.0)]
    assert desk.page.traces[0].marks.marks == marks_on(markers, record)
    assert desk.page.traces[1].marks.marks == ()
    desk.swap()
    assert desk.page.traces[1].marks.marks == marks_on(markers, record)


def test_lanes_are_chosen_for_both_sides_at_once(compare: Window) -> None:
    traces = compare.compare.page.traces
    assert [len(trace.lanes) for trace in traces] == [3, 3]
    QTest.keyClick(compare, Qt.Key.Key_L)
    assert [len(trace.lanes) for trace in traces] == [1, 1]
    QTest.keyClick(compare, Qt.Key.Key_L)
    shown = [trace.lanes[0].box.shown()[1] for trace in traces]
    assert shown[0] == shown[1]
