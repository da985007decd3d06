"""What is written on a band says where it is, however little room there is."""

from __future__ import annotations

import pytest
from PySide6.QtGui import QFont, QFontMetricsF
from PySide6.QtWidgets import QApplication

from app.drawing.band_item import label_in

LABEL = "42.4–48.9 % of travel · very likely (99 in 100) · dismissed"


@pytest.mark.parametrize(
    ("room", "left"),
    [
        (LABEL, LABEL),
        (LABEL[:-1], "42.4–48.9 % of travel · very likely · dismissed"),
        ("42.4–48.9 % of travel · very likely · dismisse", "42.4–48.9 % of travel · dismissed"),
        ("42.4–48.9 % of travel · dismisse", "42.4–48.9 % of travel"),
        ("4", "42.4–48.9 % of travel"),
    ],
)
def test_the_odds_go_first_then_the_parts_between_and_the_place_never(
    qapp: QApplication, room: str, left: str
) -> None:
    metrics = QFontMetricsF(QFont())
    assert label_in(LABEL, metrics.horizontalAdvance(room), metrics) == left
