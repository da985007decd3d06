"""The sensor that stands in for the other side reads the volts that its own feed gives, not always five."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from analysis.captures.memory import make_capture
from analysis.captures.model import Role, Step
from analysis.control_unit.stand_in import sound_sensor_v
from analysis.diagnosis.examine import examine
from tests.diagnosis.examples import Wires, record, standing, sweep

# 4.5 V: Lexus GX 470 2007, Height Control Sensor, Inspection; 5 V: Volvo XC70 2008, Height Sensor.
FEEDS = [("ride-height-4v5", 4.5), ("ride-height", 5.0)]


@pytest.mark.parametrize(("profile", "feed_v"), FEEDS)
def test_without_a_band_the_volts_are_those_of_the_feed_that_was_read(profile: str, feed_v: float) -> None:
    wires = Wires(reference_v=feed_v, ground_v=0.0)
    made = record("004", Step.SWEEP, sweep(6, low=20.0, high=80.0), wires=wires, seed=5)
    found = examine(make_capture([*standing(wires=wires), made]), profile=profile)
    stand_in = sound_sensor_v(replace(found, bands=()), made, Role.SIGNAL)
    assert stand_in is not None
    assert np.max(stand_in[1]) == pytest.approx(0.8 * feed_v, abs=0.02)
    assert np.min(stand_in[1]) == pytest.approx(0.2 * feed_v, abs=0.02)


def test_findings_that_do_not_say_what_they_took_leave_five_volts() -> None:
    made = record("004", Step.SWEEP, sweep(6, low=20.0, high=80.0), seed=5)
    found = replace(examine(make_capture([*standing(), made])), bands=(), basis=None)
    stand_in = sound_sensor_v(found, made, Role.SIGNAL)
    assert stand_in is not None
    assert np.max(stand_in[1]) == pytest.approx(4.0, abs=0.02)
