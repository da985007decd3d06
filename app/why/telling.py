"""Why it comes and goes in words: one sentence over the picture, the details folded under it."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QLabel, QSizePolicy, QToolButton, QVBoxLayout

from analysis.exposure.words import in_short, of_whom, what_follows
from app.language import said
from app.views.tall_enough import TallEnough
from app.why.choices import Part, Shown
from app.why.picture import LEAST_WIDTH_PX


class InShort(TallEnough):
    """What a customer is told first: what happens, what follows, what a stored code says to it, of whom."""

    def __init__(self) -> None:
        super().__init__()
        self.sentence, self.follows, self.against, self.basis = _text(), _text(), _text(), _text()
        self.sentence.setStyleSheet("font-size: 13pt; font-weight: 600;")
        self.basis.setProperty("quiet", True)
        column = QVBoxLayout(self)
        column.setContentsMargins(4, 0, 4, 2)
        column.setSpacing(3)
        for label in (self.sentence, self.follows, self.against, self.basis):
            column.addWidget(label)
        self.show_result(None)

    def fit_height(self) -> None:
        """As high as its lines are at the width of the picture below it, also before it is laid out."""
        layout = self.layout()
        if layout is not None:
            lines_px = layout.heightForWidth(max(self.width(), LEAST_WIDTH_PX))
            self.setMinimumHeight(max(lines_px, 0))  # Qt answers -1 where nothing is shown

    def show_result(self, result: Shown | None) -> None:
        """Show what follows from the choices; nothing for None."""
        self.setVisible(result is not None)
        made = result.exposure if result is not None else None
        for label, words in ((self.sentence, in_short), (self.follows, what_follows), (self.basis, of_whom)):
            label.setText(said(words(made)) if made is not None else "")
        against = said(result.against) if result is not None else ""
        self.against.setText(against)
        self.against.setVisible(bool(against))
        self.fit_height()


class Details(TallEnough):
    """Everything else, part by part, folded until it is asked for.

    Signals
    -------
    unfolded(bool)
        The details were unfolded, or folded again.
    """

    unfolded = Signal(bool)

    def __init__(self) -> None:
        super().__init__()
        self.heading = QToolButton()
        self.heading.setText(self.tr("&In detail"))
        self.heading.setToolTip(self.tr("The numbers, the rules, and what they rest on"))
        self.heading.setAccessibleName(self.tr("Why it comes and goes, in detail"))
        self.heading.setToolButtonStyle(Qt.ToolButtonStyle.ToolButtonTextBesideIcon)
        self.heading.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.heading.setCheckable(True)
        self.heading.setProperty("fold", True)
        self._titles = {
            Part.HEIGHT: self.tr("The band, and this height"),
            Part.ROAD: self.tr("This road"),
            Part.UNIT: self.tr("The control unit"),
            Part.RECORDED: self.tr("From a road record"),
            Part.BASIS: self.tr("What it rests on"),
        }
        self._told = {part: (_title(title), _text()) for part, title in self._titles.items()}
        self._content = self._all_told()
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 3, 0, 0)
        column.setSpacing(2)
        column.addWidget(self.heading, 0, Qt.AlignmentFlag.AlignLeft)
        column.addWidget(self._content)
        self.heading.toggled.connect(self._fold)
        self._fold(False)

    def show_result(self, result: Shown | None) -> None:
        """Show what follows from the choices; nothing for None."""
        parts = result.parts if result is not None else {}
        self.setVisible(bool(parts))
        for part, labels in self._told.items():
            text = "\n".join(said(words) for words in parts.get(part, ()) if words)
            labels[1].setText(text)
            for label in labels:
                label.setVisible(bool(text))

    def text(self) -> str:
        """All of it, as it stands there."""
        return "\n\n".join(text for _, label in self._told.values() if (text := label.text()))

    def _all_told(self) -> TallEnough:
        content = TallEnough()
        column = QVBoxLayout(content)
        column.setContentsMargins(4, 0, 4, 4)
        column.setSpacing(2)
        for place, (title, text) in enumerate(self._told.values()):
            title.setContentsMargins(0, 8 if place else 0, 0, 0)
            text.setAccessibleDescription(title.text())  # its name is what it says
            column.addWidget(title)
            column.addWidget(text)
        return content

    def _fold(self, open_: bool) -> None:
        self._content.setVisible(open_)
        self.heading.setArrowType(Qt.ArrowType.DownArrow if open_ else Qt.ArrowType.RightArrow)
        self.unfolded.emit(open_)


def _text() -> QLabel:
    label = QLabel()
    label.setWordWrap(True)
    label.setTextFormat(Qt.TextFormat.PlainText)
    label.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Minimum)
    label.setTextInteractionFlags(
        Qt.TextInteractionFlag.TextSelectableByMouse | Qt.TextInteractionFlag.TextSelectableByKeyboard
    )
    return label


def _title(words: str) -> QLabel:
    label = QLabel(words)
    label.setObjectName("paneTitle")
    return label
