"""The reckoning behind Compare, off the window's thread: the comparison, and two corners over time."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QObject, Signal

from analysis.captures.known_words import known_word
from analysis.comparison.compare import compare
from analysis.comparison.corners import Corner, Plausibility, Rule, compare_corners
from analysis.comparison.model import Comparison, Relation
from analysis.comparison.side import Side
from analysis.diagnosis.profiles import load_profile
from analysis.diagnosis.studies import measured_feed
from analysis.progress import Tick
from app.compare.side import CompareSide
from app.jobs import Jobs
from app.trouble import sentence

COMPARING, CORNERS = "compare", "corners"

MakeCorner = Callable[[], Corner]
"""Makes a corner off the window's thread: its feed is read from the file."""


class ComparisonMaker(QObject):
    """Compares what it is handed, once for each question; the latest question wins.

    Parameters
    ----------
    jobs : Jobs
        Where the work runs.

    Signals
    -------
    compared(Comparison or None)
        There is another comparison, or none any more.
    corners_read(Plausibility or None)
        Two corners were set against each other, or there are not two.
    problem(sentence)
        The work failed.
    """

    compared = Signal(object)
    corners_read = Signal(object)
    problem = Signal(str)

    def __init__(self, jobs: Jobs, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._jobs = jobs
        self._asked: object = None
        self.comparison: Comparison | None = None

    def compare(self, first: CompareSide, second: CompareSide, relation: Relation) -> None:
        """Set two sides against each other in the background, unless that was done already."""
        sides = _sides(first, second)
        if sides is None:
            self._jobs.cancel(COMPARING)
            self._asked = None
            self._take(None)
            return
        what = tuple(
            (id(item.findings), item.capture.content, item.position(), item.mirrored, item.record, item.track)
            for item in sides
        )
        if (what, relation) != self._asked:
            self._asked = (what, relation)
            self._jobs.run(
                COMPARING,
                self.tr("Comparing"),
                lambda _tick: compare(sides[0], sides[1], relation=relation),
                self._take,
                lambda error: self.problem.emit(sentence(error, self.tr("Comparing"))),
            )

    def read_corners(self, first: MakeCorner | None, second: MakeCorner | None, rule: Rule) -> None:
        """Set two corners against each other in the background."""
        if first is None or second is None:
            self._jobs.cancel(CORNERS)
            self.corners_read.emit(None)
            return

        def work(tick: Tick) -> Plausibility:
            return compare_corners(first(), second(), rule=rule, tick=tick)

        self._jobs.run(
            CORNERS,
            self.tr("Comparing left and right"),
            work,
            self.corners_read.emit,
            lambda error: self.problem.emit(sentence(error, self.tr("Left against right"))),
        )

    def leave_corners(self) -> None:
        """Read no corners: what is shown are not two."""
        self._jobs.cancel(CORNERS)

    def _take(self, comparison: Comparison | None) -> None:
        self.comparison = comparison
        self.compared.emit(comparison)


def corner_of(side: CompareSide, shift_s: float, otherwise: str) -> MakeCorner | None:
    """The corner that a side shows; None where its record does not hold the track.

    Parameters
    ----------
    side : CompareSide
    shift_s : float
        Added to the record's own time.
    otherwise : str
        What to call it where the file does not say where it is mounted.
    """
    record, capture, track, mirrored = side.record, side.placed, side.track, side.mirrored
    channel = record.channel(track) if record is not None and track is not None else None
    if record is None or capture is None or track is None or channel is None:
        return None
    profile = side.findings.profile if side.findings is not None else ""
    mounting = str(channel.attributes.get("mounting", "")) or capture.text("mounting")
    name = known_word(mounting) or otherwise

    def make() -> Corner:
        feed, _ = measured_feed(capture.records, load_profile(profile or None))
        return Corner(name, record, track, mirrored, shift_s, feed)

    return make


def _sides(first: CompareSide, second: CompareSide) -> tuple[Side, Side] | None:
    """What goes into the comparison: two records where one capture is on both sides, else the captures."""
    by_track = first.track is not second.track
    names = [side.record.name if side.record is not None else "" for side in (first, second)]
    by_record = first.shows_as(second) and names[0] != names[1]
    one, two = (side.compared(by_track=by_track, by_record=by_record) for side in (first, second))
    return (one, two) if one is not None and two is not None else None
