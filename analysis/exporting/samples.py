"""Samples of a capture as CSV, Parquet, MAT, NPZ or a smaller capture, equal to the last bit."""

from __future__ import annotations

import uuid
import zipfile
from collections.abc import Callable, Iterator, Sequence
from dataclasses import replace
from pathlib import Path

import numpy as np
from numpy.typing import NDArray

from analysis.captures.model import Capture, Match, Record
from analysis.captures.replacing import replaced_at_the_end
from analysis.captures.spans import span_of
from analysis.captures.verification import with_content
from analysis.captures.writing import write_capture
from analysis.errors import ExportingError
from analysis.exporting.neutral import neutral
from analysis.intervals import Interval
from analysis.progress import Tick, ignore, part
from analysis.wording import say

FORMATS = (".csv", ".parquet", ".mat", ".npz", ".h5")
"""Endings of files that samples can be written to."""

_AT_ONCE = 256 * 1024
_MOST_MAT_BYTES = 2 * 1024**3 - 1  # a MAT file of version 5 ends there, and it is made in memory


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
        Its ending says the format, one of `FORMATS`. Several records give several files, ``name-001.csv`` and
        so on, but one capture (``.h5``).
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
        Where the format is unknown, nothing lies in the span, or a file cannot be written; and where a
        capture (``.h5``) is to be made of one that does not match the fingerprint in its file.
    """
    ending = target.suffix.lower()
    if ending not in FORMATS:
        raise ExportingError(
            say("samples cannot be written as {ending}", ending=target.suffix or target.name),
            say("choose .csv, .parquet, .mat, .npz or .h5"),
        )
    records = [item for item in capture.records if record in (None, item.name)]
    pieces = [(item, *_samples(item, span_s)) for item in records]
    pieces = [piece for piece in pieces if piece[2] > piece[1]]
    if not pieces:
        raise ExportingError(say("there are no such samples"), say("choose another record or span"))
    if ending == ".h5":
        return [_capture(capture, pieces, target, tick)]
    written = []
    for place, (item, start, stop) in enumerate(pieces):
        path = target if len(pieces) == 1 else target.with_stem(f"{target.stem}-{item.name}")
        _check_free(path)
        share = part(tick, place / len(pieces), (place + 1) / len(pieces))
        with replaced_at_the_end(path, ExportingError) as temporary:
            _WRITERS[ending](item, start, stop, temporary, share)
        written.append(path)
        share(1.0)
    return written


def _check_free(path: Path) -> None:
    if path.exists():
        raise ExportingError(say("a file of that name exists already"), say("choose another name"))


def _capture(capture: Capture, pieces: Sequence[tuple[Record, int, int]], target: Path, tick: Tick) -> Path:
    """A capture of its own out of stretches of records; it says which one it was cut from.

    It gets a fingerprint of its own, which would hide that the first one does not match any more.
    """
    _check_free(target)
    capture = with_content(capture, part(tick, 0.0, 0.3))
    if capture.content in (Match.DIFFERS, Match.UNREADABLE):
        raise ExportingError(
            say("the capture does not match the fingerprint in its file, and a capture made of it would"),
            say("open the original, or choose .csv, .parquet, .mat or .npz"),
        )
    whole = [len(item) for item in capture.records] == [stop - start for _, start, stop in pieces]
    records = tuple(
        item
        if (start, stop) == (0, len(item))
        else replace(span_of(item, start, stop, step=item.step, role=None), name=item.name)
        for item, start, stop in pieces
    )
    words = dict(capture.attributes) if whole else {**capture.attributes, "cut_from": capture.capture_id}
    made = replace(
        capture,
        capture_id=capture.capture_id if whole else str(uuid.uuid4()),
        records=records,
        attributes=words,
    )
    write_capture(made, target, tick=part(tick, 0.3, 1.0))
    return target


def _samples(record: Record, span_s: Interval | None) -> tuple[int, int]:
    if span_s is None:
        return 0, len(record)
    edges = (np.array([span_s.start, span_s.stop]) - record.first_sample_s) / record.sample_interval_s
    start, stop = (int(edge) for edge in np.clip(np.ceil(edges - 1e-9), 0, len(record)))
    return start, stop


def columns_of(record: Record, start: int, stop: int) -> dict[str, NDArray[np.float64]]:
    """Times and volts of a stretch by heading: ``time [s]``, ``signal [V]``; names cannot be formulas."""
    return {heading: fetch(start, stop) for heading, fetch in _columns(record).items()}


def _columns(record: Record) -> dict[str, Callable[[int, int], NDArray[np.float64]]]:
    """What fetches a stretch of each column, by heading."""
    volts = {f"{neutral(item.name)} [V]": item.volts for item in record.channels}
    return {"time [s]": record.time_s, **volts}


def _stretches(record: Record, start: int, stop: int, tick: Tick) -> Iterator[dict[str, NDArray[np.float64]]]:
    for first in range(start, stop, _AT_ONCE):
        last = min(first + _AT_ONCE, stop)
        yield columns_of(record, first, last)
        tick((last - start) / (stop - start))


def _csv(record: Record, start: int, stop: int, path: Path, tick: Tick) -> None:
    import pyarrow as pa  # here, since no window should wait for it when it opens
    from pyarrow import csv as arrow_csv

    schema = pa.table(columns_of(record, start, start)).schema
    with arrow_csv.CSVWriter(path, schema) as writer:
        for columns in _stretches(record, start, stop, tick):
            writer.write_table(pa.table(columns))


def _parquet(record: Record, start: int, stop: int, path: Path, tick: Tick) -> None:
    import pyarrow as pa
    from pyarrow import parquet

    schema = pa.table(columns_of(record, start, start)).schema
    with parquet.ParquetWriter(path, schema) as writer:
        for columns in _stretches(record, start, stop, tick):
            writer.write_table(pa.table(columns))


def _variables(record: Record) -> dict[str, str]:
    """Names that a variable may have, by heading; two that would be one are numbered."""
    found: dict[str, str] = {}
    for heading in _columns(record):
        plain = "".join(
            letter if letter.isascii() and letter.isalnum() else "_" for letter in heading.split(" [")[0]
        )[:58]
        plain = plain if plain[:1].isalpha() else f"c_{plain}"
        taken = {*found.values(), _INTERVAL}
        found[heading] = next(
            name for name in (plain, *(f"{plain}_{n}" for n in range(2, 999))) if name not in taken
        )
    return found


_INTERVAL = "sample_interval"


def _mat(record: Record, start: int, stop: int, path: Path, tick: Tick) -> None:
    from scipy import io

    names = _variables(record)
    if (stop - start) * 8 * len(names) > _MOST_MAT_BYTES:
        raise ExportingError(say("a MAT file cannot hold so many samples"), say("choose a span, or Parquet"))
    arrays = {name: np.empty(stop - start) for name in names.values()}
    done = 0
    for columns in _stretches(record, start, stop, part(tick, 0.0, 0.7)):
        for heading, values in columns.items():
            arrays[names[heading]][done : done + len(values)] = values
        done += len(next(iter(columns.values())))
    # A name without ".mat" would get it added.
    io.savemat(str(path), {**arrays, _INTERVAL: record.sample_interval_s}, appendmat=False)


def _npz(record: Record, start: int, stop: int, path: Path, tick: Tick) -> None:
    """As `numpy.savez_compressed` lays it out, but one stretch at a time."""
    names = _variables(record)
    with zipfile.ZipFile(path, "w", zipfile.ZIP_DEFLATED) as archive:
        for place, (heading, fetch) in enumerate(_columns(record).items()):
            share, name = part(tick, place / len(names), (place + 1) / len(names)), names[heading]
            with archive.open(f"{name}.npy", "w", force_zip64=True) as file:
                head = {"descr": "<f8", "fortran_order": False, "shape": (stop - start,)}
                np.lib.format.write_array_header_1_0(file, head)
                for first in range(start, stop, _AT_ONCE):
                    last = min(first + _AT_ONCE, stop)
                    file.write(fetch(first, last).astype("<f8", copy=False).tobytes())
                    share((last - start) / (stop - start))
        with archive.open(f"{_INTERVAL}.npy", "w") as file:
            np.lib.format.write_array(file, np.array(record.sample_interval_s), allow_pickle=False)


_WRITERS: dict[str, Callable[[Record, int, int, Path, Tick], None]] = {
    ".csv": _csv,
    ".parquet": _parquet,
    ".mat": _mat,
    ".npz": _npz,
}
