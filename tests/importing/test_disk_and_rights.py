"""A disk that fills and folders without rights, for real: one sentence, and nothing half-written.

Each is tried in a process of its own, which has a limit on the size of files, or a small disk, or gives up
the superuser's rights.
"""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
import tempfile
from collections.abc import Iterator
from pathlib import Path

import numpy as np
import pytest

from analysis.captures.writing import write_capture
from tests.captures.examples import small_capture

pytestmark = pytest.mark.skipif(os.name != "posix", reason="limits and users are those of POSIX systems")

ROWS = 40_000
NOBODY = 65_534  # the user without rights on Linux systems

_CHILD = """
import os, resource, sys
from pathlib import Path
from analysis.captures.reading import open_capture
from analysis.errors import WornbandError
from analysis.exporting.samples import export_samples
from analysis.importing.bring_in import import_capture
# What is loaded when first needed: the other user may have no right to read this Python.
import mmap, pyarrow.csv, pyarrow.parquet, scipy.io
what, source, target = sys.argv[1], Path(sys.argv[2]), Path(sys.argv[3])
limit, user = int(sys.argv[4]), int(sys.argv[5])
if limit:
    resource.setrlimit(resource.RLIMIT_FSIZE, (limit, limit))
if user and os.geteuid() == 0:
    os.setgroups([])
    os.setgid(user)
    os.setuid(user)
try:
    if what == "import":
        import_capture([source], target)
    else:
        with open_capture(source) as opened:
            export_samples(opened.capture, target, record="002")
except WornbandError as error:
    print(error)
else:
    print("done")
"""


def _said(what: str, source: Path, target: Path, *, limit: int = 0, user: int = 0) -> str:
    arguments = [what, str(source), str(target), str(limit), str(user)]
    done = subprocess.run(
        [sys.executable, "-c", _CHILD, *arguments], capture_output=True, text=True, check=False
    )
    assert done.returncode == 0, done.stderr
    (line,) = done.stdout.splitlines()
    return line


@pytest.fixture
def open_folder() -> Iterator[Path]:
    """A folder that every user may enter, which pytest's own are not."""
    folder = Path(tempfile.mkdtemp(prefix="wornband-test-"))
    folder.chmod(0o755)
    yield folder
    shutil.rmtree(folder)


def _table(folder: Path) -> Path:
    source = folder / "source.npy"
    time_s = np.arange(ROWS) / 1e4
    np.save(source, np.column_stack([time_s, *np.random.default_rng(1).normal(2.5, 0.3, (3, ROWS))]))
    source.chmod(0o644)
    return source


@pytest.mark.parametrize(
    "limit", [1000, 8 * ROWS - 1, 8 * ROWS + 1000], ids=["at once", "while reading", "while writing"]
)
def test_an_import_that_outgrows_its_room_leaves_nothing(limit: int, tmp_path: Path) -> None:
    source = _table(tmp_path)
    out = tmp_path / "out"
    out.mkdir()
    assert "the file could not be written; check the free space" in _said(
        "import", source, out / "a.h5", limit=limit
    )
    assert list(out.iterdir()) == []


@pytest.mark.parametrize("ending", ["csv", "parquet", "mat", "npz", "h5"])
def test_an_export_that_outgrows_its_room_leaves_nothing(ending: str, tmp_path: Path) -> None:
    write_capture(small_capture(20_000), tmp_path / "a.h5")
    out = tmp_path / "out"
    out.mkdir()
    said = _said("export", tmp_path / "a.h5", out / f"b.{ending}", limit=20_000)
    assert "the file could not be written; check the free space" in said
    assert list(out.iterdir()) == []


@pytest.fixture
def small_disk(tmp_path: Path) -> Iterator[Path]:
    """A disk of 600 kB, where the system lets us mount one."""
    disk = tmp_path / "disk"
    disk.mkdir()
    mounted = shutil.which("mount") is not None and sys.platform == "linux" and not subprocess.run(
        ["mount", "-t", "tmpfs", "-o", "size=600k", "none", str(disk)], capture_output=True, check=False
    ).returncode  # fmt: skip
    if not mounted:
        pytest.skip("only the superuser of a Linux system may mount a disk in memory")
    yield disk
    subprocess.run(["umount", str(disk)], check=True)


def test_a_disk_that_fills_while_importing_is_left_as_it_was(small_disk: Path, tmp_path: Path) -> None:
    (small_disk / "evidence.txt").write_text("mine")
    said = _said("import", _table(tmp_path), small_disk / "a.h5")
    assert "the file could not be written; check the free space" in said
    assert [item.name for item in small_disk.iterdir()] == ["evidence.txt"]


@pytest.mark.parametrize("ending", ["csv", "parquet", "mat", "npz", "h5"])
def test_a_disk_that_fills_while_exporting_is_left_as_it_was(
    ending: str, small_disk: Path, tmp_path: Path
) -> None:
    write_capture(small_capture(60_000), tmp_path / "a.h5")
    (small_disk / "filling").write_bytes(b"x" * 550_000)
    said = _said("export", tmp_path / "a.h5", small_disk / f"b.{ending}")
    assert "the file could not be written; check the free space" in said
    assert [item.name for item in small_disk.iterdir()] == ["filling"]


def test_a_folder_without_rights_is_told_and_left_alone(open_folder: Path) -> None:
    source = _table(open_folder)
    locked = open_folder / "locked"
    locked.mkdir()
    locked.chmod(0o555)
    assert _said("import", source, locked / "a.h5", user=NOBODY).startswith(
        "you have no right to write there; choose another folder"
    )
    assert list(locked.iterdir()) == []
    write_capture(small_capture(), open_folder / "a.h5")
    (open_folder / "a.h5").chmod(0o644)
    for ending in ("csv", "parquet", "mat", "npz", "h5"):
        said = _said("export", open_folder / "a.h5", locked / f"b.{ending}", user=NOBODY)
        assert said == "you have no right to write there; choose another folder"
    assert list(locked.iterdir()) == []


def test_a_source_that_may_not_be_read_is_told(open_folder: Path) -> None:
    source = _table(open_folder)
    source.chmod(0)
    out = open_folder / "out"
    out.mkdir()
    out.chmod(0o777)
    assert _said("import", source, out / "a.h5", user=NOBODY).startswith("you have no right to read the file")
    assert list(out.iterdir()) == []
