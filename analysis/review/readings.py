"""What a marker reads: every channel, at a moment or over a span of time; or the crossings of a stretch."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from analysis.captures.model import Capture, Channel, Record, Role
from analysis.diagnosis.findings import Band, Findings
from analysis.intervals import Interval
from analysis.progress import Tick, ignore
from analysis.review.model import Marker, PointMarker, SpanMarker
from analysis.signals.drop import Level
from analysis.signals.measurement import Reading, SpanReading, read_span
from analysis.signals.proportions import wilson_interval

MOST_SAMPLES = 4_000_000
"""A longer span is not read: its statistics would take seconds and hundreds of megabytes."""

BESIDE_S = 0.01
"""Ground and reference about a moment are read this long before and after it: a period of 50 Hz in all."""


@dataclass(frozen=True, slots=True)
class PointReading:
    """What every channel read at one sample, and what fed the sensor about it.

    Parameters
    ----------
    time_s : float
        Of the sample.
    channels : tuple of (Channel, Reading or None)
        In the record's order; None where the sample is missing.
    ground, reference : Level or None
        Over `BESIDE_S` on either side; None where the record does not hold them, or all samples are missing.
    """

    time_s: float
    channels: tuple[tuple[Channel, Reading | None], ...]
    ground: Level | None = None
    reference: Level | None = None


@dataclass(frozen=True, slots=True)
class SpanReadings:
    """What every channel read over a span; None where all its samples are missing, or they are too many.

    Parameters
    ----------
    time : Interval
        From the first sample to one interval past the last, in seconds.
    count : int
        Samples.
    channels : tuple of (Channel, SpanReading or None)
        In the record's order.
    """

    time: Interval
    count: int
    channels: tuple[tuple[Channel, SpanReading | None], ...]

    @property
    def too_long(self) -> bool:
        """Whether it holds more samples than are read."""
        return self.count > MOST_SAMPLES


@dataclass(frozen=True, slots=True)
class TravelReadings:
    """A stretch of travel, judged as a found band.

    Parameters
    ----------
    band : Band
        With the technician's edges; see `analysis.diagnosis.assess`.
    share : Interval
        Of crossings that broke up, 95 % (Wilson).
    """

    band: Band
    share: Interval


MarkerReadings = PointReading | SpanReadings | TravelReadings


def readings_of(
    marker: Marker, capture: Capture, findings: Findings | None, tick: Tick = ignore
) -> MarkerReadings | None:
    """What a marker reads.

    Parameters
    ----------
    marker : Marker
        Of whatever kind.
    capture : Capture
        Where the record is looked for.
    findings : Findings or None
        Where the track is looked for.
    tick : Tick
        Progress; may stop the reading between two channels.

    Returns
    -------
    MarkerReadings or None
        None where the record or the track is not there.

    Raises
    ------
    CaptureError
        Where the file is damaged or gone.
    """
    if isinstance(marker, PointMarker | SpanMarker):
        record = next((item for item in capture.records if item.name == marker.record), None)
        if record is None or not len(record):
            return None
        if isinstance(marker, PointMarker):
            return read_point(record, marker.time_s)
        return read_time_span(record, marker.time, tick)
    return read_travel(findings, marker.track, marker.travel) if findings is not None else None


def read_point(record: Record, time_s: float) -> PointReading:
    """Read every channel at the sample nearest to a moment; raises CaptureError where the file is damaged."""
    index = record.index_at(time_s)
    channels = tuple((item, _mean(_span(item, record, index, index + 1))) for item in record.channels)
    ground, reference = (_level(record, role, index) for role in (Role.GROUND, Role.REFERENCE))
    return PointReading(record.first_sample_s + index * record.sample_interval_s, channels, ground, reference)


def read_time_span(record: Record, time: Interval, tick: Tick = ignore) -> SpanReadings:
    """Read every channel over the samples of a span, at least one; raises CaptureError as `read_point`."""
    start, stop = samples_of(record, time)
    channels: list[tuple[Channel, SpanReading | None]] = []
    for place, channel in enumerate(record.channels):
        tick(place / len(record.channels))
        short = stop - start <= MOST_SAMPLES
        channels.append((channel, _span(channel, record, start, stop) if short else None))
    interval_s = record.sample_interval_s
    first_s = record.first_sample_s
    covered = Interval(first_s + start * interval_s, first_s + stop * interval_s)
    return SpanReadings(covered, stop - start, tuple(channels))


def samples_of(record: Record, time: Interval) -> tuple[int, int]:
    """Samples ``[start, stop)`` of a span of time, at least one where the record holds any."""
    start = record.index_at(time.start)
    ticks = round((time.stop - record.first_sample_s) / record.sample_interval_s)
    return start, min(max(ticks, start + 1), len(record))


def snapped(record: Record, time: Interval) -> Interval:
    """A span of time with its ends moved onto the samples: from a first to one interval past a last."""
    start, stop = samples_of(record, time)
    first_s, interval_s = record.first_sample_s, record.sample_interval_s
    return Interval(first_s + start * interval_s, first_s + stop * interval_s)


def snapped_moment(record: Record, time_s: float) -> float:
    """The time of the nearest sample."""
    return record.first_sample_s + record.index_at(time_s) * record.sample_interval_s


def read_travel(findings: Findings, track: Role, travel: Interval) -> TravelReadings | None:
    """Judge a stretch of travel as a found band; None where the track was not surveyed."""
    from analysis.diagnosis.assess import assess  # most of the diagnosis: needed once a stretch is marked

    band = assess(findings, track, travel)
    return None if band is None else TravelReadings(band, wilson_interval(band.noisy_passes, band.passes))


def _span(channel: Channel, record: Record, start: int, stop: int) -> SpanReading | None:
    # read_span refuses a span without samples; whether there are any is asked of the file first.
    raw = channel.source.read(start, stop)
    if len(raw) == 0 or bool(channel.scaling.missing(raw).all()):
        return None
    return read_span(channel, sample_interval_s=record.sample_interval_s, start=start, stop=stop)


def _level(record: Record, role: Role, index: int) -> Level | None:
    channel = record.channel(role)
    if channel is None:
        return None
    reach = max(round(BESIDE_S / record.sample_interval_s), 1)
    voltage_v = channel.volts(max(index - reach, 0), index + reach + 1)
    known_v = voltage_v[np.isfinite(voltage_v)]
    return Level(float(np.median(known_v)), float(np.std(known_v))) if known_v.size else None


def _mean(reading: SpanReading | None) -> Reading | None:
    return reading.mean_v if reading is not None else None
