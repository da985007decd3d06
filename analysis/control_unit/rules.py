"""The rules by which a control unit calls a signal faulty, and the defaults, each with its source."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from analysis.captures.model import Role
from analysis.control_unit.debounce import ContinuousTimer, Debounce
from analysis.diagnosis.profile_model import SensorProfile
from analysis.errors import ControlUnitError
from analysis.intervals import Interval
from analysis.wording import joined, say

SENSIBLE_TICKS_S = Interval(0.0005, 2.0)
"""A control unit reads no faster and no slower than this (our own bounds)."""


class RuleKind(StrEnum):
    """What a rule looks at."""

    RANGE = "range"
    RATE = "rate"
    COMPARISON = "comparison"


@dataclass(frozen=True, slots=True)
class RangeRule:
    """The signal must stay within two limits.

    Parameters
    ----------
    limits_v : Interval
        Below the first or above the second is bad; a reading on a limit is good ("less than 0.25 volt").
    debounce : ContinuousTimer or UpDownCounter
        How long it must show.
    source : str
        Whose rule it is.
    """

    limits_v: Interval
    debounce: Debounce
    source: str


@dataclass(frozen=True, slots=True)
class RateRule:
    """The signal must not jump.

    Parameters
    ----------
    limit_v_per_s : float
        Largest change a second, from one reading to the next.
    debounce : ContinuousTimer or UpDownCounter
        How long it must show.
    source : str
        Whose rule it is.
    """

    limit_v_per_s: float
    debounce: Debounce
    source: str

    def __post_init__(self) -> None:
        if not self.limit_v_per_s > 0.0:
            raise ControlUnitError(
                say("the fastest change must be above 0 V/s, got {came:g}", came=self.limit_v_per_s),
                say("enter it in V/s"),
            )


@dataclass(frozen=True, slots=True)
class ComparisonRule:
    """The signal must agree with another: the sensor of the other side, or the second track.

    The control unit sees that the two disagree, not which of them is wrong, so it names both.

    Parameters
    ----------
    tolerance_v : float
        Largest disagreement.
    debounce : ContinuousTimer or UpDownCounter
        How long it must show.
    source : str
        Whose rule it is.
    factor, offset_v : float
        The other signal, turned into what this one should read: ``factor * other + offset_v``; -1 and the
        supply for a mirrored side.
    """

    tolerance_v: float
    debounce: Debounce
    source: str
    factor: float = 1.0
    offset_v: float = 0.0

    def __post_init__(self) -> None:
        if not self.tolerance_v > 0.0:
            raise ControlUnitError(
                say("the largest disagreement must be above 0 V, got {came:g}", came=self.tolerance_v),
                say("enter it in volts"),
            )


@dataclass(frozen=True, slots=True)
class ControlUnit:
    """A control unit with its rules; a rule that it does not have is None.

    Parameters
    ----------
    tick_s : float
        Seconds between readings.
    range_rule, rate_rule, comparison_rule : rule or None
        What it looks at.
    tick_source : str
        Who says that it reads so often.

    Raises
    ------
    ControlUnitError
        Where it reads faster or slower than any.
    """

    tick_s: float
    range_rule: RangeRule | None = None
    rate_rule: RateRule | None = None
    comparison_rule: ComparisonRule | None = None
    tick_source: str = ""

    def __post_init__(self) -> None:
        if not SENSIBLE_TICKS_S.start <= self.tick_s <= SENSIBLE_TICKS_S.stop:
            raise ControlUnitError(
                say(
                    "a control unit reads every {least_ms:g} to {most_ms:g} ms, got {came_ms:g} ms",
                    least_ms=1e3 * SENSIBLE_TICKS_S.start,
                    most_ms=1e3 * SENSIBLE_TICKS_S.stop,
                    came_ms=1e3 * self.tick_s,
                ),
                say("enter the time between two readings"),
            )

    @property
    def rules(self) -> tuple[tuple[RuleKind, RangeRule | RateRule | ComparisonRule], ...]:
        """The rules that it has."""
        every = (
            (RuleKind.RANGE, self.range_rule),
            (RuleKind.RATE, self.rate_rule),
            (RuleKind.COMPARISON, self.comparison_rule),
        )
        return tuple((kind, rule) for kind, rule in every if rule is not None)


READING_EVERY_S = 0.050
READING_SOURCE = say("Saab 9-7X 2009, DTC 002: read at 50 ms intervals")
HOLD_S = 0.5
HOLD_SOURCE = say("HUMMER H2 2009, DTC C0625 or C0630: for more than 500 ms")
SIDES_SOURCE = say(
    "HUMMER H2 2009, DTC C0625 or C0630, without figures; 1 V and 2 s: common practice, no source"
)
SIDES = ComparisonRule(1.0, ContinuousTimer(2.0), SIDES_SOURCE)
"""Side against side, where the other side's signal reads the same way."""

RATE = RateRule(40.0, ContinuousTimer(0.2), say("common practice, no source"))
"""A rate rule to start from; a control unit has it only where somebody says so: no published one was found.

40 V/s is 2 V from one reading to the next: more than a wheel does on any road that is driven for pleasure.
"""


def control_unit_for(profile: SensorProfile) -> ControlUnit:
    """The control unit that a profile describes, the rest filled in with the defaults.

    Parameters
    ----------
    profile : SensorProfile
        Its limits of the signal, and how its second track follows the first.

    Returns
    -------
    ControlUnit
        Without a range rule where the profile states no range.
    """
    return ControlUnit(
        READING_EVERY_S, _range_rule(profile), None, _comparison_rule(profile), tick_source=READING_SOURCE
    )


def _range_rule(profile: SensorProfile) -> RangeRule | None:
    limit = profile.limit("signal_range")
    if limit is None or (limit.lower is None and limit.upper is None):
        track = profile.tracks.get(Role.SIGNAL)
        if track is None:
            return None
        return RangeRule(track.valid_v, ContinuousTimer(HOLD_S), joined([track.source, HOLD_SOURCE], "; "))
    lower = limit.lower if limit.lower is not None else float("-inf")
    upper = limit.upper if limit.upper is not None else float("inf")
    hold_s, source = (limit.hold_s, limit.source) if limit.hold_s > 0.0 else (HOLD_S, HOLD_SOURCE)
    return RangeRule(Interval(lower, upper), ContinuousTimer(hold_s), source)


def _comparison_rule(profile: SensorProfile) -> ComparisonRule | None:
    """Of two tracks of one sensor, as their profile says; first from second."""
    pair = profile.second_track
    if pair is None:
        return None
    return ComparisonRule(
        pair.tolerance_v / abs(pair.factor),
        ContinuousTimer(pair.hold_s),
        pair.source,
        factor=1.0 / pair.factor,
        offset_v=-pair.offset_v / pair.factor,
    )
