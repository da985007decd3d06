"""Which road, how fast, how long, at which height."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import QSignalBlocker, Signal
from PySide6.QtWidgets import QWidget

from analysis.exposure.words import REST_TITLES
from analysis.vehicle.heights import RestKind
from analysis.vehicle.road import CLASS_WORDS, MINUTES, ROADS, SPEEDS_KM_H, Road, RoadClass
from app.language import said
from app.why.choices import Choices
from app.why.fields import choice_field, form_of, number_field, quiet_text


class DriveForm(QWidget):
    """Road, speed, time and height.

    Signals
    -------
    changed(Choices)
        Something else was chosen.
    """

    changed = Signal(object)

    def __init__(self, choices: Choices, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._choices = choices
        self.road = choice_field(
            self.tr("Road"), [(said(words), road_class) for road_class, words in CLASS_WORDS.items()]
        )
        self.speed = number_field(
            self.tr("Speed"), 50.0, SPEEDS_KM_H.start, SPEEDS_KM_H.stop, self.tr(" km/h"), step=5.0
        )
        self.minutes = number_field(
            self.tr("Length of the drive"), 30.0, MINUTES.start, MINUTES.stop, self.tr(" min"), step=5.0
        )
        self.rest = choice_field(self.tr("Height that is told about"), [])
        form = form_of(self)
        form.addRow(self.tr("&Road"), self.road)
        form.addRow(self.tr("&Speed"), self.speed)
        form.addRow(self.tr("&Drive"), self.minutes)
        form.addRow(self.tr("&Height"), self.rest)
        form.addRow(
            quiet_text(
                self.tr(
                    "The roads are the classes A to H of ISO 8608 in words of our own. The wheel moves as"
                    " that of a middling car."
                )
            )
        )
        self.show_choices(choices)
        self.road.currentIndexChanged.connect(self._take_road)
        self.speed.valueChanged.connect(self._take)
        self.minutes.valueChanged.connect(self._take)
        self.rest.currentIndexChanged.connect(self._take)

    def show_choices(self, choices: Choices) -> None:
        """Show what is chosen; tells nobody."""
        self._choices = choices
        blocked = [QSignalBlocker(item) for item in (self.road, self.speed, self.minutes, self.rest)]
        self.road.setCurrentIndex(self.road.findData(choices.road.road_class))
        self.speed.setValue(choices.road.speed_km_h)
        self.minutes.setValue(choices.minutes)
        kinds = [item.kind for item in choices.heights.every] if choices.heights else [RestKind.NORMAL]
        if [self.rest.itemData(place) for place in range(self.rest.count())] != kinds:
            self.rest.clear()
            for kind in kinds:
                self.rest.addItem(said(REST_TITLES[kind]), kind)
        self.rest.setCurrentIndex(kinds.index(choices.rest) if choices.rest in kinds else 0)
        del blocked

    def _take_road(self) -> None:
        """Another road is first driven as people drive it."""
        road_class = RoadClass(self.road.currentData())  # Qt gives back plain text
        usual = next((road for road in ROADS if road.road_class is road_class), None)
        if usual is not None:
            blocked = QSignalBlocker(self.speed)
            self.speed.setValue(usual.speed_km_h)
            del blocked
        self._take()

    def _take(self) -> None:
        rest = self.rest.currentData()
        self._choices = replace(
            self._choices,
            road=Road(RoadClass(self.road.currentData()), self.speed.value()),
            minutes=self.minutes.value(),
            rest=RestKind(rest) if rest is not None else self._choices.rest,
        )
        self.changed.emit(self._choices)
