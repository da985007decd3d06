"""What the customer reads is capped by the number and by what was shown."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import replace

import pytest

from analysis.captures.model import Role
from analysis.diagnosis.findings import Band, CoverageSpan, Event, Findings, State, Statement, VerdictCode
from analysis.intervals import Interval
from analysis.reports import consequences
from analysis.reports.confidence import Grade
from analysis.reports.customer_page import amount, customer_page, program_words
from analysis.reports.customer_words import _UNSAID as UNSAID
from analysis.reports.customer_words import (
    ALSO_ASKED,
    NEEDED,
    Kind,
    capped_grade,
    customer_sentence,
    kind_of,
    needed_missing,
    not_shown,
    told_plainly,
)
from analysis.reports.evidence_page import evidence_page
from analysis.reports.pages import Block, Boxes, Columns, Facts, Items, Paragraph
from analysis.reports.subject import Beside, Subject
from analysis.review.job import Job
from analysis.review.model import Choice, Review, decided, with_decision
from app.reporting.languages import report_language
from tests.reports.examples import BAND, CAPTURE, findings

FAULTS = (
    VerdictCode.WORN_TRACK,
    VerdictCode.SENSOR_OUTPUT_FAULT,
    VerdictCode.SIGNAL_WIRING,
    VerdictCode.REFERENCE_FAULT,
    VerdictCode.GROUND_FAULT,
    VerdictCode.OUT_OF_RANGE,
)
EVERY_STATEMENT = (
    "wiring_quiet",
    "not_the_loom",
    *sorted({code for codes in NEEDED.values() for code in codes}),
)


def shown(code: VerdictCode, confidence: float = 0.97, **states: State) -> Findings:
    """Findings in which everything is proved but what is said otherwise."""
    evidence = tuple(
        Statement(name, states.get(name, State.PROVED), ("001",), f"Statement {name}.")
        for name in EVERY_STATEMENT
    )
    return replace(findings(code, confidence), evidence=evidence)


@pytest.mark.parametrize("code", FAULTS)
@pytest.mark.parametrize(
    ("confidence", "words"),
    [(0.97, "Very likely "), (0.85, "Probably "), (0.6, "More likely than not, "), (0.3, "It is possible, ")],
)
def test_with_everything_shown_the_words_are_as_sure_as_the_number(
    code: VerdictCode, confidence: float, words: str
) -> None:
    assert customer_sentence(shown(code, confidence)).startswith(words)


@pytest.mark.parametrize("code", FAULTS)
def test_one_thing_not_shown_takes_very_likely_away_and_is_said(code: VerdictCode) -> None:
    for name in NEEDED[code]:
        made = shown(code, 0.99, **{name: State.NOT_SHOWN})
        assert customer_sentence(made).startswith("Probably "), name
        assert UNSAID[name] in not_shown(made)


@pytest.mark.parametrize("code", list(ALSO_ASKED))
def test_what_looks_alike_and_was_not_ruled_out_takes_very_likely_away(code: VerdictCode) -> None:
    for name in ALSO_ASKED[code]:
        made = shown(code, 0.99, **{name: State.NOT_SHOWN})
        assert customer_sentence(made).startswith("Probably "), name
        assert UNSAID[name] in not_shown(made)
        assert "Replace the position sensor" in consequences.recommended(made)
    said = repr(evidence_page(Subject(CAPTURE, made)).blocks)
    assert "likely at most, as something was not shown (99 in 100 by what was recorded)" in said
    assert "very likely (99 in 100)" not in said


@pytest.mark.parametrize("code", [code for code in FAULTS if len(NEEDED[code]) > 1])
def test_two_things_not_shown_or_one_refuted_read_as_no_more_than_more_likely_than_not(
    code: VerdictCode,
) -> None:
    first, second = NEEDED[code][:2]
    for made in (
        shown(code, 0.99, **{first: State.NOT_SHOWN, second: State.NOT_SHOWN}),
        shown(code, 0.99, **{first: State.REFUTED}),
    ):
        assert capped_grade(made) is Grade.MORE_LIKELY_THAN_NOT
        assert "before a part is bought" in consequences.recommended(made)


@pytest.mark.parametrize("code", VerdictCode)
def test_a_statement_that_is_absent_counts_as_not_shown(code: VerdictCode) -> None:
    bare = replace(findings(code, 0.99), evidence=())
    assert needed_missing(bare) == NEEDED.get(code, ())
    assert len(not_shown(bare)) >= len(NEEDED.get(code, ()))


def test_the_cap_never_makes_words_surer() -> None:
    order = [Grade.POSSIBLE, Grade.MORE_LIKELY_THAN_NOT, Grade.LIKELY, Grade.VERY_LIKELY]
    for confidence in (0.3, 0.6, 0.85, 0.97):
        free = capped_grade(shown(VerdictCode.WORN_TRACK, confidence))
        capped = capped_grade(shown(VerdictCode.WORN_TRACK, confidence, ground_good=State.NOT_SHOWN))
        assert order.index(capped) <= order.index(free)


@pytest.mark.parametrize("code", VerdictCode)
@pytest.mark.parametrize("kind", Kind)
def test_every_verdict_has_its_words_for_every_kind_of_sensor(code: VerdictCode, kind: Kind) -> None:
    made = shown(code)
    every = (
        customer_sentence(made),
        *consequences.meaning(made, kind),
        consequences.driving(made, kind),
        consequences.if_left(made),
        consequences.recommended(made),
        consequences.not_included(made),
    )
    for sentence in every:
        assert sentence[0].isupper()
        assert sentence.endswith(".")
        assert "{" not in sentence


@pytest.mark.parametrize("code", [VerdictCode.INCONCLUSIVE, VerdictCode.MEASUREMENT_PROBLEM])
def test_what_decides_nothing_recommends_no_part_and_blames_no_sensor(code: VerdictCode) -> None:
    made = shown(code)
    assert "No part should be bought" in consequences.recommended(made)
    assert "does not answer" in consequences.driving(made, Kind.HEIGHT)
    assert "worn" not in customer_sentence(made)
    assert "sensor is" not in customer_sentence(made)


@pytest.mark.parametrize("code", VerdictCode)
def test_only_a_sensor_that_is_surely_faulty_is_to_be_replaced(code: VerdictCode) -> None:
    sensor = code in (VerdictCode.WORN_TRACK, VerdictCode.SENSOR_OUTPUT_FAULT)
    assert ("Replace the position sensor" in consequences.recommended(shown(code))) is sensor
    assert "Replace" not in consequences.recommended(shown(code, 0.6))


@pytest.mark.parametrize("code", [VerdictCode.REFERENCE_FAULT, VerdictCode.GROUND_FAULT])
def test_a_fault_of_the_feed_is_never_laid_on_this_sensor(code: VerdictCode) -> None:
    assert "sensor is" not in customer_sentence(shown(code))


def test_no_fault_found_never_says_that_all_is_well() -> None:
    made = shown(VerdictCode.NO_FAULT_FOUND)
    assert customer_sentence(made) == (
        "No fault was seen in the position sensor and the wires that were measured, in 4–96 % of its travel."
        " Very likely there is none in what was tested."
    )
    assert "may have been away" in " ".join(consequences.meaning(made, Kind.HEIGHT))
    assert "does not answer" in consequences.driving(
        shown(VerdictCode.NO_FAULT_FOUND, ground_good=State.NOT_SHOWN, reference_good=State.NOT_SHOWN),
        Kind.HEIGHT,
    )


def test_a_possible_band_is_not_told_to_the_customer_as_a_place() -> None:
    made = replace(shown(VerdictCode.WORN_TRACK), bands=(replace(BAND, confidence=0.4),))
    assert "around" not in customer_sentence(made)


def test_further_bands_are_counted() -> None:
    second = replace(BAND, confidence=0.85)
    made = shown(VerdictCode.WORN_TRACK)
    assert "and at one other place" in customer_sentence(replace(made, bands=(BAND, second)))
    assert "and at 2 other places" in customer_sentence(replace(made, bands=(BAND, second, second)))
    third = replace(BAND, confidence=0.6)
    said = customer_sentence(replace(made, bands=(third, BAND, second, third)))
    assert said.endswith("and at one other place, and perhaps at 2 other places.")


def test_what_it_means_counts_the_places_and_the_times_that_were_found() -> None:
    def told(*bands: Band) -> str:
        made = replace(shown(VerdictCode.WORN_TRACK), bands=bands)
        return consequences.meaning(made, Kind.HEIGHT)[1]

    often, seldom = replace(BAND, noisy_passes=2), replace(BAND, noisy_passes=1)
    assert told(BAND).startswith("At one place it drops out instead, each time the arm passes:")
    assert told(often).startswith("At one place it drops out instead, most times the arm passes:")
    assert "some of the times" in told(seldom)
    assert told(BAND, BAND).startswith("At 2 places it drops out")
    assert told(BAND, replace(BAND, confidence=0.6)).startswith("At one place it drops out")
    assert told().startswith("At times it drops out")


def test_the_surest_band_is_told_first_whatever_the_order() -> None:
    weak, sure = replace(BAND, confidence=0.55), replace(BAND, confidence=0.9)
    made = replace(shown(VerdictCode.WORN_TRACK), bands=(weak, sure))
    assert told_plainly(made) == [sure]
    assert told_plainly(replace(made, bands=(weak,))) == [weak]


def test_a_short_stretch_is_told_with_the_words_that_there_is_more() -> None:
    made = replace(shown(VerdictCode.NO_FAULT_FOUND), coverage=(CoverageSpan(Interval(10.0, 57.0), 3),))
    assert "in 10–57 % of its travel; the rest was not tested. Very likely" in customer_sentence(made)


def test_no_fault_found_is_as_sure_as_the_number_and_what_was_shown() -> None:
    said = customer_sentence(shown(VerdictCode.NO_FAULT_FOUND, 0.99, ground_good=State.NOT_SHOWN))
    assert said.endswith("Probably there is none in what was tested.")
    assert "It is possible, but not shown, that there is none" in customer_sentence(
        shown(VerdictCode.NO_FAULT_FOUND, 0.4)
    )


def test_the_kind_is_read_from_what_the_capture_says() -> None:
    assert kind_of(CAPTURE) is Kind.HEIGHT
    assert kind_of(replace(CAPTURE, title="", attributes={"sensor": "Throttle sensor"})) is Kind.PEDAL
    assert kind_of(replace(CAPTURE, title="", attributes={})) is Kind.OTHER


def page_one(job: Job | None = None, made: Findings | None = None, beside: Beside | None = None) -> str:
    subject = Subject(CAPTURE, made or findings(), review=Review(job=job or Job()))
    return repr(customer_page(subject, beside).blocks)


def test_the_odds_stand_on_page_one_only_where_they_are_switched_on() -> None:
    assert "97 in 100" not in page_one()
    assert "97 in 100" in page_one(Job(show_number=True))


def test_the_technicians_words_stand_in_place_of_the_programs_and_page_two_says_both() -> None:
    review = Review(job=Job(words={"sentence": "My own words."}))
    subject = Subject(CAPTURE, findings(), review=review)
    lead = next(
        block
        for block in customer_page(subject).blocks
        if isinstance(block, Paragraph) and block.key == "sentence"
    )
    assert lead.text == "My own words."
    assert lead.own
    said = repr(evidence_page(subject).blocks)
    assert program_words(subject)["sentence"] in said
    assert "changed by the technician" in said


def test_a_finding_that_the_technician_dismissed_is_no_longer_told_to_the_customer() -> None:
    made = findings()
    review = with_decision(Review(), BAND, decided(BAND, Choice.DISMISSED, "1", reason="loose bracket"))
    subject = Subject(CAPTURE, made, review=review)
    said = repr(customer_page(subject).blocks)
    assert "technician does not accept" in said
    assert "Replace the position sensor" not in said
    assert "loose bracket" in repr(evidence_page(subject).blocks)


def test_an_offer_is_added_up_with_its_tax() -> None:
    offer = {"part": "180", "labour": "95,50", "calibration": "40", "tax_percent": "19", "currency": "EUR"}
    subject = Subject(CAPTURE, findings(), review=Review(job=Job(offer=offer)))
    rows = dict(
        row for block in customer_page(subject).blocks if isinstance(block, Facts) for row in block.rows
    )
    assert rows["Part"] == "180.00 EUR"
    # 315.50 and 19 % of it: 59.945, rounded to the nearest cent, a half to the even one.
    assert rows["Tax, 19 %"] in ("59.94 EUR", "59.95 EUR")
    assert float(rows["Total"].split()[0]) == pytest.approx(315.50 + float(rows["Tax, 19 %"].split()[0]))


@pytest.mark.parametrize("currency", ["EUR", ""])
def test_every_amount_of_an_offer_is_written_in_the_language_of_the_report(currency: str) -> None:
    offer = {"part": "180", "labour": "95.50", "tax_percent": "19", "currency": currency}
    subject = Subject(CAPTURE, findings(), review=Review(job=Job(offer=offer)))
    shown = [
        report_language("de").say(text)
        for block in customer_page(subject).blocks
        if isinstance(block, Facts)
        for name, text in block.rows
        if name in ("Part", "Labour", "Total") or name.startswith("Tax")
    ]
    assert shown == [f"{amount} {currency}".strip() for amount in ("180,00", "95,50", "52,34", "327,84")]


def test_an_offer_in_words_is_printed_as_it_is_and_not_added_up() -> None:
    said = page_one(Job(offer={"part": "on request", "labour": "90"}))
    assert "on request" in said
    assert "Total" not in said


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("1 180,50", 1180.5),
        ("180", 180.0),
        ("0.05", 0.05),
        ("-3", None),
        ("1e9", None),
        ("nan", None),
        ("", None),
    ],
)
def test_an_amount_is_a_plain_number_or_none(text: str, value: float | None) -> None:
    assert amount(text) == value


def test_no_offer_leaves_nothing_to_sign() -> None:
    assert "Signature" not in page_one()


def boxes(page: object) -> dict[str, bool]:
    return {text: done for block in page.blocks if isinstance(block, Boxes) for text, done in block.items}  # type: ignore[attr-defined]


def test_the_closing_list_stands_there_after_a_repair_with_what_is_done_ticked() -> None:
    subject = Subject(CAPTURE, findings(), review=Review(job=Job(repaired=True, closing=("road_test",))))
    ticked = [text for text, done in boxes(customer_page(subject)).items() if done]
    assert ticked == ["road test done"]
    assert len(boxes(customer_page(subject))) == 5
    assert not boxes(customer_page(Subject(CAPTURE, findings())))


def flat(blocks: Iterable[Block]) -> Iterator[Block]:
    """Every block, those in columns too."""
    for block in blocks:
        yield from flat(block.blocks) if isinstance(block, Columns) else (block,)


def test_what_was_not_shown_stands_on_page_two_as_such() -> None:
    made = shown(VerdictCode.WORN_TRACK, 0.9, not_the_loom=State.NOT_SHOWN)
    items = [
        block for block in flat(evidence_page(Subject(CAPTURE, made)).blocks) if isinstance(block, Items)
    ]
    assert any("Statement not_the_loom." in block.items for block in items)
    assert UNSAID["not_the_loom"] in page_one(made=made)


def test_six_fault_codes_stand_on_page_one_and_the_rest_on_page_two() -> None:
    codes = ", ".join(f"C1{number:03d}" for number in range(200))
    subject = Subject(CAPTURE, findings(), review=Review(job=Job(facts={"fault_codes": codes})))
    first, second = repr(customer_page(subject).blocks), repr(evidence_page(subject).blocks)
    assert "C1005" in first
    assert "C1006" not in first
    assert "194 more" in first
    assert all(f"C1{number:03d}" in second for number in range(200))


def test_an_event_without_a_place_needs_its_record_to_be_drawn() -> None:
    made = replace(
        findings(VerdictCode.SIGNAL_WIRING),
        bands=(),
        events=(Event("009", Interval(0.1, 0.2), (Role.SIGNAL,), -2.0, None, "drop"),),
    )
    assert customer_page(Subject(CAPTURE, made)).blocks
