"""One line of Evidence: a mark, what it stands for, and quiet lines below."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFrame, QHBoxLayout, QVBoxLayout, QWidget

from app.views.press_row import PressRow, text_line
from app.views.tone_mark import ToneMark


def told_row(
    picture: ToneMark,
    text: str,
    pressed: bool = False,
    *,
    quiet: bool = False,
    bold: bool = False,
    below: Sequence[str] = (),
) -> QWidget:
    """A mark and a text, with quiet lines below it.

    Parameters
    ----------
    picture : ToneMark
        How it stands with what is said.
    text : str
        Plain text.
    pressed : bool
        Whether what it stands on can be gone to: the row is a `PressRow` then.
    quiet, bold : bool
        How the text is set.
    below : sequence of str
        Plain text, a line each.
    """
    row = PressRow(text, opens=False) if pressed else QFrame()
    layout = QHBoxLayout(row)
    layout.setContentsMargins(2, 1, 2, 1)  # room for the ring
    layout.setSpacing(7)
    picture.setContentsMargins(0, 2, 0, 0)
    layout.addWidget(picture, 0, Qt.AlignmentFlag.AlignTop)
    label = text_line(text, "strong" if bold else "", quiet=quiet)
    lines = QVBoxLayout()
    lines.setSpacing(0)
    lines.addWidget(label)
    for line in below:
        lines.addWidget(text_line(line, "small", quiet=True))
    layout.addLayout(lines, 1)
    if isinstance(row, PressRow):
        label.setObjectName("pressText")
    return row
