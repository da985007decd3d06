"""A sample as a recorder saves it: one table after another, which do not tell what they were taken for."""

from __future__ import annotations

from pathlib import Path

from analysis.captures.reading import open_capture
from analysis.exporting.samples import export_samples

SAMPLES = Path(__file__).parents[2] / "sample_captures"


def tables(folder: Path, name: str) -> dict[str, list[Path]]:
    """The records of a sample capture as tables, which do not tell their step, by their step."""
    folder.mkdir()
    made: dict[str, list[Path]] = {}
    with open_capture(SAMPLES / name) as opened:
        for record in opened.capture.records:
            target = folder / f"{record.name}.csv"
            export_samples(opened.capture, target, record=record.name)
            made.setdefault(str(record.step), []).append(target)
    return made
