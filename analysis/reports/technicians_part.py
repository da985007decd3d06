"""What the technician said of the findings and of the words, and what their markers read."""

from __future__ import annotations

from collections.abc import Iterator

from analysis.reports.confidence import in_words
from analysis.reports.customer_page import program_words
from analysis.reports.marker_readings import in_brief
from analysis.reports.pages import Block, Heading, Items
from analysis.reports.quantities import travel
from analysis.reports.subject import Subject
from analysis.review.model import Choice, Decision, Marker
from analysis.wording import say

_CHOICES = {
    Choice.ACCEPTED: say("accepted by the technician"),
    Choice.ADJUSTED: say("edges adjusted by the technician"),
    Choice.DISMISSED: say("dismissed by the technician"),
}


def what_was_said(subject: Subject) -> Iterator[Block]:
    """What the technician said of the findings and of the words, beside what the program said."""
    items = [_decision(item) for item in subject.review.decisions]
    own = subject.review.job.words
    for key, text in program_words(subject).items():
        if key in own:
            items.append(
                say("Words of page one changed by the technician. The program's were: {text}", text=text)
            )
    items.extend(_marker(marker, subject) for marker in subject.review.markers)
    if items:
        yield Heading(say("What the technician said"))
        yield Items(tuple(items))


def _marker(marker: Marker, subject: Subject) -> str:
    words, brief = (
        ": ".join(part for part in (marker.label, marker.note) if part),
        in_brief(marker, subject),
    )
    if not words:
        return say("Marker of the technician, {readings}", readings=brief)
    return say("Marker of the technician: {words} ({readings})", words=words, readings=brief)


def _decision(decision: Decision) -> str:
    text = say(
        "Band at {place}, {sure}: {choice}",
        place=travel(decision.found),
        sure=in_words(decision.confidence),
        choice=_CHOICES[decision.choice],
    )
    if decision.adjusted is not None:
        return say("{first}, to {place}.", first=text, place=travel(decision.adjusted))
    return say("{first} ({reason}).", first=text, reason=decision.reason) if decision.reason else text
