"""Findings laid out as a report: the verdict first, then what it stands on, then what to do next."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import PurePath

from analysis.captures.known_words import known_word
from analysis.captures.model import Capture, Role
from analysis.captures.record_names import Names, called, names_in_row, record_names
from analysis.captures.verification import content_sentence
from analysis.diagnosis.findings import Band, CoverageSpan, Findings
from analysis.intervals import Interval
from analysis.reports.cautions import cautions
from analysis.reports.checks import (
    check_reading,
    check_subject,
    conformance_share,
    decision_name,
    limit_text,
    state_name,
)
from analysis.reports.confidence import in_words
from analysis.reports.contrary import contrary_line, told_in_order
from analysis.reports.document import Report, Section, Table
from analysis.reports.pages import spoken
from analysis.reports.quantities import (
    A_CROSSING,
    NO_VALUE,
    crossings,
    number,
    quantity,
    share_of,
    stretch,
    travel,
    volts,
)
from analysis.reports.verdicts import headline, is_watched, not_claimed
from analysis.wording import Wording, joined, plural, say

_SUBJECT = (
    (say("Vehicle"), "vehicle"),
    (say("Registration"), "registration"),
    (say("VIN"), "vin"),
    (say("Odometer, km"), "odometer_km"),
    (say("Job"), "job"),
    (say("Complaint"), "complaint"),
    (say("Fault codes"), "fault_codes"),
    (say("Sensor"), "sensor"),
    (say("Mounting"), "mounting"),
    (say("Part number"), "part_number"),
    (say("Recorder"), "recorder"),
    (say("Recorder serial"), "recorder_serial"),
    (say("Recorder calibrated"), "recorder_calibrated"),
)
"""What a capture may say about the visit (the capture format's own keys), in the order of the report."""

ENOUGH_CROSSINGS = 3
"""A stretch that was crossed less often says little: one odd moment looks like a place (our own choice)."""

TOUCHING_PERCENT = 0.1
"""Stretches of travel that lie no further apart are one."""


def findings_report(
    findings: Findings, capture: Capture, *, assumptions: Sequence[str] = (), why: Sequence[str] = ()
) -> Report:
    """Everything that the findings say, in the order in which a reader asks for it.

    Parameters
    ----------
    findings : Findings
        Of `capture`.
    capture : Capture
        For its title and attributes; no sample is read.
    assumptions : sequence of str
        What stood in for things that the file does not state.
    why : sequence of str
        Why it comes and goes, where that is known.

    Returns
    -------
    Report
        Sections without content are left out.
    """
    names = record_names(capture)
    sections = (
        _bands(findings, names),
        _evidence(findings, names),
        _checks(findings, names),
        _tested(findings),
        Section(say("Why it comes and goes"), items=tuple(why)),
        Section(say("What this does not say"), (not_claimed(findings.verdict.code),)),
        Section(say("What to do next"), items=findings.advice),
        Section(say("Taken as given"), items=tuple(assumptions)),
        Section(say("Made from"), items=_made_from(findings)),
    )
    made = Report(
        title=capture.title or findings.path or say("Capture"),
        subject=subject(capture),
        headline=headline(findings),
        lead=(*altered(findings, capture), *_lead(findings)),
        sections=tuple(item for item in sections if not item.empty),
    )
    with_names = spoken(made, lambda text: called(text, names))
    assert isinstance(with_names, Report)
    return with_names


def altered(findings: Findings, capture: Capture) -> tuple[str, ...]:
    """What speaks against the capture as evidence, in a sentence; nothing where nothing does."""
    told = content_sentence(capture.content, PurePath(findings.path or "").name or capture.title)
    return (told,) if told else ()


def subject(capture: Capture) -> tuple[tuple[str, str], ...]:
    """Name and value of what the capture says about the vehicle and the visit."""
    said = ((name, known_word(capture.text(key).strip())) for name, key in _SUBJECT)
    return tuple((name, value) for name, value in said if value)


def cautions_section(capture: Capture) -> Section:
    """The cautions for the work on this sensor."""
    described = " ".join([capture.text("profile"), capture.text("sensor"), capture.title])
    return Section(say("Before you connect or sweep"), items=cautions(described))


def band_sentence(band: Band) -> Wording:
    """One band in one sentence; a band below 0.5 is "possible" and to be watched."""
    return say(
        "{kind}: {travel}, {volts} on the {track}; {confidence}; breaks up on {noisy} of {crossings}{falls}.",
        kind=say("Possible band, watch it") if is_watched(band) else say("Band"),
        travel=travel(band.travel),
        volts=volts(band.volts),
        track=_TRACKS[band.track],
        confidence=in_words(band.confidence),
        noisy=band.noisy_passes,
        crossings=crossings(band.passes),
        falls=_FALLS.get(band.falls_towards, ""),
    )


_FALLS = {
    "ground": say(", towards ground"),
    "reference": say(", towards the reference"),
    "both": say(", both ways"),
}

_TRACKS = {
    Role.SIGNAL: say("signal"),
    Role.SECOND_SIGNAL: say("second signal"),
    Role.REFERENCE: say("reference"),
    Role.GROUND: say("ground"),
    Role.SUPPLY: say("supply"),
}


def _lead(findings: Findings) -> tuple[str, ...]:
    causes = findings.verdict.possible_causes
    behind = say("Possible causes, likeliest first: {causes}.", causes=joined(causes, "; ")) if causes else ""
    told = (contrary_line(findings), findings.verdict.summary, behind)
    return tuple(text for text in told if text)


def _bands(findings: Findings, names: Names) -> Section:
    heads = (
        say("% of travel"),
        say("Edges ±"),
        say("Volts"),
        say("Track"),
        say("Confidence"),
        say("Breaks up on"),
        say("Worst"),
        say("Record"),
    )
    rows = tuple(_band_row(band, findings, names) for band in findings.bands)
    return Section(say("Bands"), (A_CROSSING,) if rows else (), table=Table(heads, rows))


def _band_row(band: Band, findings: Findings, names: Names) -> tuple[str, ...]:
    sure = in_words(band.confidence)
    spread = (band.start_uncertainty_percent, band.stop_uncertainty_percent)
    return (
        stretch(band.travel, 1),
        joined((number(item, 1) for item in spread), ", "),
        volts(band.volts),
        _TRACKS[band.track],
        say("{confidence}, watch", confidence=sure) if is_watched(band) else sure,
        say("{noisy} of {passes}", noisy=band.noisy_passes, passes=band.passes),
        _worst(band, findings),
        names_in_row([band.record], names),
    )


def _worst(band: Band, findings: Findings) -> str:
    """The band's worst output smoothness; a dash where it is less than what could be seen at all."""
    floors = [survey.floor_percent for survey in findings.surveys if survey.role is band.track]
    if band.output_smoothness_percent < max(floors, default=0.0):
        return NO_VALUE
    return say("{percent} %", percent=number(band.output_smoothness_percent, 1))


def _evidence(findings: Findings, names: Names) -> Section:
    rows = tuple(
        (state_name(item.state), item.text, names_in_row(item.records, names))
        for item in told_in_order(findings)
    )
    heads = (say("State"), say("Statement"), say("Records"))
    return Section(say("Chain of evidence"), table=Table(heads, rows))


def _checks(findings: Findings, names: Names) -> Section:
    heads = (
        say("Result"),
        say("Check"),
        say("Reading"),
        say("Allowed"),
        say("Within limits"),
        say("Whose limit"),
        say("Record"),
    )
    rows = tuple(
        (
            decision_name(check),
            check_subject(check),
            check_reading(check),
            limit_text(check),
            conformance_share(check),
            check.source or say("not stated"),
            names_in_row([check.record], names) if check.record else say("all"),
        )
        for check in findings.checks
    )
    return Section(say("Checks"), table=Table(heads, rows))


def _tested(findings: Findings) -> Section:
    items = tuple(coverage_sentence(whole, seldom) for whole, seldom in _joined(findings.coverage))
    floors = tuple(
        say(
            "Break-up below {floor} {of} cannot be seen on the {track} in this capture.",
            floor=quantity(survey.floor_percent, "%"),
            of=share_of(survey),
            track=_TRACKS[survey.role],
        )
        for survey in findings.surveys
    )
    none = () if findings.coverage else (say("No travel was tested."),)
    return Section(say("Travel tested"), (*none, *floors), items)


def coverage_sentence(whole: CoverageSpan, seldom: Sequence[CoverageSpan] = ()) -> Wording:
    """A stretch without a gap: how often the arm went over all of it, and where it did so too seldom."""
    least = plural("tested once", "tested {count} times", count=whole.passes)
    if not seldom:
        return say("{travel}: {tested} or more everywhere", travel=travel(whole.travel), tested=least)
    places = (
        say("{stretch} % ({passes})", stretch=stretch(span.travel, 1), passes=span.passes) for span in seldom
    )
    return say(
        "{travel}: {tested} or more; less than {enough} times at {places}",
        travel=travel(whole.travel),
        tested=least,
        enough=ENOUGH_CROSSINGS,
        places=joined(places, ", "),
    )


def _joined(
    coverage: Sequence[CoverageSpan],
) -> tuple[tuple[CoverageSpan, tuple[CoverageSpan, ...]], ...]:
    """Stretches that touch as one, with the parts of it that were crossed too seldom."""
    groups: list[list[CoverageSpan]] = []
    for span in sorted(coverage, key=lambda item: item.travel):
        if groups and span.travel.start <= groups[-1][-1].travel.stop + TOUCHING_PERCENT:
            groups[-1].append(span)
        else:
            groups.append([span])
    return tuple((_whole(group), _seldom(group)) for group in groups)


def _whole(group: Sequence[CoverageSpan]) -> CoverageSpan:
    reach = Interval(group[0].travel.start, max(span.travel.stop for span in group))
    return CoverageSpan(reach, min(span.passes for span in group))


def _seldom(group: Sequence[CoverageSpan]) -> tuple[CoverageSpan, ...]:
    """Parts below `ENOUGH_CROSSINGS`, neighbours joined under the least of them."""
    few: list[CoverageSpan] = []
    for span in group:
        if span.passes >= ENOUGH_CROSSINGS:
            continue
        if few and span.travel.start <= few[-1].travel.stop + TOUCHING_PERCENT:
            few[-1] = _whole([few[-1], span])
        else:
            few.append(span)
    return tuple(few)


def _made_from(findings: Findings) -> tuple[str, ...]:
    known = (
        (say("Capture"), findings.capture_id),
        (say("SHA-256 of the file"), findings.sha256),
        (say("Sensor profile"), findings.profile),
        (say("Analysis version"), findings.analysis_version),
    )
    return tuple(say("{name}: {value}", name=name, value=value) for name, value in known if value)
