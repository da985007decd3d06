"""What a sound output may do: the floor below which a departure from the path says nothing."""

from __future__ import annotations

from dataclasses import dataclass, field

import numpy as np
from numpy.typing import NDArray

from analysis.signals.events import Disturbance
from analysis.signals.motion import Motion
from analysis.signals.noise import UsualLevel

RESTLESS = 0.6
"""Share of the floor that normal noise exceeds in some hundredth of the cells: sqrt(ln 100 / ln 1e6)."""


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
        What is added for a sound track's own grain.
    least_percent : float
        Nothing below this is told: the recorder's step flickers by itself.
    most_percent : float
        Nothing above this is noise, where the recorder's step is larger than the noise and so bounds it.
    upper_ratio : float
        Level that one cell in thirty exceeds without being told, as a multiple of the usual one.
    """

    usual: UsualLevel
    ratio: float
    margin_percent: float
    least_percent: float = 0.0
    most_percent: float = float("inf")
    upper_ratio: float = 0.0
    _typical: float = field(init=False, repr=False, compare=False)

    def __post_init__(self) -> None:
        # Reckoned once: it is asked for at every disturbance of a record.
        middle = self.at(np.array([self.usual.centre], np.float32))
        object.__setattr__(self, "_typical", float(middle[0]))

    def at(self, travel_percent: NDArray[np.float32]) -> NDArray[np.float32]:
        """Floor at each position, in % of the feed, same shape."""
        usual = self.usual.at(travel_percent)
        floor = usual * np.float32(self.ratio) + np.float32(self.margin_percent)
        if np.isfinite(self.most_percent):
            # What noise adds to a step grows along the travel as the noise does.
            growth = np.maximum(usual / self.usual.at(self.usual.centre), np.float32(1.0))
            floor = np.minimum(floor, np.float32(self.most_percent) * growth)
        return np.asarray(np.maximum(floor, np.float32(self.least_percent)), dtype=np.float32)

    def unrest_at(self, travel_percent: NDArray[np.float32]) -> NDArray[np.float32]:
        """Level beyond which a cell is restless, in % of the feed, same shape.

        Ripple of the feed is near its peak most of the time, so a share of the floor alone would not do; a
        flicker of one step of the recorder is not unrest.
        """
        usual = self.usual.at(travel_percent) * np.float32(self.upper_ratio)
        share = np.float32(RESTLESS) * self.at(travel_percent)
        return np.asarray(np.maximum(np.maximum(usual, share), np.float32(0.95 * self.least_percent)))

    def typical(self) -> float:
        """Floor in the middle of the travel, in % of the feed."""
        return self._typical


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
    restless : ndarray of bool, shape (n_cells,)
        Cells above `RESTLESS` of the floor that the other probes do not explain: each alone says nothing,
        many in one place do.
    common : ndarray of bool, shape (n_cells,)
        Cells explained by the other probes.
    disturbances : tuple of Disturbance
        Its break-ups in order of time, in % of the feed.
    cell_s : float
        Length of a cell, in seconds.
    """

    motion: Motion
    floor: Floor
    excess_percent: NDArray[np.float32]
    restless: NDArray[np.bool_]
    common: NDArray[np.bool_]
    disturbances: tuple[Disturbance, ...]
    cell_s: float
