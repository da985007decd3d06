"""One streamed pass over a record: volts and travel, reduced to short cells of time.

Everything after this works on cells of about half a millisecond: short beside a hand (below some 15 Hz,
common practice, no source) and beside the time that a break-up lasts, long beside a sample of a fast
recorder. Mean, minimum and maximum of a cell keep a spike of a single sample. Each sample is touched
once, so time and memory grow linearly with the length.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import Any

import numpy as np
from numpy.typing import NDArray

from analysis.captures.model import Channel, Record, Role
from analysis.progress import Tick, ignore

CELL_S = 0.0005
"""Shortest cell: a wiper at 1000 % of travel a second, faster than a hand moves it, covers 0.5 % in it."""

LONGEST_CELL_S = 0.01
"""Longest cell, used for records of hours, to hold memory and time down; a spike still shows in it."""

CELLS_OF_FINEST = 500_000
"""Up to this many cells a record keeps the shortest cell."""

LEAST_CELLS = 16
"""A record is never reduced to fewer cells than this, whatever sample interval it claims."""

BLOCK_SAMPLES = 1 << 16
"""Samples read at a time: three float32 channels of this length stay in the processor's cache."""

ABSURD_V = 1000.0

LEAST_FEED_V = 1.0
"""Below this, reference minus ground is no feed to divide by; the travel is then unknown."""

Floats = NDArray[np.float32]
Block = Mapping[Role, Floats]


@dataclass(frozen=True, slots=True)
class CellSeries:
    """Mean, minimum and maximum of one quantity in consecutive cells.

    Parameters
    ----------
    mean, minimum, maximum : ndarray of float32, shape (n_cells,)
        In the quantity's unit; NaN where a cell holds no valid sample.
    """

    mean: Floats
    minimum: Floats
    maximum: Floats

    @property
    def spread(self) -> Floats:
        """Maximum minus minimum, shape (n_cells,)."""
        return self.maximum - self.minimum

    def blanked(self, marks: NDArray[np.bool_]) -> CellSeries:
        """The same with the marked cells empty; `marks` has the shape (n_cells,)."""
        series = (self.mean, self.minimum, self.maximum)
        return CellSeries(*(np.where(marks, np.float32(np.nan), item) for item in series))

    def without_extremes(self) -> CellSeries:
        """The means alone, minimum and maximum empty: a long record's would take up room for nothing."""
        nothing = np.empty(0, dtype=np.float32)
        return CellSeries(self.mean, nothing, nothing)


@dataclass(frozen=True, slots=True)
class Feed:
    """Reference and ground to reckon with where a record did not watch them itself.

    Parameters
    ----------
    reference_v, ground_v : float
        Volts against the recorder's return.
    fixed_v : float or None
        Signal volts above ground that the whole travel stands for, where the output does not go with the
        feed; None for a ratiometric sensor, whose travel is a share of the feed.
    """

    reference_v: float = 5.0
    ground_v: float = 0.0
    fixed_v: float | None = None

    @property
    def whole_travel_v(self) -> float:
        """Signal volts above ground that the whole travel stands for."""
        return self.reference_v - self.ground_v if self.fixed_v is None else self.fixed_v


@dataclass(frozen=True, slots=True)
class RecordCells:
    """One record, reduced.

    Parameters
    ----------
    record : str
        Name of the record.
    start_s, cell_s : float
        Time of the first cell's beginning and length of a cell, in seconds.
    samples_per_cell : int
        At least 1.
    volts : mapping of Role to CellSeries
        Every channel that has a role, in volts.
    travel : mapping of Role to CellSeries
        `SIGNAL` and, where there is one, `SECOND_SIGNAL`, in % of the feed; empty without a signal.
    over_range, missing : mapping of Role to float
        Share of the channel's samples.
    step_percent : mapping of Role to float
        Recorder's step of each travel, in % of the feed; 0 where unknown (float samples).
    """

    record: str
    start_s: float
    cell_s: float
    samples_per_cell: int
    volts: Mapping[Role, CellSeries]
    travel: Mapping[Role, CellSeries]
    over_range: Mapping[Role, float]
    missing: Mapping[Role, float]
    step_percent: Mapping[Role, float]
    sample_interval_s: float

    def __len__(self) -> int:
        """Number of cells."""
        return 0 if not self.volts else len(next(iter(self.volts.values())).mean)

    @property
    def time_s(self) -> NDArray[np.float64]:
        """Middle of each cell, in seconds, shape (n_cells,)."""
        return self.start_s + self.cell_s * (np.arange(len(self), dtype=np.float64) + 0.5)


def samples_per_cell(record: Record) -> int:
    """Samples that make a cell of this record; at least 1."""
    wanted_s = min(max(record.duration_s / CELLS_OF_FINEST, CELL_S), LONGEST_CELL_S)
    return max(1, min(round(wanted_s / record.sample_interval_s), len(record) // LEAST_CELLS))


def reduce_record(record: Record, feed: Feed, *, tick: Tick = ignore) -> RecordCells:
    """Reduce a record to cells of volts and travel.

    Parameters
    ----------
    record : Record
        With at least one sample; the last, incomplete cell is filled up with its last sample.
    feed : Feed
        Stands in for a reference or ground that the record does not hold.
    tick : Tick
        Told after every block.

    Returns
    -------
    RecordCells
        Travel is ``100 * (signal - ground) / (reference - ground)`` in %, or
        ``100 * (signal - ground) / fixed_v`` where the output does not go with the feed.

    Raises
    ------
    CaptureError
        Where the file is damaged or gone.
    Cancelled
        Where `tick` says so.
    """
    width = samples_per_cell(record)
    channels = {role: item for role in Role if (item := record.channel(role)) is not None}
    cells = -(-len(record) // width)
    signals = [role for role in (Role.SIGNAL, Role.SECOND_SIGNAL) if role in channels]
    volts = {role: _empty(cells) for role in channels}
    travel: dict[Role, CellSeries] = {role: _empty(cells) for role in signals}
    lost = {role: np.zeros(2, dtype=np.int64) for role in channels}
    for first, block in _blocks(record, channels, width, lost):
        span = slice(first, first + next(iter(block.values())).shape[1])
        for role, samples in block.items():
            _store(volts[role], span, samples)
        for role in signals:
            _store(travel[role], span, travel_percent(block[role], _feed_of(block, feed), width))
        tick(min(1.0, span.stop / cells))
    total = max(len(record), 1)
    return RecordCells(
        record=record.name,
        start_s=record.first_sample_s,
        cell_s=width * record.sample_interval_s,
        samples_per_cell=width,
        volts=volts,
        travel=travel,
        over_range={role: float(count[0]) / total for role, count in lost.items()},
        missing={role: float(count[1]) / total for role, count in lost.items()},
        step_percent={role: _step_percent(channels[role], volts, feed) for role in signals},
        sample_interval_s=record.sample_interval_s,
    )


def travel_percent(signal_v: Floats, feed_v: tuple[Any, Any], width: int) -> Floats:
    """Position as a share of the feed, the quieter of two ways to reckon it.

    Dividing sample by sample removes what stands on all probes alike; dividing by each cell's mean feed
    keeps the noise of two more channels out. Which one is quieter depends on the disturbance, so both are
    tried on the block and the one whose neighbouring samples differ less is kept.

    Parameters
    ----------
    signal_v : ndarray of float32, shape (width, n_cells)
    feed_v : pair of (float or ndarray of float32, shape (width, n_cells))
        Ground and reference in volts.
    width : int
        Samples a cell.

    Returns
    -------
    ndarray of float32, shape (width, n_cells)
        In %; NaN where the feed is below `LEAST_FEED_V`.
    """
    ground_v, reference_v = feed_v
    exact = _ratio(signal_v, ground_v, reference_v)
    if width == 1 or (np.isscalar(ground_v) and np.isscalar(reference_v)):
        return exact
    calm = _ratio(signal_v, _cell_mean(ground_v), _cell_mean(reference_v))
    return exact if _restlessness(exact) <= _restlessness(calm) else calm


def _ratio(signal_v: Floats, ground_v: Any, reference_v: Any) -> Floats:
    span_v = np.asarray(reference_v - ground_v, dtype=np.float32)
    span_v = np.where(span_v < LEAST_FEED_V, np.float32(np.nan), span_v)
    return np.asarray((signal_v - ground_v) * (np.float32(100.0) / span_v), dtype=np.float32)


def _cell_mean(voltage_v: Any) -> Any:
    return voltage_v if np.isscalar(voltage_v) else voltage_v.mean(axis=0)


def _restlessness(travel: Floats) -> float:
    """Mean size of the steps between neighbouring samples; NaN counts as none."""
    return float(np.nan_to_num(np.abs(np.diff(travel, axis=0)).mean(axis=1)).mean())


def _feed_of(block: Block, feed: Feed) -> tuple[Any, Any]:
    ground = block.get(Role.GROUND, feed.ground_v)
    if feed.fixed_v is not None:
        return ground, ground + np.float32(feed.fixed_v)
    return ground, block.get(Role.REFERENCE, feed.reference_v)


def _empty(cells: int) -> CellSeries:
    return CellSeries(*(np.full(cells, np.nan, dtype=np.float32) for _ in range(3)))


def _store(series: CellSeries, span: slice, samples: Floats) -> None:
    """Write mean, minimum and maximum over axis 0 of `samples` into the cells of `span`."""
    if samples.shape[0] == 1:
        series.mean[span] = series.minimum[span] = series.maximum[span] = samples[0]
        return
    np.fmin.reduce(samples, axis=0, out=series.minimum[span])
    np.fmax.reduce(samples, axis=0, out=series.maximum[span])
    mean = samples.mean(axis=0)
    if np.isnan(mean).any():
        known = ~np.isnan(samples)
        count = known.sum(axis=0)
        total = np.where(known, samples, 0).sum(axis=0)
        mean = np.divide(total, count, out=np.full(count.shape, np.nan, np.float32), where=count > 0)
    series.mean[span] = mean


def _blocks(
    record: Record,
    channels: Mapping[Role, Channel],
    width: int,
    lost: Mapping[Role, NDArray[np.int64]],
) -> Iterator[tuple[int, dict[Role, Floats]]]:
    """Blocks of whole cells as float32 volts of shape (width, cells), and the first cell of each."""
    length = max(BLOCK_SAMPLES // width, 1) * width
    for start in range(0, len(record), length):
        stop = min(start + length, len(record))
        block: dict[Role, Floats] = {}
        for role, channel in channels.items():
            raw = channel.source.read(start, stop)
            lost[role] += channel.scaling.count_lost(raw)
            block[role] = _as_columns(_volts32(raw, channel), width)
        yield start // width, block


def _volts32(raw: NDArray[Any], channel: Channel) -> Floats:
    """As `Scaling.volts`, in single precision: 24 bits hold more than any recorder's counts carry."""
    if raw.dtype.kind == "f" or raw.dtype.itemsize > 2 or channel.scaling.fill_value is not None:
        with np.errstate(over="ignore", invalid="ignore"):
            volts = channel.scaling.volts(raw)
            sane = raw.size > 0 and volts.min() > -ABSURD_V and volts.max() < ABSURD_V
        if sane:
            return volts.astype(np.float32)
        # No sensor circuit reads a thousand volts: infinite and absurd samples are missing ones.
        return np.where(np.abs(volts) < ABSURD_V, volts, np.nan).astype(np.float32)
    voltage_v = raw.astype(np.float32)
    voltage_v *= np.float32(channel.scaling.scale_factor)
    if channel.scaling.add_offset:
        voltage_v += np.float32(channel.scaling.add_offset)
    return voltage_v


def _as_columns(voltage_v: Floats, width: int) -> Floats:
    """Consecutive cells as columns, contiguous: reducing over the first axis is eight times faster."""
    short = -len(voltage_v) % width
    if short:
        voltage_v = np.concatenate([voltage_v, np.repeat(voltage_v[-1:], short)])
    return np.ascontiguousarray(voltage_v.reshape(-1, width).T)


def _step_percent(channel: Channel, volts: Mapping[Role, CellSeries], feed: Feed) -> float:
    """Recorder's step as a share of the feed, in %."""
    if feed.fixed_v is not None:
        return 100.0 * channel.step_v / feed.fixed_v
    span_v = _typical(volts.get(Role.REFERENCE), feed.reference_v) - _typical(
        volts.get(Role.GROUND), feed.ground_v
    )
    return 100.0 * channel.step_v / span_v if span_v >= LEAST_FEED_V else 0.0


def _typical(series: CellSeries | None, otherwise: float) -> float:
    if series is None or np.isnan(series.mean).all():
        return otherwise
    return float(np.nanmedian(series.mean))
