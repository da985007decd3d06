"""The pages beside Review come into being when somebody first wants them."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from app.drawing.theme import DARK, LIGHT
from app.main_window import Window
from app.watching.desk import WatchDesk

CONTROL, SHIFT = Qt.KeyboardModifier.ControlModifier, Qt.KeyboardModifier.ShiftModifier


def test_an_opened_and_examined_capture_needs_none_of_them(review: Window) -> None:
    assert review.rooms.furnished == ()
    assert review.rooms.shown is None


def test_the_first_key_that_wants_a_room_furnishes_it_and_is_done(review: Window, qtbot: QtBot) -> None:
    QTest.keyClick(review, Qt.Key.Key_F7)
    assert review.rooms.furnished == (review.compare,)
    assert review.rooms.shown is review.compare
    assert review.compare.sides[0].capture is review.session.capture


def test_what_a_room_does_is_done_from_review_too_and_once(
    review: Window, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    asked: list[str] = []

    def refuse(*arguments: object, **_named: object) -> tuple[str, str]:
        asked.append(str(arguments[1]))
        return "", ""

    monkeypatch.setattr("app.reporting.desk.QFileDialog.getSaveFileName", refuse)
    for _ in range(2):
        QTest.keyClick(review, Qt.Key.Key_P, CONTROL | SHIFT)
    assert asked == ["Save the report"] * 2
    assert review.rooms.shown is None


def test_a_room_is_in_the_colours_that_the_window_has(review: Window) -> None:
    review.apply_palette(DARK)
    dark = review.watching.page.grab().toImage().pixelColor(3, 3)
    review.apply_palette(LIGHT)
    light = review.watching.page.grab().toImage().pixelColor(3, 3)
    assert dark.lightness() < 90 < 180 < light.lightness()


def test_review_is_come_back_to_without_furnishing_the_report(review: Window, qtbot: QtBot) -> None:
    QTest.keyClick(review, Qt.Key.Key_F7)
    QTest.keyClick(review, Qt.Key.Key_R, CONTROL | SHIFT)
    assert review.pages.currentWidget() is review.page
    assert review.rooms.furnished == (review.compare,)


def test_a_table_that_comes_first_of_all_leads_to_import(
    window: Window, qtbot: QtBot, tmp_path: Path
) -> None:
    table = tmp_path / "recorder.csv"
    table.write_text("Time;Signal\ns;V\n0,0;1,0\n0,1;1,1\n", encoding="utf-8")
    window.session.foreign.emit(table)
    assert window.rooms.shown is window.imports
    qtbot.waitUntil(lambda: not window.jobs.busy())
    assert [item.path for item in window.imports.state.draft.files] == [table]


def test_closing_closes_the_rooms_there_are(review: Window, monkeypatch: pytest.MonkeyPatch) -> None:
    closed: list[WatchDesk] = []
    own = WatchDesk.close

    def close(desk: WatchDesk) -> None:
        closed.append(desk)
        own(desk)

    monkeypatch.setattr(WatchDesk, "close", close)
    watching = review.watching
    review.close()
    assert closed == [watching]


def test_what_they_need_is_loaded_beside_the_window_before_anybody_wants_it() -> None:
    code = (
        "import sys\n"
        "from app.window import application\n"
        "app = application()\n"
        "from app.main_window import Window\n"
        "from app.rooms import MODULES\n"
        "from app.settings import MemoryStore, Settings\n"
        "from app.tools import real_tools\n"
        "window = Window(real_tools(), Settings(MemoryStore()))\n"
        "before = [name for name in MODULES if name in sys.modules]\n"
        "window.rooms.load_ahead()\n"
        "while not all(name in sys.modules for name in MODULES):\n"
        "    app.processEvents()\n"
        "print(before, window.rooms.furnished)\n"
        "window.close()\n"
    )
    done = subprocess.run(
        [sys.executable, "-c", code], capture_output=True, text=True, timeout=60, check=False
    )
    assert done.stdout.strip() == "[] ()", done.stderr
