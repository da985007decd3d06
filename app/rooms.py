"""The pages beside Review: each is furnished when it is first wanted, so that no start waits for it."""

from __future__ import annotations

from functools import cached_property
from importlib import import_module
from typing import TYPE_CHECKING, Final, TypeAlias, TypeVar

from PySide6.QtGui import QUndoStack

from analysis.progress import Tick
from app.compare.specs import COMPARE_SPECS
from app.drawing.theme import Palette
from app.importing.specs import IMPORT_SPECS
from app.jobs import Jobs
from app.reporting.specs import REPORT_SPECS
from app.watching.specs import WATCH_SPECS

if TYPE_CHECKING:
    from app.compare.desk import CompareDesk
    from app.importing.desk import ImportDesk
    from app.main_window import Window
    from app.reporting.desk import ReportDesk
    from app.views.problem_bar import ProblemBar
    from app.watching.desk import WatchDesk

    Desk: TypeAlias = CompareDesk | ImportDesk | ReportDesk | WatchDesk
    _Desk = TypeVar("_Desk", CompareDesk, ImportDesk, ReportDesk, WatchDesk)

_NAMES: Final = ("compare", "imports", "watching", "report")
MODULES: Final = (
    "app.compare.desk",
    "app.reporting.desk",
    "app.importing.desk",
    "app.watching.desk",
    "app.why.window",
)
"""What the rooms, and the window that explains, load when they are furnished."""

_NOTHING_YET = ("bring_in", "next_sensor", "review_gathered")
"""What its room offers once there is something to do it with."""


class Rooms:
    """The desks of Compare, Import, Watch and Report, each with its page.

    The modules of a room load with it: together they are a third of all modules, and of the time to the first
    picture (measured).

    Parameters
    ----------
    window : Window
        Whose rooms they are, with its session, actions and stack of pages made.
    """

    def __init__(self, window: Window) -> None:
        self._window = window
        self._loading = Jobs(window)
        actions = window.actions_by_name
        for name in _NOTHING_YET:
            actions[name].setEnabled(False)
        for specs, furnish in (
            (COMPARE_SPECS, lambda: self.compare),
            (IMPORT_SPECS, lambda: self.imports),
            (WATCH_SPECS, lambda: self.watching),
            (REPORT_SPECS, lambda: self.report),
        ):
            actions.furnish_first([spec[0] for spec in specs if spec[0] != "review"], furnish)
        actions.connect({"review": self.leave})
        session = window.session
        session.foreign.connect(lambda path: self.imports.take_foreign(path))
        for changed in (session.capture_changed, session.findings_changed):
            changed.connect(self._offer_report)
        self._offer_report()

    @cached_property
    def compare(self) -> CompareDesk:
        """Two captures against each other."""
        from app.compare.desk import CompareDesk

        window = self._window
        desk = self._furnished(CompareDesk(window))
        for jobs in desk.every_jobs:
            window.work.follow(jobs)
        desk.maker.compared.connect(window.show_enabled)
        desk.focus.windows_changed.connect(window.show_enabled)
        desk.show_as_lanes(window.settings.lanes)
        return desk

    @cached_property
    def imports(self) -> ImportDesk:
        """What a recorder saved becomes a capture."""
        from app.importing.desk import ImportDesk

        return self._furnished(ImportDesk(self._window))

    @cached_property
    def watching(self) -> WatchDesk:
        """A folder that a recorder saves into."""
        from app.watching.desk import WatchDesk

        return self._furnished(WatchDesk(self._window))

    @cached_property
    def report(self) -> ReportDesk:
        """The report as it is printed."""
        from app.reporting.desk import ReportDesk

        return self._furnished(ReportDesk(self._window, self._window.keeper))

    @property
    def furnished(self) -> tuple[Desk, ...]:
        """The rooms that somebody wanted so far."""
        return tuple(self.__dict__[name] for name in _NAMES if name in self.__dict__)

    @property
    def shown(self) -> Desk | None:
        """The room that is in front; None while that is Review."""
        page = self._window.pages.currentWidget()
        return next((desk for desk in self.furnished if desk.page is page), None)

    @property
    def comparing(self) -> bool:
        """Whether Compare is in front."""
        return self._is_shown("compare")

    @property
    def importing(self) -> bool:
        """Whether Import is in front."""
        return self._is_shown("imports")

    def load_ahead(self) -> None:
        """Load what the rooms need beside the window: nobody shall wait for it who wants one."""
        # What goes wrong here goes wrong again where a room is wanted, and is told there.
        self._loading.run("load", "", _load, lambda _done: None, lambda _error: None)

    def problem_bar(self) -> ProblemBar:
        """Where the page that is shown says what went wrong."""
        return (self.shown or self._window).page.problem_bar

    def undo_stack(self) -> QUndoStack | None:
        """What can be undone in the room that is in front; None where that is the review's."""
        return self.imports.page.stack if self.importing else None

    def apply_palette(self, palette: Palette) -> None:
        """Take on a palette in every furnished room."""
        for desk in self.furnished:
            desk.page.apply_palette(palette)

    def show_as_lanes(self, as_lanes: bool) -> None:
        """One lane for each channel, or all on one axis, wherever traces are shown."""
        if "compare" in self.__dict__:
            self.compare.show_as_lanes(as_lanes)

    def show_stopped(self) -> None:
        """Say how to go on where the work was stopped."""
        if "compare" in self.__dict__:
            self.compare.show_stopped()

    def leave(self) -> None:
        """Go back to Review; what is still being typed is taken."""
        self.leave_typing()
        self._window.show_review()

    def leave_typing(self) -> None:
        """Take what is still being typed; whoever closes the review saves it."""
        if "report" in self.__dict__:
            self.report.leave()

    def close(self) -> None:
        """Stop all work, and close what is open."""
        self._loading.shut_down()
        for desk in self.furnished:
            desk.close()

    def _is_shown(self, name: str) -> bool:
        return name in self.__dict__ and self._window.pages.currentWidget() is self.__dict__[name].page

    def _furnished(self, desk: _Desk) -> _Desk:
        desk.page.apply_palette(self._window.colours)
        self._window.pages.addWidget(desk.page)
        return desk

    def _offer_report(self) -> None:
        session = self._window.session
        ready = session.capture is not None and session.findings is not None
        for name in ("report", "save_pdf", "save_html", "print_report"):
            self._window.actions_by_name[name].setEnabled(ready)


class WithRooms:
    """What a window says of its rooms; to ask for one furnishes it."""

    rooms: Rooms

    @property
    def comparing(self) -> bool:
        """Whether Compare is shown, and not Review."""
        return self.rooms.comparing

    @property
    def compare(self) -> CompareDesk:
        """Two captures against each other."""
        return self.rooms.compare

    @property
    def imports(self) -> ImportDesk:
        """What a recorder saved becomes a capture."""
        return self.rooms.imports

    @property
    def watching(self) -> WatchDesk:
        """A folder that a recorder saves into."""
        return self.rooms.watching

    @property
    def report_desk(self) -> ReportDesk:
        """The report as it is printed."""
        return self.rooms.report


def _load(tick: Tick) -> None:
    for place, name in enumerate(MODULES):
        tick(place / len(MODULES))
        import_module(name)
