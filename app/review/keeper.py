"""The review that is open: every edit can be undone, and is saved by itself soon after it was made.

It is saved off the window's thread, one write after the other; what is left is written before it is closed.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from pathlib import Path

from PySide6.QtCore import QObject, QTimer, Signal
from PySide6.QtGui import QUndoCommand, QUndoStack

from analysis.errors import ReviewError
from analysis.review.model import Review
from analysis.review.sidecar import (
    ChangedReviewError,
    Sidecar,
    changed_error,
    is_changed,
    put_elsewhere,
    read_again,
    write_aside,
)
from analysis.wording import say
from app.jobs import Jobs
from app.language import said
from app.review.saving import Saved, saved
from app.trouble import as_sentence, sentence

SAVING, COMPARING = "save_review", "look_at_review"
_SAVE_AFTER_MS = 600
_FILLED_IN = 1


@dataclass(frozen=True, slots=True)
class Step:
    """One change: what was done, the review before and after it, and the field that was filled in."""

    text: str
    before: Review
    after: Review
    field: str = ""


@dataclass(frozen=True, slots=True)
class Steps:
    """Changes in their order, of which the first `done` are done and the others were undone."""

    every: tuple[Step, ...]
    done: int

    def lead_to(self, review: Review) -> bool:
        """Whether they end, or were undone, at this review."""
        if not self.every:
            return False
        return (self.every[self.done - 1].after if self.done else self.every[0].before) == review


class ReviewKeeper(QObject):
    """Holds the current review; a change is a swap of two values.

    Parameters
    ----------
    jobs : Jobs
        Where it is saved by itself.

    Attributes
    ----------
    stack : QUndoStack
        Every change of the open review.
    waiting : bool
        The review is being read: a change now would be lost, so there is none.

    Signals
    -------
    changed()
        Another review is current.
    standing_changed()
        It was saved, or could not be; whether another program changed the file is known anew.
    problem(sentence)
        It could not be saved; one sentence to show, once for each capture and cause.
    told(sentence)
        What became of a review that was put aside: where it lies.
    """

    changed = Signal()
    standing_changed = Signal()
    problem = Signal(str)
    told = Signal(str)

    def __init__(self, jobs: Jobs, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._jobs = jobs
        self.stack = QUndoStack(self)
        self._sidecar: Sidecar | None = None
        self._review = Review()
        self._unsaved = False
        self._conflict = False
        self._told = ""
        self._tried: Review | None = None
        self._at_risk: Review | None = None
        self._failed = False
        self.waiting = False
        self._retracing = False
        self._timer = QTimer(self)
        self._timer.setSingleShot(True)
        self._timer.setInterval(_SAVE_AFTER_MS)
        self._timer.timeout.connect(self._save_aside)

    @property
    def review(self) -> Review:
        """The current review."""
        return self._review

    @property
    def unsaved(self) -> bool:
        """Whether there is something that no file holds yet."""
        return self._unsaved

    @property
    def conflict(self) -> bool:
        """Whether another program changed the file, and nobody has said yet which review holds."""
        return self._conflict

    @property
    def path(self) -> Path | None:
        """The file that it is saved to; None where it is kept in memory alone."""
        return self._sidecar.path if self._sidecar is not None else None

    def take(self, sidecar: Sidecar | None) -> None:
        """Go on with the review of another capture; without a file it is kept in memory alone."""
        self.close()
        self._sidecar = sidecar
        self._review = sidecar.review if sidecar is not None else Review()
        self._told = ""
        self.stack.clear()
        self.changed.emit()
        self.standing_changed.emit()
        if sidecar is not None and sidecar.trouble:
            self._say(as_sentence(said(sidecar.trouble)))

    def change(self, text: str, review: Review, field: str = "") -> None:
        """Make a review the current one, as a step that can be undone; nothing happens where it is the same.

        Parameters
        ----------
        text : str
            What was done, for the menu: ``say("place a marker")``, which each window says in its language.
        review : Review
            The new value.
        field : str
            What was filled in: values that follow each other in one field are one step, or arrowing through
            a list would be a step a line. Empty for what is always a step of its own.
        """
        if self.waiting:
            self.problem.emit(self.tr("The review is still being read. Try again in a moment."))
        elif review != self._review:
            self.stack.push(_Swap(self, Step(text, self._review, review, field)))

    def save(self, over_changes: bool = False) -> None:
        """Write what is unsaved, now; what another program wrote is replaced only where that is said."""
        self._timer.stop()
        self._jobs.finish(SAVING)
        if not self._unsaved or self._sidecar is None:
            return
        self._tried = self._review
        try:
            self._take_saved(saved(self._sidecar, self._review, over_changes=over_changes))
        except ReviewError as error:
            self._take_failure(error)

    def hasten(self) -> None:
        """Write what is unsaved beside the window without the pause: it is about to be let go."""
        self._timer.stop()
        self._save_aside()

    def may_go(self) -> bool:
        """Whether another capture may take its place, as `settle` says where it could not be saved before."""
        return not self._failed or self.settle()

    def settle(self) -> bool:
        """Write what is unsaved, now; whether it may be let go.

        Where the file is another program's by now, it is saved under another name beside it. Where it can be
        saved nowhere it may not, and that is told; asked again for the same review, it may.
        """
        self.save()
        if not self._unsaved or self._sidecar is None:
            return True
        if self._conflict:
            try:
                self._tell_kept(write_aside(self._sidecar, self._review))
            except ReviewError as error:
                self._tell(error)
            else:
                self._unsaved = False
                return True
        given_up = self._at_risk is self._review
        if not given_up:
            self._at_risk = self._review
            self.problem.emit(
                self.tr(
                    "The review could be saved nowhere and is in this window alone. “Save the review"
                    " elsewhere” puts it where you say; doing the same once more gives it up."
                )
            )
        return given_up

    def save_elsewhere(self, path: Path) -> None:
        """Save a copy; where its own place takes none, go on there. Nothing happens without a file."""
        self.save()
        if self._sidecar is None:
            return
        there = put_elsewhere(replace(self._sidecar, spare=None), path)
        try:
            done = saved(there, self._review, over_changes=True)
        except ReviewError as error:
            self._tell(error)
            self.standing_changed.emit()
            return
        copied = not self._unsaved
        self.told.emit((self._copied() if copied else self._moved()).format(path=path))
        if copied:
            self._tell_found(done.sidecar)
        else:
            self._take_saved(replace(done, sidecar=replace(done.sidecar, spare=self._sidecar.spare)))

    def _copied(self) -> str:
        return self.tr("A copy of the review was saved: {path}")

    def _moved(self) -> str:
        return self.tr("Saved to {path} until the capture is closed; then the one beside it is read again")

    def look(self) -> None:
        """See beside the window whether another program changed the file meanwhile, and say so."""
        sidecar = self._sidecar
        if sidecar is None or self._conflict or self._jobs.running(SAVING):
            return
        self._jobs.run(
            COMPARING,
            self.tr("Looking at the review"),
            lambda _tick: is_changed(sidecar),
            lambda changed: self._take_look(sidecar, changed),
            lambda error: self._tell(error),
        )

    def _take_look(self, sidecar: Sidecar, changed: bool) -> None:
        """What was seen counts only where nothing was written or opened meanwhile."""
        if changed and sidecar is self._sidecar and not self._conflict and not self._jobs.running(SAVING):
            self._conflict = True
            self._tell(changed_error())
            self.standing_changed.emit()

    def keep_own(self) -> None:
        """Settle with this review: what another program wrote is kept under another name."""
        if self._conflict:
            self._unsaved = True
            self.save(over_changes=True)

    def take_other(self) -> None:
        """Settle with what another program wrote; what is unsaved here is kept under another name.

        It comes as a step that can be undone.
        """
        self._jobs.finish(SAVING)
        if not self._conflict or self._sidecar is None:
            return
        try:
            aside = write_aside(self._sidecar, self._review) if self._unsaved else None
            other = read_again(self._sidecar)
        except ReviewError as error:
            self._tell(error)
            return
        if other.trouble:
            self._say(as_sentence(said(other.trouble)))
            return
        self._sidecar, self._conflict, self._told = other, False, ""
        self.change(say("take the other review"), other.review)
        self._unsaved = False
        self._timer.stop()
        if aside is not None:
            self._tell_kept(aside)
        self.standing_changed.emit()

    def close(self) -> None:
        """Save at once, as `settle` does, and let the file go."""
        self._jobs.cancel(COMPARING)
        self.settle()
        self._unsaved = self._conflict = self._failed = False

    def steps(self) -> Steps:
        """What can be undone and redone, to be taken over by another keeper of the same review."""
        every = [self.stack.command(place) for place in range(self.stack.count())]
        return Steps(tuple(item.step for item in every if isinstance(item, _Swap)), self.stack.index())

    def take_steps(self, steps: Steps) -> None:
        """Offer steps to undo that another keeper made, where they lead to the current review."""
        if self.stack.count() or not steps.lead_to(self._review):
            return
        self._retracing = True
        for step in steps.every:
            self.stack.push(_Swap(self, step))
        self.stack.setIndex(steps.done)
        self._retracing = False
        self.standing_changed.emit()

    def show(self, review: Review) -> None:
        """Make a review the current one; called by the undo stack."""
        if self._retracing:
            return
        self._review, self._unsaved = review, True
        if not self._timer.isActive():
            self._timer.start()
        self.changed.emit()

    def _save_aside(self) -> None:
        """Write what is unsaved beside the window; a write that is under way is followed by the next."""
        sidecar, review = self._sidecar, self._review
        if self._unsaved and sidecar is not None and not self._jobs.running(SAVING):
            self._tried = review
            self._jobs.run(
                SAVING,
                self.tr("Saving the review"),
                lambda _tick: saved(sidecar, review),
                self._take_saved,
                self._take_failure,
            )

    def _take_saved(self, done: Saved) -> None:
        self._sidecar = done.sidecar
        self._conflict, self._failed, self._told = False, False, ""
        self._unsaved = self._review is not done.review
        if done.moved:
            kept = self.tr(
                "The review cannot be saved beside the capture. It is kept on this PC, in {file}, and found"
                " again there; “Save the review elsewhere” puts it where you say."
            )
            self.problem.emit(kept.format(file=done.sidecar.path))
        self._tell_found(done.sidecar)
        self._go_on()

    def _take_failure(self, error: Exception) -> None:
        changed = isinstance(error, ChangedReviewError)
        self._failed = True
        self._conflict = self._conflict or changed
        memory = self.tr("Until {path} can be written, the review is kept in memory.").format(path=self.path)
        self._tell(error, "" if changed else memory)
        self._go_on()

    def _go_on(self) -> None:
        """After a write: the next one, where there was another edit meanwhile."""
        if self._unsaved and self._review is not self._tried and not self._timer.isActive():
            self._timer.start()
        self.standing_changed.emit()
        self.look()

    def _tell(self, error: Exception, more: str = "") -> None:
        self._say(" ".join(filter(None, (sentence(error, self.tr("Saving the review")), more))))

    def _tell_found(self, written: Sidecar) -> None:
        """Say where that lies by now what was found where the review was written."""
        if written.kept is not None:
            aside = self.tr("What lay in the place of this review was kept as {name}")
            self.told.emit(aside.format(name=written.kept.name))

    def _tell_kept(self, aside: Path) -> None:
        self.told.emit(self.tr("This review was kept as {name}").format(name=aside.name))

    def _say(self, text: str) -> None:
        """Say it, but not twice in a row."""
        if text != self._told:
            self._told = text
            self.problem.emit(text)


class _Swap(QUndoCommand):
    def __init__(self, keeper: ReviewKeeper, step: Step) -> None:
        super().__init__(said(step.text))
        self._keeper, self.step = keeper, step

    def redo(self) -> None:
        """Take the new value."""
        self._keeper.show(self.step.after)

    def undo(self) -> None:
        """Take the old value."""
        self._keeper.show(self.step.before)

    def id(self) -> int:
        """Qt offers a step to the one before it where both have the same number."""
        return _FILLED_IN if self.step.field else -1

    def mergeWith(self, other: QUndoCommand) -> bool:  # noqa: N802 - Qt's own name
        """Become one step with another word in the same field; none where it ends as it began."""
        if not isinstance(other, _Swap) or other.step.field != self.step.field:
            return False
        self.step = replace(self.step, after=other.step.after)
        self.setObsolete(self.step.after == self.step.before)
        return True
