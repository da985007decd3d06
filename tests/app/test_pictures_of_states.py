"""Pictures of every state of the window, on the samples, in both languages, both themes and three sizes.

``WORNBAND_PICTURES=folder`` keeps them; without it one look at each state is taken.
"""

from __future__ import annotations

import os
from itertools import product
from pathlib import Path

import numpy as np
import pytest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from app.drawing.theme import DARK, LIGHT
from tests.app.stage import stage_for, still
from tests.app.states_of_pages import MENUS, PAGE_STATES
from tests.app.states_of_review import REVIEW_STATES
from tests.app.test_pictures import shades

STATES = {**REVIEW_STATES, **PAGE_STATES}
KEPT = os.environ.get("WORNBAND_PICTURES", "")
LOOKS = tuple(product(("en", "de"), ("light", "dark"))) if KEPT else (("de", "dark"),)
SIZES = ((1366, 768), (1920, 1080), (960, 540)) if KEPT else ((1366, 768),)


@pytest.mark.parametrize("look", LOOKS, ids="-".join)
@pytest.mark.parametrize("name", STATES)
def test_every_state_is_drawn_in_its_language_and_theme(
    qtbot: QtBot, qapp: QApplication, tmp_path: Path, name: str, look: tuple[str, str]
) -> None:
    language, theme = look
    folder = Path(KEPT or tmp_path) / language
    folder.mkdir(parents=True, exist_ok=True)
    with stage_for(qtbot, qapp, tmp_path, language, theme) as stage:
        window = stage.window
        widget = STATES[name](stage) or window
        sized = widget is window or name.startswith("why")
        for size in SIZES if sized else SIZES[:1]:
            if sized:
                widget.setMinimumSize(*size)  # a screen of 800 x 600 would cut it
                widget.resize(*size)
            image = still(qtbot, widget)
            assert image.save(str(folder / f"{name}-{theme}-{size[0]}.png"))
            assert len(np.unique(shades(image))) > 20
            if widget is window:
                assert (image.width(), image.height()) == size
                ground = {"light": LIGHT, "dark": DARK}[theme].desk
                assert image.pixelColor(2, size[1] // 2).name().lower() == ground.lower()
        if widget is not window:
            widget.close()


def test_every_menu_is_among_the_states(qtbot: QtBot, qapp: QApplication, tmp_path: Path) -> None:
    with stage_for(qtbot, qapp, tmp_path, "en", "light") as stage:
        assert len(stage.window.menuBar().actions()) == MENUS
