"""Compare laid out: the sentence on top, both traces, the sensor track of both, and the numbers."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtGui import QColor, QResizeEvent, QStandardItemModel
from PySide6.QtWidgets import (
    QComboBox,
    QHBoxLayout,
    QLabel,
    QMenu,
    QSplitter,
    QStyledItemDelegate,
    QToolButton,
    QVBoxLayout,
    QWidget,
)

from analysis.comparison.model import Relation
from app.compare.summary import SummaryStrip
from app.drawing.plain import plain_tip
from app.drawing.theme import LIGHT, Palette
from app.page_stack import PageStack
from app.views.caution_strip import CautionStrip
from app.views.corners import CornersView
from app.views.numbers_table import NumbersView
from app.views.problem_bar import ProblemBar
from app.views.side_tools import SideTools
from app.views.trace import TraceView
from app.views.track_pair import TrackPairView

_GAP_PX = 6
_ENTRY_PX = 22
_LOW_PX = 600
"""Below this height the first caution would leave no room for the numbers; its title stays."""
MakeButton = Callable[..., QToolButton]


class ComparePage(QWidget):
    """The views of Compare in their places.

    Parameters
    ----------
    button : callable
        Makes a button of an action by its name, as Review's page does.
    menus : pair of QMenu
        Where the capture of each side is chosen.

    Signals
    -------
    relation_chosen(Relation)
        How the sides belong together.
    """

    relation_chosen = Signal(object)

    def __init__(self, button: MakeButton, menus: tuple[QMenu, QMenu]) -> None:
        super().__init__()
        self._palette = LIGHT
        self.problem_bar, self.cautions = ProblemBar(), CautionStrip()
        self.traces = (TraceView(), TraceView())
        self.tools = (SideTools(menus[0]), SideTools(menus[1]))
        self.track, self.corners, self.numbers = TrackPairView(), CornersView(), NumbersView()
        self.summary = SummaryStrip()
        self.relation, self._relations = QComboBox(), QStandardItemModel(self)
        self.relation.setModel(self._relations)
        # Qt's own of a box draws every entry in one colour.
        self.relation.setItemDelegate(QStyledItemDelegate(self.relation))
        self.relation.setAccessibleName(self.tr("How the two belong together"))
        self.relation.setToolTip(self.tr("How the two belong together; it decides the words alone"))
        self.relation.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self.relation.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToContents)
        for relation, text in (
            (Relation.BEFORE_AFTER, self.tr("Before and after")),
            (Relation.LEFT_RIGHT, self.tr("Left and right")),
            (Relation.KNOWN_GOOD, self.tr("Known good and this one")),
            (Relation.SIDE_BY_SIDE, self.tr("Two different sensors")),
        ):
            self.relation.addItem(text, relation)
            self._relations.item(self._relations.rowCount() - 1).setSizeHint(QSize(0, _ENTRY_PX))
        self.relation.activated.connect(lambda _row: self.relation_chosen.emit(self.chosen_relation()))
        self._lower = PageStack()
        for view in (self.track, self.corners):
            self._lower.addWidget(view)
        self._lay_out(button)

    def show_corners(self, shown: bool) -> None:
        """Show left against right in the place of the sensor track, or the sensor track."""
        self._lower.setCurrentWidget(self.corners if shown else self.track)

    def chosen_relation(self) -> Relation:
        """What the choice says."""
        return Relation(self.relation.currentData())  # Qt hands back the plain text

    @property
    def corners_shown(self) -> bool:
        """Whether left against right is shown."""
        return self._lower.currentWidget() is self.corners

    def show_relation(self, relation: Relation, refused: Mapping[Relation, str]) -> None:
        """Mark how the two belong together, and grey what they cannot be; its tip says why."""
        self.relation.setCurrentIndex(self.relation.findData(relation))
        for row in range(self._relations.rowCount()):
            reason = refused.get(Relation(self.relation.itemData(row)), "")
            self._relations.item(row).setEnabled(not reason)
            self._relations.item(row).setToolTip(plain_tip(reason))
        self._colour_relations()
        told = [self.tr("How the two belong together; it decides the words alone"), *refused.values()]
        self.relation.setToolTip(plain_tip("\n".join(told)))

    def apply_palette(self, palette: Palette) -> None:
        """Take on the colours of a palette."""
        for view in (*self.traces, self.track, self.corners, self.numbers, self.cautions, self.problem_bar):
            view.apply_palette(palette)
        self._palette = palette
        self._colour_relations()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """On a low screen leave the room to the numbers."""
        super().resizeEvent(event)
        self.cautions.show_brief(self.height() < _LOW_PX)

    def _colour_relations(self) -> None:
        """Grey what cannot be chosen: in a list that opens, Qt's style does not."""
        for row in range(self._relations.rowCount()):
            item = self._relations.item(row)
            item.setForeground(QColor(self._palette.ink if item.isEnabled() else self._palette.faint))

    def _lay_out(self, button: MakeButton) -> None:
        header = QHBoxLayout()
        header.setSpacing(4)
        title = QLabel(self.tr("Compare"))
        title.setObjectName("captureTitle")
        header.addWidget(title)
        header.addSpacing(10)
        header.addWidget(self.relation)
        header.addStretch(1)
        for name in ("back", "forward", "whole", "zoom_out", "zoom_in"):
            header.addWidget(button(name))
        header.addSpacing(10)
        for name in ("link", "align", "swap"):
            header.addWidget(button(name))
        header.addSpacing(10)
        header.addWidget(button("open_other"))
        back = button("review", text=True)
        back.setProperty("outlined", True)
        header.addWidget(back)
        for place, (trace, tools) in enumerate(zip(self.traces, self.tools, strict=True)):
            trace.add_tool(tools)
            mirror = button("mirror_second" if place else "mirror_first", text=True, heading=True)
            mirror.defaultAction().setIconText(self.tr("Mirror"))
            mirror.setProperty("outlined", True)
            trace.add_tool(mirror)
        self.traces[1].add_empty_tool(button("open_other", text=True))
        for view in (self.track, self.corners):
            corners = button("corners", text=True, heading=True)
            corners.setProperty("outlined", True)
            view.add_tool(corners)
        page = QVBoxLayout(self)
        page.setContentsMargins(8, 2, 8, 0)
        page.setSpacing(_GAP_PX)
        page.addLayout(header)
        page.addWidget(self.problem_bar)
        page.addWidget(self.summary)
        page.addWidget(self._panes(), 1)

    def _panes(self) -> QSplitter:
        right = QWidget()
        column = QVBoxLayout(right)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(_GAP_PX)
        column.addWidget(self.numbers, 1)
        column.addWidget(self.cautions)
        upper = _split(Qt.Orientation.Horizontal, (self.traces[0], 1), (self.traces[1], 1))
        lower = _split(Qt.Orientation.Horizontal, (self._lower, 10), (right, 10))
        return _split(Qt.Orientation.Vertical, (upper, 6), (lower, 7))


def _split(way: Qt.Orientation, *panes: tuple[QWidget, int]) -> QSplitter:
    split = QSplitter(way)
    split.setHandleWidth(_GAP_PX)
    split.setChildrenCollapsible(False)
    for place, (pane, share) in enumerate(panes):
        split.addWidget(pane)
        split.setStretchFactor(place, share)
    split.setSizes([10_000 * share for _, share in panes])
    return split
