"""A hand moves smoothly: Flash & Hogan's stroke, tremor at 8-12 Hz, nothing fast but a knock."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from scipy.signal import butter, sosfiltfilt, welch

from analysis.intervals import Interval
from analysis.simulation import hand
from analysis.simulation.circuit import Floats

STOPS = Interval(10.0, 90.0)
CLUMSY = hand.HandStyle(
    stroke_s=0.6, spread=0.4, tremor_percent=0.0, stall=0.5, slip=0.5, turn_back=0.5, catch_percent=50.0
)


def _above(path: Floats, hz: float) -> float:
    """Rms of what lies above a frequency."""
    sos = butter(6, hz, btype="highpass", fs=hand.NODE_HZ, output="sos")
    return float(np.std(sosfiltfilt(sos, path)))


def test_the_minimum_jerk_stroke_has_its_published_peak_speed() -> None:
    # Flash & Hogan 1985: peak speed 1.875 times the mean speed, at half way.
    share = np.linspace(0.0, 1.0, 10_001)
    speed = np.gradient(hand.minimum_jerk(share), share)
    assert speed.max() == pytest.approx(1.875, abs=1e-4)
    assert share[speed.argmax()] == pytest.approx(0.5, abs=1e-3)
    assert hand.minimum_jerk(np.array([0.0, 0.5, 1.0])) == pytest.approx([0.0, 0.5, 1.0])


def test_tremor_has_unit_rms_and_lies_between_8_and_12_hz() -> None:
    shake = hand.tremor(np.random.default_rng(4), 200_000, 10.0)
    frequency, density = welch(shake, fs=hand.NODE_HZ, nperseg=8_192)
    inside = (frequency >= 8.0) & (frequency <= 12.0)
    assert shake.std() == pytest.approx(1.0, abs=0.1)
    assert density[inside].sum() / density.sum() > 0.85
    assert 8.0 < frequency[density.argmax()] < 12.0


@pytest.mark.parametrize("seed", range(8))
def test_a_clumsy_hand_has_next_to_nothing_above_30_hz(seed: int) -> None:
    path = hand.sweep(np.random.default_rng(seed), STOPS, 8, CLUMSY)
    assert np.ptp(path) > 60.0
    assert _above(path, 15.0) < 0.15
    assert _above(path, 30.0) < 0.04  # of 80 % strokes in 0.6 s


def test_a_knock_at_the_stop_is_faster_than_a_hand() -> None:
    smooth = replace(CLUMSY, slip=0.0, turn_back=0.0, stall=0.0, catch_percent=None)
    path = hand.sweep(np.random.default_rng(1), STOPS, 8, replace(smooth, knock_percent=3.0))
    assert _above(path, 30.0) > 5.0 * _above(hand.sweep(np.random.default_rng(1), STOPS, 8, smooth), 30.0)


@pytest.mark.parametrize("crossings", [1, 2, 7])
def test_a_sweep_crosses_the_middle_as_often_as_it_was_told(crossings: int) -> None:
    calm = hand.HandStyle(stall=0.0, slip=0.0, turn_back=0.0)
    path = hand.sweep(np.random.default_rng(crossings), STOPS, crossings, calm)
    assert np.count_nonzero(np.diff(path > 50.0)) == crossings


def test_paths_stay_between_the_stops() -> None:
    shaky = replace(CLUMSY, tremor_percent=1.0, knock_percent=2.0)
    for seed in range(5):
        path = hand.sweep(np.random.default_rng(seed), STOPS, 6, shaky)
        assert path.min() >= STOPS.start
        assert path.max() <= STOPS.stop


def test_a_catch_stops_the_arm_at_its_place_on_every_stroke() -> None:
    style = hand.HandStyle(stroke_s=2.0, tremor_percent=0.0, stall=0.0, slip=0.0, turn_back=0.0)
    caught = hand.sweep(np.random.default_rng(3), STOPS, 4, replace(style, catch_percent=40.0))
    free = hand.sweep(np.random.default_rng(3), STOPS, 4, style)
    assert np.count_nonzero(np.abs(caught - 40.0) < 0.05) > 3 * np.count_nonzero(np.abs(free - 40.0) < 0.05)


def test_hands_off_the_arm_stands_still() -> None:
    assert np.ptp(hand.hold(np.random.default_rng(0), 44.0, 2.0, None, STOPS)) == 0.0


def test_joined_paths_do_not_jump() -> None:
    path = hand.joined(np.full(100, 20.0), np.full(100, 70.0))
    assert np.abs(np.diff(path)).max() < 0.5
    assert path[0] == 20.0
    assert path[-1] == 70.0


def test_a_bounced_corner_comes_back_to_rest_and_mirrors_with_the_sign() -> None:
    left = hand.bounced(np.random.default_rng(6), 50.0, 12.0, 3, STOPS)
    right = hand.bounced(np.random.default_rng(6), 50.0, -12.0, 3, STOPS)
    assert left + right == pytest.approx(np.full(left.shape, 100.0))
    assert left[-1] == 50.0
    assert np.ptp(left) > 10.0
