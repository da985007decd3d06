"""Seeded mutations of a file, opened in a process that may crash: it must not, nor hang."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

import pytest

from analysis.captures import variable_text
from analysis.captures.writing import write_capture
from analysis.errors import CaptureError
from tests.captures.examples import small_capture, write_plain

ROOT = Path(__file__).parents[2]


def mutate(path: Path, count: int, seed: int = 1) -> tuple[int, int]:
    """How many of the mutations opened, and how many were refused with a sentence."""
    done = subprocess.run(
        [sys.executable, "-m", "tests.captures.mutating", str(path), str(seed), str(count)],
        cwd=ROOT,
        capture_output=True,
        text=True,
        timeout=60,
        check=False,
    )
    assert done.returncode == 0, done.stderr
    opened, refused = done.stdout.split()
    return int(opened), int(refused)


def test_no_mutation_of_our_own_file_crashes_or_hangs(tmp_path: Path) -> None:
    write_capture(small_capture(100), tmp_path / "a.h5")
    opened, refused = mutate(tmp_path / "a.h5", 300)
    assert opened > 50
    assert refused > 50


def test_no_mutation_of_a_file_with_variable_texts_crashes_or_hangs(tmp_path: Path) -> None:
    opened, refused = mutate(write_plain(tmp_path / "a.h5"), 30)
    assert opened > 1
    assert refused > 1


def test_a_reader_of_texts_that_dies_is_told_as_damage(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    child = tmp_path / "child.py"
    child.write_text("import os; os.abort()")
    monkeypatch.setattr(variable_text, "_CHILD", child)
    with pytest.raises(CaptureError, match="damaged"):
        variable_text.fetch(tmp_path, [("/", "title")])


@pytest.mark.skipif(not sys.platform.startswith("linux"), reason="only Linux is known to end it in time")
def test_the_reader_of_texts_ends_itself_where_it_runs_in_circles() -> None:
    code = (
        "from analysis.captures import variable_text_child as child; child._limit(); exec('while True: pass')"
    )
    done = subprocess.run([sys.executable, "-c", code], cwd=ROOT, timeout=60, check=False)
    assert done.returncode < 0


def test_a_reader_of_texts_that_hangs_is_told_as_damage(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    child = tmp_path / "child.py"
    child.write_text("import time; time.sleep(60)")
    monkeypatch.setattr(variable_text, "_CHILD", child)
    monkeypatch.setattr(variable_text, "_TIMEOUT_S", 0.2)
    with pytest.raises(CaptureError, match="damaged"):
        variable_text.fetch(tmp_path, [("/", "title")])
