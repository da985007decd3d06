"""The list of markers: name, place and the one figure that says most; and the line beside the first mark."""

from __future__ import annotations

import csv
import io
from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLineEdit
from pytestqt.qtbot import QtBot

from analysis.captures.model import Channel, Role
from analysis.intervals import Interval
from analysis.review.model import TravelSpan
from analysis.review.readings import TravelReadings
from app.main_window import Window
from app.review.marker_rows import brief
from app.review.marker_sheet import rows
from app.review.marker_words import Grid
from app.settings import MemoryStore, Settings
from app.settings_file import SettingsFile
from app.views.marker_tables import MarkerRow, shortened
from tests.app.fakes import BAND, RATE_HZ, SWEEP_S, worn_capture, worn_findings

MARKS = "Drag moves it, F2 names it, Del deletes it"


def signal() -> Channel:
    """The signal of the first sweep."""
    channel = worn_capture().records[3].channel(Role.SIGNAL)
    assert channel is not None
    return channel


def deepest() -> tuple[float, float]:
    """When the first sweep lies furthest below 5 V times the arm's place, and by how many volts."""
    read_v = signal().volts(0, len(signal()))
    time_s = np.arange(read_v.size) / RATE_HZ
    belongs_v = 5.0 * (0.50 - 0.42 * np.cos(np.pi * time_s / SWEEP_S))
    worst = int(np.argmax(belongs_v - read_v))
    return float(time_s[worst]), float((belongs_v - read_v)[worst])


def row(window: Window) -> MarkerRow:
    return window.page.markers.rows[-1]


def head(window: Window) -> str:
    """What stands beside the title of the list."""
    return window.page.markers.accessibleDescription()


def read(qtbot: QtBot, window: Window) -> None:
    qtbot.waitUntil(lambda: all(item.reads != "–" for item in window.page.markers.rows))


def test_a_point_where_nothing_drops_is_listed_by_its_level(qtbot: QtBot, review: Window) -> None:
    review.desk.markers.mark_moment(0.1)
    read(qtbot, review)
    level_v = float(signal().volts(1000, 1001)[0])
    assert row(review).reads == f"{level_v:.3f} V"


def test_a_span_is_listed_by_its_height_and_reads_how_long_it_is(qtbot: QtBot, review: Window) -> None:
    review.desk.markers.mark_time(Interval(0.5, 1.5))
    read(qtbot, review)
    height_v = float(np.ptp(signal().volts(5000, 15_000)))
    assert row(review).reads == f"{height_v:.3f} V p–p"
    readings = dict(review.page.markers.readings.rows)
    assert readings["Duration"][0] == "1 s"
    assert readings["Samples"][0] == "10000"


def test_a_name_and_the_figure_stay_whole_in_the_list_and_the_place_gives_way(
    qtbot: QtBot, review: Window
) -> None:
    review.desk.markers.mark_moment(deepest()[0])
    review.desk.markers.rename(row(review).marker_id, "worst drop of all")
    read(qtbot, review)
    table = review.page.markers.table
    assert row(review).label == "worst drop of all"
    for column in (0, 2):
        assert table.columnWidth(column) >= min(table.sizeHintForColumn(column), 190)
    widths = sum(table.columnWidth(column) for column in range(3))
    assert widths <= table.viewport().width()


def test_what_is_not_read_yet_is_a_dash() -> None:
    assert brief(None) == "–"


def by_key(window: Window) -> None:
    window.focus.point(3.0)
    QTest.keyClick(window, Qt.Key.Key_M)


def by_span(window: Window) -> None:
    window.desk.markers.mark_time(Interval(0.5, 1.5))


def by_stretch(window: Window) -> None:
    window.desk.markers.mark_stretch(BAND)


@pytest.mark.parametrize("place", [by_key, by_span, by_stretch])
def test_the_first_mark_ever_is_told_what_can_be_done_with_it_and_no_later_one(
    qtbot: QtBot, review: Window, place: Callable[[Window], None]
) -> None:
    place(review)
    read(qtbot, review)
    assert head(review) == MARKS  # also after it was read, which shows the list anew
    assert QApplication.activeModalWidget() is None
    review.desk.markers.mark_moment(5.0)
    assert head(review) == "2"


@pytest.mark.parametrize(
    "act",
    [
        lambda window: QTest.keyClick(window, Qt.Key.Key_Delete),
        lambda window: QTest.keyClick(window, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier),
        lambda window: QTest.keyClick(window, Qt.Key.Key_Escape),
        lambda window: QTest.keyClick(window, Qt.Key.Key_C),
        lambda window: window.desk.markers.rename(row(window).marker_id, "here"),
        lambda window: window.desk.markers.move(row(window).marker_id, 4.0),
        lambda window: window.focus.show_record("005"),
    ],
    ids=["delete", "undo", "let go", "next crossing", "rename", "move", "another record"],
)
def test_the_line_is_gone_after_the_next_thing_that_is_done(
    review: Window, act: Callable[[Window], object]
) -> None:
    by_key(review)
    assert head(review) == MARKS
    act(review)
    assert head(review) == (str(len(review.page.markers.rows)) if review.page.markers.rows else "")


def test_pointing_and_zooming_leave_the_line_to_be_read(review: Window) -> None:
    by_key(review)
    review.focus.point(2.0)
    review.focus.show_window(Interval(1.0, 3.0))
    assert head(review) == MARKS


def test_that_it_was_told_is_kept_for_the_next_time(tmp_path: Path) -> None:
    kept = tmp_path / "settings.json"
    settings = Settings(SettingsFile(kept))
    assert not settings.told_of_marks
    settings.told_of_marks = True
    assert Settings(SettingsFile(kept)).told_of_marks
    assert not Settings(MemoryStore()).told_of_marks


def test_who_was_told_another_day_is_not_told_again(review: Window) -> None:
    review.settings.told_of_marks = True
    by_key(review)
    assert head(review) == "1"


def test_the_keys_named_are_those_that_do_it(review: Window) -> None:
    by_key(review)
    names = [review.actions_by_name[name] for name in ("rename_marker", "delete_marker")]
    assert all(action.shortcut().toString() in head(review) and action.isEnabled() for action in names)


@pytest.mark.parametrize("end", [Qt.Key.Key_Return, Qt.Key.Key_Escape])
def test_after_a_note_the_keyboard_is_where_it_was_and_escape_gives_up_what_is_half_typed(
    qtbot: QtBot, review: Window, end: Qt.Key
) -> None:
    by_key(review)
    note, before = review.page.markers.note, review.page.records.list
    review.desk.markers.note(row(review).marker_id, "seen twice")
    before.setFocus()
    QTest.keyClick(review, Qt.Key.Key_F2, Qt.KeyboardModifier.ShiftModifier)
    qtbot.waitUntil(note.hasFocus)
    QTest.keyClicks(note, "seen th")
    QTest.keyClick(note, end)
    assert before.hasFocus()
    assert row(review).note == ("seen th" if end == Qt.Key.Key_Return else "seen twice")
    assert review.desk.markers.chosen is not None


def test_the_chosen_marker_stays_in_sight_when_its_readings_take_the_room(
    qtbot: QtBot, review: Window
) -> None:
    for number in range(7):
        review.desk.markers.mark_time(Interval(0.5 + number, 1.0 + number))
        read(qtbot, review)
        table = review.page.markers.table
        qtbot.waitUntil(review.page.markers.grid.isVisible)
        chosen = table.visualRect(table.currentIndex())
        assert table.currentIndex().row() == number
        assert table.viewport().rect().contains(chosen.center())
        assert chosen.bottom() <= table.viewport().rect().bottom()


@pytest.mark.parametrize("width_px", [1366, 1920])
def test_no_figure_is_cut_whatever_was_shown_before(qtbot: QtBot, review: Window, width_px: int) -> None:
    review.desk.markers.mark_moment(1.0)
    read(qtbot, review)
    view, (marker,) = review.page.markers, review.page.markers.rows
    figures = ("0.127 ± 0.012", "2.681 ± 0.020", "2.554 ± 0.015")
    heads = ("Mean", "RMS", "Minimum", "Maximum", "Peak–peak", "Noise, mV", "Samples", "Duration")
    span = Grid(
        ("Signal, V", "Reference, V", "Ground, mV"),
        tuple((head, (figures[at % 3], "0.015 ± 0.004", "15 ± 4")) for at, head in enumerate(heads)),
    )
    view.show_markers((marker,), marker.marker_id, span)
    review.resize(width_px, 768)
    qtbot.waitUntil(lambda: view.grid.columnWidth(0) >= view.grid.sizeHintForColumn(0))
    widths = [view.grid.columnWidth(column) for column in range(3)]
    assert all(width >= view.grid.sizeHintForColumn(column) for column, width in enumerate(widths))
    assert sum(widths) <= view.grid.viewport().width()


def test_the_keyboard_on_the_list_is_shown_beside_every_row_and_the_chosen_one(
    qtbot: QtBot, review: Window
) -> None:
    by_key(review)
    by_key(review)
    table = review.page.markers.table
    table.setFocus()
    qtbot.waitUntil(table.hasFocus)
    picture, edge = table.grab().toImage(), review.page.markers._model.palette.choice
    for line in range(2):
        middle = table.visualRect(table.model().index(line, 0)).center().y()
        assert picture.pixelColor(0, table.viewport().y() + middle).name() == edge.lower()


def copied() -> list[dict[str, str]]:
    heads, *cells = list(csv.reader(io.StringIO(QGuiApplication.clipboard().text())))
    return [dict(zip(heads, line, strict=True)) for line in cells]


def test_what_is_copied_holds_what_the_list_and_the_readings_show(qtbot: QtBot, review: Window) -> None:
    time_s, drop_v = deepest()
    review.desk.markers.mark_moment(time_s)
    read(qtbot, review)
    shown = dict(review.page.markers.readings.rows)
    review.desk.markers.mark_stretch(BAND)
    read(qtbot, review)
    shown |= dict(review.page.markers.readings.rows)
    review.actions_by_name["copy_csv"].trigger()
    *point, stretch = copied()
    assert [line["Channel"] for line in point] == ["Signal", "Reference", "Ground"]  # as they are shown
    drop, spread, belongs = (
        float(point[0][head])
        for head in (
            "Drop of the signal (negative: rise) / V",
            "± of the drop (k = 2) / V",
            "What it should read / V",
        )
    )
    assert drop == pytest.approx(drop_v, abs=0.015)
    digits = len(shown["Drop"][0].split()[0].partition(".")[2])
    assert shown["Drop"] == (f"{drop:.{digits}f} ± {spread:.{digits}f} V",)
    assert belongs == pytest.approx(float(shown["Should read"][0].split()[0]), abs=0.006)
    assert point[0]["Drop in words"] == ""
    low, high = (float(stretch[f"Expect it {end} / % of crossings"]) for end in ("from", "to"))
    assert shown["Expect it on"] == (f"{low:.0f}–{high:.0f} % of crossings",)


@pytest.mark.parametrize("action", ["copy_csv", "copy_markers"])
def test_that_markers_were_copied_is_said(review: Window, action: str) -> None:
    by_key(review)
    review.actions_by_name[action].trigger()
    assert review.statusBar().currentMessage() == "1 marker copied"
    by_span(review)
    review.actions_by_name[action].trigger()
    assert review.statusBar().currentMessage() == "2 markers copied"


def test_a_stretch_whose_voltages_are_known_is_copied_with_them() -> None:
    band = replace(worn_findings().bands[0], volts=Interval(2.12, 2.45))
    marker = TravelSpan("a", Role.SIGNAL, BAND, "1")
    heads, line = rows([marker], {"a": TravelReadings(band, Interval(0.8, 1.0))}, {})
    told = dict(zip(heads, line, strict=True))
    assert (told["Volts from / V"], told["Volts to / V"]) == (2.12, 2.45)
    assert told["Expect it from / % of crossings"] == pytest.approx(80.0)


def test_where_there_is_little_room_the_time_stays_and_the_name_of_the_record_gives_way(
    review: Window,
) -> None:
    metrics = review.page.markers.table.fontMetrics()
    line = MarkerRow("a", "mark_point", "Point", "1", "Sweep 1 · 3.293 s · −18 mm", "", "", "Sweep 1")

    def room_for(text: str) -> int:
        return metrics.horizontalAdvance(text)

    assert shortened(line, room_for(line.where), metrics) == line.where
    assert shortened(line, room_for(line.where) - 1, metrics) == "Sweep 1 · 3.293 s"
    narrow = shortened(line, room_for("Sweep 1 · 3.293 s") - 1, metrics)
    assert narrow.startswith("Sw")
    assert narrow.endswith("… · 3.293 s")
    assert shortened(line, room_for("3.293 s"), metrics) == "3.293 s"


def test_heads_are_cut_by_no_more_than_is_missing(qtbot: QtBot, review: Window) -> None:
    by_span(review)
    read(qtbot, review)
    view, (marker,) = review.page.markers, review.page.markers.rows
    heads = ("Signal, V", "Second signal of the pedal, V", "Ground, mV")
    view.show_markers((marker,), marker.marker_id, Grid(heads, (("Mean", ("2.4", "1.2", "14")),)))
    header = view.grid.horizontalHeader()
    widths = [header.sectionSize(column) for column in range(3)]
    assert sum(widths) == view.width() - 22 - view.grid.verticalHeader().sizeHint().width()
    view._readings.cut_heads(False)
    whole = [header.sectionSizeHint(column) for column in range(3)]
    assert sum(whole) > sum(widths)  # there is too little room for all of them
    assert widths[0] == whole[0]
    assert widths[1] > 66


@pytest.mark.parametrize("end", [Qt.Key.Key_Return, Qt.Key.Key_Escape])
def test_after_a_name_the_keyboard_is_where_it_was(qtbot: QtBot, review: Window, end: Qt.Key) -> None:
    by_key(review)
    table, before = review.page.markers.table, review.page.records.list
    before.setFocus()
    QTest.keyClick(review, Qt.Key.Key_F2)
    editor = table.findChild(QLineEdit)
    assert editor is not None
    qtbot.waitUntil(editor.hasFocus)
    QTest.keyClicks(editor, "gone")
    QTest.keyClick(editor, end)
    qtbot.waitUntil(before.hasFocus)
    assert row(review).label == ("gone" if end == Qt.Key.Key_Return else "1")
    assert review.desk.markers.chosen is not None


def test_a_long_name_leaves_room_for_the_times_of_a_span(qtbot: QtBot, review: Window) -> None:
    for number in range(5):  # more than there is room for: the list scrolls
        review.desk.markers.mark_time(Interval(9.1234 + 0.1 * number, 11.4321))
    review.desk.markers.rename(row(review).marker_id, "here the customer said that the lamp came on")
    read(qtbot, review)
    table, line = review.page.markers.table, row(review)
    place = line.where.removeprefix(f"{line.record} · ")
    qtbot.waitUntil(lambda: table.columnWidth(1) >= table.fontMetrics().horizontalAdvance(place) + 12)
    assert shortened(line, table.columnWidth(1) - 12, table.fontMetrics()).endswith(place)
    assert sum(table.columnWidth(column) for column in range(3)) <= table.viewport().width()
