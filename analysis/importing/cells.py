"""One cell of a table as a number, whatever way a recorder or a spreadsheet has of writing it."""

from __future__ import annotations

import re

from analysis.importing.instants import seconds_of
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
_WHOLE = re.compile(r"[+\-]?\d+(?:[.,]\d+)?")
_SEVERAL = re.compile(r"([.,]).*\1")
_GROUPS = re.compile(r"[+\-]?\d{1,3}(?:\.\d{3})+(?:,\d*)?|[+\-]?\d{1,3}(?:,\d{3})+(?:\.\d*)?")
_PREFIXED = re.compile(r"^(?P<number>[+\-]?[\d.,]+)\s?(?P<prefix>[mkuµ\u03bc])$")  # 500m stands for 0.5
_PREFIXES = {"m": 1e-3, "k": 1e3, "u": 1e-6, "µ": 1e-6, "\u03bc": 1e-6}
_PLAIN = re.compile(r"-?[\d.,:]*")  # as nearly all cells are
_BLANKS = " \u00a0\u202f"
_AROUND = " \t\r\n\f\v\u00a0\ufeff"
_TURNED = re.compile(r"^(?:\((?P<inside>\d[\d.,]*)\)|(?P<before>\d[\d.,]*)-)$")  # (0.5) and 0.5- are -0.5
_STARTS_A_NUMBER = re.compile(r"[+\-]?[\d.]")
_HALF_OPEN = re.compile(r"^[(\[{]\s*(?=[+\-]?[\d.][\d.,eE+\-]*$)")  # the first number of a row in brackets
_HALF_CLOSED = re.compile(r"(?<=[\d.])\s*[)\]}]$")  # and its last one
_SIGN = re.compile(r"^T?([+\-])\s*(?=\d)")  # - 0.5; T-0.5, as seconds before something are written
_POWER = re.compile(r"(?<=\d)\s?[x×*·]\s?10\^?([+\-]?\d{1,3})$")  # 5x10^-3
_SHARE = re.compile(r"^(?P<number>[+\-]?[\d.,]+)\s?%$")
_WITH_UNIT = re.compile(r"^(?P<number>[+\-]?[\d.,∞][\d.,eE+\-']*)\s*(?P<unit>[^\d\s.,+\-]{1,8})$")


def plain(cell: str) -> str:
    """A cell without quotes, spaces around it, and with a plain minus."""
    if _PLAIN.fullmatch(cell):
        return cell
    text = cell.strip(_AROUND).removeprefix('="').strip('"').strip().replace("\u2212", "-")
    text = _POWER.sub(r"e\1", _SIGN.sub(r"\1", text))
    text = _HALF_OPEN.sub("", text)
    text = _HALF_CLOSED.sub("", text) if _STARTS_A_NUMBER.match(text) else text
    turned = _TURNED.match(text)
    if turned:
        return "-" + (turned["inside"] or turned["before"])
    return text[1:-1].strip() if len(text) > 1 and text[0] == text[-1] == "'" else text


def looks_numeric(cell: str) -> bool:
    """Whether a cell, made `plain`, states a number, a time of day or an over-range reading."""
    if _WHOLE.fullmatch(cell):
        return True
    if _over(cell) is not None or seconds_of(cell) is not None:
        return True
    if _NUMBER.match(cell):  # 14.03.2026 and 192.168.0.17 are none
        return (
            not _SEVERAL.search(cell)
            or _GROUPS.fullmatch(cell.partition("e")[0].partition("E")[0]) is not None
        )
    if _PREFIXED.match(cell) or _SHARE.match(cell):
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
        A cell that carries its own unit is given in volts or seconds (per cent stay as they are); a time of
        day in seconds.
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
    share = _SHARE.match(text)
    if share:
        return _float(share["number"], decimal, thousands)
    found = _WITH_UNIT.match(text)
    unit = unit_of(found.group("unit")) if found else None
    if found is None or unit is None:
        return seconds_of(text)
    value = number_of(found.group("number"), decimal, thousands)
    return None if value is None else value * unit.factor


def thousands_marks(mark: str) -> str:
    """What parts groups of digits where that was found or chosen: a blank of any width for a blank."""
    return _BLANKS if mark in _BLANKS else mark


def unit_in(cell: str) -> str:
    """The unit that a cell carries beside its number; empty where it carries none."""
    if _SHARE.match(plain(cell)):
        return "%"
    found = _WITH_UNIT.match(plain(cell))
    return found.group("unit") if found and unit_of(found.group("unit")) else ""


def _over(text: str) -> float | None:
    word = text.lower()
    if word.lstrip("+-<>") not in _OVER:
        return None
    return float("-inf") if word.startswith(("-", "<-")) else float("inf")


def _float(text: str, decimal: str, thousands: str) -> float | None:
    for mark in thousands_marks(thousands):
        text = text.replace(mark, "")
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
