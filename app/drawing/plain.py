"""Text that Qt shows as it stands: a tip has no switch for it, and guesses whether it is markup."""

from __future__ import annotations

from PySide6.QtGui import Qt


def plain_tip(text: str) -> str:
    """The text for `setToolTip`, its markup written out where Qt would read it as such.

    Wherever a tip holds words out of a file or a path, since a stranger may have chosen them.
    """
    return Qt.convertFromPlainText(text) if Qt.mightBeRichText(text) else text
