"""A verdict, a state or a check that is added without words, in either language, is found here."""

from __future__ import annotations

import ast
import re
from collections.abc import Mapping
from dataclasses import replace
from enum import Enum
from pathlib import Path
from typing import Any

import pytest

from analysis.captures import record_names
from analysis.captures.model import Role, Step
from analysis.comparison import pairing
from analysis.comparison import words as comparison_words
from analysis.comparison.model import Change, Relation
from analysis.diagnosis import findings as facts
from analysis.diagnosis.examine import examine
from analysis.diagnosis.findings import Result, State, VerdictCode
from analysis.reports import (
    checks,
    confidence,
    consequences,
    customer_page,
    customer_words,
    evidence_page,
    how_measured,
    marker_readings,
    technicians_part,
    verdicts,
)
from analysis.reports.confidence import Grade
from analysis.reports.customer_words import Kind
from analysis.reports.evidence_page import evidence_page as page_two
from analysis.reports.quantities import number
from analysis.reports.subject import Subject
from analysis.review.job import CLOSING, OFFER_AMOUNTS
from analysis.review.model import Choice
from analysis.wording import ENGLISH, Template, Wording, say
from app.reporting.languages import report_language
from tests.reports.examples import CAPTURE
from tests.reports.examples import findings as example
from tests.reports.test_wordings import SAMPLES, _examined

GERMAN = report_language("de")
UNDECIDED = {VerdictCode.INCONCLUSIVE, VerdictCode.MEASUREMENT_PROBLEM}
BY_BANDS = {VerdictCode.WORN_TRACK, VerdictCode.SENSOR_OUTPUT_FAULT}
TABLES: list[tuple[Mapping[Any, object], Any]] = [
    (verdicts._NAMES, VerdictCode),
    (verdicts._NOT_CLAIMED, VerdictCode),
    (customer_words._SENTENCES, VerdictCode),
    (customer_words.NEEDED, set(VerdictCode) - UNDECIDED),
    (consequences._MEANING, set(VerdictCode) - BY_BANDS),
    (consequences._RECOMMENDED, VerdictCode),
    (consequences._LEFT, set(VerdictCode) - UNDECIDED - {VerdictCode.NO_FAULT_FOUND}),
    (consequences._WHAT_IT_IS, Kind),
    (consequences._DRIVING, Kind),
    (customer_words._SURE, Grade),
    (confidence._WORDS, Grade),
    (evidence_page.GRADES, Grade),
    (checks._RESULTS, Result),
    (checks._STATES, State),
    (how_measured._ROLES, Role),
    (record_names.STEP_NAMES, Step),
    (marker_readings._ROLES, Role),
    (technicians_part._CHOICES, Choice),
    (customer_page._CLOSING_NAMES, set(CLOSING)),
    (customer_page._AMOUNT_NAMES, set(OFFER_AMOUNTS)),
    (pairing.NAMES, Relation),
    (pairing.TITLES, Relation),
    (comparison_words._OUTCOMES, Change),
    (comparison_words._OUTCOMES_BESIDE, Change),
]
CHECK_CODES = {
    "recorder_zero",
    "ground_drop",
    "ground_steadiness",
    "reference_level",
    "reference_steadiness",
    "rest_variation",
    "signal_range",
    "low_end",
    "high_end",
    "signal_span",
    "track_agreement",
    "independent_linearity",
    "terminal_linearity",
    "hysteresis",
    "output_smoothness",
    "sample_rate",
}
"""Every check that the analysis makes; one that is added must be added here, with its words."""


def _templates(value: object) -> list[str]:
    if isinstance(value, Wording):
        return [value.template]
    if isinstance(value, Template):
        return [value.text]
    return [text for part in value for text in _templates(part)] if isinstance(value, tuple) else []


@pytest.mark.parametrize("place", range(len(TABLES)))
def test_every_table_has_words_for_every_member_in_both_languages(place: int) -> None:
    table, members = TABLES[place]
    wanted = set(members) if not isinstance(members, set) else members
    assert set(table) == wanted
    for value in table.values():
        for template in _templates(value):
            assert template.strip()
            assert template in GERMAN.messages or not re.search("[a-z]", template)


def test_every_member_of_what_is_found_is_tried_on_both_pages() -> None:
    """Enumerations of the findings that no table above covers are found here."""
    known = {members for _, members in TABLES if isinstance(members, type)}
    for name, kind in vars(facts).items():
        if isinstance(kind, type) and issubclass(kind, Enum) and kind.__module__ == facts.__name__:
            assert kind in {*known, facts.Direction}, name


def test_the_list_of_checks_is_that_of_the_code() -> None:
    found: set[str] = set()
    for path in (Path(examine.__code__.co_filename).parent).glob("checks*.py"):
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            if isinstance(node, ast.Constant) and isinstance(node.value, str):
                found |= {node.value} if re.fullmatch("[a-z]+(_[a-z]+)+|hysteresis", node.value) else set()
    assert found == CHECK_CODES


@pytest.mark.parametrize("path", SAMPLES, ids=lambda path: path.stem)
def test_every_check_of_a_sample_has_a_title_and_its_limit_has_an_owner_in_both_languages(path: Path) -> None:
    found, _, _ = _examined(path)
    assert found.checks
    for check in found.checks:
        assert check.code in CHECK_CODES
        assert isinstance(check.title, Wording)
        assert GERMAN.say(check.title) != ENGLISH.say(check.title)
        assert check.source


@pytest.mark.parametrize("result", Result)
@pytest.mark.parametrize("code", VerdictCode)
def test_every_verdict_prints_its_checks_with_their_outcome(code: VerdictCode, result: Result) -> None:
    made = example(code)
    made = replace(made, checks=tuple(replace(check, result=result) for check in made.checks))
    printed = repr(page_two(Subject(CAPTURE, made)).blocks)
    assert str(checks.result_name(result)) in printed
    assert "12.6 ± 3.0 mV" in printed


def test_a_negative_number_has_a_true_minus_sign_for_people_and_a_plain_one_in_files() -> None:
    text = say("{level_mv:.0f} mV at {when}", level_mv=-7.2, when="2026-04-14")
    assert str(text) == "-7 mV at 2026-04-14"
    assert ENGLISH.say(text) == "\N{MINUS SIGN}7 mV at 2026-04-14"
    assert GERMAN.say(say("{level_v:.2f} V", level_v=-0.5)) == "\N{MINUS SIGN}0,50 V"
    assert ENGLISH.say(say("{count:,}", count=-1200)) == "\N{MINUS SIGN}1,200"
    assert ENGLISH.say(number(-1.25, 2)) == "\N{MINUS SIGN}1.25"
