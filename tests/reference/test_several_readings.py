"""Results of several readings against JCGM 100 and against the Monte Carlo method of JCGM 101."""

from __future__ import annotations

from math import sqrt

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from analysis.captures.memory import make_channel
from analysis.captures.model import Channel, Role, Scaling
from analysis.signals.several import Share, result_uncertainty


def _channel(step_v: float = 0.0, gain: float | None = None, offset_v: float | None = None) -> Channel:
    samples = np.zeros(4, np.int16) if step_v else np.zeros(4)
    scaling = Scaling(step_v) if step_v else Scaling()
    return make_channel(Role.SIGNAL, samples, scaling, gain_error=gain, offset_error_v=offset_v)


def test_ten_resistors_calibrated_by_one_standard_err_together() -> None:
    # JCGM 100:2008, 5.2.2, example (from memory): ten resistors of 1000 ohm, each compared with one standard
    # of u = 100 milliohm, in series: u = 10 x 0.1 = 1 ohm and not sqrt(10) x 0.1 = 0.32 ohm.
    standard = _channel(offset_v=0.100 * sqrt(3.0))
    together = [Share(standard, 1000.0, 1.0, "the standard") for _ in range(10)]
    assert result_uncertainty(together) == pytest.approx(2.0 * 1.0, rel=1e-12)


def test_an_amplitude_does_not_count_a_common_offset_twice() -> None:
    # IEC 62754:2017 (as quoted): the levels of an amplitude |s1 - s2| are correlated.
    probe = _channel(gain=0.01, offset_v=0.5)
    span = [Share(probe, 4.5, 1.0, "signal"), Share(probe, 0.5, -1.0, "signal")]
    assert result_uncertainty(span) == pytest.approx(2.0 * 4.0 * 0.01 / sqrt(3.0), rel=1e-12)


def test_roundings_never_cancel() -> None:
    # JCGM 100, F.2.2.1: each reading has its own.
    pair = [Share(_channel(0.01), 2.0, 1.0, "a"), Share(_channel(0.01), 2.0, -1.0, "a")]
    assert result_uncertainty(pair) == pytest.approx(2.0 * sqrt(2.0) * 0.01 / sqrt(12.0), rel=1e-12)


def test_nothing_read_is_nothing_unsure() -> None:
    assert result_uncertainty(()) == 0.0


def _simulated(shares: list[Share], common: float, count: int = 200_000) -> float:
    """Twice the standard deviation of the result (JCGM 101), errors of sources correlated by `common`."""
    rng = np.random.default_rng(62754)
    total = np.zeros(count)
    sources = sorted({item.source for item in shares})
    width = sqrt(3.0)  # of a rectangular distribution with standard deviation 1

    def drawn() -> dict[str, np.ndarray]:
        shared = rng.uniform(-width, width, count)
        return {name: shared if common == 1.0 else rng.uniform(-width, width, count) for name in sources}

    gain, offset = drawn(), drawn()
    for item in shares:
        rounding = rng.uniform(-0.5, 0.5, count) * item.channel.step_v
        error = (
            gain[item.source] * (item.channel.gain_error or 0.0) / width * item.level_v
            + offset[item.source] * (item.channel.offset_error_v or 0.0) / width
            + rounding
        )
        total += item.sensitivity * error
    return 2.0 * float(total.std())


@pytest.mark.parametrize(
    "shares",
    [
        # signal against ground
        [
            Share(_channel(0.005, 0.01, 0.02), 4.4, 1.0, "signal"),
            Share(_channel(0.005, 0.01, 0.02), 0.02, -1.0, "ground"),
        ],
        # an inverted pair adds up to the feed: here errors that go together are the worse ones
        [
            Share(_channel(0.001, 0.01, 0.002), 1.5, 1.0, "signal"),
            Share(_channel(0.001, 0.01, 0.002), 3.5, 1.0, "second"),
        ],
    ],
)
def test_the_uncertainty_is_the_larger_of_a_simulation_with_and_without_common_errors(
    shares: list[Share],
) -> None:
    expected = max(_simulated(shares, 0.0), _simulated(shares, 1.0))
    assert result_uncertainty(shares) == pytest.approx(expected, rel=0.01)


@given(st.floats(0.1, 4.9), st.floats(0.1, 4.9), st.floats(-2.0, 2.0), st.floats(0.0, 0.05))
def test_two_inputs_are_never_surer_than_either_bound(
    first_v: float, second_v: float, factor: float, gain: float
) -> None:
    made = _channel(0.002, gain, 0.01)
    apart = [Share(made, first_v, 1.0, "a"), Share(made, second_v, -factor, "b")]
    together = [Share(made, first_v, 1.0, "a"), Share(made, second_v, -factor, "a")]
    alone = result_uncertainty(apart[:1])
    both = result_uncertainty(apart)
    assert both >= result_uncertainty(together) - 1e-12
    assert both >= alone - 1e-12
