"""The buttons at the foot of a dialog, in words alone."""

from __future__ import annotations

from PySide6.QtGui import QIcon
from PySide6.QtWidgets import QDialogButtonBox


def dialog_buttons(which: QDialogButtonBox.StandardButton) -> QDialogButtonBox:
    """Standard buttons without the style's coloured pictures, which are none of ours.

    Parameters
    ----------
    which : QDialogButtonBox.StandardButton
        One, or several joined.
    """
    buttons = QDialogButtonBox(which)
    for button in buttons.buttons():
        button.setIcon(QIcon())
    return buttons
