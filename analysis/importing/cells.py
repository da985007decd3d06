"""One cell of a table as a number, whatever way a recorder or a spreadsheet has of writing it."""

from __future__ import annotations

import re
from datetime import datetime

from analysis.importing.units import unit_of

MISSING = frozenset(
    ["", "-", "--", "---", "nan", "na", "n/a", "#n/a", "null", "none", "#num!", "1.#qnan", "-1.#ind", "?"]
)
"""Cells that stand for a missing sample, in small letters. Common practice, no source."""

_FORTRAN = re.compile(r"(?<=\d)[dD](?=[+\-]?\d{1,3}$)")  # 0.5D+00, or 0.5d0
_OVER = frozenset(
    ["inf", "infinity", "∞", "ol", "o.l", "o.l.", "over", "ovl", "overflow", "overload", "1.#inf"]
)
_NUMBER = re.compile(
    r"""^[+\-]?(?:\d{1,3}(?:[ '\u2019\u00a0\u202f]\d{3})+(?:[.,]\d*)?   # 1 234,5 and 1'234.5
        |\d(?:[\d.,]*[\d.])?|[.,]\d+)(?:[eEdD][+\-]?\d{1,3})?$""",
    re.VERBOSE,
)
_PREFIXED = re.compile(r"^(?P<number>[+\-]?[\d.,]+)\s?(?P<prefix>[mkuµ\u03bc])$")  # 500m stands for 0.5
_PREFIXES = {"m": 1e-3, "k": 1e3, "u": 1e-6, "µ": 1e-6, "\u03bc": 1e-6}
_WITH_UNIT = re.compile(r"^(?P<number>[+\-]?[\d.,∞][\d.,eE+\-']*)\s*(?P<unit>[^\d\s.,+\-]{1,8})$")
_CLOCK = re.compile(
    r"^(?:(?P<hours>\d{1,4}):)?(?P<minutes>\d{1,2}):(?P<seconds>\d{1,2}(?:[.,]\d{1,12})?)"
    r"(?:\s*(?P<half>[AaPp])\.?[Mm]\.?)?$"
)
_DATED = re.compile(
    r"^(?P<a>\d{1,4})(?P<mark>[-./])(?P<b>\d{1,2}|[A-Za-zä]{3})(?P=mark)(?P<c>\d{1,4}),?[T ]+"
    r"(?P<clock>\d{1,2}:\d\d:\d\d(?:[.,]\d{1,12})?(?:\s*[AaPp]\.?[Mm]\.?)?)\s*(?:Z|[+-]\d\d:?\d\d)?$"
)
_SPAN = re.compile(r"^(?P<days>\d{1,5}) days? \+?(?P<clock>[\d:.,]+)$")
_MONTHS = {name: place for place, name in enumerate(
    ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"], start=1)
} | {"mär": 3, "mai": 5, "okt": 10, "dez": 12}  # fmt: skip
_EPOCH = datetime(2000, 1, 1)


def plain(cell: str) -> str:
    """A cell without quotes, spaces around it, and with a plain minus."""
    text = cell.strip().strip('"').strip().replace("\u2212", "-")
    return text[1:-1].strip() if len(text) > 1 and text[0] == text[-1] == "'" else text


def looks_numeric(cell: str) -> bool:
    """Whether a cell, made `plain`, states a number, a time of day or an over-range reading."""
    if _NUMBER.match(cell) or _over(cell) is not None or seconds_of(cell) is not None:
        return True
    if _PREFIXED.match(cell):
        return True
    found = _WITH_UNIT.match(cell)
    return found is not None and unit_of(found.group("unit")) is not None


def number_of(cell: str, decimal: str = ".", thousands: str = "") -> float | None:
    """What a cell says: NaN for a missing sample, ±inf for an over-range one, None where it is no number.

    Parameters
    ----------
    cell : str
        Any text.
    decimal, thousands : str
        The marks that the table uses.

    Returns
    -------
    float or None
        A cell that carries its own unit is given in volts or seconds; a time of day in seconds.
    """
    text = plain(cell)
    if text.lower() in MISSING:
        return float("nan")
    over = _over(text)
    if over is not None:
        return over
    value = _float(text, decimal, thousands)
    if value is not None:
        return value
    prefixed = _PREFIXED.match(text)
    if prefixed:
        value = _float(prefixed["number"], decimal, thousands)
        return None if value is None else value * _PREFIXES[prefixed["prefix"]]
    found = _WITH_UNIT.match(text)
    unit = unit_of(found.group("unit")) if found else None
    if found is None or unit is None:
        return seconds_of(text)
    value = number_of(found.group("number"), decimal, thousands)
    return None if value is None else value * unit.factor


def unit_in(cell: str) -> str:
    """The unit that a cell carries beside its number; empty where it carries none."""
    found = _WITH_UNIT.match(plain(cell))
    return found.group("unit") if found and unit_of(found.group("unit")) else ""


def seconds_of(text: str) -> float | None:
    """Seconds that a time of day (since midnight) or a date with a time (since 2000) says, or None."""
    clock = _CLOCK.match(text)
    if clock:
        seconds = float(clock.group("seconds").replace(",", "."))
        hours = int(clock.group("hours") or 0)
        if clock.group("half"):
            hours = hours % 12 + (12 if clock.group("half") in "pP" else 0)
        return 3600.0 * hours + 60.0 * int(clock.group("minutes")) + seconds
    span = _SPAN.match(text)
    if span:
        since = seconds_of(span["clock"])
        return None if since is None else 86_400.0 * int(span["days"]) + since
    dated = _DATED.match(text)
    day = _day(dated["a"], dated["mark"], dated["b"], dated["c"]) if dated else None
    since = seconds_of(dated["clock"]) if dated else None
    return None if day is None or since is None else (day - _EPOCH).total_seconds() + since


def _day(a: str, mark: str, b: str, c: str) -> datetime | None:
    """A date: the year first, or the day; with strokes the month first where that can be."""
    if b.isalpha():
        if b.lower() not in _MONTHS:
            return None
        b, mark = str(_MONTHS[b.lower()]), "."
    if len(a) == 4:
        year, month, day = int(a), int(b), int(c)
    else:
        year = int(c) if len(c) == 4 else 2000 + int(c)
        month_first = mark == "/" and int(a) <= 12
        month, day = (int(a), int(b)) if month_first else (int(b), int(a))
    try:
        return datetime(year, month, day)
    except ValueError:
        return None


def _over(text: str) -> float | None:
    word = text.lower()
    if word.lstrip("+-<>") not in _OVER:
        return None
    return float("-inf") if word.startswith(("-", "<-")) else float("inf")


def _float(text: str, decimal: str, thousands: str) -> float | None:
    if thousands:
        text = text.replace(thousands, "")
    if decimal != ".":
        if "." in text:
            return None
        text = text.replace(decimal, ".")
    text = _FORTRAN.sub("e", text)
    if "_" in text:
        return None  # Python would read 1_000 as a number; no table means it
    try:
        return float(text)
    except ValueError:
        return None
