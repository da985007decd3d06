"""The chain of statements that a verdict stands on, each proved, refuted or not shown.

A statement is a function from `Seen` to one `Statement`, or None where it has no place in this capture.
"""

from __future__ import annotations

from collections.abc import Callable

import numpy as np

from analysis.captures.model import Role, Step
from analysis.diagnosis.checks_zero import zero_known
from analysis.diagnosis.evidence_conditions import condition_statements
from analysis.diagnosis.evidence_recorder import recorder_kept_up
from analysis.diagnosis.evidence_sampling import interference, sampled_fast_enough
from analysis.diagnosis.evidence_tracks import position_from_other_track, recorder_floor, straight_output
from analysis.diagnosis.evidence_trend import constant_over_crossings, improved_by_moving
from analysis.diagnosis.findings import Band, Check, Direction, Result, State, Statement
from analysis.diagnosis.hypotheses import rest_travel
from analysis.diagnosis.judging import unplugged
from analysis.diagnosis.quiet import quiet_sweeps, quiet_wiggle
from analysis.diagnosis.seen import PLAIN, QUIET_WEIGHT, Seen, disturbed_weight, too_coarse
from analysis.diagnosis.seen import names_of as _names
from analysis.diagnosis.stillness import MOVED
from analysis.diagnosis.studies import Study, moved_far
from analysis.signals.facts import TrackSurvey
from analysis.wording import Template, Wording, plural, say


def chain_of_evidence(seen: Seen) -> tuple[Statement, ...]:
    """All statements that have a place in this capture, in the order in which a sceptic asks."""
    made = (make(seen) for make in STATEMENTS)
    chain = tuple(statement for statement in made if statement is not None)
    return (*chain, *condition_statements(seen))


def _measured(seen: Seen) -> Statement:
    plain = [problem for problem in seen.problems if problem.strength >= PLAIN]
    records = tuple(dict.fromkeys(problem.record for problem in plain))
    if plain:
        text = say("The capture is no measurement of the sensor: {text}.", text=plain[0].text)
        return Statement("measured_properly", State.REFUTED, records, text)
    text = say("The probes measured what they should.")
    return Statement("measured_properly", State.PROVED, _names(seen.studies.every), text)


def _wire(seen: Seen, role: Role, level_code: str, steady_code: str, name: str) -> Statement:
    code = f"{role.value}_good"
    holding = _names(seen.studies.with_channel(role))
    level, steady = seen.check(level_code), seen.check(steady_code)
    if level is None:
        return Statement(code, State.NOT_SHOWN, (), say("{name} was not recorded.", name=name))
    reading = _level(role, level.value)
    results = [check.result for check in (level, steady) if check is not None]
    if Result.FAIL in results:
        moves = steady is not None and steady.result is Result.FAIL
        if level.result is Result.FAIL:
            # A level that is not kept is not the wire's: most of the time it may stand where it should.
            text = (_AT_TIMES if moves else _NOT_GOOD)(name=name, reading=reading)
        else:
            text = say(
                "{name} is not good: {reading}, moving by {moved_mv:.0f} mV.",
                name=name,
                reading=reading,
                moved_mv=_value(steady) * 1e3,
            )
        return Statement(code, State.REFUTED, holding, text)
    if Result.CANNOT_TELL in results:
        told = _NEAR if level.result is Result.CANNOT_TELL else _COARSE if too_coarse(steady) else _RESTLESS
        text = told(name=name, reading=reading, moved_mv=_value(steady) * 1e3)
        return Statement(code, State.NOT_SHOWN, holding, text)
    if all(unplugged(item.record) for item in seen.studies.with_channel(role)):
        text = say("{name} reads {reading} unplugged: not shown under load.", name=name, reading=reading)
        return Statement(code, State.NOT_SHOWN, holding, text)
    unwatched = not any(role in item.cells.volts for item in seen.studies.swept)
    watched = _UNWATCHED if unwatched else _WATCHED
    return Statement(code, State.PROVED, holding, watched(name=name, reading=reading))


_NOT_GOOD = Template("{name} is not good: {reading}.")
_AT_TIMES = Template("{name} is not good: {reading} at times.")
_NEAR = Template("{name} reads {reading}, too near its limit to tell.")
_COARSE = Template(
    "{name} reads {reading}; this recorder's steps are too coarse to tell whether it holds still."
)
_RESTLESS = Template(
    "{name} reads {reading}, but moves by {moved_mv:.0f} mV: too near the limit to tell whether"
    " it holds still."
)
_UNWATCHED = Template("{name} is good: {reading}, but was not watched during the sweep.")
_WATCHED = Template("{name} is good: {reading} and holds still.")


def _level(role: Role, level_v: float) -> Wording:
    if role is Role.GROUND:
        return say("{level_mv:.0f} mV", level_mv=level_v * 1e3)
    return say("{level_v:.2f} V", level_v=level_v)


def _value(check: Check | None) -> float:
    return check.value if check is not None else 0.0


def _ground(seen: Seen) -> Statement:
    return _wire(seen, Role.GROUND, "ground_drop", "ground_steadiness", say("Sensor ground"))


def _reference(seen: Seen) -> Statement:
    return _wire(seen, Role.REFERENCE, "reference_level", "reference_steadiness", say("The reference"))


def _wiring_quiet(seen: Seen) -> Statement:
    wiggled = [item for item in seen.studies.every if item.record.step is Step.WIGGLE and item.surveys]
    names = _names(wiggled)
    if not wiggled:
        text = say("The harness was not wiggled with the signal watched.")
        return Statement("wiring_quiet", State.NOT_SHOWN, (), text)
    weight = sum(disturbed_weight(seen, item) for item in wiggled)
    if weight >= QUIET_WEIGHT:
        text = _WIGGLED_MOVING if any(_moved(item) for item in wiggled) else _WIGGLED_RESTING
        return Statement("wiring_quiet", State.REFUTED, names, text)
    return Statement("wiring_quiet", State.PROVED, names, quiet_wiggle(seen, wiggled))


_WIGGLED_RESTING = say("The signal breaks up while the harness is wiggled and the arm rests.")
_WIGGLED_MOVING = say(
    "The signal breaks up while the harness is wiggled, and not at a worn place; the arm moved meanwhile, so"
    " this does not tell which of the two did it."
)


def _moved(item: Study) -> bool:
    """Whether the arm moved in a record in which it should rest, by its path or by what the record says."""
    told = str(item.record.attributes.get("moved", "")) in MOVED
    return told or any(moved_far(survey.motion) for survey in item.surveys.values())


def _same_place(seen: Seen) -> Statement | None:
    bands = seen.sure_bands
    if not bands:
        return None
    band = max(bands, key=lambda item: item.confidence)
    records = tuple(dict.fromkeys(item.record for item in band.crossings))
    text = plural(
        "The output breaks up at {start:.1f}–{stop:.1f} % of travel, which was crossed once: on {noisy} of"
        " {count} crossing.",
        "The output breaks up at the same spot every time: {start:.1f}–{stop:.1f} % of travel, "
        "on {noisy} of {count} crossings.",
        count=band.passes,
        start=band.travel.start,
        stop=band.travel.stop,
        noisy=band.noisy_passes,
    )
    shown = band.noisy_passes >= 3 and band.noisy_passes >= 0.5 * band.passes
    return Statement("place_locked", State.PROVED if shown else State.NOT_SHOWN, records, text)


def _both_directions(seen: Seen) -> Statement | None:
    if not seen.sure_bands:
        return None
    band = max(seen.sure_bands, key=lambda item: item.confidence)
    ways = _noisy_ways(band, seen.studies.tracks[band.track])
    if ways == {Direction.UP, Direction.DOWN}:
        text = say("It breaks up in both directions.")
        return Statement("both_directions", State.PROVED, (band.record,), text)
    return Statement(
        "both_directions", State.NOT_SHOWN, (band.record,), say("It was seen in one direction only.")
    )


def _noisy_ways(band: Band, survey: TrackSurvey) -> set[Direction]:
    """Directions of the strokes on which a band broke up.

    Of a crossing in which the arm turned round only the strokes that show it count; where none shows it by
    its depth, those that were in the band then.
    """
    starts = np.array([crossing.time.start for crossing in survey.crossings])
    stops = np.array([crossing.time.stop for crossing in survey.crossings])
    edges = survey.edges_percent
    inside = (edges[1:] > band.travel.start) & (edges[:-1] < band.travel.stop)
    loud = np.nan_to_num(survey.breakup_percent[:, inside]).max(axis=1, initial=0.0) > 0.0
    ways: set[Direction] = set()
    for item in band.crossings:
        if not item.noisy:
            continue
        near = item.time.widened(1e-3)
        met = np.flatnonzero(np.minimum(stops, near.stop) > np.maximum(starts, near.start))
        own = [index for index in met if survey.crossings[index].record == item.record]
        ways |= {survey.crossings[index].direction for index in [i for i in own if loud[i]] or own}
        if len(ways) == len(Direction):
            break
    return ways


def _hands_off(seen: Seen) -> Statement | None:
    if not seen.sure_bands:
        return None
    band = max(seen.sure_bands, key=lambda item: item.confidence)
    held = [
        item
        for item in seen.studies.every
        if item.record.step is Step.HOLD and band.track in item.surveys and _rests_in(item, band)
    ]
    if not held:
        text = say(
            "The arm was not held still in the spot: a probe or loom that moves with it is not ruled out."
        )
        return Statement("not_the_loom", State.NOT_SHOWN, (), text)
    if any(item.disturbances(band.track) for item in held):
        text = say("At rest in the spot the reading wanders by itself, hands off.")
        return Statement("not_the_loom", State.PROVED, _names(held), text)
    text = say("At rest in the spot the reading was quiet; a loom that moves with the arm is not ruled out.")
    return Statement("not_the_loom", State.NOT_SHOWN, _names(held), text)


def _rests_in(item: Study, band: Band) -> bool:
    motion = item.surveys[band.track].motion
    series = item.cells.travel[band.track]
    middle = float(np.median(motion.travel_percent))
    highest = float(np.nanpercentile(series.maximum, 99.0))
    near = band.travel.widened(2.0)
    return near.contains(middle) or near.contains(highest)


def _elsewhere(seen: Seen) -> Statement | None:
    swept = [item for item in seen.studies.swept if item.surveys]
    if not swept:
        return None
    weight = sum(disturbed_weight(seen, item) for item in swept)
    if weight < QUIET_WEIGHT:
        return Statement("quiet_elsewhere", State.PROVED, _names(swept), quiet_sweeps(seen, swept))
    text = say("The signal also breaks up at moments that belong to no place on the travel.")
    return Statement("quiet_elsewhere", State.REFUTED, _names(swept), text)


_AGREEMENT = {
    State.PROVED: Template("The two tracks agree: {apart_mv:.0f} mV apart."),
    State.REFUTED: Template("The two tracks disagree: {apart_mv:.0f} mV apart."),
    State.NOT_SHOWN: Template("The two tracks may disagree: {apart_mv:.0f} mV apart."),
}


def _tracks_agree(seen: Seen) -> Statement | None:
    check = seen.check("track_agreement")
    if check is None:
        return None
    state = {Result.PASS: State.PROVED, Result.FAIL: State.REFUTED}.get(check.result, State.NOT_SHOWN)
    text = _AGREEMENT[state](apart_mv=check.value * 1e3)
    return Statement("tracks_agree", state, (check.record,), text)


def _all_tracks(seen: Seen) -> Statement | None:
    if Role.SECOND_SIGNAL not in seen.studies.profile.tracks:
        return None
    holding = _names(seen.studies.with_channel(Role.SECOND_SIGNAL))
    if holding:
        return Statement("all_tracks_recorded", State.PROVED, holding, say("Both tracks were recorded."))
    text = say("{title} has two tracks; only one was recorded.", title=seen.studies.profile.title)
    return Statement("all_tracks_recorded", State.REFUTED, (), text)


def _rest_tested(seen: Seen) -> Statement | None:
    survey = seen.studies.tracks.get(Role.SIGNAL)
    if survey is None or not survey.crossings:
        return Statement("rest_height_tested", State.NOT_SHOWN, (), say("No sweep of the arm was recorded."))
    rest = rest_travel(seen.studies)
    # The path may overshoot the ends of the track by its uncertainty; nobody tests -2 % of travel.
    low = max(min(item.travel.start for item in survey.crossings), 0.0)
    high = min(max(item.travel.stop for item in survey.crossings), 100.0)
    if rest is None:
        text = say(
            "The travel tested is {low:.0f}–{high:.0f} %; where the arm normally rests was not recorded.",
            low=low,
            high=high,
        )
        return Statement("rest_height_tested", State.NOT_SHOWN, _names(seen.studies.swept), text)
    if low - 1.0 <= rest <= high + 1.0:
        text = say(
            "The travel tested, {low:.0f}–{high:.0f} %, includes where the arm rests, {rest:.0f} %.",
            low=low,
            high=high,
            rest=rest,
        )
        return Statement("rest_height_tested", State.PROVED, _names(seen.studies.swept), text)
    text = say(
        "The travel tested, {low:.0f}–{high:.0f} %, leaves out where the arm rests, {rest:.0f} %.",
        low=low,
        high=high,
        rest=rest,
    )
    return Statement("rest_height_tested", State.REFUTED, _names(seen.studies.swept), text)


def _far_end(seen: Seen) -> Statement:
    points = {
        str(channel.attributes.get("probe_point", "")).lower()
        for item in seen.studies.every
        for channel in item.record.channels
        if channel.role is Role.SIGNAL
    }
    at_unit = any("unit" in point or "module" in point for point in points)
    at_sensor = any("sensor" in point for point in points)
    if at_unit and at_sensor:
        text = say("The signal was probed at both ends of its wire.")
        return Statement("far_end_probed", State.PROVED, _names(seen.studies.swept), text)
    return Statement("far_end_probed", State.NOT_SHOWN, (), _ONE_END[at_unit, at_sensor])


_ONE_END = {
    (True, False): say(
        "Wiring between sensor and control unit: not shown, since only the control-unit end was probed."
    ),
    (False, True): say(
        "Wiring between sensor and control unit: not shown, since only the sensor end was probed."
    ),
    (False, False): say("Wiring between sensor and control unit: not shown, since only one end was probed."),
}


def _profile(seen: Seen) -> Statement | None:
    if not seen.studies.profile.assumed:
        return None
    text = say(
        "No known sensor profile was named: "
        "a potentiometer with a contact track on {supply_v:.0f} V is assumed.",
        supply_v=seen.studies.profile.supply_v,
    )
    return Statement("profile_assumed", State.NOT_SHOWN, (), text)


STATEMENTS: tuple[Callable[[Seen], Statement | None], ...] = (
    _measured,
    recorder_kept_up,
    zero_known,
    _ground,
    _reference,
    _wiring_quiet,
    _same_place,
    _both_directions,
    _hands_off,
    improved_by_moving,
    constant_over_crossings,
    _elsewhere,
    _tracks_agree,
    position_from_other_track,
    _all_tracks,
    _rest_tested,
    straight_output,
    _far_end,
    recorder_floor,
    sampled_fast_enough,
    interference,
    _profile,
)
