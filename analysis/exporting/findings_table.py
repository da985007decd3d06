"""Findings as a table of their own: a line a band and a check, under one heading."""

from __future__ import annotations

import csv
import io
from collections.abc import Mapping
from typing import Any

from analysis.exporting.neutral import neutral

_HEADINGS = ("kind", "code", "start_percent", "end_percent", "start_v", "end_v", "confidence", "passes",
             "noisy_passes", "record", "value", "expanded_uncertainty", "unit", "lower_limit", "upper_limit",
             "result", "source", "text", "conformance_probability")  # fmt: skip


def findings_csv(found: Mapping[str, Any]) -> str:
    """The JSON object of the findings as CSV (RFC 4180): verdict, bands, checks, evidence, advice.

    Parameters
    ----------
    found : mapping
        As `analysis.diagnosis.serialise.findings_object` gives it.
    """
    verdict = found["verdict"]
    rows: list[dict[str, Any]] = [{**verdict, "kind": "verdict", "text": verdict["summary"]}]
    rows += [{**band, "kind": "band"} for band in found["bands"]]
    rows += [{**check, "kind": "check"} for check in found["checks"]]
    rows += [{**item, "kind": "evidence", "result": item["state"]} for item in found["evidence"]]
    rows += [{"kind": "advice", "text": text} for text in found["advice"]]
    file = io.StringIO()
    writer = csv.writer(file)
    writer.writerow(_HEADINGS)
    for row in rows:
        writer.writerow([_cell(row.get(heading)) for heading in _HEADINGS])
    return file.getvalue()


def _cell(value: Any) -> Any:
    if value is None:
        return ""
    return neutral(value) if isinstance(value, str) else value
