"""The sample captures: visits to invented vehicles, made from fixed seeds.

``python -m analysis.simulation.samples`` writes them into ``sample_captures`` beside the packages, with
their truth in ``truths.toml``. Running it again gives the same files.
"""

from __future__ import annotations

import argparse
import hashlib
from collections.abc import Sequence
from dataclasses import replace
from datetime import datetime, timedelta
from pathlib import Path

from analysis.captures.model import Capture
from analysis.captures.writing import write_capture
from analysis.simulation.bench import simulate
from analysis.simulation.registry import TRUTHS_NAME, SampleTruth, truths_text
from analysis.simulation.sample_visits import SAMPLES
from analysis.simulation.sample_workshop import Sample
from analysis.simulation.truth import Truth

BETWEEN_RECORDS_S = 50  # to put the probes where they go next
FOLDER = Path(__file__).resolve().parents[2] / "sample_captures"


def made(sample: Sample) -> tuple[Capture, Truth]:
    """One sample in memory, with its truth; its dates are those of its story, not of today."""
    capture, truth = simulate(sample.scenario, sample.seed)
    begin = datetime.fromisoformat(sample.created)
    records = []
    for record in capture.records:
        records.append(replace(record, attributes={**record.attributes, "started": begin.isoformat()}))
        begin += timedelta(seconds=round(record.duration_s) + BETWEEN_RECORDS_S)
    attributes = {**capture.attributes, "created": sample.created}
    return replace(capture, records=tuple(records), attributes=attributes), truth


def write_samples(folder: Path, samples: Sequence[Sample] = SAMPLES) -> tuple[Path, ...]:
    """Write the samples and their registry.

    Parameters
    ----------
    folder : Path
        Must exist; files of the same names are replaced.
    samples : sequence of Sample
        All of them unless told otherwise.

    Returns
    -------
    tuple of Path
        The captures.
    """
    paths, truths = [], []
    for sample in samples:
        path = folder / sample.file
        capture, truth = made(sample)
        write_capture(capture, path, replace=True)
        truths.append(SampleTruth.of(sample.file, hashlib.sha256(path.read_bytes()).hexdigest(), truth))
        paths.append(path)
    (folder / TRUTHS_NAME).write_text(truths_text(truths), encoding="utf-8")
    return tuple(paths)


def main(arguments: Sequence[str] | None = None) -> None:
    """Write the samples, and say how large they are."""
    parser = argparse.ArgumentParser(description="Regenerate the sample captures and their truth.")
    parser.add_argument("--into", type=Path, default=FOLDER, help="folder to write into")
    folder: Path = parser.parse_args(arguments).into
    paths = write_samples(folder)
    for path in paths:
        print(f"{path.name}: {path.stat().st_size / 1e6:.2f} MB")
    print(f"together {sum(path.stat().st_size for path in paths) / 1e6:.2f} MB")


if __name__ == "__main__":
    main()
