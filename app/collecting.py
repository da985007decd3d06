"""Garbage is looked for on the window's thread alone, also while other threads are at work.

Python looks for it on whichever thread happens to make objects. What it finds may be widgets, and Qt lets
those be destroyed on the window's thread alone: anywhere else the program crashes, now or later.
"""

from __future__ import annotations

import gc
from typing import ClassVar

from PySide6.QtCore import QObject, QTimer

_EVERY_MS = 1000


class CollectsHere(QObject):
    """One who has threads at work.

    Python's own looking is off for the whole process while anybody has some, and a timer of the window's
    thread looks through what is young instead.
    """

    _holders: ClassVar[int] = 0
    _was_on: ClassVar[bool] = True

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._held = False
        self._timer = QTimer(self)
        self._timer.setInterval(_EVERY_MS)
        self._timer.timeout.connect(self._collect)

    def hold(self, held: bool) -> None:
        """Say whether threads are at work; on the window's thread, before they start and after they ended."""
        if held == self._held:
            return
        self._held = held
        kind = type(self)
        if held:
            if kind._holders == 0:
                kind._was_on = gc.isenabled()
                gc.disable()
            kind._holders += 1
            self._timer.start()
            return
        self._timer.stop()
        kind._holders -= 1
        if kind._holders == 0 and kind._was_on:
            gc.enable()

    def _collect(self) -> None:
        gc.collect(1)
