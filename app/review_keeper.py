"""The review that is open: every edit can be undone, and is saved by itself soon after it was made."""

from __future__ import annotations

from PySide6.QtCore import QObject, QTimer, Signal
from PySide6.QtGui import QUndoCommand, QUndoStack

from analysis.errors import ReviewError
from analysis.review.model import Review
from analysis.review.sidecar import ChangedReviewError, Sidecar, write_aside, write_sidecar
from app.trouble import sentence

_SAVE_AFTER_MS = 1000


class ReviewKeeper(QObject):
    """Holds the current review; a change is a swap of two values.

    Signals
    -------
    changed()
        Another review is current.
    problem(sentence)
        It could not be saved; one sentence to show, once for each capture and cause.
    """

    changed = Signal()
    problem = Signal(str)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.stack = QUndoStack(self)
        self._sidecar: Sidecar | None = None
        self._review = Review()
        self._unsaved = False
        self._conflict = False
        self._told = ""
        self._timer = QTimer(self)
        self._timer.setSingleShot(True)
        self._timer.setInterval(_SAVE_AFTER_MS)
        self._timer.timeout.connect(self.save)

    @property
    def review(self) -> Review:
        """The current review."""
        return self._review

    @property
    def unsaved(self) -> bool:
        """Whether there is something that no file holds yet."""
        return self._unsaved

    def take(self, sidecar: Sidecar | None) -> None:
        """Go on with the review of another capture; without a file it is kept in memory alone."""
        self.close()
        self._sidecar = sidecar
        self._review = sidecar.review if sidecar is not None else Review()
        self._conflict, self._told = False, ""
        self.stack.clear()
        self.changed.emit()
        if sidecar is not None and sidecar.trouble:
            self._tell(ReviewError(*sidecar.trouble.split("; ", 1)))

    def change(self, text: str, review: Review) -> None:
        """Make a review the current one, as a step that can be undone; nothing happens where it is the same.

        Parameters
        ----------
        text : str
            What was done, for the menu: ``"place a marker"``.
        review : Review
            The new value.
        """
        if review != self._review:
            self.stack.push(_Swap(self, text, self._review, review))

    def save(self, over_changes: bool = False) -> None:
        """Write what is unsaved; what another program wrote meanwhile is replaced only where that is said."""
        self._timer.stop()
        if not self._unsaved or self._sidecar is None:
            return
        try:
            self._sidecar = write_sidecar(self._sidecar, self._review, over_changes=over_changes)
        except ReviewError as error:
            self._conflict = isinstance(error, ChangedReviewError)
            self._tell(error)
            return
        self._unsaved, self._conflict, self._told = False, False, ""

    def close(self) -> None:
        """Save at once; where the file is another program's by now, save under another name beside it."""
        self.save()
        if self._conflict and self._sidecar is not None:
            try:
                write_aside(self._sidecar, self._review)
            except ReviewError as error:
                self._tell(error)
        self._unsaved = self._conflict = False

    def show(self, review: Review) -> None:
        """Make a review the current one; called by the undo stack."""
        self._review, self._unsaved = review, True
        if not self._timer.isActive():
            self._timer.start()
        self.changed.emit()

    def _tell(self, error: ReviewError) -> None:
        said = sentence(error, self.tr("Saving the review"))
        if said != self._told:
            self._told = said
            self.problem.emit(said)


class _Swap(QUndoCommand):
    def __init__(self, keeper: ReviewKeeper, text: str, before: Review, after: Review) -> None:
        super().__init__(text)
        self._keeper, self._before, self._after = keeper, before, after

    def redo(self) -> None:
        """Take the new value."""
        self._keeper.show(self._after)

    def undo(self) -> None:
        """Take the old value."""
        self._keeper.show(self._before)
