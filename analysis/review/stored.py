"""The review file's text, schema ``wornband-review/1``: every key of it, written down once.

::

    {"schema": "wornband-review/1",
     "capture": {"capture_id", "sha256", "content_sha256"},
     "markers": [{"kind": "point",  "id", "label", "note", "record", "time_s"},
                 {"kind": "span",   "id", "label", "note", "record", "start_s", "stop_s"},
                 {"kind": "travel", "id", "label", "note", "track", "start_percent", "stop_percent"}],
     "decisions": [{"track", "choice", "reason", "adjusted_percent": [start, stop],
                    "found": {"start_percent", "stop_percent", "confidence", "analysis_version"}}],
     "job": {...},
     "records": [...],
     "vehicle": {...}}

The last three are optional; `analysis.review.job`, `analysis.review.records` and
`analysis.review.vehicle_stored` say what they hold.

Keys and kinds of markers that are not known here are kept and written again. Another number behind the
stroke is another schema, and is refused.
"""

from __future__ import annotations

import json
import math
import re
from collections.abc import Callable, Mapping
from typing import Any, NoReturn

from analysis.captures.model import Role
from analysis.errors import ReviewError
from analysis.intervals import Interval
from analysis.review.job import job_object, parse_job
from analysis.review.model import Choice, Decision, Kept, Marker, PointMarker, Review, SpanMarker, TravelSpan
from analysis.review.records import parse_records, records_objects
from analysis.review.taken import DAMAGED, Taken
from analysis.review.vehicle_stored import parse_vehicle, vehicle_object
from analysis.wording import say

SCHEMA = "wornband-review/1"


class NewerReviewError(ReviewError):
    """The review was written by a later version."""


def review_text(review: Review) -> str:
    """The file's text; the same review gives the same text."""
    claims = {"capture_id": review.capture_id, "sha256": review.sha256}
    if review.content_sha256:
        claims["content_sha256"] = review.content_sha256
    job, records = job_object(review.job), records_objects(review.records)
    vehicle = vehicle_object(review.vehicle)
    stored = {
        **review.kept,
        "schema": SCHEMA,
        "capture": {**review.kept_of_capture, **claims},
        "markers": [*(_marker_object(item) for item in review.markers), *review.unknown_markers],
        "decisions": [_decision_object(item) for item in review.decisions],
        **({"job": job} if job else {}),
        **({"records": records} if records else {}),
        **({"vehicle": vehicle} if vehicle else {}),
    }
    return json.dumps(stored, allow_nan=False, indent=1) + "\n"


def parse_review(text: str) -> Review:
    """Read the file's text.

    Raises
    ------
    NewerReviewError
        Where a later version wrote it.
    ReviewError
        Where it is damaged: one sentence that says where.
    """
    try:
        stored = json.loads(text, parse_constant=_no_number, parse_float=_finite)
    except RecursionError as error:
        raise ReviewError(say("the review is nested too deeply"), DAMAGED) from error
    except json.JSONDecodeError as error:
        raise ReviewError(
            say("the review is damaged at line {lineno}", lineno=error.lineno), DAMAGED
        ) from error
    except ValueError as error:
        raise ReviewError(say("the review holds a number that is none"), DAMAGED) from error
    top = Taken(stored, say("the review"))
    _check_schema(top.text("schema"))
    capture = Taken(top.take("capture"), say("the capture of the review"))
    known, unknown = _markers(top.list("markers"))
    decisions = tuple(
        _decision(Taken(item, say("decision {number}", number=number)))
        for number, item in enumerate(top.list("decisions"), 1)
    )
    return Review(
        capture_id=capture.text("capture_id", ""),
        sha256=capture.text("sha256", ""),
        content_sha256=capture.text("content_sha256", ""),
        markers=known,
        decisions=decisions,
        unknown_markers=unknown,
        job=parse_job(top.optional("job")),
        records=parse_records(top.optional("records")),
        vehicle=parse_vehicle(top.optional("vehicle")),
        kept=top.rest(),
        kept_of_capture=capture.rest(),
    )


def _no_number(text: str) -> NoReturn:
    raise ValueError(text)


def _finite(text: str) -> float:
    value = float(text)
    if not math.isfinite(value):
        raise ValueError(text)
    return value


def _check_schema(schema: str) -> None:
    name, _, version = schema.partition("/")
    if name != SCHEMA.partition("/")[0] or not re.fullmatch(r"[0-9]{1,6}", version):
        raise ReviewError(say("the file is no review of Wornband's"), DAMAGED)
    if schema != SCHEMA:
        raise NewerReviewError(
            say("the review was written by a later version (schema {version})", version=version),
            say("open it with that version"),
        )


def _markers(stored: list[Any]) -> tuple[tuple[Marker, ...], tuple[Kept, ...]]:
    known: list[Marker] = []
    unknown: list[Kept] = []
    for number, item in enumerate(stored, 1):
        taken = Taken(item, say("marker {number}", number=number))
        read = _KINDS.get(taken.text("kind"))
        if read is None:
            unknown.append(item)
            continue
        marker = read(taken)
        if any(other.marker_id == marker.marker_id for other in known):
            taken.refuse("id", say("its own"))
        known.append(marker)
    return tuple(known), tuple(unknown)


def _point(item: Taken) -> PointMarker:
    return PointMarker(
        item.text("id"), item.text("record"), item.number("time_s"), *_words(item), kept=item.rest()
    )


def _span(item: Taken) -> SpanMarker:
    time = item.interval("start_s", "stop_s")
    return SpanMarker(item.text("id"), item.text("record"), time, *_words(item), kept=item.rest())


def _travel(item: Taken) -> TravelSpan:
    travel = item.interval("start_percent", "stop_percent")
    return TravelSpan(item.text("id"), _role(item), travel, *_words(item), kept=item.rest())


_KINDS: dict[str, Callable[[Taken], Marker]] = {"point": _point, "span": _span, "travel": _travel}


def _words(item: Taken) -> tuple[str, str]:
    return item.text("label", ""), item.text("note", "")


def _role(item: Taken) -> Role:
    word = item.text("track")
    if word not in (Role.SIGNAL, Role.SECOND_SIGNAL):
        item.refuse("track", say("a track"))
    return Role(word)


def _decision(item: Taken) -> Decision:
    word = item.text("choice")
    if word not in tuple(Choice):
        item.refuse("choice", say("a decision"))
    choice = Choice(word)
    found = Taken(item.take("found"), say("what was found"))
    edges = item.list("adjusted_percent")
    adjusted = None
    if choice is Choice.ADJUSTED:
        if len(edges) != 2:
            item.refuse("adjusted_percent", say("two edges"))
        start, stop = (item.as_number("adjusted_percent", edge) for edge in edges)
        if start > stop:
            item.refuse("adjusted_percent", say("two edges in order"))
        adjusted = Interval(start, stop)
    return Decision(
        track=_role(item),
        found=found.interval("start_percent", "stop_percent"),
        confidence=found.number("confidence"),
        analysis_version=found.text("analysis_version", ""),
        choice=choice,
        adjusted=adjusted,
        reason=item.text("reason", ""),
        kept={**item.rest(), **({"found": found.rest()} if found.rest() else {})},
    )


def _marker_object(marker: Marker) -> Mapping[str, Any]:
    words = {"id": marker.marker_id, "label": marker.label, "note": marker.note}
    if isinstance(marker, PointMarker):
        own: dict[str, Any] = {"kind": "point", "record": marker.record, "time_s": marker.time_s}
    elif isinstance(marker, SpanMarker):
        own = {"kind": "span", "record": marker.record}
        own |= {"start_s": marker.time.start, "stop_s": marker.time.stop}
    else:
        own = {"kind": "travel", "track": str(marker.track)}
        own |= {"start_percent": marker.travel.start, "stop_percent": marker.travel.stop}
    return {**marker.kept, **own, **words}


def _decision_object(decision: Decision) -> Mapping[str, Any]:
    stored: dict[str, Any] = {
        **decision.kept,
        "track": str(decision.track),
        "choice": str(decision.choice),
        "reason": decision.reason,
        "found": {
            **decision.kept.get("found", {}),
            "start_percent": decision.found.start,
            "stop_percent": decision.found.stop,
            "confidence": decision.confidence,
            "analysis_version": decision.analysis_version,
        },
    }
    if decision.adjusted is not None:
        stored["adjusted_percent"] = [decision.adjusted.start, decision.adjusted.stop]
    return stored
