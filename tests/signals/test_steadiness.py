"""A wire that should be steady: its slow course, and what leaves it."""

from __future__ import annotations

import numpy as np
import pytest
from scipy.stats import halfnorm

from analysis.signals.cells import CellSeries
from analysis.signals.steadiness import LEAST_V, SlowCourse, Steadiness, extreme_level, steadiness
from tests.signals.examples import Floats, noise

CELL_S = 0.0005


def _steady(volts: Floats, *, step_v: float = 0.0) -> Steadiness:
    cells = volts.astype(np.float32)
    return steadiness(CellSeries(cells, cells, cells), cell_s=CELL_S, step_v=step_v)


def _feed(seconds: float = 10.0, rms: float = 0.002, seed: int = 0) -> Floats:
    return 5.0 + noise(round(seconds / CELL_S), rms, seed)


def test_a_steady_wire_has_no_disturbance() -> None:
    quiet = sum(not _steady(_feed(seed=seed)).disturbed.any() for seed in range(20))
    assert quiet >= 14  # built to be exceeded in one of ten records


@pytest.mark.parametrize("depth_v", [-0.05, 0.05, -2.0])
@pytest.mark.parametrize("lasting_s", [0.0005, 0.02, 0.2])
def test_a_dip_or_a_rise_is_found_where_and_as_deep_as_it_is(depth_v: float, lasting_s: float) -> None:
    volts = _feed()
    first, last = 8000, 8000 + max(1, round(lasting_s / CELL_S))
    volts[first:last] += depth_v
    made = _steady(volts)
    inside = np.arange(len(volts))
    inside = inside[(inside >= first) & (inside < last)]
    assert made.disturbed[inside].all()
    assert made.disturbed.sum() - len(inside) <= 3
    side = made.above_v if depth_v > 0 else made.below_v
    assert side[inside].max() == pytest.approx(abs(depth_v), abs=0.012)


def test_the_sag_of_a_battery_is_the_course_and_no_disturbance() -> None:
    time = np.arange(40_000) * CELL_S
    made = _steady(12.5 - 0.05 * time + noise(40_000, 0.003))
    assert made.disturbed.sum() <= 2
    assert np.abs(made.course_v - (12.5 - 0.05 * time)).max() < 0.03


def test_more_volts_stand_out_as_much_more() -> None:
    volts = _feed() - 5.0
    volts[5000:5010] += 0.3
    one, two = _steady(volts), _steady(2.0 * volts)
    np.testing.assert_allclose(two.departure_v, 2.0 * one.departure_v, atol=1e-6)
    assert two.noise_v == pytest.approx(2.0 * one.noise_v, rel=1e-4)


def test_an_offset_changes_nothing_but_the_course() -> None:
    volts = _feed() - 5.0
    volts[5000:5010] += 0.3
    one, two = _steady(volts), _steady(volts + 2.0)
    np.testing.assert_allclose(two.departure_v, one.departure_v, atol=2e-6)
    np.testing.assert_allclose(two.course_v, one.course_v + 2.0, atol=1e-6)


def test_a_recorders_flicker_by_one_step_is_no_disturbance() -> None:
    volts = np.full(20_000, 5.0)
    volts[::97] += 0.02  # one count of 20 mV now and then
    assert not _steady(volts, step_v=0.04).disturbed.any()
    assert _steady(volts, step_v=0.0).disturbed.any()


def test_missing_cells_are_bridged_and_not_disturbed() -> None:
    volts = _feed()
    volts[3000:9000] = np.nan
    made = _steady(volts)
    assert not made.disturbed[3000:9000].any()
    assert np.isfinite(made.course_v).all()


@pytest.mark.parametrize("size", [1, 5, 200])
def test_a_short_record_or_one_without_a_sample_is_steady(size: int) -> None:
    assert not _steady(np.full(size, np.nan)).disturbed.any()
    made = _steady(np.full(size, 4.9))
    np.testing.assert_allclose(made.course_v, 4.9, rtol=1e-6)
    assert made.threshold_v == LEAST_V


@pytest.mark.parametrize("count", [1_000, 20_000, 200_000])
def test_the_extreme_level_is_near_what_a_normal_tail_says(count: int) -> None:
    # Once in ten such records: exceedance 0.1 / n of |N(0, 1)|, from scipy.
    level, middle = extreme_level(np.abs(noise(count, 1.0)).astype(np.float32))
    assert level == pytest.approx(halfnorm.isf(0.1 / count), rel=0.25)
    assert middle == pytest.approx(halfnorm.median(), rel=0.1)


def test_the_extreme_level_is_hardly_moved_by_a_few_disturbances() -> None:
    calm = np.abs(noise(20_000, 1.0)).astype(np.float32)
    hit = calm.copy()
    hit[:400] += 100.0
    assert extreme_level(hit)[0] < 1.2 * extreme_level(calm)[0]
    assert extreme_level(calm[:0]) == (0.0, 0.0)


@pytest.mark.parametrize("share", [0.05, 0.2, 0.3])
def test_a_wire_that_dips_for_a_fifth_of_the_time_is_disturbed_then_and_not_in_between(share: float) -> None:
    volts = _feed()
    dip = np.arange(len(volts)) % 800 < share * 800
    volts[dip] -= 0.5
    made = _steady(volts)
    assert made.disturbed[dip].mean() > 0.95
    assert made.disturbed[~dip].mean() < 0.05


@pytest.mark.parametrize("block", [1, 2, 5, 100])
@pytest.mark.parametrize("blocks", [1, 2, 30])
def test_the_course_between_blocks_is_that_of_linear_interpolation(block: int, blocks: int) -> None:
    """Against numpy's."""
    blocks_v = np.random.default_rng(block + blocks).normal(size=blocks).astype(np.float32)
    for cells in (blocks * block, blocks * block + block // 2):
        expected = np.interp(np.arange(cells), (np.arange(blocks) + 0.5) * block, blocks_v)
        course = SlowCourse(blocks_v, block, cells).volts
        np.testing.assert_array_equal(course, expected.astype(np.float32))
