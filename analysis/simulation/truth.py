"""What a perfect reader would say of a simulated capture."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from analysis.captures.model import Role
from analysis.diagnosis.findings import VerdictCode
from analysis.intervals import Interval
from analysis.simulation.circuit import Floats
from analysis.simulation.track import WornBand


@dataclass(frozen=True, slots=True)
class BandTruth:
    """A worn band as it was made, and what the capture shows of it.

    Parameters
    ----------
    travel : Interval
        Edges in % of electrical travel, cut to what the arm visited.
    track : Role
        Which track.
    crossings, shown : int
        Crossings of the band, and those on which the sampled voltage left the ideal one by more than five
        times the recorder's noise, 1.2 counts and 15 mV.
    severity : float
        As it was made.
    deepest_v : float
        Largest departure in a sample, in volts; negative towards ground.
    """

    travel: Interval
    track: Role
    crossings: int
    shown: int
    severity: float
    deepest_v: float


@dataclass(frozen=True, slots=True)
class Truth:
    """Truth of one capture.

    Parameters
    ----------
    code : VerdictCode
        What a perfect reader says.
    acceptable : frozenset of VerdictCode
        `code`, and what else is defensible.
    bands : tuple of BandTruth
        Every band that was crossed at all.
    story : str
        One sentence: what was simulated.
    """

    code: VerdictCode
    acceptable: frozenset[VerdictCode]
    bands: tuple[BandTruth, ...] = ()
    story: str = ""

    @property
    def shown_bands(self) -> tuple[BandTruth, ...]:
        """Bands that showed on two crossings or more."""
        return tuple(band for band in self.bands if band.shown >= 2)


@dataclass(frozen=True, slots=True)
class PathSamples:
    """The path of one record at the recorder's samples, and how far the signal stood from the ideal."""

    record: str
    role: Role
    interval_s: float
    travel_percent: Floats
    departure_v: Floats


def band_truths(
    bands: Sequence[WornBand], role: Role, paths: Sequence[PathSamples], threshold_v: float
) -> tuple[BandTruth, ...]:
    """Crossings of each band and what they showed.

    Parameters
    ----------
    bands : sequence of WornBand
        Of one track.
    role : Role
        That track.
    paths : sequence of PathSamples
        Of the whole capture.
    threshold_v : float
        Departure that this recorder can show.

    Returns
    -------
    tuple of BandTruth
        Bands that the arm never touched are left out.
    """
    found = []
    own = [path for path in paths if path.role is role]
    for band in bands:
        visits = [visit for path in own for visit in _visits(band, path)]
        if not visits:
            continue
        shown = sum(bool(np.abs(departure).max() > threshold_v) for _, departure in visits)
        place = np.concatenate([place for place, _ in visits])
        departure = np.concatenate([departure for _, departure in visits])
        deepest = float(departure[np.abs(departure).argmax()])
        travel = Interval(max(band.travel.start, place.min()), min(band.travel.stop, place.max()))
        found.append(BandTruth(travel, role, len(visits), shown, band.severity, deepest))
    return tuple(found)


def _visits(band: WornBand, path: PathSamples) -> list[tuple[Floats, Floats]]:
    """Travel and departure of each crossing: a run near the band that covers half of it or more."""
    travel = path.travel_percent
    margin = 0.3 + 0.5 * band.soft_percent
    near = (travel >= band.travel.start - margin) & (travel < band.travel.stop + margin)
    flips = np.flatnonzero(np.diff(near.astype(np.int8), prepend=0, append=0))
    visits = []
    for begin, end in zip(flips[::2], flips[1::2], strict=True):
        place = travel[begin:end]
        inside = (place >= band.travel.start) & (place < band.travel.stop)
        crossed = abs(float(place[-1] - place[0])) >= 0.5 * band.travel.length
        covered = float(np.ptp(place)) >= 0.5 * band.travel.length
        if inside.any() and (crossed or covered):
            visits.append((place[inside], path.departure_v[begin:end][inside]))
    return visits
