"""Frame times of Trace against the same view with axes alone; run by hand, not collected by pytest.

::

    QT_QPA_PLATFORM=offscreen python -m tests.app.benchmark_drawing [millions of samples a channel]

Two views stand side by side, one without its traces, and take turns at every window, so that whatever else
the machine does slows both. Frames are counted by the clock, and in processor time of the thread that paints.
"""

from __future__ import annotations

import os
import sys
import tempfile
import time
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

import numpy as np
from numpy.typing import NDArray

from analysis.captures.model import ArraySource, Capture, Channel, Record, Role, Scaling, Step
from analysis.captures.overview import with_overviews
from analysis.captures.reading import open_capture
from analysis.captures.writing import write_capture
from analysis.intervals import Interval
from app.review.focus import LEAST_SAMPLES
from app.views.trace import TraceView
from app.window import application

_FRAMES = 100
_ROUNDS = 5
_SHARES = (0.9, 0.1, 0.014, 3.5e-3, 1e-3, 1e-5, 5e-6, 1e-6)
_ZOOM_PER_NOTCH = 0.8


def long_capture(millions: int) -> Capture:
    """Three channels of a sweep with spikes, at 1 MS/s."""
    rng = np.random.default_rng(0)
    count = millions * 1_000_000
    tile = rng.integers(-8, 8, 1_000_000).astype(np.int16)
    ramp = np.concatenate([np.arange(500_000), np.arange(500_000)[::-1]]) // 60
    signal = np.tile((ramp + tile).astype(np.int16), millions)
    signal[rng.integers(0, count, count // 50_000)] = 0
    steady = np.tile(tile, millions)
    scaling = Scaling(scale_factor=0.0005)
    channels = (
        Channel("signal", Role.SIGNAL, ArraySource(signal), scaling),
        Channel("reference", Role.REFERENCE, ArraySource(steady + np.int16(10_000)), scaling),
        Channel("ground", Role.GROUND, ArraySource(steady), scaling),
    )
    return with_overviews(Capture("benchmark", (Record("001", 1e-6, channels, "", Step.SWEEP),)))


def shown_view(record: Record, *, traces: bool) -> TraceView:
    """Trace as it stands in a wide window, with its traces or with axes alone."""
    view = TraceView()
    view.resize(1600, 500)
    view.show()
    view.show_record(record)
    if not traces:
        for lane in view.lanes:
            lane.box.drop(*(curve for curve, _ in lane.curves))
    view.show_window(Interval(0.0, record.duration_s))
    view.canvas.repaint()
    return view


def frame_ms(view: TraceView, window: Interval) -> tuple[float, float]:
    """Time to move to a window and paint it: by the clock, and of this thread's processor time."""
    begun, begun_cpu = time.perf_counter(), time.thread_time()
    view.show_window(window)
    view.canvas.repaint()
    return 1e3 * (time.perf_counter() - begun), 1e3 * (time.thread_time() - begun_cpu)


def frames_in_turns(views: tuple[TraceView, ...], windows: list[Interval]) -> NDArray[np.float64]:
    """Every window in every view, whose turn it is to be first changing: shape (views, windows, 2)."""
    took = np.empty((len(views), len(windows), 2))
    for place, window in enumerate(windows):
        for turn in range(len(views)):
            number = (place + turn) % len(views)
            took[number, place] = frame_ms(views[number], window)
    application().processEvents()
    return took


def panned(record: Record, share: float, begin: float) -> list[Interval]:
    """Windows of one length, each a tenth of it further on; `begin` says where, 0 to 1 of what there is."""
    length_s = share * record.duration_s
    free_s = record.duration_s - length_s
    step_s = min(0.1 * length_s, free_s / _FRAMES)
    first_s = record.first_sample_s + begin * (free_s - step_s * _FRAMES)
    return [Interval(at_s, at_s + length_s) for at_s in (first_s + step_s * np.arange(_FRAMES)).tolist()]


def zoomed(record: Record, begin: float) -> list[Interval]:
    """Notch by notch of the wheel from the whole record to a few samples, and back again."""
    count = int(np.log(LEAST_SAMPLES / len(record)) / np.log(_ZOOM_PER_NOTCH))
    lengths_s = record.duration_s * _ZOOM_PER_NOTCH ** np.arange(count)
    starts_s = record.first_sample_s + begin * (record.duration_s - lengths_s)
    inward = [Interval(at_s, at_s + length_s) for at_s, length_s in zip(starts_s, lengths_s, strict=True)]
    return inward + inward[::-1]


def series(record: Record, begin: float) -> dict[str, list[Interval]]:
    """What is measured, by name."""
    pans = {f"pan, {100 * share:7.5f} % of the record": panned(record, share, begin) for share in _SHARES}
    return pans | {"zoom, notch by notch": zoomed(record, begin)}


def tell(name: str, took: list[NDArray[np.float64]]) -> None:
    """One line for the clock and one for the processor, out of rounds of shape (2, frames, 2)."""
    for place, kind in enumerate(("clock", "processor")):
        bare, full = np.array(took)[:, 0, :, place], np.array(took)[:, 1, :, place]
        rounds = np.median(full, axis=1) / np.median(bare, axis=1)
        bare_ms, full_ms, late_ms = np.median(bare), np.median(full), np.percentile(full, 95)
        print(
            f"{name:30} {kind:9}: axes alone {bare_ms:5.2f} ms, with traces {full_ms:5.2f} ms, "
            f"ratio {full_ms / bare_ms:4.2f} ({rounds.min():4.2f}-{rounds.max():4.2f} in "
            f"{len(rounds)} rounds), p95 {late_ms:5.2f} ms"
        )


def measure(record: Record) -> None:
    """Draw a record again and again, and print the table; every round looks at another part of it."""
    bare = shown_view(record, traces=False)
    begun = time.perf_counter()
    full = shown_view(record, traces=True)
    print(f"first frame: {1e3 * (time.perf_counter() - begun):.1f} ms by the clock")
    application().processEvents()
    frames_in_turns((bare, full), panned(record, 0.5, 0.0)[:20])  # what is made once is made by now
    took: dict[str, list[NDArray[np.float64]]] = {}
    for begin in np.linspace(0.05, 0.95, _ROUNDS).tolist():
        for name, windows in series(record, begin).items():
            took.setdefault(name, []).append(frames_in_turns((bare, full), windows))
    for name, rounds in took.items():
        tell(name, rounds)


def main(millions: int) -> None:
    """Measure samples in memory, and the same ones out of a packed file."""
    load = "load of the machine: {:.1f} on {} cores"
    print(load.format(os.getloadavg()[0], os.cpu_count()))
    application()
    capture = long_capture(millions)
    print(f"3 x {millions} million samples in memory")
    measure(capture.records[0])
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "long.h5"
        write_capture(capture, path)
        del capture
        with open_capture(path) as opened:
            print(f"the same out of a file of {path.stat().st_size / 1e6:.0f} MB")
            measure(opened.capture.records[0])
    print(load.format(os.getloadavg()[0], os.cpu_count()))


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 10)
