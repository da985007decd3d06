"""Markers and what they read, in words and figures: for the table, for the clipboard, for a screen reader."""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass, replace
from typing import TypeVar

from PySide6.QtCore import QCoreApplication

from analysis.captures.model import Channel, Role
from analysis.diagnosis.findings import Band
from analysis.reports.confidence import place_words
from analysis.reports.quantities import digits_of, number, volts
from analysis.review.drop import Untold
from analysis.review.model import Marker, Place, PointMarker, SpanMarker
from analysis.review.readings import (
    MOST_SAMPLES,
    MarkerReadings,
    PointReading,
    SpanReadings,
    TravelReadings,
)
from analysis.signals.drop import Drop
from analysis.signals.measurement import Reading, SpanReading
from analysis.wording import plural
from app.drawing.numbers import duration, millimetres, percent, seconds
from app.language import said
from app.review.readings import in_role_order
from app.words import channel_name, role_name

_T = TypeVar("_T")

_MILLIVOLTS_BELOW_V = 0.1005


@dataclass(frozen=True, slots=True)
class Grid:
    """Readings as a table.

    Parameters
    ----------
    columns : tuple of str
        Heads of the columns.
    rows : tuple of (str, tuple of str)
        Head and cells of each row.
    remark : str
        What is to be known of the figures; may be empty.
    tip : str
        The same in the terms of metrology, for those who ask; may be empty.
    """

    columns: tuple[str, ...]
    rows: tuple[tuple[str, tuple[str, ...]], ...]
    remark: str = ""
    tip: str = ""


NOTHING = Grid((), ())


def _tr(text: str) -> str:
    return QCoreApplication.translate("markers", text)


def kind_name(marker: Marker) -> str:
    """What sort of marker it is."""
    if isinstance(marker, PointMarker):
        return _tr("Point")
    return _tr("Span") if isinstance(marker, SpanMarker) else _tr("Travel")


def where(marker: Marker, records: Mapping[str, str], height_mm: Place | None = None) -> str:
    """Where it is: record and time, or travel; and in mm of wheel travel, where that is known.

    Parameters
    ----------
    marker : Marker
    records : mapping of str to str
        What people call each record.
    height_mm : float, Interval or None
        From the normal height.
    """
    place = _where(marker, records)
    return place if height_mm is None else f"{place} · {millimetres(height_mm)}"


def short_where(marker: Marker) -> str:
    """The same place in fewer digits, for a narrow list; empty where there are none to spare."""
    if isinstance(marker, PointMarker):
        return ""
    if isinstance(marker, SpanMarker):
        digits = _span_digits(marker) - 1
        return f"{figure(marker.time.start, digits)}–{figure(marker.time.stop, digits)} s"
    return f"{figure(marker.travel.start, 0)}–{percent(marker.travel.stop, 0)}"


def _span_digits(marker: SpanMarker) -> int:
    return min(max(2 - math.floor(math.log10(max(marker.time.length, 1e-6))), 2), 6)


def _where(marker: Marker, records: Mapping[str, str]) -> str:
    if isinstance(marker, PointMarker):
        return f"{records.get(marker.record, marker.record)} · {seconds(marker.time_s, 1e-3)}"
    if isinstance(marker, SpanMarker):
        digits = _span_digits(marker)
        span = f"{figure(marker.time.start, digits)}–{figure(marker.time.stop, digits)} s"
        return f"{records.get(marker.record, marker.record)} · {span}"
    place = f"{figure(marker.travel.start, 1)}–{percent(marker.travel.stop, 1)}"
    if marker.track is Role.SECOND_SIGNAL:
        return _tr("{place}, second signal").format(place=place)
    return place


def grid(
    readings: MarkerReadings | None,
    travel_percent: Place | None = None,
    height_mm: Place | None = None,
    drop: Drop | Untold | None = None,
    second_percent: float | None = None,
) -> Grid:
    """Everything that a marker reads, where the arm and the wheel were, and how far the signal dropped.

    Each of two tracks has an electrical travel of its own: `second_percent` is the second one's.
    """
    made, place = _grid(readings), [*_drop_rows(drop), *_place_rows(travel_percent, height_mm)]
    if second_percent is not None:
        place.append((_tr("Travel, second signal"), percent(second_percent)))
    if not made.columns or not place:
        return made
    cells = tuple((head, (text, *("" for _ in made.columns[1:]))) for head, text in place)
    remark = _tr("Height: mm of wheel travel from the normal height") if height_mm is not None else ""
    return replace(
        made,
        rows=(*made.rows, *cells),
        remark="; ".join(filter(None, (made.remark, remark))),
        tip="\n".join(filter(None, (made.tip, _why_untold(drop)))),
    )


def _why_untold(drop: Drop | Untold | None) -> str:
    if not isinstance(drop, Untold):
        return ""
    return _tr(
        "A drop is told within a found band, where the arm's place is known so well that the drop is more"
        " than its uncertainty"
    )


def _drop_rows(drop: Drop | Untold | None) -> list[tuple[str, str]]:
    """How far the signal lies below, or above, what belongs to the arm's place; and what that is."""
    if drop is None:
        return []
    if not isinstance(drop, Drop):
        return [(_tr("Drop"), _tr("cannot be told"))]
    head = _tr("Drop") if drop.drop.value > 0.0 else _tr("Rise")
    return [(head, size(drop)), (_tr("Should read"), with_uncertainty(drop.belongs, millivolts=False))]


def size(drop: Drop) -> str:
    """How far it dropped or rose, with its expanded uncertainty: in volts, as what belongs there is."""
    return with_uncertainty(replace(drop.drop, value=abs(drop.drop.value)), millivolts=False)


def _place_rows(travel_percent: Place | None, height_mm: Place | None) -> list[tuple[str, str]]:
    """Travel of a point (that of a stretch is what it is called by), and height of both."""
    rows = [(_tr("Travel"), percent(travel_percent))] if isinstance(travel_percent, float) else []
    return [*rows, (_tr("Height"), millimetres(height_mm))] if height_mm is not None else rows


def _grid(readings: MarkerReadings | None) -> Grid:
    if isinstance(readings, PointReading):
        return _point_grid(readings)
    if isinstance(readings, SpanReadings):
        return _span_grid(readings)
    return _travel_grid(readings) if isinstance(readings, TravelReadings) else NOTHING


def with_uncertainty(reading: Reading, millivolts: bool | None = None, unit: bool = True) -> str:
    """A reading with its expanded uncertainty (k = 2), of which two digits count, as in the report."""
    if not math.isfinite(reading.value):
        return _tr("not known")
    small = abs(reading.value) < _MILLIVOLTS_BELOW_V if millivolts is None else millivolts
    scale, name = (1e3, "mV") if small else (1.0, "V")
    value, spread = reading.value * scale, reading.expanded_uncertainty * scale
    digits = digits_of(spread) if spread > 0.0 else (1 if small else 3)
    figures = f"{figure(value, digits)} ± {figure(spread, digits)}" if spread > 0.0 else figure(value, digits)
    return f"{figures} {name}" if unit else figures


def figure(value: float, digits: int) -> str:
    """Fixed digits, in the window's way of writing numbers."""
    return said(number(value, digits))


def in_order(channels: tuple[tuple[Channel, _T], ...]) -> list[tuple[Channel, _T]]:
    """Channels with what was read, as they are always shown: tracks first, whatever the file's order."""
    read = {channel.name: item for channel, item in channels}
    return [(channel, read[channel.name]) for channel in in_role_order(tuple(item for item, _ in channels))]


def _point_grid(readings: PointReading) -> Grid:
    rows = tuple(
        (channel_name(channel), (with_uncertainty(item) if item is not None else _tr("missing"),))
        for channel, item in in_order(readings.channels)
    )
    return Grid((_tr("Reads"),), rows, *_remark([item for _, item in readings.channels]))


def _span_grid(readings: SpanReadings) -> Grid:
    if readings.too_long:
        text = _tr("Longer than {count} million samples: shorten the span to have it read.")
        return Grid((), (), text.format(count=MOST_SAMPLES // 1_000_000))
    read = [(channel, item) for channel, item in in_order(readings.channels) if item is not None]
    small = {id(item): item.maximum_v.value < _MILLIVOLTS_BELOW_V for _, item in read}
    names = (
        (_tr("Mean"), "mean_v"),
        (_tr("RMS"), "rms_v"),
        (_tr("Minimum"), "minimum_v"),
        (_tr("Maximum"), "maximum_v"),
        (_tr("Peak–peak"), "peak_to_peak_v"),
        (_tr("Noise, mV"), "noise_v"),
    )
    rows = tuple(
        (head, tuple(_cell(item, field, small[id(item)]) for _, item in read)) for head, field in names
    )
    counts = (_tr("Samples"), tuple(str(item.count) for _, item in read))
    lasts = (_tr("Duration"), (duration(readings.time.length), *("" for _ in read[1:])))
    columns = tuple(f"{channel_name(channel)}, {'mV' if small[id(item)] else 'V'}" for channel, item in read)
    return Grid(columns, (*rows, counts, lasts), *_remark([item.mean_v for _, item in read]))


def _cell(item: SpanReading, field: str, millivolts: bool) -> str:
    reading: Reading = getattr(item, field)
    # Noise is millivolts whatever the level is.
    if field == "noise_v" and item.resolution_limited and math.isfinite(reading.value):
        return f"< {_at_most(reading.value * 1e3)}"
    return with_uncertainty(reading, millivolts or field == "noise_v", unit=False)


def _at_most(limit: float) -> str:
    """A positive limit in two figures, rounded up: what lies below the one lies below the other."""
    digits = max(1 - math.floor(math.log10(limit)), 0) if limit > 0.0 else 1
    return figure(math.ceil(limit * 10.0**digits) / 10.0**digits, digits)


def _travel_grid(readings: TravelReadings) -> Grid:
    band = readings.band
    rows = [(_tr("A band here"), said(place_words(band.confidence))), *_band_rows(band)]
    if band.passes:
        share = f"{figure(100 * readings.share.start, 0)}–{percent(100 * readings.share.stop, 0)}"
        rows.append((_tr("Expect it on"), _tr("{share} of crossings").format(share=share)))
    remark = "" if band.passes else _tr("The arm never went over it: it is not rated.")
    tip = _tr("Of many more crossings that many would break up: 95 % interval of the share (Wilson)")
    cells = tuple((head, (cell,)) for head, cell in rows)
    return Grid((role_name(band.track),), cells, remark, tip if band.passes else "")


def _band_rows(band: Band) -> list[tuple[str, str]]:
    broke = plural(
        "{noisy} of {count} crossing",
        "{noisy} of {count} crossings",
        count=band.passes,
        noisy=band.noisy_passes,
    )
    rows = [(_tr("Breaks up on"), said(broke)), (_tr("Worst"), percent(band.output_smoothness_percent, 1))]
    return [*rows, (_tr("Voltage"), said(volts(band.volts)))] if band.volts.length > 0 else rows


def _remark(readings: list[Reading | None]) -> tuple[str, str]:
    """What ± means, in plain words and in those of metrology."""
    known = [item.accuracy_known for item in readings if item is not None]
    if not known:
        return "", ""
    tip = _tr("± is the expanded uncertainty with k = 2, which covers about 95 % (JCGM 100)")
    if all(known):
        return _tr("±: within it 95 times in 100"), tip
    return _tr("±: within it 95 times in 100, if the recorder is right: its accuracy is not stated"), tip
