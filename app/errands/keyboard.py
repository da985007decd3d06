"""What is typed while the command works: asked for between two looks, and never waited for."""

from __future__ import annotations

import os
import sys
from collections.abc import Callable


def keyboard() -> Callable[[], str] | None:
    """A question for what was typed since the last one; None where nobody can type.

    Returns
    -------
    callable or None
        Gives the lines that were ended by Enter, or an empty word. On Windows it gives single keys.
    """
    try:
        number = sys.stdin.fileno()
        if not os.isatty(number):
            return None
    except (AttributeError, OSError, ValueError):  # none, taken away or closed
        return None
    return _windows_keys if sys.platform == "win32" else lambda: _lines(number)


def _lines(number: int) -> str:
    import select  # of a terminal; Windows knows it for sockets only

    found = b""
    while select.select([number], [], [], 0.0)[0]:
        read = os.read(number, 1024)
        if not read:
            break  # the terminal is gone
        found += read
    return found.decode("utf-8", "replace")


def _windows_keys() -> str:
    import importlib

    console = importlib.import_module("msvcrt")  # named so, since no other system has it
    found = ""
    while console.kbhit():
        found += console.getwch()
    return found
