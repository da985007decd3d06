"""The quarter car and its roads, against what is published of them."""

from __future__ import annotations

import math

import numpy as np
import pytest
from scipy.integrate import quad
from scipy.linalg import expm
from scipy.signal import welch

from analysis.errors import VehicleError
from analysis.vehicle.drive import simulate_travel, unit_drive
from analysis.vehicle.geometry import Floats
from analysis.vehicle.quarter_car import GOLDEN_CAR, QuarterCar
from analysis.vehicle.road import ROADS, ROUGHNESS_M3, Road, RoadClass, road_of
from tests.vehicle.profile import HEIGHT_M, ROUGHNESS_MM_PER_M, STEP_M

IRI_SPEED_M_S = 80.0 / 3.6


def _published_form() -> tuple[Floats, Floats]:
    """Our system in the published state: height and velocity of body and wheel; the road's height goes in."""
    back = np.array(
        [[1.0, 0, -1, 0], [0, 1, 0, 0], [0, 0, 1, 0], [0, 0, 0, 1]]
    )  # tyre deflection: wheel - road
    system = np.linalg.inv(back) @ GOLDEN_CAR.system @ back
    # A raised road is a lowered wheel: the tyre's deflection enters with the opposite sign.
    road = -(np.linalg.inv(back) @ GOLDEN_CAR.system @ np.array([[0.0], [0], [1], [0]]))
    return system, road


def test_a_quarter_metre_of_the_golden_car_is_the_published_matrix() -> None:
    # World Bank Technical Paper 46 and Sayers (1995), 0.25 m at 80 km/h, as carried in public IRI code.
    published = np.array(
        [
            [0.9966071, 0.01091514, -0.002083274, 0.0003190145],
            [-0.5563044, 0.9438768, -0.8324718, 0.05064701],
            [0.02153176, 0.002126763, 0.7508714, 0.008221888],
            [3.335013, 0.3376467, -39.12762, 0.4347564],
        ]
    )
    from_road = np.array([0.005476107, 1.388776, 0.2275968, 35.79262])
    system, road = _published_form()
    moved = expm(system * 0.25 / IRI_SPEED_M_S)
    np.testing.assert_allclose(moved, published, rtol=3e-6)
    # The old table's first figure is off by 1.8e-5; the other three agree to the last digit.
    driven = np.linalg.solve(system, (moved - np.eye(4)) @ road).ravel()
    np.testing.assert_allclose(driven, from_road, rtol=3e-5)
    # A car lifted with its road stays as it is: exact, whatever the table says.
    np.testing.assert_allclose(moved[:, 0] + moved[:, 2] + driven, [1.0, 0.0, 1.0, 0.0], atol=1e-9)


def test_a_tenth_of_a_metre_too() -> None:
    system, _ = _published_form()
    moved = expm(system * 0.10 / IRI_SPEED_M_S)
    published = [0.9994014, 0.004442351, 0.0002188854, 5.72179e-5]
    np.testing.assert_allclose(moved[0], published, atol=5e-6)


def test_a_measured_profile_has_its_published_roughness() -> None:
    # Sayers (1995): the mean of the rate at the points, begun on the mean slope of the first 11 m.
    big = np.zeros((5, 5))
    big[:4, :4], big[:4, 4:] = GOLDEN_CAR.system, GOLDEN_CAR.road_input
    moved = expm(big * STEP_M / IRI_SPEED_M_S)
    begun = (HEIGHT_M[44] - HEIGHT_M[0]) / 11.0 * IRI_SPEED_M_S
    state, rates = np.array([0.0, begun, 0.0, begun]), []
    for slope in np.diff(HEIGHT_M) / STEP_M:
        state = moved[:4, :4] @ state + moved[:4, 4] * slope * IRI_SPEED_M_S
        rates.append(abs(state[1] - state[3]))
    index = 1e3 * np.reshape(rates, (5, 80)).mean(axis=1) / IRI_SPEED_M_S
    np.testing.assert_allclose(index[2:], ROUGHNESS_MM_PER_M[2:], rtol=1e-5)
    np.testing.assert_allclose(index[:2], ROUGHNESS_MM_PER_M[:2], rtol=2e-4)  # still of how it was begun


def test_class_c_at_80_km_h_moves_the_suspension_by_its_closed_form() -> None:
    # Closed form for white road velocity: G (m_s + m_u) / (4 c) and G k_t / (4 c).
    density = road_of("C", 80.0).velocity_density_m2_s2_hz
    assert density == pytest.approx(2.24588e-3, rel=1e-5)
    assert 1e3 * GOLDEN_CAR.travel_rms_m(density) == pytest.approx(10.374, abs=5e-4)
    assert GOLDEN_CAR.rate_rms_m_s(density) == pytest.approx(0.24720, abs=5e-6)
    assert GOLDEN_CAR.up_crossings_per_s == pytest.approx(3.7925, abs=5e-5)


@pytest.mark.parametrize(("letter", "rms_mm"), [("A", 2.593), ("B", 5.187), ("C", 10.374), ("D", 20.748)])
def test_each_class_doubles_the_travel_of_the_one_before(letter: str, rms_mm: float) -> None:
    density = road_of(letter, 80.0).velocity_density_m2_s2_hz
    assert 1e3 * GOLDEN_CAR.travel_rms_m(density) == pytest.approx(rms_mm, abs=6e-4)


@pytest.mark.parametrize(
    "car", [GOLDEN_CAR, QuarterCar(40.0, 500.0, 3.0, 0.1), QuarterCar(90.0, 900.0, 9.0, 0.2)]
)
def test_the_lyapunov_equation_gives_the_closed_forms_for_any_car(car: QuarterCar) -> None:
    covariance = car.covariance(1.0)
    assert covariance[0, 0] == pytest.approx(car.travel_rms_m(1.0) ** 2, rel=1e-9)
    rate = covariance[1, 1] + covariance[3, 3] - 2.0 * covariance[1, 3]
    assert rate == pytest.approx(car.rate_rms_m_s(1.0) ** 2, rel=1e-9)
    ratio = math.sqrt(rate / covariance[0, 0]) / (2 * math.pi)
    assert car.up_crossings_per_s == pytest.approx(ratio, rel=1e-9)  # Rice 1944


def test_the_variance_is_the_integral_of_the_spectrum() -> None:
    def density(frequency_hz: float) -> float:
        s = 2j * math.pi * frequency_hz
        gain = np.linalg.solve(s * np.eye(4) - GOLDEN_CAR.system, GOLDEN_CAR.road_input)[0, 0]
        return float(abs(gain) ** 2)

    total, _ = quad(density, 1e-4, 500.0, points=[1.2, 10.7], limit=400)
    assert total == pytest.approx(GOLDEN_CAR.travel_rms_m(1.0) ** 2, rel=2e-3)


def test_a_simulated_drive_has_the_spread_and_the_crossings_of_the_closed_form() -> None:
    drive = simulate_travel(np.random.default_rng(5), 3_600_000, 1_000.0)
    assert drive.std() == pytest.approx(1.0, rel=0.01)
    for level in (0.0, 1.0, 2.0):
        up = np.count_nonzero((drive[:-1] < level) & (drive[1:] >= level)) / 3_600.0
        # Rice's rate, 1944: the mean's rate times exp(-a²/2).
        assert up == pytest.approx(GOLDEN_CAR.up_crossings_per_s * math.exp(-0.5 * level**2), rel=0.05)


@pytest.mark.parametrize("rate_hz", [50.0, 200.0, 1_000.0])
def test_the_spread_does_not_depend_on_how_finely_the_drive_is_sampled(rate_hz: float) -> None:
    drive = simulate_travel(np.random.default_rng(6), int(1_200 * rate_hz), rate_hz)
    assert drive.std() == pytest.approx(1.0, rel=0.025)
    early = [simulate_travel(np.random.default_rng(seed), 3, rate_hz)[1] for seed in range(400)]
    assert np.std(early) == pytest.approx(1.0, rel=0.15)  # it begins in motion, not at rest


def test_the_drive_has_the_spectrum_of_the_quarter_car() -> None:
    frequency, density = welch(unit_drive(seconds=600.0), fs=200.0, nperseg=2_048)
    for wanted_hz in (1.0, 5.0, 10.0, 20.0):
        place = int(np.argmin(np.abs(frequency - wanted_hz)))
        s = 2j * math.pi * frequency[place]
        gain = np.linalg.solve(s * np.eye(4) - GOLDEN_CAR.system, GOLDEN_CAR.road_input)[0, 0]
        expected = abs(gain) ** 2 / GOLDEN_CAR.travel_rms_m(1.0) ** 2
        assert density[place - 1 : place + 2].mean() == pytest.approx(expected, rel=0.25)


def test_the_same_drive_comes_back_and_cannot_be_written() -> None:
    assert unit_drive() is unit_drive()
    with pytest.raises(ValueError, match="read-only"):
        unit_drive()[0] = 1.0


def test_the_classes_are_those_of_iso_8608() -> None:
    # ISO 8608, table C.1: geometric means in 1e-6 m³ at n0 = 0.1 cycle/m.
    means = [16, 64, 256, 1024, 4096, 16384, 65536, 262144]
    assert [round(1e6 * ROUGHNESS_M3[item]) for item in RoadClass] == means
    # The same class in the angular form, at 1 rad/m: 1.005, not 16.
    angular = ROUGHNESS_M3[RoadClass.A] * (0.2 * math.pi) ** 2 / (2 * math.pi)
    assert angular == pytest.approx(1.0053e-6, rel=1e-4)


def test_the_roughness_index_of_a_class_is_what_the_literature_gives() -> None:
    # Kropac & Mucka: IRI = 2.21 sqrt(C), C in 1e-6 m³ at 1 rad/m (from memory); 2.219 for class A.
    density = road_of("A", 80.0).velocity_density_m2_s2_hz
    index = math.sqrt(2.0 / math.pi) * GOLDEN_CAR.rate_rms_m_s(density) / IRI_SPEED_M_S
    assert 1e3 * index == pytest.approx(2.219, abs=1e-3)


def test_every_road_says_its_speed_in_words() -> None:
    assert ROADS[0].words == "smooth motorway at 110 km/h"
    for road in ROADS:
        assert f"{road.speed_km_h:g} km/h" in road.words


@pytest.mark.parametrize("speed_km_h", [0.0, -30.0, 400.0, float("nan"), float("inf")])
def test_a_speed_that_nobody_drives_is_refused_with_a_sentence(speed_km_h: float) -> None:
    with pytest.raises(VehicleError, match="the speed must lie within 5 and 250 km/h"):
        Road(RoadClass.B, speed_km_h)


@pytest.mark.parametrize("letter", ["", "I", "AA", "1"])
def test_a_class_that_iso_8608_does_not_know_is_refused_with_a_sentence(letter: str) -> None:
    with pytest.raises(VehicleError, match="there is no road class"):
        road_of(letter, 50.0)
