"""A time of day, a date with a time, or a span of time, in whatever way a cell writes it, as seconds."""

from __future__ import annotations

import re
from datetime import datetime

_CLOCK = re.compile(
    r"^(?:(?P<hours>\d{1,4}):)?(?P<minutes>\d{1,2}):(?P<seconds>\d{1,2}(?:[.,]\d{1,12})?)"
    r"(?:\s*(?P<half>[AaPp])\.?[Mm]\.?)?$"
)
_COLONS = re.compile(r"^(?P<clock>(?:[^:]*[T ])?\d{1,2}:\d\d:\d\d):(?P<part>\d{1,9})$")  # 09:14:07:500
_ZONE = r"\s*(?:Z|UTC|GMT|[A-Z]{2,4}|(?:UTC|GMT)?[+-]\d\d:?(?:\d\d)?)?$"
_DATED = re.compile(
    r"^(?P<a>\d{1,4})(?P<mark>[-./])(?P<b>\d{1,2}|[A-Za-zä]{3})(?P=mark)(?P<c>\d{1,4})(?:,?[T ]+|[-:_])"
    r"(?P<clock>\d{1,2}:\d\d:\d\d(?:[.,]\d{1,12})?(?:\s*[AaPp]\.?[Mm]\.?)?)" + _ZONE
)
_COMPACT = re.compile(r"^(?P<a>\d{4})(?P<b>\d\d)(?P<c>\d\d)[T _-](?P<clock>\d{6}(?:[.,]\d{1,12})?)" + _ZONE)
_WRITTEN_OUT = re.compile(  # Wed Mar  4 09:14:07.500 2026, as `asctime` of C writes it
    r"^(?:[A-Z][a-z]{2},?\s+)?(?P<b>[A-Z][a-z]{2})\s+(?P<c>\d{1,2})\s+"
    r"(?P<clock>\d{1,2}:\d\d:\d\d(?:[.,]\d{1,12})?)\s+(?P<a>\d{4})$"
)
_IN_WORDS = re.compile(  # 4. März 2026 09:14:07,500
    r"^(?P<c>\d{1,2})\.?\s?(?P<b>[A-Za-zä]{3,9})\.?,?\s(?P<a>\d{4}),?[T\s]\s?"
    r"(?P<clock>\d{1,2}:\d\d:\d\d(?:[.,]\d{1,12})?)" + _ZONE
)
_FORMS = (_DATED, _COMPACT, _WRITTEN_OUT, _IN_WORDS)
_SPAN = re.compile(r"^(?P<days>\d{1,5}) days? \+?(?P<clock>[\d:.,]+)$")
_LETTERS = re.compile(  # PT0.005S, as ISO 8601 writes a span; 9h14m07.5s
    r"^(?:PT)?(?=\d)(?:(?P<h>\d{1,4})\s?h\s?)?(?:(?P<m>\d{1,4})\s?m(?:in)?\s?)?"
    r"(?:(?P<s>\d{1,9}(?:[.,]\d{1,12})?)\s?s)?$",
    re.IGNORECASE,
)
_MONTHS = {name: place for place, name in enumerate(
    ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"], start=1)
} | {"mär": 3, "mrz": 3, "mai": 5, "okt": 10, "dez": 12}  # fmt: skip
_EPOCH = datetime(2000, 1, 1)


def seconds_of(text: str) -> float | None:
    """Seconds that a text says, or None where it says no time.

    Parameters
    ----------
    text : str
        Without quotes and spaces around it.

    Returns
    -------
    float or None
        Of a time of day since midnight, of a date with a time since 2000 by the clock that wrote it (a zone
        is not counted in), of a span its length.
    """
    clock = _CLOCK.match(text)
    if clock:
        return _of_clock(clock)
    if text[:1] in ("+", "-"):
        since = seconds_of(text[1:]) if ":" in text and text[1:2].isdigit() else None
        return since if since is None or text[0] == "+" else -since
    if not text[:1].isalnum() or text.isdecimal():
        return None
    colons = _COLONS.match(text)
    if colons:
        return seconds_of(f"{colons['clock']}.{colons['part']}")
    span = _SPAN.match(text)
    if span:
        since = seconds_of(span["clock"])
        return None if since is None else 86_400.0 * int(span["days"]) + since
    if text.endswith(" Uhr"):
        return seconds_of(text.removesuffix(" Uhr"))
    return _of_letters(text) if text[-1] in "sS" else _of_date(text)


def _of_clock(clock: re.Match[str]) -> float:
    seconds = float(clock["seconds"].replace(",", "."))
    hours = int(clock["hours"] or 0)
    if clock["half"]:
        hours = hours % 12 + (12 if clock["half"] in "pP" else 0)
    return 3600.0 * hours + 60.0 * int(clock["minutes"]) + seconds


def _of_letters(text: str) -> float | None:
    """A span with letters behind its parts; a number with a unit alone is none (it keeps its own unit)."""
    found = _LETTERS.match(text)
    if found is None or not (found["h"] or found["m"] or text[0] in "pP"):
        return None
    seconds = float((found["s"] or "0").replace(",", "."))
    return 3600.0 * int(found["h"] or 0) + 60.0 * int(found["m"] or 0) + seconds


def _of_date(text: str) -> float | None:
    dated = next((found for form in _FORMS if (found := form.match(text))), None)
    if dated is None:
        return None
    clock = dated["clock"]
    since = seconds_of(clock if ":" in clock else f"{clock[:2]}:{clock[2:4]}:{clock[4:]}")
    day = day_of(dated["a"], dated["mark"] if "mark" in dated.groupdict() else "-", dated["b"], dated["c"])
    return None if day is None or since is None else (day - _EPOCH).total_seconds() + since


def day_of(a: str, mark: str, b: str, c: str) -> datetime | None:
    """A date: the year first, or the day; with strokes the month first where that can be.

    Parameters
    ----------
    a, b, c : str
        Its three parts, in digits; `b` may be the name of a month.
    mark : str
        Between them.

    Returns
    -------
    datetime or None
        Midnight; None where there is no such day.
    """
    if b.isalpha():
        word = b.lower()[:3]
        if word not in _MONTHS:
            return None
        b, mark = str(_MONTHS[word]), "."
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
