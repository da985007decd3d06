"""Rows above the samples with a number for each column: what to multiply its samples by, and what to add."""

from __future__ import annotations

import math
import re
from collections.abc import Sequence
from dataclasses import dataclass

from analysis.captures.model import Scaling
from analysis.importing.headings import split_line
from analysis.importing.units import VOLTAGE, is_share, unit_of, without_accents

# In small letters and without accents; in the languages of the workshops around.
_FACTOR = (
    r"(?:(?:scale|scaling|conversion|calibration|cal|umrechnungs|skalier\w*|kalibrier\w*)[ _\-]?)?"
    r"(?:factors?|faktor(?:en)?)|multipliers?|multiplikator(?:en)?|slope|steigung|koeffizient(?:en)?"
    r"|coefficients?|facteurs?|fattor[ei]|mnoznik|множитель|коэффициент"
)
_MAYBE = r"scale|scaling|skalierung|skala|gain|verstarkung|echelle|scala|escala"
"""Words of a display or an amplifier too: its numbers may be in the samples already."""

_OFFSET = (
    r"(?:(?:zero|null|dc)[ _\-]?)?offsets?|intercept|achsenabschnitt|versatz|nullpunkt(?:verschiebung)?"
    r"|decalage|przesuniecie|смещение"
)
_LABEL = re.compile(
    rf"^\W*(?:(?P<factor>{_FACTOR})|(?P<maybe>{_MAYBE})|(?P<offset>{_OFFSET}))"
    r"\s*(?:[\[(]\s*(?P<unit>[^\])]{0,20})[\])])?\s*(?P<colon>[:=])?\s*(?P<rest>.*)$"
)
_WORD_FIRST = re.compile(r"[\W_]*[^\W\d_]")  # nearly no row of samples: found before anything slow
_NUMBER = re.compile(r"^[x×*]?\s*([+\-]?\d[\d.,]*(?:e[+\-]?\d{1,3})?)\s*[x×]?\s*(?P<unit>[^\d\s].{0,19})?$")
_PER = re.compile(r"^(?P<volts>[mkuµ]?v(?:olts?)?)\s*(?:/|per|pro)\s*\w+$")
_TOKENS = re.compile(r"[^\W\d_]\w*|\d[\d.,]*|[-+*/()·×]")
_AS_APPLIED = frozenset(["X*F+O", "F*X+O", "O+X*F", "O+F*X", "(X*F)+O", "(F*X)+O", "O+(X*F)", "O+(F*X)"])
_FACTOR_ALONE = frozenset(["X*F", "F*X"])
_MOST_SAID = 60  # letters of a line
_MOST_LINES = 100  # above the samples that are looked at


@dataclass(frozen=True, slots=True)
class ScaleRows:
    """What rows above the samples say of the numbers of each column.

    Parameters
    ----------
    scalings : tuple of Scaling
        One a cell of a row of samples; each 1 and 0 where nothing is said.
    factors, offsets : str
        The row that says what to multiply by, and the one that says what to add; empty where there is none.
    sure : bool
        Whether the numbers of the first are surely not in the samples yet.
    otherwise : str
        A line that says another formula than the number times its factor plus its offset, or a second row of
        factors; empty where there is none.
    lines : tuple of str
        Every line that was understood so.
    in_volts : bool
        Whether the factors are volts of one count each, by what the row says.
    """

    scalings: tuple[Scaling, ...]
    factors: str = ""
    offsets: str = ""
    sure: bool = True
    otherwise: str = ""
    lines: tuple[str, ...] = ()
    in_volts: bool = False

    def unit(self, place: int, unit: str, *, time: bool) -> str:
        """The unit of a column once its samples are multiplied: counts are then no counts any more."""
        if time or self.scalings[place] == Scaling():
            return unit
        return "V" if self.in_volts else "" if is_share(unit) or unit in ("-", "1") else unit


@dataclass(frozen=True, slots=True)
class _Row:
    kind: str
    values: tuple[float | None, ...]
    line: str
    in_volts: bool


def is_scale_row(line: str, delimiter: str, width: int) -> bool:
    """Whether a line names itself factors or offsets and has numbers for the columns.

    Parameters
    ----------
    line : str
        As the file has it.
    delimiter : str
        Between cells.
    width : int
        Cells of a row of samples.
    """
    return _row(line, delimiter, width) is not None


def scale_rows(lines: Sequence[str], delimiter: str, width: int) -> ScaleRows | None:
    """What the rows above the samples say of factors and offsets; None where none does.

    Parameters
    ----------
    lines : sequence of str
        Before the first sample.
    delimiter : str
        Between cells.
    width : int
        Cells of a row of samples.
    """
    lines = lines[-_MOST_LINES:]
    rows = [row for line in lines if (row := _row(line, delimiter, width)) is not None]
    if not rows:
        return None
    factors = [row for row in rows if row.kind != "offset" and _says(row, 1.0)]
    offsets = [row for row in rows if row.kind == "offset" and _says(row, 0.0)]
    formulas = {line: found for line in lines if (found := _formula(line))}
    fitting = _AS_APPLIED if offsets else _AS_APPLIED | _FACTOR_ALONE
    second = [row.line for row in (*factors[1:], *offsets[1:])]
    other = [line for line, found in formulas.items() if found not in fitting]
    factor, offset = next(iter(factors), None), next(iter(offsets), None)
    scalings = tuple(
        Scaling(1.0 if by is None else by, 0.0 if plus is None else plus)
        for by, plus in zip(
            factor.values if factor else [None] * width,
            offset.values if offset else [None] * width,
            strict=True,
        )
    )
    return ScaleRows(
        scalings,
        factor.line if factor else "",
        offset.line if offset else "",
        any(row.kind == "factor" or row.in_volts for row in rows),
        next((line.strip()[:_MOST_SAID] for line in (*other, *second)), "") if factor or offset else "",
        tuple(line.strip() for line in lines if line in formulas or line.strip() in {r.line for r in rows}),
        factor is not None and factor.in_volts,
    )


def _says(row: _Row, nothing: float) -> bool:
    return any(value not in (None, nothing) for value in row.values)


def _row(line: str, delimiter: str, width: int) -> _Row | None:
    """A line as a row of factors or offsets, one a cell of a row of samples; None where it is none."""
    if (
        width < 2
        or not _WORD_FIRST.match(line)
        or not _LABEL.match(without_accents(line.strip().lstrip('#%/!*"; ,|\t')))
    ):
        return None
    cells = split_line(line.lstrip("#%/!* "), delimiter)
    at = next((place for place, cell in enumerate(cells) if cell), None)
    label = None if at is None else _LABEL.match(without_accents(cells[at]))
    if at is None or label is None:
        return None
    if label["rest"]:
        if not label["colon"]:
            return None  # "scale of the display"
        cells[at : at + 1] = ["", cells[at][label.start("rest") :]]
    while len(cells) > width and not cells[-1]:
        cells.pop()
    if len(cells) == width + 1 and at == 0:
        values = [_value(cell) for cell in cells[1:]]
    elif width - 1 <= len(cells) <= width:
        values = [*[_value(cell) for cell in ["", *cells[at + 1 :]]], *[(None, None)] * width][: width - at]
        values = [(None, None)] * at + values
    else:
        return None
    said = [cell for cell in cells[at + 1 :] if cell]
    told = [value for value, _ in values if value is not None]
    if len(told) < max(1, width // 2) or len(told) < len(said):
        return None
    unit = _volts(label["unit"] or "") or next((volts for _, volts in values if volts), None)
    kind = next(name for name in ("factor", "maybe", "offset") if label[name])
    by = 1.0 if unit is None or kind == "offset" else unit
    return _Row(
        kind,
        tuple(None if value is None else value * by for value, _ in values),
        line.strip(),
        unit is not None and kind != "offset",
    )


def _value(cell: str) -> tuple[float | None, float | None]:
    """The number in a cell, and volts of its unit where it says volts per count; None for either."""
    found = _NUMBER.match(cell.strip().lower().replace("\u2212", "-"))
    if found is None:
        return None, None
    text, volts = found[1], _volts(found["unit"] or "")
    if found["unit"] and volts is None and unit_of(found["unit"]) is None:
        return None, None
    last = max(text.rfind(","), text.rfind("."))
    if "," in text and "." in text:
        text = text[:last].replace(",", "").replace(".", "") + "." + text[last + 1 :]
    try:
        value = float(text.replace(",", "."))
    except ValueError:
        return None, None
    return (value, volts) if math.isfinite(value) and abs(value) < 1e12 else (None, None)


def _volts(unit: str) -> float | None:
    """Volts that a unit such as mV/count has; None where it is no such."""
    found = _PER.match(unit.strip().lower())
    known = unit_of(found["volts"]) if found else None
    return known.factor if known is not None and known.quantity == VOLTAGE else None


def _formula(line: str) -> str:
    """How a line makes volts of numbers (X), factors (F) and offsets (O); empty where it does not."""
    _, mark, right = without_accents(line).partition("=")
    if not mark:
        return ""
    found = ""
    for token in _TOKENS.findall(re.sub(r"[\[].*?[\]]", "", right)):
        if not token[0].isalnum():
            found += {"·": "*", "×": "*"}.get(token, token)
            continue
        is_factor = re.fullmatch(f"{_FACTOR}|{_MAYBE}", token)
        letter = "F" if is_factor else "O" if re.fullmatch(_OFFSET, token) else "*" if token == "x" else "X"
        found += "" if letter == "X" and found.endswith("X") else letter
    return found if {"F", "O"} & {*found} and set("*/+-") & {*found} else ""
