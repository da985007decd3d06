"""Checks of a record whose probe was not on the wire: what it read is judged by no limit."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace

from analysis.diagnosis.checks import SIGNAL_RANGE
from analysis.diagnosis.findings import Check, Result
from analysis.diagnosis.measurement_check import Problem
from analysis.diagnosis.probe_contact import in_the_air
from analysis.diagnosis.seen import PLAIN
from analysis.wording import say

_OF_THE_AIR = say("The probe hung in the air: what it read is not the signal.")


def not_of_the_air(checks: Iterable[Check], problems: Iterable[Problem]) -> tuple[Check, ...]:
    """The checks, with no level of the signal judged where its probe plainly hung in the air.

    Parameters
    ----------
    checks : iterable of Check
        As they were read.
    problems : iterable of Problem
        As `find_problems` gives them.
    """
    air = {
        problem.record
        for problem in problems
        if problem.code == in_the_air.__name__ and problem.strength >= PLAIN
    }
    return tuple(
        replace(check, result=Result.CANNOT_TELL, conformance=None, note=_OF_THE_AIR)
        if check.code == SIGNAL_RANGE and check.record in air
        else check
        for check in checks
    )
