"""A place where every crossing departs further than it does elsewhere, though none leaves the floor."""

from __future__ import annotations

import numpy as np
import pytest
from numpy.typing import NDArray

from analysis.captures.model import Role
from analysis.comparison.mirrored import mirrored_survey
from analysis.diagnosis.place_ranks import HIGH, cells_expected, place_against_rank, rates_outside
from analysis.diagnosis.place_signs import Visits
from analysis.diagnosis.places import find_places, place_at
from analysis.intervals import Interval
from analysis.signals.facts import TrackSurvey
from analysis.signals.ranks import LEVELS, MOST_RANKED
from analysis.signals.roughness import survey_record, survey_track
from tests.signals.examples import Floats, followed, noise, strokes

CELL_S = 0.0005


def _surveyed(travel: Floats, step_percent: float = 0.0) -> TrackSurvey:
    motion = followed(travel, step_percent=step_percent)
    record = survey_record(motion, cell_s=CELL_S, step_percent=step_percent, other_percent=None)
    return survey_track([record], Role.SIGNAL)


def _grainy(bands: list[Interval], *, of_floor: float = 0.8, seed: int = 0) -> TrackSurvey:
    """Six strokes over noise; on crossing `i` the output is up one cell in eight inside ``bands[i]``.

    By a share of the floor, so that no cell leaves it but where noise helps.
    """
    truth = strokes(6)
    sound = truth + noise(len(truth), 0.03, seed)
    up = of_floor * _surveyed(sound).floor_percent
    rng, stroke = np.random.default_rng(seed + 100), len(truth) // 6
    for row, band in enumerate(bands):
        own = slice(row * stroke, (row + 1) * stroke)
        inside = (truth[own] >= band.start) & (truth[own] < band.stop)
        sound[own] += up * (inside & (rng.random(stroke) < 0.125))
    return _surveyed(sound)


@pytest.mark.parametrize("seed", range(4))
def test_a_grain_below_the_floor_that_comes_back_at_one_place_is_found(seed: int) -> None:
    band = Interval(42.0, 44.0)
    survey = _grainy([band] * 6, seed=seed)
    best = find_places(survey)[0]
    assert best.log_odds > 3.0
    assert band.widened(0.5).contains(best.travel.start)
    assert band.widened(0.5).contains(best.travel.stop)
    assert int(best.noisy.sum()) >= 5
    assert int(best.crossed.sum()) == 6
    assert best.contrast > 1.0
    assert all(place.log_odds < 0.0 for place in find_places(survey.unranked()))


@pytest.mark.parametrize("seed", range(4))
def test_the_same_grain_at_another_place_each_time_is_no_place(seed: int) -> None:
    bands = [Interval(low, low + 2.0) for low in (16.0, 28.0, 40.0, 52.0, 64.0, 76.0)]
    assert all(place.log_odds < 2.0 for place in find_places(_grainy(bands, seed=seed)))


@pytest.mark.parametrize("seed", range(6))
@pytest.mark.parametrize("step_percent", [0.0, 1.6])
def test_noise_and_steps_alone_are_no_place(seed: int, step_percent: float) -> None:
    travel = strokes(6) + noise(len(strokes(6)), 0.05, seed)
    if step_percent:
        travel = step_percent * np.round(travel / step_percent)
    found = find_places(_surveyed(travel, step_percent))
    assert all(place.log_odds < 1.0 for place in found)


def test_a_named_stretch_is_judged_by_rank_too() -> None:
    band = Interval(42.0, 44.0)
    survey = _grainy([band] * 6)
    assert place_at(survey, band).log_odds > 0.0 > place_at(survey, Interval(60.0, 66.0)).log_odds


def test_a_stretch_where_no_crossing_stands_out_is_noisy_on_none() -> None:
    survey = _grainy([Interval(42.0, 44.0)] * 6)
    assert int(place_at(survey, Interval(42.0, 44.0)).noisy.sum()) >= 5
    for low in (20.0, 30.0, 50.0, 60.0, 70.0):
        assert not place_at(survey, Interval(low, low + 4.0)).noisy.any()


def test_a_mirrored_survey_has_the_same_place_from_the_other_end() -> None:
    survey = _grainy([Interval(32.0, 34.0)] * 6)
    there, here = find_places(mirrored_survey(survey))[0], find_places(survey)[0]
    assert there.travel.centre == pytest.approx(100.0 - here.travel.centre, abs=0.5)
    assert there.log_odds == pytest.approx(here.log_odds, abs=0.5)


def test_many_crossings_are_not_ranked() -> None:
    few, many = (_surveyed(strokes(count, seconds=0.2)) for count in (MOST_RANKED, MOST_RANKED + 1))
    assert few.worst_level.shape == few.breakup_percent.shape
    assert few.levels_s.shape == (few.breakup_percent.shape[1], len(LEVELS))
    assert many.worst_level.size == many.levels_s.size == 0
    assert len(many.crossings) == MOST_RANKED + 1


def test_chance_speaks_for_a_place_as_seldom_as_a_likelihood_ratio_may() -> None:
    """By chance a likelihood ratio has a mean of one (Wald 1945), and Markov's inequality bounds its tail.

    The plain null hypothesis has half of the weight of those that it is compared with: twice that.
    """
    chance = np.random.default_rng(1).random((6, 40_000))
    ratio = place_against_rank(np.ones(chance.shape, dtype=np.bool_), -np.log1p(-chance))
    assert np.exp(ratio).mean() < 2.0
    for bound in (1.0, 2.0, 4.0):
        assert np.mean(ratio > bound) < 2.0 * np.exp(-bound)


def test_the_less_is_expected_and_the_oftener_the_surer() -> None:
    every = np.ones((6, 1), dtype=np.bool_)
    odds = [float(place_against_rank(every, np.full((6, 1), cells))[0]) for cells in (0.1, 0.03, 0.01, 0.001)]
    assert odds == sorted(odds)
    assert odds[0] < 0.0 < odds[2]
    more = [float(place_against_rank(every[:n], np.full((n, 1), 0.01))[0]) for n in (1, 2, 4, 6)]
    assert more == sorted(more)
    assert more[0] < 3.0  # a lone crossing is no place, however far it departs
    assert float(place_against_rank(every & False, np.full((6, 1), 0.01))[0]) == pytest.approx(0.0)


def test_the_rate_of_a_level_counts_all_levels_above_it_and_not_the_stretch_itself() -> None:
    levels_s, dwell_s = np.zeros((200, len(LEVELS))), np.full(200, 0.1)
    levels_s[50, 3], levels_s[120, 9] = 4 * CELL_S, 2 * CELL_S
    rates = rates_outside(levels_s, dwell_s, CELL_S, 4)
    assert rates.shape == (197, len(LEVELS))
    assert (np.diff(rates, axis=1) <= 0.0).all()
    # One more than was seen is counted: a rate is never proved to be nought. One other spot is left out.
    quiet_s = 0.1 * (200 - 4 - 48)
    assert rates[48, 0] == pytest.approx(1.0 / quiet_s)
    assert rates[120, 9] == pytest.approx(1.0 / (0.1 * (200 - 4)))


def test_cells_are_expected_for_as_long_as_the_arm_was_there() -> None:
    level = np.array([[2, -1], [5, 0]], dtype=np.int8)
    rates = np.tile(np.linspace(8.0, 1.0, 8), (2, 1))
    expected = cells_expected(level, rates, np.array([[0.5, 0.5], [2.0, 0.25]]))
    np.testing.assert_allclose(expected, [[3.0, np.inf], [6.0, 2.0]])
    assert HIGH < 1.0


def test_a_hand_that_trembles_over_a_stretch_has_visited_it_once() -> None:
    goes_on: NDArray[np.bool_] = np.array([[False], [True], [True], [False]])
    counted, expected = Visits(goes_on).furthest(
        np.ones((4, 1), dtype=np.bool_), np.array([[0.3], [0.01], [0.2], [0.05]])
    )
    np.testing.assert_array_equal(counted[:, 0], [True, False, False, True])
    np.testing.assert_allclose(expected[counted], [0.03, 0.05])
