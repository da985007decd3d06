"""How a file is read: what is missing is asked for in its place, and what was taken wrongly is chosen."""

from __future__ import annotations

from pathlib import Path

import h5py
import numpy as np
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from analysis.captures.model import Role
from app.importing.reading_form import COLUMN, EVERY
from app.main_window import Window
from tests.app.hands import drop
from tests.importing_page.hands import choose, enter, imported, volts, wait_for_looks
from tests.importing_page.tables import RATE_HZ, plain_table, swept, wav_file


def test_a_wav_file_asks_for_its_scale_and_takes_it(qtbot: QtBot, window: Window, tmp_path: Path) -> None:
    wires = swept()
    drop(window, wav_file(tmp_path / "a.wav", wires, 10.0))
    wait_for_looks(qtbot, window)
    page = window.imports.page
    assert "full scale" in page.reading.scale_trouble.sentence
    assert page.columns.cards["channel 1"].range.text().endswith("of full scale")
    window.actions_by_name["bring_in"].trigger()
    assert window.session.capture is None
    assert page.reading.full_scale.hasFocus()
    enter(page.reading.full_scale, "10 V")
    wait_for_looks(qtbot, window)
    assert page.reading.scale_trouble.sentence == ""
    assert page.columns.cards["channel 1"].use.currentData() == "signal"
    window.actions_by_name["bring_in"].trigger()
    capture = imported(qtbot, window)
    np.testing.assert_allclose(volts(capture, Role.SIGNAL), wires["signal"], atol=2e-4)


def test_an_interval_that_is_missing_is_asked_for_where_it_is_entered(
    qtbot: QtBot, window: Window, tmp_path: Path
) -> None:
    wires = swept()
    lines = [
        "signal,ref",
        *(f"{a:.4f},{b:.4f}" for a, b in zip(wires["signal"], wires["reference"], strict=True)),
    ]
    path = tmp_path / "a.csv"
    path.write_text("\n".join(lines), encoding="utf-8")
    drop(window, path)
    wait_for_looks(qtbot, window)
    reading = window.imports.page.reading
    assert "how much time lies between two rows" in reading.trouble.sentence
    reading.time.setCurrentIndex(reading.time.findData(EVERY))
    reading.time.activated.emit(reading.time.currentIndex())
    enter(reading.spacing, "fast")
    assert reading.trouble.sentence == "fast is no interval; enter seconds, such as 0.001 or 1 ms."
    enter(reading.spacing, "0,5 ms")
    wait_for_looks(qtbot, window)
    assert reading.trouble.sentence == ""
    assert "0.0005 s apart" in reading.found.text()
    window.actions_by_name["bring_in"].trigger()
    assert imported(qtbot, window).records[0].sample_interval_s == 0.0005


def test_uneven_times_are_interpolated_only_on_a_tick_and_the_capture_says_so(
    qtbot: QtBot, window: Window, tmp_path: Path
) -> None:
    wires = swept()
    wires["time"] = wires["time"] + np.random.default_rng(3).uniform(0.0, 0.4e-3, wires["time"].size)
    drop(window, plain_table(tmp_path / "a.csv", wires, "Time,signal"))
    wait_for_looks(qtbot, window)
    reading = window.imports.page.reading
    assert "not evenly spaced" in reading.trouble.sentence
    assert reading.resample.isVisible()
    assert not reading.resample.isChecked()
    QTest.mouseClick(reading.resample, Qt.MouseButton.LeftButton)
    wait_for_looks(qtbot, window)
    assert reading.trouble.sentence == ""
    window.actions_by_name["bring_in"].trigger()
    assert "interpolation" in str(imported(qtbot, window).records[0].attributes["resampled"])


def test_gaps_in_the_time_are_shown_and_each_stretch_becomes_a_record(
    qtbot: QtBot, window: Window, tmp_path: Path
) -> None:
    wires = swept()
    wires["time"] = wires["time"] + np.where(wires["time"] > 3.0, 5.0, 0.0)
    drop(window, plain_table(tmp_path / "a.csv", wires, "Time,signal"))
    wait_for_looks(qtbot, window)
    assert "1 gap of 5 s" in window.imports.page.reading.found.text()
    window.actions_by_name["bring_in"].trigger()
    assert len(imported(qtbot, window).records) == 2


def test_of_two_columns_of_times_one_is_chosen(qtbot: QtBot, window: Window, tmp_path: Path) -> None:
    wires = swept()
    rows = zip(wires["time"] + 7.0, wires["signal"], 40.0 * wires["time"], strict=True)
    lines = ["time of day,u,time", *(f"{a:.4f},{b:.4f},{c:.3f}" for a, b, c in rows)]
    path = tmp_path / "a.csv"
    path.write_text("\n".join(lines), encoding="utf-8")
    drop(window, path)
    wait_for_looks(qtbot, window)
    page = window.imports.page
    assert "several columns could be the time" in page.reading.trouble.sentence.lower()
    assert page.reading.trouble.sentence.endswith("choose where the time comes from.")
    choose(page.columns.cards["time"].use, "time")
    choose(page.columns.cards["time"].wire.unit, "ms")
    wait_for_looks(qtbot, window)
    assert page.reading.trouble.sentence == ""
    assert page.reading.time.currentData() == COLUMN + "time"
    assert "2e-05 s apart" in page.reading.found.text()
    assert page.columns.cards["time of day"].use.currentData() == "out"


def test_a_delimiter_that_was_taken_wrongly_is_chosen_by_hand_and_the_rows_follow(
    qtbot: QtBot, window: Window, tmp_path: Path
) -> None:
    path = tmp_path / "a.txt"
    rows = [f"{n / 1000:.3f};{2 + n % 7 / 10:.1f}" for n in range(200)]
    path.write_text("time;signal\n" + "\n".join(rows), encoding="utf-8")
    drop(window, path)
    wait_for_looks(qtbot, window)
    page = window.imports.page
    choose(page.reading.marks["delimiter"], "|")
    wait_for_looks(qtbot, window)
    assert page.rows.trouble.sentence != "" or page.columns.cards.keys() != {"time", "signal"}
    choose(page.reading.marks["delimiter"], "?")
    wait_for_looks(qtbot, window)
    assert page.rows.trouble.sentence == ""
    assert set(page.columns.cards) == {"time", "signal"}


def test_data_sets_of_another_layout_are_chosen_by_tick_and_fit_the_next_file(
    qtbot: QtBot, window: Window, tmp_path: Path
) -> None:
    wires = swept()

    def write(path: Path) -> Path:
        with h5py.File(path, "w") as file:
            file["raw/signal"] = wires["signal"]
            file["raw/reference"] = wires["reference"]
            file["filtered/signal"] = np.round(wires["signal"], 1)
            file["raw/thermometer"] = np.linspace(20.0, 21.0, 40)
            file["rate_hz"] = RATE_HZ
        return path

    drop(window, write(tmp_path / "a.hdf5"))
    wait_for_looks(qtbot, window)
    page = window.imports.page
    assert set(page.columns.cards) == {"filtered/signal"}  # one group, since both have a signal
    assert page.reading.datasets.isVisible()
    rows = page.reading.datasets.list
    texts = [rows.item(row).text() for row in range(rows.count())]
    assert "raw/thermometer  (40)" in texts
    rows.setFocus()
    for name in ("raw/reference", "raw/signal", "filtered/signal"):
        rows.setCurrentRow(texts.index(f"{name}  ({wires['signal'].size})"))
        QTest.keyClick(rows, Qt.Key.Key_Space)
        wait_for_looks(qtbot, window)
    wait_for_looks(qtbot, window)
    assert set(page.columns.cards) == {"raw/reference", "raw/signal"}
    window.actions_by_name["bring_in"].trigger()
    capture = imported(qtbot, window)
    np.testing.assert_array_equal(volts(capture, Role.SIGNAL), wires["signal"])

    drop(window, write(tmp_path / "b.hdf5"))
    wait_for_looks(qtbot, window)
    assert set(page.columns.cards) == {"raw/reference", "raw/signal"}
    assert page.last_time.startswith("As last time")


def test_times_in_a_unit_of_nobody_are_asked_for_where_the_time_is_said(
    qtbot: QtBot, window: Window, tmp_path: Path
) -> None:
    source = tmp_path / "ticks.csv"
    source.write_text("time [ticks],signal\n" + "".join(f"{n},{1 + n % 3}.25\n" for n in range(60)))
    drop(window, source)
    wait_for_looks(qtbot, window)
    page = window.imports.page
    assert "unit of the times" in page.reading.trouble.sentence
    window.actions_by_name["bring_in"].trigger()
    assert window.session.capture is None
    assert page.reading.time.hasFocus()


def test_blocks_that_nobody_knows_are_asked_about_and_become_what_is_chosen(
    qtbot: QtBot, window: Window, tmp_path: Path
) -> None:
    rows = "".join(f"{2 + np.sin(n / 20):.4f};{5 + 0.001 * (n % 3):.4f}\n" for n in range(300))
    source = tmp_path / "blocks.csv"
    source.write_text("Rate: 1000 Hz\nsignal;ref\n" + rows + "\nsignal;ref\n" + rows)
    drop(window, source)
    wait_for_looks(qtbot, window)
    reading = window.imports.page.reading
    assert "2 blocks one below the other" in reading.block_trouble.sentence
    assert reading.block_trouble.sentence.endswith("say what the blocks are.")
    window.actions_by_name["bring_in"].trigger()
    assert window.session.capture is None
    assert reading.blocks.hasFocus()
    choose(reading.blocks, "records")
    wait_for_looks(qtbot, window)
    assert reading.block_trouble.sentence == ""
    window.actions_by_name["bring_in"].trigger()
    assert [len(item) for item in imported(qtbot, window).records] == [300, 300]


def test_a_table_of_one_course_shows_nothing_about_blocks(
    qtbot: QtBot, window: Window, tmp_path: Path
) -> None:
    drop(window, plain_table(tmp_path / "a.csv", swept(), "time,a,b"))
    wait_for_looks(qtbot, window)
    assert not window.imports.page.reading.blocks.isVisibleTo(window)
