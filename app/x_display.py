"""Whether an X display answers. Asked before Qt is: Qt ends the whole process where none does."""

from __future__ import annotations

import re
import socket
from collections.abc import Mapping

from app.window import NoWindowError

_NAME = re.compile(r"^(?:(?P<host>[^:/]*)/?\w*):(?P<number>\d+)(?:\.\d+)?$")
_FIRST_PORT = 6000  # X(7), "DISPLAY NAMES": display N of a host listens on TCP port 6000 + N
_PATIENCE_S = 2.0


def require_answer(environment: Mapping[str, str], platform: str) -> None:
    """Check that the X display that Qt would open answers.

    Parameters
    ----------
    environment : mapping
        As `os.environ`.
    platform : str
        As `sys.platform`; only Linux is checked, and only where Qt would use X.

    Raises
    ------
    NoWindowError
        Where ``DISPLAY`` names a display at which nobody listens.
    """
    if not platform.startswith("linux") or environment.get("QT_QPA_PLATFORM", "xcb") != "xcb":
        return
    display = environment.get("DISPLAY", "")
    if display and not environment.get("WAYLAND_DISPLAY") and not answers(display):
        raise NoWindowError(
            f"nothing answers at the display {display!r} to open the window on",
            "use 'wornband analyse FILE', which needs none, or start this from a desktop",
        )


def answers(display: str) -> bool:
    """Whether somebody listens at an X display.

    Parameters
    ----------
    display : str
        As ``DISPLAY`` names it: ``":0"``, ``"unix:0.0"``, ``"localhost:10.0"``.

    Returns
    -------
    bool
        True also for a name of a kind that is not known here: Qt may know better.
    """
    name = _NAME.match(display)
    if name is None:
        return True
    number = int(name["number"])
    if name["host"] not in ("", "unix"):
        return _connects_to_host(name["host"], _FIRST_PORT + number)
    path = f"/tmp/.X11-unix/X{number}"
    # The second is Linux's abstract socket, which needs no file.
    return _connects_here(path) or _connects_here(f"\0{path}")


def _connects_to_host(host: str, port: int) -> bool:
    try:
        socket.create_connection((host, port), _PATIENCE_S).close()
    except (OSError, OverflowError):  # no such host, nobody there; no such port
        return False
    return True


def _connects_here(address: str) -> bool:
    with socket.socket(socket.AF_UNIX, socket.SOCK_STREAM) as one:
        one.settimeout(_PATIENCE_S)
        try:
            one.connect(address)
        except OSError:
            return False
        return True
