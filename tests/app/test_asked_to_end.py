"""The system asks the program to end while something is half typed: it is there the next time."""

from __future__ import annotations

import os
import signal
import threading
from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from analysis.captures.reading import open_capture
from analysis.captures.writing import write_capture
from analysis.review.model import Choice
from analysis.review.sidecar import read_sidecar
from app.asked_to_end import AskedToEnd
from app.main_window import Window
from app.session import Tools
from app.settings import MemoryStore, Settings
from tests.app.fakes import worn_capture, worn_findings

pytestmark = pytest.mark.skipif(os.name != "posix", reason="the system closes windows itself there")


@pytest.fixture
def path(tmp_path: Path) -> Path:
    write_capture(worn_capture(), tmp_path / "worn.h5")
    return tmp_path / "worn.h5"


@pytest.fixture
def window(qtbot: QtBot, qapp: QApplication, path: Path) -> Iterator[Window]:
    made = Window(
        Tools(lambda at, tick: open_capture(at), worn_findings, read_sidecar), Settings(MemoryStore())
    )
    qtbot.addWidget(made)
    with qtbot.waitActive(made):  # keys go to the window in front
        made.show()
        made.activateWindow()
    with qtbot.waitSignal(made.session.findings_changed):
        made.open_file(path)
    qtbot.waitUntil(lambda: made.keeper.path is not None and not made.keeper.waiting)
    asked, stays = AskedToEnd(qapp), qapp.quitOnLastWindowClosed()
    qapp.setQuitOnLastWindowClosed(False)
    yield made
    qapp.setQuitOnLastWindowClosed(stays)
    asked.stop()
    made.close()
    assert not [thread for thread in threading.enumerate() if thread.name.startswith("wornband")]


@pytest.mark.parametrize("ask", [signal.SIGTERM, signal.SIGHUP, signal.SIGINT])
def test_a_half_typed_reason_is_kept(qtbot: QtBot, window: Window, path: Path, ask: signal.Signals) -> None:
    before = signal.getsignal(ask)
    window.focus.choose_band(0)
    QTest.keyClick(window, Qt.Key.Key_X)
    QTest.keyClicks(window.focusWidget(), "a scra")
    os.kill(os.getpid(), ask)
    qtbot.waitUntil(lambda: not window.isVisible())
    decision = read_sidecar(path).review.decisions[0]
    assert (decision.choice, decision.reason) == (Choice.DISMISSED, "a scra")
    assert signal.getsignal(ask) is before


def test_a_half_typed_name_of_a_marker_is_kept(qtbot: QtBot, window: Window, path: Path) -> None:
    window.desk.markers.mark_moment(2.0)
    QTest.keyClick(window, Qt.Key.Key_F2)
    qtbot.waitUntil(lambda: window.focusWidget() is not window.page.markers.table)
    QTest.keyClicks(window.focusWidget(), "drop he")
    os.kill(os.getpid(), signal.SIGTERM)
    qtbot.waitUntil(lambda: not window.isVisible())
    assert [item.label for item in read_sidecar(path).review.markers] == ["drop he"]
