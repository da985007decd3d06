"""One sentence about what went wrong, in the window and not in its way."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QHBoxLayout, QLabel, QSizePolicy, QToolButton, QWidget

from app.drawing import icons
from app.drawing.theme import Palette
from app.views.tab_order import in_turn
from app.views.tall_enough import TallEnough


class ProblemBar(TallEnough):
    """A bar that appears with a sentence and goes when it is closed or things work again."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("problem")
        self.setAccessibleName(self.tr("Problem"))
        self._text = QLabel()
        self._text.setWordWrap(True)
        self._text.setTextFormat(Qt.TextFormat.PlainText)
        self._text.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Minimum)
        self._text.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self._close = QToolButton()
        self._close.setAccessibleName(self.tr("Close this message"))
        self._close.setToolTip(self.tr("Close this message"))
        self._close.clicked.connect(lambda: self.hide())  # as in `app.main_window`, of Qt's own methods
        self._tools: tuple[QWidget, ...] = ()
        self._layout = QHBoxLayout(self)
        self._layout.setContentsMargins(10, 5, 5, 5)
        self._layout.addWidget(self._text, 1)
        self._layout.addWidget(self._close)
        self.hide()

    def show_problem(self, sentence: str, tools: tuple[QWidget, ...] = ()) -> None:
        """Show a sentence, with controls for what can be done about it."""
        for tool in self._tools:
            self._layout.removeWidget(tool)
            tool.deleteLater()
        for place, tool in enumerate(tools, 1):
            self._layout.insertWidget(place, tool)
        self._tools = tools
        in_turn([self._close, *tools])
        self._text.setText(sentence)
        self.setAccessibleDescription(sentence)
        self.show()

    @property
    def text(self) -> str:
        """The sentence that is shown; empty while the bar is hidden."""
        return "" if self.isHidden() else self._text.text()

    def apply_palette(self, palette: Palette) -> None:
        """Take on the colours of a palette."""
        self._close.setIcon(icons.icon("close", palette.quiet, palette.faint))
