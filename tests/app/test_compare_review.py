"""The review of the other capture, in Compare."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

from pytestqt.qtbot import QtBot

from analysis.captures.model import Capture, Role
from analysis.captures.reading import open_capture
from analysis.captures.writing import write_capture
from analysis.diagnosis.findings import Findings
from analysis.progress import Tick
from analysis.review.records import with_word
from analysis.review.sidecar import read_sidecar, write_sidecar
from app.main_window import Window
from app.session import Tools
from app.settings import MemoryStore, Settings
from tests.app.fakes import worn_capture, worn_findings


def test_what_the_other_capture_s_review_says_of_its_records_holds_in_compare_too(
    qtbot: QtBot, tmp_path: Path
) -> None:
    seen: list[Capture] = []

    def note(capture: Capture, tick: Tick) -> Findings:
        seen.append(capture)
        return worn_findings(capture, tick)

    for name in ("one.h5", "other.h5"):
        write_capture(worn_capture(), tmp_path / name)
    sidecar = read_sidecar(tmp_path / "other.h5")
    told = with_word(sidecar.review.records, "004", "role", "supply", channel="ground")
    write_sidecar(sidecar, replace(sidecar.review, records=told))
    tools = Tools(lambda path, tick: open_capture(path), note, read_sidecar)
    window = Window(tools, Settings(MemoryStore()))
    qtbot.addWidget(window)
    window.open_file(tmp_path / "one.h5")
    qtbot.waitUntil(lambda: window.session.findings is not None)
    window.compare.open_file(tmp_path / "other.h5")
    side = window.compare.sides[1]
    qtbot.waitUntil(lambda: side.reviewed and side.findings is not None and not side.jobs.busy())
    roles = {item.name: item.role for item in seen[-1].record("004").channels}
    assert roles["ground"] is Role.SUPPLY
    assert "as its review says" in window.compare.page.traces[1].accessibleDescription()
    assert "as its review says" not in window.compare.page.traces[0].accessibleDescription()
    window.close()
