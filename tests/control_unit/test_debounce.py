"""How long a fault must show: at the edges that service information states, and against a plain loop."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from analysis.control_unit.debounce import (
    ContinuousTimer,
    Flags,
    UpDownCounter,
    ripeness,
    stored_at,
)
from analysis.errors import ControlUnitError

TICK_S = 0.001


def _lasting(bad_s: float, *, tick_s: float = TICK_S) -> Flags:
    """Good for 0.1 s, bad from one reading to another `bad_s` later, good again."""
    bad = np.zeros(round(3.0 / tick_s), dtype=np.bool_)
    start = round(0.1 / tick_s)
    bad[start : start + round(bad_s / tick_s) + 1] = True
    return bad


def _stored_s(
    failed: Flags, debounce: ContinuousTimer | UpDownCounter, tick_s: float = TICK_S
) -> list[float]:
    return [float(place) * tick_s for place in stored_at(ripeness(failed, debounce, tick_s=tick_s))]


@pytest.mark.parametrize(
    ("hold_s", "source"),
    [
        (0.500, "HUMMER H2 2009, DTC C0625 or C0630"),
        (1.000, "Cadillac DeVille 2000, DTC C0625"),
        (0.200, "Honda Civic Si 2009, DTC P2135"),
        (0.135, "Saturn VUE 2004, DTC P2135"),
        (0.700, "GMC T-series 2004, 5 V reference"),
        (2.000, "Pontiac Vibe 2007, DTC P2135"),
    ],
)
def test_a_published_time_is_kept_to_the_millisecond_on_both_sides(hold_s: float, source: str) -> None:
    assert source
    timer = ContinuousTimer(hold_s)
    assert _stored_s(_lasting(hold_s - 0.001), timer) == []
    assert _stored_s(_lasting(hold_s + 0.001), timer) == [pytest.approx(0.1 + hold_s, abs=1e-9)]


def test_a_dropout_of_50_ms_does_not_become_a_short_to_ground() -> None:
    # HUMMER H2 2009, DTC C0625 or C0630: less than 0.25 V for more than 500 ms.
    assert _stored_s(_lasting(0.050), ContinuousTimer(0.5)) == []


def test_a_break_of_one_reading_starts_the_timer_anew() -> None:
    failed = _lasting(0.9)
    failed[100 + 450] = False
    assert _stored_s(failed, ContinuousTimer(0.5)) == []
    assert _stored_s(failed, ContinuousTimer(0.44)) == [pytest.approx(0.54), pytest.approx(0.991)]


def test_a_timer_of_nothing_stores_at_the_first_bad_reading() -> None:
    assert _stored_s(_lasting(0.0), ContinuousTimer(0.0)) == [pytest.approx(0.1)]


def test_the_counter_of_iso_14229_fails_at_127_bad_readings_in_a_row_and_not_at_126() -> None:
    # ISO 14229-1, fault detection counter: "failed" at +127 (from memory).
    counter = UpDownCounter(up=1, down=1)
    failed = np.zeros(400, dtype=np.bool_)
    failed[10:136] = True
    assert stored_at(ripeness(failed, counter, tick_s=0.01)).tolist() == []
    failed[136] = True
    assert stored_at(ripeness(failed, counter, tick_s=0.01)).tolist() == [136]


def test_a_counter_gathers_what_a_timer_forgets() -> None:
    failed = np.tile([True, True, False], 200)
    assert stored_at(ripeness(failed, ContinuousTimer(0.5), tick_s=0.01)).size == 0
    # 2 + 2 - 1 = 3 a round: after 41 rounds 123, then 125 and 127 on the second reading of the 42nd.
    assert stored_at(ripeness(failed, UpDownCounter(), tick_s=0.01)).tolist() == [41 * 3 + 1]


def test_a_stored_fault_counts_again_only_after_it_has_healed_wholly() -> None:
    counter = UpDownCounter(up=1, down=1, limit=3)
    word = "bbb gb bb ggg ggg bbb".replace(" ", "")
    failed = np.array([letter == "b" for letter in word])
    assert stored_at(ripeness(failed, counter, tick_s=0.01)).tolist() == [2, len(word) - 1]


def _plainly(failed: Flags, counter: UpDownCounter) -> list[int]:
    count, found = 0, []
    for bad in failed:
        count = min(count + counter.up, counter.limit) if bad else max(count - counter.down, 0)
        found.append(count)
    return found


@settings(max_examples=200, deadline=None)
@given(
    st.lists(st.booleans(), max_size=300),
    st.integers(1, 5),
    st.integers(0, 5),
    st.integers(1, 40),
)
def test_the_count_is_that_of_a_plain_loop(failed: list[bool], up: int, down: int, limit: int) -> None:
    counter = UpDownCounter(up, down, limit)
    flags = np.array(failed, dtype=np.bool_)
    ripe = ripeness(flags, counter, tick_s=0.01)
    assert np.rint(ripe * limit).astype(int).tolist() == _plainly(flags, counter)


def test_a_long_row_of_readings_is_counted_across_its_stretches() -> None:
    rng = np.random.default_rng(3)
    failed = rng.random(100_000) < 0.345  # near balance: 0.345 * 2 is a little more than 0.655
    counter = UpDownCounter(2, 1, 60)
    ripe = ripeness(failed, counter, tick_s=0.01)
    assert np.rint(ripe * 60).astype(int).tolist() == _plainly(failed, counter)
    assert stored_at(ripe).size > 10


def test_no_readings_store_nothing() -> None:
    nothing = np.empty(0, dtype=np.bool_)
    for debounce in (ContinuousTimer(0.5), UpDownCounter()):
        assert stored_at(ripeness(nothing, debounce, tick_s=0.01)).size == 0


@pytest.mark.parametrize("hold_s", [-0.1, float("nan"), 1e9])
def test_a_timer_that_nobody_has_is_refused_with_a_sentence(hold_s: float) -> None:
    with pytest.raises(ControlUnitError, match="time before the code sets"):
        ContinuousTimer(hold_s)


@pytest.mark.parametrize(("up", "down", "limit"), [(0, 1, 127), (1, -1, 127), (1, 1, 0)])
def test_a_counter_that_never_counts_is_refused_with_a_sentence(up: int, down: int, limit: int) -> None:
    with pytest.raises(ControlUnitError, match="fault counter"):
        UpDownCounter(up, down, limit)
