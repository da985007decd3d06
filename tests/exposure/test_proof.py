"""The road test that shows a repair."""

from __future__ import annotations

import math

import pytest
from scipy.stats import binom

from analysis.errors import VehicleError
from analysis.exposure.proof import proof


def test_one_fault_in_6_km_asks_for_18_km() -> None:
    # exp(-18 / 6) = 0.0498: with 18 km the fault would have stayed away by chance in 5 of 100 cases.
    found = proof(1, 6.0)
    assert found.needed_km == pytest.approx(17.97, abs=0.01)
    assert math.exp(-18.0 / 6.0) == pytest.approx(0.05, abs=5e-4)
    assert proof(1, 6.0, driven_km=(18.0,)).shown == pytest.approx(0.95, abs=5e-4)


def test_drives_are_counted_off_until_nothing_is_left() -> None:
    found = proof(2, 12.0, driven_km=(5.0, 7.0))
    assert found.driven_km == 12.0
    assert found.left_km == pytest.approx(17.97 - 12.0, abs=0.01)
    assert proof(2, 12.0, driven_km=(30.0,)).left_km == 0.0


@pytest.mark.parametrize(("faults", "before_km"), [(1, 6.0), (3, 20.0), (10, 55.0)])
def test_the_careful_distance_is_the_exact_comparison_of_two_rates(faults: int, before_km: float) -> None:
    # Given all the faults, each falls before or after in proportion to the distances where nothing changed.
    found = proof(faults, before_km)
    share_before = before_km / (before_km + found.careful_km)
    assert binom.cdf(0, faults, 1.0 - share_before) == pytest.approx(0.05)
    assert found.careful_km > found.needed_km


def test_more_faults_before_need_less_road_after() -> None:
    needed = [proof(faults, 10.0).needed_km for faults in (1, 2, 4)]
    assert needed[0] == pytest.approx(2.0 * needed[1]) == pytest.approx(4.0 * needed[2])


def test_it_is_said_in_plain_words() -> None:
    said = proof(1, 6.0, driven_km=(5.0,)).words
    assert "came once in 6 km" in said
    assert "18 km without a fault" in said
    assert "still to drive 13 km" in said


@pytest.mark.parametrize(
    ("faults", "before_km", "driven", "confidence", "what"),
    [
        (0, 6.0, (), 0.95, "no fault was counted"),
        (1, 0.0, (), 0.95, "must be above 0 km"),
        (1, float("nan"), (), 0.95, "must be above 0 km"),
        (1, 6.0, (-1.0,), 0.95, "negative length"),
        (1, 6.0, (float("nan"),), 0.95, "negative length"),
        (1, 6.0, (), 1.0, "between 0 and 1"),
    ],
)
def test_what_makes_no_sense_is_refused_with_a_sentence(
    faults: int, before_km: float, driven: tuple[float, ...], confidence: float, what: str
) -> None:
    with pytest.raises(VehicleError, match=what):
        proof(faults, before_km, driven_km=driven, confidence=confidence)
