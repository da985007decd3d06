"""The window on the sample captures that come along, with the analysis behind it."""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QLabel
from pytestqt.qtbot import QtBot

from analysis.captures.model import Role
from app import resources
from app.captures_menu import CapturesMenu, first_sample
from app.main_window import Window
from app.settings import MemoryStore, Settings
from app.tools import real_tools
from tests.app.hands import copy_of_sample


@pytest.fixture
def workbench(qtbot: QtBot) -> Window:
    made = Window(real_tools(), Settings(MemoryStore()))
    qtbot.addWidget(made, before_close_func=lambda window: window.session.close())
    with qtbot.waitActive(made):
        made.show()
        made.activateWindow()
    return made


def test_the_first_sample_shows_its_worn_band_and_steps_through_its_crossings(
    qtbot: QtBot, workbench: Window, tmp_path: Path
) -> None:
    sample = first_sample()
    assert sample is not None
    with qtbot.waitSignal(workbench.session.findings_changed, timeout=30_000):
        workbench.open_file(copy_of_sample(sample.name, tmp_path))
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
def test_every_sample_opens_is_examined_and_drawn(
    qtbot: QtBot, workbench: Window, tmp_path: Path, name: str
) -> None:
    path = copy_of_sample(name, tmp_path)
    with qtbot.waitSignal(workbench.session.findings_changed, timeout=30_000):
        workbench.open_file(path)
    assert workbench.page.problem_bar.text == ""
    assert workbench.page.trace.empty_text == ""
    assert workbench.windowTitle().endswith("– Wornband")
    workbench.grab()


def test_the_menu_offers_every_sample_once_and_the_last_captures_first(
    workbench: Window, tmp_path: Path
) -> None:
    samples = resources.sample_captures()
    for path in (tmp_path / "mine.h5", samples[-1]):
        workbench.settings.remember_capture(path)
    menu = CapturesMenu(workbench.settings, workbench)
    menu.fill()
    enabled = [action.text() for action in menu.actions() if action.isEnabled() and not action.isSeparator()]
    assert enabled == ["mine.h5", *(path.stem.replace("-", " ") for path in samples)]


def test_the_samples_of_a_repair_are_compared_in_the_window(
    qtbot: QtBot, workbench: Window, tmp_path: Path
) -> None:
    before = copy_of_sample("W1041-rear-left-height.h5", tmp_path)
    after = copy_of_sample("W1041-rear-left-height-new-sensor.h5", tmp_path)
    with qtbot.waitSignal(workbench.session.findings_changed, timeout=30_000):
        workbench.open_file(before)
    desk = workbench.compare
    desk.open_file(after)
    qtbot.waitUntil(lambda: desk.comparison is not None, timeout=30_000)
    assert "is gone" in desk.page.summary.text
    model = desk.page.numbers.model
    tips = [model.item(row, 0).toolTip().split("\n") for row in range(model.rowCount())]
    decided = {title: told for title, *told in tips}
    assert decided["Sensor ground"][:2] == ["Before, Ground: pass", "After, Ground: pass"]
    assert decided["Low end of the sweep"][:2] == ["Before: pass", "After: pass"]
    QTest.keyClick(workbench, Qt.Key.Key_F7, Qt.KeyboardModifier.ShiftModifier)
    qtbot.waitUntil(lambda: "has appeared" in desk.page.summary.text, timeout=30_000)
    desk.close()


def test_the_mirrored_corners_of_an_axle_lie_on_one_curve_but_where_one_is_worn(
    qtbot: QtBot, workbench: Window, tmp_path: Path
) -> None:
    path = copy_of_sample("W1096-rear-axle-heights.h5", tmp_path)
    with qtbot.waitSignal(workbench.session.findings_changed, timeout=30_000):
        workbench.open_file(path)
    QTest.keyClick(workbench, Qt.Key.Key_F7)
    desk = workbench.compare
    desk.sides[1].take_review()
    desk.sides[1].choose_track(Role.SECOND_SIGNAL)
    QTest.keyClick(workbench, Qt.Key.Key_2)
    for side in desk.sides:
        side.choose_record("006")
    paths = [side.path for side in desk.sides]
    assert paths[0] is not None
    assert paths[1] is not None
    apart = paths[0].travel_percent - (100.0 - paths[1].travel_percent)
    assert np.percentile(np.abs(apart), 90) < 1.0
    QTest.keyClick(workbench, Qt.Key.Key_D)
    qtbot.waitUntil(lambda: desk.page.corners.empty_text == "", timeout=30_000)
    assert "would have stored no fault" in desk.page.corners.said
    for side in desk.sides:
        side.choose_record("007")
    qtbot.waitUntil(lambda: "would have stored a fault" in desk.page.corners.said, timeout=30_000)
    desk.close()


def test_a_sample_is_called_one_under_its_title_and_a_copy_of_it_elsewhere_is_not(
    qtbot: QtBot, workbench: Window, tmp_path: Path
) -> None:
    sample = first_sample()
    assert sample is not None
    for path, called in ((sample, True), (copy_of_sample(sample.name, tmp_path), False)):
        with qtbot.waitSignal(workbench.session.findings_changed, timeout=30_000):
            workbench.open_file(path)
        assert workbench.page.subtitle.text().startswith("Sample · ") is called
        assert "Sample" not in workbench.page.title.text()
