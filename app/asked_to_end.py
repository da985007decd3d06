"""The system asks the program to end: its windows are closed as by hand, and what was typed is kept."""

from __future__ import annotations

import signal
import socket
from types import FrameType

from PySide6.QtCore import QObject, QSocketNotifier
from PySide6.QtWidgets import QApplication

_ASKS = tuple(getattr(signal, name) for name in ("SIGTERM", "SIGHUP", "SIGINT") if hasattr(signal, name))
"""What a session that ends, a closed terminal, and Ctrl+C in one send; Windows closes windows itself."""


class AskedToEnd(QObject):
    """Closes every window when the system asks the process to end.

    Python acts on a signal when it next runs, which a window at rest may not do for long: a byte in a socket
    wakes it up.
    """

    def __init__(self, application: QApplication) -> None:
        super().__init__(application)
        self._application = application
        self._ear, self._mouth = socket.socketpair()
        for end in (self._ear, self._mouth):
            end.setblocking(False)
        self._woken = signal.set_wakeup_fd(self._mouth.fileno(), warn_on_full_buffer=False)
        self._before = {ask: signal.signal(ask, _leave_it_to_the_loop) for ask in _ASKS}
        self._notifier = QSocketNotifier(self._ear.fileno(), QSocketNotifier.Type.Read, self)
        self._notifier.activated.connect(self._close)

    def stop(self) -> None:
        """Leave signals to whoever had them before."""
        self._notifier.setEnabled(False)
        signal.set_wakeup_fd(self._woken)
        for ask, handler in self._before.items():
            signal.signal(ask, handler)
        self._ear.close()
        self._mouth.close()

    def _close(self) -> None:
        self._ear.recv(64)
        self._application.closeAllWindows()


def _leave_it_to_the_loop(_number: int, _frame: FrameType | None) -> None:
    """Do nothing here: the byte in the socket tells the loop of events."""
