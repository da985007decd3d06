"""Bands, markers and coverage read in millimetres of wheel travel where heights are known, and only there."""

from __future__ import annotations

import csv
import io
import math
from dataclasses import replace
from pathlib import Path
from typing import cast

import pytest
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QGraphicsView, QGraphicsWidget, QStyleOptionViewItem
from pytestqt.qtbot import QtBot

from analysis.diagnosis.findings import Findings
from analysis.intervals import Interval
from app.drawing.axes import QuietAxis
from app.main_window import Window
from app.views.marker_tables import PlaceDelegate
from tests.app.conftest import Bench
from tests.app.fakes import worn_capture, worn_findings
from tests.app.stage import still


def by_hand_mm(travel_percent: float) -> float:
    """The profile's arm of 127 mm over 90 degrees, level at 50 %, from the normal height at 52.5 %."""
    turned = [math.sin(math.radians((item - 50.0) * 0.9)) for item in (travel_percent, 52.5)]
    return 127.0 * (turned[0] - turned[1])


@pytest.fixture
def bench(request: pytest.FixtureRequest) -> Bench:
    """The worn capture; of a car whose heights are known, unless a test says otherwise."""
    capture = worn_capture()
    if getattr(request, "param", "known") == "unknown":
        return Bench(capture=capture)
    profile = {"profile": "halvorsen-tern-rear-left"}
    return Bench(capture=replace(capture, attributes={**capture.attributes, **profile}))


def copied() -> list[dict[str, str]]:
    heads, *rows = list(csv.reader(io.StringIO(QGuiApplication.clipboard().text())))
    return [dict(zip(heads, row, strict=True)) for row in rows]


def test_a_stretch_of_travel_reads_in_the_table_and_in_the_copied_csv(qtbot: QtBot, review: Window) -> None:
    review.desk.markers.mark_stretch(Interval(30.0, 40.0))
    qtbot.waitUntil(lambda: bool(review.page.markers.readings.rows))
    low, high = (round(by_hand_mm(item)) for item in (30.0, 40.0))
    said = f"{low} to {high} mm".replace("-", "\N{MINUS SIGN}")
    assert review.page.markers.rows[0].where.endswith(said)
    assert ("Height", (said,)) in review.page.markers.readings.rows
    assert "mm of wheel travel from the normal height" in review.page.markers.readings.remark
    review.actions_by_name["copy_csv"].trigger()
    (row,) = copied()
    assert float(row["Height from / mm"]) == pytest.approx(by_hand_mm(30.0), abs=0.01)
    assert float(row["Height to / mm"]) == pytest.approx(by_hand_mm(40.0), abs=0.01)
    assert row["Travel / %"] == ""


def test_a_point_says_where_arm_and_wheel_were(qtbot: QtBot, review: Window) -> None:
    review.desk.markers.mark_moment(4.0)
    qtbot.waitUntil(lambda: bool(review.page.markers.readings.rows))
    rows = dict(review.page.markers.readings.rows)
    travel_percent = review.arm.travel(4.0)
    assert travel_percent is not None
    height = f"{by_hand_mm(travel_percent):.0f} mm".replace("-", "\N{MINUS SIGN}")
    assert rows["Travel"] == (f"{travel_percent:.1f} %",)
    assert rows["Height"] == (height,)
    assert review.page.markers.rows[0].where.endswith(height)
    review.actions_by_name["copy_csv"].trigger()
    first = copied()[0]
    assert float(first["Travel / %"]) == pytest.approx(travel_percent, abs=0.01)
    assert float(first["Height from / mm"]) == pytest.approx(by_hand_mm(travel_percent), abs=0.01)
    assert first["Height to / mm"] == ""


def test_a_point_in_a_record_at_rest_says_where_the_arm_rested(
    qtbot: QtBot, window: Window, bench: Bench
) -> None:
    # The signal there is 59 % of the feed: only what was found says otherwise.
    bench.findings = lambda capture, tick: rested_at(44.0, worn_findings(capture, tick))
    with qtbot.waitSignal(window.session.findings_changed):
        window.open_file(Path("worn.h5"))
    window.focus.show_record("003")
    window.desk.markers.mark_moment(1.5)
    qtbot.waitUntil(lambda: bool(window.page.markers.readings.rows))
    assert dict(window.page.markers.readings.rows)["Travel"] == ("44.0 %",)


def rested_at(travel_percent: float, findings: Findings) -> Findings:
    """The same, with an arm that rested at another place."""
    (survey,) = findings.surveys
    moved = [replace(item, travel_percent=0.0 * item.time_s + travel_percent) for item in survey.resting]
    return replace(findings, surveys=(replace(survey, resting=tuple(moved)),))


def test_a_span_of_time_has_no_place(qtbot: QtBot, review: Window) -> None:
    review.desk.markers.mark_time(Interval(1.0, 2.0))
    qtbot.waitUntil(lambda: bool(review.page.markers.readings.rows))
    assert "Height" not in dict(review.page.markers.readings.rows)
    assert "mm" not in review.page.markers.rows[0].where


def test_the_reading_at_the_pointer_says_where_the_wheel_is(qtbot: QtBot, review: Window) -> None:
    review.focus.point(4.0)
    travel_percent = review.arm.travel(4.0)
    assert travel_percent is not None
    height = f"{by_hand_mm(travel_percent):.0f} mm from normal height".replace("-", "\N{MINUS SIGN}")
    assert height in review.readout.plain_text()
    review.page.track.pointed.emit(45.0)
    height = f"{by_hand_mm(45.0):.0f} mm from normal height".replace("-", "\N{MINUS SIGN}")
    assert height in review.readout.plain_text()


def test_the_travel_tested_has_a_scale_of_millimetres(review: Window) -> None:
    told = review.page.track.height_scale([0.0, 52.5, 100.0])
    assert told[1] == "0 mm"
    assert told[0].startswith("\N{MINUS SIGN}")
    assert told[2] == f"{by_hand_mm(100.0):.0f} mm"


def test_other_heights_are_shown_at_once(review: Window) -> None:
    review.desk.markers.mark_stretch(Interval(30.0, 40.0))
    before = review.page.markers.rows[0].where, review.page.track.height_scale([40.0])
    review.actions_by_name["why"].trigger()
    why = review.why.why
    assert why is not None
    why.heights.normal.setValue(45.0)
    after = review.page.markers.rows[0].where, review.page.track.height_scale([40.0])
    assert before[0] != after[0]
    assert before[1] != after[1]


@pytest.mark.parametrize("bench", ["unknown"], indirect=True)
def test_without_heights_nothing_is_said_in_millimetres(qtbot: QtBot, review: Window) -> None:
    review.desk.markers.mark_moment(4.0)
    qtbot.waitUntil(lambda: bool(review.page.markers.readings.rows))
    rows = dict(review.page.markers.readings.rows)
    assert "Height" not in rows
    assert "Travel" in rows
    review.focus.point(4.0)
    assert " mm" not in review.readout.plain_text()
    assert review.page.track.height_scale([40.0]) == []
    review.actions_by_name["copy_csv"].trigger()
    assert copied()[0]["Height from / mm"] == ""


def shown_place(window: Window) -> str:
    """What the list has room for of where the last marker is."""
    table = window.page.markers.table
    index = table.model().index(len(window.page.markers.rows) - 1, 1)
    option = QStyleOptionViewItem()
    option.initFrom(table)
    option.rect = table.visualRect(index)
    delegate = table.itemDelegateForIndex(index)
    assert isinstance(delegate, PlaceDelegate)
    delegate.initStyleOption(option, index)
    return option.text


def test_of_a_place_without_room_the_last_part_is_left_out_and_no_figure_is_cut(
    qtbot: QtBot, review: Window
) -> None:
    review.desk.markers.mark_moment(4.0)
    qtbot.waitUntil(lambda: bool(review.page.markers.readings.rows))
    (marker,) = review.page.markers.rows
    whole = marker.where
    assert whole.count(" · ") == 2
    assert shown_place(review) == whole
    review.desk.markers.rename(marker.marker_id, "signal is gone here")
    assert review.page.markers.rows[0].where == whole
    assert shown_place(review) == whole.rpartition(" · ")[0]


def test_the_scale_of_millimetres_is_there_again_after_the_track_was_too_low_for_it(
    qtbot: QtBot, review: Window
) -> None:
    track = review.page.track
    scene = cast(QGraphicsView, track.plots).scene()
    (turned,) = [item for item in scene.items() if isinstance(item, QuietAxis) and item.is_turned]
    scale = cast(QGraphicsWidget, turned)
    before_px, whole_px = scale.size().height(), track.height()
    assert before_px >= 17
    for height_px in (150, whole_px):
        track.setFixedHeight(height_px)
        still(qtbot, review)
        assert scale.isVisible() == (height_px == whole_px)
    assert scale.size().height() == before_px
