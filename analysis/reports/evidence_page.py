"""Page two: what a sceptical dealer or a warranty desk asks for."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from analysis.captures.known_words import known_word
from analysis.captures.record_names import names_in_row, record_names
from analysis.diagnosis.findings import Findings, Result, State, VerdictCode
from analysis.reports.cautions import cautions
from analysis.reports.checks import check_title
from analysis.reports.comparison_report import comparison_report
from analysis.reports.confidence import Grade, grade, odds
from analysis.reports.contrary import against
from analysis.reports.customer_words import capped_grade
from analysis.reports.document import Section, Table
from analysis.reports.fault_codes import code_meaning, fault_codes
from analysis.reports.findings_report import findings_report
from analysis.reports.how_measured import how_measured
from analysis.reports.marker_readings import marker_readings
from analysis.reports.pages import (
    Block,
    Columns,
    Facts,
    Grid,
    Heading,
    Items,
    Page,
    Paragraph,
    Picture,
    Style,
)
from analysis.reports.report_pictures import COLUMN_WIDTH, other_picture
from analysis.reports.subject import Beside, Subject
from analysis.reports.technicians_part import what_was_said
from analysis.reports.verdicts import headline, not_claimed, verdict_title
from analysis.wording import joined, say

_FACTS = (
    ("vehicle", say("Vehicle")),
    ("vin", say("VIN")),
    ("registration", say("Registration")),
    ("odometer", say("Odometer")),
    ("job", say("Job")),
    ("date", say("Measured on")),
    ("technician", say("Technician")),
    ("sensor", say("Sensor")),
    ("mounting", say("Mounting")),
    ("part_number", say("Part number")),
    ("earlier_repairs", say("Earlier repairs")),
)
PROVES = say(
    "A fingerprint proves that the file is unchanged since the fingerprint was taken. It does not prove who"
    " took it, nor that the capture was true."
)
"""What the hashes prove, and what they do not."""

GRADES = {
    Grade.VERY_LIKELY: say("very likely"),
    Grade.LIKELY: say("likely"),
    Grade.MORE_LIKELY_THAN_NOT: say("more likely than not"),
    Grade.POSSIBLE: say("possible"),
    Grade.NOT_RATED: say("not rated"),
}
_WIDTHS = {
    "Bands": (1.5, 1.0, 1.3, 0.9, 1.7, 1.2, 0.9, 1.0),
    "Checks": (0.7, 1.8, 1.4, 1.6, 0.8, 2.6, 0.9),
    "Chain of evidence": (0.9, 5.0, 1.3),
}
_STATE_HEADS = {State.REFUTED: say("Not as it should be"), State.PROVED: say("Proved")}
_SURE = say(
    "Within limits: how probable it is, given the reading and its uncertainty, that the true value keeps its"
    " limits. Pass takes 98 in 100 for it, fail 98 in 100 against it; anything between cannot be told."
    " Not judged is a reading that keeps its limits, but leaves out what goes beyond them, and one that is"
    " not the wire's."
)
_WHOSE = say(
    "A limit that names a maker and a model is that maker's published service figure. Where it is another"
    " model than this car, it stands in for this car's own, which was not at hand."
)
_FROM_MEMORY = say(
    "The names of the codes were written down from memory and not held against the standard: where it"
    " matters, look them up in SAE J2012 (ISO 15031-6)."
)
_REPAIRS_UNKNOWN = say("none disclosed")


def evidence_page(subject: Subject, beside: Beside | None = None) -> Page:
    """Page two of a report; it goes on over further sheets where it must."""
    report = findings_report(
        subject.findings, subject.capture, assumptions=subject.assumptions, why=subject.why
    )
    by_title = {section.title: section for section in report.sections}
    picture = other_picture(subject, beside)
    wide, narrow = _by_width(picture)
    shown = (
        *narrow,
        *_section(by_title.get("Travel tested")),
        *_evidence(subject),
        *_section(by_title.get("Why it comes and goes")),
    )
    told = (
        *_section(by_title.get("What to do next")),
        *what_was_said(subject),
        *_section(by_title.get("Taken as given")),
        Heading(say("For whoever measures this again")),
        Items(cautions(" ".join([subject.capture.text("profile"), subject.capture.text("sensor")]))),
    )
    compared = tuple(_comparison(subject, beside))
    blocks = (
        Paragraph(capped_headline(subject.findings), Style.LEAD),
        *(Paragraph(text) for text in _hedged(subject.findings, report.lead)),
        Paragraph(not_claimed(subject.findings.verdict.code), Style.SMALL),
        *_the_car(subject),
        *_in_columns(how_measured(subject)),
        *_section(by_title.get("Checks")),
        *((Paragraph(_SURE, Style.SMALL), Paragraph(_WHOSE, Style.SMALL)) if subject.findings.checks else ()),
        *_failed_yet_sound(subject.findings),
        *_section(by_title.get("Bands")),
        *wide,
        *((Columns(shown), *compared, Columns(told)) if compared else (Columns((*shown, *told)),)),
        *marker_readings(subject),
        *_fingerprints(subject),
    )
    return Page(say("Evidence"), blocks)


def _in_columns(blocks: Iterator[Block]) -> tuple[Block, ...]:
    made = tuple(blocks)
    return (Columns(made),) if made else ()


def _by_width(picture: Picture | None) -> tuple[tuple[Picture, ...], tuple[Picture, ...]]:
    """The picture as one that needs the whole width, or as one for a column."""
    if picture is None:
        return (), ()
    return ((picture,), ()) if picture.drawing.width > COLUMN_WIDTH else ((), (picture,))


def capped_headline(findings: Findings) -> str:
    """Verdict and confidence; where what it rests on was not shown, the words stay below the odds."""
    words, confidence = capped_grade(findings), findings.verdict.confidence
    if findings.verdict.code is VerdictCode.MEASUREMENT_PROBLEM and words is not Grade.NOT_RATED:
        return say(
            "{verdict}: this measurement is {words} not usable ({odds} in 100)",
            verdict=verdict_title(findings),
            words=GRADES[words],
            odds=odds(confidence),
        )
    if words is grade(confidence):
        return headline(findings)
    return say(
        "{verdict}: {words} at most, as something was not shown ({odds} in 100 by what was recorded)",
        verdict=verdict_title(findings),
        words=GRADES[words],
        odds=odds(confidence),
    )


def _hedged(findings: Findings, lead: Sequence[str]) -> tuple[str, ...]:
    """The sentences below the headline; what is less than likely is said to be no proof."""
    decided = findings.verdict.code not in (VerdictCode.INCONCLUSIVE, VerdictCode.MEASUREMENT_PROBLEM)
    if not decided or capped_grade(findings) in (Grade.VERY_LIKELY, Grade.LIKELY):
        return tuple(lead)
    return (say("What was recorded points to this, and does not prove it."), *lead)


def _failed_yet_sound(findings: Findings) -> Iterator[Block]:
    """A failed check beside "no fault found" asks for a word."""
    failed = [check for check in findings.checks if check.result is Result.FAIL]
    if failed and findings.verdict.code is VerdictCode.NO_FAULT_FOUND:
        titles = joined(dict.fromkeys(check_title(check) for check in failed), ", ")
        yield Paragraph(
            say(
                "Failed, and yet not held against the sensor: {titles}. What disturbed these readings came"
                " and went in time and belongs to no place on the travel.",
                titles=titles,
            ),
            Style.SMALL,
        )


def _section(section: Section | None) -> Iterator[Block]:
    if section is None or section.empty:
        return
    yield Heading(section.title)
    yield from (Paragraph(text, Style.SMALL) for text in section.sentences)
    if section.items:
        yield Items(section.items)
    if section.table is not None and section.table.rows:
        widths = _WIDTHS.get(section.title, (1.0,) * len(section.table.heads))
        if len(widths) != len(section.table.heads):
            widths = (1.0,) * len(section.table.heads)
        yield Grid(section.table, widths)


def _the_car(subject: Subject) -> Iterator[Block]:
    rows = [(name, known_word(subject.fact(key))) for key, name in _FACTS]
    shown = [(name, value or (_REPAIRS_UNKNOWN if name == "Earlier repairs" else "")) for name, value in rows]
    yield Heading(say("The car and the job"))
    yield Facts(tuple((name, value) for name, value in shown if value))
    codes = fault_codes(subject.fact("fault_codes"))
    meanings = [code_meaning(code) for code in codes]
    if any(meanings):
        table = Table(
            (say("Fault code"), say("The standard's wording (SAE J2012), from memory")),
            tuple((code, meaning or "–") for code, meaning in zip(codes, meanings, strict=True)),
        )
        yield Grid(table, (1.0, 5.0))
        yield Paragraph(_FROM_MEMORY, Style.SMALL)
    elif codes:
        yield Paragraph(say("Fault codes: {codes}", codes=", ".join(codes)), Style.SMALL)


def _evidence(subject: Subject) -> Iterator[Block]:
    evidence, names = subject.findings.evidence, record_names(subject.capture)
    missing = [item for item in evidence if item.state is State.NOT_SHOWN]
    if len(missing) < len(evidence):
        yield Heading(say("What was shown or ruled out, and by which record"))
    contrary = against(subject.findings)
    others = [item for item in evidence if item not in contrary]
    for head, items in (
        (say("Speaks against the verdict"), contrary),
        *((_STATE_HEADS[state], [item for item in others if item.state is state]) for state in _STATE_HEADS),
    ):
        rows = tuple((item.text, names_in_row(item.records, names)) for item in items)
        if rows:
            yield Grid(Table((head, say("Records")), rows), (4.4, 2.1))
    if missing:
        yield Heading(say("What was not tested, or not shown"))
        yield Items(tuple(item.text for item in missing))


def _comparison(subject: Subject, beside: Beside | None) -> Iterator[Block]:
    if beside is None:
        return
    yield Heading(say("What it was set beside"))
    yield Facts(
        (
            (say("Capture"), beside.capture.title or beside.findings.path),
            (say("Found there"), headline(beside.findings)),
            (say("SHA-256 of its file"), beside.findings.sha256),
        )
    )
    report = comparison_report(beside.compared(subject))
    yield from (Paragraph(text) for text in report.lead)
    for section in report.sections:
        if section.title != "Compared":
            yield from _section(section)


def _fingerprints(subject: Subject) -> Iterator[Block]:
    """The hashes a line each, so that they can be read aloud and copied whole; what else it was made by."""
    findings = subject.findings
    hashes = (
        (say("SHA-256 of the file"), findings.sha256),
        (say("Fingerprint of the content"), subject.review.content_sha256),
    )
    others = (
        (say("Capture"), findings.capture_id),
        (say("Sensor profile"), findings.profile),
        (say("Analysis version"), findings.analysis_version),
    )
    yield Heading(say("What this was made from"))
    for rows in (hashes, others):
        known = tuple((name, value) for name, value in rows if value)
        if known:
            yield Facts(known)
    yield Paragraph(PROVES, Style.SMALL)
