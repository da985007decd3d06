"""The door of the comparison: two sides go in, a `Comparison` comes out."""

from __future__ import annotations

from collections.abc import Iterator

import analysis
from analysis.captures.model import Role
from analysis.captures.record_names import called, record_names, the_record
from analysis.captures.verification import content_sentence
from analysis.comparison.bands import LIKELY, compare_bands
from analysis.comparison.checks import compare_checks, levels_that_differ
from analysis.comparison.model import Compared, Comparison, Relation
from analysis.comparison.pairing import Pairing, pairing_of, taken_as_one, why_not
from analysis.comparison.positions import apart, stated_as_one
from analysis.comparison.side import Side, survey_of
from analysis.comparison.words import summary_words
from analysis.diagnosis.findings import Findings, VerdictCode
from analysis.diagnosis.summary import coverage
from analysis.intervals import Interval, union
from analysis.wording import Wording, joined, say


def compare(first: Side, second: Side, *, relation: Relation = Relation.BEFORE_AFTER) -> Comparison:
    """Set two captures, or two records, against each other.

    No sample is read: all of it rests on the findings, so it takes milliseconds.

    Parameters
    ----------
    first, second : Side
        Before and after, left and right, or the known good one and the one in question.
    relation : Relation
        How they belong together; it decides the words, not the numbers. Where the captures state two sensor
        positions, nothing is told as before and after, and where they state one, nothing as left and right.

    Returns
    -------
    Comparison

    Raises
    ------
    KeyError
        Where a side names a record that its capture does not have.
    """
    positions = first.position(), second.position()
    pairing = pairing_of(relation, *positions)
    bands = compare_bands(first, second, pairing)
    checks = compare_checks(first, second)
    both = tested_by_both(first.seen(), second.seen())
    sides = (_compared(first), _compared(second))
    likely = [item for item in bands if item.confidence >= LIKELY]
    return Comparison(
        relation=pairing.relation,
        asked=relation,
        names=pairing.names,
        titles=pairing.titles,
        one_position=_one_position(first, second),
        first=sides[0],
        second=sides[1],
        bands=bands,
        checks=checks,
        tested_by_both=both,
        summary=summary_words(sides, likely, levels_that_differ(checks), both, pairing),
        cautions=tuple(_cautions(first, second, relation, pairing)),
        analysis_version=analysis.__version__,
    )


def tested_by_both(first: Findings, second: Findings) -> tuple[Interval, ...]:
    """Travel that the same track was crossed in on both sides, in %, ascending; empty where none was."""
    ours, theirs = _tested(first), _tested(second)
    shared = [
        Interval(max(one.start, two.start), min(one.stop, two.stop))
        for one in ours
        for two in theirs
        if one.overlap(two) > 0.0
    ]
    return union(shared)


def _tested(findings: Findings) -> tuple[Interval, ...]:
    track = next((role for role in (Role.SIGNAL, Role.SECOND_SIGNAL) if survey_of(findings, role)), None)
    spans = coverage(survey_of(findings, track)) if track is not None else ()
    return union(item.travel for item in spans)


def _compared(side: Side) -> Compared:
    findings = side.findings
    return Compared(
        path=findings.path,
        capture_id=findings.capture_id,
        sha256=findings.sha256,
        title=side.capture.title,
        record=side.record,
        mirrored=side.mirrored,
        verdict=findings.verdict,
        content=side.capture.content,
        evidence=findings.evidence,
        position=side.position(),
        called=record_names(side.capture),
    )


def _one_position(first: Side, second: Side) -> bool | None:
    positions = first.position(), second.position()
    return False if apart(*positions) else stated_as_one(*positions) or None


def _cautions(first: Side, second: Side, asked: Relation, pairing: Pairing) -> Iterator[Wording]:
    positions = first.position(), second.position()
    if said := why_not(asked, *positions):
        yield said
    for side, title in zip((first, second), pairing.titles, strict=True):
        if side.findings.verdict.code is VerdictCode.MEASUREMENT_PROBLEM:
            summary = side.findings.verdict.summary
            yield say("{title}: measurement problem. {summary}", title=title, summary=summary)
        if told := content_sentence(side.capture.content, side.capture.title or side.findings.path):
            yield say("{title}: {told}", title=title, told=told)
    names = (first.findings.profile, second.findings.profile)
    if names[0] != names[1]:
        yield say(
            "The sides were judged by different sensor profiles, {one} and {two}: limits may differ.",
            one=names[0],
            two=names[1],
        )
    if pairing.relation is not Relation.LEFT_RIGHT and first.mirrored != second.mirrored:
        yield say("One side is mirrored: its travel is counted from the other end.")
    if _what(first) == _what(second):
        yield say("Both sides are the same capture.")
    elif first.capture is not second.capture and (said := taken_as_one(pairing.relation, *positions)):
        yield said
    if first.record or second.record:
        records = [_part_named(item) for item in (first, second)]
        yield say(
            "Only part of a capture is compared: {records}; verdicts and confidence are of the whole.",
            records=joined(records, ", "),
        )


def _part_named(side: Side) -> str:
    if not side.record:
        return say("all records")
    return called(the_record(side.record), record_names(side.capture))


def _what(side: Side) -> tuple[str, str, str]:
    return side.findings.capture_id, side.record, str(side.track)
