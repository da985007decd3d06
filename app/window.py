"""The door to the window: it loads Qt only when it is opened, and says what is missing in one sentence."""

from __future__ import annotations

import ctypes
import gc
import os
import sys
from collections.abc import Iterator, Mapping, Sequence
from contextlib import contextmanager
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from analysis.errors import WornbandError

if TYPE_CHECKING:
    from PySide6.QtWidgets import QApplication

_FIRST_PICTURE_MS = 1500
"""By then the first capture is drawn and, as a rule, examined: what comes next gets the processor."""

_QT_PACKAGES = "libegl1 libgl1 libfontconfig1 libdbus-1-3 libglib2.0-0 libxkbcommon0"
_SCREEN_LIBRARIES = {
    "libxcb-cursor.so.0": "libxcb-cursor0",
    "libxcb-icccm.so.4": "libxcb-icccm4",
    "libxcb-image.so.0": "libxcb-image0",
    "libxcb-keysyms.so.1": "libxcb-keysyms1",
    "libxcb-render-util.so.0": "libxcb-render-util0",
    "libxcb-shape.so.0": "libxcb-shape0",
    "libxcb-xkb.so.1": "libxcb-xkb1",
    "libxkbcommon-x11.so.0": "libxkbcommon-x11-0",
}
"""What Qt's X11 plugin links to beyond Qt itself, and the Debian package that has it."""


class NoWindowError(WornbandError):
    """The window cannot open on this machine; the rest of the program can still be used."""


def open_workbench(paths: list[Path]) -> int:
    """Open the workbench and stay until it is closed.

    Parameters
    ----------
    paths : list of Path
        The first is opened, or all are imported together where it is no capture; without any, the last
        capture, or a sample where there is none.

    Returns
    -------
    int
        Exit status.

    Raises
    ------
    NoWindowError
        Where Qt, a system library or a screen is missing.
    """
    require_screen(os.environ, sys.platform)
    with without_collecting():
        app = application()
        from PySide6.QtCore import QTimer

        from app.asked_to_end import AskedToEnd
        from app.captures_menu import first_sample
        from app.settings import Settings
        from app.tools import real_tools
        from app.trouble import start_log
        from app.views.fit_screen import keep_on_screen
        from app.workbench import Workbench

    settings = Settings()
    window = Workbench(app, real_tools(), settings).window
    start_log()
    keep_on_screen(window)
    window.show()
    # Once more when the style is known: until then the buttons ask for more room than they need.
    QTimer.singleShot(0, partial(keep_on_screen, window))
    start = where_to_begin(paths, settings.recent)
    window.page.hint_bar.setVisible(start is None)
    start = start or first_sample()
    if start is not None:
        window.receive(paths if len(paths) > 1 else [start])
    QTimer.singleShot(_FIRST_PICTURE_MS, window.rooms.load_ahead)
    asked = AskedToEnd(app)
    try:
        return app.exec()
    finally:
        asked.stop()


@contextmanager
def without_collecting() -> Iterator[None]:
    """Look for no garbage while hundreds of modules load, nor among what they hold later on.

    None of it is garbage, and looking through it takes a tenth of the start (measured).
    """
    gc.disable()
    try:
        yield
    finally:
        gc.freeze()
        gc.enable()


def where_to_begin(paths: Sequence[Path], recent: Sequence[Path]) -> Path | None:
    """The capture to open: the one that was asked for, else the last one that is still there, else none."""
    return next(iter([*paths, *(item for item in recent if item.is_file())]), None)


def application() -> QApplication:
    """The one Qt application of the process, made where there is none yet.

    Raises
    ------
    NoWindowError
        Where Qt or one of its system libraries is missing.
    """
    try:
        from PySide6.QtSvg import QSvgRenderer  # noqa: F401 - proves that the last library loads
        from PySide6.QtWidgets import QApplication
    except ImportError as error:
        raise NoWindowError(
            f"the window needs Qt, which cannot be loaded ({error})",
            f"on Debian or Ubuntu run: sudo apt install {_QT_PACKAGES}",
        ) from error
    present = QApplication.instance()
    if isinstance(present, QApplication):
        return present
    app = QApplication(sys.argv[:1])
    app.setApplicationName("wornband")
    app.setApplicationDisplayName("Wornband")
    app.setDesktopFileName("wornband")
    # One style everywhere: the style sheet was looked at with this one.
    app.setStyle("Fusion")
    return app


def require_screen(environment: Mapping[str, str], platform: str) -> None:
    """Check for a screen and its libraries before Qt does: Qt would end the process with a dump.

    Parameters
    ----------
    environment : mapping
        As `os.environ`.
    platform : str
        As `sys.platform`; only Linux is checked.

    Raises
    ------
    NoWindowError
        Where there is no screen, or a library for it is missing.
    """
    if not platform.startswith("linux") or environment.get("QT_QPA_PLATFORM", "xcb") != "xcb":
        return
    if environment.get("WAYLAND_DISPLAY"):
        return
    if not environment.get("DISPLAY"):
        raise NoWindowError(
            "there is no screen to open the window on",
            "use 'wornband analyse FILE', which needs none, or start this from a desktop",
        )
    missing = [package for library, package in _SCREEN_LIBRARIES.items() if not _loads(library)]
    if missing:
        raise NoWindowError(
            "the window needs system libraries that are missing",
            f"on Debian or Ubuntu run: sudo apt install {' '.join(missing)}",
        )


def _loads(library: str) -> bool:
    try:
        ctypes.CDLL(library)
    except OSError:
        return False
    return True
