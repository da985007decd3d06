"""Captures of several files as the records of one, so that one verdict rests on all of them."""

from __future__ import annotations

import uuid
from collections.abc import Iterator, Sequence
from contextlib import ExitStack, contextmanager
from dataclasses import dataclass, replace
from pathlib import Path

from analysis.captures.model import Capture, Role
from analysis.captures.reading import open_capture
from analysis.captures.record_names import called, record_names
from analysis.captures.writing import write_capture
from analysis.diagnosis.enough import NOTHING_YET, Evidence, evidence_of
from analysis.diagnosis.examine import examine
from analysis.diagnosis.findings import Findings
from analysis.diagnosis.profiles import profile_for
from analysis.progress import Tick, ignore


@dataclass(frozen=True, slots=True)
class Standing:
    """What has been gathered says, taken together.

    Parameters
    ----------
    evidence : Evidence
        How far it has come, and what is missing.
    findings : Findings or None
        None where no record has a signal yet.
    """

    evidence: Evidence = NOTHING_YET
    findings: Findings | None = None


def merged(captures: Sequence[Capture], title: str) -> Capture:
    """One capture with the records of all, numbered anew in their order.

    Where two captures state an attribute differently, the first one's holds; the fingerprint of each source
    stays with its records.

    Raises
    ------
    ValueError
        Where there are none.
    """
    if not captures:
        raise ValueError("captures must not be empty")
    records = [record for capture in captures for record in capture.records]
    attributes: dict[str, str | float] = {}
    for capture in reversed(captures):
        attributes.update(capture.attributes)
    if len(captures) > 1:
        for name in ("source_sha256", "source_size", "source_name"):
            attributes.pop(name, None)
    named = tuple(replace(record, name=f"{place:03d}") for place, record in enumerate(records, 1))
    return Capture(str(uuid.uuid4()), named, title, attributes)


@contextmanager
def together(paths: Sequence[Path], title: str) -> Iterator[Capture]:
    """Open capture files as one capture; the files are closed at the end.

    Raises
    ------
    CaptureError
        Where one of them cannot be read.
    """
    with ExitStack() as stack:
        yield merged([stack.enter_context(open_capture(path)).capture for path in paths], title)


def judge_together(
    paths: Sequence[Path], title: str, profile: str | Path | None = None, tick: Tick = ignore
) -> Standing:
    """Examine capture files as one capture, and say how far the evidence has come.

    Parameters
    ----------
    paths : sequence of Path
        Capture files, in order; without any, or without a signal in them, nothing is known yet.
    title : str
        Of the whole.
    profile : str, Path or None
        As `analysis.diagnosis.examine.examine` takes it.
    tick : Tick
        Progress.

    Raises
    ------
    CaptureError
        Where one of them cannot be read.
    ProfileError
        Where the profile is unknown or malformed.
    """
    if not paths:
        return Standing()
    with together(paths, title) as capture:
        if not _has_signal(capture):
            return Standing()
        chosen = profile_for(capture, profile)
        findings = examine(capture, profile=chosen, tick=tick)
        return Standing(_named(evidence_of(capture, findings, chosen), capture), findings)


def _named(evidence: Evidence, capture: Capture) -> Evidence:
    """What is missing, with the records called as they are once the capture is opened."""
    names = record_names(capture)
    missing = [replace(item, sentence=called(item.sentence, names)) for item in evidence.missing]
    return replace(evidence, missing=tuple(missing))


def write_together(paths: Sequence[Path], target: Path, title: str, tick: Tick = ignore) -> Path:
    """Write capture files as one, and give back where it lies.

    Raises
    ------
    CaptureError
        Where one cannot be read, or the whole cannot be written.
    """
    with together(paths, title) as capture:
        write_capture(capture, target, tick=tick)
    return target


def _has_signal(capture: Capture) -> bool:
    roles = (Role.SIGNAL, Role.SECOND_SIGNAL)
    return any(record.channel(role) is not None for record in capture.records for role in roles)
