"""Columns: a card for each, below each other, and what is wrong with them above."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QCoreApplication, Qt, QTimer, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QFrame, QPushButton, QScrollArea, QVBoxLayout, QWidget

from app.drawing.theme import LIGHT, Palette
from app.importing.column_card import CardFacts, ColumnCard
from app.importing.draft import OUT
from app.importing.trouble_line import TroubleLine
from app.views.pane import Pane
from app.views.tab_order import in_turn, stops

_AT_ONCE = 5  # cards: half a frame's worth of building each (measured), as many as are in sight
_ROOM_FOR_WIRE_PX = 740
_MOST_UNASKED = 16
"""Cards that are shown without asking, those of wires always: a data logger may have hundreds of columns."""


def _tr(text: str) -> str:
    return QCoreApplication.translate("columns_pane", text)


class ColumnsPane(Pane):
    """The cards of one file.

    Signals
    -------
    told(column, key, word)
        Something else was said of a column; the key is ``use``, ``unit``, ``factor``, ``offset``,
        ``probe_point`` or ``return_point``.
    """

    told = Signal(str, str, str)

    def __init__(self) -> None:
        super().__init__(_tr("Columns"))
        self.setAccessibleName(_tr("Columns, and what each is used for"))
        self.trouble, self.more = TroubleLine(), QPushButton()
        self.cards: dict[str, ColumnCard] = {}
        self._palette = LIGHT
        self._facts: dict[str, CardFacts] = {}
        self._every: tuple[str, ...] = ()
        self._wanted: list[str] = []
        self._all = False
        self._sheet: QVBoxLayout | None = None
        self._ordered: list[QWidget] = []
        self._builder = QTimer(self)
        self._builder.setInterval(0)
        self._builder.timeout.connect(lambda: self._build_on(1))
        self.more.setAccessibleName(_tr("Show the columns that are not shown yet"))
        self.more.hide()
        self.more.clicked.connect(self._show_rest)
        self._scroll = QScrollArea()
        self._scroll.setWidgetResizable(True)
        self._scroll.setFrameShape(QFrame.Shape.NoFrame)
        self._scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._scroll.setAccessibleName(_tr("Columns"))
        content = QWidget()
        layout = QVBoxLayout(content)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(4)
        layout.addWidget(self.trouble)
        layout.addWidget(self._scroll, 1)
        layout.addWidget(self.more)
        self.set_content(content)

    def show_cards(self, facts: Sequence[CardFacts]) -> None:
        """Show these columns; cards are built anew only where other columns are there."""
        if not facts:
            self.show_empty(_tr("The columns of the file appear here."))
            return
        self._facts = {item.seen.name: item for item in facts}
        if tuple(self._facts) != self._every:
            self._every, self._all = tuple(self._facts), False
            self._begin()
        elif not self._all and any(name not in self._wanted for name in self._used()):
            self._begin()  # a column that was not shown has become a wire
        for name, card in self.cards.items():
            card.show_facts(self._facts[name])
        self._order_stops()
        self.show_content()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Fit the cards to the width."""
        super().resizeEvent(event)
        for card in self.cards.values():
            card.show_narrow(self._narrow)

    @property
    def _narrow(self) -> bool:
        return self.width() < _ROOM_FOR_WIRE_PX

    def apply_palette(self, palette: Palette) -> None:
        """Take on the colours of a palette."""
        self._palette = palette
        for card in self.cards.values():
            card.apply_palette(palette)

    def _used(self) -> list[str]:
        return [name for name, item in self._facts.items() if item.use != OUT]

    def _show_rest(self) -> None:
        self._all = True
        self._begin()

    def _begin(self) -> None:
        """Build the cards that are in sight now, and the others one by one while the window lives."""
        kept = set(self._used()) | set(self._every[:_MOST_UNASKED])
        self._wanted = [name for name in self._every if self._all or name in kept]
        hidden = len(self._every) - len(self._wanted)
        self.more.setText(_tr("Show {count} more columns").format(count=hidden))
        self.more.setVisible(hidden > 0)
        self.cards = {}
        sheet = QWidget()
        self._sheet = QVBoxLayout(sheet)
        self._sheet.setContentsMargins(0, 0, 6, 0)
        self._sheet.setSpacing(6)
        self._sheet.addStretch(1)
        old = self._scroll.takeWidget()
        if old is not None:
            old.deleteLater()
        self._scroll.setWidget(sheet)
        self._build_on(_AT_ONCE)
        self._builder.start()

    def _build_on(self, count: int) -> None:
        left = [name for name in self._wanted if name not in self.cards]
        if not left or self._sheet is None:
            self._builder.stop()
            return
        for name in left[:count]:
            card = ColumnCard(name)
            card.apply_palette(self._palette)
            card.show_narrow(self._narrow)
            card.show_facts(self._facts[name])
            card.told.connect(lambda key, word, name=name: self.told.emit(name, key, word))
            self.cards[name] = card
            self._sheet.insertWidget(self._sheet.count() - 1, card)
        self._order_stops()

    def _order_stops(self) -> None:
        """Let Tab go through card after card; a column that becomes a wire gets fields later than others."""
        order = [self._scroll, *(stop for card in self.cards.values() for stop in stops(card))]
        if order != self._ordered:
            self._ordered = order
            in_turn(order)
