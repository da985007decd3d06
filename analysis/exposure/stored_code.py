"""A fault code that the job names, beside rules by which none would be stored: said alike everywhere."""

from __future__ import annotations

from collections.abc import Sequence

from analysis.captures.model import Capture
from analysis.control_unit.replay import Replay
from analysis.exposure.picture import Exposure
from analysis.exposure.words import UNLIKELY
from analysis.reports.fault_codes import fault_codes
from analysis.review.job import Job, fact
from analysis.wording import Wording, joined, plural, say


def job_codes(job: Job, capture: Capture) -> tuple[str, ...]:
    """The fault codes of the job, as entered or else as the capture says; empty for none."""
    return fault_codes(fact(job, capture, "fault_codes"))


def against_roads(codes: Sequence[str], exposures: Sequence[Exposure]) -> Wording:
    """What to make of the job's codes where none is expected at any height on any of these roads.

    Parameters
    ----------
    codes : sequence of str
        Of the job.
    exposures : sequence of Exposure
        One for each road.

    Returns
    -------
    Wording
        Empty where the job names none, or one may well be stored.
    """
    if any(item.chance_over_class.stop >= UNLIKELY for one in exposures for item in one.rests):
        return joined([])
    where = say("on this road") if len(exposures) == 1 else say("on these roads")
    return _unexplained(codes, where)


def against_record(codes: Sequence[str], replay: Replay) -> Wording:
    """The same of one record that was run through the control unit."""
    return joined([]) if replay.first is not None else _unexplained(codes, say("in this record"))


def _unexplained(codes: Sequence[str], where: Wording) -> Wording:
    if not codes:
        return joined([])
    return plural(
        "The job names fault code {codes}, yet by the rules used here none would be stored {where}: this"
        " control unit's own rules are not known, or it was stored under other conditions.",
        "The job names fault codes {codes}, yet by the rules used here none would be stored {where}: this"
        " control unit's own rules are not known, or they were stored under other conditions.",
        count=len(codes),
        codes=joined(codes, ", "),
        where=where,
    )
