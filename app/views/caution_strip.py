"""Cautions, where the work is: the most dangerous one always in sight, the others on request."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QHBoxLayout, QLabel, QSizePolicy, QToolButton, QVBoxLayout, QWidget

from analysis.captures.model import Capture
from analysis.reports.cautions import cautions
from app.drawing import icons
from app.drawing.theme import Palette
from app.language import said
from app.views.tall_enough import TallEnough


class CautionStrip(TallEnough):
    """The cautions for the sensor at hand."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("caution")
        self.setAccessibleName(self.tr("Cautions"))
        self._picture = QLabel()
        title = QLabel(self.tr("Before you connect or sweep"))
        title.setStyleSheet("font-weight: 600;")
        title.setWordWrap(True)
        self._more = QToolButton()
        self._more.setCheckable(True)
        self._more.setText(self.tr("All"))
        self._more.setAccessibleName(self.tr("Show all cautions"))
        self._more.setToolTip(self.tr("Show all cautions, or the first alone"))
        self._more.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self._more.setProperty("heading", True)
        self._more.toggled.connect(self._show_lines)
        head = QHBoxLayout()
        head.addWidget(self._picture)
        head.addWidget(title, 1)
        head.addWidget(self._more)
        self._layout = QVBoxLayout(self)
        self._layout.setContentsMargins(9, 4, 6, 6)
        self._layout.setSpacing(3)
        self._layout.addLayout(head)
        self._lines: list[QLabel] = []
        self._brief = False
        self.show_for(None)

    def show_for(self, capture: Capture | None) -> None:
        """Show what applies to the sensor of a capture; everything where nothing is known of it."""
        for label in self._lines:
            label.hide()
            label.deleteLater()
        described = (
            [capture.text("profile"), capture.text("sensor"), capture.title] if capture is not None else []
        )
        self._lines = [self._line(said(text)) for text in cautions(" ".join(described))]
        self.setAccessibleDescription(" ".join(label.text() for label in self._lines))
        self._show_lines(self._more.isChecked())

    def show_brief(self, brief: bool) -> None:
        """Show the title alone until all are asked for: on a low screen the first would hide the work."""
        if brief != self._brief:
            self._brief = brief
            self._show_lines(self._more.isChecked())

    def apply_palette(self, palette: Palette) -> None:
        """Take on the colours of a palette."""
        self._picture.setPixmap(icons.pixmap("caution", palette.unsure, 17))

    def _line(self, text: str) -> QLabel:
        label = QLabel(text)
        label.setWordWrap(True)
        label.setTextFormat(Qt.TextFormat.PlainText)
        label.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Minimum)
        label.setProperty("quiet", True)
        self._layout.addWidget(label)
        return label

    def _show_lines(self, all_of_them: bool) -> None:
        for place, label in enumerate(self._lines):
            label.setVisible(all_of_them or (place == 0 and not self._brief))
        self.fit_height()
