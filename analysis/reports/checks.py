"""Checks in words: the reading, its limit, whose limit that is, and what was decided."""

from __future__ import annotations

from dataclasses import replace

from analysis.diagnosis.findings import Check, Result, State
from analysis.reports.quantities import NO_VALUE, number, quantity, reading
from analysis.wording import Wording, joined, say

MOST_SHARE = 0.99
"""More than this, or less than the rest, is not told apart: the tails of a distribution are guesswork."""

_RESULTS = {Result.PASS: say("pass"), Result.FAIL: say("fail"), Result.CANNOT_TELL: say("cannot tell")}
_STATES = {State.PROVED: say("proved"), State.REFUTED: say("refuted"), State.NOT_SHOWN: say("not shown")}


def result_name(result: Result) -> Wording:
    """The outcome of a check as people say it."""
    return _RESULTS[result]


def is_judged(check: Check) -> bool:
    """Whether what was decided is about all that was read.

    A reading that keeps its limits only because it leaves something out is no pass; one that breaks them
    breaks them whatever was left out. What was not read from the wire is not judged at all.
    """
    return not check.unread and (check.result is not Result.PASS or not check.note)


def decision_name(check: Check) -> Wording:
    """What was decided, as people say it: the outcome, or "not judged" (`is_judged`)."""
    return result_name(check.result) if is_judged(check) else say("not judged")


def state_name(state: State) -> Wording:
    """The state of a statement as people say it."""
    return _STATES[state]


def check_title(check: Check) -> str:
    """The check's title, or its code made readable where it has none."""
    return check.title or check.code.replace("_", " ").capitalize()


def limit_text(check: Check) -> Wording:
    """The limits: ``"at most 100 mV"``, ``"4.8 V to 5.2 V"``; ``"no limit"`` where both sides are open."""
    if check.lower_limit is None and check.upper_limit is None:
        return say("no limit")
    if check.lower_limit is None:
        return say("at most {limit}", limit=quantity(_known(check.upper_limit), check.unit))
    if check.upper_limit is None:
        return say("at least {limit}", limit=quantity(check.lower_limit, check.unit))
    return say(
        "{lower} to {upper}",
        lower=quantity(check.lower_limit, check.unit),
        upper=quantity(check.upper_limit, check.unit),
    )


def check_reading(check: Check) -> str:
    """The reading with its expanded uncertainty."""
    return reading(check.value, check.expanded_uncertainty, check.unit)


def conformance_share(check: Check) -> str:
    """How probable it is that the limits are kept: ``"97 %"``, ``"over 99 %"``; a dash where that is unknown.

    A dash as well where what would decide it is left out of the reading (`is_judged`). A reading without
    uncertainty keeps them or does not: ``"100 %"``, ``"0 %"``.
    """
    share = check.conformance
    if share is None or not is_judged(check):
        return NO_VALUE
    if share in (0.0, 1.0) and check.expanded_uncertainty == 0.0:
        return say("{percent} %", percent=number(100.0 * share, 0))
    if share > MOST_SHARE:
        return say("over {percent} %", percent=number(100.0 * MOST_SHARE, 0))
    if share < 1.0 - MOST_SHARE:
        return say("under {percent} %", percent=number(100.0 * (1.0 - MOST_SHARE), 0))
    return say("{percent} %", percent=number(100.0 * share, 0))


def conformance_words(check: Check) -> Wording:
    """Which side of its limits a reading is on, and how sure that is: ``"within limits: 97 % sure"``.

    Empty where that is unknown or not judged, or where the reading has no uncertainty: then the result says
    it all.
    """
    share = check.conformance
    if share is None or check.expanded_uncertainty == 0.0 or not is_judged(check):
        return joined([])
    if share >= 0.5:
        return say("within limits: {share} sure", share=conformance_share(check))
    other = replace(check, conformance=1.0 - share)
    return say("outside limits: {share} sure", share=conformance_share(other))


def check_sentence(check: Check) -> Wording:
    """One line: ``"Ground drop 12.6 mV, allowed at most 100 mV: pass (within limits: over 99 % sure)."``.

    Where it cannot be told, the line says why; what the reading leaves out stands behind it.
    """
    return joined([_judged(check), check.note])


def check_subject(check: Check) -> str:
    """What was read, and what the reading leaves out: for the column that names the check."""
    if not check.note:
        return check_title(check)
    return say("{title}. {note}", title=check_title(check), note=check.note)


def _judged(check: Check) -> Wording:
    title, shown = check_title(check), check_reading(check)
    if check.lower_limit is None and check.upper_limit is None:
        return say(
            "{title} {reading}, no limit stated: {result}.",
            title=title,
            reading=shown,
            result=decision_name(check),
        )
    said, sure = _said(check), conformance_words(check)
    outcome = say("{said} ({sure})", said=said, sure=sure) if sure else said
    return say(
        "{title} {reading}, allowed {limit}: {outcome}.",
        title=title,
        reading=shown,
        limit=limit_text(check),
        outcome=outcome,
    )


def _said(check: Check) -> Wording:
    if check.result is Result.CANNOT_TELL and check.conformance is not None:
        return say("cannot tell, the uncertainty reaches across the limit")
    return decision_name(check)


def _known(value: float | None) -> float:
    return float("nan") if value is None else value
