"""The one door to the analysis: a capture goes in, findings come out."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

import numpy as np

import analysis
from analysis.captures.model import Capture, Role, Step
from analysis.diagnosis.advice import give_advice
from analysis.diagnosis.bands import LEAST_LISTED, make_band, reconciled
from analysis.diagnosis.checks import run_checks
from analysis.diagnosis.confidence import calibration, verdict_probabilities
from analysis.diagnosis.evidence import chain_of_evidence
from analysis.diagnosis.findings import Band, BandBasis, Findings, FoundSpot, Part, VerdictCode
from analysis.diagnosis.hypotheses import Features, impossible, weigh
from analysis.diagnosis.measurement_check import find_problems
from analysis.diagnosis.places import Place
from analysis.diagnosis.profile_model import SensorProfile
from analysis.diagnosis.profiles import profile_for
from analysis.diagnosis.rests import places_of
from analysis.diagnosis.seen import Seen
from analysis.diagnosis.studies import Studies, study
from analysis.diagnosis.summary import MOST_EVENTS, coverage, events, record_outcomes
from analysis.diagnosis.unread import not_of_the_air
from analysis.diagnosis.verdict import give_verdict
from analysis.errors import CaptureError
from analysis.intervals import Interval
from analysis.progress import Tick, ignore, part
from analysis.wording import say


def examine(
    capture: Capture, *, profile: SensorProfile | str | Path | None = None, tick: Tick = ignore
) -> Findings:
    """Find what is wrong with a sensor, or with its wiring, or with the capture.

    Parameters
    ----------
    capture : Capture
        With a signal or a second signal in at least one record.
    profile : SensorProfile, str, Path or None
        What the sensor should read: a profile, its id, or a file. None takes the one that the capture
        names, or a generic three-wire sensor, and then says so.
    tick : Tick
        Told of progress, 0 to 1; may raise `Cancelled`.

    Returns
    -------
    Findings

    Raises
    ------
    CaptureError
        Where there is no signal channel with two samples or more, or the file is damaged or gone.
    ProfileError
        Where the profile is unknown or malformed.
    Cancelled
        Where `tick` says so.
    """
    _require_signal(capture)
    chosen = profile_for(capture, profile)
    studies = study(capture, chosen, tick=part(tick, 0.0, 0.9))
    problems = find_problems(studies)
    places = places_of(studies)
    features = weigh(studies, problems, places)
    tick(0.95)
    shares = verdict_probabilities(features, calibration(), impossible=impossible(studies))
    basis = _basis(studies, places, features, shares[VerdictCode.WORN_TRACK])
    bands = reconciled(_bands(studies, places, basis), basis.worn)
    seen = Seen(studies, problems, not_of_the_air(run_checks(studies), problems), bands, tuple(places))
    evidence = chain_of_evidence(seen)
    listed = events(seen)
    verdict = give_verdict(seen, shares, evidence)
    tick(1.0)
    return Findings(
        path=str(capture.path or ""),
        capture_id=capture.capture_id,
        sha256=capture.sha256,
        analysis_version=analysis.__version__,
        profile=chosen.id,
        verdict=verdict,
        bands=bands,
        checks=seen.checks,
        evidence=evidence,
        coverage=coverage(studies.tracks.get(Role.SIGNAL) or studies.tracks.get(Role.SECOND_SIGNAL)),
        advice=give_advice(seen, verdict, evidence),
        events=listed,
        events_complete=len(listed) < MOST_EVENTS,
        surveys=tuple(studies.tracks.values()),
        record_outcomes=record_outcomes(seen),
        basis=basis,
        parts=_parts(capture, studies),
    )


def _parts(capture: Capture, studies: Studies) -> tuple[Part, ...]:
    """The spans that a lone record was split into; none where it was not."""
    spans = [item.record for item in studies.every]
    if len(capture.records) != 1 or len(spans) < 2:
        return ()
    return tuple(
        Part(
            item.name,
            Interval(item.first_sample_s, item.first_sample_s + item.duration_s),
            item.step,
            item.channels[0].role,
        )
        for item in spans
    )


def _require_signal(capture: Capture) -> None:
    for record in capture.records:
        if record.step is Step.ZERO:
            continue
        for role in (Role.SIGNAL, Role.SECOND_SIGNAL):
            channel = record.channel(role)
            if channel is not None and len(channel) >= 2:
                return
    raise CaptureError(
        say("no record holds a signal channel with two samples or more"),
        say("say which channel is the signal, or record the signal wire"),
    )


def _basis(
    studies: Studies, places: Sequence[tuple[Role, Place]], features: Features, worn: float
) -> BandBasis:
    pushes = {
        role: np.array(
            [
                (event.travel_percent, event.above, event.below)
                for item in studies.swept
                if role in item.surveys
                for event in item.disturbances(role)
            ],
            dtype=np.float64,
        ).reshape(-1, 3)
        for role in studies.tracks
    }
    return BandBasis(
        measurement=features.measurement,
        reference_dips=features.reference_dips,
        ground_lifts=features.ground_lifts,
        reference_level=features.reference_level,
        at_rest=features.at_rest,
        gathered=features.gathered,
        slow=features.slow,
        worn=worn,
        feed_v=studies.feed.whole_travel_v,
        ground_v=studies.feed.ground_v,
        spots=tuple(FoundSpot(role, place.travel, place.log_odds) for role, place in places),
        pushes=pushes,
    )


def _bands(studies: Studies, places: Sequence[tuple[Role, Place]], basis: BandBasis) -> tuple[Band, ...]:
    made = [make_band(studies.tracks[role], place, basis, calibration()) for role, place in places]
    listed = [band for band in made if band.confidence >= LEAST_LISTED]
    return tuple(sorted(listed, key=lambda band: -band.confidence))
