"""Columns kept in nameless files while a source is read, so that memory does not grow with its length.

The files have no name once they are open (on Windows they go when they are closed), so that nothing is
left behind however the import ends.
"""

from __future__ import annotations

import os
import tempfile
import threading
from collections.abc import Iterator
from dataclasses import dataclass, replace
from pathlib import Path
from types import TracebackType
from typing import IO, Any, Self

import numpy as np
from numpy.typing import NDArray

from analysis.captures.model import SampleSource, Scaling
from analysis.errors import ImportingError
from analysis.importing.model import Column, Table
from analysis.importing.needs import Problem
from analysis.progress import Tick, ignore
from analysis.wording import say

_AT_ONCE = 512 * 1024
_AS_IT_IS = Scaling()


@dataclass(slots=True)
class SpooledColumn:
    """A `SampleSource` over a run of samples in a file, perhaps from the last to the first."""

    file: IO[bytes]
    kind: np.dtype[Any]
    size: int
    lock: threading.Lock
    first: int = 0
    backwards: bool = False
    scaling: Scaling = _AS_IT_IS  # of times that are read as numbers in their unit

    @property
    def dtype(self) -> np.dtype[Any]:
        """Type of the samples as they are read."""
        return self.kind if self.scaling == _AS_IT_IS else np.dtype(np.float64)

    def __len__(self) -> int:
        """Number of samples."""
        return self.size

    def read(self, start: int, stop: int) -> NDArray[Any]:
        """Raw samples ``[start, stop)``, clipped at the ends."""
        start, stop = max(start, 0), min(stop, self.size)
        count = max(stop - start, 0)
        from_here = self.size - stop if self.backwards else start
        with self.lock:
            self.file.seek((self.first + from_here) * self.kind.itemsize)
            found = np.fromfile(self.file, dtype=self.kind, count=count)
        found = found[::-1] if self.backwards else found
        return found if self.scaling == _AS_IT_IS else self.scaling.volts(found)

    def part(self, start: int, stop: int) -> SpooledColumn:
        """A stretch of the same samples."""
        first = self.first + (self.size - stop if self.backwards else start)
        return replace(self, size=stop - start, first=first)

    def turned(self) -> SpooledColumn:
        """The same samples from the last to the first."""
        return replace(self, backwards=not self.backwards)

    def scaled(self, scaling: Scaling) -> SpooledColumn:
        """The same samples as numbers in the unit of their column."""
        return replace(self, scaling=scaling)


def blocks_of(source: SampleSource, *, overlap: int = 0) -> Iterator[NDArray[np.float64]]:
    """All samples of a source in order, so many at once that they fit in memory.

    Parameters
    ----------
    source : SampleSource
        Of any length.
    overlap : int
        Samples at the end of each block with which the next one begins.
    """
    for start in range(0, max(len(source) - overlap, 1), _AT_ONCE):
        yield source.read(start, start + _AT_ONCE + overlap).astype(np.float64)


class Spool:
    """All columns of a table, read once; a context manager that lets go of the files.

    Parameters
    ----------
    table : Table
        What to read.
    folder : Path
        Where the nameless files lie: on the disk of the capture to be.
    """

    def __init__(self, table: Table, folder: Path) -> None:
        self.table = table
        self.notes: list[str] = list(table.notes)
        self._files: list[IO[bytes]] = []
        self._folder = folder
        self.columns: tuple[SpooledColumn, ...] = ()
        self.whole = False  # whether the table was read to its end
        self.turned = False  # whether the last row of the table is the first here
        self.opened = table  # as its file presents it, whatever becomes of its blocks
        self.blocks = 1  # how many of them stand one below the other
        self.spans: tuple[tuple[int, int], ...] = ()  # of blocks that are a record each
        self.problem: Problem | None = None  # what has to be said of them first
        self.parts: dict[int, str] = {}  # columns that are in another one as well, and the name of that

    def __enter__(self) -> Self:
        return self

    def __exit__(
        self, kind: type[BaseException] | None, error: BaseException | None, trace: TracebackType | None
    ) -> None:
        self.table.close()
        for file in self._files:
            file.close()

    def fill(self, tick: Tick = ignore, *, most_rows: int | None = None) -> None:
        """Read the table into the files.

        Parameters
        ----------
        tick : Tick
            Progress; what it raises stops the reading.
        most_rows : int, optional
            Enough for a look at the beginning.

        Raises
        ------
        ImportingError
            Where the source cannot be read to its end, or the disk is full.
        """
        try:
            self._files = [_nameless(self._folder) for _ in self.table.columns]
            size = self._copy(tick, most_rows)
        except OSError as error:
            raise _disk_error(self._folder, error) from error
        self.columns = tuple(
            SpooledColumn(file, column.dtype, size, threading.Lock())
            for file, column in zip(self._files, self.table.columns, strict=True)
        )

    def turn_round(self) -> None:
        """Let the last row of the table be the first."""
        self.columns = tuple(column.turned() for column in self.columns)
        self.turned = not self.turned

    def rearrange(self, columns: tuple[Column, ...], sources: tuple[SpooledColumn, ...]) -> None:
        """Let blocks of the table be columns of their own; `opened` stays as it is."""
        self.table = replace(self.table, columns=columns)
        self.columns = sources

    def refine(self, place: int, blocks: Iterator[NDArray[np.float64]]) -> None:
        """Let a column have other samples, as many as before.

        Raises
        ------
        ImportingError
            Where the disk is full.
        """
        before = self.columns[place]
        try:
            file = _nameless(self._folder)
            self._files.append(file)
            for block in blocks:
                _write(file, np.ascontiguousarray(block))
        except OSError as error:
            raise _disk_error(self._folder, error) from error
        made = SpooledColumn(file, np.dtype(np.float64), len(before), threading.Lock())
        self.columns = tuple(made if at == place else item for at, item in enumerate(self.columns))

    def _copy(self, tick: Tick, most_rows: int | None) -> int:
        size = 0
        for block in self.table.blocks(tick, self.notes):
            for file, column, samples in zip(self._files, self.table.columns, block, strict=True):
                _write(file, np.ascontiguousarray(samples, dtype=column.dtype))
            size += len(block[0])
            if most_rows is not None and size >= most_rows:
                break
        else:
            self.whole = True
        return size


def _nameless(folder: Path) -> IO[bytes]:
    # Without a buffer: what does not fit is known at once, and closing cannot fail.
    return tempfile.TemporaryFile(dir=folder, buffering=0)


def _write(file: IO[bytes], samples: NDArray[Any]) -> None:
    """All samples; not by `tofile`, which may lose the last ones on a full disk and say nothing (NumPy 2)."""
    view, done = samples.reshape(-1).view(np.uint8).data, 0
    while done < samples.nbytes:
        done += file.write(view[done:])


def _disk_error(folder: Path, error: OSError) -> ImportingError:
    if not folder.is_dir():
        return ImportingError(say("there is no such folder to write to"), say("create it, or choose another"))
    if not os.access(folder, os.W_OK):
        return ImportingError(say("you have no right to write there"), say("choose another folder"))
    if isinstance(error, FileNotFoundError | PermissionError):
        return ImportingError(say("the file can no longer be read"), say("check that it is still there"))
    return ImportingError(say("the file could not be written"), say("check the free space and the drive"))
