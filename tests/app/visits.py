"""Windows that read and write real files: the worn capture in a folder, and its review beside it."""

from __future__ import annotations

import threading
from collections.abc import Callable, Iterator
from functools import partial
from pathlib import Path

import pytest
from PySide6.QtWidgets import QToolButton
from pytestqt.qtbot import QtBot

from analysis.captures.reading import open_capture
from analysis.captures.writing import write_capture
from analysis.review.model import PointMarker, with_marker
from analysis.review.sidecar import read_sidecar, write_sidecar
from app.main_window import Window
from app.session import Tools
from app.settings import MemoryStore, Settings
from tests.app.fakes import worn_capture, worn_findings

Make = Callable[[], Window]


@pytest.fixture
def path(tmp_path: Path) -> Path:
    folder = tmp_path / "visits"
    folder.mkdir()
    write_capture(worn_capture(), folder / "worn.h5")
    return folder / "worn.h5"


@pytest.fixture
def make(qtbot: QtBot, tmp_path: Path) -> Iterator[Make]:
    """Makes windows that read and write real files, as many as a test wants."""
    made: list[Window] = []

    def new() -> Window:
        read = partial(read_sidecar, spare_folder=tmp_path / "own")
        tools = Tools(lambda path, _tick: open_capture(path), worn_findings, read)
        window = Window(tools, Settings(MemoryStore()))
        qtbot.addWidget(window)
        with qtbot.waitActive(window):  # keys go to the window in front
            window.show()
            window.activateWindow()
        made.append(window)
        return window

    yield new
    for window in made:
        window.close()
    assert not [thread for thread in threading.enumerate() if thread.name.startswith("wornband")]


def opened(qtbot: QtBot, window: Window, path: Path) -> Window:
    with qtbot.waitSignal(window.session.findings_changed):
        window.open_file(path)
    qtbot.waitUntil(lambda: window.desk.keeper.path is not None and not window.desk.keeper.waiting)
    return window


def labels(window: Window) -> list[str]:
    return [row.label for row in window.page.markers.rows]


def tools_of(window: Window) -> dict[str, QToolButton]:
    bar = window.page.problem_bar
    return {item.text(): item for item in bar.findChildren(QToolButton) if item.isVisible() and item.text()}


def theirs(path: Path, marker_id: str = "theirs") -> None:
    """What another program does to the review."""
    read = read_sidecar(path)
    write_sidecar(read, with_marker(read.review, PointMarker(marker_id, "004", 2.0, marker_id)))
