"""What the views list beside the verdict: coverage, events in time, and each record's outcome in one line."""

from __future__ import annotations

from dataclasses import dataclass
from itertools import pairwise

import numpy as np

from analysis.captures.model import Role
from analysis.diagnosis.checks import STEADY_LIMIT_V, steadiness_check
from analysis.diagnosis.checks_zero import zero_outcome, zeros_of
from analysis.diagnosis.findings import Check, CoverageSpan, Event, RecordOutcome, Result
from analysis.diagnosis.quiet import brief_at_rest_v, brief_breakup_percent, moving_wires
from analysis.diagnosis.seen import PLAIN, QUIET_WEIGHT, Seen, disturbed_weight
from analysis.diagnosis.strays import substance
from analysis.diagnosis.studies import WATCHED, Study
from analysis.intervals import Interval
from analysis.signals.events import Disturbance
from analysis.signals.facts import TrackSurvey
from analysis.wording import Template, Wording, plural, say

MOST_EVENTS = 500
"""The deepest events are listed where there are more."""


def coverage(survey: TrackSurvey | None) -> tuple[CoverageSpan, ...]:
    """Stretches of travel with the number of their crossings; empty where nothing was swept.

    Of what lies beyond the ends of the track nothing is said: the output goes there, the arm does not.
    """
    if survey is None or not survey.crossings:
        return ()
    edges = survey.edges_percent
    counts = np.sum(~np.isnan(survey.breakup_percent), axis=0)
    cuts = [0, *(np.flatnonzero(np.diff(counts)) + 1).tolist(), len(counts)]
    at = np.clip(edges, 0.0, 100.0)
    return tuple(
        CoverageSpan(Interval(float(at[first]), float(at[last])), int(counts[first]))
        for first, last in pairwise(cuts)
        if counts[first] > 0 and at[first] < at[last]
    )


def events(seen: Seen) -> tuple[Event, ...]:
    """Disturbances of all records in order, the deepest `MOST_EVENTS` of them."""
    every = [noted for item in seen.studies.every for noted in _noted(seen, item)]
    if len(every) > MOST_EVENTS:
        every = _deepest(every)
    listed = [_event(seen, noted) for noted in every if noted.counts]
    return tuple(sorted(listed, key=lambda event: (event.record, event.time.start)))


@dataclass(frozen=True, slots=True)
class _Noted:
    """A disturbance of one channel of one record, and its depth in volts."""

    item: Study
    role: Role
    event: Disturbance
    depth_v: float

    @property
    def counts(self) -> bool:
        """Whether it is an event: a lone sample that hardly leaves the floor is nobody's."""
        return self.role not in self.item.surveys or substance(self.event, self.item, self.role) > 0.0


def _noted(seen: Seen, item: Study) -> list[_Noted]:
    feed_v = seen.studies.feed.whole_travel_v
    return [
        _Noted(item, role, event, event.depth * (feed_v / 100.0 if role in item.surveys else 1.0))
        for role in (*item.surveys, *(role for role in WATCHED if role in item.steady))
        for event in item.disturbances(role)
    ]


def _deepest(every: list[_Noted]) -> list[_Noted]:
    """Those that count and go as deep as the last of the deepest `MOST_EVENTS`, so many of them, in order."""
    kept: list[int] = []
    least = 0.0
    for index in sorted(range(len(every)), key=lambda index: -abs(every[index].depth_v)):
        if len(kept) >= MOST_EVENTS and abs(every[index].depth_v) < least:
            break
        if every[index].counts:
            kept.append(index)
            least = abs(every[index].depth_v)
    return [every[index] for index in sorted(kept)[:MOST_EVENTS]]


def _event(seen: Seen, noted: _Noted) -> Event:
    event = noted.event
    place = event.travel_percent if np.isfinite(event.travel_percent) else None
    inside = place is not None and any(
        band.track is noted.role and band.travel.widened(1.0).contains(place) for band in seen.sure_bands
    )
    shape = "spike" if event.cells == 1 and event.shape != "ringing" else event.shape
    return Event(noted.item.record.name, event.time, (noted.role,), noted.depth_v, place, shape, inside)


def record_outcomes(seen: Seen) -> tuple[RecordOutcome, ...]:
    """One line for each record, in the capture's order; spans of one record share its line."""
    lines: dict[str, RecordOutcome] = {}
    for item in seen.studies.every:
        made = _outcome(seen, item)
        known = lines.get(made.record)
        if known is None or _WORSE.index(made.result) > _WORSE.index(known.result):
            lines[made.record] = made
    lines |= {item.name: zero_outcome(item) for item in zeros_of(seen.studies)}
    order = {item.name: index for index, item in enumerate(seen.studies.capture.records)}
    return tuple(sorted(lines.values(), key=lambda line: order.get(line.record, len(order))))


_WORSE = (Result.PASS, Result.CANNOT_TELL, Result.FAIL)
"""What one span of a record shows is told in its line before what another does."""


def _outcome(seen: Seen, item: Study) -> RecordOutcome:
    name = item.record.name
    plain = next((p for p in seen.problems if p.record == name and p.strength >= PLAIN), None)
    if plain is not None:
        return RecordOutcome(name, Result.FAIL, plain.text)
    crossed = sum(c.noisy for band in seen.sure_bands for c in band.crossings if c.record == name)
    wrong = _wrong(seen, item, banded=crossed > 0)
    if wrong is not None:
        return RecordOutcome(name, Result.FAIL, wrong)
    if crossed:
        return RecordOutcome(
            name,
            Result.FAIL,
            plural(
                "breaks up in the band on {count} crossing",
                "breaks up in the band on {count} crossings",
                count=crossed,
            ),
        )
    if item.surveys and disturbed_weight(seen, item) >= QUIET_WEIGHT:
        return RecordOutcome(name, Result.FAIL, say("breaks up"))
    if seen.sure_bands and item.surveys and not item.swept and _restless(item):
        return RecordOutcome(name, Result.FAIL, say("breaks up at rest in the band"))
    doubt = _doubt(seen, item)
    if doubt is not None:
        return RecordOutcome(name, Result.CANNOT_TELL, doubt)
    return RecordOutcome(name, Result.PASS, _quiet_line(seen, item))


def _taken_for(item: Study) -> Role | None:
    """The wire that a record was taken for, where it holds that wire."""
    roles = (Role.GROUND, Role.REFERENCE, Role.SIGNAL)
    return next(
        (role for role in roles if role.value == (item.record.step or "") and role in item.cells.volts), None
    )


def _doubt(seen: Seen, item: Study) -> Wording | None:
    """What cannot be told of the wire that a record was taken for, by the checks that evidence rests on."""
    role = _taken_for(item)
    if role is None or role not in item.steady:
        return None
    level = next((check for check in seen.checks if _LEVELS.get(check.code) is role), None)
    reading = _reading(_middle(item, role))
    if level is not None and level.record == item.record.name and level.result is Result.CANNOT_TELL:
        return say("{reading}, too near its limit to tell", reading=reading)
    if steadiness_check(item, role).result is Result.CANNOT_TELL:
        return say("{reading}, not shown to hold still", reading=reading)
    return None


def _wrong(seen: Seen, item: Study, *, banded: bool) -> Wording | None:
    """What a check of this record, or a wire in it, plainly shows; None where neither shows anything.

    That two tracks differ is what a band does to them: where one is, it says more.
    """
    for check in seen.checks:
        if check.record != item.record.name or check.result is not Result.FAIL:
            continue
        if check.code in _FAILED and not (banded and check.code == "track_agreement"):
            return _failed(item, check)
    moving = moving_wires(seen, [item])
    if moving:
        made = steadiness_check(item, moving[0])
        return _FAILED[made.code](reading=_reading(made.value))
    return None


def _failed(item: Study, check: Check) -> Wording:
    """A failed check in a few words; a level that the wire does not keep comes and goes."""
    text, role = _FAILED[check.code], _LEVELS.get(check.code)
    held = role is not None and role in item.cells.volts
    if role is not None and held and abs(check.value - _middle(item, role)) > STEADY_LIMIT_V:
        text = _COMES_AND_GOES[check.code]
    return text(reading=_reading(check.value))


def _middle(item: Study, role: Role) -> float:
    return float(np.nanmedian(item.cells.volts[role].mean))


def _restless(item: Study) -> bool:
    """Whether the output breaks up while the arm rests, be it where a band explains that."""
    weight = sum(substance(event, item, role) for role in item.surveys for event in item.disturbances(role))
    return weight >= QUIET_WEIGHT


_FAILED = {
    "ground_drop": Template("ground stands at {reading}"),
    "ground_steadiness": Template("ground moves by {reading}"),
    "reference_level": Template("reference stands at {reading}"),
    "reference_steadiness": Template("reference moves by {reading}"),
    "signal_range": Template("signal reaches {reading}"),
    "track_agreement": Template("the tracks differ by {reading}"),
}
"""What is wrong, by the code of the check; the others say nothing of one record alone."""

_LEVELS = {"ground_drop": Role.GROUND, "reference_level": Role.REFERENCE}
_COMES_AND_GOES = {
    "ground_drop": Template("ground at {reading} at times"),
    "reference_level": Template("reference at {reading} at times"),
}


def _reading(voltage_v: float) -> Wording:
    if abs(voltage_v) < 0.1:
        return say("{level_mv:.0f} mV", level_mv=voltage_v * 1e3)
    return say("{level_v:.2f} V", level_v=voltage_v)


def _quiet_line(seen: Seen, item: Study) -> Wording:
    survey = seen.studies.tracks.get(Role.SIGNAL)
    if item.swept and survey is not None:
        count = sum(crossing.record == item.record.name for crossing in survey.crossings)
        if brief_breakup_percent(seen, [item]):
            return plural(
                "{count} stroke, disturbed briefly at most",
                "{count} strokes, disturbed briefly at most",
                count=count,
            )
        return plural("{count} stroke, clean", "{count} strokes, clean", count=count)
    role = _taken_for(item)
    if role is not None:
        return say("{reading}, steady", reading=_reading(_middle(item, role)))
    return _BRIEFLY if brief_at_rest_v(seen, [item]) else _STEADY


_STEADY, _BRIEFLY = say("steady"), say("disturbed briefly at most")
