"""What the Import page does beside the window: looking at files, and bringing them in."""

from __future__ import annotations

import os
from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path

from analysis.errors import WornbandError
from analysis.importing.bring_in import import_capture
from analysis.importing.preview import preview
from analysis.importing.recipes import keep_for_shape
from analysis.importing.seen import Preview
from analysis.importing.wishes import Wishes
from analysis.progress import Tick

_SUFFIX = ".h5"
_MOST_NUMBERS = 1000


@dataclass(frozen=True, slots=True)
class Looked:
    """What a look at a file gave.

    Parameters
    ----------
    asked : Wishes
        What was decided when it was looked at.
    preview : Preview or None
        None where it cannot be opened at all.
    error : WornbandError or None
        Why.
    """

    asked: Wishes
    preview: Preview | None
    error: WornbandError | None = None

    @property
    def ready(self) -> bool:
        """Whether it can be brought in as it stands."""
        return self.preview is not None and self.preview.ready


def look(path: Path, wishes: Wishes, recipes: Path | None, tick: Tick) -> Looked:
    """Look at a file; what is wrong with it is part of the answer."""
    try:
        return Looked(wishes, preview(path, wishes, recipes=recipes, tick=tick))
    except WornbandError as error:
        return Looked(wishes, None, error)


@dataclass(frozen=True, slots=True)
class Brought:
    """What came of an import.

    Parameters
    ----------
    target : Path
        The capture.
    unkept : WornbandError or None
        Why what was decided could not be kept for the next file; the capture is good all the same.
    """

    target: Path
    unkept: WornbandError | None = None


def bring_in(
    sources: Sequence[tuple[Path, Wishes]], target: Path, title: str, keep_in: Path | None, tick: Tick
) -> Brought:
    """Make the capture, and keep what was decided.

    Parameters
    ----------
    sources : sequence of (Path, Wishes)
        Files in the order of the records.
    target : Path
        A file that does not exist yet.
    title : str
        Of the capture; empty for the name of the first file.
    keep_in : Path or None
        Folder of recipes; None to keep none.
    tick : Tick
        Progress; what it raises stops the import, and nothing is left behind.

    Raises
    ------
    WornbandError
        Where it cannot be made.
    """
    understood = import_capture(
        [path for path, _ in sources],
        target,
        each=[wishes for _, wishes in sources],
        title=title,
        tick=tick,
    )
    try:
        if keep_in is not None:
            for one, (_, wishes) in zip(understood, sources, strict=True):
                keep_for_shape(one, wishes, keep_in)
    except WornbandError as error:
        return Brought(target, error)
    return Brought(target)


@dataclass(frozen=True, slots=True)
class Place:
    """Where a capture would lie.

    Parameters
    ----------
    target : Path or None
        None where nothing can be written beside the first file, and no other place was chosen.
    taken : bool
        Whether a file of that name is there already.
    """

    target: Path | None = None
    taken: bool = False


def place_for(paths: Sequence[Path], together: str, chosen: Path | None) -> Place:
    """Where a capture of these files would lie: as chosen, else as `proposed_target` has it."""
    if chosen is not None:
        return Place(chosen, chosen.exists())
    return Place(proposed_target(paths, together))


def proposed_target(paths: Sequence[Path], together: str = "") -> Path | None:
    """Where a capture of these files would lie: beside the first, under a name that is free.

    Parameters
    ----------
    paths : sequence of Path
        The files.
    together : str
        What several of them are called; the name of the first where it is empty.

    Returns
    -------
    Path or None
        None where its folder cannot be written to, or there are no files.
    """
    if not paths:
        return None
    folder, name = paths[0].absolute().parent, together or paths[0].stem
    if not os.access(folder, os.W_OK):
        return None
    names = (f"{name}{_SUFFIX}", *(f"{name}-{number}{_SUFFIX}" for number in range(2, _MOST_NUMBERS)))
    return next((folder / item for item in names if not (folder / item).exists()), None)
