"""Frame times of Trace against the same view with axes alone; run by hand, not collected by pytest.

::

    QT_QPA_PLATFORM=offscreen python -m tests.app.benchmark_drawing [millions of samples a channel]
"""

from __future__ import annotations

import os
import sys
import time

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

import numpy as np

from analysis.captures.model import ArraySource, Capture, Channel, Record, Role, Scaling, Step
from analysis.captures.overview import with_overviews
from analysis.intervals import Interval
from app.views.trace import TraceView
from app.window import application

_FRAMES = 150


def long_capture(millions: int) -> Capture:
    """Three channels of a sweep with spikes, at 1 MS/s."""
    rng = np.random.default_rng(0)
    count = millions * 1_000_000
    tile = rng.integers(-8, 8, 1_000_000).astype(np.int16)
    ramp = np.tile(np.concatenate([np.arange(500_000), np.arange(500_000)[::-1]]) // 60, millions)
    signal = (ramp + np.tile(tile, millions)).astype(np.int16)
    signal[rng.integers(0, count, count // 50_000)] = 0
    steady = np.tile(tile, millions)
    scaling = Scaling(scale_factor=0.0005)
    channels = (
        Channel("signal", Role.SIGNAL, ArraySource(signal), scaling),
        Channel("reference", Role.REFERENCE, ArraySource(steady + np.int16(10_000)), scaling),
        Channel("ground", Role.GROUND, ArraySource(steady), scaling),
    )
    return with_overviews(Capture("benchmark", (Record("001", 1e-6, channels, "", Step.SWEEP),)))


def frame_times_ms(view: TraceView, windows: list[Interval]) -> np.ndarray:
    """Time to move to each window and paint it, in milliseconds: by the clock, and of the processor."""
    app = application()
    took = []
    for window in windows:
        begun, begun_cpu = time.perf_counter(), time.thread_time()
        view.show_window(window)
        view.canvas.repaint()
        took.append((1e3 * (time.perf_counter() - begun), 1e3 * (time.thread_time() - begun_cpu)))
    app.processEvents()
    return np.array(took).T


def main(millions: int) -> None:
    """Print the table; processor time tells the truth on a machine that others use too."""
    print(f"load of the machine at the start: {os.getloadavg()[0]:.1f} on {os.cpu_count()} cores")
    app = application()
    record = long_capture(millions).records[0]
    view = TraceView()
    view.resize(1600, 500)
    view.show()
    begun = time.perf_counter()
    view.show_record(record)
    view.show_window(Interval(0.0, record.duration_s))
    view.canvas.repaint()
    print(f"first frame of 3 x {millions} million samples: {1e3 * (time.perf_counter() - begun):.1f} ms")
    app.processEvents()
    for share in (0.9, 0.1, 0.001, 1e-5):
        length_s = share * record.duration_s
        starts = np.linspace(0.0, record.duration_s - length_s, _FRAMES)
        windows = [Interval(float(start), float(start + length_s)) for start in starts]
        drawn = frame_times_ms(view, windows)
        for lane in view.lanes:
            for curve, _ in lane.curves:
                lane.box.drop(curve)
        bare = frame_times_ms(view, windows)
        for lane in view.lanes:
            for curve, _ in lane.curves:
                lane.box.hold(curve)
        for name, with_traces, axes_alone in zip(("clock", "processor"), drawn, bare, strict=True):
            middle, bare_ms = np.median(with_traces), np.median(axes_alone)
            late_ms = np.percentile(with_traces, 95)
            print(
                f"{share:8.0e} of the record, {name:9}: axes alone {bare_ms:5.2f} ms, with traces "
                f"{middle:5.2f} ms, ratio {middle / bare_ms:4.2f}, p95 {late_ms:5.2f} ms"
            )


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 10)
