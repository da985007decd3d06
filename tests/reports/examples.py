"""Findings made by hand, so that words and JSON can be tried without the analysis."""

from __future__ import annotations

from dataclasses import replace

import numpy as np

from analysis.captures.model import Capture, Role
from analysis.diagnosis.findings import (
    Band,
    Check,
    CoverageSpan,
    Crossing,
    CrossingTime,
    Direction,
    Event,
    Findings,
    RecordOutcome,
    Result,
    State,
    Statement,
    TrackSurvey,
    Verdict,
    VerdictCode,
)
from analysis.intervals import Interval

CAPTURE = Capture(
    "3f0e8d0e-5b64-4a36-9a4c-6b1f1c0a2d11",
    (),
    title="Ride height sensor, rear left",
    attributes={
        "vehicle": "Halvorsen Tern 4",
        "complaint": "tail drops overnight",
        "profile": "ride-height",
        "odometer_km": 148220,
    },
)

BAND = Band(
    travel=Interval(41.9, 47.7),
    volts=Interval(2.09, 2.37),
    start_uncertainty_percent=0.3,
    stop_uncertainty_percent=0.4,
    confidence=0.98,
    passes=3,
    noisy_passes=3,
    output_smoothness_percent=36.1,
    falls_towards="ground",
    record="004",
    crossings=(
        CrossingTime("004", Interval(1.31, 1.52), True, 31.0),
        CrossingTime("004", Interval(3.02, 3.2), True, 36.1),
        CrossingTime("005", Interval(0.4, 0.45), True, 22.0),
    ),
)

GROUND_DROP = Check(
    "ground_drop", "001", 0.0126, 0.003, "V", None, 0.1, Result.PASS, "service manual of an invented maker"
)


def survey() -> TrackSurvey:
    """Two crossings of ten bins; the second did not visit the last."""
    rows = np.full((2, 10), 0.2)
    rows[:, 4] = (30.0, 36.0)
    rows[1, 9] = np.nan
    crossings = (
        Crossing("004", Direction.UP, Interval(0.0, 2.0), Interval(0.0, 100.0)),
        Crossing("004", Direction.DOWN, Interval(2.0, 4.0), Interval(0.0, 90.0)),
    )
    return TrackSurvey(Role.SIGNAL, np.linspace(0.0, 100.0, 11), crossings, rows, 0.4, ())


def findings(code: VerdictCode = VerdictCode.WORN_TRACK, confidence: float = 0.97) -> Findings:
    """Findings with something in every part."""
    return Findings(
        path="somewhere.h5",
        capture_id=CAPTURE.capture_id,
        sha256="ab" * 32,
        analysis_version="1",
        profile="ride-height",
        verdict=Verdict(
            code, confidence, "The output breaks up at 41.9–47.7 % of travel.", ("worn track", "dirt")
        ),
        bands=(BAND,),
        checks=(GROUND_DROP,),
        evidence=(Statement("ground_good", State.PROVED, ("001",), "The sensor ground is good."),),
        coverage=(CoverageSpan(Interval(4.0, 95.5), 3),),
        advice=("Hold the arm at 45 % with hands off the harness.",),
        events=(Event("003", Interval(0.5, 0.52), (Role.SIGNAL,), -1.8, None, "drop"),),
        surveys=(survey(),),
        record_outcomes=(RecordOutcome("001", Result.PASS, "13 mV, steady"),),
    )


def with_band(**changes: object) -> Findings:
    """The same findings with a changed band."""
    return replace(findings(), bands=(replace(BAND, **changes),))  # type: ignore[arg-type]
