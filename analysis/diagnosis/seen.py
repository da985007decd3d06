"""Everything that the statements of the evidence, the verdict and the advice are made from."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from analysis.captures.model import Role
from analysis.diagnosis.findings import Band, Check, Result
from analysis.diagnosis.measurement_check import Problem
from analysis.diagnosis.places import Place
from analysis.diagnosis.strays import stray_weight
from analysis.diagnosis.studies import Studies, Study

PLAIN = 0.5
"""A measurement problem weaker than this is not held against a capture."""

SURE_BAND = 0.5
"""Bands below this are "watch", and prove nothing."""

QUIET_WEIGHT = 1.0
"""Disturbances that add up to less than one plain one leave a wire quiet."""


@dataclass(frozen=True, slots=True)
class Seen:
    """Everything that the statements are made from."""

    studies: Studies
    problems: tuple[Problem, ...]
    checks: tuple[Check, ...]
    bands: tuple[Band, ...]
    places: tuple[tuple[Role, Place], ...]

    @property
    def sure_bands(self) -> tuple[Band, ...]:
        """Bands that are more than a possibility."""
        return tuple(band for band in self.bands if band.confidence >= SURE_BAND)

    def check(self, code: str) -> Check | None:
        """The first check of a code."""
        return next((check for check in self.checks if check.code == code), None)


def too_coarse(check: Check | None) -> bool:
    """Whether a reading cannot be told for the recorder's sake: most of what it may be is uncertainty."""
    unsure = check is not None and check.result is Result.CANNOT_TELL
    return check is not None and unsure and abs(check.value) < 0.5 * check.expanded_uncertainty


def disturbed_weight(seen: Seen, item: Study) -> float:
    """Weight of one record's disturbances of the signal that no place explains."""
    return stray_weight(item, seen.places)


def names_of(items: Sequence[Study]) -> tuple[str, ...]:
    """Names of the records, each once."""
    return tuple(dict.fromkeys(item.record.name for item in items))
