"""Proof that it will not come back: how far to drive without a fault, and how much of that is done.

Faults that come at random over the distance, so many a kilometre, stay away for d km with the chance
``exp(-rate d)``. With one fault in 6 km before the repair, 18 km without a fault would happen by chance in
``exp(-18 / 6)`` = 5 of 100 cases if nothing had been repaired; so 18 km show the repair with 95 %. The drive
must be like the one before: same height, load and surface.

That takes the rate before as known. Few faults know it poorly; where none of it is taken for granted, the n
faults in D km before are set against none in d km after: all n would fall before by chance with
``(D / (D + d))^n`` (exact comparison of two Poisson rates: Przyborowski & Wilenski, Biometrika 31 (1940),
from memory).
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from analysis.errors import VehicleError
from analysis.wording import joined, say

CONFIDENCE = 0.95
_LONGEST_KM = 1e6


@dataclass(frozen=True, slots=True)
class Proof:
    """A road test without a fault.

    Parameters
    ----------
    faults, before_km : float
        What happened before the repair.
    confidence : float
        That is asked for.
    needed_km : float
        To drive without a fault, the rate before taken as known.
    careful_km : float
        The same, the rate before known from these faults alone.
    driven_km : float
        Driven without a fault so far.
    shown : float
        How surely that shows the repair, the rate taken as known.
    """

    faults: int
    before_km: float
    confidence: float
    needed_km: float
    careful_km: float
    driven_km: float
    shown: float

    @property
    def left_km(self) -> float:
        """What is still to drive."""
        return max(self.needed_km - self.driven_km, 0.0)

    @property
    def words(self) -> str:
        """The proof in plain words."""
        start = say(
            "As entered, the fault came {times} in {before_km:.3g} km before the repair. {needed_km:.3g} km"
            " without a fault, at the same height, load and surface, show it gone (right {odds:.0f} times in"
            " 100); {careful_km:.3g} km if the rate before is known from these faults alone.",
            times=say("once") if self.faults == 1 else say("{faults:d} times", faults=self.faults),
            before_km=self.before_km,
            needed_km=self.needed_km,
            odds=100.0 * self.confidence,
            careful_km=self.careful_km,
        )
        done = say(
            "Driven so far without a fault: {driven_km:.3g} km, still to drive {left_km:.3g} km.",
            driven_km=self.driven_km,
            left_km=self.left_km,
        )
        return joined([start, done])


def nothing_before(driven_km: float) -> str:
    """What stands for a proof as long as nobody entered over which distance the fault came before."""
    missing = say(
        "It was not entered over how many kilometres the fault came before the repair: how far to drive"
        " without one follows from that."
    )
    done = say("Driven so far without a fault: {driven_km:.3g} km.", driven_km=driven_km)
    return joined([missing, done if driven_km > 0.0 else ""])


def proof(
    faults: int, before_km: float, *, driven_km: Sequence[float] = (), confidence: float = CONFIDENCE
) -> Proof:
    """How far to drive.

    Parameters
    ----------
    faults : int
        That came before the repair, 1 or more.
    before_km : float
        Over which distance.
    driven_km : sequence of float
        Drives without a fault since, as `analysis.exposure.road_test` counts them off road records.
    confidence : float
        That is asked for, between 0 and 1.

    Returns
    -------
    Proof

    Raises
    ------
    VehicleError
        Where there was no fault before, or a distance or the confidence makes no sense.
    """
    if faults < 1:
        raise VehicleError(
            say("no fault was counted before the repair, so there is no rate to compare with"),
            say("drive before the repair until the fault has come once"),
        )
    if not 0.0 < before_km <= _LONGEST_KM:
        raise VehicleError(
            say("the distance before the repair must be above 0 km, got {came:g} km", came=before_km),
            say("enter it in kilometres"),
        )
    if not 0.0 < confidence < 1.0:
        raise VehicleError(
            say("the confidence must lie between 0 and 1, got {came:g}", came=confidence), say("choose 0.95")
        )
    if any(not item >= 0.0 for item in driven_km):
        raise VehicleError(say("a drive has a negative length"), say("enter it in kilometres"))
    missed = 1.0 - confidence
    driven = math.fsum(driven_km)
    return Proof(
        faults=faults,
        before_km=before_km,
        confidence=confidence,
        needed_km=-math.log(missed) * before_km / faults,
        careful_km=before_km * (missed ** (-1.0 / faults) - 1.0),
        driven_km=driven,
        shown=-math.expm1(-faults / before_km * driven),
    )
