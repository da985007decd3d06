"""The review as one frozen value: what the technician marked, and what they say of the bands that were found.

Times are of a record, in its own seconds; places are in % of electrical travel. An edit is a new value:
every function here takes a review and returns another.
"""

from __future__ import annotations

import uuid
from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from enum import StrEnum
from typing import Any, TypeAlias

from analysis.captures.model import Role
from analysis.diagnosis.findings import Band
from analysis.intervals import Interval
from analysis.review.job import Job
from analysis.review.records import Edits
from analysis.review.vehicle import Vehicle

Kept: TypeAlias = Mapping[str, Any]
"""Keys that another version wrote and that this one does not know: kept, and written again."""

_SAME_BAND = 0.5


class Choice(StrEnum):
    """What the technician says of a found band."""

    ACCEPTED = "accepted"
    ADJUSTED = "adjusted"
    DISMISSED = "dismissed"


@dataclass(frozen=True, slots=True)
class PointMarker:
    """A moment of a record.

    Parameters
    ----------
    marker_id : str
        Unique in the review.
    record : str
        Name of the record.
    time_s : float
        Of a sample.
    label, note : str
        The technician's words; may be empty.
    kept : mapping
        Unknown keys.
    """

    marker_id: str
    record: str
    time_s: float
    label: str = ""
    note: str = ""
    kept: Kept = field(default_factory=dict)


@dataclass(frozen=True, slots=True)
class SpanMarker:
    """A stretch of time of a record, in seconds; the rest as in `PointMarker`."""

    marker_id: str
    record: str
    time: Interval
    label: str = ""
    note: str = ""
    kept: Kept = field(default_factory=dict)


@dataclass(frozen=True, slots=True)
class TravelSpan:
    """A band of the technician's own, in % of travel of one track; the rest as in `PointMarker`."""

    marker_id: str
    track: Role
    travel: Interval
    label: str = ""
    note: str = ""
    kept: Kept = field(default_factory=dict)


Marker: TypeAlias = PointMarker | SpanMarker | TravelSpan
Place: TypeAlias = float | Interval
"""Where a marker is: a time in seconds, a stretch of time, or a stretch of travel in %."""


@dataclass(frozen=True, slots=True)
class Decision:
    """What the technician says of a found band, beside what the program found.

    Parameters
    ----------
    track : Role
        The track that the band is on.
    found : Interval
        Its edges as the program found them, in % of travel.
    confidence : float
        The program's, 0 to 1.
    analysis_version : str
        Of the program that found it.
    choice : Choice
    adjusted : Interval or None
        The technician's edges, where `choice` is `ADJUSTED`; else None.
    reason : str
        Why it was dismissed.
    kept : mapping
        Unknown keys.
    """

    track: Role
    found: Interval
    confidence: float
    analysis_version: str
    choice: Choice
    adjusted: Interval | None = None
    reason: str = ""
    kept: Kept = field(default_factory=dict)

    def __post_init__(self) -> None:
        if (self.adjusted is not None) != (self.choice is Choice.ADJUSTED):
            raise ValueError(f"edges belong to an adjusted band, got {self.choice} with {self.adjusted}")

    def speaks_of(self, band: Band) -> bool:
        """Whether it is about this band: the same track, and at least half of the joint travel shared.

        The edges of a band move a little when a later version examines the capture again.
        """
        joint = max(self.found.stop, band.travel.stop) - min(self.found.start, band.travel.start)
        same = self.found == band.travel or self.found.overlap(band.travel) >= _SAME_BAND * joint > 0.0
        return self.track is band.track and same


@dataclass(frozen=True, slots=True)
class Review:
    """Everything that the technician added to a capture.

    Parameters
    ----------
    capture_id, sha256, content_sha256 : str
        Of the capture that it was made from; empty where unknown.
    markers : tuple of Marker
        In the order in which they were placed.
    decisions : tuple of Decision
        At most one a band.
    unknown_markers : tuple of mapping
        Of kinds that this version does not know; kept.
    kept, kept_of_capture : mapping
        Unknown keys of the file, and of its object ``capture``.
    job : Job
        What the report prints beside the findings.
    records : tuple of RecordEdit
        What is said of records and spans of them: steps, roles, probe points, conditions.
    vehicle : Vehicle
        What is entered of the vehicle: heights, road, the control unit's rules, the road test.
    """

    capture_id: str = ""
    sha256: str = ""
    content_sha256: str = ""
    markers: tuple[Marker, ...] = ()
    decisions: tuple[Decision, ...] = ()
    unknown_markers: tuple[Kept, ...] = ()
    kept: Kept = field(default_factory=dict)
    kept_of_capture: Kept = field(default_factory=dict)
    job: Job = field(default_factory=Job)
    records: Edits = ()
    vehicle: Vehicle = field(default_factory=Vehicle)

    def marker(self, marker_id: str) -> Marker | None:
        """The marker of that id, or None."""
        return next((item for item in self.markers if item.marker_id == marker_id), None)

    def decision(self, band: Band) -> Decision | None:
        """What was said of a found band, or None."""
        return next((item for item in self.decisions if item.speaks_of(band)), None)


def new_id() -> str:
    """An id for a new marker."""
    return uuid.uuid4().hex[:12]


def place_of(marker: Marker) -> Place:
    """Where a marker is."""
    if isinstance(marker, PointMarker):
        return marker.time_s
    return marker.time if isinstance(marker, SpanMarker) else marker.travel


def with_marker(review: Review, marker: Marker) -> Review:
    """The review with a marker added, or put in the place of the one with its id."""
    if review.marker(marker.marker_id) is None:
        return replace(review, markers=(*review.markers, marker))
    changed = tuple(marker if item.marker_id == marker.marker_id else item for item in review.markers)
    return replace(review, markers=changed)


def without(review: Review, marker_id: str) -> Review:
    """The review without a marker; the same where there is none of that id."""
    return replace(review, markers=tuple(item for item in review.markers if item.marker_id != marker_id))


def moved(review: Review, marker_id: str, place: Place) -> Review:
    """The review with a marker elsewhere.

    Raises
    ------
    ValueError
        Where there is no such marker, or a moment is given for a span, or a span for a moment.
    """
    marker = _known(review, marker_id)
    if isinstance(marker, PointMarker) and isinstance(place, float):
        return with_marker(review, replace(marker, time_s=place))
    if isinstance(marker, SpanMarker) and isinstance(place, Interval):
        return with_marker(review, replace(marker, time=place))
    if isinstance(marker, TravelSpan) and isinstance(place, Interval):
        return with_marker(review, replace(marker, travel=place))
    raise ValueError(f"{type(marker).__name__} cannot be moved to {place!r}")


def relabelled(review: Review, marker_id: str, label: str) -> Review:
    """The review with another label on a marker; raises ValueError where there is no such marker."""
    return with_marker(review, replace(_known(review, marker_id), label=label))


def with_note(review: Review, marker_id: str, note: str) -> Review:
    """The review with another note on a marker; raises ValueError where there is no such marker."""
    return with_marker(review, replace(_known(review, marker_id), note=note))


def decided(
    band: Band, choice: Choice, version: str, *, adjusted: Interval | None = None, reason: str = ""
) -> Decision:
    """A decision about a found band, with what the program found of it."""
    return Decision(band.track, band.travel, band.confidence, version, choice, adjusted, reason)


def with_decision(review: Review, band: Band, decision: Decision) -> Review:
    """The review with this said of a band, in place of whatever was said of it before."""
    before = review.decision(band)
    if before is not None:
        decision = replace(decision, kept={**before.kept, **decision.kept})
        every = tuple(decision if item is before else item for item in review.decisions)
        return replace(review, decisions=every)
    return replace(review, decisions=(*review.decisions, decision))


def without_decision(review: Review, band: Band) -> Review:
    """The review with nothing said of a band."""
    return replace(review, decisions=tuple(item for item in review.decisions if not item.speaks_of(band)))


def _known(review: Review, marker_id: str) -> Marker:
    marker = review.marker(marker_id)
    if marker is None:
        raise ValueError(f"no marker {marker_id!r} in the review")
    return marker
