"""Sensor track of both sides over one axis of travel."""

from __future__ import annotations

import numpy as np
from PySide6.QtCore import QPointF, Qt, Signal
from PySide6.QtGui import QColor
from PySide6.QtWidgets import QHBoxLayout, QLabel, QWidget

from analysis.diagnosis.findings import Band, TrackSurvey
from analysis.intervals import Interval
from analysis.reports.confidence import in_words
from analysis.reports.quantities import breakup_unit, travel
from app.drawing.axes import QuietAxis
from app.drawing.band_item import BandItem, Stretch
from app.drawing.canvas import Canvas
from app.drawing.gestures import GestureBox
from app.drawing.outline_item import KeyLine, OutlineItem
from app.drawing.theme import LIGHT, Palette
from app.drawing.touching import TouchPinch
from app.drawing.track_items import worst
from app.language import said
from app.views.pane import Pane

_LEAST_SPAN_PERCENT = 1.0
_LEAST_TOP_PERCENT = 4.0
_BELOW_SHARE = 0.03
"""Room below 0, so that the curve of a sensor that does not break up is not hidden by the axis."""
_HATCHES = (Qt.BrushStyle.BDiagPattern, Qt.BrushStyle.FDiagPattern)


class TrackPairView(Pane):
    """Break-up over travel of two sensors: the first solid, the second dashed, the bands of both.

    Signals
    -------
    place_chosen(travel_percent or None)
        A place was clicked.
    """

    place_chosen = Signal(object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__("", parent)
        self._title.setText(self.tr("Sensor track"))
        self.setAccessibleName(self.tr("Sensor track of both: break-up over travel"))
        self._palette = LIGHT
        self._surveys: tuple[TrackSurvey | None, TrackSurvey | None] = (None, None)
        self._bands: tuple[tuple[Band, ...], tuple[Band, ...]] = ((), ())
        self._spans: tuple[Stretch, ...] = ()
        self._written: tuple[Stretch, ...] = ()
        self._span = Interval(0.0, 100.0)
        self._build()
        self._names = (QLabel(), QLabel())
        for label in self._names:
            label.setTextFormat(Qt.TextFormat.PlainText)
        self._keys = (KeyLine(), KeyLine(dashed=True))
        legend = QWidget()
        row = QHBoxLayout(legend)
        row.setContentsMargins(0, 0, 4, 0)
        for key, name in zip(self._keys, self._names, strict=True):
            row.addWidget(key)
            row.addWidget(name)
        self.add_tool(legend)
        self.set_content(self._plots)
        self.show_empty(self.tr("Where either sensor breaks up along its travel is drawn here."))

    @property
    def surveys(self) -> tuple[TrackSurvey | None, TrackSurvey | None]:
        """What is drawn, on the common axis."""
        return self._surveys

    @property
    def labels(self) -> tuple[Stretch, ...]:
        """What is written on the bands and marked stretches."""
        return self._written

    @property
    def floor_percent(self) -> float:
        """The lowest break-up that the plot reaches to: a little below nothing."""
        return self._box.shown()[1].start

    @property
    def span(self) -> Interval:
        """The stretch of travel that is shown."""
        return self._span

    @property
    def plots(self) -> QWidget:
        """The drawing alone, without title and tools."""
        return self._plots

    @property
    def canvas(self) -> QWidget:
        """The widget that gets the mouse."""
        return self._plots.sheet

    def viewport_point(self, travel_percent: float, breakup_percent: float) -> QPointF:
        """Where a place on the plot lies in the widget that gets the mouse."""
        return self._plots.sheet_point(self._box, travel_percent, breakup_percent)

    def show_names(self, first: str, second: str) -> None:
        """Call the two sides so."""
        for label, name in zip(self._names, (first, second), strict=True):
            label.setText(name)
        self._label_bands()

    def show_surveys(
        self,
        surveys: tuple[TrackSurvey | None, TrackSurvey | None],
        bands: tuple[tuple[Band, ...], tuple[Band, ...]],
        spans: tuple[tuple[Stretch, ...], tuple[Stretch, ...]] = ((), ()),
    ) -> None:
        """Draw two surveys and their bands, all on the common axis of travel.

        Parameters
        ----------
        surveys : pair of TrackSurvey or None
            None where a side has none (yet).
        bands : pair of tuple of Band
            On these tracks.
        spans : pair of tuple of Stretch
            What the technician marked on them.
        """
        self._surveys = surveys
        if surveys == (None, None):
            self.set_note("")
            self.show_empty(self.tr("No sweep to show on either side."))
            return
        self.set_note(said(breakup_unit(*surveys)), short=self.tr("break-up in %"))
        for line, survey in zip(self._lines, surveys, strict=True):
            line.show_survey(survey)
        for place, own in enumerate(bands):
            stretches = tuple(Stretch(item.travel, strong=item.confidence >= 0.5) for item in own)
            self._shades[place].show_stretches((*stretches, *spans[place]))
        self._bands, self._spans = bands, (*spans[0], *spans[1])
        self._label_bands()
        top = max(1.3 * max(map(_highest, surveys)), _LEAST_TOP_PERCENT)
        self._box.show_y(-_BELOW_SHARE * top, top)
        self.show_span(self._span)
        self.show_content()

    def show_span(self, span: Interval) -> None:
        """Show this stretch of travel, inside 0 to 100 % or as far as either survey reaches."""
        low, high = 0.0, 100.0
        for survey in self._surveys:
            if survey is not None:
                low = min(low, float(survey.edges_percent[0]))
                high = max(high, float(survey.edges_percent[-1]))
        length = min(max(span.length, _LEAST_SPAN_PERCENT), high - low)
        start = min(max(span.centre - length / 2, low), high - length)
        self._span = Interval(start, start + length)
        self._box.show_x(self._span)

    def show_whole(self) -> None:
        """Show the whole travel."""
        self.show_span(Interval(-1e6, 1e6))

    def apply_palette(self, palette: Palette) -> None:
        """Take on the colours of a palette."""
        self._palette = palette
        self._plots.paint_ground(palette.paper)
        for axis in self._axes:
            axis.recolour(QColor(palette.line), QColor(palette.quiet))
        for line, key, name in zip(self._lines, self._keys, ("ink", "choice"), strict=True):
            line.recolour(QColor(getattr(palette, name)))
            key.recolour(QColor(getattr(palette, name)))
        for item in (*self._shades, self._labels):
            item.recolour(QColor(palette.band), QColor(palette.ink), QColor(palette.paper))
        self._drag.recolour(QColor(palette.choice), QColor(palette.ink), QColor(palette.paper))

    def _build(self) -> None:
        self._plots = Canvas(self.tr("Break-up over travel of both sides"))
        self._box = GestureBox()
        self._plots.pinched.connect(lambda factor, at: self._zoom(factor, self._box.x_at(at)))
        TouchPinch(self._plots)
        self._axes = (QuietAxis("left", " %"), QuietAxis("bottom", " %"))
        self._plots.add_plot(0, self._box, *self._axes)
        self._lines = (OutlineItem(), OutlineItem(dashed=True))
        self._shades = tuple(BandItem(hatch=hatch) for hatch in _HATCHES)
        self._labels, self._drag = BandItem(labels=True), BandItem()
        for shade in self._shades:
            shade.setZValue(-10)
        self._labels.setZValue(45)
        self._box.hold(*self._shades, *self._lines, self._drag, self._labels)
        self._box.zoomed.connect(self._zoom)
        self._box.panned.connect(self._pan)
        self._box.spanned.connect(self._drag_span)
        self._box.pressed.connect(self._press)

    def _label_bands(self) -> None:
        """Say whose each band is, by the names that the sides have now."""
        self._written = (*self._labelled(self._bands), *self._spans)
        self._labels.show_stretches(self._written)

    def _labelled(self, bands: tuple[tuple[Band, ...], tuple[Band, ...]]) -> list[Stretch]:
        return [
            Stretch(
                item.travel,
                label=self.tr("{name}: {travel} · {words}").format(
                    name=label.text(), travel=said(travel(item.travel)), words=said(in_words(item.confidence))
                ),
            )
            for label, own in zip(self._names, bands, strict=True)
            for item in own
        ]

    def _zoom(self, factor: float, at: float) -> None:
        span = self._span
        self.show_span(Interval(at - factor * (at - span.start), at + factor * (span.stop - at)))

    def _pan(self, share: float) -> None:
        step = share * self._span.length
        self.show_span(Interval(self._span.start + step, self._span.stop + step))

    def _drag_span(self, span: Interval, finished: bool) -> None:
        self._drag.show_stretches(() if finished else (Stretch(span, strong=True, hatched=False),))
        if finished and span.length > 0:
            self.show_span(span)

    def _press(self, at: float, twice: bool) -> None:
        if not twice:
            self.place_chosen.emit(at)


def _highest(survey: TrackSurvey | None) -> float:
    if survey is None:
        return 0.0
    outline = worst(survey.breakup_percent)
    return float(np.nanmax(outline)) if np.isfinite(outline).any() else 0.0
