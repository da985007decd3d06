"""Where a dialog offers to save what is made from a capture."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QStandardPaths
from pytestqt.qtbot import QtBot

from analysis.captures.reading import open_capture
from app import resources
from app.main_window import Window
from app.save_place import folder_to_save
from app.session import Tools
from app.settings import MemoryStore, Settings
from tests.app import hands
from tests.app.dialogs import begun_at
from tests.app.fakes import nothing_found
from tests.app.real_files import shown


@pytest.fixture
def window(qtbot: QtBot) -> Iterator[Window]:
    """A window that opens real files."""
    tools = Tools(lambda path, tick: open_capture(path), lambda capture, tick: nothing_found())
    yield from shown(qtbot, Window(tools, Settings(MemoryStore())))


def test_the_report_of_a_sample_is_offered_to_the_documents_not_to_the_program(
    monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    monkeypatch.setattr(QStandardPaths, "writableLocation", lambda _kind: str(tmp_path))
    sample = resources.sample_captures()[0]
    assert folder_to_save(sample, Path.cwd()) == tmp_path
    monkeypatch.setattr(QStandardPaths, "writableLocation", lambda _kind: str(tmp_path / "none"))
    assert folder_to_save(sample, Path.cwd()) == Path.home()


def test_a_capture_of_ones_own_is_saved_beside(tmp_path: Path) -> None:
    assert folder_to_save(tmp_path / "mine.h5", Path.cwd()) == tmp_path
    assert folder_to_save(None, tmp_path) == tmp_path


def test_markers_are_saved_beside_the_capture_unless_elsewhere_is_chosen_and_that_is_said(
    qtbot: QtBot, window: Window, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    begun = begun_at(monkeypatch, "getSaveFileName", tmp_path / "out.csv")
    path = hands.copy_of_sample("W1068-throttle.h5", tmp_path)
    with qtbot.waitSignal(window.session.findings_changed):
        window.open_file(path)
    window.desk.markers.mark_moment(1.0)
    window.actions_by_name["save_csv"].trigger()
    assert begun == [str(path.with_name(f"{path.stem}.markers.csv"))]
    assert "Marker" in (tmp_path / "out.csv").read_text(encoding="utf-8-sig")
    assert window.statusBar().currentMessage() == f"Saved: {tmp_path / 'out.csv'}"


def test_a_report_is_offered_where_the_last_one_went_and_a_capture_where_the_last_one_lay(
    qtbot: QtBot, window: Window, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    captures, reports = tmp_path / "captures", tmp_path / "reports"
    captures.mkdir()
    reports.mkdir()
    saved = begun_at(monkeypatch, "getSaveFileName", reports / "first.html")
    path = hands.copy_of_sample("W1068-throttle.h5", captures)
    with qtbot.waitSignal(window.session.findings_changed):
        window.open_file(path)
    window.actions_by_name["report"].trigger()
    window.actions_by_name["save_html"].trigger()
    qtbot.waitUntil(lambda: (reports / "first.html").is_file() and not window.jobs.busy(), timeout=20_000)
    window.actions_by_name["save_pdf"].trigger()
    qtbot.waitUntil(lambda: not window.jobs.busy(), timeout=20_000)
    assert [Path(start).parent for start in saved] == [captures, reports]
    opened = begun_at(monkeypatch, "getOpenFileName")
    window.actions_by_name["open"].trigger()
    assert opened == [str(captures)]
