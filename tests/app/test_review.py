from __future__ import annotations

import threading
from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QLabel, QMenu, QWidget
from pytestqt.qtbot import QtBot

from analysis.captures.model import Capture
from analysis.diagnosis.findings import Findings
from analysis.intervals import Interval
from analysis.progress import Tick
from app.main_window import Window
from app.review.focus import whole
from tests.app import hands
from tests.app.conftest import Bench
from tests.app.fakes import BAND, wiring_findings, worn_findings


def canvas(window: Window) -> QWidget:
    return window.page.trace.canvas


def at_time(window: Window, time_s: float) -> QPoint:
    return window.page.trace.viewport_point(time_s).toPoint()


def at_travel(window: Window, travel_percent: float, breakup_percent: float = 20.0) -> QPoint:
    return window.page.track.viewport_point(travel_percent, breakup_percent).toPoint()


def words(widget: QWidget) -> str:
    return " ".join(label.text() for label in widget.findChildren(QLabel) if label.isVisibleTo(widget))


def test_an_empty_window_says_in_every_pane_what_to_do(window: Window) -> None:
    for pane in (
        window.page.records,
        window.page.events,
        window.page.trace,
        window.page.track,
        window.page.evidence,
    ):
        assert len(pane.empty_text) > 20


def test_a_dropped_capture_is_shown_examined_and_remembered(qtbot: QtBot, window: Window) -> None:
    with qtbot.waitSignal(window.session.findings_changed):
        hands.drop(window, Path("worn.h5"))
    assert window.windowTitle().startswith("Ride-height sensor")
    assert "Sensor track worn" in words(window.page.evidence)
    assert "very likely (97 in 100)" in words(window.page.evidence)
    assert "41.9–47.7 % of travel" in words(window.page.evidence)


def test_the_record_that_shows_the_band_best_is_shown_first(review: Window) -> None:
    assert review.focus.record is not None
    assert review.focus.record.name == "004"
    assert review.focus.window == whole(review.focus.record)


def test_the_wheel_zooms_at_the_pointer(qtbot: QtBot, review: Window) -> None:
    at = at_time(review, 3.0)
    before = review.focus.window
    share = (3.0 - before.start) / before.length
    hands.wheel(canvas(review), at, 3)
    after = review.focus.window
    assert after.length == pytest.approx(before.length * 0.8**3, rel=1e-6)
    assert (3.0 - after.start) / after.length == pytest.approx(share, abs=0.01)


def test_dragging_over_a_region_of_trace_shows_that_region(review: Window) -> None:
    hands.drag(canvas(review), at_time(review, 4.0), at_time(review, 6.0))
    assert review.focus.window.start == pytest.approx(4.0, abs=0.05)
    assert review.focus.window.stop == pytest.approx(6.0, abs=0.05)


def test_keys_zoom_move_and_show_the_whole_record(review: Window) -> None:
    whole_record = review.focus.window
    QTest.keyClick(review, Qt.Key.Key_Plus)
    assert review.focus.window.length == pytest.approx(whole_record.length / 2)
    start_s = review.focus.window.start
    QTest.keyClick(review, Qt.Key.Key_Right)
    assert review.focus.window.start > start_s
    QTest.keyClick(review, Qt.Key.Key_Home)
    assert review.focus.window == whole_record


def test_earlier_views_come_back_and_later_ones_too(qtbot: QtBot, review: Window) -> None:
    first = review.focus.window
    review.focus.show_window(Interval(2.0, 3.0))
    QTest.keyClick(review, Qt.Key.Key_Left, Qt.KeyboardModifier.AltModifier)
    assert review.focus.window == first
    QTest.keyClick(review, Qt.Key.Key_Right, Qt.KeyboardModifier.AltModifier)
    assert review.focus.window == Interval(2.0, 3.0)


def test_pointing_at_a_moment_puts_the_arm_on_the_track_and_reads_every_channel(
    qtbot: QtBot, review: Window
) -> None:
    hands.point(canvas(review), at_time(review, 2.0))
    qtbot.waitUntil(lambda: abs((review.focus.moment_s or 0.0) - 2.0) < 0.02)
    assert review.page.track.arm_position() == pytest.approx(92.0, abs=0.2)
    review.pointer.settle()
    for text in ("Signal", "Reference", "Ground", "5.00", " mV", "of travel"):
        assert text in review.readout.text()


def test_clicking_a_band_lights_up_every_crossing_in_the_record(qtbot: QtBot, review: Window) -> None:
    QTest.mouseClick(review.page.track.canvas, Qt.MouseButton.LeftButton, pos=at_travel(review, BAND.centre))
    qtbot.waitUntil(lambda: review.focus.band == 0)
    strong = [item for item in review.page.trace.stretches if item.strong]
    assert len(strong) == 6


def test_double_clicking_a_band_zooms_to_the_crossing_with_the_most_break_up(
    qtbot: QtBot, review: Window
) -> None:
    findings = review.session.findings
    assert findings is not None
    worst = max(findings.bands[0].crossings, key=lambda item: item.breakup_percent)
    hands.double_click(review.page.track.canvas, at_travel(review, BAND.centre))
    qtbot.waitUntil(lambda: review.focus.passage is not None)
    assert review.focus.record is not None
    assert review.focus.record.name == worst.record
    assert review.focus.window.start < worst.time.start < worst.time.stop < review.focus.window.stop
    assert review.focus.window.length < 5 * worst.time.length + 0.2


def test_a_chosen_crossing_stands_out_of_the_pale_others_until_it_is_let_go(
    qtbot: QtBot, review: Window
) -> None:
    page = review.page
    assert len(page.trace.stretches) == 6
    QTest.keyClick(review, Qt.Key.Key_N)
    QTest.keyClick(review, Qt.Key.Key_N)
    QTest.keyClick(review, Qt.Key.Key_Home)  # the others are in view again
    looks = [(item.time, at == 1, at != 1) for at, item in enumerate(review.focus.passages[:6])]
    for view in (page.trace, page.overview):
        assert [(item.span, item.strong, item.pale) for item in view.stretches] == looks
    assert page.track.singled_out == (1,)
    QTest.keyClick(review, Qt.Key.Key_Escape)
    assert len(page.trace.stretches) == len(page.overview.stretches) == 6
    assert not page.track.singled_out


def test_a_chosen_crossing_is_let_go_with_its_record_and_is_alone_again_when_we_go_back(
    qtbot: QtBot, review: Window
) -> None:
    QTest.keyClick(review, Qt.Key.Key_N)
    QTest.keyClick(review, Qt.Key.Key_PageDown)
    assert not review.page.track.singled_out
    assert len(review.page.trace.stretches) == 6
    QTest.keyClick(review, Qt.Key.Key_Left, Qt.KeyboardModifier.AltModifier)
    assert list(review.page.track.singled_out) == [0]


def test_the_reading_follows_the_pointer_where_the_view_moves_under_it(qtbot: QtBot, review: Window) -> None:
    review.focus.show_window(Interval(3.0, 5.0))
    at = at_time(review, 4.0)
    hands.point(canvas(review), at)
    hands.wheel(canvas(review), at, 1, Qt.KeyboardModifier.ShiftModifier)
    moment_s = review.focus.moment_s
    assert moment_s is not None
    assert moment_s == pytest.approx(3.8, abs=0.01)
    assert abs(at_time(review, moment_s).x() - at.x()) <= 1


def test_zooming_says_the_moment_to_more_digits(qtbot: QtBot, review: Window) -> None:
    at = at_time(review, 3.0)
    hands.point(canvas(review), at)
    review.pointer.settle()
    before = review.readout.plain_text().split(" s")[0]
    hands.wheel(canvas(review), at, 20)
    review.pointer.settle()
    after = review.readout.plain_text().split(" s")[0]
    assert len(after) >= len(before) + 2
    review.focus.show_whole()
    assert len(review.readout.plain_text().split(" s")[0]) == len(before)


def test_the_first_crossing_of_a_record_is_listed_with_the_name_of_its_record(
    qtbot: QtBot, review: Window
) -> None:
    rows = review.page.events.list
    rows.setFixedHeight(60)
    qtbot.waitUntil(lambda: rows.viewport().height() < 62)
    rows.scrollToBottom()
    QTest.keyClick(review, Qt.Key.Key_N)
    heading = rows.visualRect(rows.model().index(0, 0))
    assert 0 <= heading.top() < heading.bottom() <= rows.viewport().height()


def test_stepping_goes_through_the_crossings_in_order_and_round(review: Window) -> None:
    seen = []
    for _ in range(13):
        QTest.keyClick(review, Qt.Key.Key_N)
        seen.append(review.focus.passage)
    assert seen == [*range(12), 0]
    QTest.keyClick(review, Qt.Key.Key_P)
    assert review.focus.passage == 11


def test_dragging_the_arm_moves_the_moment_to_that_place_on_the_track(review: Window) -> None:
    review.focus.point(1.0)
    start = at_travel(review, 50.0, 0.0)
    hands.drag(review.page.track.canvas, start, at_travel(review, 70.0, 0.0))
    assert review.page.track.arm_position() == pytest.approx(70.0, abs=0.6)
    assert review.focus.moment_s is not None
    assert 1.0 < review.focus.moment_s < 2.0


def test_the_arm_runs_when_asked_and_rests_when_asked_again(qtbot: QtBot, review: Window) -> None:
    before_s = review.focus.moment_s or 0.0
    QTest.keyClick(review, Qt.Key.Key_Space)
    assert review.arm.running
    qtbot.waitUntil(lambda: (review.focus.moment_s or 0.0) > before_s + 0.05)
    QTest.keyClick(review, Qt.Key.Key_Space)
    assert not review.arm.running


def test_choosing_a_record_shows_it(qtbot: QtBot, review: Window) -> None:
    rows = review.page.records.list
    QTest.mouseClick(
        rows.viewport(), Qt.MouseButton.LeftButton, pos=rows.visualRect(rows.model().index(1, 0)).center()
    )
    assert review.focus.record is not None
    assert review.focus.record.name == "002"


def test_a_step_that_was_not_captured_stays_open_on_the_checklist(review: Window) -> None:
    model = review.page.records.list.model()
    texts = [model.index(row, 0).data() for row in range(model.rowCount())]
    assert "Hold" in texts


def test_the_overview_window_can_be_dragged(review: Window) -> None:
    review.focus.show_window(Interval(2.0, 4.0))
    y = review.page.overview.height() // 2
    hands.drag(
        review.page.overview,
        QPoint(round(review.page.overview.x_of(3.0)), y),
        QPoint(round(review.page.overview.x_of(6.0)), y),
    )
    assert review.focus.window.start == pytest.approx(5.0, abs=0.1)
    assert review.focus.window.length == pytest.approx(2.0)


def test_all_channels_fit_on_one_axis_or_in_lanes(review: Window) -> None:
    assert len(review.page.trace.lanes) == 3
    QTest.keyClick(review, Qt.Key.Key_L)
    assert len(review.page.trace.lanes) == 1
    assert len(review.page.trace.lanes[0].curves) == 3


def test_events_without_a_place_can_be_stepped_through(qtbot: QtBot, window: Window, bench: Bench) -> None:
    bench.findings = lambda capture, tick: wiring_findings()
    with qtbot.waitSignal(window.session.findings_changed):
        window.open_file(Path("wiring.h5"))
    assert "Signal wiring faulty" in words(window.page.evidence)
    QTest.keyClick(window, Qt.Key.Key_N)
    QTest.keyClick(window, Qt.Key.Key_N)
    assert window.focus.passage == 1
    assert window.focus.window.contains(1.91)


def test_c_zooms_to_the_deepest_event_where_the_fault_has_no_place(
    qtbot: QtBot, window: Window, bench: Bench
) -> None:
    def deeper(_capture: Capture, _tick: Tick) -> Findings:
        found = wiring_findings()
        events = [replace(item, depth_v=-1.0 - 0.1 * place) for place, item in enumerate(found.events)]
        return replace(found, events=(*events[:2], replace(events[2], depth_v=-2.5), events[3]))

    bench.findings = deeper
    with qtbot.waitSignal(window.session.findings_changed):
        window.open_file(Path("wiring.h5"))
    QTest.keyClick(window, Qt.Key.Key_C)
    assert window.focus.passage == 2
    assert window.focus.window.length < 1.0


def test_a_switch_with_an_icon_shows_in_the_menu_that_it_is_on(qtbot: QtBot, review: Window) -> None:
    (menu,) = (item.menu() for item in review.menuBar().actions() if item.text().replace("&", "") == "View")
    assert isinstance(menu, QMenu)
    lanes = review.actions_by_name["lanes"]
    box = menu.actionGeometry(lanes)
    pictures = []
    for _ in range(2):
        menu.popup(review.mapToGlobal(QPoint(0, 0)))
        pictures.append(menu.grab(box).toImage())
        menu.close()
        lanes.trigger()
    assert pictures[0] != pictures[1]


def test_events_say_of_which_wire_they_are(qtbot: QtBot, window: Window, bench: Bench) -> None:
    bench.findings = lambda _capture, _tick: wiring_findings()
    with qtbot.waitSignal(window.session.findings_changed):
        hands.drop(window, Path("wiring.h5"))
    assert window.page.events.accessibleDescription() == "Signal"


def test_a_bad_file_gives_one_sentence_and_leaves_the_open_capture(
    qtbot: QtBot, review: Window, bench: Bench
) -> None:
    bench.refuse.add("broken.h5")
    review.settings.remember_capture(Path("broken.h5"))
    with qtbot.waitSignal(review.session.problem):
        review.open_file(Path("broken.h5"))
    assert Path("broken.h5") not in review.settings.recent
    assert review.page.problem_bar.text == "Broken.h5 is not a capture; save it from the recorder again."
    assert review.session.findings is not None
    hands.wheel(canvas(review), at_time(review, 3.0), 1)
    assert review.focus.window.length < 12.0


def test_an_unforeseen_error_in_the_examination_is_shown(qtbot: QtBot, window: Window, bench: Bench) -> None:
    def fail(capture: Capture, tick: Tick) -> Findings:
        raise ZeroDivisionError("a bug")

    bench.findings = fail
    with qtbot.waitSignal(window.session.problem):
        window.open_file(Path("worn.h5"))
    assert "ZeroDivisionError" in window.page.problem_bar.text
    assert window.focus.record is not None


def test_a_long_examination_shows_progress_and_can_be_stopped(
    qtbot: QtBot, window: Window, bench: Bench
) -> None:
    begun = threading.Event()

    def slow(capture: Capture, tick: Tick) -> Findings:
        while True:
            tick(0.4)
            begun.set()
            threading.Event().wait(0.005)

    bench.findings = slow
    window.open_file(Path("worn.h5"))
    qtbot.waitUntil(begun.is_set)
    qtbot.waitUntil(lambda: window.work.progress.value() == 400)
    assert window.work.progress.isVisible()
    window.actions_by_name["cancel"].trigger()
    qtbot.waitUntil(lambda: not window.jobs.busy())
    assert not window.work.progress.isVisible()
    assert window.session.findings is None
    assert window.page.problem_bar.text == ""
    assert "F5" in window.page.evidence.empty_text


def test_the_latest_capture_wins_and_the_others_are_closed(
    qtbot: QtBot, window: Window, bench: Bench
) -> None:
    for name in ("a.h5", "b.h5", "c.h5"):
        window.open_file(Path(name))
    qtbot.waitUntil(lambda: window.session.findings is not None and not window.jobs.busy())
    assert [item.closed for item in bench.opened].count(0) == 1


def test_closing_the_window_closes_the_file(qtbot: QtBot, review: Window, bench: Bench) -> None:
    review.close()
    assert [item.closed for item in bench.opened] == [1]


def test_every_control_has_a_name_for_a_screen_reader(review: Window) -> None:
    from PySide6.QtWidgets import QAbstractButton, QAbstractItemView, QComboBox, QProgressBar

    kinds = (QAbstractButton, QAbstractItemView, QComboBox, QProgressBar)
    nameless = [
        item
        for kind in kinds
        for item in review.findChildren(kind)
        if not item.accessibleName() and not item.objectName().startswith("qt_") and item.isVisible()
    ]
    assert nameless == []


def test_every_action_has_a_tip_that_says_its_key() -> None:
    from app.actions import SPECS

    keys = [key for spec in SPECS for key in spec.keys]
    assert len(keys) == len(set(keys))
    assert all(spec.keys and spec.tip for spec in SPECS)


def test_the_findings_of_a_stopped_examination_can_be_asked_for_again(qtbot: QtBot, review: Window) -> None:
    with qtbot.waitSignal(review.session.findings_changed):
        QTest.keyClick(review, Qt.Key.Key_F5)
    assert review.session.findings is not None
    assert review.session.findings.verdict == worn_findings().verdict
