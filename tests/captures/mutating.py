"""Opens seeded mutations of a capture and reads everything; run in a process that may crash.

Called as ``python mutating.py FILE SEED COUNT``; prints how many mutations opened and how many were
refused. Anything but a `CaptureError` ends it with a traceback, and the test that started it fails.
"""

from __future__ import annotations

import random
import sys
from pathlib import Path

from analysis.captures.reading import open_capture
from analysis.captures.verification import verify_capture
from analysis.errors import CaptureError


def mutated(original: bytes, chance: random.Random) -> bytes:
    """One to eight bytes changed, or a piece cut off or overwritten."""
    content = bytearray(original)
    kind = chance.random()
    if kind < 0.1:
        return bytes(content[: chance.randrange(len(content))])
    if kind < 0.2:
        start = chance.randrange(len(content))
        content[start : start + chance.randrange(1, 64)] = b"\xff" * chance.randrange(1, 64)
        return bytes(content)
    for _ in range(chance.randint(1, 8)):
        content[chance.randrange(len(content))] = chance.choice(
            (0, 1, 0x7F, 0x80, 0xFF, chance.randrange(256))
        )
    return bytes(content)


def read_everything(path: Path) -> None:
    with open_capture(path) as opened:
        for record in opened.capture.records:
            for channel in record.channels:
                channel.volts()
    verify_capture(path)


def main() -> None:
    original, seed, count = Path(sys.argv[1]), int(sys.argv[2]), int(sys.argv[3])
    chance = random.Random(seed)
    content = original.read_bytes()
    victim = original.with_name("mutated.h5")
    opened = refused = 0
    for _ in range(count):
        victim.write_bytes(mutated(content, chance))
        try:
            read_everything(victim)
            opened += 1
        except CaptureError:
            refused += 1
    print(opened, refused)


if __name__ == "__main__":
    main()
