"""The rules of the control unit."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import QSignalBlocker, Signal
from PySide6.QtWidgets import QCheckBox, QWidget

from analysis.control_unit.debounce import ContinuousTimer, UpDownCounter
from analysis.control_unit.rules import (
    HOLD_SOURCE,
    RATE,
    SIDES,
    ComparisonRule,
    ControlUnit,
    RangeRule,
    RateRule,
)
from analysis.intervals import Interval
from analysis.vehicle.words import ENTERED
from app.language import said
from app.why.choices import Choices, debounce_of
from app.why.fields import choice_field, form_of, number_field, quiet_text

_COUNTER = UpDownCounter()
_RANGE_V = Interval(0.25, 4.75)


class UnitForm(QWidget):
    """How often the control unit reads, and what it calls a fault.

    Signals
    -------
    changed(Choices)
        A rule was changed.
    """

    changed = Signal(object)

    def __init__(self, choices: Choices, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._choices = choices
        self._make_fields()
        self._lay_out()
        self.show_choices(choices)
        for box in self._numbers:
            box.valueChanged.connect(self._take)
        self.patience.currentIndexChanged.connect(self._take)
        for check in (self.range_on, self.sides_on, self.rate_on):
            check.toggled.connect(self._take)

    def _make_fields(self) -> None:
        volts, time_ms = self.tr(" V"), self.tr(" ms")
        self.tick = number_field(self.tr("Reads every"), 50.0, 1.0, 2000.0, time_ms, step=10.0)
        self.range_on = QCheckBox(self.tr("Out of range"))
        self.low = number_field(self.tr("Below"), 0.25, 0.0, 30.0, volts, digits=2, step=0.05)
        self.high = number_field(self.tr("Above"), 4.75, 0.0, 30.0, volts, digits=2, step=0.05)
        self.patience = choice_field(
            self.tr("Time before the code sets"),
            [(self.tr("without a break"), False), (self.tr("up/down counter"), True)],
        )
        self.hold = number_field(self.tr("Without a break for"), 500.0, 0.0, 60_000.0, time_ms, step=50.0)
        self.up = number_field(self.tr("Up for a bad reading"), _COUNTER.up, 1.0, 255.0, "")
        self.down = number_field(self.tr("Down for a good reading"), _COUNTER.down, 0.0, 255.0, "")
        self.limit = number_field(self.tr("Code at"), _COUNTER.limit, 1.0, 32_767.0, "")
        self.sides_on = QCheckBox(self.tr("Sides disagree"))
        self.sides = number_field(self.tr("By more than"), 1.0, 0.01, 30.0, volts, digits=2, step=0.1)
        self.sides_hold = number_field(self.tr("For"), 2000.0, 0.0, 60_000.0, time_ms, step=100.0)
        self.rate_on = QCheckBox(self.tr("Changes too fast"))
        self.rate = number_field(self.tr("Faster than"), 40.0, 0.1, 100_000.0, self.tr(" V/s"), step=5.0)
        self.rate_hold = number_field(self.tr("For"), 200.0, 0.0, 60_000.0, time_ms, step=50.0)
        self._numbers = (
            *(self.tick, self.low, self.high, self.hold, self.up, self.down, self.limit),
            *(self.sides, self.sides_hold, self.rate, self.rate_hold),
        )

    def _lay_out(self) -> None:
        self._form = form_of(self)
        self._form.addRow(self.tr("Reads every"), self.tick)
        self._form.addRow(self.range_on)
        self._form.addRow(self.tr("Below"), self.low)
        self._form.addRow(self.tr("Above"), self.high)
        self._form.addRow(self.tr("Stored"), self.patience)
        self._form.addRow(self.tr("for"), self.hold)
        self._form.addRow(self.tr("Bad: up"), self.up)
        self._form.addRow(self.tr("Good: down"), self.down)
        self._form.addRow(self.tr("Code at"), self.limit)
        self._form.addRow(self.sides_on)
        self._form.addRow(self.tr("By more than"), self.sides)
        self._form.addRow(self.tr("for"), self.sides_hold)
        self._form.addRow(self.rate_on)
        self._form.addRow(self.tr("Faster than"), self.rate)
        self._form.addRow(self.tr("for"), self.rate_hold)
        self._sources = quiet_text()
        self._form.addRow(self._sources)

    def show_choices(self, choices: Choices) -> None:
        """Show what is chosen; tells nobody."""
        self._choices = choices
        unit = choices.unit
        checks = (self.range_on, self.sides_on, self.rate_on)
        blocked = [QSignalBlocker(item) for item in (*self._numbers, self.patience, *checks)]
        self.tick.setValue(1e3 * unit.tick_s)
        for check, rule in zip(checks, (unit.range_rule, unit.comparison_rule, unit.rate_rule), strict=True):
            check.setChecked(rule is not None)
        if unit.range_rule is not None:
            self.low.setValue(unit.range_rule.limits_v.start)
            self.high.setValue(unit.range_rule.limits_v.stop)
            self._show_patience(unit.range_rule)
        if unit.comparison_rule is not None:
            self.sides.setValue(unit.comparison_rule.tolerance_v)
            self.sides_hold.setValue(_held_ms(unit.comparison_rule))
        if unit.rate_rule is not None:
            self.rate.setValue(unit.rate_rule.limit_v_per_s)
            self.rate_hold.setValue(_held_ms(unit.rate_rule))
        del blocked
        self._show_enabled()

    def _show_patience(self, rule: RangeRule) -> None:
        debounce = rule.debounce
        self.patience.setCurrentIndex(int(isinstance(debounce, UpDownCounter)))
        if isinstance(debounce, ContinuousTimer):
            self.hold.setValue(1e3 * debounce.hold_s)
        else:
            for box, count in (
                (self.up, debounce.up),
                (self.down, debounce.down),
                (self.limit, debounce.limit),
            ):
                box.setValue(count)

    def _show_enabled(self) -> None:
        counts = bool(self.patience.currentData())
        self._form.setRowVisible(self.hold, not counts)
        for box in (self.up, self.down, self.limit):
            self._form.setRowVisible(box, counts)
        fields: tuple[tuple[QCheckBox, tuple[QWidget, ...]], ...] = (
            (self.range_on, (self.low, self.high, self.patience, self.hold, self.up, self.down, self.limit)),
            (self.sides_on, (self.sides, self.sides_hold)),
            (self.rate_on, (self.rate, self.rate_hold)),
        )
        for check, own in fields:
            for field in own:
                field.setEnabled(check.isChecked())
        rules = [rule.source for _, rule in self._choices.unit.rules]
        told = [said(item) for item in (self._choices.unit.tick_source, *rules) if item]
        self._sources.setText(self.tr("Whose figures: {sources}").format(sources="; ".join(told)))

    def _take(self) -> None:
        unit = self._choices.unit
        made = ControlUnit(
            self.tick.value() / 1e3,
            self._range(unit.range_rule) if self.range_on.isChecked() else None,
            self._rate(unit.rate_rule) if self.rate_on.isChecked() else None,
            self._sides(unit.comparison_rule) if self.sides_on.isChecked() else None,
            unit.tick_source if abs(self.tick.value() - 1e3 * unit.tick_s) < 0.5 else ENTERED,
        )
        self._choices = replace(self._choices, unit=made)
        self._show_enabled()
        self.changed.emit(self._choices)

    def _range(self, before: RangeRule | None) -> RangeRule:
        low, high = self.low.value(), max(self.high.value(), self.low.value())
        debounce = debounce_of(
            bool(self.patience.currentData()),
            self.hold.value() / 1e3,
            round(self.up.value()),
            round(self.down.value()),
            round(self.limit.value()),
        )
        made = RangeRule(Interval(low, high), debounce, ENTERED)
        if before is not None and (before.limits_v, before.debounce) == (made.limits_v, made.debounce):
            return before
        return replace(made, source=HOLD_SOURCE) if before is None and made.limits_v == _RANGE_V else made

    def _sides(self, before: ComparisonRule | None) -> ComparisonRule:
        base = before or SIDES
        debounce = ContinuousTimer(self.sides_hold.value() / 1e3)
        made = replace(base, tolerance_v=self.sides.value(), debounce=debounce)
        return base if made == base else replace(made, source=ENTERED)

    def _rate(self, before: RateRule | None) -> RateRule:
        base = before or RATE
        debounce = ContinuousTimer(self.rate_hold.value() / 1e3)
        made = replace(base, limit_v_per_s=self.rate.value(), debounce=debounce)
        return base if made == base else replace(made, source=ENTERED)


def _held_ms(rule: ComparisonRule | RateRule) -> float:
    return 1e3 * rule.debounce.hold_s if isinstance(rule.debounce, ContinuousTimer) else 0.0
