"""Break-up: how far the output departs from the arm's path, crossing by crossing, along the travel.

Measured densely here, decided on elsewhere. What stands on all probes alike is left out, and reported by
`analysis.signals.events`.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from analysis.captures.model import Role
from analysis.signals.crossings import find_crossings
from analysis.signals.facts import Crossing, TrackSurvey
from analysis.signals.motion import Motion
from analysis.signals.noise import UsualLevel, usual_level
from analysis.signals.steadiness import extreme_level

BIN_PERCENT = 0.25
"""Width of a bin of travel: a third of the narrowest band looked for, 0.8 % of travel."""

LEAST_BREAKUP_PERCENT = 0.1
"""Output smoothness of a new track, in % of the applied voltage (Bourns, "Output Smoothness")."""


@dataclass(frozen=True, slots=True)
class Floor:
    """The level that departures of a sound output stay below.

    Parameters
    ----------
    usual : UsualLevel
        Usual departure along the travel, in % of the feed.
    ratio : float
        Level that noise alone would hardly exceed, as a multiple of the usual one.
    margin_percent : float
        What is added for the recorder's step and a sound track's own grain.
    """

    usual: UsualLevel
    ratio: float
    margin_percent: float

    def at(self, travel_percent: NDArray[np.float32]) -> NDArray[np.float32]:
        """Floor at each position, in % of the feed, same shape."""
        return self.usual.at(travel_percent) * np.float32(self.ratio) + np.float32(self.margin_percent)

    def typical(self) -> float:
        """Floor in the middle of the travel, in % of the feed."""
        return float(self.at(np.array([self.usual.centre], np.float32))[0])


@dataclass(frozen=True, slots=True)
class RecordSurvey:
    """One record's motion, its floor, and which cells break up.

    Parameters
    ----------
    motion : Motion
    floor : Floor
    excess_percent : ndarray, shape (n_cells,)
        Departure beyond the floor, in % of the feed; 0 where there is none or the cell is explained by what
        stands on the other probes.
    common : ndarray of bool, shape (n_cells,)
        Cells explained by the other probes.
    cell_s : float
        Length of a cell, in seconds.
    """

    motion: Motion
    floor: Floor
    excess_percent: NDArray[np.float32]
    common: NDArray[np.bool_]
    cell_s: float


def survey_record(
    motion: Motion, *, cell_s: float, step_percent: float, other_percent: NDArray[np.float32] | None
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

    Returns
    -------
    RecordSurvey
    """
    floor = _floor(motion, step_percent)
    departure = np.nan_to_num(motion.departure)
    excess = np.maximum(departure - floor.at(motion.travel_percent), np.float32(0.0))
    if other_percent is None:
        common = np.zeros(len(excess), dtype=np.bool_)
    else:
        # Cross-talk of a recorder carries a few per cent of a channel into its neighbours; a disturbance of
        # ground or reference moves the signal by no more than itself.
        common = (excess > 0) & (other_percent > 0.3 * departure)
        excess = np.where(common, np.float32(0.0), excess)
    return RecordSurvey(motion, floor, excess, common, cell_s)


def _floor(motion: Motion, step_percent: float) -> Floor:
    fit = motion.truthful & np.isfinite(motion.departure)
    departures, places = motion.departure[fit], motion.travel_percent[fit]
    usual = usual_level(places, departures, least=0.01, quantile=0.75)
    extreme, _ = extreme_level(departures / usual.at(places))
    return Floor(usual, max(extreme, 1.0), LEAST_BREAKUP_PERCENT + 0.5 * step_percent)


def survey_track(records: Sequence[RecordSurvey], role: Role) -> TrackSurvey:
    """Lay all crossings of all records over one axis of travel.

    Parameters
    ----------
    records : sequence of RecordSurvey
        Those in which the arm moved; may be empty.
    role : Role
        Which track.

    Returns
    -------
    TrackSurvey
        With no crossing and one bin where `records` is empty.
    """
    crossings = [find_crossings(item.motion.path) for item in records]
    every = tuple(crossing for group in crossings for crossing in group)
    edges = _edges(every)
    rows = [_rows(record, group, edges) for record, group in zip(records, crossings, strict=True) if group]
    return TrackSurvey(
        role=role,
        edges_percent=edges,
        crossings=every,
        breakup_percent=np.concatenate(rows) if rows else np.empty((0, len(edges) - 1)),
        floor_percent=max((item.floor.typical() for item in records), default=0.0),
        paths=tuple(item.motion.path for item in records),
    )


def _edges(crossings: Sequence[Crossing]) -> NDArray[np.float64]:
    low = min((item.travel.start for item in crossings), default=0.0)
    high = max((item.travel.stop for item in crossings), default=BIN_PERCENT)
    first, last = (
        np.floor(low / BIN_PERCENT),
        max(np.ceil(high / BIN_PERCENT), np.floor(low / BIN_PERCENT) + 1),
    )
    return np.arange(first, last + 1) * BIN_PERCENT


def _rows(
    record: RecordSurvey, crossings: Sequence[Crossing], edges: NDArray[np.float64]
) -> NDArray[np.float64]:
    """Worst excess of each crossing in each bin; NaN where it was not visited."""
    bins = len(edges) - 1
    path = record.motion.path
    start_s = path.time_s[0] - 0.5 * (path.time_s[1] - path.time_s[0]) if len(path.time_s) > 1 else 0.0
    turns = np.array([item.time.start for item in crossings] + [crossings[-1].time.stop])
    cells = np.clip(
        np.round((turns - start_s) / record.cell_s).astype(np.int64), 0, len(record.excess_percent)
    )
    counts = np.diff(cells)
    row = np.repeat(np.arange(len(crossings)), counts)
    span = slice(int(cells[0]), int(cells[-1]))
    column = np.floor((record.motion.travel_percent[span] - edges[0]) / BIN_PERCENT).astype(np.int64)
    np.clip(column, 0, bins - 1, out=column)
    worst = np.full(len(crossings) * bins, -1.0)
    np.maximum.at(worst, row * bins + column, record.excess_percent[span].astype(np.float64))
    return _fill_skipped(worst.reshape(len(crossings), bins), crossings, edges)


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
