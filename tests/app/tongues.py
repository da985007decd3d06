"""A window that speaks a language, which is taken back at the end."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from PySide6.QtCore import QLocale
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from app.language import install_language
from app.main_window import Window
from app.session import Tools
from app.settings import MemoryStore, Settings
from tests.app.conftest import Bench
from tests.app.real_files import shown


@contextmanager
def speaking(application: QApplication, code: str) -> Iterator[None]:
    """The application in a language."""
    before = QLocale()
    install_language(application, code)
    try:
        yield
    finally:
        install_language(application, "en")
        QLocale.setDefault(before)


def worn_in(qtbot: QtBot, application: QApplication, bench: Bench, code: str) -> Iterator[Window]:
    """The worn capture examined, in a window of 1366 x 768 that speaks a language."""
    with speaking(application, code):
        window = Window(Tools(bench.open_capture, bench.examine), Settings(MemoryStore()))
        for made in shown(qtbot, window):
            with qtbot.waitSignal(made.session.findings_changed, timeout=20_000):
                made.open_file(Path("worn.h5"))
            yield made
