"""Files that cannot be imported, hostile ones, and an import that is stopped."""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QLabel
from pytestqt.qtbot import QtBot

from app.main_window import Window
from tests.app.hands import drop
from tests.importing_page.hands import imported, wait_for_looks
from tests.importing_page.tables import RATE_HZ, plain_table, swept


def test_a_cancel_in_the_middle_leaves_nothing_and_the_page_stays(
    qtbot: QtBot, window: Window, tmp_path: Path
) -> None:
    wires = {name: np.tile(values, 40) for name, values in swept().items()}
    wires["time"] = np.arange(wires["signal"].size) / RATE_HZ
    path = plain_table(tmp_path / "long.csv", wires, "Time,signal,ref,gnd")
    drop(window, path)
    wait_for_looks(qtbot, window)
    page = window.imports.page
    QTest.mouseClick(page.import_button, Qt.MouseButton.LeftButton)
    assert window.imports.at_work
    assert page.stop.isVisible()
    qtbot.waitUntil(lambda: page.progress.value() > 0, timeout=20_000)
    QTest.mouseClick(page.stop, Qt.MouseButton.LeftButton)
    qtbot.waitUntil(lambda: not window.jobs.busy(), timeout=20_000)
    assert {item.name for item in tmp_path.iterdir()} == {"long.csv"}
    assert window.imports.shown
    assert page.import_button.isVisible()
    assert window.session.capture is None
    assert page.columns.cards["signal"].use.currentData() == "signal"


def test_a_hostile_column_name_is_plain_text_everywhere(qtbot: QtBot, window: Window, tmp_path: Path) -> None:
    name = "<img src=x onerror=1><b>&amp</b>"
    drop(window, plain_table(tmp_path / "a.csv", swept(), f"Time,{name}"))
    wait_for_looks(qtbot, window)
    page = window.imports.page
    card = page.columns.cards[name]
    assert card.name.text() == name
    labels = [item for item in page.findChildren(QLabel) if "<img" in item.text()]
    assert labels
    assert all(item.textFormat() == Qt.TextFormat.PlainText for item in labels)
    assert "<img" not in card.name.toolTip()


@pytest.mark.parametrize(
    ("name", "content", "word"),
    [
        ("a.txt", b"hello\nworld\n", "no two rows of numbers"),
        ("a.bin", bytes(range(256)) * 40, ""),
        ("empty.csv", b"", "empty"),
        ("a.wav", b"RIFF\x10\0\0\0WAVEfmt ", "damaged WAV"),
        ("a.npz", b"PK\x03\x04" + b"\0" * 60, "damaged"),
    ],
)
def test_a_bad_file_says_its_sentence_on_the_page_and_can_be_removed(
    qtbot: QtBot, window: Window, tmp_path: Path, name: str, content: bytes, word: str
) -> None:
    bad = tmp_path / name
    bad.write_bytes(content)
    good = plain_table(tmp_path / "good.csv", swept(), "Time,signal")
    window.imports.open([good, bad])
    wait_for_looks(qtbot, window, files=2)
    window.actions_by_name["bring_in"].trigger()
    page = window.imports.page
    assert window.imports.state.place == 1
    said = page.rows.trouble.sentence
    assert word.lower() in said.lower()
    assert said.endswith(".")
    assert "\n" not in said
    assert "--" not in said, "an option of the command line"
    QTest.mouseClick(page.files.remove, Qt.MouseButton.LeftButton)
    window.actions_by_name["bring_in"].trigger()
    assert imported(qtbot, window).path == tmp_path / "good.h5"


def test_an_empty_folder_and_a_taken_name_say_so(qtbot: QtBot, window: Window, tmp_path: Path) -> None:
    (tmp_path / "none").mkdir()
    drop(window, tmp_path / "none")
    page = window.imports.page
    qtbot.waitUntil(lambda: page.problem_bar.text != "", timeout=10_000)
    assert page.problem_bar.text == "The folder holds no files; choose another folder."
    (tmp_path / "a.h5").write_bytes(b"older")
    drop(window, plain_table(tmp_path / "a.csv", swept(), "Time,signal"))
    wait_for_looks(qtbot, window)
    qtbot.waitUntil(lambda: page.target.text() == str(tmp_path / "a-2.h5"), timeout=10_000)
    window.imports.choose_target(tmp_path / "a.h5")
    qtbot.waitUntil(lambda: "exists already" in page.target_trouble.sentence, timeout=10_000)
    window.actions_by_name["bring_in"].trigger()
    qtbot.waitUntil(lambda: not window.imports.at_work, timeout=20_000)
    assert (tmp_path / "a.h5").read_bytes() == b"older"
    assert window.imports.shown
