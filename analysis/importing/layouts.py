"""Layouts without a row a sample: they are told apart, so that nobody reads nonsense out of them."""

from __future__ import annotations

import re
from collections.abc import Sequence

from analysis.errors import ImportingError
from analysis.importing.cells import MISSING, looks_numeric
from analysis.wording import say

_MOST_CHANNELS = 8
_LEAST_ROUNDS = 3
_LEAST_NUMBERED = 5  # a count may be a measurement too


_MARKUP = re.compile(r"\s*<(?:!|\?|[A-Za-z][\w:]*[\s/>])")
_WHOLE_CLOCK = re.compile(r".*\d\d:\d\d$")
_PART = re.compile(r"\d{1,6}$")
_JSON = re.compile(r'\s*(?:\{\s*"|\[\s*[\[{])')


def refuse_another_kind(text: str) -> None:
    """Tell text that is written for programs, with marks of its own around every number.

    Parameters
    ----------
    text : str
        From the beginning of the file.

    Raises
    ------
    ImportingError
        Where it is such a text.
    """
    kind = say("XML or a web page") if _MARKUP.match(text) else say("JSON") if _JSON.match(text) else None
    if kind is not None:
        raise ImportingError(
            say("it is {kind}, not a table", kind=kind), say("save it as a table with one row a sample")
        )


def refuse_another_layout(rows: Sequence[Sequence[str]], width: int) -> None:
    """Tell a table whose rows are channels, or that has a line for each channel and moment.

    Parameters
    ----------
    rows : sequence of sequence of str
        Cells of the first lines, headings among them.
    width : int
        Cells of most lines.

    Raises
    ------
    ImportingError
        Where the table is laid out so.
    """
    if _lies_on_its_side(rows):
        raise ImportingError(
            say("it lies on its side: each line is a channel"),
            say("save it with a row a sample and a column for each channel (a spreadsheet can transpose it)"),
        )
    labels = _channels_in_turn([row for row in rows if len(row) == width])
    if labels:
        raise ImportingError(
            say("its rows belong to more than one channel in turn: {labels}", labels=", ".join(labels)),
            say("save it with a row a sample and a column for each channel"),
        )


def refuse_commas_everywhere(before: Sequence[Sequence[str]], width: int, first: Sequence[str] = ()) -> None:
    """Tell a table whose comma stands between cells and inside numbers: nobody can take it apart.

    Parameters
    ----------
    before : sequence of sequence of str
        Cells of the lines above the samples, taken apart at commas.
    width : int
        Cells of a row, taken apart likewise.
    first : sequence of str
        The first row.

    Raises
    ------
    ImportingError
        Where a heading has half as many cells as a row, or one less and a time of day is torn in two.
    """
    heading = next((row for row in reversed(before) if len(row) > 1), ())
    clock = next((place for place, cell in enumerate(first[:-1]) if _WHOLE_CLOCK.match(cell)), None)
    if clock is not None and _PART.match(first[clock + 1]) and len(heading) == width - 1:
        raise ImportingError(
            say("its comma stands between cells and inside times"),
            say("save it with a semicolon or a tab between cells"),
        )
    if len(heading) * 2 == width and not any(map(_is_number, heading)):
        raise ImportingError(
            say("its comma stands between cells and inside numbers"),
            say("save it with a semicolon or a tab between cells"),
        )


def _lies_on_its_side(rows: Sequence[Sequence[str]]) -> bool:
    """Few long lines, each a word and then numbers."""
    long = [row for row in rows if len(row) > 3]
    return 1 < len(long) <= _MOST_CHANNELS and all(
        len(row) > 2 * len(long) and not _is_number(row[0]) and all(map(_is_number, row[1:-1]))
        for row in long
    )


def _channels_in_turn(rows: Sequence[Sequence[str]]) -> tuple[str, ...]:
    """Words that take turns down a column while a number beside them stands still; empty where none do."""
    rows = rows[-60:]
    for place in range(len(rows[0]) if rows else 0):
        words = [row[place] for row in rows]
        last = words[-_LEAST_ROUNDS * 2 :]
        numbered = all(word.isdecimal() and len(word) < 3 for word in last)
        if not numbered and not all(word and not _is_number(word) for word in last):
            continue
        turn = _turn(words, _LEAST_NUMBERED if numbered else _LEAST_ROUNDS)
        if turn and any(_stands_still(rows, other, turn) for other in range(len(rows[0])) if other != place):
            return tuple(words[-turn:])
    return ()


def _turn(words: Sequence[str], rounds: int) -> int:
    """After how many lines the words come again in the same order; 0 where they do not."""
    for turn in range(2, _MOST_CHANNELS + 1):
        last = words[-turn * rounds :]
        if len(last) == turn * rounds and len(set(last)) == turn and last[:-turn] == last[turn:]:
            return turn
    return 0


def _stands_still(rows: Sequence[Sequence[str]], place: int, turn: int) -> bool:
    """Whether a number is the same for all lines of a turn, and another for the next."""
    last = [row[place] for row in rows[-turn * _LEAST_ROUNDS :]]
    rounds = [set(last[start : start + turn]) for start in range(0, len(last), turn)]
    return all(map(_is_number, last)) and all(len(item) == 1 for item in rounds) and rounds[0] != rounds[1]


def _is_number(cell: str) -> bool:
    return looks_numeric(cell) or cell.lower() in MISSING
