"""That a lone record was taken for several wires, and how: a proposal, to be accepted or refused."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QSizePolicy, QWidget

from analysis.diagnosis.findings import Part
from analysis.wording import say
from app.language import said
from app.words import role_name, step_name


class SplitStrip(QFrame):
    """One sentence with the spans, and two answers beside it; in the window and not in its way.

    Parameters
    ----------
    answers : sequence of QWidget
        The controls.
    """

    def __init__(self, answers: Sequence[QWidget]) -> None:
        super().__init__()
        self.setObjectName("hint")
        self.setAccessibleName(self.tr("Proposed splitting"))
        self._text = QLabel()
        self._text.setTextFormat(Qt.TextFormat.PlainText)
        self._text.setWordWrap(True)
        self._text.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Minimum)
        layout = QHBoxLayout(self)
        layout.setContentsMargins(12, 4, 6, 4)
        layout.addWidget(self._text, 1)
        for answer in answers:
            layout.addWidget(answer)
        self.hide()

    @property
    def text(self) -> str:
        """The sentence that is shown; empty while there is none."""
        return "" if self.isHidden() else self._text.text()

    def show_parts(self, parts: Sequence[Part]) -> None:
        """Say how the record was split; nothing where it was not."""
        if not parts:
            self.hide()
            return
        spans = ", ".join(self._span(part) for part in parts)
        sentence = self.tr(
            "One probe went from wire to wire in this record. It was examined as: {spans}. Is that so?"
        ).format(spans=spans)
        self._text.setText(sentence)
        self.setAccessibleDescription(sentence)
        self.show()

    def _span(self, part: Part) -> str:
        name = role_name(part.role) if part.role is not None else ""
        if part.step is not None and step_name(part.step) != name:
            name = self.tr("{role} ({step})").format(role=name, step=step_name(part.step))
        time = said(say("{start_s:.2f}–{stop_s:.2f} s", start_s=part.time.start, stop_s=part.time.stop))
        return f"{name} {time}"
