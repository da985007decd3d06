"""One side of a comparison: a capture with its findings, or one record of it."""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np

from analysis.captures.model import Capture, Record, Role
from analysis.comparison.mirrored import mirrored_findings
from analysis.comparison.positions import Position, position_of
from analysis.diagnosis.findings import Findings, TrackSurvey

_MATRICES = ("breakup_percent", "dwell_s", "onsets", "lasting", "deep", "restless_s")


@dataclass(frozen=True, slots=True)
class Side:
    """What is compared.

    Parameters
    ----------
    capture : Capture
        For its records and their conditions; no sample is read.
    findings : Findings
        Of that capture.
    mirrored : bool
        Whether the sensor is mounted the other way round, so that its travel runs from the other end.
    record : str
        Name of the one record that counts; empty for the whole capture.
    track : Role or None
        The one track that counts, compared with whichever the other side names: two corners of an axle may
        stand in one capture as its signal and its second signal. None compares each track with its like.
    """

    capture: Capture
    findings: Findings
    mirrored: bool = False
    record: str = ""
    track: Role | None = None

    def own(self) -> Findings:
        """The findings of its record alone, on its own axis of travel.

        Raises
        ------
        KeyError
            Where the capture has no such record.
        """
        if not self.record:
            return self.findings
        self.capture.record(self.record)
        return of_record(self.findings, self.record)

    def seen(self) -> Findings:
        """The findings as this side contributes them: of its record alone, and mirrored where it is.

        Raises
        ------
        KeyError
            Where the capture has no such record.
        """
        found = self.own() if self.track is None else _as_signal(self.own(), self.track)
        return mirrored_findings(found) if self.mirrored else found

    def position(self) -> Position:
        """Where its capture says that its sensor sits."""
        return position_of(self.capture, self.track)

    def record_named(self, name: str) -> Record | None:
        """A record of the capture, or None; spans of a split record are not its records."""
        return next((item for item in self.capture.records if item.name == name), None)


def of_record(findings: Findings, record: str) -> Findings:
    """The findings as far as they come from one record: its crossings, its checks, the bands it crossed."""
    bands = tuple(
        replace(band, crossings=own, passes=len(own), noisy_passes=sum(item.noisy for item in own))
        for band in findings.bands
        if (own := tuple(item for item in band.crossings if item.record == record))
    )
    return replace(
        findings,
        bands=bands,
        surveys=tuple(_survey_of(item, record) for item in findings.surveys),
        checks=tuple(item for item in findings.checks if item.record in (record, "")),
        events=tuple(item for item in findings.events if item.record == record),
    )


def _as_signal(findings: Findings, track: Role) -> Findings:
    """What lies on one track, called the signal: its name is not what is compared."""
    return replace(
        findings,
        bands=tuple(replace(item, track=Role.SIGNAL) for item in findings.bands if item.track is track),
        surveys=tuple(replace(item, role=Role.SIGNAL) for item in findings.surveys if item.role is track),
    )


def survey_of(findings: Findings, track: Role) -> TrackSurvey | None:
    """The survey of a track, or None where it was not swept."""
    return next((item for item in findings.surveys if item.role is track), None)


def _survey_of(survey: TrackSurvey, record: str) -> TrackSurvey:
    kept = np.array([item.record == record for item in survey.crossings], dtype=np.bool_)
    rows = {name: matrix[kept] for name in _MATRICES if len(matrix := getattr(survey, name)) == len(kept)}
    return replace(
        survey.unranked(),
        crossings=tuple(item for item in survey.crossings if item.record == record),
        paths=tuple(item for item in survey.paths if item.record == record),
        resting=tuple(item for item in survey.resting if item.record == record),
        **rows,
    )
