"""Which record shows a statement of the evidence best, and which band it speaks of."""

from __future__ import annotations

from analysis.captures.model import Capture, Step
from analysis.diagnosis.findings import Band, Findings, Statement

_STEPS = {
    "ground_good": Step.GROUND,
    "reference_good": Step.REFERENCE,
    "rest_height_tested": Step.SWEEP,
    "contact_opens": Step.UNPLUGGED,
}
_OF_A_BAND = frozenset(
    {"place_locked", "both_directions", "not_the_loom", "constant_over_crossings", "improved_by_moving"}
)


def showing(statement: Statement, capture: Capture, findings: Findings) -> tuple[str, ...]:
    """Names of the records that show a statement, the one that shows it best first.

    The record that was taken for it; or else the one in which the band that it speaks of is clearest.
    """
    steps = {item.name: item.step for item in capture.records}
    band = band_of(statement, findings)
    clearest = findings.bands[band].record if band is not None else None
    own = [name for name in statement.records if name in steps]

    def rank(name: str) -> tuple[bool, bool]:
        return steps[name] is not _STEPS.get(statement.code), name != clearest

    return tuple(dict.fromkeys(sorted(own, key=rank)))


def band_of(statement: Statement, findings: Findings) -> int | None:
    """Index of the band that a statement speaks of: the likeliest one; None where it speaks of none."""
    bands: tuple[Band, ...] = findings.bands if statement.code in _OF_A_BAND else ()
    return max(range(len(bands)), key=lambda i: bands[i].confidence, default=None)
