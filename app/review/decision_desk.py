"""What the technician says of the found bands: accepted, adjusted, dismissed with a reason, or nothing."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject

from analysis.diagnosis.findings import Band
from analysis.intervals import Interval
from analysis.review.model import Choice, Decision, decided, with_decision, without_decision
from analysis.wording import Wording, say
from app.drawing.mark_item import Mark
from app.review.keeper import ReviewKeeper
from app.review.marker_edits import between, tidy_travel

if TYPE_CHECKING:
    from app.main_window import Window

_PREFIX = "band:"


class DecisionDesk(QObject):
    """Turns what the technician means about a band into an edit of the review, and shows what was said.

    Parameters
    ----------
    window : Window
    keeper : ReviewKeeper
    """

    def __init__(self, window: Window, keeper: ReviewKeeper) -> None:
        super().__init__(window)
        self._window, self._keeper = window, keeper
        evidence = window.page.evidence
        evidence.band_adjusted.connect(self._adjust_typed)
        evidence.band_restored.connect(self._restore)
        evidence.reason_given.connect(self.give_reason)

    @property
    def band(self) -> int | None:
        """The band that is spoken of: the chosen one, or the only one."""
        bands, chosen = self._bands(), self._window.focus.band
        if chosen is not None and chosen < len(bands):
            return chosen
        return 0 if len(bands) == 1 else None

    def decisions(self) -> tuple[Decision | None, ...]:
        """What was said of each found band."""
        return tuple(self._keeper.review.decision(band) for band in self._bands())

    @property
    def accepted(self) -> bool:
        """Whether the band that is spoken of is accepted."""
        band = self.band
        said = self.decisions()[band] if band is not None else None
        return said is not None and said.choice is Choice.ACCEPTED

    def accept(self) -> None:
        """Accept the band as it was found; where that is done, take it back."""
        if self.accepted:
            self.withdraw()
        else:
            self._decide(Choice.ACCEPTED, say("accept a band"))

    def dismiss(self) -> None:
        """Dismiss the band at once, and let the reason be typed."""
        index = self.band
        self._decide(Choice.DISMISSED, say("dismiss a band"))
        if index is not None:
            self._window.page.evidence.ask_for_reason(index)

    def ask_for_edges(self) -> None:
        """Let other edges of the band be typed; nothing is said until they are."""
        index = self.band
        if index is not None:
            self._choose(index)
            self._window.page.evidence.ask_for_edges(index)

    def withdraw(self) -> None:
        """Say nothing of the band any more, whatever was said before; undo leads back step by step."""
        index = self.band
        if index is not None:
            review = without_decision(self._keeper.review, self._bands()[index])
            self._keeper.change(say("give no answer on a band"), review)

    def adjust(self, index: int, edges: Interval, field: str = "") -> None:
        """Give a band other edges, in % of travel; edges as they were found are no adjustment.

        Those that follow each other in one `field` are one step to undo.
        """
        band = self._bands()[index]
        edges = tidy_travel(edges)
        before = self._keeper.review.decision(band)
        if edges == tidy_travel(band.travel) and (before is None or before.choice is not Choice.ADJUSTED):
            return
        reason = before.reason if before is not None and before.choice is Choice.ADJUSTED else ""
        self._put(index, Choice.ADJUSTED, say("adjust a band"), edges, reason, field)

    def _adjust_typed(self, index: int, edges: Interval) -> None:
        """Take edges that are being typed: a key that moves them ten times makes one step."""
        self.adjust(index, edges, _edges_of(index))

    def _restore(self, index: int, before: Decision | None) -> None:
        """Typing was given up: say what was said before, as if no key had moved an edge."""
        band, review = self._bands()[index], self._keeper.review
        said = with_decision(review, band, before) if before is not None else without_decision(review, band)
        self._keeper.change(say("adjust a band"), said, _edges_of(index))

    def set_edge(self, index: int, edge: str, at_percent: float) -> None:
        """Let a band begin (``"start"``) or end elsewhere."""
        band = self._bands()[index]
        said = self._keeper.review.decision(band)
        travel = said.adjusted if said is not None and said.adjusted is not None else band.travel
        self.adjust(index, between(at_percent, travel.stop if edge == "start" else travel.start))

    def give_reason(self, index: int, reason: str) -> None:
        """Say why."""
        band = self._bands()[index]
        before = self._keeper.review.decision(band)
        if before is not None and before.reason != reason:
            changed = with_decision(self._keeper.review, band, replace(before, reason=reason))
            self._keeper.change(say("give a reason"), changed)

    def show(self) -> None:
        """Show what was said, in Evidence and on the sensor track."""
        decisions = self.decisions()
        self._window.page.evidence.show_decisions(decisions)
        self._window.page.track.show_decisions(decisions)

    def marks(self) -> tuple[Mark, ...]:
        """Edges on the shown track: those that were adjusted, and those of the chosen band, to be dragged."""
        track = self._window.page.track.survey
        made = []
        for index, (band, said) in enumerate(zip(self._bands(), self.decisions(), strict=True)):
            chosen = index == self._window.focus.band
            if track is None or band.track is not track.role:
                continue
            if said is not None and said.adjusted is not None:
                edges = said.adjusted
                said_here = Mark(f"{_PREFIX}{index}", edges.start, edges.stop, self.tr("yours"), chosen)
                made.append(replace(said_here, fixed=not chosen))
            elif chosen:
                edges = band.travel
                made.append(Mark(f"{_PREFIX}{index}", edges.start, edges.stop, chosen=True, quiet=True))
        return tuple(made)

    def of_mark(self, mark_id: str) -> int | None:
        """The band whose edges a mark on the track shows, or None."""
        number = mark_id.removeprefix(_PREFIX)
        return int(number) if mark_id != number and number.isdecimal() else None

    def _bands(self) -> tuple[Band, ...]:
        findings = self._window.session.findings
        return findings.bands if findings is not None else ()

    def _choose(self, index: int) -> None:
        if self._window.focus.band != index:
            self._window.focus.choose_band(index)

    def _decide(self, choice: Choice, text: Wording) -> None:
        index = self.band
        if index is not None:
            self._put(index, choice, text)

    def _put(
        self,
        index: int,
        choice: Choice,
        text: Wording,
        adjusted: Interval | None = None,
        reason: str = "",
        field: str = "",
    ) -> None:
        findings = self._window.session.findings
        if findings is None:
            return
        band = findings.bands[index]
        decision = decided(band, choice, findings.analysis_version, adjusted=adjusted, reason=reason)
        self._keeper.change(text, with_decision(self._keeper.review, band, decision), field)
        self._choose(index)


def _edges_of(index: int) -> str:
    """How the fields of a band's edges are called as one."""
    return f"edges of band {index}"
