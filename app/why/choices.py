"""What was chosen, as one frozen value, and what follows from it; without Qt."""

from __future__ import annotations

from dataclasses import dataclass, field, fields, is_dataclass, replace
from enum import Enum

from analysis.captures.model import Capture
from analysis.captures.record_names import Names, called, record_names
from analysis.control_unit.debounce import ContinuousTimer, Debounce, UpDownCounter
from analysis.control_unit.rules import ControlUnit
from analysis.diagnosis.findings import Band, Findings
from analysis.diagnosis.profile_model import SensorProfile
from analysis.errors import VehicleError
from analysis.exposure.contact import BandContact, measure_contact
from analysis.exposure.explain import MINUTES, unit_for
from analysis.exposure.from_record import RoadRecord, road_records
from analysis.exposure.picture import Exposure, RestExposure, picture
from analysis.exposure.stored_code import against_roads
from analysis.exposure.words import (
    band_place,
    caveats,
    rest_details,
    road_summary,
    rules_words,
    tested_place,
    what_would,
)
from analysis.review.vehicle import RoadTest, Vehicle
from analysis.vehicle.heights import RestKind, VehicleHeights
from analysis.vehicle.road import ROADS, Road
from analysis.wording import joined, say


class Part(Enum):
    """What the words in detail are about, in the order in which they are read."""

    HEIGHT = "height"
    ROAD = "road"
    UNIT = "unit"
    RECORDED = "recorded"
    BASIS = "basis"


@dataclass(frozen=True, slots=True)
class Choices:
    """Everything that can be chosen.

    Parameters
    ----------
    heights : VehicleHeights or None
        Of the vehicle; None until somebody gives them.
    road : Road
        Class and speed.
    minutes : float
        Length of the drive.
    unit : ControlUnit
        The rules.
    rest : RestKind
        The height that is looked at.
    test : RoadTest
        The road test after the repair.
    """

    heights: VehicleHeights | None
    road: Road
    minutes: float
    unit: ControlUnit
    rest: RestKind = RestKind.NORMAL
    test: RoadTest = field(default_factory=RoadTest)


@dataclass(frozen=True, slots=True)
class Shown:
    """What follows from the choices.

    Parameters
    ----------
    choices : Choices
        From which.
    exposure : Exposure
        The picture.
    records : tuple of RoadRecord
        What road records show.
    tested : str
        Which heights the captured travel reached.
    codes : tuple of str
        Fault codes that the job names.
    names : mapping of str to Wording
        What the records are called.
    """

    choices: Choices
    exposure: Exposure
    records: tuple[RoadRecord, ...]
    tested: str = ""
    codes: tuple[str, ...] = ()
    names: Names = field(default_factory=dict)

    @property
    def against(self) -> str:
        """What to make of the job's codes, where none is expected; empty otherwise."""
        return against_roads(self.codes, [self.exposure])

    @property
    def rest(self) -> RestExposure:
        """The height that is looked at; the normal one where the vehicle has not that one."""
        by_kind = {item.rest.kind: item for item in self.exposure.rests}
        return by_kind.get(self.choices.rest, by_kind[RestKind.NORMAL])

    @property
    def parts(self) -> dict[Part, tuple[str, ...]]:
        """The words in detail, paragraph by paragraph; a part that says nothing is left out."""
        exposure = self.exposure
        told = {
            Part.HEIGHT: (joined([band_place(exposure), self.tested]), rest_details(exposure, self.rest)),
            Part.ROAD: (road_summary(exposure),),
            Part.UNIT: (joined([rules_words(exposure.unit), what_would([exposure])]),),
            Part.RECORDED: tuple(item.words for item in self.records),
            Part.BASIS: (caveats([exposure], left_out=False),),  # that stands beside the picture
        }
        named = {part: tuple(called(text, self.names) for text in texts) for part, texts in told.items()}
        return {part: texts for part, texts in named.items() if any(texts)}


def first_choices(profile: SensorProfile) -> Choices:
    """What is shown before anything was chosen: the profile's heights and rules, a motorway."""
    return Choices(profile.heights, ROADS[0], MINUTES, unit_for(profile), RestKind.LOADED)


def with_entered(choices: Choices, vehicle: Vehicle) -> Choices:
    """The choices with what the review says of the vehicle in place of the profile's."""
    return replace(
        choices,
        heights=vehicle.heights or choices.heights,
        road=vehicle.road or choices.road,
        minutes=vehicle.minutes if vehicle.minutes is not None else choices.minutes,
        unit=vehicle.unit or choices.unit,
        test=vehicle.test or choices.test,
    )


def entered(vehicle: Vehicle, before: Choices, after: Choices) -> Vehicle:
    """What the review says of the vehicle from now on: whatever was changed joins what was entered before."""
    return replace(
        vehicle,
        heights=after.heights if after.heights != before.heights else vehicle.heights,
        road=after.road if after.road != before.road else vehicle.road,
        minutes=after.minutes if after.minutes != before.minutes else vehicle.minutes,
        unit=after.unit if after.unit != before.unit else vehicle.unit,
        test=after.test if after.test != before.test else vehicle.test,
    )


def changed_field(before: object, after: object) -> str:
    """Which one field was filled in, as a path such as ``"road.speed_km_h"``; empty where more than one was.

    Parameters
    ----------
    before, after : object
        Frozen values, tuples of them, or anything that can be compared; alike down to the field.
    """
    if type(before) is not type(after):
        return ""
    if is_dataclass(before) and not isinstance(before, type):
        parts = [
            (item.name, getattr(before, item.name), getattr(after, item.name)) for item in fields(before)
        ]
    elif isinstance(before, tuple) and isinstance(after, tuple) and len(before) == len(after):
        parts = [(str(place), *pair) for place, pair in enumerate(zip(before, after, strict=True))]
    else:
        return "value"
    changed = [part for part in parts if part[1] != part[2]]
    if len(changed) != 1:
        return ""
    name, old, new = changed[0]
    inner = changed_field(old, new)
    return f"{name}.{inner}" if inner else ""


def shown(
    capture: Capture,
    findings: Findings,
    band: Band,
    choices: Choices,
    contact: BandContact | None = None,
    codes: tuple[str, ...] = (),
) -> Shown:
    """Work out what follows from the choices.

    Parameters
    ----------
    capture, findings : Capture, Findings
        With the band.
    band : Band
        Which band.
    choices : Choices
        What was chosen.
    contact : BandContact or None
        What the band does to readings under these rules, where it was measured already.
    codes : tuple of str
        Fault codes that the job names.

    Raises
    ------
    VehicleError
        Where no heights are given, or something that was chosen makes no sense.
    CaptureError
        Where the file is damaged or gone.
    """
    if choices.heights is None:
        raise VehicleError(
            say("it is not known how travel becomes millimetres, nor where the vehicle rests"),
            say("enter it under Heights"),
        )
    contact = contact or measure_contact(capture, findings, band, choices.unit)
    made = picture(choices.heights, band.travel, contact, choices.unit, choices.road, minutes=choices.minutes)
    records = road_records(capture, findings, band, choices.heights)
    return Shown(
        choices, made, records, tested_place(findings.coverage, choices.heights), codes, record_names(capture)
    )


def debounce_of(counts: bool, hold_s: float, up: int, down: int, limit: int) -> Debounce:
    """A debounce from the fields of a form."""
    return UpDownCounter(up, down, limit) if counts else ContinuousTimer(hold_s)
