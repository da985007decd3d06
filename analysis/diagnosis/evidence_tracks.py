"""Statements on two tracks of one sensor, and on what else tells the arm's true position."""

from __future__ import annotations

from analysis.captures.model import Role
from analysis.diagnosis.findings import Check, Result, State, Statement
from analysis.diagnosis.position_reference import position_reference
from analysis.diagnosis.profile_model import Contact
from analysis.diagnosis.seen import Seen, names_of
from analysis.diagnosis.studies import Study
from analysis.wording import Template, Wording, say

LEAST_GUIDED_S = 0.005
"""Less help than this is not worth a sentence: one opening of a contact lasts some milliseconds."""


def position_from_other_track(seen: Seen) -> Statement | None:
    """Where one track was lost and the other told where the arm was; None where neither had to."""
    longest: tuple[float, Role] = (LEAST_GUIDED_S, Role.SIGNAL)
    for role in (Role.SIGNAL, Role.SECOND_SIGNAL):
        longest = max(longest, (sum(_guided_s(item, role) for item in seen.studies.swept), role))
    seconds, role = longest
    items = [item for item in seen.studies.swept if _guided_s(item, role) > 0.0]
    if seconds <= LEAST_GUIDED_S:
        return None
    if role is Role.SIGNAL:
        text = say(
            "Where the first track was lost, {seconds:.2f} s in all, the second told where the arm was: the "
            "place of the fault is read from a track without it.",
            seconds=seconds,
        )
    else:
        text = say(
            "Where the second track was lost, {seconds:.2f} s in all, the first told where the arm was: the "
            "place of the fault is read from a track without it.",
            seconds=seconds,
        )
    return Statement("position_from_other_track", State.PROVED, names_of(items), text)


def straight_output(seen: Seen) -> Statement | None:
    """Whether the output keeps to a straight line, where anything but itself told the position."""
    if not any(item.surveys for item in seen.studies.swept):
        return None
    check = seen.check("independent_linearity")
    if check is None:
        return Statement("output_straight", State.NOT_SHOWN, (), _why_not_straight(seen))
    found = position_reference(seen.studies)
    records = found.records if found is not None else (check.record,)
    state = {Result.PASS: State.PROVED, Result.FAIL: State.REFUTED}.get(check.result, State.NOT_SHOWN)
    return Statement("output_straight", state, records, _straightness(check, seen))


def _by_track(seen: Seen) -> bool:
    found = position_reference(seen.studies)
    return found is not None and found.kind == "second track"


def _straightness(check: Check, seen: Seen) -> Wording:
    profile = seen.studies.profile
    share = _OF_FEED if profile.ratiometric else _OF_VOLTS(supply_v=profile.supply_v)
    if _by_track(seen):
        return say(
            "Held against the second track, the output departs from a straight line by {away:.1f} {share} at "
            "most; what both tracks do together, and play in the linkage, does not show.",
            away=check.value,
            share=share,
        )
    return say(
        "Held against the positions that were stated, the output departs from a straight line by "
        "{away:.1f} {share} at most.",
        away=check.value,
        share=share,
    )


def _why_not_straight(seen: Seen) -> Wording:
    found = position_reference(seen.studies)
    if found is None:
        return say(
            "Linearity, and play between the directions: not shown, since nothing but the signal itself told "
            "where the arm was."
        )
    return say("Linearity: not shown, since {reason}.", reason=found.refusal)


NEW_TRACK_PERCENT = 0.1
"""Output smoothness of a new track, in % of the applied voltage (Bourns, "Output Smoothness")."""


LOW_ENOUGH_PERCENT = 0.15
"""A floor as low as this reads 0.1: it is what a new track may do, with next to nothing of the recorder's."""


def recorder_floor(seen: Seen) -> Statement | None:
    """The least break-up that this recorder shows; None where nothing was swept."""
    floors = [survey.floor_percent for survey in seen.studies.tracks.values() if survey.crossings]
    if not floors:
        return None
    profile, floor = seen.studies.profile, max(floors)
    low_enough = floor < LOW_ENOUGH_PERCENT
    share = _OF_REFERENCE if profile.ratiometric else _OF_VOLTS(supply_v=profile.supply_v)
    told = _FLOORS[low_enough, profile.contact]
    text = told(floor=floor, share=share, limit=NEW_TRACK_PERCENT)
    state = State.PROVED if low_enough else State.NOT_SHOWN
    return Statement("recorder_floor", state, names_of(seen.studies.swept), text)


_OF_FEED = say("% of the feed")
_OF_REFERENCE = say("% of the reference")
_OF_VOLTS = Template("% of {supply_v:.1f} V")
_FLOORS = {
    (True, Contact.TRACK): Template(
        "This recorder sees break-up down to {floor:.2f} {share}; a new track stays within {limit} %."
    ),
    (True, Contact.CONTACTLESS): Template("This recorder sees break-up down to {floor:.2f} {share}."),
    (False, Contact.TRACK): Template(
        "Break-up below {floor:.1f} {share} cannot be seen in this capture; "
        "a new track stays within {limit} %. It cannot prove a track as new."
    ),
    (False, Contact.CONTACTLESS): Template(
        "Break-up below {floor:.1f} {share} cannot be seen in this capture."
    ),
}
"""By whether the floor is low enough for a new track, and whether there is a track."""


def _guided_s(item: Study, role: Role) -> float:
    """Seconds in which the other track told this one's place."""
    survey = item.surveys.get(role)
    if survey is None or survey.motion.guided is None:
        return 0.0
    return float(survey.motion.guided.sum()) * item.cells.cell_s
