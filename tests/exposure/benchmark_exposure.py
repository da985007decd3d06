"""Times of the exposure and how closed form and simulation agree; run as a module, it prints a table.

``python -m tests.exposure.benchmark_exposure``
"""

from __future__ import annotations

import time
from collections.abc import Callable
from functools import partial

import numpy as np

from analysis.control_unit.debounce import ContinuousTimer, ripeness, stored_at
from analysis.control_unit.rules import RuleKind
from analysis.exposure.contact import Contact
from analysis.exposure.picture import picture
from analysis.exposure.stays import broken_readings, codes_per_s, inside, readings_at, run_lengths
from analysis.exposure.visits import visits
from analysis.intervals import Interval
from analysis.vehicle.drive import simulate_travel, unit_drive
from analysis.vehicle.quarter_car import GOLDEN_CAR
from analysis.vehicle.road import ROADS
from tests.exposure.test_picture import BAND, CONTACT, HEIGHTS, UNIT

HOURS, RATE_HZ = 4.0, 1_000.0


def main() -> None:
    """Print the table."""
    unit_drive.cache_clear()
    begun_s = time.process_time()
    first_s = _taken(lambda: picture(HEIGHTS, BAND, CONTACT, UNIT, ROADS[2]))
    alone_s = time.process_time() - begun_s
    later_s = max(_taken(partial(picture, HEIGHTS, BAND, CONTACT, UNIT, road)) for road in ROADS)
    hour_s = _taken(lambda: simulate_travel(np.random.default_rng(1), int(3_600 * RATE_HZ), RATE_HZ))
    print("| figure | limit | measured |\n| --- | ---: | ---: |")
    print(f"| whole picture, first of the day, s | 0.2 | {first_s:.3f} |")
    print(f"| the same in processor time, as on a machine that does nothing else, s | 0.2 | {alone_s:.3f} |")
    print(f"| whole picture, slowest of {len(ROADS)} roads, s | 0.2 | {later_s:.3f} |")
    print(f"| an hour of road at {RATE_HZ:.0f} samples/s, s | 2 | {hour_s:.2f} |")
    print(
        "\n| road, rest height | figure | closed form | simulated | off |\n| --- | --- | ---: | ---: | ---: |"
    )
    drive = simulate_travel(np.random.default_rng(2), int(3_600 * HOURS * RATE_HZ), RATE_HZ)
    for road in (ROADS[0], ROADS[2], ROADS[3]):
        rms_mm = 1e3 * GOLDEN_CAR.travel_rms_m(road.velocity_density_m2_s2_hz)
        for rest_mm in (-14.0, -25.0, 0.0):
            _compare(f"{road.words}, {rest_mm:+.0f} mm", drive, rms_mm, rest_mm)


def _compare(
    name: str, drive: np.ndarray[tuple[int, ...], np.dtype[np.float64]], rms_mm: float, rest_mm: float
) -> None:
    band_mm: Interval = HEIGHTS.span_mm(BAND)
    closed = visits(band_mm, rest_mm, rms_mm, GOLDEN_CAR.up_crossings_per_s)
    flags = inside(drive, band_mm, rest_mm, rms_mm)
    stays = run_lengths(flags)
    contact, hold = Contact(RuleKind.RANGE, 0.8, 0.4, 5.0), ContinuousTimer(0.1)
    seen = readings_at(flags, RATE_HZ, UNIT.tick_s)
    expected = codes_per_s(seen, contact, hold, UNIT.tick_s)
    walked = []
    for seed in range(3):
        broken = seen & broken_readings(np.random.default_rng(seed), seen.shape[0], contact, UNIT.tick_s)
        walked.append(stored_at(ripeness(broken, hold, tick_s=UNIT.tick_s)).size)
    hours = flags.shape[0] / RATE_HZ / 3_600.0
    rows = (
        ("share of time", closed.share, float(flags.mean())),
        ("visits an hour", 3_600.0 * closed.per_s, stays.size / hours),
        ("mean stay, s", closed.mean_stay_s, float(stays.mean()) / RATE_HZ if stays.size else float("nan")),
        ("codes an hour, 100 ms", 3_600.0 * expected, float(np.mean(walked)) / hours),
    )
    for figure, value, simulated in rows:
        off = 100.0 * (simulated / value - 1.0) if value > 0.0 else float("nan")
        print(f"| {name} | {figure} | {value:.4g} | {simulated:.4g} | {off:+.1f} % |")


def _taken(work: Callable[[], object]) -> float:
    begun = time.perf_counter()
    work()
    return time.perf_counter() - begun


if __name__ == "__main__":
    main()
