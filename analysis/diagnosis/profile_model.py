"""What a sensor profile says, as frozen values; `analysis.diagnosis.profiles` is the door to them."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from enum import StrEnum
from pathlib import Path

from analysis.captures.model import Role
from analysis.intervals import Interval
from analysis.vehicle.heights import VehicleHeights


class Contact(StrEnum):
    """How the sensor picks up the position."""

    TRACK = "track"
    CONTACTLESS = "contactless"


class Slope(StrEnum):
    """Which way a track's voltage goes with rising travel."""

    RISING = "rising"
    FALLING = "falling"
    EITHER = "either"


@dataclass(frozen=True, slots=True)
class Limit:
    """A limit for one check.

    Parameters
    ----------
    lower, upper : float or None
        In `unit`; None where that side is open.
    unit : str
        ``"V"``, ``"%"`` (of the applied voltage) or ``"Ω"``.
    source : str
        Maker, vehicle, year and page title; or "common practice, no source".
    hold_s : float
        How long the reading must stay outside before it counts; 0 for at once.
    """

    lower: float | None
    upper: float | None
    unit: str
    source: str
    hold_s: float = 0.0


@dataclass(frozen=True, slots=True)
class Track:
    """What one track should read, at the profile's own supply.

    Parameters
    ----------
    valid_v : Interval
        Over the whole travel.
    rest_v : Interval or None
        With the arm at rest (standing height, closed throttle, released pedal); None where unknown.
    slope : Slope
        With rising travel.
    source : str
        Whose figures these are.
    """

    valid_v: Interval
    rest_v: Interval | None
    slope: Slope
    source: str


@dataclass(frozen=True, slots=True)
class SecondTrack:
    """How the second track follows the first: ``second = factor * first + offset``.

    Parameters
    ----------
    factor : float
        Negative for an inverted pair.
    offset_v : float
        At the profile's own supply.
    tolerance_v : float
        Largest departure.
    hold_s : float
        How long it must last before it counts.
    source : str
        Whose figures these are.
    """

    factor: float
    offset_v: float
    tolerance_v: float
    hold_s: float
    source: str


@dataclass(frozen=True, slots=True)
class SensorProfile:
    """What a kind of sensor should read.

    Parameters
    ----------
    id, title : str
        The name to call it by, and the name to show.
    contact : Contact
        Decides between "worn track" and "sensor output fault".
    ratiometric : bool
        Whether its voltages go with the supply.
    supply_v : float
        Nominal reference voltage.
    tracks : mapping of Role to Track
        `SIGNAL`, and `SECOND_SIGNAL` for a dual-track sensor.
    second_track : SecondTrack or None
        None for a single track.
    limits : mapping of str to Limit
        By the code of the check.
    assumed : bool
        No profile was named, and this one was taken in its place.
    path : Path or None
        The technician's own file; None for a built-in profile.
    heights : VehicleHeights or None
        Travel as the height of the body, and where the vehicle rests; None where the profile does not say.
    """

    id: str
    title: str
    contact: Contact
    ratiometric: bool
    supply_v: float
    tracks: Mapping[Role, Track]
    second_track: SecondTrack | None = None
    limits: Mapping[str, Limit] = field(default_factory=dict)
    assumed: bool = False
    path: Path | None = None
    heights: VehicleHeights | None = None

    def limit(self, code: str) -> Limit | None:
        """The limit for a check, or None where the profile states none."""
        return self.limits.get(code)

    def at_supply(self, voltage_v: Interval, *, supply_v: float) -> Interval:
        """Track volts at the supply that was measured; unchanged for a sensor that is not ratiometric."""
        scale = supply_v / self.supply_v if self.ratiometric else 1.0
        return Interval(voltage_v.start * scale, voltage_v.stop * scale)

    def expected_second_v(self, first_v: float, *, supply_v: float | None = None) -> float | None:
        """What the second track should read beside the first; None for a single track.

        Parameters
        ----------
        first_v : float
            Volts of the first track.
        supply_v : float or None
            Reference voltage as measured; None for the nominal one.
        """
        if self.second_track is None:
            return None
        scale = supply_v / self.supply_v if self.ratiometric and supply_v is not None else 1.0
        return self.second_track.factor * first_v + self.second_track.offset_v * scale
