"""The capture to be: its title, the sensor's profile, the car, the recorder."""

from __future__ import annotations

from collections.abc import Mapping

from PySide6.QtCore import QCoreApplication, Qt, Signal
from PySide6.QtWidgets import QFormLayout, QFrame, QLabel, QScrollArea, QWidget

from app.importing.words import fact_names
from app.views.record_form import WordBox
from app.views.report_fields import LineField

_LEAST_FIELD_PX = 110  # where the label leaves less, the field stands below it


def _tr(text: str) -> str:
    return QCoreApplication.translate("capture_form", text)


class CaptureForm(QScrollArea):
    """The form; it changes nothing, it says what was entered.

    Signals
    -------
    title_entered(text)
        Another title.
    fact_entered(key, text)
        Another attribute of the capture.
    """

    title_entered = Signal(str)
    fact_entered = Signal(str, str)

    def __init__(self) -> None:
        super().__init__()
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setAccessibleName(_tr("What is said of the capture"))
        self.title = LineField(_tr("Title"))
        self.profile = WordBox({"": _tr("not told")}, _tr("Sensor profile"), roomy=True)
        self.facts: dict[str, LineField] = {}
        body = QWidget()
        form = QFormLayout(body)
        form.setContentsMargins(0, 0, 6, 0)
        form.setVerticalSpacing(3)
        form.setFieldGrowthPolicy(QFormLayout.FieldGrowthPolicy.AllNonFixedFieldsGrow)
        form.setRowWrapPolicy(QFormLayout.RowWrapPolicy.WrapLongRows)
        self.title.entered.connect(self.title_entered)
        self.profile.told.connect(lambda word: self.fact_entered.emit("profile", word))
        self.title.setMinimumWidth(_LEAST_FIELD_PX)
        form.addRow(QLabel(_tr("Title")), self.title)
        form.addRow(QLabel(_tr("Sensor profile")), self.profile)
        for key, name in fact_names().items():
            field = LineField(name)
            field.setMinimumWidth(_LEAST_FIELD_PX)
            field.entered.connect(lambda text, key=key: self.fact_entered.emit(key, text))
            self.facts[key] = field
            form.addRow(QLabel(name), field)
        self.setWidget(body)

    def show_capture(self, title: str, proposed: str, facts: Mapping[str, str]) -> None:
        """Show what is said, and the title that it has where nobody gives one."""
        self.title.setPlaceholderText(proposed)
        self.title.show_text(title)
        self.profile.show_word(facts.get("profile", ""))
        for key, field in self.facts.items():
            field.show_text(facts.get(key, ""))

    def offer_profiles(self, profiles: Mapping[str, str]) -> None:
        """Offer these sensor profiles, by id with their titles."""
        for name, title in profiles.items():
            if self.profile.findData(name) < 0:
                self.profile.addItem(title, name)
