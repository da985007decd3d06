"""The Import page's circle: panes emit what was meant, the state decides, files are looked at."""

from __future__ import annotations

from dataclasses import replace
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject
from PySide6.QtWidgets import QFileDialog

from analysis.diagnosis.profiles import available_profiles
from analysis.errors import WornbandError
from analysis.importing.recipes import own_recipes_folder
from analysis.importing.sources import sources_in
from app.importing.draft import FileDraft, joined_by, moved
from app.importing.edits import ImportEdits
from app.importing.maker import Brought, Looked, Place, bring_in, look, place_for
from app.importing.page import ImportPage
from app.importing.showing import show_all
from app.importing.state import ImportState
from app.importing.topics import GATHERING, IMPORTING, LOOKING, PLACING, QUIET, RECEIVING
from app.importing.words import error_sentence
from app.trouble import sentence

if TYPE_CHECKING:
    from app.main_window import Window


class ImportDesk(QObject):
    """Everything behind the page of Import.

    Parameters
    ----------
    window : Window
        Whose page it is, with its session, jobs and actions made.
    """

    def __init__(self, window: Window) -> None:
        super().__init__(window)
        self._window = window
        self.recipes = own_recipes_folder()
        self.state = ImportState()
        self.page = ImportPage(window.page.button)
        self.edits = ImportEdits(self.state, self.page, self)
        self._arrived: tuple[Path, ...] = ()
        self._together_name = ""
        self._wanted = False
        self._place: Place | None = None
        self._placed_for: object = None
        self._follow()

    @property
    def shown(self) -> bool:
        """Whether the Import page is in front."""
        return self._window.pages.currentWidget() is self.page

    @property
    def at_work(self) -> bool:
        """Whether files are being brought in."""
        return self._window.jobs.running(IMPORTING)

    def close(self) -> None:
        """Let go of what could be undone: nobody is told any more."""
        self.page.stack.clear()

    # -- files come in ------------------------------------------------------------------------

    def receive(self, paths: list[Path]) -> None:
        """Files that were dropped: captures are opened, others lead to the page, where they join its list."""
        if self.shown and self.state.draft.files:
            self.add(paths)
        elif len(paths) == 1:
            self._receive(paths, folder_among=False)  # a folder alone leads to the page by being no capture
        else:
            self._window.jobs.run(
                RECEIVING,
                self.tr("Looking for files"),
                lambda tick: any(path.is_dir() for path in paths),
                lambda some: self._receive(paths, folder_among=some),
                self._complain,
            )

    def _receive(self, paths: list[Path], *, folder_among: bool) -> None:
        if folder_among:
            self.open(paths)
        else:
            self._arrived = tuple(paths)
            self._window.open_file(paths[0])

    def open(self, paths: list[Path]) -> None:
        """Begin with these files or folders."""
        if self.at_work:
            return
        for topic in QUIET:
            self._window.jobs.cancel(topic)
        self._begin_anew()
        self._together_name = ""
        self._wanted = False
        self.page.problem_bar.hide()
        self._offer_profiles()
        self._window.pages.setCurrentWidget(self.page)
        self.show()
        self.add(paths)

    def _begin_anew(self) -> None:
        self.state, self._place, self._placed_for = ImportState(), None, None
        self.edits.state = self.state
        self.page.stack.clear()

    def add(self, paths: list[Path]) -> None:
        """Put more files, or those of a folder, behind the others."""
        if self.at_work:
            return
        self._window.jobs.run(
            GATHERING,
            self.tr("Looking for files"),
            lambda tick: (sources_in(paths), paths[0].name if len(paths) == 1 and paths[0].is_dir() else ""),
            lambda found: self._take_files(*found),
            self._complain,
        )

    def _offer_profiles(self) -> None:
        known = {entry.id: entry.title for entry in available_profiles() if not entry.problem}
        self.page.capture.offer_profiles(known)

    def ask_for_files(self) -> None:
        """Let the technician choose files to begin with."""
        paths = self._choose(self.tr("Import files of a recorder"))
        if paths:
            self.open(paths)
        elif self.state.draft.files:
            self._window.pages.setCurrentWidget(self.page)  # what was begun before is still there

    def ask_for_folder(self) -> None:
        """Let the technician choose a folder to begin with."""
        title = self.tr("Import all files of a folder")
        chosen = QFileDialog.getExistingDirectory(self._window, title, self._beside())
        if chosen:
            self.open([Path(chosen)])

    def _ask_for_more(self) -> None:
        paths = self._choose(self.tr("Add files to this capture"))
        if paths:
            self.add(paths)

    def _choose(self, title: str) -> list[Path]:
        kinds = self.tr("All files (*)")
        chosen, _ = QFileDialog.getOpenFileNames(self._window, title, self._beside(), kinds)
        return [Path(name) for name in chosen]

    def _beside(self) -> str:
        files, recent = self.state.draft.files, self._window.settings.recent
        near = files[0].path if files else recent[0] if recent else None
        return str(near.parent) if near is not None else str(Path.home())

    def take_foreign(self, path: Path) -> None:
        """What was to be opened is no capture: it may be what a recorder saved."""
        paths = list(self._arrived) if path in self._arrived else [path]
        self._arrived = ()
        self.open(paths)

    def _take_files(self, paths: list[Path], folder: str) -> None:
        begun = bool(self.state.draft.files)
        if not begun:
            self._together_name = folder
        self.state.draft = joined_by(self.state.draft, paths)
        self._find_place()
        self._go_on()
        if not begun:
            self.page.import_button.setFocus()

    # -- looking ------------------------------------------------------------------------------

    def _go_on(self) -> None:
        """Show what is decided, and look at what that changes."""
        self.show()
        place = self.state.next_to_look_at()
        if place is None:
            self._window.jobs.cancel(LOOKING)
            self._begin_if_wanted()
            return
        file = self.state.draft.files[place]
        folder = self.recipes if file.follow else None
        self._window.jobs.run(
            LOOKING,
            self.tr("Looking at {name}").format(name=file.path.name),
            lambda tick: look(file.path, file.wishes, folder, tick),
            partial(self._take_look, file),
            self._complain,
        )

    def _take_look(self, file: FileDraft, looked: Looked) -> None:
        self.state.take(file, looked)
        self._go_on()

    def show(self) -> None:
        """Show everything as it stands."""
        show_all(self.page, self.state, self._place)
        ready = bool(self.state.draft.files) and not self.at_work
        for name in ("import", "import_folder"):
            self._window.actions_by_name[name].setEnabled(not self.at_work)
        self._window.actions_by_name["bring_in"].setEnabled(self.shown and ready)
        self.page.import_button.setEnabled(ready)

    def _find_place(self) -> None:
        """Find out where the capture would lie; a folder on the network may take its time."""
        paths = [item.path for item in self.state.draft.files]
        name, chosen = self._together_name, self.state.draft.target
        if (paths[:1], name, chosen) == self._placed_for:
            return
        self._placed_for = (paths[:1], name, chosen)
        self._window.jobs.run(
            PLACING,
            self.tr("Looking for a place"),
            lambda tick: place_for(paths, name, chosen),
            self._take_place,
            self._complain,
        )

    def _take_place(self, place: Place) -> None:
        self._place = place
        self.show()
        self._begin_if_wanted()

    def _begin_if_wanted(self) -> None:
        if self._wanted and not self._undecided():
            self.bring_in()

    def _undecided(self) -> bool:
        """Whether something has yet to be found out about the files."""
        return self.state.next_to_look_at() is not None or self._window.jobs.running(PLACING)

    # -- what is done with the list -----------------------------------------------------------

    def _choose_file(self, place: int) -> None:
        self.state.place = max(place, 0)
        self.edits.forget_trouble()
        self.show()

    def _move(self, by: int) -> None:
        place = self.state.place
        to = place + by
        if 0 <= to < len(self.state.draft.files):
            self.state.place = to
            self.edits.do(self.tr("move a file"), moved(self.state.draft, place, to))

    def _remove(self) -> None:
        if self.state.file is not None:
            self.edits.do(self.tr("remove a file"), self.state.without_file())

    def _guess_anew(self) -> None:
        self.edits.do(self.tr("guess anew"), self.state.guessed_anew())

    def _choose_target(self) -> bool:
        proposed = self._place.target if self._place is not None else None
        start = proposed or Path(self._beside()) / "capture.h5"
        chosen, _ = QFileDialog.getSaveFileName(
            self._window,
            self.tr("Save the capture as"),
            str(start),
            self.tr("Captures ({patterns})").format(patterns="*.h5"),
            options=QFileDialog.Option.DontConfirmOverwrite,
        )
        if chosen:
            path = Path(chosen)
            self.choose_target(path if path.suffix else path.with_suffix(".h5"))
        return bool(chosen)

    def choose_target(self, path: Path) -> None:
        """The capture shall lie there."""
        self.edits.do(self.tr("choose the place"), replace(self.state.draft, target=path))

    # -- bringing in --------------------------------------------------------------------------

    def bring_in(self) -> None:
        """Make the capture; what is missing is shown instead where something is."""
        if self.at_work or not self.state.draft.files or not self.shown:
            return
        self.page.commit()
        self._wanted = self._undecided()
        if self._wanted:
            return  # as soon as all files have been looked at
        place = self.state.first_trouble()
        if place is not None:
            self.state.place = place
            self.show()
            seen = self.state.seen(place)
            if seen is not None:
                self.page.attend(seen.problems[0].need)
            return
        target = self._place.target if self._place is not None else None
        if target is None:
            self._wanted = self._choose_target()
        else:
            self._start(target)

    def _start(self, target: Path) -> None:
        draft, sources = self.state.draft, self.state.sources()
        title = draft.title or self._together_name
        folder = self.recipes if draft.keep else None
        self._window.jobs.run(
            IMPORTING,
            self.tr("Importing {name}").format(name=target.name),
            lambda tick: bring_in(sources, target, title, folder, tick),
            self._brought,
            self._failed,
        )
        self.show()

    def _brought(self, done: Brought) -> None:
        self._begin_anew()
        self._window.show_review()
        self._window.open_file(done.target)
        if done.unkept is not None:
            doing = self.tr("Keeping what was chosen for the next file")
            self._window.page.problem_bar.show_problem(sentence(done.unkept, doing))

    def _failed(self, error: Exception) -> None:
        self.show()
        self._complain(error)

    def _complain(self, error: Exception) -> None:
        self._wanted = False
        if isinstance(error, WornbandError):
            self.page.problem_bar.show_problem(error_sentence(error))
        else:
            self.page.problem_bar.show_problem(sentence(error, self.tr("Importing")))

    def _say_stopped(self) -> None:
        if self.at_work:
            self._window.statusBar().showMessage(self.tr("Stopped; nothing was written."), 8000)

    def _progress(self, topic: str, _title: str, done: float) -> None:
        if topic == IMPORTING and self.at_work:
            self.page.show_work(done)
        elif topic == LOOKING:
            self.page.show_looking(done)

    def _ended(self, topic: str) -> None:
        if topic == IMPORTING and not self.at_work:
            self.page.show_work(None)
            self.show()
        elif topic == LOOKING:
            self.page.show_looking(None)

    # -- the circle ---------------------------------------------------------------------------

    def _follow(self) -> None:
        window, page, files = self._window, self.page, self.page.files
        window.jobs.progressed.connect(self._progress)
        window.jobs.ended.connect(self._ended)
        window.pages.currentChanged.connect(self.show)
        self.edits.changed.connect(self._find_place)
        self.edits.changed.connect(self._go_on)
        page.stack.indexChanged.connect(window.desk.show_enabled)
        window.actions_by_name["cancel"].triggered.connect(self._say_stopped)
        files.chosen.connect(self._choose_file)
        files.moved.connect(self._move)
        files.removed.connect(self._remove)
        files.add_wanted.connect(self._ask_for_more)
        page.import_wanted.connect(self.bring_in)
        page.anew_wanted.connect(self._guess_anew)
        page.elsewhere_wanted.connect(self._choose_target)
        window.actions_by_name.connect(
            {
                "import": self.ask_for_files,
                "import_folder": self.ask_for_folder,
                "bring_in": self.bring_in,
            }
        )
        self.show()
