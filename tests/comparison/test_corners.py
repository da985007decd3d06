"""Left against right: how long they differ, and when a stated rule would have stored a fault."""

from __future__ import annotations

import numpy as np
import pytest

from analysis.captures.memory import make_record
from analysis.captures.model import Record, Role, Scaling
from analysis.captures.reading import open_capture
from analysis.comparison.corners import DEFAULT_LIMIT_PERCENT, Corner, Plausibility, Rule, compare_corners
from analysis.comparison.movement import first_movement_s
from analysis.control_unit.debounce import ContinuousTimer, UpDownCounter
from analysis.errors import ControlUnitError
from tests.comparison.examples import AXLE, SAMPLES, sample
from tests.signals.examples import Floats, path_of, record_of, rest, stroke

RATE_HZ = 2_000.0
DRIVE = np.concatenate([rest(50.0, 1.0), stroke(50.0, 65.0, 1.0), stroke(65.0, 40.0, 1.5), rest(40.0, 1.5)])


def _pair(left: Floats, right: Floats) -> Record:
    channels = {
        Role.SIGNAL: (0.05 * left, Scaling()),
        Role.SECOND_SIGNAL: (0.05 * right, Scaling()),
        Role.REFERENCE: (np.full(len(left), 5.0), Scaling()),
    }
    return make_record("001", 1.0 / RATE_HZ, channels)


def _compared(left: Floats, right: Floats, rule: Rule | None = None) -> Plausibility:
    record = _pair(left, 100.0 - right)
    corners = Corner("rear left", record), Corner("rear right", record, Role.SECOND_SIGNAL, mirrored=True)
    return compare_corners(*corners, rule=rule)


def _off(travel: Floats, start_s: float, length_s: float, by_percent: float) -> Floats:
    moved = travel.copy()
    moved[round(start_s * RATE_HZ) : round((start_s + length_s) * RATE_HZ)] += by_percent
    return moved


def test_a_mirrored_pair_lies_on_one_curve() -> None:
    found = _compared(DRIVE, DRIVE)
    np.testing.assert_allclose(found.travel_percent[0], found.travel_percent[1], atol=1e-4)
    assert found.beyond == ()
    assert found.first_stored_s is None
    assert "All the time rear left and rear right agree within 9.0 % of travel" in found.summary()


def test_unmirrored_it_does_not() -> None:
    record = _pair(DRIVE, 100.0 - DRIVE)
    found = compare_corners(Corner("left", record), Corner("right", record, Role.SECOND_SIGNAL))
    assert found.beyond_s > 1.0


@pytest.mark.parametrize(
    ("limit", "hold_s", "length_s", "stored"),
    [
        # Honda Civic FC, P2135: more than 9.02 % for 0.5 s.
        (9.02, 0.5, 0.60, True),
        (9.02, 0.5, 0.45, False),
        # Saturn VUE 2004, throttle: angles differ by 5 % or more for 135 ms or more.
        (5.0, 0.135, 0.25, True),
        (5.0, 0.135, 0.10, False),
        # HUMMER H2 2009, C0625 or C0630: for more than 500 ms; a wiper that drops out for 50 ms is no fault.
        (5.0, 0.5, 0.05, False),
    ],
)
def test_published_rules_store_and_spare_what_they_say(
    limit: float, hold_s: float, length_s: float, stored: bool
) -> None:
    rule = Rule(limit, ContinuousTimer(hold_s), tick_s=0.005)
    found = _compared(_off(DRIVE, 2.0, length_s, -20.0), DRIVE, rule)
    assert found.longest_s == pytest.approx(length_s, abs=0.002)
    assert (found.first_stored_s is not None) is stored
    if found.first_stored_s is not None:
        assert found.first_stored_s == pytest.approx(2.0 + hold_s, abs=0.011)
        assert "names both corners, whichever is bad" in found.summary()
        assert "your module" not in found.summary()


def test_a_difference_just_within_the_limit_is_none() -> None:
    assert _compared(_off(DRIVE, 2.0, 1.0, 0.99 * DEFAULT_LIMIT_PERCENT), DRIVE).beyond == ()
    found = _compared(_off(DRIVE, 2.0, 1.0, 1.01 * DEFAULT_LIMIT_PERCENT), DRIVE)
    assert found.beyond_s == pytest.approx(1.0, abs=0.01)


def test_both_corners_are_named_whichever_is_bad() -> None:
    bad = _off(DRIVE, 2.0, 1.0, -30.0)
    one, two = _compared(bad, DRIVE), _compared(DRIVE, bad)
    assert one.stored_s == two.stored_s
    np.testing.assert_allclose(one.difference_percent, -two.difference_percent, atol=1e-4)
    for found in (one, two):
        assert "Between rear left and rear right the difference exceeds" in found.summary()


def test_a_learnt_level_is_taken_off() -> None:
    lower = DRIVE - 12.0
    assert _compared(DRIVE, lower).beyond_s > 4.0
    found = _compared(DRIVE, lower, Rule(level_percent=-12.0))
    assert found.beyond == ()
    assert found.median_percent == pytest.approx(0.0, abs=1e-3)


def test_a_fault_counter_adds_up_short_differences_that_a_timer_forgets() -> None:
    flicker = DRIVE.copy()
    for start_s in np.arange(1.0, 3.5, 0.25):
        flicker = _off(flicker, start_s, 0.15, -25.0)
    timer = _compared(flicker, DRIVE, Rule(debounce=ContinuousTimer(0.5), tick_s=0.01))
    counter = _compared(flicker, DRIVE, Rule(debounce=UpDownCounter(2, 1, 127), tick_s=0.01))
    assert timer.stored_s == ()
    assert counter.stored_s
    assert "counts 2 up and 1 down to 127" in counter.summary()


def test_two_records_are_laid_on_one_clock_by_their_first_movement() -> None:
    late = np.concatenate([rest(50.0, 0.7), DRIVE])
    paths = [path_of(item, node_s=1.0 / RATE_HZ) for item in (DRIVE, late)]
    began = [first_movement_s(item) for item in paths]
    assert began[0] is not None
    assert began[1] is not None
    one, two = (record_of(item, reference_v=5.0, ground_v=0.0) for item in (DRIVE, late))
    apart = compare_corners(Corner("left", one), Corner("right", two))
    shifted = compare_corners(Corner("left", one), Corner("right", two, shift_s=began[0] - began[1]))
    assert apart.beyond_s > 0.5
    assert shifted.beyond == ()
    assert np.nanmax(np.abs(shifted.difference_percent)) < 0.1


def test_records_that_share_no_time_cannot_be_compared() -> None:
    record = record_of(DRIVE, reference_v=5.0, ground_v=0.0)
    found = compare_corners(Corner("left", record), Corner("right", record, shift_s=100.0))
    assert len(found.time_s) == 0
    assert np.isnan(found.median_percent)
    assert "nothing can be compared" in found.summary()


def test_gaps_break_no_rule() -> None:
    gap = DRIVE.copy()
    gap[2_000:6_000] = np.nan
    assert _compared(gap, DRIVE).beyond == ()


@pytest.mark.parametrize(
    ("limit", "tick_s"), [(0.0, 0.05), (-1.0, 0.05), (float("nan"), 0.05), (5.0, 0.0), (5.0, 60.0)]
)
def test_a_rule_that_cannot_be_is_refused(limit: float, tick_s: float) -> None:
    with pytest.raises(ControlUnitError):
        Rule(limit, tick_s=tick_s)


def test_a_record_without_the_signal_is_refused() -> None:
    record = record_of(DRIVE)
    with pytest.raises(ValueError, match="holds no samples of the second_signal"):
        compare_corners(Corner("left", record), Corner("right", record, Role.SECOND_SIGNAL))


def test_the_sample_of_an_axle_explains_a_code_that_names_two_corners() -> None:
    made = sample(AXLE)
    with open_capture(SAMPLES / AXLE) as opened:
        found = {}
        for record in opened.capture.records[-2:]:
            right = Corner("rear right", record, Role.SECOND_SIGNAL, mirrored=True)
            pair = Corner("rear left", record), right
            found[record.label] = compare_corners(*pair)
    bounced, driven = found.values()
    assert bounced.first_stored_s is None  # it only passes through the worn spot
    assert driven.first_stored_s is not None  # it stands in it
    # Beside the worn band the mirrored pair lies on one curve.
    clean = (bounced.travel_percent[1] < 41.0) | (bounced.travel_percent[1] > 50.0)
    assert clean.mean() > 0.3
    assert np.percentile(np.abs(bounced.difference_percent[clean]), 99) < 1.5
    tracks = {band.track for band in made.findings.bands if band.confidence >= 0.5}
    assert tracks == {Role.SIGNAL}
