"""The frame that every view stands in: title, tools, content, and what to do where there is none."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QStackedWidget, QVBoxLayout, QWidget

from app.drawing.plain import plain_tip
from app.views.elided_label import ElidedLabel


class Pane(QFrame):
    """A titled frame with an empty state.

    Parameters
    ----------
    title : str
        Name of the view, in the trade's words.
    """

    def __init__(self, title: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("pane")
        self.setAccessibleName(title)
        self._title = QLabel(title)
        self._title.setObjectName("paneTitle")
        self._note = ElidedLabel()
        self._note.setObjectName("paneNote")
        self._note.setMinimumWidth(1)  # it gives way before the title does
        self._notes, self._about = ("", ""), ""
        self._heading_tools: list[QWidget] = []
        self._empty = QLabel()
        self._empty.setTextFormat(Qt.TextFormat.PlainText)
        self._empty.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self._empty.setWordWrap(True)
        self._empty.setProperty("quiet", True)
        self._empty.setContentsMargins(8, 4, 8, 4)
        self._stack = QStackedWidget()
        self._empty_page = QWidget()
        self._empty_layout = QVBoxLayout(self._empty_page)
        self._empty_layout.addStretch(1)
        self._empty_layout.addWidget(self._empty)
        self._empty_layout.addStretch(1)
        self._stack.addWidget(self._empty_page)
        self._heading = QHBoxLayout()
        self._heading.setSpacing(8)
        self._heading.addWidget(self._title)
        self._heading.addWidget(self._note, 1)
        self._frame = layout = QVBoxLayout(self)
        layout.setContentsMargins(10, 5, 8, 8)
        layout.setSpacing(3)
        layout.addLayout(self._heading)
        layout.addWidget(self._stack, 1)

    def set_content(self, content: QWidget) -> None:
        """Put the view's content in; called once, while the view is built."""
        self._stack.addWidget(content)

    def add_tool(self, tool: QWidget) -> None:
        """Add a control at the right of the title."""
        self._heading_tools.append(tool)
        self._heading.addWidget(tool)

    def add_empty_tool(self, tool: QWidget) -> None:
        """Add a control that is shown while there is no content, below what it says."""
        self._empty_layout.insertWidget(2, tool, 0, Qt.AlignmentFlag.AlignHCenter)

    def set_title(self, text: str) -> None:
        """Call the view by another name: what it shows is one of two."""
        self._title.setText(text)

    def set_note(self, text: str, about: str = "", short: str = "") -> None:
        """Write beside the title; a screen reader says it after the name, a tip with `about` above it.

        Parameters
        ----------
        text : str
            All of it; shortened with an ellipsis where there is no room for it.
        about : str
            First line of the tip.
        short : str
            What stands there instead where there is no room for `text` but for this.
        """
        self._notes, self._about = (text, short), about
        self.setAccessibleDescription(text)
        self.fit_note()

    def fit_note(self) -> bool:
        """Write the note as there is room for it; back comes whether it stands whole."""
        text, short = self._notes
        whole = not text or self._has_room_for(text)
        self._note.setText(short if short and not whole and self._has_room_for(short) else text)
        self._note.setToolTip(plain_tip(f"{self._about}\n{text}" if self._about else text))
        return whole

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Write the note for the new width."""
        super().resizeEvent(event)
        if self._notes[1]:
            self.fit_note()

    def _has_room_for(self, note: str) -> bool:
        """Whether a note would stand whole beside the title and the tools that are shown."""
        others = [self._title, *(tool for tool in self._heading_tools if not tool.isHidden())]
        taken = sum(other.sizeHint().width() + self._heading.spacing() for other in others)
        frame = self._frame.contentsMargins()
        room = self.width() - frame.left() - frame.right() - taken
        return self._note.fontMetrics().horizontalAdvance(note) + 2 <= room

    def show_empty(self, text: str) -> None:
        """Show what to do instead of the content."""
        self._empty.setText(text)
        self._stack.setCurrentIndex(0)

    def show_content(self) -> None:
        """Show the content."""
        self._stack.setCurrentIndex(1)

    @property
    def empty_text(self) -> str:
        """What is shown in place of the content; empty while the content is shown."""
        return self._empty.text() if self._stack.currentIndex() == 0 else ""
