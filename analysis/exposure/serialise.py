"""The explanation as JSON, for the key ``exposure`` of the findings."""

from __future__ import annotations

import math

from analysis.diagnosis.serialise import JsonObject
from analysis.exposure.explain import Explanation
from analysis.exposure.picture import Exposure, RestExposure


def exposure_object(explanation: Explanation) -> JsonObject:
    """Why it comes and goes, as plain numbers and texts; what is not finite is null.

    Parameters
    ----------
    explanation : Explanation
        Of `analysis.exposure.explain.explain`.

    Returns
    -------
    dict
        ``band_mm`` from the normal height, up positive; ``roads`` with their rest heights; ``road_records``
        that were recorded, not modelled; ``paragraph``.
    """
    first = explanation.exposures[0]
    return {
        "band_mm": [first.band_mm.start, first.band_mm.stop],
        "heights_source": str(explanation.heights.source),
        "minutes": first.minutes,
        "contact": [
            {
                "rule": item.kind.value,
                "out_share": item.share,
                "mean_run_s": item.mean_run_s,
                "measured_s": item.measured_s,
            }
            for item in explanation.contact.moving
        ],
        "roads": [_road(item) for item in explanation.exposures],
        "road_records": [
            {
                "record": item.record,
                "duration_s": item.duration_s,
                "share_in_band": item.share,
                "visits": item.visits,
                "events": item.events,
            }
            for item in explanation.records
        ],
        "paragraph": str(explanation.paragraph),
    }


def _road(exposure: Exposure) -> JsonObject:
    road = exposure.road
    return {
        "words": str(road.words),
        "iso_8608_class": road.road_class.value,
        "speed_km_h": road.speed_km_h,
        "heights": [_rest(item) for item in exposure.rests],
    }


def _rest(item: RestExposure) -> JsonObject:
    return {
        "name": item.rest.kind.value,
        "height_mm": item.rest.height_mm,
        "travel_percent": item.travel_percent,
        "rms_mm": item.rms_mm,
        "share_in_band": item.visits.share,
        "visits_per_km": _finite(item.per_km),
        "mean_stay_s": _finite(item.visits.mean_stay_s),
        "code_chance": item.chance,
    }


def _finite(value: float) -> float | None:
    return value if math.isfinite(value) else None
