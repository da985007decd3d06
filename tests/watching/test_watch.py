"""A watch step by step, without a window and without waiting: time is an argument."""

from __future__ import annotations

from pathlib import Path

import pytest

from analysis.captures.reading import open_capture
from analysis.watching.gathered import Standing, judge_together, merged, write_together
from analysis.watching.watch import LONG_GROWING_S, Watch, again, anew, step
from tests.importing_page.tables import comma_table, swept


def test_what_lay_there_before_is_left_alone_unless_asked_for(tmp_path: Path) -> None:
    comma_table(tmp_path / "old.csv", swept(2.0))
    watch = step(step(Watch(tmp_path), 0.0), 1.0)
    assert not watch.taken
    asked = step(step(Watch(tmp_path, take_present=True), 0.0), 1.0)
    assert list(asked.taken) == ["old.csv"]


def test_two_files_are_judged_as_one(tmp_path: Path) -> None:
    watch = step(Watch(tmp_path), 0.0)
    for place in (1, 2):
        comma_table(tmp_path / f"{place}.csv", swept(2.0, seed=place))
    for now_s in (1.0, 2.0, 3.0):
        watch = step(watch, now_s)
    assert list(watch.taken) == ["1.csv", "2.csv"]
    paths = list(watch.taken.values())
    alone, both = judge_together(paths[:1], "a"), watch.standing
    assert both.evidence.stretches[5].crossings > alone.evidence.stretches[5].crossings
    whole = write_together(paths, tmp_path / "whole.h5", "both")
    with open_capture(whole) as opened:
        assert [item.name for item in opened.capture.records] == ["001", "002"]


def test_a_file_that_goes_on_growing_is_told_and_never_taken(tmp_path: Path) -> None:
    watch = step(Watch(tmp_path), 0.0)
    file = tmp_path / "stream.csv"
    for now_s in (1.0, 2.0, 2.0 + LONG_GROWING_S):
        with file.open("a") as open_file:
            open_file.write("1,2\n")
        watch = step(watch, now_s)
    assert watch.endless == ("stream.csv",)
    assert not watch.taken
    assert not watch.failures


def test_a_file_that_fails_stays_and_is_tried_again_only_when_asked(tmp_path: Path) -> None:
    watch = step(Watch(tmp_path), 0.0)
    (tmp_path / "bad.csv").write_text("nothing here\n")
    for now_s in (1.0, 2.0, 3.0):
        watch = step(watch, now_s)
    assert [item.name for item in watch.failures] == ["bad.csv"]
    assert [item.name for item in tmp_path.iterdir()] == ["bad.csv"]
    assert not step(again(watch), 4.0).ready
    assert step(again(watch), 4.0).failures
    assert not step(step(anew(watch), 4.0), 5.0).failures


def test_a_lost_folder_is_told_and_found_again(tmp_path: Path) -> None:
    folder = tmp_path / "job"
    lost = step(Watch(folder), 0.0)
    assert "cannot be read" in lost.trouble
    folder.mkdir()
    assert not step(lost, 1.0).trouble


def test_without_files_nothing_is_known() -> None:
    assert judge_together([], "") == Standing()
    with pytest.raises(ValueError, match="must not be empty"):
        merged([], "")
