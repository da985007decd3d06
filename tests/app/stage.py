"""A window that a picture is taken of: on real samples, in a language and a theme, on no screen."""

from __future__ import annotations

import threading
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass, replace
from pathlib import Path

from PySide6.QtCore import QLocale
from PySide6.QtGui import QImage
from PySide6.QtWidgets import QApplication, QWidget
from pytestqt.qtbot import QtBot

from analysis.captures.model import Capture
from analysis.diagnosis.findings import Findings
from analysis.progress import Tick
from app.language import install_language
from app.main_window import Window
from app.settings import MemoryStore, Settings
from app.tools import real_tools
from app.workbench import Workbench
from tests.app import hands


@dataclass
class Stage:
    """A window, a folder for its files, and what it takes to bring it into a state.

    Parameters
    ----------
    qtbot : QtBot
    window : Window
    folder : Path
    go_on : threading.Event
        An examination waits while it is not set.
    """

    qtbot: QtBot
    window: Window
    folder: Path
    go_on: threading.Event

    def open(self, name: str) -> None:
        """Open a copy of a sample, and wait until it is examined and its review is read."""
        with self.qtbot.waitSignal(self.window.session.findings_changed, timeout=20_000):
            self.window.open_file(self.copy(name))
        self.until(lambda: not self.window.keeper.waiting)

    def copy(self, name: str) -> Path:
        """A copy of a sample, which a review may be left beside."""
        path = self.folder / name
        return path if path.exists() else hands.copy_of_sample(name, self.folder)

    def do(self, action: str) -> None:
        """What the menu entry does."""
        self.window.actions_by_name[action].trigger()

    def until(self, fact: Callable[[], bool]) -> None:
        """Wait for a fact."""
        self.qtbot.waitUntil(fact, timeout=20_000)

    def compare(self, first: str, second: str) -> None:
        """Set two samples against each other."""
        self.open(first)
        self.do("compare")
        hands.drop(self.window, self.copy(second))
        self.compared()

    def compared(self) -> None:
        """Wait until Compare has nothing more to do."""
        desk = self.window.compare
        self.until(lambda: desk.comparison is not None and not any(jobs.busy() for jobs in desk.every_jobs))


@contextmanager
def stage_for(
    qtbot: QtBot, application: QApplication, folder: Path, language: str, theme: str
) -> Iterator[Stage]:
    """A shown window with nothing open; closed, and its language taken back, at the end."""
    go_on, tools = threading.Event(), real_tools()
    go_on.set()

    def examine(capture: Capture, tick: Tick) -> Findings:
        tick(0.3)
        go_on.wait(20.0)
        return tools.examine(capture, tick)

    before, settings = QLocale(), Settings(MemoryStore())
    settings.language, settings.colours = language, theme
    made = Workbench(application, replace(tools, examine=examine), settings)
    made.window.resize(1366, 768)
    with qtbot.waitActive(made.window):  # keys go to no other
        made.window.show()
        made.window.activateWindow()
    try:
        yield Stage(qtbot, made.window, folder, go_on)
    finally:
        go_on.set()
        made.window.close()
        made.window.deleteLater()
        made.deleteLater()
        install_language(application, "en")
        QLocale.setDefault(before)


def still(qtbot: QtBot, widget: QWidget) -> QImage:
    """The picture of a widget once nothing in it moves any more: the layout takes several turns."""
    seen: list[QImage] = []

    def same() -> bool:
        seen.append(widget.grab().toImage())
        return len(seen) > 3 and seen[-1] == seen[-2] == seen[-3]

    qtbot.waitUntil(same, timeout=20_000)
    return seen[-1]
