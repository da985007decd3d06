"""Memory with a long capture, the pointer in it, and time to the first picture; run by hand, not by pytest.

::

    QT_QPA_PLATFORM=offscreen python -m tests.app.benchmark_window [millions of samples a channel]

Every figure is taken in a process of its own. The capture is a real file in a temporary folder.
"""

from __future__ import annotations

import os
import resource
import statistics
import subprocess
import sys
import tempfile
import time
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from typing import Any

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

import numpy as np
from numpy.typing import NDArray

from analysis.captures.model import Capture, Channel, Record, Role, Scaling, Step

_TURNS = 7
_MOMENTS = 500
_SAMPLE = "W1041-rear-left-height.h5"
_PLAIN = """
import PySide6.QtCore, PySide6.QtGui, PySide6.QtWidgets, pyqtgraph, scipy, scipy.signal, h5py
app = PySide6.QtWidgets.QApplication([])
window = PySide6.QtWidgets.QMainWindow()
window.resize(1366, 768)
window.show()
window.repaint()
app.processEvents()
"""


@dataclass(frozen=True, slots=True)
class TiledSource:
    """A tile of samples again and again: as long as wanted, in the memory of one."""

    tile: NDArray[np.int16]
    length: int

    @property
    def dtype(self) -> np.dtype[Any]:
        """Type of the raw samples."""
        return self.tile.dtype

    def __len__(self) -> int:
        """Number of samples."""
        return self.length

    def read(self, start: int, stop: int) -> NDArray[Any]:
        """Samples ``[start, stop)``, clipped at the ends."""
        index = np.arange(max(start, 0), min(max(stop, 0), self.length)) % len(self.tile)
        return self.tile[index]


def long_capture(millions: int) -> Capture:
    """Three channels of a sweep with spikes, at 50 kS/s."""
    rng = np.random.default_rng(0)
    count = 4_000_000
    noise = rng.integers(-8, 8, count).astype(np.int16)
    signal = 5000 - 4000 * np.cos(2 * np.pi * np.arange(count) / count) + noise
    signal[rng.integers(0, count, 80)] = 0
    tiles = {Role.SIGNAL: signal.astype(np.int16), Role.REFERENCE: noise + 10_000, Role.GROUND: noise}
    scaling = Scaling(scale_factor=0.0005)
    channels = tuple(
        Channel(str(role), role, TiledSource(tile.astype(np.int16), millions * 1_000_000), scaling)
        for role, tile in tiles.items()
    )
    return Capture("benchmark", (Record("001", 2e-5, channels, "", Step.SWEEP),))


def resident_mb(key: str = "VmRSS") -> float:
    """Memory of this process in MB (10^6 bytes), from Linux's own account of it."""
    for line in Path("/proc/self/status").read_text(encoding="ascii").splitlines():
        if line.startswith(f"{key}:"):
            return int(line.split()[1]) * 1024 / 1e6
    raise RuntimeError(f"no {key} in /proc/self/status")


def wait_for(fact: Callable[[], bool]) -> None:
    """Let the window work until something is so."""
    from app.window import application

    while not fact():
        application().processEvents()
        time.sleep(0.001)


def show(path: str, examine: bool) -> None:
    """Open a window, then a capture in it, and print the memory before, after painting, and at most."""
    from app.main_window import Window
    from app.settings import MemoryStore, Settings
    from app.tools import real_tools
    from app.window import application

    application()
    window = Window(real_tools(), Settings(MemoryStore()))
    window.show()
    window.grab()
    empty_mb = resident_mb()
    window.open_file(Path(path))
    wait_for(lambda: window.session.capture is not None)
    if not examine:
        window.stop_work()
        wait_for(lambda: not window.jobs.busy())
    window.page.trace.canvas.repaint()
    window.grab()
    for factor in (0.1, 0.1, 0.1, 1e9):
        window.focus.zoom(factor)
        window.page.trace.canvas.repaint()
    if examine:
        wait_for(lambda: window.session.findings is not None)
        window.grab()
    print(empty_mb, resident_mb() - empty_mb, resident_mb("VmHWM") - empty_mb)
    window.close()


def point(path: str) -> None:
    """Point at moments all over a file, no two in one chunk of it, and print what that takes, unpainted."""
    from app.main_window import Window
    from app.settings import MemoryStore, Settings
    from app.tools import real_tools
    from app.window import application

    application()
    window = Window(real_tools(), Settings(MemoryStore()))
    window.show()
    window.open_file(Path(path))
    wait_for(lambda: window.session.capture is not None)
    window.stop_work()
    wait_for(lambda: not window.jobs.busy())
    record = window.focus.record
    assert record is not None
    moments = np.random.default_rng(0).permutation(np.linspace(0.0, 0.999 * record.duration_s, _MOMENTS))
    held_ms, told_ms, came_ms = [], [], []
    for moment_s in moments:
        begun, begun_cpu = time.perf_counter(), time.thread_time()
        window.focus.point(float(moment_s))
        held_ms.append(1e3 * (time.thread_time() - begun_cpu))
        window.pointer.settle()
        told_ms.append(1e3 * (time.thread_time() - begun_cpu))
        came_ms.append(1e3 * (time.perf_counter() - begun))
    print(*(figure for took in (held_ms, told_ms, came_ms) for figure in (np.median(took), np.max(took))))
    window.close()


def paint_sample() -> None:
    """As ``wornband`` does with a file: open the window and the sample, until its trace was painted."""
    from app.window import application, without_collecting

    with without_collecting():
        app = application()
        from app.settings import MemoryStore, Settings
        from app.tools import real_tools
        from app.workbench import Workbench

    window = Workbench(app, real_tools(), Settings(MemoryStore())).window
    window.show()
    window.open_file(Path("sample_captures") / _SAMPLE)
    wait_for(lambda: window.focus.record is not None)
    window.page.trace.canvas.repaint()
    sys.stdout.flush()
    os._exit(0)  # the picture stands; what comes after is not counted


@dataclass(frozen=True, slots=True)
class Turn:
    """What one process took, in seconds by the clock and of the processor, and what it printed."""

    clock_s: float
    processor_s: float
    printed: str


def _run(*arguments: str) -> Turn:
    begun, used = time.perf_counter(), resource.getrusage(resource.RUSAGE_CHILDREN)
    done = subprocess.run(
        [sys.executable, *arguments], check=True, stdout=subprocess.PIPE, stderr=subprocess.DEVNULL, text=True
    )
    after = resource.getrusage(resource.RUSAGE_CHILDREN)
    processor_s = after.ru_utime - used.ru_utime + after.ru_stime - used.ru_stime
    return Turn(time.perf_counter() - begun, processor_s, done.stdout)


def measure_start() -> None:
    """Start both in turns, so that whatever else runs slows both."""
    plain, sample = [], []
    for _ in range(_TURNS):
        plain.append(_run("-c", _PLAIN))
        sample.append(_run("-m", "tests.app.benchmark_window", "--paint"))
    for name in ("clock", "processor"):
        bare_s, painted_s = ([getattr(turn, f"{name}_s") for turn in turns] for turns in (plain, sample))
        middle = statistics.median(bare_s), statistics.median(painted_s)
        print(
            f"start, {name:9}: libraries and an empty window {middle[0]:.2f} s, to the painted sample "
            f"{middle[1]:.2f} s, ratio {middle[1] / middle[0]:.2f}; fastest of {_TURNS}: "
            f"{min(painted_s) / min(bare_s):.2f}"
        )


def main(millions: int) -> None:
    """Print the figures."""
    print(f"load of the machine at the start: {os.getloadavg()[0]:.1f} on {os.cpu_count()} cores")
    measure_start()
    from analysis.captures.writing import write_capture

    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "long.h5"
        write_capture(long_capture(millions), path)
        print(f"file of 3 x {millions} million samples: {path.stat().st_size / 1e6:.0f} MB")
        out = _run("-m", "tests.app.benchmark_window", "--point", str(path)).printed
        held_ms, most_ms, told_ms, most_told_ms, came_ms, last_ms = (float(word) for word in out.split())
        print(
            f"{_MOMENTS} places pointed at: the window is held for {held_ms:.2f} ms of processor (most "
            f"{most_ms:.2f}), with the reading written {told_ms:.2f} ms (most {most_told_ms:.2f}), there "
            f"after {came_ms:.1f} ms by the clock (most {last_ms:.1f})"
        )
        for examine, what in ((False, "painted and zoomed"), (True, "examined too")):
            out = _run("-m", "tests.app.benchmark_window", "--show", str(path), str(int(examine))).printed
            empty_mb, above_mb, most_mb = (float(word) for word in out.split())
            print(
                f"{what}: empty window {empty_mb:.0f} MB, above it {above_mb:.0f} MB, "
                f"at most {most_mb:.0f} MB"
            )


if __name__ == "__main__":
    if "--show" in sys.argv:
        show(sys.argv[2], sys.argv[3] == "1")
    elif "--point" in sys.argv:
        point(sys.argv[2])
    elif "--paint" in sys.argv:
        paint_sample()
    else:
        main(int(sys.argv[1]) if len(sys.argv) > 1 else 100)
