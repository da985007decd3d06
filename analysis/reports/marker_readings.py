"""What the technician's markers read, for the evidence page where the technician wants it printed."""

from __future__ import annotations

from collections.abc import Iterator

from analysis.captures.model import Channel, Role
from analysis.captures.record_names import the_record
from analysis.reports.confidence import place_words
from analysis.reports.document import Table
from analysis.reports.pages import Block, Grid, Heading, Paragraph, Style
from analysis.reports.quantities import NO_VALUE, digits_of, reading, travel
from analysis.reports.subject import Subject
from analysis.review.drop import drop_at
from analysis.review.model import Marker, PointMarker, SpanMarker, TravelSpan
from analysis.review.readings import MarkerReadings, PointReading, SpanReadings, TravelReadings, readings_of
from analysis.signals.drop import Drop
from analysis.signals.measurement import Reading, SpanReading
from analysis.wording import Wording, joined, number, say

_TIME_DIGITS = 4
"""Of a marker's time in seconds: a sample of 10 kS/s is told from the next."""

_ROLES = {
    Role.SIGNAL: say("signal"),
    Role.SECOND_SIGNAL: say("second signal"),
    Role.REFERENCE: say("reference"),
    Role.GROUND: say("ground"),
    Role.SUPPLY: say("supply"),
}


_TRACKS = (Role.SIGNAL, Role.SECOND_SIGNAL)


def marker_readings(subject: Subject) -> Iterator[Block]:
    """The table of markers; nothing where none is placed or the technician does not want it.

    Raises
    ------
    CaptureError
        Where the capture's samples cannot be read.
    """
    markers = subject.review.markers
    if not subject.review.job.markers or not markers:
        return
    rows = tuple(row for marker in markers for row in _rows(marker, subject))
    heads = (say("Marker"), say("Where"), say("Wire"), say("Reading"))
    yield Heading(say("What the technician's markers read"))
    yield Grid(Table(heads, rows), (2.0, 2.6, 1.2, 4.2))
    yield Paragraph(
        say(
            "± is the expanded uncertainty (k = 2), from the samples and from what is known of the recorder;"
            " of a drop or a rise also from how well the arm's place is known."
        ),
        Style.SMALL,
    )


def in_brief(marker: Marker, subject: Subject) -> str:
    """Where a marker is and what it reads, on one line: of a point the drop too, of a span its signal.

    Raises
    ------
    CaptureError
        Where the capture's samples cannot be read.
    """
    read = readings_of(marker, subject.capture, subject.findings)
    return say("{where}: {readings}", where=_where(marker), readings=_brief(marker, read, subject))


def _brief(marker: Marker, read: MarkerReadings | None, subject: Subject) -> str:
    if read is None:
        return say("cannot be read")
    if isinstance(read, TravelReadings):
        return _of_travel(read)
    if isinstance(read, SpanReadings) and read.too_long:
        return say("too long to be read")
    texts = [
        joined([_wire(channel), text], " ")
        for channel, text in _texts(read)
        if isinstance(read, PointReading) or channel.role in _TRACKS
    ]
    drop = _drop(marker, read, subject) if isinstance(read, PointReading) else None
    return joined([*texts, *((drop,) if drop is not None else ())], "; ")


def _drop(marker: Marker, read: PointReading, subject: Subject) -> Wording | None:
    """How far the signal dropped or rose, where it did, or that it cannot be told."""
    record = next((item for item in subject.capture.records if item.name == _record(marker)), None)
    drop = drop_at(subject.findings, record, read) if record is not None else None
    if drop is None:
        return None
    if not isinstance(drop, Drop):
        return say("drop cannot be told")
    spread_v = drop.drop.expanded_uncertainty
    size = reading(abs(drop.drop.value), spread_v, "V")
    belongs_v = number(drop.belongs.value, digits_of(spread_v))
    if drop.drop.value < 0.0:
        return say("rise {size} above {belongs_v} V", size=size, belongs_v=belongs_v)
    return say("drop {size} below {belongs_v} V", size=size, belongs_v=belongs_v)


def _record(marker: Marker) -> str:
    return "" if isinstance(marker, TravelSpan) else marker.record


def _rows(marker: Marker, subject: Subject) -> Iterator[tuple[str, str, str, str]]:
    name = marker.label.strip() or say("without a name")
    read = readings_of(marker, subject.capture, subject.findings)
    if isinstance(read, TravelReadings):
        yield name, _where(marker), _ROLES[read.band.track], _of_travel(read)
        return
    if read is None or (isinstance(read, SpanReadings) and read.too_long):
        why = say("cannot be read") if read is None else say("too long to be read")
        yield name, _where(marker), NO_VALUE, why
        return
    for place, (channel, text) in enumerate(_texts(read)):
        yield (name, _where(marker), _wire(channel), text) if not place else ("", "", _wire(channel), text)
    drop = _drop(marker, read, subject) if isinstance(read, PointReading) else None
    if drop is not None:
        yield "", "", _ROLES[Role.SIGNAL], drop


def _texts(read: PointReading | SpanReadings) -> Iterator[tuple[Channel, str]]:
    if isinstance(read, PointReading):
        for channel, item in read.channels:
            yield channel, _volts(item) if item is not None else NO_VALUE
        return
    for channel, span in read.channels:
        yield channel, _of_span(span) if span is not None else NO_VALUE


def _of_span(span: SpanReading) -> Wording:
    noise = _volts(span.noise_v)
    return say(
        "mean {mean}, RMS {rms}, {low} to {high}, peak to peak {swing}, noise {noise}, {count} samples",
        mean=_volts(span.mean_v),
        rms=_volts(span.rms_v),
        low=_volts(span.minimum_v),
        high=_volts(span.maximum_v),
        swing=_volts(span.peak_to_peak_v),
        noise=say("at most {noise}", noise=noise) if span.resolution_limited else noise,
        count=span.count,
    )


def _of_travel(read: TravelReadings) -> Wording:
    return say(
        "breaks up on {noisy} of {passes}; {confidence}",
        noisy=read.band.noisy_passes,
        passes=read.band.passes,
        confidence=place_words(read.band.confidence),
    )


def _volts(item: Reading) -> str:
    return reading(item.value, item.expanded_uncertainty, "V")


def _where(marker: Marker) -> Wording:
    if isinstance(marker, PointMarker):
        time = number(marker.time_s, _TIME_DIGITS)
        return say("{record}, {time} s", record=the_record(marker.record), time=time)
    if isinstance(marker, SpanMarker):
        start, stop = (number(edge, _TIME_DIGITS) for edge in (marker.time.start, marker.time.stop))
        return say("{record}, {start} to {stop} s", record=the_record(marker.record), start=start, stop=stop)
    return travel(marker.travel)


def _wire(channel: Channel) -> str:
    return joined([_ROLES[channel.role] if channel.role is not None else channel.name])
