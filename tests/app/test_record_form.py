from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLineEdit, QToolButton
from pytestqt.qtbot import QtBot

from analysis.captures.model import ArraySource, Capture, Channel, Record, Role, Scaling, Step
from analysis.diagnosis.examine import examine
from analysis.diagnosis.findings import Findings
from analysis.intervals import Interval
from analysis.progress import Tick
from analysis.review.records import spans_of
from app.drawing.row_delegate import ROW_ROLE, Row
from app.main_window import Window
from app.views.record_form import WordBox
from tests.app import hands
from tests.app.conftest import Bench
from tests.app.fakes import nothing_found, worn_findings


def form_box(window: Window, key: str, channel: str = "", span: Interval | None = None) -> WordBox:
    return window.page.records.form.boxes[(span, channel, key)]


def button(window: Window, name: str) -> QToolButton:
    action = window.actions_by_name[name]
    return next(
        item
        for item in window.page.findChildren(QToolButton)
        if item.defaultAction() is action and item.isVisible()
    )


def line_of(box: WordBox) -> QLineEdit:
    line = box.lineEdit()
    assert line is not None
    return line


def choose(box: WordBox, word: str) -> None:
    """Choose a word of a box by keys, as a hand does: arrows until it stands there."""
    box.setFocus()
    while box.currentData() != word:
        down = box.currentIndex() < box.findData(word)
        QTest.keyClick(box, Qt.Key.Key_Down if down else Qt.Key.Key_Up)


@pytest.fixture
def seen(bench: Bench) -> list[Capture]:
    """Every capture that was examined."""
    captures: list[Capture] = []

    def examine_and_note(capture: Capture, tick: Tick) -> Findings:
        captures.append(capture)
        return worn_findings(capture, tick)

    bench.findings = examine_and_note
    return captures


@pytest.fixture
def shown(qtbot: QtBot, bench: Bench, seen: list[Capture], window: Window) -> Window:
    with qtbot.waitSignal(window.session.findings_changed):
        window.open_file(Path("worn.h5"))
    return window


def test_a_key_opens_the_words_of_the_shown_record_and_closes_them(shown: Window) -> None:
    QTest.keyClick(shown, Qt.Key.Key_F4)
    assert shown.page.records.form.isVisible()
    assert form_box(shown, "step").currentData() == "sweep"
    assert form_box(shown, "role", "reference").currentData() == "reference"
    QTest.keyClick(shown, Qt.Key.Key_F4)
    assert not shown.page.records.form.isVisible()


def test_a_record_is_opened_by_its_button_and_by_double_clicking_it(shown: Window) -> None:
    QTest.mouseClick(button(shown, "describe"), Qt.MouseButton.LeftButton)
    assert shown.page.records.form.isVisible()
    QTest.mouseClick(button(shown, "describe"), Qt.MouseButton.LeftButton)
    assert not shown.page.records.form.isVisible()
    rows = shown.page.records.list
    at = rows.visualRect(rows.currentIndex()).center()
    QTest.mouseClick(rows.viewport(), Qt.MouseButton.LeftButton, pos=at)
    QTest.mouseDClick(rows.viewport(), Qt.MouseButton.LeftButton, pos=at)
    assert shown.page.records.form.isVisible()


def test_another_step_is_examined_at_once_and_can_be_undone(
    qtbot: QtBot, shown: Window, seen: list[Capture]
) -> None:
    QTest.keyClick(shown, Qt.Key.Key_F4)
    window_before = shown.focus.window
    with qtbot.waitSignal(shown.session.findings_changed):
        choose(form_box(shown, "step"), "tap")
    qtbot.waitUntil(lambda: seen[-1].record("004").step is Step.TAP)
    assert shown.focus.record is not None
    assert shown.focus.record.name == "004"
    assert shown.focus.record.step is Step.TAP
    assert shown.focus.window == window_before
    QTest.keyClick(shown, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)  # however many words lay between
    assert not shown.keeper.stack.canUndo()
    qtbot.waitUntil(lambda: seen[-1].record("004").step is Step.SWEEP and not shown.session.examining)
    assert form_box(shown, "step").currentData() == "sweep"


def test_a_role_and_a_probe_point_that_is_typed_reach_the_examination(
    qtbot: QtBot, shown: Window, seen: list[Capture]
) -> None:
    QTest.keyClick(shown, Qt.Key.Key_F4)
    choose(form_box(shown, "role", "ground"), "supply")
    box = form_box(shown, "probe_point", "signal")
    box.setFocus()
    QTest.keyClicks(line_of(box), "splice at the sill")
    QTest.keyClick(line_of(box), Qt.Key.Key_Return)
    qtbot.waitUntil(
        lambda: seen[-1].record("004").channels[0].attributes.get("probe_point") == "splice at the sill"
    )
    assert seen[-1].record("004").channels[2].role is Role.SUPPLY
    assert shown.session.recorded is not None
    assert shown.session.recorded.record("004").channels[2].role is Role.GROUND


def test_a_chosen_band_stays_chosen_over_an_edit(qtbot: QtBot, shown: Window) -> None:
    QTest.keyClick(shown, Qt.Key.Key_B)
    assert shown.focus.band == 0
    QTest.keyClick(shown, Qt.Key.Key_F4)
    with qtbot.waitSignal(shown.session.findings_changed):
        choose(form_box(shown, "moved"), "by hand")
    qtbot.waitUntil(lambda: not shown.session.examining)
    assert shown.focus.band == 0
    assert shown.page.track.stretches[0].strong


def test_words_of_two_fields_are_two_steps(qtbot: QtBot, shown: Window) -> None:
    QTest.keyClick(shown, Qt.Key.Key_F4)
    choose(form_box(shown, "step"), "road")
    choose(form_box(shown, "role", "ground"), "supply")
    assert shown.keeper.stack.count() == 2
    QTest.keyClick(shown, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert form_box(shown, "step").currentData() == "road"
    assert form_box(shown, "role", "ground").currentData() == "ground"
    qtbot.waitUntil(lambda: not shown.session.examining)


def test_a_word_that_is_proposed_is_kept_as_the_capture_format_writes_it(
    qtbot: QtBot, shown: Window, seen: list[Capture]
) -> None:
    QTest.keyClick(shown, Qt.Key.Key_F4)
    box = form_box(shown, "ignition")
    box.setFocus()
    QTest.keyClicks(line_of(box), "on")
    QTest.keyClick(line_of(box), Qt.Key.Key_Tab)
    qtbot.waitUntil(lambda: seen[-1].record("004").attributes.get("ignition") == "on")


def test_the_wheel_over_a_word_changes_nothing(shown: Window) -> None:
    QTest.keyClick(shown, Qt.Key.Key_F4)
    box = form_box(shown, "step")
    hands.wheel(box, box.rect().center(), -3)
    assert box.currentData() == "sweep"
    assert not shown.keeper.stack.canUndo()


def test_the_shown_stretch_gets_a_step_of_its_own_and_is_dropped_again(
    qtbot: QtBot, shown: Window, seen: list[Capture]
) -> None:
    assert not shown.actions_by_name["describe_span"].isEnabled()
    span = Interval(2.0, 5.0)
    shown.focus.show_window(span)
    QTest.keyClick(shown, Qt.Key.Key_F4, Qt.KeyboardModifier.ShiftModifier)
    assert shown.page.records.form.isVisible()
    choose(form_box(shown, "step", span=span), "wiggle")
    qtbot.waitUntil(lambda: any(item.step is Step.WIGGLE and item.name == "004" for item in seen[-1].records))
    part = next(item for item in seen[-1].records if item.step is Step.WIGGLE and item.name == "004")
    assert part.first_sample_s == pytest.approx(2.0)
    assert part.duration_s == pytest.approx(3.0)
    assert shown.session.capture is not None
    assert [item.name for item in shown.session.capture.records] == ["001", "002", "003", "004", "005"]
    drop = next(item for item in shown.page.records.form.findChildren(QToolButton) if item.text() == "Drop")
    QTest.mouseClick(drop, Qt.MouseButton.LeftButton)
    qtbot.waitUntil(lambda: [item.name for item in seen[-1].records].count("004") == 1)
    assert (span, "", "step") not in shown.page.records.form.boxes


def test_the_steps_are_gone_through_by_keys_though_each_asks_for_other_words(shown: Window) -> None:
    """A road record is asked how far it was driven; the keyboard stays where it is."""
    QTest.keyClick(shown, Qt.Key.Key_F4)
    form_box(shown, "step").setFocus()
    for word in ("hold", "road", "tap", "heat"):
        QTest.keyClick(QApplication.focusWidget() or shown, Qt.Key.Key_Down)
        assert form_box(shown, "step").currentData() == word
        assert form_box(shown, "step").hasFocus()


def test_every_word_has_a_name_for_a_screen_reader(shown: Window) -> None:
    QTest.keyClick(shown, Qt.Key.Key_F4)
    names = [box.accessibleName() for box in shown.page.records.form.boxes.values()]
    assert all(names)
    assert len(set(names)) == len(names)


def lone_capture() -> Capture:
    """One probe: ground, the 5 V feed, and then three sweeps of the signal."""
    rate_hz = 2000.0
    rng = np.random.default_rng(3)

    def held(volts: float, seconds: float) -> np.ndarray:
        return np.full(round(seconds * rate_hz), volts)

    hum = 0.06 * np.sin(2 * np.pi * 50.0 * np.arange(1000) / rate_hz)
    time_s = np.arange(round(12.0 * rate_hz)) / rate_hz
    swept = 2.5 - 2.0 * np.cos(np.pi * time_s / 2.0)
    volts = np.concatenate([hum, held(0.012, 1.5), hum, held(5.0, 1.5), hum, swept])
    counts = np.round((volts + rng.normal(0.0, 0.001, volts.size)) / 0.0005).astype(np.int16)
    channel = Channel("probe", Role.SIGNAL, ArraySource(counts), Scaling(scale_factor=0.0005))
    return Capture("lone", (Record("001", 1 / rate_hz, (channel,), step=Step.SWEEP),))


@pytest.fixture
def split(qtbot: QtBot, bench: Bench, window: Window) -> Window:
    bench.capture = lone_capture()
    bench.findings = lambda capture, tick: examine(capture, tick=tick)
    with qtbot.waitSignal(window.session.findings_changed, timeout=20_000):
        window.open_file(Path("lone.h5"))
    return window


def test_a_splitting_is_proposed_in_the_window_and_not_in_its_way(split: Window) -> None:
    text = split.page.split_strip.text
    assert "Ground 0." in text
    assert "Reference" in text
    assert "Signal (Sweep)" in text
    assert split.keeper.review.records == ()
    row: Row = split.page.records.list.model().index(1, 0).data(ROW_ROLE)
    assert row.title == "Sweep"
    assert row.detail == "nothing wrong in its 3 spans"  # and not what one of them, the ground, reads


def test_accepting_it_by_mouse_makes_spans_and_undoing_proposes_it_again(qtbot: QtBot, split: Window) -> None:
    findings = split.session.findings
    assert findings is not None
    verdict = findings.verdict
    with qtbot.waitSignal(split.session.findings_changed, timeout=20_000):
        QTest.mouseClick(button(split, "accept_split"), Qt.MouseButton.LeftButton)
    assert split.page.split_strip.isHidden()
    assert split.session.findings is not None
    assert split.session.findings.verdict == verdict
    spans = [item.words["step"] for item in split.keeper.review.records if item.time is not None]
    assert spans == ["ground", "reference", "sweep"]
    with qtbot.waitSignal(split.session.findings_changed, timeout=20_000):
        QTest.keyClick(split, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert split.page.split_strip.isVisible()


def rows_of(window: Window) -> list[str]:
    rows = window.page.records.list.model()
    return [str(rows.index(place, 0).data()) for place in range(rows.rowCount())]


def test_a_step_that_only_a_span_was_taken_for_is_ticked_off(qtbot: QtBot, split: Window) -> None:
    """As soon as it is proposed, and still when it is accepted; refused, it was not captured."""
    assert {"Ground", "Reference"}.isdisjoint(rows_of(split))
    with qtbot.waitSignal(split.session.findings_changed, timeout=20_000):
        QTest.mouseClick(button(split, "accept_split"), Qt.MouseButton.LeftButton)
    corner = "\N{BOX DRAWINGS LIGHT UP AND RIGHT} "
    spans = [corner + name for name in ("Ground", "Reference", "Sweep")]
    assert rows_of(split) == ["Wiggle", "Sweep", *spans, "Hold"]
    with qtbot.waitSignal(split.session.findings_changed, timeout=20_000):
        QTest.keyClick(split, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    with qtbot.waitSignal(split.session.findings_changed, timeout=20_000):
        QTest.mouseClick(button(split, "refuse_split"), Qt.MouseButton.LeftButton)
    assert {"Ground", "Reference"} <= set(rows_of(split))


def test_a_role_that_is_told_ticks_off_its_step(qtbot: QtBot, bench: Bench, window: Window) -> None:
    capture = lone_capture()
    record = capture.records[0]
    second = replace(record.channels[0], name="other", role=None)
    bench.capture = replace(capture, records=(replace(record, channels=(*record.channels, second)),))
    bench.findings = lambda _capture, _tick: nothing_found()
    with qtbot.waitSignal(window.session.findings_changed):
        window.open_file(Path("lone.h5"))
    assert "Ground" in rows_of(window)
    QTest.keyClick(window, Qt.Key.Key_F4)
    with qtbot.waitSignal(window.session.findings_changed):
        choose(form_box(window, "role", "other"), "ground")
    assert "Ground" not in rows_of(window)


def test_a_click_on_a_span_goes_to_it(qtbot: QtBot, split: Window) -> None:
    with qtbot.waitSignal(split.session.findings_changed, timeout=20_000):
        QTest.mouseClick(button(split, "accept_split"), Qt.MouseButton.LeftButton)
    rows = split.page.records.list
    at = rows.visualRect(rows.model().index(3, 0)).center()
    QTest.mouseClick(rows.viewport(), Qt.MouseButton.LeftButton, pos=at)
    span = spans_of(split.keeper.review.records, "001")[1].time
    assert span is not None
    assert split.focus.window.start < span.start < span.stop < split.focus.window.stop
    assert split.focus.window.length < 1.2 * span.length
    assert rows.currentIndex().row() == 3


def test_refusing_it_by_key_examines_the_record_as_one_wire(qtbot: QtBot, split: Window) -> None:
    keys = Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.ShiftModifier
    with qtbot.waitSignal(split.session.findings_changed, timeout=20_000):
        QTest.keyClick(split, Qt.Key.Key_X, keys)
    assert split.page.split_strip.isHidden()
    assert split.session.findings is not None
    assert split.session.findings.parts == ()


def test_how_far_and_how_fast_was_driven_is_asked_of_road_records_alone(
    qtbot: QtBot, shown: Window, seen: list[Capture]
) -> None:
    QTest.keyClick(shown, Qt.Key.Key_F4)
    assert (None, "", "distance_km") not in shown.page.records.form.boxes
    choose(form_box(shown, "step"), "road")
    qtbot.waitUntil(lambda: (None, "", "distance_km") in shown.page.records.form.boxes)
    for key, typed in (("distance_km", "7,5"), ("speed_km_h", "50")):
        box = form_box(shown, key)
        box.setFocus()
        QTest.keyClicks(line_of(box), typed)
        QTest.keyClick(box, Qt.Key.Key_Return)
    record = shown.focus.record
    assert record is not None
    qtbot.waitUntil(
        lambda: any(
            (item.attributes.get("distance_km"), item.attributes.get("speed_km_h")) == (7.5, 50.0)
            for item in seen[-1].records
            if item.name == record.name
        )
    )


def test_undo_takes_back_a_chosen_probe_while_its_field_has_the_focus(shown: Window) -> None:
    QTest.keyClick(shown, Qt.Key.Key_F4)
    box = form_box(shown, "probe_point", "signal")
    choose(box, "sensor end")
    assert box.hasFocus()
    assert shown.keeper.stack.canUndo()
    QTest.keyClick(box, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert not shown.keeper.stack.canUndo()
    assert box.currentText() == ""


def test_undo_takes_back_typing_first_and_the_word_once_it_was_kept(shown: Window) -> None:
    QTest.keyClick(shown, Qt.Key.Key_F4)
    box = form_box(shown, "probe_point", "signal")
    box.setFocus()
    QTest.keyClicks(box, "x12")
    QTest.keyClick(box, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert box.currentText() == ""
    assert not shown.keeper.stack.canUndo()
    QTest.keyClicks(box, "x12")
    QTest.keyClick(box, Qt.Key.Key_Return)
    assert shown.keeper.stack.canUndo()
    box.setFocus()
    QTest.keyClick(box, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert not shown.keeper.stack.canUndo()


@pytest.mark.parametrize("key", [Qt.Key.Key_Return, Qt.Key.Key_Escape])
def test_enter_and_escape_give_the_keys_back_to_the_window(shown: Window, key: Qt.Key) -> None:
    QTest.keyClick(shown, Qt.Key.Key_F4)
    box = form_box(shown, "probe_point", "signal")
    box.setFocus()
    QTest.keyClicks(box, "mn")
    QTest.keyClick(box, key)
    assert shown.focusWidget() is shown.page.track.plots
    assert shown.keeper.stack.canUndo() is (key == Qt.Key.Key_Return)
    markers = len(shown.keeper.review.markers)
    QTest.keyClick(shown.page.track.plots, Qt.Key.Key_M)
    assert len(shown.keeper.review.markers) == markers + 1
