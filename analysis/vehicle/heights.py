"""The heights that a vehicle rests at, counted in millimetres from its normal height, up positive."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

import numpy as np
from numpy.typing import ArrayLike

from analysis.errors import VehicleError
from analysis.intervals import Interval
from analysis.vehicle.geometry import TRAVEL_PERCENT, Floats, Geometry
from analysis.wording import say


class RestKind(StrEnum):
    """What the vehicle is doing when it rests there, from standing to leaning."""

    PARKED = "parked"
    ACCESS = "access"
    NORMAL = "normal"
    LOADED = "loaded"
    OFF_ROAD = "off_road"
    CORNER = "corner"


REST_NAMES = {
    RestKind.PARKED: say("parked"),
    RestKind.ACCESS: say("access"),
    RestKind.NORMAL: say("normal"),
    RestKind.LOADED: say("loaded"),
    RestKind.OFF_ROAD: say("off-road"),
    RestKind.CORNER: say("corner"),
}
"""Names for people. Corner is a long bend: the body leans and the wheel moves about another height."""

STANDING = frozenset({RestKind.PARKED, RestKind.ACCESS})
"""Heights at which the vehicle does not drive."""


@dataclass(frozen=True, slots=True)
class Rest:
    """A height that the vehicle rests at.

    Parameters
    ----------
    kind : RestKind
        Which one.
    height_mm : float
        From the normal height, up positive.
    """

    kind: RestKind
    height_mm: float

    @property
    def name(self) -> str:
        """Its name for people."""
        return REST_NAMES[self.kind]

    @property
    def standing(self) -> bool:
        """Whether the vehicle does not drive at it."""
        return self.kind in STANDING


@dataclass(frozen=True, slots=True)
class VehicleHeights:
    """Travel as height, and where the vehicle rests.

    Parameters
    ----------
    geometry : Geometry
        Travel to millimetres.
    normal_percent : float
        Travel at the normal height, the zero of every height here.
    rests : tuple of Rest
        Other heights; the normal one is always there.
    source : str
        Whose figures these are.

    Raises
    ------
    VehicleError
        Where a height lies outside the travel, or a kind stands twice.
    """

    geometry: Geometry
    normal_percent: float
    rests: tuple[Rest, ...] = ()
    source: str = ""

    def __post_init__(self) -> None:
        start, stop = TRAVEL_PERCENT
        if not start <= self.normal_percent <= stop:
            raise _outside(REST_NAMES[RestKind.NORMAL], self.normal_percent)
        kinds = [item.kind for item in self.rests]
        if len(set(kinds)) != len(kinds):
            raise VehicleError(say("a rest height is given twice"), say("give each of them once"))
        for item in self.rests:
            travel = self.travel_percent(item.height_mm)
            if not start <= travel <= stop:
                raise _outside(item.name, travel)

    @property
    def every(self) -> tuple[Rest, ...]:
        """The normal height and the others, in the order of `RestKind`."""
        by_kind = {item.kind: item for item in self.rests} | {
            RestKind.NORMAL: Rest(RestKind.NORMAL, self._normal_mm)
        }
        return tuple(by_kind[kind] for kind in RestKind if kind in by_kind)

    @property
    def _normal_mm(self) -> float:
        return 0.0

    def height_mm(self, travel_percent: ArrayLike) -> Floats:
        """Height from the normal one in mm, same shape."""
        zero_mm = self.geometry.height_mm(self.normal_percent)
        return np.asarray(self.geometry.height_mm(travel_percent) - zero_mm, dtype=np.float64)

    def travel_percent(self, height_mm: float) -> float:
        """Travel at a height; NaN where the arm cannot reach it."""
        zero_mm = float(self.geometry.height_mm(self.normal_percent))
        return float(self.geometry.travel_percent(zero_mm + height_mm))

    def span_mm(self, travel: Interval) -> Interval:
        """A stretch of travel as heights, lower end first."""
        ends = self.height_mm([travel.start, travel.stop])
        return Interval(float(ends.min()), float(ends.max()))


def _outside(name: str, travel_percent: float) -> VehicleError:
    came = say("{travel:.0f} % of travel", travel=travel_percent)
    beyond = say("a height that the arm cannot reach")
    return VehicleError(
        say(
            "the rest height {name} lies outside the travel, at {came}",
            name=name,
            came=came if np.isfinite(travel_percent) else beyond,
        ),
        say("correct the height, or which way is up"),
    )
