"""What the band does to a reading, measured: how often it breaks a rule, and how long at a stretch.

While the arm moves, that is measured on the band's own crossings; while it stands, on records that were held
inside the band. Runs that a crossing cuts short are counted as cut short: the mean run is the time that the
rule was broken for each time that it was kept again (the maximum-likelihood mean of exponential runs).
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

import numpy as np

from analysis.captures.model import Capture, Channel, Record, Step
from analysis.control_unit.debounce import Flags, Floats
from analysis.control_unit.replay import out_of_range
from analysis.control_unit.rules import ComparisonRule, ControlUnit, RangeRule, RateRule, RuleKind
from analysis.diagnosis.findings import Band, Findings
from analysis.intervals import Interval

_HELD_S = 60.0  # a hold says no more after a minute
_NEVER_ENDED = 0.5  # ends taken for a run that was never seen to end: it may be twice as long as seen


@dataclass(frozen=True, slots=True)
class Contact:
    """How the band breaks one rule.

    Parameters
    ----------
    kind : RuleKind
        Which rule.
    share : float
        Of the time in the band that a reading breaks it, 0 to 1.
    mean_run_s : float
        How long it stays broken at a stretch; 0 where it never was.
    measured_s : float
        Time in the band that was measured; 0 where nothing was.
    """

    kind: RuleKind
    share: float
    mean_run_s: float
    measured_s: float


@dataclass(frozen=True, slots=True)
class BandContact:
    """What was measured of a band, rule by rule, moving and standing.

    Parameters
    ----------
    moving, standing : tuple of Contact
        One for each rule of the control unit. Where no record was held in the band, standing is as moving.
    crossings : int
        That moving was measured on.
    held : tuple of str
        Records that standing was measured on; empty where it was not.
    """

    moving: tuple[Contact, ...]
    standing: tuple[Contact, ...]
    crossings: int
    held: tuple[str, ...]

    def of(self, kind: RuleKind, *, standing: bool = False) -> Contact:
        """How one rule is broken; never, where the control unit has no such rule."""
        every = self.standing if standing else self.moving
        return next((item for item in every if item.kind is kind), Contact(kind, 0.0, 0.0, 0.0))


def measure_contact(capture: Capture, findings: Findings, band: Band, unit: ControlUnit) -> BandContact:
    """Measure how a band breaks the rules of a control unit.

    Parameters
    ----------
    capture : Capture
        That `findings` speak of; only the crossings and the holds are read.
    findings : Findings
        For the arm's paths.
    band : Band
        One of `findings`.
    unit : ControlUnit
        Whose rules.

    Returns
    -------
    BandContact

    Raises
    ------
    CaptureError
        Where the file is damaged or gone.
    """
    moving = [_piece(capture, findings, band, item.record, item.time, unit) for item in band.crossings]
    held = [record for record in capture.records if _held_in(record, band)]
    still = [_still_piece(record, band, unit) for record in held]
    kinds = [kind for kind, _ in unit.rules]
    crossed = tuple(_pooled(kind, moving) for kind in kinds)
    stood = tuple(_pooled(kind, still) for kind in kinds) if held else crossed
    return BandContact(crossed, stood, len(band.crossings), tuple(record.name for record in held))


@dataclass(frozen=True, slots=True)
class _Piece:
    """Which samples of a stretch in the band break which rule."""

    interval_s: float
    failed: dict[RuleKind, Flags]


def _piece(
    capture: Capture, findings: Findings, band: Band, name: str, time: Interval, unit: ControlUnit
) -> _Piece:
    record = capture.record(name)
    channel = record.channel(band.track)
    survey = next((item for item in findings.surveys if item.role is band.track), None)
    path = survey.path(name) if survey is not None else None
    if channel is None or path is None:
        return _Piece(record.sample_interval_s, {})
    start, stop = record.index_at(time.start), record.index_at(time.stop)
    travel = np.interp(record.time_s(start, stop), path.time_s, path.travel_percent)
    expected_v = np.interp(travel, *_ends(band))
    return _Piece(record.sample_interval_s, _broken(channel, record, start, stop, expected_v, unit))


def _still_piece(record: Record, band: Band, unit: ControlUnit) -> _Piece:
    """A hold: the arm stands where the signal is most of the time."""
    channel = record.channel(band.track)
    if channel is None:
        return _Piece(record.sample_interval_s, {})
    stop = min(len(channel), round(_HELD_S / record.sample_interval_s))
    usual_v = float(np.nanmedian(channel.volts(0, stop)))
    expected_v = np.full(stop, usual_v)
    return _Piece(record.sample_interval_s, _broken(channel, record, 0, stop, expected_v, unit))


def _ends(band: Band) -> tuple[list[float], list[float]]:
    return [band.travel.start, band.travel.stop], [band.volts.start, band.volts.stop]


def _held_in(record: Record, band: Band) -> bool:
    channel = record.channel(band.track)
    if record.step is not Step.HOLD or channel is None or len(channel) == 0:
        return False
    volts_v = channel.volts(0, min(len(channel), round(_HELD_S / record.sample_interval_s)))
    known = volts_v[np.isfinite(volts_v)]
    low_v, high_v = sorted((band.volts.start, band.volts.stop))
    return known.size > 0 and bool(low_v <= np.median(known) <= high_v)


def _broken(
    channel: Channel, record: Record, start: int, stop: int, expected_v: Floats, unit: ControlUnit
) -> dict[RuleKind, Flags]:
    apart = max(round(unit.tick_s / record.sample_interval_s), 1)
    before = min(apart, start)
    volts_v = channel.volts(start - before, stop)
    inside_v, found = volts_v[before:], {}
    for kind, rule in unit.rules:
        if isinstance(rule, RangeRule):
            found[kind] = out_of_range(inside_v, rule)
        elif isinstance(rule, ComparisonRule):
            found[kind] = np.abs(inside_v - expected_v) > rule.tolerance_v
        elif isinstance(rule, RateRule):
            jumps_v = np.abs(volts_v[apart:] - volts_v[:-apart]) if volts_v.shape[0] > apart else volts_v[:0]
            padded_v = np.concatenate([np.zeros(max(inside_v.shape[0] - jumps_v.shape[0], 0)), jumps_v])
            found[kind] = padded_v[-inside_v.shape[0] :] > rule.limit_v_per_s * unit.tick_s
    return found


def _pooled(kind: RuleKind, pieces: list[_Piece]) -> Contact:
    measured_s = broken_s = 0.0
    ends = 0
    for interval_s, failed in _of_kind(kind, pieces):
        measured_s += interval_s * failed.shape[0]
        broken_s += interval_s * int(np.count_nonzero(failed))
        ends += int(np.count_nonzero(failed[:-1] & ~failed[1:]))
    if broken_s == 0.0:
        return Contact(kind, 0.0, 0.0, measured_s)
    return Contact(kind, broken_s / measured_s, broken_s / max(ends, _NEVER_ENDED), measured_s)


def _of_kind(kind: RuleKind, pieces: list[_Piece]) -> Iterator[tuple[float, Flags]]:
    return ((item.interval_s, item.failed[kind]) for item in pieces if kind in item.failed)
