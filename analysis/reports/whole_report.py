"""The whole report: both pages in one language, with what stands at the top and the foot of every sheet."""

from __future__ import annotations

from pathlib import PurePath

from analysis.captures.known_words import known_word
from analysis.captures.record_names import called, record_names
from analysis.reports.customer_page import customer_page
from analysis.reports.evidence_page import evidence_page
from analysis.reports.pages import Pages, spoken
from analysis.reports.subject import Beside, Subject
from analysis.reports.workshop import Workshop
from analysis.wording import ENGLISH, Language, Template, say

_SHEET = Template("Sheet {page} of {pages}")
_CONTINUED = Template("{title}, continued")


def whole_report(
    subject: Subject,
    *,
    beside: Beside | None = None,
    workshop: Workshop | None = None,
    language: Language = ENGLISH,
    today: str = "",
    sample: bool = False,
) -> Pages:
    """Both pages of a report.

    Parameters
    ----------
    subject : Subject
        What was measured and found; its capture is open.
    beside : Beside or None
        Another capture set beside it.
    workshop : Workshop or None
        Who makes the report.
    language : Language
        Of the program's words; what people entered stays as they wrote it.
    today : str
        The date that the report says it was made on; empty for none.
    sample : bool
        Whether the capture is one of the program's samples: title and foot of every sheet then say so.

    Returns
    -------
    Pages

    Raises
    ------
    CaptureError
        Where the capture's samples cannot be read.
    """
    findings = subject.findings
    made = Pages(
        title=_marked(_title(subject), sample),
        language=language.code,
        workshop=workshop or Workshop(),
        pages=(customer_page(subject, beside), evidence_page(subject, beside)),
        footer=_marked(_footer(subject, today), sample),
        sheet=language.messages.get(_SHEET.text, _SHEET.text),
        continued=language.messages.get(_CONTINUED.text, _CONTINUED.text),
        fingerprint=findings.sha256,
    )
    names = record_names(subject.capture)
    said = spoken(made, lambda text: language.say(called(text, names)))
    assert isinstance(said, Pages)
    return said


def _title(subject: Subject) -> str:
    sensor = subject.fact("sensor") or subject.capture.title or say("position sensor")
    mounting = subject.fact("mounting")
    if mounting and mounting not in sensor:
        where = known_word(mounting)
        return say("Test report: {sensor}, {mounting}", sensor=known_word(sensor), mounting=where)
    return say("Test report: {sensor}", sensor=known_word(sensor))


def _marked(words: str, sample: bool) -> str:
    return say("Sample · {words}", words=words) if sample else words


def _footer(subject: Subject, today: str) -> str:
    file = PurePath(subject.findings.path or "capture").name
    digest = subject.findings.sha256[:16]
    if today:
        return say(
            "{file} · SHA-256 {digest}… · report made on {today}", file=file, digest=digest, today=today
        )
    return say("{file} · SHA-256 {digest}…", file=file, digest=digest)
