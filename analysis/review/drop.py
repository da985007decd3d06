"""How far the signal lies below or above what belongs to the arm's place, at one moment.

Only within a found band: what seems to drop elsewhere is a spike, a lost sample or a wire that moved as often
as not, and the path about it is then no better known than the reading.
"""

from __future__ import annotations

from enum import Enum

import numpy as np

from analysis.captures.model import Record, Role, Step
from analysis.diagnosis.findings import ArmPath, Band, Findings, TrackSurvey
from analysis.intervals import Interval
from analysis.review.readings import PointReading
from analysis.signals.carried import apart_percent
from analysis.signals.cells import LEAST_FEED_V, samples_per_cell
from analysis.signals.drop import Drop, Feed, Level, drop_below
from analysis.signals.thinning import thinned
from analysis.signals.uncertainty import combined

_LEAST_DROP_V = 0.1
"""2 % of the usual supply: less may be the width of an increment of travel, and neither drop nor rise."""


class Untold(Enum):
    """That a reading may have dropped, and that nobody can tell by how much."""

    HERE = "cannot be told"


def drop_at(findings: Findings, record: Record, reading: PointReading) -> Drop | Untold | None:
    """How far a reading of the signal lies below what belongs to the arm's place, and what belongs there.

    Where a control unit pulls its input up, a lost contact lets the signal rise instead.

    Parameters
    ----------
    findings : Findings
        For the arm's path, the bands, and the feed of records that did not watch it.
    record : Record
        That was read.
    reading : PointReading
        What was read, and when.

    Returns
    -------
    Drop, Untold or None
        None where it is neither drop nor rise: within `_LEAST_DROP_V` of what belongs there, without a
        signal, in an arm's rest other than a hold, or where no band was found. Untold where it seems to be
        one, but lies outside the bands, is less than its expanded uncertainty, or nobody knows where the arm
        was.
    """
    signal = next(((one, read) for one, read in reading.channels if one.role is Role.SIGNAL), None)
    bands = [item for item in findings.bands if item.track is Role.SIGNAL]
    channel, read = signal if signal is not None else (None, None)
    if channel is None or read is None or not bands:
        return None
    survey = next((item for item in findings.surveys if item.role is Role.SIGNAL), None)
    path = _path(survey, record, reading.time_s)
    if survey is None or path is None:
        return Untold.HERE if record.step is Step.HOLD else None
    feed = _feed(findings, survey, record, reading)
    place = path.at(reading.time_s)
    if feed is None:
        return Untold.HERE if _band_at(bands, place) is not None else None
    if abs(feed.signal(place).value_v - read.value) < _LEAST_DROP_V:
        return None
    travel_u = _travel_u_percent(survey, path, reading.time_s, _band_at(bands, place))
    if travel_u is None:
        return Untold.HERE
    drop = drop_below(
        channel,
        read.value,
        travel_percent=place,
        travel_u_percent=travel_u,
        feed=feed,
        noise_v=_noise_v(path, feed, record),
    )
    return drop if drop.told else Untold.HERE


def _path(survey: TrackSurvey | None, record: Record, time_s: float) -> ArmPath | None:
    """The path of the arm while it was swept; one at rest in a bad spot is known by its wandering alone."""
    paths = survey.paths if survey is not None else ()
    return next((item for item in paths if item.record == record.name and item.reaches(time_s)), None)


def _feed(findings: Findings, survey: TrackSurvey, record: Record, reading: PointReading) -> Feed | None:
    """Ground and reference by which the record was made travel: its own, or the capture's."""
    basis = findings.basis
    ground, reference = reading.ground, reading.reference
    if ground is None and record.channel(Role.GROUND) is None and basis is not None:
        ground = Level(basis.ground_v)
    if reference is None and record.channel(Role.REFERENCE) is None and basis is not None:
        reference = Level(basis.ground_v + basis.feed_v)
    if ground is None or (reference is None and survey.fixed_v is None):
        return None
    feed = Feed(ground, reference or Level(0.0), survey.fixed_v)
    return feed if feed.whole_travel_v >= LEAST_FEED_V else None


def _band_at(bands: list[Band], place_percent: float) -> Interval | None:
    """The stretch of a band, its edges moved out by what they are uncertain by, in which a place lies."""
    stretches = (_stretch(band) for band in bands)
    return next((item for item in stretches if item.contains(place_percent)), None)


def _stretch(band: Band) -> Interval:
    return band.travel.widened(max(band.start_uncertainty_percent, band.stop_uncertainty_percent))


def _travel_u_percent(
    survey: TrackSurvey, path: ArmPath, time_s: float, stretch: Interval | None
) -> float | None:
    """Standard uncertainty of the arm's place: the path's own, and how far it is from what surrounds it.

    No place is told better than to half a bin of the survey, by which the edges of the stretch are known.
    """
    apart = apart_percent(path, time_s, stretch) if stretch is not None else None
    if apart is None:
        return None
    own = float(np.interp(time_s, path.time_s, path.uncertainty_percent))
    half_bin = 0.5 * float(survey.edges_percent[1] - survey.edges_percent[0])
    return combined(own, apart, half_bin)


def _noise_v(path: ArmPath, feed: Feed, record: Record) -> float:
    """Of one sample: the usual uncertainty of the path is the noise of a cell, the mean of some samples."""
    cell_percent = float(np.median(thinned(path.uncertainty_percent)))
    return feed.whole_travel_v / 100.0 * cell_percent * float(np.sqrt(samples_per_cell(record)))
