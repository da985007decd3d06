"""Published properties of tracks and sensors, held against what the whole analysis says of such captures.

Each figure has its source beside it: maker, vehicle, year and page title, or the standard's clause.
"""

from __future__ import annotations

import numpy as np
import pytest

from analysis.captures.memory import make_capture
from analysis.captures.model import Capture, Role, Step
from analysis.diagnosis.conformance import decide
from analysis.diagnosis.examine import examine
from analysis.diagnosis.findings import Check, Findings, Result, State
from analysis.diagnosis.profiles import load_profile
from analysis.intervals import Interval
from analysis.simulation.circuit import Circuit, settled_voltage
from tests.diagnosis.examples import Meter, Wires, record, standing, sweep, visit, worn
from tests.signals.examples import Floats

BAND = Interval(42.0, 48.0)


def _check(found: Findings, code: str) -> Check:
    return next(item for item in found.checks if item.code == code)


def _state(found: Findings, code: str) -> State:
    return next(item.state for item in found.evidence if item.code == code)


# -- tracks -----------------------------------------------------------------------------------------


@pytest.mark.parametrize(("load_ohm", "factor"), [(100e3, 0.980), (1e6, 0.998)])
def test_a_contact_of_2_kiloohms_dents_the_voltage_and_an_open_one_loses_it(
    load_ohm: float, factor: float
) -> None:
    # Static contact resistance at most 2,000 ohms: MIL-PRF-39023/10, 3.15; factors 0.980 and 0.998.
    circuit = Circuit(pull_ohm=None, probe_ohm=load_ohm)
    ideal = np.array([2.5])
    sound = settled_voltage(circuit, ideal, np.array([0.0]), 0.0)
    dented = settled_voltage(circuit, ideal, np.array([2_000.0]), 0.0)
    opened = settled_voltage(circuit, ideal, np.array([1e9]), 0.0)
    assert float(dented[0] / sound[0]) == pytest.approx(factor, abs=0.0006)
    assert float(opened[0] / sound[0]) < 0.01


def test_output_smoothness_goes_with_the_applied_voltage_and_not_with_the_span() -> None:
    # In % of the total applied voltage: Bourns training pages, "Output Smoothness".
    path = sweep(8)
    grain = worn(path, BAND, seed=4)
    values = [
        _check(
            examine(
                make_capture(
                    [record("001", Step.SWEEP, path, opened=grain, wires=Wires(reference_v=feed_v), seed=5)]
                )
            ),
            "output_smoothness",
        ).value
        for feed_v in (5.0, 4.5)
    ]
    assert values[0] == pytest.approx(values[1], rel=0.03)


def _grained(seconds: float) -> Capture:
    """A track whose break-ups are fixed to it, 0.1 % of travel each, swept in so many seconds a stroke."""
    path = sweep(6, seconds=seconds)
    cells = np.random.default_rng(3).random(1000) < 0.5
    place = np.clip((path * 10.0).astype(int), 0, 999)
    inside = (path >= BAND.start) & (path < BAND.stop)
    opened: Floats = (cells[place] & inside).astype(np.float64)
    return make_capture([*standing(), record("004", Step.SWEEP, path, opened=opened, seed=5)])


def test_a_band_is_the_same_at_eight_times_the_speed() -> None:
    # Smoothness is tested at 4 rpm, or at 0.5 rpm: MIL-PRF-39023, 4.7.17, and MIL-PRF-39023/10, 4.1.1.
    slow, fast = (examine(_grained(seconds)).bands[0].travel for seconds in (4.0, 0.5))
    assert slow.start == pytest.approx(fast.start, abs=0.6)
    assert slow.stop == pytest.approx(fast.stop, abs=0.6)


def test_backlash_of_half_a_degree_does_not_make_two_bands_of_one() -> None:
    # 0.5 degrees of 340 at a linearity of 1 %: A-A-52176, 3.22, Table VII; 0.147 % of travel.
    path = sweep(12)
    lagging = path - 0.147 * np.sign(np.gradient(path))
    opened = worn(lagging, Interval(44.0, 46.0), seed=4)
    found = examine(make_capture([*standing(), record("004", Step.SWEEP, path, opened=opened, seed=5)]))
    assert len([band for band in found.bands if band.confidence >= 0.5]) == 1
    assert found.bands[0].noisy_passes == 12


def test_an_8_bit_recorder_over_5_v_says_that_it_cannot_prove_a_track_as_new() -> None:
    # One code of 8 bits over 5 V is 19.5 mV; 0.1 % of 5 V is 5 mV (Bourns): four times the limit.
    found = examine(visit(travel=sweep(4), meter=Meter(step_v=5.0 / 256)))
    assert pytest.approx(3.9, abs=0.01) == 5.0 / 256 / 0.005
    assert found.surveys[0].floor_percent > 100.0 / 256
    assert _state(found, "recorder_floor") is State.NOT_SHOWN
    assert _check(found, "output_smoothness").result is not Result.PASS


# -- sensors ----------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("closed_v", "open_v"),
    [
        (0.5, 4.5),  # Isuzu Oasis 1996, Throttle Position (TP) Sensor
        (0.4, 3.5),  # Kia Sephia 1997, Throttle Position Sensor: closed 0.4-0.6 V, open 3.5-4.3 V
        (0.6, 4.3),
        (0.5, 4.0),  # Volvo S60 2007, Throttle Position (TP) Sensor, Potentiometer 1
    ],
)
def test_published_throttles_keep_the_limits_of_their_ends(closed_v: float, open_v: float) -> None:
    limits = load_profile("throttle").limits
    for value, code in ((closed_v, "low_end"), (open_v, "high_end"), (open_v - closed_v, "signal_span")):
        limit = limits[code]
        assert decide(value, 0.0, lower=limit.lower, upper=limit.upper) is Result.PASS


@pytest.mark.parametrize(
    ("profile_id", "ends"),
    [
        ("pedal", (0.80, 4.55)),  # Mazda CX-30 2019, APP Sensor Inspection
        ("pedal-offset", (1.55, 3.49)),  # Mazda6 2011, APP Sensor Inspection: released 1.55-1.62 V,
        ("pedal-offset", (1.62, 4.09)),  # pressed 3.49-4.09 V
    ],
)
def test_published_pedals_keep_the_limits_of_their_ends(profile_id: str, ends: tuple[float, float]) -> None:
    limits = load_profile(profile_id).limits
    for value, code in ((ends[0], "low_end"), (ends[1], "high_end"), (ends[1] - ends[0], "signal_span")):
        limit = limits[code]
        assert decide(value, 0.0, lower=limit.lower, upper=limit.upper) is Result.PASS


def test_a_height_sensor_on_4_5_v_is_judged_by_shares_of_its_own_feed() -> None:
    # Lexus GX 470 2007, Height Control Sensor, Inspection: low 0.81 V, normal 2.53 V, high 4.33 V on 4.5 V.
    profile = load_profile("ride-height-4v5")
    track = profile.tracks[Role.SIGNAL]
    shares = [value / profile.supply_v for value in (0.81, 2.53, 4.33)]
    assert shares == pytest.approx([0.180, 0.562, 0.962], abs=0.001)
    for supply_v in (4.3, 4.5, 4.7):
        valid = profile.at_supply(track.valid_v, supply_v=supply_v)
        assert all(valid.contains(share * supply_v) for share in shares)
    assert track.rest_v is not None
    assert track.rest_v.contains(2.53)


def test_a_sweep_of_such_a_sensor_is_sound_on_its_own_profile_and_its_feed_fails_on_another() -> None:
    path = sweep(6, low=18.0, high=96.2)
    wires = Wires(reference_v=4.5, ground_v=0.0)
    still = standing(wires=wires, place=56.2)
    made = make_capture([*still, record("004", Step.SWEEP, path, wires=wires)])
    own, other = (examine(made, profile=name) for name in ("ride-height-4v5", "ride-height"))
    assert _check(own, "reference_level").result is Result.PASS
    assert [_check(own, code).result for code in ("low_end", "high_end")] == [Result.PASS] * 2
    assert _check(other, "reference_level").result is Result.FAIL


@pytest.mark.parametrize(
    "volts",
    [
        (0.5, 2.5, 4.5),  # Volvo XC70 2008, Height Sensor, Suspension: 2.5 V standing, within 0.5-4.5 V;
    ],  # Lexus GS 2006, Height Control Sensor, Inspection: the same at -45, 0 and 45 degrees
)
def test_published_height_sensors_lie_inside_the_profile(volts: tuple[float, float, float]) -> None:
    profile = load_profile("ride-height")
    track = profile.tracks[Role.SIGNAL]
    assert all(track.valid_v.contains(value) for value in volts)
    assert track.rest_v is not None
    assert track.rest_v.contains(volts[1])
    assert (volts[2] - volts[0]) / 90.0 == pytest.approx(0.0444, abs=0.0001)  # 44.4 mV a degree


def test_tracks_of_a_throttle_disagree_at_5_per_cent_after_135_ms() -> None:
    # Saturn VUE 2004, DTC P2135; opposite slopes: Saturn VUE 2007, DTC P2135.
    relation = load_profile("throttle-opposite").second_track
    assert relation is not None
    assert relation.tolerance_v == pytest.approx(0.05 * 5.0)
    assert relation.hold_s == 0.135
    for first_v in (0.5, 2.5, 4.5):
        assert load_profile("throttle-opposite").expected_second_v(first_v) == pytest.approx(5.0 - first_v)


def test_5_ohms_in_the_low_reference_of_a_1_kiloohm_track_is_no_bad_ground() -> None:
    # Below 5 ohms: Suzuki XL7 2008 and Chevrolet Traverse 2009, DTC P2122 to P2138; 0.1 V: Nissan Quest 1994.
    lift_v = 5.0 * 5.0 / 1005.0
    assert lift_v == pytest.approx(0.025, abs=0.0005)
    limit = load_profile().limits["ground_drop"]
    assert decide(lift_v, 0.005, lower=limit.lower, upper=limit.upper) is Result.PASS


def test_a_reference_inside_its_window_does_not_clear_the_wiring() -> None:
    # Notes in Chevrolet Traverse 2009 and Suzuki XL7 2008, Circuit/System Testing: the reference can read
    # inside its window with a high resistance in the line, since the test is without load.
    still = record("001", Step.REFERENCE, np.full(4000, 50.0), roles=(Role.REFERENCE,))
    swept = record("002", Step.SWEEP, sweep(6), roles=(Role.SIGNAL,))
    found = examine(make_capture([still, swept]))
    assert _check(found, "reference_level").result is Result.PASS
    assert _state(found, "wiring_quiet") is State.NOT_SHOWN
    assert _state(found, "far_end_probed") is State.NOT_SHOWN
    text = next(item.text for item in found.evidence if item.code == "reference_good")
    assert "was not watched during the sweep" in text
