"""Each band of either side looked up on both, and what became of it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from analysis.captures.model import Role
from analysis.comparison.mirrored import mirrored_travel
from analysis.comparison.model import CHANCE, BandComparison, Change, Relation, Tested
from analysis.comparison.pairing import Pairing
from analysis.comparison.side import Side
from analysis.comparison.tested import easier, how_tested
from analysis.diagnosis.assess import assess
from analysis.diagnosis.findings import Band, Findings, VerdictCode
from analysis.intervals import Interval
from analysis.signals.proportions import fisher_exact_p, newcombe_difference
from analysis.wording import Wording, say

LIKELY = 0.5
"""A band below this is possible and to be watched, never the ground of a statement."""


@dataclass(frozen=True, slots=True)
class _Spot:
    """Bands of both sides that lie on each other."""

    track: Role
    travel: Interval
    bands: tuple[tuple[int, Band], ...]

    def band_of(self, side: int) -> Band | None:
        own = [band for number, band in self.bands if number == side]
        return max(own, key=lambda band: band.confidence, default=None)


def compare_bands(first: Side, second: Side, pairing: Pairing) -> tuple[BandComparison, ...]:
    """Look up every band of either side on both.

    Bands of the two sides that overlap are one stretch, from the lower of their edges to the higher.

    Parameters
    ----------
    first, second : Side
    pairing : Pairing
        For the words of the reasons, and for what a cure asks for.

    Returns
    -------
    tuple of BandComparison
        The likeliest first; empty where neither side shows a band.

    Notes
    -----
    The edges of a band are chosen where it breaks up most, on the very crossings that are then tested. For a
    band that is likely by itself this hardly matters; for one that is merely possible it makes chance look
    like a difference, so of those nothing is claimed.
    """
    sides, found = (first, second), (first.seen(), second.seen())
    compared = [_compared(sides, found, spot, pairing) for spot in _spots(found)]
    return tuple(sorted(compared, key=lambda item: -item.confidence))


def _spots(found: Sequence[Findings]) -> list[_Spot]:
    every = sorted(
        ((number, band) for number, findings in enumerate(found) for band in findings.bands),
        key=lambda item: (item[1].track, item[1].travel),
    )
    spots: list[_Spot] = []
    for number, band in every:
        last = spots[-1] if spots else None
        if last is None or last.track is not band.track or last.travel.overlap(band.travel) <= 0.0:
            spots.append(_Spot(band.track, band.travel, ((number, band),)))
            continue
        joined = Interval(last.travel.start, max(last.travel.stop, band.travel.stop))
        spots[-1] = _Spot(band.track, joined, (*last.bands, (number, band)))
    return spots


def _compared(
    sides: Sequence[Side], found: Sequence[Findings], spot: _Spot, pairing: Pairing
) -> BandComparison:
    one, two = (how_tested(side, _looked_up(side, spot)) for side in sides)
    p_value = fisher_exact_p(one.noisy_passes, one.passes, two.noisy_passes, two.passes)
    bands = (spot.band_of(0), spot.band_of(1))
    change, reasons = _change((one, two), bands, p_value, pairing)
    problems = tuple(
        say("{where} nothing can be said: the capture shows a measurement problem", where=name)
        for item, name in zip(found, pairing.names, strict=True)
        if item.verdict.code is VerdictCode.MEASUREMENT_PROBLEM
    )
    if problems:
        change, reasons = Change.NOT_SHOWN, problems
    return BandComparison(
        track=spot.track,
        travel=spot.travel,
        first=one,
        second=two,
        first_band=bands[0],
        second_band=bands[1],
        p_value=p_value,
        share_difference=_share_difference(one, two),
        change=change,
        reasons=reasons,
    )


def _looked_up(side: Side, spot: _Spot) -> Band | None:
    """The stretch as this side's own evidence has it, counted from its own end of the travel."""
    travel = mirrored_travel(spot.travel) if side.mirrored else spot.travel
    return assess(side.own(), side.track or spot.track, travel)


def _share_difference(first: Tested, second: Tested) -> Interval:
    if not first.passes or not second.passes:
        return Interval(-1.0, 1.0)
    return newcombe_difference(second.noisy_passes, second.passes, first.noisy_passes, first.passes)


def _change(
    sides: tuple[Tested, Tested],
    bands: tuple[Band | None, Band | None],
    p_value: float,
    pairing: Pairing,
) -> tuple[Change, tuple[Wording, ...]]:
    """What the counts show, and why no more; the band is taken to be where it was found likely."""
    likely = tuple(band is not None and band.confidence >= LIKELY for band in bands)
    if not any(likely):
        return Change.NOT_SHOWN, (say("it is a possible band only"),)
    one, two = sides
    shown = p_value < CHANCE
    names = pairing.names
    if not shown and all(side.noisy_passes for side in sides) and _mostly(one) and _mostly(two):
        return Change.STILL_THERE, ()
    clean = next((place for place, side in enumerate(sides) if not side.noisy_passes), None)
    if clean is not None:
        reasons = easier(
            sides[1 - clean],
            sides[clean],
            present_name=names[1 - clean],
            absent_name=names[clean],
            as_often=clean == 1 and pairing.relation is Relation.BEFORE_AFTER,
        )
        if not shown and sides[clean].passes:
            reasons = (*reasons, _by_chance(p_value))
        if reasons:
            return Change.NOT_SHOWN, reasons
        return (Change.GONE if clean == 1 else Change.APPEARED), ()
    if not shown:
        return Change.NOT_SHOWN, (_by_chance(p_value),)
    falls = two.noisy_passes * one.passes < one.noisy_passes * two.passes
    return (Change.LESS if falls else Change.MORE), ()


def _mostly(side: Tested) -> bool:
    return 2 * side.noisy_passes >= side.passes


def _by_chance(p_value: float) -> Wording:
    return say("the counts differ by no more than chance would have it (p = {p_value:.2f})", p_value=p_value)
