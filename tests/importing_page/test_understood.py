"""Importing in the window, as a technician does it: drop, look, correct, press Enter."""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QFileDialog
from pytestqt.qtbot import QtBot

from analysis.captures.model import Role, Step
from analysis.captures.writing import write_capture
from app.importing import maker
from app.main_window import Window
from tests.app.fakes import worn_capture
from tests.app.hands import drop, drop_all
from tests.importing_page.hands import choose, enter, imported, volts, wait_for_looks
from tests.importing_page.tables import RATE_HZ, at_rest, comma_table, plain_table, swept


def test_a_dropped_table_in_an_odd_dialect_is_understood_and_one_enter_imports_it(
    qtbot: QtBot, window: Window, tmp_path: Path
) -> None:
    wires = swept()
    path = comma_table(tmp_path / "sweep.csv", wires)
    drop(window, path)
    wait_for_looks(qtbot, window)
    page = window.imports.page
    cards = page.columns.cards
    assert {name: card.use.currentData() for name, card in cards.items()} == {
        "Zeit": "time", "Kanal A": "signal", "Kanal B": "reference", "Kanal C": "ground",
    }  # fmt: skip
    assert "moves by" in cards["Kanal A"].reason.text()
    assert "near 5 V" in cards["Kanal B"].reason.text()
    assert "sweep" in page.files.reason.text()
    assert page.import_button.hasFocus()
    QTest.keyClick(page.import_button, Qt.Key.Key_Return)
    capture = imported(qtbot, window)
    assert capture.path == tmp_path / "sweep.h5"
    assert capture.records[0].step is Step.SWEEP
    assert capture.records[0].sample_interval_s == pytest.approx(1 / RATE_HZ)
    np.testing.assert_allclose(volts(capture, Role.SIGNAL), wires["signal"], atol=6e-5)
    np.testing.assert_allclose(volts(capture, Role.GROUND), wires["ground"], atol=6e-8)


def test_a_wrong_guess_is_corrected_by_hand_and_the_two_columns_change_places(
    qtbot: QtBot, window: Window, tmp_path: Path
) -> None:
    wires = swept()
    path = plain_table(tmp_path / "a.csv", wires, "Time,reference,signal,Gnd")  # the heads are swapped
    drop(window, path)
    wait_for_looks(qtbot, window)
    cards = window.imports.page.columns.cards
    assert cards["signal"].use.currentData() == "signal"
    choose(cards["reference"].use, "signal")
    assert cards["signal"].use.currentData() == "reference"
    wait_for_looks(qtbot, window)
    assert cards["reference"].use.currentData() == "signal"
    assert "Guessed was Reference" in cards["reference"].reason.text()
    window.actions_by_name["bring_in"].trigger()
    capture = imported(qtbot, window)
    np.testing.assert_allclose(volts(capture, Role.SIGNAL), wires["signal"], atol=1e-5)
    np.testing.assert_allclose(volts(capture, Role.REFERENCE), wires["reference"], atol=1e-5)


def test_unit_factor_probe_and_conditions_go_into_the_capture(
    qtbot: QtBot, window: Window, tmp_path: Path
) -> None:
    wires = swept()
    drop(window, plain_table(tmp_path / "a.csv", wires, "Time,signal,ref"))
    wait_for_looks(qtbot, window)
    page = window.imports.page
    card = page.columns.cards["signal"]
    choose(card.wire.unit, "mV")
    enter(card.wire.factor, "10")
    choose(card.wire.probe, "sensor end")
    choose(page.files.conditions["ignition"], "on")
    choose(page.files.step, "road")
    enter(page.capture.title, "Nordwind, rear left")
    enter(page.capture.facts["recorder"], "Box 3")
    wait_for_looks(qtbot, window)
    QTest.keyClick(page, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    capture = imported(qtbot, window)
    record = capture.records[0]
    signal = next(item for item in record.channels if item.role is Role.SIGNAL)
    np.testing.assert_allclose(volts(capture, Role.SIGNAL), 0.01 * wires["signal"], atol=1e-6)
    assert signal.attributes["probe_point"] == "sensor end"
    assert record.attributes["ignition"] == "on"
    assert record.step is Step.ROAD
    assert capture.title == "Nordwind, rear left"
    assert capture.text("recorder") == "Box 3"


def test_an_offset_is_added_after_the_factor_and_can_be_taken_back(
    qtbot: QtBot, window: Window, tmp_path: Path
) -> None:
    wires = swept()
    drop(window, plain_table(tmp_path / "a.csv", wires, "Time,signal,ref"))
    wait_for_looks(qtbot, window)
    page = window.imports.page
    wire = page.columns.cards["signal"].wire
    enter(wire.factor, "0,5")
    enter(wire.offset, "much")
    assert "much is no number of volts to add" in page.columns.trouble.text()
    enter(wire.offset, "-0,25")
    wait_for_looks(qtbot, window)
    assert (wire.factor.text(), wire.offset.text()) == ("0.5", "\N{MINUS SIGN}0.25")
    enter(wire.offset, "0")
    assert window.imports.state.draft.files[0].wishes.offsets == {"signal": 0.0}
    wire.offset.clear()
    QTest.keyClick(wire.offset, Qt.Key.Key_Return)
    assert window.imports.state.draft.files[0].wishes.offsets == {}
    wait_for_looks(qtbot, window)
    enter(wire.offset, "1 V")
    wait_for_looks(qtbot, window)
    QTest.keyClick(page, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    capture = imported(qtbot, window)
    np.testing.assert_allclose(volts(capture, Role.SIGNAL), 0.5 * wires["signal"] + 1.0, atol=1e-5)


def test_a_row_of_factors_that_may_be_in_the_numbers_is_answered_on_the_page(
    qtbot: QtBot, window: Window, tmp_path: Path
) -> None:
    wires = swept()
    path = plain_table(tmp_path / "a.csv", wires, "Time,signal,ref")
    heading, rows = path.read_text().split("\n", 1)
    path.write_text(f"{heading}\nFactor,10,10\n{rows}")
    drop(window, path)
    wait_for_looks(qtbot, window)
    page = window.imports.page
    assert "may be in the numbers already" in page.columns.trouble.text()
    for name in ("signal", "ref"):
        enter(page.columns.cards[name].wire.factor, "1")
        wait_for_looks(qtbot, window)
    assert page.columns.cards["ref"].wire.factor.text() == "1"
    window.actions_by_name["bring_in"].trigger()
    capture = imported(qtbot, window)
    np.testing.assert_allclose(volts(capture, Role.SIGNAL), wires["signal"], atol=1e-5)


def test_two_files_become_two_records_in_the_order_of_the_list(
    qtbot: QtBot, window: Window, tmp_path: Path
) -> None:
    first = plain_table(tmp_path / "1-sweep.csv", swept(), "Time,signal,ref,gnd")
    second = plain_table(tmp_path / "2-rest.csv", at_rest(), "Time,signal,ref,gnd")
    drop_all(window, [first, second])
    wait_for_looks(qtbot, window, files=2)
    files = window.imports.page.files
    files.list.setFocus()
    QTest.keyClick(files.list, Qt.Key.Key_Down)
    QTest.keyClick(files.list, Qt.Key.Key_Up, Qt.KeyboardModifier.AltModifier)
    choose(files.step, "ground")
    wait_for_looks(qtbot, window, files=2)
    window.actions_by_name["bring_in"].trigger()
    capture = imported(qtbot, window)
    assert [record.label for record in capture.records] == ["2-rest", "1-sweep"]
    assert [record.step for record in capture.records] == [Step.GROUND, Step.SWEEP]


def test_what_is_changed_holds_for_all_files_with_the_same_columns_unless_unticked(
    qtbot: QtBot, window: Window, tmp_path: Path
) -> None:
    paths = [plain_table(tmp_path / f"{n}.csv", swept(), "Time,signal,ref,gnd") for n in range(3)]
    drop_all(window, paths)
    wait_for_looks(qtbot, window, files=3)
    page = window.imports.page
    assert page.files.together.isVisible()
    assert page.files.together.isChecked()
    choose(page.columns.cards["signal"].wire.unit, "mV")
    QTest.mouseClick(page.files.together, Qt.MouseButton.LeftButton)
    choose(page.columns.cards["ref"].wire.unit, "mV")
    wait_for_looks(qtbot, window, files=3)
    units = [dict(item.wishes.units) for item in window.imports.state.draft.files]
    assert units == [{"signal": "mV", "ref": "mV"}, {"signal": "mV"}, {"signal": "mV"}]


def test_a_folder_becomes_one_capture_named_after_it(qtbot: QtBot, window: Window, tmp_path: Path) -> None:
    folder = tmp_path / "rear left"
    folder.mkdir()
    for number in (2, 1):
        plain_table(folder / f"{number}.csv", swept(), "Time,signal,ref,gnd")
    drop(window, folder)
    wait_for_looks(qtbot, window, files=2)
    window.actions_by_name["bring_in"].trigger()
    capture = imported(qtbot, window)
    assert capture.title == "rear left"
    assert [record.label for record in capture.records] == ["1", "2"]


def test_a_capture_that_is_dropped_is_opened_and_not_imported(
    qtbot: QtBot, window: Window, tmp_path: Path
) -> None:
    write_capture(worn_capture(), tmp_path / "good.h5")
    drop(window, tmp_path / "good.h5")
    capture = imported(qtbot, window)
    assert capture.path == tmp_path / "good.h5"


def test_of_several_captures_the_first_is_opened(qtbot: QtBot, window: Window, tmp_path: Path) -> None:
    for name in ("a.h5", "b.h5"):
        write_capture(worn_capture(), tmp_path / name)
    drop_all(window, [tmp_path / "a.h5", tmp_path / "b.h5"])
    assert imported(qtbot, window).path == tmp_path / "a.h5"


def test_open_leads_to_import_where_the_file_is_no_capture(
    qtbot: QtBot, window: Window, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    path = plain_table(tmp_path / "a.csv", swept(), "Time,signal")
    monkeypatch.setattr(QFileDialog, "getOpenFileName", lambda *_args, **_words: (str(path), ""))
    window.actions_by_name["open"].trigger()
    wait_for_looks(qtbot, window)
    assert window.imports.shown
    assert window.page.problem_bar.text == ""


def test_the_key_asks_for_files_and_more_are_added(
    qtbot: QtBot, window: Window, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    first = plain_table(tmp_path / "a.csv", swept(), "Time,signal")
    second = plain_table(tmp_path / "b.csv", swept(), "Time,signal")
    monkeypatch.setattr(QFileDialog, "getOpenFileNames", lambda *_args, **_words: ([str(first)], ""))
    QTest.keyClick(window, Qt.Key.Key_I, Qt.KeyboardModifier.ControlModifier)
    wait_for_looks(qtbot, window)
    monkeypatch.setattr(QFileDialog, "getOpenFileNames", lambda *_args, **_words: ([str(second)], ""))
    QTest.mouseClick(window.imports.page.files.add, Qt.MouseButton.LeftButton)
    wait_for_looks(qtbot, window, files=2)
    QTest.keyClick(window.imports.page.files.list, Qt.Key.Key_Delete)
    wait_for_looks(qtbot, window)
    assert [item.path for item in window.imports.state.draft.files] == [second]


def test_rows_show_what_stands_in_the_file_and_what_is_understood(
    qtbot: QtBot, window: Window, tmp_path: Path
) -> None:
    drop(window, comma_table(tmp_path / "a.csv", swept()))
    wait_for_looks(qtbot, window)
    model = window.imports.page.rows.model
    first = window.imports.state.seen(0)
    assert first is not None
    row = first.head_lines + 2
    assert model.index(row, 0).data() == "1,0000 → 0.001 s"
    assert model.index(row, 3).data().endswith(" mV")
    assert model.headerData(3, Qt.Orientation.Horizontal) == "Kanal C\nGround"


def test_a_wire_that_shows_nothing_by_itself_is_what_the_other_file_made_of_the_column(
    qtbot: QtBot, window: Window, tmp_path: Path
) -> None:
    heads = ("Zeit (ms)", "A (V)", "B (V)", "C (mV)")
    paths = [
        comma_table(tmp_path / "1-rest.csv", at_rest(), heads),
        comma_table(tmp_path / "2-sweep.csv", swept(), heads),
    ]
    drop_all(window, paths)
    wait_for_looks(qtbot, window, files=2)
    card = window.imports.page.columns.cards["A"]
    qtbot.waitUntil(lambda: card.use.currentData() == "signal", timeout=10_000)
    assert "2-sweep.csv" in card.reason.text()
    window.actions_by_name["bring_in"].trigger()
    capture = imported(qtbot, window)
    np.testing.assert_allclose(volts(capture, Role.SIGNAL, 0), 2.95)
    assert [record.step for record in capture.records] == [None, Step.SWEEP]


def test_the_place_is_asked_for_where_nothing_can_be_saved_beside_the_file(
    qtbot: QtBot, window: Window, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(maker, "proposed_target", lambda paths, together="": None)
    elsewhere = tmp_path / "elsewhere"
    elsewhere.mkdir()
    monkeypatch.setattr(
        QFileDialog, "getSaveFileName", lambda *_args, **_words: (str(elsewhere / "mine"), "")
    )
    drop(window, plain_table(tmp_path / "a.csv", swept(), "Time,signal"))
    wait_for_looks(qtbot, window)
    page = window.imports.page
    qtbot.waitUntil(lambda: "choose another place" in page.target_trouble.sentence, timeout=10_000)
    window.actions_by_name["bring_in"].trigger()
    assert imported(qtbot, window).path == elsewhere / "mine.h5"


def test_what_was_said_can_be_undone_and_done_again(qtbot: QtBot, window: Window, tmp_path: Path) -> None:
    paths = [plain_table(tmp_path / f"{n}.csv", swept(), "Time,signal,ref") for n in (1, 2)]
    drop_all(window, paths)
    wait_for_looks(qtbot, window, files=2)
    page = window.imports.page
    undo = window.actions_by_name["undo"]
    assert not undo.isEnabled()
    choose(page.columns.cards["ref"].use, "supply")
    wait_for_looks(qtbot, window, files=2)
    assert undo.text() == "Undo: change a column"
    QTest.mouseClick(page.files.remove, Qt.MouseButton.LeftButton)
    wait_for_looks(qtbot, window)
    for _ in range(2):
        undo.trigger()  # on no screen the list that was open keeps the keys
    wait_for_looks(qtbot, window, files=2)
    assert [item.path for item in window.imports.state.draft.files] == paths
    assert page.columns.cards["ref"].use.currentData() == "reference"
    assert not undo.isEnabled()
    window.actions_by_name["redo"].trigger()
    wait_for_looks(qtbot, window, files=2)
    assert page.columns.cards["ref"].use.currentData() == "supply"
    window.show_review()
    assert not undo.isEnabled()


def test_of_hundreds_of_columns_the_wires_and_the_first_are_shown_and_the_rest_on_request(
    qtbot: QtBot, window: Window, tmp_path: Path
) -> None:
    wires = swept(1.0)
    count = 120
    heads = ",".join(["Time", *(f"t{n} (degC)" for n in range(count)), "signal"])
    lines = [
        ",".join([f"{time:.4f}", *["21.5"] * count, f"{volt:.4f}"])
        for time, volt in zip(wires["time"][:400], wires["signal"][:400], strict=True)
    ]
    path = tmp_path / "a.csv"
    path.write_text("\n".join([heads, *lines]), encoding="utf-8")
    drop(window, path)
    wait_for_looks(qtbot, window)
    pane = window.imports.page.columns
    qtbot.waitUntil(lambda: "signal" in pane.cards, timeout=10_000)
    assert len(pane.cards) < 20
    assert pane.more.text() == f"Show {count + 2 - len(pane.cards)} more columns"
    QTest.mouseClick(pane.more, Qt.MouseButton.LeftButton)
    qtbot.waitUntil(lambda: len(pane.cards) == count + 2, timeout=30_000)
    assert not pane.more.isVisible()
