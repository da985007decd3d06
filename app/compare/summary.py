"""What a comparison comes down to, and below it what stands against reading more into it."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication, Qt
from PySide6.QtWidgets import QLabel, QSizePolicy, QVBoxLayout

from analysis.comparison.model import Comparison
from app.drawing.numbers import duration
from app.language import said
from app.views.tall_enough import TallEnough

_LEAST_S = 1e-6
"""Less than this is rounding of two times."""


class SummaryStrip(TallEnough):
    """The sentence, and below it what stands against reading more into it."""

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("pane")
        self._sentence, self._cautions = _label("font-size: 12pt; font-weight: 600;"), _label("")
        self._verdicts = _label("")
        self._verdicts.hide()
        self._sentence.setAccessibleDescription(self.tr("What differs"))
        self._cautions.setProperty("quiet", True)
        column = QVBoxLayout(self)
        column.setContentsMargins(10, 6, 10, 6)
        column.setSpacing(2)
        column.addWidget(self._sentence)
        column.addWidget(self._verdicts)
        column.addWidget(self._cautions)
        self._stands, self._moved = "", ""
        self.show_comparison(None, self.tr("Open a second capture to see what differs."))

    @property
    def text(self) -> str:
        """The sentence that is shown."""
        return self._sentence.text()

    @property
    def verdicts(self) -> str:
        """What each capture shows by itself."""
        return self._verdicts.text()

    def show_verdicts(self, verdicts: str) -> None:
        """Say what each capture shows by itself; nothing while that is empty."""
        self._verdicts.setText(verdicts)
        self._verdicts.setVisible(bool(verdicts))
        self.fit_height()

    def show_comparison(self, comparison: Comparison | None, otherwise: str = "") -> None:
        """Show what a comparison comes down to, or what to do where there is none."""
        self._sentence.setText(said(comparison.summary) if comparison is not None else otherwise)
        self._stands = " ".join(said(item) for item in comparison.cautions) if comparison is not None else ""
        self._show_quiet()

    def show_shift(self, shift_s: float) -> None:
        """Say how far the second trace is moved against the first, where it is."""
        moved = moved_words(shift_s)
        if moved != self._moved:
            self._moved = moved
            self._show_quiet()

    @property
    def quiet_text(self) -> str:
        """What stands below the sentence."""
        return self._cautions.text()

    def _show_quiet(self) -> None:
        self._cautions.setText(" ".join(part for part in (self._stands, self._moved) if part))
        self._cautions.setVisible(bool(self._cautions.text()))
        self.fit_height()


def moved_words(shift_s: float) -> str:
    """How far the second trace was moved; empty where it was not."""
    later = _tr("The second trace is moved {time} later.")
    sooner = _tr("The second trace is moved {time} earlier.")
    return _shift_words(shift_s, later, sooner)


def aligned_words(moved_s: float) -> str:
    """By how much the second trace was moved just now, which is not where it stands; empty for not at all."""
    later = _tr("Both arms first move at the same place now: the second trace went {time} later.")
    sooner = _tr("Both arms first move at the same place now: the second trace went {time} earlier.")
    return _shift_words(moved_s, later, sooner)


def _shift_words(by_s: float, later: str, sooner: str) -> str:
    if abs(by_s) < _LEAST_S:
        return ""
    return (later if by_s > 0.0 else sooner).format(time=duration(abs(by_s)))


def _tr(text: str) -> str:
    return QCoreApplication.translate("compare_summary", text)


def _label(style: str) -> QLabel:
    label = QLabel()
    label.setWordWrap(True)
    label.setTextFormat(Qt.TextFormat.PlainText)
    label.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Minimum)
    label.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
    if style:
        label.setStyleSheet(style)
    return label
