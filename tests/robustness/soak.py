"""Long use, condensed: a window is opened, worked in and closed again and again; what it keeps is counted.

Called as ``python -m tests.robustness.soak ROUNDS [LEAK]``; prints a line a round: `COLUMNS`. A leak out of
`LEAKS` is planted in each round where one is named, to see that it is found.
"""

from __future__ import annotations

import ctypes
import gc
import os
import subprocess
import sys
import tempfile
import threading
import time
from collections.abc import Callable
from dataclasses import dataclass
from functools import cache, partial
from pathlib import Path
from typing import TYPE_CHECKING, Any

import numpy as np
from numpy.typing import NDArray
from scipy import stats

from analysis.captures import layout
from tests.robustness.trials import ROOT

if TYPE_CHECKING:
    from app.main_window import Window

_JUDGED = 0.5
"""Share of the rounds, the last ones, that are judged: before, caches fill (fonts, pictures, compiled
expressions), and the heap takes the shape that a visit needs."""

_WAIT_S = 60.0
_ENOUGH_ROUNDS = 40
"""With fewer a cache that fills late would be taken for a leak; files and threads are judged always."""

RESIDENT_KB, HEAP_KB, BLOCKS = 20.0, 1.0, 25.0
"""Growth a round that is called none. Of the memory that the process holds, over 500 rounds 10 MB: that
grows too where freed memory lies in pieces. Pages of files (the libraries' code) are not counted: the system
takes them away and brings them back as it likes. Of what is in use on the heap of C (Qt, numpy, HDF5,
Python's objects of over 512 bytes), and of the blocks in use for Python's smaller objects: these grow by a
true leak alone."""

COLUMNS = ("resident KB", "heap in use KB", "Python blocks", "files", "threads")


@dataclass(frozen=True, slots=True)
class Growth:
    """How a quantity grows with the rounds: the median slope over all pairs (Theil and Sen), and its 95 %.

    The interval takes rounds as independent of each other, which they are not quite.
    """

    a_round: float
    low: float
    high: float

    def __str__(self) -> str:
        return f"{self.a_round:+.2f} a round (95 %: {self.low:+.2f} to {self.high:+.2f})"


@dataclass(frozen=True, slots=True)
class Wear:
    """What long use cost.

    Parameters
    ----------
    rounds : int
    memory_mb : tuple of float
        When half of the rounds were done, and at the end.
    resident_kb, heap_kb, blocks : Growth
        Over the second half: memory of the process, in use on the heap, blocks of small Python objects.
    handles, threads : tuple of int
        When half of the rounds were done, and at the end.
    """

    rounds: int
    memory_mb: tuple[float, float]
    resident_kb: Growth
    heap_kb: Growth
    blocks: Growth
    handles: tuple[int, int]
    threads: tuple[int, int]

    @property
    def grows(self) -> bool:
        """Whether something is kept that should have been let go."""
        over = (
            self.resident_kb.a_round > RESIDENT_KB
            or self.heap_kb.a_round > HEAP_KB
            or self.blocks.a_round > BLOCKS
        )
        kept = self.handles[1] > self.handles[0] or self.threads[1] > self.threads[0]
        return kept or (self.rounds >= _ENOUGH_ROUNDS and over)

    def __str__(self) -> str:
        (early_mb, late_mb), handles, threads = self.memory_mb, self.handles, self.threads
        return (
            f"{self.rounds} rounds of open, zoom, mark, undo, compare, report, close; in the second half:"
            f" memory {early_mb:.0f} MB, then {late_mb:.0f} MB, {self.resident_kb} KB; in use on the heap"
            f" {self.heap_kb} KB; small Python objects {self.blocks} blocks; open files {handles[0]}, then"
            f" {handles[1]}; threads {threads[0]}, then {threads[1]}."
        )


def run_soak(rounds: int, leak: str = "", *, window: bool = True) -> Wear:
    """Run the rounds in a process of their own.

    Parameters
    ----------
    rounds : int
    leak : str
        One of `LEAKS` to plant in each round; empty for none.
    window : bool
        Without it a round does nothing but leak.
    """
    done = subprocess.run(
        [sys.executable, "-m", "tests.robustness.soak", str(rounds), leak, "window" if window else ""],
        cwd=ROOT,
        capture_output=True,
        text=True,
        check=False,
        env=os.environ | {"QT_QPA_PLATFORM": "offscreen", "OPENBLAS_NUM_THREADS": "1"},
    )
    if done.returncode:
        raise RuntimeError(done.stderr)
    return judged(np.array([[float(word) for word in line.split()] for line in done.stdout.splitlines()]))


def judged(table: NDArray[np.float64]) -> Wear:
    """What a table with a row a round and `COLUMNS` says of the wear."""
    rounds = len(table)
    late = table[round((1.0 - _JUDGED) * rounds) :]
    return Wear(
        rounds,
        memory_mb=(float(late[0, 0]) / 1024, float(late[-1, 0]) / 1024),
        resident_kb=_growth(late[:, 0]),
        heap_kb=_growth(late[:, 1]),
        blocks=_growth(late[:, 2]),
        handles=(int(late[0, 3]), int(late[-1, 3])),
        threads=(int(late[0, 4]), int(late[-1, 4])),
    )


def _growth(values: NDArray[np.float64]) -> Growth:
    slope, _, low, high = stats.theilslopes(values)
    return Growth(float(slope), float(low), float(high))


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


class _Heap(ctypes.Structure):
    """``struct mallinfo2`` of glibc 2.33 and later."""

    _fields_ = [
        (name, ctypes.c_size_t)
        for name in (
            "arena",
            "ordblks",
            "smblks",
            "hblks",
            "hblkhd",
            "usmblks",
            "fsmblks",
            "uordblks",
            "fordblks",
            "keepcost",
        )
    ]


@cache
def _mallinfo2() -> Callable[[], _Heap] | None:
    found = getattr(ctypes.CDLL(None), "mallinfo2", None)
    if found is not None:
        found.restype = _Heap
    return found


def heap_in_use_kb() -> float:
    """What C code and large Python objects hold; 0 where the library of C does not count it."""
    mallinfo2 = _mallinfo2()
    if mallinfo2 is None:
        return 0.0
    heap = mallinfo2()
    return float(heap.uordblks + heap.hblkhd) / 1024


def _held() -> tuple[float, float, int, int, int]:
    """One row of `COLUMNS`, after everything that can be let go was."""
    gc.collect()
    status = Path("/proc/self/status").read_text()
    handles = len(list(Path("/proc/self/fd").iterdir()))
    threads = len(list(Path("/proc/self/task").iterdir()))
    resident_kb = float(status.partition("RssAnon:")[2].split()[0])
    return resident_kb, heap_in_use_kb(), sys.getallocatedblocks(), handles, threads


_KEPT: list[Any] = []


def _keep_thread() -> None:
    threading.Thread(target=threading.Event().wait, daemon=True).start()


LEAKS: dict[str, Callable[[], object]] = {
    "objects": lambda: _KEPT.extend(f"{time.monotonic_ns()}" for _ in range(50)),
    "array": lambda: _KEPT.append(np.ones(300)),
    "heap": lambda: ctypes.CDLL(None).malloc(4000),
    "file": lambda: _KEPT.append(os.dup(0)),
    "thread": _keep_thread,
}
"""What may be planted in each round: 50 small objects, an array of 2.4 KB, 4 KB of C's heap, a file, a
thread."""


def _window_rounds(rounds: int, leak: Callable[[], object]) -> None:
    from PySide6.QtCore import QCoreApplication, QEvent

    from app.window import application
    from tests.robustness import originals

    app = application()
    with tempfile.TemporaryDirectory() as name:
        captures = originals.visits(Path(name))
        for number in range(rounds):
            one_round(captures, number)
            leak()
            app.processEvents()
            QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete.value)
            print(*_held(), flush=True)


def main() -> None:
    """Run as many rounds as asked."""
    rounds, leak = int(sys.argv[1]), LEAKS.get(sys.argv[2] if len(sys.argv) > 2 else "", lambda: None)
    if len(sys.argv) < 4 or sys.argv[3]:
        _window_rounds(rounds, leak)
        return
    for _ in range(rounds):
        leak()
        print(*_held(), flush=True)


if __name__ == "__main__":
    main()
