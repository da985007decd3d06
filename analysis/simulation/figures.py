"""Print the figures: ``python -m analysis.simulation.figures``.

Every capture of a held-out seed goes through the one door, `analysis.diagnosis.examine.examine`; what it
says is counted against the truth, beside a simple baseline. Seeds that the calibration is fitted on are
refused. ``--speed`` measures time and memory instead, and ``--all`` fits the calibration, then prints both.
"""

from __future__ import annotations

import argparse
import multiprocessing
import os
import platform
import subprocess
import sys
from collections.abc import Sequence
from concurrent.futures import ProcessPoolExecutor
from dataclasses import dataclass

import numpy
import scipy

import analysis
from analysis.diagnosis.examine import examine
from analysis.simulation.baseline import Sketch, fit_threshold, judge, sketch
from analysis.simulation.calibrate import FITTED_SEEDS
from analysis.simulation.corpus import PHYSICS, case
from analysis.simulation.scoring import Answer, Judged
from analysis.simulation.speed import LARGEST, RATES, SIZES, measured_apart, speed_report
from analysis.simulation.tables import Outcome, accuracy_report
from analysis.simulation.traits import Traits, traits
from analysis.simulation.truth import Truth

HELD_OUT_SEED = 1301
COUNT = 400
"""Captures of each physics: 800 in all."""

LEAST_CAPTURES = 600
"""Fewer make no figures to state."""

Request = tuple[int, int, str]


@dataclass(frozen=True, slots=True)
class Examined:
    """One held-out capture, small enough to send from one process to another."""

    traits: Traits
    truth: Truth
    ours: Answer
    sketch: Sketch


def examined(request: Request) -> Examined:
    """Simulate one case and examine it; `request` is (seed, index, physics)."""
    made = case(*request)
    answer = Answer.of(examine(made.capture))
    return Examined(traits(made, request[2]), made.truth, answer, sketch(made.capture))


def sketched(request: Request) -> tuple[Sketch, Truth]:
    """Simulate one case for the baseline to be fitted on."""
    made = case(*request)
    return sketch(made.capture), made.truth


def requests(seeds: Sequence[int], count: int) -> list[Request]:
    """`count` cases of each seed and physics."""
    return [(seed, index, physics) for seed in seeds for physics in PHYSICS for index in range(count)]


def outcomes(seed: int, count: int, *, jobs: int = 2) -> tuple[list[Outcome], float]:
    """Examine `count` captures of each physics.

    Parameters
    ----------
    seed : int
        Held out.
    count : int
        Captures of each physics, at least 1.
    jobs : int
        Processes.

    Returns
    -------
    outcomes : list of Outcome
    threshold_percent : float
        Of the baseline, in % of the feed, fitted on the fitted seeds.

    Raises
    ------
    ValueError
        Where the calibration was fitted on that seed, or there is nothing to count.
    """
    if seed in FITTED_SEEDS:
        raise ValueError(f"seed must be held out, got {seed}; the calibration is fitted on {FITTED_SEEDS}")
    if count < 1:
        raise ValueError(f"count must be at least 1, got {count}")
    fresh = multiprocessing.get_context("spawn")  # one thread each, and the calibration that stands now
    os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")
    with ProcessPoolExecutor(jobs, mp_context=fresh) as pool:
        held_out = list(pool.map(examined, requests([seed], count), chunksize=8))
        fitted = list(pool.map(sketched, requests(FITTED_SEEDS, max(count // 2, 10)), chunksize=8))
    threshold = fit_threshold([measured for measured, _ in fitted], [truth for _, truth in fitted])
    return [_outcome(item, threshold) for item in held_out], threshold


def _outcome(item: Examined, threshold_percent: float) -> Outcome:
    baseline = judge(item.sketch, threshold_percent)
    sound = item.traits.sound
    return Outcome(item.traits, Judged(item.truth, item.ours, sound), Judged(item.truth, baseline, sound))


def accuracy(seed: int, count: int, jobs: int) -> str:
    """The accuracy tables with how they were made."""
    counted, threshold = outcomes(seed, count, jobs=jobs)
    made = (
        f"{len(counted)} simulated captures of seed {seed}, physics {' and '.join(PHYSICS)}, analysis"
        f" {analysis.__version__}; the calibration is fitted on seeds"
        f" {', '.join(map(str, FITTED_SEEDS))}, and so is the baseline's threshold of {threshold:.2f} %."
        " Shares with their 95 % interval."
    )
    if len(counted) < LEAST_CAPTURES:
        made += f" Fewer than {LEAST_CAPTURES} captures: not figures to state."
    return f"{made}\n\n{accuracy_report(counted)}"


def speed() -> str:
    """The speed tables with the machine they were made on."""
    taken = [measured_apart(samples, rate_hz) for samples, rate_hz in (*SIZES, *RATES, LARGEST)]
    where = (
        f"{os.cpu_count()} cores, {platform.machine()}, Python {platform.python_version()},"
        f" numpy {numpy.__version__}, scipy {scipy.__version__}."
    )
    return f"{speed_report(taken)}\n\n{where}"


def _calibrate(jobs: int) -> None:
    command = [sys.executable, "-m", "analysis.simulation.calibrate", "--jobs", str(jobs)]
    subprocess.run(command, check=True, stdout=sys.stderr)


def main(arguments: Sequence[str] | None = None) -> None:
    """Print accuracy tables, or speed, or calibrate and print both."""
    parser = argparse.ArgumentParser(description=main.__doc__)
    parser.add_argument("--seed", type=int, default=HELD_OUT_SEED, help="one that nothing was fitted on")
    parser.add_argument("--count", type=int, default=COUNT, help="captures of each physics")
    parser.add_argument("--jobs", type=int, default=2, help="processes")
    parser.add_argument("--speed", action="store_true", help="time and memory only")
    parser.add_argument("--all", action="store_true", help="calibrate, then accuracy, then speed")
    chosen = parser.parse_args(arguments)
    if chosen.seed in FITTED_SEEDS:
        parser.error(f"the calibration is fitted on seed {chosen.seed}; choose another")
    if chosen.count < 1 or chosen.jobs < 1:
        parser.error("--count and --jobs must be at least 1")
    if chosen.all:
        _calibrate(chosen.jobs)
    if chosen.all or not chosen.speed:
        print(accuracy(chosen.seed, chosen.count, chosen.jobs))
    if chosen.all:
        print()
    if chosen.all or chosen.speed:
        print(speed())


if __name__ == "__main__":
    main()
