"""A list that opens below a field can be read, in both themes: it lies on the paper of the theme."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtWidgets import QComboBox
from pytestqt.qtbot import QtBot

from app.drawing.theme import DARK, LIGHT
from app.main_window import Window
from tests.app.hands import import_worn


@pytest.mark.parametrize("theme", ["light", "dark"])
def test_lists_of_the_import_page_lie_on_the_paper_of_the_theme(
    qtbot: QtBot, review: Window, tmp_path: Path, theme: str
) -> None:
    review.settings.colours = theme
    review.apply_colours()
    import_worn(qtbot, review, tmp_path)
    fields = [
        item for item in review.imports.page.findChildren(QComboBox) if item.isVisible() and item.count()
    ]
    assert len(fields) > 8
    paper = {"light": LIGHT, "dark": DARK}[theme].paper.lower()
    for field in fields:
        field.showPopup()
        opened = field.view().window().grab().toImage()
        field.hidePopup()
        ratio = opened.devicePixelRatio()
        corner = opened.pixelColor(int(opened.width() - 12 * ratio), int(6 * ratio))
        assert corner.name() == paper, field.currentText()
