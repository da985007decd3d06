"""Markers as rows for the clipboard: a row for each marker and channel, numbers in SI units."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from PySide6.QtCore import QCoreApplication

from analysis.diagnosis.findings import Findings
from analysis.intervals import Interval
from analysis.reports.quantities import share_of
from analysis.reports.sheet import Cell
from analysis.review.drop import Untold
from analysis.review.model import Marker, Place, TravelSpan, place_of
from analysis.review.readings import MarkerReadings, PointReading, SpanReadings, TravelReadings
from analysis.signals.drop import Drop
from analysis.signals.measurement import Reading, SpanReading
from app.language import said
from app.review.marker_words import in_order, kind_name
from app.review.wheel_places import NOWHERE, WheelPlaces
from app.words import channel_name, role_name

_FIGURES = ("mean_v", "rms_v", "minimum_v", "maximum_v", "peak_to_peak_v", "noise_v")


def _tr(text: str) -> str:
    return QCoreApplication.translate("markers", text)


def heads(findings: Findings | None = None) -> tuple[str, ...]:
    """What stands in each column; what break-up is a share of as in these findings."""
    figures = (
        _tr("Mean / V"),
        _tr("RMS / V"),
        _tr("Minimum / V"),
        _tr("Maximum / V"),
        _tr("Peak to peak / V"),
        _tr("Noise / V"),
    )
    spread = _tr("± (k = 2) / V")
    return (
        _tr("Marker"),
        _tr("Kind"),
        _tr("Record or track"),
        _tr("Begins"),
        _tr("Ends"),
        _tr("Unit"),
        _tr("Channel"),
        _tr("Samples"),
        *(head for figure in figures for head in (figure, spread)),
        _tr("Crossings"),
        _tr("Broke up on"),
        _tr("Worst / % {of}").format(of=said(share_of(*(findings.surveys if findings is not None else ())))),
        _tr("Confidence"),
        _tr("Note"),
        _tr("Travel / %"),
        _tr("Height from / mm"),
        _tr("Height to / mm"),
        _tr("Drop of the signal (negative: rise) / V"),
        _tr("Volts from / V"),
        _tr("Volts to / V"),
        _tr("Expect it from / % of crossings"),
        _tr("Expect it to / % of crossings"),
        _tr("± of the drop (k = 2) / V"),
        _tr("What it should read / V"),
        _tr("± of what it should read (k = 2) / V"),
        _tr("Drop in words"),
    )


def rows(
    markers: Sequence[Marker],
    readings: Mapping[str, MarkerReadings | None],
    records: Mapping[str, str],
    places: WheelPlaces = NOWHERE,
) -> list[tuple[Cell, ...]]:
    """Heads, then a row for each marker and channel; what is not known is an empty cell.

    Parameters
    ----------
    markers : sequence of Marker
    readings : mapping of str to MarkerReadings
        By the id of the marker; one that is not there yet leaves its cells empty.
    records : mapping of str to str
        What people call each record.
    places : WheelPlaces
        Where the arm and the wheel were.
    """
    every: list[tuple[Cell, ...]] = [heads(places.findings)]
    for marker in markers:
        read = readings.get(marker.marker_id)
        ends = _ends(places.travel_percent(marker, read), places.height_mm(marker, read))
        drop = places.drop(marker, read)
        ends += (_drop(drop), *_band(read), *_more_of(drop))
        every.extend((*row, *ends) for row in _rows_of(marker, read, records))
    return every


def _rows_of(
    marker: Marker, readings: MarkerReadings | None, records: Mapping[str, str]
) -> list[tuple[Cell, ...]]:
    front, nothing = _front(marker, records), (None,) * 4
    if isinstance(readings, PointReading):
        return [
            (*front, channel_name(channel), 1, *_figures([one]), *nothing, marker.note)
            for channel, one in in_order(readings.channels)
        ]
    if isinstance(readings, SpanReadings):
        return [
            (*front, channel_name(channel), one.count if one else None, *_span(one), *nothing, marker.note)
            for channel, one in in_order(readings.channels)
        ]
    if isinstance(readings, TravelReadings):
        band = readings.band
        shown = (band.passes, band.noisy_passes, band.output_smoothness_percent, band.confidence)
        return [(*front, role_name(band.track), None, *_figures([]), *shown, marker.note)]
    return [(*front, None, None, *_figures([]), *nothing, marker.note)]


def _ends(travel_percent: Place | None, height_mm: Place | None) -> tuple[Cell, ...]:
    """Travel of a point (a stretch begins and ends with its own), and height or both ends of it."""
    travel = travel_percent if isinstance(travel_percent, float) else None
    if isinstance(height_mm, Interval):
        return travel, height_mm.start, height_mm.stop
    return travel, height_mm, None


def _drop(drop: Drop | Untold | None) -> Cell:
    return drop.drop.value if isinstance(drop, Drop) else None


def _more_of(drop: Drop | Untold | None) -> tuple[Cell, ...]:
    """Its uncertainty, what belongs there, and the words that stand where no number may."""
    if isinstance(drop, Drop):
        return drop.drop.expanded_uncertainty, drop.belongs.value, drop.belongs.expanded_uncertainty, None
    return None, None, None, _tr("cannot be told") if drop is not None else None


def _band(readings: MarkerReadings | None) -> tuple[Cell, ...]:
    """Of a stretch that was crossed: its voltages, and on how many of further crossings to expect it."""
    if not isinstance(readings, TravelReadings) or not readings.band.passes:
        return (None,) * 4
    volts, share = readings.band.volts, readings.share
    known = (volts.start, volts.stop) if volts.length > 0 else (None, None)
    return *known, 100.0 * share.start, 100.0 * share.stop


def _front(marker: Marker, records: Mapping[str, str]) -> tuple[Cell, ...]:
    place = place_of(marker)
    start, stop = (place.start, place.stop) if isinstance(place, Interval) else (place, None)
    if isinstance(marker, TravelSpan):
        return marker.label, kind_name(marker), role_name(marker.track), start, stop, "%"
    record = records.get(marker.record, marker.record)
    return marker.label, kind_name(marker), record, start, stop, "s"


def _span(reading: SpanReading | None) -> list[Cell]:
    return _figures([getattr(reading, name) for name in _FIGURES] if reading is not None else [])


def _figures(readings: Sequence[Reading | None]) -> list[Cell]:
    """Value and expanded uncertainty of each figure, in volts; as many cells as there are heads."""
    cells: list[Cell] = []
    for item in readings:
        cells += [item.value, item.expanded_uncertainty] if item is not None else [None, None]
    return cells + [None] * (2 * len(_FIGURES) - len(cells))
