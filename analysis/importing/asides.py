"""What stands beside the samples of a text and is left out, or may change what they mean: it is said."""

from __future__ import annotations

import re
from collections.abc import Collection, Sequence

from analysis.importing.cells import MISSING, looks_numeric
from analysis.wording import Wording, plural, say

_SCALES = re.compile(
    r"\b(?:probe|tastkopf|tastteiler|attenuation|gain|scale|scaling|skalierung|multiplier|factor|faktor"
    r"|(?:m?V|volts?)\s+per)\b.*\d",
    re.IGNORECASE,
)
_MOST_SAID = 60  # letters of a line
_WESTERN = frozenset("äöüÄÖÜßéèêëàáâçñíóôúîïæøåÅØÆÉÈÀÇÑÍÓÚµ°²³±·–—’‘“”„€§½Ø…×«»¿¡´`¨\u00a0")


def asides(
    before: Sequence[Sequence[str]],
    rows: Sequence[Sequence[str]],
    names: Sequence[str],
    numeric: Sequence[bool],
    used: Collection[int] = (),
) -> tuple[str, ...]:
    """Sentences about what was left out of a table.

    Parameters
    ----------
    before : sequence of sequence of str
        Cells of the lines before the samples.
    rows : sequence of sequence of str
        Cells of some rows of samples.
    names : sequence of str
        Of the columns.
    numeric : sequence of bool
        Which columns hold numbers.
    used : collection of int
        Columns of something else that is read all the same.

    Returns
    -------
    tuple of str
        Empty where nothing has to be said.
    """
    passed = sum(_is_row(cells, numeric) for cells in before)
    numbers = plural(
        "{count} line of numbers above the samples was left out",
        "{count:,} lines of numbers above the samples were left out",
        count=passed,
    )
    return (*((numbers,) if passed else ()), *_unread(rows, names, numeric, used))


_READ_AS = {
    "cp1250": say(
        "the names of the columns were read as Central European; choose another encoding where they look"
        " wrong"
    ),
    "cp1251": say(
        "the names of the columns were read as Cyrillic; choose another encoding where they look wrong"
    ),
    "cp1254": say(
        "the names of the columns were read as Turkish; choose another encoding where they look wrong"
    ),
    "cp932": say(
        "the names of the columns were read as Japanese; choose another encoding where they look wrong"
    ),
}


def scale_line(above: Sequence[str]) -> str:
    """The first line that may say how the numbers are meant; empty where there is none."""
    return next((line.strip() for line in above if _SCALES.search(line)), "")[:_MOST_SAID]


def taken_as_they_stand(line: str) -> Wording:
    """What is said of a line that may say how the numbers are meant, where it was not followed."""
    return say(
        "a line above the samples says {line!r}: the numbers are taken as they stand; give a factor where"
        " that is not in them",
        line=line,
    )


def foreign_letters(names: Sequence[str], encoding: str) -> tuple[str, ...]:
    """A sentence where names hold letters that a western workshop does not write; empty otherwise.

    Parameters
    ----------
    names : sequence of str
        Of columns.
    encoding : str
        That they were read in.
    """
    letters = [letter for name in names for letter in name if not letter.isascii()]
    if encoding in _READ_AS and letters:
        return (_READ_AS[encoding],)
    if encoding != "cp1252" or all(letter in _WESTERN for letter in letters):
        return ()
    return (
        say("the names of the columns were read as Latin-1; choose another encoding where they look wrong"),
    )


def _is_row(cells: Sequence[str], numeric: Sequence[bool]) -> bool:
    if len(cells) != len(numeric) or all(cell.isdecimal() for cell in cells):
        return False
    told = [cell for cell, use in zip(cells, numeric, strict=True) if use]
    return 2 * sum(looks_numeric(cell) for cell in told) > len(told) > 1


def _unread(
    rows: Sequence[Sequence[str]], names: Sequence[str], numeric: Sequence[bool], used: Collection[int]
) -> tuple[str, ...]:
    """Columns with digits in their cells that are no numbers all the same."""
    said = []
    for place, use in enumerate(numeric):
        cells = [row[place] for row in rows if place < len(row) and row[place].lower() not in MISSING]
        digits = sum(any(map(str.isdigit, cell)) for cell in cells)
        if use or place in used or not cells or 2 * digits < len(cells):
            continue
        said.append(
            say(
                "column {name} holds no plain numbers ({cell}) and was left out",
                name=names[place] or place + 1,
                cell=cells[0][:_MOST_SAID],
            )
        )
    return tuple(said)
