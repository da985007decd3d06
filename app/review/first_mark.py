"""What can be done with a marker: said once, beside the first one that is ever placed."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject
from PySide6.QtGui import QKeySequence

from app.review.keeper import ReviewKeeper

if TYPE_CHECKING:
    from app.main_window import Window


class FirstMark(QObject):
    """A line at the head of the list of markers, until the next thing is done; never said again.

    Parameters
    ----------
    window : Window
        Its settings remember that it was said.
    keeper : ReviewKeeper
        Of the open review; any change of it ends the line.
    """

    def __init__(self, window: Window, keeper: ReviewKeeper, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._window = window
        for done in (keeper.changed, window.focus.target_changed, window.focus.record_changed):
            done.connect(self.end)

    def begin(self) -> None:
        """A marker was placed: say what can be done with it, if that was never said."""
        settings = self._window.settings
        if not settings.told_of_marks:
            settings.told_of_marks = True
            self._window.page.markers.show_hint(self._words())

    def end(self) -> None:
        """Something else was done: take the line away."""
        self._window.page.markers.show_hint("")

    def _words(self) -> str:
        text = self.tr("Drag moves it, {rename} names it, {delete} deletes it")
        return text.format(rename=self._key("rename_marker"), delete=self._key("delete_marker"))

    def _key(self, action: str) -> str:
        keys = self._window.actions_by_name[action].shortcut()
        return keys.toString(QKeySequence.SequenceFormat.NativeText)
