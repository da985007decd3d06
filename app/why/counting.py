"""Road records of other captures, counted off in the background."""

from __future__ import annotations

from pathlib import Path

from analysis.diagnosis.findings import Band
from analysis.diagnosis.profiles import profile_for
from analysis.exposure.road_test import CountedRecord, counted_records, no_road
from analysis.progress import Tick, part
from analysis.review.vehicle import Counted
from app.session import Tools
from app.why.choices import Choices


def count_in(
    tools: Tools, paths: tuple[Path, ...], choices: Choices, band: Band | None, tick: Tick
) -> Counted:
    """Open, examine and count one capture after the other.

    Raises
    ------
    WornbandError
        Where one of them cannot be read.
    Cancelled
        Where `tick` says so.
    """
    count = len(paths)
    return tuple(
        (path.name, record)
        for at, path in enumerate(paths)
        for record in _counted(tools, path, choices, band, part(tick, at / count, (at + 1) / count))
        or (no_road(),)
    )


def _counted(
    tools: Tools, path: Path, choices: Choices, band: Band | None, tick: Tick
) -> tuple[CountedRecord, ...]:
    with tools.open_capture(path, part(tick, 0.0, 0.2)) as opened:
        capture = opened.capture
        findings = tools.examine(capture, part(tick, 0.2, 0.9))
        return counted_records(
            capture,
            findings,
            profile_for(capture),
            choices.unit,
            band=band,
            speed_km_h=choices.road.speed_km_h,
            tick=part(tick, 0.9, 1.0),
        )
