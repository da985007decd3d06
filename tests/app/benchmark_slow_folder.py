"""How long the window is busy at a stretch while its files lie in a slow folder; run by hand, not by pytest.

::

    QT_QPA_PLATFORM=offscreen python -m tests.app.benchmark_slow_folder [milliseconds a call] [rounds]

A sample is opened, looked at again, marked, saved and reported. A turn is the time between two
ticks of 5 ms on the window's thread. From its length by the clock is taken what the thread waited for a
processor (Linux counts it: proc(5), ``schedstat``), so that a busy machine does not count; what it waited for
files, for locks and for Python itself does.
"""

from __future__ import annotations

import os
import shutil
import sys
import tempfile
import threading
import time
from collections.abc import Callable
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

import pytest
from PySide6.QtCore import QEvent, QEventLoop, Qt, QTimer

from analysis.captures import layout
from app.main_window import Window
from app.resources import folder
from app.settings import MemoryStore, Settings
from app.tools import real_tools
from app.window import application
from tests.app.test_slow_folder import FarAway

_SAMPLE = "W1041-rear-left-height.h5"
_PATIENCE_S = 120.0
_TICK_MS = 5


_entries, _remove = os.scandir, os.remove
"""Taken before a folder is slowed, for what is done here and not by the window."""


class Turns:
    """How long turns of this thread's event loop are at most, in seconds, by the step in which they fall."""

    def __init__(self) -> None:
        self.step = ""
        self.longest_s: dict[str, float] = {}
        self.waited_s: dict[str, float] = {}
        self._schedule = Path(f"/proc/self/task/{threading.get_native_id()}/schedstat")
        self._before = self._now_s()
        self._timer = QTimer()
        self._timer.setTimerType(Qt.TimerType.PreciseTimer)
        self._timer.timeout.connect(self._tick)
        self._timer.start(_TICK_MS)

    def _now_s(self) -> tuple[float, float]:
        """The clock without what the thread waited for a processor, and what it computed."""
        queued_s = int(self._schedule.read_text().split()[1]) / 1e9
        return time.monotonic() - queued_s, time.thread_time()

    def _tick(self) -> None:
        now = self._now_s()
        length_s, computed_s = (after - before for after, before in zip(now, self._before, strict=True))
        self.longest_s[self.step] = max(self.longest_s.get(self.step, 0.0), length_s)
        self.waited_s[self.step] = max(self.waited_s.get(self.step, 0.0), length_s - computed_s)
        self._before = now

    def forget(self) -> None:
        """Begin anew."""
        self.longest_s, self.waited_s = {}, {}


def _pause(length_ms: int) -> None:
    """Wait as a window at rest does; `QTest.qWait` sleeps by itself, and ticks would come late."""
    loop = QEventLoop()
    QTimer.singleShot(length_ms, loop.quit)
    loop.exec()


def _wait(fact: Callable[[], bool]) -> None:
    deadline_s = time.monotonic() + _PATIENCE_S
    while not fact():
        if time.monotonic() > deadline_s:
            raise TimeoutError("the window did not get there")
        _pause(5)


def visit(path: Path, turns: Turns) -> None:
    """Open, look again, mark, save and report, and name each step to the clock."""
    turns.step = ""
    window = Window(real_tools(), Settings(MemoryStore()))
    window.resize(1366, 768)
    window.show()
    _pause(300)
    turns.step = "open and examine"
    window.open_file(path)
    review = layout.review_path(path)
    _wait(lambda: window.session.findings is not None and window.keeper.path == review)
    _wait(lambda: not window.jobs.busy())
    turns.step = "come back to it"
    window.desk.eventFilter(window, QEvent(QEvent.Type.WindowActivate))
    _wait(lambda: not window.jobs.busy())
    turns.step = "mark and save"
    window.desk.markers.mark_moment(0.5)
    _wait(lambda: not window.keeper.unsaved and not window.jobs.busy())
    turns.step = "report"
    target = path.with_name("report.html")
    window.report_desk.save(target)
    _wait(lambda: any(item.name == target.name for item in _entries(target.parent)))
    _wait(lambda: not window.jobs.busy())
    turns.step = ""
    window.close()
    window.deleteLater()
    for made in (target, review):
        _remove(made)


def _row(title: str, found_s: dict[str, float]) -> str:
    return f"| {title} | {' | '.join(f'{1000 * value:.0f}' for step, value in found_s.items() if step)} |"


def main() -> None:
    """Print the longest turns in a folder as it is, and in a slow one."""
    a_call_ms = float(sys.argv[1]) if len(sys.argv) > 1 else 50.0
    rounds = int(sys.argv[2]) if len(sys.argv) > 2 else 3
    application()
    turns = Turns()
    with tempfile.TemporaryDirectory() as name, pytest.MonkeyPatch.context() as patch:
        path = Path(name) / _SAMPLE
        shutil.copy(folder("sample_captures") / _SAMPLE, path)
        visit(path, turns)  # the first time fonts and libraries are loaded
        print(f"| ms, {rounds} visits | {' | '.join(filter(None, turns.longest_s))} |")
        for where, a_call_s in (("as it is", 0.0), (f"{a_call_ms:g} ms a call", a_call_ms / 1000)):
            far = FarAway(path.parent, patch, a_call_s=a_call_s) if a_call_s else None
            turns.forget()
            for _ in range(rounds):
                visit(path, turns)
            print(_row(f"longest turn, {where}", turns.longest_s))
            print(_row(f"longest wait in a turn, {where}", turns.waited_s))
            if far is not None:
                print(
                    f"Slowed calls beside the window: {far.beside.total()}; by it: {far.by_window.total()}."
                )


if __name__ == "__main__":
    main()
