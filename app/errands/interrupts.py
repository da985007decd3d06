"""An interrupt from the keyboard that is acted on where the work can stop, and so never lost.

Python raises `KeyboardInterrupt` wherever it happens to be. Inside a callback of HDF5, or a finaliser, the
exception is printed and dropped, and the work goes on as if nobody had asked it to stop.
"""

from __future__ import annotations

import signal
import threading
from types import FrameType, TracebackType
from typing import Self


class Interrupts:
    """Remembers the first interrupt until `check` is asked; a second one is raised at once.

    A context manager. Outside the main thread, where no handler can be set, it changes nothing.
    """

    def __init__(self) -> None:
        self._pressed = False
        self._settable = threading.current_thread() is threading.main_thread()
        self._before: signal._HANDLER = None

    def __enter__(self) -> Self:
        if self._settable:
            self._before = signal.signal(signal.SIGINT, self._remember)
        return self

    def __exit__(
        self, kind: type[BaseException] | None, error: BaseException | None, trace: TracebackType | None
    ) -> None:
        if self._settable:
            signal.signal(signal.SIGINT, self._before)

    def check(self) -> None:
        """Stop here if an interrupt came.

        Raises
        ------
        KeyboardInterrupt
            Where one did.
        """
        if self._pressed:
            raise KeyboardInterrupt

    def _remember(self, number: int, frame: FrameType | None) -> None:
        if self._pressed:
            raise KeyboardInterrupt
        self._pressed = True
