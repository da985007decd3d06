"""A file that HDF5 can always close, even on a disk that is full.

Where a write fails, HDF5 keeps what it could not write and tries again while it closes; that can end the
whole process (seen with h5py 3 under a limit on the size of files: a segmentation fault). Here a failed write
is kept in memory instead and told afterwards, by which time nothing of the file is wanted any more.
"""

from __future__ import annotations

import io
from pathlib import Path
from typing import Any


class SteadyFile(io.RawIOBase):
    """A new file for h5py's ``fileobj`` driver: the first failure is kept for `check`, and hidden from HDF5.

    Parameters
    ----------
    path : Path
        Of a file that does not exist yet.
    """

    def __init__(self, path: Path) -> None:
        super().__init__()
        self._file = path.open("x+b", buffering=0)
        self._trouble: OSError | None = None
        self._kept: list[tuple[int, bytes]] = []
        self._place = 0

    def check(self) -> None:
        """Raise what went wrong so far; nothing happens where nothing did.

        Raises
        ------
        OSError
            The first failure of the disk.
        """
        if self._trouble is not None:
            raise self._trouble

    def readable(self) -> bool:
        """HDF5 reads back what it wrote."""
        return True

    def writable(self) -> bool:
        """It is for writing."""
        return True

    def seekable(self) -> bool:
        """HDF5 writes wherever it likes."""
        return True

    def seek(self, offset: int, whence: int = io.SEEK_SET) -> int:
        """Go to a place, which may lie beyond the end."""
        base = {io.SEEK_SET: 0, io.SEEK_CUR: self._place}.get(whence)
        self._place = offset + (self._end() if base is None else base)
        return self._place

    def tell(self) -> int:
        """The place."""
        return self._place

    def write(self, data: Any, /) -> int:
        """Write everything, to the disk or, after a failure, into memory."""
        view = memoryview(data).cast("B")
        if self._trouble is None:
            try:
                self._write(view)
            except OSError as error:
                self._trouble = error
        if self._trouble is not None:
            self._kept.append((self._place, bytes(view)))
        self._place += len(view)
        return len(view)

    def _write(self, view: memoryview) -> None:
        self._file.seek(self._place)
        done = 0
        while done < len(view):
            done += self._file.write(view[done:]) or 0

    def readinto(self, buffer: Any, /) -> int:
        """Read back, noughts where nothing was written."""
        view = memoryview(buffer).cast("B")
        self._file.seek(self._place)
        count = self._file.readinto(view) or 0
        view[count:] = bytes(len(view) - count)
        for start, data in self._kept:
            first, last = max(start, self._place), min(start + len(data), self._place + len(view))
            if first < last:
                view[first - self._place : last - self._place] = data[first - start : last - start]
        self._place += len(view)
        return len(view)

    def truncate(self, size: int | None = None) -> int:
        """Set the length; after a failure it does not matter any more."""
        wanted = self._place if size is None else size
        if self._trouble is None:
            try:
                self._file.truncate(wanted)
            except OSError as error:
                self._trouble = error
        return wanted

    def close(self) -> None:
        """Let go of the file."""
        self._file.close()
        super().close()

    def _end(self) -> int:
        return max([self._file.seek(0, io.SEEK_END), *(start + len(data) for start, data in self._kept)])
