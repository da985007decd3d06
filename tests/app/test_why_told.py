"""The sentence over the picture of why it comes and goes, and the details folded under it."""

from __future__ import annotations

from dataclasses import replace

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLabel, QScrollArea
from pytestqt.qtbot import QtBot

from analysis.review.vehicle import RoadTest
from app.main_window import Window
from app.why.window import WhyWindow
from tests.app.conftest import Bench
from tests.app.fakes import worn_capture
from tests.app.stage import still


@pytest.fixture
def bench() -> Bench:
    """The worn capture, of a car whose heights are known."""
    capture = worn_capture()
    known = {**capture.attributes, "profile": "halvorsen-tern-rear-left"}
    return Bench(capture=replace(capture, attributes=known))


def opened(review: Window, qtbot: QtBot) -> WhyWindow:
    """The window of why it comes and goes."""
    review.actions_by_name["why"].trigger()
    why = review.why.why
    assert why is not None
    qtbot.waitUntil(why.isVisible)
    return why


def test_one_sentence_and_the_picture_come_first_and_all_else_is_a_click_or_a_key_away(
    review: Window, qtbot: QtBot
) -> None:
    why = opened(review, qtbot)
    why.activateWindow()
    qtbot.waitUntil(lambda: QApplication.activeWindow() is why)  # Space is the workbench's own key
    begins = "Calculated: at loaded height (13 mm down) the sensor is in the band about "
    assert why.short.sentence.text().startswith(begins)
    details = why.details
    shown = [label for label in details.findChildren(QLabel) if label.isVisible()]
    assert shown == []
    assert why.picture.height() > why.height() / 2
    QTest.mouseClick(details.heading, Qt.MouseButton.LeftButton)
    qtbot.waitUntil(lambda: any(label.isVisible() for label in details.findChildren(QLabel)))
    assert "out of limits" in why.details.text()
    details.heading.setFocus()
    QTest.keyClick(details.heading, Qt.Key.Key_Space)
    assert not any(label.isVisible() for label in details.findChildren(QLabel))


@pytest.mark.parametrize("width", [834, 1120, 1500])
def test_no_word_is_cut_folded_or_not(review: Window, qtbot: QtBot, width: int) -> None:
    why = opened(review, qtbot)
    why.resize(width, 690)
    why.details.heading.click()
    labels = [*why.short.findChildren(QLabel), *why.details.findChildren(QLabel)]
    assert len([label for label in labels if label.isVisible()]) >= 3 + 2 * 3

    def whole() -> bool:
        return all(
            label.height() >= label.heightForWidth(label.width()) for label in labels if label.isVisible()
        )

    qtbot.waitUntil(whole)
    least = why.picture.minimumSizeHint()
    qtbot.waitUntil(lambda: why.picture.height() >= least.height())


@pytest.mark.parametrize("height", [500, 690])
def test_unfolded_everything_scrolls_by_one_bar_and_the_picture_is_whole(
    review: Window, qtbot: QtBot, height: int
) -> None:
    why = opened(review, qtbot)
    why.resize(1120, height)
    QTest.mouseClick(why.details.heading, Qt.MouseButton.LeftButton)
    still(qtbot, why)
    areas = [area for area in why.findChildren(QScrollArea) if area.isAncestorOf(why.details.heading)]
    (area,) = {*areas, *why.details.findChildren(QScrollArea)}
    assert area.verticalScrollBar().isVisible()
    seen = area.viewport()
    assert why.picture.visibleRegion().boundingRect().bottom() == why.picture.rect().bottom()
    heading_px = why.details.heading.mapTo(seen, QPoint(0, 0)).y()
    assert 0.4 * seen.height() < heading_px < 0.7 * seen.height()
    area.verticalScrollBar().setValue(area.verticalScrollBar().maximum())
    last = [label for label in why.details.findChildren(QLabel) if label.isVisible()][-1]
    assert last.mapTo(seen, last.rect().bottomLeft()).y() <= seen.rect().bottom()


def test_the_road_test_is_worked_out_as_it_is_typed(review: Window, qtbot: QtBot) -> None:
    why = opened(review, qtbot)
    why.proof.before.setValue(6.0)
    assert "18 km without a fault" in why.proof.words.text()
    why.proof.driven.setValue(5.0)
    assert "still to drive 13 km" in why.proof.words.text()


def test_nothing_is_said_of_faults_before_the_repair_that_nobody_entered(
    review: Window, qtbot: QtBot
) -> None:
    why = opened(review, qtbot)
    form = why.proof
    assert form.before.text() == "not entered"
    assert form.words.text().startswith("It was not entered over how many kilometres")
    assert "fault came once" not in form.words.text()
    form.before.setFocus()
    form.before.selectAll()
    QTest.keyClicks(form.before, "12")
    QTest.keyClick(form.before, Qt.Key.Key_Return)
    assert form.words.text().startswith("As entered, the fault came once in 12 km before the repair. 35.9 km")
    assert review.keeper.review.vehicle.test == RoadTest(1, 12.0)
    review.actions_by_name["undo"].trigger()
    assert form.before.text() == "not entered"
