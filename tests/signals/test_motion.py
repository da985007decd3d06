"""The path follows an arm and nothing else."""

from __future__ import annotations

import numpy as np
import pytest
from numpy.typing import NDArray
from scipy.signal import butter, sosfiltfilt

from analysis.captures.model import Role
from analysis.intervals import Interval
from analysis.signals.cells import Feed, reduce_record
from analysis.signals.motion import follow
from analysis.signals.outline import outline
from analysis.simulation import hand
from tests.signals.examples import (
    RATE_HZ,
    Floats,
    followed,
    noise,
    record_of,
    rest,
    stroke,
    strokes,
    travel_cells,
)


def _truth(travel: Floats) -> NDArray[np.float32]:
    return travel.astype(np.float32)


def _tremor(count: int, rms: float, low_hz: float, high_hz: float, seed: int = 0) -> Floats:
    sections = butter(2, [low_hz, high_hz], btype="band", fs=RATE_HZ, output="sos")
    made = np.asarray(sosfiltfilt(sections, noise(count, 1.0, seed)), np.float64)
    return made * rms / float(made.std())


@pytest.mark.parametrize("seconds", [0.3, 1.0, 5.0])
def test_a_clean_stroke_is_followed_to_within_the_noise(seconds: float) -> None:
    travel = strokes(3, seconds=seconds)
    made = followed(travel + noise(len(travel), 0.03))
    assert np.abs(made.travel_percent - travel).max() < 0.12
    assert made.truthful.all()


def test_tremor_is_followed_and_is_no_departure() -> None:
    travel = strokes(3, seconds=2.0)
    travel += _tremor(len(travel), 0.3, 8.0, 12.0)  # physiological tremor: 8 to 12 Hz
    made = followed(travel + noise(len(travel), 0.02))
    assert np.abs(made.travel_percent - travel).max() < 0.15
    assert float(made.departure.max()) < 0.3


def test_a_slip_and_a_knock_on_the_stop_are_followed() -> None:
    slip = np.concatenate([stroke(10, 50, 0.5), stroke(50, 56, 0.03), stroke(56, 90, 0.5)])
    bounce = 2.0 * np.abs(np.sin(np.linspace(0.0, 3 * np.pi, 200))) * np.exp(-np.arange(200) / 80.0)
    knock = np.concatenate([stroke(10, 90, 0.6), 90.0 - bounce, rest(90.0, 0.3)])
    assert np.abs(followed(slip).travel_percent - slip).max() < 0.6
    assert np.abs(followed(knock).travel_percent - knock).max() < 0.6


@pytest.mark.parametrize("height", [-40.0, 40.0, -1.5])
def test_a_spike_of_one_sample_moves_the_path_by_next_to_nothing(height: float) -> None:
    travel = strokes(3) + noise(len(strokes(3)), 0.02)
    clean = followed(travel)
    places = np.random.default_rng(5).integers(200, len(travel) - 200, 12)
    hit = travel.copy()
    hit[places] += height
    made = followed(hit)
    assert np.abs(made.travel_percent - clean.travel_percent).max() < 0.1
    side = made.above if height > 0 else made.below
    np.testing.assert_allclose(side[places], abs(height), atol=0.6)


@pytest.mark.parametrize("open_s", [0.002, 0.01, 0.05])
def test_dropouts_are_bridged_and_stand_out_by_their_whole_depth(open_s: float) -> None:
    truth = strokes(4)
    travel = truth + noise(len(truth), 0.02)
    hit = np.zeros(len(truth), np.bool_)
    for begin_s in (0.55, 1.65, 2.7, 3.8):
        first = round(begin_s * RATE_HZ)
        hit[first : first + round(open_s * RATE_HZ)] = True
    made = followed(np.where(hit, 1.0, travel))
    assert np.abs(made.travel_percent - truth)[hit].max() < 1.5
    np.testing.assert_allclose(made.below[hit], truth[hit] - 1.0, atol=2.0)
    assert made.above[hit].max() < 2.0
    far = ~np.convolve(hit, np.ones(41), mode="same").astype(np.bool_)
    assert made.departure[far].max() < 0.5


def test_a_bridge_stays_between_the_piers_it_rests_on() -> None:
    truth = np.concatenate([rest(20.0, 0.3), stroke(20.0, 80.0, 0.6), rest(80.0, 0.3)])
    travel = truth.copy()
    travel[700:1700] = np.nan  # nearly the whole stroke is lost
    path = followed(travel).path.travel_percent
    assert path.min() > 20.0 - 0.3
    assert path.max() < 80.0 + 0.3
    assert np.all(np.diff(path)[360:840] > -0.02)


def test_a_bridge_does_not_swing_on_at_the_speed_at_which_the_arm_was_lost() -> None:
    truth = np.concatenate([stroke(20.0, 80.0, 1.0), rest(80.0, 0.1), stroke(80.0, 20.0, 1.0)])
    travel = truth.copy()
    travel[1000:3200] = np.nan  # lost at 50 % on the way up, seen again there on the way down
    path = followed(travel).path.travel_percent[240:810]
    assert path.min() > 40.0
    assert path.max() < 55.0


@pytest.mark.parametrize("height", [-0.5, 0.5])
def test_a_spike_that_an_arm_could_nearly_make_is_not_taken_for_the_arm(height: float) -> None:
    travel = strokes(3) + noise(len(strokes(3)), 0.02)
    places = np.arange(500, 6000, 487)
    travel[places] += height
    assert not followed(travel).truthful[places].any()


def test_the_path_is_less_sure_where_nothing_was_seen() -> None:
    travel = strokes(2) + noise(len(strokes(2)), 0.02)
    travel[1200:1400] = np.nan
    path = followed(travel).path
    lost, seen = path.uncertainty_percent[325], path.uncertainty_percent[100]
    assert lost > 5.0 * seen
    off = np.abs(path.travel_percent - np.interp(path.time_s, np.arange(len(travel)) / RATE_HZ, strokes(2)))
    assert off[300:350].max() < 2.0 * path.uncertainty_percent[300:350].max()


@pytest.mark.parametrize("seed", range(6))
def test_simulated_hands_are_followed_closely(seed: int) -> None:
    style = hand.HandStyle(tremor_percent=0.2, stall=0.4, slip=0.4, turn_back=0.3, knock_percent=1.5)
    nodes = hand.sweep(np.random.default_rng(seed), Interval(9.0, 91.0), 3, style)
    time_s = np.arange(int(len(nodes) / hand.NODE_HZ * RATE_HZ)) / RATE_HZ
    truth = np.interp(time_s, np.arange(len(nodes)) / hand.NODE_HZ, nodes)
    made = followed(truth + noise(len(truth), 0.04, seed))
    off = np.abs(made.travel_percent - truth)
    assert np.quantile(off, 0.99) < 0.15
    assert off.max() < 1.5
    assert made.truthful.mean() > 0.95


def test_a_path_run_backwards_is_the_same_path() -> None:
    travel = strokes(3) + noise(len(strokes(3)), 0.02)
    travel[2000:2040] = 1.0
    forward, backward = followed(travel), followed(travel[::-1])
    assert np.abs(forward.travel_percent - backward.travel_percent[::-1]).max() < 0.1


def test_mirrored_travel_is_the_mirrored_path_with_its_sides_swapped() -> None:
    travel = strokes(3) + noise(len(strokes(3)), 0.02)
    travel[2000:2040] = 20.0
    one, other = followed(travel), followed(100.0 - travel)
    assert np.abs(one.travel_percent + other.travel_percent - 100.0).max() < 0.02
    np.testing.assert_allclose(other.above, one.below, atol=0.02)


def test_more_noise_is_a_larger_departure_and_a_larger_usual_noise() -> None:
    quiet, loud = (followed(strokes(3) + noise(len(strokes(3)), rms, seed=1)) for rms in (0.05, 0.2))
    assert float(np.median(loud.departure)) > 2.0 * float(np.median(quiet.departure))
    assert loud.noise.at([50.0])[0] == pytest.approx(0.2, rel=0.1)
    assert quiet.noise.at([50.0])[0] == pytest.approx(0.05, rel=0.1)


def test_motion_within_a_cell_is_no_departure() -> None:
    # Ten samples a cell: a fast stroke spreads them by up to 0.15 %, which is the arm's.
    truth = strokes(4, seconds=0.3, rate_hz=20_000.0)
    cells = reduce_record(record_of(truth, rate_hz=20_000.0), Feed())
    drawn = outline(
        cells.travel[Role.SIGNAL], record="001", start_s=0.0, cell_s=cells.cell_s, step_percent=0.0
    )
    assert drawn is not None
    assert float(cells.travel[Role.SIGNAL].spread.max()) > 0.2
    assert float(follow(drawn).departure.max()) < 0.1


@pytest.mark.parametrize("size", [0, 1, 3])
def test_next_to_no_samples_cannot_be_followed(size: int) -> None:
    travel = np.full(50, np.nan)
    travel[10 : 10 + size] = 40.0
    cells = reduce_record(record_of(travel), Feed()).travel[Role.SIGNAL]
    assert outline(cells, record="001", start_s=0.0, cell_s=0.0005, step_percent=0.0) is None


@pytest.mark.parametrize("every", [1, 2, 3, 7])
def test_a_few_scattered_samples_are_followed_or_refused_but_never_fail(every: int) -> None:
    travel = np.full(60, np.nan)
    travel[::every] = 40.0
    made = followed(travel)
    assert np.abs(made.path.travel_percent - 40.0).max() < 1e-3
    assert np.isnan(made.departure).sum() == np.isnan(travel).sum()


def test_the_path_carries_the_records_own_time() -> None:
    path = followed(strokes(1)).path
    assert path.time_s[0] == pytest.approx(0.001)
    np.testing.assert_allclose(np.diff(path.time_s), 0.002, rtol=1e-9)
    assert path.at(-5.0) == path.travel_percent[0]
    assert path.at(1e9) == path.travel_percent[-1]


@pytest.mark.parametrize("width", [2.0, 6.0])
@pytest.mark.parametrize(("seconds", "seed"), [(0.4, 8), (0.6, 1), (0.6, 9), (1.0, 0), (1.0, 4)])
def test_no_stroke_is_lost_beyond_a_stretch_of_chatter(seconds: float, seed: int, width: float) -> None:
    # A single open cell at the beginning of a piece must not be taken for the arm's place or speed.
    truth = strokes(6, seconds=seconds)
    chatter = np.repeat(np.random.default_rng(seed).random(len(truth) // 4 + 1) < 0.5, 4)[: len(truth)]
    opened = chatter & (truth >= 37.0) & (truth < 37.0 + width)
    made = followed(np.where(opened, 0.0, truth) + noise(len(truth), 0.05, seed))
    assert np.abs(made.travel_percent - truth).max() < 3.0


def _shock(size: float, hz: float, *, decay_s: float = 0.05, seconds: float = 0.4) -> Floats:
    """A wheel in a hole, ringing at its hop frequency of 10 to 15 Hz (common practice, no source)."""
    time = np.arange(round(seconds * RATE_HZ)) / RATE_HZ
    swing = -size * np.sin(2 * np.pi * hz * time) * np.exp(-time / decay_s)
    gathered = 0.5 - 0.5 * np.cos(np.pi * np.minimum(time / 0.02, 1.0))  # it gathers speed on its way
    return np.asarray(swing * gathered)


@pytest.mark.parametrize(("size", "hz"), [(20.0, 10.0), (40.0, 12.0), (50.0, 15.0)])
def test_a_wheel_that_falls_into_a_hole_is_followed_however_fast_it_goes(size: float, hz: float) -> None:
    shock = 50.0 + _shock(size, hz)
    assert np.abs(np.diff(shock)).max() * RATE_HZ > 1000.0
    travel = np.concatenate([rest(50.0, 0.5), shock, rest(float(shock[-1]), 0.5)])
    made = followed(travel + noise(len(travel), 0.03))
    assert np.abs(made.travel_percent - travel).max() < 1.0
    assert made.truthful.mean() > 0.98


def test_an_arm_that_strikes_its_stop_and_is_thrown_off_is_followed() -> None:
    swing = 45.0 + 45.0 * np.cos(2 * np.pi * 9.0 * np.arange(round(0.5 * RATE_HZ)) / RATE_HZ)
    struck = np.maximum(swing, 14.0)  # the bump stop: it stops at once, and leaves at once
    slow = stroke(40.0, 90.0, 0.6)
    travel = np.concatenate([rest(14.5, 0.2), stroke(14.5, 40.0, 0.5), slow, struck, rest(struck[-1], 0.3)])
    made = followed(travel + noise(len(travel), 0.03))
    assert float(np.percentile(made.departure, 99.9)) < 1.0


def test_an_open_contact_that_sinks_through_a_filter_is_no_fast_motion() -> None:
    time = np.arange(round(0.05 * RATE_HZ)) / RATE_HZ
    sinking = 50.0 * np.exp(-time / 0.004)  # a capacitor of 4 nF into a probe of 1 M: a corner, then a fall
    travel = np.concatenate([rest(50.0, 1.0), sinking, rest(50.0, 1.0)])
    made = followed(travel + noise(len(travel), 0.03))
    assert np.abs(made.travel_percent - 50.0).max() < 1.0
    assert float(made.below.max()) > 40.0


def test_chatter_at_one_end_of_the_travel_is_no_noise_that_grew() -> None:
    travel = strokes(4, low=8.0, seconds=0.8, pause_s=0.6)
    hit = travel + noise(len(travel), 0.02)
    bad = travel < 11.0
    hit[bad] -= np.random.default_rng(4).uniform(0.0, 7.0, int(bad.sum()))
    made = followed(hit)
    assert float(made.noise.at(9.0)) < 5.0 * float(made.noise.at(50.0))


def test_an_arm_at_rest_in_a_bad_spot_stands_at_the_edge_that_the_signal_never_passes() -> None:
    series, cell_s = travel_cells(50.0 + np.abs(_tremor(6000, 14.0, 4.0, 40.0, seed=2)))
    drawn = outline(series, record="002", start_s=0.0, cell_s=cell_s, step_percent=0.05)
    assert drawn is not None
    made = follow(drawn, resting=True)
    assert np.ptp(made.travel_percent) == 0.0
    assert float(made.travel_percent[0]) == pytest.approx(50.0, abs=2.0)


def test_an_arm_that_turns_in_a_bad_spot_at_the_low_end_is_not_taken_down_to_the_rail() -> None:
    # Below the spot the signal is true again; between, a filter lets it sink to ground as smoothly as an arm.
    truth = np.tile(np.concatenate([stroke(60.0, 8.0, 0.7), stroke(8.0, 60.0, 0.7), rest(60.0, 0.2)]), 3)
    travel, sunk = truth.copy(), 0.0
    for index, place in enumerate(truth):
        bad = 12.5 < place < 15.0
        sunk = sunk * np.exp(-1.0 / RATE_HZ / 0.004) if bad else float(place)
        travel[index] = sunk
    made = followed(travel + noise(len(travel), 0.03))
    assert np.abs(made.travel_percent - truth).max() < 2.0


@pytest.mark.parametrize("lost_s", [0.02, 0.03])
def test_a_shock_of_which_the_recorder_lost_the_beginning_is_followed_where_it_is_seen(lost_s: float) -> None:
    shock = 50.0 + _shock(20.0, 10.0)
    travel = np.concatenate([rest(50.0, 0.5), shock, rest(float(shock[-1]), 0.5)])
    begun = round(0.49 * RATE_HZ)
    seen = travel + noise(len(travel), 0.03)
    seen[begun : begun + round(lost_s * RATE_HZ)] = np.nan
    made = followed(seen)
    known = np.isfinite(seen)
    assert np.abs(made.travel_percent - travel)[known].max() < 4.0


@pytest.mark.parametrize("seconds", [0.015, 0.02, 0.03])
def test_a_hole_with_a_flat_bottom_is_followed_and_the_same_hole_with_edges_is_not(seconds: float) -> None:
    bottom = np.concatenate([stroke(65.0, 40.0, seconds), rest(40.0, 0.03), stroke(40.0, 65.0, seconds)])
    smooth = np.concatenate([rest(65.0, 0.5), bottom, rest(65.0, 0.5)])
    assert np.abs(followed(smooth + noise(len(smooth), 0.05)).travel_percent - smooth).max() < 2.0
    edged = np.concatenate([rest(65.0, 0.5), rest(40.0, 0.09), rest(65.0, 0.5)])
    assert np.abs(followed(edged + noise(len(edged), 0.05)).travel_percent - 65.0).max() < 1.0
