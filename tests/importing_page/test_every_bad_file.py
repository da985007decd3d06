"""Every kind of bad file on the Import page: one sentence where it is looked at, and nothing is written."""

from __future__ import annotations

from pathlib import Path

import pytest
from pytestqt.qtbot import QtBot

from app.main_window import Window
from tests.importing.test_bad_input import BAD
from tests.importing_page.hands import wait_for_looks

FILES = [kind for kind in BAD if kind not in ("no file", "an empty folder")]  # these never reach the page


@pytest.mark.parametrize("kind", FILES)
def test_a_bad_file_says_one_sentence_and_is_not_imported(
    qtbot: QtBot, window: Window, tmp_path: Path, kind: str
) -> None:
    source = tmp_path / "source"
    BAD[kind][0](source)
    window.imports.open([source])
    wait_for_looks(qtbot, window)
    window.actions_by_name["bring_in"].trigger()
    qtbot.waitUntil(lambda: not window.imports.at_work, timeout=20_000)
    page = window.imports.page
    said = [
        text
        for text in (page.rows.trouble.sentence, page.reading.trouble.sentence, page.problem_bar.text)
        if text
    ]
    assert said
    assert all(text.endswith(".") and "\n" not in text and "--" not in text for text in said), said
    assert [item.name for item in tmp_path.iterdir()] == ["source"]
    assert window.imports.shown
