"""What every kind of source is turned into: named columns of numbers, fetched block by block."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import numpy as np
from numpy.typing import NDArray

from analysis.captures.model import Scaling
from analysis.errors import ImportingError
from analysis.importing.dialect import Dialect
from analysis.importing.seams import Seam
from analysis.progress import Tick
from analysis.wording import say

MOST_COLUMNS = 256
"""A recorder has tens of channels; a table with more columns is something else."""

MOST_BYTES = 16 * 1024**3
"""Unpacked bytes that one source may claim: 10 hours of 4 channels at 100 kS/s in half of it."""

Block = tuple[NDArray[Any], ...]
"""One array a column, all of one length."""


_VOLTS = np.dtype(np.float64)
_AS_IT_IS = Scaling()


def _nothing_to_close() -> None:
    """Most tables open their file only while they read it."""


@dataclass(frozen=True, slots=True)
class Column:
    """One column of a table, as its file presents it.

    Parameters
    ----------
    name : str
        As in the file; ``column 3`` where it gives none.
    unit : str
        As in the file; empty where it gives none.
    dtype : dtype
        Of the raw samples.
    scaling : Scaling
        Raw samples to the unit (packed integers of WAV and CF files).
    heading : str
        As in the file, where `name` has a number that keeps it apart from another of the same heading.
    """

    name: str
    unit: str = ""
    dtype: np.dtype[Any] = _VOLTS
    scaling: Scaling = _AS_IT_IS
    heading: str = ""

    @property
    def words(self) -> str:
        """What the file says of the column: a number of ours is no second signal."""
        return self.heading or self.name


@dataclass(frozen=True, slots=True)
class Dataset:
    """An array that a file holds, and whether its numbers are among the columns.

    Parameters
    ----------
    name : str
        As in the file, with the groups that it is in.
    shape : tuple of int
        Of the array.
    taken : bool
        Whether it is used.
    """

    name: str
    shape: tuple[int, ...]
    taken: bool


@dataclass(frozen=True, slots=True)
class Table:
    """A source as columns of numbers.

    Parameters
    ----------
    path : Path
        The file.
    kind : str
        ``text``, ``wav``, ``mat``, ``npy``, ``npz``, ``parquet``, ``feather``, ``hdf5`` or ``netcdf``.
    columns : tuple of Column
        At least one, with names of their own.
    blocks : callable
        ``blocks(tick, notes)`` yields the samples from the first to the last; what it had to leave out or
        to assume is appended to `notes` as sentences.
    interval_s : float or None
        Seconds between rows, where the file says so outside its columns.
    notes : tuple of str
        What was assumed while the file was being understood.
    close : callable
        Lets go of open files once the samples have been read.
    dialect : Dialect or None
        How a text is written; None for every other kind.
    encoding : str
        Of a text; empty for every other kind.
    datasets : tuple of Dataset
        Arrays that could be columns, where a file holds named ones; empty for every other kind.
    seams : callable
        Where a text is broken off and goes on, as far as it has been read; nothing for every other kind.
    turned : str
        The first lines of a text that lies on its side, as they are read; empty for every other table.
    """

    path: Path
    kind: str
    columns: tuple[Column, ...]
    blocks: Callable[[Tick, list[str]], Iterator[Block]]
    interval_s: float | None = None
    notes: tuple[str, ...] = ()
    close: Callable[[], None] = _nothing_to_close
    dialect: Dialect | None = None
    encoding: str = ""
    datasets: tuple[Dataset, ...] = ()
    seams: Callable[[], tuple[Seam, ...]] = tuple
    turned: str = ""


def clock_places(table: Table) -> frozenset[int]:
    """Columns of a table whose cells were written as times of day or dates."""
    written = table.dialect
    if written is None:
        return frozenset()
    clocks = [clock for clock, use in zip(written.clock, written.numeric, strict=True) if use]
    return frozenset(place for place, clock in enumerate(clocks) if clock)


def place_of(name: str, columns: Sequence[Column]) -> int:
    """The column of that name, in any case, or of that number from 1.

    Raises
    ------
    ImportingError
        Where there is none.
    """
    for spelled in (str, str.casefold):
        for place, column in enumerate(columns):
            if spelled(column.name) == spelled(name.strip()):
                return place
    if name.strip().isdecimal() and 1 <= int(name) <= len(columns):
        return int(name) - 1
    there = ", ".join(column.name for column in columns[:20])
    raise ImportingError(
        say("it has no column {name}; there are: {there}", name=name, there=there), say("name one of these")
    )


def checked_columns(columns: list[Column]) -> tuple[Column, ...]:
    """Columns with names of their own: a name that comes twice gets a number.

    Raises
    ------
    ImportingError
        Where there are none, or absurdly many.
    """
    if not columns:
        raise ImportingError(
            say("it holds no columns of numbers"), say("choose the file with the recorded samples")
        )
    if len(columns) > MOST_COLUMNS:
        raise too_many_columns(len(columns))
    taken: set[str] = set()
    named: list[Column] = []
    for place, item in enumerate(columns):
        name = _unused(item.name.strip() or f"column {place + 1}", taken)
        taken.add(name)
        named.append(Column(name, item.unit, item.dtype, item.scaling, item.name.strip()))
    return tuple(named)


def too_many_columns(count: int) -> ImportingError:
    """What is said of a table with absurdly many columns."""
    return ImportingError(
        say("it has {count:,} columns, and at most {most} are read", count=count, most=MOST_COLUMNS),
        say("save only the channels of the sensor"),
    )


def _unused(name: str, taken: set[str]) -> str:
    if name not in taken:
        return name
    return next(other for number in range(2, MOST_COLUMNS + 2) if (other := f"{name} {number}") not in taken)
