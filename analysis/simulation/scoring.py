"""What a detector said of simulated captures, against their truth; no single case leaves this module."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from analysis.captures.model import Role
from analysis.diagnosis.findings import Findings, VerdictCode
from analysis.intervals import Interval
from analysis.signals.calibration import average_precision
from analysis.simulation.truth import BandTruth, Truth

FAULTY = frozenset(VerdictCode) - {
    VerdictCode.NO_FAULT_FOUND,
    VerdictCode.INCONCLUSIVE,
    VerdictCode.MEASUREMENT_PROBLEM,
}
"""Verdicts that blame the vehicle."""

SURE = 0.5
"""A band below this confidence is called possible, and nobody pays for it."""

BESIDE_PERCENT = 2.0
"""A find this near to a band may be a part of it."""


@dataclass(frozen=True, slots=True)
class FoundBand:
    """A band as a detector reports it."""

    track: Role
    travel: Interval
    confidence: float


@dataclass(frozen=True, slots=True)
class Answer:
    """What a detector says of one capture; its bands most certain first."""

    code: VerdictCode
    confidence: float
    bands: tuple[FoundBand, ...] = ()

    @classmethod
    def of(cls, findings: Findings) -> Answer:
        """The part of the findings that the truth speaks of."""
        bands = tuple(FoundBand(band.track, band.travel, band.confidence) for band in findings.bands)
        return cls(findings.verdict.code, findings.verdict.confidence, bands)


@dataclass(frozen=True, slots=True)
class Judged:
    """One answer beside its truth.

    Parameters
    ----------
    truth : Truth
    answer : Answer
    sound : bool
        Whether nothing at all was wrong with sensor, wiring and measurement.
    """

    truth: Truth
    answer: Answer
    sound: bool


@dataclass(frozen=True, slots=True)
class Match:
    """A found band and the true one that it stands for.

    Parameters
    ----------
    found : int
        Its number in the answer.
    true : BandTruth or None
        The band that it found; None where it found none.
    counts : bool
        False for a band that is there but showed on fewer than two crossings: neither right nor wrong.
    """

    found: int
    true: BandTruth | None
    counts: bool


@dataclass(frozen=True, slots=True)
class VerdictFigures:
    """Verdicts counted: all, as the truth has them, defensible; sound sensors and those called faulty."""

    cases: int
    strict: int
    acceptable: int
    sound: int
    sound_called_faulty: int
    sound_called_unmeasured: int


@dataclass(frozen=True, slots=True)
class BandFigures:
    """Bands counted.

    Parameters
    ----------
    asked : int
        Bands that showed on two crossings or more.
    recalled_sure, recalled : int
        Of these, found with confidence `SURE` or more, and found at all.
    false_sure : int
        Bands found with confidence `SURE` or more where there is none.
    beside_sure : int
        Of these, the ones within 2 % of travel of a band that is there: a second find of it, or a wrong part.
    precision : float
        Average precision over all found bands; NaN where none was asked for.
    edge_error_percent : tuple of (float, float)
        Error of the lower and of the upper edge of each recalled band, in % of travel, signed: positive
        means that the found band is too wide on that side.
    """

    asked: int
    recalled_sure: int
    recalled: int
    false_sure: int
    beside_sure: int
    precision: float
    edge_error_percent: tuple[tuple[float, float], ...]


def family(code: VerdictCode) -> VerdictCode:
    """The explanation that a verdict belongs to: a contactless output fault is place-locked too."""
    return VerdictCode.WORN_TRACK if code is VerdictCode.SENSOR_OUTPUT_FAULT else code


def meets(true: Interval, found: Interval) -> bool:
    """Whether a found band is the true one: they share a third of the narrower."""
    return true.overlap(found) >= min(true.length, found.length) / 3.0


def match_bands(bands: Sequence[tuple[Role, Interval]], truth: Truth) -> tuple[Match, ...]:
    """Give each found band, most certain first, the true band that it stands for.

    A true band is found once; a second find of it is wrong. A find within 2 % of travel of a band that
    showed on fewer than two crossings is neither right nor wrong.
    """
    left = list(truth.shown_bands)
    hidden = [band for band in truth.bands if band.shown < 2]
    matches = []
    for number, (track, travel) in enumerate(bands):
        met = [band for band in left if band.track is track and meets(band.travel, travel)]
        hit = max(met, key=lambda band: band.travel.overlap(travel), default=None)
        if hit is not None:
            left.remove(hit)
        unasked = any(
            band.track is track and band.travel.widened(BESIDE_PERCENT).overlap(travel) > 0 for band in hidden
        )
        matches.append(Match(number, hit, hit is not None or not unasked))
    return tuple(matches)


def band_outcomes(bands: Sequence[tuple[Role, Interval]], truth: Truth) -> list[bool | None]:
    """Whether each found band is true; None where it is one that showed too rarely to be asked for."""
    return [match.true is not None if match.counts else None for match in match_bands(bands, truth)]


def matches_of(item: Judged) -> tuple[Match, ...]:
    """The matches of one answer."""
    return match_bands([(band.track, band.travel) for band in item.answer.bands], item.truth)


def verdict_figures(items: Sequence[Judged]) -> VerdictFigures:
    """Count verdicts; all zero for no case."""
    sound = [item.answer.code for item in items if item.sound]
    return VerdictFigures(
        cases=len(items),
        strict=sum(item.answer.code is item.truth.code for item in items),
        acceptable=sum(item.answer.code in item.truth.acceptable for item in items),
        sound=len(sound),
        sound_called_faulty=sum(code in FAULTY for code in sound),
        sound_called_unmeasured=sum(code is VerdictCode.MEASUREMENT_PROBLEM for code in sound),
    )


def band_figures(items: Sequence[Judged], within_percent: Interval | None = None) -> BandFigures:
    """Count bands; `within_percent` keeps true bands of that width only, and false ones all the same."""
    stated, outcomes, errors = [], [], []
    asked = sure = beside = 0
    for item in items:
        asked += sum(_wanted(band, within_percent) for band in item.truth.shown_bands)
        for match in matches_of(item):
            found = item.answer.bands[match.found]
            if not match.counts or not (match.true is None or _wanted(match.true, within_percent)):
                continue
            stated.append(found.confidence)
            outcomes.append(match.true is not None)
            if match.true is not None:
                sure += found.confidence >= SURE
                errors.append(edge_errors(match.true.travel, found.travel))
            elif found.confidence >= SURE:
                beside += _beside(found, item.truth)
    surely = np.array(stated) >= SURE
    return BandFigures(
        asked=asked,
        recalled_sure=sure,
        recalled=len(errors),
        false_sure=int((surely & ~np.array(outcomes, dtype=np.bool_)).sum()),
        beside_sure=beside,
        precision=average_precision(stated, outcomes, positives=asked),
        edge_error_percent=tuple(errors),
    )


def edge_errors(true: Interval, found: Interval) -> tuple[float, float]:
    """By how much the found band is too wide at its lower and at its upper edge; negative: too narrow."""
    return true.start - found.start, found.stop - true.stop


def stated_verdicts(items: Sequence[Judged], *, strict: bool = True) -> tuple[list[float], list[bool]]:
    """Confidence of each verdict, and whether it was right."""
    right = [
        item.answer.code is item.truth.code if strict else item.answer.code in item.truth.acceptable
        for item in items
    ]
    return [item.answer.confidence for item in items], right


def stated_bands(items: Sequence[Judged]) -> tuple[list[float], list[bool]]:
    """Confidence of each found band that counts, and whether it is there."""
    stated, outcomes = [], []
    for item in items:
        for match in matches_of(item):
            if match.counts:
                stated.append(item.answer.bands[match.found].confidence)
                outcomes.append(match.true is not None)
    return stated, outcomes


def _beside(found: FoundBand, truth: Truth) -> bool:
    return any(
        band.track is found.track and band.travel.widened(BESIDE_PERCENT).overlap(found.travel) > 0
        for band in truth.bands
    )


def _wanted(band: BandTruth, within_percent: Interval | None) -> bool:
    return within_percent is None or within_percent.contains(band.travel.length)
