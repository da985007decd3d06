"""The guard in `tests/conftest.py` notices what a test leaves beside the samples."""

from __future__ import annotations

from pathlib import Path

from tests.conftest import state_of


def test_a_new_file_and_a_changed_one_are_noticed(tmp_path: Path) -> None:
    capture = tmp_path / "worn.h5"
    capture.write_bytes(b"one")
    before = state_of(tmp_path)
    assert state_of(tmp_path) == before
    review = tmp_path / "worn.review.json"
    review.write_text("{}", encoding="utf-8")
    assert state_of(tmp_path) != before
    review.unlink()
    capture.write_bytes(b"another")
    assert state_of(tmp_path) != before
