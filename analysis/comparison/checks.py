"""Every check of two sides with its difference and the uncertainty of that difference (JCGM 100)."""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping
from dataclasses import replace

from analysis.comparison.model import CheckComparison
from analysis.comparison.side import Side
from analysis.diagnosis.findings import Check
from analysis.signals.uncertainty import combined

WORST_SEEN = frozenset(
    (
        "rest_variation",
        "ground_steadiness",
        "reference_steadiness",
        "output_smoothness",
        "track_agreement",
        "signal_range",
    )
)
"""Checks whose value is the worst of many readings, or depends on where the arm was moved to."""

_SIGN_IS_CHANCE = frozenset(("rest_variation",))
"""The largest departure to either side: which side it was to says nothing."""

_SIGNAL_CODES = frozenset(("signal_range", "rest_variation"))
"""Readings of the signal in volts, which a mirrored sensor gives the other way round."""

_LEVELS = frozenset(("ground_drop", "reference_level"))

_Key = tuple[str, str, str, int]


def compare_checks(first: Side, second: Side) -> tuple[CheckComparison, ...]:
    """Set the checks of two sides against each other.

    A check that each side made once is the same check; one that was made for several records is matched by
    the record's step, in their order.

    Parameters
    ----------
    first, second : Side

    Returns
    -------
    tuple of CheckComparison
        In the first side's order, then what the second alone has.
    """
    ours, theirs = _keyed(first), _keyed(second)
    turned = first.mirrored != second.mirrored
    keys = [*ours, *(key for key in theirs if key not in ours)]
    return tuple(
        replace(
            _compared(ours.get(key), theirs.get(key), turned),
            repeated=sum(other[:2] == key[:2] for other in keys) > 1,
        )
        for key in keys
    )


def difference_of(first: Check, second: Check) -> tuple[float, float]:
    """Second less first and its expanded uncertainty (k = 2), in the unit of the checks.

    The two uncertainties are taken as uncorrelated (JCGM 100:2008, eq. 10). Where one recorder made both
    readings its errors are partly the same and cancel, and the true uncertainty is smaller: what exceeds
    this one exceeds that one too.
    """
    values = (first.value, second.value)
    if first.code in _SIGN_IS_CHANCE:
        values = (abs(values[0]), abs(values[1]))
    return values[1] - values[0], combined(first.expanded_uncertainty, second.expanded_uncertainty)


def as_compared(item: CheckComparison) -> tuple[Check | None, Check | None]:
    """Both readings as they are set against each other: their sizes, where the sign is chance."""
    if not item.in_size:
        return item.first, item.second
    first, second = (
        check if check is None or not check.value < 0.0 else replace(check, value=-check.value)
        for check in (item.first, item.second)
    )
    return first, second


def _keyed(side: Side) -> Mapping[_Key, Check]:
    checks = side.seen().checks
    keyed: dict[_Key, Check] = {}
    for check in checks:
        alone = sum(_name(item) == _name(check) for item in checks) == 1
        step = "" if alone else _step(side, check.record)
        place = 0
        while (*_name(check), step, place) in keyed:
            place += 1
        keyed[(*_name(check), step, place)] = check
    return keyed


def _name(check: Check) -> tuple[str, str]:
    return check.code, check.title


def _step(side: Side, record: str) -> str:
    found = side.record_named(record)
    return found.step.value if found is not None and found.step is not None else ""


def _compared(first: Check | None, second: Check | None, turned: bool) -> CheckComparison:
    any_check = next(item for item in (first, second) if item is not None)
    difference = spread = float("nan")
    if first is not None and second is not None and _comparable(first, second, turned):
        difference, spread = difference_of(first, second)
    known = math.isfinite(difference) and math.isfinite(spread)
    return CheckComparison(
        code=any_check.code,
        title=any_check.title,
        unit=any_check.unit,
        first=first,
        second=second,
        difference=difference,
        expanded_uncertainty=spread,
        exceeds=abs(difference) > spread if known else None,
        worst_seen=any_check.code in WORST_SEEN,
        in_size=any_check.code in _SIGN_IS_CHANCE,
    )


def _comparable(first: Check, second: Check, turned: bool) -> bool:
    if first.unread or second.unread:
        return False
    return first.unit == second.unit and not (turned and first.code in _SIGNAL_CODES - _SIGN_IS_CHANCE)


def levels_that_differ(checks: Iterable[CheckComparison]) -> tuple[CheckComparison, ...]:
    """Levels of ground and reference whose difference exceeds its uncertainty; never what was worst seen."""
    return tuple(item for item in checks if item.exceeds and item.code in _LEVELS)
