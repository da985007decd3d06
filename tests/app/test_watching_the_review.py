"""What happens to a capture while the window only begins to watch it."""

from __future__ import annotations

from pathlib import Path

import pytest
from pytestqt.qtbot import QtBot

from app.review import file
from tests.app.visits import Make, make, opened, path

__all__ = ["make", "path"]  # windows that read and write real files, and a capture


def test_a_change_after_the_first_look_and_before_the_watching_is_told(
    qtbot: QtBot, make: Make, path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    window, told, looks = make(), list[str](), list[Path]()
    window.desk.file.problem.connect(told.append)
    look = file._Seen.of

    def look_too_early(review: Path, capture: Path) -> file._Seen:
        seen = look(review, capture)
        if not looks:
            with capture.open("ab") as written:
                written.write(b"more")
        looks.append(capture)
        return seen

    monkeypatch.setattr(file._Seen, "of", staticmethod(look_too_early))
    opened(qtbot, window, path)
    qtbot.waitUntil(lambda: bool(told))
    qtbot.waitUntil(lambda: not window.jobs.busy())
    assert len(told) == 1
    assert "changed or taken away" in told[0]
    assert len(looks) < 6  # and it does not look for ever
