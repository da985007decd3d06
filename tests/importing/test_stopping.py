"""An import of any kind of file tells how far it is, and leaves nothing behind wherever it is stopped."""

from __future__ import annotations

import signal
import subprocess
import sys
import time
from collections.abc import Callable
from contextlib import suppress
from pathlib import Path

import numpy as np
import pytest
from scipy.io import wavfile

from analysis.errors import Cancelled
from analysis.importing.bring_in import import_capture
from analysis.importing.wishes import Wishes
from tests.importing.test_outside import SIGNAL_V, WRITERS


def _wav(path: Path) -> None:
    wavfile.write(path.open("wb"), 1000, (SIGNAL_V * 5000).astype(np.int16))


def _npy(path: Path) -> None:
    np.save(path.open("wb"), SIGNAL_V)


KINDS: dict[str, Callable[[Path], object]] = {**WRITERS, "wav": _wav, "npy": _npy}


@pytest.mark.parametrize("kind", KINDS)
@pytest.mark.filterwarnings("ignore:unclosed file:ResourceWarning")
def test_progress_only_grows_and_a_stopped_import_leaves_nothing(kind: str, tmp_path: Path) -> None:
    source = tmp_path / "source.bin"
    KINDS[kind](source)
    wishes = (
        Wishes(full_scale_v=6.5536) if kind == "wav" else Wishes(interval_s=1e-3) if kind == "npy" else None
    )
    ticks: list[float] = []
    import_capture([source], tmp_path / "whole.h5", wishes, tick=ticks.append)
    assert ticks == sorted(ticks)
    assert ticks[-1] == pytest.approx(1.0)
    assert len(ticks) >= 2
    out = tmp_path / "out"
    out.mkdir()
    for stop in range(len(ticks)):
        left = [stop]

        def tick(_done: float, left: list[int] = left) -> None:
            left[0] -= 1
            if left[0] < 0:
                raise Cancelled

        with pytest.raises(Cancelled):
            import_capture([source], out / "a.h5", wishes, tick=tick)
        assert list(out.iterdir()) == []


def _opened(links: Path) -> list[str]:
    """Files that a process has open, as far as it keeps them open while they are listed."""
    found = []
    for link in links.iterdir():
        with suppress(OSError):
            found.append(str(link.readlink()))
    return found


@pytest.mark.skipif(
    not Path("/proc/self/fd").exists(),
    reason="whether a process is in the midst of it is read from /proc, of Linux",
)
def test_an_interrupt_from_the_keyboard_stops_an_import_and_leaves_nothing(tmp_path: Path) -> None:
    source, out = tmp_path / "long.csv", tmp_path / "out"
    rows = "".join(f"{n / 1e5:.5f};{n % 4096 / 1000:.3f}\n" for n in range(50_000))
    with source.open("w") as file:
        file.write("t [s];signal [V]\n")
        for _ in range(60):  # the times start again, which would be told at the end: it is stopped before
            file.write(rows)
    out.mkdir()
    process = subprocess.Popen(
        [sys.executable, "-m", "app", "import", str(source), "-o", str(out / "a.h5")],
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
    )
    links = Path(f"/proc/{process.pid}/fd")
    deadline = time.monotonic() + 60.0
    while process.poll() is None and time.monotonic() < deadline:
        if any(place.startswith(str(out)) for place in _opened(links)):
            break  # the nameless files that samples are kept in
    process.send_signal(signal.SIGINT)
    said, wrong = process.communicate(timeout=60)
    assert process.returncode == 130
    assert (said, wrong) == (b"", b"")
    assert list(out.iterdir()) == []
