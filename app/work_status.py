"""Long work in the status bar: what is being done, how far it has come, and a button that stops it."""

from __future__ import annotations

import time

from PySide6.QtCore import QObject, Qt, QTimer
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QProgressBar, QStatusBar, QToolButton

from app.importing.topics import QUIET
from app.jobs import Jobs
from app.review.file import LOOKING, REVIEWING
from app.review.keeper import COMPARING, SAVING
from app.review.marker_reader import READING
from app.review.pointer_reader import POINTING
from app.session import CHECKING
from app.views.elided_label import ElidedLabel

_QUIET = (READING, REVIEWING, LOOKING, COMPARING, CHECKING, SAVING, POINTING, *QUIET)
"""What takes a blink is told where it is shown; here only where a slow disk makes a wait of it."""
_BLINK_MS = 700
_BAR_PX = 140
_STEPS = 1000


class WorkStatus(QObject):
    """Follows the work of some `Jobs`; what is under way last is told, small work after a while.

    Parameters
    ----------
    bar : QStatusBar
        Where it is shown.
    stop : QToolButton
        Stops the work.
    action : QAction
        The same from the menu; it can be done only while there is work.
    """

    def __init__(self, bar: QStatusBar, stop: QToolButton, action: QAction) -> None:
        super().__init__(bar)
        self._every: list[Jobs] = []
        self._stop, self._action = stop, action
        self._stop.setToolButtonStyle(Qt.ToolButtonStyle.ToolButtonTextOnly)
        self.text = ElidedLabel()  # it names the file
        self.progress = QProgressBar()
        self.progress.setFixedWidth(_BAR_PX)
        self.progress.setTextVisible(False)
        self.progress.setRange(0, _STEPS)
        self.progress.setAccessibleName(self.tr("Progress"))
        for widget in (self.text, self.progress, self._stop):
            bar.addPermanentWidget(widget)
        self._small: dict[tuple[int, str], tuple[Jobs, str, float]] = {}
        self._patience = QTimer(self)
        self._patience.setSingleShot(True)
        self._patience.setInterval(_BLINK_MS)
        self._patience.timeout.connect(self._show_small)
        self._show_idle()

    def follow(self, jobs: Jobs) -> None:
        """Tell of the work of these too."""
        self._every.append(jobs)
        jobs.progressed.connect(lambda topic, title, done: self._show(jobs, topic, title, done))
        jobs.ended.connect(lambda topic: self._end(jobs, topic))

    def cancel_all(self) -> None:
        """Stop everything that is told of; what is on screen stays."""
        for jobs in self._every:
            for topic in jobs.topics:
                if topic not in _QUIET:
                    jobs.cancel(topic)

    def _show(self, jobs: Jobs, topic: str, title: str, done: float) -> None:
        if topic in _QUIET:
            if (id(jobs), topic) not in self._small:
                self._small[id(jobs), topic] = jobs, title, time.monotonic()
                self._wait()
        elif jobs.running(topic):
            self._tell(title, done)
            self._show_busy(True)

    def _show_small(self) -> None:
        """Tell of small work that is no blink any more; it cannot be stopped."""
        begun_before_s = time.monotonic() - 0.9e-3 * _BLINK_MS  # a timer may come a little early
        waiting = [title for _, title, begun_s in self._small.values() if begun_s <= begun_before_s]
        if waiting and not self._large():
            self._tell(waiting[-1], 0.0)
            self.text.setVisible(True)
        self._wait()

    def _wait(self) -> None:
        if self._small and not self._patience.isActive():
            self._patience.start()

    def _tell(self, title: str, done: float) -> None:
        self.text.setText(f"{title}…")
        self.progress.setValue(round(_STEPS * done))

    def _end(self, jobs: Jobs, topic: str) -> None:
        self._small.pop((id(jobs), topic), None)
        self._show_idle()

    def _large(self) -> bool:
        return any(topic not in _QUIET for jobs in self._every for topic in jobs.topics)

    def _show_idle(self) -> None:
        if not self._large():
            self._show_busy(False)
            self._wait()

    def _show_busy(self, busy: bool) -> None:
        self._action.setEnabled(busy)
        for widget in (self.text, self.progress, self._stop):
            widget.setVisible(busy)
