"""Where a review went that was put aside; and which of two holds is asked until it is answered."""

from __future__ import annotations

from pathlib import Path

import pytest
from pytestqt.qtbot import QtBot

from analysis.captures import layout
from app.main_window import Window
from tests.app.visits import Make, labels, make, opened, path, theirs, tools_of

__all__ = ["make", "path"]  # windows that read and write real files, and a capture


def passing(window: Window) -> str:
    """What the status line says in passing."""
    return window.statusBar().currentMessage()


def in_conflict(qtbot: QtBot, window: Window, path: Path) -> None:
    """Another program writes the review while something here is unsaved."""
    opened(qtbot, window, path)
    theirs(path)
    window.desk.markers.mark_moment(3.0)
    window.desk.keeper.save()


@pytest.mark.parametrize(
    ("answer", "said"),
    [
        ("keep_own", "What lay in the place of this review was kept as worn.review.kept-1.json"),
        ("take_other", "This review was kept as worn.review.kept-1.json"),
    ],
)
def test_whichever_review_is_taken_the_name_of_the_other_one_is_told(
    qtbot: QtBot, make: Make, path: Path, answer: str, said: str
) -> None:
    window = make()
    in_conflict(qtbot, window, path)
    window.actions_by_name[answer].trigger()
    assert passing(window) == said
    assert path.with_name("worn.review.kept-1.json").exists()


def test_where_a_damaged_review_is_kept_is_told_when_the_new_one_is_saved(
    qtbot: QtBot, make: Make, path: Path
) -> None:
    layout.review_path(path).write_bytes(b"{")
    window = opened(qtbot, make(), path)
    window.desk.markers.mark_moment(3.0)
    qtbot.waitUntil(lambda: passing(window).endswith("was kept as worn.review.kept-1.json"))
    window.desk.markers.mark_moment(4.0)
    window.statusBar().clearMessage()
    window.desk.keeper.save()
    assert passing(window) == ""  # told once


def test_the_question_which_review_holds_stays_when_the_capture_changes_too(
    qtbot: QtBot, make: Make, path: Path
) -> None:
    window = make()
    in_conflict(qtbot, window, path)
    with path.open("ab") as written:
        written.write(b"more")
    qtbot.waitUntil(lambda: "was changed or taken away" in window.page.problem_bar.text)
    assert "another window or program changed the review" in window.page.problem_bar.text.lower()
    tools_of(window)["Take the other review"].click()
    assert labels(window) == ["theirs"]


def test_a_copy_that_is_saved_elsewhere_takes_nothing_from_the_place_where_the_review_is_found_again(
    qtbot: QtBot, make: Make, path: Path, tmp_path: Path
) -> None:
    window = opened(qtbot, make(), path)
    window.desk.markers.mark_moment(3.0)
    there = tmp_path / "mine.review.json"
    window.keeper.save_elsewhere(there)
    assert passing(window) == f"A copy of the review was saved: {there}"
    assert there.read_bytes() == layout.review_path(path).read_bytes()
    window.desk.markers.mark_moment(4.0)
    window.close()
    assert labels(opened(qtbot, make(), path)) == ["1", "2"]


def test_where_a_copy_is_saved_what_lay_there_keeps_its_bytes(
    qtbot: QtBot, make: Make, path: Path, tmp_path: Path
) -> None:
    window = opened(qtbot, make(), path)
    taken = tmp_path / "taken.review.json"
    taken.write_text("a shopping list")
    window.keeper.save_elsewhere(taken)
    assert passing(window) == "What lay in the place of this review was kept as taken.review.kept-1.json"
    assert taken.with_name("taken.review.kept-1.json").read_text() == "a shopping list"
