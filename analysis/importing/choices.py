"""How a text table is written, where the technician says so: what is left open is found out."""

from __future__ import annotations

from dataclasses import dataclass, fields

from analysis.errors import ImportingError
from analysis.wording import say

ENCODINGS = (
    "utf-8", "utf-16-le", "utf-16-be", "cp1252", "cp1250", "cp1251", "cp1253", "cp1254", "cp437", "cp850",
    "mac-roman", "shift_jis", "cp932", "gb18030",
)  # fmt: skip
"""Encodings that can be chosen; a byte-order mark in the file still has its say about the first two kinds."""

SPACED_COMMA = ", "
"""A comma and a space between cells whose decimal mark is a comma."""

MARKS = {
    "tab": "\t", "space": " ", "spaces": " ", "comma": ",", "semicolon": ";", "bar": "|", "point": ".",
    "none": "",
}  # fmt: skip
"""Marks that are awkward to type, by name."""

MOST_HEAD_LINES = 2000
"""Lines before the first sample; looked for among the first 3,000."""


@dataclass(frozen=True, slots=True)
class TextChoices:
    """How a text table is written, as far as somebody said so.

    Parameters
    ----------
    delimiter : str or None
        One mark between cells; a space stands for any run of spaces and tabs.
    decimal : str or None
        ``"."`` or ``","``.
    thousands : str or None
        One mark, or empty for none.
    head_lines : int or None
        Lines before the first sample, headings among them.
    encoding : str or None
        One of `ENCODINGS`.
    """

    delimiter: str | None = None
    decimal: str | None = None
    thousands: str | None = None
    head_lines: int | None = None
    encoding: str | None = None

    def over(self, base: TextChoices) -> TextChoices:
        """These choices, with those of `base` where they leave something open."""
        chosen = {item.name: getattr(self, item.name) for item in fields(self)}
        return TextChoices(
            **{name: getattr(base, name) if value is None else value for name, value in chosen.items()}
        )


NOTHING_CHOSEN = TextChoices()
"""Everything is to be found out."""


def checked_choices(choices: TextChoices) -> TextChoices:
    """The choices, where a table can be written so.

    Raises
    ------
    ImportingError
        Where it cannot.
    """
    delimiter, decimal, thousands = choices.delimiter, choices.decimal, choices.thousands
    if delimiter is not None and not _is_mark(delimiter) and delimiter != SPACED_COMMA:
        raise ImportingError(
            say("{mark} cannot stand between cells", mark=repr(delimiter)),
            say("choose a comma, a semicolon, a tab, a bar or spaces"),
        )
    if decimal is not None and decimal not in (".", ","):
        raise ImportingError(
            say("{mark} is no decimal mark", mark=repr(decimal)), say("choose a point or a comma")
        )
    if thousands and (not _is_mark(thousands, ascii_only=False) or thousands == decimal):
        raise ImportingError(
            say("{mark} cannot be the thousands mark here", mark=repr(thousands)),
            say("choose another, or none"),
        )
    if choices.head_lines is not None and not 0 <= choices.head_lines <= MOST_HEAD_LINES:
        raise ImportingError(
            say("a table cannot begin after {count:,} lines", count=choices.head_lines),
            say("say how many lines stand before the first sample"),
        )
    if choices.encoding is not None and choices.encoding not in ENCODINGS:
        raise ImportingError(
            say("{encoding} is no encoding that is read here", encoding=choices.encoding),
            say("choose one of {encodings}", encodings=", ".join(ENCODINGS)),
        )
    return choices


def _is_mark(mark: str, *, ascii_only: bool = True) -> bool:
    plain = len(mark) == 1 and not mark.isalnum() and mark not in '\r\n\0"+-'
    return plain and (mark.isascii() or not ascii_only)
