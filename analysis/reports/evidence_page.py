"""Page two: what a sceptical dealer or a warranty desk asks for."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from analysis.captures.known_words import known_word
from analysis.captures.model import Channel, Record, Role, Step
from analysis.diagnosis.findings import Findings, Result, State, VerdictCode
from analysis.reports.cautions import cautions
from analysis.reports.checks import check_title, state_name
from analysis.reports.comparison_report import comparison_report
from analysis.reports.confidence import Grade, grade, in_words, odds
from analysis.reports.customer_page import program_words
from analysis.reports.customer_words import capped_grade
from analysis.reports.document import Section, Table
from analysis.reports.fault_codes import code_meaning, fault_codes
from analysis.reports.findings_report import findings_report
from analysis.reports.pages import Block, Facts, Grid, Heading, Items, Page, Paragraph, Style
from analysis.reports.quantities import names, travel
from analysis.reports.report_pictures import other_picture
from analysis.reports.subject import Beside, Subject
from analysis.reports.verdicts import headline, not_claimed, verdict_name
from analysis.review.model import Choice, Decision
from analysis.wording import Template, Wording, joined, say

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
_RECORDER = (
    ("recorder", say("Recorder")),
    ("recorder_serial", say("Serial number")),
    ("recorder_calibrated", say("Calibrated")),
)
PROVES = say(
    "A fingerprint proves that the file is unchanged since the fingerprint was taken. It does not prove who"
    " took it, nor that the capture was true."
)
"""What the hashes prove, and what they do not."""

_CHOICES = {
    Choice.ACCEPTED: say("accepted by the technician"),
    Choice.ADJUSTED: say("edges adjusted by the technician"),
    Choice.DISMISSED: say("dismissed by the technician"),
}
GRADES = {
    Grade.VERY_LIKELY: say("very likely"),
    Grade.LIKELY: say("likely"),
    Grade.MORE_LIKELY_THAN_NOT: say("more likely than not"),
    Grade.POSSIBLE: say("possible"),
    Grade.NOT_RATED: say("not rated"),
}
_WIDTHS = {
    "Bands": (1.5, 1.0, 1.3, 0.9, 1.7, 1.2, 0.9, 0.8),
    "Checks": (0.9, 1.9, 1.8, 1.7, 2.6, 0.7),
    "Chain of evidence": (0.9, 5.0, 1.3),
}
_ROLES = {
    Role.SIGNAL: say("signal"),
    Role.SECOND_SIGNAL: say("second signal"),
    Role.REFERENCE: say("reference"),
    Role.GROUND: say("ground"),
    Role.SUPPLY: say("supply"),
}
_STEPS = {
    Step.ZERO: say("zero"),
    Step.CHECK: say("check"),
    Step.GROUND: say("ground"),
    Step.REFERENCE: say("reference"),
    Step.WIGGLE: say("wiggle"),
    Step.SWEEP: say("sweep"),
    Step.HOLD: say("hold"),
    Step.ROAD: say("road"),
    Step.TAP: say("tap"),
    Step.HEAT: say("heat"),
    Step.COLD: say("cold"),
    Step.WET: say("wet"),
    Step.UNPLUGGED: say("unplugged"),
}
_WHOSE = say(
    "A limit that names a maker and a model is that maker's published service figure. Where it is another"
    " model than this car, it stands in for this car's own, which was not at hand."
)
_REPAIRS_UNKNOWN = say("none disclosed")


def evidence_page(subject: Subject, beside: Beside | None = None) -> Page:
    """Page two of a report; it goes on over further sheets where it must."""
    report = findings_report(
        subject.findings, subject.capture, assumptions=subject.assumptions, why=subject.why
    )
    by_title = {section.title: section for section in report.sections}
    blocks = (
        Paragraph(capped_headline(subject.findings), Style.LEAD),
        *(Paragraph(text) for text in report.lead),
        Paragraph(not_claimed(subject.findings.verdict.code), Style.SMALL),
        *_the_car(subject),
        *_how_measured(subject),
        *_section(by_title.get("Checks")),
        *((Paragraph(_WHOSE, Style.SMALL),) if subject.findings.checks else ()),
        *_failed_yet_sound(subject.findings),
        *_bands(subject, beside, by_title),
        *_evidence(subject),
        *_section(by_title.get("Why it comes and goes")),
        *_comparison(subject, beside),
        *_section(by_title.get("What to do next")),
        *_changes(subject),
        *_section(by_title.get("Taken as given")),
        *_fingerprints(subject, beside),
        Heading(say("For whoever measures this again")),
        Items(cautions(" ".join([subject.capture.text("profile"), subject.capture.text("sensor")]))),
    )
    return Page(say("Evidence"), blocks)


def capped_headline(findings: Findings) -> str:
    """Verdict and confidence; where what it rests on was not shown, the words stay below the odds."""
    words, confidence = capped_grade(findings), findings.verdict.confidence
    if words is grade(confidence):
        return headline(findings)
    return say(
        "{verdict}: {words}, for want of something that was not shown ({odds} in 100 by what was recorded)",
        verdict=verdict_name(findings.verdict.code),
        words=GRADES[words],
        odds=odds(confidence),
    )


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
    rows = [(name, subject.fact(key)) for key, name in _FACTS]
    shown = [(name, value or (_REPAIRS_UNKNOWN if name == "Earlier repairs" else "")) for name, value in rows]
    yield Heading(say("The car and the job"))
    yield Facts(tuple((name, value) for name, value in shown if value))
    codes = fault_codes(subject.fact("fault_codes"))
    meanings = [code_meaning(code) for code in codes]
    if any(meanings):
        table = Table(
            (say("Fault code"), say("The standard's wording (SAE J2012)")),
            tuple((code, meaning or "–") for code, meaning in zip(codes, meanings, strict=True)),
        )
        yield Grid(table, (1.0, 5.0))
    elif codes:
        yield Paragraph(say("Fault codes: {codes}", codes=", ".join(codes)), Style.SMALL)


def _how_measured(subject: Subject) -> Iterator[Block]:
    capture = subject.capture
    yield Heading(say("How it was measured"))
    rows = [(name, capture.text(key).strip()) for key, name in _RECORDER]
    states = {_state(item) for item in capture.records}
    if len(states) == 1 and "" not in states:
        rows.append((say("State of the car"), states.pop()))
    load = subject.fact("load")
    if load:
        rows.append((say("Load"), load))
    known = tuple((name, value) for name, value in rows if value)
    if known:
        yield Facts(known)
    wires = tuple(dict.fromkeys(_wire(channel) for item in capture.records for channel in item.channels))
    if wires:
        heads = (
            say("Wire"),
            say("Plug and pin"),
            say("Probed at"),
            say("Against"),
            say("Accuracy"),
        )
        yield Grid(Table(heads, wires), (1.6, 1.6, 1.5, 1.5, 2.2))
    if capture.records:
        outcomes = {item.record: item.text for item in subject.findings.record_outcomes}
        yield _records(capture.records, outcomes)


def _wire(channel: Channel) -> tuple[str, ...]:
    def said(key: str) -> str:
        return str(channel.attributes.get(key, "")).strip()

    role = _ROLES.get(channel.role, channel.name) if channel.role is not None else channel.name
    pin = " ".join(part for part in (said("connector"), said("pin")) if part)
    colour = said("wire_colour")
    return (
        joined([role, colour], ", "),
        pin or "–",
        known_word(said("probe_point")) or "–",
        known_word(said("return_point")) or "–",
        _accuracy(channel),
    )


def _accuracy(channel: Channel) -> str:
    if channel.gain_error is None or channel.offset_error_v is None:
        return say("not stated; assumed")
    return say(
        "±({gain_percent:g} % + {offset_mv:g} mV), stated",
        gain_percent=round(100.0 * channel.gain_error, 6),
        offset_mv=round(1e3 * channel.offset_error_v, 6),
    )


def _records(records: Sequence[Record], outcomes: Mapping[str, str]) -> Grid:
    """What was done in each record, and what it showed; the car's state where it changed."""
    rows = [_record(item, outcomes.get(item.name, "–")) for item in records]
    heads = (say("Record"), say("What was done"), say("State of the car"), say("What it showed"))
    if len({row[2] for row in rows}) == 1:
        rows = [(row[0], row[1], row[3]) for row in rows]
        return Grid(Table((heads[0], heads[1], heads[3]), tuple(rows)), (0.8, 4.4, 4.0))
    return Grid(Table(heads, tuple(rows)), (0.8, 2.8, 3.2, 2.6))


def _record(record: Record, outcome: str) -> tuple[str, ...]:
    step = _STEPS.get(record.step, "") if record.step is not None else ""
    label = record.label.strip()
    repeated = record.step is not None and label.lower().startswith(record.step.value)
    done = label if repeated else joined([step, label], ": ")
    return (record.name, done or "–", _state(record) or "–", outcome)


def _state(record: Record) -> str:
    plugged = record.attributes.get("plugged")
    parts: list[Wording] = []
    if plugged is not None:
        parts.append(say("plugged in") if str(plugged) in ("1", "1.0") else say("unplugged"))
    for key, template in _STATES.items():
        given = record.attributes.get(key, "")
        value = f"{given:g}" if isinstance(given, float) else str(given).strip()
        if value:
            parts.append(template(value=known_word(value)))
    return joined(parts, ", ")


_STATES = {
    "ignition": Template("ignition {value}"),
    "engine": Template("engine {value}"),
    "loads": Template("load: {value}"),
    "temperature": Template("{value} °C"),
}


def _bands(subject: Subject, beside: Beside | None, by_title: dict[str, Section]) -> Iterator[Block]:
    yield from _section(by_title.get("Bands"))
    made = other_picture(subject, beside)
    if made is not None:
        yield made
    yield from _section(by_title.get("Travel tested"))


def _evidence(subject: Subject) -> Iterator[Block]:
    shown = [item for item in subject.findings.evidence if item.state is not State.NOT_SHOWN]
    missing = [item for item in subject.findings.evidence if item.state is State.NOT_SHOWN]
    if shown:
        yield Heading(say("What was shown or ruled out, and by which record"))
        heads = (say("State"), say("Statement"), say("Records"))
        rows = tuple((state_name(item.state), item.text, names(item.records)) for item in shown)
        yield Grid(Table(heads, rows), (0.9, 5.2, 1.2))
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


def _changes(subject: Subject) -> Iterator[Block]:
    """What the technician said of the findings and of the words, beside what the program said."""
    items = [_decision(item) for item in subject.review.decisions]
    own = subject.review.job.words
    for key, text in program_words(subject).items():
        if key in own:
            items.append(
                say("Words of page one changed by the technician. The program's were: {text}", text=text)
            )
    for marker in subject.review.markers:
        words = ": ".join(part for part in (marker.label, marker.note) if part)
        if words:
            items.append(say("Marker of the technician: {words}", words=words))
    if items:
        yield Heading(say("What the technician said"))
        yield Items(tuple(items))


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


def _fingerprints(subject: Subject, beside: Beside | None) -> Iterator[Block]:
    findings = subject.findings
    rows: Sequence[tuple[str, str]] = (
        (say("SHA-256 of the file"), findings.sha256),
        (say("Fingerprint of the content"), subject.review.content_sha256),
        (say("Capture"), findings.capture_id),
        (say("Sensor profile"), findings.profile),
        (say("Analysis version"), findings.analysis_version),
    )
    yield Heading(say("What this was made from"))
    yield Facts(tuple((name, value) for name, value in rows if value))
    yield Paragraph(PROVES, Style.SMALL)
