"""The review of the other capture, in Compare."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

from pytestqt.qtbot import QtBot

from analysis.captures.model import Capture, Role
from analysis.captures.reading import open_capture
from analysis.captures.writing import write_capture
from analysis.comparison.model import Relation
from analysis.diagnosis.findings import Findings
from analysis.progress import Tick
from analysis.review.job import with_fact
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


def test_the_mounting_that_the_other_capture_s_review_corrects_holds_in_compare(
    qtbot: QtBot, tmp_path: Path
) -> None:
    for name in ("one.h5", "other.h5"):
        write_capture(worn_capture(), tmp_path / name)
    sidecar = read_sidecar(tmp_path / "other.h5")
    write_sidecar(
        sidecar, replace(sidecar.review, job=with_fact(sidecar.review.job, "mounting", "rear right"))
    )
    tools = Tools(lambda path, tick: open_capture(path), worn_findings, read_sidecar)
    window = Window(tools, Settings(MemoryStore()))
    qtbot.addWidget(window)
    window.open_file(tmp_path / "one.h5")
    qtbot.waitUntil(lambda: window.session.findings is not None)
    window.compare.open_file(tmp_path / "other.h5")
    page = window.compare.page
    told = "two different sensors, mounted rear left and rear right"
    qtbot.waitUntil(lambda: told in page.summary.quiet_text)
    assert page.chosen_relation() is Relation.LEFT_RIGHT
    window.close()


def test_two_records_of_one_file_that_was_dropped_again_are_compared_record_by_record(
    qtbot: QtBot, tmp_path: Path
) -> None:
    path = tmp_path / "one.h5"
    write_capture(worn_capture(), path)
    window = Window(
        Tools(lambda path, tick: open_capture(path), worn_findings, read_sidecar), Settings(MemoryStore())
    )
    qtbot.addWidget(window)
    window.open_file(path)
    qtbot.waitUntil(lambda: window.session.findings is not None)
    window.compare.open_file(path)
    qtbot.waitUntil(lambda: window.compare.comparison is not None)
    window.compare.sides[0].choose_record("004")
    window.compare.sides[1].choose_record("005")
    texts = window.compare.page.numbers.texts
    qtbot.waitUntil(lambda: texts()[0][1:3] == ["6 of 6", "6 of 6"])
    heads = [trace.accessibleDescription().split(" · ")[0] for trace in window.compare.page.traces]
    assert heads == ["Slow sweep", "Quick sweep"]
    window.close()
