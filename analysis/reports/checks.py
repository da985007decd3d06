"""Checks in words: the reading, its limit, whose limit that is, and what was decided."""

from __future__ import annotations

from analysis.diagnosis.findings import Check, Result, State
from analysis.reports.quantities import quantity, reading
from analysis.wording import Wording, say

_RESULTS = {Result.PASS: say("pass"), Result.FAIL: say("fail"), Result.CANNOT_TELL: say("cannot tell")}
_STATES = {State.PROVED: say("proved"), State.REFUTED: say("refuted"), State.NOT_SHOWN: say("not shown")}


def result_name(result: Result) -> Wording:
    """The outcome of a check as people say it."""
    return _RESULTS[result]


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


def check_sentence(check: Check) -> Wording:
    """One line: ``"Ground drop 12.6 ± 3.0 mV, allowed at most 100 mV: pass."``.

    Where it cannot be told, the line says why.
    """
    title, shown = check_title(check), check_reading(check)
    if check.lower_limit is None and check.upper_limit is None:
        return say(
            "{title} {reading}, no limit stated: {result}.",
            title=title,
            reading=shown,
            result=result_name(check.result),
        )
    said = {
        Result.PASS: say("pass"),
        Result.FAIL: say("fail"),
        Result.CANNOT_TELL: say("cannot tell, the uncertainty reaches across the limit"),
    }[check.result]
    return say(
        "{title} {reading}, allowed {limit}: {said}.",
        title=title,
        reading=shown,
        limit=limit_text(check),
        said=said,
    )


def _known(value: float | None) -> float:
    return float("nan") if value is None else value
