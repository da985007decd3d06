"""One edit of the draft: a swap of two values, that can be undone."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtGui import QUndoCommand

from app.importing.draft import Draft


class DraftEdit(QUndoCommand):
    """What was done, for the menu, with the draft before and after it.

    Parameters
    ----------
    text : str
        ``"change a column"``.
    before, after : Draft
        Both are whole.
    put : callable
        Takes the draft that holds from now on.
    """

    def __init__(self, text: str, before: Draft, after: Draft, put: Callable[[Draft], None]) -> None:
        super().__init__(text)
        self._before, self._after, self._put = before, after, put

    def undo(self) -> None:
        """Back to what was before."""
        self._put(self._before)

    def redo(self) -> None:
        """On to what came of it; called when the edit is made, too."""
        self._put(self._after)
