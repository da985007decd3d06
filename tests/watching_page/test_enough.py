"""A whole job: the records of a sample capture are saved one after another, until the page says ENOUGH."""

from __future__ import annotations

import shutil
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from analysis.captures.model import Step
from analysis.captures.reading import open_capture
from analysis.diagnosis.findings import VerdictCode
from app.main_window import Window
from tests.watching.tables import tables
from tests.watching_page.hands import begin, looked, taken, watched


class Recorder:
    """Saves one table after another into the watched folder, and gives back what the page then asks."""

    def __init__(self, qtbot: QtBot, window: Window, folder: Path) -> None:
        self._qtbot, self._window, self._folder, self._count = qtbot, window, folder, 0
        begin(window, folder)
        looked(qtbot, window)

    def save(self, table: Path) -> str:
        """Save a table, and wait until it is judged."""
        self._count += 1
        shutil.copy(table, self._folder / f"{self._count:02d}.csv")
        taken(self._qtbot, self._window, self._count)
        return self._window.watching.page.instruction.text

    def step(self) -> Step | None:
        """What the table that was saved last was taken for."""
        watch = watched(self._window)
        with open_capture(watch.taken[watch.last]) as opened:
            return opened.capture.records[0].step


@pytest.mark.parametrize("name", ["W1041-rear-left-height.h5", "W1072-front-left-height.h5"])
def test_the_records_of_a_worn_sensor_lead_to_enough_and_more_sweeps_keep_it(
    qtbot: QtBot, window: Window, tmp_path: Path, name: str
) -> None:
    made = tables(tmp_path / "recorder", name)
    recorder = Recorder(qtbot, window, tmp_path / "job")
    page = window.watching.page
    assert page.instruction.text == "Sweep the arm"
    for table in (*made["ground"], *made["reference"], *made["wiggle"]):
        assert recorder.save(table) == "Sweep the arm"
    asked = [recorder.save(table) for table in made["sweep"]]
    assert asked[0].endswith("2 more times")
    assert asked[-1].startswith("Hold still at ")
    assert recorder.save(made["hold"][0]) == "Wiggle the harness"
    assert recorder.step() is Step.HOLD
    assert recorder.save(made["wiggle"][0]) == "Wiggle the harness"
    assert recorder.step() is None  # a record at rest shows no wiggling: the technician has to say so
    assert page.confirm.isVisible()
    QTest.mouseClick(page.confirm, Qt.MouseButton.LeftButton)
    qtbot.waitUntil(lambda: page.instruction.text == "ENOUGH", timeout=30_000)
    assert recorder.step() is Step.WIGGLE
    assert not page.confirm.isVisible()
    found = watched(window).standing.findings
    assert found is not None
    assert found.verdict.code is VerdictCode.WORN_TRACK  # as the sample's truth says
    before = [item.crossings for item in watched(window).standing.evidence.stretches]
    said = [recorder.save(table) for table in made["sweep"]]
    # The same samples once more agree with themselves where their noise stood out: a place is asked about.
    assert {item for item in said if not item.startswith("Sweep past ")} == {"ENOUGH"}
    assert said[-1] == "ENOUGH"
    after = [item.crossings for item in watched(window).standing.evidence.stretches]
    assert sum(after) > sum(before)


def test_a_sound_sensor_comes_to_enough_without_a_hold_and_a_road_is_no_wiggle(
    qtbot: QtBot, window: Window, tmp_path: Path
) -> None:
    made = tables(tmp_path / "recorder", "W1041-rear-left-height-new-sensor.h5")
    recorder = Recorder(qtbot, window, tmp_path / "job")
    for table in (*made["ground"], *made["reference"]):
        assert recorder.save(table) == "Sweep the arm"
    assert recorder.save(made["sweep"][0]) == "Wiggle the harness"
    assert recorder.save(made["road"][0]) == "Wiggle the harness"
    assert recorder.step() is None
    assert not window.watching.page.confirm.isVisible()
    assert recorder.save(made["wiggle"][0]) == "Wiggle the harness"
    QTest.mouseClick(window.watching.page.confirm, Qt.MouseButton.LeftButton)
    qtbot.waitUntil(lambda: window.watching.page.instruction.text == "ENOUGH", timeout=30_000)


def test_a_road_is_not_taken_for_the_hold_that_was_asked_for(
    qtbot: QtBot, window: Window, tmp_path: Path
) -> None:
    made = tables(tmp_path / "recorder", "W1041-rear-left-height.h5")
    recorder = Recorder(qtbot, window, tmp_path / "job")
    for table in made["sweep"]:
        asked = recorder.save(table)
    assert asked.startswith("Hold still at ")
    assert recorder.save(made["road"][0]).startswith("Hold still at ")
    assert recorder.step() is None


def test_full_screen_goes_on_and_off_by_its_key(qtbot: QtBot, window: Window, tmp_path: Path) -> None:
    begin(window, tmp_path / "job")
    looked(qtbot, window)
    QTest.keyClick(window, Qt.Key.Key_F11)
    qtbot.waitUntil(window.isFullScreen)
    QTest.keyClick(window, Qt.Key.Key_F11)
    qtbot.waitUntil(lambda: not window.isFullScreen())
    assert window.pages.currentWidget() is window.watching.page
