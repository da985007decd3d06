"""The cursor stands where a crossing breaks up most: a marker there reads the drop, and lanes keep it."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import numpy as np
import pytest
from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from analysis.captures.model import Record, Role
from analysis.review.model import PointMarker
from app.main_window import Window
from app.review.deepest import deepest_s
from app.settings import MemoryStore, Settings
from app.tools import real_tools
from tests.app import hands
from tests.app.fakes import worn_capture, worn_findings
from tests.app.hands import copy_of_sample
from tests.app.real_files import shown


def _furthest_v(record: Record, start_s: float, stop_s: float) -> tuple[float, float]:
    """Lowest voltage of the signal between two moments, and when, straight from the samples."""
    signal = record.channel(Role.SIGNAL)
    assert signal is not None
    first, last = record.index_at(start_s), record.index_at(stop_s) + 1
    volts_v = signal.volts(first, last)
    lowest = int(np.nanargmin(volts_v))
    return float(volts_v[lowest]), record.first_sample_s + (first + lowest) * record.sample_interval_s


@pytest.fixture
def real(qtbot: QtBot) -> Iterator[Window]:
    """A window of the program's own tools."""
    yield from shown(qtbot, Window(real_tools(), Settings(MemoryStore())))


def test_a_marker_at_the_worst_crossing_reads_its_deepest_sample(
    qtbot: QtBot, real: Window, tmp_path: Path
) -> None:
    with qtbot.waitSignal(real.session.findings_changed, timeout=20_000):
        real.open_file(copy_of_sample("W1041-rear-left-height.h5", tmp_path))
    QTest.keyClick(real, Qt.Key.Key_C)
    focus = real.focus
    assert focus.record is not None
    assert focus.passage is not None
    time = focus.passages[focus.passage].time
    lowest_v, _ = _furthest_v(focus.record, time.start, time.stop)
    QTest.keyClick(real, Qt.Key.Key_M)
    (marker,) = real.desk.keeper.review.markers
    assert isinstance(marker, PointMarker)
    there_v, _ = _furthest_v(focus.record, marker.time_s, marker.time_s)
    # The arm moves on while the contact is lost: the deepest drop is not the lowest voltage to the last step.
    assert there_v == pytest.approx(lowest_v, abs=0.05)


def test_m_marks_the_deepest_place_while_the_pointer_rests_and_the_pointer_once_it_moves(
    review: Window,
) -> None:
    page, focus = review.page, review.focus
    resting = page.trace.viewport_point(focus.window.start + 0.2 * focus.window.length).toPoint()
    hands.point(page.trace.canvas, resting)
    QTest.keyClick(review, Qt.Key.Key_C)
    deepest_s = focus.moment_s
    assert deepest_s is not None
    for tremor in (QPoint(0, 0), QPoint(2, 1)):
        hands.point(page.trace.canvas, resting + tremor)
    assert focus.moment_s == deepest_s
    QTest.keyClick(review, Qt.Key.Key_M)
    assert focus.record is not None
    step_s = focus.record.sample_interval_s
    (marker,) = review.keeper.review.markers
    assert isinstance(marker, PointMarker)
    assert marker.time_s == pytest.approx(deepest_s, abs=step_s)
    hands.point(page.trace.canvas, resting + QPoint(30, 0))
    QTest.keyClick(review, Qt.Key.Key_M)
    _, other = review.keeper.review.markers
    assert isinstance(other, PointMarker)
    assert other.time_s == pytest.approx(page.trace.time_under(QPointF(resting + QPoint(30, 0))), abs=step_s)


def test_a_crossing_that_is_double_clicked_is_marked_where_it_is_deepest(review: Window) -> None:
    page, focus = review.page, review.focus
    time = focus.passages[0].time
    assert focus.record is not None
    assert focus.passages[0].record == focus.record.name
    spot = page.trace.viewport_point(time.start + 0.2 * time.length).toPoint()
    hands.point(page.trace.canvas, spot)
    hands.double_click(page.trace.canvas, spot)
    deepest_s = focus.moment_s
    hands.point(page.trace.canvas, spot + QPoint(1, 0))
    assert focus.passage == 0
    assert focus.moment_s == deepest_s


def test_lanes_and_one_axis_show_the_same_markers(review: Window) -> None:
    QTest.keyClick(review, Qt.Key.Key_C)
    QTest.keyClick(review, Qt.Key.Key_M)
    before = review.page.trace.marks.marks
    assert before
    for _ in range(2):
        QTest.keyClick(review, Qt.Key.Key_L)
        assert review.page.trace.marks.marks == before


def test_where_the_path_is_not_known_the_cursor_stands_in_the_middle() -> None:
    capture, findings = worn_capture(), worn_findings()
    time = findings.bands[0].crossings[0].time
    assert deepest_s(findings, capture.record("001"), 0, time) == time.centre
