"""The corpus: any number of seeded captures with their truth, over every fault and the full ranges.

Calibration, the reliability table and the accuracy tables are made from it, on seeds that never meet. The
corpus of ``"other"`` physics breaks the contact, moves the arm and samples in ways that the main one does
not, so that nothing is tuned to one model of wear.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace

import numpy as np

from analysis.captures.model import Capture
from analysis.diagnosis.findings import VerdictCode
from analysis.simulation.alternatives import otherwise
from analysis.simulation.bench import simulate
from analysis.simulation.families import FAMILIES
from analysis.simulation.scenario import Scenario
from analysis.simulation.truth import FaultTruth, Truth

PHYSICS = ("main", "other")


@dataclass(frozen=True, slots=True)
class Case:
    """One capture of the corpus.

    Parameters
    ----------
    index : int
        Its number, from 0.
    capture : Capture
        In memory.
    truth : Truth
        What a perfect reader would say.
    family : str
        The recipe that it came from.
    scenario : Scenario
        What was simulated, for tables broken down by it; the analysis never sees it.
    """

    index: int
    capture: Capture
    truth: Truth
    family: str
    scenario: Scenario


def corpus(seed: int, count: int, physics: str = "main") -> Iterator[Case]:
    """Captures with their truth, one after the other.

    Parameters
    ----------
    seed : int
        Corpora of different seeds share nothing.
    count : int
        How many.
    physics : str
        ``"main"`` or ``"other"``.

    Yields
    ------
    Case
        Case `i` of a seed is the same whatever `count` is.

    Raises
    ------
    ValueError
        Where `physics` is unknown.
    """
    if physics not in PHYSICS:
        raise ValueError(f"physics must be one of {PHYSICS}, got {physics!r}")
    for index in range(count):
        yield case(seed, index, physics)


def case(seed: int, index: int, physics: str = "main") -> Case:
    """One case of a corpus, without making the ones before it."""
    rng = np.random.default_rng((seed, index, PHYSICS.index(physics), 1))
    names = list(FAMILIES)
    family = names[int(rng.choice(len(names), p=[FAMILIES[name][0] for name in names]))]
    drawn: Scenario = FAMILIES[family][1](rng)
    if physics == "other":
        drawn = otherwise(drawn, rng)
    capture, truth = simulate(drawn, (seed, index, PHYSICS.index(physics), 2))
    return Case(index, capture, settled(truth), family, drawn)


def settled(truth: Truth) -> Truth:
    """The truth of what the capture shows: a band that showed too rarely cannot be asked for.

    A band that showed on one crossing only is inconclusive, one that never showed was not seen.
    """
    if truth.fault is not None:
        return _settled_fault(truth, truth.fault)
    placed = (VerdictCode.WORN_TRACK, VerdictCode.SENSOR_OUTPUT_FAULT)
    if truth.code not in placed or truth.shown_bands:
        return truth
    once = any(band.shown for band in truth.bands)
    code = VerdictCode.INCONCLUSIVE if once else VerdictCode.NO_FAULT_FOUND
    also = truth.acceptable | {code, VerdictCode.INCONCLUSIVE, VerdictCode.NO_FAULT_FOUND}
    return replace(truth, code=code, acceptable=also)


def _settled_fault(truth: Truth, fault: FaultTruth) -> Truth:
    """The truth of a fault that comes and goes: one that never came was not seen."""
    if fault.events == 0:
        also = truth.acceptable | {VerdictCode.NO_FAULT_FOUND, VerdictCode.INCONCLUSIVE}
        return replace(truth, code=VerdictCode.NO_FAULT_FOUND, acceptable=also)
    if fault.events == 1 and fault.total_s < 0.05:
        also = truth.acceptable | {VerdictCode.NO_FAULT_FOUND, VerdictCode.INCONCLUSIVE}
        return replace(truth, code=VerdictCode.INCONCLUSIVE, acceptable=also)
    return truth
