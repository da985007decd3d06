"""A field for a number, which reads as numbers do everywhere else: with a true minus sign."""

from __future__ import annotations

from PySide6.QtGui import QValidator
from PySide6.QtWidgets import QDoubleSpinBox

_MINUS = "\N{MINUS SIGN}"


class NumberBox(QDoubleSpinBox):
    """Shows the minus of ISO 80000-2 (2-10.2); the hyphen of the keyboard becomes one as it is typed."""

    def textFromValue(self, value: float) -> str:  # noqa: N802 - Qt's own name
        """The number as it stands in the field."""
        return _shown(super().textFromValue(value))

    def valueFromText(self, text: str) -> float:  # noqa: N802 - Qt's own name
        """What the text in the field is worth."""
        return super().valueFromText(_as_qt_reads(text))

    def validate(self, text: str, at: int) -> tuple[QValidator.State, str, int]:
        """Whether this can be or become a number, and how it is written."""
        state, read, place = super().validate(_as_qt_reads(text), at)
        return state, _shown(read), place


def _shown(text: str) -> str:
    return text.replace("-", _MINUS)


def _as_qt_reads(text: str) -> str:
    """The hyphen, which Qt takes in every language."""
    return text.replace(_MINUS, "-")
