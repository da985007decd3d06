"""What goes wrong is shown on the page that is looked at, and a page shows no reading of another one."""

from __future__ import annotations

import sys
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QDialog, QLabel, QWidget
from pytestqt.qtbot import QtBot

import analysis
from app import trouble
from app.drawing import theme
from app.main_window import Window
from app.session import Tools
from app.settings import MemoryStore, Settings
from app.settings_file import settings_path
from app.views.problem_bar import ProblemBar
from app.workbench import Workbench
from tests.app.conftest import Bench


@pytest.fixture
def log(tmp_path: Path) -> Iterator[Path]:
    trouble.start_log(tmp_path)
    yield tmp_path / "wornband.log"
    trouble.stop_log()


@pytest.fixture
def workbench(
    qtbot: QtBot, qapp: QApplication, bench: Bench, log: Path, monkeypatch: pytest.MonkeyPatch
) -> Window:
    """The window as the program opens it: what nobody caught goes to it."""
    monkeypatch.setattr(sys, "excepthook", sys.excepthook)
    settings = Settings(MemoryStore())
    settings.language = "en"
    window = Workbench(qapp, Tools(bench.open_capture, bench.examine), settings).window
    qtbot.addWidget(window, before_close_func=lambda made: made.session.close())
    with qtbot.waitActive(window):  # keys go to no other
        window.show()
        window.activateWindow()
    with qtbot.waitSignal(window.session.findings_changed):
        window.open_file(Path("worn.h5"))
    return window


PAGES: dict[str, Callable[[Window], object]] = {
    "review": lambda window: window.show_review(),
    "compare": lambda window: window.show_compare(),
    "report": lambda window: window.actions_by_name["report"].trigger(),
    "import": lambda window: window.pages.setCurrentWidget(window.imports.page),
    "watch": lambda window: window.pages.setCurrentWidget(window.watching.page),
}


def told(window: Window) -> list[str]:
    return [bar.text for bar in window.findChildren(ProblemBar) if bar.isVisible()]


def test_the_unforeseen_says_which_action_was_being_done(
    qtbot: QtBot, workbench: Window, log: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(workbench.settings, "forget_capture", None)
    workbench.actions_by_name.connect({"examine": lambda: workbench.settings.forget_capture(Path())})
    QTest.keyClick(workbench, Qt.Key.Key_F5)
    qtbot.waitUntil(lambda: bool(told(workbench)))
    assert told(workbench)[0].startswith("Examine again: something unforeseen went wrong")
    assert str(log) in told(workbench)[0]


@pytest.mark.parametrize("page", PAGES)
def test_the_unforeseen_is_shown_on_the_page_in_front_and_names_the_file(
    qtbot: QtBot, workbench: Window, log: Path, page: str
) -> None:
    PAGES[page](workbench)
    try:
        raise KeyError("nothing")
    except KeyError as error:
        sys.excepthook(type(error), error, error.__traceback__)
    assert told(workbench) == []  # not while Qt may be in the middle of something
    qtbot.waitUntil(lambda: bool(told(workbench)))
    shown = told(workbench)
    assert len(shown) == 1
    assert "Working in the window" in shown[0]
    assert "KeyError" in shown[0]
    assert str(log) in shown[0]
    assert "Traceback" in log.read_text(encoding="utf-8")


def test_a_page_begins_without_the_reading_of_the_page_before(qtbot: QtBot, review: Window) -> None:
    review.focus.point(2.0)
    qtbot.waitUntil(lambda: "2.0" in review.readout.plain_text())
    review.show_compare()
    assert review.readout.plain_text() == ""
    review.show_review()
    qtbot.waitUntil(lambda: "2.0" in review.readout.plain_text())


def test_about_says_the_version_and_where_things_are_kept(review: Window, log: Path) -> None:
    QTest.keyClick(review, Qt.Key.Key_F1, Qt.KeyboardModifier.ShiftModifier)
    about = next(item for item in review.findChildren(QDialog) if item.isVisible())
    words = " ".join(label.text() for label in about.findChildren(QLabel))
    assert analysis.__version__ in words
    assert str(settings_path()) in words
    assert str(log) in words
    about.close()


class Desktop:
    """A desktop that can be switched; the one without a screen says nothing of its own."""

    def __init__(self, monkeypatch: pytest.MonkeyPatch) -> None:
        self._dark = False
        monkeypatch.setattr(theme, "desktop_is_dark", lambda: self._dark)

    def turn(self, dark: bool) -> None:
        """Tell all windows, as Qt does."""
        self._dark = dark
        scheme = Qt.ColorScheme.Dark if dark else Qt.ColorScheme.Light
        QGuiApplication.styleHints().colorSchemeChanged.emit(scheme)


def ground(of: QWidget) -> int:
    """Lightness at a window's left edge."""
    return of.grab().toImage().pixelColor(3, of.height() // 2).lightness()


def test_the_window_follows_the_desktop_while_it_is_open(
    qtbot: QtBot, review: Window, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A marker placed, the words of a record open and the keys in front, there and back again."""
    desktop = Desktop(monkeypatch)
    assert review.settings.colours == "system"
    for key in (Qt.Key.Key_M, Qt.Key.Key_F4, Qt.Key.Key_F1):
        QTest.keyClick(review, key)
    keys = next(item for item in review.findChildren(QDialog) if item.isVisible())
    qtbot.waitUntil(lambda: "Signal" in dict(review.page.markers.readings.rows))
    QApplication.processEvents()
    before = review.grab().toImage()
    desktop.turn(dark=True)
    assert ground(review) < 70
    assert ground(keys) < 70
    desktop.turn(dark=False)
    qtbot.waitUntil(lambda: review.grab().toImage() == before)  # nothing of the night is left
    keys.close()


def test_colours_that_were_chosen_stay_whatever_the_desktop_does(
    review: Window, monkeypatch: pytest.MonkeyPatch
) -> None:
    desktop = Desktop(monkeypatch)
    review.settings.colours = "light"
    review.apply_colours()
    desktop.turn(dark=True)
    assert ground(review) > 200
