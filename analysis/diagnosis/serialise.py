"""Findings as JSON: the contract that other programs read, ``wornband-findings/1``.

Every key that the contract names is always there, with the same type. New keys may be added beside
them; none is ever renamed or dropped without a new schema name. JSON knows neither NaN nor infinity
(RFC 8259, section 6), so a number that is not finite is written as null.
"""

from __future__ import annotations

import json
import math
from collections.abc import Sequence
from typing import Any

from analysis.captures.model import Match
from analysis.diagnosis.findings import Band, Check, CoverageSpan, Event, Findings, RecordOutcome, Statement
from analysis.intervals import Interval
from analysis.signals.facts import TrackSurvey

SCHEMA = "wornband-findings/1"
"""Name and version of the contract."""

JsonObject = dict[str, Any]
"""A JSON object: text, numbers, booleans, null, lists and further objects."""


def findings_object(
    findings: Findings,
    *,
    path: str = "",
    assumptions: Sequence[str] = (),
    exposure: JsonObject | None = None,
    content: Match | None = None,
) -> JsonObject:
    """Findings as the JSON object of the contract.

    Parameters
    ----------
    findings : Findings
        What `examine` said.
    path : str
        The file as the caller named it; empty for the path that the findings hold.
    assumptions : sequence of str
        What stood in for things that the file does not state.
    exposure : dict or None
        Why it comes and goes, of `analysis.exposure.serialise`; the key is left out for None.
    content : Match or None
        The capture's content against the fingerprint in its file; null where they were not compared.

    Returns
    -------
    dict
        Beside the contract's keys: ``content`` of the capture, ``profile``, ``assumptions``, ``records``
        (what each one showed), ``tracks`` (the least break-up that could be seen), ``events`` and, where
        heights are known, ``exposure``.
    """
    verdict = findings.verdict
    made = {
        "schema": SCHEMA,
        "capture": {
            "path": path or findings.path,
            "capture_id": findings.capture_id,
            "sha256": findings.sha256,
            "content": content.value if content is not None else None,
        },
        "analysis_version": findings.analysis_version,
        "profile": findings.profile,
        "verdict": {
            "code": verdict.code.value,
            "confidence": _number(verdict.confidence),
            "summary": verdict.summary,
            "possible_causes": list(verdict.possible_causes),
        },
        "bands": [_band(item) for item in findings.bands],
        "checks": [_check(item) for item in findings.checks],
        "evidence": [_statement(item) for item in findings.evidence],
        "coverage": [_coverage(item) for item in findings.coverage],
        "advice": list(findings.advice),
        "assumptions": list(assumptions),
        "records": [_outcome(item) for item in findings.record_outcomes],
        "tracks": [_track(item) for item in findings.surveys],
        "events": [_event(item) for item in findings.events],
        "events_complete": bool(findings.events_complete),
    }
    return made if exposure is None else {**made, "exposure": exposure}


def error_object(path: str, sentence: str) -> JsonObject:
    """What stands in place of the findings of a file that cannot be analysed.

    Parameters
    ----------
    path : str
        The file as the caller named it.
    sentence : str
        What is wrong, and what to do.
    """
    return {"schema": SCHEMA, "capture": {"path": path}, "error": sentence}


def json_line(item: JsonObject) -> str:
    """One object on one line, without the line's end.

    Written in ASCII: it survives every terminal's encoding, and file names that are no valid text.

    Raises
    ------
    ValueError
        Where a number is not finite.
    """
    return json.dumps(item, allow_nan=False)


def _number(value: float | None) -> float | None:
    """A plain finite float, or None."""
    return float(value) if value is not None and math.isfinite(value) else None


def _times(interval: Interval) -> list[float | None]:
    return [_number(interval.start), _number(interval.stop)]


def _band(band: Band) -> JsonObject:
    """A band; ``crossings_s`` are those in the record that shows it best, ``crossings`` all of them."""
    return {
        "start_percent": _number(band.travel.start),
        "end_percent": _number(band.travel.stop),
        "start_v": _number(band.volts.start),
        "end_v": _number(band.volts.stop),
        "start_uncertainty_percent": _number(band.start_uncertainty_percent),
        "end_uncertainty_percent": _number(band.stop_uncertainty_percent),
        "confidence": _number(band.confidence),
        "passes": int(band.passes),
        "noisy_passes": int(band.noisy_passes),
        "output_smoothness_percent": _number(band.output_smoothness_percent),
        "falls_towards": band.falls_towards,
        "record": band.record,
        "crossings_s": [_times(item.time) for item in band.crossings if item.record == band.record],
        "track": band.track.value,
        "crossings": [
            {
                "record": item.record,
                "start_s": _number(item.time.start),
                "end_s": _number(item.time.stop),
                "noisy": bool(item.noisy),
                "breakup_percent": _number(item.breakup_percent),
            }
            for item in band.crossings
        ],
    }


def _check(check: Check) -> JsonObject:
    return {
        "code": check.code,
        "record": check.record,
        "value": _number(check.value),
        "expanded_uncertainty": _number(check.expanded_uncertainty),
        "unit": check.unit,
        "lower_limit": _number(check.lower_limit),
        "upper_limit": _number(check.upper_limit),
        "result": check.result.value,
        "source": check.source,
        "title": check.title,
        "conformance_probability": _number(check.conformance),
    }


def _statement(statement: Statement) -> JsonObject:
    return {
        "code": statement.code,
        "state": statement.state.value,
        "records": list(statement.records),
        "text": statement.text,
    }


def _coverage(span: CoverageSpan) -> JsonObject:
    return {
        "start_percent": _number(span.travel.start),
        "end_percent": _number(span.travel.stop),
        "passes": int(span.passes),
    }


def _outcome(outcome: RecordOutcome) -> JsonObject:
    return {"record": outcome.record, "result": outcome.result.value, "text": outcome.text}


def _track(survey: TrackSurvey) -> JsonObject:
    return {
        "track": survey.role.value,
        "crossings": len(survey.crossings),
        "recorder_floor_percent": _number(survey.floor_percent),
    }


def _event(event: Event) -> JsonObject:
    return {
        "record": event.record,
        "start_s": _number(event.time.start),
        "end_s": _number(event.time.stop),
        "channels": [role.value for role in event.roles],
        "depth_v": _number(event.depth_v),
        "travel_percent": _number(event.travel_percent),
        "shape": event.shape,
        "in_band": bool(event.in_band),
    }
