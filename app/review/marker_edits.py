"""What a gesture or a key makes of the review: new markers, with places that samples or bins have."""

from __future__ import annotations

from analysis.captures.model import Record, Role
from analysis.intervals import Interval
from analysis.review.model import (
    Marker,
    Place,
    PointMarker,
    Review,
    SpanMarker,
    TravelSpan,
    moved,
    new_id,
    place_of,
)
from analysis.review.readings import snapped, snapped_moment

LEAST_TRAVEL_PERCENT = 0.2
"""No stretch of travel is narrower: the track is judged in bins of about this width."""

FIRST_TRAVEL_PERCENT = 2.0
"""Width of a stretch of travel that was placed by a double click."""


def next_label(review: Review) -> str:
    """The lowest number above all labels that are numbers: ``"1"`` for the first marker."""
    numbers = [int(item.label) for item in review.markers if item.label.isdecimal() and len(item.label) < 9]
    return str(max(numbers, default=0) + 1)


def point_at(review: Review, record: Record, time_s: float) -> PointMarker:
    """A new point on the sample nearest to a moment."""
    return PointMarker(new_id(), record.name, snapped_moment(record, time_s), next_label(review))


def span_over(review: Review, record: Record, time: Interval) -> SpanMarker:
    """A new span of time, from a sample to one interval past a sample."""
    return SpanMarker(new_id(), record.name, snapped(record, time), next_label(review))


def stretch_over(review: Review, track: Role, travel: Interval) -> TravelSpan:
    """A new stretch of travel, in tenths of a per cent."""
    return TravelSpan(new_id(), track, tidy_travel(travel), next_label(review))


def twin_of(review: Review, marker: Marker) -> Marker | None:
    """The marker that stands on the very same samples, or bins, already; None where there is none."""

    def spot(item: Marker) -> tuple[object, ...]:
        return type(item), item.track if isinstance(item, TravelSpan) else item.record, place_of(item)

    return next((item for item in review.markers if spot(item) == spot(marker)), None)


def touched(before: Review, after: Review) -> list[Marker]:
    """The markers that came, or became others, from one review to another."""
    return [item for item in after.markers if before.marker(item.marker_id) != item]


def tidy_travel(travel: Interval) -> Interval:
    """A stretch of travel in tenths of a per cent, no narrower than `LEAST_TRAVEL_PERCENT`."""
    start, stop = round(travel.start, 1), round(travel.stop, 1)
    if stop - start < LEAST_TRAVEL_PERCENT:
        middle = travel.centre
        start, stop = (
            round(middle - 0.5 * LEAST_TRAVEL_PERCENT, 1),
            round(middle + 0.5 * LEAST_TRAVEL_PERCENT, 1),
        )
    return Interval(start, stop)


def between(one: float, other: float) -> Interval:
    """The interval between two places, in whichever order they came."""
    return Interval(min(one, other), max(one, other))


def with_place(review: Review, marker_id: str, place: Place, record: Record | None) -> Review:
    """The review with a marker elsewhere, on the samples of its record.

    Parameters
    ----------
    review : Review
    marker_id : str
        One that is there.
    place : float or Interval
        As the hand left it.
    record : Record or None
        The marker's record; None leaves a place in time as it is.
    """
    marker = review.marker(marker_id)
    if isinstance(place, Interval) and isinstance(marker, TravelSpan):
        place = tidy_travel(place)
    elif isinstance(place, Interval) and record is not None:
        place = snapped(record, place)
    elif isinstance(place, float) and record is not None:
        place = snapped_moment(record, place)
    return moved(review, marker_id, place)


def with_edge(marker: Marker, edge: str, at: float) -> Interval | None:
    """The stretch of a marker with its ``"start"`` or ``"stop"`` elsewhere; None where it has none.

    An edge that is moved beyond the other one takes its place.
    """
    place = place_of(marker)
    if not isinstance(place, Interval):
        return None
    return between(at, place.stop if edge == "start" else place.start)
