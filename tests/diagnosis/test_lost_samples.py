"""A recorder that loses samples without a word makes no fault of a sound sensor, and hides none."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import numpy as np
import pytest
from numpy.typing import NDArray

from analysis.captures.memory import make_capture
from analysis.captures.model import ArraySource, Record, Step
from analysis.diagnosis.examine import examine
from analysis.diagnosis.findings import Findings, State, Statement, VerdictCode
from analysis.intervals import Interval
from tests.diagnosis.examples import RATE_HZ, record, standing, sweep, worn
from tests.signals.examples import Floats

Index = NDArray[np.int64]
BAND = Interval(60.0, 66.0)


def _left_out(size: int, at: Index, count: int) -> Index:
    return np.delete(np.arange(size), (at[:, None] + np.arange(count)).ravel())


def _repeated(size: int, at: Index, count: int) -> Index:
    index = np.arange(size)
    for first in at:
        index[first : first + count] = first
    return index


def _losing(whole: Record, index: Index) -> Record:
    """The record with its samples taken in that order, on every channel."""
    kept = []
    for channel in whole.channels:
        assert isinstance(channel.source, ArraySource)
        kept.append(replace(channel, source=ArraySource(np.asarray(channel.source.samples)[index])))
    return replace(whole, channels=tuple(kept))


def _moments(travel: Floats, count: int, lost: int, seed: int, avoided: Interval | None = None) -> Index:
    """Moments at which the arm moves, half a second apart, away from the travel avoided."""
    rng = np.random.default_rng(seed)
    moving = np.abs(np.gradient(travel)) * RATE_HZ > 40.0
    if avoided is not None:
        moving &= (travel < avoided.start - 8.0) | (travel > avoided.stop + 8.0)
    chosen: list[int] = []
    for at in rng.permutation(np.flatnonzero(moving[: -2 * lost])):
        if all(abs(int(at) - other) > RATE_HZ / 2 + lost for other in chosen):
            chosen.append(int(at))
        if len(chosen) == count:
            break
    return np.array(sorted(chosen))


def _examined(lose: Callable[[int, Index, int], Index], lost_s: float, seed: int, *, bad: bool) -> Findings:
    travel, lost = sweep(8), round(lost_s * RATE_HZ)
    opened = worn(travel, BAND, seed=seed) if bad else None
    whole = record("004", Step.SWEEP, travel, opened=opened, seed=seed)
    at = _moments(travel, 5, lost, seed, BAND if bad else None)
    return examine(make_capture([*standing(), _losing(whole, lose(len(travel), at, lost))]))


def _kept_up(found: Findings) -> Statement | None:
    return next((item for item in found.evidence if item.code == "recorder_kept_up"), None)


@pytest.mark.parametrize("lose", [_left_out, _repeated])
@pytest.mark.parametrize("lost_s", [0.02, 0.05])
@pytest.mark.parametrize("seed", [1, 2])
def test_a_sound_sensor_stays_sound_and_the_recorder_is_named(
    lose: Callable[[int, Index, int], Index], lost_s: float, seed: int
) -> None:
    found = _examined(lose, lost_s, seed, bad=False)
    assert found.verdict.code is VerdictCode.NO_FAULT_FOUND
    told = _kept_up(found)
    assert told is not None
    assert told.state is State.REFUTED
    assert told.records == ("004",)
    assert any("no samples are lost" in line for line in found.advice)


@pytest.mark.parametrize("lose", [_left_out, _repeated])
def test_a_worn_band_is_found_all_the_same(lose: Callable[[int, Index, int], Index]) -> None:
    found = _examined(lose, 0.03, 3, bad=True)
    assert found.verdict.code is VerdictCode.WORN_TRACK
    assert found.bands[0].travel.start == pytest.approx(BAND.start, abs=1.0)
    assert found.bands[0].travel.stop == pytest.approx(BAND.stop, abs=1.0)


def test_nothing_is_said_of_the_recorder_where_nothing_was_lost() -> None:
    found = examine(make_capture([*standing(), record("004", Step.SWEEP, sweep(6), seed=4)]))
    assert _kept_up(found) is None
