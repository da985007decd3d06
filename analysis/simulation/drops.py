"""How often the true drop lies within what is stated: ``python -m analysis.simulation.drops``.

On every crossing that broke up of every found band two samples are read, as a technician would mark them: the
deepest one and one by chance. What `analysis.review.drop` says of them is held against the simulator, which
knows how far each sample stands from what a sound contact gives.
"""

from __future__ import annotations

import argparse
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

import numpy as np

from analysis.captures.model import Record, Role
from analysis.control_unit.stand_in import sound_sensor_v
from analysis.diagnosis.examine import examine
from analysis.diagnosis.findings import CrossingTime, Findings
from analysis.review.drop import Untold, drop_at
from analysis.review.readings import read_point
from analysis.simulation.bench import simulate_closely
from analysis.simulation.calibrate import FITTED_SEEDS
from analysis.simulation.corpus import PHYSICS, case
from analysis.simulation.scenario import Scenario
from analysis.simulation.truth import PathSamples

HELD_OUT_SEED = 1301
COUNT = 400

CHOSEN_ON_SEEDS = (77,)
"""Captures on which it was looked at what the uncertainty must hold; no figure is stated of them."""

_LEAST_DROP_V = 0.1


@dataclass(frozen=True, slots=True)
class Asked:
    """One sample whose drop was asked for, in volts; the last three are None where it was not told.

    Parameters
    ----------
    capture : tuple of (str, int)
        Physics and number of the capture.
    deepest : bool
        Whether it is the deepest of its crossing.
    true_v : float
        How far the signal stood below a sound contact.
    drop_v, expanded_uncertainty_v : float or None
        What was said.
    """

    capture: tuple[str, int]
    deepest: bool
    true_v: float
    drop_v: float | None
    expanded_uncertainty_v: float | None

    @property
    def within(self) -> bool | None:
        """Whether the truth lies within what was stated; None where nothing was."""
        if self.drop_v is None or self.expanded_uncertainty_v is None:
            return None
        return abs(self.drop_v - self.true_v) <= self.expanded_uncertainty_v


def asked_of_corpus(seed: int, index: int, physics: str) -> Iterator[Asked]:
    """Ask for drops in one capture of a corpus; see `asked`."""
    made = case(seed, index, physics)
    return asked(made.scenario, (seed, index, PHYSICS.index(physics), 2), (physics, index))


def asked(
    scenario: Scenario, seed: int | tuple[int, ...], name: tuple[str, int] = ("", 0)
) -> Iterator[Asked]:
    """Ask for drops in one capture; for none where no band was made, or none was found.

    Records whose recorder left samples out without a word are passed over: the truth of a sample is then
    nowhere.

    Parameters
    ----------
    scenario : Scenario
    seed : int or tuple of int
        Source of all chance.
    name : tuple of (str, int)
        Physics and number that the answers carry.

    Yields
    ------
    Asked
        Of samples that are within 0.1 V of what belongs there nothing is asked.
    """
    if not scenario.sensor.bands:
        return
    capture, _, samples = simulate_closely(scenario, seed)
    findings = examine(capture)
    rng = np.random.default_rng(seed)
    for item in samples:
        record = next(one for one in capture.records if one.name == item.record)
        if item.role is Role.SIGNAL and len(record) >= len(item.departure_v):
            for at_s, deepest in _moments(findings, record, rng):
                answer = _asked(findings, item, record, at_s)
                if answer is not None:
                    yield Asked(name, deepest, *answer)


def _moments(findings: Findings, record: Record, rng: np.random.Generator) -> Iterator[tuple[float, bool]]:
    for band in findings.bands:
        for crossing in band.crossings:
            if band.track is Role.SIGNAL and crossing.noisy and crossing.record == record.name:
                yield from _within(findings, record, crossing, rng)


def _within(
    findings: Findings, record: Record, crossing: CrossingTime, rng: np.random.Generator
) -> Iterator[tuple[float, bool]]:
    """The sample of a crossing that is furthest from a sound sensor, and one that is far from it."""
    channel, sound = record.channel(Role.SIGNAL), sound_sensor_v(findings, record, Role.SIGNAL)
    start, stop = record.index_at(crossing.time.start), record.index_at(crossing.time.stop) + 1
    if channel is None or sound is None:
        return
    time_s = record.first_sample_s + np.arange(start, stop) * record.sample_interval_s
    away_v = np.nan_to_num(np.abs(np.interp(time_s, *sound) - channel.volts(start, stop)))
    far = np.flatnonzero(away_v >= _LEAST_DROP_V)
    if far.size:
        yield float(time_s[int(np.argmax(away_v))]), True
        yield float(time_s[int(rng.choice(far))]), False


def _asked(
    findings: Findings, samples: PathSamples, record: Record, at_s: float
) -> tuple[float, float | None, float | None] | None:
    said = drop_at(findings, record, read_point(record, at_s))
    if said is None:
        return None
    # The probe's way to the wire comes before the samples whose truth is known.
    index = record.index_at(at_s) - (len(record) - len(samples.departure_v))
    true_v = -float(samples.departure_v[max(index, 0)])
    if isinstance(said, Untold):
        return true_v, None, None
    return true_v, said.drop.value, said.drop.expanded_uncertainty


@dataclass(frozen=True, slots=True)
class Coverage:
    """Shares over all captures, each of which weighs the same.

    Parameters
    ----------
    captures, samples : int
    told : float
        Of the samples that were asked for, those whose drop was told.
    within : float
        Of those, the ones whose true drop lies within what was stated.
    median_u_v : float
        Median expanded uncertainty of those, in volts.
    """

    captures: int
    samples: int
    told: float
    within: float
    median_u_v: float


def coverage(answers: Sequence[Asked]) -> Coverage:
    """Sum up answers, of which at least one was told.

    Raises
    ------
    ValueError
        Where none was.
    """
    told = [item for item in answers if item.within is not None]
    if not told:
        raise ValueError("answers must hold one that was told, got none")
    spreads_v = [item.expanded_uncertainty_v for item in told if item.expanded_uncertainty_v is not None]
    return Coverage(
        len({item.capture for item in answers}),
        len(answers),
        _even([(item.capture, item.within is not None) for item in answers]),
        _even([(item.capture, bool(item.within)) for item in told]),
        float(np.median(spreads_v)),
    )


def _even(marks: Sequence[tuple[tuple[str, int], bool]]) -> float:
    """Mean over captures of the share of each."""
    captures = sorted({capture for capture, _ in marks})
    shares = [np.mean([mark for capture, mark in marks if capture == own]) for own in captures]
    return float(np.mean(shares))


def main(arguments: Sequence[str] | None = None) -> None:
    """Print a line for each physics."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--count", type=int, default=COUNT, help="captures of each physics")
    parser.add_argument("--seed", type=int, default=HELD_OUT_SEED)
    chosen = parser.parse_args(arguments)
    if chosen.seed in (*FITTED_SEEDS, *CHOSEN_ON_SEEDS):
        parser.error(f"seed must be held out, got {chosen.seed}")
    for physics in PHYSICS:
        answers = [
            item for index in range(chosen.count) for item in asked_of_corpus(chosen.seed, index, physics)
        ]
        for name, own in (("all", answers), ("deepest", [item for item in answers if item.deepest])):
            seen = coverage(own)
            print(
                f"{physics:6} {name:8} captures {seen.captures:4} samples {seen.samples:5}"
                f" told {seen.told:.3f} within {seen.within:.3f} median U {seen.median_u_v * 1e3:.0f} mV"
            )


if __name__ == "__main__":
    main()
