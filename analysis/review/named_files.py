"""Which files a review may name: a stranger's review must not bring a file of this PC into a printed report.

Reviews travel with captures. A path in one is a stranger's word until the technician of this PC has chosen
that file; without that, only what lies in the review's own folder, or below it, is opened. A path that leads
elsewhere is not even looked at: on Windows, asking whether a file of another computer exists tells that
computer who asks.
"""

from __future__ import annotations

from collections.abc import Collection
from pathlib import Path, PurePosixPath, PureWindowsPath


def allowed_path(folder: Path, name: str, chosen: Collection[str] = ()) -> Path | None:
    """Where a file lies that a review names, or None where it may not be opened.

    Parameters
    ----------
    folder : Path
        Of the capture and its review.
    name : str
        As the review says it.
    chosen : collection of str
        Names that the technician chose on this PC, as the review would say them.
    """
    if name in chosen:
        return folder / name
    if not name or "\0" in name or _leads_out(name):
        return None
    path = folder / name
    try:
        inside = path.resolve().is_relative_to(folder.resolve())  # a link may lead out as well
    except (OSError, RuntimeError):  # a link that leads to itself
        return None
    return path if inside else None


def _leads_out(name: str) -> bool:
    """Whether a path leaves its folder, on this system or another; by its words alone."""
    flavours = PurePosixPath(name), PureWindowsPath(name)
    return any(path.anchor or ".." in path.parts for path in flavours)
