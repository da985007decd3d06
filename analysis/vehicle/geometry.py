"""The sensor's travel as height of the body, in millimetres, by two points or by arm and angle.

Height grows as the body rises; wheel travel is the same length seen from the other side, so a bump takes
height away. The zero of a geometry is its own; `analysis.vehicle.heights` counts from the normal height.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import StrEnum
from typing import Protocol

import numpy as np
from numpy.typing import ArrayLike, NDArray

from analysis.errors import VehicleError
from analysis.wording import say

Floats = NDArray[np.float64]

TRAVEL_PERCENT = (0.0, 100.0)
"""Ends of the electrical travel."""

_LONGEST_ARM_MM = 1_000.0
_CLOSE_PERCENT = 0.5  # points nearer than this say nothing about the slope between them
_MOST_MM_A_PERCENT = 50.0  # a slip of the pen: no wheel moves five metres


class Up(StrEnum):
    """Which way travel goes as the body rises."""

    RISING = "rising"
    FALLING = "falling"


class Geometry(Protocol):
    """Turns travel into height and back."""

    def height_mm(self, travel_percent: ArrayLike) -> Floats:
        """Height in mm, same shape."""

    def travel_percent(self, height_mm: ArrayLike) -> Floats:
        """Travel in %, same shape; NaN for a height that the arm cannot reach."""


@dataclass(frozen=True, slots=True)
class TwoPoints:
    """A straight line through two places where both were measured.

    Parameters
    ----------
    first, second : tuple of float
        Travel in % and height in mm; the second with more travel.
    up : Up
        Which way travel goes as the body rises; it must agree with the points.

    Raises
    ------
    VehicleError
        Where the points coincide, run backwards, or lie outside the travel.
    """

    first: tuple[float, float]
    second: tuple[float, float]
    up: Up = Up.RISING

    def __post_init__(self) -> None:
        for travel, height in (self.first, self.second):
            _require_travel(travel, say("a calibration point"))
            _require_finite(height, say("the height of a calibration point"))
        (start, low), (stop, high) = self.first, self.second
        if abs(stop - start) < _CLOSE_PERCENT or high == low:
            raise VehicleError(
                say(
                    "the two calibration points coincide: {first:g} % at {low:g} mm and {second:g} % at"
                    " {high:g} mm",
                    first=start,
                    low=low,
                    second=stop,
                    high=high,
                ),
                say("measure two heights that are further apart"),
            )
        if stop < start or (high > low) is not (self.up is Up.RISING):
            raise VehicleError(
                say(
                    "the calibration points run backwards: {first:g} % at {low:g} mm, then {second:g} % at"
                    " {high:g} mm, where travel is said to be {up} as the body rises",
                    first=start,
                    low=low,
                    second=stop,
                    high=high,
                    up=self.up.value,
                ),
                say("give the smaller travel first, or change which way is up"),
            )
        if abs(self._slope) > _MOST_MM_A_PERCENT:
            raise VehicleError(
                say("the calibration points make {slope:.0f} mm of one % of travel", slope=self._slope),
                say("enter heights in millimetres and travel in per cent"),
            )

    @property
    def _slope(self) -> float:
        return (self.second[1] - self.first[1]) / (self.second[0] - self.first[0])

    def height_mm(self, travel_percent: ArrayLike) -> Floats:
        """Height in mm, same shape."""
        travel = np.asarray(travel_percent, dtype=np.float64)
        return np.asarray(self.first[1] + self._slope * (travel - self.first[0]), dtype=np.float64)

    def travel_percent(self, height_mm: ArrayLike) -> Floats:
        """Travel in %, same shape; beyond 0 and 100 where no travel is left."""
        height = np.asarray(height_mm, dtype=np.float64)
        return np.asarray(self.first[0] + (height - self.first[1]) / self._slope, dtype=np.float64)


@dataclass(frozen=True, slots=True)
class Arm:
    """An arm that turns with the wheel: height goes with the sine of its angle.

    What the link between arm and suspension does beyond that is left out: it is long, and moves little.

    Parameters
    ----------
    length_mm : float
        From the sensor's shaft to the link.
    angle_deg : float
        That the arm turns over the whole electrical travel.
    level_percent : float
        Travel at which the arm stands square to its link; the zero of the height.
    up : Up
        Which way travel goes as the body rises.
    wheel_ratio : float
        Millimetres of wheel for a millimetre of the arm's end.

    Raises
    ------
    VehicleError
        Where no sensor can be built so.
    """

    length_mm: float
    angle_deg: float
    level_percent: float = 50.0
    up: Up = Up.RISING
    wheel_ratio: float = 1.0

    def __post_init__(self) -> None:
        _require_within(self.length_mm, 1.0, _LONGEST_ARM_MM, say("the arm's length in mm"))
        _require_within(self.angle_deg, 1.0, 360.0, say("the arm's angle in degrees"))
        _require_within(self.wheel_ratio, 0.1, 10.0, say("the wheel's millimetres for one of the arm"))
        _require_travel(self.level_percent, say("the travel with the arm level"))

    @property
    def _sign(self) -> float:
        return 1.0 if self.up is Up.RISING else -1.0

    @property
    def _reach_mm(self) -> float:
        return self.length_mm * self.wheel_ratio

    def height_mm(self, travel_percent: ArrayLike) -> Floats:
        """Height in mm, same shape; beyond a right angle, where height would turn back, it stays."""
        travel = np.asarray(travel_percent, dtype=np.float64)
        angle = np.radians((travel - self.level_percent) * self.angle_deg / 100.0)
        turned = np.sin(np.clip(angle, -0.5 * math.pi, 0.5 * math.pi))
        return np.asarray(self._sign * self._reach_mm * turned, dtype=np.float64)

    def travel_percent(self, height_mm: ArrayLike) -> Floats:
        """Travel in %, same shape; NaN for a height that the arm cannot reach."""
        share = self._sign * np.asarray(height_mm, dtype=np.float64) / self._reach_mm
        with np.errstate(invalid="ignore"):
            angle = np.degrees(np.arcsin(share))
        return np.asarray(self.level_percent + 100.0 * angle / self.angle_deg, dtype=np.float64)


def _require_travel(travel_percent: float, what: str) -> None:
    start, stop = TRAVEL_PERCENT
    if not start <= travel_percent <= stop:
        raise VehicleError(
            say(
                "{what} must lie within 0 and 100 % of travel, got {came:g} %", what=what, came=travel_percent
            ),
            say("enter it in per cent of travel"),
        )


def _require_within(value: float, least: float, most: float, what: str) -> None:
    if not least <= value <= most:
        raise VehicleError(
            say(
                "{what} must lie within {least:g} and {most:g}, got {came:g}",
                what=what,
                least=least,
                most=most,
                came=value,
            ),
            say("measure it again"),
        )


def _require_finite(value: float, what: str) -> None:
    if not math.isfinite(value):
        raise VehicleError(say("{what} is no number", what=what), say("enter it in millimetres"))
