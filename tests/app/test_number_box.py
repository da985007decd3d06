"""Fields for numbers: one minus sign everywhere, whatever key it was typed with."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QEvent, QLocale, Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from app.views.number_box import NumberBox

MINUS = "\N{MINUS SIGN}"  # ISO 80000-2, 2-10.2


@pytest.fixture(params=["en", "de", "sv"])
def box(qtbot: QtBot, request: pytest.FixtureRequest) -> NumberBox:
    """A field of millimetres, in a language; that of Swedish has a true minus of its own."""
    made = NumberBox()
    made.setLocale(QLocale(request.param))
    made.setDecimals(1)
    made.setRange(-500.0, 500.0)
    made.setSuffix(" mm")
    made.setKeyboardTracking(False)
    qtbot.addWidget(made)
    made.show()
    return made


def test_a_number_below_nought_is_shown_with_a_true_minus(box: NumberBox) -> None:
    box.setValue(-24.5)
    assert box.text().replace(",", ".") == f"{MINUS}24.5 mm"
    box.stepBy(1)
    assert box.value() == -23.5
    assert box.cleanText().startswith(f"{MINUS}23")


@pytest.mark.parametrize("typed", ["-31", f"{MINUS}31"])
def test_either_sign_can_be_typed_and_reads_the_same(box: NumberBox, typed: str) -> None:
    box.setFocus()
    box.selectAll()
    # Not keyClicks, which knows no letter beyond ASCII.
    QApplication.sendEvent(box, QKeyEvent(QEvent.Type.KeyPress, 0, Qt.KeyboardModifier.NoModifier, typed[0]))
    QTest.keyClicks(box, typed[1])
    assert box.text() == f"{MINUS}3 mm"
    QTest.keyClicks(box, typed[2:])
    QTest.keyClick(box, Qt.Key.Key_Return)
    assert box.value() == -31.0
    assert box.text().replace(",", ".") == f"{MINUS}31.0 mm"


def test_what_is_no_number_is_not_taken(box: NumberBox) -> None:
    box.setValue(-7.0)
    box.selectAll()
    QTest.keyClicks(box, "x--")
    QTest.keyClick(box, Qt.Key.Key_Return)
    assert box.value() == -7.0
