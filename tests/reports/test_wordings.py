"""Every sentence that reaches a person remembers its template, so that a catalogue can translate it."""

from __future__ import annotations

import re
from collections.abc import Iterator
from functools import cache
from pathlib import Path

import pytest

from analysis.captures.model import Capture
from analysis.captures.reading import open_capture
from analysis.diagnosis.examine import examine
from analysis.diagnosis.findings import Findings
from analysis.diagnosis.serialise import findings_object
from analysis.errors import CaptureError
from analysis.reports.cautions import cautions
from analysis.reports.customer_words import customer_sentence
from analysis.reports.document import Report
from analysis.reports.findings_report import band_sentence, findings_report
from analysis.reports.quantities import NO_VALUE
from analysis.wording import Language, Wording

SAMPLES = sorted((Path(__file__).resolve().parents[2] / "sample_captures").glob("*.h5"))
FIXED_NUMBERS = ("in 100)", "SHA-256")
"""Numbers that are part of an expression, and no values."""

SHOUTING = Language("xx", {}, "·")
"""No language, but numbers that went in as numbers come out with its mark."""


@cache
def _examined(path: Path) -> tuple[Findings, Capture, tuple[str, ...]]:
    with open_capture(path) as opened:
        return examine(opened.capture), opened.capture, opened.assumptions


def _said(findings: Findings) -> Iterator[str]:
    yield findings.verdict.summary
    yield from findings.verdict.possible_causes
    yield from findings.advice
    yield from (item.text for item in findings.evidence)
    yield from (item.text for item in findings.record_outcomes)
    yield from (item.title for item in findings.checks)


def _printed(report: Report) -> Iterator[str]:
    """Everything but the title and the values of the subject, which are the technician's own words."""
    yield from (name for name, _ in report.subject)
    yield report.headline
    yield from report.lead
    for section in report.sections:
        yield from (section.title, *section.sentences, *section.items)
        if section.table is not None:
            yield from section.table.heads
            yield from (cell for row in section.table.rows for cell in row)


def _templates(text: str) -> Iterator[str]:
    if isinstance(text, Wording):
        yield text.template
        for value in text.values.values():
            yield from _templates(value)


@pytest.mark.parametrize("path", SAMPLES, ids=lambda path: path.stem)
def test_every_sentence_of_the_findings_is_a_wording_with_its_numbers_as_values(path: Path) -> None:
    findings, _, assumptions = _examined(path)
    said = [*_said(findings), *assumptions, customer_sentence(findings), *map(band_sentence, findings.bands)]

    assert [text for text in said if not isinstance(text, Wording)] == []
    for template in (template for text in said for template in _templates(text)):
        free = re.sub(r"{[^}]*}", "", template)
        for fixed in FIXED_NUMBERS:
            free = free.replace(fixed, "")
        assert not re.search("[0-9]", free), template


@pytest.mark.parametrize("path", SAMPLES, ids=lambda path: path.stem)
def test_every_word_of_a_report_is_a_wording_or_stands_in_the_capture(path: Path) -> None:
    findings, capture, assumptions = _examined(path)
    names = {record.name for record in capture.records}

    for text in _printed(findings_report(findings, capture, assumptions=assumptions)):
        own = {part for piece in text.split(", ") for part in piece.split("–")}
        assert isinstance(text, Wording) or text == NO_VALUE or own <= names, text


@pytest.mark.parametrize("path", SAMPLES, ids=lambda path: path.stem)
def test_no_decimal_point_is_left_in_another_language(path: Path) -> None:
    findings, capture, assumptions = _examined(path)
    said = [
        *_said(findings),
        *_printed(findings_report(findings, capture, assumptions=assumptions)),
        customer_sentence(findings),
    ]

    for text in said:
        if isinstance(text, Wording) and findings.analysis_version not in text:
            assert not re.search(r"[0-9]\.[0-9]", SHOUTING.say(text)), text
    assert any("·" in SHOUTING.say(text) for text in said)


def test_the_cautions_are_wordings() -> None:
    assert all(isinstance(line, Wording) for line in cautions())


def test_json_holds_the_english_sentences_as_plain_strings() -> None:
    findings, _, _ = _examined(SAMPLES[0])
    stored = findings_object(findings)

    assert stored["verdict"]["summary"] == str(findings.verdict.summary)


def test_an_error_can_be_said_in_another_language(tmp_path: Path) -> None:
    (tmp_path / "empty.h5").touch()
    with pytest.raises(CaptureError) as raised:
        open_capture(tmp_path / "empty.h5")
    german = Language("de", {"the file is empty": "die Datei ist leer"})

    assert german.say(raised.value.sentence).startswith("die Datei ist leer; ")
    assert str(raised.value) == raised.value.sentence
