"""The contact: grain that comes back, severity, soft edges, dirt."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from analysis.intervals import Interval
from analysis.simulation.circuit import Floats
from analysis.simulation.track import WornBand, coloured, film_ohm, gaussian_field

BAND = WornBand(Interval(40.0, 50.0), severity=0.4)
UP = np.linspace(20.0, 80.0, 20_000)


def _film(band: WornBand, path: Floats, seed: int = 1, before: int = 0) -> Floats:
    fields = np.random.default_rng(99)
    fixed, crossing = gaussian_field(fields, 0.1), gaussian_field(fields, 0.1)
    where, ohm, _ = film_ohm(band, fixed, crossing, path, 1e-4, before, np.random.default_rng(seed))
    film = np.zeros(path.shape)
    film[where] = ohm
    return film


def test_outside_its_reach_a_band_adds_nothing() -> None:
    film = _film(BAND, UP)
    assert not film[(UP < 40.0) | (UP >= 50.0)].any()
    assert film[(UP >= 40.0) & (UP < 50.0)].max() > 1e4


def test_a_path_that_never_meets_the_band_gives_no_points() -> None:
    where, ohm, crossings = film_ohm(
        BAND, np.zeros(16_384), np.zeros(16_384), np.full(10, 20.0), 1e-3, 3, np.random.default_rng(1)
    )
    assert where.size == ohm.size == 0
    assert crossings == 3


def test_more_severity_opens_more_of_the_band() -> None:
    shares = [np.mean(_film(replace(BAND, severity=level), UP) > 1e5) for level in (0.0, 0.3, 0.6, 1.0)]
    assert shares == sorted(shares)
    assert shares[0] < 0.3 * shares[-1]


def test_grain_fixed_to_the_track_comes_back_on_every_crossing() -> None:
    band = replace(BAND, fixed=1.0, crossing=0.0, slow=0.0, chatter=0.0)
    up, down = _film(band, UP, seed=1), _film(band, UP[::-1], seed=2)[::-1]
    assert np.array_equal(up, down)


def test_grain_of_a_crossing_is_new_on_the_next() -> None:
    band = replace(BAND, fixed=0.0, crossing=1.0, slow=0.0, chatter=0.0, severity=0.3)
    inside = (UP >= 40.0) & (UP < 50.0)
    first, second = _film(band, UP, seed=1)[inside], _film(band, UP, seed=2)[inside]
    assert abs(np.corrcoef(first > 1e4, second > 1e4)[0, 1]) < 0.3


def test_at_rest_in_the_band_the_resistance_wanders_and_outside_it_does_not() -> None:
    assert np.ptp(np.log10(_film(BAND, np.full(20_000, 45.0)) + 100.0)) > 1.0
    assert np.ptp(_film(BAND, np.full(20_000, 60.0))) == 0.0


def test_at_half_the_speed_there_are_as_many_openings_and_each_is_twice_as_long() -> None:
    band = replace(BAND, chatter=0.0, slow=0.0)
    fast, slow = _film(band, UP) > 1e5, _film(band, np.linspace(20.0, 80.0, 40_000)) > 1e5
    openings = [np.count_nonzero(np.diff(film.astype(int)) == 1) for film in (fast, slow)]
    assert openings[0] > 5
    assert openings[1] == pytest.approx(openings[0], abs=1)
    assert np.count_nonzero(slow) == pytest.approx(2 * np.count_nonzero(fast), rel=0.02)


def test_each_entry_and_each_real_reversal_is_a_new_visit() -> None:
    back = np.concatenate([np.linspace(30.0, 46.0, 8_000), np.linspace(46.0, 30.0, 8_000)])
    through = np.concatenate([UP, UP[::-1]])
    for path, visits in ((UP, 1), (UP[::-1], 1), (through, 2), (back, 2), (np.full(9_000, 45.0), 1)):
        _, _, counted = film_ohm(
            BAND, np.zeros(16_384), np.zeros(16_384), path, 1e-4, 0, np.random.default_rng(1)
        )
        assert counted == visits


def test_dirt_is_wiped_away_by_the_crossings() -> None:
    dirt = replace(BAND, severity=0.8, wiped=0.5)
    shares = [np.mean(_film(dirt, UP, before=before) > 1e5) for before in (0, 1, 2, 5)]
    assert shares == sorted(shares, reverse=True)
    assert shares[0] > 0.05
    assert shares[-1] == 0.0


def test_the_outline_stands_at_one_half_on_its_edges() -> None:
    soft = replace(BAND, soft_percent=2.0)
    assert soft.outline(np.array([40.0, 50.0])) == pytest.approx([0.5, 0.5])
    assert soft.outline(np.array([38.9, 45.0, 51.1])) == pytest.approx([0.0, 1.0, 0.0])
    assert BAND.outline(np.array([39.999, 40.0, 49.999, 50.0])).tolist() == [0.0, 1.0, 1.0, 0.0]


def test_coloured_noise_has_unit_variance_and_its_correlation_time() -> None:
    noise = coloured(np.random.default_rng(8), 400_000, 0.01, 0.001)
    assert noise.std() == pytest.approx(1.0, abs=0.03)
    assert np.corrcoef(noise[:-10], noise[10:])[0, 1] == pytest.approx(np.exp(-1.0), abs=0.03)


def test_a_gaussian_field_has_its_correlation_length() -> None:
    field = gaussian_field(np.random.default_rng(2), 0.2)
    lag = round(2.0 * 0.2 / 100.0 * field.shape[0])  # a Gaussian kernel of width s correlates as exp(-d²/4s²)
    assert np.corrcoef(field, np.roll(field, lag))[0, 1] == pytest.approx(np.exp(-1.0), abs=0.08)
