"""Where markers are in millimetres of wheel travel, where heights are known."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from analysis.captures.model import Capture, Role
from analysis.control_unit.stand_in import sound_sensor_v
from analysis.diagnosis.findings import Findings
from analysis.intervals import Interval
from analysis.review.model import Marker, Place, PointMarker, TravelSpan
from analysis.review.readings import MarkerReadings, PointReading
from analysis.vehicle.heights import VehicleHeights
from app.review.readings import travel_at

_LEAST_DROP_V = 0.1
"""2 % of the usual supply: less may be the width of an increment of travel, and not a drop."""


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
        """Travel of a stretch, or of the arm at a point; None for a span of time, or where nobody knows."""
        if isinstance(marker, TravelSpan):
            return marker.travel
        if not isinstance(marker, PointMarker) or self.capture is None:
            return None
        record = next((item for item in self.capture.records if item.name == marker.record), None)
        if record is None or not isinstance(readings, PointReading):
            return None
        surveys = self.findings.surveys if self.findings is not None else ()
        survey = next((item for item in surveys if item.path(record.name) is not None), None)
        values = tuple((channel, one.value) for channel, one in readings.channels if one is not None)
        return travel_at(record, readings.time_s, survey, values)

    def drop_v(self, marker: Marker, readings: MarkerReadings | None) -> tuple[float, float] | None:
        """How far the signal lies below what belongs to the arm's place, and what belongs there, in volts.

        None where it is no drop, or the arm's path is not known, or no band says how travel becomes volts.
        """
        if not isinstance(marker, PointMarker) or not isinstance(readings, PointReading):
            return None
        if self.capture is None or self.findings is None:
            return None
        record = next((item for item in self.capture.records if item.name == marker.record), None)
        read = {channel.role: one for channel, one in readings.channels}.get(Role.SIGNAL)
        banded = any(item.track is Role.SIGNAL for item in self.findings.bands)
        if record is None or read is None or not banded:
            return None
        sound = sound_sensor_v(self.findings, record, Role.SIGNAL)
        if sound is None:
            return None
        belongs_v = float(np.interp(readings.time_s, *sound))
        drop_v = belongs_v - read.value
        return (drop_v, belongs_v) if drop_v >= _LEAST_DROP_V else None

    def height_mm(self, marker: Marker, readings: MarkerReadings | None) -> Place | None:
        """The same in mm from the normal height, up positive; None where heights are not known either."""
        travel = self.travel_percent(marker, readings)
        if self.heights is None or travel is None:
            return None
        if isinstance(travel, Interval):
            return self.heights.span_mm(travel)
        return float(self.heights.height_mm(travel))


NOWHERE = WheelPlaces()
"""Where nothing is known."""
