"""Fields of a form: a number with its unit, a choice, and a row to put them in."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QComboBox, QFormLayout, QLabel, QWidget

from app.views.number_box import NumberBox


def number_field(
    name: str, value: float, least: float, most: float, suffix: str, *, digits: int = 0, step: float = 1.0
) -> NumberBox:
    """A number that takes effect when it is stepped, entered or left, not at every key."""
    box = NumberBox()
    box.setDecimals(digits)
    box.setRange(least, most)
    box.setSingleStep(step)
    box.setSuffix(suffix)
    box.setValue(value)
    box.setKeyboardTracking(False)
    box.setAccessibleName(name)
    box.setToolTip(name)
    box.lineEdit().setTextMargins(3, 0, 0, 0)  # the style sheet's padding does not reach it
    return box


def choice_field(name: str, choices: list[tuple[str, object]]) -> QComboBox:
    """A choice of words, each with what it stands for."""
    box = QComboBox()
    for words, meaning in choices:
        box.addItem(words, meaning)
    box.setAccessibleName(name)
    box.setToolTip(name)
    box.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
    box.setMinimumContentsLength(17)
    return box


def form_of(page: QWidget) -> QFormLayout:
    """A form with its labels at the left."""
    form = QFormLayout(page)
    form.setContentsMargins(10, 10, 10, 10)
    form.setHorizontalSpacing(10)
    form.setVerticalSpacing(6)
    form.setLabelAlignment(Qt.AlignmentFlag.AlignLeft)
    form.setFieldGrowthPolicy(QFormLayout.FieldGrowthPolicy.ExpandingFieldsGrow)
    form.setRowWrapPolicy(QFormLayout.RowWrapPolicy.DontWrapRows)
    return form


def quiet_text(text: str = "") -> QLabel:
    """A text in the background that wraps."""
    label = QLabel(text)
    label.setWordWrap(True)
    label.setTextFormat(Qt.TextFormat.PlainText)
    label.setProperty("quiet", True)
    return label
