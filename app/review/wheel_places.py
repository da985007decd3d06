"""Where markers are in millimetres of wheel travel, where heights are known."""

from __future__ import annotations

from dataclasses import dataclass

from analysis.captures.model import Capture, Record, Role
from analysis.diagnosis.findings import Findings
from analysis.intervals import Interval
from analysis.review.drop import Untold, drop_at
from analysis.review.model import Marker, Place, PointMarker, TravelSpan
from analysis.review.readings import MarkerReadings, PointReading
from analysis.signals.drop import Drop
from analysis.vehicle.heights import VehicleHeights
from app.review.readings import travel_at


@dataclass(frozen=True, slots=True)
class WheelPlaces:
    """Travel and height of markers of one capture.

    Parameters
    ----------
    capture : Capture or None
        Whose records they are of.
    findings : Findings or None
        For the arm's paths.
    heights : VehicleHeights or None
        Travel as height.
    """

    capture: Capture | None = None
    findings: Findings | None = None
    heights: VehicleHeights | None = None

    def travel_percent(self, marker: Marker, readings: MarkerReadings | None) -> Place | None:
        """Travel of a stretch, or of the arm at a point; None for a span of time, or where nobody knows.

        Of a point it is that of the signal: a second track has an electrical travel of its own.
        """
        if isinstance(marker, TravelSpan):
            return marker.travel
        record = self._record_of(marker)
        if record is None or not isinstance(readings, PointReading):
            return None
        if self.findings is not None and self.findings.surveys:
            return self._surveyed(record, readings, second=False)
        values = tuple((channel, one.value) for channel, one in readings.channels if one is not None)
        return travel_at(record, readings.time_s, None, values)

    def second_travel_percent(self, marker: Marker, readings: MarkerReadings | None) -> float | None:
        """Where a point is on the second track, in % of that one's travel; None where nobody knows."""
        record = self._record_of(marker)
        if record is None or not isinstance(readings, PointReading):
            return None
        return self._surveyed(record, readings, second=True)

    def _record_of(self, marker: Marker) -> Record | None:
        if not isinstance(marker, PointMarker) or self.capture is None:
            return None
        return next((item for item in self.capture.records if item.name == marker.record), None)

    def _surveyed(self, record: Record, readings: PointReading, *, second: bool) -> float | None:
        surveys = self.findings.surveys if self.findings is not None else ()
        own = (item for item in surveys if (item.role is Role.SECOND_SIGNAL) is second)
        told = (travel_at(record, readings.time_s, survey) for survey in own)
        return next((travel for travel in told if travel is not None), None)

    def drop(self, marker: Marker, readings: MarkerReadings | None) -> Drop | Untold | None:
        """How far the signal of a point lies below what belongs to the arm's place.

        None where it is neither drop nor rise; see `analysis.review.drop.drop_at`.
        """
        if not isinstance(marker, PointMarker) or not isinstance(readings, PointReading):
            return None
        if self.capture is None or self.findings is None:
            return None
        record = next((item for item in self.capture.records if item.name == marker.record), None)
        return drop_at(self.findings, record, readings) if record is not None else None

    def height_mm(self, marker: Marker, readings: MarkerReadings | None) -> Place | None:
        """The same in mm from the normal height, up positive; None where heights are not known either.

        Heights are told of the signal's travel, and so of no stretch of the second track.
        """
        if isinstance(marker, TravelSpan) and marker.track is Role.SECOND_SIGNAL:
            return None
        travel = self.travel_percent(marker, readings)
        if self.heights is None or travel is None:
            return None
        if isinstance(travel, Interval):
            return self.heights.span_mm(travel)
        return float(self.heights.height_mm(travel))


NOWHERE = WheelPlaces()
"""Where nothing is known."""
