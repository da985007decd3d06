"""Words that are longer in German stay whole where columns and fields are narrow."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QFontMetricsF
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLabel, QStyle, QStyleOptionComboBox, QToolButton
from pytestqt.qtbot import QtBot

from analysis.diagnosis.findings import Check, Result
from analysis.progress import ignore
from app.main_window import Window
from app.views.elided_label import ElidedLabel
from app.views.numbers_table import NumbersView
from app.views.pane import Pane
from app.views.record_form import WordBox
from app.words import shape_name
from tests.app.conftest import Bench
from tests.app.fakes import sound_capture, worn_or_sound
from tests.app.hands import drop
from tests.app.tongues import worn_in


@pytest.fixture
def german(qtbot: QtBot, qapp: QApplication, bench: Bench) -> Iterator[Window]:
    """The worn capture in a window of 1366 x 768 that speaks German; ``new.h5`` is a sound sensor."""
    bench.others["new.h5"] = sound_capture()
    bench.findings = worn_or_sound()
    yield from worn_in(qtbot, qapp, bench, "de")


def room_px(box: WordBox) -> int:
    """How wide the text of a box may be."""
    option = QStyleOptionComboBox()
    box.initStyleOption(option)
    part = QStyle.SubControl.SC_ComboBoxEditField
    return box.style().subControlRect(QStyle.ComplexControl.CC_ComboBox, option, part, box).width()


def test_a_long_word_of_a_record_takes_a_line_of_its_own(german: Window, qtbot: QtBot) -> None:
    QTest.keyClick(german, Qt.Key.Key_F4)
    form = german.page.records.form
    box = form.boxes[(None, "", "moved")]
    qtbot.waitUntil(box.isVisible)
    box.show_word("suspension")
    text = box.currentText()
    assert text == "über die Federung"
    qtbot.waitUntil(lambda: room_px(box) >= box.fontMetrics().horizontalAdvance(text))
    sheet = form.widget()
    assert sheet is not None
    assert sheet.width() <= form.viewport().width()  # it is no wider than what is in sight
    box.show_word("road")
    qtbot.waitUntil(lambda: box.x() > 0.3 * sheet.width())  # a short word stands beside its name again


def test_no_name_in_the_numbers_of_a_comparison_is_shortened(german: Window, qtbot: QtBot) -> None:
    german.actions_by_name["compare"].trigger()
    drop(german, Path("new.h5"))
    qtbot.waitUntil(lambda: german.compare.comparison is not None)
    numbers = NumbersView()
    qtbot.addWidget(numbers)
    numbers.resize(330, 300)
    numbers.show_comparison(german.compare.comparison)
    numbers.show()
    table, model = numbers.table, numbers.model
    qtbot.waitUntil(lambda: 0 < table.columnWidth(0) < 130)
    assert model.rowCount() > 0
    wrap = int(Qt.TextFlag.TextWordWrap)
    for row in range(model.rowCount()):
        item = model.item(row, 0)
        room = table.visualRect(item.index()).adjusted(6, 0, -6, 0)
        needed = table.fontMetrics().boundingRect(room.adjusted(0, 0, 0, 500), wrap, item.text())
        assert needed.height() <= room.height(), item.text()
        assert needed.width() <= room.width() + 6, item.text()


def names_cut(numbers: NumbersView) -> list[str]:
    """Names that are taller than their row."""
    table, model = numbers.table, numbers.model
    wrap = int(Qt.TextFlag.TextWordWrap)
    air_px = table.style().pixelMetric(QStyle.PixelMetric.PM_FocusFrameHMargin, None, table) + 1
    boxes = {row: table.visualRect(model.index(row, 0)) for row in range(model.rowCount())}
    rooms = {row: box.adjusted(air_px, 0, -air_px, 0) for row, box in boxes.items()}
    return [
        model.item(row).text()
        for row, room in rooms.items()
        if table.fontMetrics().boundingRect(0, 0, room.width(), 500, wrap, model.item(row).text()).height()
        > room.height()
    ]


def test_names_are_whole_in_the_window_too_and_after_its_colours_changed(
    german: Window, qtbot: QtBot, bench: Bench
) -> None:
    names = ("Masse, Schwankung", "Bezugsspannung, Schwankung über alle Aufzeichnungen", "Signal in Ruhe")
    checks = tuple(
        Check(f"code{place}", "", 0.01, 0.004, "V", None, 0.1, Result.PASS, "", names[place % 3])
        for place in range(12)
    )
    sound, worn = bench.findings(sound_capture(), ignore), bench.findings(bench.capture, ignore)
    by_id = {item.capture_id: replace(item, checks=checks) for item in (sound, worn)}
    bench.findings = lambda capture, _tick: by_id.get(capture.capture_id, by_id[worn.capture_id])
    german.session.examine_again()
    qtbot.waitUntil(lambda: bool(german.session.findings and german.session.findings.checks))
    german.actions_by_name["compare"].trigger()
    drop(german, Path("new.h5"))
    numbers = german.compare.page.numbers
    qtbot.waitUntil(lambda: numbers.model.rowCount() == 13)
    qtbot.waitUntil(lambda: names_cut(numbers) == [])
    german.settings.colours = "dark"
    german.apply_colours()
    qtbot.waitUntil(lambda: names_cut(numbers) == [])
    for width in range(1366, 1100, -19):
        german.resize(width, 768)
        qtbot.waitUntil(lambda: names_cut(numbers) == [])


def test_a_long_path_keeps_its_end(qtbot: QtBot) -> None:
    label = ElidedLabel(mode=Qt.TextElideMode.ElideMiddle)
    qtbot.addWidget(label)
    label.setText("/a/long/way/to/the/folder/of/job-4711")
    label.resize(label.fontMetrics().horizontalAdvance(label.text()) // 2, 30)
    label.show()
    assert label.shown_text().endswith("4711")
    assert "…" in label.shown_text()
    assert label.toolTip().endswith("job-4711")


@pytest.mark.parametrize("shape", ["drop", "rise", "ringing", "spike"])
def test_the_shape_of_an_event_is_whole_beside_its_time(german: Window, shape: str) -> None:
    rows = german.page.events.list
    metrics = QFontMetricsF(rows.font())
    needed = (
        metrics.horizontalAdvance("12,29 s") + 8 + metrics.horizontalAdvance(f"{shape_name(shape)} 268 mV")
    )
    bar_px = rows.verticalScrollBar().sizeHint().width()
    marked_px = 34 + 8  # the mark before the time, and the margin behind the reading
    assert needed <= rows.width() - bar_px - marked_px


def test_the_title_of_a_pane_is_whole_and_its_note_gives_way(qtbot: QtBot) -> None:
    pane = Pane("Ereignisse")
    qtbot.addWidget(pane)
    tools = [QToolButton(), QToolButton()]
    for tool in tools:
        tool.setFixedWidth(32)
        pane.add_tool(tool)
    pane.set_note("Bezugsspannung")
    title = pane.findChild(QLabel, "paneTitle")
    assert title is not None
    pane.setFixedWidth(title.sizeHint().width() + 64 + 60)  # two tools, the spaces, and next to nothing else
    pane.show()
    qtbot.waitUntil(lambda: tools[1].x() > 0)
    assert title.width() >= title.sizeHint().width()
