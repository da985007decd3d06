"""What a perfect reader would say of a simulated capture."""

from __future__ import annotations

from collections.abc import Callable, Sequence
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
        Edges in % of travel as sound contacts there read under the load of the pull resistor and the probe,
        which is what the control unit and any recorder see; cut to what the arm visited.
    track : Role
        Which track.
    crossings, shown : int
        Crossings of the band, and those on which the sampled voltage left the ideal one by more than five
        times the recorder's noise, 1.2 counts and 15 mV.
    severity : float
        As it was made.
    deepest_v : float
        Largest departure in a sample, in volts; negative towards ground.
    broken : Interval or None
        From the first to the last place where a sample left the ideal voltage; None where none did.
    wiper : Interval
        The same edges in % of the wiper's position, which the load shifts by up to some per cent.
    """

    travel: Interval
    track: Role
    crossings: int
    shown: int
    severity: float
    deepest_v: float
    broken: Interval | None
    wiper: Interval


@dataclass(frozen=True, slots=True)
class FaultTruth:
    """What a capture can show of a fault of wiring, ground or reference.

    Parameters
    ----------
    events : int
        Stretches of time, 20 ms or more apart, in which a sampled voltage was off by more than the recorder
        can miss.
    longest_s, total_s : float
        Their lengths.
    """

    events: int
    longest_s: float
    total_s: float


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
    fault : FaultTruth or None
        What is to be seen of a fault of wiring, ground or reference.
    story : str
        One sentence: what was simulated.
    """

    code: VerdictCode
    acceptable: frozenset[VerdictCode]
    bands: tuple[BandTruth, ...] = ()
    fault: FaultTruth | None = None
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
    bands: Sequence[WornBand],
    role: Role,
    paths: Sequence[PathSamples],
    threshold_v: float,
    as_read: Callable[[Interval], Interval],
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
    as_read : callable
        From the wiper's position to travel as it reads.

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
        low, high = float(place.min()), float(place.max())
        wiper = Interval(max(band.travel.start, low), min(band.travel.stop, high))
        off = place[np.abs(departure) > threshold_v]
        broken = as_read(Interval(float(off.min()), float(off.max()))) if off.size else None
        found.append(
            BandTruth(as_read(wiper), role, len(visits), shown, band.severity, deepest, broken, wiper)
        )
    return tuple(found)


def fault_truth(paths: Sequence[PathSamples], threshold_v: float) -> FaultTruth:
    """Count the stretches in which a fault shows.

    Parameters
    ----------
    paths : sequence of PathSamples
        One for each record and faulty wire.
    threshold_v : float
        Departure that this recorder can show.
    """
    lengths = [length for path in paths for length in _stretches(path, threshold_v)]
    return FaultTruth(len(lengths), max(lengths, default=0.0), sum(lengths))


def _stretches(path: PathSamples, threshold_v: float) -> list[float]:
    """Seconds of each stretch beyond the threshold, gaps under 20 ms bridged."""
    off = np.flatnonzero(np.abs(path.departure_v) > threshold_v)
    if off.size == 0:
        return []
    parts = np.split(off, np.flatnonzero(np.diff(off) * path.interval_s > 0.02) + 1)
    return [float(part[-1] - part[0] + 1) * path.interval_s for part in parts]


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
