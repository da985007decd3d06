"""The recorder's own zero: it shows nothing of the sensor, and says how far every level may be off."""

from __future__ import annotations

import numpy as np
import pytest

from analysis.captures.memory import make_capture, make_record
from analysis.captures.model import Record, Step
from analysis.diagnosis.examine import examine
from analysis.diagnosis.findings import Result, State
from analysis.errors import CaptureError
from analysis.intervals import Interval
from tests.diagnosis.examples import METER, RATE_HZ, THREE, Meter, channel, visit


def _zero(offset_v: float = 0.0, *, meter: Meter = METER, name: str = "000") -> Record:
    channels = [channel(role, np.full(2_000, offset_v), seed=5, meter=meter) for role in THREE]
    return make_record(name, 1.0 / RATE_HZ, channels, step=Step.ZERO)


@pytest.mark.parametrize("bands", [(), (Interval(42.0, 48.0),)])
def test_a_zero_changes_nothing_of_what_is_said_of_the_sensor(bands: tuple[Interval, ...]) -> None:
    capture = visit(bands=bands)
    alone, with_zero = examine(capture), examine(make_capture([_zero(), *capture.records]))
    assert with_zero.verdict == alone.verdict
    assert with_zero.bands == alone.bands
    assert with_zero.events == alone.events
    assert [item for item in with_zero.checks if item.code != "recorder_zero"] == list(alone.checks)


@pytest.mark.parametrize(
    ("offset_v", "result", "state"),
    [
        (0.001, Result.PASS, State.PROVED),
        (0.010, Result.CANNOT_TELL, State.NOT_SHOWN),
        (-0.010, Result.CANNOT_TELL, State.NOT_SHOWN),
        (0.012, Result.FAIL, State.REFUTED),
        (-0.012, Result.FAIL, State.REFUTED),
    ],
)
def test_an_offset_is_held_against_the_stated_accuracy_with_its_uncertainty(
    offset_v: float, result: Result, state: State
) -> None:
    # 10 mV stated; a step of 1 mV is an uncertainty of 0.58 mV, k = 2 (JCGM 100, F.2.2.1).
    meter = Meter(step_v=0.001, noise_v=0.0002, offset_error_v=0.010)
    found = examine(make_capture([_zero(offset_v, meter=meter), *visit().records]))
    check = next(item for item in found.checks if item.code == "recorder_zero")
    assert check.value == pytest.approx(offset_v, abs=5e-4)
    assert check.expanded_uncertainty == pytest.approx(2.0 * 0.001 / np.sqrt(12.0), rel=0.05)
    assert check.result is result
    assert next(item for item in found.evidence if item.code == "recorder_zero").state is state


def test_without_a_stated_accuracy_the_offset_is_told_and_not_judged() -> None:
    meter = Meter(gain_error=None, offset_error_v=None)
    found = examine(make_capture([_zero(0.03, meter=meter), *visit().records]))
    check = next(item for item in found.checks if item.code == "recorder_zero")
    assert (check.lower_limit, check.upper_limit, check.result) == (None, None, Result.CANNOT_TELL)
    assert check.value == pytest.approx(0.03, abs=0.003)


def test_every_record_has_its_outcome_in_the_captures_order() -> None:
    found = examine(make_capture([_zero(), *visit().records, _zero(name="009")]))
    assert [item.record for item in found.record_outcomes] == [
        "000",
        "001",
        "002",
        "003",
        "004",
        "005",
        "009",
    ]
    assert found.record_outcomes[0].text.startswith("zero at ")
    assert found.record_outcomes[0].result is Result.PASS


def test_without_a_zero_nothing_is_said_of_it() -> None:
    found = examine(visit())
    assert "recorder_zero" not in {item.code for item in found.checks} | {
        item.code for item in found.evidence
    }


def test_a_zero_alone_is_no_record_of_a_sensor() -> None:
    with pytest.raises(CaptureError, match="no record holds a signal channel"):
        examine(make_capture([_zero()]))
