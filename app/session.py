"""The capture that is open and what the examination says of it."""

from __future__ import annotations

from collections.abc import Callable
from contextlib import AbstractContextManager
from dataclasses import dataclass, replace
from functools import partial
from pathlib import Path
from typing import Protocol

from PySide6.QtCore import QObject, Signal

from analysis.captures.model import Capture, Match
from analysis.captures.verification import content_sentence
from analysis.diagnosis.findings import Findings
from analysis.errors import NoCaptureError
from analysis.progress import Tick
from analysis.review.records import Edits, divided, edited
from analysis.review.sidecar import Sidecar
from app.jobs import Jobs
from app.language import said
from app.trouble import sentence

OPENING, EXAMINING, CHECKING = "open", "examine", "check_content"


class Opened(AbstractContextManager["Opened"], Protocol):
    """An open capture: the value, and the file behind it until it is closed."""

    @property
    def capture(self) -> Capture:
        """The capture."""

    @property
    def assumptions(self) -> tuple[str, ...]:
        """What stood in for things that the file does not state."""


@dataclass(frozen=True, slots=True)
class Tools:
    """What a session works with; tests hand in their own.

    Parameters
    ----------
    open_capture : callable
        Opens a file, reporting progress; raises `CaptureError`.
    examine : callable
        The analysis: everything that can be said of one capture.
    read_review : callable or None
        Reads the review beside a capture file; None keeps reviews in memory.
    verify_content : callable or None
        Holds a file's content against the fingerprint in it; None for no comparison.
    """

    open_capture: Callable[[Path, Tick], Opened]
    examine: Callable[[Capture, Tick], Findings]
    read_review: Callable[[Path, Tick], Sidecar] | None = None
    verify_content: Callable[[Path, Tick], Match] | None = None


class Session(QObject):
    """Holds the current capture and its findings; a change is a new value and a signal.

    Signals
    -------
    capture_changed()
        Another capture is open (or none); findings are gone until they are made.
    records_changed()
        Something else is said of the records of the open capture; it is being examined again.
    findings_changed()
        The examination has ended.
    content_changed()
        Its content does not match the fingerprint in its file, or cannot be read in full.
    problem(sentence)
        Something went wrong; one sentence to show.
    refused(Path)
        A file could not be opened.
    foreign(Path)
        A file is no capture at all, but may be what a recorder saved.
    """

    capture_changed = Signal()
    records_changed = Signal()
    findings_changed = Signal()
    content_changed = Signal()
    problem = Signal(str)
    refused = Signal(object)
    foreign = Signal(object)

    def __init__(self, tools: Tools, jobs: Jobs, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.tools = tools
        self._jobs = jobs
        self._opened: Opened | None = None
        self._edits: Edits = ()
        self._shown: Capture | None = None
        self._content: Match | None = None
        self._findings: Findings | None = None
        self._retired: list[Opened] = []
        jobs.ended.connect(self._close_retired)

    @property
    def capture(self) -> Capture | None:
        """The open capture with what the technician says of its records, or None."""
        return self._shown

    @property
    def recorded(self) -> Capture | None:
        """The open capture as it was recorded, or None."""
        return self._opened.capture if self._opened is not None else None

    @property
    def edits(self) -> Edits:
        """What the technician says of the records of the open capture."""
        return self._edits

    @property
    def assumptions(self) -> tuple[str, ...]:
        """What stood in for things that the open file does not state."""
        return self._opened.assumptions if self._opened is not None else ()

    @property
    def findings(self) -> Findings | None:
        """What the examination says, or None while there is nothing to say yet."""
        return self._findings

    def open_file(self, path: Path) -> None:
        """Open a file in the background; the capture that is open stays until that has worked."""
        doing = self.tr("Opening {name}").format(name=path.name)
        self._jobs.run(
            OPENING,
            doing,
            lambda tick: self.tools.open_capture(path, tick),
            self._take,
            partial(self._refuse, path, doing),
            discarded=_close,
        )

    def show(self, opened: Opened, findings: Findings | None = None) -> None:
        """Take an open capture; examine it in the background unless its findings are given."""
        self._jobs.cancel(EXAMINING)
        self._jobs.cancel(CHECKING)
        self._retire()
        self._opened, self._findings = opened, None
        self._edits, self._shown, self._content = (), opened.capture, opened.capture.content
        self.capture_changed.emit()
        if findings is None:
            self.examine_again()
        else:
            self._conclude(findings)

    def examine_again(self) -> None:
        """Examine the open capture in the background; nothing happens where there is none."""
        capture = self.capture
        if capture is None:
            return
        doing, divided_capture = self.tr("Examining the capture"), divided(capture, self._edits)
        self._jobs.run(
            EXAMINING,
            doing,
            lambda tick: self.tools.examine(divided_capture, tick),
            self._conclude,
            partial(self._complain, doing),
        )

    def edit(self, edits: Edits) -> None:
        """Take what the technician says of records, and examine again where that changes anything."""
        if self._opened is None or edits == self._edits:
            return
        self._edits = edits
        self._shown = replace(edited(self._opened.capture, edits), content=self._content)
        self.records_changed.emit()
        self.examine_again()

    @property
    def examining(self) -> bool:
        """Whether an examination is under way."""
        return self._jobs.running(EXAMINING)

    def close(self) -> None:
        """Stop all work, then close the file; safe to call twice."""
        self._jobs.shut_down()
        self._retire()
        self._close_retired()

    def _take(self, opened: Opened) -> None:
        self.show(opened)

    def _conclude(self, findings: Findings) -> None:
        self._findings = findings
        self.findings_changed.emit()
        self._check()

    def _check(self) -> None:
        """Hold the samples against the fingerprint in the file, once, when nothing more urgent reads them."""
        verify, capture = self.tools.verify_content, self.recorded
        if verify is None or capture is None or capture.path is None or self._content is not None:
            return
        path = capture.path
        self._jobs.run(
            CHECKING,
            self.tr("Checking the fingerprint"),
            lambda tick: verify(path, tick),
            lambda content: self._take_content(content, path),
            partial(self._complain, self.tr("Checking the fingerprint")),
        )

    def _take_content(self, content: Match, path: Path) -> None:
        self._content = content
        if self._shown is not None:
            self._shown = replace(self._shown, content=content)
        told = content_sentence(content, path.name)
        if told:
            self.content_changed.emit()
            self.problem.emit(said(told))

    def _refuse(self, path: Path, doing: str, error: Exception) -> None:
        self.refused.emit(path)
        if isinstance(error, NoCaptureError):
            self.foreign.emit(path)
            return
        told = sentence(error, doing)
        # What is open stays: which file is meant must be said, where the reader of it did not.
        named = path.name.lower() in told.lower()  # a sentence begins with a capital, a file may not
        self.problem.emit(told if named else f"{path.name}: {told}")

    def _complain(self, doing: str, error: Exception) -> None:
        self.problem.emit(sentence(error, doing))

    def _retire(self) -> None:
        if self._opened is not None:
            self._retired.append(self._opened)
            self._opened = self._shown = None

    def _close_retired(self) -> None:
        """Close the files that nobody reads any more; one that a stopped job may still read waits."""
        if self._jobs.busy():
            return
        for opened in self._retired:
            _close(opened)
        self._retired.clear()


def _close(opened: Opened) -> None:
    opened.__exit__(None, None, None)
