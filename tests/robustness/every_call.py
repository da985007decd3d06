"""A saving that is killed, or refused the disk, at each of its system calls, one after the other.

Called as ``python -m tests.robustness.every_call EVERY KIND...``: every call, or every so many; prints a line
of numbers a kind, those of `Ends`. What random moments leave out, this does not.
"""

from __future__ import annotations

import errno
import os
import subprocess
import sys
import tempfile
from collections.abc import Iterable
from dataclasses import astuple, dataclass
from functools import partial
from pathlib import Path

from tests.robustness.savings import KINDS, in_place, names_in
from tests.robustness.tracing import TOLD, may_refuse, traced
from tests.robustness.trials import ROOT


@dataclass(frozen=True, slots=True)
class Ends:
    """How a saving ended that was disturbed at each of its calls.

    Parameters
    ----------
    calls : int
        Those that can change a disk, of one saving.
    killed : int
        How often it was killed at one of them.
    damaged : int
        Files that were neither the old version nor the new one, whole.
    stray : int
        Other files left than the ``.part`` that a later saving clears away.
    stuck : int
        Kills after which the next saving did not work at once.
    refused, told, silent : int
        How often a full disk refused a call and all later ones; how often that ended with a sentence; how
        often it was neither told nor saved.
    refused_badly : int
        Refusals that left a damaged file, anything lying about, or no sentence.
    """

    calls: int
    killed: int = 0
    damaged: int = 0
    stray: int = 0
    stuck: int = 0
    refused: int = 0
    told: int = 0
    silent: int = 0
    refused_badly: int = 0

    @property
    def bad(self) -> int:
        """What must not be."""
        return self.damaged + self.stray + self.stuck + self.silent + self.refused_badly


def run_every_call(kinds: Iterable[str], every: int = 1) -> dict[str, Ends]:
    """Disturb the savings of these kinds at every call, or at every so many, in a process of its own."""
    asked = list(kinds)
    done = subprocess.run(
        [sys.executable, "-m", "tests.robustness.every_call", str(every), *asked],
        cwd=ROOT,
        capture_output=True,
        text=True,
        check=False,
        env=os.environ | {"OPENBLAS_NUM_THREADS": "1"},
    )
    if done.returncode:
        raise RuntimeError(done.stderr)
    ends = [Ends(*map(int, line.split())) for line in done.stdout.splitlines()]
    return dict(zip(asked, ends, strict=True))


def why_not() -> str:
    """Why this cannot be done here; empty where it can. Asked in a process that may wait for its children."""
    done = subprocess.run(
        [sys.executable, "-c", "from tests.robustness.tracing import may_trace; print(may_trace())"],
        cwd=ROOT,
        capture_output=True,
        text=True,
        check=True,
    )
    return done.stdout.strip()


class _Bench:
    """One kind of file, in a folder of its own, and what became of it so far."""

    def __init__(self, kind: str, folder: Path) -> None:
        self.folder, self.saving = folder, {**KINDS, "in place": in_place}[kind](folder)
        self.saving.save(1)
        whole = traced(partial(self.saving.save, 2))
        if whole.status or self.saving.version() != 2:
            raise RuntimeError(f"a saving that nobody disturbs does not work: {whole}")
        self.calls = whole.calls
        self.usual = names_in(folder)
        self.damaged = self.stray = self.stuck = self.refused = self.told = self.silent = self.badly = 0

    def kill(self, at: int) -> bool:
        """Kill it at one call; False where it was through before."""
        before = self._version()
        if traced(partial(self.saving.save, before + 1), kill_at=at).status >= 0:
            return False
        left = self._left()
        self.stray += any(not name.endswith(".part") for name in left)
        if self._version() not in (before, before + 1):
            self.damaged += 1
        again = before + 2
        self.stuck += bool(traced(partial(self.saving.save, again)).status) or self._version() != again
        for name in left:
            (self.folder / name).unlink(missing_ok=True)
        return True

    def refuse(self, at: int) -> None:
        """Let the disk be full from one call on."""
        before = self._version()
        trace = traced(partial(self.saving.save, before + 1), refuse_from=at, error=errno.ENOSPC)
        after = self._version()
        self.refused += 1
        self.told += trace.status == TOLD
        self.silent += trace.status == 0 and after != before + 1
        whole = after in (before, before + 1) and trace.status in (0, TOLD)
        self.badly += not whole or bool(self._left())

    def _version(self) -> int:
        try:
            return self.saving.version()
        except Exception as error:  # whatever it is: the file is not whole
            print(error, file=sys.stderr)
            return -1

    def _left(self) -> set[str]:
        """Names in the folder that were not there after a saving that nobody disturbed; versions aside."""
        return names_in(self.folder) - self.usual


def _ends(kind: str, every: int) -> Ends:
    with tempfile.TemporaryDirectory() as name:
        bench = _Bench(kind, Path(name))
        places = range(0, len(bench.calls), every)
        killed = sum(bench.kill(at) for at in places)
        for at in () if may_refuse() else places:
            bench.refuse(at)
        return Ends(
            len(bench.calls), killed, bench.damaged, bench.stray, bench.stuck,
            bench.refused, bench.told, bench.silent, bench.badly,
        )  # fmt: skip


def main() -> None:
    """Disturb the kinds that are asked for."""
    for kind in sys.argv[2:]:
        print(*astuple(_ends(kind, int(sys.argv[1]))))


if __name__ == "__main__":
    main()
