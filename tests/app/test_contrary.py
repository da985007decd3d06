"""What speaks against the verdict is seen without scrolling: under the headline, and first in the chain."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtWidgets import QLabel
from pytestqt.qtbot import QtBot

from analysis.captures.model import Capture
from analysis.diagnosis.findings import Findings, State, Statement
from analysis.progress import Tick
from app.main_window import Window
from app.views.press_row import PressRow
from tests.app.conftest import Bench
from tests.app.fakes import worn_findings

TEXT = "The signal breaks up while the harness is wiggled and the arm rests."


def _contradicted(capture: Capture, tick: Tick) -> Findings:
    found = worn_findings(capture, tick)
    loose = Statement("wiring_quiet", State.REFUTED, ("003",), TEXT)
    return replace(found, evidence=(*found.evidence, loose))


@pytest.fixture
def bench() -> Bench:
    return Bench(findings=_contradicted)


def test_a_record_that_speaks_against_the_verdict_is_seen_before_the_first_scroll(
    review: Window, qtbot: QtBot
) -> None:
    evidence = review.page.evidence
    labels = [item for item in evidence.findChildren(QLabel) if item.isVisible()]
    line = next(item for item in labels if item.text() == f"Speaks against it: {TEXT}")
    viewport = evidence.rows_area.viewport()
    assert viewport.rect().contains(line.mapTo(viewport, line.rect().bottomLeft()))
    rows = sorted(evidence.findChildren(PressRow), key=lambda row: row.mapTo(evidence, row.pos()).y())
    chain = [
        row for row in rows if row.accessibleName().startswith(("The s", "The r", "It breaks", "Nothing"))
    ]
    assert chain[0].accessibleName() == TEXT


def test_a_verdict_that_nothing_speaks_against_has_no_such_line(
    window: Window, bench: Bench, qtbot: QtBot
) -> None:
    bench.findings = worn_findings
    with qtbot.waitSignal(window.session.findings_changed):
        window.open_file(Path("worn.h5"))
    texts = [item.text() for item in window.page.evidence.findChildren(QLabel)]
    assert not any(text.startswith("Speaks against it") for text in texts)
