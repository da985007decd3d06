"""Units as recorders and spreadsheets spell them: volts and seconds, with their multiples."""

from __future__ import annotations

import re
import unicodedata
from dataclasses import dataclass

VOLTAGE, TIME, RATE = "voltage", "time", "rate"


@dataclass(frozen=True, slots=True)
class Unit:
    """What a unit measures, and how many volts, seconds or hertz one of it is."""

    quantity: str
    factor: float


_PREFIXES = {"": 1.0, "k": 1e3, "m": 1e-3, "u": 1e-6, "µ": 1e-6, "n": 1e-9}
_LONG_PREFIXES = {"": 1.0, "kilo": 1e3, "milli": 1e-3, "micro": 1e-6, "mikro": 1e-6, "nano": 1e-9}
_SHORT = {"V": (VOLTAGE, "kmuµ"), "s": (TIME, "muµn"), "Hz": (RATE, "k")}
_LONG = {
    VOLTAGE: ("volt", "volts"),
    TIME: ("s", "sec", "secs", "second", "seconds", "sekunde", "sekunden"),
    RATE: ("hertz",),
}
_OTHERS = {
    "h": Unit(TIME, 3600.0), "hr": Unit(TIME, 3600.0), "hrs": Unit(TIME, 3600.0), "hour": Unit(TIME, 3600.0),
    "hours": Unit(TIME, 3600.0), "stunde": Unit(TIME, 3600.0), "stunden": Unit(TIME, 3600.0),
    "day": Unit(TIME, 86_400.0), "days": Unit(TIME, 86_400.0), "tage": Unit(TIME, 86_400.0),
    "min": Unit(TIME, 60.0), "minute": Unit(TIME, 60.0), "minutes": Unit(TIME, 60.0),
    "mhz": Unit(RATE, 1e6), "s/s": Unit(RATE, 1.0), "sa/s": Unit(RATE, 1.0), "ks/s": Unit(RATE, 1e3),
    "ksa/s": Unit(RATE, 1e3), "msa/s": Unit(RATE, 1e6), "ksps": Unit(RATE, 1e3), "sps": Unit(RATE, 1.0),
    "samples/s": Unit(RATE, 1.0), "1/s": Unit(RATE, 1.0), "msec": Unit(TIME, 1e-3), "usec": Unit(TIME, 1e-6),
    "mvolt": Unit(VOLTAGE, 1e-3), "mvolts": Unit(VOLTAGE, 1e-3), "uvolt": Unit(VOLTAGE, 1e-6),
    "volts dc": Unit(VOLTAGE, 1.0), "volt dc": Unit(VOLTAGE, 1.0),
    "vdc": Unit(VOLTAGE, 1.0), "v dc": Unit(VOLTAGE, 1.0), "mvdc": Unit(VOLTAGE, 1e-3),
}  # fmt: skip
_NO_VOLTS = frozenset(
    ["a", "ma", "ua", "µa", "°c", "degc", "°f", "degf", "k", "°", "deg", "grad", "rad", "%", "km/h",
     "kmh", "mph", "m/s", "m/s2", "m/s²", "g", "rpm", "1/min", "u/min", "bar", "mbar", "kpa", "hpa",
     "pa", "psi", "mm", "cm", "m", "ohm", "kohm", "ω", "kω", "w", "kw", "nm", "l/h", "lx", "ppm",
     "db", "vac", "ah", "kg", "count", "counts", "bit", "bits", "digit", "digits", "lsb"]
)  # fmt: skip
"""Units, in small letters, that say of a column that it is neither a voltage nor a time."""

_BRACKETS = re.compile(r"^\s*[\[({<]\s*(.*?)\s*[\])}>]\s*$")
_BRACKETED = re.compile(r"^(?P<name>.*?)\s*[\[({<]\s*(?P<unit>[^\[\](){}<>]{1,16}?)\s*[\])}>]\s*$")
_SHARE = re.compile(r"^(?P<name>.+?)\s*(?:/|_in_|_|,|:|\bin\b|\s)\s*(?P<unit>%)$", re.IGNORECASE)
_IN_NAME = (
    _BRACKETED,
    re.compile(
        r"^(?P<name>.+?)\s*/\s*(?P<unit>\w[\w\-]{0,11}\.?)$"
    ),  # "U/mV", as ISO 80000-1 writes headings
    re.compile(r"^(?P<name>.+?)\s+in\s+(?P<unit>\w{1,12})$", re.IGNORECASE),
    re.compile(r"^(?P<name>.+?)(?:_in)?[_ ,:.\-]+(?P<unit>[^\W_]{1,6})$", re.IGNORECASE),
)


_WORDS_TOO = ("h", "day", "days")
"""Units that end a name without being meant: "level_h", "time of day"."""

TIME_NAMES = r"(?:time|t|zeit|timestamp|seconds|sec|zeitpunkt|uhrzeit|date ?time|temps|tiempo|tempo|tijd|tid|czas|cas|время|час|zaman|sure|aika|(?:経過)?時間|時刻|时间)"  # fmt: skip  # noqa: E501
"""How headings name a time, without accents; in the languages of the workshops around."""

_TIMES = re.compile(rf"(?:zeit|time|elapsed|\b{TIME_NAMES})(?:\W*in)?\W*$", re.IGNORECASE)

_WIDE = str.maketrans("（）［］／", "()[]/")  # as East Asian headings have them

_MICRO = re.compile("^(?:\u00e2\u00b5|\u00ce\u00bc|\u00ee\u00bc|[\u03bc\ufffd?])")  # in small letters


def _table() -> dict[str, Unit]:
    known = dict(_OTHERS)
    for letter, (quantity, prefixes) in _SHORT.items():
        for prefix in ("", *prefixes):
            known[(prefix + letter).lower()] = Unit(quantity, _PREFIXES[prefix])
    for quantity, words in _LONG.items():
        for prefix, factor in _LONG_PREFIXES.items():
            known.update({prefix + word: Unit(quantity, factor) for word in words if prefix + word != "ns"})
    for word in ("sec", "secs", "volt", "volts"):
        quantity = TIME if word.startswith("s") else VOLTAGE
        known.update({prefix + word: Unit(quantity, _PREFIXES[prefix]) for prefix in ("m", "u", "µ", "n")})
    return known


_KNOWN = _table() | {
    "в": Unit(VOLTAGE, 1.0), "мв": Unit(VOLTAGE, 1e-3), "мкв": Unit(VOLTAGE, 1e-6),
    "с": Unit(TIME, 1.0), "сек": Unit(TIME, 1.0), "мс": Unit(TIME, 1e-3), "мсек": Unit(TIME, 1e-3),
    "мкс": Unit(TIME, 1e-6), "нс": Unit(TIME, 1e-9), "мин": Unit(TIME, 60.0), "час": Unit(TIME, 3600.0),
    "гц": Unit(RATE, 1.0), "кгц": Unit(RATE, 1e3),
    "秒": Unit(TIME, 1.0), "ミリ秒": Unit(TIME, 1e-3), "マイクロ秒": Unit(TIME, 1e-6),
    "毫秒": Unit(TIME, 1e-3), "分": Unit(TIME, 60.0),
    "ボルト": Unit(VOLTAGE, 1.0), "ミリボルト": Unit(VOLTAGE, 1e-3),
}  # fmt: skip
"""Cyrillic and Japanese ones beside the Latin, as ISO 80000 is written there (values from memory)."""


def without_accents(text: str) -> str:
    """A text in small letters and without accents, each letter in its place: ``"Té"`` as ``"te"``."""
    return "".join(
        (unicodedata.normalize("NFKD", letter)[0] if letter.isalpha() else letter).lower()[0]
        for letter in text
    )


def unit_of(text: str) -> Unit | None:
    """The unit that a text spells, or None.

    Letters may be of either case, since headings are often capitals throughout: there are no megavolts on
    a sensor and no megaseconds in a workshop. Both micro signs (U+00B5, U+03BC) and ``u`` are read, and a
    micro sign that was lost on the way (``?s``) or read in a wrong encoding (``Âµs``).
    """
    inside = _BRACKETS.match(text)
    plain = (inside.group(1) if inside else text.strip()).strip(".").lower()
    plain = plain if plain.isascii() or "\u00b5" in plain else unicodedata.normalize("NFKC", plain).lower()
    spelled = " ".join(_MICRO.sub("µ", plain).split())
    return _KNOWN.get(spelled) or _KNOWN.get(spelled.replace("-", ""))


def split_heading(heading: str) -> tuple[str, str]:
    """A heading as name and unit: ``"U [mV]"``, ``"U/mV"``, ``"U in mV"`` and ``"U_mV"`` alike.

    Returns
    -------
    (str, str)
        The unit is empty where the heading names none that is known. In brackets, a unit of something else
        than voltage and time counts as known.
    """
    heading = heading.translate(_WIDE)
    for form in _IN_NAME:
        found = form.match(heading)
        bare = form is not _BRACKETED and found is not None and _is_word(*found.group("name", "unit"))
        if found and not bare and unit_of(found.group("unit")) is not None:
            return found.group("name").strip() or heading.strip(), found.group("unit")
    alone = unit_of(heading)
    if alone is not None and alone.quantity == TIME and heading.strip().lower() not in (*_WORDS_TOO, "min"):
        return heading.strip(), heading.strip()
    other = _BRACKETED.match(heading) or _SHARE.match(heading)
    # One letter in round brackets may number a channel: "sensor (A)".
    letter = other is not None and other.group("unit").isalpha() and len(other.group("unit")) == 1
    if other and is_other_unit(other.group("unit")) and ("[" in heading or not letter):
        return other.group("name").strip() or heading.strip(), other.group("unit")
    return heading.strip(), ""


def _is_word(name: str, unit: str) -> bool:
    """Whether the end of a name only looks like a unit: "sig min" is the least of something, no minutes."""
    return unit.lower() in _WORDS_TOO or (
        unit.lower() == "min" and not _TIMES.search(without_accents(name.replace("_", " ")))
    )


def is_share(text: str) -> bool:
    """Whether a text spells a share or a count: of something, but not of how many volts."""
    word = text.strip().strip(".").lower()
    # "% of 5 V" and "% of range" are per cent too, whatever stands behind.
    return word.startswith("%") or word in ("count", "counts", "bit", "bits", "digit", "digits", "lsb")


def is_other_unit(text: str) -> bool:
    """Whether a text spells a unit of something that is neither a voltage nor a time."""
    return is_share(text) or text.strip().strip(".").lower() in _NO_VOLTS
