"""The window on the sample captures that come along, with the analysis behind it."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QLabel
from pytestqt.qtbot import QtBot

from app import resources
from app.captures_menu import CapturesMenu, first_sample
from app.main_window import Window
from app.settings import MemoryStore, Settings
from app.tools import real_tools


@pytest.fixture
def workbench(qtbot: QtBot) -> Window:
    made = Window(real_tools(), Settings(MemoryStore()))
    qtbot.addWidget(made, before_close_func=lambda window: window.session.close())
    with qtbot.waitActive(made):
        made.show()
        made.activateWindow()
    return made


def test_the_first_sample_shows_its_worn_band_and_steps_through_its_crossings(
    qtbot: QtBot, workbench: Window
) -> None:
    sample = first_sample()
    assert sample is not None
    with qtbot.waitSignal(workbench.session.findings_changed, timeout=30_000):
        workbench.open_file(sample)
    words = " ".join(label.text() for label in workbench.page.evidence.findChildren(QLabel))
    assert "Sensor track worn" in words
    assert "% of travel" in words
    assert workbench.page.track.empty_text == ""
    findings = workbench.session.findings
    assert findings is not None
    worst = max(item.breakup_percent for item in findings.bands[0].crossings)
    QTest.keyClick(workbench, Qt.Key.Key_C)
    assert workbench.focus.passage is not None
    assert workbench.focus.passages[workbench.focus.passage].breakup_percent == worst
    QTest.keyClick(workbench, Qt.Key.Key_N)
    assert any(item.strong for item in workbench.page.trace.stretches)


@pytest.mark.parametrize("name", [path.name for path in resources.sample_captures()])
def test_every_sample_opens_is_examined_and_drawn(qtbot: QtBot, workbench: Window, name: str) -> None:
    path = resources.folder("sample_captures") / name
    with qtbot.waitSignal(workbench.session.findings_changed, timeout=30_000):
        workbench.open_file(path)
    assert workbench.page.problem_bar.text == ""
    assert workbench.page.trace.empty_text == ""
    assert workbench.windowTitle().endswith("– Wornband")
    workbench.grab()


def test_the_menu_offers_every_sample_and_the_last_captures_first(qtbot: QtBot, workbench: Window) -> None:
    samples = resources.sample_captures()
    workbench.settings.remember_capture(samples[-1])
    menu = CapturesMenu(workbench.settings, workbench)
    menu.fill()
    enabled = [action.text() for action in menu.actions() if action.isEnabled() and not action.isSeparator()]
    assert enabled[0] == samples[-1].name
    assert len(enabled) == len(samples) + 1
