"""Where a crossing breaks up most: there the cursor stands, and a marker reads the drop."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from analysis.captures.model import Channel, Record
from analysis.control_unit.stand_in import sound_sensor_v
from analysis.diagnosis.findings import Findings
from analysis.errors import CaptureError
from analysis.intervals import Interval
from app.drawing.envelopes import columns

_COLUMNS = 4000

Sound = tuple[NDArray[np.float64], NDArray[np.float64]]


def deepest_s(findings: Findings, record: Record, band: int, time: Interval) -> float:
    """When the signal is furthest from what belongs to the arm's place.

    Parameters
    ----------
    findings : Findings
        For the arm's path, and the volts that belong to it.
    record : Record
        In which the crossing lies.
    band : int
        Which band is crossed.
    time : Interval
        Of the crossing, in seconds.

    Returns
    -------
    float
        In seconds, the time of a sample; the middle of the crossing where the path is not known, or nothing
        can be read.
    """
    track = findings.bands[band].track
    channel, sound = record.channel(track), sound_sensor_v(findings, record, track)
    if channel is None or sound is None:
        return time.centre
    try:
        index = _deepest(channel, record, sound, record.index_at(time.start), record.index_at(time.stop) + 1)
    except CaptureError:  # told where it is drawn
        return time.centre
    return time.centre if index is None else record.first_sample_s + index * record.sample_interval_s


def _deepest(channel: Channel, record: Record, sound: Sound, start: int, stop: int) -> int | None:
    """Sample furthest from a sound sensor: first the column of a picture, then the sample in it."""
    seen = columns(channel, start, stop, _COLUMNS)
    at = _furthest(seen.index, seen.low_v, seen.high_v, record, sound)
    if at is None or seen.single:
        return None if at is None else int(seen.index[at])
    half = 0.5 * (stop - start) / seen.index.size + 1.0
    first, last = max(int(seen.index[at] - half), start), min(int(seen.index[at] + half) + 1, stop)
    volts_v = channel.volts(first, last)
    inside = _furthest(np.arange(first, first + volts_v.size), volts_v, volts_v, record, sound)
    return None if inside is None else first + inside


def _furthest(
    index: NDArray[np.floating] | NDArray[np.integer],
    low_v: NDArray[np.float64],
    high_v: NDArray[np.float64],
    record: Record,
    sound: Sound,
) -> int | None:
    belongs_v = np.interp(record.first_sample_s + index * record.sample_interval_s, *sound)
    away_v = np.fmax(belongs_v - low_v, high_v - belongs_v)
    return int(np.nanargmax(away_v)) if np.isfinite(away_v).any() else None
