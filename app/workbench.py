"""The window at hand, built anew when another language is chosen."""

from __future__ import annotations

from pathlib import Path
from threading import Event

from PySide6.QtCore import QObject, Qt, QTimer
from PySide6.QtWidgets import QApplication

from app.going_on import A_TURN_MS, GoingOn, KeptWork
from app.language import install_language, read_language
from app.main_window import Window
from app.session import Tools
from app.settings import Settings
from app.trouble import sentence, show_unforeseen


class Workbench(QObject):
    """Keeps one window open; a window is built in a language and keeps it.

    Parameters
    ----------
    application : QApplication
        What the language is installed in.
    tools : Tools
        How captures are opened and examined.
    settings : Settings
        What is remembered, the language among it.
    """

    def __init__(self, application: QApplication, tools: Tools, settings: Settings) -> None:
        super().__init__(application)
        self._application = application
        self._tools = tools
        self._settings = settings
        self._turning = False
        self.window = self._built(tools)

    def _built(self, tools: Tools) -> Window:
        self._spoken = self._settings.language
        install_language(self._application, self._spoken)
        window = Window(tools, self._settings)
        # Queued: the menu that asked for it belongs to the window that goes.
        window.language_chosen.connect(self._build_anew, Qt.ConnectionType.QueuedConnection)
        show_unforeseen(lambda told: window.problem_bar().show_problem(told))
        doing = self.tr("Keeping the settings")
        self._settings.tell = lambda error: window.problem_bar().show_problem(sentence(error, doing))
        return window

    def _build_anew(self) -> None:
        """Read the language, build a window in it, and put that in the place of the present one.

        A turn for each: together they would hold the window for longer than anybody should wait.
        """
        before = self.window
        if not before.keeper.settle():  # it holds the only review that there is, and said so
            self._settings.language = self._spoken
        elif not self._turning:  # else a key was quicker than the window that it asks for
            read_language(self._settings.language)
            self._turning = True
            QTimer.singleShot(A_TURN_MS, self, lambda: self._build_beside(before))

    def _build_beside(self, before: Window) -> None:
        shown = Event()
        window = self._built(KeptWork.of(before).tools(self._tools, shown))
        QTimer.singleShot(A_TURN_MS, self, lambda: self._put_in_place(window, before, shown))

    def _put_in_place(self, window: Window, before: Window, shown: Event) -> None:
        """Show the new window in the place of the present one, with the same capture."""
        self._turning = False
        if not before.isVisible():  # closed meanwhile
            window.deleteLater()
            return
        path, kept = _open_path(before), KeptWork.of(before)
        window.restoreGeometry(before.saveGeometry())
        window.move(before.pos())
        window.page.hint_bar.setVisible(kept.hint)
        self.window = window
        window.show()
        before.close()
        before.deleteLater()
        if path is not None:
            GoingOn(window, kept, shown)
            window.open_file(path)


def _open_path(window: Window) -> Path | None:
    capture = window.session.capture
    return capture.path if capture is not None else None
