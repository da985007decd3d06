"""A file that HDF5 can always close: what was written is read back, and failures are told."""

from __future__ import annotations

import errno
import io
from pathlib import Path
from typing import Any

import h5py
import numpy as np
import pytest

from analysis.captures.steady_file import SteadyFile


class _Full(io.FileIO):
    """A disk with room for so many bytes."""

    room = 0

    def write(self, data: Any, /) -> int:
        if self.tell() + len(data) > self.room:
            raise OSError(errno.ENOSPC, "no space left")
        return super().write(data)


def _steady(path: Path, room: int, monkeypatch: pytest.MonkeyPatch) -> SteadyFile:
    steady = SteadyFile(path)
    full = _Full(path, "r+b")
    full.room = room
    steady._file.close()
    monkeypatch.setattr(steady, "_file", full)
    return steady


@pytest.mark.parametrize("room", [0, 500, 10**6], ids=["none", "some", "enough"])
def test_what_was_written_is_read_back_whether_it_fitted_or_not(
    room: int, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    random = np.random.default_rng(3)
    steady, memory = _steady(tmp_path / "a", room, monkeypatch), io.BytesIO()
    for _ in range(200):
        place, data = int(random.integers(0, 2000)), random.bytes(int(random.integers(1, 60)))
        for file in (steady, memory):
            file.seek(place)
            file.write(data)
    for _ in range(200):
        place, count = int(random.integers(0, 1900)), int(random.integers(1, 60))
        found = bytearray(count)
        for file in (steady, memory):
            file.seek(place)
        steady.readinto(found)
        assert bytes(found) == memory.read(count).ljust(count, b"\0")
    assert steady.seek(0, io.SEEK_END) == memory.seek(0, io.SEEK_END)
    if room < 2000:
        with pytest.raises(OSError, match="no space left"):
            steady.check()
    else:
        steady.check()
    steady.close()


@pytest.mark.parametrize("room", [0, 100, 3000, 10_000, 40_000, 79_000])
def test_hdf5_closes_however_little_room_there_is_and_the_failure_is_told(
    room: int, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    steady = _steady(tmp_path / "a", room, monkeypatch)
    with h5py.File(steady, "w") as file:
        for name in "ab":
            file.create_dataset(name, data=np.random.default_rng(1).normal(size=5000))
    with pytest.raises(OSError, match="no space left"):
        steady.check()
    steady.close()


def test_a_file_of_that_name_is_not_taken(tmp_path: Path) -> None:
    (tmp_path / "a").write_text("mine")
    with pytest.raises(FileExistsError):
        SteadyFile(tmp_path / "a")
    assert (tmp_path / "a").read_text() == "mine"
