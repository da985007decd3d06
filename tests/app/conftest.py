"""A window with hand-made captures behind it, on no screen unless one is asked for."""

from __future__ import annotations

import os
from collections.abc import Callable, Iterator
from dataclasses import dataclass, field
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

import pytest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from analysis.captures.model import Capture
from analysis.diagnosis.findings import Findings
from analysis.errors import CaptureError
from analysis.progress import Tick
from app.main_window import Window
from app.session import Tools
from app.settings import MemoryStore, Settings
from app.window import application
from tests.app.fakes import FakeOpened, worn_capture, worn_findings
from tests.app.real_files import shown


@dataclass
class Bench:
    """Tools whose behaviour a test can set."""

    capture: Capture = field(default_factory=worn_capture)
    findings: Callable[[Capture, Tick], Findings] = worn_findings
    opened: list[FakeOpened] = field(default_factory=list)
    refuse: set[str] = field(default_factory=set)
    others: dict[str, Capture] = field(default_factory=dict)

    def open_capture(self, path: Path, tick: Tick) -> FakeOpened:
        if path.name in self.refuse:
            raise CaptureError(f"{path.name} is not a capture", "save it from the recorder again")
        tick(0.0)
        self.opened.append(FakeOpened(self.others.get(path.name, self.capture)))
        return self.opened[-1]

    def examine(self, capture: Capture, tick: Tick) -> Findings:
        return self.findings(capture, tick)


@pytest.fixture(scope="session")
def qapp() -> QApplication:
    return application()


@pytest.fixture
def bench() -> Bench:
    return Bench()


@pytest.fixture
def window(qtbot: QtBot, bench: Bench) -> Iterator[Window]:
    """An empty window of 1366 x 768; afterwards no thread of ours may be left."""
    made = Window(Tools(bench.open_capture, bench.examine), Settings(MemoryStore()))
    yield from shown(qtbot, made)


@pytest.fixture
def review(qtbot: QtBot, window: Window) -> Window:
    """The window with the worn capture examined."""
    with qtbot.waitSignal(window.session.findings_changed):
        window.open_file(Path("worn.h5"))
    qtbot.waitUntil(lambda: window.page.track.empty_text == "")
    return window
