"""Places: crossings are counted, not samples, and chance in time makes none."""

from __future__ import annotations

from dataclasses import dataclass, replace
from itertools import pairwise

import numpy as np
import pytest

from analysis.captures.model import Role
from analysis.diagnosis.place_odds import place_against_time
from analysis.diagnosis.places import MOST_PLACES, Place, find_places
from analysis.intervals import Interval
from analysis.signals.facts import Crossing, Direction, TrackSurvey
from analysis.signals.roughness import BIN_PERCENT
from tests.signals.examples import Floats

EDGES = np.arange(10.0, 90.0 + BIN_PERCENT, BIN_PERCENT)
BINS = len(EDGES) - 1


@dataclass(slots=True)
class Sheet:
    """A survey under construction: what broke up, what began, and how long the arm was there."""

    breakup: Floats
    onsets: Floats
    dwell_s: Floats

    @classmethod
    def clean(cls, crossings: int, stroke_s: float = 1.0) -> Sheet:
        shape = (crossings, BINS)
        return cls(np.zeros(shape), np.zeros(shape), np.full(shape, stroke_s / BINS))

    def hit(self, row: int, low: float, high: float, depth: float = 20.0) -> None:
        """One disturbance over a stretch of travel."""
        first, last = (
            round((low - 10.0) / BIN_PERCENT),
            max(round((high - 10.0) / BIN_PERCENT), round((low - 10.0) / BIN_PERCENT) + 1),
        )
        self.breakup[row, first:last] = depth
        self.onsets[row, first] += 1

    def survey(self) -> TrackSurvey:
        crossings = tuple(
            Crossing(
                "001",
                Direction.UP if row % 2 == 0 else Direction.DOWN,
                Interval(1.0 * row, row + 1.0),
                Interval(10.0, 90.0),
            )
            for row in range(len(self.breakup))
        )
        return TrackSurvey(
            role=Role.SIGNAL,
            edges_percent=EDGES,
            crossings=crossings,
            breakup_percent=self.breakup,
            floor_percent=0.2,
            paths=(),
            dwell_s=self.dwell_s,
            onsets=self.onsets,
            lasting=self.onsets.copy(),
            restless_s=np.zeros_like(self.dwell_s),
        )


def _bad_spot(crossings: int, band: Interval, *, shown: int | None = None, seed: int = 0) -> Sheet:
    """Each noisy crossing breaks up over most of the band, both its edges included, in a run or three."""
    rng = np.random.default_rng(seed)
    sheet = Sheet.clean(crossings)
    for row in range(crossings if shown is None else shown):
        cut = rng.uniform(band.start, band.stop, 2)
        sheet.hit(row, band.start, max(float(cut.min()), band.start + BIN_PERCENT))
        sheet.hit(row, min(float(cut.max()), band.stop - BIN_PERCENT), band.stop)
    return sheet


def _random(crossings: int, events: int, seed: int) -> Sheet:
    rng = np.random.default_rng(seed)
    sheet = Sheet.clean(crossings)
    for _ in range(events):
        low = float(rng.uniform(10.0, 89.0))
        low = 10.0 + BIN_PERCENT * round((low - 10.0) / BIN_PERCENT)
        sheet.hit(int(rng.integers(crossings)), low, low + BIN_PERCENT)
    return sheet


@pytest.mark.parametrize(
    "band", [Interval(42.0, 48.0), Interval(30.0, 31.0), Interval(10.0, 13.0), Interval(77.0, 87.0)]
)
@pytest.mark.parametrize("crossings", [6, 12])
def test_a_bad_spot_is_found_with_its_edges(band: Interval, crossings: int) -> None:
    (place,) = find_places(_bad_spot(crossings, band).survey())
    assert place.log_odds > 2.0
    assert abs(place.travel.start - band.start) <= 0.5
    assert abs(place.travel.stop - band.stop) <= 0.5
    # An arm that turns round beside the spot has visited it once, not twice.
    visits = crossings if band.start > 14.0 and band.stop < 86.0 else crossings // 2
    assert int(place.noisy.sum()) == int(place.crossed.sum())
    assert visits <= int(place.noisy.sum()) <= crossings
    assert place.elsewhere_per_s == 0.0


def test_the_stated_uncertainty_of_an_edge_covers_its_error() -> None:
    off = []
    for seed in range(20):
        (place,) = find_places(_bad_spot(4, Interval(42.0, 48.0), seed=seed).survey())
        off.append(abs(place.travel.start - 42.0) <= place.start_uncertainty_percent)
        off.append(abs(place.travel.stop - 48.0) <= place.stop_uncertainty_percent)
    assert np.mean(off) >= 0.9


def test_two_bad_spots_are_two_places_and_do_not_overlap() -> None:
    sheet = _bad_spot(8, Interval(30.0, 34.0))
    other = _bad_spot(8, Interval(60.0, 66.0), seed=1)
    both = _together(sheet, other)
    found = sorted(find_places(both.survey()), key=lambda item: item.travel)
    assert [round(item.travel.centre) for item in found] == [32, 63]
    assert all(one.travel.stop <= two.travel.start for one, two in pairwise(found))


def _together(one: Sheet, other: Sheet) -> Sheet:
    """Everything that either sheet shows."""
    return Sheet(np.maximum(one.breakup, other.breakup), one.onsets + other.onsets, one.dwell_s)


@pytest.mark.parametrize("seed", range(8))
@pytest.mark.parametrize(("crossings", "events"), [(4, 6), (9, 30), (12, 100)])
def test_disturbances_at_random_make_no_certain_place(seed: int, crossings: int, events: int) -> None:
    found = find_places(_random(crossings, events, seed).survey())
    assert all(place.log_odds < 2.0 for place in found)


@pytest.mark.parametrize("crossings", [2, 6, 12])
def test_one_spike_on_one_crossing_is_no_place(crossings: int) -> None:
    sheet = Sheet.clean(crossings)
    sheet.hit(crossings // 2, 45.0, 45.25)
    assert all(place.log_odds < 0.0 for place in find_places(sheet.survey()))


def test_a_clean_track_and_an_empty_survey_have_no_place() -> None:
    assert find_places(Sheet.clean(6).survey()) == ()
    empty = Sheet.clean(0).survey()
    assert find_places(empty) == ()


def test_more_crossings_that_show_it_make_it_more_certain() -> None:
    odds = [find_places(_bad_spot(n, Interval(42, 46)).survey())[0].log_odds for n in (2, 3, 4, 6, 9, 12)]
    assert odds == sorted(odds)
    assert odds[-1] > odds[0] + 5.0


def test_clean_crossings_make_it_less_certain() -> None:
    odds = [
        find_places(_bad_spot(12, Interval(42, 46), shown=n).survey())[0].log_odds for n in (12, 10, 8, 6)
    ]
    assert odds == sorted(odds, reverse=True)


def test_events_elsewhere_make_it_less_certain() -> None:
    odds = []
    for events in (0, 20, 80, 300):
        sheet = _together(_bad_spot(6, Interval(42.0, 44.0)), _random(6, events, seed=3))
        near = [p for p in find_places(sheet.survey()) if p.travel.overlap(Interval(42.0, 44.0)) > 0]
        odds.append(max((p.log_odds for p in near), default=-10.0))
    assert odds == sorted(odds, reverse=True)
    assert odds[-1] < odds[0] - 2.0


@pytest.mark.parametrize("shown", [2, 3, 6])
def test_dwelling_on_the_spot_does_not_count_twice(shown: int) -> None:
    """Thirty openings while the arm rests on the spot in one crossing are one noisy crossing."""
    once = _bad_spot(6, Interval(42.0, 46.0), shown=shown)
    often = _bad_spot(6, Interval(42.0, 46.0), shown=shown)
    often.onsets[0, often.onsets[0] > 0] += 30.0
    assert [_summary(item) for item in find_places(often.survey())] == [
        _summary(item) for item in find_places(once.survey())
    ]
    inside = slice(round(32.0 / BIN_PERCENT), round(36.0 / BIN_PERCENT))
    often.dwell_s[0, inside] += 5.0 / 16  # five more seconds on the spot: chance had more time
    best = find_places(once.survey())[0]
    assert all(item.log_odds <= best.log_odds for item in find_places(often.survey()))


def _summary(place: Place) -> tuple[Interval, float, int, int]:
    return place.travel, round(place.log_odds, 9), int(place.crossed.sum()), int(place.noisy.sum())


@pytest.mark.parametrize("seed", range(4))
def test_the_order_of_the_crossings_changes_nothing(seed: int) -> None:
    sheet = _together(_bad_spot(9, Interval(42.0, 46.0), shown=7), _random(9, 25, seed))
    order = np.random.default_rng(seed).permutation(9)
    shuffled = Sheet(sheet.breakup[order], sheet.onsets[order], sheet.dwell_s[order])
    one, other = find_places(_apart(sheet.survey())), find_places(_apart(shuffled.survey()))
    assert [_summary(item) for item in one] == [_summary(item) for item in other]
    np.testing.assert_array_equal(one[0].noisy[order], other[0].noisy)


def _apart(survey: TrackSurvey) -> TrackSurvey:
    """The same survey, each crossing from a record of its own: none goes on where another turned round."""
    crossings = tuple(replace(item, record=str(index)) for index, item in enumerate(survey.crossings))
    return replace(survey, crossings=crossings)


def test_a_mirrored_track_has_the_mirrored_place() -> None:
    sheet = _bad_spot(6, Interval(42.0, 47.0))
    mirrored = Sheet(sheet.breakup[:, ::-1], sheet.onsets[:, ::-1], sheet.dwell_s[:, ::-1])
    (one,), (other,) = find_places(sheet.survey()), find_places(mirrored.survey())
    assert other.travel.start == pytest.approx(100.0 - one.travel.stop, abs=0.25)
    assert other.travel.stop == pytest.approx(100.0 - one.travel.start, abs=0.25)
    assert other.log_odds == pytest.approx(one.log_odds, abs=0.5)


def test_crossings_that_never_went_there_do_not_count() -> None:
    sheet = _bad_spot(9, Interval(42.0, 46.0), shown=5)
    sheet.breakup[5:, : round(50.0 / BIN_PERCENT)] = np.nan
    sheet.dwell_s[5:, : round(50.0 / BIN_PERCENT)] = 0.0
    (place,) = find_places(sheet.survey())
    assert int(place.crossed.sum()) == 5


def test_no_more_places_are_looked_for_than_make_sense() -> None:
    sheet = Sheet.clean(9)
    for low in (14.0, 26.0, 38.0, 50.0, 62.0, 74.0):
        sheet = _together(sheet, _bad_spot(9, Interval(low, low + 2.0)))
    assert len(find_places(sheet.survey())) <= MOST_PLACES


def test_finding_places_leaves_the_survey_as_it_was() -> None:
    survey = _bad_spot(6, Interval(42.0, 46.0)).survey()
    kept = replace(survey, onsets=survey.onsets.copy(), breakup_percent=survey.breakup_percent.copy())
    find_places(survey)
    np.testing.assert_array_equal(survey.onsets, kept.onsets)
    np.testing.assert_array_equal(survey.breakup_percent, kept.breakup_percent)


def test_place_against_time_is_the_ratio_of_two_closed_forms() -> None:
    # Three of three crossings noisy, one second each at the stretch in a hundred, nothing elsewhere.
    # Place: B(3 + 2, 0.7) / B(2, 0.7) = (2 * 3 * 4) / (2.7 * 3.7 * 4.7) (recurrence of the beta function).
    # Time: (1 - exp(-m r T))^3, r = 1 / 97 a second, averaged over the mixture of m.
    ones = np.ones((3, 1))
    found = place_against_time(ones > 0, ones, ones, np.full(1, 1.0 / 97.0))
    place = 24.0 / (2.7 * 3.7 * 4.7)
    mixture = ((1.0, 0.5), (2.0, 0.33), (4.0, 0.14), (8.0, 0.03))
    time = sum(weight * (1.0 - np.exp(-times / 97.0)) ** 3 for times, weight in mixture)
    assert found[0] == pytest.approx(np.log(place / time), rel=1e-9)


def test_a_second_bad_spot_takes_little_from_the_first() -> None:
    alone = find_places(_bad_spot(8, Interval(30.0, 34.0)).survey())[0]
    both = find_places(
        _together(_bad_spot(8, Interval(30.0, 34.0)), _bad_spot(8, Interval(60.0, 66.0), seed=1)).survey()
    )
    (same,) = (place for place in both if place.travel.overlap(alone.travel) > 0.0)
    assert same.log_odds > 0.5 * alone.log_odds


@pytest.mark.parametrize("seed", range(8))
def test_sparks_where_the_arm_dwells_are_no_bad_spot(seed: int) -> None:
    """Disturbances at one rate everywhere fall mostly where the arm is most of the time."""
    rng = np.random.default_rng(seed)
    sheet = Sheet.clean(200)
    middle = 0.5 + np.arange(sheet.dwell_s.shape[1]) - 0.5 * sheet.dwell_s.shape[1]
    sheet.dwell_s[:] = 0.01 * np.exp(-0.5 * (middle / 30.0) ** 2) + 1e-5
    sheet.onsets[:] = rng.poisson(30.0 * sheet.dwell_s)
    sheet.breakup[sheet.onsets > 0] = 5.0
    assert all(place.log_odds < 2.0 for place in find_places(sheet.survey()))


def test_where_no_track_reaches_there_is_no_bad_spot() -> None:
    """The signal of an open contact sinks to a rail; a path that is led there finds break-up on its way."""
    sheet = _bad_spot(8, Interval(42.0, 46.0))
    survey = replace(sheet.survey(), edges_percent=EDGES - 41.5)
    assert find_places(survey) == ()


def test_a_visit_too_short_to_count_is_no_better_proof_for_being_short() -> None:
    """Disturbances at random in time, on an arm that hovers and now and then only touches a stretch."""
    rng = np.random.default_rng(8)
    sheet = Sheet.clean(60)
    sheet.dwell_s *= rng.uniform(0.2, 4.0, (60, 1))
    sheet.onsets[:] = rng.poisson(6.0 * sheet.dwell_s)
    sheet.breakup[sheet.onsets > 0] = 5.0
    narrow = (
        rng.uniform(size=(60, BINS // 4)).repeat(4, axis=1) < 0.5
    )  # half of the stretches are not visited
    sheet.breakup[:, : narrow.shape[1]][narrow] = np.nan
    assert all(place.log_odds < 2.0 for place in find_places(sheet.survey()))


def test_a_bad_spot_stands_out_and_a_part_of_a_restless_whole_does_not() -> None:
    (spot,) = find_places(_bad_spot(8, Interval(42.0, 48.0)).survey())
    assert spot.contrast > 2.0
    # Some three events on every crossing anywhere, a few more in one place: sure, by their number, yet vague.
    restless = _random(600, 2_000, seed=3)
    rng = np.random.default_rng(4)
    for row in range(0, 600, 3):
        restless.hit(row, low := 40.0 + BIN_PERCENT * int(rng.integers(0, 20)), low + BIN_PERCENT)
    place = find_places(restless.survey())[0]
    assert place.log_odds > 2.0
    assert place.contrast < 2.0
