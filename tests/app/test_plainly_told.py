"""What a row says is what was measured, with its unit beside it."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

from PySide6.QtWidgets import QLabel
from pytestqt.qtbot import QtBot

from analysis.captures.model import Capture
from analysis.diagnosis.findings import Findings
from analysis.progress import Tick
from analysis.reports.confidence import verdict_odds_words
from app.drawing.row_delegate import ROW_ROLE, RowList
from app.language import said
from app.main_window import Window
from app.views.headline import Headline
from app.views.press_row import TextLine, text_line
from tests.app.conftest import Bench
from tests.app.fakes import worn_findings


def rows(window: Window) -> RowList:
    return window.page.events.list


def number_in(text: str) -> str:
    """Of words such as "likely (93 in 100)" the 93."""
    return text.partition("(")[2].partition(" ")[0]


def readings(window: Window) -> list[str]:
    model = rows(window).rows
    return [model.item(place).data(ROW_ROLE).reading for place in range(model.rowCount())]


def test_a_crossing_whose_break_up_no_share_was_measured_of_is_not_said_to_break_up_by_nothing(
    qtbot: QtBot, bench: Bench, window: Window
) -> None:
    def findings(capture: Capture, tick: Tick) -> Findings:
        found = worn_findings(capture, tick)
        (band,) = found.bands
        first, *others = band.crossings
        return replace(
            found, bands=(replace(band, crossings=(replace(first, breakup_percent=0.0), *others)),)
        )

    bench.findings = findings
    with qtbot.waitSignal(window.session.findings_changed):
        window.open_file(Path("worn.h5"))
    assert readings(window)[1] == "breaks up"
    assert "0 %" not in readings(window)


def test_a_line_is_not_wrapped_between_a_number_and_its_unit(qtbot: QtBot) -> None:
    label = text_line("disagree: 359 mV apart")
    qtbot.addWidget(label)
    narrow = label.fontMetrics().horizontalAdvance("disagree: 359 ") + 2
    assert label.fontMetrics().horizontalAdvance("disagree: 359 mV") > narrow
    plain = QLabel(label.text())
    plain.setWordWrap(True)
    assert label.heightForWidth(narrow) == plain.heightForWidth(narrow)  # two lines either way
    pictures = []
    for item in (label, plain):
        item.setSizePolicy(plain.sizePolicy())
        item.resize(narrow, 60)
        pictures.append(item.grab().toImage())
    assert pictures[0] != pictures[1]  # but others
    label.setText("12 mV")
    assert label.text() == "12 mV"


def test_what_the_odds_are_odds_of_is_said_where_they_stand(review: Window) -> None:
    evidence = review.page.evidence
    title, sure = evidence.findChildren(Headline)
    on_card = next(item for item in evidence.findChildren(TextLine) if item.text().startswith("very likely"))
    verdicts = f"Of 100 verdicts said with this confidence about {number_in(sure.text())} proved right"
    bands = "Of 100 bands found with this confidence about 98 proved to be there on simulated captures."
    assert number_in(on_card.text()) == "98"
    for line, told in ((title, verdicts), (sure, verdicts), (on_card, bands)):
        assert told in line.toolTip()
        assert told in line.accessibleDescription()
    assert title.accessibleDescription().startswith("Verdict. ")
    findings = review.session.findings
    assert findings is not None
    apart = "it does not tell the possible causes apart"
    assert (apart in sure.toolTip()) == bool(findings.verdict.possible_causes)
    made = verdict_odds_words(0.98, causes=True), verdict_odds_words(0.98, causes=False)
    assert [apart in said(item) for item in made] == [True, False]
