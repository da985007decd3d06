"""The one circle, in one direction: views emit what was meant, the focus decides, views follow."""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np
from PySide6.QtCore import QObject, Signal

from analysis.captures.model import Role
from analysis.diagnosis.findings import Statement, TrackSurvey
from analysis.intervals import Interval
from app.drawing.band_item import Stretch
from app.drawing.numbers import duration, rate_text
from app.drawing.track_items import worst
from app.review.pointer_reader import Pointed
from app.review.readings import Reading
from app.review.showing import band_of, showing
from app.words import record_names

if TYPE_CHECKING:
    from app.main_window import Window


class ReviewCircle(QObject):
    """Joins session, focus and arm to the views of one window.

    Signals
    -------
    empty_pressed(at_s)
        Double-clicked in Trace where no crossing is.

    Parameters
    ----------
    window : Window
        Whose views it joins.
    """

    empty_pressed = Signal(float)

    def __init__(self, window: Window) -> None:
        super().__init__(window)
        self._window = window
        self._survey: TrackSurvey | None = None
        self._pointed_band: int | None = None
        self._shown_band: int | None = None
        self._statement: Statement | None = None
        self._passed: int | None = None
        self._follow_session()
        self._follow_focus()
        self._follow_hand()

    def refresh(self) -> None:
        """Show everything again, for a view that was built anew."""
        self._show_record()
        self._show_targets()
        self._show_moment()
        self._window.desk.markers.show_marks()

    def choose_next_band(self) -> None:
        """Light up the band after the chosen one, and then none."""
        findings, band = self._window.session.findings, self._window.focus.band
        count = len(findings.bands) if findings is not None else 0
        if count:
            after = 0 if band is None else band + 1
            self._window.focus.choose_band(after if after < count else None)

    def open_likeliest(self) -> None:
        """Zoom to the clearest crossing of the chosen or likeliest band; or else to the deepest event."""
        findings, focus = self._window.session.findings, self._window.focus
        stepped = [i for i, item in enumerate(focus.passages) if item.band is not None]
        if findings is not None and stepped:
            likeliest = max(range(len(findings.bands)), key=lambda i: findings.bands[i].confidence)
            self._open_band(likeliest if focus.band is None else focus.band)
        elif focus.passages:
            depths_v = [abs(item.depth_v) for item in focus.passages]
            focus.choose_passage(depths_v.index(max(depths_v)))

    def _follow_session(self) -> None:
        self._window.session.capture_changed.connect(self._show_capture)
        self._window.session.records_changed.connect(self._show_edited)
        self._window.session.findings_changed.connect(self._show_findings)
        self._window.pages.currentChanged.connect(self._show_page)

    def _show_page(self) -> None:
        """Each page has its own reading: that of the page before would be nobody's."""
        self._window.pointer.forget()
        self._window.readout.show_nothing()
        if self._window.pages.currentWidget() is self._window.page:
            self._show_moment()

    def _follow_focus(self) -> None:
        focus = self._window.focus
        focus.record_changed.connect(self._show_record)
        focus.window_changed.connect(self._show_window)
        focus.travel_changed.connect(self._show_travel)
        focus.target_changed.connect(self._show_targets)
        focus.moment_changed.connect(self._show_moment)

    def _follow_hand(self) -> None:
        page, focus, arm = self._window.page, self._window.focus, self._window.arm
        arm.running_changed.connect(self._rest_or_run)
        self._window.pointer.read.connect(self._show_running_moment)
        page.records.chosen.connect(focus.show_record)
        page.records.span_chosen.connect(self._show_span)
        page.events.chosen.connect(arm.choose)
        page.overview.window_wanted.connect(focus.show_window)
        page.overview.zoomed.connect(focus.zoom)
        page.trace.window_wanted.connect(focus.show_window)
        page.trace.zoomed.connect(focus.zoom)
        page.trace.panned.connect(focus.pan)
        page.trace.pointed.connect(self._point)
        page.trace.pressed.connect(self._press_moment)
        page.track.band_chosen.connect(focus.choose_band)
        page.track.band_opened.connect(self._open_band)
        page.track.span_wanted.connect(focus.show_travel)
        page.track.arm_dragged.connect(arm.drag_to)
        page.track.arm_clicked.connect(arm.toggle)
        page.track.pointed.connect(self._point_at_place)
        page.track.track_wanted.connect(self._show_track)
        page.evidence.band_chosen.connect(focus.choose_band)
        page.evidence.band_opened.connect(self._open_band)
        page.evidence.record_wanted.connect(focus.show_record)
        page.evidence.statement_pressed.connect(self._show_statement)

    def _show_capture(self) -> None:
        page, capture = self._window.page, self._window.session.capture
        self._take_survey()
        page.records.show_capture(capture, None, self._window.session.edits)
        page.fit_records()
        page.events.show_passages((), capture, False)
        page.evidence.show_findings(capture, None)
        page.track.show_findings(None, None)
        self._window.focus.start(capture)

    def _show_edited(self) -> None:
        """Show what is said of the records at once; the findings follow when they are made."""
        page, capture = self._window.page, self._window.session.capture
        session = self._window.session
        page.records.show_capture(capture, session.findings, session.edits)
        page.fit_records()
        if capture is not None:
            self._window.focus.renew(capture)

    def _show_findings(self) -> None:
        page, session, focus = self._window.page, self._window.session, self._window.focus
        findings = session.findings
        if findings is None:
            return
        self._take_survey()
        page.records.show_capture(session.capture, findings, session.edits)
        page.evidence.show_findings(session.capture, findings)
        page.track.show_findings(findings, self._survey)
        self._show_travel()
        page.fit_records()
        focus.learn(findings)
        page.hint_bar.show_steps(any(item.band is not None for item in focus.passages))
        page.events.show_passages(focus.passages, session.capture, True)
        self._show_again()

    def _show_again(self) -> None:
        """Show what is looked at in lists that were filled anew; the record's curves stand as they were."""
        if self._window.focus.record is not None:
            self._window.page.records.show_record(self._window.focus.record.name)
        self._show_targets()
        self._show_moment()

    def _take_survey(self) -> None:
        """The track to show: the one that is shown, else that with the likeliest band, or else the first."""
        findings = self._window.session.findings
        surveys = findings.surveys if findings is not None else ()
        bands = findings.bands if findings is not None else ()
        track = max(bands, key=lambda band: band.confidence).track if bands else None
        shown = self._survey.role if self._survey is not None else None
        if any(item.role is shown for item in surveys):  # examined again: nobody is led away
            track = shown
        first = surveys[0] if surveys else None
        self._survey = next((item for item in surveys if item.role is track), first)
        self._window.arm.follow(self._survey)

    def _open_band(self, index: int) -> None:
        """Zoom the track to a band and Trace to its clearest crossing."""
        findings = self._window.session.findings
        if findings is not None and index < len(findings.bands):
            self._window.focus.open_band(index)

    def show_track_of(self, role: Role) -> None:
        """Show the track of that role, where it was surveyed and is not shown yet."""
        findings = self._window.session.findings
        roles = [item.role for item in findings.surveys] if findings is not None else []
        if role in roles and (self._survey is None or self._survey.role is not role):
            self._show_track(roles.index(role))

    def _show_statement(self, statement: Statement) -> None:
        """Go to the record that shows a statement best; pressed again, to the next that shows it."""
        focus, session = self._window.focus, self._window.session
        if session.capture is None or session.findings is None:
            return
        names = showing(statement, session.capture, session.findings)
        if not names:
            return
        at = focus.record.name if focus.record is not None else ""
        again = statement is self._statement and at in names
        self._statement = statement
        focus.show_record(names[(names.index(at) + 1) % len(names)] if again else names[0])
        band = band_of(statement, session.findings)
        if band is not None:
            focus.choose_band(band)

    def _show_track(self, index: int) -> None:
        findings = self._window.session.findings
        if findings is not None and index < len(findings.surveys):
            self._survey = findings.surveys[index]
            self._window.arm.follow(self._survey)
            self._window.page.track.show_findings(findings, self._survey)
            self._show_travel()
            self._show_targets()
            self._show_moment()

    def _show_record(self) -> None:
        window, record, capture = self._window, self._window.focus.record, self._window.session.capture
        window.page.trace.show_record(record)
        window.page.overview.show_record(record)
        if record is not None and capture is not None:
            rate = rate_text(1.0 / record.sample_interval_s)
            name = record_names(capture)[record.name]
            parts = (name, record.label, duration(record.duration_s), rate)
            window.page.trace.set_note(" · ".join(part for part in parts if part))
            window.page.records.show_record(record.name)
        self._show_window()
        self._show_stretches()

    def _show_span(self, record: str, span: Interval) -> None:
        """Show one span of a record, with a little of what lies beside it."""
        focus = self._window.focus
        if focus.record is None or focus.record.name != record:
            focus.show_record(record)
        focus.show_window(span.widened(0.05 * span.length))

    def _show_window(self) -> None:
        self._window.page.trace.show_window(self._window.focus.window)
        self._window.page.overview.show_window(self._window.focus.window)
        self._window.readout.show_resolution(self._finest_s())

    def _show_travel(self) -> None:
        travel, track = self._window.focus.travel, self._window.page.track
        if travel is None:
            track.show_whole()
        else:
            track.show_span(travel)

    def _show_targets(self) -> None:
        window, focus = self._window, self._window.focus
        self._go_to_its_track()
        window.page.track.choose_band(focus.band)
        window.page.evidence.choose_band(focus.band)
        window.page.events.show_passage(focus.passage)
        passage = focus.passages[focus.passage] if focus.passage is not None else None
        window.page.track.single_out((passage.record, passage.time) if passage is not None else None)
        if passage is not None:
            window.page.trace.rest_pointer()
        self._show_stretches()

    def _go_to_its_track(self) -> None:
        """A band that is chosen anew is shown on the track that it lies on."""
        findings, band = self._window.session.findings, self._window.focus.band
        chosen = band != self._shown_band
        self._shown_band = band
        if chosen and band is not None and findings is not None and band < len(findings.bands):
            self.show_track_of(findings.bands[band].track)

    def _show_stretches(self) -> None:
        """Shade every passage of the shown record, the chosen band's strongly; or one, the others pale."""
        focus = self._window.focus
        band = self._pointed_band if focus.band is None else focus.band
        alone = focus.passages[focus.passage] if focus.passage is not None else None
        stretches = tuple(
            Stretch(item.time, item is alone, pale=item is not alone)
            if alone is not None
            else Stretch(item.time, band is not None and item.band == band)
            for item in focus.passages
            if focus.record is not None and item.record == focus.record.name and (item.noisy or item is alone)
        )
        self._window.page.trace.show_stretches(stretches)
        self._window.page.overview.show_stretches(stretches)

    def _point(self, moment_s: float | None) -> None:
        # While the arm runs, it is the clock that points; a pointer that left changes nothing.
        if moment_s is not None and not self._window.arm.running:
            self._window.focus.point(moment_s)

    def _press_moment(self, moment_s: float, twice: bool) -> None:
        """A click on a crossing in Trace chooses its band; a double click zooms to that crossing."""
        focus = self._window.focus
        name = focus.record.name if focus.record is not None else ""
        reach_s = 0.004 * focus.window.length
        hits = [
            index
            for index, item in enumerate(focus.passages)
            if item.record == name and item.time.widened(reach_s).contains(moment_s)
        ]
        if twice and hits:
            focus.choose_passage(hits[0])
        elif twice:
            self.empty_pressed.emit(moment_s)
        else:
            focus.choose_band(focus.passages[hits[0]].band if hits else None)

    def _show_moment(self) -> None:
        window, focus = self._window, self._window.focus
        record, moment_s = focus.record, focus.moment_s
        if not window.arm.running:  # a running arm is drawn where it was read: one moment everywhere
            self._draw_moment(moment_s)
        if record is None or moment_s is None:
            window.pointer.forget()
            return
        window.pointer.ask(Pointed(record, moment_s, self._survey, self._finest_s()))

    def _finest_s(self) -> float:
        """The smallest step that can be pointed at: a pixel of what is shown, or a sample."""
        focus, page = self._window.focus, self._window.page
        pixel_s = focus.window.length / max(page.trace.width(), 1)
        return max(pixel_s, focus.record.sample_interval_s if focus.record is not None else 0.0)

    def _draw_moment(self, moment_s: float | None) -> None:
        page = self._window.page
        page.trace.show_moment(moment_s)
        page.overview.show_moment(moment_s)
        page.track.show_arm(self._window.arm.travel(moment_s))

    def _show_running_moment(self, reading: Reading, _resolution_s: float) -> None:
        """Draw a running arm where the status line reads, and mark the crossing that it goes through."""
        if self._window.arm.running:
            self._draw_moment(reading.time_s)
            self._mark_passed(reading.time_s)

    def _mark_passed(self, moment_s: float) -> None:
        focus = self._window.focus
        name = focus.record.name if focus.record is not None else ""
        passed = (
            index
            for index, item in enumerate(focus.passages)
            if item.record == name and item.time.contains(moment_s)
        )
        index = next(passed, self._passed)
        if index != self._passed:
            self._passed = index
            self._window.page.events.show_passage(index)

    def _rest_or_run(self, running: bool) -> None:
        """At rest the arm stands where it is, and what is singled out is marked again."""
        self._passed = None
        if not running:
            self._show_moment()
            self._window.page.events.show_passage(self._window.focus.passage)

    def _point_at_band(self, travel_percent: float | None) -> None:
        """Light up every crossing of the band under the pointer, as long as none is chosen."""
        findings, survey, pointed = self._window.session.findings, self._survey, None
        if travel_percent is not None and findings is not None and survey is not None:
            own = (i for i, band in enumerate(findings.bands) if band.track is survey.role)
            pointed = next((i for i in own if findings.bands[i].travel.contains(travel_percent)), None)
        if pointed != self._pointed_band:
            self._pointed_band = pointed
            self._show_stretches()

    def _point_at_place(self, travel_percent: float | None) -> None:
        self._point_at_band(travel_percent)
        survey = self._survey
        if travel_percent is None or survey is None or self._window.arm.running:
            return
        place = int(np.searchsorted(survey.edges_percent, travel_percent, side="right")) - 1
        if not 0 <= place < survey.breakup_percent.shape[1]:
            return
        column = survey.breakup_percent[:, place]
        value = float(worst(survey.breakup_percent[:, place : place + 1])[0])
        count = int(np.isfinite(column).sum())
        self._window.pointer.forget()
        self._window.readout.show_place(travel_percent, value if count else None, count, survey.role)
