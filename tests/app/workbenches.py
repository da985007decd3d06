"""The whole program with tools of a test's choice, in English, and nothing of it left afterwards."""

from __future__ import annotations

import sys
from collections.abc import Iterator
from contextlib import contextmanager

from PySide6.QtWidgets import QApplication

from app.language import install_language
from app.session import Tools
from app.settings import MemoryStore, Settings
from app.workbench import Workbench


@contextmanager
def running(application: QApplication, tools: Tools) -> Iterator[Workbench]:
    """A workbench that is shown; closed, and its language and hook taken back, at the end."""
    hook, settings = sys.excepthook, Settings(MemoryStore())
    settings.language = "en"
    made = Workbench(application, tools, settings)
    made.window.show()
    yield made
    made.window.close()
    made.window.deleteLater()
    made.deleteLater()
    install_language(application, "en")
    sys.excepthook = hook
