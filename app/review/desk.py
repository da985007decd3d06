"""The review at work in a window: keeper, file, markers and decisions, and the actions that speak to them."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QObject, QPoint
from PySide6.QtGui import QKeySequence, QUndoStack
from PySide6.QtWidgets import QAbstractSpinBox, QFileDialog, QLineEdit, QMenu, QWidget

from analysis.review.model import PointMarker
from app.review.decision_desk import DecisionDesk
from app.review.decision_words import accepted_name, accepted_tip
from app.review.file import ReviewFile
from app.review.keeper import ReviewKeeper
from app.review.marker_copies import MarkerCopies
from app.review.marker_desk import MarkerDesk
from app.review.specs import REVIEW_SPECS

if TYPE_CHECKING:
    from app.main_window import Window

_SAY_MS = 10_000


class ReviewDesk(QObject):
    """Everything of the review that a window has.

    Parameters
    ----------
    window : Window
        With its page, session and actions made.
    keeper : ReviewKeeper
        Of the open review; what is entered for the report goes to it too.
    """

    def __init__(self, window: Window, keeper: ReviewKeeper) -> None:
        super().__init__(window)
        self._window = window
        self.keeper = keeper
        self.file = ReviewFile(self.keeper, window.jobs, window.session.tools.read_review, self)
        self.decisions = DecisionDesk(window, self.keeper)
        self.markers = MarkerDesk(window, self.keeper, self.decisions)
        self.copies = MarkerCopies(window, self.keeper, self.markers)
        self._accept = window.actions_by_name["accept"].text()
        self._asked = ""  # the question which of two reviews holds, while it is open
        self._follow()
        window.actions_by_name.connect(self._handlers())
        window.installEventFilter(self)
        self._show_enabled()

    def hasten(self) -> None:
        """Take what is still being typed, and write what is unsaved: the capture is about to be let go."""
        self._end_typing()
        self.keeper.hasten()

    def _end_typing(self) -> None:
        field = self._window.focusWidget()
        if isinstance(field, QLineEdit):
            field.editingFinished.emit()
        elif isinstance(field, QAbstractSpinBox):
            field.interpretText()

    def close(self) -> None:
        """Save at once, and let the file go."""
        self.file.leave()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:  # noqa: N802 - Qt's own name
        """Look at the file when the technician comes back to the window; keep what cannot be saved open."""
        if event.type() == QEvent.Type.WindowActivate:
            self.keeper.look()
        if event.type() == QEvent.Type.Close and not self._settle_out_of_sight():
            event.ignore()
            return True
        return super().eventFilter(watched, event)

    def _settle_out_of_sight(self) -> bool:
        """Write what is unsaved when the window is gone already; it comes back where it must not go yet."""
        shown = self._window.isVisible()
        self._end_typing()
        self._window.hide()
        if self.keeper.settle():
            return True
        self._window.setVisible(shown)
        return False

    def _follow(self) -> None:
        window, page = self._window, self._window.page
        window.session.capture_changed.connect(self._take_capture)
        window.session.findings_changed.connect(self._take_findings)
        self.keeper.changed.connect(self._show)
        self.keeper.standing_changed.connect(self._show_standing)
        self.keeper.problem.connect(self._complain)
        self.keeper.told.connect(lambda said: window.statusBar().showMessage(said, _SAY_MS))
        self.file.problem.connect(self._tell_of_file)
        self.markers.reader.problem.connect(page.problem_bar.show_problem)
        for changed in (self.keeper.stack.indexChanged, self.keeper.stack.cleanChanged):
            changed.connect(self._show_enabled)
        self.keeper.stack.indexChanged.connect(lambda done: window.focus.settle() if done else None)
        window.focus.target_changed.connect(self._show_enabled)
        window.focus.record_changed.connect(self._show_enabled)
        window.pages.currentChanged.connect(self._show_enabled)
        window.circle.empty_pressed.connect(self.markers.mark_moment)
        page.trace.asked.connect(self._ask_in_trace)
        page.track.asked.connect(self._ask_on_track)
        self.markers.shown.connect(self._show_enabled)

    def _handlers(self) -> dict[str, Callable[[], object]]:
        keeper, markers, decisions = self.keeper, self.markers, self.decisions
        return {
            "undo": lambda: self._retrace(self._stack().undo),
            "redo": lambda: self._retrace(self._stack().redo),
            "mark": markers.mark,
            "mark_span": markers.mark_span,
            "mark_travel": markers.mark_travel,
            "next_marker": lambda: markers.step(1),
            "previous_marker": lambda: markers.step(-1),
            "go_to_marker": markers.zoom,
            "marker_here": markers.move_here,
            "begin_here": lambda: markers.set_edge("start"),
            "end_here": lambda: markers.set_edge("stop"),
            "rename_marker": self._rename,
            "note_marker": self._window.page.markers.edit_note,
            "delete_marker": markers.delete,
            "copy_markers": self.copies.copy_text,
            "copy_csv": self.copies.copy_csv,
            "save_csv": self.copies.save_csv,
            "accept": decisions.accept,
            "adjust": decisions.ask_for_edges,
            "dismiss": decisions.dismiss,
            "withdraw": decisions.withdraw,
            "save_elsewhere": self._save_elsewhere,
            "take_other": keeper.take_other,
            "keep_own": keeper.keep_own,
            "release": markers.drop,
        }

    # -- following ---------------------------------------------------------------------------

    def _take_capture(self) -> None:
        capture = self._window.session.capture
        self.markers.reader.follow(capture, None)
        self.markers.drop()
        self.file.follow(capture)

    def _take_findings(self) -> None:
        self.markers.reader.follow(self._window.session.capture, self._window.session.findings)
        self._show()

    def _show(self) -> None:
        self.decisions.show()
        self.markers.show()
        self._show_enabled()

    def _show_standing(self) -> None:
        """Take the question off the screen once it was answered; offer what can be done now."""
        if self._asked and not self.keeper.conflict:
            self._window.page.problem_bar.hide()
            self._asked = ""
        self._show_enabled()

    def _complain(self, said: str) -> None:
        self._show_enabled()
        self._asked = said if self.keeper.conflict else ""
        names = ("take_other", "keep_own") if self.keeper.conflict else ("save_elsewhere",)
        tools = tuple(self._window.page.button(name, text=True) for name in names)
        self._window.page.problem_bar.show_problem(said, tools)

    def _tell_of_file(self, said: str) -> None:
        """Say what happened to the files; a question that is still open stays beside it."""
        if self._asked:
            self._complain(f"{said} {self._asked}" if said not in self._asked else self._asked)
        else:
            self._window.page.problem_bar.show_problem(said)

    def _show_enabled(self) -> None:
        """Offer only what can be done now, and say what would be undone."""
        stack, window, chosen = self._stack(), self._window, self.markers.chosen
        some, band = bool(self.keeper.review.markers), self.decisions.band
        said = self.decisions.decisions()[band] if band is not None else None
        record = window.focus.record is not None
        can = dict.fromkeys((name for name, *_ in REVIEW_SPECS), chosen is not None)
        can |= dict.fromkeys(("mark", "mark_span", "mark_travel"), record)
        can |= dict.fromkeys(("next_marker", "previous_marker", "copy_markers", "copy_csv", "save_csv"), some)
        can |= dict.fromkeys(("accept", "adjust", "dismiss"), band is not None)
        can |= dict.fromkeys(("take_other", "keep_own"), self.keeper.conflict)
        can["marker_here"] = isinstance(chosen, PointMarker)
        can["begin_here"] = can["end_here"] = not can["marker_here"] and (
            chosen is not None or band is not None
        )
        can["withdraw"] = said is not None
        can["save_elsewhere"] = self.keeper.path is not None
        can["undo"], can["redo"] = stack.canUndo(), stack.canRedo()
        in_review = window.pages.currentWidget() is window.page
        for name, possible in can.items():
            everywhere = name in ("undo", "redo", "save_elsewhere", "take_other", "keep_own")
            window.actions_by_name[name].setEnabled(possible and (in_review or everywhere))
        self._say(("undo", self.tr("Undo"), stack.undoText()), ("redo", self.tr("Redo"), stack.redoText()))
        self._show_accepted()
        window.page.track_tools(window.focus.band is not None)

    def _show_accepted(self) -> None:
        """Call it "Accepted" wherever it can be pressed, once that is done."""
        action, done = self._window.actions_by_name["accept"], self.decisions.accepted
        key = action.shortcut().toString(QKeySequence.SequenceFormat.NativeText)
        action.setText(accepted_name() if done else self._accept)
        action.setToolTip(f"{accepted_tip() if done else action.property('plainTip')} ({key})")
        action.setChecked(done)

    def show_enabled(self) -> None:
        """Another edit can be undone, or none: offer what can be done now."""
        self._show_enabled()

    def _retrace(self, step: Callable[[], None]) -> None:
        """Undo or redo, and choose the marker that this brought back or changed: keys mean that one."""
        before = self.keeper.review
        step()
        self.markers.choose_touched(before)

    def _stack(self) -> QUndoStack:
        """Edits that can be undone: those of the review, or of what is about to be imported."""
        return self._window.rooms.undo_stack() or self.keeper.stack

    def _say(self, *texts: tuple[str, str, str]) -> None:
        for name, plain, what in texts:
            action, text = self._window.actions_by_name[name], f"{plain}: {what}" if what else plain
            action.setText(text)
            key = action.shortcut().toString(QKeySequence.SequenceFormat.NativeText)
            tip = text if what else str(action.property("plainTip"))
            action.setToolTip(f"{tip} ({key})")

    # -- actions that ask --------------------------------------------------------------------

    def _rename(self) -> None:
        marker = self.markers.chosen
        if marker is not None:
            self._window.page.markers.edit_label(marker.marker_id)

    def _save_elsewhere(self) -> None:
        capture = self._window.session.capture
        stem = capture.path.stem if capture is not None and capture.path is not None else "capture"
        start, kinds = str(Path.home() / f"{stem}.review.json"), self.tr("Reviews (*.json)")
        title = self.tr("Save the review elsewhere")
        chosen, _ = QFileDialog.getSaveFileName(self._window, title, start, kinds)
        if chosen:
            self._window.page.problem_bar.hide()
            self.keeper.save_elsewhere(Path(chosen))

    def _ask_in_trace(self, at_s: float, where: QPoint) -> None:
        self._window.focus.point(at_s)
        self._offer(self._window.page.trace, ("mark", "mark_span", "mark_travel", "copy"), where)

    def _ask_on_track(self, travel_percent: float, band: int | None, where: QPoint) -> None:
        """Offer to mark the place that was clicked, and what can be said of the band that is there."""
        track, markers = self._window.page.track, self.markers
        begins = self.tr("End the stretch of travel here") if markers.begun_on_track else None
        here = (
            (self.tr("Mark this place"), lambda: markers.mark_place(travel_percent)),
            (
                begins or self.tr("Begin a stretch of travel here"),
                lambda: markers.mark_travel_at(travel_percent),
            ),
        )
        if band is None:
            self._window.arm.drag_to(travel_percent)
            self._offer(track, ("mark", "mark_span"), where, here)
            return
        self._window.focus.choose_band(band)
        self._offer(track, ("accept", "adjust", "dismiss", "withdraw"), where, here)

    def _offer(
        self,
        parent: QWidget,
        names: tuple[str, ...],
        where: QPoint,
        here: tuple[tuple[str, Callable[[], object]], ...] = (),
    ) -> None:
        menu = QMenu(parent)
        menu.aboutToHide.connect(menu.deleteLater)
        menu.addActions([self._window.actions_by_name[name] for name in names])
        if here:
            menu.addSeparator()
        for text, act in here:
            menu.addAction(text).triggered.connect(lambda _checked=False, act=act: act())
        menu.popup(where)
