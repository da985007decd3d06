"""Findings laid out as a report: the verdict first, then what it stands on, then what to do next."""

from __future__ import annotations

from collections.abc import Sequence

from analysis.captures.model import Capture, Role
from analysis.diagnosis.findings import Band, CoverageSpan, Findings
from analysis.intervals import Interval
from analysis.reports.cautions import cautions
from analysis.reports.checks import check_reading, check_title, limit_text, result_name, state_name
from analysis.reports.confidence import in_words
from analysis.reports.document import Report, Section, Table
from analysis.reports.quantities import count, names, number, quantity, travel, volts
from analysis.reports.verdicts import headline, is_watched, not_claimed

_SUBJECT = (
    ("Vehicle", "vehicle"),
    ("Registration", "registration"),
    ("VIN", "vin"),
    ("Odometer, km", "odometer_km"),
    ("Job", "job"),
    ("Complaint", "complaint"),
    ("Fault codes", "fault_codes"),
    ("Sensor", "sensor"),
    ("Mounting", "mounting"),
    ("Part number", "part_number"),
    ("Recorder", "recorder"),
    ("Recorder serial", "recorder_serial"),
    ("Recorder calibrated", "recorder_calibrated"),
)
"""What a capture may say about the visit (the capture format's own keys), in the order of the report."""

ENOUGH_CROSSINGS = 3
"""A stretch that was crossed less often says little: one odd moment looks like a place (our own choice)."""

TOUCHING_PERCENT = 0.1
"""Stretches of travel that lie no further apart are one."""


def findings_report(findings: Findings, capture: Capture, *, assumptions: Sequence[str] = ()) -> Report:
    """Everything that the findings say, in the order in which a reader asks for it.

    Parameters
    ----------
    findings : Findings
        Of `capture`.
    capture : Capture
        For its title and attributes; no sample is read.
    assumptions : sequence of str
        What stood in for things that the file does not state.

    Returns
    -------
    Report
        Sections without content are left out.
    """
    sections = (
        _bands(findings),
        _evidence(findings),
        _checks(findings),
        _tested(findings),
        Section("What this does not say", (not_claimed(findings.verdict.code),)),
        Section("What to do next", items=findings.advice),
        Section("Taken as given", items=tuple(assumptions)),
        Section("Made from", items=_made_from(findings)),
    )
    return Report(
        title=capture.title or findings.path or "Capture",
        subject=subject(capture),
        headline=headline(findings),
        lead=_lead(findings),
        sections=tuple(item for item in sections if not item.empty),
    )


def subject(capture: Capture) -> tuple[tuple[str, str], ...]:
    """Name and value of what the capture says about the vehicle and the visit."""
    said = ((name, capture.text(key).strip()) for name, key in _SUBJECT)
    return tuple((name, value) for name, value in said if value)


def cautions_section(capture: Capture) -> Section:
    """The cautions for the work on this sensor."""
    described = " ".join([capture.text("profile"), capture.text("sensor"), capture.title])
    return Section("Before you connect or sweep", items=cautions(described))


def band_sentence(band: Band) -> str:
    """One band in one sentence; a band below 0.5 is "possible" and to be watched."""
    kind = "Possible band, watch it" if is_watched(band) else "Band"
    return (
        f"{kind}: {travel(band.travel)}, {volts(band.volts)} on the {_track(band.track)};"
        f" {in_words(band.confidence)};"
        f" breaks up on {band.noisy_passes} of {count(band.passes, 'crossing', 'crossings')}{_falls(band)}."
    )


def _lead(findings: Findings) -> tuple[str, ...]:
    causes = findings.verdict.possible_causes
    behind = (f"Possible causes, likeliest first: {'; '.join(causes)}.",) if causes else ()
    return (findings.verdict.summary, *behind)


def _falls(band: Band) -> str:
    towards = {"ground": ", towards ground", "reference": ", towards the reference", "both": ", both ways"}
    return towards.get(band.falls_towards, "")


def _track(role: Role) -> str:
    return role.value.replace("_", " ")


def _bands(findings: Findings) -> Section:
    heads = ("% of travel", "Edges ±", "Volts", "Track", "Confidence", "Breaks up on", "Worst", "Record")
    return Section("Bands", table=Table(heads, tuple(_band_row(band) for band in findings.bands)))


def _band_row(band: Band) -> tuple[str, ...]:
    spread = (band.start_uncertainty_percent, band.stop_uncertainty_percent)
    return (
        travel(band.travel).removesuffix(" % of travel"),
        ", ".join(number(item, 1) for item in spread),
        volts(band.volts),
        _track(band.track),
        in_words(band.confidence) + (", watch" if is_watched(band) else ""),
        f"{band.noisy_passes} of {band.passes}",
        f"{number(band.output_smoothness_percent, 1)} %",
        band.record,
    )


def _evidence(findings: Findings) -> Section:
    rows = tuple((state_name(item.state), item.text, names(item.records)) for item in findings.evidence)
    return Section("Chain of evidence", table=Table(("State", "Statement", "Records"), rows))


def _checks(findings: Findings) -> Section:
    heads = ("Result", "Check", "Reading", "Allowed", "Whose limit", "Record")
    rows = tuple(
        (
            result_name(check.result),
            check_title(check),
            check_reading(check),
            limit_text(check),
            check.source or "not stated",
            check.record or "all",
        )
        for check in findings.checks
    )
    return Section("Checks", table=Table(heads, rows))


def _tested(findings: Findings) -> Section:
    items = tuple(coverage_sentence(whole, seldom) for whole, seldom in _joined(findings.coverage))
    floors = tuple(
        f"Break-up below {quantity(survey.floor_percent, '%')} of the applied voltage cannot be seen on the"
        f" {_track(survey.role)} in this capture."
        for survey in findings.surveys
    )
    none = () if findings.coverage else ("No travel was tested.",)
    return Section("Travel tested", (*none, *floors), items)


def coverage_sentence(whole: CoverageSpan, seldom: Sequence[CoverageSpan] = ()) -> str:
    """A stretch without a gap: its least count of crossings, and where it was crossed too seldom."""
    least = count(whole.passes, "crossing", "crossings")
    if not seldom:
        return f"{travel(whole.travel)}: {least} or more everywhere"
    places = ", ".join(
        f"{travel(span.travel).removesuffix(' % of travel')} % ({span.passes})" for span in seldom
    )
    return f"{travel(whole.travel)}: {least} or more; fewer than {ENOUGH_CROSSINGS} at {places}"


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
        ("Capture", findings.capture_id),
        ("SHA-256 of the file", findings.sha256),
        ("Sensor profile", findings.profile),
        ("Analysis version", findings.analysis_version),
    )
    return tuple(f"{name}: {value}" for name, value in known if value)
