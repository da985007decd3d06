"""Reading a capture beside h5py itself: ``python -m tests.captures.benchmark_reading [MILLIONS]``."""

from __future__ import annotations

import sys
import tempfile
import time
from collections.abc import Callable
from pathlib import Path

import h5py
import numpy as np

from analysis.captures.memory import make_capture, make_record
from analysis.captures.model import Role, Scaling
from analysis.captures.reading import open_capture
from analysis.captures.writing import write_capture

ROUNDS = 7


def seconds(read: Callable[[], object]) -> float:
    """Time of one reading."""
    begin = time.perf_counter()
    read()
    return time.perf_counter() - begin


def main() -> None:
    """Print the best of some rounds of each, taken in turns, and their ratio."""
    count = round(float(sys.argv[1] if len(sys.argv) > 1 else 10.0) * 1e6)
    codes = np.random.default_rng(1).integers(0, 4096, count).astype(np.int16)
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "capture.h5"
        record = make_record("001", 1e-4, {Role.SIGNAL: (codes, Scaling(0.001))})
        write_capture(make_capture([record]), path)
        with h5py.File(path) as file, open_capture(path) as opened:
            stored, source = file["records/001/signal"], opened.capture.records[0].channels[0].source
            rounds = [
                (seconds(lambda: source.read(0, len(source))), seconds(lambda: stored[()]))
                for _ in range(ROUNDS)
            ]
    ours, theirs = (min(times) for times in zip(*rounds, strict=True))
    print(f"{count:,} samples: {ours:.3f} s, h5py {theirs:.3f} s, ratio {ours / theirs:.2f}")


if __name__ == "__main__":
    main()
