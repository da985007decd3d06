"""The verdict's line: letters as large as they fit, and no higher than its lines."""

from __future__ import annotations

import pytest
from PySide6.QtWidgets import QLabel, QVBoxLayout
from pytestqt.qtbot import QtBot

from app.views.headline import Headline
from app.views.tall_enough import TallEnough

SHORT, ONE_LINE = "Worn", "Reference voltage faulty"
LONG = "Reference voltage faulty and sensor ground faulty, and the signal is out of its range as well"
WIDTH_PX = 330


class Column(TallEnough):
    """A headline with a line below it, as Evidence has them."""

    def __init__(self, text: str) -> None:
        super().__init__()
        self.headline, self.below = Headline(text, "black"), QLabel("very likely")
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(0)
        layout.addWidget(self.headline)
        layout.addWidget(self.below)
        layout.addStretch(1)


def shown(qtbot: QtBot, text: str, width_px: int = WIDTH_PX) -> Column:
    column = Column(text)
    qtbot.addWidget(column)
    column.resize(width_px, 600)
    with qtbot.waitExposed(column):
        column.show()
    return column


def fits(column: Column) -> bool:
    """Whether the headline is as high as its lines, and the next line stands right below."""
    head = column.headline
    return head.height() == head.heightForWidth(head.width()) and column.below.y() == head.height()


def points(column: Column) -> float:
    return column.headline.font().pointSizeF()


@pytest.mark.parametrize("before", [LONG, ONE_LINE])
def test_a_shorter_text_leaves_no_empty_line_and_takes_larger_letters(qtbot: QtBot, before: str) -> None:
    column = shown(qtbot, before)
    qtbot.waitUntil(lambda: fits(column))
    height_px, small = column.headline.height(), points(column)
    column.headline.setText(SHORT)
    qtbot.waitUntil(lambda: fits(column))
    fresh = shown(qtbot, SHORT)
    qtbot.waitUntil(lambda: fits(fresh))
    assert column.headline.height() == fresh.headline.height()  # as if it had never been longer
    assert points(column) == points(fresh) > small
    assert before == ONE_LINE or column.headline.height() < height_px


def test_another_text_of_one_line_takes_its_own_letters_though_the_line_keeps_its_height(
    qtbot: QtBot,
) -> None:
    narrow = shown(qtbot, ONE_LINE, 250)
    narrow.headline.setFixedHeight(40)  # no change of height tells it
    qtbot.waitUntil(lambda: points(narrow) == 13.0)
    narrow.headline.setText(SHORT)
    assert points(narrow) == 21.0


def test_a_longer_text_gets_as_many_lines_as_it_needs(qtbot: QtBot) -> None:
    column = shown(qtbot, SHORT)
    qtbot.waitUntil(lambda: fits(column))
    height_px = column.headline.height()
    column.headline.setText(LONG)
    qtbot.waitUntil(lambda: column.headline.height() > height_px)
    qtbot.waitUntil(lambda: fits(column))


def test_a_wider_column_leaves_no_empty_line_either(qtbot: QtBot) -> None:
    column = shown(qtbot, LONG)
    qtbot.waitUntil(lambda: fits(column))
    for width_px in (900, 420, 1400, 330):
        column.resize(width_px, 600)
        qtbot.waitUntil(lambda: fits(column))
