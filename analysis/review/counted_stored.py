"""Road records that were counted off, as the review's file keeps them under ``road_test``.

Each is ``{"file", "record", "label", "number", "km", "how": [code, {...}], "against": [code, {...}]}``: of
sentences the codes and values, so that they can be said in another language. ``number`` and ``km`` are absent
where they are not known, ``against`` where nothing speaks against it.
"""

from __future__ import annotations

import math
from collections.abc import Mapping
from typing import Any

from analysis.errors import ReviewError
from analysis.exposure.road_test import NOTHING_AGAINST, SAID, CountedRecord
from analysis.review.taken import DAMAGED, Taken
from analysis.review.vehicle import Counted
from analysis.wording import Wording, say

MOST_COUNTED = 1_000
"""More records than that are kept of no road test."""

_CODES = {template.text: code for code, template in SAID.items()}


def counted_list(counted: Counted) -> list[dict[str, Any]]:
    """What the file keeps of these."""
    return [_object(file, record) for file, record in counted[:MOST_COUNTED]]


def parse_counted(stored: list[Any]) -> Counted:
    """Read what `counted_list` made; raises ReviewError where it is damaged."""
    if len(stored) > MOST_COUNTED:
        raise ReviewError(say("the review holds too many counted road records"), DAMAGED)
    return tuple(_record(Taken(item, say("a counted road record of the review"))) for item in stored)


def _object(file: str, record: CountedRecord) -> dict[str, Any]:
    own: dict[str, Any] = {"file": file, "record": record.record, "label": record.label}
    if record.number is not None:
        own["number"] = record.number
    if math.isfinite(record.km):
        own["km"] = record.km
    own["how"] = _sentence(record.how)
    if record.against:
        own["against"] = _sentence(record.against)
    return own


def _sentence(said: Wording) -> list[Any]:
    values = {
        name: value if isinstance(value, int | float) else str(value) for name, value in said.values.items()
    }
    return [_CODES[said.template], values]


def _record(item: Taken) -> tuple[str, CountedRecord]:
    km = item.number("km", math.nan) if item.holds("km") else math.nan
    number = int(item.number("number")) if item.holds("number") else None
    against = _said(item.take("against")) if item.holds("against") else NOTHING_AGAINST
    return item.text("file"), CountedRecord(
        item.text("record"), item.text("label"), km, _said(item.take("how")), against, number
    )


def _said(stored: object) -> Wording:
    damaged = ReviewError(say("a counted road record of the review is damaged"), DAMAGED)
    if not isinstance(stored, list) or len(stored) != 2:
        raise damaged
    code, values = stored
    known = isinstance(code, str) and code in SAID
    if not known or not isinstance(values, Mapping) or not all(map(_plain, values.values())):
        raise damaged
    try:
        return SAID[code](**values)
    except (KeyError, ValueError, TypeError) as error:  # a value is missing, or a text where a number belongs
        raise damaged from error


def _plain(value: object) -> bool:
    return isinstance(value, str | int | float) and not isinstance(value, bool)
