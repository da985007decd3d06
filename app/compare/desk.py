"""Compare's circle: views emit what was meant, the sides and the focus decide, the views follow."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject

from analysis.comparison.model import Comparison, Relation
from analysis.comparison.movement import first_movement_s
from analysis.comparison.positions import Position
from app.compare.beginning import begin, folder_of, looked_at
from app.compare.belonging import mountings, on_one_place, pairing, positions, ruled_out, why_no_corners
from app.compare.drawn import draw_bands, share_scale
from app.compare.focus import CompareFocus
from app.compare.heads import head_of, verdicts_of
from app.compare.known_good import doubt_of, keep_as_known_good, known_good
from app.compare.maker import ComparisonMaker, MakeCorner, corner_of
from app.compare.menu import SideMenu
from app.compare.page import ComparePage
from app.compare.side import CompareSide
from app.compare.stepping import Steps
from app.compare.summary import aligned_words
from app.jobs import Jobs
from app.language import said
from app.review.pointer_reader import Pointed

if TYPE_CHECKING:
    from app.main_window import Window


class CompareDesk(QObject):
    """Everything behind the page of Compare.

    Parameters
    ----------
    window : Window
        Whose page it is; its Review gives the capture to compare.
    """

    def __init__(self, window: Window) -> None:
        super().__init__(window)
        self._window = window
        self.jobs = Jobs(self)
        self.maker = ComparisonMaker(self.jobs, self)
        tools, keeper = window.tools, window.keeper
        self.sides = [CompareSide(window.session, tools, lambda: keeper.review.job, self) for _ in range(2)]
        self.focus = CompareFocus(parent=self)
        self.relation = Relation.BEFORE_AFTER
        self._positions: tuple[Position, Position] | None = None
        self.steps = Steps()
        menus = tuple(SideMenu(window.settings, self._good, window) for _ in range(2))
        self.page = ComparePage(window.page.button, (menus[0], menus[1]))
        self.maker.compared.connect(self._take)
        self.maker.corners_read.connect(self.page.corners.show_plausibility)
        self.maker.problem.connect(self.page.problem_bar.show_problem)
        for place, menu in enumerate(menus):
            menu.review_chosen.connect(lambda place=place: self.sides[place].take_review())
            menu.good_chosen.connect(lambda place=place: self._take_good(place))
            menu.file_wanted.connect(lambda place=place: self.ask_for_file(place))
            menu.chosen.connect(lambda path, place=place: self.open_file(path, place))
        self._follow_hand()
        self._follow_sides()
        self.focus.windows_changed.connect(self._show_windows)
        self.focus.moment_changed.connect(self._show_moment)
        self.focus.linked_changed.connect(self._show_linked)
        window.actions_by_name.connect(self._handlers())
        self._show_sides()
        self._show_linked()

    @property
    def comparison(self) -> Comparison | None:
        """The comparison of what is shown, or None while there is none."""
        return self.maker.comparison

    @property
    def every_jobs(self) -> tuple[Jobs, ...]:
        """The work of Compare: both sides', and setting them against each other."""
        return (self.jobs, *(side.jobs for side in self.sides))

    @property
    def has_bands(self) -> bool:
        """Whether there is a band to step to."""
        return self.comparison is not None and bool(self.comparison.bands)

    def step(self, by: int) -> None:
        """Show the next (1) or previous (-1) crossing of the side that is pointed at."""
        found = self.steps.crossing(by, self.focus.pointed)
        if found is not None:
            side, crossing = found
            self.focus.show_window(side, crossing.widened(max(0.6 * crossing.length, 0.05)))
            self.focus.point(side, crossing.centre)

    def choose_next_band(self) -> None:
        """Show the next band of either side on the track of both, and after the last the whole track."""
        band = self.steps.band(len(self.comparison.bands) if self.comparison is not None else 0)
        if band is not None:
            self._zoom_to_band(band)
        else:
            self.page.track.show_whole()

    def show_stopped(self) -> None:
        """Say how to go on where the work was stopped before there was a comparison."""
        if self.comparison is None and self._window.comparing:
            stopped = self.tr("Stopped. Choose the capture again to compare with it.")
            self.page.summary.show_comparison(None, stopped)

    def enter(self) -> None:
        """Called as the page is shown: where nothing was chosen yet, the first side is what Review shows."""
        begin(self.sides, looked_at(self._window))
        self._compare()

    def open_file(self, path: Path, place: int = 1) -> None:
        """Open a capture for one side, and show Compare."""
        self.page.problem_bar.hide()
        self._window.show_compare()
        self.sides[place].open_file(path)

    def ask_for_file(self, place: int = 1) -> None:
        """Let the technician choose the capture of one side."""
        other = self.sides[1 - place].capture or self._window.session.capture
        path = self._window.choose_file(folder_of(other))  # also where that is the one of the samples
        if path is not None:
            self.open_file(path, place)

    def show_as_lanes(self, as_lanes: bool) -> None:
        """One lane for each channel, or all on one axis, on both sides."""
        for trace in self.page.traces:
            trace.show_as_lanes(as_lanes)
        share_scale(self.page.traces)
        self._show_windows()
        self._show_bands()

    def close(self) -> None:
        """Stop all work and close the files of both sides."""
        self.jobs.shut_down()
        for side in self.sides:
            side.close()

    def _handlers(self) -> dict[str, Callable[[], object]]:
        return {
            "open_other": self.ask_for_file,
            "swap": self.swap,
            "link": lambda: self.focus.link(self._window.actions_by_name["link"].isChecked()),
            "align": self.align_by_movement,
            "sooner": lambda: self.focus.nudge(-0.01),
            "later_second": lambda: self.focus.nudge(0.01),
            "mirror_first": lambda: self._mirror(0),
            "mirror_second": lambda: self._mirror(1),
            "corners": self._toggle_corners,
            "against_good": self.compare_with_known_good,
            "keep_good": self.keep_known_good,
        }

    def swap(self) -> None:
        """Let the two sides change places; what is shown of each stays."""
        self.sides.reverse()
        self.steps.swap()
        self.focus.swapped()
        self._show_sides()

    def align_by_movement(self) -> None:
        """Lay the traces on each other where each arm first moved; say so where one did not."""
        paths = [side.path for side in self.sides]
        moments = [first_movement_s(path) if path is not None else None for path in paths]
        if moments[0] is None or moments[1] is None:
            self.page.problem_bar.show_problem(
                self.tr("The arm did not move in both records: align them by hand, or choose two sweeps.")
            )
            return
        self.page.problem_bar.hide()
        before_s = self.focus.offset_s
        self.focus.align(moments[1] - moments[0])
        moved_s = before_s - self.focus.offset_s
        told = aligned_words(moved_s) or self.tr("Both arms first move at the same place: nothing was moved.")
        self._window.statusBar().showMessage(told, 8000)

    def keep_known_good(self) -> None:
        """Keep Review's capture as known good for its kind of sensor."""
        capture = self._window.session.capture
        bar = self._window.problem_bar()
        if capture is None or not keep_as_known_good(self._window.settings, capture):
            bar.show_problem(
                self.tr(
                    "This capture names neither part number nor profile, so it is known good for no sensor."
                )
            )
            return
        doubt = doubt_of(self._window.session.findings)
        if doubt:
            bar.show_problem(doubt)
            return
        kept = self.tr("Kept as known good: {title}.").format(title=capture.title)
        self._window.statusBar().showMessage(kept, 6000)

    def compare_with_known_good(self) -> None:
        """Set Review's capture against the known good one of its kind."""
        path = self._good()
        if path is None:
            self._window.problem_bar().show_problem(
                self.tr("No capture is kept as known good for this sensor. Open one, and keep it as such.")
            )
            return
        self.relation = Relation.KNOWN_GOOD
        self.sides[1].take_review(looked_at(self._window))
        self.open_file(path, 0)

    # -- what was meant ----------------------------------------------------------------------

    def _follow_hand(self) -> None:
        page, focus = self.page, self.focus
        for place, (trace, tools) in enumerate(zip(page.traces, page.tools, strict=True)):
            trace.zoomed.connect(lambda factor, at_s, place=place: focus.zoom(factor, place, at_s))
            trace.panned.connect(lambda share, place=place: focus.pan(share, place))
            trace.window_wanted.connect(lambda span, place=place: focus.show_window(place, span))
            trace.pointed.connect(lambda at_s, place=place: self._point(place, at_s))
            trace.problem.connect(page.problem_bar.show_problem)
            tools.record_chosen.connect(lambda name, place=place: self.sides[place].choose_record(name))
            tools.track_chosen.connect(lambda track, place=place: self.sides[place].choose_track(track))
        page.corners.zoomed.connect(lambda factor, at_s: focus.zoom(factor, 0, at_s))
        page.corners.panned.connect(lambda share: focus.pan(share, 0))
        page.corners.window_wanted.connect(lambda span: focus.show_window(0, span))
        page.corners.rule_changed.connect(lambda _rule: self._show_corners())
        page.relation_chosen.connect(self._relate)
        page.numbers.band_chosen.connect(self._zoom_to_band)

    def _follow_sides(self) -> None:
        self._window.keeper.changed.connect(self._show_bands)
        self._window.keeper.changed.connect(self._placed_anew)
        for side in self.sides:
            side.capture_changed.connect(lambda side=side: self._taken(side))
            side.chosen_changed.connect(self._show_sides)
            side.markers_changed.connect(self._show_bands)
            side.placed_anew.connect(self._placed_anew)
            side.problem.connect(self.page.problem_bar.show_problem)
            side.jobs.ended.connect(lambda _topic: self._show_waiting())
            side.jobs.progressed.connect(self._show_progress)

    def _relate(self, relation: Relation) -> None:
        self.relation = relation
        self._show_names()
        self._compare()

    def _mirror(self, place: int) -> None:
        action = self._window.actions_by_name["mirror_second" if place else "mirror_first"]
        if action.isChecked() and on_one_place(self.sides):
            action.setChecked(False)
            self.page.problem_bar.show_problem(
                self.tr(
                    "Both captures are of one and the same sensor position, so neither is mirrored: that is"
                    " for a sensor that is mounted the other way round, as on the other side of the axle."
                )
            )
            return
        self.page.problem_bar.hide()
        self.sides[place].mirror(action.isChecked())

    def _toggle_corners(self) -> None:
        self.page.show_corners(self._window.actions_by_name["corners"].isChecked())
        self._show_windows()
        self._show_corners()

    def _point(self, place: int, moment_s: float | None) -> None:
        if moment_s is not None:
            self.focus.point(place, moment_s)

    def _zoom_to_band(self, index: int) -> None:
        if self.comparison is not None and index < len(self.comparison.bands):
            span = self.comparison.bands[index].travel
            self.page.track.show_span(span.widened(max(1.5 * span.length, 3.0)))

    def _good(self) -> Path | None:
        capture = self._window.session.capture
        return known_good(self._window.settings, capture) if capture is not None else None

    def _take_good(self, place: int) -> None:
        path = self._good()
        if path is not None:
            self.open_file(path, place)

    def _taken(self, side: CompareSide) -> None:
        """Another capture: of its records, show the one that was taken as the other side's was."""
        other = self.sides[1 - self.sides.index(side)]
        side.match(other.record)
        self._mirror_none_of_one_place()
        self._show_sides()

    def _placed_anew(self) -> None:
        """A review says of another sensor or car: what both sides are to each other may be something else."""
        if positions(self.sides) != self._positions:
            self._mirror_none_of_one_place()
            self._show_sides()

    def _mirror_none_of_one_place(self) -> None:
        if on_one_place(self.sides):
            for item in self.sides:
                item.mirror(False)

    # -- what is shown -----------------------------------------------------------------------

    def _show_sides(self) -> None:
        """Show records, tracks and bands of both sides again, and set them against each other."""
        page, actions, self._positions = self.page, self._window.actions_by_name, positions(self.sides)
        for place, side in enumerate(self.sides):
            if page.traces[place].record is not side.record:
                page.traces[place].show_record(side.record)
            page.tools[place].show_choices(side.capture, side.record, side.tracks, side.track)
            actions["mirror_second" if place else "mirror_first"].setChecked(side.mirrored)
        share_scale(self.page.traces)
        self.focus.take(self.sides[0].record, self.sides[1].record)
        self._show_names()
        self._show_windows()
        self._show_bands()
        self.page.cautions.show_for(self.sides[0].capture or self.sides[1].capture)
        self._show_waiting()
        self._compare()
        self._show_corners()

    def _show_names(self) -> None:
        told = pairing(self.relation, self.sides)
        titles = [said(item) for item in told.titles]
        self.page.summary.show_verdicts(verdicts_of(self.sides, titles))
        refused = {relation: said(reason) for relation, reason in ruled_out(self.sides).items()}
        self.page.show_relation(told.relation, refused)
        seats = mountings(self.sides)
        for place, (trace, side) in enumerate(zip(self.page.traces, self.sides, strict=True)):
            trace.set_title(titles[place])
            said_of = self.tr("as its review says") if side.reviewed else ""
            whole = side.capture.title if side.capture is not None else ""
            own = (seats[place], seats[1 - place])
            trace.set_note(head_of(side, self.sides[1 - place], own, said_of), whole)
        self.page.track.show_names(titles[0], titles[1])

    def _show_windows(self) -> None:
        for trace, window in zip(self.page.traces, self.focus.windows, strict=True):
            trace.show_window(window)
        self.page.summary.show_shift(self.focus.shift_s if self.focus.linked else 0.0)
        if self.page.corners_shown:
            self.page.corners.show_window(self.focus.windows[0])

    def _show_moment(self) -> None:
        for trace, moment_s in zip(self.page.traces, self.focus.moments, strict=True):
            trace.show_moment(moment_s)
        if self.focus.pointed is None:
            return
        place, moment_s = self.focus.pointed
        side = self.sides[place]
        if side.record is None:
            return
        pixel_s = self.focus.windows[place].length / max(self.page.traces[place].width(), 1)
        finest_s = max(pixel_s, side.record.sample_interval_s)
        self._window.pointer.ask(Pointed(side.record, moment_s, side.survey, finest_s))

    def _show_linked(self) -> None:
        self._window.actions_by_name["link"].setChecked(self.focus.linked)

    def _show_bands(self) -> None:
        self.steps.take(draw_bands(self.page, self.sides, self._window.keeper.review.markers))

    def _compare(self) -> None:
        self.maker.compare(self.sides[0], self.sides[1], self.relation)

    def _take(self, comparison: Comparison | None) -> None:
        self.page.numbers.show_comparison(comparison, self._waiting_for())
        if comparison is not None:
            self.page.summary.show_comparison(comparison)
        else:
            self._show_waiting()

    def _show_corners(self) -> None:
        """Read both corners in the background, where they are shown."""
        if not self.page.corners_shown:
            return
        reason = why_no_corners(self.sides)
        if reason is not None:
            self.maker.leave_corners()
            self.page.corners.show_refusal(said(reason))
            return
        self.maker.read_corners(self._corner(0), self._corner(1), self.page.corners.rule)

    def _corner(self, place: int) -> MakeCorner | None:
        shift_s = -self.focus.offset_s if place else 0.0
        return corner_of(self.sides[place], shift_s, said(pairing(self.relation, self.sides).titles[place]))

    def _show_waiting(self) -> None:
        """What to do, or what is being done, where there is no comparison."""
        if self.comparison is None:
            self.page.summary.show_comparison(None, self._waiting_for())

    def _waiting_for(self) -> str:
        if all(side.capture is not None for side in self.sides):
            return self.tr("Both captures are open; what differs is said once they are examined.")
        return self.tr("Open a second capture to see what differs.")

    def _show_progress(self, topic: str, title: str, done: float) -> None:
        if self.comparison is None:
            said = self.tr("{doing}… {share} %").format(doing=title, share=round(100 * done))
            self.page.summary.show_comparison(None, said)
