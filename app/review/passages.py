"""What can be stepped to: crossings of bands, and events in time without a place."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from analysis.captures.model import Role
from analysis.diagnosis.findings import Band, CrossingTime, Event, Findings, VerdictCode
from analysis.intervals import Interval
from analysis.reports.verdicts import WATCH_BELOW

_SHALLOW = 0.1


@dataclass(frozen=True, slots=True)
class Passage:
    """One thing to step to: a crossing of a band, or an event in time without a place.

    Parameters
    ----------
    record : str
        Name of the record.
    time : Interval
        Seconds.
    band : int or None
        Index of the band that is crossed; None for an event.
    breakup_percent : float
        Break-up on a crossing, in % of the applied voltage; NaN for an event.
    depth_v : float
        Depth of an event in volts; NaN for a crossing.
    noisy : bool
        Whether the output broke up; True for every event.
    shape : str
        Shape of an event; empty for a crossing.
    roles : tuple of Role
        Whose event it is; empty for a crossing.
    """

    record: str
    time: Interval
    band: int | None
    breakup_percent: float
    depth_v: float
    noisy: bool
    shape: str = ""
    roles: tuple[Role, ...] = ()

    @property
    def end(self) -> tuple[str, float]:
        """Its record, and the second at which it is over: what they are ordered by."""
        return self.record, self.time.stop


def passages(findings: Findings) -> tuple[Passage, ...]:
    """What is worth stepping to, in the order of the capture.

    The crossings of the bands that are more likely there than not. Where there is none, the events
    outside the bands, and the crossings of what is merely possible. An event less than a tenth as deep
    as the deepest is left out: nobody steps through a hundred flickers of the last digit. Where no fault
    was found, what was disturbed bears on nothing; where nothing was measured, there is no track to cross.
    """
    likely = [i for i, band in enumerate(findings.bands) if band.confidence >= WATCH_BELOW]
    measured = findings.verdict.code is not VerdictCode.MEASUREMENT_PROBLEM
    shown = likely or (range(len(findings.bands)) if measured else ())
    found = [_crossing(index, item) for index in shown for item in findings.bands[index].crossings]
    if not likely and findings.verdict.code is not VerdictCode.NO_FAULT_FOUND:
        apart = [item for item in findings.events if not item.in_band]
        deepest_v = max((abs(item.depth_v) for item in apart), default=0.0)
        found += [_event(item) for item in apart if abs(item.depth_v) >= _SHALLOW * deepest_v]
    return tuple(sorted(found, key=lambda item: (item.record, item.time.start)))


def same_band(before: Band, bands: Sequence[Band]) -> int | None:
    """Index of the band that lies where one lay before, on the same track; None where there is none."""
    shared = {
        i: item.travel.overlap(before.travel) for i, item in enumerate(bands) if item.track is before.track
    }
    best = max(shared, key=lambda i: shared[i], default=None)
    return best if best is not None and shared[best] > 0.0 else None


def same_passage(before: Passage, after: Sequence[Passage]) -> int | None:
    """Index of the passage that was singled out before; None where it is gone."""
    alike = (before.record, before.band is None)
    shared = {
        i: item.time.overlap(before.time)
        for i, item in enumerate(after)
        if (item.record, item.band is None) == alike
    }
    best = max(shared, key=lambda i: shared[i], default=None)
    return best if best is not None and shared[best] > 0.0 else None


def passage_at(items: Sequence[Passage], record: str, span: Interval, band: int | None) -> int | None:
    """Index of the passage in which a moment or a span of a record lies; None where it lies in none.

    Parameters
    ----------
    items : sequence of Passage
        To choose from.
    record : str
        Name of the record.
    span : Interval
        Seconds; as long as nothing for a moment. Of a span, most lies in the passage.
    band : int or None
        Whose passage is preferred: two tracks are crossed at once.
    """
    shared = {
        i: (item.time.overlap(span), item.band == band)
        for i, item in enumerate(items)
        if item.record == record and (item.time.contains(span.start) or item.time.overlap(span) > 0.0)
    }
    return max(shared, key=lambda i: shared[i], default=None)


def _crossing(band: int, item: CrossingTime) -> Passage:
    return Passage(item.record, item.time, band, item.breakup_percent, float("nan"), item.noisy)


def _event(item: Event) -> Passage:
    return Passage(item.record, item.time, None, float("nan"), item.depth_v, True, item.shape, item.roles)
