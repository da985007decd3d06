"""A recorded signal run through a control unit: which fault would have been stored, and when.

The control unit is given the recorded volts, one reading a tick, as its own input would have seen them; what
its input filter would have smoothed is not known and not smoothed. For a side-to-side comparison the other
side's signal is needed. It is seldom in the same record, so a stand-in may be handed over: what a sound
sensor on the same arm would have read, which takes it that both wheels moved alike.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from analysis.captures.model import Channel, Record
from analysis.control_unit.debounce import Flags, Floats, ripeness, stored_at
from analysis.control_unit.rules import ComparisonRule, ControlUnit, RangeRule, RateRule, RuleKind
from analysis.errors import ControlUnitError
from analysis.progress import Tick, ignore
from analysis.wording import say

Places = NDArray[np.int64]

_STRETCH = 1 << 20  # samples read at a time: 8 MB of volts


@dataclass(frozen=True, slots=True)
class Readings:
    """What the control unit read.

    Parameters
    ----------
    time_s : ndarray, shape (n,)
        In the record's own time.
    signal_v : ndarray, shape (n,)
        NaN where the recording has a gap; a gap breaks no rule.
    other_v : ndarray, shape (n,), or None
        The signal to compare with, or what stands in for it; None where there is none.
    """

    time_s: Floats
    signal_v: Floats
    other_v: Floats | None = None


@dataclass(frozen=True, slots=True)
class RuleReplay:
    """One rule over one record.

    Parameters
    ----------
    kind : RuleKind
        What it looks at.
    failed : ndarray of bool, shape (n,)
        Readings that break it.
    ripe : ndarray, shape (n,)
        How far the fault had ripened, 0 to 1.
    stored_s : tuple of float
        When a fault was stored, in the record's time.
    source : str
        Whose rule it is.
    """

    kind: RuleKind
    failed: Flags
    ripe: Floats
    stored_s: tuple[float, ...]
    source: str

    @property
    def longest_share(self) -> float:
        """How near it came to storing, 0 to 1; 0 for no readings."""
        return float(self.ripe.max()) if self.ripe.size else 0.0


@dataclass(frozen=True, slots=True)
class Replay:
    """What a control unit would have made of one record.

    Parameters
    ----------
    record : str
        Name of the record.
    readings : Readings
        What it read.
    rules : tuple of RuleReplay
        One for each rule that could be tried; a comparison without another signal is left out.
    modelled : bool
        Whether the signal that was compared with is a stand-in, and was not recorded.
    """

    record: str
    readings: Readings
    rules: tuple[RuleReplay, ...]
    modelled: bool = False

    @property
    def first(self) -> tuple[RuleKind, float] | None:
        """The fault stored first, and when; None where none was."""
        found = [(item.stored_s[0], item.kind) for item in self.rules if item.stored_s]
        return (min(found)[1], min(found)[0]) if found else None


def replay(
    record: Record,
    channel: Channel,
    unit: ControlUnit,
    *,
    other: Channel | None = None,
    stand_in_v: tuple[Floats, Floats] | None = None,
    tick: Tick = ignore,
) -> Replay:
    """Run one record through a control unit.

    Parameters
    ----------
    record : Record
        With `channel` among its channels.
    channel : Channel
        The signal.
    unit : ControlUnit
        How often it reads, and its rules.
    other : Channel or None
        The signal to compare with, of the same record.
    stand_in_v : tuple of two ndarrays, or None
        Times in seconds, ascending, and volts that this signal should have read, where `other` is None;
        outside the times there is no comparison.
    tick : Tick
        Told of progress; may raise `Cancelled`.

    Returns
    -------
    Replay

    Raises
    ------
    ControlUnitError
        Where the record is slower than the control unit, so that nothing can be said.
    CaptureError
        Where the file is damaged or gone.
    """
    if len(record) and record.sample_interval_s > unit.tick_s:
        raise ControlUnitError(
            say(
                "the record has a sample every {sample_ms:.3g} ms, and the control unit reads every"
                " {reading_ms:.3g} ms",
                sample_ms=1e3 * record.sample_interval_s,
                reading_ms=1e3 * unit.tick_s,
            ),
            say("choose a control unit that reads no faster than the record"),
        )
    picked = _picked(record, unit.tick_s)
    time_s = record.first_sample_s + record.sample_interval_s * picked.astype(np.float64)
    signal_v = _volts(channel, picked, tick)
    expected_v = _expected(unit.comparison_rule, picked, time_s, other, stand_in_v)
    readings = Readings(time_s, signal_v, expected_v)
    return Replay(record.name, readings, rules_on(readings, unit), other is None and expected_v is not None)


def rules_on(readings: Readings, unit: ControlUnit) -> tuple[RuleReplay, ...]:
    """Every rule that can be tried on these readings."""
    made = []
    for kind, rule in unit.rules:
        failed = _failed(rule, readings, unit.tick_s)
        if failed is not None:
            ripe = ripeness(failed, rule.debounce, tick_s=unit.tick_s)
            times = tuple(float(item) for item in readings.time_s[stored_at(ripe)])
            made.append(RuleReplay(kind, failed, ripe, times, rule.source))
    return tuple(made)


def out_of_range(signal_v: Floats, rule: RangeRule) -> Flags:
    """Readings beyond the limits, same shape; a gap (NaN) is not."""
    return (signal_v < rule.limits_v.start) | (signal_v > rule.limits_v.stop)


def _failed(rule: RangeRule | RateRule | ComparisonRule, readings: Readings, tick_s: float) -> Flags | None:
    if isinstance(rule, RangeRule):
        return out_of_range(readings.signal_v, rule)
    if isinstance(rule, RateRule):
        change_v = np.abs(np.diff(readings.signal_v, prepend=readings.signal_v[:1]))
        return change_v > rule.limit_v_per_s * tick_s
    if readings.other_v is None:
        return None
    return np.abs(readings.signal_v - readings.other_v) > rule.tolerance_v


def _picked(record: Record, tick_s: float) -> Places:
    """Samples that the control unit reads, shape (n,)."""
    if len(record) == 0:
        return np.empty(0, dtype=np.int64)
    count = int(np.floor((len(record) - 1) * record.sample_interval_s / tick_s + 1e-9)) + 1
    index = np.rint(np.arange(count) * (tick_s / record.sample_interval_s)).astype(np.int64)
    return np.asarray(np.minimum(index, len(record) - 1), dtype=np.int64)


def _volts(channel: Channel, picked: Places, tick: Tick) -> Floats:
    """The picked samples in volts, read stretch by stretch so that a long record needs little memory."""
    volts_v = np.empty(picked.shape[0])
    for start in range(0, len(channel), _STRETCH):
        stop = min(start + _STRETCH, len(channel))
        own = slice(*np.searchsorted(picked, (start, stop)))
        if own.stop > own.start:
            volts_v[own] = channel.volts(start, stop)[picked[own] - start]
        tick(stop / len(channel))
    return volts_v


def _expected(
    rule: ComparisonRule | None,
    picked: Places,
    time_s: Floats,
    other: Channel | None,
    stand_in_v: tuple[Floats, Floats] | None,
) -> Floats | None:
    if rule is None:
        return None
    if other is not None:
        return rule.factor * _volts(other, picked, ignore) + rule.offset_v
    if stand_in_v is None or stand_in_v[0].size == 0:
        return None
    return np.interp(time_s, *stand_in_v, left=np.nan, right=np.nan)
