"""The part of a profile's schema that gives travel as height; `profile_schema` writes down all of it."""

from __future__ import annotations

from analysis.diagnosis.profile_table import ProfileTable
from analysis.errors import ProfileError, VehicleError
from analysis.vehicle.geometry import Arm, Geometry, TwoPoints, Up
from analysis.vehicle.heights import Rest, RestKind, VehicleHeights
from analysis.wording import say

_POINT_KEYS = ("points",)
_ARM_KEYS = ("arm_mm", "arm_angle_deg", "level_percent", "wheel_ratio")


def parse_heights(table: ProfileTable) -> VehicleHeights | None:
    """Read the table ``height`` of a profile.

    Parameters
    ----------
    table : ProfileTable
        The whole profile.

    Returns
    -------
    VehicleHeights or None
        None where the profile has no such table.

    Raises
    ------
    ProfileError
        File, key, rule and what came.
    """
    if "height" not in table.content:
        return None
    height = table.table("height")
    height.refuse_unknown("up", "normal_percent", "source", "rests_mm", *_POINT_KEYS, *_ARM_KEYS)
    rests = height.table("rests_mm") if "rests_mm" in height.content else None
    kinds = [kind for kind in RestKind if kind is not RestKind.NORMAL]
    if rests is not None:
        rests.refuse_unknown(*(kind.value for kind in kinds))
    try:
        return VehicleHeights(
            _geometry(height),
            height.number("normal_percent"),
            tuple(Rest(kind, rests.number(kind)) for kind in kinds if rests and kind in rests.content),
            height.text("source"),
        )
    except VehicleError as error:
        problem = say("{name}: {problem}", name=table.name, problem=error.problem)
        raise ProfileError(problem, error.action) from error


def _geometry(height: ProfileTable) -> Geometry:
    up = height.choice("up", Up)
    arms = [key for key in _ARM_KEYS if key in height.content]
    if "points" in height.content:
        if arms:
            raise height.error(arms[0], say("left out where there are points"), height.content[arms[0]])
        first, second = height.points("points")
        return TwoPoints(first, second, up)
    return Arm(
        height.number("arm_mm"),
        height.number("arm_angle_deg"),
        height.number("level_percent") if "level_percent" in height.content else 50.0,
        up,
        height.number("wheel_ratio") if "wheel_ratio" in height.content else 1.0,
    )
