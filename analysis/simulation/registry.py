"""The registry of the sample captures' truth: what each file is known to hold.

The analysis never reads it; tests and the benchmark do.
"""

from __future__ import annotations

import json
import tomllib
from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path

from analysis.captures.model import Role
from analysis.diagnosis.findings import VerdictCode
from analysis.intervals import Interval
from analysis.simulation.truth import Truth

TRUTHS_NAME = "truths.toml"


@dataclass(frozen=True, slots=True)
class SampleBand:
    """A worn band of a sample: its edges in % of travel, its track, crossings and those that showed it."""

    travel: Interval
    track: Role
    crossings: int
    shown: int


@dataclass(frozen=True, slots=True)
class SampleTruth:
    """Truth of one file: its name and SHA-256, the verdict, the bands, and what happened."""

    file: str
    sha256: str
    code: VerdictCode
    acceptable: frozenset[VerdictCode]
    bands: tuple[SampleBand, ...]
    story: str

    @staticmethod
    def of(file: str, sha256: str, truth: Truth) -> SampleTruth:
        """The truth of a simulated capture that was stored as `file`, edges rounded to 0.01 %."""
        bands = tuple(
            SampleBand(
                Interval(round(band.travel.start, 2), round(band.travel.stop, 2)),
                band.track,
                band.crossings,
                band.shown,
            )
            for band in truth.bands
        )
        return SampleTruth(file, sha256, truth.code, truth.acceptable, bands, truth.story)


def truths_text(truths: Sequence[SampleTruth]) -> str:
    """The registry as TOML."""
    head = "# What each sample capture holds. Written by `python -m analysis.simulation.samples`.\n"
    return head + "".join(_table(truth) for truth in truths)


def _table(truth: SampleTruth) -> str:
    acceptable = ", ".join(json.dumps(code.value) for code in sorted(truth.acceptable))
    lines = [
        "\n[[capture]]",
        f"file = {json.dumps(truth.file)}",
        f"sha256 = {json.dumps(truth.sha256)}",
        f"code = {json.dumps(truth.code.value)}",
        f"acceptable = [{acceptable}]",
        f"story = {json.dumps(truth.story, ensure_ascii=False)}",
    ]
    for band in truth.bands:
        lines += [
            "\n[[capture.band]]",
            f"start_percent = {band.travel.start}",
            f"end_percent = {band.travel.stop}",
            f"track = {json.dumps(band.track.value)}",
            f"crossings = {band.crossings}",
            f"shown = {band.shown}",
        ]
    return "\n".join(lines) + "\n"


def read_truths(path: Path) -> tuple[SampleTruth, ...]:
    """Read the registry.

    Parameters
    ----------
    path : Path
        The TOML file.

    Raises
    ------
    KeyError, ValueError
        Where an entry is incomplete or names an unknown verdict.
    """
    entries = tomllib.loads(path.read_text(encoding="utf-8")).get("capture", [])
    return tuple(
        SampleTruth(
            entry["file"],
            entry["sha256"],
            VerdictCode(entry["code"]),
            frozenset(VerdictCode(code) for code in entry["acceptable"]),
            tuple(
                SampleBand(
                    Interval(band["start_percent"], band["end_percent"]),
                    Role(band["track"]),
                    band["crossings"],
                    band["shown"],
                )
                for band in entry.get("band", [])
            ),
            entry["story"],
        )
        for entry in entries
    )
