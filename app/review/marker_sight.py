"""Bringing a marker into view: the window moves no further than it has to, unless it is asked to zoom."""

from __future__ import annotations

from analysis.captures.model import Record
from analysis.intervals import Interval
from analysis.review.model import Place
from app.review.focus import Focus
from app.views.track import TrackView

_POINT_VIEW = 0.02  # of the record: what is shown round a point that was zoomed to
_LEAST_MARGIN_PERCENT = 3.0


def show_travel(focus: Focus, track: TrackView, travel: Interval, zoom: bool) -> None:
    """Bring a stretch of travel into view, with a margin; zoom to it where that is asked for."""
    if zoom or track.span.overlap(travel) < travel.length:
        margin = max(1.5 * travel.length, _LEAST_MARGIN_PERCENT)
        focus.show_travel(travel.widened(margin))


def show_place(focus: Focus, place: Place, record: Record, zoom: bool) -> None:
    """Bring a moment or a span of a record into view and point at it; zoom to it where that is asked for.

    A crossing that is singled out gives way to the one in which it lies: every view shows one passage.
    """
    span = place if isinstance(place, Interval) else Interval(place, place)
    focus.carry_to(record.name, span)
    if focus.record is None or focus.record.name != record.name:
        focus.show_record(record.name)
    if zoom:
        focus.show_window(span.widened(max(0.5 * span.length, 0.5 * _POINT_VIEW * record.duration_s)))
    elif not (focus.window.start <= span.start and span.stop <= focus.window.stop):
        half_s = max(0.5 * focus.window.length, span.length)
        focus.show_window(Interval(span.centre - half_s, span.centre + half_s))
    focus.point(span.start)
