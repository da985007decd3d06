"""Samples of a capture as CSV, Parquet, MAT or NPZ, equal to the last bit."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from pathlib import Path

import numpy as np
import pyarrow as pa
from numpy.typing import NDArray
from pyarrow import csv as arrow_csv
from pyarrow import parquet
from scipy import io

from analysis.captures.model import Capture, Record
from analysis.captures.replacing import replaced_at_the_end
from analysis.errors import ExportingError
from analysis.exporting.neutral import neutral
from analysis.intervals import Interval
from analysis.progress import Tick, ignore
from analysis.wording import say

_AT_ONCE = 256 * 1024
_MOST_MAT_BYTES = 2 * 1024**3 - 1  # an array of a MAT file of version 5 ends there


def export_samples(
    capture: Capture,
    target: Path,
    *,
    record: str | None = None,
    span_s: Interval | None = None,
    tick: Tick = ignore,
) -> list[Path]:
    """Write samples in volts, with their times in seconds.

    Parameters
    ----------
    capture : Capture
        Open.
    target : Path
        Its ending says the format. Several records give several files, ``name-001.csv`` and so on.
    record : str, optional
        One record; all of them where it is left out.
    span_s : Interval, optional
        Only samples of these times.
    tick : Tick
        Progress.

    Returns
    -------
    list of Path
        What was written.

    Raises
    ------
    ExportingError
        Where the format is unknown, nothing lies in the span, or a file cannot be written.
    """
    write = _WRITERS.get(target.suffix.lower())
    if write is None:
        raise ExportingError(
            say("samples cannot be written as {ending}", ending=target.suffix or target.name),
            say("choose .csv, .parquet, .mat or .npz"),
        )
    records = [item for item in capture.records if record in (None, item.name)]
    pieces = [(item, *_samples(item, span_s)) for item in records]
    pieces = [piece for piece in pieces if piece[2] > piece[1]]
    if not pieces:
        raise ExportingError(say("there are no such samples"), say("choose another record or span"))
    written = []
    for place, (item, start, stop) in enumerate(pieces):
        path = target if len(pieces) == 1 else target.with_stem(f"{target.stem}-{item.name}")
        if path.exists():
            raise ExportingError(say("a file of that name exists already"), say("choose another name"))
        with replaced_at_the_end(path, ExportingError) as temporary:
            write(item, start, stop, temporary)
        written.append(path)
        tick((place + 1) / len(pieces))
    return written


def _samples(record: Record, span_s: Interval | None) -> tuple[int, int]:
    if span_s is None:
        return 0, len(record)
    edges = (np.array([span_s.start, span_s.stop]) - record.first_sample_s) / record.sample_interval_s
    start, stop = (int(edge) for edge in np.clip(np.ceil(edges - 1e-9), 0, len(record)))
    return start, stop


def columns_of(record: Record, start: int, stop: int) -> dict[str, NDArray[np.float64]]:
    """Times and volts of a stretch by heading: ``time [s]``, ``signal [V]``; names cannot be formulas."""
    found = {"time [s]": record.time_s(start, stop)}
    found |= {f"{neutral(item.name)} [V]": item.volts(start, stop) for item in record.channels}
    return found


def _tables(record: Record, start: int, stop: int) -> Iterator[pa.Table]:
    for first in range(start, stop, _AT_ONCE):
        yield pa.table(columns_of(record, first, min(first + _AT_ONCE, stop)))


def _csv(record: Record, start: int, stop: int, path: Path) -> None:
    writer: arrow_csv.CSVWriter | None = None
    for table in _tables(record, start, stop):
        writer = writer or arrow_csv.CSVWriter(path, table.schema)
        writer.write_table(table)
    if writer is not None:
        writer.close()


def _parquet(record: Record, start: int, stop: int, path: Path) -> None:
    writer: parquet.ParquetWriter | None = None
    for table in _tables(record, start, stop):
        writer = writer or parquet.ParquetWriter(path, table.schema)
        writer.write_table(table)
    if writer is not None:
        writer.close()


def _variables(record: Record, start: int, stop: int) -> Mapping[str, NDArray[np.float64]]:
    names = {key: key.split(" [")[0] for key in columns_of(record, start, start)}
    return {_variable(names[key]): values for key, values in columns_of(record, start, stop).items()}


def _variable(name: str) -> str:
    plain = "".join(letter if letter.isascii() and letter.isalnum() else "_" for letter in name)[:60]
    return plain if plain[:1].isalpha() else f"c_{plain}"


def _mat(record: Record, start: int, stop: int, path: Path) -> None:
    if (stop - start) * 8 > _MOST_MAT_BYTES:
        raise ExportingError(say("a MAT file cannot hold so many samples"), say("choose a span, or Parquet"))
    # A name without ".mat" would get it added.
    io.savemat(
        str(path),
        {**_variables(record, start, stop), "sample_interval": record.sample_interval_s},
        appendmat=False,
    )


def _npz(record: Record, start: int, stop: int, path: Path) -> None:
    with path.open("wb") as file:
        np.savez_compressed(file, **{**_variables(record, start, stop), "sample_interval": np.float64(record.sample_interval_s)})  # type: ignore[arg-type]  # fmt: skip  # noqa: E501


_WRITERS: dict[str, Callable[[Record, int, int, Path], None]] = {
    ".csv": _csv,
    ".parquet": _parquet,
    ".mat": _mat,
    ".npz": _npz,
}
