"""Named arrays (of NPZ, MAT, HDF5, netCDF, Parquet files) laid side by side as a table."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import numpy as np
from numpy.typing import NDArray

from analysis.captures.model import Scaling
from analysis.errors import ImportingError
from analysis.importing.model import MOST_BYTES, Block, Column, Dataset, Table, checked_columns
from analysis.importing.units import split_heading
from analysis.progress import Tick
from analysis.wording import say

_AS_IT_IS = Scaling()
_AT_ONCE = 256 * 1024
_MOST_SIDE_BY_SIDE = 64  # columns of a matrix; more is a picture or a table of something else
_INTERVAL_NAMES = re.compile(
    r"^(?:dt|ts|interval|sample_?interval|sampling_?interval|t_?interval|delta_?t|period)(?:_s)?$",
    re.IGNORECASE,
)
_RATE_NAMES = re.compile(
    r"^(?:fs|sr|rate|sample_?rate|sampling_?(?:rate|frequency)|frequency)(?:_hz)?$", re.IGNORECASE
)


@dataclass(frozen=True, slots=True)
class Named:
    """An array that a file holds.

    Parameters
    ----------
    name : str
        As in the file.
    shape : tuple of int
        Of the array; one number or a run or a matrix of numbers is used, the rest is left out.
    dtype : dtype
        Integers, floats or truth values.
    read : callable
        ``read(start, stop, axis)`` gives that stretch along an axis of the array.
    unit : str
        As in the file; empty where it says none.
    scaling : Scaling
        Raw numbers to the unit.
    """

    name: str
    shape: tuple[int, ...]
    dtype: np.dtype[Any]
    read: Callable[[int, int, int], NDArray[Any]]
    unit: str = ""
    scaling: Scaling = _AS_IT_IS


@dataclass(frozen=True, slots=True)
class _Run:
    """One or several columns of one array, along `axis`."""

    array: Named
    axis: int
    size: int
    count: int

    def columns(self) -> list[Column]:
        name, unit = split_heading(self.array.name)
        kind = _stored(self.array.dtype)
        every = [name] if self.count == 1 else [f"{name} {place + 1}" for place in range(self.count)]
        return [Column(item, self.array.unit or unit, kind, self.array.scaling) for item in every]

    def block(self, start: int, stop: int) -> list[NDArray[Any]]:
        raw = np.moveaxis(np.asarray(self.array.read(start, stop, self.axis)), self.axis, 0)
        return list(raw.reshape(stop - start, self.count).astype(_stored(self.array.dtype)).T)


def in_memory(name: str, values: NDArray[Any], unit: str = "") -> Named:
    """An array that is in memory or mapped into it."""

    def read(start: int, stop: int, axis: int) -> NDArray[Any]:
        return values[(slice(None),) * axis + (slice(start, stop),)] if axis >= 0 and values.ndim else values

    return Named(name, values.shape, values.dtype, read, unit)


def table_of(path: Path, kind: str, arrays: Sequence[Named], chosen: Sequence[str] = ()) -> Table:
    """Arrays of one length and group as a table; the length that most columns have is taken.

    Parameters
    ----------
    path, kind
        As in `Table`.
    arrays : sequence of Named
        In the file's order. Lone numbers are looked at for an interval or a rate.
    chosen : sequence of str
        Names of those that are to be used; all of one group where it is empty, or none of them is there.

    Raises
    ------
    ImportingError
        Where no array is a run of at least two numbers, or the file claims more than can be read.
    """
    usable = [item for item in arrays if item.dtype.kind in "iufb" and item.dtype.itemsize <= 8]
    runs = [run for item in usable if (run := _run(item)) is not None]
    if not runs:
        raise ImportingError(
            say("it holds no run of numbers"), say("choose the file with the recorded samples")
        )
    wanted = [run for run in runs if run.array.name in chosen] or runs
    longest = max(
        wanted, key=lambda run: (sum(item.count for item in wanted if item.size == run.size) > 1, run.size)
    )
    alike = [run for run in wanted if run.size == longest.size]
    taken = alike if wanted is not runs else _of_one_group(alike, longest)
    if sum(run.size * run.count * 8 for run in taken) > MOST_BYTES:
        raise ImportingError(
            say("it claims {size:,} samples, more than can be read", size=longest.size),
            say("save a shorter stretch"),
        )
    columns = checked_columns([column for run in taken for column in run.columns()])
    notes = _left_out(wanted, alike, taken)

    def blocks(tick: Tick, notes: list[str]) -> Iterator[Block]:
        for start in range(0, longest.size, _AT_ONCE):
            stop = min(start + _AT_ONCE, longest.size)
            yield tuple(part for run in taken for part in run.block(start, stop))
            tick(stop / longest.size)

    used = {run.array.name for run in taken}
    datasets = tuple(Dataset(run.array.name, run.array.shape, run.array.name in used) for run in runs)
    return Table(path, kind, columns, blocks, _interval(usable, _group(longest)), notes, datasets=datasets)


def _group(run: _Run) -> str:
    return run.array.name.rpartition("/")[0]


def _of_one_group(runs: Sequence[_Run], first: _Run) -> list[_Run]:
    """Where the same names come again in other groups, those of one group and of the groups it lies in.

    Two groups with a signal each are two recordings, not a sensor with two signals.
    """
    leaf = first.array.name.rpartition("/")[2]
    if sum(run.array.name.rpartition("/")[2] == leaf for run in runs) < 2:
        return list(runs)
    group = _group(first)
    above = {"", *(group[:place] for place, letter in enumerate(group) if letter == "/"), group}
    return [run for run in runs if _group(run) in above]


def _left_out(runs: Sequence[_Run], alike: Sequence[_Run], taken: Sequence[_Run]) -> tuple[str, ...]:
    said: list[str] = []
    others = [run.array.name for run in runs if run not in alike]
    if others:
        said.append(say("of another length, and left out: {names}", names=", ".join(others[:10])))
    groups = [run.array.name for run in alike if run not in taken]
    if groups:
        said.append(say("of another group, and left out: {names}", names=", ".join(groups[:10])))
    return tuple(said)


def _run(item: Named) -> _Run | None:
    long = [axis for axis, size in enumerate(item.shape) if size > 1]
    if not long or len(long) > 2:
        return None
    axis = max(long, key=lambda place: item.shape[place])
    count = int(np.prod([size for place, size in enumerate(item.shape) if place != axis], dtype=np.int64))
    return _Run(item, axis, item.shape[axis], count) if count <= _MOST_SIDE_BY_SIDE else None


def _stored(dtype: np.dtype[Any]) -> np.dtype[Any]:
    if dtype.kind == "b":
        return np.dtype(np.int8)
    return np.dtype(np.float32) if dtype == np.float16 else dtype.newbyteorder("=")


def _interval(arrays: Sequence[Named], group: str) -> float | None:
    """What a lone number says of the time between rows, those of the group first."""
    for item in sorted(arrays, key=lambda item: item.name.rpartition("/")[0] != group):
        if any(size != 1 for size in item.shape):
            continue
        short = item.name.rsplit("/", 1)[-1]
        value = float(np.asarray(item.read(0, 1, 0) if item.shape else item.read(0, 1, -1)).ravel()[0])
        found = interval_of({short: value})
        if found is not None:
            return found
    return None


def interval_of(said: Mapping[str, Any]) -> float | None:
    """Seconds between rows that a named number says, as an interval or a rate; None where none does."""
    for name, value in said.items():
        if isinstance(value, bool) or not isinstance(value, int | float) or not 0.0 < value < float("inf"):
            continue
        if _INTERVAL_NAMES.match(name):
            return float(value)
        if _RATE_NAMES.match(name):
            return 1.0 / value
    return None
