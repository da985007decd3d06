"""Joins the window "Why it comes and goes" and the control unit under Trace to one workbench."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject
from PySide6.QtWidgets import QFileDialog

from analysis.captures.model import Capture, Record
from analysis.control_unit.replay import Replay
from analysis.control_unit.rules import ControlUnit
from analysis.control_unit.stand_in import replay_record
from analysis.diagnosis.findings import Band, Findings
from analysis.diagnosis.profiles import profile_for
from analysis.errors import ProfileError, WornbandError
from analysis.exposure.contact import BandContact
from analysis.exposure.explain import likeliest_band
from analysis.exposure.road_test import total_km
from analysis.exposure.stored_code import job_codes
from analysis.progress import Tick
from analysis.review.vehicle import Counted
from analysis.wording import Wording, say
from app.drawing.theme import palette_for
from app.trouble import sentence
from app.why.choices import Choices, changed_field, entered, first_choices, shown, with_entered
from app.why.counting import count_in

if TYPE_CHECKING:
    from app.main_window import Window
    from app.why.window import WhyWindow

REPLAYING, COUNTING = "replay", "count_road_records"


class WhyCircle(QObject):
    """Knows what is chosen for the open capture, by its profile and its review; shows what follows.

    Parameters
    ----------
    window : Window
        The workbench.
    """

    def __init__(self, window: Window) -> None:
        super().__init__(window)
        self._window = window
        self._keeper = window.keeper
        self._first: Choices | None = None
        self._choices: Choices | None = None
        self._band: int | None = None
        self._told_codes: tuple[str, ...] = ()
        self._measured: tuple[ControlUnit, int, BandContact] | None = None
        self.why: WhyWindow | None = None
        window.session.capture_changed.connect(self._forget)
        window.session.findings_changed.connect(self._learn)
        window.keeper.changed.connect(self._follow_review)
        window.focus.record_changed.connect(self.replay_record)
        window.focus.window_changed.connect(self._show_window)
        window.page.evidence.why_wanted.connect(self.open)

    @property
    def choices(self) -> Choices | None:
        """What is chosen for the open capture; None where there is none."""
        return self._choices

    @property
    def possible(self) -> bool:
        """Whether there is a band to explain."""
        findings = self._window.session.findings
        return findings is not None and bool(findings.bands)

    def open(self, band: int | None = None) -> None:
        """Open the window for a band; the chosen one, or the likeliest, by default."""
        if self._choices is None:
            return
        self._band = band if band is not None else self._window.focus.band
        if self.why is None:
            from app.why.window import WhyWindow  # a fiftieth of a second that no start has to wait

            self.why = WhyWindow(self._choices, self._window)
            self.why.chosen.connect(lambda choices: self._take(choices))
            self.why.proof.count_wanted.connect(self._ask_for_records)
        self.why.show_choices(self._choices)
        self.apply_palette()
        self._show()
        self.why.show()
        self.why.raise_()
        self.why.activateWindow()

    def apply_palette(self) -> None:
        """Take on the colours that the workbench has."""
        if self.why is not None:
            self.why.apply_palette(palette_for(self._window.settings.colours))

    def show_strip(self) -> None:
        """Show the control unit under Trace, or take it away."""
        strip = self._window.page.control_unit
        strip.setVisible(self._window.actions_by_name["control_unit"].isChecked())
        self.replay_record()

    def replay_record(self) -> None:
        """Run the shown record through the control unit, in the background, where somebody looks."""
        window, record = self._window, self._window.focus.record
        strip, capture, findings = window.page.control_unit, window.session.capture, window.session.findings
        if strip.isHidden() or record is None or capture is None or self._choices is None:
            return
        unit = self._choices.unit
        strip.show_waiting()
        window.jobs.run(
            REPLAYING,
            self.tr("Running the record through a control unit"),
            partial(_replayed, capture, findings, record, unit),
            self._show_replay,
            self._refuse_replay,
        )

    def _forget(self) -> None:
        self._first = self._choices = None
        self._band, self._measured = None, None
        for topic in (REPLAYING, COUNTING):
            self._window.jobs.cancel(topic)
        self._window.page.control_unit.show_replay(None)
        self._tell_heights()
        if self.why is not None:
            self.why.show_result(None, self.tr("The capture is being examined."))

    def _learn(self) -> None:
        """Begin with what the profile says, and what the review says in its place."""
        capture = self._window.session.capture
        if capture is None or self._window.session.findings is None:
            return
        if self._first is None or self._choices is None:
            try:
                self._first = first_choices(profile_for(capture))
            except ProfileError as error:
                self._window.page.problem_bar.show_problem(sentence(error, self.tr("Why it comes and goes")))
                return
            self._choices = with_entered(self._first, self._keeper.review.vehicle)
        self._measured = None
        self._tell_heights()
        self.replay_record()
        if self.why is not None:
            self.why.show_choices(self._choices)
            self._show()

    def _take(self, choices: Choices, by_hand: bool = True) -> None:
        """What was chosen goes into the review, and comes back from there; the height looked at does not.

        Values that follow each other in one field by hand are one step to undo.
        """
        before = self._choices
        if before is None:
            return
        self._choices = replace(before, rest=choices.rest)
        review = self._keeper.review
        vehicle = entered(review.vehicle, before, choices)
        if vehicle != review.vehicle:
            filled = changed_field(replace(before, rest=choices.rest), choices)
            field = f"vehicle {filled}" if filled and by_hand else ""
            self._keeper.change(self._done(before, choices), replace(review, vehicle=vehicle), field)
        elif choices.rest is not before.rest:
            self._show()
        if self._choices != choices and self.why is not None:  # it was refused: show what holds
            self.why.show_choices(self._choices)

    def _done(self, before: Choices, after: Choices) -> Wording:
        """What was done, for the menu."""
        if before.heights != after.heights:
            return say("change the heights")
        if before.unit != after.unit:
            return say("change the control unit's rules")
        if before.test != after.test:
            return say("change the road test")
        return say("change the drive")

    def _follow_review(self) -> None:
        """Show what the review says of the vehicle by now, also after it was undone."""
        before = self._choices
        if self._first is None or before is None:
            return
        self._follow_job()
        first = replace(self._first, rest=before.rest)
        choices = with_entered(first, self._keeper.review.vehicle)
        if choices == before:
            return
        self._choices = choices
        if self.why is not None:
            self.why.show_choices(choices)
        self._show()
        if before.unit != choices.unit:
            self.replay_record()
        if before.heights != choices.heights:
            self._tell_heights()

    def _tell_heights(self) -> None:
        heights = self._choices.heights if self._choices is not None else None
        window = self._window
        window.page.evidence.show_heights(heights)
        window.page.track.show_heights(heights)
        window.readout.show_heights(heights)
        window.desk.markers.show_heights(heights)

    def _show(self) -> None:
        """Work it out and show it; it takes a few milliseconds."""
        why, choices = self.why, self._choices
        session = self._window.session
        if why is None or choices is None or session.capture is None or session.findings is None:
            return
        place = self._band_place(session.findings)
        if place is None:
            why.show_result(
                None, self.tr("No band was found in this capture, so there is nothing to explain.")
            )
            return
        try:
            contact = self._contact(choices.unit, place)
            band = session.findings.bands[place]
            result = shown(session.capture, session.findings, band, choices, contact, self._codes())
        except WornbandError as error:
            why.show_result(None, sentence(error, self.tr("Why it comes and goes")))
            return
        self._measured = (choices.unit, place, result.exposure.contact)
        why.show_result(result)

    def _band_place(self, findings: Findings) -> int | None:
        if self._band is not None and self._band < len(findings.bands):
            return self._band
        likeliest: Band | None = likeliest_band(findings)
        if likeliest is not None:
            return findings.bands.index(likeliest)
        return 0 if findings.bands else None

    def _contact(self, unit: ControlUnit, place: int) -> BandContact | None:
        if self._measured is not None and self._measured[:2] == (unit, place):
            return self._measured[2]
        return None

    # -- the road test -----------------------------------------------------------------------

    def _ask_for_records(self) -> None:
        capture = self._window.session.capture
        folder = str(capture.path.parent) if capture is not None and capture.path is not None else ""
        kinds = self.tr("Captures ({patterns});;All files (*)").format(patterns="*.h5 *.hdf5 *.nc")
        title = self.tr("Captures after the repair")
        chosen, _ = QFileDialog.getOpenFileNames(self.why, title, folder, kinds)
        self.count_records([Path(name) for name in chosen])

    def count_records(self, paths: Sequence[Path]) -> None:
        """Count the road records of captures off, in the background; what is driven is then filled in."""
        choices, findings = self._choices, self._window.session.findings
        if not paths or choices is None or findings is None:
            return
        place = self._band_place(findings)
        band = findings.bands[place] if place is not None else None
        doing = self.tr("Counting road records")
        self._window.jobs.run(
            COUNTING,
            doing,
            partial(count_in, self._window.tools, tuple(paths), choices, band),
            self._take_counted,
            partial(self._refuse_counting, doing),
        )

    def _take_counted(self, found: Counted) -> None:
        if self.why is None or self._choices is None:
            return
        driven_km = round(total_km([record for _, record in found]), 2)
        test = replace(self._choices.test, driven_km=driven_km, counted=found)
        self._take(replace(self._choices, test=test), by_hand=False)
        self.why.show_choices(self._choices)

    def _refuse_counting(self, doing: str, error: Exception) -> None:
        if self.why is not None:
            self.why.problem_bar.show_problem(sentence(error, doing))

    def _show_window(self) -> None:
        self._window.page.control_unit.show_window(self._window.focus.window)

    def _show_replay(self, found: Replay) -> None:
        self._window.page.control_unit.show_replay(found, self._codes())
        self._show_window()

    def _follow_job(self) -> None:
        """Other codes may have been entered for the report."""
        codes = self._codes()
        if codes != self._told_codes:
            self._told_codes = codes
            self._window.page.control_unit.show_codes(codes)
            self._show()

    def _codes(self) -> tuple[str, ...]:
        """Fault codes that the job names."""
        capture = self._window.session.capture
        return job_codes(self._keeper.review.job, capture) if capture is not None else ()

    def _refuse_replay(self, error: Exception) -> None:
        doing = self.tr("Running the record through a control unit")
        self._window.page.control_unit.show_problem(sentence(error, doing))


def _replayed(
    capture: Capture, findings: Findings | None, record: Record, unit: ControlUnit, tick: Tick
) -> Replay | None:
    return replay_record(record, findings, profile_for(capture), unit, tick)
