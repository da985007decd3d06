"""Three lines for whoever opens the workbench for the first time."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QSizePolicy, QToolButton, QVBoxLayout, QWidget

from app.drawing import icons
from app.drawing.theme import Palette


class HintBar(QFrame):
    """What to do first; gone once it is closed."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("hint")
        self.setAccessibleName(self.tr("First steps"))
        lines = (
            self.tr("This is a sample. At the right: the verdict, how sure it is, and what it stands on."),
            self.tr(
                "Double-click the hatched band on the sensor track: Trace shows its worst crossing."
                " N goes on to the next, Space lets the arm run."
            ),
            self.tr(
                "Point at the drop and press M to measure it; Accept confirms the band. Then drop a"
                " capture of your own here."
            ),
        )
        texts = QVBoxLayout()
        texts.setSpacing(1)
        for line in lines:
            label = QLabel(line)
            label.setWordWrap(True)
            # Wrapped where it must be; Qt would ask for the height of a narrow column from the start.
            label.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
            label.setMinimumHeight(label.fontMetrics().height())
            texts.addWidget(label)
        self._close = QToolButton()
        self._close.setAccessibleName(self.tr("Close the first steps"))
        self._close.setToolTip(self.tr("Close the first steps"))
        self._close.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self._close.clicked.connect(lambda: self.hide())  # as in `app.main_window`, of Qt's own methods
        layout = QHBoxLayout(self)
        layout.setContentsMargins(12, 6, 6, 6)
        layout.addLayout(texts, 1)
        layout.addWidget(self._close, 0, Qt.AlignmentFlag.AlignTop)
        self.hide()

    def apply_palette(self, palette: Palette) -> None:
        """Take on the colours of a palette."""
        self._close.setIcon(icons.icon("close", palette.quiet, palette.faint))
