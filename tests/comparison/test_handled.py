"""A contact that opens only under the hand is called the same by a comparison as by a report of its own."""

from __future__ import annotations

from functools import cache

import pytest

from analysis.captures.model import Record, Step
from analysis.comparison.compare import compare
from analysis.comparison.model import Relation
from analysis.comparison.serialise import comparison_object
from analysis.comparison.side import Side
from analysis.diagnosis.findings import VerdictCode
from analysis.reports.comparison_report import comparison_report
from analysis.reports.findings_report import findings_report
from analysis.reports.verdicts import verdict_name, verdict_title
from app.errands.text_report import report_text
from tests.comparison.examples import side_of
from tests.diagnosis.examples import RATE_HZ, bursts, record, sweep, visit
from tests.signals.examples import rest

BY_HAND = "Bad contact at the sensor"
BY_ITSELF = "Signal wiring faulty"


def under(step: Step, *, loose: bool) -> Record:
    """A rest under something that is done to the sensor."""
    still = rest(50.0, 4.0, RATE_HZ)
    opened = bursts(len(still), per_s=5.0, lasting_s=0.01, seed=8) if loose else None
    return record("009", step, still, opened=opened, seed=8)


@cache
def tapped(*, loose: bool = True, also_alone: bool = False) -> Side:
    """A sensor that is tapped; it may break up then, and when it is left alone too."""
    path = sweep(6)
    opened = bursts(len(path), seed=3) if also_alone else None
    return side_of(visit(travel=path, opened=opened, extra=[under(Step.TAP, loose=loose)]))


def text_of(first: Side, second: Side) -> str:
    return report_text(comparison_report(compare(first, second)), "before - after")


@pytest.mark.parametrize("relation", Relation)
def test_a_comparison_calls_it_what_review_and_report_call_it(relation: Relation) -> None:
    loose, quiet = tapped(), tapped(loose=False)
    assert loose.findings.verdict.code is VerdictCode.SIGNAL_WIRING
    title = verdict_title(loose.findings)  # Review's headline
    assert title == BY_HAND
    assert findings_report(loose.findings, loose.capture).headline.startswith(f"{title}: ")
    made = compare(loose, quiet, relation=relation)
    assert verdict_title(made.first) == title
    text = report_text(comparison_report(made), "before - after")
    assert f"{title}, " in text
    assert verdict_name(VerdictCode.SIGNAL_WIRING) not in text


def test_a_contact_that_opens_by_itself_too_is_still_called_the_wiring() -> None:
    text = text_of(tapped(also_alone=True), tapped(loose=False))
    assert BY_ITSELF in text
    assert BY_HAND not in text


def test_sides_that_differ_in_this_alone_are_not_taken_for_alike() -> None:
    made = compare(tapped(), tapped(also_alone=True))
    assert made.first.verdict.code is made.second.verdict.code
    assert tapped().findings.verdict.summary in made.summary
    assert tapped(also_alone=True).findings.verdict.summary in made.summary


def test_the_code_that_programs_read_stays_what_it_was() -> None:
    found = comparison_object(compare(tapped(), tapped(loose=False)))
    assert found["before"]["verdict"]["code"] == "signal_wiring"
