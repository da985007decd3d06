"""Trace: voltage over time, one lane for each role or all on one neutral axis."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QPointF, Signal
from PySide6.QtGui import QColor
from PySide6.QtWidgets import QGraphicsItem, QWidget

from analysis.captures.model import Channel, Record, Role
from analysis.errors import CaptureError
from analysis.intervals import Interval
from analysis.review.readings import snapped, snapped_moment
from app.drawing.axes import LEFT_AXIS_PX, QuietAxis
from app.drawing.band_item import BandItem, Stretch
from app.drawing.canvas import Canvas, UprightLine
from app.drawing.envelope_item import EnvelopeItem
from app.drawing.envelopes import extent_v
from app.drawing.gestures import GestureBox
from app.drawing.lane_name import LaneName
from app.drawing.mark_layer import MarkLayer
from app.drawing.theme import LIGHT, Palette
from app.drawing.touching import TouchPinch
from app.review.readings import in_role_order
from app.trouble import sentence
from app.views.pane import Pane
from app.words import channel_name

_NAME_PX = 15.0
_ROOM_FOR_NAMES_PX = 62.0
"""Height of a lane, its share of the axis of time included, below which its name has no row of its own."""
_BESIDE_PX = 10.0
_MOST_IN_ROW = 4
"""Names in a row say by their order and colour which lane they are of; of more lanes nobody counts them."""
_TREMOR_PX = 4
"""A hand that rests on the mouse, or that just pressed its button, moves it so far without meaning to."""
_TRACKS = (Role.SIGNAL, Role.SECOND_SIGNAL)


@dataclass(slots=True, eq=False)
class _Lane:
    """One plot and what stands in it."""

    whole: QGraphicsItem
    box: GestureBox
    axes: tuple[QuietAxis, QuietAxis]
    bands: BandItem
    drag: BandItem
    moment: UprightLine
    curves: list[tuple[EnvelopeItem, Channel]]
    names: list[tuple[LaneName, Channel]]


class TraceView(Pane):
    """The record's voltages in the shown window.

    Signals
    -------
    zoomed(factor, at_s), panned(share), window_wanted(Interval)
        What the hand meant.
    pointed(moment_s or None)
        Where the pointer is.
    pressed(at_s, twice)
        Clicked at a moment where no mark is.
    asked(at_s, QPoint)
        Clicked with the right button at a moment, and where on the screen.
    problem(sentence)
        The file turned out damaged while it was drawn.
    """

    zoomed = Signal(float, float)
    panned = Signal(float)
    window_wanted = Signal(object)
    pointed = Signal(object)
    pressed = Signal(float, bool)
    asked = Signal(float, object)
    problem = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__("", parent)
        self._title.setText(self.tr("Trace"))
        self.setAccessibleName(self.tr("Trace: voltage over time"))
        self._palette = LIGHT
        self._record: Record | None = None
        self._as_lanes = True
        self._lanes: list[_Lane] = []
        self._stretches: tuple[Stretch, ...] = ()
        self._window = Interval(0.0, 1.0)
        self._pointer: QPointF | None = None
        self._rests_at: QPointF | None = None
        self.marks = MarkLayer(self)
        self._read_v: dict[tuple[str, int], float] = {}
        self._plots = Canvas(self.tr("Voltages over time"))
        self._plots.hovered.connect(self._hover)
        self._plots.pinched.connect(self._pinch)
        TouchPinch(self._plots)
        self._plots.resized.connect(self._place_names)  # on a low screen the room is left to the curves
        self.set_content(self._plots)
        self.show_empty(self.tr("Open a capture, or drop one here, to see its voltages."))

    @property
    def record(self) -> Record | None:
        """The record that is shown."""
        return self._record

    @property
    def lanes(self) -> list[_Lane]:
        """The plots, from the top."""
        return self._lanes

    @property
    def stretches(self) -> tuple[Stretch, ...]:
        """What is shaded."""
        return self._stretches

    @property
    def plots(self) -> QWidget:
        """The drawing alone, without title and tools."""
        return self._plots

    @property
    def canvas(self) -> QWidget:
        """The widget that gets the mouse."""
        return self._plots.sheet

    def viewport_point(self, time_s: float) -> QPointF:
        """Where a moment lies in the first lane of the canvas."""
        box = self._lanes[0].box
        return self._plots.sheet_point(box, time_s, box.shown()[1].centre)

    def show_record(self, record: Record | None) -> None:
        """Show another record, or none."""
        self._record = record
        self._rebuild()

    def show_as_lanes(self, as_lanes: bool) -> None:
        """One lane for each channel, or all on one axis."""
        if as_lanes != self._as_lanes:
            self._as_lanes = as_lanes
            self._rebuild()

    def show_window(self, window: Interval) -> None:
        """Show this stretch of time."""
        self._window = window
        for lane in self._lanes:
            lane.box.show_x(window)
        self._plots.prepare()

    def show_stretches(self, stretches: tuple[Stretch, ...]) -> None:
        """Shade these stretches of time."""
        self._stretches = stretches
        for lane in self._lanes:
            lane.bands.show_stretches(stretches)

    def show_moment(self, moment_s: float | None) -> None:
        """Draw a line at a moment, or none."""
        for lane in self._lanes:
            lane.moment.show_at(moment_s)

    def apply_palette(self, palette: Palette) -> None:
        """Take on the colours of a palette."""
        self._palette = palette
        self._plots.paint_ground(palette.paper)
        for lane in self._lanes:
            self._colour(lane)

    def _place_names(self) -> None:
        """Names above the lanes; where those would be lines, in a row above all; in the lanes as the last."""
        if not self._lanes:
            return
        low = self._plots.height() < _ROOM_FOR_NAMES_PX * len(self._lanes)
        names = [name for lane in self._lanes for name, _ in lane.names]
        row_px = sum(name.boundingRect().width() + _BESIDE_PX for name in names)
        in_row = low and row_px < self._plots.width() - LEFT_AXIS_PX and len(self._lanes) <= _MOST_IN_ROW
        left_px = LEFT_AXIS_PX + 2.0
        for place, lane in enumerate(self._lanes):
            headed = not low or (in_row and place == 0)
            self._plots.set_head(lane.whole, _NAME_PX if headed else 0.0)
            left_px = left_px if in_row else LEFT_AXIS_PX + 2.0
            for name, _ in lane.names:
                name.stand(self._lanes[0].whole if in_row else lane.whole, left_px)
                name.show_inside(self._palette.shade("paper", 0.8) if low and not in_row else None)
                left_px += name.boundingRect().width() + _BESIDE_PX

    def time_under(self, position: QPointF) -> float | None:
        """Time under a point of the scene, or None beside the plots."""
        for lane in self._lanes:
            if lane.box.covers(position):
                return lane.box.x_at(position)
        return None

    def _rebuild(self) -> None:
        self._plots.clear_plots()
        self._lanes.clear()
        self._read_v.clear()
        self.marks.clear()
        record = self._record
        if record is None or not record.channels:
            self.show_empty(self.tr("Open a capture, or drop one here, to see its voltages."))
            return
        if len(record) == 0:
            self.show_empty(self.tr("This record holds no samples. Choose another record on the left."))
            return
        channels = in_role_order(record.channels)
        groups = [(item,) for item in channels] if self._as_lanes else [channels]
        for row, group in enumerate(groups):
            self._lanes.append(self._lane(row, record, group, last=row == len(groups) - 1))
            tall = any(item.role in _TRACKS for item in group)
            self._plots.stretch_row(row, 5 if tall else 2)
        self._place_names()
        self.marks.snap_point = lambda at_s: snapped_moment(record, at_s)
        self.marks.snap_span = lambda span: snapped(record, span)
        self.show_content()
        self.marks.show_marks(())
        self.show_stretches(self._stretches)
        self.show_window(self._window)
        self.show_moment(None)

    def _lane(self, row: int, record: Record, channels: tuple[Channel, ...], last: bool) -> _Lane:
        box = GestureBox()
        axes = (QuietAxis("left"), QuietAxis("bottom", " s"))
        whole = self._plots.add_plot(row, box, *axes, head_px=_NAME_PX)
        if not last:
            axes[1].without_figures()
        bands, drag, moment = BandItem(), BandItem(), UprightLine()
        for item, height in ((bands, -10), (drag, 20), (moment, 30)):
            item.setZValue(height)
        box.hold(bands, drag, moment)
        lane = _Lane(whole, box, axes, bands, drag, moment, [], [])
        extents = [self._extent_v(item) for item in channels]
        low_v, high_v = min(low for low, _ in extents), max(high for _, high in extents)
        box.show_y(low_v, high_v)
        for channel in channels:
            curve = EnvelopeItem(self._complain)
            box.hold(curve)
            curve.show_channel(record, channel, self._palette.role(channel.role), (low_v, high_v))
            lane.curves.append((curve, channel))
            lane.names.append((LaneName(f"{channel_name(channel)}  V", whole), channel))
        box.zoomed.connect(self._zoom)
        box.panned.connect(self._pan)
        box.pressed.connect(self._press)
        box.asked.connect(self.asked)
        box.spanned.connect(self._span)
        self.marks.add_plot(box, lambda at_s: self._heights(record, channels, at_s), labels=row == 0)
        self._colour(lane)
        return lane

    def _extent_v(self, channel: Channel) -> tuple[float, float]:
        try:
            return extent_v(channel)
        except CaptureError as error:
            self._complain(error)
            return 0.0, 1.0

    def _colour(self, lane: _Lane) -> None:
        palette = self._palette
        for axis in lane.axes:
            axis.recolour(QColor(palette.line), QColor(palette.quiet))
        lane.bands.recolour(QColor(palette.band), QColor(palette.ink), QColor(palette.paper))
        lane.drag.recolour(QColor(palette.choice), QColor(palette.ink), QColor(palette.paper))
        lane.moment.recolour(QColor(palette.ink))
        for curve, channel in lane.curves:
            curve.recolour(palette.role(channel.role))
        for name, channel in lane.names:
            name.recolour(palette.role_ink(channel.role))
        self._place_names()
        self.marks.recolour(palette)

    def _press(self, at_s: float, twice: bool) -> None:
        if not self.marks.press(at_s):
            self.pressed.emit(at_s, twice)

    def _heights(self, record: Record, channels: tuple[Channel, ...], at_s: float) -> tuple[float, ...]:
        """Volts of the samples that a point sits on; those that are missing left out."""
        if not len(record):
            return ()
        index = record.index_at(at_s)
        try:
            values = [self._one_v(item, index) for item in channels]
        except CaptureError as error:
            self._complain(error)
            return ()
        return tuple(value for value in values if value == value)

    def _one_v(self, channel: Channel, index: int) -> float:
        """One sample in volts, read from the file once as long as the record is shown; NaN where missing."""
        key = (channel.name, index)
        if key not in self._read_v:
            volts = channel.volts(index, index + 1)
            self._read_v[key] = float(volts[0]) if len(volts) else float("nan")
        return self._read_v[key]

    def rest_pointer(self) -> None:
        """Take the pointer as resting: the cursor stands elsewhere, and only a hand that moves fetches it."""
        self._rests_at = self._pointer

    def _hover(self, position: QPointF | None) -> None:
        self.marks.hover(position)
        self._pointer = position
        if position is None or self._rests_at is None:
            self._point()
        elif (position - self._rests_at).manhattanLength() > _TREMOR_PX:
            self._rests_at = None
            self._point()

    def _point(self) -> None:
        """Say what lies under the pointer now: it may have moved, or the view under it."""
        self.pointed.emit(self.time_under(self._pointer) if self._pointer is not None else None)

    def _zoom(self, factor: float, at_s: float) -> None:
        self.zoomed.emit(factor, at_s)
        self._point()

    def _pan(self, share: float) -> None:
        self.panned.emit(share)
        self._point()

    def _complain(self, error: CaptureError) -> None:
        self.problem.emit(sentence(error, self.tr("Drawing the record")))

    def _pinch(self, factor: float, position: QPointF) -> None:
        at_s = self.time_under(position)
        if at_s is not None:
            self._zoom(factor, at_s)

    def _span(self, span: Interval, finished: bool) -> None:
        shade = () if finished else (Stretch(span, strong=True, hatched=False),)
        for lane in self._lanes:
            lane.drag.show_stretches(shade)
        if finished and span.length > 0:
            self.window_wanted.emit(span)
            self._point()
