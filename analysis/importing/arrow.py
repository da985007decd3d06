"""Parquet and Feather files as tables, read batch by batch: memory does not grow with their length."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from contextlib import ExitStack
from pathlib import Path
from typing import Any

import numpy as np
import pyarrow as pa
from numpy.typing import NDArray
from pyarrow import ipc, parquet

from analysis.errors import ImportingError
from analysis.importing.arrow_claims import largest_batch_bytes
from analysis.importing.damage import readable, too_much
from analysis.importing.model import (
    MOST_BYTES,
    MOST_COLUMNS,
    Block,
    Column,
    Table,
    checked_columns,
)
from analysis.importing.units import split_heading
from analysis.progress import Tick
from analysis.wording import say

_BATCH_ROWS = 64 * 1024
_BUFFER_BYTES = 1024**2
"""With this Parquet is read page by page: 14 MB instead of 48 MB for a file of 38 MB (measured)."""

_MOST_BATCH_BYTES = 512 * 1024**2  # unpacked as a whole; writers make batches of some thousand rows
_MOST_PACKING = 400  # a constant packs a thousandfold; no recording does
_SMALL_BYTES = 64_000_000
_SECONDS = {"s": 1.0, "ms": 1e-3, "us": 1e-6, "ns": 1e-9}


def open_parquet(path: Path) -> Table:
    """A Parquet file; its columns of numbers and of times."""
    with ExitStack() as stack, readable("Parquet"):
        file = stack.enter_context(parquet.ParquetFile(path, buffer_size=_BUFFER_BYTES, pre_buffer=False))
        facts = file.metadata
        places = _usable(file.schema_arrow, facts.num_rows)
        whole = {place for place in places if _never_missing(facts, file.schema_arrow, place)}
        names = [file.schema_arrow.names[place] for place in places]
        alone = names if len(set(file.schema_arrow.names)) == len(file.schema_arrow.names) else None

        def batches() -> Iterator[pa.RecordBatch]:
            yield from file.iter_batches(batch_size=_BATCH_ROWS, columns=alone, use_threads=False)

        read = list(range(len(places))) if alone is not None else places
        reader = _Reader(file.schema_arrow, places, read, whole, facts.num_rows, batches)
        return reader.table(path, "parquet", stack.pop_all().close)


def open_feather(path: Path) -> Table:
    """A Feather file: its batches are mapped into memory, or unpacked one by one."""
    with ExitStack() as stack, readable("Feather"):
        source = stack.enter_context(pa.memory_map(str(path)))
        claimed = largest_batch_bytes(source.read_buffer())
        source.seek(0)
        if claimed > _MOST_BATCH_BYTES or claimed > max(_SMALL_BYTES, _MOST_PACKING * source.size()):
            raise too_much(claimed)
        file = stack.enter_context(ipc.open_file(source))
        return _of_file(path, file, stack.pop_all().close)


def _of_file(path: Path, file: Any, close: Callable[[], None]) -> Table:
    """Each batch is fetched twice: to see how long it is and what is missing, and to read it."""

    def batches() -> Iterator[pa.RecordBatch]:
        return (file.get_batch(number) for number in range(file.num_record_batches))

    rows, gaps = 0, set()
    for batch in batches():
        rows += batch.num_rows
        gaps |= {place for place in range(batch.num_columns) if batch.column(place).null_count}
    places = _usable(file.schema, rows)
    return _Reader(file.schema, places, places, set(places) - gaps, rows, batches).table(
        path, "feather", close
    )


def _usable(schema: pa.Schema, rows: int) -> list[int]:
    """Columns of numbers and of times."""
    if len(schema) > MOST_COLUMNS:
        raise ImportingError(
            say(
                "it has {count:,} columns, and at most {most} are read", count=len(schema), most=MOST_COLUMNS
            ),
            say("save only the channels of the sensor"),
        )
    places = [place for place, field in enumerate(schema) if _is_number(field.type) or _is_time(field.type)]
    if rows * len(places) * 8 > MOST_BYTES:
        raise too_much(rows * len(places) * 8)
    if not places or rows < 1:
        raise ImportingError(
            say("it holds no run of numbers"), say("choose the file with the recorded samples")
        )
    return places


def _is_number(kind: pa.DataType) -> bool:
    return bool(pa.types.is_integer(kind) or pa.types.is_floating(kind) or pa.types.is_decimal(kind))


def _is_time(kind: pa.DataType) -> bool:
    return bool(pa.types.is_timestamp(kind) or pa.types.is_time(kind) or pa.types.is_duration(kind))


def _never_missing(facts: Any, schema: pa.Schema, place: int) -> bool:
    """Whether the file says that no value of a column is missing."""
    if facts.num_columns != len(schema):
        return False  # nested columns: the numbers of leaves and of columns differ
    for group in range(facts.num_row_groups):
        said = facts.row_group(group).column(place).statistics
        if said is None or not said.has_null_count or said.null_count:
            return False
    return True


class _Reader:
    """Blocks out of batches.

    Parameters
    ----------
    schema : pyarrow.Schema
        Of the file.
    places, read : sequence of int
        Columns that are used, by their place in the schema and in a batch.
    whole : set of int
        Those in which nothing is missing: integers stay integers.
    rows : int
        How many the file has.
    batches : callable
        Gives them from the first to the last.
    """

    def __init__(
        self,
        schema: pa.Schema,
        places: Sequence[int],
        read: Sequence[int],
        whole: set[int],
        rows: int,
        batches: Callable[[], Iterator[pa.RecordBatch]],
    ) -> None:
        self._fields = [schema.field(place) for place in places]
        self._read, self._rows, self._batches = read, rows, batches
        self._types = [
            _stored(field.type, place in whole) for field, place in zip(self._fields, places, strict=True)
        ]
        self._first: list[int | None] = [None] * len(self._fields)

    def table(self, path: Path, kind: str, close: Callable[[], None]) -> Table:
        """The table."""
        columns = [
            Column(name, "s" if _is_time(field.type) else unit, dtype)
            for field, dtype in zip(self._fields, self._types, strict=True)
            for name, unit in [split_heading(field.name)]
        ]
        return Table(path, kind, checked_columns(columns), self._blocks, close=close)

    def _blocks(self, tick: Tick, notes: list[str]) -> Iterator[Block]:
        done = 0
        kind = "Parquet or Feather"
        self._first = [None] * len(self._fields)
        with readable(kind):
            for batch in self._batches():
                for start in range(0, batch.num_rows, _BATCH_ROWS):
                    some = batch.slice(start, _BATCH_ROWS)
                    yield tuple(self._samples(some.column(at), place) for place, at in enumerate(self._read))
                    done += some.num_rows
                    tick(min(done / self._rows, 1.0))

    def _samples(self, column: pa.Array, place: int) -> NDArray[Any]:
        kind = self._fields[place].type
        if _is_time(kind):
            return self._seconds(column, place)
        if pa.types.is_decimal(kind):
            column = column.cast(pa.float64())
        return np.asarray(column.to_numpy(zero_copy_only=False)).astype(self._types[place], copy=False)

    def _seconds(self, column: pa.Array, place: int) -> NDArray[np.float64]:
        """Seconds since the first time of the file, so that nanoseconds since 1970 keep their last digit."""
        kind = self._fields[place].type
        wide = pa.int32() if pa.types.is_time32(kind) else pa.int64()
        counts = column.cast(wide).cast(pa.int64())
        known = counts.drop_null()
        if self._first[place] is None and len(known):
            self._first[place] = known[0].as_py()
        first = self._first[place] or 0
        missing = np.asarray(counts.is_null().to_numpy(zero_copy_only=False))
        since = np.asarray(counts.fill_null(first).to_numpy(zero_copy_only=False)) - first
        found = since.astype(np.float64) * _SECONDS[kind.unit]
        found[missing] = np.nan
        return found


def _stored(kind: pa.DataType, whole: bool) -> np.dtype[Any]:
    found: np.dtype[Any] = np.dtype(np.float64)
    if pa.types.is_floating(kind) and kind.bit_width < 64:
        found = np.dtype(np.float32)
    elif pa.types.is_integer(kind) and whole:
        found = np.dtype(kind.to_pandas_dtype())
    return found
