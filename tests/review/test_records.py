from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from analysis.captures.memory import make_capture, make_record
from analysis.captures.model import Capture, Role, Step
from analysis.diagnosis.examine import examine
from analysis.errors import ReviewError
from analysis.intervals import Interval
from analysis.review.model import Review
from analysis.review.records import (
    RecordEdit,
    divided,
    edit_of,
    edited,
    parse_records,
    spans_of,
    split_accepted,
    split_refused,
    with_edit,
    with_word,
    without_span,
)
from analysis.review.stored import parse_review, review_text
from tests.diagnosis.examples import channel
from tests.diagnosis.test_splitting import _wire_to_wire

SPAN = Interval(0.2, 0.5)


def two_records() -> Capture:
    volts = np.linspace(0.5, 4.5, 1000)
    channels = [channel(Role.SIGNAL, volts), channel(Role.REFERENCE, np.full(1000, 5.0))]
    return make_capture([make_record(name, 1e-3, channels) for name in ("001", "002")])


def test_what_is_said_of_a_record_is_seen_in_it_and_in_no_other() -> None:
    capture = two_records()
    name = capture.records[0].channels[1].name
    edits = with_word((), "001", "step", "wiggle")
    edits = with_word(edits, "001", "temperature", "21.5")
    edits = with_word(edits, "001", "role", "ground", channel=name)
    edits = with_word(edits, "001", "probe_point", "sensor end", channel=name)
    changed = edited(capture, edits)
    assert changed.records[0].step is Step.WIGGLE
    assert changed.records[0].attributes["temperature"] == 21.5
    assert changed.records[0].channels[1].role is Role.GROUND
    assert changed.records[0].channels[1].attributes["probe_point"] == "sensor end"
    assert changed.records[0].channels[0] is capture.records[0].channels[0]
    assert changed.records[1] is capture.records[1]
    assert capture.records[0].step is not Step.WIGGLE


def test_nothing_said_gives_the_very_same_capture() -> None:
    capture = two_records()
    assert edited(capture, ()) is capture
    assert divided(capture, ()) is capture
    assert edited(capture, with_word((), "077", "step", "hold")) is capture


def test_an_empty_word_takes_away_what_the_file_says() -> None:
    capture = two_records()
    said = replace(capture.records[0], step=Step.SWEEP, attributes={"ignition": "on"})
    capture = replace(capture, records=(said,))
    edits = with_word(with_word((), "001", "step", ""), "001", "ignition", "")
    assert edited(capture, edits).records[0].step is None
    assert "ignition" not in edited(capture, edits).records[0].attributes


def test_the_last_word_holds_and_leaves_the_others() -> None:
    edits = with_word(with_word((), "001", "step", "hold"), "001", "engine", "off")
    edits = with_word(edits, "001", "step", "tap")
    assert edit_of(edits, "001").words == {"step": "tap", "engine": "off"}


def test_a_word_of_a_later_version_is_kept_and_changes_nothing() -> None:
    capture = two_records()
    edits = with_word((), "001", "step", "levitate")
    assert edited(capture, edits).records[0].step is capture.records[0].step
    assert parse_review(review_text(Review(records=edits))).records == edits


def test_a_span_is_examined_as_a_record_of_its_own_and_the_rest_stays() -> None:
    capture = two_records()
    edits = with_word((), "001", "step", "wiggle", time=SPAN)
    parts = divided(edited(capture, edits), edits).records
    assert [item.name for item in parts] == ["001", "001", "001", "002"]
    assert [item.step is Step.WIGGLE for item in parts] == [False, True, False, False]
    assert sum(len(item) for item in parts[:3]) == len(capture.records[0])
    assert parts[1].first_sample_s == pytest.approx(SPAN.start)
    assert parts[1].duration_s == pytest.approx(SPAN.length)
    joined = np.concatenate([item.channels[0].volts() for item in parts[:3]])
    assert np.array_equal(joined, capture.records[0].channels[0].volts())


def test_spans_that_overlap_share_no_sample() -> None:
    capture = two_records()
    edits = with_word((), "001", "step", "wiggle", time=Interval(0.2, 0.6))
    edits = with_word(edits, "001", "step", "tap", time=Interval(0.4, 0.8))
    parts = divided(capture, edits).records[:-1]
    assert sum(len(item) for item in parts) == len(capture.records[0])
    assert [item.step for item in parts if item.step in (Step.WIGGLE, Step.TAP)] == [Step.WIGGLE, Step.TAP]


def test_a_span_beyond_the_record_changes_nothing() -> None:
    capture = two_records()
    edits = with_word((), "001", "step", "tap", time=Interval(7.0, 9.0))
    assert [len(item) for item in divided(capture, edits).records] == [1000, 1000]


def test_a_splitting_that_is_accepted_gives_the_findings_that_proposed_it() -> None:
    capture = make_capture([_wire_to_wire(bad=True)])
    proposed = examine(capture)
    assert [item.role for item in proposed.parts] == [Role.GROUND, Role.REFERENCE, Role.SIGNAL]
    edits = split_accepted((), capture.records[0], proposed.parts)
    accepted = examine(divided(edited(capture, edits), edits))
    assert accepted.parts == ()
    assert accepted.verdict == proposed.verdict
    assert accepted.bands == proposed.bands


def test_a_record_that_is_said_to_be_of_one_wire_is_not_split() -> None:
    capture = make_capture([_wire_to_wire()])
    edits = split_refused((), capture.records[0])
    findings = examine(divided(edited(capture, edits), edits))
    assert findings.parts == ()
    assert findings.coverage != examine(capture).coverage


def test_without_its_last_span_nothing_of_a_record_is_left_out() -> None:
    capture = make_capture([_wire_to_wire()])
    edits = split_accepted((), capture.records[0], examine(capture).parts)
    for span in spans_of(edits, "001"):
        assert span.time is not None
        edits = without_span(edits, "001", span.time)
    assert divided(edited(capture, edits), edits) is edited(capture, edits)
    assert not edit_of(edits, "001").words


def test_what_is_said_survives_the_file_whole() -> None:
    edits = with_word((), "001", "step", "sweep")
    edits = with_word(edits, "001", "role", "signal", time=SPAN, channel="ch1")
    edits = with_edit(edits, RecordEdit("002", words={"loads": "lamps"}, kept={"later": 1}))
    again = parse_review(review_text(Review(records=edits)))
    assert again.records == edits
    assert review_text(again) == review_text(Review(records=edits))


def test_a_review_that_says_nothing_of_records_has_no_word_of_them() -> None:
    assert "records" not in review_text(Review())
    assert parse_review(review_text(Review())).records == ()


@pytest.mark.parametrize(
    "stored",
    [
        {},
        [3],
        [{"words": {}}],
        [{"record": 1}],
        [{"record": "001", "words": {"step": 3}}],
        [{"record": "001", "channels": {"a": []}}],
        [{"record": "001", "channels": []}],
        [{"record": "001", "start_s": 1.0}],
        [{"record": "001", "start_s": 2.0, "stop_s": 1.0}],
        [{"record": "001", "start_s": True, "stop_s": 2.0}],
    ],
)
def test_what_is_damaged_is_refused_with_a_sentence(stored: object) -> None:
    with pytest.raises(ReviewError, match="says of records"):
        parse_records(stored)
