from __future__ import annotations

import threading
from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QTimer
from pytestqt.qtbot import QtBot

from analysis.captures import layout
from analysis.captures.writing import write_capture
from analysis.review.model import PointMarker, Review, with_marker
from analysis.review.sidecar import Sidecar, read_sidecar, write_sidecar
from app.jobs import Jobs
from app.review.keeper import ReviewKeeper
from app.review.saving import Saved, saved
from tests.app.fakes import worn_capture

POINT = PointMarker("a", "004", 1.25)


@pytest.fixture
def path(tmp_path: Path) -> Path:
    write_capture(worn_capture(), tmp_path / "worn.h5")
    return tmp_path / "worn.h5"


@pytest.fixture
def jobs(qtbot: QtBot) -> Iterator[Jobs]:
    made = Jobs()
    yield made
    assert made.shut_down()


@pytest.fixture
def keeper(jobs: Jobs, path: Path) -> Iterator[ReviewKeeper]:
    made = ReviewKeeper(jobs)
    made.take(read_sidecar(path))
    yield made
    made.close()
    assert not any(timer.isActive() for timer in made.findChildren(QTimer))


def test_a_change_is_in_the_file_within_two_seconds(qtbot: QtBot, keeper: ReviewKeeper, path: Path) -> None:
    keeper.change("place a marker", with_marker(keeper.review, POINT))
    qtbot.waitUntil(lambda: not keeper.unsaved, timeout=2000)
    assert read_sidecar(path).review.markers == (POINT,)


class Disk:
    """Stands in for the disk: notes what is written by which thread, and may take its time."""

    def __init__(self) -> None:
        self.written: list[str] = []
        self.threads: list[threading.Thread] = []
        self.begun, self.go_on = threading.Event(), threading.Event()
        self.go_on.set()

    def saved(self, sidecar: Sidecar, review: Review, *, over_changes: bool = False) -> Saved:
        self.threads.append(threading.current_thread())
        self.begun.set()
        assert self.go_on.wait(10.0)
        self.written.append(" ".join(item.marker_id for item in review.markers))
        return saved(sidecar, review, over_changes=over_changes)


@pytest.fixture
def disk(monkeypatch: pytest.MonkeyPatch) -> Disk:
    made = Disk()
    monkeypatch.setattr("app.review.keeper.saved", made.saved)
    return made


def test_it_is_saved_by_itself_off_the_window_s_thread(
    qtbot: QtBot, keeper: ReviewKeeper, disk: Disk, path: Path
) -> None:
    keeper.change("place a marker", with_marker(keeper.review, POINT))
    qtbot.waitUntil(lambda: not keeper.unsaved, timeout=3000)
    assert threading.main_thread() not in disk.threads


def test_what_is_edited_while_a_slow_disk_writes_is_written_after_it(
    qtbot: QtBot, keeper: ReviewKeeper, disk: Disk, path: Path
) -> None:
    told: list[str] = []
    keeper.problem.connect(told.append)
    disk.go_on.clear()
    keeper.change("place a marker", with_marker(keeper.review, POINT))
    qtbot.waitUntil(disk.begun.is_set, timeout=3000)
    keeper.change("place a marker", with_marker(keeper.review, PointMarker("b", "004", 2.0)))
    keeper.look()  # as the watcher of the folder asks while our own file changes
    disk.go_on.set()
    qtbot.waitUntil(lambda: disk.written == ["a", "a b"] and not keeper.unsaved, timeout=5000)
    assert [item.marker_id for item in read_sidecar(path).review.markers] == ["a", "b"]
    assert told == []


def test_closing_waits_for_a_write_that_is_under_way_and_writes_the_rest(
    qtbot: QtBot, keeper: ReviewKeeper, disk: Disk, path: Path
) -> None:
    disk.go_on.clear()
    keeper.change("place a marker", with_marker(keeper.review, POINT))
    qtbot.waitUntil(disk.begun.is_set, timeout=3000)
    keeper.change("place a marker", with_marker(keeper.review, PointMarker("b", "004", 2.0)))
    threading.Timer(0.1, disk.go_on.set).start()
    keeper.close()
    assert disk.written == ["a", "a b"]
    assert [item.marker_id for item in read_sidecar(path).review.markers] == ["a", "b"]


def test_opening_and_closing_writes_nothing(keeper: ReviewKeeper, path: Path) -> None:
    keeper.close()
    assert not layout.review_path(path).exists()


def test_a_change_is_undone_and_done_again_and_saved_on_closing(keeper: ReviewKeeper, path: Path) -> None:
    keeper.change("place a marker", with_marker(keeper.review, POINT))
    keeper.stack.undo()
    assert keeper.review.markers == ()
    keeper.stack.redo()
    keeper.close()
    assert read_sidecar(path).review.markers == (POINT,)


def test_values_that_follow_each_other_in_one_field_are_one_step_and_none_where_they_end_as_they_began(
    keeper: ReviewKeeper,
) -> None:
    before, one = keeper.review, with_marker(keeper.review, POINT)
    other = with_marker(before, PointMarker("a", "004", 2.0))
    keeper.change("fill in", one, "here")
    keeper.change("fill in", other, "here")
    assert keeper.stack.count() == 1
    keeper.stack.undo()
    assert keeper.review == before
    keeper.stack.redo()
    assert keeper.review == other
    keeper.change("fill in", one, "there")
    assert keeper.stack.count() == 2
    keeper.change("fill in", other, "there")
    assert keeper.stack.count() == 1
    assert keeper.review == other


def test_where_another_program_wrote_it_is_told_once_and_nothing_is_lost(
    keeper: ReviewKeeper, path: Path
) -> None:
    told: list[str] = []
    keeper.problem.connect(told.append)
    other = read_sidecar(path)
    write_sidecar(other, with_marker(other.review, PointMarker("b", "004", 2.0)))
    keeper.change("place a marker", with_marker(keeper.review, POINT))
    keeper.save()
    keeper.save()
    assert len(told) == 1
    assert "nother window or program" in told[0]
    keeper.close()
    assert read_sidecar(path).review.markers[0].marker_id == "b"
    assert '"a"' in (path.parent / "worn.review.kept-1.json").read_text("utf-8")


def test_without_a_file_the_review_is_kept_in_memory(keeper: ReviewKeeper) -> None:
    keeper.take(None)
    assert keeper.review == Review()
    keeper.change("place a marker", with_marker(keeper.review, POINT))
    keeper.save()
    assert keeper.review.markers == (POINT,)
