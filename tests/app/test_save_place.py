"""Where a dialog offers to save what is made from a capture."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import QStandardPaths

from app import resources
from app.save_place import folder_to_save


def test_the_report_of_a_sample_is_offered_to_the_documents_not_to_the_program(
    monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    monkeypatch.setattr(QStandardPaths, "writableLocation", lambda _kind: str(tmp_path))
    sample = resources.sample_captures()[0]
    assert folder_to_save(sample, Path.cwd()) == tmp_path
    monkeypatch.setattr(QStandardPaths, "writableLocation", lambda _kind: str(tmp_path / "none"))
    assert folder_to_save(sample, Path.cwd()) == Path.home()


def test_a_capture_of_ones_own_is_saved_beside(tmp_path: Path) -> None:
    assert folder_to_save(tmp_path / "mine.h5", Path.cwd()) == tmp_path
    assert folder_to_save(None, tmp_path) == tmp_path
