"""What stands above the blocks of a table: whether it names a channel, and how its column is called then."""

from __future__ import annotations

import re
from collections.abc import Sequence

from analysis.importing.dialect import Dialect
from analysis.importing.guesses import names_channel
from analysis.importing.headings import headings, split_line
from analysis.importing.units import split_heading, unit_of, without_accents
from analysis.importing.wire_words import said_role

_RECORDING = re.compile(
    r"\b(?:meas(?:urement|uring)?|mess(?:ung|reihe)|record(?:ing)?|aufz\w*|aufnahme|run|lauf|sweep|shot|take"
    r"|mesure|medicion|misura|pomiar|meting|medicao|mereni|meres|измерение)\b"
)
_NO_CHANNEL = re.compile(  # as above; a number behind these counts recordings, or pages
    r"\b(?:meas\w*|mess(?:ung|reihe)?|record\w*|aufz\w*|aufnahme|run|lauf|sweep|test|try|shot|take|segment"
    r"|frame|page|seite|block|part|teil|file|datei|mesure|medi\w*|pomiar|meting|series|position|pos)\b"
)
_AROUND = " \t;,|#%/!*\"'=-"


def is_label(line: str, written: Dialect) -> bool:
    """Whether a line between two rows is like one above the first row, or names wires as the heading does.

    Parameters
    ----------
    line : str
        Between two rows.
    written : Dialect
        Of the table.
    """
    above = written.above
    if is_repeated(line, written):
        return True
    if len(_cells(line, written)) != len(written.numeric):
        return False
    if names_channel(_plain(line)):
        return True
    said = said_role(line) is not None and any(said_role(other) is not None for other in above[-3:])
    return said or unit_of(split_heading(_cells(line, written)[-1])[1]) is not None


def is_repeated(line: str, written: Dialect) -> bool:
    """Whether a line stands above the first row too, but for its numbers."""
    return _template(line) in {_template(other) for other in written.above}


def is_heading(line: str, written: Dialect) -> bool:
    """Whether a line has a word for each of several columns."""
    cells = _cells(line, written)
    return len(cells) == len(written.numeric) > 1 and all(any(map(str.isalpha, cell)) for cell in cells)


def labels_of(heads: Sequence[Sequence[str]]) -> tuple[str, ...]:
    """The line above each block that tells it from the others; empty words where none does."""
    for lines in zip(*heads, strict=False):
        said = [line.strip(_AROUND) for line in lines]
        if len(set(said)) == len(said):
            return tuple(said)
    return ("",) * len(heads)


def are_channels(labels: Sequence[str]) -> bool:
    """Whether the words above the blocks are names of channels or wires, and no two the same."""
    plain = [_plain(label) for label in labels]
    if "" in plain or len(set(plain)) < len(plain) or any(map(_NO_CHANNEL.search, plain)):
        return False
    roles = [said_role(label) for label in labels]
    by_role = None not in roles and len(set(roles)) == len(roles)
    headings_of_several = any(mark in label for label in labels for mark in ";,\t|")
    return by_role or (not headings_of_several and all(map(names_channel, plain)))


def are_recordings(labels: Sequence[str]) -> bool:
    """Whether the words above the blocks number recordings."""
    plain = [_plain(label) for label in labels]
    return len(set(plain)) == len(plain) > 1 and all(map(_RECORDING.search, plain))


def names_of(
    heads: Sequence[Sequence[str]], labels: Sequence[str], written: Dialect
) -> list[tuple[list[str], list[str]]]:
    """Names and units of the columns of numbers of each block.

    Parameters
    ----------
    heads : sequence of sequence of str
        Lines above each block.
    labels : sequence of str
        As `labels_of` gives them.
    written : Dialect
        Of the table.
    """
    width = len(written.numeric)
    found = [headings(list(lines), written.delimiter, width, written.comment) for lines in heads]
    used = [place for place, use in enumerate(written.numeric) if use]
    named = []
    for (names, units), label in zip(found, labels, strict=True):
        own = [names[place] for place in used]
        of_all = [{other[place] for other, _ in found} for place in used]
        called = [
            name if name and len(every) == len(found) else _joined(label, name, alone=len(used) == 1)
            for name, every in zip(own, of_all, strict=True)
        ]
        named.append((called, [units[place] or written.units[place] for place in used]))
    return named


def _joined(label: str, name: str, *, alone: bool) -> str:
    return label if label and (alone or not name) else f"{label} {name}".strip()


def _template(line: str) -> str:
    """A line without its numbers: what two blocks of one recorder have in common."""
    return re.sub(r"\d+", "#", _plain(line))


def _plain(line: str) -> str:
    return " ".join(without_accents(line).lower().strip(_AROUND).split())


def _cells(line: str, written: Dialect) -> list[str]:
    mark = written.comment
    plain = line.lstrip("#%/!* ") if mark and line.startswith(mark) else line
    return split_line(plain, written.delimiter) or [""]
