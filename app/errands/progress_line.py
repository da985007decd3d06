"""Progress of long work in one line of a terminal, that is gone when the work is done."""

from __future__ import annotations

import time
from collections.abc import Callable
from types import TracebackType
from typing import Self, TextIO

from app.printable import printable

_EVERY_S = 0.1
_WIDTH = 78


class ProgressLine:
    """Writes ``label 42 %`` over and over on one line; a context manager that wipes it at the end.

    Parameters
    ----------
    stream : TextIO
        Standard error. Nothing is written where it is no terminal.
    clock : callable
        Seconds that only go forward.
    """

    def __init__(self, stream: TextIO, clock: Callable[[], float] = time.monotonic) -> None:
        self._stream = stream
        self._clock = clock
        self._on = stream.isatty()
        self._last_s = float("-inf")
        self._label = ""
        self._shown = False

    def __enter__(self) -> Self:
        return self

    def __exit__(
        self, kind: type[BaseException] | None, error: BaseException | None, trace: TracebackType | None
    ) -> None:
        self.wipe()

    def begin(self, label: str) -> None:
        """Name the work that the next ticks belong to."""
        self._label = printable(label)[-(_WIDTH - 8) :]
        self._last_s = float("-inf")

    def tick(self, done: float) -> None:
        """Show how much is done, 0..1, at most ten times a second."""
        now_s = self._clock()
        if not self._on or now_s - self._last_s < _EVERY_S:
            return
        self._last_s = now_s
        self._shown = True
        self._stream.write(f"\r{self._label} {100 * done:3.0f} %".ljust(_WIDTH))
        self._stream.flush()

    def wipe(self) -> None:
        """Clear the line, so that what is printed next starts on a clean one."""
        if self._shown:
            self._stream.write("\r" + " " * _WIDTH + "\r")
            self._stream.flush()
            self._shown = False
