"""Export in the window: samples, findings and pictures, whole or not at all."""

from __future__ import annotations

import csv
import json
from dataclasses import replace
from pathlib import Path
from xml.etree import ElementTree

import numpy as np
import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QImage
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QFileDialog
from pytestqt.qtbot import QtBot
from scipy import io

from analysis.captures.replacing import replaced_at_the_end
from analysis.errors import Cancelled
from analysis.exporting import samples
from analysis.intervals import Interval
from analysis.progress import Tick
from app.exporting import desk
from app.main_window import Window
from tests.app.conftest import Bench
from tests.app.fakes import FakeOpened, worn_capture, worn_findings

HOSTILE = '</text><script>alert(1)</script> & "x" \x07 =1+1'


@pytest.fixture
def choose(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> list[str]:
    """Names that the file dialog answers with, in turn."""
    names: list[str] = []
    monkeypatch.setattr(
        QFileDialog, "getSaveFileName", lambda *_a, **_k: (str(tmp_path / names.pop(0)), "CSV (*.csv)")
    )
    return names


def export(qtbot: QtBot, window: Window, action: str) -> None:
    window.actions_by_name[action].trigger()
    qtbot.waitUntil(lambda: not window.jobs.running(desk.EXPORTING))


@pytest.mark.parametrize("ending", ["csv", "parquet", "mat", "npz"])
def test_the_shown_record_leaves_in_every_format_and_nothing_half_written(
    qtbot: QtBot, review: Window, tmp_path: Path, choose: list[str], ending: str
) -> None:
    choose.append(f"a.{ending}")
    export(qtbot, review, "export_record")
    assert [item.name for item in tmp_path.iterdir()] == [f"a.{ending}"]
    assert (tmp_path / f"a.{ending}").stat().st_size > 1000
    assert f"a.{ending}" in review.statusBar().currentMessage()


def test_only_what_is_shown_leaves_and_its_volts_are_those_of_the_record(
    qtbot: QtBot, review: Window, tmp_path: Path, choose: list[str]
) -> None:
    choose.append("a.mat")
    review.focus.show_window(Interval(0.5, 0.75))
    record = review.focus.record
    assert record is not None
    export(qtbot, review, "export_shown")
    found = io.loadmat(tmp_path / "a.mat")
    time_s = found["time"].ravel()
    assert time_s[0] >= 0.5 - 1e-9
    assert time_s[-1] < 0.75
    first = record.index_at(float(time_s[0]))
    np.testing.assert_array_equal(
        found["signal"].ravel(), record.channels[0].volts(first, first + len(time_s))
    )


def test_a_marked_span_leaves_once_one_is_chosen(
    qtbot: QtBot, review: Window, tmp_path: Path, choose: list[str]
) -> None:
    assert not review.actions_by_name["export_span"].isEnabled()
    review.desk.markers.mark_time(Interval(0.1, 0.2))
    assert review.actions_by_name["export_span"].isEnabled()
    choose.append("a.csv")
    export(qtbot, review, "export_span")
    with (tmp_path / "a.csv").open(newline="", encoding="utf-8") as file:
        rows = list(csv.reader(file))
    assert rows[0][0] == "time [s]"
    assert float(rows[1][0]) == pytest.approx(0.1, abs=1e-3)
    assert float(rows[-1][0]) == pytest.approx(0.2, abs=1e-3)


@pytest.mark.parametrize("ending", ["json", "csv"])
def test_findings_leave_as_json_and_as_a_table_that_runs_nothing(
    qtbot: QtBot, review: Window, tmp_path: Path, choose: list[str], ending: str
) -> None:
    capture = review.session.capture
    assert capture is not None
    advised = replace(worn_findings(capture), advice=("=1+1",))
    review.session.show(FakeOpened(capture), advised)
    choose.append(f"a.{ending}")
    export(qtbot, review, "export_findings")
    text = (tmp_path / f"a.{ending}").read_text(encoding="utf-8")
    if ending == "json":
        assert json.loads(text)["advice"] == ["=1+1"]
    else:
        cells = [cell for row in csv.reader(text.splitlines()) for cell in row]
        assert "'=1+1" in cells
        assert "=1+1" not in cells


def test_a_file_that_exists_is_not_replaced_and_an_unknown_ending_is_told(
    qtbot: QtBot, review: Window, tmp_path: Path, choose: list[str]
) -> None:
    (tmp_path / "a.csv").write_text("mine")
    choose += ["a.csv", "a.docx", "a.txt"]
    for action, word in (
        ("export_record", "exists already"),
        ("export_record", ".docx"),
        ("picture_trace", "choose .png or .svg"),
    ):
        export(qtbot, review, action)
        assert word in review.page.problem_bar.text
    assert {item.name for item in tmp_path.iterdir()} == {"a.csv"}
    assert (tmp_path / "a.csv").read_text() == "mine"


def test_a_stopped_export_leaves_nothing_behind(
    qtbot: QtBot, review: Window, tmp_path: Path, choose: list[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    """The work is held at its first tick until it has been stopped."""
    stopped: list[bool] = []

    def held(capture: object, target: Path, *, tick: Tick, **_rest: object) -> None:
        with replaced_at_the_end(target) as temporary:
            temporary.write_text("half")
            try:
                while True:
                    tick(0.5)
            except Cancelled:
                stopped.append(True)
                raise

    monkeypatch.setattr(samples, "export_samples", held)
    choose.append("a.csv")
    review.actions_by_name["export_record"].trigger()
    qtbot.waitUntil(lambda: any(tmp_path.iterdir()))
    QTest.keyClick(review, Qt.Key.Key_Period, Qt.KeyboardModifier.ControlModifier)
    qtbot.waitUntil(lambda: bool(stopped) and not review.jobs.busy())
    assert list(tmp_path.iterdir()) == []


@pytest.mark.parametrize("theme", ["light", "dark"])
@pytest.mark.parametrize("view", ["trace", "track", "overview"])
def test_a_view_becomes_a_picture_whose_words_are_text_and_never_markup(
    qtbot: QtBot, review: Window, tmp_path: Path, choose: list[str], theme: str, view: str
) -> None:
    review.settings.colours = theme
    review.apply_colours()
    capture = replace(worn_capture(), title=HOSTILE)
    review.session.show(FakeOpened(capture), worn_findings(capture))
    choose += ["a.svg", "a.png"]
    for _ in range(2):
        export(qtbot, review, f"picture_{view}")
    root = ElementTree.fromstring((tmp_path / "a.svg").read_bytes())
    tags = {item.tag.rpartition("}")[2] for item in root.iter()}
    assert "script" not in tags
    said = "".join("".join(item.itertext()) for item in root.iter() if item.tag.endswith("}text"))
    assert "</text><script>alert(1)</script>" in said
    image = QImage(str(tmp_path / "a.png"))
    assert image.width() > 1000
    grounds = {"light": 0.9, "dark": 0.2}
    assert abs(image.pixelColor(4, 4).lightnessF() - grounds[theme]) < 0.15


def test_pictures_on_white_are_white_and_the_window_keeps_its_colours(
    qtbot: QtBot, review: Window, tmp_path: Path, choose: list[str]
) -> None:
    review.settings.colours = "dark"
    review.apply_colours()
    before = review.grab().toImage()
    choose.append("a.png")
    review.actions_by_name["white_ground"].trigger()
    export(qtbot, review, "picture_track")
    image = QImage(str(tmp_path / "a.png"))
    assert image.pixelColor(4, 4).name() == "#ffffff"
    drawn = [image.pixelColor(x, y).lightnessF() for x in range(9, 1400, 60) for y in range(9, 570, 30)]
    assert np.median(drawn) > 0.9
    review.statusBar().clearMessage()
    after = review.grab().toImage()
    middle = (before.width() // 2, before.height() // 2)
    assert after.pixelColor(*middle) == before.pixelColor(*middle)


def test_compare_gives_both_traces_and_the_track_of_both(
    qtbot: QtBot, review: Window, bench: Bench, tmp_path: Path, choose: list[str]
) -> None:
    review.compare.open_file(Path("other.h5"))
    qtbot.waitUntil(lambda: review.compare.comparison is not None, timeout=20_000)
    choose += ["a.svg", "b.svg"]
    export(qtbot, review, "picture_trace")
    export(qtbot, review, "picture_track")
    heights = [
        float(ElementTree.fromstring((tmp_path / f"{name}.svg").read_bytes()).get("viewBox", "").split()[3])
        for name in "ab"
    ]
    assert heights[0] > 1.5 * review.compare.page.traces[0].plots.height()
    assert heights[1] > review.compare.page.track.plots.height()


def test_the_markers_are_saved_as_csv_where_it_is_asked(
    qtbot: QtBot, review: Window, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    window = review
    window.desk.markers.mark_moment(3.0)
    qtbot.waitUntil(lambda: bool(window.page.markers.readings.rows))
    target = tmp_path / "markers.csv"
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_: (str(target), ""))
    window.actions_by_name["save_csv"].trigger()
    assert target.read_bytes().startswith(b"\xef\xbb\xbfMarker,Kind,")
    assert target.read_bytes().count(b"\r\n") == 4
    missing = tmp_path / "no such folder" / "markers.csv"
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_: (str(missing), ""))
    window.actions_by_name["save_csv"].trigger()
    assert "no such folder" in window.page.problem_bar.text
