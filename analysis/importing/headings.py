"""What stands above the samples of a text: names, units, and perhaps how far the rows lie apart."""

from __future__ import annotations

import csv
import re

from analysis.importing.cells import looks_numeric, plain
from analysis.importing.choices import SPACED_COMMA
from analysis.importing.guesses import is_time
from analysis.importing.instants import seconds_of
from analysis.importing.units import (
    RATE,
    TIME,
    VOLTAGE,
    Unit,
    is_other_unit,
    split_heading,
    unit_of,
    without_accents,
)

_MOST_ABOVE = 14  # lines above the samples among which names and units are looked for
_LISTED = re.compile(
    r"^\W*(?:column|col|channel|ch|spalte|kanal)\.?\s*#?(\d{1,3})\s*[:=;,\t]\s*(\S.*)$", re.IGNORECASE
)
_THOUSANDS = {"k": 1e3, "meg": 1e6}
_TIME = re.compile(r"\b(?:time|zeit)\b", re.IGNORECASE)
_MOST_JOINED = 12  # lines of one heading: a cell of a spreadsheet has two or three
_NAMES_INTERVAL = re.compile(  # without accents, in small letters; in the languages of the workshops around
    r"(?:interval|period|increment|\bdt\b|delta ?t|\bdelta\b|δt|(?:sample|sampling|time|zeit) ?(?:time|step)"
    r"|zeitschritt|schrittweite|abtastzeit|pas de temps|okres|odstep|mintaveteli ido|интервал|период|шаг)"
)
_NAMES_RATE = re.compile(
    r"(?:\brate\b|frequen|\bfrecuen|frekven|czestotl|\bfs\b|\bsr\b|abtastrate|messrate|\bcadence\b|\btaux\b"
    r"|samples per second|s/s\b|частота)"
)
_NAMES_STEP = re.compile(
    r"^\W*(?:step|schritt|pas|paso|passo|stap|steg|krok)\b"
)  # of time, if its unit is one
_SPAN = re.compile(r"(?<![\d:.])(?:\d{1,2}:)?\d{1,2}:\d{2}(?:[.,]\d{1,9})?(?![\d:])")
_UNIT_ABOVE = re.compile(
    r"^\W*(?:(?:time|zeit|x|horizontal|voltage|spannung|vertical|y)\w*?[\s_\-]*(?:units?|einheit)"
    r"|all\s+voltages?\s+in|alle\s+spannungen\s+in|units?|einheit(?:en)?"
    r"|(?:units?|einheit)\s+(?:(?:of|for|der|von)\s+)?(?:time|zeit|x|voltage|spannung|y)\w*)"
    r"\s*[:=;,\t ]\s*[\"\[(]?(?P<unit>[^\s\"\])]{1,12})[\"\])]?[\s;,]*$",
    re.IGNORECASE,
)
_ACROSS = re.compile(r"\W*(?:x|abscissa|horizontal)\W*$", re.IGNORECASE)  # of a plot: the times
_BRACKETS = re.compile(r"\[[^\[\]]*\]|\([^()]*\)")
_RAIL = re.compile(r"\+?(?:0|5|5[.,]0|12|24)\s?V$", re.IGNORECASE)  # the name of a wire, not what it reads
_RULE = re.compile(r"[-:=+_ ]+")
_STATED = re.compile(r"([+\-]?\d[\d.,]*(?:[eE][+\-]?\d+)?)[\s,;\t\"\])]*([\[(]?[^\W\d_][\w/]{0,11})?")


def split_line(line: str, delimiter: str) -> list[str]:
    """The cells of one line, quotes taken off."""
    if delimiter == " ":
        line = line.strip()
        if '"' not in line:
            return line.split()
    if '"' not in line or delimiter == SPACED_COMMA:
        return [plain(cell) for cell in line.split(delimiter)]
    # To `csv` a carriage return within a line is an error, and so is a cell longer than its limit.
    reader = csv.reader([line.replace("\r", " ")], delimiter=delimiter, skipinitialspace=True)
    try:
        return [plain(cell) for cell in next(reader, [])]
    except csv.Error:
        return [plain(cell) for cell in line.split(delimiter)]


def lines_of(text: str) -> list[str]:
    """The lines of a text, as they are counted where the samples are read.

    Parameters
    ----------
    text : str
        With line feeds; or, where there are none, with carriage returns.
    """
    if "\n" not in text:
        return text.split("\r")
    return [line.strip("\r") for line in text.split("\n")]


def logical(lines: list[str]) -> tuple[list[str], list[int]]:
    """Lines with those of one quoted cell of a heading joined, and how many physical ones stand before each.

    Parameters
    ----------
    lines : list of str
        As the file has them.
    """
    found, before = [], []
    place = 0
    while place < len(lines):
        line, end = lines[place], place + 1
        if line.count('"') % 2 and not looks_numeric(plain(re.split(r"[;,\t|]", line)[0])):
            while end < min(place + _MOST_JOINED, len(lines)) and " ".join(lines[place:end]).count('"') % 2:
                end += 1
            joined = " ".join(lines[place:end])
            line, end = (joined, end) if joined.count('"') % 2 == 0 else (line, place + 1)
        found.append(line)
        before.append(place)
        place = end
    return found, before


def headings(
    before: list[str], delimiter: str, width: int, comment: str, row: str = ""
) -> tuple[list[str], list[str]]:
    """Names and units out of the lines before the samples; a line of units stands below the names.

    Parameters
    ----------
    before : list of str
        Those lines.
    delimiter : str
        Between cells.
    width : int
        Cells of a row.
    comment : str
        What a line that is no row begins with; empty where there are none.
    row : str
        The first row: between spaces, a heading with fewer words stands above its cells.

    Returns
    -------
    (list of str, list of str)
        One name and one unit a cell; empty ones where there are none.
    """
    listed = _listed_names(before, width)
    rows = _heading_rows(before, delimiter, width, comment, row)
    place = next((place for place, cells in enumerate(rows) if _are_units(cells)), None)
    units = [""] * width if place is None else [cell.strip("[](){}<> ") for cell in rows[place]]
    others = [cells for at, cells in enumerate(rows) if at != place]
    others = [cells for cells in others if sum(map(bool, cells)) > 1 or width < 3] or others  # "Data;;;"
    above = [] if place is None else rows[place + 1 : place + 2]
    names = listed or next(iter(above or others), [""] * width)
    if place is not None and not any(names):  # "h;min;s;signal": names, some of which are units
        names, units = rows[place], ["" if unit_of(unit) is None else unit for unit in units]
    split = [
        split_heading(name) if not unit else (name, unit) for name, unit in zip(names, units, strict=True)
    ]
    if any(is_time(name, unit) for name, unit in split if name != unit):
        split = [(name, "" if name == unit == "s" else unit) for name, unit in split]  # a name of one letter
    names, units = [name for name, _ in split], [unit for _, unit in split]
    return names, _with_units_above(names, units, before)


def _with_units_above(names: list[str], units: list[str], before: list[str]) -> list[str]:
    """The units of columns that have none, where a line above says them of all times or all voltages."""
    said = [found for line in before if (found := _UNIT_ABOVE.match(line.strip()))]
    known = {unit.quantity: item["unit"] for item in said if (unit := unit_of(item["unit"])) is not None}
    return [
        unit or known.get(TIME if is_time(name, "") or _ACROSS.match(name) else VOLTAGE, "")
        for name, unit in zip(names, units, strict=True)
    ]


def _heading_rows(before: list[str], delimiter: str, width: int, comment: str, row: str) -> list[list[str]]:
    """Rows of words above the samples, the lowest first, as far as they follow each other."""
    rows: list[list[str]] = []
    for line in reversed(before[-_MOST_ABOVE:]):
        plain_line = line.lstrip("#%/!* ") if comment and line.startswith(comment) else line
        if not plain_line.strip():
            continue
        cells = _heading_cells(plain_line, delimiter, width)
        if not cells and rows:
            break
        if width == 1 and _stated_in(plain_line) is not None:
            continue
        said = [cell for cell in cells if cell]
        if all(_RULE.fullmatch(cell) for cell in said):
            continue  # a ruled line
        if said and 2 * sum(looks_numeric(cell) and not _RAIL.match(cell) for cell in said) < len(said):
            above = _above(line, cells, row) if delimiter == " " else cells
            rows.append(padded(above, width))
    return rows


def _above(line: str, cells: list[str], row: str) -> list[str]:
    """The words of a heading by the cells that they stand over; from the left where that is not clear."""
    below = [found.span() for found in re.finditer(r"\S+", row)]
    words = [found.span() for found in re.finditer(r"\S+", line)]
    in_columns = "\t" not in line + row and re.search(r"\S \S", row.strip()) is None
    if not in_columns or not len(cells) == len(words) < len(below):
        return cells
    found = [""] * len(below)
    for cell, (start, stop) in zip(cells, words, strict=True):
        shared = [min(stop, end) - max(start, begin) for begin, end in below]
        place = shared.index(max(shared))
        if shared[place] <= 0 or found[place]:
            return cells
        found[place] = cell
    return found


def _heading_cells(line: str, delimiter: str, width: int) -> list[str]:
    """The cells of a line that may be a heading; none where it has other than the rows have."""
    cells = split_line(line, delimiter)
    while len(cells) > width and not cells[-1]:
        cells.pop()
    if len(cells) == width + 1 and cells[0].endswith(":"):
        cells = cells[1:]  # "units: ms mV mV"
    if len(cells) > width and len(joined := _with_brackets(cells, delimiter)) == width:
        return joined
    longest = width if delimiter == " " or width == 1 else width + 2  # of columns that are never filled
    if max(width - 1, 1) <= len(cells) <= longest:
        return cells
    ways = [
        re.split(r"\s{2,}|\t", line.strip()),
        *(split_line(line, mark) for mark in "\t;,|" if mark in line),
    ]
    for other in ways:  # a heading may be written in another manner than the rows
        cells = [plain(cell) for cell in other]
        if len(cells) == width > 1 and any(split_heading(cell)[1] or _TIME.search(cell) for cell in cells):
            return cells
    return []


def _with_brackets(cells: list[str], delimiter: str) -> list[str]:
    """Cells that a delimiter inside brackets took apart, together again: ``time (s, elapsed)``."""
    found: list[str] = []
    for cell in cells:
        open_still = found and found[-1].count("(") + found[-1].count("[") > (
            found[-1].count(")") + found[-1].count("]")
        )
        if open_still:
            found[-1] += delimiter + " " + cell
        else:
            found.append(cell)
    return found


def _are_units(cells: list[str]) -> bool:
    said = [cell for cell in cells if cell]
    known = sum(unit_of(cell) is not None for cell in said)
    others = sum(is_other_unit(cell.strip("[](){}<> ")) for cell in said)
    return known > 0 and 2 * (known + others) > len(said)


def _listed_names(before: list[str], width: int) -> list[str]:
    """Names that are listed line by line (``Column 1: Time [ms]``), if there is one for each column."""
    found = {int(item[1]): item[2].strip() for line in before if (item := _LISTED.match(line))}
    wanted = range(1, width + 1)
    return [found[number] for number in wanted] if width > 1 and set(wanted) <= set(found) else []


def padded(cells: list[str], width: int) -> list[str]:
    """As many cells as there are columns."""
    return [*cells, *[""] * width][:width]


def stated_interval(before: list[str]) -> float | None:
    """Seconds between rows that a line before the samples states, as an interval or as a rate."""
    for line in before:
        found = _stated_in(line)
        if found is not None and 0.0 < found < float("inf"):
            return found
    return None


def _stated_in(line: str) -> float | None:
    low = without_accents(line)
    interval, rate, step = (form.search(low) for form in (_NAMES_INTERVAL, _NAMES_RATE, _NAMES_STEP))
    named = interval or rate or step
    if named is None:
        return None
    rest = _BRACKETS.sub(_blank, line)
    span = _SPAN.search(rest, named.end())
    if span is not None and not (rate and not interval):
        return seconds_of(span.group())
    found = _STATED.search(rest, named.end())
    if found is None:
        return None
    value = _stated_number(found.group(1))
    said = unit_of((found.group(2) or "").strip("[(")) or _named_unit(line)
    if said is None and (found.group(2) or "").lower() in _THOUSANDS:  # "rate: 10 k"
        said = Unit(RATE, _THOUSANDS[(found.group(2) or "").lower()])
    if named is step and (said is None or said.quantity != TIME):
        return None
    by_rate = said.quantity == RATE if said else interval is None
    factor = said.factor if said and said.quantity in (RATE, TIME) else 1.0
    if not (value > 0.0 and value * factor < 1e12):
        return None
    return 1.0 / (value * factor) if by_rate else value * factor


def _blank(found: re.Match[str]) -> str:
    return " " * len(found.group())  # "[1/s]" states no number


def _stated_number(text: str) -> float:
    """A number with either decimal mark; with both marks the last one is it. NaN where it is none."""
    last = max(text.rfind(","), text.rfind("."))
    if "," in text and "." in text:
        text = text[:last].replace(",", "").replace(".", "") + "." + text[last + 1 :]
    try:
        return float(text.replace(",", "."))
    except ValueError:
        return float("nan")


def _named_unit(line: str) -> Unit | None:
    found = re.search(r"[\[(]\s*([^\[\]()]{1,12})\s*[\])]", line)
    return unit_of(found.group(1)) if found else None
