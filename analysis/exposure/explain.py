"""The one door: findings and a vehicle go in, the whole explanation comes out, data and words."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from analysis.captures.model import Capture
from analysis.control_unit.rules import SIDES, ControlUnit, control_unit_for
from analysis.diagnosis.findings import Band, Findings
from analysis.diagnosis.profile_model import SensorProfile
from analysis.errors import VehicleError
from analysis.exposure.contact import BandContact, measure_contact
from analysis.exposure.from_record import RoadRecord, road_records
from analysis.exposure.picture import Exposure, picture
from analysis.exposure.stored_code import against_roads
from analysis.exposure.words import (
    band_place,
    caveats,
    customer_words,
    road_summary,
    rules_words,
    tested_place,
    what_would,
)
from analysis.reports.verdicts import is_watched
from analysis.vehicle.heights import VehicleHeights
from analysis.vehicle.road import ROADS, Road
from analysis.wording import joined, say

TOLD_ROADS = (ROADS[0], ROADS[2], ROADS[3])
"""What a report tells of: a motorway, a country road, a lane."""

MINUTES = 30.0


@dataclass(frozen=True, slots=True)
class Explanation:
    """Why it comes and goes.

    Parameters
    ----------
    band : Band
        Which band.
    heights : VehicleHeights
        Of the vehicle.
    contact : BandContact
        What the band does to readings.
    exposures : tuple of Exposure
        One for each road.
    records : tuple of RoadRecord
        What road records show, where there are any.
    tested : str
        Which heights the captured travel reached.
    codes : tuple of str
        Fault codes that the job names.
    """

    band: Band
    heights: VehicleHeights
    contact: BandContact
    exposures: tuple[Exposure, ...]
    records: tuple[RoadRecord, ...]
    tested: str = ""
    codes: tuple[str, ...] = ()

    @property
    def sentences(self) -> tuple[str, ...]:
        """The paragraph for a report: the band, each road, the rules, what was recorded, what it rests on."""
        first = self.exposures[0]
        roads = [road_summary(item) for item in self.exposures]
        told = (
            joined([band_place(first), self.tested]),
            *roads,
            rules_words(first.unit),
            what_would(self.exposures),
            against_roads(self.codes, self.exposures),
        )
        return tuple(
            item for item in (*told, *(one.words for one in self.records), caveats(self.exposures)) if item
        )

    @property
    def brief(self) -> str:
        """The same for the customer, in a few sentences."""
        return customer_words(self.exposures)

    @property
    def paragraph(self) -> str:
        """The same in one piece."""
        return joined(self.sentences)


def explain(
    capture: Capture,
    findings: Findings,
    profile: SensorProfile,
    *,
    heights: VehicleHeights | None = None,
    unit: ControlUnit | None = None,
    roads: Sequence[Road] = TOLD_ROADS,
    minutes: float = MINUTES,
    codes: Sequence[str] = (),
) -> Explanation | None:
    """Explain why a band comes and goes, where band and vehicle allow it.

    Parameters
    ----------
    capture : Capture
        That `findings` speak of; only the band's crossings and holds are read.
    findings : Findings
        Of `examine`.
    profile : SensorProfile
        That they were made with.
    heights : VehicleHeights or None
        Of the vehicle; None takes the profile's.
    unit : ControlUnit or None
        None takes the profile's rules, and a comparison of the two sides.
    roads : sequence of Road
        Which roads, at least one.
    minutes : float
        Length of the drive.
    codes : sequence of str
        Fault codes that the job names.

    Returns
    -------
    Explanation or None
        None where there is no band that is more likely there than not, or heights are not known.

    Raises
    ------
    CaptureError
        Where the file is damaged or gone.
    VehicleError
        Where the drive's length makes no sense, or no road is given.
    """
    band, known = likeliest_band(findings), heights or profile.heights
    if band is None or known is None:
        return None
    if not roads:
        raise VehicleError(say("no road was chosen"), say("choose at least one"))
    reads = unit or unit_for(profile)
    contact = measure_contact(capture, findings, band, reads)
    exposures = tuple(picture(known, band.travel, contact, reads, road, minutes=minutes) for road in roads)
    records = road_records(capture, findings, band, known)
    tested = tested_place(findings.coverage, known)
    return Explanation(band, known, contact, exposures, records, tested, tuple(codes))


def likeliest_band(findings: Findings) -> Band | None:
    """The band to explain: the likeliest that is more likely there than not; None for none."""
    likely = [band for band in findings.bands if not is_watched(band)]
    return max(likely, key=lambda band: band.confidence) if likely else None


def unit_for(profile: SensorProfile) -> ControlUnit:
    """The profile's control unit; one with a single track also compares the two sides of the axle."""
    unit = control_unit_for(profile)
    return unit if unit.comparison_rule is not None else replace(unit, comparison_rule=SIDES)
