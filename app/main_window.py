"""The workbench's window: Review laid out, and the one circle from the hand to the views and back."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import Signal
from PySide6.QtGui import QCloseEvent, QDragEnterEvent, QDropEvent, QGuiApplication
from PySide6.QtWidgets import QFileDialog, QMainWindow

from analysis.captures.known_words import known_word
from app.actions import Actions, menu_names
from app.captures_menu import CapturesMenu
from app.colours_menu import ColoursMenu
from app.compare.specs import COMPARE_SPECS
from app.drawing import icons
from app.drawing.spoken import say_drawings
from app.drawing.theme import Palette, palette_for, style_sheet
from app.exporting.desk import ExportDesk
from app.jobs import Jobs
from app.language import said
from app.language_menu import LanguageMenu
from app.page_stack import PageStack
from app.pane_keys import PaneKeys
from app.resources import is_sample
from app.review.arm import Arm
from app.review.circle import ReviewCircle
from app.review.desk import ReviewDesk
from app.review.focus import Focus
from app.review.keeper import ReviewKeeper
from app.review.page import ReviewPage
from app.review.pointer_reader import PointerReader
from app.review.record_desk import RecordDesk
from app.rooms import Rooms, WithRooms
from app.session import Session, Tools
from app.settings import Settings
from app.views.about_page import AboutPage
from app.views.keys_page import KeysPage
from app.views.problem_bar import ProblemBar
from app.views.readout import Readout
from app.why.circle import WhyCircle
from app.work_status import WorkStatus

if TYPE_CHECKING:
    from app.compare.desk import CompareDesk
    from app.compare.focus import CompareFocus

_FILTERS = "*.h5 *.hdf5 *.nc"
_NUDGE = 1 / 400  # of the window: about two pixels of a small screen


class Window(QMainWindow, WithRooms):
    """Review: records at the left, the record and the track in the middle, evidence at the right.

    Parameters
    ----------
    tools : Tools
        How captures are opened and examined.
    settings : Settings
        What is remembered from one time to the next.

    Signals
    -------
    language_chosen(setting)
        Another language is wanted; a window is built in one, and keeps it.
    """

    language_chosen = Signal(str)

    def __init__(self, tools: Tools, settings: Settings) -> None:
        super().__init__()
        say_drawings()
        self.settings = settings
        self.tools = tools
        self.jobs = Jobs(self)
        self.session = Session(tools, self.jobs, self)
        self.focus = Focus(parent=self)
        self.arm = Arm(self.focus, parent=self)
        self.actions_by_name = Actions(self)
        self._run_text = self.actions_by_name["run"].text()
        self._captures_menu = CapturesMenu(settings, self)
        self.page = ReviewPage(self.actions_by_name, self._captures_menu)
        self.readout, self.pointer = Readout(), PointerReader(self.jobs, self)
        self.pages = PageStack()
        self.pages.addWidget(self.page)
        self.setCentralWidget(self.pages)
        self.rooms = Rooms(self)
        self._lay_out_menus()
        self._lay_out_status()
        self.circle = ReviewCircle(self)
        self.keeper = ReviewKeeper(self.jobs, self)
        self.desk = ReviewDesk(self, self.keeper)
        self.record_desk = RecordDesk(self, self.keeper, self.desk.markers)
        self.why = WhyCircle(self)
        self.exports = ExportDesk(self)
        PaneKeys(self)
        self._connect()
        self.setAcceptDrops(True)
        self.resize(1366, 768)
        if not settings.geometry.isEmpty():
            self.restoreGeometry(settings.geometry)
        self.actions_by_name["lanes"].setChecked(settings.lanes)
        self.page.trace.show_as_lanes(settings.lanes)
        self.arm.set_speed(settings.arm_speed)
        self.apply_colours()
        self._show_title()
        self.show_enabled()

    def open_file(self, path: Path) -> None:
        """Open a capture in the background; a file that is none, or a folder, leads to Import."""
        self.page.problem_bar.hide()
        if not self.keeper.may_go():  # the only one that there is of what was said of the capture
            return
        self.desk.hasten()  # what is open is let go when the other is there
        self.session.open_file(path)

    def ask_for_file(self) -> None:
        """Let the technician choose a capture to review."""
        path = self.choose_file()
        if path is not None:
            self.show_review()
            self.open_file(path)

    def choose_file(self, beside: Path | None = None) -> Path | None:
        """Let the technician choose a capture: in a folder, or where the last one lay, their own first."""
        lay = [path.parent for path in sorted(self.settings.recent, key=is_sample)]
        folder = str(beside or next(iter(lay), Path.home()))
        kinds = self.tr("Captures ({patterns});;All files (*)").format(patterns=_FILTERS)
        chosen, _ = QFileDialog.getOpenFileName(self, self.tr("Open a capture"), folder, kinds)
        return Path(chosen) if chosen else None

    def receive(self, paths: list[Path]) -> None:
        """Files that were dropped, or named at the start: a capture is opened, others lead to Import."""
        if len(paths) == 1 and not self.rooms.importing:
            self.open_file(paths[0])
        else:
            self.imports.receive(paths)

    def show_review(self) -> None:
        """Show the review of one capture."""
        self.pages.setCurrentWidget(self.page)
        self.show_enabled()

    def show_compare(self) -> None:
        """Show two captures against each other."""
        self.arm.rest()
        self.pages.setCurrentWidget(self.compare.page)
        self.compare.enter()
        self.show_enabled()

    def problem_bar(self) -> ProblemBar:
        """Where the page that is shown says what went wrong."""
        return self.rooms.problem_bar()

    def apply_colours(self) -> None:
        """Take on the palette that the settings and the desktop ask for."""
        self.apply_palette(palette_for(self.settings.colours))

    def apply_palette(self, palette: Palette) -> None:
        """Take on a palette, on every page."""
        self.colours = palette
        self.setStyleSheet(style_sheet(palette))
        self.actions_by_name.apply_palette(palette)
        self.setWindowIcon(icons.icon("wornband", palette.band, palette.faint))
        self.page.apply_palette(palette)
        self.rooms.apply_palette(palette)
        self.readout.apply_palette(palette)
        self.why.apply_palette()

    def closeEvent(self, event: QCloseEvent) -> None:
        """Stop the work, close the file, remember the window; nothing is asked, for nothing is lost."""
        self.arm.rest()
        self.rooms.leave_typing()
        self.settings.geometry = self.saveGeometry()
        self.desk.close()
        self.rooms.close()
        self.session.close()
        super().closeEvent(event)

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        """Take files."""
        if event.mimeData().hasUrls():
            event.acceptProposedAction()

    def dropEvent(self, event: QDropEvent) -> None:
        """Open what was dropped: to review it, to compare with it, or to import it."""
        files = [Path(url.toLocalFile()) for url in event.mimeData().urls() if url.isLocalFile()]
        if files:
            event.acceptProposedAction()
            if self.comparing:
                self.compare.open_file(files[0])
            else:
                self.receive(files)

    def _lay_out_menus(self) -> None:
        for menu, name in menu_names().items():
            made = self.menuBar().addMenu(name)
            made.addActions(self.actions_by_name.in_menu(menu))
            if menu == "Capture":
                made.insertMenu(self.actions_by_name["examine"], self._captures_menu)
            if menu == "View":
                made.addSeparator()
                colours, language = ColoursMenu(self.settings, self), LanguageMenu(self.settings, self)
                colours.chosen.connect(self._choose_colours)
                language.chosen.connect(self.language_chosen)
                made.addMenu(colours)
                made.addMenu(language)

    def _lay_out_status(self) -> None:
        self.statusBar().setSizeGripEnabled(False)
        self.statusBar().addWidget(self.readout, 1)
        self.statusBar().messageChanged.connect(lambda text: None if text else self.show_enabled())
        self.work = WorkStatus(self.statusBar(), self.page.button("cancel"), self.actions_by_name["cancel"])
        self.work.follow(self.jobs)

    # -- the circle --------------------------------------------------------------------------

    def _connect(self) -> None:
        self.session.capture_changed.connect(self._captured)
        self.session.findings_changed.connect(self.show_enabled)
        self.session.refused.connect(self.settings.forget_capture)
        self.session.problem.connect(self._complain)
        self.pointer.read.connect(self.readout.show_reading)
        self.pointer.problem.connect(lambda said: self.problem_bar().show_problem(said))
        self.page.trace.problem.connect(self.page.problem_bar.show_problem)
        self.pages.currentChanged.connect(self.show_enabled)
        self.focus.window_changed.connect(self.show_enabled)
        self.focus.target_changed.connect(self.show_enabled)
        self.page.speed.wanted.connect(self.arm.set_speed)
        self._captures_menu.chosen.connect(self.open_file)
        self.arm.speed_changed.connect(self._show_speed)
        self.arm.running_changed.connect(self._show_running)
        # Not the method itself: PySide keeps the name of a method of Qt's own for each connection, for good.
        self.arm.repeat_changed.connect(lambda on: self.actions_by_name["repeat"].setChecked(on))
        QGuiApplication.styleHints().colorSchemeChanged.connect(self.apply_colours)
        self.actions_by_name.connect(
            {
                "open": self.ask_for_file,
                "examine": self.session.examine_again,
                "cancel": self.stop_work,
                "quit": self.close,
                "lanes": self._toggle_lanes,
                "full_screen": self._toggle_full_screen,
                "whole": self._show_whole,
                "zoom_in": lambda: self._time().zoom(0.5),
                "zoom_out": lambda: self._time().zoom(2.0),
                "earlier": lambda: self._time().pan(-0.25),
                "later": lambda: self._time().pan(0.25),
                "back": lambda: self._time().back(),
                "forward": lambda: self._time().forward(),
                "previous": lambda: self._stepped().step(-1),
                "next": lambda: self._stepped().step(1),
                "clearest": self.circle.open_likeliest,
                "next_band": lambda: (self.compare if self.comparing else self.circle).choose_next_band(),
                "release": lambda: self.focus.choose_band(None),
                "previous_record": lambda: self.focus.step_record(-1),
                "next_record": lambda: self.focus.step_record(1),
                "why": self.why.open,
                "control_unit": self.why.show_strip,
                "run": self.arm.toggle,
                "run_crossing": self.arm.run_crossing,
                "run_onward": lambda: self.arm.run_crossing(onward=True),
                "repeat": lambda: self.arm.set_repeat(self.actions_by_name["repeat"].isChecked()),
                "copy": self._copy_reading,
                "arm_back": lambda: self.arm.nudge(-_NUDGE),
                "arm_on": lambda: self.arm.nudge(_NUDGE),
                "slower": lambda: self.arm.change_speed(-1),
                "faster": lambda: self.arm.change_speed(1),
                "keys": self._show_keys,
                "about": self._show_about,
                "compare": self.show_compare,
            }
        )

    def stop_work(self) -> None:
        """Stop the work that is under way; what is on screen stays."""
        self.work.cancel_all()
        self.page.evidence.show_stopped()
        self.rooms.show_stopped()

    def _captured(self) -> None:
        capture = self.session.capture
        if capture is not None and capture.path is not None:
            self.settings.remember_capture(capture.path)
            if not is_sample(capture.path):
                self.page.hint_bar.hide()
        self.page.records.list.setFocus()
        self._show_title()
        self.show_enabled()

    def _complain(self, sentence: str) -> None:
        self.page.problem_bar.show_problem(sentence)
        self.page.evidence.show_stopped()

    def _show_title(self) -> None:
        capture = self.session.capture
        if capture is None:
            self.page.title.setText("Wornband")
            told = self.tr("finds the worn band on a position sensor's track, and proves it")
            self.page.subtitle.setText(told)
            self.setWindowTitle("Wornband")
            return
        name = capture.title or (capture.path.stem if capture.path else self.tr("Capture"))
        about = map(capture.text, ("vehicle", "mounting", "complaint"))
        parts = (said(known_word(item)) for item in about if item and item.lower() not in name.lower())
        self.page.title.setText(name)
        sample = capture.path is not None and is_sample(capture.path)
        self.page.subtitle.setText(" · ".join([self.tr("Sample"), *parts] if sample else parts))
        self.setWindowTitle(f"{name} – Wornband")

    def show_enabled(self) -> None:
        """Offer only what can be done now."""
        own, comparing = self.pages.currentWidget() is self.page, self.comparing
        if not (self.statusBar().currentMessage() and (own or comparing)):  # it would be painted over it
            self.readout.setVisible(own or comparing)
        shown, passages = own and self.focus.record is not None, own and bool(self.focus.passages)
        bands = own and any(item.band is not None for item in self.focus.passages)
        can = {
            "back": (own or comparing) and self._time().history.can_go_back,
            "forward": (own or comparing) and self._time().history.can_go_forward,
            "previous": passages or (comparing and self.compare.steps.possible),
            "next": passages or (comparing and self.compare.steps.possible),
            "run_crossing": passages,
            "run_onward": passages,
            "repeat": passages,
            "clearest": passages,
            "release": own,
            "next_band": bands or (comparing and self.compare.has_bands),
            "control_unit": shown,
            "why": own and self.why.possible,
        }
        for name in ("whole", "zoom_in", "zoom_out", "earlier", "later", "copy"):
            can[name] = shown or comparing
        for name in ("examine", "previous_record", "next_record", "run", "arm_back", "arm_on"):
            can[name] = shown
        self.actions_by_name["review"].setEnabled(not own)
        for name, *_ in COMPARE_SPECS:
            can[name] = comparing or name in ("compare", "open_other", "against_good", "keep_good")
        for name, possible in can.items():
            self.actions_by_name[name].setEnabled(possible)

    def _show_running(self, running: bool) -> None:
        run = self.actions_by_name["run"]
        run.setChecked(running)
        run.setText(self.tr("Stop the arm") if running else self._run_text)

    def _show_speed(self) -> None:
        """Show how fast the arm runs, and remember what was chosen."""
        own_pace, speed = self.arm.own_pace, self.arm.speed
        self.page.speed.show_speed(speed, own_pace)
        chosen = None if own_pace else speed
        if chosen != self.settings.arm_speed:
            self.settings.arm_speed = chosen

    def _time(self) -> Focus | CompareFocus:
        """What knows the time that is shown: that of Review, or that of Compare."""
        return self.compare.focus if self.comparing else self.focus

    def _stepped(self) -> Arm | CompareDesk:
        """What steps from crossing to crossing: the arm in Review, the traces in Compare."""
        return self.compare if self.comparing else self.arm

    def _show_whole(self) -> None:
        if self.comparing:
            self.compare.focus.show_whole()
            self.compare.page.track.show_whole()
            return
        self.focus.show_whole()

    def _copy_reading(self) -> None:
        self.pointer.settle()
        QGuiApplication.clipboard().setText(self.readout.plain_text())

    def _toggle_lanes(self) -> None:
        self.settings.lanes = self.actions_by_name["lanes"].isChecked()
        self.page.trace.show_as_lanes(self.settings.lanes)
        self.circle.refresh()
        self.rooms.show_as_lanes(self.settings.lanes)

    def _toggle_full_screen(self) -> None:
        if self.isFullScreen():
            self.showNormal()
        else:
            self.showFullScreen()

    def _choose_colours(self, name: str) -> None:
        self.settings.colours = name
        self.apply_colours()

    def _show_keys(self) -> None:
        KeysPage(self.actions_by_name, self).open()

    def _show_about(self) -> None:
        AboutPage(self).open()
