"""The sentence that a comparison comes down to; its words follow the change and the relation of the sides."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from analysis.comparison.model import BandComparison, Change, CheckComparison, Compared, Comparison, Relation
from analysis.comparison.pairing import Pairing
from analysis.diagnosis.findings import Band, VerdictCode
from analysis.diagnosis.handled import only_when_handled
from analysis.intervals import Interval
from analysis.wording import Template, Wording, joined, say

_OVER_TIME: Mapping[Change, Template] = {
    Change.GONE: Template(
        "The band at {travel} is gone: the output broke up on {bad1} of {all1} crossings before, on none of"
        " {all2} after."
    ),
    Change.LESS: Template(
        "The band at {travel} breaks up less often, but is not gone: on {bad2} of {all2} crossings after,"
        " on {bad1} of {all1} before."
    ),
    Change.STILL_THERE: Template(
        "The band at {travel} is still there: the output broke up on {bad1} of {all1} crossings before, on"
        " {bad2} of {all2} after."
    ),
    Change.MORE: Template(
        "The band at {travel} breaks up more often: on {bad2} of {all2} crossings after, on {bad1} of {all1}"
        " before."
    ),
    Change.APPEARED: Template(
        "A band at {travel} has appeared: the output broke up on none of {all1} crossings before, on {bad2}"
        " of {all2} after."
    ),
}

_SIDE_BY_SIDE: Mapping[Change, Template] = {
    Change.GONE: Template(
        "The band at {travel} is {where1} alone: the output broke up on {bad1} of {all1} crossings there, on"
        " none of {all2} {where2}."
    ),
    Change.LESS: Template(
        "The band at {travel} breaks up less often {where2}: on {bad2} of {all2} crossings, on {bad1} of"
        " {all1} {where1}."
    ),
    Change.STILL_THERE: Template(
        "The band at {travel} is on both: the output broke up on {bad1} of {all1} crossings {where1}, on"
        " {bad2} of {all2} {where2}."
    ),
    Change.MORE: Template(
        "The band at {travel} breaks up more often {where2}: on {bad2} of {all2} crossings, on {bad1} of"
        " {all1} {where1}."
    ),
    Change.APPEARED: Template(
        "The band at {travel} is {where2} alone: the output broke up on {bad2} of {all2} crossings there, on"
        " none of {all1} {where1}."
    ),
}

_NOT_SHOWN: Mapping[tuple[bool, bool], Template] = {
    (True, False): Template("The band at {travel} is not shown to be cured: {reasons}."),
    (True, True): Template("The band at {travel} is not shown to be new: {reasons}."),
    (False, False): Template("Whether the band at {travel} is {where2} too is not shown: {reasons}."),
    (False, True): Template("Whether the band at {travel} is {where1} too is not shown: {reasons}."),
}
"""By whether the sides follow in time, and whether the second alone shows the band."""


_OUTCOMES_BESIDE: Mapping[Change, Template] = {
    Change.GONE: Template("{first} alone"),
    Change.LESS: Template("less often {second}"),
    Change.STILL_THERE: Template("both"),
    Change.MORE: Template("more often {second}"),
    Change.APPEARED: Template("{second} alone"),
    Change.NOT_SHOWN: Template("not shown"),
}
_OUTCOMES: Mapping[Change, Wording] = {
    Change.GONE: say("gone"),
    Change.LESS: say("less often"),
    Change.STILL_THERE: say("still there"),
    Change.MORE: say("more often"),
    Change.APPEARED: say("appeared"),
    Change.NOT_SHOWN: say("not shown"),
}


def change_name(change: Change, comparison: Comparison) -> Wording:
    """What became of a band, or which side has it, as people say it."""
    if comparison.relation is Relation.BEFORE_AFTER:
        return _OUTCOMES[change]
    first, second = comparison.names
    return _OUTCOMES_BESIDE[change](first=first, second=second)


def travel_words(travel: Interval) -> Wording:
    """A stretch of travel: ``"41.9–47.7 % of travel"``."""
    return say("{start:.1f}–{stop:.1f} % of travel", start=travel.start, stop=travel.stop)


def band_words(band: BandComparison, pairing: Pairing) -> Wording:
    """What became of one band, in one sentence that says no more than its counts."""
    one, two = band.first, band.second
    values = {
        "travel": travel_words(band.travel),
        "bad1": one.noisy_passes,
        "all1": one.passes,
        "bad2": two.noisy_passes,
        "all2": two.passes,
        "where1": pairing.names[0],
        "where2": pairing.names[1],
    }
    over_time = pairing.relation is Relation.BEFORE_AFTER
    if band.change is not Change.NOT_SHOWN:
        return (_OVER_TIME if over_time else _SIDE_BY_SIDE)[band.change](**values)
    new = _sure(band.second_band) > _sure(band.first_band)
    return _NOT_SHOWN[over_time, new](reasons=joined(band.reasons, "; "), **values)


def level_words(check: CheckComparison, pairing: Pairing) -> Wording:
    """A level that differs by more than the uncertainty of the difference."""
    if check.first is None or check.second is None:
        raise ValueError(f"both sides must have made the check {check.code!r}")
    return say(
        "{title}: {value1_mv:.0f} mV {where1}, {value2_mv:.0f} mV {where2}; the difference of"
        " {difference_mv:.0f} mV exceeds its uncertainty of {spread_mv:.0f} mV.",
        title=check.title,
        value1_mv=1e3 * check.first.value,
        value2_mv=1e3 * check.second.value,
        where1=pairing.names[0],
        where2=pairing.names[1],
        difference_mv=1e3 * check.difference,
        spread_mv=1e3 * check.expanded_uncertainty,
    )


def summary_words(
    sides: tuple[Compared, Compared],
    bands: Sequence[BandComparison],
    levels: Sequence[CheckComparison],
    tested_by_both: Sequence[Interval],
    pairing: Pairing,
) -> Wording:
    """All of it in a few plain sentences.

    Parameters
    ----------
    sides : pair of Compared
    bands : sequence of BandComparison
        Those that are likely.
    levels : sequence of CheckComparison
        Levels that differ by more than their uncertainty.
    tested_by_both : sequence of Interval
        For what may be said where there is no band.
    pairing : Pairing
    """
    parts: list[Wording] = [band_words(item, pairing) for item in bands]
    verdicts_differ = _fault(sides[0]) != _fault(sides[1])
    if not bands:
        parts.append(_no_band_words(tested_by_both))
    if not bands and verdicts_differ:
        for name, side in zip(pairing.titles, sides, strict=True):
            parts.append(say("{name}: {summary}", name=name, summary=side.verdict.summary))
    parts += [level_words(item, pairing) for item in levels]
    if not bands and not levels and not verdicts_differ:
        parts.append(say("No reading differs by more than its uncertainty."))
    return joined(parts)


def _fault(side: Compared) -> tuple[VerdictCode, bool]:
    """What tells one verdict from another: a contact that opens only when handled is no broken wire."""
    code = side.verdict.code
    return code, code is VerdictCode.SIGNAL_WIRING and only_when_handled(side.evidence)


def _no_band_words(tested_by_both: Sequence[Interval]) -> Wording:
    if not tested_by_both:
        return say("No stretch of travel was tested on both sides.")
    stretches = joined([travel_words(item) for item in tested_by_both], ", ")
    return say("Neither shows a band in the travel that both tested, {stretches}.", stretches=stretches)


def _sure(band: Band | None) -> float:
    return band.confidence if band is not None else 0.0
