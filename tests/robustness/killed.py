"""Saves again and again, and is killed at random moments: what lies there must be whole, and none too old.

Called as ``python -m tests.robustness.killed KIND COUNT SEED``; prints how many files were damaged, how many
had lost what was saved before, and how often the shot fell into the writing itself. It forks, so it must not
be run inside a process with threads.
"""

from __future__ import annotations

import os
import random
import signal
import struct
import sys
import tempfile
import time
from collections.abc import Callable
from dataclasses import dataclass, replace
from pathlib import Path

from analysis.captures.reading import open_capture
from analysis.captures.verification import Match, verify_capture
from analysis.captures.writing import write_capture
from analysis.review.model import PointMarker
from analysis.review.sidecar import read_sidecar, write_sidecar
from app.reporting.making import Wanted, pages_of, store, subject_of
from app.reporting.materials import gather
from tests.captures.examples import small_capture

_LONGEST_S = 0.03  # of waiting for the shot: several savings of any kind fall into it


@dataclass(frozen=True, slots=True)
class Saving:
    """A kind of file that is saved.

    Parameters
    ----------
    save : callable
        Writes a numbered version over the one before.
    version : callable
        Number of the version that lies there; raises anything where it is not whole.
    """

    save: Callable[[int], None]
    version: Callable[[], int]


def of_reviews(folder: Path) -> Saving:
    """A review with ever more markers, saved as the window does."""
    capture = folder / "a.h5"
    write_capture(small_capture(100), capture)
    state = [read_sidecar(capture)]

    def save(number: int) -> None:
        markers = tuple(PointMarker(str(item), "001", 0.0, str(number)) for item in range(number % 50 + 1))
        state[0] = write_sidecar(state[0], replace(state[0].review, markers=markers))

    def version() -> int:
        found = read_sidecar(capture)
        if found.trouble:
            raise ValueError(found.trouble)
        state[0] = found
        return int(found.review.markers[0].label) if found.review.markers else 0

    return Saving(save, version)


def of_captures(folder: Path) -> Saving:
    """A capture written over an older one."""
    target = folder / "a.h5"

    def save(number: int) -> None:
        write_capture(replace(small_capture(5000), title=str(number)), target, replace=True)

    def version() -> int:
        if not target.exists():
            return 0
        if verify_capture(target).content is not Match.MATCHES:
            raise ValueError("the content is another one")
        with open_capture(target) as opened:
            return int(opened.capture.title)

    return Saving(save, version)


def of_reports(folder: Path) -> Saving:
    """A report stored over an older one; its text is made beforehand."""
    capture, target = folder / "a.h5", folder / "a.html"
    write_capture(small_capture(3000), capture)
    with subject_of(str(capture)) as subject:
        materials = gather(pages_of(subject, None, Wanted(today="2026-01-01")), folder)

    def save(number: int) -> None:
        store(replace(materials, pages=replace(materials.pages, title=f"title-{number}-")), target, "a4")

    def version() -> int:
        if not target.exists():
            return 0
        text = target.read_text(encoding="utf-8")
        if not text.rstrip().endswith("</html>"):
            raise ValueError("the end of the report is missing")
        return int(text.partition("title-")[2].partition("-")[0])

    return Saving(save, version)


KINDS = {"review": of_reviews, "capture": of_captures, "report": of_reports}


def shot(saving: Saving, first: int, wait_s: float) -> int:
    """Save versions from `first` on in a process that is killed; the last version that was surely saved."""
    out, into = os.pipe()
    child = os.fork()
    if child == 0:
        number = first
        while True:
            saving.save(number)
            os.write(into, struct.pack("<q", number))
            number += 1
    os.close(into)
    time.sleep(wait_s)
    os.kill(child, signal.SIGKILL)
    os.waitpid(child, 0)
    with os.fdopen(out, "rb") as pipe:
        said = pipe.read()
    return struct.unpack("<q", said[-8:])[0] if said else first - 1


def main() -> None:
    """Kill as often as asked."""
    kind, count, chance = sys.argv[1], int(sys.argv[2]), random.Random(sys.argv[3])
    damaged = lost = midway = 0
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        saving = KINDS[kind](folder)
        version = 0
        for _ in range(count):
            confirmed = shot(saving, version + 1, chance.uniform(0.0, _LONGEST_S))
            midway += bool(list(folder.glob(".*.part")))
            for part in folder.glob(".*.part"):
                part.unlink()
            try:
                version = saving.version()
            except Exception as error:  # whatever it is: the file is not whole
                print(error, file=sys.stderr)
                damaged += 1
                version = confirmed
            lost += version < confirmed
    print(damaged, lost, midway)


if __name__ == "__main__":
    main()
