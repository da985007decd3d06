"""Break-up over crossings and travel: bins, visits, dwell, the floor, and what other probes explain."""

from __future__ import annotations

import numpy as np
import pytest
from numpy.typing import NDArray

from analysis.captures.model import Role
from analysis.signals.facts import TrackSurvey
from analysis.signals.floor import RecordSurvey
from analysis.signals.roughness import BIN_PERCENT, survey_record, survey_track
from tests.signals.examples import Floats, followed, noise, rest, stroke, strokes

CELL_S = 0.0005


def _record(
    travel: Floats, *, step_percent: float = 0.0, other: NDArray[np.float32] | None = None
) -> RecordSurvey:
    motion = followed(travel, step_percent=step_percent)
    return survey_record(motion, cell_s=CELL_S, step_percent=step_percent, other_percent=other)


def _worn(truth: Floats, low: float, high: float, seed: int = 0, rms: float = 0.02) -> Floats:
    """Openings of one to five milliseconds, half of the time, wherever the arm is in the band."""
    rng = np.random.default_rng(seed)
    chatter = np.repeat(rng.random(len(truth) // 4 + 1) < 0.5, 4)[: len(truth)]
    opened = chatter & (truth >= low) & (truth < high)
    return np.where(opened, 1.0, truth + noise(len(truth), rms, seed))


def _columns(survey: TrackSurvey, low: float, high: float) -> NDArray[np.bool_]:
    middles = 0.5 * (survey.edges_percent[:-1] + survey.edges_percent[1:])
    return np.asarray((middles > low) & (middles < high))


def _surveyed(travel: Floats, *, step_percent: float = 0.0) -> TrackSurvey:
    return survey_track([_record(travel, step_percent=step_percent)], Role.SIGNAL)


def test_a_sound_track_breaks_up_nowhere() -> None:
    survey = _surveyed(strokes(6) + noise(len(strokes(6)), 0.03))
    assert len(survey.crossings) == 6
    assert np.nanmax(survey.breakup_percent) < 0.1  # output smoothness of a new track (Bourns)
    assert survey.onsets.sum() <= 1


def test_a_worn_band_breaks_up_in_its_bins_on_every_crossing() -> None:
    survey = _surveyed(_worn(strokes(6), 40.0, 46.0))
    inside, outside = _columns(survey, 40.5, 45.5), ~_columns(survey, 38.5, 47.5)
    assert np.all(np.nanmax(survey.breakup_percent[:, inside], axis=1) > 30.0)
    assert np.nanmax(survey.breakup_percent[:, outside]) < 1.0
    assert np.all(survey.onsets[:, _columns(survey, 39.0, 47.0)].sum(axis=1) >= 1)


def test_a_departure_is_as_deep_as_the_hole_less_the_floor() -> None:
    travel = strokes(4) + noise(len(strokes(4)), 0.02)
    first = round(0.6 * 2000)
    truth = strokes(4)[first]
    travel[first : first + 2] = truth - 20.0
    survey = _surveyed(travel)
    assert np.nanmax(survey.breakup_percent) == pytest.approx(20.0 - survey.floor_percent, abs=0.6)


def test_bins_are_visited_by_the_crossings_that_went_there() -> None:
    travel = np.concatenate([strokes(2, low=10, high=90), strokes(2, low=10, high=40)])
    survey = _surveyed(travel + noise(len(travel), 0.02))
    far = _columns(survey, 42.0, 88.0)
    visited = ~np.isnan(survey.breakup_percent)
    long = np.array([item.travel.stop > 60 for item in survey.crossings])
    assert visited[long][:, far].all()
    assert not visited[~long][:, far].any()


def test_dwell_adds_up_to_the_time_of_the_crossings() -> None:
    travel = np.concatenate([stroke(10, 50, 1.0), rest(50.0, 2.0), stroke(50, 90, 1.0)])
    survey = _surveyed(travel + noise(len(travel), 0.02))
    total = sum(item.time.length for item in survey.crossings)
    assert survey.dwell_s.sum() == pytest.approx(total, abs=0.01)
    assert survey.dwell_s[:, _columns(survey, 49.5, 50.5)].sum() > 2.0


def test_a_fast_arm_skips_no_bin() -> None:
    survey = _surveyed(strokes(4, seconds=0.15) + noise(len(strokes(4, seconds=0.15)), 0.02))
    assert not np.isnan(survey.breakup_percent[:, _columns(survey, 11.0, 89.0)]).any()


def test_what_other_probes_show_too_is_no_break_up_but_marked_common() -> None:
    travel = strokes(4) + noise(len(strokes(4)), 0.02)
    hit = np.array([1200, 1201, 3300, 5005])
    travel[hit] += 6.0
    other = np.zeros(len(travel), np.float32)
    other[hit[:3]] = 6.0
    explained = _record(travel, other=other)
    assert explained.common[hit].tolist() == [True, True, True, False]
    assert (explained.excess_percent[hit] > 0).tolist() == [False, False, False, True]
    assert (_record(travel).excess_percent[hit] > 0).all()


def test_a_faint_echo_on_another_probe_explains_no_deep_break_up() -> None:
    # Cross-talk of a recorder: a few per cent of the signal's own drop.
    travel = strokes(4) + noise(len(strokes(4)), 0.02)
    travel[1200:1210] = 1.0
    other = np.zeros(len(travel), np.float32)
    other[1200:1210] = 2.0
    assert (_record(travel, other=other).excess_percent[1200:1210] > 0).all()


@pytest.mark.parametrize("seed", range(3))
def test_more_noise_never_lowers_the_floor(seed: int) -> None:
    unit = noise(len(strokes(4)), 1.0, seed)
    floors = [_surveyed(strokes(4) + rms * unit).floor_percent for rms in (0.0, 0.02, 0.05, 0.1, 0.3, 1.0)]
    assert floors == sorted(floors)
    assert floors[-1] > 3.0


def test_a_coarser_recorder_has_a_higher_floor() -> None:
    truth = strokes(4) + noise(len(strokes(4)), 0.02)
    floors = [
        _surveyed(np.round(truth / step) * step, step_percent=step).floor_percent
        for step in (0.02, 0.1, 0.4, 1.6)
    ]
    assert floors == sorted(floors)
    assert floors[-1] >= 1.6


@pytest.mark.parametrize("step", [0.1, 0.4, 1.6])
def test_rounding_alone_never_breaks_up(step: float) -> None:
    truth = strokes(6, seconds=1.5) + noise(len(strokes(6, seconds=1.5)), 0.02)
    survey = _surveyed(np.round(truth / step) * step, step_percent=step)
    assert survey.onsets.sum() <= 1


def test_a_crossing_that_was_hardly_seen_does_not_count() -> None:
    travel = strokes(4) + noise(len(strokes(4)), 0.02)
    travel[round(0.2 * 2000) : round(1.0 * 2000)] = np.nan  # nearly the whole first stroke
    survey = _surveyed(travel)
    assert np.isnan(survey.breakup_percent[0]).all()
    assert not np.isnan(survey.breakup_percent[1:]).all(axis=1).any()


def test_crossings_of_several_records_lie_over_one_axis() -> None:
    one = _record(_worn(strokes(4), 40, 46))
    other = _record(strokes(3, low=20, high=95) + noise(len(strokes(3)), 0.02))
    both = survey_track([one, other], Role.SIGNAL)
    assert len(both.crossings) == len(both.breakup_percent) == 7
    assert both.edges_percent[0] <= 10.0
    assert both.edges_percent[-1] >= 95.0
    np.testing.assert_allclose(np.diff(both.edges_percent), BIN_PERCENT)
    alone = survey_track([one], Role.SIGNAL)
    shift = int(np.flatnonzero(both.edges_percent == alone.edges_percent[0])[0])
    width = alone.breakup_percent.shape[1]
    np.testing.assert_array_equal(both.breakup_percent[:4, shift : shift + width], alone.breakup_percent)


def test_no_record_makes_a_survey_without_crossings() -> None:
    survey = survey_track([], Role.SECOND_SIGNAL)
    assert survey.role is Role.SECOND_SIGNAL
    assert survey.crossings == ()
    assert survey.breakup_percent.shape == survey.dwell_s.shape == survey.onsets.shape == (0, 1)
    assert survey.path("001") is None


@pytest.mark.parametrize("step_percent", [1.25, 3.125])
def test_coarse_steps_hide_no_break_up_of_some_steps(step_percent: float) -> None:
    """An 8-bit recorder on a 10 or 20 V range: the dips are three steps deep, for ten milliseconds."""
    truth = strokes(8, seconds=1.0)
    where = (truth > 60.0) & (truth < 62.0)
    dipped = truth - np.where(where & (np.arange(len(truth)) // 20 % 2 == 0), 3.0 * step_percent, 0.0)
    stairs = np.round((dipped + noise(len(truth), 0.1 * step_percent)) / step_percent) * step_percent
    survey = _surveyed(stairs, step_percent=step_percent)
    inside, outside = _columns(survey, 58.0, 64.0), ~_columns(survey, 55.0, 67.0)
    noisy = np.nanmax(survey.breakup_percent[:, inside], axis=1) > 0.0
    assert noisy.mean() >= 0.75
    assert np.nanmax(survey.breakup_percent[:, outside]) < step_percent


@pytest.mark.parametrize("step_percent", [0.4, 1.25, 3.125])
@pytest.mark.parametrize("noisy_steps", [0.02, 0.15, 0.3])
def test_steps_of_the_recorder_are_no_break_up(step_percent: float, noisy_steps: float) -> None:
    truth = strokes(8, seconds=0.7)
    told = truth + noise(len(truth), noisy_steps * step_percent)
    survey = _surveyed(np.round(told / step_percent) * step_percent, step_percent=step_percent)
    assert survey.onsets.sum() <= 2


def test_a_record_at_rest_has_no_higher_floor_than_it_is_told() -> None:
    shaken = rest(40.0, 2.0) + noise(round(2.0 / CELL_S), 5.0)
    motion = followed(shaken)
    free = survey_record(motion, cell_s=CELL_S, step_percent=0.0, other_percent=None)
    told = survey_record(motion, cell_s=CELL_S, step_percent=0.0, other_percent=None, most_percent=1.0)
    assert free.floor.typical() > 5.0
    assert told.floor.typical() == pytest.approx(1.0)
    assert told.excess_percent.sum() > free.excess_percent.sum()
