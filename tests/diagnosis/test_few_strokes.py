"""A harness that breaks up while nobody moves the arm is shown, and what to do about it goes with how."""

from __future__ import annotations

import numpy as np
import pytest

from analysis.captures.memory import make_capture
from analysis.captures.model import Capture, Step
from analysis.diagnosis.examine import examine
from analysis.diagnosis.findings import VerdictCode
from tests.diagnosis.examples import RATE_HZ, record, standing, sweep
from tests.signals.examples import Floats


def _opened(size: int, at_s: tuple[float, ...], lasting_s: float = 0.03) -> Floats:
    gone = np.zeros(size)
    for when in at_s:
        first = round(when * RATE_HZ)
        gone[first : first + round(lasting_s * RATE_HZ)] = 1.0
    return gone


def _visit(strokes: int, wiggled_s: tuple[float, ...], swept_s: tuple[float, ...]) -> Capture:
    path = sweep(strokes)
    still = standing(wiggled=_opened(round(2.0 * RATE_HZ), wiggled_s))
    return make_capture([*still, record("004", Step.SWEEP, path, opened=_opened(len(path), swept_s))])


OFTEN_S = (0.3, 0.6, 0.9, 1.2, 1.5)


@pytest.mark.parametrize("strokes", [1, 2, 6])
@pytest.mark.parametrize("swept_s", [(), (0.6,), (0.6, 0.75)])
def test_wiring_that_breaks_up_while_it_is_wiggled_is_told_after_a_single_stroke(
    strokes: int, swept_s: tuple[float, ...]
) -> None:
    found = examine(_visit(strokes, OFTEN_S, swept_s))
    assert found.verdict.code is VerdictCode.SIGNAL_WIRING
    assert found.verdict.confidence > 0.8


def _restless(*, untouched: bool) -> Capture:
    """A wire that lets go in one millisecond out of four, always or only while it is wiggled."""
    rng = np.random.default_rng(8)

    def chatter(size: int) -> Floats:
        return np.repeat(rng.random(size // 2 + 1) < 0.25, 2)[:size].astype(np.float64)

    path, still = sweep(4), np.full(round(2.0 * RATE_HZ), 50.0)
    quiet = np.zeros(len(still))
    records = [
        record("001", Step.GROUND, still, seed=1, opened=chatter(len(still)) if untouched else quiet),
        record("002", Step.REFERENCE, still, seed=2, opened=chatter(len(still)) if untouched else quiet),
        record("003", Step.WIGGLE, still, seed=3, opened=chatter(len(still))),
        record("004", Step.SWEEP, path, opened=chatter(len(path)) if untouched else np.zeros(len(path))),
    ]
    return make_capture(records)


@pytest.mark.parametrize("untouched", [True, False])
def test_wiring_that_is_never_quiet_is_to_be_measured_from_end_to_end(untouched: bool) -> None:
    found = examine(_restless(untouched=untouched))
    assert found.verdict.code is VerdictCode.SIGNAL_WIRING
    assert any("wiggle the harness section by section" in line for line in found.advice)
    assert any("from end to end" in line for line in found.advice) is untouched


def test_a_spot_that_broke_up_on_its_only_crossing_decides_nothing() -> None:
    found = examine(_visit(1, (), (0.6,)))
    assert found.verdict.code is VerdictCode.INCONCLUSIVE
    assert any("more times" in line for line in found.advice)


def test_more_openings_at_rest_never_speak_less_for_the_wiring() -> None:
    sure = []
    for count in range(len(OFTEN_S) + 1):
        verdict = examine(_visit(1, OFTEN_S[:count], (0.6,))).verdict
        sure.append(verdict.confidence if verdict.code is VerdictCode.SIGNAL_WIRING else 0.0)
    assert sure == sorted(sure)
    assert sure[0] == 0.0
    assert sure[-1] > 0.9
