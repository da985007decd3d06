"""Two crossings that broke up from one edge to the other say more than two that broke up where they liked."""

from __future__ import annotations

import numpy as np
import pytest
from numpy.typing import NDArray

from analysis.diagnosis.place_agreement import MOST_AGREEMENT, agreement
from analysis.diagnosis.place_edges import edge_gain, find_edges
from analysis.diagnosis.places import find_places, place_at
from analysis.intervals import Interval
from tests.diagnosis.test_places import Sheet

BINS = 320


def _bursts(*spans: tuple[int, int]) -> NDArray[np.bool_]:
    """One crossing a span, broken up from its first bin to its last."""
    broken = np.zeros((len(spans), BINS), dtype=np.bool_)
    for row, (first, last) in enumerate(spans):
        broken[row, first:last] = True
    return broken


def test_the_same_edges_each_time_speak_for_a_bad_spot() -> None:
    assert agreement(_bursts((140, 172), (140, 172)), 140, 172) == MOST_AGREEMENT


def test_bursts_that_only_touch_do_not() -> None:
    assert agreement(_bursts((100, 172), (140, 220)), 140, 172) < 1.0


@pytest.mark.parametrize("rows", [(), ((140, 172),)])
def test_fewer_than_two_crossings_agree_on_nothing(rows: tuple[tuple[int, int], ...]) -> None:
    assert agreement(_bursts(*rows), 140, 172) == 0.0


def test_lone_spikes_agree_on_next_to_nothing() -> None:
    assert agreement(_bursts((150, 151), (152, 153)), 148, 154) < 1.0


def test_the_more_the_edges_stray_the_less_they_agree() -> None:
    told = [agreement(_bursts((140 - off, 160 - off), (140 + off, 160 + off)), 140, 160) for off in (0, 2, 6)]
    assert told[0] >= told[1] > told[2]


def test_a_mirrored_track_agrees_alike() -> None:
    broken = _bursts((140, 171), (142, 172), (139, 168))
    mirrored = agreement(broken[:, ::-1], BINS - 172, BINS - 139)
    assert agreement(broken, 139, 172) == pytest.approx(mirrored)


def test_bursts_at_random_seldom_agree_as_a_bad_spot_does() -> None:
    rng = np.random.default_rng(5)
    told = []
    for _ in range(300):
        length = np.exp(rng.uniform(0.0, np.log(60.0), 2)).astype(int) + 1
        begin = [int(rng.integers(160 - n, 176)) for n in length]
        told.append(
            agreement(_bursts(*((b, b + int(n)) for b, n in zip(begin, length, strict=True))), 160, 176)
        )
    # A likelihood ratio exceeds x by chance in no more than one case in x (Ville 1939, Markov's inequality);
    # the lengths and places drawn here are those that it supposes, the median edges are not, hence twice.
    assert np.mean(np.array(told) >= np.log(20.0)) <= 2.0 / 20.0


def test_a_spot_broken_all_through_on_two_fast_crossings_is_one_place() -> None:
    sheet = Sheet.clean(2, stroke_s=4.0)
    rng = np.random.default_rng(3)
    for row in range(2):
        for low in np.arange(44.0, 52.0, 0.25):
            if low in (44.0, 51.75) or rng.random() < 0.85:
                sheet.hit(row, float(low), float(low) + 0.25)
    places = find_places(sheet.survey())
    assert len(places) == 1
    assert places[0].travel.start == pytest.approx(44.0, abs=0.5)
    assert places[0].travel.stop == pytest.approx(52.0, abs=0.5)
    assert places[0].log_odds > 2.0


def test_the_edges_found_explain_the_visits_best() -> None:
    noisy = np.zeros((4, BINS))
    noisy[:, 140:172] = 1.0
    first, last, _ = find_edges(noisy, 150, 155)
    assert (first, last) == (140, 172)
    assert edge_gain(noisy, (first, last), (150, 155)) > 0.0
    assert edge_gain(noisy, (150, 155), (first, last)) < 0.0
    assert edge_gain(noisy, (first, last), (first, last)) == 0.0


def test_a_stretch_that_is_named_is_judged_as_one_that_was_found() -> None:
    sheet = Sheet.clean(3)
    for row in range(3):
        sheet.hit(row, 40.0, 46.0)
    survey = sheet.survey()
    (found,) = find_places(survey)
    named = place_at(survey, Interval(40.0, 46.0), [(found.travel, found.log_odds)])
    assert named.log_odds == pytest.approx(found.log_odds, abs=1.5)
    assert named.log_odds >= found.log_odds


def test_three_crossings_of_ten_that_agree_by_chance_add_nothing() -> None:
    often, seldom = Sheet.clean(3), Sheet.clean(10)
    for row in range(3):
        often.hit(row, 40.0, 46.0)
        seldom.hit(row, 40.0, 46.0)
    (all_of_them,) = find_places(often.survey())
    some = find_places(seldom.survey())
    assert all_of_them.log_odds - max(place.log_odds for place in some) > 4.0
