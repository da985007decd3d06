"""What the signals tell, as frozen values: crossings, the arm's path, the survey of a track."""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from enum import StrEnum
from typing import Any

import numpy as np
from numpy.typing import NDArray

from analysis.captures.model import Role
from analysis.intervals import Interval


class Direction(StrEnum):
    """Which way the arm moved."""

    UP = "up"
    DOWN = "down"


@dataclass(frozen=True, slots=True)
class Crossing:
    """One passage of the arm over a stretch of travel in one direction.

    Parameters
    ----------
    record : str
        Name of the record.
    direction : Direction
        Up is rising travel.
    time : Interval
        Seconds, in the record's own time.
    travel : Interval
        Per cent of electrical travel that it covered.
    """

    record: str
    direction: Direction
    time: Interval
    travel: Interval


@dataclass(frozen=True, slots=True)
class ArmPath:
    """The arm's most plausible true path through one record.

    Parameters
    ----------
    record : str
        Name of the record.
    time_s : ndarray, shape (n_nodes,)
        Uniformly spaced node times.
    travel_percent : ndarray, shape (n_nodes,)
        Wiper position in % of electrical travel.
    uncertainty_percent : ndarray, shape (n_nodes,)
        Standard uncertainty of the position, in % of travel.
    """

    record: str
    time_s: NDArray[np.float64]
    travel_percent: NDArray[np.float64]
    uncertainty_percent: NDArray[np.float64]

    def at(self, time_s: float) -> float:
        """Position at a time, in % of travel; the end values beyond the ends."""
        return float(np.interp(time_s, self.time_s, self.travel_percent))

    def coarser(self, most: int) -> ArmPath:
        """The same by at most `most` nodes, the others evenly left out; itself where it has no more."""
        step = -(-len(self.time_s) // most)
        if step <= 1:
            return self
        kept = (self.time_s, self.travel_percent, self.uncertainty_percent)
        return ArmPath(self.record, *(values[::step].copy() for values in kept))

    def reaches(self, time_s: float) -> bool:
        """Whether it tells of a time: from one node before its first to one after its last."""
        if not len(self.time_s):
            return False
        node_s = float(self.time_s[1] - self.time_s[0]) if len(self.time_s) > 1 else 0.0
        return bool(self.time_s[0] - node_s <= time_s <= self.time_s[-1] + node_s)


@dataclass(frozen=True, slots=True)
class TrackSurvey:
    """Break-up of one track, measured densely: the plot shows it, the bands are decided from it.

    Parameters
    ----------
    role : Role
        `SIGNAL` or `SECOND_SIGNAL`.
    edges_percent : ndarray, shape (n_bins + 1,)
        Bin edges in % of travel, ascending.
    crossings : tuple of Crossing
        One a row of `breakup_percent`.
    breakup_percent : ndarray, shape (n_crossings, n_bins)
        Worst departure from the path, in % of the applied voltage (of `fixed_v` where that is stated), of
        each crossing in each bin, with the recorder's noise accounted for; NaN where the crossing did not
        visit the bin.
    floor_percent : float
        Break-up below this cannot be seen with this recorder and this capture.
    paths : tuple of ArmPath
        One for each record that was swept.
    dwell_s : ndarray, shape (n_crossings, n_bins)
        Seconds that each crossing spent in each bin.
    onsets, lasting, deep : ndarray, shape (n_crossings, n_bins)
        Disturbances that began there: all, those that last longer than a lone spike, and those that go far
        beyond the floor.
    restless_s : ndarray, shape (n_crossings, n_bins)
        Seconds spent there above a lower threshold than that of a disturbance.
    fixed_v : float or None
        Signal volts that the whole travel stands for, of a sensor whose output does not go with what is
        applied to it; None for a ratiometric one.
    worst_level : ndarray of int, shape (n_crossings, n_bins)
        Highest of `analysis.signals.ranks.LEVELS` that a departure reached there, -1 where none; empty where
        there are too many crossings to rank.
    levels_s : ndarray, shape (n_bins, n_levels)
        Seconds that all crossings together spent in each bin at each of these levels; empty likewise.
    cell_s : float
        Length of the shortest cell, in seconds; 0 likewise.
    resting : tuple of ArmPath
        Where the arm stood, of each record in which it was left alone and that says so surely enough.
    """

    role: Role
    edges_percent: NDArray[np.float64]
    crossings: tuple[Crossing, ...]
    breakup_percent: NDArray[np.float64]
    floor_percent: float
    paths: tuple[ArmPath, ...]
    dwell_s: NDArray[np.float64] = field(default_factory=lambda: np.empty((0, 0)))
    onsets: NDArray[np.floating[Any]] = field(default_factory=lambda: np.empty((0, 0), np.float32))
    lasting: NDArray[np.floating[Any]] = field(default_factory=lambda: np.empty((0, 0), np.float32))
    deep: NDArray[np.floating[Any]] = field(default_factory=lambda: np.empty((0, 0), np.float32))
    restless_s: NDArray[np.float64] = field(default_factory=lambda: np.empty((0, 0)))
    fixed_v: float | None = None
    worst_level: NDArray[np.int8] = field(default_factory=lambda: np.empty((0, 0), np.int8))
    levels_s: NDArray[np.float64] = field(default_factory=lambda: np.empty((0, 0)))
    cell_s: float = 0.0
    resting: tuple[ArmPath, ...] = ()

    def unranked(self) -> TrackSurvey:
        """The same without what its departures are ranked by, which no part of its crossings has."""
        nothing = np.empty((0, 0), np.int8)
        return replace(self, worst_level=nothing, levels_s=np.empty((0, 0)), cell_s=0.0)

    def whereabouts(self, record: str, time_s: float) -> float | None:
        """Where the arm was, moving or at rest, in % of travel; None where that is not known.

        Of a record in which one probe went from wire to wire it is known only while that was on the signal.
        """
        own = (item for item in (*self.paths, *self.resting) if item.record == record)
        told = next((item for item in own if item.reaches(time_s)), None)
        return told.at(time_s) if told is not None else None

    def path(self, record: str) -> ArmPath | None:
        """Path through a record, or None where it was not swept; of its spans where it was divided."""
        own = sorted((item for item in self.paths if item.record == record), key=lambda item: item.time_s[0])
        if len(own) < 2:
            return next(iter(own), None)
        return ArmPath(
            record,
            np.concatenate([item.time_s for item in own]),
            np.concatenate([item.travel_percent for item in own]),
            np.concatenate([item.uncertainty_percent for item in own]),
        )
