"""A folder that takes 50 ms for each call, as one far away does: the window goes on, and nothing is lost."""

from __future__ import annotations

import builtins
import io
import os
import threading
import time
from collections import Counter
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from PySide6.QtCore import QTimer
from pytestqt.qtbot import QtBot

from analysis.captures import layout
from analysis.captures.writing import write_capture
from analysis.review.sidecar import read_sidecar
from app.main_window import Window
from app.settings import MemoryStore, Settings
from app.tools import real_tools
from tests.app.fakes import worn_capture

_A_CALL_S = 0.05
_MOST_IN_A_TURN = 2  # 0.1 s; 0.2 s is the aim for the longest turn of the window's event loop
_CALLS = ("access", "fsync", "lstat", "open", "rename", "replace", "scandir", "stat", "unlink")


class FarAway:
    """Lets every call of Python's for a file below a folder take its time, and counts them by thread.

    HDF5's own reading is not slowed: it goes past Python.
    """

    def __init__(self, folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
        self._folder = str(folder)
        self.by_window: Counter[str] = Counter()
        self.beside: Counter[str] = Counter()
        self.most_in_a_turn = self._in_this_turn = 0
        self._turns = QTimer()
        self._turns.timeout.connect(self.begin_turn)
        self._turns.start(1)
        for name in _CALLS:
            monkeypatch.setattr(os, name, self._slow(name, getattr(os, name)))
        opening = self._slow("open", io.open)
        monkeypatch.setattr(io, "open", opening)
        monkeypatch.setattr(builtins, "open", opening)

    def begin_turn(self) -> None:
        """Count the window's own calls anew; its timer says that the event loop has come round."""
        self.most_in_a_turn = max(self.most_in_a_turn, self._in_this_turn)
        self._in_this_turn = 0

    def _slow(self, name: str, real: Callable[..., Any]) -> Callable[..., Any]:
        def call(where: Any = ".", *more: Any, **named: Any) -> Any:
            if isinstance(where, int) or str(where).startswith(self._folder):
                by_window = threading.current_thread() is threading.main_thread()
                (self.by_window if by_window else self.beside)[name] += 1
                self._in_this_turn += by_window
                time.sleep(_A_CALL_S)  # it is the disk that sleeps here, not the test
            return real(where, *more, **named)

        return call


def test_a_slow_folder_delays_the_saving_and_not_the_window(
    qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    path = tmp_path / "visits" / "worn.h5"
    path.parent.mkdir()
    write_capture(worn_capture(), path)
    far = FarAway(path.parent, monkeypatch)
    window = Window(real_tools(), Settings(MemoryStore()))
    qtbot.addWidget(window)
    window.show()
    told: list[str] = []
    window.keeper.problem.connect(told.append)
    window.desk.file.problem.connect(told.append)
    window.open_file(path)
    review = layout.review_path(path)
    qtbot.waitUntil(
        lambda: window.session.findings is not None and window.keeper.path == review, timeout=20_000
    )
    qtbot.waitUntil(lambda: not window.jobs.busy(), timeout=20_000)
    far.by_window.clear()
    far.beside.clear()
    far.begin_turn()
    far.most_in_a_turn = 0
    window.desk.markers.mark_moment(0.5)
    qtbot.waitUntil(lambda: far.beside["fsync"] > 0, timeout=20_000)
    window.focus.zoom(0.5)  # while it is being saved
    window.desk.markers.mark_moment(1.0)
    qtbot.waitUntil(lambda: not window.keeper.unsaved and not window.jobs.busy(), timeout=20_000)
    assert (
        far.beside["fsync"] == 4
    )  # file and folder, twice: the second marker came while the first was written
    # What the window itself asks the folder: whether its review is still its own, after each change there.
    assert set(far.by_window) <= {"open"}
    assert far.most_in_a_turn <= _MOST_IN_A_TURN
    assert told == []
    window.close()
    assert len(read_sidecar(path).review.markers) == 2
