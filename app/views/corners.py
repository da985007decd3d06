"""Left against right: both corners over time, and how far they disagree."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import QPointF, Qt, Signal
from PySide6.QtGui import QColor
from PySide6.QtWidgets import QLabel, QSizePolicy, QVBoxLayout, QWidget

from analysis.captures.model import ArraySource, Channel, Record
from analysis.comparison.corners import Plausibility, Rule
from analysis.control_unit.debounce import ContinuousTimer
from analysis.control_unit.rules import HOLD_S
from analysis.intervals import Interval
from app.drawing.axes import LEFT_AXIS_PX, QuietAxis
from app.drawing.band_item import BandItem, Stretch
from app.drawing.canvas import Canvas, LevelLine, UprightLine
from app.drawing.envelope_item import EnvelopeItem
from app.drawing.gestures import GestureBox
from app.drawing.lane_name import LaneName
from app.drawing.theme import LIGHT, Palette
from app.language import said
from app.views.number_box import NumberBox
from app.views.pane import Pane

_NAME_PX = 15.0
_LEAST_TOP_PERCENT = 2.0


class CornersView(Pane):
    """Travel of two corners over one time, their difference, and what a control unit with a rule makes of it.

    Signals
    -------
    rule_changed(Rule)
        Another limit, time or level was set.
    zoomed(factor, at_s), panned(share), window_wanted(Interval)
        What the hand meant, on the first side's clock.
    """

    rule_changed = Signal(object)
    zoomed = Signal(float, float)
    panned = Signal(float)
    window_wanted = Signal(object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__("", parent)
        self._title.setText(self.tr("Left against right"))
        self.setAccessibleName(self.tr("Left against right: how far two corners disagree over time"))
        self._palette = LIGHT
        self._window = Interval(0.0, 1.0)
        self.limit = _spin(self.tr("Limit of the difference"), " %", 0.1, 100.0, Rule().limit_percent)
        self.hold = _spin(self.tr("Time before the code sets"), " s", 0.0, 60.0, HOLD_S)
        self.level = _spin(self.tr("Difference that counts as level"), " %", -100.0, 100.0, 0.0)
        for name, spin in (
            (self.tr("limit"), self.limit),
            (self.tr("for"), self.hold),
            (self.tr("level"), self.level),
        ):
            self.add_tool(QLabel(name))
            self.add_tool(spin)
            spin.valueChanged.connect(lambda _value: self.rule_changed.emit(self.rule))
        self._said, self._source = _words(), _words(quiet=True)
        self._build()
        content = QWidget()
        column = QVBoxLayout(content)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(2)
        column.addWidget(self._said)
        column.addWidget(self._plots, 1)
        column.addWidget(self._source)
        self.set_content(content)
        self.show_empty(self.tr("Two corners over one drive or one sweep are set against each other here."))

    @property
    def rule(self) -> Rule:
        """The rule that is set."""
        hold = ContinuousTimer(self.hold.value())
        usual = Rule()
        if self.limit.value() == usual.limit_percent and hold == usual.debounce:
            return Rule(level_percent=self.level.value())
        return Rule(
            self.limit.value(),
            hold,
            level_percent=self.level.value(),
            source=self.tr("set by hand"),
        )

    @property
    def said(self) -> str:
        """The sentence that is shown."""
        return self._said.text()

    def show_plausibility(self, found: Plausibility | None) -> None:
        """Show two corners over time, or why there is nothing to show."""
        if found is None or len(found.time_s) < 2:
            self.show_empty(
                said(found.summary())
                if found is not None
                else self.tr("Two corners over one drive or one sweep are set against each other here.")
            )
            return
        self._said.setText(said(found.summary()))
        self._source.setText(self.tr("Rule: {source}.").format(source=said(found.rule.source)))
        series = (*found.travel_percent, found.difference_percent)
        step_s = float(found.time_s[1] - found.time_s[0])
        record = _record(series, step_s, float(found.time_s[0]))
        _show(self._travel_box, self._lines[:2], record, record.channels[:2], 0.0)
        _show(self._gap_box, self._lines[2:], record, record.channels[2:], 1.3 * found.rule.limit_percent)
        for line, sign in zip(self._limits, (1.0, -1.0), strict=True):
            line.show_at(sign * found.rule.limit_percent)
        self._shade.show_stretches(tuple(Stretch(item, strong=True) for item in found.beyond))
        self._stored.show_at(found.first_stored_s)
        for name, text in zip(self._names, (*found.names, self.tr("Difference")), strict=True):
            name.setText(f"{said(text)}  %")
        self._names[1].setPos(LEFT_AXIS_PX + 12 + self._names[0].boundingRect().width(), 0)
        self.show_content()
        self.show_window(self._window)
        self._colour()

    def show_refusal(self, reason: str) -> None:
        """Say why the two sides are not two corners over one time."""
        self.show_empty(reason)

    def show_window(self, window: Interval) -> None:
        """Show this stretch of the first side's time."""
        self._window = window
        for box in (self._travel_box, self._gap_box):
            box.show_x(window)

    @property
    def canvas(self) -> QWidget:
        """The widget that gets the mouse."""
        return self._plots.sheet

    def viewport_point(self, time_s: float) -> QPointF:
        """Where a moment lies in the upper plot of the canvas."""
        return self._plots.sheet_point(self._travel_box, time_s, self._travel_box.shown()[1].centre)

    def apply_palette(self, palette: Palette) -> None:
        """Take on the colours of a palette."""
        self._palette = palette
        self._plots.paint_ground(palette.paper)
        self._colour()

    def _build(self) -> None:
        self._plots = Canvas(self.tr("Both corners over time, and their difference"))
        self._travel_box, self._gap_box = GestureBox(), GestureBox()
        self._axes = [QuietAxis("left"), QuietAxis("bottom"), QuietAxis("left"), QuietAxis("bottom", " s")]
        self._axes[1].without_figures()
        upper = self._plots.add_plot(0, self._travel_box, self._axes[0], self._axes[1], head_px=_NAME_PX)
        lower = self._plots.add_plot(1, self._gap_box, self._axes[2], self._axes[3], head_px=_NAME_PX)
        self._lines = [EnvelopeItem(lambda _error: None) for _ in range(3)]
        self._limits = (LevelLine(), LevelLine())
        self._shade, self._drag, self._stored = BandItem(), BandItem(), UprightLine()
        self._shade.setZValue(-10)
        self._travel_box.hold(self._lines[0], self._lines[1], self._drag)
        self._gap_box.hold(self._shade, self._lines[2], *self._limits, self._stored)
        left_px = LEFT_AXIS_PX + 2.0
        self._names = [
            LaneName("", upper, left_px),
            LaneName("", upper, left_px),
            LaneName("", lower, left_px),
        ]
        for box in (self._travel_box, self._gap_box):
            box.zoomed.connect(self.zoomed)
            box.panned.connect(self.panned)
            box.spanned.connect(self._span)

    def _span(self, span: Interval, finished: bool) -> None:
        self._drag.show_stretches(() if finished else (Stretch(span, strong=True, hatched=False),))
        if finished and span.length > 0:
            self.window_wanted.emit(span)

    def _colour(self) -> None:
        palette = self._palette
        for axis in self._axes:
            axis.recolour(QColor(palette.line), QColor(palette.quiet))
        inks = (QColor(palette.ink), QColor(palette.choice), QColor(palette.ink))
        for line, name, ink in zip(self._lines, self._names, inks, strict=True):
            line.recolour(ink)
            name.recolour(ink)
        for limit in self._limits:
            limit.recolour(QColor(palette.quiet))
        self._stored.recolour(QColor(palette.bad))
        self._shade.recolour(QColor(palette.band), QColor(palette.ink), QColor(palette.paper))
        self._drag.recolour(QColor(palette.choice), QColor(palette.ink), QColor(palette.paper))


def _record(series: tuple[NDArray[np.float64], ...], step_s: float, start_s: float) -> Record:
    """The series as channels of a record, so that they are drawn as every trace is."""
    channels = tuple(Channel(str(place), None, ArraySource(item)) for place, item in enumerate(series))
    return Record("", step_s, channels, first_sample_s=start_s)


def _show(
    box: GestureBox, lines: list[EnvelopeItem], record: Record, channels: tuple[Channel, ...], least: float
) -> None:
    """Draw the channels in one plot, on one scale that reaches to `least` at both sides of nothing."""
    values = np.concatenate([item.volts()[np.isfinite(item.volts())] for item in channels])
    low, high = (float(values.min()), float(values.max())) if values.size else (0.0, 1.0)
    low, high = min(low, -least) if least else low, max(high, least)
    spare = max(0.06 * (high - low), _LEAST_TOP_PERCENT / 2)
    box.show_y(low - spare, high + spare)
    for line, channel in zip(lines, channels, strict=True):
        line.show_channel(record, channel, QColor("black"), (low - spare, high + spare))


def _spin(name: str, unit: str, least: float, most: float, value: float) -> NumberBox:
    spin = NumberBox()
    spin.lineEdit().setTextMargins(3, 0, 0, 0)  # the style sheet's padding does not reach it
    spin.setRange(least, most)
    spin.setDecimals(2)
    spin.setSuffix(unit)
    spin.setSingleStep(0.5 if unit == " %" else 0.1)
    spin.setValue(value)
    spin.setKeyboardTracking(False)
    spin.setFixedWidth(80)
    spin.setAccessibleName(name)
    spin.setToolTip(name)
    return spin


def _words(quiet: bool = False) -> QLabel:
    label = QLabel()
    label.setWordWrap(True)
    label.setTextFormat(Qt.TextFormat.PlainText)
    label.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Minimum)
    label.setProperty("quiet", quiet)
    return label
