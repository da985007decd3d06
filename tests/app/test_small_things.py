"""Small things that a hand or an eye stumbles over."""

from __future__ import annotations

import threading
from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from analysis.captures.model import Capture
from analysis.diagnosis.findings import Findings
from analysis.progress import Tick
from app.drawing.row_delegate import ROW_ROLE
from app.main_window import Window
from app.settings import MemoryStore, Settings
from app.tools import real_tools
from tests.app import hands
from tests.app.conftest import Bench
from tests.app.fakes import nothing_found, wiring_findings
from tests.app.real_files import shown


def test_records_take_no_more_room_than_their_rows_while_they_are_examined(
    qtbot: QtBot, tmp_path: Path
) -> None:
    held = threading.Event()

    def examined(_capture: Capture, _tick: Tick) -> Findings:
        held.wait(20.0)
        return nothing_found()

    made = Window(replace(real_tools(), examine=examined), Settings(MemoryStore()))
    records = made.page.records
    for window in shown(qtbot, made):
        try:
            window.open_file(hands.copy_of_sample("W1041-rear-left-height.h5", tmp_path))
            qtbot.waitUntil(lambda: records.list.model().rowCount() == 7)
            # Beside a scroll bar, which was there for a moment, one of the rows wrapped and left a gap.
            qtbot.waitUntil(lambda: 0 < records.height() <= records.wanted_height())
            assert not records.list.verticalScrollBar().isVisible()
        finally:
            held.set()


def test_the_wheel_over_the_overview_zooms_at_the_pointer(qtbot: QtBot, review: Window) -> None:
    overview, focus = review.page.overview, review.focus
    at_s = 4.0
    spot = QPoint(round(overview.x_of(at_s)), overview.height() // 2)
    hands.wheel(overview, spot, 3)
    assert focus.window.length == pytest.approx(12.0 * 0.8**3)
    share = (at_s - focus.window.start) / focus.window.length
    assert share == pytest.approx(at_s / 12.0, abs=0.01)
    hands.wheel(overview, spot, -5)
    assert focus.window.length == pytest.approx(12.0)


def test_a_drop_says_by_its_name_which_way_it_went(qtbot: QtBot, window: Window, bench: Bench) -> None:
    found = wiring_findings()
    rise, spike = (replace(found.events[at], shape=shape) for at, shape in ((1, "rise"), (2, "spike")))
    bench.findings = lambda capture, tick: replace(
        found, events=(found.events[0], replace(rise, depth_v=1.2), spike)
    )
    with qtbot.waitSignal(window.session.findings_changed):
        window.open_file(Path("wiring.h5"))
    model = window.page.events.list.model()
    rows = [model.index(place, 0).data(ROW_ROLE) for place in range(model.rowCount())]
    assert [row.reading for row in rows if row.reading] == ["drop 1.8 V", "rise 1.2 V", "spike −1.8 V"]


def test_markers_give_their_room_back_at_once_when_none_is_chosen_any_more(
    qtbot: QtBot, review: Window
) -> None:
    pane = review.page.markers
    hands.point(review.page.trace.canvas, review.page.trace.viewport_point(2.0).toPoint())
    QTest.keyClick(review, Qt.Key.Key_M)
    qtbot.waitUntil(lambda: bool(pane.readings.rows))
    qtbot.waitUntil(lambda: pane.height() >= pane.wanted_height() > 150)
    QTest.keyClick(review, Qt.Key.Key_B)  # a band takes the place of the chosen marker
    qtbot.waitUntil(lambda: pane.height() < 100)


def test_two_fingers_on_a_pad_zoom_trace_and_track_at_the_pointer(qtbot: QtBot, review: Window) -> None:
    trace, track, focus = review.page.trace, review.page.track, review.focus
    hands.pinch(trace.canvas, trace.viewport_point(4.0).toPoint(), 0.25)
    assert focus.window.length == pytest.approx(12.0 / 1.25)
    assert (4.0 - focus.window.start) / focus.window.length == pytest.approx(4.0 / 12.0, abs=0.01)
    hands.pinch(track.canvas, track.viewport_point(45.0, 10.0).toPoint(), 1.0)
    assert track.span.length == pytest.approx(50.0)
    assert (45.0 - track.span.start) / 50.0 == pytest.approx(0.45, abs=0.01)
    hands.pinch(track.canvas, track.viewport_point(45.0, 10.0).toPoint(), -0.5)
    assert track.span.length == pytest.approx(100.0)
