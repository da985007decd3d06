"""Who has marked something while the capture was still examined stays where it was marked."""

from __future__ import annotations

import threading
from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from analysis.captures.model import Capture
from analysis.diagnosis.findings import Findings
from analysis.progress import Tick
from app.main_window import Window
from tests.app.conftest import Bench
from tests.app.fakes import worn_findings


@pytest.mark.parametrize("marked", [True, False])
def test_findings_lead_to_the_clearest_record_unless_something_was_marked_in_another(
    qtbot: QtBot, window: Window, bench: Bench, marked: bool
) -> None:
    hold = threading.Event()

    def examine_later(capture: Capture, _tick: Tick) -> Findings:
        hold.wait(20.0)
        found = worn_findings(capture)
        return replace(found, bands=tuple(replace(band, record="005") for band in found.bands))

    bench.findings = examine_later
    window.open_file(Path("worn.h5"))
    qtbot.waitUntil(lambda: window.focus.record is not None)
    assert window.focus.record is not None
    assert window.focus.record.name == "004"
    if marked:
        window.focus.point(1.0)
        QTest.keyClick(window, Qt.Key.Key_M)
    with qtbot.waitSignal(window.session.findings_changed):
        hold.set()
    assert window.focus.record.name == ("004" if marked else "005")
