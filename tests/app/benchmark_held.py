"""How long the window is held while its colours or its language change; run by hand, not by pytest.

::

    QT_QPA_PLATFORM=offscreen python -m tests.app.benchmark_held CAPTURE

A timer of a millisecond watches how long the loop of events does not turn: the longest pause of each change,
by the clock and in processor time of the window's thread. Nothing may hold it longer than 0.2 s.
"""

from __future__ import annotations

import os
import sys
import time
from collections.abc import Callable
from functools import partial
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from PySide6.QtCore import QEventLoop, Qt, QTimer

from app.drawing.theme import DARK, LIGHT
from app.settings import MemoryStore, Settings
from app.tools import real_tools
from app.window import application
from app.workbench import Workbench

_TIMES = 5
_WATCHED_MS = 3000
_LONGEST_EXAMINATION_S = 300.0


def main(path: Path) -> None:
    """Print the longest pause of each change."""
    bench = Workbench(application(), real_tools(), Settings(MemoryStore()))
    bench.window.show()
    bench.window.open_file(path)
    _wait(lambda: bench.window.session.findings is not None and not bench.window.keeper.waiting)
    for turn in range(_TIMES):
        palette = LIGHT if turn % 2 else DARK
        _tell("colours", _longest(partial(bench.window.apply_palette, palette)))
    for turn in range(_TIMES):
        language = "en" if turn % 2 else "de"
        _tell("language", _longest(partial(_speak, bench, language)))


def _speak(bench: Workbench, language: str) -> None:
    bench.window.settings.language = language
    bench.window.language_chosen.emit(language)


def _longest(change: Callable[[], None]) -> tuple[float, float]:
    """The longest pause while a change is made, in seconds: by the clock, and of processor time."""
    pauses: list[tuple[float, float]] = []
    last = [time.monotonic(), time.thread_time()]

    def note() -> None:
        now = [time.monotonic(), time.thread_time()]
        pauses.append((now[0] - last[0], now[1] - last[1]))
        last[:] = now

    watch = QTimer()
    watch.setTimerType(Qt.TimerType.PreciseTimer)
    watch.timeout.connect(note)
    watch.start(1)
    QTimer.singleShot(50, change)
    _turn(_WATCHED_MS)
    watch.stop()
    return max(pauses)


def _turn(milliseconds: int) -> None:
    loop = QEventLoop()
    QTimer.singleShot(milliseconds, loop.quit)
    loop.exec()


def _wait(fact: Callable[[], bool]) -> None:
    until_s = time.monotonic() + _LONGEST_EXAMINATION_S
    while not fact() and time.monotonic() < until_s:
        _turn(50)
    _turn(1000)


def _tell(what: str, pause: tuple[float, float]) -> None:
    print(
        f"{what:9} held {1000 * pause[0]:4.0f} ms by the clock, {1000 * pause[1]:4.0f} ms of processor time"
    )


if __name__ == "__main__":
    main(Path(sys.argv[1]))
    os._exit(0)  # the window's threads and files go with the process
