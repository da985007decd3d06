"""Checks that need the arm to have moved: end voltages and span, linearity, play between the directions."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

import numpy as np
from numpy.typing import NDArray

from analysis.captures.model import Role
from analysis.diagnosis.findings import Check, Direction, Result
from analysis.diagnosis.judging import decided, feed_of, reading_of
from analysis.diagnosis.position_reference import PositionReference, position_reference
from analysis.diagnosis.profile_model import Limit
from analysis.diagnosis.studies import Studies, Study
from analysis.signals.linearity import (
    Hysteresis,
    hysteresis,
    independent_linearity,
    terminal_based_linearity,
)
from analysis.signals.several import result_uncertainty
from analysis.signals.uncertainty import combined, expanded, standard_uncertainty
from analysis.wording import Wording, say

STOP_PERCENT = 0.5
"""Strokes that end this close to one another met a stop: the end voltage of a conductive plastic track is
within 0.5 % (Bourns 6657 data sheet)."""

LEAST_STOPPED = 2
"""Strokes that must end there; a hand that turns round before the stop seldom does so twice at one place."""

LINEAR_PERCENT = 1.0
"""Independent linearity of a conductive plastic track (Bourns 6657 data sheet); two tracks differ by no more
than both."""

BACKLASH_PERCENT = 0.147
"""0.5 degrees of 340: backlash allowed at a linearity of 1 % (A-A-52176, 3.22, Table VII)."""


def end_voltages(studies: Studies) -> Iterator[Check]:
    """Volts at both ends of the sweeps and between them, where the profile limits them.

    An end that no stop shows is not held against the sensor: the arm may not have got there. Only a reading
    beyond the limit that lies away from the travel is then a failure.
    """
    ends = {side: _ends(studies, side) for side in (Direction.DOWN, Direction.UP)}
    item = next((item for item in studies.swept if Role.SIGNAL in item.surveys), None)
    if item is None or not all(len(found) for found in ends.values()):
        return
    feed_v = studies.feed.whole_travel_v
    made: dict[Direction, tuple[float, float, bool]] = {}
    for side, code in ((Direction.DOWN, "low_end"), (Direction.UP, "high_end")):
        made[side] = _end(ends[side] * feed_v / 100.0, side, STOP_PERCENT * feed_v / 100.0)
        value, spread, stopped = made[side]
        limit = _at_feed(studies, code, feed_v)
        if limit is not None:
            read = value, _uncertainty(studies, item, (value, spread, 1.0)), stopped
            yield _judged(code, _END_TITLES[side, stopped], read, limit, outer=side)
    limit = _at_feed(studies, "signal_span", feed_v)
    if limit is not None:
        (low, low_s, low_stop), (high, high_s, high_stop) = made[Direction.DOWN], made[Direction.UP]
        stopped = low_stop and high_stop
        title = say("Span of the sweep") if stopped else say("Span of the sweep, ends not reached")
        unsure = _uncertainty(studies, item, (high, high_s, 1.0), (low, low_s, -1.0))
        yield _judged("signal_span", title, (high - low, unsure, stopped), limit, outer=None)


def _uncertainty(studies: Studies, item: Study, *parts: tuple[float, float, float]) -> float:
    """Expanded uncertainty of signal volts against a limit that goes with the feed.

    Each part is a voltage against ground, its standard deviation and its sign in the result. What is decided
    is ``result - limit / supply * (reference - ground)``; near the limit the share is that of the result.
    """
    value = sum(sign * volts for volts, _, sign in parts)
    per_feed = value / studies.feed.whole_travel_v if studies.profile.ratiometric else 0.0
    shares = [
        share
        for volts, spread, sign in parts
        for share in reading_of(
            item, Role.SIGNAL, volts + studies.feed.ground_v, sensitivity=sign, spread_v=spread
        )
    ]
    on_ground = per_feed - sum(sign for _, _, sign in parts)
    return result_uncertainty(
        (
            *shares,
            *feed_of(studies, item, Role.REFERENCE, sensitivity=-per_feed),
            *feed_of(studies, item, Role.GROUND, sensitivity=on_ground),
        )
    )


_END_TITLES = {
    (Direction.DOWN, True): say("Low end of the sweep"),
    (Direction.DOWN, False): say("Low end of the sweep, stop not reached"),
    (Direction.UP, True): say("High end of the sweep"),
    (Direction.UP, False): say("High end of the sweep, stop not reached"),
}


def _ends(studies: Studies, side: Direction) -> NDArray[np.float64]:
    """Where the strokes of the swept records turned round on one side, in % of travel."""
    survey = studies.tracks.get(Role.SIGNAL)
    if survey is None:
        return np.empty(0)
    turns = {
        (item.record, item.time.stop if item.direction is side else item.time.start): (
            item.travel.stop if side is Direction.UP else item.travel.start
        )
        for item in survey.crossings
    }
    found = np.array(list(turns.values()))
    return found[(found > -1.0) & (found < 101.0)]  # beyond the rails it is no reading of a track


def _end(volts: NDArray[np.float64], side: Direction, near_v: float) -> tuple[float, float, bool]:
    """Extreme reading, standard deviation of those at the stop, and whether there is a stop."""
    extreme = float(volts.max() if side is Direction.UP else volts.min())
    at_stop = volts[np.abs(volts - extreme) <= near_v]
    if len(at_stop) < LEAST_STOPPED:
        return extreme, 0.0, False
    return float(np.median(at_stop)), float(np.std(at_stop, ddof=1)), True


def _at_feed(studies: Studies, code: str, feed_v: float) -> Limit | None:
    """A limit of the profile at the feed that was measured."""
    limit, profile = studies.profile.limit(code), studies.profile
    if limit is None or not profile.ratiometric:
        return limit
    scale = feed_v / profile.supply_v
    lower, upper = (None if value is None else value * scale for value in (limit.lower, limit.upper))
    return Limit(lower, upper, limit.unit, limit.source, limit.hold_s)


def _judged(
    code: str, title: Wording, read: tuple[float, float, bool], limit: Limit, *, outer: Direction | None
) -> Check:
    value, uncertainty, stopped = read
    made = decided(code, title, "", value, uncertainty, "V", limit)
    if stopped:
        return made
    beyond = (outer is Direction.DOWN and limit.lower is not None and value < limit.lower) or (
        outer is Direction.UP and limit.upper is not None and value > limit.upper
    )
    # Short of a stop nothing was read of the end itself.
    return made if beyond else replace(made, result=Result.CANNOT_TELL, conformance=None)


_ONE_TRACK = Limit(None, LINEAR_PERCENT, "%", say("Bourns 6657 data sheet"))
_TWO_TRACKS = Limit(
    None, 2.0 * LINEAR_PERCENT, "%", say("Bourns 6657 data sheet, once for each of both tracks")
)


def linearity_checks(studies: Studies) -> Iterator[Check]:
    """Independent and terminal-based linearity against a second track or against stated positions."""
    found = position_reference(studies)
    if found is None or found.refusal:
        return
    points = found.both
    independent = independent_linearity(points.position_percent, points.output_percent, span=found.span)
    terminal = terminal_based_linearity(points.position_percent, points.output_percent, span=found.span)
    against_track = found.kind == "second track"
    limit = studies.profile.limit("linearity") or (_TWO_TRACKS if against_track else _ONE_TRACK)
    yield decided(
        "independent_linearity",
        say("Linearity against the second track, independent")
        if against_track
        else say("Linearity, independent"),
        found.records[0],
        independent.deviation_percent,
        found.uncertainty_percent,
        "%",
        limit,
    )
    # No published limit was found for lines through the ends; the value is shown for whoever has one.
    yield Check(
        "terminal_linearity",
        found.records[0],
        terminal.deviation_percent,
        found.uncertainty_percent,
        "%",
        None,
        None,
        Result.CANNOT_TELL,
        say("no limit is known"),
        say("Linearity against the second track, through both ends")
        if against_track
        else say("Linearity, through both ends"),
    )


def hysteresis_check(studies: Studies) -> Iterator[Check]:
    """Play between the two directions, against a second track; the play of the linkage is not in it."""
    found = position_reference(studies)
    if found is None or found.kind != "second track":
        return
    play = _play(found)
    if play is None:
        return
    limit = studies.profile.limit("hysteresis") or Limit(
        None, BACKLASH_PERCENT, "%", say("A-A-52176, Table VII")
    )
    # Channels that are read one after the other differ by what the arm moves meanwhile.
    skew = standard_uncertainty(found.speed_percent_per_s * found.interval_s, distribution="rectangular")
    unsure = expanded(combined(0.5 * found.uncertainty_percent, skew))
    title = say("Up against down, between the tracks")
    yield decided("hysteresis", title, found.records[0], play.median_percent, unsure, "%", limit)


def _play(found: PositionReference) -> Hysteresis | None:
    return hysteresis(
        found.up.position_percent,
        found.up.output_percent,
        found.down.position_percent,
        found.down.output_percent,
    )
