"""A comparison as JSON: the contract that other programs read, ``wornband-comparison/1``.

As with the findings: every key is always there, new ones may join, none is renamed or dropped without a new
schema name, and a number that is not finite is null.

``change`` says what the counts do from the first side to the second, whatever the sides are: it is a cure
only where ``relation`` is ``before_after``, which it never is where the captures state two sensor positions
(``one_position`` false). ``outcome`` says the same in words. ``relation`` is what may be told, ``asked`` what
was asked for. Where ``in_size`` is true the difference is that of the sizes: such a sign is chance.
"""

from __future__ import annotations

import math
from dataclasses import asdict

from analysis.comparison.model import (
    FISHER,
    BandComparison,
    CheckComparison,
    Compared,
    Comparison,
    Tested,
)
from analysis.comparison.words import change_name
from analysis.diagnosis.findings import Band, Check
from analysis.diagnosis.serialise import JsonObject
from analysis.intervals import Interval

SCHEMA = "wornband-comparison/1"
"""Name and version of the contract."""


def comparison_object(comparison: Comparison, *, paths: tuple[str, str] = ("", "")) -> JsonObject:
    """A comparison as the JSON object of the contract.

    Parameters
    ----------
    comparison : Comparison
    paths : pair of str
        The files as the caller named them; empty for the paths that the findings hold.
    """
    return {
        "schema": SCHEMA,
        "analysis_version": comparison.analysis_version,
        "relation": comparison.relation.value,
        "asked": comparison.asked.value,
        "one_position": comparison.one_position,
        "before": _side(comparison.first, paths[0]),
        "after": _side(comparison.second, paths[1]),
        "summary": str(comparison.summary),
        "cautions": [str(item) for item in comparison.cautions],
        "bands": [_band(item, comparison) for item in comparison.bands],
        "checks": [_check(item) for item in comparison.checks],
        "tested_by_both": [_ends(item) for item in comparison.tested_by_both],
    }


def comparison_error(paths: tuple[str, str], failed: str, sentence: str) -> JsonObject:
    """What stands in place of a comparison that cannot be made.

    Parameters
    ----------
    paths : pair of str
        Before and after, as the caller named them.
    failed : str
        The one that could not be used.
    sentence : str
        What is wrong, and what to do.
    """
    return {
        "schema": SCHEMA,
        "before": {"path": paths[0]},
        "after": {"path": paths[1]},
        "failed": failed,
        "error": sentence,
    }


def _side(side: Compared, path: str) -> JsonObject:
    return {
        "path": path or side.path,
        "capture_id": side.capture_id,
        "sha256": side.sha256,
        "content": side.content.value if side.content is not None else None,
        "title": side.title,
        "position": asdict(side.position),
        "record": side.record or None,
        "mirrored": side.mirrored,
        "verdict": {"code": side.verdict.code.value, "confidence": _number(side.verdict.confidence)},
    }


def _band(item: BandComparison, comparison: Comparison) -> JsonObject:
    return {
        "track": item.track.value,
        "start_percent": _number(item.travel.start),
        "end_percent": _number(item.travel.stop),
        "change": item.change.value,
        "outcome": str(change_name(item.change, comparison)),
        "reasons": [str(reason) for reason in item.reasons],
        "test": {"method": FISHER, "p_value": _number(item.p_value)},
        "share_difference": _ends(item.share_difference),
        "before": _tested(item.first, item.first_band),
        "after": _tested(item.second, item.second_band),
    }


def _tested(side: Tested, band: Band | None) -> JsonObject:
    return {
        "passes": side.passes,
        "noisy_passes": side.noisy_passes,
        "confidence": _number(side.confidence),
        "speed_percent_per_s": _number(side.speed_percent_per_s),
        "sample_rate_hz": _number(side.sample_rate_hz),
        "recorder_floor_percent": _number(side.floor_percent),
        "worst_breakup_percent": _number(side.breakup_percent),
        "conditions": {key: sorted(said) for key, said in sorted(side.conditions.items())},
        "band": None
        if band is None
        else {
            "start_percent": _number(band.travel.start),
            "end_percent": _number(band.travel.stop),
            "confidence": _number(band.confidence),
        },
    }


def _check(item: CheckComparison) -> JsonObject:
    return {
        "code": item.code,
        "title": item.title,
        "unit": item.unit,
        "before": _reading(item.first),
        "after": _reading(item.second),
        "difference": _number(item.difference),
        "expanded_uncertainty": _number(item.expanded_uncertainty),
        "exceeds": item.exceeds,
        "worst_seen": item.worst_seen,
        "in_size": item.in_size,
    }


def _reading(check: Check | None) -> JsonObject | None:
    if check is None:
        return None
    return {
        "record": check.record,
        "value": _number(check.value),
        "expanded_uncertainty": _number(check.expanded_uncertainty),
        "result": check.result.value,
    }


def _ends(span: Interval) -> list[float | None]:
    return [_number(span.start), _number(span.stop)]


def _number(value: float) -> float | None:
    return float(value) if math.isfinite(value) else None
