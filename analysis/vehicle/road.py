"""Roads: class and speed, chosen by a person's words.

ISO 8608 sorts roads by the density of their height over the wave number. About the geometric mean of its
class, with waviness 2, that density is ``Gd(n0) (n / n0)⁻²`` with n0 = 0.1 cycle/m. At speed V the vertical
velocity under the wheel is then white, with the one-sided density ``(2π n0)² Gd(n0) V``. A class reaches from
half its mean to twice it, which is a factor of √2 in every amplitude, either way.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import StrEnum

from analysis.errors import VehicleError
from analysis.intervals import Interval
from analysis.wording import say

WAVE_NUMBER_M = 0.1
"""ISO 8608's reference n0, in cycles a metre."""

SPEEDS_KM_H = Interval(5.0, 250.0)
"""Below, the model's time is no longer the drive's; above, nobody drives."""


MINUTES = Interval(1.0, 600.0)
"""Drives that are offered: a minute to ten hours."""


class RoadClass(StrEnum):
    """Classes of ISO 8608, from very good to impassable."""

    A = "A"
    B = "B"
    C = "C"
    D = "D"
    E = "E"
    F = "F"
    G = "G"
    H = "H"


ROUGHNESS_M3 = {item: 16e-6 * 4.0**place for place, item in enumerate(RoadClass)}
"""Gd(n0), geometric mean of each class (ISO 8608, table C.1): four times from one class to the next."""


@dataclass(frozen=True, slots=True)
class Road:
    """A road of one class, driven at one speed.

    Parameters
    ----------
    road_class : RoadClass
        Of ISO 8608.
    speed_km_h : float
        How fast.

    Raises
    ------
    VehicleError
        Where the speed is out of range.
    """

    road_class: RoadClass
    speed_km_h: float

    def __post_init__(self) -> None:
        if not SPEEDS_KM_H.start <= self.speed_km_h <= SPEEDS_KM_H.stop:
            raise VehicleError(
                say(
                    "the speed must lie within {least:g} and {most:g} km/h, got {came:g} km/h",
                    least=SPEEDS_KM_H.start,
                    most=SPEEDS_KM_H.stop,
                    came=self.speed_km_h,
                ),
                say("enter the speed in km/h"),
            )

    @property
    def speed_m_s(self) -> float:
        """The speed in m/s."""
        return self.speed_km_h / 3.6

    @property
    def velocity_density_m2_s2_hz(self) -> float:
        """One-sided density of the vertical velocity under the wheel, the same at every frequency."""
        return (2.0 * math.pi * WAVE_NUMBER_M) ** 2 * ROUGHNESS_M3[self.road_class] * self.speed_m_s

    @property
    def words(self) -> str:
        """Class and speed in a person's words."""
        return say(
            "{road} at {speed_km_h:g} km/h",
            road=CLASS_WORDS[self.road_class],
            speed_km_h=self.speed_km_h,
        )


CLASS_WORDS = {
    RoadClass.A: say("smooth motorway"),
    RoadClass.B: say("good main road"),
    RoadClass.C: say("worn country road"),
    RoadClass.D: say("broken lane"),
    RoadClass.E: say("farm track"),
    RoadClass.F: say("deep ruts"),
    RoadClass.G: say("open ground"),
    RoadClass.H: say("boulders"),
}
"""What a person calls a road of each class: words of our own, ISO 8608 gives letters."""

ROADS = (
    Road(RoadClass.A, 110.0),
    Road(RoadClass.B, 90.0),
    Road(RoadClass.C, 70.0),
    Road(RoadClass.D, 40.0),
    Road(RoadClass.E, 20.0),
)
"""What is offered to choose from, at the speeds that people drive there."""


def road_of(road_class: str, speed_km_h: float) -> Road:
    """A road from a class's letter, as a person or a file gives it.

    Raises
    ------
    VehicleError
        Where there is no such class, or the speed is out of range.
    """
    letters = [item.value for item in RoadClass]
    if road_class.strip().upper() not in letters:
        raise VehicleError(
            say("there is no road class {came!r}", came=road_class),
            say("choose one of: {letters}", letters=", ".join(letters)),
        )
    return Road(RoadClass(road_class.strip().upper()), speed_km_h)
