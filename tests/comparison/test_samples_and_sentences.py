"""The sample captures set against each other, and what is said of them."""

from __future__ import annotations

import json
import re

import pytest

from analysis.captures.model import Role
from analysis.comparison.compare import compare
from analysis.comparison.model import Change, Comparison, Relation
from analysis.comparison.serialise import SCHEMA, comparison_error, comparison_object
from analysis.comparison.side import Side
from analysis.diagnosis.serialise import json_line
from analysis.reports.comparison_report import comparison_report
from analysis.wording import Language, Wording
from app.errands.text_report import report_text
from app.reporting.languages import report_language
from tests.comparison.examples import (
    AFTER,
    AXLE,
    BAND,
    BEFORE,
    FRONT_AFTER,
    FRONT_BEFORE,
    RIGHT,
    sample,
    side,
)
from tests.reports.test_json_contract import NUMBER, assert_keeps

_TESTED = {
    "passes": int,
    "noisy_passes": int,
    "confidence": NUMBER,
    "speed_percent_per_s": NUMBER,
    "sample_rate_hz": NUMBER,
    "recorder_floor_percent": NUMBER,
    "worst_breakup_percent": NUMBER,
    "conditions": {},
}
_COMPARED = {
    "path": str,
    "capture_id": str,
    "sha256": str,
    "title": str,
    "verdict": {"code": str, "confidence": NUMBER},
}
CONTRACT = {
    "schema": str,
    "analysis_version": str,
    "relation": str,
    "before": _COMPARED,
    "after": _COMPARED,
    "summary": str,
    "cautions": [str],
    "bands": [
        {
            "track": str,
            "start_percent": NUMBER,
            "end_percent": NUMBER,
            "change": str,
            "reasons": [str],
            "test": {"method": str, "p_value": NUMBER},
            "share_difference": [NUMBER],
            "before": _TESTED,
            "after": _TESTED,
        }
    ],
    "checks": [
        {
            "code": str,
            "title": str,
            "unit": str,
            "difference": NUMBER,
            "expanded_uncertainty": NUMBER,
        }
    ],
    "tested_by_both": [[NUMBER]],
}


def _compared(before: str, after: str) -> Comparison:
    return compare(sample(before), sample(after))


def test_before_and_after_the_repair_the_band_is_gone() -> None:
    found = _compared(BEFORE, AFTER)
    assert [item.change for item in found.bands] == [Change.GONE]
    assert re.fullmatch(
        r"The band at 42\.\d–48\.\d % of travel is gone: the output broke up on (\d+) of \1 crossings before,"
        r" on none of \d+ after\.",
        found.summary,
    )
    assert found.cautions == ()


def test_in_the_reverse_order_it_has_appeared() -> None:
    found = _compared(AFTER, BEFORE)
    assert [item.change for item in found.bands] == [Change.APPEARED]
    assert "has appeared" in found.summary


def test_an_after_that_did_not_visit_the_band_says_so() -> None:
    found = _compared(FRONT_BEFORE, FRONT_AFTER)
    assert [item.change for item in found.bands] == [Change.NOT_SHOWN]
    assert "is not shown to be cured: it was not crossed after" in found.summary
    assert "gone" not in found.summary


@pytest.mark.parametrize("file", [BEFORE, AFTER, RIGHT, AXLE])
def test_a_sample_beside_itself_differs_in_nothing(file: str) -> None:
    found = _compared(file, file)
    assert all(item.change in (Change.STILL_THERE, Change.NOT_SHOWN) for item in found.bands)
    assert all(item.difference == 0.0 and not item.exceeds for item in found.checks)
    assert [str(item) for item in found.cautions] == ["Both sides are the same capture."]


def test_left_against_right_the_band_is_on_the_left_alone() -> None:
    right = sample(RIGHT, mirrored=True)
    found = compare(sample(BEFORE), right, relation=Relation.LEFT_RIGHT)
    assert "is on the left alone" in found.summary
    assert "on none of" in found.summary
    turned = compare(right, sample(BEFORE), relation=Relation.LEFT_RIGHT)
    assert "is on the left alone" in turned.summary
    assert turned.titles == ("Right", "Left")


def test_two_sound_sensors_have_no_band_and_no_difference() -> None:
    found = _compared(AFTER, RIGHT)
    assert found.bands == ()
    assert found.summary.startswith("Neither shows a band in the travel that both tested, 10.")
    assert found.summary.endswith("No reading differs by more than its uncertainty.")


def test_both_corners_of_an_axle_are_compared_track_by_track() -> None:
    found = _compared(AXLE, AXLE)
    likely = [item for item in found.bands if item.confidence >= 0.5]
    assert {item.track for item in likely} == {Role.SIGNAL}


def test_the_words_follow_the_relation_and_the_numbers_do_not() -> None:
    one, two = side(BAND), side()
    said = {relation: compare(one, two, relation=relation) for relation in Relation}
    assert len({item.summary for item in said.values()}) == len(Relation)
    assert len({item.bands[0].p_value for item in said.values()}) == 1
    assert "is on the known good one alone" in said[Relation.KNOWN_GOOD].summary


def test_no_sentence_promises_more_than_its_counts() -> None:
    pairs = [(BEFORE, AFTER), (AFTER, BEFORE), (FRONT_BEFORE, FRONT_AFTER), (BEFORE, BEFORE), (BEFORE, RIGHT)]
    for relation in Relation:
        for before, after in pairs:
            said = compare(sample(before), sample(after), relation=relation).summary
            assert not re.search(r"\b(certain|proves|proven|repaired|definitely|always|guarantee)", said)


def test_the_sentence_can_be_said_in_another_language() -> None:
    found = _compared(BEFORE, AFTER)
    part = found.summary.values["part0"]
    assert isinstance(part, Wording)
    german = Language(
        "de",
        {
            part.template: "Das Band bei {travel} ist weg: {bad1} von {all1} vorher, {all2} danach ohne.",
            "{start:.1f}–{stop:.1f} % of travel": "{start:.1f}–{stop:.1f} % des Wegs",
        },
        ",",
    )
    assert re.match(
        r"Das Band bei 42,\d–48,\d % des Wegs ist weg: 18 von 18 vorher", german.say(found.summary)
    )


@pytest.mark.parametrize(
    "pair", [(BEFORE, AFTER), (FRONT_BEFORE, FRONT_AFTER), (AFTER, RIGHT), (AXLE, BEFORE)]
)
def test_the_json_keeps_its_contract(pair: tuple[str, str]) -> None:
    made = comparison_object(_compared(*pair), paths=("a.h5", "b.h5"))
    again = json.loads(json_line(made))
    assert_keeps(again, CONTRACT)
    assert again["schema"] == SCHEMA == "wornband-comparison/1"
    assert again["before"]["mirrored"] is again["after"]["mirrored"] is False
    assert (again["before"]["path"], again["after"]["path"]) == ("a.h5", "b.h5")


def test_the_json_of_a_failure_names_both_files_and_the_one_that_failed() -> None:
    made = comparison_error(("a.h5", "b.h5"), "b.h5", "it is cut short; save it again")
    assert json.loads(json_line(made)) == {
        "schema": SCHEMA,
        "before": {"path": "a.h5"},
        "after": {"path": "b.h5"},
        "failed": "b.h5",
        "error": "it is cut short; save it again",
    }


def test_the_text_shows_the_sentence_the_counts_the_test_and_every_reading() -> None:
    found = _compared(BEFORE, AFTER)
    text = report_text(comparison_report(found), "a - b")
    assert str(found.summary)[:60] in text
    assert "Fisher's exact test" in text
    assert "18 of 18" in text
    assert "p < 0.001" in text
    for item in found.checks:
        assert item.title.split(",")[0].split(" ")[0] in text
    assert "not crossed" in report_text(comparison_report(_compared(FRONT_BEFORE, FRONT_AFTER)), "a - b")


def test_what_one_record_shows_is_not_taken_for_the_whole() -> None:
    one = Side(sample(BEFORE).capture, sample(BEFORE).findings, record="004")
    found = compare(one, sample(AFTER))
    (told,) = [item for item in found.cautions if "Only part of a capture is compared" in item]
    assert told.startswith("Only part of a capture is compared: Sweep 1, all records;")
    german = report_language("de").say(told)
    assert german.startswith("Verglichen wird nur ein Teil einer Messung: Durchlauf 1, alle Aufzeichnungen;")
    assert "Sweep 1" in report_text(comparison_report(found), "a - b")


def test_two_corners_in_one_capture_are_compared_with_each_other() -> None:
    made = sample(AXLE)
    left = Side(made.capture, made.findings, track=Role.SIGNAL)
    right = Side(made.capture, made.findings, mirrored=True, track=Role.SECOND_SIGNAL)
    found = compare(left, right, relation=Relation.LEFT_RIGHT)
    likely = [item for item in found.bands if item.confidence >= 0.5]
    assert len(likely) == 1
    assert "same capture" not in " ".join(found.cautions)
    assert (likely[0].first.noisy_passes, likely[0].second.noisy_passes) == (likely[0].first.passes, 0)
