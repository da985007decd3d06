"""Markers of both sides of Compare, as marks on the traces and stretches on the track; fixed there."""

from __future__ import annotations

from collections.abc import Iterable

from analysis.captures.model import Record, Role
from analysis.comparison.mirrored import mirrored_travel
from analysis.review.model import Marker, PointMarker, SpanMarker, TravelSpan
from app.drawing.band_item import Stretch
from app.drawing.mark_item import Mark


def marks_on(markers: Iterable[Marker], record: Record | None) -> tuple[Mark, ...]:
    """The points and spans of time of one record; none where no record is shown."""
    made = []
    for item in markers:
        if record is None or isinstance(item, TravelSpan) or item.record != record.name:
            continue
        if isinstance(item, PointMarker):
            made.append(Mark("", item.time_s, None, item.label, fixed=True))
        elif isinstance(item, SpanMarker):
            made.append(Mark("", item.time.start, item.time.stop, item.label, fixed=True))
    return tuple(made)


def spans_on(markers: Iterable[Marker], track: Role | None, mirrored: bool) -> tuple[Stretch, ...]:
    """The stretches of travel that were marked on one track, on the common axis."""
    return tuple(
        Stretch(mirrored_travel(item.travel) if mirrored else item.travel, label=item.label, hatched=False)
        for item in markers
        if isinstance(item, TravelSpan) and item.track is track
    )
