"""Another choice of colours while something is open: all of it is seen in them, and nothing else changes."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QColor, QImage
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QWidget
from pytestqt.qtbot import QtBot

from analysis.review.model import Choice
from app.drawing.theme import DARK, LIGHT, Palette
from app.main_window import Window
from app.views.band_card import BandCard
from app.views.headline import Headline
from app.views.tone_mark import ToneMark


def has_colour(widget: QWidget, colour: str) -> bool:
    picture = widget.grab().toImage().convertToFormat(QImage.Format.Format_RGB32)
    wanted = QColor(colour).rgb()
    spots = ((x, y) for x in range(picture.width()) for y in range(picture.height()))
    return any(picture.pixel(x, y) == wanted for x, y in spots)


@pytest.mark.parametrize("palette", [DARK, LIGHT], ids=["dark", "light"])
def test_verdict_and_its_marks_take_on_the_colours(qtbot: QtBot, review: Window, palette: Palette) -> None:
    review.apply_palette(LIGHT if palette is DARK else DARK)
    review.apply_palette(palette)
    evidence = review.page.evidence
    headline, marks = evidence.findChild(Headline), evidence.findChildren(ToneMark)
    assert isinstance(headline, Headline)
    assert has_colour(headline, palette.bad)
    assert marks
    tones = {palette.good, palette.bad, palette.unsure, palette.quiet, palette.faint}
    assert all(any(has_colour(mark, tone) for tone in tones) for mark in marks)


def test_what_is_half_typed_in_a_card_stays_when_the_colours_change(qtbot: QtBot, review: Window) -> None:
    review.focus.choose_band(0)
    QTest.keyClick(review, Qt.Key.Key_X)
    card = review.page.evidence.findChild(BandCard)
    assert isinstance(card, BandCard)
    qtbot.waitUntil(card.reason.hasFocus)
    QTest.keyClicks(card.reason, "a scra")
    review.apply_palette(DARK)
    QTest.keyClicks(review.focusWidget(), "tch")
    QTest.keyClick(review.focusWidget(), Qt.Key.Key_Return)
    decision = review.desk.keeper.review.decisions[0]
    assert (decision.choice, decision.reason) == (Choice.DISMISSED, "a scratch")
