"""Page one: what the customer reads, signs and takes home."""

from __future__ import annotations

import math
import re
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace

from analysis.captures.known_words import known_word
from analysis.captures.model import Match
from analysis.diagnosis.findings import Findings, VerdictCode
from analysis.reports import consequences
from analysis.reports.confidence import odds
from analysis.reports.customer_words import customer_sentence, kind_of, not_shown
from analysis.reports.fault_codes import code_meaning, fault_codes
from analysis.reports.pages import (
    Block,
    Boxes,
    Facts,
    Heading,
    Page,
    Paragraph,
    Photos,
    Signatures,
    Style,
)
from analysis.reports.report_pictures import chosen_pictures
from analysis.reports.subject import Beside, Subject
from analysis.review.job import CLOSING, OFFER_AMOUNTS
from analysis.wording import Wording, joined, number, say

MOST_CODES = 6
"""Fault codes that page one names; the rest stand on page two."""

_NO_EVIDENCE = say(
    "The file of this measurement was changed after it was recorded, or cannot be read in full. What is said"
    " here is of the file as it is now, and is no evidence."
)
_HEAD_FACTS = (
    ("vehicle", say("Vehicle")),
    ("registration", say("Registration")),
    ("odometer", say("Odometer")),
    ("job", say("Job")),
    ("date", say("Measured on")),
    ("sensor", say("Sensor")),
)
_AMOUNT_NAMES = {"part": say("Part"), "labour": say("Labour"), "calibration": say("Calibration")}
_CLOSING_NAMES = {
    "calibrated": say("calibrated by the maker's method"),
    "codes_cleared": say("fault codes cleared, and none came back"),
    "heights_measured": say("heights or end positions measured"),
    "road_test": say("road test done"),
    "captured_again": say("captured again in the same way"),
}


def customer_page(subject: Subject, beside: Beside | None = None) -> Page:
    """Page one of a report.

    Parameters
    ----------
    subject : Subject
        What was measured; samples are read for its pictures.
    beside : Beside or None
        What the picture sets beside it; the modelled track where there is none.

    Raises
    ------
    CaptureError
        Where the capture's samples cannot be read.
    """
    blocks = (
        *_head(subject),
        *_complaint(subject),
        *_answer(subject),
        *chosen_pictures(subject, beside),
        *_set_beside(subject, beside),
        *_consequences(subject),
        *_notes(subject),
        *_offer(subject),
        *_photos(subject),
        *_closing(subject, beside),
    )
    return Page(say("For the customer"), blocks)


def paragraph(subject: Subject, key: str, text: str, style: Style = Style.BODY) -> Paragraph:
    """A paragraph that is the technician's to change."""
    words = subject.review.job.words
    if key in words:
        return Paragraph(words[key], style, key, own=True)
    return Paragraph(text, style, key)


def program_words(subject: Subject) -> dict[str, str]:
    """The program's own wording of every paragraph that may be changed, by key."""
    findings = subject.findings
    return {
        "sentence": customer_sentence(findings, dismissed=subject.dismissed),
        **{key: text for key, _, text in _parts(subject)},
    }


def _head(subject: Subject) -> Iterator[Block]:
    rows = tuple((name, subject.fact(key)) for key, name in _HEAD_FACTS)
    mounting = known_word(subject.fact("mounting"))
    rows = tuple(
        (name, joined([known_word(value), mounting], ", ") if name == "Sensor" and value else value)
        for name, value in rows
    )
    known = tuple((name, value) for name, value in rows if value)
    if known:
        yield Facts(known)


def _complaint(subject: Subject) -> Iterator[Block]:
    complaint, codes = subject.fact("complaint"), fault_codes(subject.fact("fault_codes"))
    if not complaint and not codes:
        return
    yield Heading(say("What was complained of"))
    if complaint:
        yield Paragraph(complaint)
    if codes:
        shown = joined((_with_meaning(code) for code in codes[:MOST_CODES]), ", ")
        if len(codes) > MOST_CODES:
            yield Paragraph(
                say(
                    "Fault codes: {codes}, and {more} more on the evidence page.",
                    codes=shown,
                    more=len(codes) - MOST_CODES,
                ),
                Style.SMALL,
            )
        else:
            yield Paragraph(say("Fault codes: {codes}", codes=shown), Style.SMALL)


def _set_beside(subject: Subject, beside: Beside | None) -> Iterator[Block]:
    """What the comparison comes down to."""
    if beside is not None:
        yield Paragraph(beside.compared(subject).summary)


def _with_meaning(code: str) -> str:
    meaning = code_meaning(code)
    return say("{code} ({meaning})", code=code, meaning=meaning) if meaning else code


def _answer(subject: Subject) -> Iterator[Block]:
    findings = subject.findings
    sentence = customer_sentence(findings, dismissed=subject.dismissed)
    yield Heading(say("What was found"))
    if subject.capture.content in (Match.DIFFERS, Match.UNREADABLE):
        yield Paragraph(_NO_EVIDENCE)
    yield paragraph(subject, "sentence", sentence, Style.LEAD)
    open_points = () if subject.dismissed else not_shown(findings)
    if open_points:
        yield Paragraph(say("Open points: {points}", points=joined(open_points)), Style.SMALL)
    confidence = findings.verdict.confidence
    if subject.review.job.show_number and math.isfinite(confidence) and not subject.dismissed:
        yield Paragraph(
            say(
                "The program's confidence: {odds} in 100. Of a hundred findings with this confidence about as"
                " many are right; it is not a degree of wear.",
                odds=odds(confidence),
            ),
            Style.SMALL,
        )


def _parts(subject: Subject) -> Iterator[tuple[str, Wording, str]]:
    findings, kind = subject.findings, kind_of(subject.capture)
    what, found = consequences.meaning(findings, kind)
    if subject.dismissed:
        findings = _undecided(subject)
        what, found = consequences.meaning(findings, kind)
    yield "meaning", say("What it means"), say("{what} {found}", what=what, found=found)
    yield "driving", say("Can it be driven?"), consequences.driving(findings, kind)
    yield "left", say("If it is left"), consequences.if_left(findings)
    yield "recommended", say("What we recommend"), consequences.recommended(findings)
    yield "not_included", say("What that does not include"), consequences.not_included(findings)


def _undecided(subject: Subject) -> Findings:
    """The findings as they stand once the technician does not accept them."""
    verdict = replace(subject.findings.verdict, code=VerdictCode.INCONCLUSIVE)
    return replace(subject.findings, verdict=verdict)


def _why(subject: Subject) -> Iterator[Block]:
    """Why it comes and goes; nothing where nobody accepts that there is a bad place."""
    if subject.why_brief and not subject.dismissed:
        yield Heading(say("Why it comes and goes"))
        yield Paragraph(subject.why_brief)


def _consequences(subject: Subject) -> Iterator[Block]:
    for key, title, text in _parts(subject):
        yield Heading(title)
        yield paragraph(subject, key, text)
        if key == "meaning":
            yield from _why(subject)


def _notes(subject: Subject) -> Iterator[Block]:
    notes = subject.review.job.notes.strip()
    if notes:
        yield Heading(say("Notes of the technician"))
        for part in re.split(r"\n\s*\n|\n", notes):
            if part.strip():
                yield Paragraph(part.strip())


def _offer(subject: Subject) -> Iterator[Block]:
    offer = subject.review.job.offer
    rows = [(_AMOUNT_NAMES[key], offer[key].strip()) for key in OFFER_AMOUNTS if offer.get(key, "").strip()]
    if not rows:
        return
    currency = offer.get("currency", "").strip()
    yield Heading(say("Our offer"))
    yield Facts((*((name, _money(text, currency)) for name, text in rows), *_sums(offer, rows, currency)))
    yield Boxes(((say("I approve the work above."), False), (say("I decline it."), False)))
    yield Signatures((say("Date"), say("Signature of the customer")))


def amount(text: str) -> float | None:
    """What is typed as an amount, in units of the currency: ``"1 180,50"``; None where it is none."""
    plain = re.sub(r"[\s\u202f']", "", text).replace(",", ".")
    if not re.fullmatch(r"[0-9]{1,9}(\.[0-9]{1,2})?", plain):
        return None
    return float(plain)


def _money(text: str, currency: str) -> str:
    value = amount(text)
    return text if value is None else _money_of(value, currency)


def _money_of(value: float, currency: str) -> Wording:
    """An amount, in the language's own way of writing numbers, with the currency where one is given."""
    if not currency:
        return number(value, 2)
    return say("{value:.2f} {currency}", value=value, currency=currency)


def _sums(
    offer: Mapping[str, str], rows: Sequence[tuple[str, str]], currency: str
) -> Iterator[tuple[str, str]]:
    values = [amount(text) for _, text in rows]
    if any(value is None for value in values):
        return  # somebody's own words ("on request"): nothing is added up
    net = sum(value for value in values if value is not None)
    tax_text = offer.get("tax_percent", "").strip()
    tax_percent = amount(tax_text) if tax_text else 0.0
    if tax_percent is None:
        yield say("Tax"), tax_text
        return
    tax = round(net * tax_percent / 100.0, 2)
    if tax_percent:
        name = say("Tax, {percent:g} %", percent=tax_percent)
        yield name, _money_of(tax, currency)
    yield say("Total"), _money_of(net + tax, currency)


def _photos(subject: Subject) -> Iterator[Block]:
    if subject.review.job.photos:
        yield Heading(say("Photos"))
        yield Photos(subject.review.job.photos)


def _closing(subject: Subject, beside: Beside | None) -> Iterator[Block]:
    job = subject.review.job
    again = beside is not None and (beside.is_later_visit(subject) or beside.is_earlier_visit(subject))
    if not (job.repaired or job.closing or again):
        return
    # A capture that left out the place is no proof of the repair: the box stays open.
    again = again and beside is not None and beside.tested_as_before(subject)
    yield Heading(say("After the repair"))
    done = {*job.closing, *(("captured_again",) if again else ())}
    yield Boxes(tuple((_CLOSING_NAMES[code], code in done) for code in CLOSING))
