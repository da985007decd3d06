"""What hands do while a folder is watched: a recorder that saves slice by slice."""

from __future__ import annotations

from pathlib import Path

from pytestqt.qtbot import QtBot

from analysis.watching.watch import Watch
from app.main_window import Window
from tests.importing_page.tables import comma_table, swept

LOOK_EVERY_MS = 40


def begin(window: Window, folder: Path) -> None:
    """Watch a folder by its page, looking more often than a workshop needs."""
    folder.mkdir(parents=True, exist_ok=True)
    window.watching.recipes = folder.parent / "recipes"
    window.watching.clock.setInterval(LOOK_EVERY_MS)
    window.pages.setCurrentWidget(window.watching.page)
    window.watching.begin(folder)


def watched(window: Window) -> Watch:
    """The watch as it stands."""
    assert window.watching.watch is not None
    return window.watching.watch


def looked(qtbot: QtBot, window: Window) -> None:
    """Wait until the folder has been looked at."""
    qtbot.waitUntil(lambda: window.watching.watch is not None and window.watching.watch.seen is not None)


def taken(qtbot: QtBot, window: Window, count: int) -> None:
    """Wait until so many files have been taken and all is judged."""

    def there() -> bool:
        watch = window.watching.watch
        return watch is not None and len(watch.taken) == count and not watch.ready

    qtbot.waitUntil(there, timeout=30_000)


def watch_worn(qtbot: QtBot, window: Window, folder: Path) -> None:
    """Bring the Watch page to the front, with one sweep taken and one file that failed."""
    place = folder / "job-4711"
    begin(window, place)
    looked(qtbot, window)
    comma_table(place / "sweep-1.csv", swept(3.0))
    taken(qtbot, window, 1)
    (place / "notes.csv").write_text("nothing here\n")
    qtbot.waitUntil(
        lambda: window.watching.watch is not None and len(window.watching.watch.failures) == 1, timeout=10_000
    )
