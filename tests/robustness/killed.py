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
from pathlib import Path

from tests.robustness.savings import KINDS, Saving

_LEAST_S, _SAVINGS = 0.03, 3.0  # of waiting for the shot: several savings of any kind fall into it


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
        begun_s, version = time.monotonic(), 1
        saving.save(version)
        longest_s = max(_LEAST_S, _SAVINGS * (time.monotonic() - begun_s))
        for _ in range(count):
            confirmed = shot(saving, version + 1, chance.uniform(0.0, longest_s))
            unfinished = list(folder.glob(".*.part"))
            midway += bool(unfinished)
            for part in unfinished:
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
