"""The file of the open capture's review: read in the background, and watched while it is open."""

from __future__ import annotations

import hashlib
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

from PySide6.QtCore import QDir, QFileSystemWatcher, QLockFile, QObject, QTimer, Signal

from analysis.captures.model import Capture
from analysis.progress import Tick
from analysis.review.sidecar import Sidecar
from app.jobs import Jobs
from app.review.keeper import ReviewKeeper
from app.trouble import sentence

REVIEWING = "review"
LOOKING = "look_at_files"

ReadReview = Callable[[Path, Tick], Sidecar]


class ReviewFile(QObject):
    """Brings the keeper the review of each capture that is opened.

    Parameters
    ----------
    keeper : ReviewKeeper
    jobs : Jobs
    read : callable or None
        Reads the review beside a capture file; None keeps every review in memory.

    Signals
    -------
    problem(sentence)
        The review cannot be read, the capture is open elsewhere too, or was changed or taken away meanwhile.
    """

    problem = Signal(str)

    def __init__(
        self, keeper: ReviewKeeper, jobs: Jobs, read: ReadReview | None, parent: QObject | None = None
    ) -> None:
        super().__init__(parent)
        self._keeper, self._jobs, self._read = keeper, jobs, read
        self._lock: QLockFile | None = None
        self._capture: Path | None = None
        self._seen: tuple[int, ...] | None = None
        self._again = self._unseen = False
        self._to_watch: list[str] = []
        self._watcher = QFileSystemWatcher(self)
        self._watcher.directoryChanged.connect(self._look)
        self._watcher.fileChanged.connect(self._look)

    def follow(self, capture: Capture | None) -> None:
        """Save the review that is open, and read that of another capture."""
        self.leave()
        path = capture.path if capture is not None else None
        read = self._read
        if path is None or read is None:
            return
        self._capture = path
        doing = self.tr("Reading the review of {name}").format(name=path.name)
        self._keeper.waiting = True
        self._jobs.run(
            REVIEWING,
            doing,
            lambda tick: (_signs(path), read(path, tick), path.resolve()),
            lambda found: self._take(*found),
            lambda error: self._fail(error, doing),
        )

    def leave(self) -> None:
        """Save at once and let the file go; safe to call twice."""
        self._jobs.cancel(REVIEWING)
        self._jobs.cancel(LOOKING)
        self._keeper.take(None)
        self._capture = self._seen = None
        self._to_watch, self._unseen = [], False
        watched = [*self._watcher.files(), *self._watcher.directories()]
        if watched:
            self._watcher.removePaths(watched)
        if self._lock is not None:
            self._lock.unlock()
            self._lock = None
        self._keeper.waiting = False

    def _take(self, signs: tuple[int, ...] | None, sidecar: Sidecar, resolved: Path) -> None:
        self._seen = signs
        self._keeper.waiting = False
        self._keeper.take(sidecar)
        if sidecar.other is not None:
            self.problem.emit(self._of_other().format(path=sidecar.other))
        self._look()
        self._claim(resolved)

    def _of_other(self) -> str:
        return self.tr(
            "Another review of this capture is kept on this PC: {path}. It does not go on from what lies"
            " beside the capture now. It is left as it is; to see it, put it in the place of that one."
        )

    def _fail(self, error: Exception, doing: str) -> None:
        self._keeper.waiting = False
        self.problem.emit(sentence(error, doing))

    def _claim(self, resolved: Path) -> None:
        """Say where the capture is open in another window; two may be, but nobody shall be surprised."""
        name = hashlib.sha256(str(resolved).encode()).hexdigest()[:24]
        lock = QLockFile(QDir.temp().filePath(f"wornband-{name}.lock"))
        lock.setStaleLockTime(0)  # a window may be open for days; only one whose process is gone gives way
        if lock.tryLock(0):
            self._lock = lock
        elif lock.error() is QLockFile.LockError.LockFailedError:
            self.problem.emit(
                self.tr(
                    "This capture is open in another window too. What is saved there is told here, and"
                    " nothing is overwritten."
                )
            )

    def _look(self) -> None:
        """See what became of the files, beside the window: a folder on a network may take its time."""
        path, capture = self._keeper.path, self._capture
        if path is None or capture is None:
            return
        self._again = self._jobs.running(LOOKING)  # the look that is under way may have come too early
        if not self._again:
            self._jobs.run(
                LOOKING,
                self.tr("Looking at the folder"),
                lambda _tick: _Seen.of(path, capture),
                self._take_look,
                lambda error: self._fail(error, self.tr("Looking at the folder")),
            )

    def _take_look(self, seen: _Seen) -> None:
        self._to_watch = list(seen.present)
        self._watch_next()
        self._look_at_capture(seen.signs)
        self._keeper.look()
        if self._again:
            self._look()

    def _watch_next(self) -> None:
        """Watch one more path, and the next in another turn: Qt asks the disk twice for each."""
        watched = (*self._watcher.files(), *self._watcher.directories())
        new = [item for item in self._to_watch if item not in watched]
        self._to_watch = new[1:]
        if new and self._watcher.addPath(new[0]):
            self._unseen = True
        if self._to_watch:
            QTimer.singleShot(0, self, self._watch_next)
        elif self._unseen:
            self._unseen = False
            self._look()  # what changed after the last look and before it was watched

    def _look_at_capture(self, signs: tuple[int, ...] | None) -> None:
        """Say once that the capture is another one by now: the window still reads what it opened."""
        if self._capture is None or self._seen is None or signs == self._seen:
            return
        self._seen = None
        self.problem.emit(
            self.tr(
                "{name} was changed or taken away since it was opened. What is shown is what was opened; open"
                " it again to see it as it is now."
            ).format(name=self._capture.name)
        )


@dataclass(frozen=True, slots=True)
class _Seen:
    """What lies in the folder: which of the watched paths are there, and what the capture is known by."""

    present: tuple[str, ...]
    signs: tuple[int, ...] | None

    @classmethod
    def of(cls, path: Path, capture: Path) -> _Seen:
        """Look at the review's path and the capture's."""
        present = tuple(str(item) for item in (path.parent, path, capture) if item.exists())
        return cls(present, _signs(capture))


def _signs(path: Path) -> tuple[int, ...] | None:
    """What tells a file from the one that takes its place; None where there is none."""
    try:
        found = path.stat()
    except OSError:
        return None
    return found.st_dev, found.st_ino, found.st_size, found.st_mtime_ns
