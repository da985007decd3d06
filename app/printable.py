"""Text that came out of a file, made safe to print.

A capture may carry any characters in its title or labels. On a terminal some of them move the cursor,
change its settings, or turn the reading direction so that a sentence says something else.
"""

from __future__ import annotations

import unicodedata

_JOINERS = "\u200c\u200d"  # needed to write Persian, Hindi and others


def printable(text: str) -> str:
    r"""The text with every character that could act on a terminal written as its code (``\x1b``).

    Line ends are such characters: the answer is always one line.
    """
    return "".join(_shown(character) for character in text)


def error_line(path: str, sentence: str) -> str:
    """``FILE: what is wrong; what to do``, on one line."""
    return f"{printable(path)}: {printable(sentence)}"


def _shown(character: str) -> str:
    if character.isprintable() or character in _JOINERS:
        return character
    # What is left: controls, direction marks, lone surrogates, line separators, odd spaces.
    if unicodedata.category(character) == "Zs":
        return " "
    code = ord(character)
    if code <= 0xFF:
        return f"\\x{code:02x}"
    return f"\\u{code:04x}" if code <= 0xFFFF else f"\\U{code:08x}"
