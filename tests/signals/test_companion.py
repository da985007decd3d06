"""Two tracks on one arm: how they go together, and what one tells where the other is lost."""

from __future__ import annotations

from collections.abc import Callable

import numpy as np
import pytest
from scipy.stats import linregress

from analysis.signals.companion import Pair, Relation, Traced, helped, relation_of, steadier_is_second
from analysis.signals.motion import follow
from analysis.signals.outline import outline
from tests.signals.examples import Floats, noise, rest, stroke, strokes, travel_cells

OPEN = 0.4
"""Travel in % at which the signal stands while the contact is open, towards ground."""


def traced(travel: Floats, *, opened: Floats | None = None, seed: int = 1) -> Traced:
    read = travel + noise(len(travel), 0.03, seed)
    if opened is not None:
        read = np.where(opened > 0, OPEN + noise(len(travel), 0.03, seed + 50), read)
    series, cell_s = travel_cells(read)
    drawn = outline(series, record="001", start_s=0.0, cell_s=cell_s, step_percent=0.0)
    assert drawn is not None
    return Traced(drawn, follow(drawn))


def hovering() -> Floats:
    """Strokes, and in between an arm that moves to and fro inside 42 to 48 %."""
    parts = [strokes(2), stroke(10.0, 44.0, 0.6)]
    for index in range(6):
        ends = (44.0, 46.5) if index % 2 == 0 else (46.5, 44.0)
        parts += [stroke(*ends, 0.4), rest(ends[1], 0.1)]
    return np.concatenate([*parts, stroke(44.0, 10.0, 0.6), strokes(2)])


def inside(travel: Floats) -> Floats:
    return ((travel >= 42.0) & (travel < 48.0)).astype(np.float64)


# Ratio 2:1 (Mazda CX-30 2019), 0.55 V apart (Mazda6 2011), opposite ways (Mazda CX-9): service information.
PAIRS = {"half": (0.5, 0.0), "apart": (1.0, -8.0), "inverted": (-1.0, 100.0)}


@pytest.mark.parametrize("name", PAIRS)
def test_the_relation_of_two_sound_tracks_is_that_of_a_straight_line_through_them(name: str) -> None:
    slope, offset = PAIRS[name]
    travel = strokes(4)
    pair = traced(travel), traced(slope * travel + offset, seed=2)
    found = relation_of([pair])
    assert found is not None
    reference = linregress(pair[1].drawn.cells.mean, pair[0].drawn.cells.mean)
    assert found.factor == pytest.approx(reference.slope, rel=2e-3)
    assert found.offset_percent == pytest.approx(reference.intercept, abs=0.1)


def test_a_bad_spot_does_not_bend_the_relation_however_long_the_arm_stays_in_it() -> None:
    travel = hovering()
    found = relation_of([(traced(travel, opened=inside(travel)), traced(0.5 * travel, seed=2))])
    assert found is not None
    assert found.factor == pytest.approx(2.0, rel=0.01)
    assert found.offset_percent == pytest.approx(0.0, abs=0.3)


def test_the_inverse_of_a_relation_leads_back() -> None:
    known = np.linspace(0.0, 90.0, 181)
    relation = Relation(-2.0, 30.0, known, np.sin(known / 20.0), 0.1)
    place = np.linspace(0.0, 90.0, 7, dtype=np.float32)
    back = relation.inverted().first_from(relation.first_from(place))
    assert back == pytest.approx(place, abs=1e-2)


# The loading of a potentiometer, 0.1 x^2 (1 - x) to first order, and a linearity of 1 %.
@pytest.mark.parametrize("away", [lambda x: -10.0 * x**2 * (1.0 - x), lambda x: np.sin(2.0 * np.pi * x)])
def test_a_track_that_is_sound_but_not_quite_straight_is_no_contradiction(
    away: Callable[[Floats], Floats],
) -> None:
    travel = strokes(6, low=0.5, high=99.5)
    pair = traced(travel + away(travel / 100.0)), traced(0.5 * travel, seed=2)
    relation = relation_of([pair])
    assert relation is not None
    for steadier in (True, False):
        made = helped(*pair, relation, other_is_steadier=steadier)
        assert made.truthful.mean() > 0.99


def test_tracks_that_do_not_follow_one_another_or_hardly_moved_have_no_relation() -> None:
    travel = strokes(4)
    lagging = np.roll(travel, 400)
    assert relation_of([]) is None
    assert relation_of([(traced(travel), traced(lagging, seed=2))]) is None
    assert relation_of([(traced(travel), traced(0.05 * travel, seed=2))]) is None
    still = rest(40.0, 3.0)
    assert relation_of([(traced(still), traced(still, seed=2))]) is None


def _pair(travel: Floats, slope: float, offset: float) -> tuple[Pair, Relation]:
    pair = traced(travel, opened=inside(travel)), traced(slope * travel + offset, seed=2)
    relation = relation_of([pair])
    assert relation is not None
    return pair, relation


@pytest.mark.parametrize("name", PAIRS)
def test_inside_a_spot_that_is_open_all_over_the_other_track_tells_where_the_arm_is(name: str) -> None:
    travel = hovering()
    pair, relation = _pair(travel, *PAIRS[name])
    made = helped(*pair, relation, other_is_steadier=steadier_is_second([pair]))
    gone = inside(travel) > 0
    alone = np.abs(pair[0].motion.travel_percent - travel)[gone]
    both = np.abs(made.travel_percent - travel)[gone]
    assert float(both.max()) < 0.5
    assert float(alone.max()) > 2.0 * float(both.max())
    assert made.guided is not None
    assert made.guided[gone].mean() > 0.9
    assert float(made.below[gone].min()) > 30.0  # from 42 % down to the open level, less the motion


def test_the_sound_track_is_left_as_it_is() -> None:
    travel = hovering()
    pair, relation = _pair(travel, 0.5, 0.0)
    assert steadier_is_second([pair])
    made = helped(pair[1], pair[0], relation.inverted(), other_is_steadier=False)
    assert made is pair[1].motion or float(np.abs(made.travel_percent - 0.5 * travel).max()) < 0.3


def test_two_sound_tracks_change_nothing_of_each_others_path() -> None:
    travel = strokes(4)
    pair = traced(travel), traced(0.5 * travel, seed=2)
    relation = relation_of([pair])
    assert relation is not None
    for steadier in (True, False):
        made = helped(*pair, relation, other_is_steadier=steadier)
        assert made.travel_percent == pytest.approx(pair[0].motion.travel_percent, abs=0.05)
