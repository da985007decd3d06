"""The decimal mark and the thousands mark of a text table, out of its rows."""

from __future__ import annotations

import re
from collections.abc import Sequence
from itertools import pairwise

from analysis.importing.cells import MISSING, looks_numeric
from analysis.importing.choices import TextChoices
from analysis.importing.headings import split_line
from analysis.wording import say

_GROUPED = re.compile(r"[+\-]?[1-9]\d{0,2},\d{3}")  # a thousand, or a number to three decimals
_POINTED = re.compile(r"[+\-]?[1-9]\d{0,2}\.\d{3}")
_GROUPS = re.compile(r"[+\-]?[1-9]\d{0,2}(?:\.\d{3})+")


def rows_at_the_end(end: Sequence[str], delimiter: str, numeric: Sequence[bool]) -> list[str]:
    """Of the last lines of a file those that are rows of samples, whatever their marks.

    Parameters
    ----------
    end : sequence of str
        Those lines.
    delimiter : str
        Between cells.
    numeric : sequence of bool
        Which cells of a row are numbers.
    """
    found = []
    for line in end:
        cells = split_line(line, delimiter)
        used = [
            cell for cell, use in zip(cells, numeric, strict=False) if use and cell.lower() not in MISSING
        ]
        if len(cells) == len(numeric) and used and all(map(looks_numeric, used)):
            found.append(line)
    return found


def found_marks(
    tail: list[str], every: list[str], delimiter: str, numeric: list[bool]
) -> tuple[str, str, tuple[str, ...]]:
    """Decimal mark and thousands mark, and what is to be said about them.

    Parameters
    ----------
    tail : list of str
        Rows to look at closely.
    every : list of str
        The rows from the first on.
    delimiter : str
        Between cells.
    numeric : list of bool
        Which cells of a row are numbers.
    """
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
        rows = [split_line(line, delimiter) for line in every]
        many = any(cell.count(".") > 1 and looks_numeric(cell) for cell in cells)
        return (",", ".", ()) if many or _count_past_a_thousand(rows, len(numeric)) else (".", spaced, ())
    if any(cell.count(",") > 1 for cell in cells):
        return ".", ",", ()
    commas = [cell for cell in cells if "," in cell]
    doubtful = all(_GROUPED.fullmatch(cell) for cell in commas)
    if doubtful and _are_thousands([split_line(line, delimiter) for line in every], len(numeric)):
        return ".", ",", (say("the comma in {cell} is read as a thousands mark", cell=commas[0]),)
    said = (say("the comma in {cell} is read as a decimal comma", cell=commas[0]),) if doubtful else ()
    return ",", spaced or _grouping_point(cells, every, delimiter, numeric), said


def _grouping_point(cells: list[str], every: list[str], delimiter: str, numeric: list[bool]) -> str:
    """The point, where the decimal mark is a comma and every point parts groups of three digits."""
    if not any("." in cell for cell in cells):
        return ""
    rows = [row for line in every if len(row := split_line(line, delimiter)) == len(numeric)]
    written = [cell for row in rows for cell, use in zip(row, numeric, strict=True) if use]
    pointed = [cell for cell in [*cells, *written] if "." in cell and looks_numeric(cell)]
    return "." if pointed and all(map(_GROUPS.fullmatch, pointed)) else ""


def _count_past_a_thousand(rows: list[list[str]], width: int) -> bool:
    """Whether a column goes from 999 to 1.000, and no point of the table can be a decimal one."""
    table = [row for row in rows if len(row) == width]
    pointed = [cell for row in table for cell in row if "." in cell and looks_numeric(cell)]
    if not pointed or not all(map(_POINTED.fullmatch, pointed)):
        return False
    for place in range(width):
        for above, below in pairwise(row[place] for row in table):
            if above.isdecimal() and len(above) == 3 and _POINTED.fullmatch(below):
                step = int(below.replace(".", "")) - int(above)
                return 0 < step <= 100  # as a decimal number it would fall back to nearly nought
    return False


def _are_thousands(rows: list[list[str]], width: int) -> bool:
    """Whether whole numbers below a thousand stand in one column with those that have a comma.

    Decimals are written to one length throughout (then 500 would be 0,500) or without noughts at their end.
    Where a column has a comma in every cell, only noughts behind it show a thousands mark.
    """
    table = [row for row in rows if len(row) == width]
    columns = [[row[place] for row in table if looks_numeric(row[place])] for place in range(width)]
    found = mixed = False
    noughts = True
    for cells in columns:
        commas = [cell for cell in cells if "," in cell]
        if not commas:
            continue
        found = True
        whole = any(re.fullmatch(r"[+\-]?\d{1,3}", cell) for cell in cells)
        mixed |= whole and any(cell.endswith("0") for cell in commas)
        noughts &= all(cell.endswith(",000") for cell in commas)
        if any("," in cell and not _GROUPED.fullmatch(cell) for cell in cells):
            return False
    return found and (mixed or noughts)


def chosen_marks(
    found: tuple[str, str, tuple[str, ...]], choices: TextChoices
) -> tuple[str, str, tuple[str, ...]]:
    """The marks that were found, where no others were chosen."""
    decimal, thousands, notes = found
    if choices.decimal is not None and choices.decimal != decimal:
        decimal, thousands, notes = choices.decimal, "", ()
    if choices.thousands is not None:
        thousands, notes = choices.thousands, ()
    return decimal, thousands, notes if choices.decimal is None else ()


def pointed_columns(
    tail: list[str], delimiter: str, width: int, decimal: str, thousands: str
) -> tuple[bool, ...]:
    """Columns whose numbers have a point where the others have a comma, and cannot mean thousands by it."""
    if decimal != "," or thousands == ".":
        return ()
    rows = [cells for line in tail if len(cells := split_line(line, delimiter)) == width]
    found = tuple(_has_points([cells[place] for cells in rows]) for place in range(width))
    return found if any(found) else ()


def _has_points(cells: list[str]) -> bool:
    plain_ones = [found for cell in cells if (found := re.fullmatch(r"[+\-]?(\d+)\.(\d+)", cell))]
    sure = any(len(found[2]) != 3 or found[1] == "0" for found in plain_ones)
    return sure and not any("," in cell for cell in cells)
