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
    """

    usual: UsualLevel
    ratio: float
    margin_percent: float
    least_percent: float = 0.0
    most_percent: float = float("inf")
    _typical: float = field(init=False, repr=False, compare=False)

    def __post_init__(self) -> None:
        # Reckoned once: it is asked for at every disturbance of a record.
        middle = self.at(np.array([self.usual.centre], np.float32))
        object.__setattr__(self, "_typical", float(middle[0]))

    def at(self, travel_percent: NDArray[np.float32]) -> NDArray[np.float32]:
        """Floor at each position, in % of the feed, same shape."""
        floor = self.usual.at(travel_percent) * np.float32(self.ratio) + np.float32(self.margin_percent)
        most = max(self.most_percent, self.least_percent)
        return np.asarray(np.clip(floor, self.least_percent, most), dtype=np.float32)

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
