"""How a text table is written: its delimiter, its marks, its headings and where its samples begin."""

from __future__ import annotations

import csv
import re
from collections import Counter
from dataclasses import dataclass

from analysis.errors import ImportingError
from analysis.importing.cells import MISSING, looks_numeric, plain, seconds_of, unit_in
from analysis.importing.choices import NOTHING_CHOSEN, TextChoices
from analysis.importing.units import RATE, TIME, Unit, split_heading, unit_of
from analysis.wording import say

DELIMITERS = ("\t", ";", "|", ",", " ")
"""In the order in which they win a tie; the last stands for any run of spaces and tabs."""

_COMMENTS = ("#", "%", "//", "!", "*")
_MOST_LINES = 3000
_TAIL_LINES = 400
_NAMES_INTERVAL = re.compile(
    r"(?:interval|period|increment|\bdt\b|delta ?t|Δt|abtastintervall|(?:sample|sampling) ?time)",
    re.IGNORECASE,
)
_NAMES_RATE = re.compile(r"(?:\brate\b|frequency|\bfs\b|abtastrate|samples per second|s/s\b)", re.IGNORECASE)
_STATED = re.compile(r"([+\-]?\d[\d.,]*(?:[eE][+\-]?\d+)?)[\s,;\t\"\])]*([\[(]?[A-Za-zµμ/]{1,12})?")


@dataclass(frozen=True, slots=True)
class Dialect:
    """How a text table is written.

    Parameters
    ----------
    delimiter : str
        One of `DELIMITERS`.
    decimal, thousands : str
        Marks inside numbers; `thousands` is empty where there is none.
    comment : str
        What a line that is no row begins with; empty where there are none.
    first_line : int
        Lines before the first sample.
    names, units : tuple of str
        One a cell of a row.
    numeric, clock : tuple of bool
        Which cells are numbers, and which of these are times of day.
    interval_s : float or None
        Seconds between rows, where a line before the samples says so.
    notes : tuple of str
        What was decided though it could have been otherwise.
    """

    delimiter: str
    decimal: str
    thousands: str
    comment: str
    first_line: int
    names: tuple[str, ...]
    units: tuple[str, ...]
    numeric: tuple[bool, ...]
    clock: tuple[bool, ...]
    interval_s: float | None = None
    notes: tuple[str, ...] = ()


def split_line(line: str, delimiter: str) -> list[str]:
    """The cells of one line, quotes taken off."""
    if delimiter == " ":
        line = line.strip()
        if '"' not in line:
            return line.split()
    if '"' not in line:
        return [plain(cell) for cell in line.split(delimiter)]
    return [plain(cell) for cell in next(csv.reader([line], delimiter=delimiter, skipinitialspace=True), [])]


def understood(text: str, choices: TextChoices = NOTHING_CHOSEN) -> Dialect:
    """The dialect of a table, out of its first lines.

    Parameters
    ----------
    text : str
        Whole lines from the beginning of the file.
    choices : TextChoices
        What is not to be found out.

    Raises
    ------
    ImportingError
        Where no run of rows with numbers is found.
    """
    lines = re.split(r"\r\n|\n|\r", text)[:_MOST_LINES]
    comment = next((mark for mark in _COMMENTS if any(line.startswith(mark) for line in lines)), "")
    rows = [
        place
        for place, line in enumerate(lines)
        if line.strip() and not (comment and line.startswith(comment))
    ]
    rows = [place for place in rows if place >= (choices.head_lines or 0)]
    if len(rows) < 2:
        raise _no_rows()
    tail = [lines[place] for place in rows[-min(max(8, len(rows) // 4), _TAIL_LINES) :]]
    one_column = _is_decimal_comma([lines[place] for place in rows])
    delimiter, width, numeric = _delimiter(tail, one_column, choices.delimiter)
    if not any(numeric):
        raise _no_rows()
    marks = _chosen_marks(_marks(tail, delimiter, numeric), choices)
    first = rows[0] if choices.head_lines is not None else _first_row(lines, rows, delimiter, numeric)
    names, units = _headings(lines[:first], delimiter, width, comment)
    cells = _padded(split_line(lines[first], delimiter), width)
    units = [unit or _own_unit(cell) for unit, cell in zip(units, cells, strict=True)]
    clock = [use and seconds_of(cell) is not None for use, cell in zip(numeric, cells, strict=True)]
    return Dialect(
        delimiter, marks[0], marks[1], comment, first, tuple(names), tuple(units), tuple(numeric),
        tuple(clock), _stated_interval(lines[:first]), marks[2],
    )  # fmt: skip


def _no_rows() -> ImportingError:
    return ImportingError(
        say("no two rows of numbers were found in it"),
        say("save it as a table with one row a sample, or say what stands between cells with --delimiter"),
    )


def _own_unit(cell: str) -> str:
    unit = unit_of(unit_in(cell))
    return "" if unit is None else "s" if unit.quantity == TIME else "V"


def _delimiter(tail: list[str], one_column: bool, chosen: str | None) -> tuple[str, int, list[bool]]:
    """The delimiter that makes most columns of numbers and fewest of anything else."""
    best: tuple[float, str, int, list[bool]] | None = None
    for delimiter in DELIMITERS if chosen is None else (chosen,):
        try:
            split = [split_line(line, delimiter) for line in tail]
        except csv.Error:
            continue
        width = Counter(len(cells) for cells in split).most_common(1)[0][0]
        split = [cells for cells in split if len(cells) == width]
        numeric = [_is_numeric([cells[place] for cells in split], delimiter) for place in range(width)]
        if delimiter == "," and one_column and chosen is None:
            continue  # one column of decimal commas, not two of whole numbers
        empty = sum(all(not cells[place] for cells in split) for place in range(width))
        score = sum(numeric) - 0.6 * (width - sum(numeric) - empty) + 0.5 * (len(split) / len(tail))
        if best is None or score > best[0] + 1e-9:
            best = score, delimiter, width, numeric
    if best is None:
        raise _no_rows()
    return best[1], best[2], best[3]


def _is_numeric(cells: list[str], delimiter: str) -> bool:
    said = [cell for cell in cells if cell.lower() not in MISSING]
    if delimiter == ",":
        said = [
            cell.replace(" ", "x") if re.search(r"\d \d", cell) and ":" not in cell else cell for cell in said
        ]
    return bool(said) and sum(map(looks_numeric, said)) >= 0.6 * len(said)


def _is_decimal_comma(lines: list[str]) -> bool:
    """Two columns of digits, the second always as long and often with a leading nought."""
    pairs = [found for line in lines if (found := re.fullmatch(r"\s*[+\-]?\d+,(\d{2,})\s*", line))]
    tails = [found.group(1) for found in pairs]
    return len(tails) > 0.5 * len(lines) and len({len(tail) for tail in tails}) == 1 and any(
        tail.startswith("0") for tail in tails
    )  # fmt: skip


def _marks(tail: list[str], delimiter: str, numeric: list[bool]) -> tuple[str, str, tuple[str, ...]]:
    """Decimal mark and thousands mark, and what is to be said about them."""
    cells = [
        cell
        for line in tail
        for cell, use in zip(split_line(line, delimiter), numeric, strict=False)
        if use and ":" not in cell
    ]
    both = [cell for cell in cells if "," in cell and "." in cell]
    spaced = next(
        (mark for mark in " '\u2019\u00a0\u202f" if any(re.search(rf"\d{mark}\d{{3}}", c) for c in cells)), ""
    )
    if both:
        decimal = "," if both[0].rfind(",") > both[0].rfind(".") else "."
        return decimal, "." if decimal == "," else ",", ()
    if not any("," in cell for cell in cells):
        many = any(cell.count(".") > 1 for cell in cells)
        return (",", ".", ()) if many else (".", spaced, ())
    if any(cell.count(",") > 1 for cell in cells):
        return ".", ",", ()
    commas = [cell for cell in cells if "," in cell]
    doubtful = all(re.fullmatch(r"[+\-]?[1-9]\d{0,2},\d{3}", cell) for cell in commas)
    said = (say("the comma in {cell} is read as a decimal comma", cell=commas[0]),) if doubtful else ()
    return ",", spaced, said


def _chosen_marks(
    found: tuple[str, str, tuple[str, ...]], choices: TextChoices
) -> tuple[str, str, tuple[str, ...]]:
    """The marks that were found, where no others were chosen."""
    decimal, thousands, notes = found
    if choices.decimal is not None and choices.decimal != decimal:
        decimal, thousands, notes = choices.decimal, "", ()
    if choices.thousands is not None:
        thousands, notes = choices.thousands, ()
    return decimal, thousands, notes if choices.decimal is None else ()


def _first_row(lines: list[str], rows: list[int], delimiter: str, numeric: list[bool]) -> int:
    """The first line of the run of samples, found from the end of the head upwards."""
    first = next((place for place in reversed(rows) if _fits(lines[place], delimiter, numeric)), None)
    if first is None:
        raise _no_rows()
    strange = 0
    for place in reversed([place for place in rows if place < first]):
        if _fits(lines[place], delimiter, numeric):
            first, strange = place, 0
        else:
            strange += 1
            if strange > 2 or _is_heading(lines[place], delimiter, numeric):
                break
    return first


def _is_heading(line: str, delimiter: str, numeric: list[bool]) -> bool:
    cells = split_line(line, delimiter)
    words = [cell for cell in cells if cell and not looks_numeric(cell) and cell.lower() not in MISSING]
    return len(cells) == len(numeric) and len(words) >= 0.5 * len(numeric)


def _fits(line: str, delimiter: str, numeric: list[bool]) -> bool:
    cells = split_line(line, delimiter)
    if len(cells) != len(numeric):
        return False
    told = [cell for cell, use in zip(cells, numeric, strict=True) if use and cell.lower() not in MISSING]
    return bool(told) and all(map(looks_numeric, told))


def _headings(before: list[str], delimiter: str, width: int, comment: str) -> tuple[list[str], list[str]]:
    """Names and units out of the lines before the samples; a line of units stands below the names."""
    names, units = [""] * width, [""] * width
    for line in reversed(before[-12:]):
        cells = split_line(line.lstrip("#%/!* ") if comment and line.startswith(comment) else line, delimiter)
        if len(cells) == width + 1 and not cells[-1]:
            cells.pop()
        said = [cell for cell in cells if cell]
        if not said or len(cells) > width or len(cells) < max(width - 1, 1):
            if said and any(names):
                break
            continue
        cells = _padded(cells, width)
        if not any(units) and sum(unit_of(cell) is not None for cell in said) >= 0.5 * len(said):
            units = [cell.strip("[](){}<> ") for cell in cells]
        elif not all(map(looks_numeric, said)):
            names = cells
            break
    split = [
        split_heading(name) if not unit else (name, unit) for name, unit in zip(names, units, strict=True)
    ]
    return [name for name, _ in split], [unit for _, unit in split]


def _padded(cells: list[str], width: int) -> list[str]:
    return [*cells, *[""] * width][:width]


def _stated_interval(before: list[str]) -> float | None:
    """Seconds between rows that a line before the samples states, as an interval or as a rate."""
    for line in before:
        interval, rate = _NAMES_INTERVAL.search(line), _NAMES_RATE.search(line)
        named = interval or rate
        found = _STATED.search(line, named.end()) if named else None
        if found is None:
            continue
        try:
            value = float(found.group(1).replace(",", "."))
        except ValueError:
            continue
        said = unit_of((found.group(2) or "").strip("[(")) or _named_unit(line)
        by_rate = said.quantity == RATE if said else interval is None
        factor = said.factor if said and said.quantity in (RATE, TIME) else 1.0
        if value > 0.0 and value * factor < 1e12:
            return 1.0 / (value * factor) if by_rate else value * factor
    return None


def _named_unit(line: str) -> Unit | None:
    found = re.search(r"[\[(]\s*([^\[\]()]{1,12})\s*[\])]", line)
    return unit_of(found.group(1)) if found else None
