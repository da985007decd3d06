"""Every kind of file that the program saves: how, and how to tell which version lies there whole."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from pathlib import Path

import numpy as np
from pyarrow import csv, parquet
from scipy import io

from analysis.captures.memory import make_capture, make_record
from analysis.captures.model import Capture, Match, Role, Scaling
from analysis.captures.reading import open_capture
from analysis.captures.verification import verify_capture
from analysis.captures.writing import write_capture
from analysis.exporting.samples import export_samples
from analysis.importing.bring_in import import_capture
from analysis.importing.recipe import keep_recipe, load_recipe
from analysis.review.model import PointMarker
from analysis.review.sidecar import read_sidecar, write_sidecar
from app.reporting.making import Wanted, pages_of, store, subject_of
from app.reporting.materials import gather
from app.settings import Settings
from app.settings_file import SettingsFile
from tests.captures.examples import small_capture


@dataclass(frozen=True, slots=True)
class Saving:
    """A kind of file that is saved.

    Parameters
    ----------
    save : callable
        Writes a numbered version over the one before.
    version : callable
        Number of the version that lies there, 0 where there is none; raises anything where it is not whole.
    """

    save: Callable[[int], object]
    version: Callable[[], int]


def of_reviews(folder: Path) -> Saving:
    """A review with ever more markers, saved as the window does."""
    capture = folder / "a.h5"
    write_capture(small_capture(100), capture)
    state = [read_sidecar(capture)]

    def save(number: int) -> None:
        markers = tuple(PointMarker(str(item), "001", 0.0, str(number)) for item in range(number % 50 + 1))
        state[0] = write_sidecar(state[0], replace(state[0].review, markers=markers))

    def version() -> int:
        found = read_sidecar(capture)
        if found.trouble:
            raise ValueError(found.trouble)
        state[0] = found
        return int(found.review.markers[0].label) if found.review.markers else 0

    return Saving(save, version)


def of_captures(folder: Path) -> Saving:
    """A capture written over an older one."""
    target = folder / "a.h5"

    def save(number: int) -> None:
        write_capture(replace(small_capture(5000), title=str(number)), target, replace=True)

    return Saving(save, lambda: _title(target))


def of_imports(folder: Path) -> Saving:
    """A table brought in over the capture that it became before."""
    source, target = folder / "table.csv", folder / "a.h5"
    lines = [f"{at * 1e-3:.3f},{2.5 + at * 1e-3:.4f}" for at in range(200)]
    source.write_text("\n".join(["time (s),signal (V)", *lines]), encoding="utf-8")

    def save(number: int) -> None:
        import_capture([source], target, replace_target=True, title=str(number))

    return Saving(save, lambda: _title(target))


def _title(target: Path) -> int:
    if not target.exists():
        return 0
    if verify_capture(target).content is not Match.MATCHES:
        raise ValueError("the content is another one")
    with open_capture(target) as opened:
        return int(opened.capture.title)


def of_reports(folder: Path) -> Saving:
    """A report stored over an older one; its text is made beforehand. A PDF is stored by the same lines."""
    capture, target = folder / "a.h5", folder / "a.html"
    write_capture(small_capture(3000), capture)
    with subject_of(str(capture)) as subject:
        materials = gather(pages_of(subject, None, Wanted(today="2026-01-01")), folder)

    def save(number: int) -> None:
        store(replace(materials, pages=replace(materials.pages, title=f"title-{number}-")), target, "a4")

    def version() -> int:
        if not target.exists():
            return 0
        text = target.read_text(encoding="utf-8")
        if not text.rstrip().endswith("</html>"):
            raise ValueError("the end of the report is missing")
        return int(text.partition("title-")[2].partition("-")[0])

    return Saving(save, version)


def of_settings(folder: Path) -> Saving:
    """What the window remembers: who makes the reports, which are several values at once."""
    target = folder / "settings.json"

    def save(number: int) -> None:
        store = SettingsFile(target)
        settings = Settings(store)
        settings.workshop = replace(settings.workshop, name=str(number), lines=(str(number),) * 200)
        if store.trouble is not None:
            raise store.trouble

    def version() -> int:
        workshop = Settings(SettingsFile(target)).workshop
        if not workshop.name:
            return 0
        if workshop.lines != (workshop.name,) * 200:
            raise ValueError("name and address are not of one saving")
        return int(workshop.name)

    return Saving(save, version)


def of_recipes(folder: Path) -> Saving:
    """A recipe kept over an older one."""
    target = folder / "a.json"

    def save(number: int) -> None:
        notes = {f"note {item}": "x" * 500 for item in range(100)}
        held = {"schema": "wornband-recipe/1", "attributes": {**notes, "title": str(number)}}
        keep_recipe(held, target)

    def version() -> int:
        return int(load_recipe(target).wishes.attributes["title"]) if target.exists() else 0

    return Saving(save, version)


def of_exports(ending: str, first: Callable[[Path], float]) -> Callable[[Path], Saving]:
    """Samples for other programs. They replace nothing, so every version has a name of its own."""

    def of_samples(folder: Path) -> Saving:
        def save(number: int) -> None:
            export_samples(_numbered(number), folder / f"samples-{number}{ending}")

        def version() -> int:
            there = {int(path.stem.partition("-")[2]): path for path in folder.glob("samples-*")}
            for number, path in there.items():
                if first(path) != number:
                    raise ValueError(f"{path.name} does not hold what it should")
                if number < max(there):
                    path.unlink()
            return max(there, default=0)

        return Saving(save, version)

    return of_samples


def _numbered(number: int) -> Capture:
    """A capture whose every sample is the number."""
    values = np.full(3000, float(number))
    return make_capture([make_record("001", 1e-3, {Role.SIGNAL: (values, Scaling())})], title="numbered")


def _only(values: object) -> float:
    held = np.asarray(values, dtype=np.float64).ravel()
    if held.size != 3000 or np.unique(held).size != 1:
        raise ValueError("samples are missing")
    return float(held[0])


def names_in(folder: Path) -> set[str]:
    """What lies in a folder, but for the exports, of which each has a name of its own."""
    return {path.name for path in folder.iterdir() if not path.name.startswith("samples-")}


def in_place(folder: Path) -> Saving:
    """How no file of the program's is saved: what a test of the watch itself asks for."""
    target = folder / "a.txt"
    return Saving(lambda number: target.write_text(str(number)), lambda: int(target.read_text()))


KINDS: dict[str, Callable[[Path], Saving]] = {
    "review": of_reviews,
    "capture": of_captures,
    "import": of_imports,
    "report": of_reports,
    "settings": of_settings,
    "recipe": of_recipes,
    "export as CSV": of_exports(".csv", lambda path: _only(csv.read_csv(path)["signal [V]"])),
    "export as Parquet": of_exports(".parquet", lambda path: _only(parquet.read_table(path)["signal [V]"])),
    "export as MAT": of_exports(".mat", lambda path: _only(io.loadmat(path)["signal"])),
    "export as NPZ": of_exports(".npz", lambda path: _only(np.load(path)["signal"])),
}
