"""What was decided is kept, and fits the next file of the same shape."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from analysis.captures.model import Role
from app.main_window import Window
from tests.app.hands import drop
from tests.importing_page.hands import choose, imported, wait_for_looks
from tests.importing_page.tables import comma_table, plain_table, swept


def test_what_was_kept_fits_the_next_file_and_enter_alone_imports_it(
    qtbot: QtBot, window: Window, tmp_path: Path
) -> None:
    heads = ("Zeit (ms)", "A (V)", "B (V)", "C (mV)")
    comma_table(tmp_path / "first.csv", swept(), heads)
    drop(window, tmp_path / "first.csv")
    wait_for_looks(qtbot, window)
    page = window.imports.page
    choose(page.columns.cards["A"].use, "second_signal")
    choose(page.columns.cards["B"].use, "out")
    wait_for_looks(qtbot, window)
    assert page.keep.isChecked()
    window.actions_by_name["bring_in"].trigger()
    imported(qtbot, window)

    comma_table(tmp_path / "second.csv", swept(seed=8), heads)
    drop(window, tmp_path / "second.csv")
    wait_for_looks(qtbot, window)
    assert page.last_time.startswith("As last time for files of this shape")
    assert page.columns.cards["A"].use.currentData() == "second_signal"
    assert page.columns.cards["A"].reason.text() == "As last time."
    QTest.keyClick(window.focusWidget(), Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: window.windowTitle().startswith("second"), timeout=30_000)
    capture = window.session.capture
    assert capture is not None
    assert {item.role for item in capture.records[0].channels} == {Role.SECOND_SIGNAL, Role.GROUND}


def test_guess_anew_leaves_aside_what_was_kept(qtbot: QtBot, window: Window, tmp_path: Path) -> None:
    plain_table(tmp_path / "first.csv", swept(), "Time,signal,ref,gnd")
    drop(window, tmp_path / "first.csv")
    wait_for_looks(qtbot, window)
    page = window.imports.page
    choose(page.columns.cards["ref"].use, "out")
    wait_for_looks(qtbot, window)
    window.actions_by_name["bring_in"].trigger()
    imported(qtbot, window)
    plain_table(tmp_path / "second.csv", swept(), "Time,signal,ref,gnd")
    drop(window, tmp_path / "second.csv")
    wait_for_looks(qtbot, window)
    assert page.columns.cards["ref"].use.currentData() == "out"
    QTest.mouseClick(page.anew, Qt.MouseButton.LeftButton)
    wait_for_looks(qtbot, window)
    assert page.columns.cards["ref"].use.currentData() == "reference"
    assert page.last_time == ""


def test_nothing_is_kept_where_the_tick_is_taken_away(qtbot: QtBot, window: Window, tmp_path: Path) -> None:
    drop(window, plain_table(tmp_path / "a.csv", swept(), "Time,signal"))
    wait_for_looks(qtbot, window)
    QTest.mouseClick(window.imports.page.keep, Qt.MouseButton.LeftButton)
    window.actions_by_name["bring_in"].trigger()
    imported(qtbot, window)
    assert not (tmp_path / "recipes").exists()
