"""A sensor that is mounted the other way round, laid on the same axis of travel: ``100 - travel``.

On one axle the arms often point against each other, so that one signal rises as the other falls (published:
Volvo XC70 2008, "Height Sensor, Suspension": body up, left rises, right falls).
"""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import numpy as np
from numpy.typing import NDArray

from analysis.diagnosis.findings import ArmPath, Band, Crossing, Direction, Findings, TrackSurvey
from analysis.intervals import Interval

_MATRICES = ("breakup_percent", "dwell_s", "onsets", "lasting", "deep", "restless_s", "worst_level")


def mirrored_travel(travel: Interval) -> Interval:
    """The same stretch seen from the other end, in % of travel."""
    return Interval(100.0 - travel.stop, 100.0 - travel.start)


def mirrored_path(path: ArmPath) -> ArmPath:
    """A path seen from the other end of the travel."""
    return replace(path, travel_percent=100.0 - path.travel_percent)


def mirrored_survey(survey: TrackSurvey) -> TrackSurvey:
    """A survey seen from the other end of the travel; twice gives the survey again.

    Parameters
    ----------
    survey : TrackSurvey
        May hold no crossing.
    """
    turned: dict[str, Any] = {name: _turned(getattr(survey, name)) for name in _MATRICES}
    return replace(
        survey,
        edges_percent=100.0 - survey.edges_percent[::-1],
        crossings=tuple(_mirrored_crossing(item) for item in survey.crossings),
        paths=tuple(mirrored_path(item) for item in survey.paths),
        resting=tuple(mirrored_path(item) for item in survey.resting),
        levels_s=np.ascontiguousarray(survey.levels_s[::-1]),
        **turned,
    )


def mirrored_band(band: Band) -> Band:
    """A band seen from the other end of the travel; its volts stay what was measured."""
    towards = {"ground": "reference", "reference": "ground"}
    return replace(
        band,
        travel=mirrored_travel(band.travel),
        start_uncertainty_percent=band.stop_uncertainty_percent,
        stop_uncertainty_percent=band.start_uncertainty_percent,
        falls_towards=towards.get(band.falls_towards, band.falls_towards),
    )


def mirrored_findings(findings: Findings) -> Findings:
    """Findings with everything that lies on the travel seen from the other end."""
    return replace(
        findings,
        bands=tuple(mirrored_band(item) for item in findings.bands),
        surveys=tuple(mirrored_survey(item) for item in findings.surveys),
        coverage=tuple(
            replace(item, travel=mirrored_travel(item.travel)) for item in reversed(findings.coverage)
        ),
        events=tuple(
            item if item.travel_percent is None else replace(item, travel_percent=100.0 - item.travel_percent)
            for item in findings.events
        ),
    )


def _mirrored_crossing(crossing: Crossing) -> Crossing:
    back = Direction.DOWN if crossing.direction is Direction.UP else Direction.UP
    return replace(crossing, direction=back, travel=mirrored_travel(crossing.travel))


def _turned(matrix: NDArray[Any]) -> NDArray[Any]:
    return np.ascontiguousarray(matrix[:, ::-1])
