"""How a text table is written: its delimiter, its marks, its headings and where its samples begin."""

from __future__ import annotations

import csv
import re
from collections import Counter
from collections.abc import Collection, Sequence
from dataclasses import dataclass

from analysis.errors import ImportingError
from analysis.importing.asides import asides
from analysis.importing.cells import MISSING, looks_numeric, unit_in
from analysis.importing.choices import NOTHING_CHOSEN, SPACED_COMMA, TextChoices
from analysis.importing.days import Days, days_beside
from analysis.importing.first_row import behind_numbers, counts_rows, filled, first_row, is_short
from analysis.importing.guesses import names_channel, numbers_channels
from analysis.importing.headings import headings, lines_of, logical, padded, split_line, stated_interval
from analysis.importing.instants import seconds_of
from analysis.importing.layouts import refuse_another_kind, refuse_another_layout, refuse_commas_everywhere
from analysis.importing.marks import chosen_marks, found_marks, pointed_columns, rows_at_the_end
from analysis.importing.rewriting import Rewriting, rewriting_of
from analysis.importing.scale_rows import ScaleRows, is_scale_row, scale_rows
from analysis.importing.summaries import is_summary, margin_of, words_of
from analysis.importing.units import TIME, split_heading, unit_of
from analysis.wording import say

DELIMITERS = ("\t", ";", "|", ",", " ")
"""In the order in which they win a tie; the last stands for any run of spaces and tabs."""

ARROW = " -> "
"""What some programs put between the time of day and the line that came then. Common practice, no source."""

_COMMENTS = ("#", "%", "//", "!", "*")
_BLANK_GROUPS = re.compile(r"[+\-]?\d{1,3}(?: \d{3})+\.\d+")
_MOST_LINES = 3000
_TAIL_LINES = 400
_MOST_LABELS = 8  # channels
_MOST_ABOVE = 14  # lines that are kept
_MOST_HEAD = 100
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
    head : tuple of str
        All of them, as far as anybody reads.
    days : Days or None
        Of its rows, where a column of dates stands beside one of times of day.
    label : int or None
        The column whose words say which channel a row belongs to.
    rewriting : Rewriting or None
        How its lines become plain rows, where they are wrapped.
    scales : ScaleRows or None
        What rows above the samples say of factors and offsets; they are not among `above`.
    margin : tuple of int
        Cells before the first number of a row in which samples have nothing.
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
    head: tuple[str, ...] = ()
    days: Days | None = None
    label: int | None = None
    rewriting: Rewriting | None = None
    scales: ScaleRows | None = None
    margin: tuple[int, ...] = ()


def understood(text: str, choices: TextChoices = NOTHING_CHOSEN, end: Sequence[str] = ()) -> Dialect:
    """The dialect of a table, out of its first lines.

    Parameters
    ----------
    text : str
        Whole lines from the beginning of the file.
    choices : TextChoices
        What is not to be found out.
    end : sequence of str
        The last lines of the file: a thousands mark may show there only.

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
    margin = margin_of([split_line(line, delimiter) for line in tail], numeric)
    words = words_of(numeric, margin)
    rows = [place for place in rows if not _names_itself(lines[place], delimiter, width, words)]
    every = [lines[place] for place in rows]
    late = rows_at_the_end(end if rewriting is None and not arrow else [], delimiter, numeric)
    marks = chosen_marks(found_marks(tail + late, every, delimiter, numeric), choices)
    first = rows[0] if choices.head_lines is not None else first_row(lines, rows, delimiter, numeric)
    if first is None:
        raise _no_rows()
    if choices.head_lines is None:
        first = behind_numbers(lines, [place for place in rows if place >= first], delimiter)
    if delimiter == ",":
        above = [split_line(line, ",") for line in lines[:first]]
        refuse_commas_everywhere(above, width, split_line(lines[first], ","))
    names, units = headings(lines[:first], delimiter, width, comment, lines[first])
    if width > 2 and not names[-1] and all(names[:-1]) and counts_rows(lines, rows, first, delimiter, width):
        names, units = ["", *names[:-1]], ["", *units[:-1]]  # the heading leaves out the numbers of the rows
    cells = padded(split_line(lines[first], delimiter), width)
    if rewriting is not None and len(rewriting.names) == width:
        names, units = (list(item) for item in zip(*map(split_heading, rewriting.names), strict=True))
    units = [unit or _own_unit(cell) for unit, cell in zip(units, cells, strict=True)]
    clock = [use and seconds_of(cell) is not None for use, cell in zip(numeric, cells, strict=True)]
    scales = scale_rows(lines[:first], delimiter, width)
    understood_so = () if scales is None else scales.lines
    said = [line.strip() for line in lines[:first] if line.strip() and line.strip() not in understood_so]
    some, ends = ([split_line(line, delimiter) for line in part] for part in (tail, end))
    days = days_beside([cells, *some], ends, numeric, clock)
    beside = asides(
        [split_line(line, delimiter) for line in said], some, names, numeric,
        set() if days is None else {days.place},
    )  # fmt: skip
    label = _label(tail, delimiter, names, numeric)
    kept = said if label is None else [*said, cells[label]]
    return Dialect(
        delimiter, marks[0], marks[1], comment, physical[first], tuple(names), tuple(units), tuple(numeric),
        tuple(clock), stated_interval(lines[:first]), (*marks[2], *beside),
        _edges(tail, width) if delimiter == " " else None,
        pointed_columns(tail, delimiter, width, marks[0], marks[1]), arrow,
        tuple(kept[-_MOST_ABOVE:]), tuple(said[-_MOST_HEAD:]), days, label, rewriting, scales,
        margin,
    )  # fmt: skip


def _names_itself(line: str, delimiter: str, width: int, words: Collection[int]) -> bool:
    """Whether a line of numbers says that it is no row of samples: factors, offsets, means, limits."""
    if not line.lstrip(' "' + delimiter)[:1].isalpha():
        return False
    cells = split_line(line, delimiter)
    return is_scale_row(line, delimiter, width) or (
        is_summary(cells, words) and any(cell and looks_numeric(cell) for cell in cells)
    )


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
    whole = False  # whether that leaves no column of anything else
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
        if delimiter == " " and best is not None and best[1] == "\t" and best[2] > 1 and whole:
            continue  # the blanks between tabs are inside numbers
        score = sum(numeric) - 0.6 * (width - sum(numeric) - empty) + 0.5 * (len(split) / len(tail))
        if best is None or score > best[0] + 1e-9:
            best, whole = (score, delimiter, width, numeric), sum(numeric) + empty == width
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
