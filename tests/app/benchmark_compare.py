"""How soon Compare is painted, and its frame times while zooming, beside Review; run by hand.

::

    QT_QPA_PLATFORM=offscreen python -m tests.app.benchmark_compare [millions of samples a channel]
"""

from __future__ import annotations

import sys
import time
from collections.abc import Callable
from dataclasses import replace

import numpy as np
from PySide6.QtWidgets import QApplication

from analysis.diagnosis.examine import examine
from analysis.intervals import Interval
from app.main_window import Window
from app.settings import MemoryStore, Settings
from app.tools import real_tools
from app.window import application
from tests.app.benchmark_drawing import long_capture
from tests.app.fakes import FakeOpened

_FRAMES = 100
_AIM_S = 0.3
_AIM_RATIO = 2.0


def settle(app: QApplication, until: Callable[[], bool], patience_s: float = 120.0) -> None:
    """Let the window work until a fact holds and nothing is left to paint."""
    end_s = time.monotonic() + patience_s
    while not until() and time.monotonic() < end_s:
        app.processEvents()
    app.processEvents()


def frames_ms(app: QApplication, show: Callable[[Interval], object], windows: list[Interval]) -> float:
    """Median time to move to a window and paint everything that changed, in milliseconds."""
    took = []
    for window in windows:
        begun = time.perf_counter()
        show(window)
        app.processEvents()
        took.append(1e3 * (time.perf_counter() - begun))
    return float(np.median(took))


def windows(duration_s: float, share: float) -> list[Interval]:
    """Stretches of that share of a record, along it."""
    length_s = share * duration_s
    return [
        Interval(float(start), float(start + length_s))
        for start in np.linspace(0.0, duration_s - length_s, _FRAMES)
    ]


def main(millions: int) -> None:
    """Print the table."""
    app = application()
    captures = [long_capture(millions) for _ in range(2)]
    captures[1] = replace(captures[1], capture_id="benchmark of the other side")
    found = [examine(item) for item in captures]
    window = Window(real_tools(), Settings(MemoryStore()))
    window.resize(1920, 1080)
    window.show()
    window.session.show(FakeOpened(captures[0]), found[0])
    window.compare.sides[1].show(FakeOpened(captures[1]), found[1])
    settle(app, lambda: not window.jobs.busy())
    begun = time.perf_counter()
    window.actions_by_name["compare"].trigger()
    app.processEvents()
    painted_s = time.perf_counter() - begun
    settle(app, lambda: window.compare.comparison is not None and not window.compare.jobs.busy())
    said_s = time.perf_counter() - begun
    met = "met" if painted_s <= _AIM_S else "not met"
    painted = f"painted in {1e3 * painted_s:.0f} ms (aim {1e3 * _AIM_S:.0f} ms, {met})"
    print(f"Compare of two captures of 3 x {millions} million samples at 1920 x 1080:")
    print(f"  {painted}, the sentence stands after {1e3 * said_s:.0f} ms")
    duration_s = captures[0].records[0].duration_s
    for share in (0.9, 0.1, 0.001):
        moves = windows(duration_s, share)
        window.show_compare()
        app.processEvents()
        both = frames_ms(app, lambda span: window.compare.focus.show_window(0, span), moves)
        window.show_review()
        app.processEvents()
        one = frames_ms(app, window.focus.show_window, moves)
        met = "met" if both <= _AIM_RATIO * one else "not met"
        print(
            f"  {share:6g} of the record: linked {both:5.2f} ms a frame, Review {one:5.2f} ms,"
            f" ratio {both / one:4.2f} (aim {_AIM_RATIO:g}, {met})"
        )
    window.close()


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 10)
