"""From a road record instead of a model: how often the arm really was in the band, and what came of it."""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np

from analysis.captures.model import Capture, Step
from analysis.captures.record_names import the_record
from analysis.diagnosis.findings import Band, Findings
from analysis.exposure.amounts import share_words
from analysis.exposure.stays import run_lengths
from analysis.signals.facts import ArmPath
from analysis.vehicle.heights import VehicleHeights
from analysis.wording import joined, say

SPEED_KEY = "speed_km_h"
"""Attribute of a record that says how fast was driven; optional."""

FAULT_V = 0.1
"""A disturbance that is shallower moves no control unit: 2 % of 5 V, a few mm of height (our own choice)."""


@dataclass(frozen=True, slots=True)
class RoadRecord:
    """What one road record shows of a band.

    Parameters
    ----------
    record, label : str
        Name and label of the record.
    duration_s : float
        Time over which the arm's path is known.
    share : float
        Of that time in the band.
    visits : int
        How often it came in.
    events : int
        Disturbances in the band of `FAULT_V` or more.
    mean_mm, rms_mm : float
        Height about which it moved, and how much; NaN where travel is not known in mm.
    driven_km : float
        Distance; NaN where the record does not say how fast it was driven.
    """

    record: str
    label: str
    duration_s: float
    share: float
    visits: int
    events: int
    mean_mm: float
    rms_mm: float
    driven_km: float

    @property
    def per_km(self) -> float:
        """Visits a kilometre; NaN where the distance is not known."""
        return self.visits / self.driven_km if self.driven_km > 0.0 else math.nan

    @property
    def words(self) -> str:
        """The record in one sentence."""
        lasted = say("{duration_s:.0f} s", duration_s=self.duration_s)
        return say(
            "Recorded, not modelled ({record}): the arm was in the band {share} of the time and came into it"
            " {visits:d} times, every return counted, with {events:d} disturbances there.",
            record=joined([the_record(self.record), self.label.strip(), lasted], ", "),
            share=share_words(self.share),
            visits=self.visits,
            events=self.events,
        )


def road_records(
    capture: Capture, findings: Findings, band: Band, heights: VehicleHeights | None = None
) -> tuple[RoadRecord, ...]:
    """What every road record of a capture shows of a band; no sample is read.

    Parameters
    ----------
    capture : Capture
        That `findings` speak of.
    findings : Findings
        For the arm's paths and the events.
    band : Band
        Which band; of these findings, or of a capture before the repair.
    heights : VehicleHeights or None
        Travel as height, where it is known.

    Returns
    -------
    tuple of RoadRecord
        In the order of the capture; a record without a path is left out. Empty for none.
    """
    survey = next((item for item in findings.surveys if item.role is band.track), None)
    found = []
    for record in capture.records:
        path = survey.path(record.name) if survey is not None else None
        if record.step is not Step.ROAD or path is None or path.time_s.size < 2:
            continue
        duration_s = float(path.time_s[-1] - path.time_s[0])
        speed_km_h = stated(record.attributes.get(SPEED_KEY))
        within = (path.travel_percent >= band.travel.start) & (path.travel_percent < band.travel.stop)
        mean_mm, rms_mm = _movement(path, heights)
        found.append(
            RoadRecord(
                record.name,
                record.label,
                duration_s,
                float(within.mean()),
                int(run_lengths(within).size),
                events_in(findings, record.name, band),
                mean_mm,
                rms_mm,
                speed_km_h * duration_s / 3_600.0,
            )
        )
    return tuple(found)


def stated(said: str | float | None) -> float:
    """A number that a record states, as text or number; NaN where it states none."""
    try:
        return float(said) if said is not None else math.nan
    except ValueError:
        return math.nan


def _movement(path: ArmPath, heights: VehicleHeights | None) -> tuple[float, float]:
    if heights is None:
        return math.nan, math.nan
    height_mm = heights.height_mm(path.travel_percent)
    return float(np.mean(height_mm)), float(np.std(height_mm))


def events_in(findings: Findings, record: str, band: Band) -> int:
    """Disturbances of `FAULT_V` or more in a band, over one record."""
    own = [item for item in findings.events if item.record == record and abs(item.depth_v) >= FAULT_V]
    return sum(item.travel_percent is not None and band.travel.contains(item.travel_percent) for item in own)
