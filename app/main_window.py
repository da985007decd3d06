"""The workbench's window: Review laid out, and the one circle from the hand to the views and back."""

from __future__ import annotations

from functools import partial
from pathlib import Path

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QAction, QCloseEvent, QDragEnterEvent, QDropEvent, QGuiApplication
from PySide6.QtWidgets import (
    QComboBox,
    QFileDialog,
    QHBoxLayout,
    QLabel,
    QMainWindow,
    QMenu,
    QProgressBar,
    QSizePolicy,
    QSplitter,
    QToolButton,
    QVBoxLayout,
    QWidget,
)

from app import resources
from app.actions import MENUS, Actions, menu_name
from app.arm import Arm
from app.drawing import icons
from app.drawing.theme import palette_for, style_sheet
from app.focus import Focus
from app.jobs import Jobs
from app.playback import SPEEDS
from app.review_circle import ReviewCircle
from app.session import EXAMINING, OPENING, Session, Tools
from app.settings import Settings
from app.views.elided_label import ElidedLabel
from app.views.events import EventsView
from app.views.evidence import EvidenceView
from app.views.keys_page import KeysPage
from app.views.overview import OverviewView
from app.views.problem_bar import ProblemBar
from app.views.readout import Readout
from app.views.records import RecordsView
from app.views.trace import TraceView
from app.views.track import TrackView

_FILTERS = "*.h5 *.hdf5 *.nc"


class Window(QMainWindow):
    """Review: records at the left, the record and the track in the middle, evidence at the right.

    Parameters
    ----------
    tools : Tools
        How captures are opened and examined.
    settings : Settings
        What is remembered from one time to the next.
    """

    def __init__(self, tools: Tools, settings: Settings) -> None:
        super().__init__()
        self.settings = settings
        self.jobs = Jobs(self)
        self.session = Session(tools, self.jobs, self)
        self.focus = Focus(parent=self)
        self.arm = Arm(self.focus, parent=self)
        self.actions_by_name = Actions(self)
        self.records, self.events = RecordsView(), EventsView()
        self.overview, self.trace, self.track = OverviewView(), TraceView(), TrackView()
        self.evidence, self.problem_bar, self.readout = EvidenceView(), ProblemBar(), Readout()
        self._lay_out()
        self.circle = ReviewCircle(self)
        self._connect()
        self.setAcceptDrops(True)
        self.resize(1366, 768)
        if not settings.geometry.isEmpty():
            self.restoreGeometry(settings.geometry)
        self.actions_by_name["lanes"].setChecked(settings.lanes)
        self.trace.show_as_lanes(settings.lanes)
        self.apply_colours()
        self._show_title()
        self._show_enabled()

    def open_file(self, path: Path) -> None:
        """Open a capture in the background."""
        self.problem_bar.hide()
        self.session.open_file(path)

    def ask_for_file(self) -> None:
        """Let the technician choose a capture."""
        recent = self.settings.recent
        beside = str(recent[0].parent) if recent else str(Path.home())
        kinds = self.tr("Captures ({patterns});;All files (*)").format(patterns=_FILTERS)
        chosen, _ = QFileDialog.getOpenFileName(self, self.tr("Open a capture"), beside, kinds)
        if chosen:
            self.open_file(Path(chosen))

    def fit_records(self) -> None:
        """Give Records the height that its rows need, and the rest to the crossings."""
        height = self._left.height()
        records = min(self.records.wanted_height(), round(0.65 * height))
        self._left.setSizes([records, height - records])

    def apply_colours(self) -> None:
        """Take on the palette that the settings and the desktop ask for."""
        palette = palette_for(self.settings.colours)
        self.setStyleSheet(style_sheet(palette))
        self.actions_by_name.apply_palette(palette)
        self._recent_button.setIcon(icons.icon("recent", palette.ink, palette.faint))
        self.setWindowIcon(icons.icon("wornband", "#D55E00", palette.faint))
        for view in (
            self.records,
            self.events,
            self.overview,
            self.trace,
            self.track,
            self.evidence,
            self.problem_bar,
            self.readout,
        ):
            view.apply_palette(palette)

    def closeEvent(self, event: QCloseEvent) -> None:
        """Stop the work, close the file, remember the window; nothing is asked, for nothing is lost."""
        self.arm.rest()
        self.settings.geometry = self.saveGeometry()
        self.session.close()
        super().closeEvent(event)

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        """Take files."""
        if event.mimeData().hasUrls():
            event.acceptProposedAction()

    def dropEvent(self, event: QDropEvent) -> None:
        """Open the first file that was dropped."""
        files = [Path(url.toLocalFile()) for url in event.mimeData().urls() if url.isLocalFile()]
        if files:
            event.acceptProposedAction()
            self.open_file(files[0])

    # -- layout ------------------------------------------------------------------------------

    def _lay_out(self) -> None:
        centre = QWidget()
        page = QVBoxLayout(centre)
        page.setContentsMargins(8, 2, 8, 0)
        page.setSpacing(6)
        page.addLayout(self._header())
        page.addWidget(self.problem_bar)
        page.addWidget(self._panes(), 1)
        self.setCentralWidget(centre)
        self._lay_out_menus()
        self._lay_out_status()

    def _header(self) -> QHBoxLayout:
        self._title, self._subtitle = ElidedLabel(), ElidedLabel()
        self._title.setObjectName("captureTitle")
        self._subtitle.setProperty("quiet", True)
        self._subtitle.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        self._subtitle.setContentsMargins(0, 4, 0, 0)
        header = QHBoxLayout()
        header.setSpacing(4)
        header.addWidget(self._title)
        header.addSpacing(8)
        header.addWidget(self._subtitle, 1)
        for name in ("back", "forward", "whole", "zoom_out", "zoom_in"):
            header.addWidget(self._button(name))
        header.addSpacing(10)
        header.addWidget(self._button("open", text=True))
        self._recent_menu = QMenu(self.tr("Last captures"), self)
        self._recent_menu.aboutToShow.connect(self._fill_recent)
        self._recent_button = QToolButton()
        self._recent_button.setText(self.tr("Last captures"))
        self._recent_button.setToolTip(self.tr("Open one of the last captures, or a sample"))
        self._recent_button.setAccessibleName(self.tr("Last captures and samples"))
        self._recent_button.setMenu(self._recent_menu)
        self._recent_button.setPopupMode(QToolButton.ToolButtonPopupMode.InstantPopup)
        self._recent_button.setToolButtonStyle(Qt.ToolButtonStyle.ToolButtonTextBesideIcon)
        header.addWidget(self._recent_button)
        return header

    def _panes(self) -> QSplitter:
        for name in ("previous", "next"):
            self.events.add_tool(self._button(name, heading=True))
        self.trace.add_tool(self._button("lanes", heading=True))
        self.speed = QComboBox()
        self.speed.addItems([f"{speed:g}×" for speed in SPEEDS])
        self.speed.setCurrentIndex(SPEEDS.index(1.0))
        self.speed.setToolTip(self.tr("How fast the arm runs (, and .)"))
        self.speed.setAccessibleName(self.tr("Speed of the arm"))
        self.speed.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self.track.add_tool(self._button("run", text=True, heading=True))
        self.track.add_tool(self.speed)
        self._left = left = _column([(self.records, 3), (self.events, 2)])
        middle = QWidget()
        column = QVBoxLayout(middle)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(6)
        column.addWidget(self.overview)
        column.addWidget(_column([(self.trace, 10), (self.track, 9)]), 1)
        panes = QSplitter(Qt.Orientation.Horizontal)
        for place, (pane, width, stretch) in enumerate(
            ((left, 218, 1), (middle, 790, 5), (self.evidence, 330, 2))
        ):
            panes.addWidget(pane)
            panes.setStretchFactor(place, stretch)
            pane.setMinimumWidth(420 if pane is middle else 180)
            pane.resize(QSize(width, 600))
        panes.setSizes([218, 790, 334])
        panes.setHandleWidth(6)
        panes.setChildrenCollapsible(False)
        return panes

    def _button(self, name: str, text: bool = False, heading: bool = False) -> QToolButton:
        action = self.actions_by_name[name]
        button = QToolButton()
        button.setDefaultAction(action)
        button.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        button.setIconSize(QSize(16, 16) if heading else QSize(20, 20))
        button.setProperty("heading", heading)
        button.setAccessibleName(action.text())
        button.setAccessibleDescription(action.toolTip())
        if text:
            button.setToolButtonStyle(Qt.ToolButtonStyle.ToolButtonTextBesideIcon)
        return button

    def _lay_out_menus(self) -> None:
        for menu in MENUS:
            made = self.menuBar().addMenu(menu_name(menu))
            made.addActions(self.actions_by_name.in_menu(menu))
            if menu == "Capture":
                made.insertMenu(self.actions_by_name["examine"], self._recent_menu)
            if menu == "View":
                made.addSeparator()
                made.addMenu(self._colours_menu())

    def _colours_menu(self) -> QMenu:
        menu = QMenu(self.tr("Colours"), self)
        choices = {"system": self.tr("As the desktop"), "light": self.tr("Light"), "dark": self.tr("Dark")}
        for name, text in choices.items():
            action = QAction(text, menu)
            action.triggered.connect(lambda _checked=False, name=name: self._choose_colours(name))
            menu.addAction(action)
        return menu

    def _lay_out_status(self) -> None:
        self._work = QLabel()
        self.progress = QProgressBar()
        self.progress.setFixedWidth(140)
        self.progress.setTextVisible(False)
        self.progress.setRange(0, 1000)
        self.progress.setAccessibleName(self.tr("Progress"))
        self._stop = self._button("cancel")
        self._stop.setToolButtonStyle(Qt.ToolButtonStyle.ToolButtonTextOnly)
        self.statusBar().setSizeGripEnabled(False)
        self.statusBar().addWidget(self.readout, 1)
        for widget in (self._work, self.progress, self._stop):
            self.statusBar().addPermanentWidget(widget)
        self._show_idle()

    # -- the circle --------------------------------------------------------------------------

    def _connect(self) -> None:
        self.session.capture_changed.connect(self._captured)
        self.session.findings_changed.connect(self._show_enabled)
        self.session.problem.connect(self._complain)
        self.trace.problem.connect(self.problem_bar.show_problem)
        self.jobs.progressed.connect(self._show_progress)
        self.jobs.ended.connect(self._show_idle)
        self.focus.window_changed.connect(self._show_enabled)
        self.focus.target_changed.connect(self._show_enabled)
        self.speed.activated.connect(lambda place: self.arm.set_speed(SPEEDS[place]))
        self.arm.speed_changed.connect(lambda speed: self.speed.setCurrentIndex(SPEEDS.index(speed)))
        self.arm.running_changed.connect(self._show_running)
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
                "zoom_in": lambda: self.focus.zoom(0.5),
                "zoom_out": lambda: self.focus.zoom(2.0),
                "earlier": lambda: self.focus.pan(-0.25),
                "later": lambda: self.focus.pan(0.25),
                "back": self.focus.back,
                "forward": self.focus.forward,
                "previous": lambda: self.focus.step(-1),
                "next": lambda: self.focus.step(1),
                "clearest": self.circle.open_likeliest,
                "next_band": self.circle.choose_next_band,
                "release": lambda: self.focus.choose_band(None),
                "previous_record": lambda: self.focus.step_record(-1),
                "next_record": lambda: self.focus.step_record(1),
                "run": self.arm.toggle,
                "slower": lambda: self.arm.change_speed(-1),
                "faster": lambda: self.arm.change_speed(1),
                "keys": self._show_keys,
            }
        )

    def stop_work(self) -> None:
        """Stop opening or examining; what is on screen stays."""
        for topic in (OPENING, EXAMINING):
            self.jobs.cancel(topic)
        self.evidence.show_stopped()

    def _captured(self) -> None:
        capture = self.session.capture
        if capture is not None and capture.path is not None:
            self.settings.remember_capture(capture.path)
        self.records.list.setFocus()
        self._show_title()
        self._show_enabled()

    def _complain(self, sentence: str) -> None:
        self.problem_bar.show_problem(sentence)
        self.evidence.show_stopped()

    def _show_title(self) -> None:
        capture = self.session.capture
        if capture is None:
            self._title.setText("Wornband")
            self._subtitle.setText(self.tr("finds the worn band on a position sensor's track, and proves it"))
            self.setWindowTitle("Wornband")
            return
        name = capture.title or (capture.path.stem if capture.path else self.tr("Capture"))
        about = [capture.text(key) for key in ("vehicle", "mounting", "complaint")]
        self._title.setText(name)
        self._subtitle.setText(
            " · ".join(item for item in about if item and item.lower() not in name.lower())
        )
        self.setWindowTitle(f"{name} – Wornband")

    def _show_enabled(self) -> None:
        """Offer only what can be done now."""
        shown, passages = self.focus.record is not None, bool(self.focus.passages)
        bands = any(item.band is not None for item in self.focus.passages)
        can = {
            "back": self.focus.history.can_go_back,
            "forward": self.focus.history.can_go_forward,
            "previous": passages,
            "next": passages,
            "clearest": bands,
            "next_band": bands,
        }
        for name in ("examine", "whole", "zoom_in", "zoom_out", "earlier", "later", "previous_record"):
            can[name] = shown
        can["next_record"] = can["run"] = shown
        for name, possible in can.items():
            self.actions_by_name[name].setEnabled(possible)

    def _show_progress(self, topic: str, title: str, done: float) -> None:
        if self.jobs.running(topic):
            self._work.setText(f"{title}…")
            self.progress.setValue(round(1000 * done))
            self.actions_by_name["cancel"].setEnabled(True)
            for widget in (self._work, self.progress, self._stop):
                widget.show()

    def _show_idle(self) -> None:
        if not any(self.jobs.running(topic) for topic in (OPENING, EXAMINING)):
            self.actions_by_name["cancel"].setEnabled(False)
            for widget in (self._work, self.progress, self._stop):
                widget.hide()

    def _show_running(self, running: bool) -> None:
        self.actions_by_name["run"].setChecked(running)

    def _show_whole(self) -> None:
        self.focus.show_whole()
        self.track.show_whole()

    def _toggle_lanes(self) -> None:
        self.settings.lanes = self.actions_by_name["lanes"].isChecked()
        self.trace.show_as_lanes(self.settings.lanes)
        self.circle.refresh()

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

    def _fill_recent(self) -> None:
        menu = self._recent_menu
        menu.clear()
        for path in self.settings.recent:
            menu.addAction(path.name, partial(self.open_file, path)).setToolTip(str(path))
        samples = resources.sample_captures()
        if samples:
            menu.addSection(self.tr("Samples"))
        for path in samples:
            menu.addAction(path.stem.replace("_", " "), partial(self.open_file, path))
        if menu.isEmpty():
            menu.addAction(self.tr("None yet: open a capture")).setEnabled(False)


def first_capture(settings: Settings) -> Path | None:
    """What to show when nothing was asked for: a sample the first time, and an empty window after that."""
    samples = resources.sample_captures()
    worn = [path for path in samples if "worn" in path.stem]
    return next(iter(worn or samples), None) if not settings.recent else None


def _column(panes: list[tuple[QWidget, int]]) -> QSplitter:
    column = QSplitter(Qt.Orientation.Vertical)
    column.setHandleWidth(6)
    column.setChildrenCollapsible(False)
    for place, (pane, stretch) in enumerate(panes):
        column.addWidget(pane)
        column.setStretchFactor(place, stretch)
        pane.resize(QSize(400, 100 * stretch))
    column.setSizes([100 * stretch for _, stretch in panes])
    return column
