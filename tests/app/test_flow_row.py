"""A row of controls that breaks where it is full owns what Qt leaves to a layout."""

from __future__ import annotations

import sys

import pytest
import shiboken6
from PySide6.QtCore import QCoreApplication, QEvent
from PySide6.QtWidgets import QApplication, QPushButton, QVBoxLayout, QWidget
from pytestqt.qtbot import QtBot

from app.views.flow_row import FlowRow
from tests.robustness.soak import heap_in_use_kb


def _row(count: int = 8) -> tuple[QWidget, FlowRow, list[QPushButton]]:
    page, controls = QWidget(), [QPushButton(str(number)) for number in range(count)]
    row = FlowRow(controls)
    page.setLayout(row)
    return page, row, controls


def _let_go() -> None:
    QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete.value)
    QApplication.processEvents()


def test_controls_belong_to_the_page_and_break_into_rows(qtbot: QtBot) -> None:
    page, row, controls = _row()
    qtbot.addWidget(page)
    page.resize(page.sizeHint())
    page.show()
    assert {control.y() for control in controls} == {controls[0].y()}
    page.resize(page.sizeHint().width() // 2, 300)
    QApplication.processEvents()
    assert len({control.y() for control in controls}) > 1
    assert all(control.parentWidget() is page for control in controls)
    assert row.count() == len(controls)


def test_a_control_that_goes_leaves_its_row(qtbot: QtBot) -> None:
    page, row, controls = _row()
    qtbot.addWidget(page)
    page.show()
    controls[2].deleteLater()
    _let_go()
    shiboken6.delete(controls[5])
    assert row.count() == len(controls) - 2
    assert row.heightForWidth(100) > 0


@pytest.mark.skipif(
    not sys.platform.startswith("linux") or heap_in_use_kb() == 0.0,
    reason="the library of C does not count its heap here",
)
@pytest.mark.parametrize("within", [False, True])
def test_a_row_that_goes_leaves_nothing_on_the_heap(qtbot: QtBot, within: bool) -> None:
    def round_trip() -> None:
        page = QWidget()
        row = FlowRow([QPushButton(str(number)) for number in range(8)])
        if within:
            QVBoxLayout(page).addLayout(row)
        else:
            page.setLayout(row)
        page.deleteLater()
        del page, row
        _let_go()

    for _ in range(50):  # caches fill
        round_trip()
    before_kb, before_blocks = heap_in_use_kb(), sys.getallocatedblocks()
    for _ in range(100):
        round_trip()
    assert heap_in_use_kb() - before_kb < 10.0  # 75 KB while Qt was left to free its items
    assert sys.getallocatedblocks() - before_blocks < 100  # 1600 where Python made them
