"""A watch step by step, without a window and without waiting: time is an argument."""

from __future__ import annotations

import os
import shutil
from pathlib import Path

import pytest

from analysis.captures.model import Step
from analysis.captures.reading import open_capture
from analysis.watching.gathered import Standing, judge_together, merged, write_together
from analysis.watching.watch import LONG_GROWING_S, Watch, again, anew, confirmed, step, with_profile
from tests.importing_page.tables import comma_table, swept
from tests.watching.tables import tables


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


def _saved(folder: Path, *tables: Path) -> None:
    there = len(list(folder.glob("*.csv")))
    for place, table in enumerate(tables, there):
        target = folder / f"{place:02d}.csv"
        shutil.copy(table, target)
        os.utime(target, (1e9 + place, 1e9 + place))


def _until_done(watch: Watch) -> Watch:
    watch = step(step(watch, 0.0), 1.0)
    while watch.ready:
        watch = step(watch, 2.0)
    return watch


def _steps(watch: Watch) -> list[Step | None]:
    found = []
    for path in watch.taken.values():
        with open_capture(path) as opened:
            found += [item.step for item in opened.capture.records]
    return found


def test_a_record_at_rest_is_no_wiggle_test_until_the_technician_says_so(tmp_path: Path) -> None:
    made, job = tables(tmp_path / "made", "W1041-rear-left-height.h5"), tmp_path / "job"
    job.mkdir()
    watch = step(Watch(job), 0.0)
    _saved(job, *made["ground"], *made["reference"], *made["sweep"])
    watch = _until_done(watch)
    _saved(job, made["hold"][0])
    watch = _until_done(watch)
    assert watch.standing.evidence.next.line == "Wiggle the harness"
    _saved(job, made["hold"][0])  # nobody wiggles; the recorder saves the resting arm once more
    watch = _until_done(watch)
    assert list(watch.unconfirmed.values()) == [Step.WIGGLE]
    assert Step.WIGGLE not in _steps(watch)
    assert watch.standing.evidence.next.line == "Wiggle the harness"
    said = confirmed(watch)
    assert not said.unconfirmed
    assert _steps(said)[-1] is Step.WIGGLE
    with open_capture(said.taken[said.last]) as opened:
        assert "step_guessed" not in opened.capture.records[0].attributes  # it was said, not guessed
    assert said.standing.evidence.next.line != "Wiggle the harness"


def test_files_that_are_ready_at_once_are_told_their_steps_as_if_they_came_one_by_one(tmp_path: Path) -> None:
    made = tables(tmp_path / "made", "W1041-rear-left-height.h5")
    found = []
    for name in ("one by one", "at once"):
        job = tmp_path / name
        job.mkdir()
        watch = step(Watch(job), 0.0)
        every = (*made["ground"], *made["reference"], *made["sweep"], made["hold"][0], made["hold"][0])
        for batch in [every] if name == "at once" else [(table,) for table in every]:
            _saved(job, *batch)
            watch = _until_done(watch)
        found.append((_steps(watch), list(watch.unconfirmed)))
    assert found[0] == found[1]
    assert Step.HOLD in found[0][0]


def test_another_profile_judges_what_was_gathered_anew(tmp_path: Path) -> None:
    comma_table(tmp_path / "1.csv", swept(2.0))
    watch = _until_done(Watch(tmp_path, take_present=True))
    assert watch.standing.findings is not None
    other = with_profile(watch, "pedal")
    assert other.standing.findings is not None
    assert other.standing.findings.profile != watch.standing.findings.profile
    assert with_profile(watch, "no such profile").failures


def test_what_is_to_be_measured_again_is_called_by_its_step(tmp_path: Path) -> None:
    samples = Path(__file__).resolve().parents[2] / "sample_captures"
    standing = judge_together([samples / "W1091-front-right-height.h5"], "a")
    assert standing.evidence.next.sentence == "Sweep 1: put the probe back and repeat."
    assert standing.findings is not None
    assert standing.findings.advice[0] == "Record 004: put the probe back and repeat."
