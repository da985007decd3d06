"""Cautions, where the work is: the most dangerous one always in sight, the others on request."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QFrame,
    QHBoxLayout,
    QLabel,
    QScrollArea,
    QSizePolicy,
    QToolButton,
    QVBoxLayout,
    QWidget,
)

from analysis.captures.model import Capture
from analysis.reports.cautions import cautions
from app.drawing import icons
from app.drawing.theme import Palette
from app.language import said
from app.views.tall_enough import TallEnough

_GAP_PX = 3
_RING_PX = 1  # round what has the keyboard, as the style sheet draws it
_BAR_ON, _BAR_OFF = Qt.ScrollBarPolicy.ScrollBarAlwaysOn, Qt.ScrollBarPolicy.ScrollBarAlwaysOff
_BY_TAB = Qt.FocusPolicy.TabFocus
_LEAST_PX = 40  # two lines


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
        self._head = head = QHBoxLayout()
        head.addWidget(self._picture)
        head.addWidget(title, 1)
        head.addWidget(self._more)
        self._layout = QVBoxLayout(self)
        self._layout.setContentsMargins(9, 4, 6, 6)
        self._layout.setSpacing(_GAP_PX)
        self._layout.addLayout(head)
        self._layout.addWidget(self._scrolled())
        self._lines: list[QLabel] = []
        self._brief, self._most_px = False, 0
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

    def leave_room(self, most_px: int) -> None:
        """Be no higher than this, and scroll: where all are asked for, the last is read as the first is."""
        if most_px != self._most_px:
            self._most_px = most_px
            self.fit_height()

    def fit_height(self) -> None:
        """As high as the lines are, within the room that is left to them."""
        self._area.setVisible(any(not label.isHidden() for label in self._lines))
        inside, margins = self.contentsRect(), self._layout.contentsMargins()
        width_px = max(inside.width() - margins.left() - margins.right(), 1)
        whole_px = max(self._column.heightForWidth(width_px - 2 * _RING_PX), 0) + 2 * _RING_PX
        taken_px = self.height() - inside.height() + margins.top() + margins.bottom() + _GAP_PX
        taken_px += self._head.heightForWidth(width_px)
        room_px = max(self._most_px - taken_px, _LEAST_PX) if self._most_px else whole_px
        self._area.setFixedHeight(min(whole_px, room_px))
        scrolls = whole_px > room_px
        # Not as needed: a bar that was there for a moment wraps the lines anew, and is needed for good.
        self._area.setVerticalScrollBarPolicy(_BAR_ON if scrolls else _BAR_OFF)
        self._area.setFocusPolicy(_BY_TAB if scrolls else Qt.FocusPolicy.NoFocus)
        self.setTabOrder(self._more, self._area)
        super().fit_height()

    def _scrolled(self) -> QScrollArea:
        """Where the lines stand."""
        self._area, body = QScrollArea(), TallEnough()
        self._area.setFrameShape(QFrame.Shape.NoFrame)
        self._area.setWidgetResizable(True)
        self._area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._area.setAccessibleName(self.tr("Cautions"))
        self._column = QVBoxLayout(body)
        self._column.setSizeConstraint(QVBoxLayout.SizeConstraint.SetNoConstraint)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.setSpacing(_GAP_PX)
        self._area.setWidget(body)
        return self._area

    def apply_palette(self, palette: Palette) -> None:
        """Take on the colours of a palette."""
        self._picture.setPixmap(icons.pixmap("caution", palette.unsure, 17))

    def _line(self, text: str) -> QLabel:
        label = QLabel(text)
        label.setWordWrap(True)
        label.setTextFormat(Qt.TextFormat.PlainText)
        label.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Minimum)
        label.setProperty("quiet", True)
        self._column.addWidget(label)
        return label

    def _show_lines(self, all_of_them: bool) -> None:
        for place, label in enumerate(self._lines):
            label.setVisible(all_of_them or (place == 0 and not self._brief))
        self.fit_height()
