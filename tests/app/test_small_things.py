"""Small things that a hand or an eye stumbles over."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtCore import QPoint
from PySide6.QtGui import QStandardItem
from pytestqt.qtbot import QtBot

from app.drawing.row_delegate import ROW_ROLE, Row, RowList
from app.main_window import Window
from tests.app import hands
from tests.app.conftest import Bench
from tests.app.fakes import wiring_findings


def test_no_row_keeps_a_line_that_it_needed_beside_a_scroll_bar(qtbot: QtBot) -> None:
    rows = RowList("Records")
    qtbot.addWidget(rows)
    words = "link off, arm swept slowly over the whole travel"
    for length in range(8, len(words), 2):  # one of them just fits without the bar, whatever the font
        item = QStandardItem()
        item.setData(Row("Sweep", words[:length], "10.4 s", "pass"), ROW_ROLE)
        rows.rows.appendRow(item)
    rows.resize(190, 120)
    rows.show()
    count = rows.rows.rowCount()

    def heights() -> list[int]:
        return [rows.visualRect(rows.rows.index(row, 0)).height() for row in range(count)]

    qtbot.waitUntil(rows.verticalScrollBar().isVisible)
    beside = heights()
    rows.resize(190, 1400)
    qtbot.waitUntil(lambda: not rows.verticalScrollBar().isVisible())
    qtbot.waitUntil(lambda: heights() == [rows.sizeHintForRow(row) for row in range(count)])
    assert sum(heights()) < sum(beside)


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
