"""Limits of service manuals, at their edges, with the uncertainty of the reading.

Maker, vehicle, year and page title stand beside each; the figures come out of the profiles, so that a
profile that drifts away from its source fails here.
"""

from __future__ import annotations

import numpy as np
import pytest

from analysis.diagnosis.conformance import decide, spans_beyond
from analysis.diagnosis.findings import Result
from analysis.diagnosis.profiles import load_profile
from analysis.signals.measurement import read_samples


@pytest.mark.parametrize(
    ("reference_v", "expanded_uncertainty_v", "expected"),
    [
        (4.79, 0.005, Result.FAIL),
        (4.81, 0.005, Result.PASS),
        (5.19, 0.005, Result.PASS),
        (5.21, 0.005, Result.FAIL),
        (4.79, 0.02, Result.CANNOT_TELL),
        (4.81, 0.02, Result.CANNOT_TELL),
        (5.19, 0.02, Result.CANNOT_TELL),
        (5.21, 0.02, Result.CANNOT_TELL),
        (5.00, 0.02, Result.PASS),
    ],
)
def test_reference_window_of_4_8_to_5_2_v(
    reference_v: float, expanded_uncertainty_v: float, expected: Result
) -> None:
    # Saturn Sky 2009, DTC P2122 or P2123; the same window: Chevrolet Traverse 2009, Suzuki Swift+ 2006.
    limit = load_profile("ride-height").limits["reference_level"]
    assert decide(reference_v, expanded_uncertainty_v, lower=limit.lower, upper=limit.upper) is expected


@pytest.mark.parametrize(
    ("drop_v", "expected"),
    [(0.013, Result.PASS), (0.099, Result.CANNOT_TELL), (0.101, Result.CANNOT_TELL), (0.106, Result.FAIL)],
)
def test_ground_drop_of_100_mv(drop_v: float, expected: Result) -> None:
    # Nissan Quest 1994, Ground Inspection: about 0.1 V or less is good.
    limit = load_profile("ride-height").limits["ground_drop"]
    assert decide(drop_v, 0.005, lower=limit.lower, upper=limit.upper) is expected


@pytest.mark.parametrize(("drop_v", "expected"), [(0.199, Result.PASS), (0.201, Result.FAIL)])
def test_ground_drop_of_a_textbook_with_a_meter_that_is_good_enough(drop_v: float, expected: Result) -> None:
    # A textbook chapter on circuit testing (author not shown): more than 0.2 V is a bad ground.
    assert decide(drop_v, 0.0005, upper=0.2) is expected
    assert decide(drop_v, 0.002, upper=0.2) is Result.CANNOT_TELL


def test_an_8_bit_recorder_on_20_v_cannot_tell_a_ground_of_90_mv_from_one_of_110_mv() -> None:
    # Step 78 mV (closed form), so k = 2 is 45 mV; limit: Nissan Quest 1994, Ground Inspection.
    step_v = 20.0 / 256
    reading = read_samples(np.full(500, 0.078125), sample_interval_s=1e-3, step_v=step_v).mean_v
    assert reading.expanded_uncertainty == pytest.approx(0.0451, abs=1e-4)
    assert decide(reading.value, reading.expanded_uncertainty, upper=0.1) is Result.CANNOT_TELL


def _signal_with_dropout(level_v: float, duration_s: float) -> np.ndarray:
    voltage_v = np.full(2000, 2.5)
    voltage_v[500 : 500 + round(duration_s / 0.001)] = level_v
    return voltage_v


@pytest.mark.parametrize(
    ("level_v", "duration_s", "counted"),
    [
        (0.24, 0.501, True),
        (0.24, 0.500, False),
        (0.24, 0.050, False),  # a worn spot is not a short to ground
        (0.26, 1.200, False),
        (4.76, 0.501, True),
        (4.74, 1.200, False),
    ],
)
def test_signal_range_counts_after_500_ms_only(level_v: float, duration_s: float, counted: bool) -> None:
    # HUMMER H2 2009, DTC C0625 or C0630: below 0.25 V or above 4.75 V for more than 500 ms.
    limit = load_profile("ride-height").limits["signal_range"]
    spans = spans_beyond(
        _signal_with_dropout(level_v, duration_s),
        sample_interval_s=0.001,
        lower=limit.lower,
        upper=limit.upper,
        hold_s=limit.hold_s,
    )
    assert bool(spans) is counted
    if counted:
        assert spans[0].start == pytest.approx(0.5)
        assert spans[0].length == pytest.approx(duration_s)


def test_half_a_second_is_half_a_second_at_every_sample_rate() -> None:
    for rate_hz in (100, 500, 1000, 48_000):
        outside = np.zeros(rate_hz // 2)
        held = {"sample_interval_s": 1 / rate_hz, "lower": 0.25, "hold_s": 0.5}
        assert spans_beyond(outside, **held) == ()
        assert len(spans_beyond(np.append(outside, [0.0]), **held)) == 1


def test_three_tenths_of_a_second_are_not_longer_than_themselves() -> None:
    # 3 * 0.1 > 0.3 in binary arithmetic.
    assert spans_beyond([0.0, 0.0, 0.0], sample_interval_s=0.1, lower=0.25, hold_s=0.3) == ()


def test_a_missing_sample_and_a_jump_across_the_range_end_a_span() -> None:
    voltage_v = np.array([0.0, 0.0, np.nan, 0.0, 0.0, 5.0, 5.0, 2.5])
    spans = spans_beyond(voltage_v, sample_interval_s=1.0, lower=0.25, upper=4.75, first_sample_s=10.0)
    assert [(span.start, span.stop) for span in spans] == [(10.0, 12.0), (13.0, 15.0), (15.0, 17.0)]
    assert spans_beyond([], sample_interval_s=1.0, lower=0.25) == ()


@pytest.mark.parametrize(("wander_v", "expected"), [(0.019, Result.PASS), (0.021, Result.FAIL)])
def test_at_rest_the_signal_stays_within_20_mv(wander_v: float, expected: Result) -> None:
    # Infiniti QX56 2009, DTC C1806: "with no more than +-0.02 V variation".
    limit = load_profile("ride-height").limits["rest_variation"]
    for sign in (-1.0, 1.0):
        assert decide(sign * wander_v, 0.0005, lower=limit.lower, upper=limit.upper) is expected


@pytest.mark.parametrize(("first_v", "second_v"), [(0.80, 0.40), (4.55, 2.28)])
def test_a_two_to_one_pedal_keeps_its_ratio(first_v: float, second_v: float) -> None:
    # Mazda CX-30 2019, APP Sensor Inspection: 2.000 and 1.9956.
    profile = load_profile("pedal")
    expected_v = profile.expected_second_v(first_v)
    assert expected_v == pytest.approx(second_v, abs=0.006)


@pytest.mark.parametrize(("first_v", "second_v"), [(1.585, 1.04), (3.79, 3.24)])
def test_an_offset_pedal_keeps_its_step(first_v: float, second_v: float) -> None:
    # Mazda6 2011, APP Sensor Inspection: middles of 1.55-1.62 and 1.01-1.07 V, of 3.49-4.09 and 2.94-3.54 V.
    assert load_profile("pedal-offset").expected_second_v(first_v) == pytest.approx(second_v, abs=0.006)


def test_an_inverted_pedal_adds_up_to_its_supply() -> None:
    # Saturn VUE 2007, DTC P2135: one potentiometer near low reference, the other near 5 V, opposite slopes.
    profile = load_profile("pedal-inverted")
    for first_v in (0.5, 2.5, 4.5):
        second_v = profile.expected_second_v(first_v)
        assert second_v is not None
        assert first_v + second_v == pytest.approx(5.0)


def test_disagreement_of_two_tracks_counts_at_200_mv_after_200_ms() -> None:
    # Honda Civic Si 2009, DTC P2135.
    relation = load_profile("pedal-inverted").second_track
    assert relation is not None
    assert (relation.tolerance_v, relation.hold_s) == (0.2, 0.2)


@pytest.mark.parametrize("standing_v", [2.5, 2.53])
def test_a_standing_vehicle_rests_inside_the_rest_range(standing_v: float) -> None:
    # Volvo XC70 2008, Height Sensor: about 2.5 V; Lexus GX 470 2007, Height Control Sensor: 2.53 V.
    track = next(iter(load_profile("ride-height").tracks.values()))
    assert track.rest_v is not None
    assert track.rest_v.contains(standing_v)
    assert track.valid_v.start < 0.5 < 4.5 < track.valid_v.stop  # its swing
