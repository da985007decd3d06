"""Savings that are killed, counted."""

from __future__ import annotations

import os
import subprocess
import sys
from dataclasses import dataclass

from tests.robustness.trials import ROOT


@dataclass(frozen=True, slots=True)
class Losses:
    """What became of the files of one kind whose saving was killed.

    Parameters
    ----------
    kind : str
    count : int
        Kills.
    midway : int
        Kills that fell into the writing of the new file.
    damaged, lost : int
        Files that were not whole; files older than one whose saving had returned.
    """

    kind: str
    count: int
    midway: int
    damaged: int
    lost: int


def run_kills(kind: str, count: int, seed: int = 1) -> Losses:
    """Kill the saving of a kind, a key of `tests.robustness.savings.KINDS`, at random moments."""
    done = subprocess.run(
        [sys.executable, "-m", "tests.robustness.killed", kind, str(count), str(seed)],
        cwd=ROOT,
        capture_output=True,
        text=True,
        check=False,
        env=os.environ | {"OPENBLAS_NUM_THREADS": "1"},
    )
    if done.returncode:
        raise RuntimeError(done.stderr)
    damaged, lost, midway = (int(word) for word in done.stdout.split())
    return Losses(kind, count, midway, damaged, lost)
