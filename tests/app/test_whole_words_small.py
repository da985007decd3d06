"""On a screen of 1920 x 1080 at 200 %, in German, no word is cut where another layout or shorter words do."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QFontMetrics, QFontMetricsF
from PySide6.QtWidgets import (
    QApplication,
    QComboBox,
    QLabel,
    QLineEdit,
    QStyle,
    QStyleOptionComboBox,
    QTableView,
    QWidget,
)
from pytestqt.qtbot import QtBot

from app.drawing.row_delegate import ROW_ROLE, Row, reading_within, room_for_text
from app.views.marker_tables import shortened
from app.words import shape_name
from tests.app import hands
from tests.app.stage import Stage, stage_for, still
from tests.app.states_of_review import contested, markers

WIDTH, HEIGHT = 960, 540
WORN, SOUND = "W1041-rear-left-height.h5", "W1041-rear-left-height-new-sensor.h5"


@pytest.fixture
def small(qtbot: QtBot, qapp: QApplication, tmp_path: Path) -> Iterator[Stage]:
    """A window of 960 x 540 that speaks German, on real samples."""
    with stage_for(qtbot, qapp, tmp_path, "de", "dark") as stage:
        stage.window.setMinimumSize(0, 0)
        stage.window.resize(WIDTH, HEIGHT)
        yield stage
        assert stage.window.width() == WIDTH


@pytest.mark.parametrize("shape", ["drop", "rise", "ringing", "spike"])
def test_the_shape_and_the_depth_of_an_event_are_whole_beside_its_time(small: Stage, shape: str) -> None:
    small.open("W1063-rear-right-height.h5")
    rows = small.window.page.events.list
    still(small.qtbot, small.window)
    assert rows.verticalScrollBar().isVisible()
    depth = "469 mV" if shape in ("drop", "rise") else "−469 mV"  # the one says by its name which way
    row = Row("12,29 s", "", f"{shape_name(shape)} {depth}", "fail", "bad")
    room_px = room_for_text(row, rows.visualRect(rows.rows.index(1, 0)).width() - 2)
    assert reading_within(row, room_px, QFontMetricsF(rows.font())) == row.reading


def test_an_event_says_all_of_it_in_its_tip(small: Stage) -> None:
    small.open("W1063-rear-right-height.h5")
    model = small.window.page.events.list.rows
    shown = [model.item(at) for at in range(model.rowCount()) if model.item(at).data(ROW_ROLE).reading]
    assert shown
    assert all(item.data(ROW_ROLE).reading in item.toolTip() for item in shown)


def cut_cells(table: QTableView) -> list[str]:
    """Cells of a table whose words are wider than their column, or higher than their row."""
    model, found = table.model(), []
    for row in range(model.rowCount()):
        for column in range(model.columnCount()):
            place = model.index(row, column)
            text = str(place.data() or "")
            room = table.visualRect(place).adjusted(3, 0, -3, 0)
            metrics = QFontMetrics(place.data(Qt.ItemDataRole.FontRole) or table.font())
            wraps = int(Qt.TextFlag.TextWordWrap)
            needed = metrics.boundingRect(0, 0, room.width(), 500, wraps, text)
            if needed.width() > room.width() + 1 or needed.height() > room.height() + 2:
                found.append(text)
    return found


def test_names_and_figures_of_a_comparison_are_whole(small: Stage) -> None:
    small.compare(WORN, SOUND)
    numbers = small.window.compare.page.numbers
    assert numbers.model.rowCount() > 8
    small.until(lambda: cut_cells(numbers.table) == [])
    # What it was, what it is and the difference are in sight together; the last column is scrolled to.
    heads = numbers.table.horizontalHeader()
    still(small.qtbot, small.window)
    small.until(lambda: heads.sectionViewportPosition(4) <= numbers.table.viewport().width())


def test_place_and_reading_of_every_marker_are_whole(small: Stage) -> None:
    markers(small)
    pane = small.window.page.markers
    small.until(lambda: any("unwahrscheinlich" in row.reads for row in pane.rows))
    still(small.qtbot, small.window)
    table, metrics = pane.table, pane.table.fontMetrics()
    for at, row in enumerate(pane.rows):
        place, reading = (table.visualRect(table.model().index(at, column)) for column in (1, 2))
        shown = shortened(row, place.width() - 12, metrics)  # the record's name gives way before a figure
        assert "…" not in shown.split(" · ")[-1]
        assert metrics.horizontalAdvance(shown) <= place.width() - 6
        assert metrics.horizontalAdvance(row.reads) <= reading.width() - 6
        assert reading.right() <= table.viewport().width()


def test_the_readings_of_a_stretch_of_travel_wrap_and_cover_nothing(small: Stage) -> None:
    markers(small)
    pane = small.window.page.markers
    small.until(lambda: any("unwahrscheinlich" in cells[0] for _, cells in pane.readings.rows))
    still(small.qtbot, small.window)
    assert cut_cells(pane.grid) == []
    assert not pane.grid.horizontalScrollBar().isVisible()
    pane.grid.scrollToBottom()
    last = pane.grid.visualRect(pane.grid.model().index(len(pane.readings.rows) - 1, 0))
    assert last.bottom() <= pane.grid.viewport().height()
    foot = pane.grid.geometry().bottom()
    assert pane._remark.geometry().top() > foot


def test_a_name_is_typed_over_all_of_a_narrow_row(small: Stage) -> None:
    markers(small)
    small.do("next_marker")
    small.do("rename_marker")
    table = small.window.page.markers.table
    editor = next(item for item in table.findChildren(QLineEdit) if item.isVisible())
    small.until(lambda: editor.geometry().right() >= table.viewport().width() - 2)


def short_of_room(page: QWidget) -> list[str]:
    """Boxes whose word is wider than the room for it."""
    found = []
    for box in page.findChildren(QComboBox):
        option = QStyleOptionComboBox()
        box.initStyleOption(option)
        part = QStyle.SubControl.SC_ComboBoxEditField
        room = box.style().subControlRect(QStyle.ComplexControl.CC_ComboBox, option, part, box).width()
        if box.isVisible() and box.fontMetrics().horizontalAdvance(box.currentText()) > room:
            found.append(box.currentText())
    return found


def test_what_was_found_about_a_file_is_whole_in_every_box(small: Stage) -> None:
    hands.import_worn(small.qtbot, small.window, small.folder)
    page = small.window.imports.page
    assert "Gefunden: Semikolon ;" in {box.currentText() for box in page.findChildren(QComboBox)}
    page.files.list.setCurrentIndex(page.files.list.model().index(1, 0))  # its step is guessed
    small.until(lambda: page.files.step.currentText().startswith("Vermutet"))
    small.until(lambda: short_of_room(page) == [])
    small.window.resize(1366, 768)  # where there is room, nothing of the record is scrolled to
    form = page.files.step.parentWidget()
    assert form is not None
    small.until(lambda: form.visibleRegion().boundingRect() == form.rect())
    small.window.resize(WIDTH, HEIGHT)
    heads = page.rows.table.horizontalHeader()
    for column in range(heads.count()):
        assert heads.sectionSize(column) >= heads.sectionSizeHint(column)


def parts_of(text: str) -> list[str]:
    return [part.strip() for part in text.replace("\N{NO-BREAK SPACE}", " ").split("   ") if part.strip()]


def test_the_status_line_leaves_out_whole_readings_while_work_is_under_way(small: Stage) -> None:
    small.open(WORN)
    readout = small.window.readout
    small.window.focus.point(2.0)
    small.until(lambda: parts_of(readout.plain_text())[0].startswith("2,0"))
    whole = parts_of(readout.plain_text())
    small.until(lambda: readout.toolTip() == "")
    small.go_on.clear()
    small.do("examine")
    small.until(small.window.work.progress.isVisible)
    small.until(lambda: readout.toolTip() != "")
    shown = QLabel()
    small.qtbot.addWidget(shown)
    shown.setText(readout.text())
    assert shown.sizeHint().width() <= readout.width()
    assert parts_of(readout.plain_text()) == whole  # a copy of the reading has all of it
    assert "Masse" in readout.toolTip()
    assert small.window.width() == WIDTH
    small.go_on.set()
    small.until(lambda: readout.toolTip() == "")


def test_two_lines_of_a_low_row_of_heights_are_whole(small: Stage) -> None:
    small.open(WORN)
    small.do("why")
    why = small.window.why.why
    assert why is not None
    why.resize(WIDTH, HEIGHT - 40)  # of its title bar (common practice, no source)
    still(small.qtbot, why)
    assert (why.width(), why.height()) == (WIDTH, HEIGHT - 40)
    assert why.short.sentence.visibleRegion().boundingRect() == why.short.sentence.rect()  # said first
    lines_px = 2 * why.picture.fontMetrics().height()
    for row in why.picture._rows:
        assert why.picture._room_for_words(row) >= lines_px
    why.close()


def test_an_empty_pane_says_all_that_it_has_to_say(small: Stage) -> None:
    small.go_on.clear()
    small.window.open_file(small.copy(WORN))
    small.until(lambda: small.window.session.capture is not None)
    page = small.window.page
    still(small.qtbot, small.window)
    for pane in (page.events, page.track, page.evidence, page.markers):
        label = pane._empty
        assert label.height() >= label.heightForWidth(label.width())
        assert label.visibleRegion().boundingRect() == label.rect()
    small.go_on.set()


def test_the_question_for_a_reason_is_whole(small: Stage) -> None:
    small.open(WORN)
    small.do("next_band")
    small.do("dismiss")
    line = QApplication.focusWidget()
    assert isinstance(line, QLineEdit)
    still(small.qtbot, small.window)
    assert line.fontMetrics().horizontalAdvance(line.placeholderText()) <= line.width() - 14


def test_the_unit_of_the_compared_tracks_is_whole_or_shorter(small: Stage) -> None:
    small.compare(WORN, SOUND)
    track = small.window.compare.page.track
    for size in ((1366, 768), (1280, 720)):
        small.window.resize(*size)
        still(small.qtbot, small.window)
        note = track._note
        assert note.shown_text() == note.text() != ""
    small.window.resize(WIDTH, HEIGHT)
    still(small.qtbot, small.window)


def test_readings_scroll_and_cover_nothing_where_another_bar_takes_room(small: Stage) -> None:
    contested(small)
    pane = small.window.page.markers
    small.until(lambda: len(pane.readings.rows) > 3)
    small.window.resize(WIDTH, HEIGHT - 40)  # of its title bar (common practice, no source)
    still(small.qtbot, small.window)
    assert small.window.height() == HEIGHT - 40  # it holds the window no higher than the screen
    assert pane._remark.isVisible()
    assert pane._remark.geometry().top() > pane.grid.geometry().bottom()
    last = pane.grid.model().index(len(pane.readings.rows) - 1, 0)
    pane.grid.scrollTo(last)
    row = pane.grid.visualRect(last)
    assert row.height() > 0
    assert pane.grid.viewport().rect().contains(row.center())
    assert row.right() < pane.grid.viewport().width()
    assert cut_cells(pane.grid) == []


def test_the_foot_of_a_card_is_in_sight_while_something_is_typed_there(small: Stage) -> None:
    small.open(WORN)
    small.do("next_band")
    for action in ("adjust", "dismiss"):
        small.do(action)
        still(small.qtbot, small.window)
        field = QApplication.focusWidget()
        assert isinstance(field, QWidget)
        assert field.visibleRegion().boundingRect() == field.rect()


def test_what_a_control_unit_would_have_done_is_said_whole_or_shorter(small: Stage) -> None:
    small.open(WORN)
    small.do("control_unit")
    strip = small.window.page.control_unit
    small.until(lambda: len(strip.sheet.rows) > 0)
    still(small.qtbot, small.window)
    assert strip._note.shown_text() == strip._note.text() != ""
    assert strip._note.toolTip() != strip._note.text()
