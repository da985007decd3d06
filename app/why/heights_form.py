"""How travel becomes millimetres, which way is up, and where the vehicle rests."""

from __future__ import annotations

from PySide6.QtCore import QSignalBlocker, Signal
from PySide6.QtWidgets import QCheckBox, QHBoxLayout, QWidget

from analysis.errors import VehicleError
from analysis.exposure.words import REST_TITLES
from analysis.vehicle.geometry import Arm, Geometry, TwoPoints, Up
from analysis.vehicle.heights import Rest, RestKind, VehicleHeights
from analysis.vehicle.words import ENTERED
from app.language import said
from app.trouble import sentence
from app.why.choices import Choices
from app.why.fields import choice_field, form_of, number_field, quiet_text

_MM = 500.0
_RESTS = tuple(kind for kind in RestKind if kind is not RestKind.NORMAL)
_TYPICAL = {  # to start from, off until somebody asks for one (common practice, no source)
    RestKind.PARKED: -10.0,
    RestKind.ACCESS: -40.0,
    RestKind.LOADED: -20.0,
    RestKind.OFF_ROAD: 30.0,
    RestKind.CORNER: -20.0,
}


class HeightsForm(QWidget):
    """Two points or an arm, the normal height, and the other heights.

    Signals
    -------
    changed(VehicleHeights)
        Other heights, that make sense.
    refused(sentence)
        What was entered makes none; what was there before stays.
    """

    changed = Signal(object)
    refused = Signal(str)

    def __init__(self, choices: Choices, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        percent, mm = self.tr(" %"), self.tr(" mm")
        self.way = choice_field(
            self.tr("How travel becomes millimetres"), [(self.tr("two points"), 0), (self.tr("arm"), 1)]
        )
        self.up = choice_field(
            self.tr("Which way travel goes as the body rises"),
            [(self.tr("travel rises"), Up.RISING), (self.tr("travel falls"), Up.FALLING)],
        )
        self.first = number_field(self.tr("First point, travel"), 20.0, 0.0, 100.0, percent, digits=1)
        self.first_mm = number_field(self.tr("First point, height"), -60.0, -_MM, _MM, mm)
        self.second = number_field(self.tr("Second point, travel"), 80.0, 0.0, 100.0, percent, digits=1)
        self.second_mm = number_field(self.tr("Second point, height"), 60.0, -_MM, _MM, mm)
        self.arm = number_field(self.tr("Length of the arm"), 120.0, 1.0, 1000.0, mm)
        self.angle = number_field(self.tr("Angle of the whole travel"), 90.0, 1.0, 360.0, self.tr("°"))
        self.level = number_field(self.tr("Travel with the arm level"), 50.0, 0.0, 100.0, percent, digits=1)
        self.ratio = number_field(
            self.tr("Wheel for 1 mm of the arm"), 1.0, 0.1, 10.0, mm, digits=2, step=0.05
        )
        self.normal = number_field(
            self.tr("Travel at the normal height"), 50.0, 0.0, 100.0, percent, digits=1
        )
        self.rests = {
            kind: (
                QCheckBox(said(REST_TITLES[kind])),
                number_field(said(REST_TITLES[kind]), _TYPICAL[kind], -_MM, _MM, mm),
            )
            for kind in _RESTS
        }
        self._numbers = (
            *(self.first, self.first_mm, self.second, self.second_mm),
            *(self.arm, self.angle, self.level, self.ratio, self.normal),
            *(box for _, box in self.rests.values()),
        )
        self._lay_out()
        self.show_choices(choices)
        self.way.currentIndexChanged.connect(self._take)
        self.up.currentIndexChanged.connect(self._take)
        for box in self._numbers:
            box.valueChanged.connect(self._take)
        for check, _ in self.rests.values():
            check.toggled.connect(self._take)

    def _lay_out(self) -> None:
        self._form = form_of(self)
        self._form.addRow(self.tr("Millimetres by"), self.way)
        self._form.addRow(self.tr("Body rises:"), self.up)
        self._points = (_pair(self.first, self.first_mm), _pair(self.second, self.second_mm))
        self._form.addRow(self.tr("First point"), self._points[0])
        self._form.addRow(self.tr("Second point"), self._points[1])
        self._form.addRow(self.tr("Arm"), self.arm)
        self._form.addRow(self.tr("Whole angle"), self.angle)
        self._form.addRow(self.tr("Level at"), self.level)
        self._form.addRow(self.tr("Wheel for 1 mm"), self.ratio)
        self._form.addRow(self.tr("Normal at"), self.normal)
        for check, box in self.rests.values():
            self._form.addRow(check, box)
        self._form.addRow(
            quiet_text(
                self.tr(
                    "Heights are counted from the normal one, up positive. Compress the suspension"
                    " only by the maker's method, on stands rated for the vehicle."
                )
            )
        )

    def show_choices(self, choices: Choices) -> None:
        """Show what is chosen; tells nobody. Where nothing is, the fields stand as they are."""
        heights = choices.heights
        checks = [check for check, _ in self.rests.values()]
        blocked = [QSignalBlocker(item) for item in (*self._numbers, self.way, self.up, *checks)]
        if heights is not None:
            self._show_geometry(heights.geometry)
            self.normal.setValue(heights.normal_percent)
            known = {item.kind: item.height_mm for item in heights.rests}
            for kind, (check, box) in self.rests.items():
                check.setChecked(kind in known)
                box.setValue(known.get(kind, box.value()))
        del blocked
        self._show_enabled()

    def _show_geometry(self, geometry: Geometry) -> None:
        if isinstance(geometry, TwoPoints):
            self.way.setCurrentIndex(0)
            for box, value in zip(
                (self.first, self.first_mm, self.second, self.second_mm),
                (*geometry.first, *geometry.second),
                strict=True,
            ):
                box.setValue(value)
            self.up.setCurrentIndex(self.up.findData(geometry.up))
        elif isinstance(geometry, Arm):
            self.way.setCurrentIndex(1)
            self.arm.setValue(geometry.length_mm)
            self.angle.setValue(geometry.angle_deg)
            self.level.setValue(geometry.level_percent)
            self.ratio.setValue(geometry.wheel_ratio)
            self.up.setCurrentIndex(self.up.findData(geometry.up))

    def _show_enabled(self) -> None:
        by_arm = self.way.currentData() == 1
        for pair in self._points:
            self._form.setRowVisible(pair, not by_arm)
        for box in (self.arm, self.angle, self.level, self.ratio):
            self._form.setRowVisible(box, by_arm)
        for check, box in self.rests.values():
            box.setEnabled(check.isChecked())

    def _take(self) -> None:
        self._show_enabled()
        try:
            heights = VehicleHeights(
                self._geometry(),
                self.normal.value(),
                tuple(
                    Rest(kind, box.value()) for kind, (check, box) in self.rests.items() if check.isChecked()
                ),
                ENTERED,
            )
        except VehicleError as error:
            self.refused.emit(sentence(error, self.tr("Heights")))
            return
        self.changed.emit(heights)

    def _geometry(self) -> Geometry:
        up = Up(self.up.currentData())
        if self.way.currentData() == 1:
            ratio = self.ratio.value()
            return Arm(self.arm.value(), self.angle.value(), self.level.value(), up, ratio)
        return TwoPoints(
            (self.first.value(), self.first_mm.value()), (self.second.value(), self.second_mm.value()), up
        )


def _pair(left: QWidget, right: QWidget) -> QWidget:
    both = QWidget()
    row = QHBoxLayout(both)
    row.setContentsMargins(0, 0, 0, 0)
    row.setSpacing(4)
    row.addWidget(left)
    row.addWidget(right)
    return both
