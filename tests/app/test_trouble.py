from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest

from analysis.errors import CaptureError
from app import trouble


@pytest.fixture
def log(tmp_path: Path) -> Iterator[Path]:
    trouble.start_log(tmp_path)
    yield tmp_path / "wornband.log"
    trouble.stop_log()


def test_an_expected_failure_speaks_for_itself(log: Path) -> None:
    error = CaptureError("the file is cut short", "save it again")
    assert trouble.sentence(error, "Opening a.h5") == "The file is cut short; save it again."
    assert not log.exists()


def test_the_unforeseen_says_what_was_being_done_and_where_it_was_written(log: Path) -> None:
    try:
        _ = [][0]
    except IndexError as error:
        said = trouble.sentence(error, "Examining the capture")
    assert "Examining the capture" in said
    assert "IndexError" in said
    assert str(log) in said
    assert "Traceback" in log.read_text(encoding="utf-8")


def test_a_folder_that_cannot_be_written_is_done_without(tmp_path: Path) -> None:
    blocked = tmp_path / "file"
    blocked.write_text("")
    trouble.start_log(blocked / "below")
    assert trouble.log_file() is None
