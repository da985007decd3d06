"""Long work in the status bar: what is being done, how far it has come, and a button that stops it."""

from __future__ import annotations

from PySide6.QtCore import QObject, Qt
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QLabel, QProgressBar, QStatusBar, QToolButton

from app.importing.desk import QUIET
from app.jobs import Jobs
from app.review.file import LOOKING, REVIEWING
from app.review.keeper import SAVING
from app.review.marker_reader import READING
from app.review.pointer_reader import POINTING
from app.session import CHECKING

_QUIET = (READING, REVIEWING, LOOKING, CHECKING, SAVING, POINTING, *QUIET)
"""What takes a blink is told where it is shown."""
_BAR_PX = 140
_STEPS = 1000


class WorkStatus(QObject):
    """Follows the work of some `Jobs`; what is under way last is told.

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
        self._text = QLabel()
        self._text.setTextFormat(Qt.TextFormat.PlainText)  # it names the file
        self.progress = QProgressBar()
        self.progress.setFixedWidth(_BAR_PX)
        self.progress.setTextVisible(False)
        self.progress.setRange(0, _STEPS)
        self.progress.setAccessibleName(self.tr("Progress"))
        for widget in (self._text, self.progress, self._stop):
            bar.addPermanentWidget(widget)
        self._show_idle()

    def follow(self, jobs: Jobs) -> None:
        """Tell of the work of these too."""
        self._every.append(jobs)
        jobs.progressed.connect(lambda topic, title, done: self._show(jobs, topic, title, done))
        jobs.ended.connect(self._show_idle)

    def cancel_all(self) -> None:
        """Stop everything that is told of; what is on screen stays."""
        for jobs in self._every:
            for topic in jobs.topics:
                if topic not in _QUIET:
                    jobs.cancel(topic)

    def _show(self, jobs: Jobs, topic: str, title: str, done: float) -> None:
        if topic not in _QUIET and jobs.running(topic):
            self._text.setText(f"{title}…")
            self.progress.setValue(round(_STEPS * done))
            self._show_busy(True)

    def _show_idle(self) -> None:
        if not any(topic not in _QUIET for jobs in self._every for topic in jobs.topics):
            self._show_busy(False)

    def _show_busy(self, busy: bool) -> None:
        self._action.setEnabled(busy)
        for widget in (self._text, self.progress, self._stop):
            widget.setVisible(busy)
