"""The whole picture: every rest height of a vehicle on one road, the band, and whether a code would set.

What the model leaves out is in `LEFT_OUT` and is said wherever the picture is shown.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np

from analysis.control_unit.debounce import Flags, Floats
from analysis.control_unit.rules import ControlUnit, RuleKind
from analysis.errors import VehicleError
from analysis.exposure.contact import BandContact
from analysis.exposure.stays import (
    codes_per_s,
    expected_runs,
    inside,
    readings_at,
    run_lengths,
)
from analysis.exposure.visits import Visits, chance_within, visits
from analysis.intervals import Interval
from analysis.vehicle.drive import RATE_HZ, unit_drive
from analysis.vehicle.heights import Rest, VehicleHeights
from analysis.vehicle.quarter_car import GOLDEN_CAR, QuarterCar
from analysis.vehicle.road import MINUTES, Road
from analysis.wording import say

LEFT_OUT = say(
    "Left out: roll and pitch, braking, a load that shifts, levelling while driving, potholes and kerbs, and"
    " the stops of the suspension."
)
"""What the model does not know."""

_CLASS_FACTOR = math.sqrt(2.0)  # in amplitude: a class of ISO 8608 reaches from half its mean to twice it


@dataclass(frozen=True, slots=True)
class RuleChance:
    """Whether one rule would store a code.

    Parameters
    ----------
    kind : RuleKind
        Which rule.
    chance : float
        In a drive of the picture's length, 0 to 1.
    over_class : Interval
        The same from the smoothest to the roughest road of the class.
    per_hour : float
        Codes an hour.
    """

    kind: RuleKind
    chance: float
    over_class: Interval
    per_hour: float


@dataclass(frozen=True, slots=True)
class RestExposure:
    """One rest height.

    Parameters
    ----------
    rest : Rest
        Which one.
    travel_percent : float
        Where the sensor stands there.
    rms_mm : float
        Of the movement about it; 0 where the vehicle stands.
    visits : Visits
        Of the band, in closed form.
    share_over_class : Interval
        Share of time from the smoothest to the roughest road of the class.
    per_km : float
        Visits a kilometre; NaN where the vehicle stands.
    long_stay_s : float
        One stay in ten is longer, from the simulated drive; NaN where there is none.
    chances : tuple of RuleChance
        Rule by rule.
    """

    rest: Rest
    travel_percent: float
    rms_mm: float
    visits: Visits
    share_over_class: Interval
    per_km: float
    long_stay_s: float
    chances: tuple[RuleChance, ...]

    @property
    def chance(self) -> float:
        """That a code is stored by one rule or another, the rules taken as independent."""
        return 1.0 - math.prod(1.0 - item.chance for item in self.chances)

    @property
    def chance_over_class(self) -> Interval:
        """The same from the smoothest to the roughest road of the class."""
        low, high = (
            1.0 - math.prod(1.0 - getattr(item.over_class, end) for item in self.chances)
            for end in ("start", "stop")
        )
        return Interval(min(low, high), max(low, high))


@dataclass(frozen=True, slots=True)
class Exposure:
    """Every rest height on one road.

    Parameters
    ----------
    road : Road
        Which road.
    heights : VehicleHeights
        Of which vehicle.
    band : Interval
        The band in % of travel.
    band_mm : Interval
        The same as heights.
    contact : BandContact
        What it does to readings.
    unit : ControlUnit
        Who reads.
    minutes : float
        Length of the drive.
    rests : tuple of RestExposure
        In the order of the vehicle's heights.
    car : QuarterCar
        Which car.
    """

    road: Road
    heights: VehicleHeights
    band: Interval
    band_mm: Interval
    contact: BandContact
    unit: ControlUnit
    minutes: float
    rests: tuple[RestExposure, ...]
    car: QuarterCar = GOLDEN_CAR

    def density_per_mm(self, rest: RestExposure, height_mm: Floats) -> Floats:
        """How likely each height is, in 1/mm, same shape; 0 everywhere for a vehicle that stands."""
        if rest.rms_mm <= 0.0:
            return np.zeros_like(height_mm)
        away = (height_mm - rest.rest.height_mm) / rest.rms_mm
        peak = 1.0 / (rest.rms_mm * math.sqrt(2.0 * math.pi))
        return np.asarray(peak * np.exp(-0.5 * away**2), dtype=np.float64)


def picture(
    heights: VehicleHeights,
    band: Interval,
    contact: BandContact,
    unit: ControlUnit,
    road: Road,
    *,
    minutes: float = 30.0,
    car: QuarterCar = GOLDEN_CAR,
) -> Exposure:
    """Work out the picture.

    Parameters
    ----------
    heights : VehicleHeights
        Travel as height, and the rest heights.
    band : Interval
        In % of travel.
    contact : BandContact
        How the band breaks the rules.
    unit : ControlUnit
        The rules.
    road : Road
        Class and speed.
    minutes : float
        Length of the drive.
    car : QuarterCar
        Which car.

    Returns
    -------
    Exposure

    Raises
    ------
    VehicleError
        Where the band has no width, or the drive a length that nobody drives.
    """
    if not band.length > 0.0:
        raise VehicleError(say("the band has no width"), say("choose a band with two edges"))
    if not MINUTES.start <= minutes <= MINUTES.stop:
        raise VehicleError(
            say(
                "the drive must last {least:g} to {most:g} minutes, got {came:g}",
                least=MINUTES.start,
                most=MINUTES.stop,
                came=minutes,
            ),
            say("enter the drive in minutes"),
        )
    band_mm = heights.span_mm(band)
    made = _Maker(band_mm, contact, unit, road, minutes, car)
    rests = tuple(made.rest(item, heights.travel_percent(item.height_mm)) for item in heights.every)
    return Exposure(road, heights, band, band_mm, contact, unit, minutes, rests, car)


@dataclass(frozen=True, slots=True)
class _Maker:
    """What all rest heights of a picture share."""

    band_mm: Interval
    contact: BandContact
    unit: ControlUnit
    road: Road
    minutes: float
    car: QuarterCar

    def rest(self, rest: Rest, travel_percent: float) -> RestExposure:
        """One rest height."""
        rms_mm = 0.0 if rest.standing else 1e3 * self.car.travel_rms_m(self.road.velocity_density_m2_s2_hz)
        every = [self._visits(rest, rms_mm * factor) for factor in (1.0, 1 / _CLASS_FACTOR, _CLASS_FACTOR)]
        shares = sorted(item.share for item in every)
        return RestExposure(
            rest,
            travel_percent,
            rms_mm,
            every[0],
            Interval(shares[0], shares[-1]),
            math.nan if rest.standing else every[0].per_km(self.road.speed_m_s),
            self._long_stay_s(rest, rms_mm),
            self._chances(rest, rms_mm),
        )

    def _visits(self, rest: Rest, rms_mm: float) -> Visits:
        return visits(self.band_mm, rest.height_mm, rms_mm, self.car.up_crossings_per_s)

    def _long_stay_s(self, rest: Rest, rms_mm: float) -> float:
        if rms_mm <= 0.0:
            return math.nan
        stays = run_lengths(_time_in_band(self.band_mm, rest, rms_mm, self.minutes, self.car))
        return float(np.quantile(stays, 0.9)) / RATE_HZ if stays.size else math.nan

    def _chances(self, rest: Rest, rms_mm: float) -> tuple[RuleChance, ...]:
        factors = (1.0,) if rms_mm <= 0.0 else (1.0, 1.0 / _CLASS_FACTOR, _CLASS_FACTOR)
        seen = [
            readings_at(
                _time_in_band(self.band_mm, rest, rms_mm * factor, self.minutes, self.car),
                RATE_HZ,
                self.unit.tick_s,
            )
            for factor in factors
        ]
        made = []
        for kind, rule in self.unit.rules:
            contact = self.contact.of(kind, standing=rest.standing)
            rates = [codes_per_s(item, contact, rule.debounce, self.unit.tick_s) for item in seen]
            chances = [chance_within(rate, self.minutes) for rate in rates]
            over_class = Interval(min(chances), max(chances))
            made.append(RuleChance(kind, chances[0], over_class, 3_600.0 * rates[0]))
        return tuple(made)


def hold_that_sets(
    exposure: Exposure, kind: RuleKind, *, chance: float = 0.5
) -> tuple[float, RestExposure] | None:
    """The longest continuous time before the code sets with which a rule would still store one, and where.

    Parameters
    ----------
    exposure : Exposure
        The picture.
    kind : RuleKind
        Which rule.
    chance : float
        That is asked for, in the picture's drive, at the rest height where it is largest.

    Returns
    -------
    tuple of (float, RestExposure), or None
        Seconds, a whole number of readings, and the rest height; None where not even a single broken reading
        would do, or the rule is not there.
    """
    if kind not in dict(exposure.unit.rules):
        return None
    tick_s = exposure.unit.tick_s
    held = [(_longest_run(exposure, item, kind, -math.log1p(-chance)), item) for item in exposure.rests]
    needed, where = max(held, key=lambda each: each[0])
    return ((needed - 1) * tick_s, where) if needed > 0 else None


def _longest_run(exposure: Exposure, item: RestExposure, kind: RuleKind, wanted: float) -> int:
    """The longest run of broken readings that comes `wanted` times in a drive; 0 where none does."""
    tick_s = exposure.unit.tick_s
    contact = exposure.contact.of(kind, standing=item.rest.standing)
    spent = _time_in_band(exposure.band_mm, item.rest, item.rms_mm, exposure.minutes, exposure.car)
    seen = readings_at(spent, RATE_HZ, tick_s)
    stays, drives = run_lengths(seen), seen.shape[0] * tick_s / (60.0 * exposure.minutes)
    low, high = 0, int(stays.max(initial=0))
    while low < high:  # the longer a run, the rarer
        middle = (low + high + 1) // 2
        often = expected_runs(stays, middle, contact, tick_s) / drives >= wanted
        low, high = (middle, high) if often else (low, middle - 1)
    return low


def _time_in_band(band_mm: Interval, rest: Rest, rms_mm: float, minutes: float, car: QuarterCar) -> Flags:
    """Where a drive about a rest height is in the band, at `RATE_HZ`."""
    if rms_mm <= 0.0:
        return np.full(round(60.0 * minutes * RATE_HZ), band_mm.contains(rest.height_mm))
    return inside(unit_drive(car), band_mm, rest.height_mm, rms_mm)
