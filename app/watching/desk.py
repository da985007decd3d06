"""The Watch page's circle: a clock looks at the folder beside the window, and the page shows what came."""

from __future__ import annotations

import time
from collections.abc import Callable
from datetime import datetime
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QTimer
from PySide6.QtWidgets import QFileDialog

from analysis.diagnosis.profiles import available_profiles
from analysis.importing.recipes import own_recipes_folder
from analysis.progress import Tick
from analysis.watching.gathered import write_together
from analysis.watching.watch import Watch, again, anew, confirmed, step, with_profile
from app.jobs import Jobs
from app.trouble import sentence
from app.watching.page import WatchPage

if TYPE_CHECKING:
    from app.main_window import Window

WATCHING, GATHERING = "watch", "watch_gather"
_EVERY_MS = 1000


class WatchDesk(QObject):
    """Everything behind the page of Watch.

    Its work has threads of its own: looking goes on while a capture is reviewed, and is no work that the
    window's status tells of.

    Parameters
    ----------
    window : Window
        Whose page it is, with its actions made.
    """

    def __init__(self, window: Window) -> None:
        super().__init__(window)
        self._window = window
        self.jobs = Jobs(self)
        self.recipes = own_recipes_folder()
        self.page = WatchPage(window.page.button)
        self.watch: Watch | None = None
        self._first: Callable[[Watch, Tick], Watch] | None = None  # to be done before the next look
        self.clock = QTimer(self)
        self.clock.setInterval(_EVERY_MS)
        self.clock.timeout.connect(self.look)
        self._follow()

    @property
    def going(self) -> bool:
        """Whether the folder is being watched."""
        return self.clock.isActive()

    def enter(self) -> None:
        """Show the page; ask for a folder where none is watched."""
        known = {entry.id: entry.title for entry in available_profiles() if not entry.problem}
        self.page.offer_profiles(known)
        self._window.pages.setCurrentWidget(self.page)
        if self.watch is None:
            self.ask_for_folder()

    def ask_for_folder(self) -> None:
        """Let the technician choose a folder to watch."""
        recent = self._window.settings.recent
        beside = self.watch.folder if self.watch is not None else recent[0].parent if recent else Path.home()
        title = self.tr("Watch a folder")
        chosen = QFileDialog.getExistingDirectory(self._window, title, str(beside))
        if chosen:
            self.begin(Path(chosen))

    def begin(self, folder: Path) -> None:
        """Watch a folder from now on; what lies there already is left alone."""
        self._go_on_with(Watch(folder, recipes=self.recipes, profile=self.page.profile_id))

    def begin_anew(self) -> None:
        """Forget what was gathered: the next sensor comes."""
        if self.watch is not None:
            self._go_on_with(anew(self.watch))

    def try_again(self) -> None:
        """Take the files that failed once more."""
        if self.watch is not None:
            self._go_on_with(again(self.watch))

    def confirm(self) -> None:
        """Take it that what was asked for was done in the records at rest."""
        self._do_first(confirmed)

    def take_profile(self, profile: str) -> None:
        """Judge by another sensor profile; by the one that the files name where it is empty."""
        self._do_first(lambda watch, tick: with_profile(watch, profile or None, tick))

    def _do_first(self, first: Callable[[Watch, Tick], Watch]) -> None:
        self._first = first
        self.look()

    def toggle(self) -> None:
        """Stop watching, or go on."""
        if self.going:
            self._halt()
        elif self.watch is not None:
            self._go_on_with(self.watch)

    def close(self) -> None:
        """Stop looking, and wait until nothing is at work."""
        self.clock.stop()
        self.jobs.shut_down()

    def look(self) -> None:
        """Look at the folder once, beside the window; not while the last look is still under way."""
        watch = self.watch
        if watch is not None and not self.jobs.running(WATCHING):
            doing = self.tr("Watching {folder}").format(folder=watch.folder)
            first, self._first = self._first, None
            self.jobs.run(
                WATCHING,
                doing,
                lambda tick: first(watch, tick) if first else step(watch, time.monotonic(), tick),
                self._take,
                partial(self._fail, doing),
            )

    def review(self) -> None:
        """Write what was gathered as one capture, and open it in Review."""
        watch = self.watch
        if watch is None or not watch.taken or self.jobs.running(GATHERING):
            return
        title = watch.folder.name
        stamp = datetime.now().astimezone().strftime("%Y-%m-%d-%H%M%S")
        target = watch.folder / f"{title}-{stamp}.h5"
        files = list(watch.taken.values())
        doing = self.tr("Writing {name}").format(name=target.name)
        self.jobs.run(
            GATHERING,
            doing,
            lambda tick: write_together(files, target, title, tick),
            self._open,
            lambda error: self.page.problem_bar.show_problem(sentence(error, doing)),
        )

    def _go_on_with(self, watch: Watch) -> None:
        self.jobs.cancel(WATCHING)
        self.watch, self._first = watch, None
        self.page.problem_bar.hide()
        self.clock.start()
        self.show()
        self.look()

    def _halt(self) -> None:
        self.clock.stop()
        self.jobs.cancel(WATCHING)
        self.show()

    def _take(self, watch: Watch) -> None:
        self.watch = watch
        self.show()
        if watch.ready:
            self.look()

    def _fail(self, doing: str, error: Exception) -> None:
        """The unforeseen: the same file would bring it again and again, so watching ends."""
        self._halt()
        self.page.problem_bar.show_problem(sentence(error, doing))

    def _open(self, path: Path) -> None:
        self._window.show_review()
        self._window.open_file(path)

    def _import_by_hand(self) -> None:
        if self.watch is not None and self.watch.failures:
            self._window.imports.open([self.watch.folder / self.watch.failures[-1].name])

    def show(self) -> None:
        """Show everything as it stands."""
        self.page.show_watch(self.watch, going=self.going)
        actions, watch = self._window.actions_by_name, self.watch
        actions["next_sensor"].setEnabled(watch is not None)
        actions["review_gathered"].setEnabled(watch is not None and bool(watch.taken))

    def _follow(self) -> None:
        self.page.folder_wanted.connect(self.ask_for_folder)
        self.page.stop_wanted.connect(self.toggle)
        self.page.again_wanted.connect(self.try_again)
        self.page.confirm_wanted.connect(self.confirm)
        self.page.profile_wanted.connect(self.take_profile)
        self.page.import_wanted.connect(self._import_by_hand)
        self._window.actions_by_name.connect(
            {"watch": self.enter, "next_sensor": self.begin_anew, "review_gathered": self.review}
        )
        self.show()
