"""Where a review lies whose capture's folder takes none: on this PC, and found again in every case."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

from analysis.captures import layout
from analysis.captures.writing import write_capture
from analysis.review.model import PointMarker, with_marker
from analysis.review.sidecar import read_sidecar, write_aside, write_sidecar, write_spare
from tests.app.fakes import worn_capture

POINT = PointMarker("a", "004", 1.25, "here", "a note")


@pytest.fixture
def capture_path(tmp_path: Path) -> Path:
    path = tmp_path / "worn.h5"
    write_capture(worn_capture(), path)
    return path


def test_where_the_folder_takes_no_file_the_review_is_found_in_the_spare_one(
    capture_path: Path, tmp_path: Path
) -> None:
    spare = tmp_path / "own"
    first = read_sidecar(capture_path, spare_folder=spare)
    assert not spare.exists()  # looking makes no folder
    assert first.spare is not None
    spare.mkdir()
    review = with_marker(first.review, POINT)
    write_spare(first, first.spare, review)
    again = read_sidecar(capture_path, spare_folder=spare)
    assert again.review == review
    assert read_sidecar(capture_path).review.markers == ()
    # What somebody else put beside the capture comes first, and the other one is told.
    write_sidecar(read_sidecar(capture_path), with_marker(first.review, replace(POINT, label="beside")))
    found = read_sidecar(capture_path, spare_folder=spare)
    assert found.review.markers[0].label == "beside"
    assert found.other == first.spare


def test_a_folder_that_takes_no_more_reviews_leaves_the_later_one_in_the_spare_one(
    capture_path: Path, tmp_path: Path
) -> None:
    empty = read_sidecar(capture_path, spare_folder=tmp_path / "own")
    first = write_sidecar(empty, with_marker(empty.review, POINT))
    second = with_marker(first.review, replace(POINT, marker_id="b", label="2"))
    assert first.spare is not None
    write_spare(first, first.spare, second)

    again = read_sidecar(capture_path, spare_folder=tmp_path / "own")
    assert again.review == second
    # As soon as its folder takes it, the review lies beside its capture again, and there alone.
    third = with_marker(second, replace(POINT, marker_id="c", label="3"))
    write_sidecar(again, third)
    assert read_sidecar(capture_path).review == third
    assert list((tmp_path / "own").iterdir()) == []
    assert read_sidecar(capture_path, spare_folder=tmp_path / "own").other is None


def test_a_review_in_the_spare_folder_does_not_hide_what_another_program_wrote_beside_the_capture(
    capture_path: Path, tmp_path: Path
) -> None:
    empty = read_sidecar(capture_path, spare_folder=tmp_path / "own")
    first = write_sidecar(empty, with_marker(empty.review, POINT))
    assert first.spare is not None
    mine = write_spare(
        first, first.spare, with_marker(first.review, replace(POINT, marker_id="b", label="mine"))
    )
    theirs = read_sidecar(capture_path)
    write_sidecar(theirs, with_marker(theirs.review, replace(POINT, marker_id="c", label="theirs")))

    found = read_sidecar(capture_path, spare_folder=tmp_path / "own")
    assert [item.label for item in found.review.markers] == [POINT.label, "theirs"]
    assert found.other == mine.path
    assert mine.path.is_file()


def test_a_damaged_review_in_a_folder_that_takes_none_stays_and_the_new_one_is_found_again(
    capture_path: Path, tmp_path: Path
) -> None:
    beside = layout.review_path(capture_path)
    beside.write_bytes(b"{")
    damaged = read_sidecar(capture_path, spare_folder=tmp_path / "own")
    assert damaged.spare is not None
    written = write_spare(damaged, damaged.spare, with_marker(damaged.review, POINT))

    again = read_sidecar(capture_path, spare_folder=tmp_path / "own")
    assert (again.review, again.path) == (written.review, written.path)
    write_sidecar(again, with_marker(again.review, replace(POINT, marker_id="b")))
    assert beside.read_bytes() == b"{"


def test_what_is_put_aside_goes_into_the_spare_folder_where_the_captures_takes_none(
    capture_path: Path, tmp_path: Path
) -> None:
    long = capture_path.rename(capture_path.with_name(f"{'c' * 215}.h5"))
    found = read_sidecar(long, spare_folder=tmp_path / "own")
    aside = write_aside(found, with_marker(found.review, POINT))
    assert aside.parent == tmp_path / "own"
    assert '"label": "here"' in aside.read_text("utf-8")
