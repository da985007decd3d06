"""Damaged files by the thousand, each in a worker that is watched: who dies, hangs, swells or stumbles."""

from __future__ import annotations

import os
import selectors
import subprocess
import sys
import tempfile
import time
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from pathlib import Path
from typing import IO

ROOT = Path(__file__).resolve().parents[2]
LIMIT_S = 2.0
"""Processor time that a file may cost. Not the clock's: a machine that is busy otherwise is no hang."""

LIMIT_MB = 500
_PATIENCE_S = 20.0  # by the clock, for whatever waits without computing
_START_S = 60.0  # for the interpreter and its libraries, on a busy machine
_TICKS = os.sysconf("SC_CLK_TCK") if hasattr(os, "sysconf") else 100


@dataclass(slots=True)
class Tally:
    """What became of the damaged files of one kind.

    Parameters
    ----------
    kind : str
    taken, refused : int
        Opened all the same; refused with a sentence.
    crashes, hangs, swollen, tracebacks : list of str
        What must not be: the trial, and what was printed.
    slowest_s, largest_mb : float
        Over all trials that ended.
    """

    kind: str
    taken: int = 0
    refused: int = 0
    crashes: list[str] = field(default_factory=list)
    hangs: list[str] = field(default_factory=list)
    swollen: list[str] = field(default_factory=list)
    tracebacks: list[str] = field(default_factory=list)
    slowest_s: float = 0.0
    largest_mb: float = 0.0

    @property
    def count(self) -> int:
        """Trials altogether."""
        return self.taken + self.refused + len(self.crashes) + len(self.hangs) + len(self.tracebacks)

    @property
    def bad(self) -> list[str]:
        """Every trial that must not be, with its kind of trouble."""
        troubles = {
            "crash": self.crashes, "hang": self.hangs, "memory": self.swollen, "traceback": self.tracebacks
        }  # fmt: skip
        return [f"{self.kind}: {name} {item}" for name, items in troubles.items() for item in items]


def run_trials(kind: str, count: int, seed: int = 1) -> Tally:
    """Try damaged files of a kind.

    Parameters
    ----------
    kind : str
        One of `tests.robustness.tasks.TASKS`.
    count, seed : int

    Returns
    -------
    Tally
    """
    tally = Tally(kind)
    number = 0
    with tempfile.TemporaryDirectory() as folder:
        while number < count:
            number = _one_worker(tally, Path(folder), seed, number, count)
    return tally


def _one_worker(tally: Tally, folder: Path, seed: int, first: int, stop: int) -> int:
    """Trials until the worker has done all, or one ended it; the next trial's number."""
    after = first
    running: int | None = None
    with _worker(tally.kind, folder, seed, first, stop - first) as (process, complaints):
        for line in _lines(process):
            sign, word, *rest = line.split()
            if sign == "+":
                running = int(word)
                continue
            after, running = int(word) + 1, None
            _count(tally, int(word), rest[0], float(rest[1]), int(rest[2]), complaints)
        if running is None and process.poll() == 0:
            return after
        if running is None:
            raise RuntimeError(f"the worker of {tally.kind} did not start: {_tail(complaints)}")
        died = process.poll()
        found = tally.hangs if died is None else tally.crashes
        found.append(f"{running} (exit {died}) {_tail(complaints)}")
        return running + 1


def _count(
    tally: Tally, number: int, outcome: str, spent_s: float, peak_mb: int, complaints: IO[bytes]
) -> None:
    if outcome == "traceback":
        tally.tracebacks.append(f"{number} {_tail(complaints)}")
    else:
        setattr(tally, outcome, getattr(tally, outcome) + 1)
    if spent_s > LIMIT_S:
        tally.hangs.append(f"{number} took {spent_s:.1f} s")
    if peak_mb > LIMIT_MB:
        tally.swollen.append(f"{number} took {peak_mb} MB")
    tally.slowest_s, tally.largest_mb = max(tally.slowest_s, spent_s), max(tally.largest_mb, peak_mb)


@contextmanager
def _worker(
    kind: str, folder: Path, seed: int, first: int, count: int
) -> Iterator[tuple[subprocess.Popen[bytes], IO[bytes]]]:
    command = [
        sys.executable,
        "-m",
        "tests.robustness.worker",
        kind,
        str(folder),
        str(seed),
        str(first),
        str(count),
    ]
    with tempfile.TemporaryFile() as complaints:
        process = subprocess.Popen(
            command,
            cwd=ROOT,
            stdout=subprocess.PIPE,
            stderr=complaints,
            env=os.environ | {"OPENBLAS_NUM_THREADS": "1"},
        )
        try:
            yield process, complaints
        finally:
            process.kill()
            process.wait()
            if process.stdout is not None:
                process.stdout.close()


def _lines(process: subprocess.Popen[bytes]) -> Iterator[str]:
    """What the worker prints, until it ends or must be taken for hung."""
    assert process.stdout is not None
    handle = process.stdout.fileno()
    with selectors.DefaultSelector() as selector:
        selector.register(handle, selectors.EVENT_READ)
        left, patience_s = b"", _START_S
        heard_s, spent_s = time.monotonic(), 0.0
        while True:
            if selector.select(timeout=0.5):
                piece = os.read(handle, 65536)
                if not piece:
                    process.wait()
                    return
                *whole, left = (left + piece).split(b"\n")
                yield from (line.decode() for line in whole)
                patience_s = _PATIENCE_S
                heard_s, spent_s = time.monotonic(), _spent_s(process.pid)
            elif _hangs(process.pid, heard_s, spent_s, patience_s):
                return


def _hangs(pid: int, heard_s: float, spent_s: float, patience_s: float) -> bool:
    silent_s = time.monotonic() - heard_s
    computing = patience_s < _START_S and _spent_s(pid) - spent_s > LIMIT_S
    return silent_s > patience_s or computing


def _spent_s(pid: int) -> float:
    """Processor time of a process and of the children that it waited for (proc(5), ``stat``)."""
    try:
        fields = Path(f"/proc/{pid}/stat").read_text().rpartition(")")[2].split()
    except OSError:
        return 0.0
    return sum(int(item) for item in fields[11:15]) / _TICKS


def _tail(complaints: IO[bytes]) -> str:
    """What the worker said last on standard error."""
    complaints.seek(0)
    return complaints.read()[-1500:].decode("utf-8", "replace").strip()
