"""Words come from the findings and never read stronger than they are."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from analysis.diagnosis.findings import CoverageSpan, Result, State, Verdict, VerdictCode
from analysis.intervals import Interval
from analysis.reports import quantities
from analysis.reports.cautions import AFTERWARDS, PROBING, SUSPENSION, THROTTLE, WHO_DECIDES, cautions
from analysis.reports.checks import (
    check_sentence,
    conformance_share,
    decision_name,
    limit_text,
    result_name,
    state_name,
)
from analysis.reports.confidence import Grade, grade, in_words, odds, place_words
from analysis.reports.customer_words import customer_sentence
from analysis.reports.findings_report import band_sentence, cautions_section, findings_report, subject
from analysis.reports.verdicts import headline, is_watched, not_claimed, verdict_name
from tests.reports.examples import BAND, CAPTURE, GROUND_DROP, findings, with_band

ORDER = [Grade.POSSIBLE, Grade.MORE_LIKELY_THAN_NOT, Grade.LIKELY, Grade.VERY_LIKELY]


@pytest.mark.parametrize(
    ("probability", "words"),
    [
        (0.0, "possible (1 in 100)"),
        (0.31, "possible (31 in 100)"),
        (0.499, "possible (50 in 100)"),
        (0.5, "more likely than not (50 in 100)"),
        (0.8, "likely (80 in 100)"),
        (0.9499, "likely (95 in 100)"),
        (0.98, "very likely (98 in 100)"),
        (1.0, "very likely (99 in 100)"),
        (math.nan, "not rated"),
    ],
)
def test_a_probability_has_its_words_and_its_odds(probability: float, words: str) -> None:
    assert in_words(probability) == words


@given(st.floats(0.0, 1.0), st.floats(0.0, 1.0))
def test_more_confidence_never_reads_weaker(first: float, second: float) -> None:
    low, high = sorted((first, second))
    assert ORDER.index(grade(low)) <= ORDER.index(grade(high))
    assert odds(low) <= odds(high)
    assert 1 <= odds(low) <= 99


def test_only_a_place_that_was_asked_about_is_called_unlikely() -> None:
    assert place_words(0.026) == "very unlikely (3 in 100)"
    assert place_words(0.026, with_odds=False) == "very unlikely"
    assert in_words(0.026) == "possible (3 in 100)"
    for probability in (0.05, 0.4, 0.5, 0.8, 0.95, math.nan):
        assert place_words(probability) == in_words(probability)


def test_no_odds_are_given_where_the_probability_is_no_number() -> None:
    with pytest.raises(ValueError, match="NaN"):
        odds(math.nan)


@pytest.mark.parametrize("code", VerdictCode)
def test_every_verdict_has_a_name_a_limit_and_a_sentence_for_the_customer(code: VerdictCode) -> None:
    made = findings(code)
    assert verdict_name(code) in headline(made)
    assert "very likely (97 in 100)" in headline(made)
    for sentence in (not_claimed(code), customer_sentence(made)):
        assert sentence[0].isupper()
        assert sentence.endswith(".")
        assert "{" not in sentence


def test_the_customer_of_a_worn_sensor_hears_where_and_how_often_and_no_degree_of_wear() -> None:
    assert customer_sentence(findings()).endswith(
        " the position sensor is worn: its output breaks up at the same place of its travel"
        " (around 45 %), each of the 3 times that the arm passed it."
    )


def test_a_possible_band_is_not_told_to_the_customer_as_a_place() -> None:
    assert "around" not in customer_sentence(with_band(confidence=0.4))


def test_further_bands_are_counted() -> None:
    two = replace(findings(), bands=(BAND, replace(BAND, confidence=0.85)))
    assert "and at one other place" in customer_sentence(two)


@pytest.mark.parametrize("code", [VerdictCode.REFERENCE_FAULT, VerdictCode.GROUND_FAULT])
def test_a_fault_of_the_feed_is_never_laid_on_this_sensor(code: VerdictCode) -> None:
    assert "nothing against this sensor" in not_claimed(code)
    assert "sensor is" not in customer_sentence(findings(code))


def test_a_wiring_fault_never_means_a_new_harness() -> None:
    assert "does not say that the harness must be replaced" in not_claimed(VerdictCode.SIGNAL_WIRING)


@pytest.mark.parametrize("code", [VerdictCode.MEASUREMENT_PROBLEM, VerdictCode.INCONCLUSIVE])
def test_without_a_usable_measurement_the_customer_hears_of_no_fault(code: VerdictCode) -> None:
    sentence = customer_sentence(findings(code)).lower()
    assert "measure" in sentence
    assert "fault" not in sentence
    assert "worn" not in sentence


def test_no_fault_found_names_the_travel_that_was_tested() -> None:
    sound = replace(findings(VerdictCode.NO_FAULT_FOUND), bands=())
    assert "in 4–96 % of its travel." in customer_sentence(sound)
    holed = (CoverageSpan(Interval(4, 40), 3), CoverageSpan(Interval(60, 95), 3))
    assert "4–95 % of its travel (with gaps)" in customer_sentence(replace(sound, coverage=holed))
    joined = (CoverageSpan(Interval(4, 40), 3), CoverageSpan(Interval(40, 95), 3))
    assert "gaps" not in customer_sentence(replace(sound, coverage=joined))
    assert "travel" not in customer_sentence(replace(sound, coverage=()))


@pytest.mark.parametrize(
    ("result", "conformance", "words"),
    [
        (Result.PASS, 0.98, ": pass (within limits: 98 % sure)."),
        (Result.PASS, 1.0, ": pass (within limits: over 99 % sure)."),
        (Result.FAIL, 0.02, ": fail (outside limits: 98 % sure)."),
        (Result.FAIL, 1e-9, ": fail (outside limits: over 99 % sure)."),
        (
            Result.CANNOT_TELL,
            0.7,
            ": cannot tell, the uncertainty reaches across the limit (within limits: 70 % sure).",
        ),
        (Result.CANNOT_TELL, None, ": cannot tell."),
        (Result.PASS, None, ": pass."),
    ],
)
def test_a_check_says_reading_limit_outcome_and_how_sure_that_is(
    result: Result, conformance: float | None, words: str
) -> None:
    sentence = check_sentence(replace(GROUND_DROP, result=result, conformance=conformance))
    assert sentence == f"Ground drop 12.6 ± 3.0 mV, allowed at most 100 mV{words}"


def test_an_exact_reading_keeps_its_limits_or_does_not() -> None:
    exact = replace(GROUND_DROP, expanded_uncertainty=0.0, conformance=1.0)
    assert check_sentence(exact) == "Ground drop 12.6 mV, allowed at most 100 mV: pass."
    assert conformance_share(exact) == "100 %"
    assert conformance_share(replace(exact, conformance=0.0)) == "0 %"


@pytest.mark.parametrize(
    ("conformance", "words"),
    [(None, "–"), (1.0, "over 99 %"), (0.97, "97 %"), (0.5, "50 %"), (0.02, "2 %"), (0.0, "under 1 %")],
)
def test_the_share_within_limits_is_never_said_surer_than_99_in_100(
    conformance: float | None, words: str
) -> None:
    assert conformance_share(replace(GROUND_DROP, conformance=conformance)) == words


@pytest.mark.parametrize(
    ("result", "decided", "share"),
    [
        (Result.PASS, "not judged", "–"),
        (Result.FAIL, "fail", "over 99 %"),
        (Result.CANNOT_TELL, "cannot tell", "over 99 %"),
    ],
)
def test_nothing_passes_that_leaves_out_what_goes_beyond_its_limits(
    result: Result, decided: str, share: str
) -> None:
    partial = replace(GROUND_DROP, result=result, conformance=0.999, note="It breaks away; not judged here.")
    assert decision_name(partial) == decided
    assert conformance_share(partial) == share
    assert ("sure" in check_sentence(partial)) is (decided != "not judged")
    assert check_sentence(partial).startswith(f"Ground drop 12.6 ± 3.0 mV, allowed at most 100 mV: {decided}")
    report = findings_report(replace(findings(), checks=(partial,)), CAPTURE)
    table = next(section.table for section in report.sections if section.title == "Checks")
    assert table is not None
    rows = table.rows
    assert (rows[0][0], rows[0][4]) == (decided, share)


def test_limits_are_said_as_they_are_open() -> None:
    assert limit_text(replace(GROUND_DROP, lower_limit=4.8, upper_limit=5.2)) == "4.8 V to 5.2 V"
    assert limit_text(replace(GROUND_DROP, lower_limit=4.8, upper_limit=None)) == "at least 4.8 V"
    unlimited = replace(GROUND_DROP, upper_limit=None, result=Result.CANNOT_TELL)
    assert limit_text(unlimited) == "no limit"
    assert check_sentence(unlimited).endswith("no limit stated: cannot tell.")


def test_results_and_states_have_plain_names() -> None:
    assert [result_name(item) for item in Result] == ["pass", "fail", "cannot tell"]
    assert [state_name(item) for item in State] == ["proved", "refuted", "not shown"]


# JCGM 100:2008, 7.2.6: an expanded uncertainty is quoted to at most two significant digits, and the
# estimate is rounded to be consistent with it. The examples are ours.
@pytest.mark.parametrize(
    ("value", "spread", "unit", "text"),
    [
        (10.0574, 0.0271, "V", "10.057 ± 0.027 V"),
        (0.0126, 0.003, "V", "12.6 ± 3.0 mV"),
        (-0.0126, 0.003, "V", "−12.6 ± 3.0 mV"),
        (45.123, 3.7, "%", "45.1 ± 3.7 %"),
        (10000.0, 120.0, "S/s", "10000 ± 120 S/s"),
        (9.0, 0.0, "crossings", "9 crossings"),
        (5.003, math.nan, "V", "5 V (uncertainty unknown)"),
        (math.nan, 0.1, "V", "–"),
    ],
)
def test_the_uncertainty_decides_how_many_digits_a_reading_has(
    value: float, spread: float, unit: str, text: str
) -> None:
    assert quantities.reading(value, spread, unit) == text


def test_zero_has_no_sign() -> None:
    assert quantities.number(-0.0001, 2) == "0.00"
    assert quantities.quantity(0.0, "V") == "0 V"


def test_a_band_below_one_half_is_possible_and_to_be_watched() -> None:
    assert not is_watched(BAND)
    assert is_watched(replace(BAND, confidence=0.49))
    assert is_watched(replace(BAND, confidence=math.nan))
    sentence = band_sentence(replace(BAND, confidence=0.31))
    assert sentence.startswith("Possible band, watch it: 41.9–47.7 % of travel, 2.09–2.37 V")
    assert "possible (31 in 100)" in sentence


def test_the_report_has_every_part_in_the_order_of_the_questions() -> None:
    report = findings_report(findings(), CAPTURE, assumptions=("record 001 states no step",))
    assert [section.title for section in report.sections] == [
        "Bands",
        "Chain of evidence",
        "Checks",
        "Travel tested",
        "What this does not say",
        "What to do next",
        "Taken as given",
        "Made from",
    ]
    assert report.headline == "Sensor track worn: very likely (97 in 100)"
    assert ("Vehicle", "Halvorsen Tern 4") in report.subject


def test_parts_without_content_are_left_out_but_no_travel_tested_is_said() -> None:
    bare = replace(
        findings(VerdictCode.INCONCLUSIVE),
        bands=(),
        checks=(),
        evidence=(),
        coverage=(),
        advice=(),
        surveys=(),
    )
    report = findings_report(bare, CAPTURE)
    titles = {section.title: section for section in report.sections}
    assert set(titles) == {"Travel tested", "What this does not say", "Made from"}
    assert titles["Travel tested"].sentences == ("No travel was tested.",)


def _coverage(*spans: tuple[float, float, int]) -> tuple[str, ...]:
    coverage = tuple(CoverageSpan(Interval(start, stop), passes) for start, stop, passes in spans)
    report = findings_report(replace(findings(), coverage=coverage), CAPTURE)
    return next(section.items for section in report.sections if section.title == "Travel tested")


def test_stretches_that_touch_are_told_as_one_with_their_least_count() -> None:
    assert _coverage((40, 95.5, 4), (4, 40, 9)) == (
        "4.0–95.5 % of travel: tested 4 times or more everywhere",
    )


def test_gaps_part_the_travel_and_what_was_crossed_seldom_is_named() -> None:
    assert _coverage((-4, 20, 1), (20, 30, 2), (30, 50, 8), (60, 70, 3)) == (
        "−4.0 to 50.0 % of travel: tested once or more; less than 3 times at −4.0 to 30.0 % (1)",
        "60.0–70.0 % of travel: tested 3 times or more everywhere",
    )


def test_the_subject_leaves_out_what_the_capture_does_not_say() -> None:
    assert subject(replace(CAPTURE, attributes={"vehicle": " ", "job": "W1041"})) == (("Job", "W1041"),)


def test_the_summary_is_passed_on_word_for_word() -> None:
    verdict = Verdict(VerdictCode.INCONCLUSIVE, 0.4, "Nothing is shown either way.")
    report = findings_report(replace(findings(), verdict=verdict), CAPTURE)
    assert report.lead == ("Nothing is shown either way.",)


def test_cautions_fit_the_sensor_and_are_complete_where_it_is_unknown() -> None:
    assert cautions("ride-height rear left") == (SUSPENSION, PROBING, AFTERWARDS, WHO_DECIDES)
    assert cautions("accelerator pedal") == (THROTTLE, PROBING, WHO_DECIDES)
    assert cautions() == (SUSPENSION, THROTTLE, PROBING, AFTERWARDS, WHO_DECIDES)
    assert cautions_section(CAPTURE).items[0] == SUSPENSION
