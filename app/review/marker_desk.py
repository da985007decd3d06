"""Markers of the open capture: placed, moved, chosen and shown; every edit goes to the keeper."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal

from analysis.captures.model import Record, Role
from analysis.intervals import Interval
from analysis.review.model import (
    Marker,
    Place,
    PointMarker,
    Review,
    SpanMarker,
    TravelSpan,
    place_of,
    relabelled,
    with_marker,
    with_note,
    without,
)
from analysis.review.readings import TravelReadings
from analysis.vehicle.heights import VehicleHeights
from analysis.wording import Wording, say
from app.drawing.mark_item import Mark
from app.review.decision_desk import DecisionDesk
from app.review.drawn_marks import Begun, mark_of
from app.review.first_mark import FirstMark
from app.review.keeper import ReviewKeeper
from app.review.marker_edits import (
    FIRST_TRAVEL_PERCENT,
    between,
    point_at,
    span_over,
    stretch_over,
    touched,
    twin_of,
    with_edge,
    with_place,
)
from app.review.marker_reader import MarkerReader
from app.review.marker_rows import marker_grid, marker_row
from app.review.marker_sight import show_place, show_travel
from app.review.marker_words import NOTHING
from app.review.wheel_places import WheelPlaces
from app.words import record_names

if TYPE_CHECKING:
    from app.main_window import Window

_SAY_MS = 8000


class MarkerDesk(QObject):
    """Turns what the technician means about markers into edits of the review, and shows the markers.

    Parameters
    ----------
    window : Window
    keeper : ReviewKeeper
    decisions : DecisionDesk
        Whose edges stand on the sensor track beside the markers.

    Signals
    -------
    shown()
        Markers, or which of them is chosen, are shown anew.
    """

    shown = Signal()

    def __init__(self, window: Window, keeper: ReviewKeeper, decisions: DecisionDesk) -> None:
        super().__init__(window)
        self._window, self._keeper, self._decisions = window, keeper, decisions
        self.reader = MarkerReader(window.jobs, self)
        self._first = FirstMark(window, keeper, self)
        self._chosen: str | None = None
        self._begun: Begun | None = None
        self._heights: VehicleHeights | None = None
        self._follow_views()

    @property
    def chosen(self) -> Marker | None:
        """The chosen marker."""
        return self._keeper.review.marker(self._chosen) if self._chosen is not None else None

    @property
    def begun(self) -> bool:
        """Whether a span has begun that has no end yet."""
        return self._begun is not None

    @property
    def begun_on_track(self) -> bool:
        """Whether a stretch of the shown track has begun that has no end yet."""
        return self._begun is not None and self._begun.of is self._track()

    @property
    def places(self) -> WheelPlaces:
        """Where markers are in millimetres of wheel travel, as far as heights are known."""
        session = self._window.session
        return WheelPlaces(session.capture, session.findings, self._heights)

    def show_heights(self, heights: VehicleHeights | None) -> None:
        """Say places in millimetres of wheel travel too, where heights are known."""
        if heights != self._heights:
            self._heights = heights
            self.show()

    # -- placing -----------------------------------------------------------------------------

    def mark(self) -> None:
        """Place a point where the pointer or the arm is."""
        self.mark_moment(self._moment())

    def mark_moment(self, time_s: float) -> None:
        """Place a point on the sample nearest to a moment of the shown record."""
        record = self._window.focus.record
        if record is not None and len(record):
            self._place(point_at(self._review, record, time_s), say("place a marker"))

    def mark_span(self) -> None:
        """Begin a span of time where the pointer or the arm is, or end it there."""
        record = self._window.focus.record
        if record is None or not len(record):
            return
        begun, here = self._begun, self._moment()
        if begun is not None and begun.of == record.name:
            self._begin(None)
            self.mark_time(between(begun.at, here))
        else:
            self._begin(Begun(record.name, here))
            self.show()

    def mark_time(self, time: Interval) -> None:
        """Place a span over a stretch of time of the shown record."""
        record = self._window.focus.record
        if record is not None and len(record):
            self._place(span_over(self._review, record, time), say("place a span"))

    def mark_travel(self) -> None:
        """Begin a stretch of travel where the pointer is on the track, or else the arm; or end it there."""
        at = self._window.page.track.place_meant()
        if at is not None:
            self.mark_travel_at(at)

    def mark_travel_at(self, travel_percent: float) -> None:
        """Begin a stretch of travel at a place, or end it there."""
        track, begun = self._track(), self._begun
        if track is None:
            return
        if begun is not None and begun.of is track:
            self._begin(None)
            self.mark_stretch(between(begun.at, travel_percent))
        else:
            self._begin(Begun(track, travel_percent))
            self.show()

    def mark_stretch(self, travel: Interval) -> None:
        """Place a stretch over travel of the shown track."""
        track = self._track()
        if track is not None:
            self._place(stretch_over(self._review, track, travel), say("place a stretch of travel"))

    def mark_place(self, travel_percent: float) -> None:
        """Place a narrow stretch of travel round a place, to be dragged to its size."""
        self.mark_stretch(Interval(travel_percent, travel_percent).widened(0.5 * FIRST_TRAVEL_PERCENT))

    # -- changing ----------------------------------------------------------------------------

    def move(self, marker_id: str, place: Place) -> None:
        """Put a marker, or the edges of a band, where the hand left them."""
        band = self._decisions.of_mark(marker_id)
        if band is not None and isinstance(place, Interval):
            self._decisions.adjust(band, place)
        elif (marker := self._review.marker(marker_id)) is not None:
            moved = with_place(self._review, marker_id, place, self._record_of(marker))
            self._keeper.change(say("move a marker"), moved)
            self.choose(marker_id)

    def move_here(self) -> None:
        """Put the chosen point where the pointer or the arm is."""
        marker, record = self.chosen, self._window.focus.record
        if isinstance(marker, PointMarker) and record is not None and record.name == marker.record:
            self.move(marker.marker_id, self._moment())

    def set_edge(self, edge: str) -> None:
        """Let the chosen span, or else the chosen band, begin (``"start"``) or end where the arm is."""
        marker = self.chosen
        arm, record = self._window.page.track.arm_position(), self._window.focus.record
        if isinstance(marker, SpanMarker):
            here = self._moment() if record is not None and record.name == marker.record else None
        else:
            here = arm
        if here is None:
            return
        if marker is None and self._decisions.band is not None:
            self._decisions.set_edge(self._decisions.band, edge, here)
        elif marker is not None and (place := with_edge(marker, edge, here)) is not None:
            self.move(marker.marker_id, place)

    def rename(self, marker_id: str, label: str) -> None:
        """Give a marker another name."""
        if self._review.marker(marker_id) is not None:
            self._keeper.change(say("rename a marker"), relabelled(self._review, marker_id, label))

    def note(self, marker_id: str, note: str) -> None:
        """Write a note on a marker."""
        if self._review.marker(marker_id) is not None:
            self._keeper.change(say("write a note"), with_note(self._review, marker_id, note))

    def delete(self) -> None:
        """Delete the chosen marker, and choose the one after it."""
        marker = self.chosen
        if marker is not None:
            place = self._review.markers.index(marker)
            self._keeper.change(say("delete a marker"), without(self._review, marker.marker_id))
            left = self._review.markers
            self.choose(left[min(place, len(left) - 1)].marker_id if left else None)

    # -- choosing ----------------------------------------------------------------------------

    def choose(self, marker_id: str | None) -> None:
        """Choose a marker, or none."""
        self._first.end()
        band = self._decisions.of_mark(marker_id) if marker_id is not None else None
        if band is not None:
            self._window.focus.choose_band(band)
        else:
            self._chosen = marker_id
            self.show()

    def choose_touched(self, before: Review) -> None:
        """Choose the one marker that came back, or changed, since the review was that one."""
        found = touched(before, self._review)
        if len(found) == 1:
            self.choose(found[0].marker_id)

    def drop(self) -> None:
        """Choose nothing, and forget a span that has no end yet."""
        self._begin(None)
        self.choose(None)

    def step(self, by: int) -> None:
        """Choose the next (1) or previous (-1) marker, and show it."""
        ids = [item.marker_id for item in self._review.markers]
        if ids:
            place = ids.index(self._chosen) + by if self._chosen in ids else (0 if by > 0 else -1)
            self.jump(ids[place % len(ids)])

    def jump(self, marker_id: str, zoom: bool = False) -> None:
        """Choose a marker and bring it into view; zoom to it where that is asked for."""
        marker = self._review.marker(marker_id)
        self._chosen = None  # the crossing that goes along would take its place
        if isinstance(marker, TravelSpan):
            self._window.circle.show_track_of(marker.track)
            show_travel(self._window.focus, self._window.page.track, marker.travel, zoom)
        elif marker is not None and (record := self._record_of(marker)) is not None:
            show_place(self._window.focus, place_of(marker), record, zoom)
        self.choose(marker_id)

    def zoom(self) -> None:
        """Zoom to the chosen marker."""
        if self._chosen is not None:
            self.jump(self._chosen, zoom=True)

    # -- showing -----------------------------------------------------------------------------

    def show(self) -> None:
        """Show every marker in the table, in Trace and on the sensor track."""
        markers, capture = self._review.markers, self._window.session.capture
        if self.chosen is None:
            self._chosen = None
        names, places = record_names(capture) if capture is not None else {}, self.places
        rows = tuple(marker_row(item, self.reader.reading(item), names, places) for item in markers)
        chosen = self.chosen
        readings = marker_grid(chosen, self.reader.reading(chosen), places) if chosen is not None else NOTHING
        self._window.page.markers.show_markers(rows, self._chosen, readings)
        self._window.page.fit_markers()
        self.show_marks()
        self.reader.ask(markers)
        self.shown.emit()

    def show_marks(self) -> None:
        """Draw the markers of the shown record and of the shown track."""
        page, record, track = self._window.page, self._window.focus.record, self._track()
        in_time = [mark_of(item, self._chosen) for item in self._review.markers if _is_of(item, record)]
        on_travel = [mark_of(item, self._chosen) for item in self._review.markers if _is_on(item, track)]
        in_time += self._crossings(record)
        if self._begun is not None and record is not None and self._begun.of == record.name:
            in_time.append(self._begun.mark(self._moment()))
        here = page.track.place_meant()
        if self._begun is not None and self._begun.of is track and here is not None:
            on_travel.append(self._begun.mark(here))
        page.trace.marks.show_marks(tuple(in_time))
        page.track.marks.show_marks((*on_travel, *self._decisions.marks()))

    def _crossings(self, record: Record | None) -> list[Mark]:
        """When the chosen stretch of travel was crossed in the shown record."""
        chosen = self.chosen
        readings = self.reader.reading(chosen) if isinstance(chosen, TravelSpan) else None
        if record is None or not isinstance(readings, TravelReadings):
            return []
        own = [item.time for item in readings.band.crossings if item.record == record.name]
        return [Mark("", time.start, time.stop, fixed=True) for time in own]

    def _follow_views(self) -> None:
        page, focus = self._window.page, self._window.focus
        self.reader.read.connect(self.show)
        page.trace.marks.chosen.connect(self.choose)
        page.trace.marks.moved.connect(self.move)
        page.trace.marks.spanned.connect(self.mark_time)
        page.track.marks.chosen.connect(self.choose)
        page.track.marks.moved.connect(self.move)
        page.track.marks.spanned.connect(self.mark_stretch)
        page.track.place_pressed.connect(self.mark_place)
        page.track.pointed.connect(self._follow_moment)
        page.markers.chosen.connect(self.jump)
        page.markers.opened.connect(lambda marker_id: self.jump(marker_id, zoom=True))
        page.markers.renamed.connect(self.rename)
        page.markers.noted.connect(self.note)
        focus.record_changed.connect(self.show_marks)
        focus.target_changed.connect(self._give_way)
        focus.moment_changed.connect(self._follow_moment)

    def _follow_moment(self) -> None:
        if self._begun is not None:
            self.show_marks()

    def _give_way(self) -> None:
        """A band that was chosen takes the place of the chosen marker: keys mean one of them."""
        if self._window.focus.band is not None and self._chosen is not None:
            self._chosen = None
            self.show()
        else:
            self.show_marks()

    def _begin(self, begun: Begun | None) -> None:
        """Remember where something begins, and tell; or forget it."""
        bar = self._window.statusBar()
        if begun is not None:
            bar.showMessage(begun.words(), _SAY_MS)
        elif self._begun is not None:
            bar.clearMessage()
        self._begun = begun

    def _place(self, marker: Marker, text: Wording) -> None:
        twin = twin_of(self._review, marker)
        if twin is not None:
            told = self.tr("A marker stands there already: {name}").format(name=twin.label)
            self._window.statusBar().showMessage(told, _SAY_MS)
            self.choose(twin.marker_id)
            return
        self._keeper.change(text, with_marker(self._review, marker))
        self.choose(marker.marker_id)
        if self.chosen is not None:
            self._first.begin()

    def _record_of(self, marker: Marker) -> Record | None:
        capture = self._window.session.capture
        if capture is None or isinstance(marker, TravelSpan):
            return None
        return next((item for item in capture.records if item.name == marker.record and len(item)), None)

    def _moment(self) -> float:
        focus = self._window.focus
        return focus.moment_s if focus.moment_s is not None else focus.window.centre

    def _track(self) -> Role | None:
        survey = self._window.page.track.survey
        return survey.role if survey is not None else None

    @property
    def _review(self) -> Review:
        return self._keeper.review


def _is_of(marker: Marker, record: Record | None) -> bool:
    return not isinstance(marker, TravelSpan) and record is not None and marker.record == record.name


def _is_on(marker: Marker, track: Role | None) -> bool:
    return isinstance(marker, TravelSpan) and marker.track is track
