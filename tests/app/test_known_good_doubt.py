"""What is kept as known good is told where its own verdict speaks against it."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from app.main_window import Window
from tests.app.conftest import Bench
from tests.app.fakes import sound_capture, worn_or_sound

KEEP = Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.ShiftModifier


@pytest.fixture
def bench(tmp_path: Path) -> Bench:
    made = Bench()
    part = {"part_number": "VA-88-2140"}
    own = made.capture
    made.capture = replace(own, attributes={**own.attributes, **part}, path=Path("worn.h5"))
    sound = sound_capture()
    made.others["sound.h5"] = replace(sound, attributes={**sound.attributes, **part}, path=Path("sound.h5"))
    made.findings = worn_or_sound()
    return made


def keep(qtbot: QtBot, window: Window, name: str) -> None:
    with qtbot.waitSignal(window.session.findings_changed):
        window.open_file(Path(name))
    QTest.keyClick(window, Qt.Key.Key_G, KEEP)


def test_a_worn_sensor_kept_as_known_good_is_told_to_be_worn(qtbot: QtBot, window: Window) -> None:
    keep(qtbot, window, "worn.h5")
    assert "its verdict is: Sensor track worn" in window.page.problem_bar.text
    assert window.settings.known_good  # the technician may know better


def test_one_in_which_no_fault_was_found_is_kept_without_a_word_against_it(
    qtbot: QtBot, window: Window
) -> None:
    keep(qtbot, window, "sound.h5")
    assert window.page.problem_bar.text == ""
    assert window.statusBar().currentMessage().startswith("Kept as known good")
