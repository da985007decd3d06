"""Why it comes and goes, with what the technician entered in place of what the profile says."""

from __future__ import annotations

from analysis.captures.model import Capture
from analysis.diagnosis.findings import Findings
from analysis.diagnosis.profile_model import SensorProfile
from analysis.exposure.explain import MINUTES, TOLD_ROADS, Explanation, explain
from analysis.exposure.stored_code import job_codes
from analysis.review.job import Job
from analysis.review.vehicle import Vehicle
from analysis.vehicle.road import Road


def explain_reviewed(
    capture: Capture, findings: Findings, profile: SensorProfile, vehicle: Vehicle, job: Job | None = None
) -> Explanation | None:
    """Explain why a band comes and goes; as `analysis.exposure.explain.explain`, which says what is raised.

    Parameters
    ----------
    capture, findings : Capture, Findings
        With the band.
    profile : SensorProfile
        That the findings were made with.
    vehicle : Vehicle
        What was entered; an empty one leaves all to the profile.
    job : Job or None
        With the fault codes that were entered; None leaves them to the capture.
    """
    return explain(
        capture,
        findings,
        profile,
        heights=vehicle.heights,
        unit=vehicle.unit,
        roads=told_roads(vehicle.road),
        minutes=vehicle.minutes if vehicle.minutes is not None else MINUTES,
        codes=job_codes(job or Job(), capture),
    )


def told_roads(chosen: Road | None) -> tuple[Road, ...]:
    """Roads that a report tells of: the chosen one first, then those of other classes always told of."""
    if chosen is None:
        return TOLD_ROADS
    return (chosen, *(road for road in TOLD_ROADS if road.road_class is not chosen.road_class))
