"""Evidence and Markers share a column: Evidence has the larger part, and no row is cut through."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import product
from pathlib import Path

import pytest
from PySide6.QtCore import QPoint
from PySide6.QtWidgets import QApplication, QTableView
from pytestqt.qtbot import QtBot

from app.views.band_card import BandCard
from tests.app.stage import Stage, stage_for, still
from tests.app.states_of_review import WORN

SIZES = ((1366, 768), (1366, 690), (960, 540))
LOOKS = tuple(product(("en", "de"), SIZES))


@pytest.fixture(params=LOOKS, ids=lambda look: f"{look[0]}-{look[1][0]}x{look[1][1]}")
def stage(
    qtbot: QtBot, qapp: QApplication, tmp_path: Path, request: pytest.FixtureRequest
) -> Iterator[Stage]:
    """The worn sample examined, in a language and a size; (1366, 690) is 768 with the hints of a sample."""
    language, size = request.param
    with stage_for(qtbot, qapp, tmp_path, language, "light") as made:
        made.window.setMinimumSize(0, 0)
        made.open(WORN)
        made.window.resize(*size)
        yield made


def mark(stage: Stage, *shares: float) -> None:
    """Mark moments of the record that is shown, and wait for what the last one reads."""
    span = stage.window.focus.window
    for share in shares:
        stage.window.desk.markers.mark_moment(span.start + share * span.length)
    pane = stage.window.page.markers
    stage.until(lambda: bool(pane.readings.rows) and len(pane.rows) == len(shares))
    still(stage.qtbot, stage.window)


def cut_rows(table: QTableView) -> list[int]:
    """Rows of which a part is seen and a part is not."""
    seen, model = table.viewport().rect(), table.model()
    rects = {row: table.visualRect(model.index(row, 0)) for row in range(model.rowCount())}
    tall = {row: (rect.top(), rect.bottom()) for row, rect in rects.items()}
    return [
        row
        for row, (top, bottom) in tall.items()
        if top <= seen.bottom()
        and bottom >= seen.top()
        and not (top >= seen.top() and bottom <= seen.bottom())
    ]


@pytest.mark.parametrize("count", [1, 2, 3, 6])
def test_evidence_has_the_larger_part_and_no_row_of_a_marker_is_cut_through(stage: Stage, count: int) -> None:
    mark(stage, *(0.1 + 0.13 * place for place in range(count)))
    page = stage.window.page
    pane = page.markers
    assert page.evidence.height() > pane.height()
    first = pane.table.indexAt(QPoint(5, 5)).row()
    shown = pane.table.viewport().height() // pane.table.rowHeight(0)
    assert shown >= min(count, 2)
    assert first <= pane.table.currentIndex().row() < first + shown
    assert cut_rows(pane.table) == cut_rows(pane.grid) == []
    assert pane.grid.viewport().height() >= 2 * pane.grid.rowHeight(0)
    assert pane.grid.geometry().top() > pane.table.geometry().bottom()
    pane.grid.scrollToBottom()
    last = pane.grid.visualRect(pane.grid.model().index(len(pane.readings.rows) - 1, 0))
    assert last.bottom() <= pane.grid.viewport().rect().bottom()
    assert cut_rows(pane.grid) == []


def test_what_was_said_of_a_band_is_in_sight_at_once_beside_the_readings(stage: Stage) -> None:
    mark(stage, 0.5)
    stage.do("next_band")
    area = stage.window.page.evidence.rows_area
    sheet = area.widget()
    assert sheet is not None
    card = stage.window.page.evidence.findChild(BandCard)
    assert card is not None
    still(stage.qtbot, stage.window)
    foot = card.mapTo(sheet, card.rect().bottomLeft()).y()
    area.verticalScrollBar().setValue(foot + 1 - area.viewport().height())
    stage.do("accept")
    seen = area.viewport()
    stage.until(lambda: card.said.isVisible())
    still(stage.qtbot, stage.window)
    place = card.said.mapTo(seen, QPoint(0, 0)).y()
    assert place >= 0
    assert place + card.said.height() <= seen.height()
