"""A verdict that rests on something not shown never reads stronger than that, in either language."""

from __future__ import annotations

from dataclasses import replace
from itertools import product

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from analysis.diagnosis.findings import Findings, Result, State, Statement, VerdictCode
from analysis.reports import consequences
from analysis.reports.confidence import Grade, grade
from analysis.reports.customer_page import customer_page
from analysis.reports.customer_words import (
    ALSO_ASKED,
    NEEDED,
    Kind,
    capped_grade,
    customer_sentence,
    not_shown,
)
from analysis.reports.evidence_page import evidence_page
from analysis.reports.pages import Paragraph, Style
from analysis.reports.subject import Subject
from analysis.wording import ENGLISH, Language
from app.reporting.languages import report_language
from tests.reports.examples import CAPTURE, GROUND_DROP, findings

STRONGEST_FIRST = (
    Grade.VERY_LIKELY,
    Grade.LIKELY,
    Grade.MORE_LIKELY_THAN_NOT,
    Grade.POSSIBLE,
    Grade.NOT_RATED,
)
GERMAN = report_language("de")
SAID = {
    "en": {
        Grade.VERY_LIKELY: "Very likely ",
        Grade.LIKELY: "Probably ",
        Grade.MORE_LIKELY_THAN_NOT: "More likely than not, ",
        Grade.POSSIBLE: "It is possible, but not shown, that ",
        Grade.NOT_RATED: "It is possible, but not shown, that ",
    },
    "de": {
        Grade.VERY_LIKELY: "Sehr wahrscheinlich ",
        Grade.LIKELY: "Wahrscheinlich ",
        Grade.MORE_LIKELY_THAN_NOT: "Eher wahrscheinlich als nicht ",
        Grade.POSSIBLE: "Möglicherweise, aber nicht nachgewiesen, ",
        Grade.NOT_RATED: "Möglicherweise, aber nicht nachgewiesen, ",
    },
}
STATEMENTS = tuple(sorted({name for table in (NEEDED, ALSO_ASKED) for row in table.values() for name in row}))
DECIDES = [code for code in VerdictCode if code in NEEDED]
ABSENT = None


def made(
    code: VerdictCode, confidence: float, states: dict[str, State | None], result: Result = Result.PASS
) -> Findings:
    """Findings with each statement in its state, or without it, and one check with its result."""
    evidence = tuple(
        Statement(name, state, ("001",), f"Statement {name}.")
        for name, state in states.items()
        if state is not None
    )
    check = replace(GROUND_DROP, result=result)
    return replace(findings(code, confidence), evidence=evidence, checks=(check,))


def allowed(code: VerdictCode, states: dict[str, State | None]) -> Grade:
    """The strongest word that the evidence leaves, said apart from the code that caps it."""
    missing = [name for name in NEEDED.get(code, ()) if states[name] is not State.PROVED]
    alike = [name for name in ALSO_ASKED.get(code, ()) if states[name] is not State.PROVED]
    if len(missing) > 1 or any(states[name] is State.REFUTED for name in missing):
        return Grade.MORE_LIKELY_THAN_NOT
    return Grade.LIKELY if missing or alike else Grade.VERY_LIKELY


def strongest_said(text: str, language: Language) -> Grade:
    return next(item for item in STRONGEST_FIRST if SAID[language.code][item] in text)


@settings(max_examples=300, deadline=None)
@given(
    st.sampled_from(DECIDES),
    st.sampled_from(list(Result)),
    st.floats(0.0, 1.0) | st.just(float("nan")),
    st.fixed_dictionaries({name: st.sampled_from([*State, ABSENT]) for name in STATEMENTS}),
)
def test_no_word_of_either_page_is_stronger_than_the_number_and_what_was_shown(
    code: VerdictCode, result: Result, confidence: float, states: dict[str, State | None]
) -> None:
    found = made(code, confidence, states, result)
    most = max(allowed(code, states), grade(confidence), key=STRONGEST_FIRST.index)
    assert capped_grade(found) is most
    for language in (ENGLISH, GERMAN):
        sentence = language.say(customer_sentence(found))
        worded = Grade.POSSIBLE if most is Grade.NOT_RATED else most  # the two have the same words
        assert strongest_said(sentence, language) is worded
    subject = Subject(CAPTURE, found)
    blocks = [*customer_page(subject).blocks, *evidence_page(subject).blocks]
    leads = [item.text for item in blocks if isinstance(item, Paragraph) and item.style is Style.LEAD]
    assert len(leads) == 2
    if most is not Grade.VERY_LIKELY:
        for text in leads:
            assert "very likely" not in text.lower()
            assert "sehr wahrscheinlich" not in GERMAN.say(text).lower()


@pytest.mark.parametrize(("code", "kind"), list(product(DECIDES, Kind)))
def test_what_is_less_than_likely_is_never_told_as_a_fact_nor_a_reason_to_buy(
    code: VerdictCode, kind: Kind
) -> None:
    weak = made(code, 0.6, dict.fromkeys(STATEMENTS, State.PROVED))
    assert "does not prove it" in consequences.meaning(weak, kind)[1]
    assert "beweist es nicht" in GERMAN.say(consequences.meaning(weak, kind)[1])
    assert "Replace" not in consequences.recommended(weak)
    assert "does not prove it" in repr(evidence_page(Subject(CAPTURE, weak)).blocks)


def test_a_measurement_that_cannot_be_used_is_not_headed_as_if_measuring_again_were_likely() -> None:
    lead = next(
        block.text
        for block in evidence_page(Subject(CAPTURE, findings(VerdictCode.MEASUREMENT_PROBLEM, 0.98))).blocks
        if isinstance(block, Paragraph)
    )
    assert lead == "Measure again: this measurement is very likely not usable (98 in 100)"
    assert GERMAN.say(lead) == (
        "Noch einmal messen: Diese Messung ist sehr wahrscheinlich nicht brauchbar (98 von 100)"
    )


@pytest.mark.parametrize("code", DECIDES)
def test_everything_a_verdict_rests_on_that_is_missing_is_named_in_both_languages(code: VerdictCode) -> None:
    wanted = {*NEEDED[code], *ALSO_ASKED.get(code, ())}
    for name in wanted:
        states: dict[str, State | None] = dict.fromkeys(STATEMENTS, State.PROVED)
        for state in (State.NOT_SHOWN, ABSENT):
            states[name] = state
            (told,) = not_shown(made(code, 0.99, states))
            assert GERMAN.say(told) != told
        states[name] = State.REFUTED
        assert not_shown(made(code, 0.99, states)) == (f"Statement {name}.",)
