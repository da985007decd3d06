"""Fault codes as a workshop writes them, with the standard's wording where the standard defines it."""

from __future__ import annotations

import re

from analysis.wording import Template, Wording, say

_CODE = re.compile(r"[PCBU][0-3][0-9A-F]{3}")

# The names that SAE J2012 (ISO 15031-6) gives to the codes of such sensors and of their feed. Written down
# from memory; the standard itself was not at hand, and no entry was held against it.
_CIRCUIT = Template("{name} sensor/switch {letter} circuit")
_RANGE = Template("{name} sensor/switch {letter} circuit range/performance")
_LOW = Template("{name} sensor/switch {letter} circuit low")
_HIGH = Template("{name} sensor/switch {letter} circuit high")
_INTERMITTENT = Template("{name} sensor/switch {letter} circuit intermittent")
_FAMILY = (_CIRCUIT, _RANGE, _LOW, _HIGH, _INTERMITTENT)
_PEDAL = say("Throttle/pedal position")
_FIRST_OF_LETTER = {"A": 0x0120, "B": 0x0220, "C": 0x0225, "D": 0x2120, "E": 0x2125, "F": 0x2130}
_FEED = (
    Template("Sensor reference voltage {letter} circuit/open"),
    Template("Sensor reference voltage {letter} circuit low"),
    Template("Sensor reference voltage {letter} circuit high"),
)
_FIRST_FEED = {"A": 0x0641, "B": 0x0651, "C": 0x0697}
_CORRELATION = Template("Throttle/pedal position sensor/switch {pair} voltage correlation")
_PAIRS = {"P2135": "A/B", "P2136": "A/C", "P2137": "B/C", "P2138": "D/E", "P2139": "D/F", "P2140": "E/F"}


def _known() -> dict[str, Wording]:
    names = {}
    for letter, first in _FIRST_OF_LETTER.items():
        for place, template in enumerate(_FAMILY):
            names[f"P{first + place:04X}"] = template(name=_PEDAL, letter=letter)
    for letter, first in _FIRST_FEED.items():
        for place, template in enumerate(_FEED):
            names[f"P{first + place:04X}"] = template(letter=letter)
    names.update({code: _CORRELATION(pair=pair) for code, pair in _PAIRS.items()})
    return names


_NAMES = _known()


def fault_codes(text: str) -> tuple[str, ...]:
    """The codes of a line, each once, in their order; a line of anything else stays whole where it can.

    Parameters
    ----------
    text : str
        As the technician or the capture gives it: separated by commas, semicolons or line ends.

    Returns
    -------
    tuple of str
        Empty where there are none; ``"none"`` and dashes count as no code.
    """
    parts = (part.strip() for part in re.split(r"[,;\n]+", text))
    return tuple(dict.fromkeys(part for part in parts if part and part.lower() not in ("none", "-", "–")))


def code_meaning(code: str) -> str:
    """What the standard says of a code; who defines it, where the standard leaves that to the maker.

    Returns
    -------
    str
        Empty for what has not the form of a standard code (a maker's own way of writing).
    """
    plain = code.strip().upper()
    if not _CODE.fullmatch(plain):
        return ""
    if plain in _NAMES:
        return _NAMES[plain]
    return say("defined by the maker") if _makers_own(plain) else say("see SAE J2012")


def _makers_own(code: str) -> bool:
    """Whether the maker defines it (SAE J2012): first digit 1, or 2 outside powertrain, or P30 to P33."""
    if code[0] == "P":
        return code[1] == "1" or (code[1] == "3" and code[2] in "0123")
    return code[1] in "12"
