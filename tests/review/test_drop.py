"""The drop of a marker: told within a found band where it is more than its uncertainty, else not."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from analysis.captures.model import ArraySource, Record, Role, Scaling, Step
from analysis.diagnosis.findings import BandBasis, Findings
from analysis.intervals import Interval
from analysis.review.drop import Untold, drop_at
from analysis.review.readings import read_point
from analysis.signals.drop import Drop
from analysis.simulation.drops import HELD_OUT_SEED, Asked, asked, coverage
from analysis.simulation.families import FAMILIES
from tests.app.fakes import RATE_HZ, worn_capture, worn_findings


def record(name: str = "004") -> Record:
    return next(item for item in worn_capture().records if item.name == name)


def said(made: Record, time_s: float, findings: Findings | None = None) -> Drop | Untold | None:
    return drop_at(findings or worn_findings(), made, read_point(made, time_s))


def deepest_s(made: Record) -> float:
    channel = made.channel(Role.SIGNAL)
    assert channel is not None
    path = worn_findings().surveys[0].path(made.name)
    assert path is not None
    time_s = np.arange(len(made)) / RATE_HZ
    belongs_v = 0.05 * np.interp(time_s, path.time_s, path.travel_percent)
    return float(time_s[int(np.argmax(belongs_v - channel.volts(0, len(made))))])


def without(made: Record, *roles: Role) -> Record:
    return replace(made, channels=tuple(item for item in made.channels if item.role not in roles))


def test_what_belongs_there_stands_above_the_sensor_s_ground() -> None:
    # 0.013 V of ground, 5.003 V of reference: as `worn_capture` makes them.
    drop = said(record(), deepest_s(record()))
    assert isinstance(drop, Drop)
    path = worn_findings().surveys[0].path("004")
    assert path is not None
    share = path.at(deepest_s(record())) / 100.0
    assert drop.belongs.value == pytest.approx(0.013 + share * (5.003 - 0.013), abs=0.001)
    assert drop.drop.value == pytest.approx(drop.belongs.value - read_v(), abs=1e-9)


def read_v() -> float:
    reading = read_point(record(), deepest_s(record()))
    return next(one.value for channel, one in reading.channels if channel.role is Role.SIGNAL and one)


def test_nothing_is_said_where_nothing_drops_or_no_band_was_found() -> None:
    assert said(record(), 0.1) is None
    assert said(record(), deepest_s(record()), replace(worn_findings(), bands=())) is None
    assert said(record("001"), 1.0) is None


def test_beside_the_bands_it_cannot_be_told() -> None:
    found = worn_findings()
    elsewhere = replace(found, bands=(replace(found.bands[0], travel=Interval(60.0, 64.0)),))
    assert said(record(), deepest_s(record()), elsewhere) is Untold.HERE
    assert isinstance(said(record(), deepest_s(record()), found), Drop)


def test_where_nobody_knows_where_the_arm_was_it_cannot_be_told() -> None:
    found = worn_findings()
    lost = replace(found, surveys=(replace(found.surveys[0], paths=()),))
    hold = replace(record(), step=Step.HOLD)
    assert said(hold, deepest_s(hold), lost) is Untold.HERE
    assert said(record(), deepest_s(record()), lost) is None


def test_a_drop_that_is_less_than_its_uncertainty_cannot_be_told() -> None:
    found = worn_findings()
    survey = found.surveys[0]
    unsure = [
        replace(item, uncertainty_percent=np.full_like(item.uncertainty_percent, 40.0))
        for item in survey.paths
    ]
    assert (
        said(record(), deepest_s(record()), replace(found, surveys=(replace(survey, paths=tuple(unsure)),)))
        is Untold.HERE
    )


def test_without_ground_and_reference_it_goes_by_those_of_the_capture_and_else_it_cannot_be_told() -> None:
    made, found = without(record(), Role.GROUND, Role.REFERENCE), worn_findings()
    at_s = deepest_s(made)
    assert said(made, at_s, found) is Untold.HERE
    examined = examined_findings(found)
    drop, whole = said(made, at_s, examined), said(record(), at_s, examined)
    assert isinstance(drop, Drop)
    assert isinstance(whole, Drop)
    assert drop.belongs.value == pytest.approx(whole.belongs.value, abs=0.002)


def examined_findings(found: Findings) -> Findings:
    return replace(found, basis=BandBasis(0.0, 0.0, 0.0, 0.9, feed_v=5.003 - 0.013, ground_v=0.013))


def test_a_reference_that_is_restless_about_the_moment_makes_it_less_sure() -> None:
    made = record()
    steady = said(made, deepest_s(made))
    reference = made.channel(Role.REFERENCE)
    assert reference is not None
    shaken_v = reference.volts(0, len(made)) + 0.1 * np.sin(
        2.0 * np.pi * 400.0 * np.arange(len(made)) / RATE_HZ
    )
    restless = with_channel(made, Role.REFERENCE, shaken_v)
    unsure = said(restless, deepest_s(made))
    assert isinstance(steady, Drop)
    assert isinstance(unsure, Drop)
    assert unsure.drop.expanded_uncertainty > 1.5 * steady.drop.expanded_uncertainty


def with_channel(made: Record, role: Role, voltage_v: np.ndarray) -> Record:
    channels = tuple(
        replace(item, source=ArraySource(voltage_v), scaling=Scaling()) if item.role is role else item
        for item in made.channels
    )
    return replace(made, channels=channels)


def test_the_true_drop_lies_within_what_is_stated_about_as_often_as_it_says() -> None:
    # The simulator is the outside: it knows how far each sample stands from what a sound contact gives.
    # Of 20 captures the mean share strays by some 3 in 100; two and a half times that is allowed for.
    answers: list[Asked] = []
    for index in range(20):
        drawn = FAMILIES["worn"][1](np.random.default_rng((HELD_OUT_SEED, index)))
        answers.extend(asked(drawn, (HELD_OUT_SEED, index), ("main", index)))
    seen = coverage(answers)
    assert seen.captures >= 16
    assert seen.samples >= 200
    assert seen.within >= 0.95 - 0.075
    assert seen.told >= 0.7
