"""Words that are longer in German stay whole where columns and fields are narrow."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QLocale, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QStyle, QStyleOptionComboBox
from pytestqt.qtbot import QtBot

from app.language import install_language
from app.main_window import Window
from app.session import Tools
from app.settings import MemoryStore, Settings
from app.views.elided_label import ElidedLabel
from app.views.numbers_table import NumbersView
from app.views.record_form import WordBox
from tests.app.conftest import Bench
from tests.app.fakes import sound_capture, worn_or_sound
from tests.app.hands import drop
from tests.app.real_files import shown


@pytest.fixture
def german(qtbot: QtBot, qapp: QApplication, bench: Bench) -> Iterator[Window]:
    """The worn capture in a window of 1366 x 768 that speaks German; ``new.h5`` is a sound sensor."""
    before = QLocale()
    bench.others["new.h5"] = sound_capture()
    bench.findings = worn_or_sound()
    install_language(qapp, "de")
    window = Window(Tools(bench.open_capture, bench.examine), Settings(MemoryStore()))
    for made in shown(qtbot, window):
        with qtbot.waitSignal(made.session.findings_changed, timeout=20_000):
            made.open_file(Path("worn.h5"))
        yield made
    install_language(qapp, "en")
    QLocale.setDefault(before)


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


def test_a_long_path_keeps_its_end(qtbot: QtBot) -> None:
    label = ElidedLabel(mode=Qt.TextElideMode.ElideMiddle)
    qtbot.addWidget(label)
    label.setText("/a/long/way/to/the/folder/of/job-4711")
    label.resize(label.fontMetrics().horizontalAdvance(label.text()) // 2, 30)
    label.show()
    assert label.shown_text().endswith("4711")
    assert "…" in label.shown_text()
    assert label.toolTip().endswith("job-4711")
