"""How many volts a count or a per cent is, where a line above the samples says so."""

from __future__ import annotations

import ast
import re
from collections.abc import Sequence
from dataclasses import dataclass

from analysis.importing.units import unit_of, without_accents

_NUMBER = r"[+\-\u2212]?\d+(?:[.,]\d+)?(?:e[+\-]?\d{1,3})?"
_VOLTS = r"(?:[mu\u00b5\u03bc]?v(?:dc)?|(?:milli|micro|mikro)?volts?)"
_COUNT = r"(?:adc[\s\-]?)?(?:counts?|cnts?|lsbs?(?: size)?|digits?|bits?|code|ct)"
_PER = r"\s*(?:/|per|pro|je|par|por|al|na)\s*"
_IS = r"\s*(?:=|:|\u2259|\u2258|->|equals|is|ist|entspricht|entsprechen|corresponds? to|reads?|means?)\s*"
_TO = r"\s*(?:\.\.\.?|\u2026|-|\u2013|to|bis)\s*"

_NUMBER_FIRST = re.compile(rf"(?<![\w.,])({_NUMBER})\s*({_VOLTS}){_PER}(?:1\s*)?{_COUNT}\b")
_UNIT_FIRST = re.compile(rf"\b({_VOLTS}){_PER}{_COUNT}\b[\s\])]*[=:;,\t]?\s*({_NUMBER})[\s;,]*$")
_ONE_IS = re.compile(rf"(?<![\w.,])(?:1\s*|one\s+|ein\s+|^\W*){_COUNT}{_IS}({_NUMBER})\s*({_VOLTS})\b")
_FORMULA = re.compile(
    r"(?:^|[;:,(]|\s)\W*(?:(?:u|v|volts?|voltage|spannung)(?:\s*[\[(]\s*v\s*[\])])?)\s*=\s*([^=;]+?)\s*(?:v|volts?)?\s*$"
)
_VARIABLE = re.compile(
    r"(?<![\w.])(?:adc[_ ]?)?(?:counts?|raw|code|adc|digits?|n|x|lsb|rohwert|zahlwert|wert|value)\b"
)
_EQUALS = r"\s*(?:=|\u2259|\u2258|->|equals|is|ist|entspricht|entsprechen|corresponds? to)\s*"
_SPANS = re.compile(
    rf"(?<![\w.,\-])(?:(-?\d+){_TO})?(\d{{2,9}})\s*{_COUNT}?{_EQUALS}"
    rf"(?:({_NUMBER})\s*{_VOLTS}?{_TO})?({_NUMBER})\s*({_VOLTS})\b(?!\s*/|\s+per\b)"
)
_BITS = re.compile(r"(?<![\w.,])(\d{1,2})[\s\-]?bits?\b")
_FULL = re.compile(
    rf"(?:full[\s\-]?scale|fsr?|vref|v_ref|u_?ref|adc[\s\-]?ref(?:erenz|erence)?|endwert)[\s=:(]{{0,3}}"
    rf"(?:of\s+|von\s+)?(?:0(?:[.,]0*)?\s*{_VOLTS}?{_TO})?({_NUMBER})\s*({_VOLTS})\b"
    rf"|(?<![\w.,+\-\u00b1])0(?:[.,]0*)?\s*{_VOLTS}?{_TO}\+?({_NUMBER})\s*({_VOLTS})\b"
)
_PER_CENT = re.compile(
    rf"%\s*(?:of|von|av|van|z|de|di|des|fs|=)?\s*(?:the\s+|full[\s\-]?scale\s+|reference\s+|supply\s+)?({_NUMBER})\s*({_VOLTS})\b"
)
_HUNDRED = re.compile(
    rf"(?<![\w.,])(?:0\s*%?{_TO})?100\s*%{_IS}(?:0(?:[.,]0*)?\s*{_VOLTS}?{_TO})?({_NUMBER})\s*({_VOLTS})\b"
)
_ZERO = re.compile(
    rf"(?:zero|null(?:punkt)?|0 ?v)\s*(?:at|bei|is|=|:)\s*(?:count\s*)?({_NUMBER})(?!\s*{_VOLTS}\b|[\d.,]*\w)"
)
_TWO_WAYS = re.compile(r"\u00b1|\+\s?/\s?-|bipolar|signed|two'?s complement")
_OFFSET = re.compile(r"\boffset\b(?!\W*[+\-]?0(?:[.,]0*)?(?![\d.,]))|\bzero\b|nullpunkt")
_OFFSET_V = re.compile(rf"\boffset(?:\s*[=:])?\s*({_NUMBER})\s*({_VOLTS})\b")  # added, as in a formula
_DONE = re.compile(r"already|applied|bereits|schon|angewandt|deja|\bgia\b|\bya\b")  # the numbers are in volts
_OF_ONE = re.compile(
    r"\W*(?:ch|chan(?:nel)?|kanal|kanaal|canal[e]?|voie|input|eingang)[\s_.#\-]*(?:\d|[a-h]\b)"
)
_MOST_LINES = 60
_SAME = 1e-3  # two lines that say the same: 4095 or 4096 steps of 12 bits, and what was rounded
_BELIEVABLE_V = (1e-8, 0.2)  # of one count: 24 bits over a tenth of a volt, and 8 bits over a network of 24 V
_SIGNS = str.maketrans(
    {"\u00d7": "*", "\u00b7": "*", "\u22c5": "*", "\u00f7": "/", "\u2212": "-", "\u2013": "-"}
)


@dataclass(frozen=True, slots=True)
class Scale:
    """What a line says of the numbers of a table.

    Parameters
    ----------
    volts : float
        Of one count, or of one per cent.
    zero_v : float
        Volts of the number 0.
    line : str
        That says so.
    exact : bool
        Whether it is said of a count, and not worked out of bits and a full scale.
    """

    volts: float
    zero_v: float
    line: str
    exact: bool = True


def scale_of_counts(head: Sequence[str]) -> Scale | None:
    """Volts of one count, where lines above the samples say it and no two of them differ.

    Parameters
    ----------
    head : sequence of str
        The lines before the samples.

    Returns
    -------
    Scale or None
        The most exact one: a formula or volts per count before a full scale with its bits. None too where a
        line speaks of an offset or of two polarities in a way that is not understood.
    """
    lines = [line for line in head if line.strip() and not _DONE.search(_low(line))][-_MOST_LINES:]
    of_one = [line for line in lines if _OF_ONE.match(_low(line))]
    lines = [line for line in lines if len(of_one) != 1 or line not in of_one]
    found = [scale for read in (_by_formula, _per_count, _by_span) for line in lines if (scale := read(line))]
    by_bits = _by_bits(lines)
    found += [] if by_bits is None else [by_bits]
    if not found or any(not _same(found[0], other) for other in found[1:]):
        return None
    best = found[0]
    if best.zero_v == 0.0 and any(
        _OFFSET.search(low := _low(line)) and not _ZERO.search(low) for line in lines
    ):
        return None
    return best if _BELIEVABLE_V[0] <= abs(best.volts) <= _BELIEVABLE_V[1] else None


def scale_of_per_cent(unit: str, head: Sequence[str]) -> Scale | None:
    """Volts of one per cent, where the unit ("% of 5 V") or a line above the samples ("100 % = 5 V") says it.

    Parameters
    ----------
    unit : str
        Of a column.
    head : sequence of str
        The lines before the samples.
    """
    for line in (unit, *head):
        low = _low(line)
        found = _HUNDRED.search(low) or (_PER_CENT.search(low) if line == unit or "in %" in low else None)
        if found is not None:
            return Scale(_volts(found[1], found[2]) / 100.0, 0.0, unit if line == unit else _plain(line))
    return None


def _per_count(line: str) -> Scale | None:
    low = _low(line)
    found = _NUMBER_FIRST.search(low) or _ONE_IS.search(low)
    value = (found[1], found[2]) if found is not None else None
    if value is None and (turned := _UNIT_FIRST.search(low)) is not None:
        value = (turned[2], turned[1])
    if value is None:
        return None
    volts = _volts(*value)
    zero, offset = _ZERO.search(low), _OFFSET_V.search(low)
    zero_v = 0.0 if zero is None else 0.0 - volts * _number(zero[1])
    return Scale(volts, zero_v if offset is None else _volts(offset[1], offset[2]), _plain(line))


def _by_formula(line: str) -> Scale | None:
    found = _FORMULA.search(_low(line))
    if found is None:
        return None
    plain = re.sub(r"(?<=\d),(?=\d)", ".", found[1].translate(_SIGNS))
    spelled = _VARIABLE.sub("N", re.sub(r"(?<=\d)\s*v\b", "", plain)).strip()
    for formula in (spelled, spelled.rpartition("(")[0].strip()):  # "(12 bit)" may stand behind it
        try:
            slope, zero_v = _line(ast.parse(formula, mode="eval").body)
        except (SyntaxError, ValueError, ZeroDivisionError, RecursionError, OverflowError):
            continue
        return Scale(slope, zero_v, _plain(line)) if slope else None
    return None


def _line(node: ast.expr) -> tuple[float, float]:
    """A formula of the counts as what it rises by a count, and what it is at none.

    Raises
    ------
    ValueError
        Where it is anything else than a straight line.
    ZeroDivisionError, OverflowError
        Where the numbers do not work out.
    """
    match node:
        case ast.Constant(value=int() | float() as value):
            return 0.0, float(value)
        case ast.Name(id="N"):
            return 1.0, 0.0
        case ast.UnaryOp(op=ast.USub(), operand=inside):
            slope, zero = _line(inside)
            return -slope, -zero
        case ast.BinOp(left=left, op=op, right=right):
            return _joined(_line(left), op, _line(right))
    raise ValueError("a scale is made of the counts, numbers, + - * / and brackets only")


def _joined(left: tuple[float, float], op: ast.operator, right: tuple[float, float]) -> tuple[float, float]:
    (a, b), (c, d) = left, right
    match op:
        case ast.Add():
            return a + c, b + d
        case ast.Sub():
            return a - c, b - d
        case ast.Mult() if not a or not c:
            return a * d + c * b, b * d
        case ast.Div() if not c:
            return a / d, b / d
    raise ValueError("a scale is a straight line")


def _by_span(line: str) -> Scale | None:
    """0..4095 = 0..5 V: both ends of the counts and of the volts."""
    found = _SPANS.search(_low(line))
    if found is None or _TWO_WAYS.search(_low(line)):
        return None
    first, last = float(found[1] or 0.0), float(found[2])
    low_v, high_v = _volts(found[3] or "0", found[5]), _volts(found[4], found[5])
    if last <= first or high_v <= low_v or (found[1] is None and last < 100.0):
        return None
    volts = (high_v - low_v) / (last - first)
    return Scale(volts, low_v - first * volts, _plain(line))


def _by_bits(lines: Sequence[str]) -> Scale | None:
    """12 bit, 0-5 V full scale: a count is the full scale by 2 to the bits (IEEE 1241, ideal code width)."""
    bits = {int(found[1]): line for line in lines for found in _BITS.finditer(_low(line))}
    if len(bits) != 1 or any(_TWO_WAYS.search(_low(line)) for line in lines):
        return None
    ((count, line),) = bits.items()
    beside = [line, *(other for other in lines if other is not line)]
    full = next((found for other in beside if (found := _FULL.search(_low(other)))), None)
    if full is None or not 8 <= count <= 24:
        return None
    full_v = _volts(full[1] or full[3], full[2] or full[4])
    return Scale(full_v / 2.0**count, 0.0, _plain(line), exact=False) if full_v > 0.0 else None


def _same(one: Scale, other: Scale) -> bool:
    return abs(other.volts / one.volts - 1.0) <= _SAME and abs(other.zero_v - one.zero_v) <= _SAME * max(
        abs(one.zero_v), abs(one.volts)
    )


def _volts(number: str, unit: str) -> float:
    known = unit_of(unit)
    return _number(number) * (1.0 if known is None else known.factor)


def _number(text: str) -> float:
    return float(text.replace("\u2212", "-").replace(",", "."))


def _low(line: str) -> str:
    return without_accents(line)


def _plain(line: str) -> str:
    return line.strip(" \t#%/*!;,")[:80]
