"""A screen of 1920 x 1080 at 200 % scaling has room for 960 x 540: nothing is cut there."""

from __future__ import annotations

import contextlib
from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QFontMetricsF
from PySide6.QtTest import QTest
from PySide6.QtWidgets import (
    QApplication,
    QComboBox,
    QScrollArea,
    QStyle,
    QStyleOptionToolButton,
    QToolButton,
    QWidget,
)
from pytestqt.qtbot import QtBot

from app.main_window import Window
from app.views.band_card import BandCard
from app.views.elided_label import ElidedLabel
from app.views.fit_screen import fit_screen, keep_on_screen
from app.views.marker_tables import shortened
from app.views.trace import TraceView
from app.why.strip import ControlUnitStrip
from tests.app.conftest import Bench
from tests.app.stage import still
from tests.app.test_marker_list import deepest
from tests.app.test_pictures import bench, enter
from tests.app.tongues import worn_in

__all__ = ["bench"]  # the worn capture of a car whose heights are known

WIDTH, HEIGHT = 960, 540


@pytest.fixture(params=["en", "de"])
def small(qtbot: QtBot, qapp: QApplication, bench: Bench, request: pytest.FixtureRequest) -> Iterator[Window]:
    """The worn capture examined in a window of 960 x 540."""
    for made in worn_in(qtbot, qapp, bench, request.param):
        made.setMinimumSize(0, 0)
        made.resize(WIDTH, HEIGHT)
        yield made


def cut(page: QWidget, window: QWidget) -> list[str]:
    """Controls of a page that are narrower than what stands on them, or reach beyond what is in sight."""
    found = []
    for tool in page.findChildren(QToolButton):
        holder = tool.parentWidget()
        seen = window.rect() if holder is None else holder.rect()
        if tool.isVisible() and tool.text() and not tool.objectName().startswith("qt_"):
            whole = tool.width() >= tool.minimumSizeHint().width()
            inside = seen.left() <= tool.x() and tool.geometry().right() <= seen.right()
            if not (whole and inside):
                found.append(tool.accessibleName() or tool.text())
    for area in page.findChildren(QScrollArea):
        sheet = area.widget()
        sideways = area.horizontalScrollBarPolicy() is not Qt.ScrollBarPolicy.ScrollBarAlwaysOff
        if (
            area.isVisible()
            and sheet is not None
            and not sideways
            and sheet.width() > area.viewport().width()
        ):
            found.append(f"{area.accessibleName()}: {sheet.width()} of {area.viewport().width()}")
    return found


@pytest.mark.parametrize("screen", ["review", "record", "compared", "report", "import"])
def test_every_page_fits_and_nothing_on_it_is_cut(
    qtbot: QtBot, small: Window, tmp_path: Path, screen: str
) -> None:
    enter(qtbot, small, screen, tmp_path)
    small.resize(WIDTH, HEIGHT)
    qtbot.waitUntil(lambda: (small.width(), small.height()) == (WIDTH, HEIGHT))
    page = small.pages.currentWidget()
    assert page is not None
    with contextlib.suppress(qtbot.TimeoutError):
        qtbot.waitUntil(lambda: cut(page, small) == [])
    assert cut(page, small) == []


def test_the_name_of_the_capture_is_read_and_its_words_give_way_first(qtbot: QtBot, small: Window) -> None:
    title = small.page.title
    qtbot.waitUntil(lambda: title.width() >= title.fontMetrics().horizontalAdvance(title.text()))
    assert title.text().startswith("Ride")


def test_lanes_and_track_are_more_than_lines(qtbot: QtBot, small: Window) -> None:
    lanes = small.page.trace.lanes
    assert len(lanes) == 3
    qtbot.waitUntil(lambda: min(lane.box.size_px()[1] for lane in lanes) >= 34)
    small.page.hint_bar.show()  # with the first steps above there is less
    qtbot.waitUntil(lambda: min(lane.box.size_px()[1] for lane in lanes) >= 22)
    track = small.page.track
    top, foot = track.viewport_point(50.0, track.top_percent), track.viewport_point(50.0, 0.0)
    assert foot.y() - top.y() >= 40


def hidden(trace: TraceView) -> list[str]:
    """Names of lanes that lie over a curve, or over each other."""
    names = [name for lane in trace.lanes for name, _ in lane.names]
    boxes = [lane.box.sceneBoundingRect() for lane in trace.lanes]
    others = {name: [item.sceneBoundingRect() for item in names if item is not name] for name in names}
    return [
        name.text()
        for name in names
        if any(name.sceneBoundingRect().intersects(box) for box in (*boxes, *others[name]))
    ]


def test_names_stand_in_a_row_above_low_lanes_and_each_above_its_own_where_there_is_room(
    qtbot: QtBot, small: Window
) -> None:
    trace = small.page.trace
    qtbot.waitUntil(lambda: len({lane.names[0][0].sceneBoundingRect().top() for lane in trace.lanes}) == 1)
    qtbot.waitUntil(lambda: hidden(trace) == [])
    small.resize(1366, 768)
    qtbot.waitUntil(lambda: len({lane.names[0][0].sceneBoundingRect().top() for lane in trace.lanes}) == 3)
    qtbot.waitUntil(lambda: hidden(trace) == [])


def with_control_unit(qtbot: QtBot, window: Window) -> ControlUnitStrip:
    """The control unit under Trace, after it has run the record."""
    QTest.keyClick(window, Qt.Key.Key_U)
    strip = window.page.control_unit
    qtbot.waitUntil(lambda: len(strip.sheet.rows) > 0, timeout=20_000)
    qtbot.waitUntil(lambda: strip.height() == strip.sizeHint().height())
    return strip


def test_the_control_unit_under_trace_leaves_room_for_curves_and_track(qtbot: QtBot, small: Window) -> None:
    with_control_unit(qtbot, small)
    trace, track = small.page.trace, small.page.track
    qtbot.waitUntil(lambda: min(lane.box.size_px()[1] for lane in trace.lanes) >= 16)
    qtbot.waitUntil(lambda: hidden(trace) == [])
    top, foot = track.viewport_point(50.0, track.top_percent), track.viewport_point(50.0, 0.0)
    assert foot.y() - top.y() >= 35


def test_what_came_of_a_rule_is_never_cut(qtbot: QtBot, small: Window) -> None:
    strip = with_control_unit(qtbot, small)
    metrics = QFontMetricsF(strip.font())
    for row in strip.sheet.rows:
        whole = strip.sheet.told(row.rule)
        for width in (0.7 * metrics.horizontalAdvance(whole), 1e4):
            told = strip.sheet.told_within(row.rule, metrics, width)
            assert told.split(": ")[-1] == whole.split(": ")[-1]
        if len(whole) > 60:
            assert metrics.horizontalAdvance(strip.sheet.told_within(row.rule, metrics, 330.0)) <= 330.0


def test_the_control_unit_takes_no_more_room_than_it_fills_and_gives_it_back(
    qtbot: QtBot, small: Window
) -> None:
    small.resize(1366, 728)
    trace, track = small.page.trace, small.page.track
    qtbot.waitUntil(lambda: trace.height() + track.height() > 550)
    before = trace.height() / track.height()
    strip = with_control_unit(qtbot, small)
    qtbot.waitUntil(lambda: strip.y() - trace.geometry().bottom() <= 8)
    strip.show_codes(("AB-123",))
    lines = strip.against.heightForWidth(strip.against.width())
    qtbot.waitUntil(lambda: strip.against.height() == lines)
    QTest.keyClick(small, Qt.Key.Key_U)
    qtbot.waitUntil(lambda: trace.height() + track.height() > 550)
    qtbot.waitUntil(lambda: trace.height() / track.height() == pytest.approx(before, rel=0.02))


def test_the_note_of_the_track_is_whole_while_a_band_is_judged(qtbot: QtBot, small: Window) -> None:
    small.resize(1366, 728)
    QTest.keyClick(small, Qt.Key.Key_B)
    track = small.page.track
    note = track.findChild(ElidedLabel, "paneNote")
    assert isinstance(note, ElidedLabel)
    qtbot.waitUntil(lambda: note.shown_text() == note.text())
    if "applied" in track.accessibleDescription():  # in German there are two pixels too few
        qtbot.waitUntil(lambda: note.text() == track.accessibleDescription())
    small.resize(WIDTH, HEIGHT)
    qtbot.waitUntil(lambda: len(note.text()) < len(track.accessibleDescription()))
    qtbot.waitUntil(lambda: note.shown_text() == note.text())
    assert track.accessibleDescription() in note.toolTip()


def test_a_word_of_a_record_is_whole(qtbot: QtBot, small: Window) -> None:
    QTest.keyClick(small, Qt.Key.Key_F4)
    form = small.page.records.form
    boxes: list[QComboBox] = list(form.boxes.values())
    assert len(boxes) > 10
    for box in boxes:
        right = box.mapTo(form.viewport(), box.rect().topRight()).x()
        assert right < form.viewport().width(), box.accessibleName()


def test_a_window_of_its_own_is_never_larger_than_the_screen(qtbot: QtBot) -> None:
    widget = QWidget()
    qtbot.addWidget(widget)
    fit_screen(widget, 100_000, 100_000)
    screen = widget.screen().availableSize()
    assert widget.width() <= screen.width()
    assert widget.height() < screen.height()
    fit_screen(widget, 300, 200)
    assert (widget.width(), widget.height()) == (300, 200)


def test_a_window_as_large_as_the_screen_leaves_room_for_its_title_bar(qtbot: QtBot) -> None:
    widget = QWidget()
    qtbot.addWidget(widget)
    screen = widget.screen().availableSize()
    widget.resize(screen)
    keep_on_screen(widget)
    assert widget.width() == screen.width()
    assert (
        widget.height() <= screen.height() - 30
    )  # a title bar has some 30 pixels (common practice, no source)
    widget.showMaximized()
    before = widget.size()
    keep_on_screen(widget)
    assert widget.size() == before


def test_why_it_comes_and_goes_fits_too(qtbot: QtBot, small: Window) -> None:
    small.actions_by_name["why"].trigger()
    why = small.why.why
    assert why is not None
    why.resize(WIDTH, HEIGHT)
    assert (why.width(), why.height()) == (WIDTH, HEIGHT)
    assert cut(why, why) == []
    why.close()


def test_what_can_be_done_with_the_first_mark_is_said_whole(qtbot: QtBot, small: Window) -> None:
    small.desk.markers.mark_moment(3.0)
    markers = small.page.markers
    words = markers.accessibleDescription()
    assert "F2" in words
    below = markers._remark
    qtbot.waitUntil(lambda: bool(markers.readings.rows))
    qtbot.waitUntil(lambda: below.height() >= below.heightForWidth(below.width()))
    assert words in (markers._note.shown_text(), below.text())
    small.desk.markers.choose(None)
    small.desk.markers.step(1)
    assert words not in (markers._note.text(), below.text())
    assert "±" in below.text()


def test_the_arrow_of_a_button_stands_beside_its_icon(qtbot: QtBot, small: Window) -> None:
    run = next(
        tool
        for tool in small.page.track.findChildren(QToolButton)
        if tool.popupMode() is QToolButton.ToolButtonPopupMode.MenuButtonPopup
    )
    alone = Qt.ToolButtonStyle.ToolButtonIconOnly
    qtbot.waitUntil(lambda: run.toolButtonStyle() == alone and run.width() == run.sizeHint().width())
    option = QStyleOptionToolButton()
    run.initStyleOption(option)
    part = QStyle.SubControl.SC_ToolButtonMenu
    arrow = run.style().subControlRect(QStyle.ComplexControl.CC_ToolButton, option, part, run)
    inked = run.grab().toImage()
    ground = inked.pixel(1, inked.height() // 2)
    for column in range(arrow.left() - 1, arrow.left() + 2):
        assert {inked.pixel(column, row) for row in range(3, inked.height() - 3)} == {ground}


def test_the_edges_of_a_band_are_typed_without_making_evidence_wider_than_it_is(
    qtbot: QtBot, small: Window
) -> None:
    for action in ("next_band", "accept", "adjust"):
        small.actions_by_name[action].trigger()
    area = small.page.evidence.rows_area
    sheet, card = area.widget(), small.page.evidence.findChild(BandCard)
    assert sheet is not None
    assert card is not None
    qtbot.waitUntil(card.start.isVisible)
    still(qtbot, small)  # the layout is done
    assert sheet.width() <= area.viewport().width()
    hint = card.how_it_ends
    assert hint.text() in ("Enter takes it, Esc gives it up", "Enter übernimmt, Esc verwirft")
    assert hint.width() >= hint.fontMetrics().horizontalAdvance(hint.text())
    assert hint.visibleRegion().boundingRect() == hint.rect()
    assert card.start.mapTo(card, QPoint(0, 0)).y() >= card.said.geometry().bottom() + 5


def test_time_drop_and_its_uncertainty_are_whole_in_the_list_and_the_readings(
    qtbot: QtBot, small: Window
) -> None:
    small.desk.markers.mark_moment(deepest()[0])
    view = small.page.markers
    qtbot.waitUntil(lambda: "±" in view.rows[0].reads)
    table, metrics, row = view.table, view.table.fontMetrics(), view.rows[0]
    qtbot.waitUntil(lambda: table.columnWidth(2) >= table.sizeHintForColumn(2))
    time = shortened(row, table.columnWidth(1) - 12, metrics).rpartition(" · ")[2]
    assert time.endswith(" s")
    assert table.columnWidth(1) >= metrics.horizontalAdvance(time) + 12
    assert sum(table.columnWidth(column) for column in range(3)) <= table.viewport().width()
    assert row.reads.split(" ", 1)[1] in table.model().index(0, 2).data()
    spoken = table.model().index(0, 2).data(Qt.ItemDataRole.AccessibleTextRole)
    assert spoken.endswith(row.reads)
    assert view.grid.columnWidth(0) >= view.grid.sizeHintForColumn(0)
    assert view.grid.columnWidth(0) <= view.grid.viewport().width()
