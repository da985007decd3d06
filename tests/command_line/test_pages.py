"""Text for a terminal: whatever a capture's words hold, they stay words."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from analysis.diagnosis.findings import State, Statement
from analysis.reports.document import Section, Table
from analysis.reports.findings_report import findings_report
from app.errands.text_report import report_text, section_lines
from app.printable import printable
from tests.reports.examples import CAPTURE, findings

HOSTILE = "\x1b[2J\x07 \u202egnorw\u202c <script>alert(1)</script> & \"quoted\" 'too'\nnew line"


@given(st.text(st.characters(), max_size=40))
def test_printable_text_holds_nothing_that_acts_on_a_terminal(text: str) -> None:
    safe = printable(text)
    assert all(character.isprintable() or character in "\u200c\u200d" for character in safe)
    assert len(safe.splitlines()) <= 1
    assert printable(safe) == safe


def test_control_characters_are_shown_as_codes_and_letters_stay() -> None:
    assert printable("a\x1b[2Jb\r\n\u202e\udcff\u00a0ü±–") == "a\\x1b[2Jb\\x0d\\x0a\\u202e\\udcff ü±–"


def test_nothing_from_a_capture_reaches_the_terminal_raw() -> None:
    capture = replace(CAPTURE, title=HOSTILE, attributes={"vehicle": HOSTILE, "complaint": HOSTILE})
    statement = Statement("x", State.PROVED, (HOSTILE,), HOSTILE)
    made = replace(findings(), evidence=(statement,), advice=(HOSTILE,), profile=HOSTILE)
    text = report_text(findings_report(made, capture, assumptions=(HOSTILE,)), f"{HOSTILE}.h5")
    for line in text.split("\n"):
        assert line.isprintable(), line
    assert "\\x1b[2J" in text


def test_the_text_says_verdict_bands_evidence_checks_and_advice() -> None:
    text = report_text(findings_report(findings(), CAPTURE), "some/capture.h5")
    assert text.startswith("some/capture.h5\nRide height sensor, rear left\n")
    for words in (
        "Sensor track worn: very likely (97 in 100)",
        "41.9–47.7",
        "0.3, 0.4",
        "2.09–2.37 V",
        "very likely (98 in 100)",
        "12.6 ± 3.0 mV",
        "at most 100 mV",
        "service manual of an",
        "Within limits",
        "proved",
        "Hold the arm at 45 %",
    ):
        assert words in text, words


def test_lines_stay_within_a_page_and_long_cells_go_on_below() -> None:
    long = "word " * 40
    section = Section("Title", (long,), (long,), Table(("State", "Statement"), (("proved", long),)))
    lines = section_lines(section)
    assert max(len(line) for line in lines) <= 100
    assert " ".join(" ".join(lines).split()).count("word") == 120


def test_a_table_refuses_a_row_of_another_length() -> None:
    with pytest.raises(ValueError, match="must have 2 cells"):
        Table(("a", "b"), (("1",),))
