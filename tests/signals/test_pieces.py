"""Smooth pieces, the chain that one arm could have made, and the open level."""

from __future__ import annotations

import numpy as np
import pytest
from numpy.typing import NDArray

from analysis.signals.cutting import cut_at_edges
from analysis.signals.open_level import find_open_level
from analysis.signals.pieces import Cut, parked, truthful_chain
from tests.signals.examples import RATE_HZ, Floats, noise, rest, stroke, strokes

CELL_S = 1.0 / RATE_HZ
TOLERANCE = 0.2


def _cut(travel: Floats, quiet: NDArray[np.bool_] | None = None) -> Cut:
    cells = travel.astype(np.float32)
    marks = np.isfinite(cells) if quiet is None else quiet
    return Cut.of(cells, marks, np.full(len(cells), TOLERANCE, np.float32), CELL_S)


def _truthful(travel: Floats, open_level: float | None = None) -> NDArray[np.bool_]:
    cut = _cut(travel)
    return cut.pieces.cells(truthful_chain(cut, open_level=open_level).chosen, 0, len(travel))


@pytest.mark.parametrize("seconds", [0.25, 0.5, 1.0, 4.0])
def test_a_sound_hand_is_one_piece_and_wholly_truthful(seconds: float) -> None:
    travel = strokes(4, seconds=seconds) + noise(len(strokes(4, seconds=seconds)), 0.02)
    assert len(_cut(travel).pieces) == 1
    assert _truthful(travel).all()


def test_a_jump_that_no_arm_makes_is_a_cut_and_a_fast_stroke_is_not() -> None:
    # 1200 % of travel a second in a cell of half a millisecond is 0.6 %.
    low = np.full(400, 30.0, np.float32)
    marks, tolerance = np.ones(800, np.bool_), np.full(800, TOLERANCE, np.float32)
    jump = np.concatenate([low, low + np.float32(5.0)])
    cut = cut_at_edges(jump, marks, tolerance, CELL_S)
    assert len(cut) >= 2
    assert not np.any((cut.first < 400) & (cut.last >= 400))
    ramp = (10.0 + 0.5 * np.arange(800) / 5.0).astype(np.float32)  # 200 % a second
    assert len(cut_at_edges(ramp, marks, tolerance, CELL_S)) == 1


def test_an_opening_without_an_edge_is_cut_at_its_kink() -> None:
    # The contact opens into a capacitor with no pull: the signal decays from a kink, without a jump.
    before = np.full(600, 60.0)
    decay = 60.0 * np.exp(-np.arange(200) * CELL_S / 0.1)  # 600 % of travel a second: an arm's own speed
    made = _cut(np.concatenate([before, decay]))
    assert len(made.pieces) >= 2
    assert abs(int(made.pieces.first[1]) - 600) <= 10


def test_pieces_cover_the_quiet_cells_once_and_in_order() -> None:
    travel = strokes(2)
    travel[1000:1040] = 2.0
    quiet = np.ones(len(travel), np.bool_)
    quiet[2000:2010] = False
    pieces = _cut(travel, quiet).pieces
    covered = np.zeros(len(travel), np.int64)
    for first, last in zip(pieces.first, pieces.last, strict=True):
        covered[first : last + 1] += 1
    assert np.all(covered[quiet] == 1)
    assert np.all(pieces.first[1:] > pieces.last[:-1])


@pytest.mark.parametrize("pull", [2.0, 98.0, 75.0])
@pytest.mark.parametrize("open_s", [0.005, 0.03, 0.12])
def test_the_pull_level_is_not_the_arm(pull: float, open_s: float) -> None:
    travel = strokes(4)
    hit = np.zeros(len(travel), np.bool_)
    for begin_s in (0.55, 1.62, 2.8, 3.9):
        first = round(begin_s * RATE_HZ)
        hit[first : first + round(open_s * RATE_HZ)] = True
    assert np.abs(travel[hit] - pull).min() > 5.0
    truthful = _truthful(np.where(hit, pull, travel))
    assert not truthful[hit].any()
    assert truthful[~hit].mean() > 0.99


def test_an_arm_that_rests_tells_the_truth_between_openings() -> None:
    travel = np.concatenate([stroke(10.0, 50.0, 0.5), rest(50.0, 1.0)])
    travel[1200:1260] = 3.0
    truthful = _truthful(travel)
    assert truthful[1300:].all()
    assert not truthful[1200:1260].any()


def test_a_stop_that_is_knocked_on_is_no_impossible_move() -> None:
    # The arm hits its stop at full speed: place goes on, speed does not.
    travel = np.concatenate([np.linspace(20.0, 90.0, 600), rest(90.0, 0.5)])
    assert _truthful(travel).mean() > 0.97


def test_spared_cells_are_left_out_at_gaps_and_not_at_the_ends_of_the_record() -> None:
    travel = rest(50.0, 0.5)
    travel[500:520] = np.nan
    cut = _cut(travel)
    marks = cut.pieces.cells(truthful_chain(cut, open_level=None).chosen, 8, len(travel))
    np.testing.assert_array_equal(np.flatnonzero(~marks), np.arange(500 - 8, 520 + 8))


def test_no_quiet_cell_makes_no_piece() -> None:
    cut = _cut(np.full(20, np.nan))
    assert len(cut.pieces) == 0
    assert len(truthful_chain(cut, open_level=None).chosen) == 0
    assert find_open_level([cut]) is None


def _opened(level: float, count: int = 6) -> Cut:
    travel = strokes(4)
    for index in range(count):
        first = round((0.4 + 0.6 * index) * RATE_HZ)
        travel[first : first + 40] = level
    return _cut(travel)


@pytest.mark.parametrize("level", [0.5, 99.0, 5.0])
def test_the_open_level_is_found_from_openings_that_agree(level: float) -> None:
    assert find_open_level([_opened(level)]) == pytest.approx(level, abs=0.05)


def test_openings_of_several_records_agree_together() -> None:
    found = find_open_level([_opened(2.0, count=2), _opened(2.0, count=2)])
    assert found == pytest.approx(2.0, abs=0.05)


def test_a_sound_record_or_one_opening_has_no_open_level() -> None:
    assert find_open_level([_cut(strokes(4))]) is None
    assert find_open_level([_opened(2.0, count=1)]) is None
    assert find_open_level([]) is None


def test_a_piece_at_the_open_level_is_no_arm_at_rest() -> None:
    # A contact that stays open to the end of the record looks like an arm that rests there, unless told.
    travel = np.concatenate([stroke(10.0, 60.0, 0.5), rest(97.0, 1.6)])
    assert _truthful(travel)[1000:].all()
    told = _truthful(travel, open_level=97.0)
    assert told[:980].all()
    assert not told[1000:].any()


def test_a_stroke_to_the_end_and_back_is_motion_though_it_ends_where_the_contact_opens_to() -> None:
    # Out and back between two openings: it begins and ends at the open level, and is anywhere but there.
    away = np.concatenate([stroke(70.0, 90.0, 0.5), stroke(90.0, 10.0, 1.0), stroke(10.0, 70.0, 1.0)])
    cut = _cut(away)
    assert len(cut.pieces) == 1
    assert not cut.flat.any()
    assert _truthful(away, open_level=70.0).all()


def test_a_piece_that_stands_but_for_a_dip_stands() -> None:
    level = rest(70.0, 0.5)
    level[400:420] -= np.linspace(0.0, 0.15, 20)
    assert _cut(level).flat.all()


def test_a_fragment_that_sinks_to_the_open_level_is_no_motion_and_a_fragment_that_stands_is() -> None:
    time = np.arange(round(0.03 * RATE_HZ)) / RATE_HZ
    sinking, standing = 12.0 * np.exp(-time / 0.012), rest(45.0, 0.03)
    sunk = _cut(sinking)
    assert parked(sunk, 0.0)[sunk.pieces.last > sunk.pieces.first].all()
    assert not parked(_cut(standing), 0.0).any()
    assert not parked(_cut(stroke(45.0, 47.0, 0.03)), 0.0).any()
