"""What a window that is built anew goes on with: findings, what was looked at, and what can be undone."""

from __future__ import annotations

from dataclasses import dataclass, replace
from threading import Event

from PySide6.QtCore import QObject, QTimer

from analysis.captures.model import Capture
from analysis.diagnosis.findings import Findings
from analysis.progress import Tick
from analysis.review.records import divided
from app.main_window import Window
from app.review.focus import Kept
from app.review.keeper import Steps
from app.session import Tools

A_TURN_MS = 1
"""Later, and so in another turn of the loop: what is asked for after 0 ms is done in the same one."""

_LONGEST_SHOWING_S = 2.0
"""Findings wait no longer for a window; it may have been closed meanwhile."""

Contents = tuple[object, ...]
"""All that findings depend on but the samples, as a value that can be compared."""


@dataclass(frozen=True, slots=True)
class KeptWork:
    """What a window had open.

    Parameters
    ----------
    looked_at : Kept
        Record, stretch of time and of the track, what was chosen, and the views before.
    steps : Steps
        What can be undone.
    marker : str or None
        The chosen marker.
    hint : bool
        Whether the first steps were shown.
    examined : tuple
        What the findings are of; empty where there are none.
    findings : Findings or None
        Their sentences are said in whatever language the window speaks.
    """

    looked_at: Kept
    steps: Steps
    marker: str | None
    hint: bool
    examined: Contents = ()
    findings: Findings | None = None

    @classmethod
    def of(cls, window: Window) -> KeptWork:
        """Of this window."""
        session, marker = window.session, window.desk.markers.chosen
        known = session.findings if not session.examining else None
        capture = session.capture
        return cls(
            window.focus.keep(),
            window.keeper.steps(),
            marker.marker_id if marker is not None else None,
            not window.page.hint_bar.isHidden(),
            _contents(divided(capture, session.edits)) if capture is not None and known is not None else (),
            known,
        )

    def tools(self, tools: Tools, shown: Event) -> Tools:
        """The same tools, which do not examine once more what was just examined: once, and for this alone.

        Those findings come when the capture is `shown`: both in one turn would hold the window for too long.
        """
        kept = [self.findings] if self.findings is not None else []

        def examine(capture: Capture, tick: Tick) -> Findings:
            if kept and _contents(capture) == self.examined:
                found = kept.pop()
                if found is not None:
                    shown.wait(_LONGEST_SHOWING_S)
                    return found
            return tools.examine(capture, tick)

        return replace(tools, examine=examine)


class GoingOn(QObject):
    """Waits until the capture is open, its review read and its findings there; then goes on, and is gone.

    Parameters
    ----------
    window : Window
        The new one, in which the same capture is about to be opened.
    kept : KeptWork
        Of the window before it.
    shown : Event
        Set when the capture is shown.
    """

    def __init__(self, window: Window, kept: KeptWork, shown: Event) -> None:
        super().__init__(window)
        self._window, self._kept = window, kept
        self._done = False
        window.session.capture_changed.connect(lambda: QTimer.singleShot(A_TURN_MS, self, shown.set))
        for ready in (
            window.session.findings_changed,
            window.keeper.standing_changed,
            window.keeper.changed,
        ):
            ready.connect(self._go_on)

    def _go_on(self) -> None:
        window = self._window
        session = window.session
        if self._done or window.keeper.waiting or session.examining or session.findings is None:
            return
        self._done = True
        QTimer.singleShot(A_TURN_MS, self, self._look_again)  # what has come is shown in a turn of its own

    def _look_again(self) -> None:
        window = self._window
        window.keeper.take_steps(self._kept.steps)
        if self._kept.marker is not None and window.keeper.review.marker(self._kept.marker) is not None:
            window.desk.markers.choose(self._kept.marker)
        window.focus.look_again(self._kept.looked_at)
        self.deleteLater()


def _contents(capture: Capture) -> Contents:
    return (
        capture.capture_id,
        capture.path,
        tuple(sorted(capture.attributes.items())),
        tuple(
            (
                record.name,
                record.step,
                len(record),
                tuple(sorted(record.attributes.items())),
                tuple(
                    (item.name, item.role, tuple(sorted(item.attributes.items()))) for item in record.channels
                ),
            )
            for record in capture.records
        ),
    )
