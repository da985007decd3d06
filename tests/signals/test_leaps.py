"""Leaps of a recorder that lost samples without a word, against signals whose losses are known."""

from __future__ import annotations

from collections.abc import Callable

import numpy as np
import pytest
from numpy.typing import NDArray

from analysis.signals.leaps import Leaps, find_leaps
from analysis.signals.motion import Motion
from tests.signals.examples import RATE_HZ, Floats, followed, noise, stroke, strokes

Index = NDArray[np.int64]

SWEEP = strokes(6, seconds=0.8)
NOISE_PERCENT = 0.03
LOST = round(0.02 * RATE_HZ)
AT = np.flatnonzero(np.abs(np.diff(SWEEP)) * RATE_HZ > 60.0)[::1500]
"""Samples in mid-stroke, far apart."""


def _noisy(travel: Floats, seed: int = 1) -> Floats:
    return travel + noise(len(travel), NOISE_PERCENT, seed)


def _left_out(travel: Floats, at: Index, count: int = LOST) -> Floats:
    return np.delete(travel, (at[:, None] + np.arange(count)).ravel())


def _repeated(travel: Floats, at: Index, count: int = LOST) -> Floats:
    index = np.arange(len(travel))
    for first in at:
        index[first : first + count] = first
    return travel[index]


def _found(travel: Floats) -> Leaps | None:
    size = len(travel)
    tolerance = np.full(size, 6.0 * NOISE_PERCENT, np.float32)
    return find_leaps(travel.astype(np.float32), np.ones(size, np.bool_), tolerance, 1.0 / RATE_HZ)


def _departure(motion: Motion) -> float:
    return float(np.nanmax(motion.departure))


def test_a_record_that_lost_nothing_has_no_leap() -> None:
    assert _found(_noisy(SWEEP)) is None


def test_samples_left_out_in_mid_stroke_are_found_with_their_time() -> None:
    leaps = _found(_left_out(_noisy(SWEEP), AT))
    assert leaps is not None
    assert leaps.cell.tolist() == [int(at) + 1 - LOST * index - 1 for index, at in enumerate(AT)]
    assert leaps.height_percent == pytest.approx(SWEEP[AT + LOST] - SWEEP[AT], abs=0.3)
    assert leaps.gone_s == pytest.approx(LOST / RATE_HZ, rel=0.15)


def test_the_sum_of_the_leaps_taken_off_leaves_a_motion_without_edges() -> None:
    travel = _left_out(_noisy(SWEEP), AT)
    leaps = _found(travel)
    assert leaps is not None
    assert np.abs(np.diff(travel)).max() > 1.0
    assert np.abs(np.diff(travel - leaps.course())).max() < 0.6


def test_a_reading_repeated_before_a_leap_is_no_reading() -> None:
    leaps = _found(_repeated(_noisy(SWEEP), AT))
    assert leaps is not None
    assert leaps.gone_s.tolist() == [0.0] * len(AT)
    assert not leaps.course().any()
    for at in AT:
        assert leaps.lost[at + 1 : at + LOST].all()


@pytest.mark.parametrize("lose", [_left_out, _repeated])
def test_the_arm_is_followed_over_lost_samples_and_nothing_departs_from_it(
    lose: Callable[[Floats, Index], Floats],
) -> None:
    calm = _departure(followed(_noisy(SWEEP)))
    assert _departure(followed(lose(_noisy(SWEEP), AT))) < calm + 0.3


def test_a_piece_that_is_lifted_out_and_back_is_a_contact_and_no_lost_sample() -> None:
    travel = SWEEP.copy()
    for at in AT:
        travel[at : at + 200] += 6.0
    assert _found(_noisy(travel)) is None


def test_a_contact_that_opens_to_a_level_is_no_lost_sample() -> None:
    travel = SWEEP.copy()
    for at in AT:
        travel[at : at + 100] = 2.0
    assert _found(_noisy(travel)) is None


def test_spikes_are_no_lost_samples() -> None:
    travel = _noisy(SWEEP)
    travel[AT] += 10.0
    assert _found(travel) is None


def test_a_wheel_that_turned_in_the_lost_time_is_followed_where_the_record_is_calm() -> None:
    """A wheel hops at 10 to 15 Hz (common practice, no source): in 30 ms it may have turned."""
    time_s = np.arange(round(8.0 * RATE_HZ)) / RATE_HZ
    hop = 50.0 + 4.0 * np.sin(2.0 * np.pi * 12.0 * time_s) + 8.0 * np.sin(2.0 * np.pi * 1.2 * time_s)
    # Lost around a turn: the hop's speed is as much one way before as the other way after.
    turns = np.array([3, 27, 51]) / 12.0 + 0.25 / 12.0 + 0.009
    at = np.rint((turns - 0.015) * RATE_HZ).astype(np.int64)
    leaps = _found(_left_out(_noisy(hop), at, round(0.03 * RATE_HZ)))
    assert leaps is not None
    assert len(leaps.cell) == 3


def test_too_noisy_a_record_is_left_alone() -> None:
    size = len(SWEEP)
    coarse = np.full(size, 5.0, np.float32)
    assert find_leaps(SWEEP.astype(np.float32), np.ones(size, np.bool_), coarse, 1.0 / RATE_HZ) is None


@pytest.mark.parametrize("count", [0, 1, 3, 9])
def test_hardly_any_cells_have_no_leap(count: int) -> None:
    assert _found(stroke(10.0, 90.0, 1.0)[:count]) is None
