"""The card of a band holds still under the hand: its buttons stay, and all of it is in sight."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QPoint, QRect, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QToolButton, QWidget
from pytestqt.qtbot import QtBot

from app.main_window import Window
from app.views.band_card import BandCard
from app.views.headline import Headline


def in_rows(window: Window, widget: QWidget) -> QRect:
    """Where a widget stands in what is seen of Evidence."""
    return QRect(widget.mapTo(window.page.evidence.rows_area.viewport(), QPoint(0, 0)), widget.size())


@pytest.mark.parametrize("low", [False, True])
def test_the_buttons_of_a_band_stay_where_they_are_pressed_and_its_card_in_sight(
    qtbot: QtBot, review: Window, low: bool
) -> None:
    evidence = review.page.evidence
    card, headline = evidence.findChild(BandCard), evidence.findChild(Headline)
    assert card is not None
    assert headline is not None
    if low:
        review.desk.markers.mark_moment(1.0)
        qtbot.waitUntil(lambda: bool(review.page.markers.readings.rows))
    QTest.mouseClick(card, Qt.MouseButton.LeftButton, pos=QPoint(60, 12))
    tools = {item.text(): item for item in card.findChildren(QToolButton)}
    qtbot.waitUntil(lambda: all(item.height() == item.sizeHint().height() for item in tools.values()))
    assert tools["Accept"].isVisible()
    began = {text: in_rows(review, tool) for text, tool in tools.items()}

    def holds_still() -> bool:
        seen = evidence.rows_area.viewport().rect()
        still = {text: in_rows(review, tool) for text, tool in tools.items()} == began
        whole = QRect(headline.mapTo(evidence, QPoint(0, 0)), headline.size())
        return still and seen.contains(in_rows(review, card)) and evidence.rect().contains(whole)

    for name in ("Accept", "Dismiss"):
        QTest.mouseClick(tools[name], Qt.MouseButton.LeftButton)
        QApplication.processEvents()  # Qt gives everything its place after the event
        assert holds_still()
    QTest.keyClicks(card.reason, "a scratch on the plug, seen twice by both of us")
    QTest.keyClick(card.reason, Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: "scratch" in card.said.text())
    QApplication.processEvents()
    assert holds_still()
    review.desk.markers.mark_moment(2.0)
    qtbot.waitUntil(lambda: bool(review.page.markers.readings.rows))
    seen = evidence.rows_area.viewport()
    qtbot.waitUntil(lambda: seen.rect().contains(in_rows(review, card)))
    began = {text: in_rows(review, tool) for text, tool in tools.items()}
    QTest.mouseClick(tools["No answer"], Qt.MouseButton.LeftButton)
    QApplication.processEvents()
    assert {text: in_rows(review, tool) for text, tool in tools.items()} == began
