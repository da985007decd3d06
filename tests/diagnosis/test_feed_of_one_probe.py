"""One probe from wire to wire: its own record tells a bad ground or feed, and so does the signal's side."""

from __future__ import annotations

import numpy as np
import pytest

from analysis.captures.memory import make_capture, make_record
from analysis.captures.model import Capture, Role, Step
from analysis.diagnosis.examine import examine
from analysis.diagnosis.findings import VerdictCode
from tests.diagnosis.examples import RATE_HZ, channel, sweep
from tests.signals.examples import Floats, noise


def _now_and_then(count: int, seed: int) -> Floats:
    """Marks of 0.03 s each, at random, about three a second."""
    rng = np.random.default_rng(seed)
    marks = np.zeros(count)
    for first in rng.integers(0, count - 200, round(3 * count / RATE_HZ)):
        marks[first : first + round(0.03 * RATE_HZ)] = 1.0
    return marks


def _one_probe(*, ground_v: float = 0.0, reference_v: float = 0.0, wire: bool = False) -> Capture:
    """Ground, reference and sweep one after the other; ground lifts, or reference dips, or the wire opens."""

    def lifted(count: int, seed: int) -> Floats:
        return ground_v * _now_and_then(count, seed)

    def fed(count: int, seed: int) -> Floats:
        return 5.0 - reference_v * _now_and_then(count, seed)

    count, path = round(4.0 * RATE_HZ), sweep(8)
    low, high = lifted(len(path), 3), fed(len(path), 4)
    signal = low + (high - low) * path / 100.0
    if wire:
        signal *= 1.0 - _now_and_then(len(path), 5)
    made = [
        (Step.GROUND, Role.GROUND, lifted(count, 1)),
        (Step.REFERENCE, Role.REFERENCE, fed(count, 2)),
        (Step.SWEEP, Role.SIGNAL, signal),
    ]
    return make_capture(
        [
            make_record(
                f"{number:03d}",
                1.0 / RATE_HZ,
                [channel(role, volts + noise(len(volts), 0.002, number))],
                step=step,
            )
            for number, (step, role, volts) in enumerate(made, start=1)
        ]
    )


@pytest.mark.parametrize(
    ("capture", "code"),
    [
        (_one_probe(ground_v=1.5), VerdictCode.GROUND_FAULT),
        (_one_probe(reference_v=2.0), VerdictCode.REFERENCE_FAULT),
        (_one_probe(wire=True), VerdictCode.SIGNAL_WIRING),
        (_one_probe(), VerdictCode.NO_FAULT_FOUND),
    ],
    ids=["ground", "reference", "wire", "sound"],
)
def test_what_the_signal_shows_is_told_by_the_wire_that_shows_it_alone(
    capture: Capture, code: VerdictCode
) -> None:
    assert examine(capture).verdict.code is code
