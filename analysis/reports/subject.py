"""What a report is made from: a capture with its findings, the review, and what is set beside it."""

from __future__ import annotations

from dataclasses import dataclass, field

from analysis.captures.known_words import known_word
from analysis.captures.model import Capture
from analysis.comparison.compare import compare
from analysis.comparison.model import Comparison, Relation
from analysis.comparison.side import Side
from analysis.diagnosis.findings import Findings, VerdictCode
from analysis.reports.verdicts import is_watched
from analysis.review.job import fact, placed
from analysis.review.model import Choice, Review
from analysis.wording import Wording, joined, say


@dataclass(frozen=True, slots=True)
class Subject:
    """A capture, examined.

    Parameters
    ----------
    capture : Capture
        Open, as long as pictures are made from its samples.
    findings : Findings
        Of that capture.
    assumptions : tuple of str
        What stood in for things that the file does not state.
    review : Review
        What the technician added; an empty one by default.
    why : tuple of str
        Why it comes and goes, where that is known.
    why_brief : str
        The same for the customer, in a few sentences.
    """

    capture: Capture
    findings: Findings
    assumptions: tuple[str, ...] = ()
    review: Review = field(default_factory=Review)
    why: tuple[str, ...] = ()
    why_brief: str = ""

    def fact(self, key: str) -> str:
        """A job fact, as entered or as the capture says."""
        return fact(self.review.job, self.capture, key)

    @property
    def placed(self) -> Capture:
        """The capture as it is said to be of a sensor and a car, entered or recorded."""
        return placed(self.capture, self.review.job)

    @property
    def dismissed(self) -> bool:
        """Whether the technician dismissed every band that the verdict stands on."""
        if self.findings.verdict.code not in (VerdictCode.WORN_TRACK, VerdictCode.SENSOR_OUTPUT_FAULT):
            return False
        sure = [band for band in self.findings.bands if not is_watched(band)]
        said = [self.review.decision(band) for band in sure]
        return bool(said) and all(item is not None and item.choice is Choice.DISMISSED for item in said)


@dataclass(frozen=True, slots=True)
class Beside:
    """Another capture that stands beside it.

    Parameters
    ----------
    capture : Capture
        The other one.
    findings : Findings
        Of the other one.
    """

    capture: Capture
    findings: Findings

    @property
    def good(self) -> bool:
        """Whether no fault was found in it."""
        return self.findings.verdict.code is VerdictCode.NO_FAULT_FOUND

    def is_later_visit(self, subject: Subject) -> bool:
        """Whether it is the same place of the same car, measured later."""
        return _same_place(subject.placed, self.capture) and _follows(self.capture, subject.capture)

    def is_earlier_visit(self, subject: Subject) -> bool:
        """Whether it is the same place of the same car, measured earlier."""
        return _same_place(subject.placed, self.capture) and _follows(subject.capture, self.capture)

    def compared(self, subject: Subject) -> Comparison:
        """The two set against each other, as far as their findings tell."""
        own, other = Side(subject.placed, subject.findings), Side(self.capture, self.findings)
        if self.is_later_visit(subject):
            return compare(own, other, relation=Relation.BEFORE_AFTER)
        if self.is_earlier_visit(subject):
            return compare(other, own, relation=Relation.BEFORE_AFTER)
        if self.good:
            return compare(other, own, relation=Relation.KNOWN_GOOD)
        sides = _side(subject.placed), _side(self.capture)
        if sides == ("left", "right"):
            return compare(own, other, relation=Relation.LEFT_RIGHT)
        if sides == ("right", "left"):
            return compare(other, own, relation=Relation.LEFT_RIGHT)
        return compare(own, other, relation=Relation.SIDE_BY_SIDE)

    def tested_as_before(self, subject: Subject) -> bool:
        """Whether the later of two visits to one place crossed every band that the earlier one showed."""
        bands = self.compared(subject).bands
        return all(item.second.passes > 0 for item in bands if item.first_band is not None)

    def title(self, subject: Subject) -> Wording:
        """Which one it is, for the picture: never called good unless no fault was found in it."""
        date = self.capture.text("created")[:10] or say("without a date")
        if self.is_later_visit(subject):
            if self.good:
                return say("The same place, measured later ({date}): no fault found", date=date)
            return say("The same place, measured later ({date})", date=date)
        if self.is_earlier_visit(subject):
            return say("The same place, measured earlier ({date})", date=date)
        mounting = known_word(self.capture.text("mounting"))
        name = joined([mounting, self.capture.text("vehicle") or self.capture.title], ", ") or say(
            "without a name"
        )
        if self.good:
            return say("Another sensor, in which no fault was found: {name} ({date})", name=name, date=date)
        return say("Another sensor: {name} ({date})", name=name, date=date)


def _same_place(one: Capture, two: Capture) -> bool:
    """Whether two captures are of one sensor's place in one car, as far as they say what they are of."""
    same = all(one.text(key) and one.text(key) == two.text(key) for key in ("registration", "sensor"))
    return same and one.text("mounting") == two.text("mounting")


def _follows(later: Capture, earlier: Capture) -> bool:
    return later.text("created") > earlier.text("created") != ""


def _side(capture: Capture) -> str:
    """``"left"`` or ``"right"``, as the capture says where it was mounted; empty where it says neither."""
    words = capture.text("mounting").lower().split()
    return next((side for side in ("left", "right") if side in words), "")
