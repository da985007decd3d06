"""Columns: a card for each, below each other, and what is wrong with them above."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QCoreApplication, Qt, Signal
from PySide6.QtWidgets import QFrame, QScrollArea, QVBoxLayout, QWidget

from app.drawing.theme import LIGHT, Palette
from app.importing.column_card import CardFacts, ColumnCard
from app.importing.trouble_line import TroubleLine
from app.views.pane import Pane


def _tr(text: str) -> str:
    return QCoreApplication.translate("columns_pane", text)


class ColumnsPane(Pane):
    """The cards of one file.

    Signals
    -------
    told(column, key, word)
        Something else was said of a column; the key is ``use``, ``unit``, ``factor``, ``probe_point`` or
        ``return_point``.
    """

    told = Signal(str, str, str)

    def __init__(self) -> None:
        super().__init__(_tr("Columns"))
        self.setAccessibleName(_tr("Columns, and what each is used for"))
        self.trouble = TroubleLine()
        self.cards: dict[str, ColumnCard] = {}
        self._palette = LIGHT
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
        self.set_content(content)

    def show_cards(self, facts: Sequence[CardFacts]) -> None:
        """Show these columns; cards are built anew only where other columns are there."""
        if not facts:
            self.show_empty(_tr("The columns of the file appear here."))
            return
        if [item.seen.name for item in facts] != list(self.cards):
            self._build([item.seen.name for item in facts])
        for item in facts:
            self.cards[item.seen.name].show_facts(item)
        self.show_content()

    def apply_palette(self, palette: Palette) -> None:
        """Take on the colours of a palette."""
        self._palette = palette
        for card in self.cards.values():
            card.apply_palette(palette)

    def _build(self, names: list[str]) -> None:
        self.cards = {}
        sheet = QWidget()
        column = QVBoxLayout(sheet)
        column.setContentsMargins(0, 0, 6, 0)
        column.setSpacing(6)
        for name in names:
            card = ColumnCard(name)
            card.apply_palette(self._palette)
            for signal, key in (
                (card.use_told, "use"),
                (card.unit_told, "unit"),
                (card.factor_entered, "factor"),
                (card.probe_told, "probe_point"),
                (card.against_told, "return_point"),
            ):
                signal.connect(lambda word, name=name, key=key: self.told.emit(name, key, word))
            self.cards[name] = card
            column.addWidget(card)
        column.addStretch(1)
        old = self._scroll.takeWidget()
        if old is not None:
            old.deleteLater()
        self._scroll.setWidget(sheet)
