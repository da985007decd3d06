"""What a killed saving left behind is cleared away by a later one, and nothing else is."""

from __future__ import annotations

import os
from pathlib import Path

import pytest

from analysis.captures.replacing import replaced_at_the_end
from analysis.errors import CaptureError

STALE = f".a.h5.{'0' * 32}.part"


def save(target: Path) -> None:
    with replaced_at_the_end(target) as temporary:
        temporary.write_text("new")


def left(folder: Path, name: str, age_s: float) -> Path:
    path = folder / name
    path.write_text("half")
    os.utime(path, (path.stat().st_mtime - age_s,) * 2)
    return path


def test_what_a_killed_saving_left_is_gone_after_the_next_one(tmp_path: Path) -> None:
    left(tmp_path, STALE, 7200.0)
    save(tmp_path / "a.h5")
    assert [path.name for path in tmp_path.iterdir()] == ["a.h5"]


@pytest.mark.parametrize(
    ("name", "age_s"),
    [(STALE, 60.0), (STALE.replace("a.h5", "b.h5"), 7200.0), (".a.h5.notes.part", 7200.0)],
    ids=["of a saving that may still run", "of another file", "of somebody else"],
)
def test_nothing_else_is_cleared_away(tmp_path: Path, name: str, age_s: float) -> None:
    kept = left(tmp_path, name, age_s)
    save(tmp_path / "a.h5")
    assert kept.exists()


@pytest.mark.parametrize("call", ["fsync", "open"])
def test_a_failure_of_the_disk_leaves_the_old_file_and_no_other(
    tmp_path: Path, call: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    target = tmp_path / "a.h5"
    target.write_text("old")

    def fail(*arguments: object) -> int:
        raise OSError(28, "no space left")

    with monkeypatch.context() as patched:
        patched.setattr(os, call, fail)
        with pytest.raises(CaptureError, match="free space"):
            save(target)
    assert target.read_text() == "old"
    assert [path.name for path in tmp_path.iterdir()] == ["a.h5"]
