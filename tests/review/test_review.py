from __future__ import annotations

import json
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from analysis.captures import layout
from analysis.captures.fingerprint import file_sha256
from analysis.captures.model import ArraySource, Capture, Channel, Match, Record, Role, Scaling
from analysis.captures.verification import verify_capture
from analysis.captures.writing import write_capture
from analysis.errors import Cancelled, ReviewError
from analysis.intervals import Interval
from analysis.review.model import (
    Choice,
    Marker,
    PointMarker,
    Review,
    SpanMarker,
    TravelSpan,
    decided,
    moved,
    new_id,
    place_of,
    relabelled,
    with_decision,
    with_marker,
    with_note,
    without,
    without_decision,
)
from analysis.review.readings import (
    MOST_SAMPLES,
    PointReading,
    SpanReadings,
    TravelReadings,
    read_point,
    read_time_span,
    read_travel,
    readings_of,
    snapped,
    snapped_moment,
)
from analysis.review.sidecar import (
    ChangedReviewError,
    is_changed,
    put_elsewhere,
    read_again,
    read_sidecar,
    write_aside,
    write_sidecar,
)
from analysis.review.stored import NewerReviewError, parse_review, review_text
from tests.app.fakes import BAND, worn_capture, worn_findings

POINT = PointMarker("a", "004", 1.25, "here", "a note")
words = st.text(max_size=12)
finite = st.floats(-1e6, 1e6)
intervals = st.tuples(finite, finite).map(lambda ends: Interval(min(ends), max(ends)))
tracks = st.sampled_from([worn_findings().surveys[0].role])
kept = st.dictionaries(st.sampled_from(["colour", "seen"]), st.one_of(st.none(), words, finite), max_size=2)
places = st.one_of(
    st.builds(PointMarker, words, words, finite, words, words, kept),
    st.builds(SpanMarker, words, words, intervals, words, words, kept),
    st.builds(TravelSpan, words, tracks, intervals, words, words, kept),
)


@pytest.fixture
def capture_path(tmp_path: Path) -> Path:
    path = tmp_path / "worn.h5"
    write_capture(worn_capture(), path)
    return path


@given(st.lists(places, max_size=5, unique_by=lambda item: item.marker_id), words, kept)
def test_what_is_written_is_what_is_read(markers: list[Marker], sha256: str, more: dict[str, object]) -> None:
    review = Review("id", sha256, "", tuple(markers), kept=more)
    assert parse_review(review_text(review)) == review


def test_unknown_keys_and_kinds_are_kept() -> None:
    band = worn_findings().bands[0]
    review = with_decision(with_marker(Review("id"), POINT), band, decided(band, Choice.ACCEPTED, "1"))
    stored = json.loads(review_text(review))
    stored["extra"], stored["capture"]["extra"] = [1], {"x": None}
    stored["markers"][0]["extra"], stored["decisions"][0]["found"]["extra"] = "m", "f"
    stored["markers"].append({"kind": "sketch", "lines": [1.5]})
    again = json.loads(review_text(parse_review(json.dumps(stored))))
    assert again == stored


@pytest.mark.parametrize(
    "text",
    [
        "",
        "{",
        "[]",
        "null",
        "[" * 100_000,
        '{"schema": "other/1", "capture": {}}',
        '{"schema": "wornband-review/1"}',
        '{"schema": "wornband-review/1", "capture": {}, "markers": [{"kind": "point", "id": "a"}]}',
        '{"schema": "wornband-review/1", "capture": {}, "x": NaN}',
        '{"schema": "wornband-review/1", "capture": {}, "x": 1e999}',
        '{"schema": "wornband-review/1", "capture": {}, "markers": [{"kind": "span", "id": "a",'
        ' "record": "1", "start_s": 2, "stop_s": 1}]}',
        '{"schema": "wornband-review/1", "capture": {}, "markers": [{"kind": "point", "id": "a",'
        ' "record": "1", "time_s": true}]}',
    ],
    ids=range(12),
)
def test_a_damaged_review_is_refused_with_a_sentence(text: str) -> None:
    with pytest.raises(ReviewError, match="begin a new review"):
        parse_review(text)


def test_a_later_schema_is_refused_as_such() -> None:
    with pytest.raises(NewerReviewError, match="later version"):
        parse_review('{"schema": "wornband-review/2"}')


def test_an_edit_is_a_new_value_and_can_be_turned_back() -> None:
    before = with_marker(Review(), POINT)
    after = relabelled(moved(before, "a", 2.0), "a", "there")
    assert after.marker("a") == replace(POINT, time_s=2.0, label="there")
    assert before.marker("a") == POINT
    assert without(after, "a") == Review()
    with pytest.raises(ValueError, match="cannot be moved"):
        moved(before, "a", Interval(0.0, 1.0))


def test_what_the_program_found_stays_beside_what_the_technician_said() -> None:
    band = worn_findings().bands[0]
    said = decided(band, Choice.ADJUSTED, "1", adjusted=Interval(42.0, 47.0))
    review = with_decision(Review(), band, said)
    decision = review.decision(replace(band, travel=Interval(42.1, 47.9)))
    assert decision is not None
    assert decision.found == BAND
    assert review.decision(replace(band, travel=Interval(60.0, 66.0))) is None
    dismissed = with_decision(review, band, decided(band, Choice.DISMISSED, "1", reason="a scratch"))
    assert [item.choice for item in dismissed.decisions] == [Choice.DISMISSED]
    assert without_decision(dismissed, band) == Review()
    with pytest.raises(ValueError, match="adjusted"):
        decided(band, Choice.DISMISSED, "1", adjusted=BAND)


def test_a_span_reads_what_numpy_reads_of_its_samples() -> None:
    record = worn_capture().record("002")
    readings = read_time_span(record, snapped(record, Interval(0.50003, 1.5)))
    assert readings.count == 10_000
    for channel, reading in readings.channels:
        volts = channel.volts(5_000, 15_000)
        assert reading is not None
        assert reading.count == 10_000
        assert reading.mean_v.value == pytest.approx(np.mean(volts))
        assert reading.rms_v.value == pytest.approx(np.sqrt(np.mean(volts**2)))
        assert reading.peak_to_peak_v.value == pytest.approx(np.ptp(volts))
        assert reading.noise_v.value == pytest.approx(np.std(volts), rel=0.05)


def test_a_moment_reads_the_nearest_sample() -> None:
    record = worn_capture().record("002")
    at = snapped_moment(record, 0.50004)
    assert at == pytest.approx(0.5)
    for channel, reading in read_point(record, at).channels:
        assert reading is not None
        assert reading.value == channel.volts(5_000, 5_001)[0]


def test_a_band_of_the_technicians_own_counts_as_the_found_one_does() -> None:
    findings = worn_findings()
    band = findings.bands[0]
    here = read_travel(findings, band.track, band.travel)
    assert here is not None
    assert (here.band.passes, here.band.noisy_passes) == (band.passes, band.noisy_passes)
    assert here.band.output_smoothness_percent == pytest.approx(
        max(item.breakup_percent for item in band.crossings)
    )
    assert here.share.start == pytest.approx(12 / (12 + 1.96**2), abs=1e-3)  # Wilson (1927), all of 12
    nowhere = read_travel(findings, band.track, Interval(1.0, 3.0))
    assert nowhere is not None
    assert nowhere.band.passes == 0
    assert np.isnan(nowhere.band.confidence)


def test_a_review_comes_back_and_verifies(capture_path: Path) -> None:
    empty = read_sidecar(capture_path)
    assert not layout.review_path(capture_path).exists()
    review = with_marker(empty.review, POINT)
    write_sidecar(empty, review)
    before = file_sha256(capture_path)
    assert read_sidecar(capture_path).review == review
    assert verify_capture(capture_path).review is Match.MATCHES
    assert file_sha256(capture_path) == before


@pytest.mark.parametrize(
    "raw",
    [
        b"\xff\xfe",
        b"{}",
        b'{"schema": "wornband-review/9", "capture": {}}',
        b'{"schema": "wornband-review/1", "capture": {"sha256": "00"}}',
    ],
    ids=["no text", "damaged", "newer", "of another capture"],
)
def test_a_file_that_cannot_be_used_is_told_and_kept_once_there_is_something_to_write(
    capture_path: Path, raw: bytes
) -> None:
    path = layout.review_path(capture_path)
    path.write_bytes(raw)
    found = read_sidecar(capture_path)
    assert found.trouble
    assert path.read_bytes() == raw
    write_sidecar(found, with_marker(found.review, POINT))
    assert (capture_path.parent / "worn.review.kept-1.json").read_bytes() == raw
    again = read_sidecar(capture_path)
    assert not again.trouble
    assert again.review.markers == (POINT,)


def test_what_another_program_wrote_is_never_silently_overwritten(capture_path: Path) -> None:
    ours, theirs = read_sidecar(capture_path), read_sidecar(capture_path)
    write_sidecar(theirs, with_marker(theirs.review, replace(POINT, label="theirs")))
    mine = with_marker(ours.review, POINT)
    path = layout.review_path(capture_path)
    there = path.read_bytes()
    with pytest.raises(ChangedReviewError, match="another window or program"):
        write_sidecar(ours, mine)
    assert path.read_bytes() == there
    assert parse_review(write_aside(ours, mine).read_text("utf-8")) == mine
    write_sidecar(ours, mine, over_changes=True)
    assert (capture_path.parent / "worn.review.kept-2.json").read_bytes() == there
    assert read_sidecar(capture_path).review == mine


def test_ids_of_new_markers_never_meet() -> None:
    assert len({new_id() for _ in range(2000)}) == 2000


def test_a_note_changes_the_note_alone() -> None:
    before = with_marker(with_marker(Review(), POINT), replace(POINT, marker_id="b"))
    after = with_note(before, "a", "loose plug?")
    assert after.marker("a") == replace(POINT, note="loose plug?")
    assert after.marker("b") == before.marker("b")
    with pytest.raises(ValueError, match="no marker"):
        with_note(before, "c", "nobody")


def test_every_kind_of_marker_says_where_it_is_and_can_be_moved_there_again() -> None:
    track = worn_findings().surveys[0].role
    span, stretch = Interval(1.0, 2.0), Interval(40.0, 48.0)
    for marker, place in (
        (POINT, 1.25),
        (SpanMarker("s", "004", span), span),
        (TravelSpan("t", track, stretch), stretch),
    ):
        assert place_of(marker) == place
        review = with_marker(Review(), marker)
        assert moved(review, marker.marker_id, place_of(marker)) == review


def test_readings_go_by_the_kind_of_marker() -> None:
    capture, findings = worn_capture(), worn_findings()
    band = findings.bands[0]
    point = readings_of(POINT, capture, None)
    assert isinstance(point, PointReading)
    assert point == read_point(capture.record("004"), POINT.time_s)
    span = readings_of(SpanMarker("s", "002", Interval(0.5, 1.0)), capture, None)
    assert isinstance(span, SpanReadings)
    assert span == read_time_span(capture.record("002"), Interval(0.5, 1.0))
    travel = readings_of(TravelSpan("t", band.track, band.travel), capture, findings)
    assert isinstance(travel, TravelReadings)
    assert travel.band.noisy_passes == band.noisy_passes


def test_a_marker_whose_record_or_track_is_not_there_reads_nothing() -> None:
    capture, findings = worn_capture(), worn_findings()
    assert readings_of(replace(POINT, record="gone"), capture, findings) is None
    assert readings_of(TravelSpan("t", Role.SECOND_SIGNAL, Interval(1.0, 2.0)), capture, findings) is None
    assert readings_of(TravelSpan("t", Role.SIGNAL, Interval(1.0, 2.0)), capture, None) is None


def test_reading_a_span_can_be_stopped_between_two_channels() -> None:
    def stop(done: float) -> None:
        if done > 0.0:
            raise Cancelled("enough")

    with pytest.raises(Cancelled):
        readings_of(SpanMarker("s", "002", Interval(0.5, 1.0)), worn_capture(), None, stop)


def test_a_span_that_would_take_seconds_to_read_is_counted_and_not_read() -> None:
    source = ArraySource(np.zeros(MOST_SAMPLES + 2, dtype=np.int16))
    record = Record("1", 1e-4, (Channel("a", None, source, Scaling(scale_factor=0.001)),))
    capture = Capture("id", (record,))
    whole = readings_of(SpanMarker("s", "1", Interval(0.0, 1e6)), capture, None)
    assert isinstance(whole, SpanReadings)
    assert whole.too_long
    assert [reading for _, reading in whole.channels] == [None]
    assert whole.count == MOST_SAMPLES + 2


def test_what_lies_where_a_review_is_put_is_kept_aside(capture_path: Path, tmp_path: Path) -> None:
    target = tmp_path / "elsewhere.json"
    target.write_text("somebody's shopping list")
    moved_there = put_elsewhere(read_sidecar(capture_path), target)
    write_sidecar(moved_there, with_marker(moved_there.review, POINT))
    assert (tmp_path / "elsewhere.kept-1.json").read_text() == "somebody's shopping list"


def test_a_change_is_seen_and_read_again(capture_path: Path) -> None:
    fresh = read_sidecar(capture_path)
    ours = write_sidecar(fresh, with_marker(fresh.review, POINT))
    assert not is_changed(ours)
    theirs = read_sidecar(capture_path)
    write_sidecar(theirs, with_marker(theirs.review, replace(POINT, marker_id="b")))
    assert is_changed(ours)
    again = read_again(ours)
    assert [item.marker_id for item in again.review.markers] == ["a", "b"]
    assert not is_changed(again)
    layout.review_path(capture_path).unlink()
    assert is_changed(again)
    assert read_again(again).review.markers == ()
