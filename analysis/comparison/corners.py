"""Left against right over one drive or sweep: how far two position signals of one axle disagree.

A control unit that compares the two stores a fault that names both corners, though one sensor is bad. What it
would have stored under a stated rule is reckoned here; it is the rule's answer, never that of the module in
the car.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from analysis.captures.model import Record, Role
from analysis.control_unit.debounce import ContinuousTimer, Debounce, ripeness, stored_at
from analysis.control_unit.rules import HOLD_S, READING_EVERY_S, ControlUnit
from analysis.diagnosis.conformance import spans_beyond
from analysis.errors import ControlUnitError
from analysis.intervals import Interval
from analysis.progress import Tick, ignore, part
from analysis.signals.cells import Feed, reduce_record
from analysis.wording import Wording, say

DEFAULT_LIMIT_PERCENT = 9.02

DEFAULT_SOURCE = say(
    "limit and time of Honda Civic FC, trouble code P2135 (9.02 % for 0.5 s), published for the two tracks of"
    " a throttle; the same time before a code in HUMMER H2 2009, C0625/C0630. For two corners of an axle no"
    " figure is published: take the maker's"
)


_DEFAULT_DEBOUNCE = ContinuousTimer(HOLD_S)
_USUAL_FEED = Feed()


@dataclass(frozen=True, slots=True)
class Rule:
    """When a control unit takes two corners for implausible.

    Parameters
    ----------
    limit_percent : float
        Difference of travel beyond which it counts, in %.
        debounce : ContinuousTimer or UpDownCounter
        How long it must show before the code sets.
    tick_s : float
        Seconds between two readings of the control unit.
    level_percent : float
        Difference that counts as level: what was learnt at the height calibration.
    source : Wording or str
        Whose rule it is.

    Raises
    ------
        ControlUnitError
        Where the limit is not positive, or it reads faster or slower than any control unit.
    """

    limit_percent: float = DEFAULT_LIMIT_PERCENT
    debounce: Debounce = _DEFAULT_DEBOUNCE
    tick_s: float = READING_EVERY_S
    level_percent: float = 0.0
    source: str = DEFAULT_SOURCE

    def __post_init__(self) -> None:
        if not self.limit_percent > 0.0:
            raise ControlUnitError(
                say("the limit of the difference must be above 0 %, got {came:g} %", came=self.limit_percent),
                say("enter it in % of travel"),
            )
        ControlUnit(self.tick_s)  # knows how often a control unit may read

    def waits(self) -> Wording:
        """How long it waits, as words."""
        if isinstance(self.debounce, ContinuousTimer):
            return say("waits {hold_s:.2f} s", hold_s=self.debounce.hold_s)
        counter = {"up": self.debounce.up, "down": self.debounce.down, "limit": self.debounce.limit}
        return say("counts {up} up and {down} down to {limit}", **counter)


@dataclass(frozen=True, slots=True)
class Corner:
    """One of the two signals.

    Parameters
    ----------
    name : str
        Where it sits: ``"rear left"``.
    record : Record
        That holds it.
    role : Role
        `SIGNAL` or `SECOND_SIGNAL`.
    mirrored : bool
        Whether its travel runs from the other end.
    shift_s : float
        What is added to the record's own time, to lay two records on one clock.
    feed : Feed
        Stands in for a reference or ground that the record did not watch.
    """

    name: str
    record: Record
    role: Role = Role.SIGNAL
    mirrored: bool = False
    shift_s: float = 0.0
    feed: Feed = _USUAL_FEED


@dataclass(frozen=True, slots=True)
class Plausibility:
    """Two corners over the time that both cover.

    Parameters
    ----------
    rule : Rule
    names : pair of str
    time_s : ndarray, shape (n,)
        Uniformly spaced, on the first corner's clock.
    travel_percent : pair of ndarray, shape (n,)
        Each corner on the common axis, as the control unit reads it: break-ups included.
    difference_percent : ndarray, shape (n,)
        Second less first, less the level of the rule; NaN where either is missing.
    beyond : tuple of Interval
        When the difference was beyond the limit.
        stored_s : tuple of float
        When a control unit with the rule would have stored a fault.
    """

    rule: Rule
    names: tuple[str, str]
    time_s: NDArray[np.float64]
    travel_percent: tuple[NDArray[np.float64], NDArray[np.float64]]
    difference_percent: NDArray[np.float64]
    beyond: tuple[Interval, ...]
    stored_s: tuple[float, ...]

    @property
    def beyond_s(self) -> float:
        """Seconds beyond the limit, all together."""
        return sum(item.length for item in self.beyond)

    @property
    def longest_s(self) -> float:
        """The longest of them; 0 where there is none."""
        return max((item.length for item in self.beyond), default=0.0)

    @property
    def first_stored_s(self) -> float | None:
        """When the first fault would have been stored; None where none would."""
        return self.stored_s[0] if self.stored_s else None

    @property
    def median_percent(self) -> float:
        """Median difference, NaN where none is known; far from 0 it speaks for a link or the calibration."""
        known = self.difference_percent[np.isfinite(self.difference_percent)]
        return float(np.median(known)) if len(known) else float("nan")

    def summary(self) -> Wording:
        """What a control unit with this rule would have done, in plain words."""
        values = {"limit": self.rule.limit_percent, "waits": self.rule.waits()}
        first = {"one": self.names[0], "other": self.names[1]}
        if not len(self.time_s):
            return say("No stretch of time is shared by {one} and {other}: nothing can be compared.", **first)
        if not self.beyond:
            return say(
                "All the time {one} and {other} agree within {limit:.1f} % of travel.", **first, **values
            )
        counts = {"beyond_s": self.beyond_s, "longest_s": self.longest_s, "whole_s": self._whole_s}
        if self.first_stored_s is None:
            return say(
                "Between {one} and {other} the difference exceeds {limit:.1f} % of travel for"
                " {beyond_s:.2f} s of {whole_s:.1f} s, {longest_s:.2f} s at a time: too short for a"
                " control unit that {waits}, which would have stored no fault.",
                **first,
                **values,
                **counts,
            )
        return say(
            "Between {one} and {other} the difference exceeds {limit:.1f} % of travel for"
            " {beyond_s:.2f} s of {whole_s:.1f} s, {longest_s:.2f} s at a time: a control unit that {waits}"
            " would have stored a fault at {moment_s:.2f} s, which names both corners, whichever is bad.",
            moment_s=self.first_stored_s,
            **first,
            **values,
            **counts,
        )

    @property
    def _whole_s(self) -> float:
        step_s = float(self.time_s[1] - self.time_s[0]) if len(self.time_s) > 1 else 0.0
        return len(self.time_s) * step_s


def compare_corners(
    first: Corner, second: Corner, *, rule: Rule | None = None, tick: Tick = ignore
) -> Plausibility:
    """Set two corners against each other over the time that both cover.

    The two must be on one clock: two channels of one record, or two records of which one was shifted so that
    their first movements meet. Two recorders' clocks drift apart by some milliseconds a minute (common
    practice, no source), little beside the times of a control unit.

    Parameters
    ----------
    first, second : Corner
    rule : Rule or None
        The published default where None.
    tick : Tick
        Told of progress; may raise `Cancelled`.

    Returns
    -------
    Plausibility
        With empty arrays where the two share no time.

    Raises
    ------
    CaptureError
        Where the file is damaged or gone.
    ValueError
        Where a record does not hold the corner's signal.
    Cancelled
        Where `tick` says so.
    """
    rule = rule or Rule()
    one, two = _read(first, part(tick, 0.0, 0.5)), _read(second, part(tick, 0.5, 1.0))
    step_s = max(one[1], two[1])
    start_s, stop_s = max(one[0][0], two[0][0]), min(one[0][-1], two[0][-1])
    count = max(int((stop_s - start_s) / step_s + 1e-9) + 1, 0) if stop_s >= start_s else 0
    time_s = start_s + step_s * np.arange(count)
    travel = (_at(time_s, one), _at(time_s, two))
    difference = travel[1] - travel[0] - rule.level_percent
    limits = {"lower": -rule.limit_percent, "upper": rule.limit_percent}
    clock = {"sample_interval_s": step_s, "first_sample_s": start_s - 0.5 * step_s}
    return Plausibility(
        rule=rule,
        names=(first.name, second.name),
        time_s=time_s,
        travel_percent=travel,
        difference_percent=difference,
        beyond=_plain(spans_beyond(difference, **limits, **clock)),
        stored_s=_stored_s(time_s, difference, step_s, rule),
    )


_Series = tuple[NDArray[np.float64], float, NDArray[np.float64]]


def _read(corner: Corner, tick: Tick) -> _Series:
    """Time, length of a cell, and travel of a corner; cells of half a millisecond in a short record."""
    if corner.record.channel(corner.role) is None or not len(corner.record):
        raise ValueError(f"record {corner.record.name!r} holds no samples of the {corner.role.value}")
    cells = reduce_record(corner.record, corner.feed, tick=tick)
    travel = cells.travel[corner.role].mean.astype(np.float64)
    return cells.time_s + corner.shift_s, cells.cell_s, 100.0 - travel if corner.mirrored else travel


def _at(time_s: NDArray[np.float64], series: _Series) -> NDArray[np.float64]:
    """Travel at some times, from the nearest cell: between a sound cell and a broken-up one is no third."""
    own_s, cell_s, travel = series
    index = np.rint((time_s - own_s[0]) / cell_s).astype(np.int64) if len(time_s) else np.empty(0, np.int64)
    return np.asarray(travel[np.clip(index, 0, len(travel) - 1)])


def _plain(spans: tuple[Interval, ...]) -> tuple[Interval, ...]:
    """The same in Python's own numbers."""
    return tuple(Interval(float(item.start), float(item.stop)) for item in spans)


def _stored_s(
    time_s: NDArray[np.float64], difference: NDArray[np.float64], step_s: float, rule: Rule
) -> tuple[float, ...]:
    """When the rule would have stored a fault: it looks once a `tick_s`, and a gap breaks no rule."""
    stride = max(round(rule.tick_s / step_s), 1)
    failed = np.abs(difference[::stride]) > rule.limit_percent
    stored = stored_at(ripeness(failed, rule.debounce, tick_s=stride * step_s))
    return tuple(float(item) for item in time_s[::stride][stored])
