"""A saving on a real disk that is full, or has hardly any room left: a small one in memory, mounted for it.

Called as ``python -m tests.robustness.small_disk KIND...``, or with ``--look`` to say why it cannot be done
here; prints for each kind how many savings were tried, told, done, left damaged, left anything behind, and
went wrong afterwards, once there was room again.
"""

from __future__ import annotations

import ctypes
import os
import shutil
import subprocess
import sys
import tempfile
from collections.abc import Iterable
from pathlib import Path

from analysis.errors import WornbandError
from tests.robustness.savings import KINDS, names_in
from tests.robustness.trials import ROOT

_NEW_MOUNTS, _NEW_USER = 0x00020000, 0x10000000  # unshare(2)
_APART, _ALL_BELOW = 1 << 18, 1 << 14  # mount(2): MS_PRIVATE, MS_REC
_SIZE = 4 * 1024 * 1024
_PAGE = 4096
_ROOM = (0, 1, 2, 3, 5, 8, 12, 20, 40)
"""Pages of 4 KiB that are left free, from none to more than any of these files needs at once."""


def run_small_disk(kinds: Iterable[str]) -> dict[str, tuple[int, ...]]:
    """Save these kinds on a full disk; the numbers that are printed."""
    asked = list(kinds)
    lines = _run(*asked).splitlines()
    return {kind: tuple(map(int, line.split())) for kind, line in zip(asked, lines, strict=True)}


def why_not() -> str:
    """Why no disk can be mounted here; empty where it can."""
    if not sys.platform.startswith("linux"):
        return "a small disk is mounted on Linux alone"
    return _run("--look").strip()


def _run(*words: str) -> str:
    done = subprocess.run(
        [sys.executable, "-m", "tests.robustness.small_disk", *words],
        cwd=ROOT,
        capture_output=True,
        text=True,
        check=False,
        env=os.environ | {"OPENBLAS_NUM_THREADS": "1"},
    )
    if done.returncode or done.stderr:
        raise RuntimeError(done.stderr)
    return done.stdout


def _mount(folder: Path) -> str:
    """Mount a small disk that this process alone sees; why it cannot be, empty where it can."""
    libc = ctypes.CDLL(None, use_errno=True)
    user = os.geteuid()
    if libc.unshare(_NEW_MOUNTS) and libc.unshare(_NEW_MOUNTS | _NEW_USER):
        return "this system gives a process no mounts of its own"
    if os.geteuid() != user:  # a superuser of our own namespace
        Path("/proc/self/uid_map").write_text(f"0 {user} 1")
    options = f"size={_SIZE}".encode()
    libc.mount(None, b"/", None, _APART | _ALL_BELOW, None)
    if libc.mount(b"none", os.fsencode(folder), b"tmpfs", 0, options):
        return "this system lets a process mount nothing"
    return ""


def _fill(folder: Path, pages: int) -> Path:
    """Take all room but so many pages."""
    filler = folder / "filler"
    with filler.open("wb", buffering=0) as file:
        try:
            while True:
                file.write(bytes(_PAGE))
        except OSError:
            pass
        file.truncate(max(file.tell() - pages * _PAGE, 0))
    return filler


def _try_all(kind: str, folder: Path) -> tuple[int, ...]:
    saving = KINDS[kind](folder)
    told = done = damaged = left = after = 0
    saving.save(1)
    usual = names_in(folder)
    for pages in _ROOM:
        before = saving.version()
        filler = _fill(folder, pages)
        try:
            saving.save(before + 1)
            done += 1
        except WornbandError:
            told += 1
        try:
            damaged += saving.version() not in (before, before + 1)
        except Exception as error:  # whatever it is: the file is not whole
            print(error)
            damaged += 1
        filler.unlink()
        left += bool(names_in(folder) - usual)
        saving.save(before + 2)
        after += saving.version() != before + 2
    return len(_ROOM), told, done, damaged, left, after


def main() -> None:
    """Do what the command line asks for."""
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name) / "disk"
        folder.mkdir()
        reason = _mount(folder)
        if sys.argv[1] == "--look":
            print(reason)
        else:
            for kind in sys.argv[1:]:
                place = folder / kind
                place.mkdir()
                print(*_try_all(kind, place))
                shutil.rmtree(place)
        if not reason:
            ctypes.CDLL(None).umount2(os.fsencode(folder), 2)  # MNT_DETACH


if __name__ == "__main__":
    main()
