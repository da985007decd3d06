"""The drop of a point marker: in the list and the readings, for a screen reader and other programs."""

from __future__ import annotations

import re
from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from analysis.intervals import Interval
from analysis.reports.quantities import reading as in_report
from analysis.review.readings import PointReading
from analysis.signals.drop import Drop
from analysis.signals.measurement import Reading
from app.main_window import Window
from app.review.marker_rows import brief, briefer
from app.review.marker_words import grid, size
from tests.app.conftest import Bench
from tests.app.fakes import RATE_HZ, worn_findings
from tests.app.test_marker_list import copied, deepest, read, row, signal


def test_a_point_in_a_drop_is_listed_by_how_deep_the_drop_is(qtbot: QtBot, review: Window) -> None:
    time_s, drop_v = deepest()
    assert drop_v > 0.5
    review.desk.markers.mark_moment(time_s)
    read(qtbot, review)
    what, figure, sign, spread, unit = row(review).reads.split()
    assert (what, sign, unit) == ("drop", "±", "V")
    assert len(figure.partition(".")[2]) == len(spread.partition(".")[2])
    # Ground and reference of the record, 0.013 V and 5.003 V, instead of the nought and 5 V it was made with.
    assert float(figure) == pytest.approx(drop_v, abs=0.015)
    assert 0.0 < float(spread) < 0.1
    shown = dict(review.page.markers.readings.rows)
    told = shown["Drop"][0]
    assert told == f"{figure} ± {spread} V"
    assert re.fullmatch(r"\d\.\d+ ± \d\.\d+ V", shown["Should read"][0])
    table, grid = review.page.markers.table.model(), review.page.markers.grid.model()
    role = Qt.ItemDataRole.AccessibleTextRole
    assert table.index(0, 2).data(role).endswith(f"drop {figure} ± {spread} V")
    assert any(grid.index(line, 0).data(role).endswith(f"Drop: {told}") for line in range(grid.rowCount()))


def test_a_drop_that_nobody_can_tell_is_said_to_be_so_and_no_number_stands_for_it(
    qtbot: QtBot, window: Window, bench: Bench
) -> None:
    elsewhere = replace(worn_findings().bands[0], travel=Interval(60.0, 64.0))
    bench.findings = lambda capture, tick: replace(worn_findings(capture, tick), bands=(elsewhere,))
    with qtbot.waitSignal(window.session.findings_changed):
        window.open_file(Path("worn.h5"))
    time_s, drop_v = deepest()
    window.desk.markers.mark_moment(time_s)
    read(qtbot, window)
    level_v = float(signal().volts(round(time_s * RATE_HZ), round(time_s * RATE_HZ) + 1)[0])
    assert drop_v > 0.5
    assert row(window).reads == f"{level_v:.3f} V"
    shown = window.page.markers.readings
    assert dict(shown.rows)["Drop"] == ("cannot be told",)
    assert "within a found band" in shown.tip
    window.actions_by_name["copy_csv"].trigger()
    line = copied()[0]
    assert line["Drop of the signal (negative: rise) / V"] == ""
    assert line["± of the drop (k = 2) / V"] == line["What it should read / V"] == ""
    assert "Should read" not in dict(shown.rows)
    assert line["Drop in words"] == "cannot be told"


def test_a_point_where_the_signal_rose_is_listed_by_how_far() -> None:
    reading = PointReading(1.0, ((signal(), Reading(4.547, 0.0, 0.01, True)),))
    rise = Drop(Reading(-1.4312, 0.03, 0.0, True), Reading(3.1158, 0.03, 0.01, True))
    assert brief(reading, rise) == "rise 1.431 ± 0.060 V"
    shown = dict(grid(reading, drop=rise).rows)
    assert (shown["Rise"], shown["Should read"]) == (("1.431 ± 0.060 V",), ("3.116 ± 0.063 V",))
    assert briefer(rise) == "↑ 1.431 ± 0.060 V"
    assert "Drop" not in dict(grid(reading, drop=rise).rows)


@pytest.mark.parametrize(
    ("drop_v", "spread_v", "said"),
    [
        (1.4312, 0.0304, "1.431 ± 0.030 V"),
        (1.4312, 0.012, "1.431 ± 0.012 V"),
        (1.4312, 0.4, "1.43 ± 0.40 V"),
        (0.1202, 0.02, "0.120 ± 0.020 V"),
    ],
)
def test_a_drop_is_said_in_the_window_in_the_digits_of_the_report(
    drop_v: float, spread_v: float, said: str
) -> None:
    drop = Drop(Reading(drop_v, 0.5 * spread_v, 0.0, True), Reading(3.1, 0.0, 0.0, True))
    assert size(drop) == said
    assert in_report(drop_v, spread_v, "V") == said
