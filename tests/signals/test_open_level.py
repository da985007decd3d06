"""Which level is the open contact's, and where an arm at rest is whose signal is mostly elsewhere."""

from __future__ import annotations

import numpy as np
import pytest

from analysis.signals.cells import CellSeries
from analysis.signals.open_level import find_open_level, rest_place, usual_place
from analysis.signals.pieces import Cut, truthful_chain
from tests.signals.examples import RATE_HZ, Floats, noise, rest, stroke

CELL_S = 1.0 / RATE_HZ
TOLERANCE = 0.2


def _cut(travel: Floats) -> Cut:
    cells = travel.astype(np.float32)
    return Cut.of(cells, np.isfinite(cells), np.full(len(cells), TOLERANCE, np.float32), CELL_S)


def _mostly_open(truth: Floats, level: float, seed: int = 0) -> Floats:
    """A contact that is open four fifths of the time, for 20 ms and more at once."""
    block = round(0.02 * RATE_HZ)
    opened = np.random.default_rng(seed).random(len(truth) // block + 1) < 0.8
    return np.where(np.repeat(opened, block)[: len(truth)], level, truth)


def _from_a_bad_spot(level: float) -> Floats:
    """The arm creeps through a bad spot, and then leaves it for the rest of the track."""
    creep = np.linspace(10.0, 16.0, round(3.0 * RATE_HZ))
    return np.concatenate([_mostly_open(creep, level), stroke(16.0, 90.0, 0.8), rest(90.0, 0.5)])


@pytest.mark.parametrize("level", [83.0, 97.0, 2.0])
def test_an_arm_that_creeps_through_a_bad_spot_is_told_from_the_level_it_opens_to(level: float) -> None:
    assert find_open_level([_cut(_from_a_bad_spot(level))]) == pytest.approx(level, abs=0.3)


def test_the_same_signal_upside_down_has_the_open_level_upside_down() -> None:
    travel = _from_a_bad_spot(83.0)
    there, back = find_open_level([_cut(travel)]), find_open_level([_cut(100.0 - travel)])
    assert there is not None
    assert back == pytest.approx(100.0 - there, abs=0.01)


def _sinking(place: float, seed: int) -> Floats:
    """An arm rests where its contact keeps opening; through a filter the signal sinks to 0 and comes back."""
    rng, travel = np.random.default_rng(seed), [rest(place, 0.1)]
    for _ in range(100):
        times = np.arange(round(rng.uniform(0.002, 0.012) * RATE_HZ)) / RATE_HZ
        travel.append(place * np.exp(-times / 0.005))
        travel.append(rest(place - rng.uniform(0.0, 0.2), rng.uniform(0.002, 0.01)))
    return np.concatenate(travel)


@pytest.mark.parametrize("seed", range(4))
def test_where_the_signal_comes_back_to_is_not_the_level_it_sinks_to(seed: int) -> None:
    moved = [stroke(60.0, 7.5, 0.8), _sinking(7.5, seed), stroke(7.5, 60.0, 0.8)]
    found = find_open_level([_cut(np.concatenate(moved))])
    assert found is None or found < 4.0


def _cells(travel: Floats) -> CellSeries:
    mean = travel.astype(np.float32)
    return CellSeries(mean, mean - np.float32(0.02), mean + np.float32(0.02))


@pytest.mark.parametrize("place", [12.0, 50.0])
def test_an_arm_at_rest_is_where_its_rare_closings_reach(place: float) -> None:
    travel = _mostly_open(rest(place, 2.0), 97.0) + noise(round(2.0 * RATE_HZ), 0.02)
    found = rest_place(_cells(travel), np.full(len(travel), TOLERANCE, np.float32), 97.0)
    assert found == pytest.approx(place, abs=0.2)


def test_a_contact_that_never_closes_tells_no_place() -> None:
    travel = rest(97.0, 1.0)
    assert rest_place(_cells(travel), np.full(len(travel), TOLERANCE, np.float32), 97.0) is None


def test_an_arm_at_rest_is_where_its_signal_comes_back_to() -> None:
    truth = rest(38.4, 3.0)
    shaken = truth.copy()
    shaken[1000:4000] *= np.random.default_rng(1).random(3000)
    assert usual_place(_cells(shaken + noise(len(truth), 0.02)), 0.0) == pytest.approx(38.4, abs=0.1)
    assert usual_place(_cells(shaken), 1.25) == pytest.approx(38.4, abs=1.25)


def test_a_signal_that_comes_back_to_no_level_tells_no_place() -> None:
    roaming = 50.0 + 40.0 * np.random.default_rng(2).uniform(-1.0, 1.0, 4000)
    assert usual_place(_cells(roaming), 0.0) is None
    assert usual_place(_cells(np.full(10, np.nan)), 0.0) is None


def _thrown_against_a_stop(stop: float, speed_percent_per_s: float = 1500.0) -> Floats:
    """An arm on a road that comes from here and there, hits its stop and stands there for 40 ms."""
    parts: list[Floats] = []
    here = 30.0
    for start in (30.0, 45.0, 55.0, 38.0, 50.0):
        parts, here = [*parts, stroke(here, start, 0.3)], start
        # It gathers speed all the way, and has most of it when the stop takes it away.
        count = round(0.5 * np.pi * (stop - start) / speed_percent_per_s * RATE_HZ)
        way = start + (stop - start) * (1.0 - np.cos(0.5 * np.pi * np.arange(count) / count))
        parts += [rest(start, 0.3), way, rest(stop, 0.04), way[::-1]]
    return np.concatenate([*parts, rest(here, 0.3)])


@pytest.mark.parametrize("speed", [900.0, 1500.0, 2500.0])
def test_a_stop_that_an_arm_is_thrown_against_is_no_open_level(speed: float) -> None:
    travel = _thrown_against_a_stop(86.4, speed)
    assert find_open_level([_cut(travel + noise(len(travel), 0.02))]) is None


@pytest.mark.parametrize("speed", [900.0, 1500.0, 2500.0])
def test_the_time_on_such_a_stop_is_the_arms(speed: float) -> None:
    travel = _thrown_against_a_stop(86.4, speed)
    cut = _cut(travel + noise(len(travel), 0.02))
    believed = cut.pieces.cells(truthful_chain(cut, open_level=None).chosen, 0, len(travel))
    assert believed[travel == 86.4].mean() > 0.95


def test_a_level_that_is_jumped_to_from_here_and_there_is_one_though_it_is_the_outermost() -> None:
    parts = [rest(10.0, 0.3)]
    for start, stop in ((10.0, 70.0), (70.0, 20.0), (20.0, 60.0), (60.0, 10.0)):
        way = stroke(start, stop, 0.8)
        way[len(way) // 2 :][: round(0.06 * RATE_HZ)] = 86.4
        parts += [way, rest(stop, 0.2)]
    travel = np.concatenate(parts)
    assert find_open_level([_cut(travel + noise(len(travel), 0.02))]) == pytest.approx(86.4, abs=0.3)
