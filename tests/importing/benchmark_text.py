"""Importing text beside reading it alone: ``python -m tests.importing.benchmark_text [ROWS]``.

The table has four columns (time, signal, reference, ground), as a 12-bit recorder of 10 V range would write
them with six decimals. The import writes the capture with overviews and fingerprints; `pyarrow.csv.read_csv`
only reads. Each runs in a process of its own, alternating, and the medians are compared: by the clock, and in
processor time of all threads, which a load of the machine changes less.
"""

from __future__ import annotations

import os
import statistics
import subprocess
import sys
import tempfile
from dataclasses import dataclass
from operator import attrgetter
from pathlib import Path

import numpy as np
import pyarrow as pa
from pyarrow import csv as arrow_csv

_TIMED = """
import re, sys, time
from pathlib import Path
{prepare}
start, busy = time.perf_counter(), time.process_time()
{work}
took_s, busy_s = time.perf_counter() - start, time.process_time() - busy
# Linux; getrusage would give the peak of the process that started this one
print(took_s, busy_s, int(re.search(r"VmHWM:\\s+(\\d+)", Path("/proc/self/status").read_text())[1]) / 1024)
"""
_READ = ("from pyarrow import csv", "csv.read_csv(sys.argv[1])")
_IMPORT = (
    "from analysis.importing.bring_in import import_capture\nPath(sys.argv[2]).unlink(missing_ok=True)",
    "import_capture([Path(sys.argv[1])], Path(sys.argv[2]))",
)


def write_table(path: Path, rows: int, *, quantised: bool) -> None:
    """A table as a recorder writes it: counts of 12 bits, or noise down to the last decimal."""
    random = np.random.default_rng(1)
    step_v = 10.0 / 4096.0
    time_s = np.round(np.arange(rows) * 1e-5, 5)
    signal_v = 2.5 + 2.0 * np.sin(time_s) + random.normal(0.0, 0.003, rows)
    columns = {
        "signal": signal_v,
        "reference": random.normal(5.0, 0.002, rows),
        "ground": random.normal(0.012, 0.001, rows),
    }
    if quantised:
        columns = {name: np.round(volts / step_v) * step_v for name, volts in columns.items()}
    rounded = {name: np.round(volts, 6) for name, volts in columns.items()}
    arrow_csv.write_csv(pa.table({"time": time_s, **rounded}), path)


@dataclass(frozen=True, slots=True)
class _Run:
    """One run: seconds by the clock and of the processors, and the most memory."""

    took_s: float
    busy_s: float
    peak_mb: float


def _run(parts: tuple[str, str], *arguments: Path) -> _Run:
    code = _TIMED.format(prepare=parts[0], work=parts[1])
    done = subprocess.run(
        [sys.executable, "-c", code, *map(str, arguments)], capture_output=True, text=True, check=True
    )
    return _Run(*map(float, done.stdout.split()))


def _said(read: list[_Run], brought: list[_Run]) -> str:
    """The medians of both sides and their ratios."""
    parts = []
    for name, of in (("by the clock", attrgetter("took_s")), ("of processor time", attrgetter("busy_s"))):
        read_s, import_s = statistics.median(map(of, read)), statistics.median(map(of, brought))
        parts.append(
            f"{name} read_csv {read_s:.2f} s, import {import_s:.2f} s, ratio {import_s / read_s:.2f}"
        )
    return "; ".join(parts)


def main() -> None:
    """Print both times, their ratios, the peak memory of the import, and the load of the machine."""
    rows = int(sys.argv[1]) if len(sys.argv) > 1 else 10_000_000
    with tempfile.TemporaryDirectory() as folder:
        source, target = Path(folder) / "table.csv", Path(folder) / "out.h5"
        for name, quantised in (("12-bit steps", True), ("noise to the last decimal", False)):
            write_table(source, rows, quantised=quantised)
            runs = [(_run(_READ, source), _run(_IMPORT, source, target)) for _ in range(3)]
            read, brought = [item for item, _ in runs], [item for _, item in runs]
            peak_mb = max(item.peak_mb for item in brought)
            print(
                f"{name}: {rows:,} rows, {source.stat().st_size / 1e6:.0f} MB; {_said(read, brought)};"
                f" peak {peak_mb:.0f} MB, capture {target.stat().st_size / 1e6:.0f} MB,"
                f" load {os.getloadavg()[0]:.1f}",
                flush=True,
            )


if __name__ == "__main__":
    main()
