"""What a capture costs the window's thread while it is opened: nothing is built twice for one fact."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import ParamSpec, TypeVar

import pytest
from pytestqt.qtbot import QtBot

from app.main_window import Window
from app.settings import MemoryStore, Settings
from app.tools import real_tools
from app.views.band_card import BandCard
from app.views.evidence import EvidenceView
from app.views.trace import TraceView
from tests.app.hands import copy_of_sample
from tests.app.real_files import shown

P = ParamSpec("P")
R = TypeVar("R")


@pytest.fixture
def window(qtbot: QtBot) -> Iterator[Window]:
    """A window of the program's own tools."""
    yield from shown(qtbot, Window(real_tools(), Settings(MemoryStore())))


@pytest.fixture
def built(monkeypatch: pytest.MonkeyPatch) -> Counter[str]:
    """How often the costly parts of the screen were built."""
    count: Counter[str] = Counter()

    def counted(name: str, work: Callable[P, R]) -> Callable[P, R]:
        def done(*args: P.args, **kwargs: P.kwargs) -> R:
            count[name] += 1
            return work(*args, **kwargs)

        return done

    monkeypatch.setattr(EvidenceView, "_fill", counted("evidence", EvidenceView._fill))
    monkeypatch.setattr(TraceView, "_rebuild", counted("curves", TraceView._rebuild))
    return count


def test_each_part_of_the_screen_is_built_once_for_what_it_shows(
    qtbot: QtBot, window: Window, built: Counter[str], tmp_path: Path
) -> None:
    built.clear()
    window.open_file(copy_of_sample("W1041-rear-left-height.h5", tmp_path))
    qtbot.waitUntil(lambda: window.session.findings is not None, timeout=30_000)
    qtbot.waitUntil(lambda: not window.jobs.busy(), timeout=30_000)
    assert window.focus.record is not None
    assert window.focus.record.name == "007"
    assert window.page.records.list.currentIndex().isValid()
    # Curves of the longest sweep as soon as the file is open, and of the record with the likeliest band.
    assert built == {"evidence": 1, "curves": 2}


def test_heights_that_become_known_are_said_on_the_cards_that_stand(
    qtbot: QtBot, window: Window, built: Counter[str], tmp_path: Path
) -> None:
    window.open_file(copy_of_sample("W1041-rear-left-height.h5", tmp_path))
    qtbot.waitUntil(lambda: window.session.findings is not None, timeout=30_000)
    before, choices = built["evidence"], window.why.choices
    assert choices is not None
    assert choices.heights is not None
    evidence = window.page.evidence
    (card,) = evidence.findChildren(BandCard)
    assert "mm of wheel travel below" in card.height_line.text()
    evidence.show_heights(None)
    assert card.height_line.isHidden()
    evidence.show_heights(choices.heights)
    assert not card.height_line.isHidden()
    assert "mm of wheel travel below" in card.height_line.text()
    assert built["evidence"] == before
