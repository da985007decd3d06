"""What the technician enters of the vehicle: heights, road, the control unit's rules, the road test.

Everything is optional, and what is not entered is the profile's. `analysis.review.vehicle_stored` reads and
writes it.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Any

from analysis.control_unit.rules import ControlUnit
from analysis.exposure.proof import Proof, nothing_before, proof
from analysis.exposure.road_test import CountedRecord
from analysis.vehicle.heights import VehicleHeights
from analysis.vehicle.road import Road

_ANY_KM = 1.0  # stands for a distance that was not entered, where all else of a road test is checked

Counted = tuple[tuple[str, CountedRecord], ...]
"""Name of the file that each record is from, and the record."""


@dataclass(frozen=True, slots=True)
class RoadTest:
    """The road test after a repair, as it was entered.

    Parameters
    ----------
    faults : int
        That came before the repair.
    before_km : float or None
        Over which distance; None until somebody enters it.
    driven_km : float
        Driven without a fault since.
    counted : tuple of (str, CountedRecord)
        The road records that this was counted off from, each with the name of its file; empty where it was
        entered by hand.

    Raises
    ------
    VehicleError
        Where no road test can be like that.
    """

    faults: int = 1
    before_km: float | None = None
    driven_km: float = 0.0
    counted: Counted = ()

    def __post_init__(self) -> None:
        _ = self.proof

    @property
    def proof(self) -> Proof | None:
        """How far to drive, and how much of it is done; None until it is entered how often it came before."""
        before_km = _ANY_KM if self.before_km is None else self.before_km
        made = proof(self.faults, before_km, driven_km=(self.driven_km,))
        return made if self.before_km is not None else None

    @property
    def words(self) -> str:
        """The road test in plain words."""
        made = self.proof
        return made.words if made is not None else nothing_before(self.driven_km)


@dataclass(frozen=True, slots=True)
class Vehicle:
    """What was entered; None for what is the profile's, or as it is at the start.

    Parameters
    ----------
    heights : VehicleHeights or None
        Travel as millimetres, and where the vehicle rests.
    road : Road or None
        Class and speed.
    minutes : float or None
        Length of the drive.
    unit : ControlUnit or None
        Its rules.
    test : RoadTest or None
        The road test.
    kept : mapping
        Unknown keys of the file, at every depth.
    """

    heights: VehicleHeights | None = None
    road: Road | None = None
    minutes: float | None = None
    unit: ControlUnit | None = None
    test: RoadTest | None = None
    kept: Mapping[str, Any] = field(default_factory=dict)
