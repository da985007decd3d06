"""Review laid out: records at the left, record and track in the middle, evidence at the right."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, QSize, Qt, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import (
    QHBoxLayout,
    QMenu,
    QSizePolicy,
    QSplitter,
    QToolButton,
    QVBoxLayout,
    QWidget,
)

from app.actions import Actions
from app.drawing import icons
from app.drawing.theme import Palette
from app.review.decision_words import accepted_name
from app.review.right_column import RightColumn
from app.review.speed_box import SpeedBox
from app.views.action_button import ActionButton
from app.views.elided_label import ElidedLabel
from app.views.events import EventsView
from app.views.evidence import EvidenceView
from app.views.hint_bar import HintBar
from app.views.markers import MarkersView
from app.views.overview import OverviewView
from app.views.problem_bar import ProblemBar
from app.views.records import RecordsView
from app.views.split_strip import SplitStrip
from app.views.tab_order import in_turn, stops
from app.views.trace import TraceView
from app.views.track import TrackView
from app.why.strip import ControlUnitStrip

_GAP_PX = 6
_ROOM_FOR_ANSWERS_PX = 640
_ROOM_FOR_TITLE_PX = 400  # of a name and a little of what is said of it
_LOW_PX = 620
_STRIP_EVENTS = (QEvent.Type.Resize, QEvent.Type.ShowToParent, QEvent.Type.HideToParent)


class ReviewPage(QWidget):
    """The views of Review in their places, and the header above them.

    Parameters
    ----------
    actions : Actions
        For the buttons.
    captures_menu : QMenu
        Last captures and samples.
    """

    _strip_changed = Signal()

    def __init__(self, actions: Actions, captures_menu: QMenu) -> None:
        super().__init__()
        self._actions = actions
        self.records, self.events = RecordsView(), EventsView()
        self.overview, self.trace, self.track = OverviewView(), TraceView(), TrackView()
        self.evidence, self.problem_bar, self.hint_bar = EvidenceView(), ProblemBar(), HintBar()
        self.markers = MarkersView()
        self.control_unit = ControlUnitStrip()
        self.title, self.subtitle = ElidedLabel(), ElidedLabel()
        self.speed = SpeedBox()
        self._captures_button = QToolButton()
        self._left = _LeftColumn(self.records, self.events)
        self._right = RightColumn(self.evidence, self.markers)
        self.split_strip = SplitStrip([self._outlined(name) for name in ("accept_split", "refuse_split")])
        self._band_chosen = False
        self._arrange_tools()
        self.track.installEventFilter(self)
        page = QVBoxLayout(self)
        page.setContentsMargins(8, 2, 8, 0)
        page.setSpacing(_GAP_PX)
        self._header_tools: list[QToolButton] = []
        page.addWidget(_that_gives_way(self._header(captures_menu)))
        page.addWidget(self.problem_bar)
        page.addWidget(self.hint_bar)
        page.addWidget(self.split_strip)
        page.addWidget(self._panes(), 1)
        self._order_stops()

    def fit_records(self) -> None:
        """Give Records the height that its rows need, and the rest to the crossings."""
        self._left.fit()

    def fit_markers(self) -> None:
        """Give Markers the height that its rows and readings need, and the rest to Evidence."""
        self._right.fit()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """On a small screen let words go where a picture says it too, and height where there is little."""
        super().resizeEvent(event)
        self.overview.show_low(self.height() < _LOW_PX)
        self.control_unit.show_low(self.height() < _LOW_PX)
        self._fit_header()

    def _fit_header(self) -> None:
        """Leave room for the capture's name: buttons give up their words, from the right."""
        beside, alone = Qt.ToolButtonStyle.ToolButtonTextBesideIcon, Qt.ToolButtonStyle.ToolButtonIconOnly
        for tool in self._header_words:
            tool.setToolButtonStyle(beside)
        room = self.width() - _ROOM_FOR_TITLE_PX
        for tool in reversed(self._header_words):
            if sum(item.sizeHint().width() for item in self._header_tools) <= room:
                break
            tool.setToolButtonStyle(alone)

    def track_tools(self, shown: bool) -> None:
        """Show what can be said of the chosen band beside the sensor track's name, or not."""
        self._band_chosen = shown
        self._fit_track_tools()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:  # noqa: N802 - Qt's own name
        """Fit the tools beside the sensor track's name to its width, and the panes to the strip."""
        if watched is self.track and event.type() == QEvent.Type.Resize:
            self._fit_track_tools()
        if watched is self.control_unit and event.type() in _STRIP_EVENTS:
            self._strip_changed.emit()
        return super().eventFilter(watched, event)

    def _make_room(self) -> None:
        self._middle.make_room(self.control_unit)

    def _fit_track_tools(self) -> None:
        """Where there is no room for all of them, the card of the band and the icon say it alone."""
        for tool in self._band_tools:
            tool.setVisible(self._band_chosen and self.track.width() >= _ROOM_FOR_ANSWERS_PX)
        for style in (Qt.ToolButtonStyle.ToolButtonTextBesideIcon, Qt.ToolButtonStyle.ToolButtonIconOnly):
            self._run.setToolButtonStyle(style)
            if self.track.fit_note():
                break

    def apply_palette(self, palette: Palette) -> None:
        """Take on the colours of a palette."""
        self._captures_button.setIcon(icons.icon("recent", palette.ink, palette.faint))
        for view in (
            self.records,
            self.events,
            self.overview,
            self.trace,
            self.control_unit,
            self.track,
            self.evidence,
            self.markers,
            self.problem_bar,
            self.hint_bar,
        ):
            view.apply_palette(palette)

    def _header(self, captures_menu: QMenu) -> QHBoxLayout:
        self.title.setObjectName("captureTitle")
        self.subtitle.setProperty("quiet", True)
        self.subtitle.setContentsMargins(0, 4, 0, 0)
        self.subtitle.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)  # what is left
        header = QHBoxLayout()
        header.setSpacing(4)
        header.addWidget(self.title)
        header.addSpacing(8)
        header.addWidget(self.subtitle, 1)
        for name in ("undo", "redo", "back", "forward", "whole", "zoom_out", "zoom_in"):
            self._header_tools.append(self.button(name))
        for name in ("compare", "report", "open", "import"):
            self._header_tools.append(self.button(name, text=True))
        self._captures_button.setText(self.tr("Last captures"))
        self._captures_button.setToolTip(self.tr("Open one of the last captures, or a sample"))
        self._captures_button.setAccessibleName(self.tr("Last captures and samples"))
        self._captures_button.setMenu(captures_menu)
        self._captures_button.setPopupMode(QToolButton.ToolButtonPopupMode.InstantPopup)
        self._captures_button.setToolButtonStyle(Qt.ToolButtonStyle.ToolButtonTextBesideIcon)
        self._captures_button.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self._header_tools.append(self._captures_button)
        for tool in self._header_tools:
            header.addWidget(tool)
        beside = Qt.ToolButtonStyle.ToolButtonTextBesideIcon
        self._header_words = [tool for tool in self._header_tools if tool.toolButtonStyle() == beside]
        return header

    def _arrange_tools(self) -> None:
        for name in ("previous", "next"):
            self.events.add_tool(self.button(name, heading=True))
        self.records.add_tool(self.button("describe", heading=True))
        self.trace.add_tool(self.button("lanes", heading=True))
        self._actions["control_unit"].setIconText(self.tr("Control unit"))  # where it is, the menu says
        self.trace.add_tool(self.button("control_unit", text=True, heading=True))
        self.trace.add_empty_tool(self.button("open", text=True))
        self._band_tools = [self._outlined(name) for name in ("accept", "dismiss")]
        for tool in self._band_tools:
            self.track.add_tool(tool)
        names = ("accept", "adjust", "dismiss", "withdraw")
        self.evidence.use_tools(lambda: [self._outlined(name) for name in names])
        self.track.add_tool(self.button("why", heading=True))
        self._run = self._run_button()
        self.track.add_tool(self._run)
        self.track.add_tool(self.speed)

    def _run_button(self) -> QToolButton:
        """Run or rest; behind the arrow, crossing by crossing."""
        run = self.button("run", text=True, heading=True)
        ways = QMenu(run)
        ways.addActions([self._actions[name] for name in ("run_crossing", "run_onward", "repeat")])
        run.setMenu(ways)
        run.setPopupMode(QToolButton.ToolButtonPopupMode.MenuButtonPopup)
        return run

    def _panes(self) -> QSplitter:
        middle = QWidget()
        column = QVBoxLayout(middle)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(_GAP_PX)
        column.addWidget(self.overview)
        self._middle = _MiddleColumn(_above(self.trace, self.control_unit), self.track)
        self.control_unit.installEventFilter(self)
        # Queued: the strip hears of its size while the column is sharing the height out.
        self._strip_changed.connect(self._make_room, Qt.ConnectionType.QueuedConnection)
        column.addWidget(self._middle, 1)
        panes = QSplitter(Qt.Orientation.Horizontal)
        for place, (pane, stretch, least) in enumerate(
            ((self._left, 1, 220), (middle, 5, 420), (self._right, 2, 292))
        ):
            panes.addWidget(pane)
            panes.setStretchFactor(place, stretch)
            pane.setMinimumWidth(least)
        panes.setSizes([224, 750, 368])
        panes.setHandleWidth(_GAP_PX)
        panes.setChildrenCollapsible(False)
        return panes

    def _order_stops(self) -> None:
        """Let Tab go from the header to the left, the middle and the right column, each from the top."""
        in_turn(
            [
                *self._header_tools,
                *stops(self.problem_bar),
                *stops(self.hint_bar),
                *stops(self.split_strip),
                *(self.records.list, *stops(self.records), self.records.form),
                *(self.events.list, *stops(self.events)),
                self.overview,
                *(stop for view in (self.trace, self.control_unit, self.track) for stop in stops(view)),
                self.evidence.rows_area,
                *stops(self.evidence),
                *stops(self.markers),
            ]
        )

    def _outlined(self, name: str) -> QToolButton:
        """A button of words alone, with a rim that says that it is one."""
        button = self.button(name, text=True, heading=True)
        button.setProperty("outlined", True)
        return button

    def button(self, name: str, text: bool = False, heading: bool = False) -> QToolButton:
        """A button for an action, with its name and tip for a screen reader."""
        action = self._actions[name]
        button = ActionButton(action, (accepted_name(),) if name == "accept" else ())
        button.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        button.setIconSize(QSize(16, 16) if heading else QSize(20, 20))
        button.setProperty("heading", heading)
        if text:
            button.setToolButtonStyle(Qt.ToolButtonStyle.ToolButtonTextBesideIcon)
        return button


class _LeftColumn(QSplitter):
    """Records as high as its rows need, the crossings below it."""

    def __init__(self, records: RecordsView, events: EventsView) -> None:
        super().__init__(Qt.Orientation.Vertical)
        self._records = records
        self.setHandleWidth(_GAP_PX)
        self.setChildrenCollapsible(False)
        self.addWidget(records)
        self.addWidget(events)
        # Queued: a list is told of its width while the column is sharing the height out.
        records.list.wrapped_anew.connect(self._fit_later, Qt.ConnectionType.QueuedConnection)

    def fit(self) -> None:
        """Share the height out."""
        records = min(
            self._records.wanted_height(), round((0.85 if self._records.form_shown else 0.65) * self.height())
        )
        self.setSizes([records, self.height() - records])

    def _fit_later(self) -> None:
        self.fit()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Share the new height out."""
        super().resizeEvent(event)
        self.fit()


def _that_gives_way(row: QHBoxLayout) -> QWidget:
    """A row that never holds the window wide: its buttons give up their words once it is narrower."""
    holder = QWidget()
    row.setContentsMargins(0, 0, 0, 0)
    holder.setLayout(row)
    holder.setMinimumWidth(1)
    return holder


def _above(pane: QWidget, strip: QWidget) -> QWidget:
    """A pane with a strip below it, that takes no room while it is hidden."""
    both = QWidget()
    column = QVBoxLayout(both)
    column.setContentsMargins(0, 0, 0, 0)
    column.setSpacing(_GAP_PX)
    column.addWidget(pane, 1)
    column.addWidget(strip)
    return both


class _MiddleColumn(QSplitter):
    """Trace, with whatever stands under it, above the sensor track."""

    def __init__(self, upper: QWidget, lower: QWidget) -> None:
        super().__init__(Qt.Orientation.Vertical)
        self._taken_px = 0
        self.setHandleWidth(_GAP_PX)
        self.setChildrenCollapsible(False)
        for place, (pane, stretch) in enumerate(((upper, 10), (lower, 9))):
            self.addWidget(pane)
            self.setStretchFactor(place, stretch)
        self.setSizes([1000, 900])

    def make_room(self, strip: QWidget) -> None:
        """Let Trace and the sensor track give up room for a strip in the proportion that they have."""
        taken_px = strip.sizeHint().height() + _GAP_PX if strip.isVisibleTo(self) else 0
        upper, lower = self.sizes()
        before, after = upper + lower - self._taken_px, upper + lower - taken_px
        if taken_px != self._taken_px and before > 0:
            trace = round((upper - self._taken_px) * after / before)
            self._taken_px = taken_px
            self.setSizes([trace + taken_px, after - trace])
