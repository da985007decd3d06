"""Fixtures of pages that take files as a technician brings them: a window that opens real ones."""

from __future__ import annotations

import os
import threading
from collections.abc import Iterator
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

import pytest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from analysis.captures.reading import open_capture
from app.main_window import Window
from app.session import Tools
from app.settings import MemoryStore, Settings
from app.window import application
from tests.app.fakes import nothing_found


@pytest.fixture(scope="session")
def qapp() -> QApplication:
    return application()


@pytest.fixture
def window(qtbot: QtBot, tmp_path: Path) -> Iterator[Window]:
    """A window that opens real files, with a folder of recipes of its own."""
    tools = Tools(lambda path, tick: open_capture(path), lambda capture, tick: nothing_found())
    made = Window(tools, Settings(MemoryStore()))
    made.imports.recipes = tmp_path / "recipes"
    yield from shown(qtbot, made)


def shown(qtbot: QtBot, made: Window) -> Iterator[Window]:
    """A window of 1366 x 768 while it is open; afterwards no thread of ours may be left."""
    qtbot.addWidget(made)
    made.resize(1366, 768)
    with qtbot.waitActive(made):
        made.show()
        made.activateWindow()
    yield made
    made.close()
    assert not [thread for thread in threading.enumerate() if thread.name.startswith("wornband")]
