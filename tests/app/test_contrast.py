"""What is drawn stands out from its ground, by the pixels: WCAG 2.2, 1.4.3 for words and 1.4.11 for marks.

Words of 4.5 to 1, marks that tell something of 3 to 1.
"""

from __future__ import annotations

from collections import Counter

import pytest
from PySide6.QtCore import QRect
from PySide6.QtGui import QImage
from PySide6.QtWidgets import QLineEdit, QWidget
from pytestqt.qtbot import QtBot

from app.main_window import Window
from tests.app import hands
from tests.app.conftest import Bench
from tests.app.stage import still
from tests.app.test_pictures import bench
from tests.app.test_values import contrast

__all__ = ["bench"]  # the worn capture of a car whose heights are known

WORDS, MARKS = 4.5, 3.0
_TIMES = 4


def magnified(widget: QWidget) -> QImage:
    """A widget so large that the strokes of its letters are wider than a pixel."""
    image = QImage(widget.size() * _TIMES, QImage.Format.Format_RGB32)
    image.setDevicePixelRatio(_TIMES)
    widget.render(image)
    return image


def most_contrast(image: QImage, box: QRect) -> float:
    """Of the magnified pixels in a box, the one that stands out most from what most of them are."""
    seen = Counter(
        image.pixelColor(x, y).name()
        for x in range(_TIMES * box.left(), _TIMES * box.right())
        for y in range(_TIMES * box.top(), _TIMES * box.bottom())
    )
    ground = seen.most_common(1)[0][0]
    return max(contrast(colour, ground) for colour in seen)


@pytest.fixture(params=["light", "dark"])
def coloured(review: Window, request: pytest.FixtureRequest) -> Window:
    """The worn capture examined, in one of the themes."""
    review.settings.colours = request.param
    review.apply_colours()
    return review


def test_what_an_empty_field_says_can_be_read(qtbot: QtBot, coloured: Window, bench: Bench) -> None:
    coloured.actions_by_name["next_band"].trigger()
    coloured.actions_by_name["dismiss"].trigger()
    line = coloured.focusWidget()
    assert isinstance(line, QLineEdit)
    coloured.page.records.list.setFocus()
    still(qtbot, line)
    assert most_contrast(magnified(line), line.rect().adjusted(8, 4, -8, -4)) >= WORDS


def test_how_often_a_place_was_tested_can_be_seen(qtbot: QtBot, coloured: Window) -> None:
    track = coloured.page.track
    image = still(qtbot, track.canvas)
    at = track.viewport_point(30.0, 0.0).toPoint()  # away from the band and from the arm
    below = Counter(image.pixelColor(at.x(), y).name() for y in range(at.y() + 24, image.height()))
    (first, _), (second, rows) = below.most_common(2)
    assert rows > 5
    assert contrast(first, second) >= MARKS


def test_what_stands_in_a_file_can_be_read(
    qtbot: QtBot, coloured: Window, tmp_path_factory: pytest.TempPathFactory
) -> None:
    hands.import_worn(qtbot, coloured, tmp_path_factory.mktemp("import"))
    table = coloured.imports.page.rows.table
    still(qtbot, coloured)
    place = table.visualRect(table.model().index(4, 1))
    pane = coloured.imports.page.rows  # it paints the ground
    at = table.viewport().mapTo(pane, place.topLeft())
    assert most_contrast(magnified(pane), QRect(at.x() + 2, at.y(), 40, place.height())) >= WORDS
