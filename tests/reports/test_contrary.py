"""What speaks against the verdict comes first, and one line of it stands under the headline."""

from __future__ import annotations

from dataclasses import replace

import pytest

from analysis.diagnosis.findings import Findings, State, Statement, VerdictCode
from analysis.reports.contrary import AGAINST, against, contrary_line, told_in_order
from analysis.reports.findings_report import findings_report
from tests.reports.examples import CAPTURE, findings

MEASURED = Statement("measured_properly", State.PROVED, ("001",), "The probes measured what they should.")
SLOW = Statement("sampled_fast_enough", State.REFUTED, ("004",), "It was sampled too slowly.")
LOOSE = Statement("wiring_quiet", State.REFUTED, ("003",), "The signal breaks up while wiggled.")
STRAY = Statement("quiet_elsewhere", State.REFUTED, ("004",), "It also breaks up elsewhere.")
PLACE = Statement("place_locked", State.PROVED, ("004",), "It breaks up at the same spot every time.")


def _with(*evidence: Statement, code: VerdictCode = VerdictCode.WORN_TRACK) -> Findings:
    return replace(findings(code), evidence=evidence)


def test_what_speaks_against_a_worn_track_comes_first_then_what_else_is_refuted() -> None:
    found = _with(MEASURED, SLOW, PLACE, LOOSE, STRAY)
    assert told_in_order(found) == (LOOSE, STRAY, SLOW, MEASURED, PLACE)
    assert set(told_in_order(found)) == set(found.evidence)


def test_one_line_stands_under_the_headline_and_says_how_many_more_there_are() -> None:
    assert contrary_line(_with(MEASURED, PLACE)) == ""
    assert contrary_line(_with(MEASURED, LOOSE)) == f"Speaks against it: {LOOSE.text}"
    assert contrary_line(_with(LOOSE, STRAY)) == f"Speaks against it: {LOOSE.text} 1 more stands below."


def test_the_same_statement_speaks_for_one_verdict_and_against_another() -> None:
    assert against(_with(PLACE, LOOSE)) == (LOOSE,)
    assert against(_with(PLACE, LOOSE, code=VerdictCode.SIGNAL_WIRING)) == (PLACE,)


@pytest.mark.parametrize("code", [VerdictCode.INCONCLUSIVE, VerdictCode.MEASUREMENT_PROBLEM])
def test_nothing_speaks_against_what_decides_nothing(code: VerdictCode) -> None:
    assert against(_with(MEASURED, SLOW, PLACE, LOOSE, code=code)) == ()


def test_every_verdict_says_what_would_speak_against_it() -> None:
    assert set(AGAINST) == set(VerdictCode)


def test_the_printed_report_has_the_line_first_and_the_chain_in_that_order() -> None:
    report = findings_report(_with(MEASURED, LOOSE), CAPTURE)
    assert report.lead[0] == f"Speaks against it: {LOOSE.text}"
    chain = next(section for section in report.sections if section.title == "Chain of evidence")
    assert chain.table is not None
    assert [row[1] for row in chain.table.rows] == [LOOSE.text, MEASURED.text]
