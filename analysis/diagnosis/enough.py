"""Whether the evidence is complete, and what is missing, worst first: what a technician does next.

The measures are those of the analysis itself: how often every stretch of travel was crossed, slowly enough
for the recorder, and what `analysis.diagnosis.advice` still asks for. Advice that follows from the verdict
(look for the bad plug, capture the new sensor) is no evidence that is missing.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from enum import StrEnum

import numpy as np
from numpy.typing import NDArray

from analysis.captures.model import Capture, Role
from analysis.diagnosis import advice
from analysis.diagnosis.findings import MEASURE_AGAIN, Findings, TrackSurvey, VerdictCode
from analysis.diagnosis.profile_model import SensorProfile
from analysis.intervals import Interval
from analysis.wording import Template, Wording, plural, say

STRETCH_PERCENT = 10.0
LEAST_SAMPLES = 5
"""Samples in 1 % of travel, the increment of output smoothness (IEC 60393), that a crossing must leave there
to count: two that break up between sound ones on either side, and one to spare. Ours."""

_STOP_PERCENT = 2.0  # where the arm turns again and again within this, it has a stop
_STOP_TURNS = 3  # one turn ends a crossing and begins the next, so three are of two visits
_NEAR_LIMIT_PERCENT = 5.0


class Task(StrEnum):
    """What is to be done next; in the order of urgency."""

    MEASURE = "measure"
    SWEEP = "sweep"
    FASTER = "faster"
    SLOWER = "slower"
    ENDS = "ends"
    STRETCH = "stretch"
    CROSSINGS = "crossings"
    HOLD = "hold"
    RECORD = "record"
    AGAIN = "again"
    ENOUGH = "enough"


@dataclass(frozen=True, slots=True)
class Missing:
    """One thing that the evidence lacks.

    Parameters
    ----------
    task : Task
    line : str
        A few words to be read from afar.
    sentence : str
        What to do.
    travel : Interval or None
        Where, in % of travel.
    """

    task: Task
    line: Wording
    sentence: str
    travel: Interval | None = None


@dataclass(frozen=True, slots=True)
class Stretch:
    """A stretch of travel.

    Parameters
    ----------
    travel : Interval
        In % of travel.
    crossings : int
        Crossings that were slow enough, where there are fewest in it.
    too_fast : int
        Others, where there are most in it.
    beyond : bool
        It lies beyond the arm's stop.
    """

    travel: Interval
    crossings: int
    too_fast: int = 0
    beyond: bool = False

    @property
    def done(self) -> bool:
        """Whether more crossings would change little."""
        return self.beyond or self.crossings >= advice.ENOUGH_CROSSINGS


@dataclass(frozen=True, slots=True)
class Evidence:
    """How far the evidence has come.

    Parameters
    ----------
    stretches : tuple of Stretch
        The whole travel, in order.
    missing : tuple of Missing
        Worst first; empty where it is complete.
    """

    stretches: tuple[Stretch, ...]
    missing: tuple[Missing, ...]

    @property
    def enough(self) -> bool:
        """Whether it is complete."""
        return not self.missing

    @property
    def next(self) -> Missing:
        """What to do next; `Task.ENOUGH` where nothing is missing."""
        if self.missing:
            return self.missing[0]
        told = say(
            "The evidence is complete: every stretch was tested at least {count} times.",
            count=advice.ENOUGH_CROSSINGS,
        )
        return Missing(Task.ENOUGH, say("ENOUGH"), told)


NOTHING_YET = Evidence(
    tuple(
        Stretch(Interval(start, start + STRETCH_PERCENT), 0)
        for start in np.arange(0.0, 100.0, STRETCH_PERCENT)
    ),
    (Missing(Task.SWEEP, say("Sweep the arm"), advice.SWEEP_ALL),),
)
"""Before the first sweep."""


def evidence_of(capture: Capture, findings: Findings, profile: SensorProfile) -> Evidence:
    """How far the evidence of a capture has come.

    Parameters
    ----------
    capture : Capture
        What was examined.
    findings : Findings
        Of that capture.
    profile : SensorProfile
        It was examined with.
    """
    intervals = {item.name: item.sample_interval_s for item in capture.records}
    valid = profile.tracks[Role.SIGNAL].valid_v
    share = 100.0 / profile.supply_v
    return judge(findings, intervals, Interval(valid.start * share, valid.stop * share))


def judge(findings: Findings, interval_s: Mapping[str, float], valid_percent: Interval) -> Evidence:
    """How far the evidence has come.

    Parameters
    ----------
    findings : Findings
        Of everything that was recorded of one sensor.
    interval_s : mapping of str to float
        Seconds between samples of each record.
    valid_percent : Interval
        Travel that the profile allows, in %.
    """
    survey = next((item for item in findings.surveys if item.crossings), None)
    if survey is None:
        missing = tuple(_asked(findings)) or NOTHING_YET.missing
        return Evidence(NOTHING_YET.stretches, _ordered(missing))
    reach = _Reach(survey, valid_percent)
    stretches = _stretches(survey, interval_s, reach)
    slowest_s = max(interval_s.values(), default=0.0)
    lacks = [*_of_travel(stretches, reach, slowest_s), *_asked(findings)]
    if not lacks and findings.verdict.code is VerdictCode.INCONCLUSIVE:
        lacks = [Missing(Task.AGAIN, say("Sweep again, slowly"), advice.SWEEP_ALL)]
    return Evidence(stretches, _ordered(lacks))


def _ordered(lacks: tuple[Missing, ...] | list[Missing]) -> tuple[Missing, ...]:
    rank = list(Task)
    return tuple(sorted(lacks, key=lambda item: rank.index(item.task)))


class _Reach:
    """How far the arm went, and whether it found its stops."""

    def __init__(self, survey: TrackSurvey, valid_percent: Interval) -> None:
        low = np.sort([item.travel.start for item in survey.crossings])
        high = np.sort([-item.travel.stop for item in survey.crossings])
        third = min(_STOP_TURNS, len(low)) - 1  # where one crossing alone went, break-up may have led it
        self.travel = Interval(float(low[third]), max(-float(high[third]), float(low[third])))
        wide = self.travel.length >= advice.LEAST_REACH * valid_percent.length
        self.low_found = self.travel.start <= valid_percent.start + _NEAR_LIMIT_PERCENT or (
            wide and _turned(low - low[third])
        )
        self.high_found = self.travel.stop >= valid_percent.stop - _NEAR_LIMIT_PERCENT or (
            wide and _turned(high - high[third])
        )


def _turned(distance_percent: NDArray[np.float64]) -> bool:
    return int(np.count_nonzero(np.abs(distance_percent) <= _STOP_PERCENT)) >= _STOP_TURNS


def _stretches(survey: TrackSurvey, interval_s: Mapping[str, float], reach: _Reach) -> tuple[Stretch, ...]:
    slow, fast = _counts(survey, interval_s)
    cells = np.arange(100)
    inner = (cells >= np.ceil(reach.travel.start + 1.0)) & (cells + 1 <= np.floor(reach.travel.stop - 1.0))
    made = []
    for start in np.arange(0, 100, int(STRETCH_PERCENT)):
        own = inner & (cells >= start) & (cells < start + STRETCH_PERCENT)
        travel = Interval(float(start), float(start + STRETCH_PERCENT))
        if own.any():
            made.append(Stretch(travel, int(slow[own].min()), int(fast[own].max())))
        else:
            below = travel.centre < reach.travel.centre
            made.append(Stretch(travel, 0, beyond=reach.low_found if below else reach.high_found))
    return tuple(made)


def _counts(
    survey: TrackSurvey, interval_s: Mapping[str, float]
) -> tuple[NDArray[np.int64], NDArray[np.int64]]:
    """Crossings of each 1 % of travel, shape (100,): those that were slow enough, and the others."""
    centres = 0.5 * (survey.edges_percent[1:] + survey.edges_percent[:-1])
    place = np.floor(centres).astype(np.int64)
    cell_of_bin = (place[:, None] == np.arange(100)[None, :]).astype(np.float64)
    visited = (~np.isnan(survey.breakup_percent)).astype(np.float64) @ cell_of_bin > 0.0
    if survey.dwell_s.shape != survey.breakup_percent.shape:
        return visited.sum(axis=0), np.zeros(100, np.int64)
    slowest = max(interval_s.values(), default=0.0)
    each_s = np.array([interval_s.get(item.record, slowest) for item in survey.crossings])
    stayed_s = np.nan_to_num(survey.dwell_s).astype(np.float64) @ cell_of_bin
    slow = visited & (stayed_s >= (LEAST_SAMPLES - 0.5) * each_s[:, None])
    return slow.sum(axis=0), (visited & ~slow).sum(axis=0)


def _of_travel(stretches: tuple[Stretch, ...], reach: _Reach, interval_s: float) -> Iterator[Missing]:
    """What is missing of the travel."""
    fast = [item for item in stretches if not item.done and item.too_fast > item.crossings]
    if fast:
        yield Missing(
            Task.SLOWER,
            _slower(fast, stretches),
            say(
                "Take {seconds:.1f} s or more for a full stroke: a faster one leaves too few samples in it.",
                seconds=100 * LEAST_SAMPLES * interval_s,
            ),
        )
    if not (reach.low_found and reach.high_found):
        yield Missing(
            Task.ENDS,
            say("Go to the ends"),
            advice.SWEEP_TO_STOPS(
                low=max(reach.travel.start, 0.0),
                high=min(reach.travel.stop, 100.0),
            ),
        )
    for run in _runs(stretches):
        yield _of_run(run, few=min(item.crossings for item in run))


def _slower(fast: list[Stretch], stretches: tuple[Stretch, ...]) -> Wording:
    """Where the arm went too fast; without a place where it did everywhere."""
    if all(item in fast for item in stretches if item.crossings or item.too_fast):
        return say("Slower")
    last = fast[0]
    for item in fast[1:]:
        if item.travel.start == last.travel.stop:
            last = item
    return say("Slower between {low:.0f} and {high:.0f} %", low=fast[0].travel.start, high=last.travel.stop)


def _runs(stretches: tuple[Stretch, ...]) -> list[list[Stretch]]:
    """Neighbouring stretches with equally few crossings, fewest first."""
    runs: list[list[Stretch]] = []
    for item in stretches:
        if item.done:
            continue
        last = runs[-1][-1] if runs else None
        if last is not None and (last.travel.stop, last.crossings) == (item.travel.start, item.crossings):
            runs[-1].append(item)
        else:
            runs.append([item])
    return sorted(runs, key=lambda run: run[0].crossings)


_NOT_DONE = Template("{low:.0f}–{high:.0f} % not done")


def _of_run(run: list[Stretch], few: int) -> Missing:
    travel = Interval(run[0].travel.start, run[-1].travel.stop)
    place = {"low": travel.start, "high": travel.stop}
    more = advice.ENOUGH_CROSSINGS - few
    if not few:
        line, task = _NOT_DONE(**place), Task.STRETCH
    else:
        line = plural(
            "{low:.0f}–{high:.0f} %: once more",
            "{low:.0f}–{high:.0f} %: {count} more times",
            count=more,
            **place,
        )
        task = Task.CROSSINGS
    return Missing(task, line, advice.SWEEP_PAST(missing=more, **place), travel)


_LINES: dict[str, tuple[Task, Template]] = {
    MEASURE_AGAIN.text: (Task.MEASURE, Template("Measure again")),
    advice.SWEEP_ALL.template: (Task.SWEEP, Template("Sweep the arm")),
    advice.SWEEP_PAST.text: (Task.CROSSINGS, Template("Sweep past {low:.0f}–{high:.0f} %")),
    advice.HOLD_STILL.text: (Task.HOLD, Template("Hold still at {place:.0f} %")),
    advice.SECOND_TRACK.template: (Task.RECORD, Template("Record the second track")),
    advice.REST_HEIGHT.template: (Task.RECORD, Template("Sweep past the rest height")),
    advice.WIGGLE.template: (Task.RECORD, Template("Wiggle the harness")),
    advice.RECORD_FASTER.text: (Task.FASTER, Template("Record faster")),
    advice.RECORD_WIRE[Role.GROUND].template: (Task.RECORD, Template("Now probe the ground")),
    advice.RECORD_WIRE[Role.REFERENCE].template: (Task.RECORD, Template("Now probe the reference")),
    advice.RECORD_FINER[Role.GROUND].template: (
        Task.RECORD,
        Template("Probe the ground again, smaller range"),
    ),
    advice.RECORD_FINER[Role.REFERENCE].template: (
        Task.RECORD,
        Template("Probe the reference again, smaller range"),
    ),
    advice.RECORD_AGAIN[Role.GROUND].template: (Task.RECORD, Template("Probe the ground again")),
    advice.RECORD_AGAIN[Role.REFERENCE].template: (Task.RECORD, Template("Probe the reference again")),
}


def _asked(findings: Findings) -> Iterator[Missing]:
    """What the advice asks for beyond the verdict's own next step."""
    after = {*advice.NEXT_STEP.values(), advice.MEASURE_WIRE}
    held = any(item.code == "not_the_loom" and item.records for item in findings.evidence)
    for sentence in findings.advice:
        if sentence in after:
            continue
        values = sentence.values if isinstance(sentence, Wording) else {}
        template = sentence.template if isinstance(sentence, Wording) else sentence
        if template == advice.SWEEP_TO_STOPS.text:
            continue  # the travel is judged by itself, stretch by stretch
        if held and template == advice.HOLD_STILL.text:
            continue  # it was done, and was quiet: once more would say no more
        task, line = _LINES.get(template, (Task.RECORD, Template("Read the advice")))
        yield Missing(task, line(**values), sentence)
