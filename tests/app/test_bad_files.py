"""Files that are no capture, or a poor one: a sentence, and a window that still works."""

from __future__ import annotations

import threading
from collections.abc import Callable
from functools import partial
from pathlib import Path

import h5py
import numpy as np
import pytest
from pytestqt.qtbot import QtBot

from analysis.captures.model import ArraySource, Capture, Channel, Record, Role, Step
from analysis.captures.reading import open_capture
from analysis.captures.writing import write_capture
from app.importing.page import ImportPage
from app.main_window import Window
from app.session import Tools
from app.settings import MemoryStore, Settings
from tests.app.conftest import Bench
from tests.app.fakes import FakeOpened, nothing_found, worn_capture


def text_file(path: Path) -> None:
    path.write_text("time;volts\n0;1\n", encoding="utf-8")


def another_hdf5(path: Path) -> None:
    with h5py.File(path, "w") as file:
        file["weather"] = np.arange(5)


def cut_short(path: Path) -> None:
    write_capture(worn_capture(), path)
    path.write_bytes(path.read_bytes()[:20_000])


def nothing_there(path: Path) -> None:
    path.unlink(missing_ok=True)


def a_folder(path: Path) -> None:
    path.mkdir()


def empty_file(path: Path) -> None:
    path.write_bytes(b"")


@pytest.fixture
def real_window(qtbot: QtBot, bench: Bench) -> Window:
    made = Window(Tools(lambda path, tick: open_capture(path), bench.examine), Settings(MemoryStore()))
    qtbot.addWidget(made, before_close_func=lambda window: window.session.close())
    made.show()
    return made


@pytest.mark.parametrize("spoil", [text_file, another_hdf5, a_folder])
def test_a_file_of_another_kind_is_told_in_compare(
    qtbot: QtBot, real_window: Window, tmp_path: Path, spoil: Callable[[Path], None]
) -> None:
    bad = tmp_path / "bad.h5"
    spoil(bad)
    real_window.compare.open_file(bad)
    told = real_window.compare.page.problem_bar
    qtbot.waitUntil(lambda: told.text != "", timeout=10_000)
    assert told.text.startswith("bad.h5 is no capture. Import it first")
    assert real_window.comparing


@pytest.mark.parametrize("spoil", [text_file, another_hdf5, a_folder])
def test_a_file_of_another_kind_leads_to_import_and_says_there_what_is_wrong(
    qtbot: QtBot, real_window: Window, tmp_path: Path, spoil: Callable[[Path], None]
) -> None:
    bad = tmp_path / "bad.h5"
    spoil(bad)
    real_window.imports.recipes = tmp_path / "recipes"
    real_window.setMinimumSize(1366, 728)
    real_window.open_file(bad)
    page = real_window.imports.page

    def said() -> str:
        lines = (page.rows.trouble, page.columns.trouble, page.reading.trouble)
        return page.problem_bar.text or next((item.text() for item in lines if item.text()), "")

    qtbot.waitUntil(lambda: said() != "", timeout=10_000)
    assert real_window.imports.shown
    assert said().endswith(".")
    assert "Traceback" not in said()
    assert real_window.settings.recent == ()


def _is_target(page: ImportPage, name: str) -> bool:
    return name in page.target.text()


def test_what_is_wrong_is_told_whole_after_other_files(
    qtbot: QtBot, real_window: Window, tmp_path: Path
) -> None:
    real_window.imports.recipes = tmp_path / "recipes"
    real_window.setMinimumSize(1366, 728)
    page = real_window.imports.page
    for name, spoil in (("first", text_file), ("second", another_hdf5)):
        spoil(tmp_path / f"{name}.h5")
        real_window.open_file(tmp_path / f"{name}.h5")
        qtbot.waitUntil(partial(_is_target, page, name), timeout=10_000)
        real_window.show_review()
    line = page.reading.trouble
    real_window.open_file(tmp_path / "second.h5")
    qtbot.waitUntil(line.isVisible, timeout=10_000)
    qtbot.waitUntil(lambda: line.height() >= line.heightForWidth(line.width()))


@pytest.mark.parametrize("spoil", [cut_short, nothing_there, empty_file])
def test_a_file_that_is_no_capture_gives_one_sentence_and_the_window_goes_on(
    qtbot: QtBot, real_window: Window, tmp_path: Path, spoil: Callable[[Path], None]
) -> None:
    bad, good = tmp_path / "bad.h5", tmp_path / "good.h5"
    spoil(bad)
    write_capture(worn_capture(), good)
    with qtbot.waitSignal(real_window.session.problem):
        real_window.open_file(bad)
    said = real_window.page.problem_bar.text
    assert "bad.h5" in said  # another capture may be open beside the sentence
    assert said.endswith(".")
    assert "\n" not in said
    assert "Traceback" not in said
    with qtbot.waitSignal(real_window.session.findings_changed):
        real_window.open_file(good)
    assert real_window.page.problem_bar.text == ""
    assert real_window.settings.recent == (good,)


def record_of(voltage_v: list[float]) -> Capture:
    channel = Channel("signal", Role.SIGNAL, ArraySource(np.array(voltage_v)))
    return Capture("poor", (Record("001", 0.001, (channel,), "", Step.SWEEP),))


@pytest.mark.parametrize(
    "voltage_v",
    [[], [1.0], [float("nan")] * 50, [2.5] * 50, [1e9, -1e9] * 25],
    ids=["no sample", "one sample", "all missing", "all equal", "huge"],
)
def test_a_poor_record_is_drawn_or_explained(
    qtbot: QtBot, window: Window, bench: Bench, voltage_v: list[float]
) -> None:
    bench.findings = lambda capture, tick: nothing_found()
    window.session.show(FakeOpened(record_of(voltage_v)))
    qtbot.waitUntil(lambda: not window.jobs.busy())
    window.grab()
    window.focus.zoom(0.5)
    window.focus.zoom(2.0)
    window.arm.nudge(0.1)
    window.grab()
    assert (window.page.trace.empty_text != "") == (voltage_v == [])


def test_a_file_that_goes_away_while_it_is_drawn_is_said_in_the_window(
    qtbot: QtBot, real_window: Window, tmp_path: Path
) -> None:
    path = tmp_path / "good.h5"
    write_capture(worn_capture(), path)
    opened = open_capture(path)
    real_window.session.show(opened)
    qtbot.waitUntil(lambda: not real_window.jobs.busy())
    opened.close()
    real_window.focus.zoom(0.01)
    real_window.focus.pan(5.0)
    real_window.grab()  # out of what was read for the whole record
    assert real_window.page.problem_bar.text == ""
    real_window.focus.step_record(1)
    assert real_window.page.problem_bar.text.endswith(".")
    real_window.grab()


def test_no_thread_is_left(real_window: Window) -> None:
    real_window.close()
    assert [item.name for item in threading.enumerate() if item.name.startswith("wornband")] == []
