"""The folder that a dialog offers first for something made from a capture."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QStandardPaths

from app.resources import is_sample


def folder_to_save(capture: Path | None, otherwise: Path) -> Path:
    """Beside the capture; of a sample, which lies within the program, the user's own documents.

    Parameters
    ----------
    capture : Path or None
        The file that is open.
    otherwise : Path
        Where none is.
    """
    if capture is None:
        return otherwise
    return _documents() if is_sample(capture) else capture.parent


def _documents() -> Path:
    """The desktop's folder for documents, else the home folder where there is none yet."""
    named = QStandardPaths.writableLocation(QStandardPaths.StandardLocation.DocumentsLocation)
    return Path(named) if named and Path(named).is_dir() else Path.home()
