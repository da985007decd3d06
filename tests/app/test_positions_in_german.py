"""Where a sensor sits is said in the window's language where the capture says it in known words."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from analysis.comparison.model import Relation
from analysis.comparison.pairing import why_not
from analysis.comparison.positions import Position
from analysis.reports.findings_report import subject
from analysis.wording import Language
from app.compare.heads import telling
from app.language import said, window_language
from app.main_window import Window
from app.session import Tools
from app.settings import MemoryStore, Settings
from tests.app.conftest import Bench
from tests.app.fakes import worn_capture
from tests.app.real_files import shown
from tests.app.tongues import speaking

WHERE = "rear left"


@pytest.fixture
def german(qapp: QApplication) -> Iterator[Language]:
    """The language of the window."""
    with speaking(qapp, "de"):
        yield window_language()


def test_the_head_of_the_window_says_it_in_german_and_the_capture_keeps_its_words(
    qtbot: QtBot, bench: Bench, german: Language
) -> None:
    capture = worn_capture()
    mounted = replace(
        capture, title="Sensor", attributes={**capture.attributes, "mounting": WHERE, "complaint": "sits low"}
    )
    bench.others["mounted.h5"] = mounted
    window = Window(Tools(bench.open_capture, bench.examine), Settings(MemoryStore()))
    for made in shown(qtbot, window):
        with qtbot.waitSignal(made.session.findings_changed, timeout=20_000):
            made.open_file(Path("mounted.h5"))
        told = made.page.subtitle.text()
        assert "hinten links" in told
        assert WHERE not in told
        assert "sits low" in told  # anybody's own words stay
        recorded = made.session.capture
        assert recorded is not None
        assert recorded.text("mounting") == WHERE


def test_compare_says_it_in_german(german: Language) -> None:
    one, other = Position(WHERE, "ride height sensor"), Position("rear right", "ride height sensor")
    assert "hinten links" in said(why_not(Relation.BEFORE_AFTER, one, other) or "")
    assert "hinten links" in said(why_not(Relation.LEFT_RIGHT, one, one) or "")
    capture = worn_capture()
    first = replace(capture, title="Sensor one", attributes={"mounting": WHERE})
    assert "hinten links" in telling(first, replace(first, title="Sensor two"))


def test_the_report_says_it_in_german(german: Language) -> None:
    told = subject(replace(worn_capture(), attributes={"mounting": "Rear left", "vehicle": "Tern"}))
    assert [german.say(value) for _, value in told] == ["Tern", "Hinten links"]
