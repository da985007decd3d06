"""What the program does with each kind of file, from opening to the last thing that it reads of it."""

from __future__ import annotations

import os
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

from analysis.captures import layout
from analysis.captures.overview import envelope, with_overviews
from analysis.captures.reading import open_capture
from analysis.captures.verification import verify_capture
from analysis.diagnosis.examine import examine
from analysis.diagnosis.profiles import load_profile
from analysis.errors import ReviewError
from analysis.importing.bring_in import import_capture
from analysis.importing.recipe import load_recipe
from analysis.review.sidecar import read_sidecar, write_aside
from app.reporting.fingerprints import report_fingerprint
from app.reporting.images import load_image
from app.settings import Settings
from app.settings_file import SettingsFile
from tests.robustness import originals
from tests.robustness.mutations import BINARY, TEXT, Damage


@dataclass(frozen=True, slots=True)
class Task:
    """A kind of file.

    Parameters
    ----------
    make : callable
        Writes whole files of the kind into a folder; damage begins with one of them.
    damage : tuple of callable
    use : callable
        Does with a file what the program does; raises `WornbandError` where it is refused with a sentence.
    """

    make: Callable[[Path], list[Path]]
    damage: tuple[Damage, ...]
    use: Callable[[Path], None]


def read_capture(path: Path) -> None:
    """Open, draw and read every channel, and recompute the fingerprint."""
    with open_capture(path) as opened:
        for record in with_overviews(opened.capture).records:
            for channel in record.channels:
                channel.volts()
                envelope(channel, 0, len(channel), 800)
    verify_capture(path)


def examine_capture(path: Path) -> None:
    """Open and examine, as the command line does."""
    with open_capture(path) as opened:
        examine(opened.capture)


def read_review(path: Path) -> None:
    """Read the review beside a whole capture, and write what came of it."""
    capture = path.with_name("whole.h5")
    if not capture.exists():
        originals.oldest(capture)
    path.replace(layout.review_path(capture))
    found = read_sidecar(capture)
    write_aside(found, found.review).unlink()
    if found.trouble:
        raise ReviewError(found.trouble, "a new one begins")


def read_profile(path: Path) -> None:
    """Read a technician's own profile."""
    load_profile(path)


def import_table(path: Path) -> None:
    """Bring a table of another program in as a capture."""
    import_capture([path], path.with_name("brought-in.h5"), replace_target=True)


def read_recipe(path: Path) -> None:
    """Read a recipe for tables."""
    load_recipe(path)


def read_settings(path: Path) -> None:
    """Read the settings, and change one of them."""
    settings = Settings(SettingsFile(path))
    settings.paper = "a4" if settings.paper == "letter" else "letter"
    if Settings(SettingsFile(path)).paper != settings.paper:
        raise ValueError("a change was lost")
    path.with_suffix(".damaged.json").unlink(missing_ok=True)


def read_photo(path: Path) -> None:
    """Bring a photo into a report."""
    load_image(path)


def read_report(path: Path) -> None:
    """Take the fingerprint out of a stored report."""
    report_fingerprint(str(path))


def misbehave(path: Path) -> None:
    """What a test of the watch itself asks for; it is no file of the program's."""
    eval(os.environ["ROBUSTNESS_USE"], {"os": os, "path": path})


TASKS = {
    "capture, oldest layout": Task(lambda f: [originals.oldest(f / "a.h5")], BINARY, read_capture),
    "capture, newest layout": Task(lambda f: [originals.newest(f / "a.h5")], BINARY, read_capture),
    "capture, foreign texts": Task(lambda f: [originals.foreign(f / "a.h5")], BINARY, read_capture),
    "capture, examined": Task(
        lambda f: [originals.oldest(f / "a.h5"), originals.newest(f / "b.h5")], BINARY, examine_capture
    ),
    "review": Task(lambda f: [originals.review(f / "a.json")], TEXT, read_review),
    "profile": Task(lambda f: list(originals.profiles(f)), TEXT, read_profile),
    "table": Task(lambda f: originals.tables(f), BINARY + TEXT, import_table),
    "recipe": Task(originals.recipes, TEXT, read_recipe),
    "settings": Task(originals.settings, TEXT, read_settings),
    "photo": Task(originals.photos, BINARY, read_photo),
    "stored report": Task(originals.reports, BINARY + TEXT, read_report),
    "watched": Task(lambda f: [originals.review(f / "a.json")], TEXT, misbehave),
}
