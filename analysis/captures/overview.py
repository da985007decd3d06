"""Min/max overviews: what a trace needs to be drawn, whatever its length.

A level holds the minimum and maximum of consecutive blocks of raw samples; each level merges
`layout.LEVEL_FACTOR` blocks of the one below. Drawing takes the coarsest level that is still finer
than a column, or the samples themselves where there are few enough.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace
from functools import lru_cache
from typing import Any

import h5py
import numpy as np
from h5py import h5g
from numpy.typing import NDArray

from analysis.captures import layout, strict
from analysis.captures.model import Capture, Channel, OverviewLevel, Record, SampleSource, Scaling
from analysis.captures.stretches import Stretches
from analysis.errors import CaptureError
from analysis.progress import Tick, ignore, part

_BLOCKS_A_COLUMN = 4
"""A level is fine enough with this many blocks a column: edges are then an eighth of a column off at most.

Of the finest level one block a column will do, with edges half a column off: reading the samples instead took
twice as long as the rest of a frame out of a packed file (measured at 900 samples a column).
"""


@dataclass(frozen=True, slots=True)
class Envelope:
    """Extremes of one channel in the columns of a picture.

    Parameters
    ----------
    edges : ndarray of int64, shape (n_columns + 1,)
        Column ``i`` stands for the samples ``[edges[i], edges[i + 1])``.
    minimum_v, maximum_v : ndarray, shape (n_columns,)
        Extremes in volts; NaN where every sample of a column is missing. Where an overview was used, a block
        that an edge cuts is counted where most of it lies, and those at both ends are counted in: no spike is
        lost, and none is drawn twice.
    """

    edges: NDArray[np.int64]
    minimum_v: NDArray[np.float64]
    maximum_v: NDArray[np.float64]


def envelope(channel: Channel, start: int, stop: int, columns: int) -> Envelope:
    """Per-column extremes of samples ``[start, stop)``.

    Parameters
    ----------
    channel : Channel
        With an overview the time taken does not depend on its length; without one every sample of the
        stretch is read (see `with_overviews`).
    start, stop : int
        Clipped to the channel.
    columns : int
        Columns of the picture; fewer come back where there are fewer samples.

    Returns
    -------
    Envelope
        Without a column where the stretch is empty.

    Raises
    ------
    ValueError
        Where `columns` is not positive.
    CaptureError
        Where the file is damaged or closed.
    """
    if columns < 1:
        raise ValueError(f"columns must be positive, got {columns}")
    start, stop = max(start, 0), min(stop, len(channel))
    count = min(columns, max(stop - start, 0))
    if count == 0:
        nothing = np.empty(0)
        return Envelope(np.array([start], dtype=np.int64), nothing, nothing)
    edges = _edges(start, stop, count)
    level = _level_for(channel, (stop - start) / count)
    if level is None:
        low, high = _extremes_of_samples(channel, edges)
    else:
        low, high = _extremes_of_blocks(level, *_blocks(start, stop, count, level.block))
    return _in_volts(channel.scaling, edges, low, high)


def _level_for(channel: Channel, samples_a_column: float) -> OverviewLevel | None:
    """The coarsest level that is fine enough, or None where the samples themselves should be used."""
    some = [item for item in channel.overview if item.block <= samples_a_column]
    fine = [item for item in some if item.block * _BLOCKS_A_COLUMN <= samples_a_column]
    if fine:
        return max(fine, key=lambda item: item.block)
    return min(some, key=lambda item: item.block, default=None)


@lru_cache(maxsize=8)
def _edges(start: int, stop: int, count: int) -> NDArray[np.int64]:
    """Where columns begin and the last one ends: alike for the channels of one record, so worked out once."""
    edges = start + np.arange(count + 1, dtype=np.int64) * (stop - start) // count
    edges.setflags(write=False)
    return edges


@lru_cache(maxsize=8)
def _blocks(start: int, stop: int, count: int, block: int) -> tuple[int, int, Stretches]:
    """First block of a stretch and the one after its last; the blocks of each column."""
    first, after = start // block, -(-stop // block)
    begins = (_edges(start, stop, count)[:-1] + block // 2) // block - first  # counted from the first
    begins[0] = 0
    np.minimum(begins, after - first - 1, out=begins)
    begins.setflags(write=False)
    return first, after, Stretches.of(begins)


def _extremes_of_blocks(
    level: OverviewLevel, first: int, after: int, columns: Stretches
) -> tuple[NDArray[Any], NDArray[Any]]:
    low, high = level.minimum[first:after], level.maximum[first:after]
    return columns.extremes(low, np.fmin), columns.extremes(high, np.fmax)


def _extremes_of_samples(channel: Channel, edges: NDArray[np.int64]) -> tuple[NDArray[Any], NDArray[Any]]:
    """Extremes of columns out of samples, stretch by stretch so that memory stays small."""
    count = len(edges) - 1
    width = -(-int(edges[-1] - edges[0]) // count)
    at_once = max(4 * layout.CHUNK_SAMPLES // width, 1)
    if count <= at_once:
        return _extremes_at_once(channel, edges)
    parts = [
        _extremes_at_once(channel, edges[first : first + at_once + 1]) for first in range(0, count, at_once)
    ]
    return np.concatenate([low for low, _ in parts]), np.concatenate([high for _, high in parts])


def _extremes_at_once(channel: Channel, edges: NDArray[np.int64]) -> tuple[NDArray[Any], NDArray[Any]]:
    raw = channel.source.read(int(edges[0]), int(edges[-1]))
    return _reduced(raw, edges[:-1] - edges[0], channel.scaling)


def _in_volts(scaling: Scaling, edges: NDArray[np.int64], low: NDArray[Any], high: NDArray[Any]) -> Envelope:
    low_v, high_v = scaling.volts(low), scaling.volts(high)
    if scaling.scale_factor < 0.0:
        low_v, high_v = high_v, low_v
    return Envelope(edges, low_v, high_v)


def _reduced(
    raw: NDArray[Any], starts: NDArray[np.int64], scaling: Scaling
) -> tuple[NDArray[Any], NDArray[Any]]:
    """Minimum and maximum of the runs that begin at `starts`, missing samples left out.

    A run without a valid sample gives the fill value twice, or NaN.
    """
    if raw.dtype.kind == "f":
        if scaling.fill_value is not None:
            raw = np.where(raw == scaling.fill_value, raw.dtype.type(np.nan), raw)
        return np.fmin.reduceat(raw, starts), np.fmax.reduceat(raw, starts)
    missing = scaling.missing(raw) if scaling.fill_value is not None else None
    if missing is None or not missing.any():
        return np.minimum.reduceat(raw, starts), np.maximum.reduceat(raw, starts)
    bounds = np.iinfo(raw.dtype)
    low = np.minimum.reduceat(np.where(missing, bounds.max, raw), starts)
    high = np.maximum.reduceat(np.where(missing, bounds.min, raw), starts)
    empty = np.logical_and.reduceat(missing, starts)
    fill = raw.dtype.type(scaling.fill_value)
    return np.where(empty, fill, low), np.where(empty, fill, high)


class OverviewBuilder:
    """Builds an overview while the samples stream past, so that writing reads them once.

    Parameters
    ----------
    scaling : Scaling
        Says which samples are missing.
    """

    def __init__(self, scaling: Scaling) -> None:
        self._scaling = scaling
        self._parts: list[tuple[NDArray[Any], NDArray[Any]]] = []

    def add(self, raw: NDArray[Any]) -> None:
        """Take the next stretch; all but the last must be a multiple of `layout.FIRST_BLOCK` long."""
        if len(raw):
            starts = np.arange(0, len(raw), layout.FIRST_BLOCK, dtype=np.int64)
            self._parts.append(_reduced(raw, starts, self._scaling))

    def levels(self) -> tuple[OverviewLevel, ...]:
        """The levels, finest first; none where no sample came."""
        if not self._parts:
            return ()
        low = np.concatenate([item[0] for item in self._parts])
        high = np.concatenate([item[1] for item in self._parts])
        levels = [OverviewLevel(layout.FIRST_BLOCK, low, high)]
        while len(levels[-1].minimum) > layout.LEVEL_FACTOR:
            levels.append(self._merged(levels[-1]))
        return tuple(levels)

    def _merged(self, level: OverviewLevel) -> OverviewLevel:
        starts = np.arange(0, len(level.minimum), layout.LEVEL_FACTOR, dtype=np.int64)
        low, _ = _reduced(level.minimum, starts, self._scaling)
        _, high = _reduced(level.maximum, starts, self._scaling)
        return OverviewLevel(level.block * layout.LEVEL_FACTOR, low, high)


def stretches(source: SampleSource, tick: Tick = ignore) -> Iterator[NDArray[Any]]:
    """All samples of a source, one chunk after the other.

    Parameters
    ----------
    source : SampleSource
        May be empty.
    tick : Tick
        Called after each stretch.

    Yields
    ------
    ndarray, shape (layout.CHUNK_SAMPLES,)
        The last one may be shorter.
    """
    size = len(source)
    for start in range(0, size, layout.CHUNK_SAMPLES):
        stop = min(start + layout.CHUNK_SAMPLES, size)
        yield source.read(start, stop)
        tick(stop / size)


def compute_overview(channel: Channel, tick: Tick = ignore) -> tuple[OverviewLevel, ...]:
    """Overview of a channel out of its samples.

    Parameters
    ----------
    channel : Channel
        Any length.
    tick : Tick
        Progress.

    Returns
    -------
    tuple of OverviewLevel
        Finest first; none where the channel is shorter than `layout.OVERVIEW_MIN_SAMPLES`.
    """
    if len(channel) < layout.OVERVIEW_MIN_SAMPLES:
        return ()
    builder = OverviewBuilder(channel.scaling)
    for raw in stretches(channel.source, tick):
        builder.add(raw)
    return builder.levels()


def with_overviews(capture: Capture, tick: Tick = ignore) -> Capture:
    """The capture with the overviews computed that its file lacks; itself where none is lacking.

    Parameters
    ----------
    capture : Capture
        Read from a file or made in memory.
    tick : Tick
        Progress.

    Returns
    -------
    Capture
        Every long channel has an overview.
    """
    lacking = {
        id(channel): len(channel)
        for record in capture.records
        for channel in record.channels
        if not channel.overview and len(channel) >= layout.OVERVIEW_MIN_SAMPLES
    }
    if not lacking:
        return capture
    whole, done = sum(lacking.values()), 0

    def complete(channel: Channel) -> Channel:
        nonlocal done
        size = lacking.get(id(channel))
        if size is None:
            return channel
        share = part(tick, done / whole, (done + size) / whole)
        done += size
        return replace(channel, overview=compute_overview(channel, share))

    def complete_record(record: Record) -> Record:
        return replace(record, channels=tuple(complete(item) for item in record.channels))

    return replace(capture, records=tuple(complete_record(item) for item in capture.records))


def write_levels(parent: h5py.Group, levels: Iterable[OverviewLevel]) -> None:
    """Store an overview in its group, one dataset a level."""
    for number, level in enumerate(levels):
        pairs = np.column_stack((level.minimum, level.maximum))
        dataset = parent.create_dataset(
            str(number), data=pairs, compression="gzip", compression_opts=layout.GZIP_LEVEL, shuffle=True
        )
        dataset.attrs[layout.BLOCK_KEY] = np.int64(level.block)


def stored_levels(group: h5g.GroupID, n_samples: int, dtype: np.dtype[Any]) -> tuple[OverviewLevel, ...]:
    """Read a stored overview.

    Parameters
    ----------
    group : h5g.GroupID
        ``overview/<channel>``.
    n_samples : int
        Length of the channel.
    dtype : dtype
        Type of its samples.

    Returns
    -------
    tuple of OverviewLevel
        Finest first; empty where anything about it does not fit the samples, so that it is computed anew.
    """
    levels = []
    try:
        for name in strict.members(group):
            level = _stored_level(group, name, n_samples, dtype)
            if level is None:
                return ()
            levels.append(level)
    except CaptureError:
        return ()  # a damaged overview costs time, not evidence: it is computed out of the samples
    return tuple(sorted(levels, key=lambda item: item.block))


def _stored_level(
    group: h5g.GroupID, name: str, n_samples: int, dtype: np.dtype[Any]
) -> OverviewLevel | None:
    where = f"overview level {name}"
    dataset = strict.open_dataset(group, name)
    if dataset is None:
        return None
    block = strict.attributes(dataset, where).values.get(layout.BLOCK_KEY)
    if not isinstance(block, int) or block < 1:
        return None
    shape = (-(-n_samples // block), 2)
    with strict.translated(where):
        if dataset.shape != shape or np.dtype(dataset.dtype).newbyteorder("=") != dtype:
            return None
        pairs = np.empty(shape, dtype=dtype)
        dataset.read(h5py.h5s.ALL, h5py.h5s.ALL, pairs)
    return OverviewLevel(block, np.ascontiguousarray(pairs[:, 0]), np.ascontiguousarray(pairs[:, 1]))
