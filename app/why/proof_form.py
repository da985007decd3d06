"""The road test that shows a repair."""

from __future__ import annotations

from PySide6.QtCore import QSignalBlocker, Signal
from PySide6.QtWidgets import QLabel, QPushButton, QWidget

from analysis.exposure.road_test import total_km
from analysis.review.vehicle import Counted, RoadTest
from app.language import said
from app.why.choices import Choices
from app.why.fields import form_of, number_field, quiet_text


class ProofForm(QWidget):
    """How often it came before, and how far to drive without it.

    Signals
    -------
    changed(RoadTest)
        Something else was entered.
    count_wanted()
        Road records are to be counted off.
    """

    changed = Signal(object)
    count_wanted = Signal()

    def __init__(self, choices: Choices, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        km = self.tr(" km")
        self.faults = number_field(self.tr("Faults before the repair"), 1.0, 1.0, 1000.0, "")
        self.before = number_field(self.tr("Kilometres before the repair"), 0.0, 0.0, 100_000.0, km, digits=1)
        self.before.setSpecialValueText(self.tr("not entered"))
        self.driven = number_field(
            self.tr("Driven without a fault since"), 0.0, 0.0, 100_000.0, km, digits=1, step=1.0
        )
        self.words = QLabel()
        self.words.setWordWrap(True)
        self.words.setAccessibleDescription(self.tr("Road test without a fault"))
        self._counted: Counted = ()
        form = form_of(self)
        form.addRow(self.tr("&Faults before"), self.faults)
        form.addRow(self.tr("&in"), self.before)
        form.addRow(self.tr("&Driven since"), self.driven)
        self.count = QPushButton(self.tr("&Count road records…"))
        self.count.setToolTip(
            self.tr("Choose captures after the repair: their road records without a fault fill this in")
        )
        self.counted = quiet_text()
        self.counted.setAccessibleDescription(self.tr("Road records that were counted"))
        self.counted.hide()
        form.addRow(self.count)
        form.addRow(self.counted)
        form.addRow(self.words)
        self.count.clicked.connect(self.count_wanted)
        form.addRow(
            quiet_text(
                self.tr(
                    "Taken that faults come at random over the distance. Drive at the same height, load and"
                    " surface as before."
                )
            )
        )
        self.show_choices(choices)
        for box in (self.faults, self.before, self.driven):
            box.valueChanged.connect(self._take)

    def show_choices(self, choices: Choices) -> None:
        """Show what is entered, and what follows; tells nobody."""
        test = choices.test
        for box, value in (
            (self.faults, test.faults),
            (self.before, test.before_km or 0.0),
            (self.driven, test.driven_km),
        ):
            with QSignalBlocker(box):
                box.setValue(value)
        self._tell(test)

    def _show_counted(self, counted: Counted) -> None:
        """Show which road records were counted, and which were not and why; nothing for none."""
        self._counted = counted
        lines = [
            self.tr("{capture}: {record}").format(capture=file, record=said(record.words))
            for file, record in counted
        ]
        self.counted.setText("\n".join(lines))
        self.counted.setVisible(bool(lines))

    def _take(self) -> None:
        driven_km = self.driven.value()
        # What was typed over is not what was counted any more.
        counted = self._counted if driven_km == round(total_km([one for _, one in self._counted]), 1) else ()
        test = RoadTest(round(self.faults.value()), self.before.value() or None, driven_km, counted)
        self._tell(test)
        self.changed.emit(test)

    def _tell(self, test: RoadTest) -> None:
        self._show_counted(test.counted)
        self.words.setText(said(test.words))
