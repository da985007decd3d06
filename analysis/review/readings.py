"""What a marker reads: every channel, at a moment or over a span of time; or the crossings of a stretch."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from analysis.captures.model import Capture, Channel, Record
from analysis.diagnosis.findings import Direction, Findings, TrackSurvey
from analysis.diagnosis.place_signs import FOOTHOLD, NEIGHBOURHOOD_PERCENT
from analysis.intervals import Interval
from analysis.progress import Tick, ignore
from analysis.review.model import Marker, PointMarker, SpanMarker
from analysis.signals.measurement import Reading, SpanReading, read_span
from analysis.signals.proportions import wilson_interval


@dataclass(frozen=True, slots=True)
class PointReading:
    """What every channel read at one sample; None where the sample is missing."""

    time_s: float
    channels: tuple[tuple[Channel, Reading | None], ...]


@dataclass(frozen=True, slots=True)
class SpanReadings:
    """What every channel read over a span; None where all its samples are missing.

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


@dataclass(frozen=True, slots=True)
class TravelReadings:
    """The crossings of a stretch of travel, counted as those of a found band.

    Parameters
    ----------
    crossings, noisy : int
        Crossings that visited at least half of it, and those on which the output broke up.
    share : Interval
        Of noisy crossings, 95 % (Wilson).
    worst_percent : float
        Worst break-up, in % of the applied voltage; NaN where it was never visited.
    """

    crossings: int
    noisy: int
    share: Interval
    worst_percent: float


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
    surveys = findings.surveys if findings is not None else ()
    survey = next((item for item in surveys if item.role is marker.track), None)
    return read_travel(survey, marker.travel) if survey is not None else None


def read_point(record: Record, time_s: float) -> PointReading:
    """Read every channel at the sample nearest to a moment; raises CaptureError where the file is damaged."""
    index = record.index_at(time_s)
    channels = tuple((item, _mean(_span(item, record, index, index + 1))) for item in record.channels)
    return PointReading(record.first_sample_s + index * record.sample_interval_s, channels)


def read_time_span(record: Record, time: Interval, tick: Tick = ignore) -> SpanReadings:
    """Read every channel over the samples of a span, at least one; raises CaptureError as `read_point`."""
    start, stop = samples_of(record, time)
    channels = []
    for place, channel in enumerate(record.channels):
        tick(place / len(record.channels))
        channels.append((channel, _span(channel, record, start, stop)))
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


def read_travel(survey: TrackSurvey, travel: Interval) -> TravelReadings:
    """Count the crossings of a stretch of travel, and those on which the output broke up.

    Parameters
    ----------
    survey : TrackSurvey
        May hold no crossing.
    travel : Interval
        In % of travel; at least the bin in its middle is taken.
    """
    edges = survey.edges_percent
    inside = (edges[:-1] >= travel.start) & (edges[:-1] < travel.stop)
    if not inside.any():
        inside = (edges[:-1] <= travel.centre) & (edges[1:] > travel.centre)
    rows = survey.breakup_percent[:, inside]
    visited = np.isfinite(rows)
    worst = np.where(visited, rows, 0.0).max(axis=1, initial=0.0)
    noisy = worst > survey.floor_percent
    crossed = (visited.sum(axis=1) >= FOOTHOLD * max(int(inside.sum()), 1)) | noisy
    visits = _visits(survey, travel)
    count = len(set(visits[crossed].tolist()))
    bad = len(set(visits[noisy].tolist()))
    highest = float(worst.max()) if visited.any() else float("nan")
    return TravelReadings(count, bad, wilson_interval(bad, count), highest)


def _visits(survey: TrackSurvey, travel: Interval) -> NDArray[np.intp]:
    """Number of the visit that each crossing belongs to: an arm that turns round there has not left it."""
    near = travel.widened(NEIGHBOURHOOD_PERCENT)
    fresh = [True] * len(survey.crossings)
    for index, (before, after) in enumerate(zip(survey.crossings, survey.crossings[1:], strict=False), 1):
        begun = after.travel.start if after.direction is Direction.UP else after.travel.stop
        fresh[index] = before.record != after.record or not near.start <= begun <= near.stop
    return np.cumsum(np.array(fresh, dtype=np.intp), dtype=np.intp)


def _span(channel: Channel, record: Record, start: int, stop: int) -> SpanReading | None:
    # read_span refuses a span without samples; whether there are any is asked of the file first.
    raw = channel.source.read(start, stop)
    if len(raw) == 0 or bool(channel.scaling.missing(raw).all()):
        return None
    return read_span(channel, sample_interval_s=record.sample_interval_s, start=start, stop=stop)


def _mean(reading: SpanReading | None) -> Reading | None:
    return reading.mean_v if reading is not None else None
