"""The drop of one reading, and its uncertainty, beside propagation of distributions by chance."""

from __future__ import annotations

from dataclasses import replace
from math import sqrt

import numpy as np
import pytest
from numpy.typing import NDArray

from analysis.captures.model import ArraySource, Channel, Role, Scaling
from analysis.intervals import Interval
from analysis.signals.carried import apart_percent, carried_across
from analysis.signals.drop import Drop, Feed, Level, drop_below
from analysis.signals.facts import ArmPath
from analysis.signals.several import Share, result_uncertainty

STEP_V = 0.0049


def channel(gain_error: float | None = 0.01, offset_error_v: float | None = 0.02) -> Channel:
    samples = ArraySource(np.zeros(4, dtype=np.int16))
    return Channel("ch 1", Role.SIGNAL, samples, Scaling(STEP_V), gain_error, offset_error_v)


FEED = Feed(Level(0.012, 0.002), Level(4.98, 0.004))


def reckoned(read_v: float, wire: Channel, travel_u_percent: float = 0.4, feed: Feed = FEED) -> Drop:
    return drop_below(
        wire, read_v, travel_percent=45.0, travel_u_percent=travel_u_percent, feed=feed, noise_v=0.003
    )


@pytest.mark.parametrize("fixed_v", [None, 5.0], ids=["ratiometric", "fixed"])
def test_a_drop_and_its_uncertainty_are_those_of_many_draws(fixed_v: float | None) -> None:
    # The Monte Carlo method of JCGM 101:2008, clause 7: every input drawn from its own distribution, what
    # belongs there and the sample read by one channel with one gain and one offset error.
    rng = np.random.default_rng(101)
    count = 400_000
    feed = replace(FEED, fixed_v=fixed_v)
    gain, offset_v = rng.uniform(-0.01, 0.01, count), rng.uniform(-0.02, 0.02, count)
    ground_v, reference_v = rng.normal(0.012, 0.002, count), rng.normal(4.98, 0.004, count)
    rounding_v = rng.uniform(-0.5 * STEP_V, 0.5 * STEP_V, (2, count))
    travel = 45.0 + rng.normal(0.0, 0.4, count)
    whole_v = reference_v - ground_v if fixed_v is None else np.full(count, fixed_v)
    sound_v = ground_v + travel / 100.0 * whole_v
    stated_v = sound_v * (1.0 + gain) + offset_v + rounding_v[0]
    dropped_v = 0.9 + rng.normal(0.0, 0.003, count)
    read_v = dropped_v * (1.0 + gain) + offset_v + rounding_v[1]
    drop = reckoned(0.9, channel(), feed=feed)
    assert drop.drop.value == pytest.approx(float(np.mean(stated_v - read_v)), abs=1e-4)
    assert drop.drop.standard_uncertainty == pytest.approx(float(np.std(stated_v - read_v)), rel=0.01)
    assert drop.belongs.standard_uncertainty == pytest.approx(float(np.std(stated_v)), rel=0.01)
    within = np.abs(stated_v - read_v - drop.drop.value) <= drop.drop.expanded_uncertainty
    assert float(np.mean(within)) == pytest.approx(0.955, abs=0.01)


def test_it_is_a_difference_of_two_readings_of_one_channel() -> None:
    wire = channel()
    quiet = Feed(Level(0.012), Level(4.98))
    drop = drop_below(wire, 0.9, travel_percent=45.0, travel_u_percent=0.0, feed=quiet, noise_v=0.0)
    shares = [Share(wire, drop.belongs.value, 1.0, "ch 1"), Share(wire, 0.9, -1.0, "ch 1")]
    assert drop.drop.expanded_uncertainty == pytest.approx(result_uncertainty(shares), rel=1e-9)
    apart = [replace(item, source=name) for item, name in zip(shares, "ab", strict=True)]
    assert result_uncertainty(apart) > 1.5 * drop.drop.expanded_uncertainty


def test_an_offset_of_the_recorder_moves_both_readings_and_not_the_drop() -> None:
    wide = reckoned(0.9, channel(offset_error_v=1.0))
    assert wide.drop.standard_uncertainty == pytest.approx(reckoned(0.9, channel()).drop.standard_uncertainty)
    assert wide.belongs.standard_uncertainty > 1.0 / sqrt(3.0)


def test_the_arm_s_place_goes_in_by_the_volts_that_a_per_cent_is_worth() -> None:
    # JCGM 100:2008, 5.1.3: sensitivity times standard uncertainty; 4.968 V over the whole travel.
    near, far = reckoned(0.9, channel(0.0, 0.0), 0.0), reckoned(0.9, channel(0.0, 0.0), 2.0)
    added = far.drop.standard_uncertainty**2 - near.drop.standard_uncertainty**2
    assert sqrt(added) == pytest.approx(0.04968 * 2.0)


@pytest.mark.parametrize(
    ("wire", "drop_known", "belongs_known"),
    [
        (channel(), True, True),
        (channel(offset_error_v=None), True, False),
        (channel(gain_error=None), False, False),
    ],
)
def test_accuracy_is_known_where_what_matters_of_it_is_stated(
    wire: Channel, drop_known: bool, belongs_known: bool
) -> None:
    drop = reckoned(0.9, wire)
    assert (drop.drop.accuracy_known, drop.belongs.accuracy_known) == (drop_known, belongs_known)


def test_what_is_less_than_its_uncertainty_is_not_told() -> None:
    assert reckoned(0.9, channel()).told
    assert not reckoned(0.9, channel(), 40.0).told
    assert reckoned(4.9, channel()).drop.value < 0.0
    assert reckoned(4.9, channel()).told


def crossing(wrong_percent: float = 0.0) -> ArmPath:
    """An arm that gathers speed over 40 to 46 % of travel, told wrongly inside, midway by so much."""
    time_s = 0.002 * np.arange(600, dtype=np.float64)
    place = 20.0 + 30.0 * time_s + 10.0 * time_s**2
    inside = (place >= 40.0) & (place < 46.0)
    told: NDArray[np.float64] = place + np.where(
        inside, wrong_percent * np.sin(np.pi * (place - 40.0) / 6.0) ** 2, 0.0
    )
    return ArmPath("001", time_s, told, np.full(600, 0.05))


STRETCH = Interval(40.0, 46.0)


def test_an_even_motion_is_carried_across_a_stretch_to_where_the_arm_was() -> None:
    at_s = 0.642  # at 43.4 %, some way past the middle
    true = 20.0 + 30.0 * at_s + 10.0 * at_s**2
    off = np.sin(np.pi * (true - 40.0) / 6.0) ** 2
    told = carried_across(crossing(-1.0), at_s, STRETCH)
    assert told == pytest.approx(true, abs=0.02)
    assert apart_percent(crossing(), at_s, STRETCH) == pytest.approx(0.0, abs=0.02)
    assert apart_percent(crossing(-1.0), at_s, STRETCH) == pytest.approx(off, abs=0.02)


def test_nothing_is_carried_across_from_one_side_alone() -> None:
    whole = crossing()
    cut = ArmPath("001", whole.time_s[:310], whole.travel_percent[:310], whole.uncertainty_percent[:310])
    assert STRETCH.contains(cut.at(0.6))
    assert carried_across(cut, 0.6, STRETCH) is None
    assert apart_percent(cut, 0.6, STRETCH) is None
