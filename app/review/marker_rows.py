"""The list of markers: what each one is called, where it is, and the one figure that says most of it."""

from __future__ import annotations

from collections.abc import Mapping

from PySide6.QtCore import QCoreApplication

from analysis.reports.confidence import place_words
from analysis.reports.quantities import NO_VALUE
from analysis.review.drop import Untold
from analysis.review.model import Marker, PointMarker, SpanMarker, TravelSpan
from analysis.review.readings import MarkerReadings, PointReading, SpanReadings, TravelReadings
from analysis.signals.drop import Drop
from app.drawing.numbers import duration, volts
from app.language import said
from app.review.marker_words import Grid, grid, in_order, kind_name, short_where, size, where
from app.review.wheel_places import WheelPlaces
from app.views.marker_tables import MarkerRow

_DOWN, _UP = "\N{DOWNWARDS ARROW}", "\N{UPWARDS ARROW}"
_ICONS = {PointMarker: "mark_point", SpanMarker: "mark_span", TravelSpan: "mark_travel"}


def _tr(text: str) -> str:
    return QCoreApplication.translate("markers", text)


def marker_row(
    marker: Marker, read: MarkerReadings | None, records: Mapping[str, str], places: WheelPlaces
) -> MarkerRow:
    """A marker as the list shows it.

    Parameters
    ----------
    marker : Marker
    read : MarkerReadings or None
        What it reads, as far as that is known.
    records : mapping of str to str
        What people call each record.
    places : WheelPlaces
        For its height, and for how far the signal dropped.
    """
    place = where(marker, records, places.height_mm(marker, read))
    drop = places.drop(marker, read)
    icon, kind = _ICONS[type(marker)], kind_name(marker)
    record = "" if isinstance(marker, TravelSpan) else records.get(marker.record, marker.record)
    return MarkerRow(
        marker.marker_id,
        icon,
        kind,
        marker.label,
        place,
        brief(read, drop),
        marker.note,
        record,
        briefer(drop),
        short_where(marker),
    )


def marker_grid(marker: Marker, read: MarkerReadings | None, places: WheelPlaces) -> Grid:
    """Everything that a marker reads, with its travel, height and drop where these are known."""
    travel, height = places.travel_percent(marker, read), places.height_mm(marker, read)
    second = places.second_travel_percent(marker, read)
    return grid(read, travel, height, places.drop(marker, read), second)


def brief(read: MarkerReadings | None, drop: Drop | Untold | None = None) -> str:
    """The one figure that says most; a dash where nothing is read yet, or nothing can be.

    Of a point how far the signal dropped or rose, or else its level; of a span its height from peak to peak;
    of a stretch of travel how likely a band is.

    Parameters
    ----------
    read : MarkerReadings or None
    drop : Drop, Untold or None
        How far the signal of a point lies below what belongs there; its level says more where that cannot be
        told.
    """
    if isinstance(read, TravelReadings):
        return said(place_words(read.band.confidence, with_odds=False))
    if isinstance(read, SpanReadings):
        return _height(read)
    if not isinstance(read, PointReading):
        return NO_VALUE
    if isinstance(drop, Drop):
        text = _tr("drop {drop}") if drop.drop.value > 0.0 else _tr("rise {drop}")
        return text.format(drop=size(drop))
    first = next((item for _, item in in_order(read.channels) if item is not None), None)
    return volts(first.value) if first is not None else NO_VALUE


def briefer(drop: Drop | Untold | None) -> str:
    """The same of a drop or a rise in fewer letters, for a list that has room for no word; else empty."""
    if not isinstance(drop, Drop):
        return ""
    return f"{_DOWN if drop.drop.value > 0.0 else _UP} {size(drop)}"


def _height(read: SpanReadings) -> str:
    """From peak to peak of the first channel that was read; how long it is, where none was."""
    first = next((item for _, item in in_order(read.channels) if item is not None), None)
    if first is None:
        return duration(read.time.length)
    return _tr("{height} p–p").format(height=volts(first.peak_to_peak_v.value))
