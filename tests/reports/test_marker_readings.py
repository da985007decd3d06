"""What markers read, on the evidence page: the numbers are those of the Markers table."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from analysis.captures.model import Record, Role, Step
from analysis.captures.reading import open_capture
from analysis.diagnosis.examine import examine
from analysis.intervals import Interval
from analysis.reports.evidence_page import evidence_page
from analysis.reports.marker_readings import marker_readings
from analysis.reports.pages import Grid, Items
from analysis.reports.quantities import reading
from analysis.reports.subject import Subject
from analysis.reports.technicians_part import what_was_said
from analysis.review.job import Job
from analysis.review.model import PointMarker, Review, SpanMarker, TravelSpan
from analysis.review.readings import read_point, read_time_span
from app.reporting.languages import report_language

SAMPLE = Path(__file__).resolve().parents[2] / "sample_captures" / "W1041-rear-left-height.h5"
MARKERS = (
    PointMarker("a", "004", 1.5, "here"),
    SpanMarker("b", "006", Interval(1.0, 2.0)),
    TravelSpan("c", Role.SIGNAL, Interval(42.0, 49.0), "bad"),
    PointMarker("d", "099", 1.5, "gone"),
)


def table(subject: Subject) -> tuple[tuple[str, ...], ...]:
    return next(block.table.rows for block in marker_readings(subject) if isinstance(block, Grid))


def test_every_kind_of_marker_reads_on_paper_what_it_reads_in_the_window() -> None:
    with open_capture(SAMPLE) as opened:
        capture = opened.capture
        review = Review(markers=MARKERS, job=Job(markers=True))
        rows = table(Subject(capture, examine(capture), review=review))
        records = {item.name: item for item in capture.records}
        point = read_point(records["004"], 1.5).channels
        span = read_time_span(records["006"], Interval(1.0, 2.0)).channels
    assert len(rows) == len(point) + len(span) + 2
    assert rows[0][:2] == ("here", "record 004, 1.5000 s")
    for row, (_, item) in zip(rows, point, strict=False):
        assert item is not None
        assert row[3] == reading(item.value, item.expanded_uncertainty, "V")
    for row, (_, read) in zip(rows[len(point) :], span, strict=False):
        assert read is not None
        assert f"{read.count} samples" in row[3]
        assert reading(read.mean_v.value, read.mean_v.expanded_uncertainty, "V") in row[3]
    assert rows[len(point)][0] == "without a name"
    assert rows[-2][:3] == ("bad", "42.0–49.0 % of travel", "signal")
    assert rows[-2][3].startswith("breaks up on 18 of 18; very likely")
    assert rows[-1] == ("gone", "record 099, 1.5000 s", "–", "cannot be read")
    german = [report_language("de").say(cell) for row in rows for cell in row]
    assert not [text for text in german if "record" in text or "samples" in text or "breaks" in text]


@pytest.mark.parametrize(
    ("markers", "wanted"), [((), True), (MARKERS, False)], ids=["no marker", "not wanted"]
)
def test_nothing_is_printed_where_there_is_none_or_the_technician_does_not_want_it(
    markers: tuple[PointMarker, ...], wanted: bool
) -> None:
    with open_capture(SAMPLE) as opened:
        review = Review(markers=markers, job=Job(markers=wanted))
        subject = Subject(opened.capture, examine(opened.capture), review=review)
        assert not list(marker_readings(subject))
        assert "markers read" not in repr(evidence_page(subject).blocks)


def test_what_the_technician_said_carries_the_drop_of_a_point_and_the_figures_of_a_span() -> None:
    with open_capture(SAMPLE) as opened:
        capture = opened.capture
        findings = examine(capture)
        worst = next(item for item in findings.surveys if item.role is Role.SIGNAL).path("007")
        assert worst is not None
        record = next(item for item in capture.records if item.name == "007")
        band = findings.bands[0].travel
        inside = [
            time
            for time, at in zip(worst.time_s, worst.travel_percent, strict=True)
            if band.start <= at < band.stop
        ]
        dropped = [float(time) for time in inside if _signal_v(record, float(time)) < 0.5]
        markers = (PointMarker("p", "007", dropped[0], "the drop"), *MARKERS[1:])
        subject = Subject(capture, findings, review=Review(markers=markers))
        told = next(block.items for block in what_was_said(subject) if isinstance(block, Items))
        at_v = _signal_v(record, dropped[0])
    place = f"record 007, {dropped[0]:.4f} s"
    assert told[0].startswith(f"Marker of the technician: the drop ({place}: ")
    assert "; signal " in told[0]
    (figures,) = re.findall(r"drop ([\d.]+) ± ([\d.]+) V below ([\d.]+) V", told[0])
    drop_v, spread_v, belongs_v = map(float, figures)
    assert len({len(figure.partition(".")[2]) for figure in figures}) == 1
    assert drop_v == pytest.approx(belongs_v - at_v, abs=0.011)
    assert 0.0 < spread_v < 0.5 * drop_v
    assert findings.bands[0].volts.start - 0.05 <= belongs_v <= findings.bands[0].volts.stop + 0.05
    assert "record 006, 1.0000 to 2.0000 s" in told[1]
    assert "mean " in told[1]
    assert "breaks up on 18 of 18" in told[2]
    assert told[3].endswith("cannot be read)")


def _signal_v(record: Record, time_s: float) -> float:
    return next(
        item.value
        for channel, item in read_point(record, time_s).channels
        if channel.role is Role.SIGNAL and item is not None
    )


def test_where_a_lost_contact_lets_the_signal_rise_that_is_what_is_said() -> None:
    with open_capture(SAMPLE.with_name("W1072-front-left-height.h5")) as opened:
        capture = opened.capture
        findings = examine(capture)
        crossing = findings.bands[0].crossings[-1]
        record = next(item for item in capture.records if item.name == crossing.record)
        moments = [crossing.time.start + share * crossing.time.length for share in (0.3, 0.4, 0.5)]
        at_s = max(moments, key=lambda time_s: _signal_v(record, time_s))
        read_v = _signal_v(record, at_s)
        markers = (PointMarker("p", record.name, at_s, "the rise"),)
        subject = Subject(capture, findings, review=Review(markers=markers))
        told = next(block.items for block in what_was_said(subject) if isinstance(block, Items))
    (figures,) = re.findall(r"rise ([\d.]+) ± ([\d.]+) V above ([\d.]+) V", told[0])
    rise_v, spread_v, belongs_v = map(float, figures)
    assert rise_v == pytest.approx(read_v - belongs_v, abs=0.011)
    assert 0.0 < spread_v < 0.1 * rise_v
    assert rise_v > 1.0
    assert findings.bands[0].volts.start - 0.05 <= belongs_v <= findings.bands[0].volts.stop + 0.05


def test_the_table_of_markers_carries_the_drop_and_says_where_it_cannot_be_told() -> None:
    with open_capture(SAMPLE) as opened:
        capture = opened.capture
        findings = examine(capture)
        hold = next(item for item in capture.records if item.step is Step.HOLD)
        crossing = next(item for item in findings.bands[0].crossings if item.record == "004")
        record = next(item for item in capture.records if item.name == "004")
        times = [float(time) for time in _samples(record, crossing.time)]
        worst_s = min(times, key=lambda time_s: _signal_v(record, time_s))
        markers = (PointMarker("p", "004", worst_s), PointMarker("q", hold.name, 1.0))
        rows = table(Subject(capture, findings, review=Review(markers=markers, job=Job(markers=True))))
    assert re.fullmatch(r"drop [\d.]+ ± [\d.]+ V below [\d.]+ V", rows[len(record.channels)][3])
    assert rows[-1] == ("", "", "signal", "drop cannot be told")
    german = [report_language("de").say(cell) for cell in (rows[len(record.channels)][3], rows[-1][3])]
    assert german[0].startswith("Einbruch ")
    assert german[1] == "Einbruch lässt sich nicht sagen"


def _samples(record: Record, time: Interval) -> list[float]:
    start, stop = record.index_at(time.start), record.index_at(time.stop) + 1
    return [record.first_sample_s + index * record.sample_interval_s for index in range(start, stop)]
