"""A picture that stands alone holds a stranger's words as words, and every reader of XML takes it."""

from __future__ import annotations

from xml.etree import ElementTree

import pytest
from hypothesis import given
from hypothesis import strategies as st

from analysis.reports.drawing import Box, Drawing, Label, Stroke, line
from app.reporting.svg import svg_file, without_control_marks
from tests.reporting.examples import ODD

SPACE = "{http://www.w3.org/2000/svg}"
TAGS = {f"{SPACE}{name}" for name in ("svg", "path", "rect", "text")}


def drawn(text: str) -> ElementTree.Element:
    """A drawing in which everything that can be a word is this one, read back by a strict reader."""
    marks = (
        Stroke((line((0.0, 0.0), (1.0, 1.0)),), colour=text),
        Box(0.0, 0.0, 1.0, 1.0, colour=text),
        Label(1.0, 1.0, text),
    )
    return ElementTree.fromstring(svg_file(Drawing(10.0, 10.0, marks, text)).encode("utf-8"))


def check(root: ElementTree.Element, text: str) -> None:
    assert {item.tag for item in root.iter()} == TAGS
    names = {name for item in root.iter() for name in item.attrib}
    assert not [name for name in names if name.startswith("on") or "href" in name or name == "style"]
    (label,) = root.iter(f"{SPACE}text")
    # XML makes one line feed of every kind of line end (XML 1.0, section 2.11).
    shown = without_control_marks(text).replace("\r\n", "\n").replace("\r", "\n")
    assert (label.text or "") == shown


@pytest.mark.parametrize("name", ODD)
def test_odd_words_stay_words(name: str) -> None:
    check(drawn(ODD[name]), ODD[name])


@given(st.text(max_size=40))
def test_every_word_stays_a_word(text: str) -> None:
    check(drawn(text), text)
