"""The report calls a record as the window does, and programs read its name in the file as before."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path
from typing import Any

import pytest

from analysis.captures.model import Capture, Step
from analysis.captures.reading import open_capture
from analysis.captures.record_names import record_names
from analysis.diagnosis.examine import examine
from analysis.diagnosis.findings import Findings
from analysis.diagnosis.profiles import profile_for
from analysis.diagnosis.serialise import findings_object
from analysis.exposure.explain import explain
from analysis.exposure.serialise import exposure_object
from analysis.reports.comparison_report import comparison_report
from analysis.reports.findings_report import findings_report
from analysis.reports.pages import spoken
from analysis.reports.subject import Beside, Subject
from analysis.reports.whole_report import whole_report
from analysis.review.job import Job
from analysis.review.model import PointMarker, Review
from analysis.wording import ENGLISH, Language
from app.reporting.languages import report_language
from tests.reports.test_wordings import SAMPLES, _examined

BY_FILE = re.compile(r"([Rr]ecord|Aufzeichnung) \d\d\d")
WORN = next(path for path in SAMPLES if path.name == "W1041-rear-left-height.h5")
AIR = next(path for path in SAMPLES if path.name.startswith("W1091"))


def texts_of(item: object) -> list[str]:
    found: list[str] = []
    spoken(item, lambda text: found.append(text) or text)  # type: ignore[func-returns-value]
    return found


def pages(path: Path, language: Language) -> list[str]:
    with open_capture(path) as opened:
        capture, findings = opened.capture, examine(opened.capture)
        known = explain(capture, findings, profile_for(capture))
        first = capture.records[0].name
        review = Review(markers=(PointMarker("a", first, 0.1, "here"),), job=Job(markers=True))
        subject = Subject(capture, findings, review=review, why=known.sentences if known else ())
        other = Beside(capture, findings)
        return texts_of(whole_report(subject, beside=other, language=language).pages)


@pytest.mark.parametrize("path", SAMPLES, ids=lambda path: path.stem)
@pytest.mark.parametrize("code", ["en", "de"])
def test_no_page_of_a_report_calls_a_record_by_its_name_in_the_file(path: Path, code: str) -> None:
    language = ENGLISH if code == "en" else report_language(code)
    assert [text for text in pages(path, language) if BY_FILE.search(text)] == []


def cells(findings: Findings, capture: Capture) -> Iterator[str]:
    for section in findings_report(findings, capture).sections:
        if section.table is not None and section.table.heads[-1] in ("Record", "Records"):
            yield from (row[-1] for row in section.table.rows)


@pytest.mark.parametrize("path", SAMPLES, ids=lambda path: path.stem)
def test_tables_name_the_records_that_the_list_of_records_names(path: Path) -> None:
    findings, capture, _ = _examined(path)
    words = {re.sub(r" \d+$", "", name) for name in record_names(capture).values()} | {"–", "all"}
    told = [
        re.sub(r"\s\d+(–\d+)?$", "", part) for cell in cells(findings, capture) for part in cell.split(", ")
    ]
    assert told
    assert set(told) <= words


def test_a_page_says_which_record_in_the_file_each_name_is() -> None:
    with open_capture(WORN) as opened:
        told = texts_of(whole_report(Subject(opened.capture, examine(opened.capture))).pages)
    place = told.index("In file")
    assert told[place - 1] == "Record"
    after = told[place + 1 :]
    sweep = after.index("Sweep 1")
    assert after[sweep + 1] == "004"


def test_programs_read_the_names_in_the_file() -> None:
    findings, _, _ = _examined(AIR)
    assert any(str(line).startswith("Record 00") for line in findings_object(findings)["advice"])


def test_what_a_road_record_shows_names_it_on_paper_and_not_for_programs() -> None:
    with open_capture(WORN) as opened:
        whole = opened.capture
        last = next(item for item in whole.records if item.step is Step.SWEEP)
        made = tuple(replace(item, step=Step.ROAD) if item is last else item for item in whole.records)
        capture = replace(whole, records=made)
        findings = examine(capture)
        known = explain(capture, findings, profile_for(capture))
    assert known is not None
    object_: dict[str, Any] = exposure_object(known)
    assert f"modelled (record {last.name}, " in object_["paragraph"]
    told = findings_report(findings, capture, why=known.sentences)
    (why,) = [section for section in told.sections if section.title == "Why it comes and goes"]
    name = record_names(capture)[last.name]
    assert any(f"modelled ({name}, " in item for item in why.items)


def test_a_comparison_names_the_records_of_each_side() -> None:
    findings, capture, _ = _examined(WORN)
    made = comparison_report(Beside(capture, findings).compared(Subject(capture, findings)))
    assert [text for text in texts_of(made) if re.search(r", (record )?\d\d\d\b", text)] == []
