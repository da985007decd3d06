"""Pictures of the window, made without a screen."""

from __future__ import annotations

import os
from dataclasses import dataclass
from pathlib import Path
from types import TracebackType
from typing import TYPE_CHECKING, NoReturn

from analysis.captures.model import Capture
from analysis.diagnosis.findings import Findings
from analysis.errors import CaptureError
from analysis.progress import Tick
from app.window import application

if TYPE_CHECKING:
    from app.main_window import Window


def review_picture(
    capture: Capture, findings: Findings, path: Path, size: tuple[int, int] = (1366, 768), dark: bool = False
) -> None:
    """Save a picture of Review as a PNG.

    Parameters
    ----------
    capture : Capture
        Open while the picture is made.
    findings : Findings
        Of that capture.
    path : Path
        Where to save it; its folder exists.
    size : (int, int)
        Width and height in pixels.
    dark : bool
        In the dark colours.

    Raises
    ------
    OSError
        Where the picture cannot be written.
    """
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    app = application()
    window = picture_window(capture, findings, size, dark)
    try:
        app.processEvents()
        window.pointer.settle()  # what stands at the arm is read beside the window
        if not window.grab().save(str(path), "PNG"):
            raise OSError(f"the picture {path} cannot be written")
    finally:
        window.close()
        window.deleteLater()
        app.processEvents()


def picture_window(capture: Capture, findings: Findings, size: tuple[int, int], dark: bool) -> Window:
    """A shown window with a capture and its findings, that touches nobody's settings."""
    from app.main_window import Window
    from app.session import Tools
    from app.settings import MemoryStore, Settings

    settings = Settings(MemoryStore())
    settings.colours = "dark" if dark else "light"
    window = Window(Tools(open_capture=_refuse, examine=lambda _capture, _tick: findings), settings)
    window.resize(*size)
    window.show()
    window.session.show(_Held(capture), findings)
    return window


@dataclass(frozen=True, slots=True)
class _Held:
    """A capture that somebody else has open, and closes."""

    capture: Capture
    assumptions: tuple[str, ...] = ()

    def __enter__(self) -> _Held:
        return self

    def __exit__(
        self, kind: type[BaseException] | None, error: BaseException | None, trace: TracebackType | None
    ) -> None:
        """Leave it open."""


def _refuse(path: Path, tick: Tick) -> NoReturn:
    raise CaptureError(f"{path.name} is not opened for a picture", "open it in the workbench")
