"""How a text table is written: its delimiter, its marks, its headings and where its samples begin."""

from __future__ import annotations

import csv
import re
from collections import Counter
from dataclasses import dataclass
from itertools import pairwise

from analysis.errors import ImportingError
from analysis.importing.asides import asides
from analysis.importing.cells import MISSING, looks_numeric, unit_in
from analysis.importing.choices import NOTHING_CHOSEN, SPACED_COMMA, TextChoices
from analysis.importing.first_row import behind_numbers, counts_rows, filled, first_row, is_short
from analysis.importing.guesses import names_channel, numbers_channels
from analysis.importing.headings import headings, lines_of, logical, padded, split_line, stated_interval
from analysis.importing.instants import seconds_of
from analysis.importing.layouts import refuse_another_kind, refuse_another_layout, refuse_commas_everywhere
from analysis.importing.rewriting import Rewriting, rewriting_of
from analysis.importing.units import TIME, split_heading, unit_of
from analysis.wording import say

DELIMITERS = ("\t", ";", "|", ",", " ")
"""In the order in which they win a tie; the last stands for any run of spaces and tabs."""

ARROW = " -> "
"""What some programs put between the time of day and the line that came then. Common practice, no source."""

_COMMENTS = ("#", "%", "//", "!", "*")
_GROUPED = re.compile(r"[+\-]?[1-9]\d{0,2},\d{3}")  # a thousand, or a number to three decimals
_BLANK_GROUPS = re.compile(r"[+\-]?\d{1,3}(?: \d{3})+\.\d+")
_POINTED = re.compile(r"[+\-]?[1-9]\d{0,2}\.\d{3}")
_MOST_LINES = 3000
_TAIL_LINES = 400
_MOST_LABELS = 8  # channels
_MOST_ABOVE = 14  # lines that are kept
_SPACED_COMMAS = re.compile(r"\s*[+\-]?\d+,\d+(?:, [+\-]?\d+,\d+)+\s*")


@dataclass(frozen=True, slots=True)
class Edges:
    """Where the cells of every line stand, where they stand at the same places in each.

    Parameters
    ----------
    at : tuple of int
        One a cell: the letter that it begins at, or the one after its last.
    right : bool
        Whether it is the latter.
    """

    at: tuple[int, ...]
    right: bool


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
    edges : Edges or None
        Of cells between spaces that stand in line.
    pointed : tuple of bool
        Which columns have a decimal point though the others have a comma; empty where none has.
    arrow : str
        What `ARROW` behind the first cell of a line is read as; empty where there is none.
    above : tuple of str
        The last lines before the first sample that hold anything.
    label : int or None
        The column whose words say which channel a row belongs to.
    rewriting : Rewriting or None
        How its lines become plain rows, where they are wrapped.
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
    edges: Edges | None = None
    pointed: tuple[bool, ...] = ()
    arrow: str = ""
    above: tuple[str, ...] = ()
    label: int | None = None
    rewriting: Rewriting | None = None


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
    refuse_another_kind(text)
    written = lines_of(text)[:_MOST_LINES]
    rewriting = rewriting_of(written)
    written = written if rewriting is None else [rewriting.line(line) for line in written]
    lines, physical = logical(written)
    arrow = _arrow(lines)
    lines = [line.replace(ARROW, arrow, 1) for line in lines] if arrow else lines
    comment = next((mark for mark in _COMMENTS if any(line.startswith(mark) for line in lines)), "")
    rows = [
        place
        for place, line in enumerate(lines)
        if line.strip() and not (comment and line.startswith(comment))
    ]
    rows = [place for place in rows if physical[place] >= (choices.head_lines or 0)]
    if len(rows) < 2:
        raise _no_rows()
    tail = [lines[place] for place in rows[-min(max(8, len(rows) // 4), _TAIL_LINES) :]]
    one_column = _is_decimal_comma([lines[place] for place in rows])
    delimiter, width, numeric = _delimiter(tail, one_column, choices.delimiter)
    if not any(numeric):
        raise _no_rows()
    refuse_another_layout([split_line(lines[place], delimiter) for place in rows], width)
    every = [lines[place] for place in rows]
    marks = _chosen_marks(_marks(tail, every, delimiter, numeric), choices)
    first = rows[0] if choices.head_lines is not None else first_row(lines, rows, delimiter, numeric)
    if first is None:
        raise _no_rows()
    if choices.head_lines is None:
        first = behind_numbers(lines, [place for place in rows if place >= first], delimiter)
    if delimiter == ",":
        above = [split_line(line, ",") for line in lines[:first]]
        refuse_commas_everywhere(above, width, split_line(lines[first], ","))
    names, units = headings(lines[:first], delimiter, width, comment)
    if width > 2 and not names[-1] and all(names[:-1]) and counts_rows(lines, rows, first, delimiter, width):
        names, units = ["", *names[:-1]], ["", *units[:-1]]  # the heading leaves out the numbers of the rows
    cells = padded(split_line(lines[first], delimiter), width)
    if rewriting is not None and len(rewriting.names) == width:
        names, units = (list(item) for item in zip(*map(split_heading, rewriting.names), strict=True))
    units = [unit or _own_unit(cell) for unit, cell in zip(units, cells, strict=True)]
    clock = [use and seconds_of(cell) is not None for use, cell in zip(numeric, cells, strict=True)]
    beside = asides(
        lines[:first], [split_line(line, delimiter) for line in lines[:first]],
        [split_line(line, delimiter) for line in tail], names, numeric,
    )  # fmt: skip
    label = _label(tail, delimiter, names, numeric)
    kept = [line.strip() for line in lines[:first] if line.strip()]
    kept += [] if label is None else [cells[label]]
    return Dialect(
        delimiter, marks[0], marks[1], comment, physical[first], tuple(names), tuple(units), tuple(numeric),
        tuple(clock), stated_interval(lines[:first]), (*marks[2], *beside),
        _edges(tail, width) if delimiter == " " else None,
        _pointed(tail, delimiter, width, marks[0], marks[1]), arrow,
        tuple(kept[-_MOST_ABOVE:]), label, rewriting,
    )  # fmt: skip


def _label(tail: list[str], delimiter: str, names: list[str], numeric: list[bool]) -> int | None:
    """The column of words that says which channel a row belongs to; None where there is none."""
    for place, use in enumerate(numeric):
        if use or not (numbers_channels(names[place]) or not names[place]):
            continue
        words = {cells[place] for line in tail if len(cells := split_line(line, delimiter)) == len(numeric)}
        if words and len(words) <= _MOST_LABELS and all(map(names_channel, words)):
            return place
    return None


def _arrow(lines: list[str]) -> str:
    """What the arrow of most lines is to be read as: what stands between the other cells."""
    having = [line for line in lines if ARROW in line]
    if len(having) < 2 or 2 * len(having) < len([line for line in lines if line.strip()]):
        return ""
    return next((mark for mark in (";", "\t", "|", ",") if mark in having[-1]), " ")


def _edges(tail: list[str], width: int) -> Edges | None:
    """Where the cells stand, if at the same letters in every line."""
    spans = [[item.span() for item in re.finditer(r"\S+", line)] for line in tail if "\t" not in line]
    whole = [row for row in spans if len(row) == width]
    for side in (1, 0):
        places = {tuple(span[side] for span in row) for row in whole}
        if len(whole) > 1 and len(places) == 1:
            return Edges(places.pop(), bool(side))
    return None


def _no_rows() -> ImportingError:
    return ImportingError(
        say("no two rows of numbers were found in it"),
        say("save it as a table with one row a sample, or say what stands between cells with --delimiter"),
    )


def _own_unit(cell: str) -> str:
    found = unit_in(cell)
    unit = unit_of(found)
    if found == "%":
        return found
    return "" if unit is None else "s" if unit.quantity == TIME else "V"


def _delimiter(tail: list[str], one_column: bool, chosen: str | None) -> tuple[str, int, list[bool]]:
    """The delimiter that makes most columns of numbers and fewest of anything else."""
    best: tuple[float, str, int, list[bool]] | None = None
    candidates = DELIMITERS if chosen is None else (chosen,)
    if chosen is None and all(map(_SPACED_COMMAS.fullmatch, tail)):
        candidates = (SPACED_COMMA,)
    for delimiter in candidates:
        try:
            split = [split_line(line, delimiter) for line in tail]
        except csv.Error:
            continue
        split, width = _one_width(split, delimiter)
        numeric = [_is_numeric([cells[place] for cells in split], delimiter) for place in range(width)]
        if delimiter == "," and one_column and chosen is None:
            continue  # one column of decimal commas, not two of whole numbers
        empty = sum(all(not cells[place] for cells in split) for place in range(width))
        if delimiter == " " and best is not None and best[1] == "\t" and best[2] > 1 and all(best[3]):
            continue  # the blanks between tabs are inside numbers
        score = sum(numeric) - 0.6 * (width - sum(numeric) - empty) + 0.5 * (len(split) / len(tail))
        if best is None or score > best[0] + 1e-9:
            best = score, delimiter, width, numeric
    if best is None:
        raise _no_rows()
    return best[1], best[2], best[3]


def _one_width(rows: list[list[str]], delimiter: str) -> tuple[list[list[str]], int]:
    """The rows that have as many cells as most, and how many that is."""
    lengths = Counter(map(len, rows))
    width, often = lengths.most_common(1)[0]
    if delimiter == " ":  # where cells are blank, most rows may be short
        longest = max(length for length, count in lengths.items() if 5 * count >= len(rows))
        short = all(is_short(" ".join(cells), longest) for cells in rows if len(cells) < longest)
        width = longest if short else width
    elif 2 * often < len(rows):  # as many empty cells behind each row as it happens to have
        rows = [filled(cells) for cells in rows]
        width = Counter(map(len, rows)).most_common(1)[0][0]
    return [cells for cells in rows if len(cells) == width], width


def _is_numeric(cells: list[str], delimiter: str) -> bool:
    said = [cell for cell in cells if cell.lower() not in MISSING]
    if delimiter == ",":
        said = [cell.replace(" ", "x") if _is_two(cell) else cell for cell in said]
    return bool(said) and sum(map(looks_numeric, said)) >= 0.6 * len(said)


def _is_two(cell: str) -> bool:
    """Whether a blank parts two numbers, and is neither inside a time nor a thousands mark."""
    return re.search(r"\d \d", cell) is not None and ":" not in cell and not _BLANK_GROUPS.fullmatch(cell)


def _is_decimal_comma(lines: list[str]) -> bool:
    """Two columns of digits, the second always as long and often with a leading nought."""
    pairs = [found for line in lines if (found := re.fullmatch(r"\s*[+\-]?\d+,(\d{2,})\s*", line))]
    tails = [found.group(1) for found in pairs]
    return len(tails) > 0.5 * len(lines) and len({len(tail) for tail in tails}) == 1 and any(
        tail.startswith("0") for tail in tails
    )  # fmt: skip


def _marks(
    tail: list[str], every: list[str], delimiter: str, numeric: list[bool]
) -> tuple[str, str, tuple[str, ...]]:
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
    return ",", spaced, said


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


def _pointed(tail: list[str], delimiter: str, width: int, decimal: str, thousands: str) -> tuple[bool, ...]:
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
