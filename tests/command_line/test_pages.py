"""Text for a terminal, one HTML file and a drawing: whatever a capture's words hold, they stay words."""

from __future__ import annotations

import xml.etree.ElementTree as ElementTree
from dataclasses import replace
from html.parser import HTMLParser

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from analysis.captures.model import Role
from analysis.diagnosis.findings import State, Statement
from analysis.reports.document import Report, Section, Table
from analysis.reports.findings_report import findings_report
from app.html_report import report_html
from app.printable import printable
from app.text_report import report_text, section_lines
from app.track_picture import track_svg
from tests.reports.examples import BAND, CAPTURE, findings, survey

HOSTILE = "\x1b[2J\x07 \u202egnorw\u202c <script>alert(1)</script> & \"quoted\" 'too'\nnew line"

OUR_TAGS = {
    *("html", "head", "meta", "title", "style", "body", "section"),
    *("h1", "h2", "p", "dl", "dt", "dd", "ul", "li", "table", "tr", "th", "td"),
}


class _Words(HTMLParser):
    """Collects tags and the words between them."""

    def __init__(self) -> None:
        super().__init__()
        self.tags: set[str] = set()
        self.words: list[str] = []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.tags.add(tag)
        assert not [name for name, _ in attrs if name.startswith("on")]

    def handle_data(self, data: str) -> None:
        self.words.append(data)


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
        "service manual of an invented maker",
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


@given(st.text(max_size=60))
def test_every_word_in_the_page_comes_back_as_it_was_and_makes_no_tag(text: str) -> None:
    words = text.replace("\r", " ").replace("\x00", " ")
    section = Section(words, (words,), (words,), Table((words,), ((words,),)))
    reader = _Words()
    reader.feed(report_html(Report(words, ((words, words),), words, (words,), (section,)), customer=words))
    reader.close()
    assert reader.tags <= OUR_TAGS
    assert "".join(reader.words).count(words) >= 11


def test_the_page_loads_and_runs_nothing() -> None:
    page = report_html(
        findings_report(findings(), replace(CAPTURE, title=HOSTILE)),
        svg=track_svg(findings()),
        picture_png=b"\x89PNG",
        picture_caption=HOSTILE,
    )
    reader = _Words()
    reader.feed(page)
    assert "script" not in reader.tags
    assert "default-src 'none'" in page
    assert 'src="data:image/png;base64,' in page
    assert page.count("http") == page.count("http://www.w3.org/2000/svg") + page.count("http-equiv")


def test_the_drawing_is_sound_xml_with_one_hatched_stretch_for_each_band_where_it_lies() -> None:
    made = findings()
    drawing = ElementTree.fromstring(track_svg(made))
    name = "{http://www.w3.org/2000/svg}"
    (band,) = drawing.findall(f"{name}rect")
    left, width = float(band.get("x", "")), float(band.get("width", ""))
    below = [item for item in drawing.findall(f"{name}text") if item.get("text-anchor") == "middle"]
    ticks = {item.text: float(item.get("x", "0")) for item in below}
    scale = (ticks["100"] - ticks["0"]) / 100
    assert (left - ticks["0"]) / scale == pytest.approx(BAND.travel.start, abs=0.1)
    assert width / scale == pytest.approx(BAND.travel.length, abs=0.1)


def test_a_gap_in_a_crossing_is_a_gap_in_its_line() -> None:
    holed = survey()
    holed.breakup_percent[:, 5] = np.nan
    drawing = track_svg(replace(findings(), surveys=(holed,)))
    lines = [
        item.get("d", "")
        for item in ElementTree.fromstring(drawing).iter()
        if item.get("stroke-width") == "1.8"
    ]
    assert len(lines) == 1
    assert lines[0].count("M") == 2  # one stretch on either side of the gap


def test_nothing_is_drawn_where_no_track_was_swept() -> None:
    assert track_svg(replace(findings(), surveys=())) == ""
    empty = replace(survey(), breakup_percent=np.empty((0, 10)), crossings=())
    assert track_svg(replace(findings(), surveys=(empty,))) == ""
    unseen = replace(survey(), breakup_percent=np.full((2, 10), np.nan))
    assert track_svg(replace(findings(), surveys=(unseen,))) == ""


def test_the_drawing_shows_the_track_that_the_band_is_on() -> None:
    second = replace(survey(), role=Role.SECOND_SIGNAL, breakup_percent=np.full((2, 10), 70.0))
    made = replace(findings(), surveys=(survey(), second))
    on_second = replace(made, bands=(replace(BAND, track=Role.SECOND_SIGNAL),))
    assert ">100<" in track_svg(on_second)
    assert track_svg(made) != track_svg(on_second)
