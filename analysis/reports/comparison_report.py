"""A comparison laid out as a report: the sentence first, then bands, readings, and what was compared."""

from __future__ import annotations

import math

from analysis.captures.record_names import called, record_alone, the_record
from analysis.comparison.checks import as_compared
from analysis.comparison.model import (
    BandComparison,
    CheckComparison,
    Compared,
    Comparison,
    Tested,
)
from analysis.comparison.words import change_name
from analysis.diagnosis.findings import Check
from analysis.reports.checks import check_reading, decision_name
from analysis.reports.confidence import in_words
from analysis.reports.document import Report, Section, Table
from analysis.reports.quantities import NO_VALUE, reading, travel
from analysis.reports.verdicts import verdict_title
from analysis.wording import Wording, joined, say


def comparison_report(comparison: Comparison) -> Report:
    """Everything that a comparison says, in the order in which a reader asks for it.

    Parameters
    ----------
    comparison : Comparison

    Returns
    -------
    Report
        Sections without content are left out.
    """
    first, second = comparison.titles
    sections = (
        Section(say("What stands against reading more into it"), items=comparison.cautions),
        _bands(comparison, first, second),
        _how_tested(comparison, first, second),
        _checks(comparison, first, second),
        Section(
            say("Compared"),
            items=(_side_line(first, comparison.first), _side_line(second, comparison.second)),
        ),
    )
    return Report(
        title=say("{one} / {two}", one=_title(comparison.first), two=_title(comparison.second)),
        subject=(),
        headline=say("Comparison"),
        lead=(comparison.summary,),
        sections=tuple(item for item in sections if not item.empty),
    )


def check_name(item: CheckComparison, comparison: Comparison) -> Wording:
    """The check by its title, with its record where there are several; says where sizes stand for it.

    Parameters
    ----------
    item : CheckComparison
    comparison : Comparison
        That it is of.
    """
    side = comparison.first if item.first is not None else comparison.second
    taken, title = item.first or item.second, item.title or item.code
    name = say("{title}", title=title)
    if item.repeated and taken is not None:
        name = say("{title}, {record}", title=title, record=called(record_alone(taken.record), side.called))
    return say("{name}, in size", name=name) if as_compared(item) != (item.first, item.second) else name


def counts_text(tested: Tested) -> Wording:
    """``"18 of 18"`` noisy crossings; says so where there was none."""
    if not tested.passes:
        return say("not crossed")
    return say("{noisy} of {passes}", noisy=tested.noisy_passes, passes=tested.passes)


def chance_text(p_value: float) -> Wording:
    """The probability of the test: no more digits than mean something."""
    return say("p < 0.001") if p_value < 0.001 else say("p = {p_value:.3f}", p_value=p_value)


def difference_text(item: CheckComparison) -> str:
    """The difference with its expanded uncertainty; a dash where it cannot be taken."""
    return reading(item.difference, item.expanded_uncertainty, item.unit)


def exceeds_text(item: CheckComparison) -> Wording:
    """Whether the difference is more than its uncertainty."""
    if item.exceeds is None:
        return say("cannot be compared")
    if not item.exceeds:
        return say("no")
    return say("yes, but worst seen: scatters") if item.worst_seen else say("yes")


def how_tested_text(tested: Tested) -> Wording:
    """Speed, sampling and the least break-up that could be seen."""
    if not tested.passes:
        return say("–")
    parts = [
        say("{speed:.0f} %/s", speed=tested.speed_percent_per_s)
        if math.isfinite(tested.speed_percent_per_s)
        else say(""),
        say("{rate_hz:.0f} samples/s", rate_hz=tested.sample_rate_hz)
        if math.isfinite(tested.sample_rate_hz)
        else say(""),
        say("shows from {floor:.1f} % up", floor=tested.floor_percent)
        if math.isfinite(tested.floor_percent)
        else say(""),
    ]
    return joined(parts, ", ")


def _bands(comparison: Comparison, first: str, second: str) -> Section:
    heads = (
        say("Travel"),
        say("{side}, broken up", side=first),
        say("{side}, broken up", side=second),
        say("Outcome"),
        say("Test of the counts"),
    )
    rows = tuple(
        (
            _place(item),
            counts_text(item.first),
            counts_text(item.second),
            change_name(item.change, comparison),
            chance_text(item.p_value) if item.first.passes and item.second.passes else NO_VALUE,
        )
        for item in comparison.bands
    )
    sentences = (
        (say("Crossings are counted; the counts are tested by Fisher's exact test, two-sided."),)
        if rows
        else ()
    )
    return Section(say("Bands"), sentences, table=Table(heads, rows) if rows else None)


def _place(item: BandComparison) -> Wording:
    return say("{travel}, {words}", travel=travel(item.travel), words=in_words(item.confidence))


def _how_tested(comparison: Comparison, first: str, second: str) -> Section:
    rows = tuple(
        (travel(item.travel), how_tested_text(item.first), how_tested_text(item.second))
        for item in comparison.bands
    )
    items = tuple(
        say("{travel}: {reasons}", travel=travel(item.travel), reasons=joined(item.reasons, "; "))
        for item in comparison.bands
        if item.reasons
    )
    return Section(
        say("How these bands were tested"),
        items=items,
        table=Table((say("Travel"), first, second), rows) if rows else None,
    )


def _checks(comparison: Comparison, first: str, second: str) -> Section:
    heads = (say("Reading"), first, second, say("Difference"), say("More than its uncertainty"))
    rows = tuple(
        (
            check_name(item, comparison),
            *map(_reading, as_compared(item)),
            difference_text(item),
            exceeds_text(item),
        )
        for item in comparison.checks
    )
    return Section(say("Readings"), table=Table(heads, rows))


def _reading(check: Check | None) -> Wording:
    if check is None:
        return say("not taken")
    return say("{reading}, {result}", reading=check_reading(check), result=decision_name(check))


def _title(side: Compared) -> Wording:
    return say("{title}", title=side.title or side.path)


def _side_line(name: str, side: Compared) -> Wording:
    parts = [
        _title(side),
        called(the_record(side.record), side.called) if side.record else "",
        say("travel counted from the other end") if side.mirrored else say(""),
        say(
            "{verdict}, {words}",
            verdict=verdict_title(side),
            words=in_words(side.verdict.confidence),
        ),
        say("SHA-256 {sha256}", sha256=side.sha256) if side.sha256 else say(""),
    ]
    return say("{name}: {parts}", name=name, parts=joined(parts, "; "))
