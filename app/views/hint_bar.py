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
        self._texts = QVBoxLayout()
        self._texts.setSpacing(1)
        self._lines = tuple(self._line() for _ in range(3))
        self.show_steps(with_band=True)
        self._close = QToolButton()
        self._close.setAccessibleName(self.tr("Close the first steps"))
        self._close.setToolTip(self.tr("Close the first steps"))
        self._close.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self._close.clicked.connect(lambda: self.hide())  # as in `app.main_window`, of Qt's own methods
        layout = QHBoxLayout(self)
        layout.setContentsMargins(12, 6, 6, 6)
        layout.addLayout(self._texts, 1)
        layout.addWidget(self._close, 0, Qt.AlignmentFlag.AlignTop)
        self.hide()

    def show_steps(self, with_band: bool) -> None:
        """Say the steps of a capture that has crossings of a band, or of one that has none."""
        steps = (
            (
                self.tr(
                    "Press C: Trace shows the worst crossing. Press M: it marks the deepest place and"
                    " measures the drop. Accept confirms the band."
                ),
                self.tr(
                    "N goes on to the next crossing, Space lets the arm run. Then drop a capture of your own"
                    " here."
                ),
            )
            if with_band
            else (
                self.tr("Point in Trace and press M: it marks that moment and reads it."),
                self.tr("Space lets the arm run. Then drop a capture of your own here."),
            )
        )
        first = self.tr("This is a sample. At the right: the verdict, how sure it is, and what it stands on.")
        for label, text in zip(self._lines, (first, *steps), strict=True):
            label.setText(text)

    def _line(self) -> QLabel:
        label = QLabel()
        label.setWordWrap(True)
        # Wrapped where it must be; Qt would ask for the height of a narrow column from the start.
        label.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        label.setMinimumHeight(label.fontMetrics().height())
        self._texts.addWidget(label)
        return label

    def apply_palette(self, palette: Palette) -> None:
        """Take on the colours of a palette."""
        self._close.setIcon(icons.icon("close", palette.quiet, palette.faint))
