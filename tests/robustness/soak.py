"""Long use, condensed: a window is opened, worked in and closed again and again; what it keeps is counted.

Called as ``python -m tests.robustness.soak ROUNDS``; prints a line a round: memory in MB, files, threads.
"""

from __future__ import annotations

import gc
import os
import subprocess
import sys
import tempfile
import time
from collections.abc import Callable
from dataclasses import dataclass
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

import numpy as np
from scipy import stats

from analysis.captures import layout
from tests.robustness.trials import ROOT

if TYPE_CHECKING:
    from app.main_window import Window

_WARM = 0.2
"""Share of the rounds in which caches fill: fonts, pictures, compiled expressions. They are not judged."""

_WAIT_S = 60.0
LIMIT_KB_A_ROUND = 20.0
"""Growth that is called none: over 500 rounds 10 MB; a capture of the soak alone takes ten times as much a
round."""


@dataclass(frozen=True, slots=True)
class Wear:
    """What long use cost.

    Parameters
    ----------
    rounds : int
    memory_mb : tuple of float
        After the warm rounds, and at the end.
    kb_a_round : tuple of float
        Growth of the memory after the warm rounds: the median slope over all pairs of rounds (Theil and Sen),
        and the ends of its interval of 95 %.
    handles, threads : tuple of int
        After the warm rounds, and at the end.
    """

    rounds: int
    memory_mb: tuple[float, float]
    kb_a_round: tuple[float, float, float]
    handles: tuple[int, int]
    threads: tuple[int, int]

    @property
    def grows(self) -> bool:
        """Whether something is kept that should have been let go."""
        # With few rounds a cache that fills late would be taken for a leak.
        memory = self.rounds >= 100 and self.kb_a_round[0] > LIMIT_KB_A_ROUND
        return memory or self.handles[1] > self.handles[0] or self.threads[1] > self.threads[0]

    def __str__(self) -> str:
        (early_mb, late_mb), handles, threads = self.memory_mb, self.handles, self.threads
        slope, low, high = self.kb_a_round
        return (
            f"{self.rounds} rounds of open, zoom, mark, undo, compare, report, close: memory {early_mb:.0f}"
            f" MB after the warm rounds, {late_mb:.0f} MB at the end ({slope:+.1f} KB a round, 95 %:"
            f" {low:+.1f} to {high:+.1f}), open files {handles[0]}, then {handles[1]}, threads {threads[0]},"
            f" then {threads[1]}."
        )


def run_soak(rounds: int) -> Wear:
    """Run the rounds in a process of their own."""
    done = subprocess.run(
        [sys.executable, "-m", "tests.robustness.soak", str(rounds)],
        cwd=ROOT,
        capture_output=True,
        text=True,
        check=False,
        env=os.environ | {"QT_QPA_PLATFORM": "offscreen", "OPENBLAS_NUM_THREADS": "1"},
    )
    if done.returncode:
        raise RuntimeError(done.stderr)
    table = np.array([[float(word) for word in line.split()] for line in done.stdout.splitlines()])
    judged = table[int(_WARM * rounds) :]
    slope, _, low, high = stats.theilslopes(judged[:, 0] * 1024)
    return Wear(
        rounds,
        (float(judged[0, 0]), float(judged[-1, 0])),
        (float(slope), float(low), float(high)),
        (int(judged[0, 1]), int(judged[-1, 1])),
        (int(judged[0, 2]), int(judged[-1, 2])),
    )


def _wait(fact: Callable[[], bool]) -> None:
    from PySide6.QtTest import QTest

    deadline_s = time.monotonic() + _WAIT_S
    while not fact():
        if time.monotonic() > deadline_s:
            raise TimeoutError("the window did not get there")
        QTest.qWait(5)


def one_round(captures: list[Path], number: int) -> None:
    """A visit: two captures, views, a marker and its undoing, both compared, a report, everything closed."""
    from app.main_window import Window
    from app.settings import MemoryStore, Settings
    from app.tools import real_tools

    window = Window(real_tools(), Settings(MemoryStore()))
    window.resize(1366, 768)
    window.show()
    for path in captures:
        window.open_file(path)
        review = layout.review_path(path)
        _wait(partial(_is_open, window, review))
        window.focus.zoom(0.2)
        window.focus.pan(0.3)
        window.desk.markers.mark_moment(0.5)
        window.actions_by_name["undo"].trigger()
        window.grab()
    window.show_compare()
    window.compare.open_file(captures[0])
    _wait(lambda: window.compare.comparison is not None)
    window.grab()
    window.show_review()
    target = captures[0].with_name(f"report-{number % 2}.html")
    target.unlink(missing_ok=True)
    window.report_desk.save(target)
    _wait(target.exists)
    _wait(lambda: not window.jobs.busy())
    window.close()
    window.deleteLater()


def _is_open(window: Window, review: Path) -> bool:
    """Whether a capture is examined, and its review read."""
    return window.session.findings is not None and window.keeper.path == review


def _held() -> tuple[float, int, int]:
    """Resident memory in MB, open files, threads."""
    pages = int(Path("/proc/self/statm").read_text().split()[1])
    handles = len(list(Path("/proc/self/fd").iterdir()))
    return pages * os.sysconf("SC_PAGE_SIZE") / 1e6, handles, len(list(Path("/proc/self/task").iterdir()))


def main() -> None:
    """Run as many rounds as asked."""
    from PySide6.QtCore import QCoreApplication, QEvent

    from app.window import application
    from tests.robustness import originals

    app = application()
    with tempfile.TemporaryDirectory() as name:
        captures = originals.visits(Path(name))
        for number in range(int(sys.argv[1])):
            one_round(captures, number)
            app.processEvents()
            QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete.value)
            gc.collect()
            print(*_held(), flush=True)


if __name__ == "__main__":
    main()
