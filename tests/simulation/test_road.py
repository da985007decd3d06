"""Road and quarter car against ISO 8608, the Golden Car's constants and closed forms."""

from __future__ import annotations

import numpy as np
import pytest
from scipy.signal import welch

from analysis.intervals import Interval
from analysis.simulation import road
from analysis.simulation.hand import NODE_HZ


def test_the_golden_car_has_its_published_poles() -> None:
    # Sayers 1995; the same figures stand as constants in published IRI code (michalsorel/iri).
    poles = np.linalg.eigvals(road.system_matrix())
    poles = poles[poles.imag > 0]
    body, wheel = sorted(poles, key=abs)
    assert body == pytest.approx(-2.5901 + 7.3234j, abs=1e-4)
    assert wheel == pytest.approx(-20.4099 + 64.4226j, abs=1e-4)
    assert abs(body) / (2 * np.pi) == pytest.approx(1.2363, abs=1e-4)
    assert abs(wheel) / (2 * np.pi) == pytest.approx(10.755, abs=1e-3)


def test_the_road_has_the_white_velocity_of_iso_8608() -> None:
    # Class C at 80 km/h: 2.24588e-3 m²/s²/Hz (closed form from ISO 8608's Gd(n0) = 256e-6 m³).
    assert road.velocity_density("C", 80.0) == pytest.approx(2.24588e-3, rel=1e-5)
    velocity = road.road_velocity(np.random.default_rng(1), 300_000, "C", 80.0)
    frequency, density = welch(velocity, fs=NODE_HZ, nperseg=4_096)
    assert density[1:-1].mean() == pytest.approx(2.24588e-3, rel=0.02)
    slope = np.polyfit(np.log(frequency[1:-1]), np.log(density[1:-1]), 1)[0]
    assert abs(slope) < 0.05


def test_the_roads_height_falls_with_the_square_of_the_wave_number() -> None:
    speed = 72.0 / 3.6
    velocity = road.road_velocity(np.random.default_rng(2), 1_000_000, "B", 72.0)
    height = np.cumsum(velocity) / NODE_HZ
    frequency, density = welch(height, fs=NODE_HZ, nperseg=65_536)
    wave, per_wave = frequency / speed, density * speed
    used = (wave > 0.05) & (wave < 2.0)
    level = per_wave[used] * (wave[used] / 0.1) ** 2  # ISO 8608: Gd(n) = Gd(n0) (n/n0)⁻²
    assert level.mean() == pytest.approx(64e-6, rel=0.06)


def test_suspension_travel_has_its_closed_form_rms_and_crosses_its_mean_as_rice_says() -> None:
    # rms 10.374 mm on class C at 80 km/h; 3.7925 up-crossings a second (Rice; Lyapunov solution).
    travel = road.suspension_travel_m(np.random.default_rng(3), 900.0, "C", 80.0)
    assert 1e3 * travel.std() == pytest.approx(10.374, rel=0.04)
    up = np.count_nonzero((travel[:-1] < 0.0) & (travel[1:] >= 0.0)) / 900.0
    assert up == pytest.approx(3.7925, rel=0.04)


def test_one_class_rougher_is_twice_the_travel() -> None:
    calm = road.suspension_travel_m(np.random.default_rng(4), 20.0, "B", 60.0)
    rough = road.suspension_travel_m(np.random.default_rng(4), 20.0, "C", 60.0)
    assert rough == pytest.approx(2.0 * calm, rel=1e-9)


def test_a_drive_stays_between_the_stops_about_the_rest_height() -> None:
    path = road.road_path(np.random.default_rng(5), 30.0, Interval(20.0, 80.0), 50.0, road_class="D")
    assert path.min() >= 20.0
    assert path.max() <= 80.0
    assert path.mean() == pytest.approx(50.0, abs=2.0)


def test_a_pothole_is_a_blow_that_rings_down() -> None:
    smooth = road.suspension_travel_m(np.random.default_rng(6), 60.0, "A", 50.0)
    holed = road.suspension_travel_m(np.random.default_rng(6), 60.0, "A", 50.0, potholes_per_s=0.2)
    assert np.abs(holed).max() > 2.0 * np.abs(smooth).max()
    assert np.abs(np.diff(holed)).max() < 0.005  # the tyre rounds the edge: no jump between milliseconds
