"""What a capture says of its own content is compared with the content when it is opened."""

from __future__ import annotations

import json
from pathlib import Path

import pytest
from PySide6.QtWidgets import QFileDialog
from pytestqt.qtbot import QtBot

from analysis.captures.model import Match
from analysis.captures.writing import write_capture
from app.main_window import Window
from app.settings import MemoryStore, Settings
from app.tools import real_tools
from tests.app.fakes import worn_capture
from tests.captures.altering import ALTERATIONS, alter

TOLD = "do not match the fingerprint"


@pytest.fixture
def window(qtbot: QtBot) -> Window:
    """A window that opens real files."""
    made = Window(real_tools(), Settings(MemoryStore()))
    qtbot.addWidget(made)
    return made


@pytest.mark.parametrize("what", ALTERATIONS)
def test_the_fingerprint_in_a_capture_is_checked_on_opening(
    what: str, window: Window, qtbot: QtBot, tmp_path: Path
) -> None:
    path = tmp_path / "worn.h5"
    write_capture(worn_capture(), path)
    alter(path, what)
    told: list[str] = []
    window.session.problem.connect(told.append)
    window.open_file(path)
    qtbot.waitUntil(lambda: window.session.findings is not None, timeout=20_000)
    qtbot.waitUntil(lambda: not window.jobs.busy(), timeout=20_000)
    altered = what in ("a sample", "a meaning")
    assert [text.startswith("worn.h5 was changed") and TOLD in text for text in told] == [True] * altered
    assert window.session.capture is not None
    assert window.session.capture.content is (Match.DIFFERS if altered else Match.MATCHES)
    window.close()


def test_what_the_technician_says_of_records_keeps_what_was_found_of_the_file(
    window: Window, qtbot: QtBot, tmp_path: Path
) -> None:
    path = tmp_path / "worn.h5"
    write_capture(worn_capture(), path)
    alter(path, "a sample")
    window.open_file(path)
    qtbot.waitUntil(lambda: window.session.findings is not None, timeout=20_000)
    qtbot.waitUntil(lambda: not window.jobs.busy(), timeout=20_000)
    window.session.edit(())
    assert window.session.capture is not None
    assert window.session.capture.content is Match.DIFFERS
    window.close()


def test_a_report_out_of_the_window_says_that_its_capture_was_changed(
    window: Window, qtbot: QtBot, tmp_path: Path
) -> None:
    path, target = tmp_path / "worn.h5", tmp_path / "report.html"
    write_capture(worn_capture(), path)
    alter(path, "a sample")
    window.open_file(path)
    qtbot.waitUntil(lambda: window.session.findings is not None, timeout=20_000)
    window.report_desk.save(target)  # at once: whether the check of the file has ended does not matter
    qtbot.waitUntil(target.exists, timeout=20_000)
    text = target.read_text(encoding="utf-8")
    assert TOLD in text
    assert "is no evidence" in text
    qtbot.waitUntil(lambda: not window.jobs.busy(), timeout=20_000)
    window.close()


def test_compare_says_which_side_was_changed(window: Window, qtbot: QtBot, tmp_path: Path) -> None:
    for name in ("one", "two"):
        write_capture(worn_capture(), tmp_path / f"{name}.h5")
    alter(tmp_path / "two.h5", "a sample")
    told: list[str] = []
    window.compare.sides[1].problem.connect(told.append)
    window.open_file(tmp_path / "one.h5")
    qtbot.waitUntil(lambda: window.session.findings is not None, timeout=20_000)
    window.compare.open_file(tmp_path / "two.h5")

    def cautioned() -> bool:
        made = window.compare.comparison
        return made is not None and any(TOLD in item for item in made.cautions)

    qtbot.waitUntil(cautioned, timeout=20_000)
    assert [TOLD in text for text in told] == [True]
    qtbot.waitUntil(lambda: not any(jobs.busy() for jobs in window.compare.every_jobs), timeout=20_000)
    window.close()


@pytest.mark.parametrize(
    ("action", "name"),
    [("export_record", "a.csv"), ("export_findings", "a.json"), ("picture_track", "a.svg")],
)
def test_what_is_exported_from_a_changed_capture_is_told_with_it(
    action: str, name: str, window: Window, qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    path, target = tmp_path / "worn.h5", tmp_path / name
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_a, **_k: (str(target), ""))
    write_capture(worn_capture(), path)
    alter(path, "a sample")
    window.show()
    window.open_file(path)
    qtbot.waitUntil(lambda: window.session.findings is not None, timeout=20_000)
    if action.startswith("picture"):  # painted at once, with what is known of the file
        qtbot.waitUntil(lambda: not window.jobs.busy(), timeout=20_000)
    window.problem_bar().hide()
    window.actions_by_name[action].trigger()
    qtbot.waitUntil(target.exists, timeout=20_000)
    qtbot.waitUntil(lambda: not window.jobs.busy(), timeout=20_000)
    assert window.problem_bar().isVisible()
    if name.endswith("json"):
        assert json.loads(target.read_text(encoding="utf-8"))["capture"]["content"] == "differs"
    if name.endswith("svg"):
        assert "changed after it was recorded" in target.read_text(encoding="utf-8")
    window.close()
