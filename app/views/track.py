"""Sensor track: break-up over travel, with the arm on it."""

from __future__ import annotations

import numpy as np
from PySide6.QtCore import QPoint, QPointF, Qt, Signal
from PySide6.QtGui import QColor, QResizeEvent
from PySide6.QtWidgets import QComboBox, QWidget

from analysis.diagnosis.findings import Band, Findings, TrackSurvey
from analysis.intervals import Interval
from analysis.reports.confidence import in_words
from analysis.reports.quantities import breakup_unit, travel
from analysis.review.model import Choice, Decision
from analysis.signals.strokes import Strokes
from analysis.vehicle.heights import VehicleHeights
from app.drawing.axes import QuietAxis
from app.drawing.band_item import BandItem, Stretch
from app.drawing.canvas import Canvas, UprightLine
from app.drawing.gestures import GestureBox
from app.drawing.lane_name import LaneName
from app.drawing.mark_layer import MarkLayer
from app.drawing.theme import LIGHT, Palette
from app.drawing.touching import TouchPinch
from app.drawing.track_items import ArmItem, BreakupItem, CountItem, worst
from app.language import said
from app.review.decision_words import choice_name
from app.views.pane import Pane
from app.words import role_name

_LEAST_SPAN_PERCENT = 1.0
_COUNTS_PX, _SCALE_PX = 34, 17
_ROOM_FOR_COUNTS_PX = 170
_LEAST_TOP_PERCENT = 4.0  # a sound track should look flat: its break-up is a few tenths of a per cent


class TrackView(Pane):
    """Break-up over travel of one track; every crossing, the worst, the bands, and the arm.

    Signals
    -------
    band_chosen(index or None), band_opened(index)
        A band was clicked (or the ground beside it), or double-clicked.
    span_wanted(Interval or None)
        Another stretch of the track is to be shown, in % of travel, or the whole of it.
    arm_dragged(travel_percent), arm_clicked()
        The dot was moved along the track, or clicked to run or rest.
    pointed(travel_percent or None)
        Where the pointer is on the track.
    place_pressed(travel_percent)
        Double-clicked where no band and no mark is.
    asked(travel_percent, band index or None, QPoint)
        Clicked with the right button, and where on the screen.
    track_wanted(index)
        Another track of a sensor with two was chosen, by its index among the surveys.
    """

    band_chosen = Signal(object)
    band_opened = Signal(int)
    span_wanted = Signal(object)
    arm_dragged = Signal(float)
    arm_clicked = Signal()
    pointed = Signal(object)
    place_pressed = Signal(float)
    asked = Signal(float, object, object)
    track_wanted = Signal(int)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__("", parent)
        self._title.setText(self.tr("Sensor track"))
        self.setAccessibleName(self.tr("Sensor track: break-up over travel"))
        self._palette = LIGHT
        self._survey: TrackSurvey | None = None
        self._strokes = Strokes(())
        self._bands: tuple[Band, ...] = ()
        self._decisions: tuple[Decision | None, ...] = ()
        self._chosen_band: int | None = None
        self._pointer: QPointF | None = None
        self._span = Interval(0.0, 100.0)
        self._top_percent = _LEAST_TOP_PERCENT
        self._build()
        self.set_content(self._plots)
        self._choice = QComboBox()
        self._choice.setAccessibleName(self.tr("Track of the sensor"))
        self._choice.setToolTip(self.tr("Which track of the sensor is shown"))
        self._choice.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self._choice.activated.connect(self.track_wanted)
        self._choice.hide()
        self.add_tool(self._choice)
        self.show_empty(self.tr("Where the sensor breaks up along its travel is drawn here."))

    @property
    def survey(self) -> TrackSurvey | None:
        """The survey that is shown."""
        return self._survey

    @property
    def span(self) -> Interval:
        """The stretch of travel that is shown."""
        return self._span

    @property
    def stretches(self) -> tuple[Stretch, ...]:
        """The bands of this track as they are shaded."""
        return tuple(self._stretch(index) for index in self._on_this_track())

    @property
    def top_percent(self) -> float:
        """The break-up at the upper edge of the plot."""
        return self._top_percent

    def show_findings(self, findings: Findings | None, survey: TrackSurvey | None) -> None:
        """Show one track of the findings; say why there is nothing to show where there is none."""
        self._survey, self._chosen_band = survey, None
        self._strokes = Strokes(survey.crossings if survey is not None else ())
        self._bands = findings.bands if findings is not None else ()
        self._decisions = ()
        self._offer_tracks(findings)
        if survey is None:
            self.set_note("")
            self.show_empty(
                self.tr(
                    "No sweep to show. Capture a slow sweep over the whole travel, a few times up and down."
                )
                if findings is not None
                else self.tr("Where the sensor breaks up along its travel is drawn here.")
            )
            return
        unit = said(breakup_unit(survey))
        told = unit if self._choice.isVisibleTo(self) else f"{role_name(survey.role)} · {unit}"
        self.set_note(told, short=self.tr("break-up in %"))
        self._lines.show_survey(survey)
        counts = np.isfinite(survey.breakup_percent).sum(axis=0)
        self._counts.show_counts(survey.edges_percent, counts)
        outline = worst(survey.breakup_percent)
        highest = float(np.nanmax(outline)) if np.isfinite(outline).any() else 0.0
        top = max(1.3 * highest, _LEAST_TOP_PERCENT)
        self._top_percent = top
        self._show_y()
        most = int(counts.max(initial=1))
        self._count_box.show_y(0.0, 1.15 * most)
        self._count_name.setText(self.tr("tested\n≤ {count}×").format(count=most))
        self._arm.setVisible(False)
        self.show_span(Interval(0.0, 100.0))
        self._show_bands()
        self._colour()
        self.show_content()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Leave the track the room that it needs."""
        super().resizeEvent(event)
        self._fit_counts()

    def show_heights(self, heights: VehicleHeights | None) -> None:
        """Write mm of wheel travel under the travel tested too, where heights are known."""
        if heights is None:
            self._axes[3].turned(None)
        else:
            self._axes[3].turned(lambda travel: float(heights.height_mm(travel)), self.tr(" mm"))
        self._counts_px = _COUNTS_PX if heights is None else _COUNTS_PX + _SCALE_PX
        self._fit_counts()

    def _fit_counts(self) -> None:
        """On a low screen the counts below would leave the track no room."""
        shown = self._plots.height() >= _ROOM_FOR_COUNTS_PX
        self._plots.show_plot(self._below, shown)
        self._plots.fix_row(1, self._counts_px if shown else 0)

    def height_scale(self, travel_percent: list[float]) -> list[str]:
        """What the scale of heights says at places of travel; empty where heights are not known."""
        return self._axes[3].tickStrings(travel_percent, 1.0, 1.0) if self._axes[3].is_turned else []

    def show_span(self, span: Interval) -> None:
        """Show this stretch of travel, inside 0 to 100 % or as far as the survey reaches."""
        self._span = self._within(span)
        for box in (self._box, self._count_box):
            box.show_x(self._span)

    def _within(self, span: Interval) -> Interval:
        whole = self._whole()
        length = min(max(span.length, _LEAST_SPAN_PERCENT), whole.length)
        start = min(max(span.centre - length / 2, whole.start), whole.stop - length)
        return Interval(start, start + length)

    def _whole(self) -> Interval:
        if self._survey is None:
            return Interval(0.0, 100.0)
        first, last = float(self._survey.edges_percent[0]), float(self._survey.edges_percent[-1])
        return Interval(min(0.0, first), max(100.0, last))

    def show_whole(self) -> None:
        """Show the whole travel."""
        self.show_span(self._whole())

    def choose_band(self, band: int | None) -> None:
        """Light up a band, or none."""
        self._chosen_band = band
        self._show_bands()

    def show_decisions(self, decisions: tuple[Decision | None, ...]) -> None:
        """Write beside each band what the technician said of it."""
        self._decisions = decisions
        self._show_bands()

    def single_out(self, passage: tuple[str, Interval] | None) -> None:
        """Draw what was passed in that record and time alone, there and back where the arm turned; or all."""
        self._lines.single_out(self._strokes.within(*passage).tolist() if passage is not None else [])

    @property
    def singled_out(self) -> tuple[int, ...]:
        """Rows of the survey that are drawn alone; empty where all are drawn."""
        return self._lines.singled_out

    def show_arm(self, travel_percent: float | None) -> None:
        """Put the dot on the track, or take it off."""
        shown = travel_percent is not None
        self._arm.setVisible(shown)
        self._arm_line.show_at(travel_percent)
        if travel_percent is not None:
            self._arm.setPos(travel_percent, 0.0)

    def arm_position(self) -> float | None:
        """Where the dot is, in % of travel, or None where it is not shown."""
        return float(self._arm.pos().x()) if self._arm.isVisible() else None

    def place_meant(self) -> float | None:
        """Travel under the pointer where it is on the track, or else that of the arm; None without either."""
        return self._box.x_at(self._pointer) if self._pointer is not None else self.arm_position()

    def apply_palette(self, palette: Palette) -> None:
        """Take on the colours of a palette."""
        self._palette = palette
        self._plots.paint_ground(palette.paper)
        self._colour()

    def viewport_point(self, travel_percent: float, breakup_percent: float) -> QPointF:
        """Where a place on the plot lies in the widget that gets the mouse, for tests and for tips."""
        return self._plots.sheet_point(self._box, travel_percent, breakup_percent)

    @property
    def plots(self) -> QWidget:
        """The drawing alone, without title and tools."""
        return self._plots

    @property
    def canvas(self) -> QWidget:
        """The widget that gets the mouse."""
        return self._plots.sheet

    def take_keys(self) -> None:
        """Take the keyboard from a field: the keys are the window's again."""
        self._plots.setFocus()

    def _build(self) -> None:
        self._plots = Canvas(self.tr("Break-up over travel"), spacing=4)
        self._plots.hovered.connect(self._hover)
        self._plots.pinched.connect(self._pinch)
        TouchPinch(self._plots)
        self._box, self._count_box = GestureBox(), GestureBox()
        self._axes = [
            QuietAxis("left", " %"),
            QuietAxis("bottom", " %"),
            QuietAxis("left"),
            QuietAxis("bottom"),
        ]
        self._axes[2].without_figures()
        self._axes[3].without_figures()
        self._plots.add_plot(0, self._box, self._axes[0], self._axes[1])
        self._below = self._plots.add_plot(1, self._count_box, self._axes[2], self._axes[3])
        self._count_name = LaneName("", self._below)
        self._count_name.setPos(0, 1)
        font = self._count_name.font()
        font.setPointSizeF(7.5)
        self._count_name.setFont(font)
        self._counts_px = _COUNTS_PX
        self._plots.fix_row(1, _COUNTS_PX)
        self._lines, self._counts, self._arm = BreakupItem(), CountItem(), ArmItem()
        self._band_item, self._band_labels, self._drag = BandItem(), BandItem(labels=True), BandItem()
        self._band_labels.setZValue(45)
        self._band_item.setZValue(-10)
        self._arm_line = UprightLine()
        self._box.hold(self._band_item, self._band_labels, self._lines, self._drag, self._arm_line, self._arm)
        self.marks = MarkLayer(self)
        self.marks.foot_px = 2 * ArmItem.RADIUS_PX + 6  # labels stand above the dot of the arm
        self.marks.snap_span = _tidy
        self.marks.add_plot(self._box)
        self._box.asked.connect(self._ask)
        self._count_box.hold(self._counts)
        self._box.resized.connect(self._show_y)
        for box in (self._box, self._count_box):
            box.zoomed.connect(self._zoom)
            box.panned.connect(self._pan)
            box.spanned.connect(self._drag_span)
            box.pressed.connect(self._press)
        self._arm.dragged.connect(lambda travel, finished: self.arm_dragged.emit(travel))
        self._arm.clicked.connect(self.arm_clicked)

    def _offer_tracks(self, findings: Findings | None) -> None:
        surveys = findings.surveys if findings is not None else ()
        self._choice.clear()
        self._choice.addItems([role_name(item.role) for item in surveys])
        self._choice.setCurrentIndex(next((i for i, item in enumerate(surveys) if item is self._survey), 0))
        self._choice.setVisible(len(surveys) > 1)

    def _show_y(self) -> None:
        """Leave room below zero, so that the dot stands whole on the track at every height of the plot."""
        share = min((ArmItem.RADIUS_PX + 3) / self._box.size_px()[1], 0.3)
        self._box.show_y(-self._top_percent * share / (1 - share), self._top_percent)

    def _on_this_track(self) -> list[int]:
        survey = self._survey
        return [i for i, band in enumerate(self._bands) if survey is not None and band.track is survey.role]

    def _show_bands(self) -> None:
        for item in (self._band_item, self._band_labels):
            item.show_stretches(self.stretches)

    def _stretch(self, index: int) -> Stretch:
        """A band as it was found, with what was said of it; one that was dismissed loses its hatching."""
        band = self._bands[index]
        decision = self._decisions[index] if index < len(self._decisions) else None
        parts = [said(travel(band.travel)), said(in_words(band.confidence))]
        if decision is not None and decision.adjusted is not None:
            parts.insert(0, self.tr("yours {span}").format(span=said(travel(decision.adjusted))))
            parts[1] = self.tr("found {span}").format(span=parts[1])
        elif decision is not None:
            parts.append(choice_name(decision.choice))
        hatched = decision is None or decision.choice is not Choice.DISMISSED
        chosen = index == self._chosen_band
        return Stretch(band.travel, strong=chosen, label=" · ".join(parts), hatched=hatched)

    def _colour(self) -> None:
        palette = self._palette
        for axis in self._axes:
            axis.recolour(QColor(palette.line), QColor(palette.quiet))
        bold = palette.role(self._survey.role if self._survey is not None else None)
        self._lines.recolour(QColor(palette.quiet), bold, QColor(palette.choice))
        self._count_name.recolour(QColor(palette.quiet))
        self._counts.recolour(QColor(palette.faint))
        self._arm.recolour(QColor(palette.ink), QColor(palette.paper))
        self._arm_line.recolour(QColor(palette.ink))
        for item in (self._band_item, self._band_labels):
            item.recolour(QColor(palette.band), QColor(palette.ink), QColor(palette.paper))
        self._drag.recolour(QColor(palette.choice), QColor(palette.ink), QColor(palette.paper))
        self.marks.recolour(palette)

    def _zoom(self, factor: float, at: float) -> None:
        span = self._span
        self._ask_for(Interval(at - factor * (at - span.start), at + factor * (span.stop - at)))

    def _ask_for(self, span: Interval) -> None:
        span, whole = self._within(span), self._whole()
        self.span_wanted.emit(span if span.length < whole.length else None)

    def _pinch(self, factor: float, position: QPointF) -> None:
        self._zoom(factor, self._box.x_at(position))

    def _pan(self, share: float) -> None:
        by = share * self._span.length
        self._ask_for(Interval(self._span.start + by, self._span.stop + by))

    def _drag_span(self, span: Interval, finished: bool) -> None:
        self._drag.show_stretches(() if finished else (Stretch(span, strong=True, hatched=False),))
        if finished and span.length > 0:
            self._ask_for(span)

    def _press(self, at: float, twice: bool) -> None:
        hits = self._bands_at(at)
        if twice and hits:
            self.band_opened.emit(hits[0])
        elif self.marks.press(at):
            return
        elif twice:
            self.place_pressed.emit(at)
        else:
            self.band_chosen.emit(hits[0] if hits else None)

    def _ask(self, at: float, where: QPoint) -> None:
        hits = self._bands_at(at)
        self.asked.emit(at, hits[0] if hits else None, where)

    def _bands_at(self, at: float) -> list[int]:
        """Bands under a place; a narrow one deserves a target as wide as a finger's tremor."""
        reach = 0.006 * self._span.length
        return [i for i in self._on_this_track() if self._bands[i].travel.widened(reach).contains(at)]

    def _hover(self, position: QPointF | None) -> None:
        self.marks.hover(position)
        self._pointer = position if position is not None and self._box.covers(position) else None
        self.pointed.emit(self._box.x_at(self._pointer) if self._pointer is not None else None)


def _tidy(span: Interval) -> Interval:
    """A stretch of travel with edges in tenths of a per cent: finer than the bins that it is judged by."""
    return Interval(round(span.start, 1), round(span.stop, 1))
