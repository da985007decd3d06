"""The corpus: seeded, complete, and true to its own captures."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from analysis.captures.model import Role
from analysis.diagnosis.findings import VerdictCode
from analysis.simulation.bench import simulate
from analysis.simulation.corpus import case, corpus, settled
from analysis.simulation.families import FAMILIES
from analysis.simulation.truth import FaultTruth, Truth


def test_the_shares_of_the_families_add_up() -> None:
    assert sum(share for share, _ in FAMILIES.values()) == pytest.approx(1.0)


def test_a_case_does_not_depend_on_the_cases_before_it() -> None:
    whole = list(corpus(3, 3))
    alone = case(3, 2)
    assert whole[2].truth == alone.truth
    for record, other in zip(whole[2].capture.records, alone.capture.records, strict=True):
        for channel, twin in zip(record.channels, other.channels, strict=True):
            assert np.array_equal(channel.volts(), twin.volts(), equal_nan=True)


def test_another_seed_is_another_corpus() -> None:
    assert case(1, 0).capture.capture_id != case(2, 0).capture.capture_id


def test_unknown_physics_is_refused() -> None:
    with pytest.raises(ValueError, match="physics must be one of"):
        next(corpus(1, 1, "none"))


@pytest.mark.parametrize("physics", ["main", "other"])
def test_captures_are_well_formed_and_truths_consistent(physics: str) -> None:
    for item in corpus(11, 30, physics):
        assert item.truth.code in item.truth.acceptable
        assert item.capture.records
        for record in item.capture.records:
            assert len({len(channel) for channel in record.channels}) == 1
            assert len(record) >= 2
        for band in item.truth.bands:
            assert 0 <= band.shown <= band.crossings
            assert band.track in (Role.SIGNAL, Role.SECOND_SIGNAL)
            assert (band.broken is None) == (band.shown == 0)


@pytest.mark.parametrize("family", sorted(FAMILIES))
def test_every_family_makes_captures_that_repeat_with_their_seed(family: str) -> None:
    recipe = FAMILIES[family][1]
    first, second = (recipe(np.random.default_rng(21)) for _ in range(2))
    capture, truth = simulate(first, 4)
    again, _ = simulate(second, 4)
    assert truth.code is first.code
    for record, twin in zip(capture.records, again.records, strict=True):
        for channel, other in zip(record.channels, twin.channels, strict=True):
            assert np.array_equal(channel.source.read(0, 10**9), other.source.read(0, 10**9))


def test_worn_captures_are_worn_because_two_crossings_showed_it() -> None:
    for index in range(40):
        item = case(13, index)
        if item.truth.code is VerdictCode.WORN_TRACK:
            assert item.truth.shown_bands
        if item.family == "sound":
            assert item.truth.code is VerdictCode.NO_FAULT_FOUND
            assert not item.truth.bands


def test_wear_that_never_showed_cannot_be_asked_for() -> None:
    hidden = Truth(VerdictCode.WORN_TRACK, frozenset({VerdictCode.WORN_TRACK}))
    assert settled(hidden).code is VerdictCode.NO_FAULT_FOUND
    assert VerdictCode.INCONCLUSIVE in settled(hidden).acceptable


def test_a_fleeting_fault_that_never_came_was_not_seen() -> None:
    broken = Truth(VerdictCode.SIGNAL_WIRING, frozenset({VerdictCode.SIGNAL_WIRING}))
    assert settled(replace(broken, fault=FaultTruth(0, 0.0, 0.0))).code is VerdictCode.NO_FAULT_FOUND
    assert settled(replace(broken, fault=FaultTruth(1, 0.001, 0.001))).code is VerdictCode.INCONCLUSIVE
    assert settled(replace(broken, fault=FaultTruth(7, 0.1, 0.3))).code is VerdictCode.SIGNAL_WIRING
