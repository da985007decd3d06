"""Lines of a head that say which channel is which wire: "Channel A = sensor ground", "CH1: 5 V reference"."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from dataclasses import replace

from analysis.importing.headings import split_line
from analysis.importing.model import Column
from analysis.importing.units import split_heading, unit_of, without_accents
from analysis.importing.wire_words import is_vague, names_known_wire, said_role, taken_apart

_CHANNEL_WORD = (
    r"(?:ch|chan|channel|kanal|kanaal|canal|canale|voie|input|eingang|ingang|analog|analog ?in(?:put)?|ain?"
    r"|probe|tastkopf|wire|leitung|line|trace|track|spur|pin|klemme|column|col|spalte|kolom|kolumn|канал|[uv])"
)
_TITLE = r"(?:name|label|title|bezeichnung|beschreibung|nom|description)"
_ID = r"(?:\d{1,2}|[a-h])"
_NAMED = re.compile(
    rf"^(?:{_TITLE}\W+(?:of\W+|von\W+)?)?(?:(?P<word>{_CHANNEL_WORD})[\s_.#\-]*(?:no|nr)?[\s_.#\-]*)?(?P<id>{_ID})"
    rf"(?:\s*\([^()]*\)?)?(?:\W*(?:voltage|volts?|spannung|value|wert|avg|mean|{_TITLE}))?$"
)
_UNNAMED = re.compile(r"column \d+$")  # a name of ours: nobody knows which channel that is
_PART = re.compile(r"\s*(?:=|:=|:|->|=>|→|\s[-\u2013]\s|\t|;)\s*")
_IN_BRACKETS = re.compile(rf"\b((?:{_CHANNEL_WORD}[\s_.#\-]*)?{_ID})\s*\(([^()]+)\)", re.IGNORECASE)
_SEVERAL = re.compile(r"\s*[;,|/]\s*|\s{2,}")
_NEXT = re.compile(rf"\s+(?={_CHANNEL_WORD}[\s_.#\-]*{_ID}\s*[=:])", re.IGNORECASE)
_LINKS = re.compile(
    r"\s+(?:is|ist|an|auf|on|at|sur|op|na|connected to|carries|measures|misst)\s+", re.IGNORECASE
)
_SETTING = re.compile(
    r"coupling|kopplung|trigger|filter|bandwidth|bandbreite|range|bereich|offset|gain|level|\bdc\b|\bac\b|source"
    r"|quelle|colou?r|farbe|\b(?:not|no|kein\w*|nicht)\b"
)
_A_RANGE = re.compile(r"[+\-\u00b1]?\s?\d+(?:[.,]\d+)?\s?(?:m?v(?:/div)?|volts?)")  # what a channel is set to
_MOST_WORDS = 5  # of what a line calls a wire; a sentence has more


def legend(
    head: Sequence[str], columns: Sequence[Column], delimiter: str = "", numeric: Sequence[bool] = ()
) -> dict[int, tuple[str, str]]:
    """What the lines of a head call the wires of the columns whose own headings name none.

    Parameters
    ----------
    head : sequence of str
        The lines before the samples.
    columns : sequence of Column
        Of the table.
    delimiter : str
        Between its cells.
    numeric : sequence of bool
        Which cells of a row are columns.

    Returns
    -------
    dict of int to (str, str)
        By place: the words, and the line that they stand in. Empty where no line names a channel; without
        those that two lines call different wires.
    """
    keys: dict[str, int] = {}
    for place, column in enumerate(columns):
        if said_role(column.words) is None or is_vague(column.words):
            keys.setdefault(_plain(column.words), place)
            keys.setdefault("" if _UNNAMED.match(column.words) else _number(column.words), place)
    keys.pop("", None)
    found: dict[int, tuple[str, str]] = {}
    torn = set()
    free = set(keys.values())
    for line in head:
        if _is_own_heading(line, columns):
            continue
        pairs = [(keys.get(_plain(name), keys.get(_number(name), -1)), words) for name, words in _pairs(line)]
        for place, words in pairs or _cells_that_name_wires(line, delimiter, numeric):
            if place not in free:
                continue
            if place in found and said_role(found[place][0]) is not said_role(words):
                torn.add(place)
            found.setdefault(place, (words, line.strip(" \t#%/*!")))
    return {place: said for place, said in found.items() if place not in torn}


def with_legend(columns: Sequence[Column], said: Mapping[int, tuple[str, str]]) -> list[Column]:
    """The columns with what the head calls them in the place of their headings, and with its unit."""
    named = []
    for place, column in enumerate(columns):
        if place in said:
            words, unit = split_heading(said[place][0])
            known = unit if unit_of(unit) is not None else ""
            column = replace(column, heading=words, unit=column.unit or known)
        named.append(column)
    return named


def _cells_that_name_wires(line: str, delimiter: str, numeric: Sequence[bool]) -> list[tuple[int, str]]:
    """What a row of cells calls the wires of several columns, each above its own."""
    cells = split_line(line, delimiter) if delimiter.strip() else []
    if len(cells) != len(numeric):
        return []
    above = [cell for cell, use in zip(cells, numeric, strict=True) if use]
    found = [(place, cell) for place, cell in enumerate(above) if cell and names_a_wire(cell)]
    return found if len(found) > 1 and len({said_role(cell) for _, cell in found}) > 1 else []


def _pairs(line: str) -> list[tuple[str, str]]:
    """Names of channels and what a line calls them, in whichever order it has them."""
    text = line.strip(" \t#%/*!")
    pieces = [piece for part in _NEXT.split(text) for piece in _pieces(part)]
    found = []
    for piece in pieces:
        sides = [side.strip(" \t,\"'") for side in _PART.split(piece, maxsplit=1)]
        if len(sides) != 2:
            sides = [side.strip() for side in _LINKS.split(piece, maxsplit=1)]
        if len(sides) != 2:
            continue
        if _number(sides[0]):
            name, words = sides
        elif _has_channel_word(sides[1]) and _is_wire_alone(sides[0]):
            words, name = sides
        else:
            continue
        if names_a_wire(words):
            found.append((name, words))
    bracketed = [pair for pair in _IN_BRACKETS.findall(text) if names_a_wire(pair[1])]
    return found or (bracketed if len(bracketed) > 1 else [])


def _pieces(text: str) -> list[str]:
    """A line, or the parts of one that holds several pairs."""
    parts = [part for part in _SEVERAL.split(text) if part]
    several = len(parts) > 1 and all(len(_PART.split(part)) == 2 for part in parts)
    return parts if several else [text]


def names_a_wire(words: str) -> bool:
    """Whether words of a line are the name of a wire, and no setting of a channel."""
    plain = taken_apart(words)
    return (
        0 < len(plain.split()) <= _MOST_WORDS
        and said_role(words) is not None
        and not is_vague(words)
        and not _SETTING.search(plain)
        and not _A_RANGE.fullmatch(plain.strip())
    )


def _is_wire_alone(words: str) -> bool:
    """Whether it is a known wire and hardly anything else: before a channel its settings may stand too."""
    return len(words.split()) <= 2 and names_known_wire(words)


def _has_channel_word(words: str) -> bool:
    found = _NAMED.match(_plain(words))
    return found is not None and found["word"] is not None


def _number(words: str) -> str:
    """The letter or number of a channel, or an empty text."""
    found = _NAMED.match(_plain(words))
    return "" if found is None else f"#{found['id']}"


def _plain(words: str) -> str:
    return " ".join(without_accents(words).strip(" .:[]()\"'").split())


def _is_own_heading(line: str, columns: Sequence[Column]) -> bool:
    """Whether a line is the row of the headings, which names every column."""
    return all(column.name in line for column in columns)
