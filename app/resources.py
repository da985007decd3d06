"""Where icons and sample captures lie: beside this package once installed, at the top of a checkout."""

from __future__ import annotations

from pathlib import Path

_PACKAGE = Path(__file__).resolve().parent


def folder(name: str) -> Path:
    """The folder of that name: inside the package where the wheel put it, else at the top of the checkout.

    Parameters
    ----------
    name : str
        ``"icons"`` or ``"sample_captures"``.

    Raises
    ------
    FileNotFoundError
        Where neither place has it: the installation is incomplete.
    """
    for place in (_PACKAGE / name, _PACKAGE.parent / name):
        if place.is_dir():
            return place
    raise FileNotFoundError(f"the folder {name!r} is missing; install Wornband again")


def is_sample(path: Path) -> bool:
    """Whether a capture is one of the samples that came along: nothing is written beside these.

    By its name alone: to ask the capture's own folder could keep the window waiting.
    """
    own = path.absolute().parent
    return any(own == sample.parent for sample in sample_captures()[:1])


def lies_among_samples(path: Path) -> bool:
    """The same of the file itself, links followed: the disk is asked, so not on the window's thread."""
    try:
        return path.resolve().parent == folder("sample_captures").resolve()
    except OSError:
        return False


def sample_captures() -> tuple[Path, ...]:
    """The sample captures that came along, by name; empty where there are none."""
    try:
        return tuple(sorted(folder("sample_captures").glob("*.h5")))
    except FileNotFoundError:
        return ()
