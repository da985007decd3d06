"""Readings against limits: each with its uncertainty (JCGM 100) and a decision (JCGM 106).

A check is a function from `Studies` to the checks it makes; `run_checks` calls them in turn. To add one,
write the function and put it into `CHECKS`.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import replace

import numpy as np
from numpy.typing import NDArray

from analysis.captures.model import Role, Step
from analysis.diagnosis.checks_tracks import track_agreement
from analysis.diagnosis.checks_travel import end_voltages, hysteresis_check, linearity_checks
from analysis.diagnosis.checks_zero import zero_check
from analysis.diagnosis.findings import Check, Result
from analysis.diagnosis.judging import (
    decided,
    departure_of,
    feed_of,
    level_uncertainty,
    reading_of,
    unplugged,
)
from analysis.diagnosis.profile_model import Limit
from analysis.diagnosis.stillness import CONDITIONS, left_alone
from analysis.diagnosis.studies import Studies, Study, moved_far
from analysis.signals.cells import Feed
from analysis.signals.motion import Motion
from analysis.signals.several import Share, result_uncertainty
from analysis.signals.uncertainty import combined, expanded, standard_uncertainty
from analysis.wording import Template, say

STEADY_LIMIT_V = 0.1
"""A wiggled ground or reference may move by this much; common practice, no source."""

LASTING_S = 0.004
"""A spark with all its ringing is over in this time (common practice, no source)."""

SLOWEST_HZ = 250.0
"""Four samples in the 16 ms that a fast stroke takes over a band of 3 % of travel."""

NOT_WHERE_IT_RESTS = (Step.UNPLUGGED, Step.HOLD)
"""Steps at rest in which the signal need not stand as it usually does; a hold may be in the bad spot."""

OURS = say("this program")
COMMON_PRACTICE = say("common practice, no source")


def run_checks(studies: Studies) -> tuple[Check, ...]:
    """Make every check that the capture allows, in the order of the chain of evidence."""
    return tuple(check for make in CHECKS for check in make(studies))


SIGNAL_RANGE = "signal_range"
"""Code of the check of the signal's outermost level."""


def _levels(item: Study, role: Role) -> NDArray[np.float64]:
    """Medians of tenths of a record, in volts; empty where the channel holds nothing."""
    mean = item.cells.volts[role].mean
    known = mean[np.isfinite(mean)]
    if not len(known):
        return np.empty(0)
    return np.array([float(np.median(part)) for part in np.array_split(known, min(10, len(known)))])


def _probed(studies: Studies, role: Role, step: Step) -> Iterator[Study]:
    """Records in which a wire was probed: those taken for it, or else all that hold it."""
    holding = [item for item in studies.with_channel(role) if item.record.step is not Step.UNPLUGGED]
    own = [item for item in holding if item.record.step is step]
    return iter(own or holding)


def _ground_drop(studies: Studies) -> Iterator[Check]:
    limit = studies.profile.limit("ground_drop")
    worst: Check | None = None
    for item in studies.with_channel(Role.GROUND):
        levels, channel = _levels(item, Role.GROUND), item.record.channel(Role.GROUND)
        if limit is None or channel is None or not len(levels) or item.record.step is Step.UNPLUGGED:
            continue
        value = float(levels[np.argmax(np.abs(levels))])
        made = decided(
            "ground_drop",
            say("Sensor ground, unplugged") if unplugged(item.record) else say("Sensor ground"),
            item.record.name,
            value,
            level_uncertainty(channel, value),
            "V",
            limit,
        )
        if worst is None or abs(value) > abs(worst.value) + 0.01:
            worst = made
    if worst is not None:
        yield worst


def _reference_level(studies: Studies) -> Iterator[Check]:
    limit = studies.profile.limit("reference_level")
    if limit is None or limit.lower is None or limit.upper is None:
        return
    middle = 0.5 * (limit.lower + limit.upper)
    made = []
    for item in _probed(studies, Role.REFERENCE, Step.REFERENCE):
        levels, channel = _levels(item, Role.REFERENCE), item.record.channel(Role.REFERENCE)
        if channel is None or not len(levels):
            continue
        value = float(levels[np.argmax(np.abs(levels - middle))])
        spread = level_uncertainty(channel, value)
        made.append(decided("reference_level", say("Reference"), item.record.name, value, spread, "V", limit))
    if made:
        yield max(made, key=lambda check: abs(check.value - middle))


def _steadiness(studies: Studies) -> Iterator[Check]:
    for role in _STEADINESS:
        made = [
            steadiness_check(item, role)
            for item in studies.with_channel(role)
            if item.record.step is not Step.UNPLUGGED
        ]
        if made:
            yield max(made, key=lambda check: check.value)


_STEADINESS = {
    Role.GROUND: ("ground_steadiness", say("Ground, steadiness")),
    Role.REFERENCE: ("reference_steadiness", say("Reference, steadiness")),
}


def steadiness_check(item: Study, role: Role) -> Check:
    """How far ground or reference moves in one record, which holds it, against `STEADY_LIMIT_V`."""
    limit = Limit(None, STEADY_LIMIT_V, "V", COMMON_PRACTICE)
    code, title = _STEADINESS[role]
    value, unsure = _largest_lasting(item, role)
    return decided(code, title, item.record.name, value, unsure, "V", limit)


def _largest_lasting(item: Study, role: Role) -> tuple[float, float]:
    """Largest departure of this wire alone that lasts `LASTING_S`, and its expanded uncertainty, in volts.

    Shorter ones are interference, and what ground and reference do together is no fault of either. Where the
    other wire took something away, its reading is part of the result; a wire that is alone moves no more
    than it moves at all.
    """
    partner = Role.REFERENCE if role is Role.GROUND else Role.GROUND
    own, other = item.steady[role], item.steady.get(partner)
    cells = max(2, round(LASTING_S / item.cells.cell_s))
    value = whole = _lasting_v(own.departure_v, cells)
    shares: tuple[Share, ...] = ()
    if other is not None:
        value = _lasting_v(np.maximum(own.departure_v - other.departure_v, np.float32(0.0)), cells)
        if whole - value > 2.0 * other.noise_v:
            shares = departure_of(item, partner, whole - value, sensitivity=-1.0, spread_v=other.noise_v)
    shares = (*departure_of(item, role, whole if shares else value, spread_v=own.noise_v), *shares)
    return value, result_uncertainty(shares)


def _lasting_v(departure_v: NDArray[np.float32], cells: int) -> float:
    """Largest departure that so many cells in a row have."""
    if len(departure_v) < cells:
        return float(departure_v.max(initial=0.0))
    rows = [departure_v[k : len(departure_v) - cells + 1 + k] for k in range(cells)]
    return float(np.minimum.reduce(rows).max(initial=0.0))


def _rest_variation(studies: Studies) -> Iterator[Check]:
    limit = studies.profile.limit("rest_variation")
    for item in studies.every:
        if limit is None or Role.SIGNAL not in item.cells.volts or not _at_rest(item):
            continue
        series = item.cells.volts[Role.SIGNAL]
        middle = float(np.nanmedian(series.mean))
        away = np.array([np.nanmin(series.mean), np.nanmax(series.mean)]) - middle
        value = float(away[np.argmax(np.abs(away))])
        unsure = result_uncertainty(departure_of(item, Role.SIGNAL, value))
        title = say("Signal change at rest")
        yield decided("rest_variation", title, item.record.name, value, unsure, "V", limit)


def _at_rest(item: Study) -> bool:
    """Whether the arm stood where it usually does, and was not swept while the sensor was warm, say."""
    if not left_alone(item.record) or item.record.step in NOT_WHERE_IT_RESTS:
        return False
    survey = item.surveys.get(Role.SIGNAL)
    return item.record.step not in CONDITIONS or survey is None or not moved_far(survey.motion)


def _signal_range(studies: Studies) -> Iterator[Check]:
    limit = studies.profile.limit(SIGNAL_RANGE)
    for item in studies.every:
        survey = item.surveys.get(Role.SIGNAL)
        if limit is None or survey is None or not survey.motion.truthful.any():
            continue
        feed_v = studies.feed.whole_travel_v
        volts = survey.motion.travel_percent[survey.motion.truthful] * feed_v / 100.0
        ends = np.percentile(volts, [1.0, 99.0])
        middle = 0.5 * ((limit.lower or 0.0) + (limit.upper or feed_v))
        value = float(ends[np.argmax(np.abs(ends - middle))])
        signal = reading_of(item, Role.SIGNAL, value + studies.feed.ground_v)
        unsure = result_uncertainty((*signal, *feed_of(studies, item, Role.GROUND, sensitivity=-1.0)))
        title = say("Outermost level of the signal while it follows the arm")
        check = decided(SIGNAL_RANGE, title, item.record.name, value, unsure, "V", limit)
        if item.swept or check.result is not Result.PASS:
            yield replace(check, note=_broken_away(survey.motion, studies.feed, limit))


_AWAY = {
    (True, False): Template("It breaks away from the arm, down to {low_v:.2f} V; that is not judged here."),
    (False, True): Template("It breaks away from the arm, up to {high_v:.2f} V; that is not judged here."),
    (True, True): Template(
        "It breaks away from the arm, down to {low_v:.2f} V and up to {high_v:.2f} V;"
        " that is not judged here."
    ),
}


def _broken_away(motion: Motion, feed: Feed, limit: Limit) -> str:
    """What the level leaves out: how far beyond the limits the signal goes where it does not follow the arm.

    The limits hold against sensor ground; the words give the volts that were read, as Trace shows them.
    """
    left_out = ~motion.truthful
    travel = motion.travel_percent[left_out]
    low_v = _extreme(np.fmin, travel - motion.below[left_out]) * feed.whole_travel_v / 100.0
    high_v = _extreme(np.fmax, travel + motion.above[left_out]) * feed.whole_travel_v / 100.0
    low, high = _beyond(low_v, limit.lower, -1.0), _beyond(high_v, limit.upper, 1.0)
    if not low and not high:
        return ""
    return _AWAY[low, high](low_v=low_v + feed.ground_v, high_v=high_v + feed.ground_v)


def _extreme(pick: np.ufunc, percent: NDArray[np.float32]) -> float:
    """Least or largest of some travel; NaN where none is known."""
    return float(pick.reduce(percent)) if len(percent) else float("nan")


def _beyond(level_v: float, limit_v: float | None, side: float) -> bool:
    return limit_v is not None and side * (level_v - limit_v) > 0.0


def _output_smoothness(studies: Studies) -> Iterator[Check]:
    limit = studies.profile.limit("output_smoothness")
    for role, survey in studies.tracks.items():
        if limit is None or not survey.breakup_percent.size or np.isnan(survey.breakup_percent).all():
            continue
        worst = float(np.nanmax(survey.breakup_percent))
        row = int(np.nanargmax(np.nanmax(np.nan_to_num(survey.breakup_percent), axis=1)))
        title = say("Output smoothness") if role is Role.SIGNAL else say("Output smoothness, second track")
        record = survey.crossings[row].record
        unsure = combined(survey.floor_percent, worst * _gain_share(studies, record, role))
        yield decided("output_smoothness", title, record, worst, unsure, "%", limit)


def _gain_share(studies: Studies, record: str, role: Role) -> float:
    """Expanded relative uncertainty of a share of the feed, by the gain errors of signal and reference."""
    item = next(item for item in studies.every if item.record.name == record)
    channels = [item.record.channel(wanted) for wanted in (role, Role.REFERENCE)]
    gains = [channel.gain_error or 0.0 for channel in channels if channel is not None]
    return expanded(combined(*(standard_uncertainty(gain, distribution="rectangular") for gain in gains)))


def _sampling(studies: Studies) -> Iterator[Check]:
    swept = [item for item in studies.swept if item.surveys]
    if not swept:
        return
    slowest = max(swept, key=lambda item: item.record.sample_interval_s)
    unit = say("samples/s")
    limit = Limit(SLOWEST_HZ, None, unit, OURS)
    rate = 1.0 / slowest.record.sample_interval_s
    yield decided("sample_rate", say("Sampling"), slowest.record.name, rate, 0.0, unit, limit)


CHECKS: tuple[Callable[[Studies], Iterator[Check]], ...] = (
    zero_check,
    _ground_drop,
    _reference_level,
    _steadiness,
    _rest_variation,
    _signal_range,
    end_voltages,
    track_agreement,
    linearity_checks,
    hysteresis_check,
    _output_smoothness,
    _sampling,
)
