"""Statements on two tracks of one sensor."""

from __future__ import annotations

from analysis.captures.model import Role
from analysis.diagnosis.findings import State, Statement
from analysis.diagnosis.seen import Seen, names_of
from analysis.diagnosis.studies import Study
from analysis.wording import say

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


def _guided_s(item: Study, role: Role) -> float:
    """Seconds in which the other track told this one's place."""
    survey = item.surveys.get(role)
    if survey is None or survey.motion.guided is None:
        return 0.0
    return float(survey.motion.guided.sum()) * item.cells.cell_s
