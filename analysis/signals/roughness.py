"""Break-up: how far the output departs from the arm's path, crossing by crossing, along the travel.

Measured densely here, decided on elsewhere. What stands on all probes alike is left out, and reported by
`analysis.signals.events`.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import TypeVar

import numpy as np
from numpy.typing import NDArray

from analysis.captures.model import Role
from analysis.signals.crossings import LEAST_STROKE_PERCENT, find_crossings
from analysis.signals.events import travel_disturbances
from analysis.signals.facts import Crossing, TrackSurvey
from analysis.signals.floor import Floor, RecordSurvey
from analysis.signals.motion import Motion
from analysis.signals.noise import usual_level
from analysis.signals.ranks import MOST_RANKED, level_counts, levels_of, worst_levels
from analysis.signals.steadiness import extreme_level
from analysis.signals.thinning import thinned

BIN_PERCENT = 0.25
"""Width of a bin of travel: a third of the narrowest band looked for, 0.8 % of travel."""

LASTING_S = 0.003
"""Interference and converters make spikes shorter than this; a contact that opens seldom closes sooner."""

DEEP_FLOORS = 6.0
"""An open contact goes this many floors and more, where interference seldom does."""

LEAST_SEEN = 0.5
"""Share of a crossing's time in which the signal must have told where the arm was, for it to count."""

BLOCK_CROSSINGS = 256
"""Crossings whose bins are filled at a time, in the processor's cache."""

WITHIN_STEPS = 1.2
"""A signal that seldom departs further than this many steps of the recorder has less noise than that."""

FAR_OUT = 5.5
"""Standard deviations that noise does not exceed in a million samples."""

LEAST_BREAKUP_PERCENT = 0.1
"""Output smoothness of a new track, in % of the applied voltage (Bourns, "Output Smoothness")."""

Kind = TypeVar("Kind", bound=np.generic)


def survey_record(
    motion: Motion,
    *,
    cell_s: float,
    step_percent: float,
    other_percent: NDArray[np.float32] | None,
    most_percent: float = float("inf"),
) -> RecordSurvey:
    """Find the cells of one record in which the output breaks up.

    Parameters
    ----------
    motion : Motion
        Of this record.
    cell_s : float
        Length of a cell, in seconds.
    step_percent : float
        The recorder's step, in % of the feed.
    other_percent : ndarray, shape (n_cells,), or None
        Largest disturbance of the other probes in or beside each cell, in % of the feed; None where no
        other probe was recorded.
    most_percent : float
        The floor is known to be no higher, in % of the feed: an arm at rest is no noisier than a moving one.

    Returns
    -------
    RecordSurvey
    """
    floor = _floor(motion, step_percent)
    floor = replace(floor, most_percent=min(floor.most_percent, most_percent))
    departure, level = np.nan_to_num(motion.departure), floor.at(motion.travel_percent)
    excess = np.maximum(departure - level, np.float32(0.0))
    restless = departure > floor.unrest_at(motion.travel_percent)
    common = np.zeros(len(excess), dtype=np.bool_)
    if other_percent is not None:
        # Cross-talk of a recorder carries a few per cent of a channel into its neighbours; a disturbance of
        # ground or reference moves the signal by no more than itself.
        common = restless & (other_percent > 0.3 * departure)
        excess = np.where(common, np.float32(0.0), excess)
    events = travel_disturbances(motion, excess, cell_s=cell_s)
    return RecordSurvey(motion, floor, excess, restless & ~common, common, events, cell_s)


def _floor(motion: Motion, step_percent: float) -> Floor:
    departure = np.fmax(thinned(motion.above), thinned(motion.below))
    fit = thinned(motion.truthful) & np.isfinite(departure)
    departures, places = departure[fit], thinned(motion.travel_percent)[fit]
    usual = usual_level(places, departures, least=0.01, quantile=0.9)
    among = round(len(departures) * len(motion.truthful) / max(len(departure), 1))
    shares = np.asarray(departures / usual.at(places), dtype=np.float32)
    extreme, _ = extreme_level(shares, quantiles=(0.75, 0.97), among=among)
    least = 1.2 * step_percent + LEAST_BREAKUP_PERCENT
    most = _most_by_steps(departures, step_percent)
    upper = float(np.quantile(shares, 0.97)) if len(shares) else 0.0
    return Floor(usual, max(extreme, 1.0), LEAST_BREAKUP_PERCENT, least, most, upper)


def _most_by_steps(departures: NDArray[np.float32], step_percent: float) -> float:
    """Floor of a signal whose noise is smaller than the recorder's step; infinite for any other.

    Such a reading lies half a step off at most, and what noise adds: of a normal one, one departure in thirty
    goes beyond 2.17 standard deviations.
    """
    if not len(departures) or step_percent <= 0.0:
        return float("inf")
    upper = float(np.quantile(departures, 0.97))
    if upper > WITHIN_STEPS * step_percent:
        return float("inf")
    noise = max(upper - 0.5 * step_percent, 0.0) / 2.17
    return 0.6 * step_percent + FAR_OUT * noise + LEAST_BREAKUP_PERCENT


def survey_track(records: Sequence[RecordSurvey], role: Role, *, fixed_v: float | None = None) -> TrackSurvey:
    """Lay all crossings of all records over one axis of travel.

    Parameters
    ----------
    records : sequence of RecordSurvey
        Those in which the arm moved; may be empty.
    role : Role
        Which track.
    fixed_v : float or None
        Signal volts that the whole travel stands for; None where it is a share of the feed.

    Returns
    -------
    TrackSurvey
        With no crossing and one bin where `records` is empty.
    """
    crossings = [
        find_crossings(item.motion.path, least_stroke_percent=_least_stroke(item)) for item in records
    ]
    every = tuple(crossing for group in crossings for crossing in group)
    edges = _edges(every)
    grids = [
        _Grid.of(record, group, edges) for record, group in zip(records, crossings, strict=True) if group
    ]
    survey = TrackSurvey(
        role=role,
        edges_percent=edges,
        crossings=every,
        breakup_percent=_stacked([grid.worst() for grid in grids], edges),
        floor_percent=max((item.floor.typical() for item in records), default=0.0),
        paths=tuple(item.motion.path for item in records),
        dwell_s=_stacked([grid.dwell_s() for grid in grids], edges),
        onsets=_stacked([grid.onsets() for grid in grids], edges),
        lasting=_stacked([grid.onsets(least_s=LASTING_S) for grid in grids], edges),
        deep=_stacked([grid.onsets(least_floors=DEEP_FLOORS) for grid in grids], edges),
        restless_s=_stacked([grid.restless_s() for grid in grids], edges),
        fixed_v=fixed_v,
    )
    return _ranked(survey, grids) if 0 < len(every) <= MOST_RANKED else survey


def _ranked(survey: TrackSurvey, grids: Sequence[_Grid]) -> TrackSurvey:
    """The same with how far each crossing departed in each bin, and how long all did."""
    levels = [grid.levels() for grid in grids]
    return replace(
        survey,
        worst_level=_stacked([worst for worst, _ in levels], survey.edges_percent),
        levels_s=np.sum([seconds for _, seconds in levels], axis=0),
        cell_s=min(grid.record.cell_s for grid in grids),
    )


def _stacked(rows: list[NDArray[Kind]], edges: NDArray[np.float64]) -> NDArray[Kind]:
    """Rows of all records; those of a lone record are not copied."""
    nothing = np.empty((0, len(edges) - 1), rows[0].dtype if rows else np.float64)
    return rows[0] if len(rows) == 1 else np.concatenate([nothing, *rows])


def _least_stroke(record: RecordSurvey) -> float:
    """Strokes shorter than this are noise of the path: six times the usual noise of a cell."""
    place = thinned(record.motion.path.travel_percent)
    return max(LEAST_STROKE_PERCENT, 6.0 * float(np.median(record.motion.noise.at(place))))


def _edges(crossings: Sequence[Crossing]) -> NDArray[np.float64]:
    low = min((item.travel.start for item in crossings), default=0.0)
    high = max((item.travel.stop for item in crossings), default=BIN_PERCENT)
    first = np.floor(low / BIN_PERCENT)
    last = max(np.ceil(high / BIN_PERCENT), first + 1)
    return np.arange(first, last + 1) * BIN_PERCENT


@dataclass(frozen=True, slots=True)
class _Grid:
    """The cells of one record sorted into crossings (rows) and bins of travel (columns)."""

    record: RecordSurvey
    crossings: Sequence[Crossing]
    edges: NDArray[np.float64]
    first_cell: int
    flat: NDArray[np.int64]
    followed: NDArray[np.bool_]

    @classmethod
    def of(cls, record: RecordSurvey, crossings: Sequence[Crossing], edges: NDArray[np.float64]) -> _Grid:
        path = record.motion.path
        node_s = path.time_s[1] - path.time_s[0]
        turns = np.array([item.time.start for item in crossings] + [crossings[-1].time.stop])
        cells = np.round((turns - path.time_s[0] + 0.5 * node_s) / record.cell_s).astype(np.int64)
        np.clip(cells, 0, len(record.excess_percent), out=cells)
        span, bins = slice(cells[0], cells[-1]), len(edges) - 1
        column = np.floor((record.motion.travel_percent[span] - edges[0]) / BIN_PERCENT).astype(np.int64)
        np.clip(column, 0, bins - 1, out=column)
        column += np.repeat(np.arange(len(crossings)) * bins, np.diff(cells))
        followed = _followed(record.motion.known, cells)
        return cls(record, crossings, edges, int(cells[0]), column, followed)

    def worst(self) -> NDArray[np.float64]:
        """Worst excess; NaN where a crossing did not visit a bin, or was not followed."""
        worst = np.full(self._size, -1.0)
        worst[self.flat] = 0.0
        excess = self.record.excess_percent[self._span]
        some = np.flatnonzero(excess)
        np.maximum.at(worst, self.flat[some], excess[some].astype(np.float64))
        rows = self._shaped(worst)
        for start in range(0, len(rows), BLOCK_CROSSINGS):
            block = slice(start, start + BLOCK_CROSSINGS)
            rows[block] = _fill_skipped(rows[block], self.crossings[block], self.edges)
        rows[~self.followed] = np.nan
        return rows

    def dwell_s(self) -> NDArray[np.float64]:
        """Seconds spent."""
        return self._seconds(self.flat)

    def onsets(self, *, least_s: float = 0.0, least_floors: float = 0.0) -> NDArray[np.float32]:
        """Disturbances that began: all, or those of more than one cell that last or go as far as said."""
        floor = self.record.floor.typical()
        begins = np.array(
            [
                item.first
                for item in self.record.disturbances
                if (least_s == 0.0 or (item.cells > 1 and item.time.length >= least_s))
                and abs(item.depth) >= least_floors * floor
            ],
            dtype=np.int64,
        )
        begins = begins[(begins >= self._span.start) & (begins < self._span.stop)]
        counts = np.zeros(self._size, dtype=np.float32)
        np.add.at(counts, self.flat[begins - self.first_cell], np.float32(1.0))
        rows = self._shaped(counts)
        rows[~self.followed] = 0.0
        return rows

    def restless_s(self) -> NDArray[np.float64]:
        """Seconds spent above the lower threshold."""
        cells = self.flat[self.record.restless[self._span]]
        rows = self._seconds(cells)
        rows[~self.followed] = 0.0
        return rows

    def levels(self) -> tuple[NDArray[np.int8], NDArray[np.float64]]:
        """Highest level that departures reached, and the seconds at each level, shape (n_bins, n_levels)."""
        motion, span, bins = self.record.motion, self._span, len(self.edges) - 1
        level = levels_of(motion.departure[span], self.record.floor.at(motion.travel_percent[span]))
        row = self.flat // bins
        level[self.record.common[span] | ~self.followed[row]] = -1
        counts = level_counts(level, self.flat - row * bins, bins)
        worst = self._shaped(worst_levels(level, self.flat, self._size))
        return worst, np.multiply(counts, self.record.cell_s, dtype=np.float64)

    @property
    def _span(self) -> slice:
        return slice(self.first_cell, self.first_cell + len(self.flat))

    @property
    def _size(self) -> int:
        return len(self.crossings) * (len(self.edges) - 1)

    def _seconds(self, flat: NDArray[np.int64]) -> NDArray[np.float64]:
        counts = np.bincount(flat, minlength=self._size)
        return self._shaped(np.multiply(counts, self.record.cell_s, dtype=np.float64))

    def _shaped(self, flat: NDArray[Kind]) -> NDArray[Kind]:
        return flat.reshape(len(self.crossings), len(self.edges) - 1)


def _followed(truthful: NDArray[np.bool_], cells: NDArray[np.int64]) -> NDArray[np.bool_]:
    """Crossings whose path rests on what was seen, not on a bridge, for most of their time."""
    before = np.concatenate([[0], np.cumsum(truthful[cells[0] : cells[-1]], dtype=np.int64)])
    seen = np.diff(before[cells - cells[0]])
    return np.asarray(seen >= LEAST_SEEN * np.maximum(np.diff(cells), 1))


def _fill_skipped(
    worst: NDArray[np.float64], crossings: Sequence[Crossing], edges: NDArray[np.float64]
) -> NDArray[np.float64]:
    """Give bins that a fast arm skipped between two cells the value of the bin before; mark the unvisited."""
    low = np.array([item.travel.start for item in crossings])[:, None]
    high = np.array([item.travel.stop for item in crossings])[:, None]
    visited = (edges[1:] > low) & (edges[:-1] < high)
    known = worst >= 0
    latest = np.maximum.accumulate(np.where(known, np.arange(worst.shape[1]), 0), axis=1)
    filled = np.take_along_axis(worst, latest, axis=1)
    return np.where(visited | known, np.maximum(filled, 0.0), np.nan)
