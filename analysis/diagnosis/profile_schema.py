"""The schema of a sensor profile, checked once, at the door.

::

    id = "ride-height"                    lower case, digits, hyphens
    title = "Ride-height sensor"
    based_on = "generic-ratiometric"      optional: a built-in profile that fills in what is not said here
    contact = "track"                     or "contactless"
    ratiometric = true
    supply_v = 5.0

    [tracks.signal]                       and [tracks.second_signal]
    valid_v = [0.25, 4.75]
    rest_v = [1.5, 3.5]                   optional
    slope = "either"                      or "rising", "falling"
    source = "..."

    [second_track]                        with [tracks.second_signal], and not without
    factor = 0.5
    offset_v = 0.0
    tolerance_v = 0.2
    hold_s = 0.2
    source = "..."

    [limits.ground_drop]                  codes and their units in `LIMIT_UNITS`
    upper = 0.1                           lower, upper, or both
    unit = "V"
    hold_s = 0.0                          optional
    source = "..."

    [height]                              optional: travel as the height of the body
    up = "rising"                         which way travel goes as the body rises, or "falling"
    points = [[20.0, -60.0], [80.0, 60.0]]    % of travel and mm, twice; or, in place of the points,
    arm_mm = 127.0                            the arm's length,
    arm_angle_deg = 90.0                      the angle that it turns over the whole electrical travel,
    level_percent = 50.0                      optional: the travel at which it stands square to its link,
    wheel_ratio = 1.0                         optional: mm of wheel for 1 mm of the arm's end
    normal_percent = 52.5                 travel at the normal height, the zero of the heights
    source = "..."

    [height.rests_mm]                     optional: other heights, from the normal one, up positive
    loaded = -13.0                        parked, access, loaded, off_road, corner
"""

from __future__ import annotations

import re
import tomllib
from collections.abc import Mapping
from dataclasses import dataclass
from enum import StrEnum
from math import isfinite
from typing import Any, TypeVar

from analysis.captures.model import Role
from analysis.diagnosis.profile_model import Contact, Limit, SecondTrack, SensorProfile, Slope, Track
from analysis.errors import ProfileError, VehicleError
from analysis.intervals import Interval
from analysis.vehicle.geometry import Arm, Geometry, TwoPoints, Up
from analysis.vehicle.heights import Rest, RestKind, VehicleHeights
from analysis.wording import say, verbatim

LIMIT_UNITS = {
    "ground_drop": "V",
    "reference_level": "V",
    "reference_steadiness": "V",
    "signal_range": "V",
    "rest_variation": "V",
    "end_voltage": "%",
    "output_smoothness": "%",
    "linearity": "%",
    "hysteresis": "%",
}
"""Checks that a profile may limit, and the unit each is stated in; % is of the applied voltage."""

_KEYS = (
    "id", "title", "based_on", "contact", "ratiometric", "supply_v", "tracks", "second_track", "limits",
    "height",
)  # fmt: skip
_TRACK_ROLES = (Role.SIGNAL, Role.SECOND_SIGNAL)
_LARGEST_SUPPLY_V = 30.0  # a lorry's battery; anything above is a slip of the pen
_Choice = TypeVar("_Choice", bound=StrEnum)


def parse_profile(text: str, *, name: str, built_in: Mapping[str, str]) -> SensorProfile:
    """Read one profile.

    Parameters
    ----------
    text : str
        TOML.
    name : str
        Of the file, for the sentence that says what is wrong with it.
    built_in : mapping of str to str
        Texts of the profiles that `based_on` may name, by id.

    Returns
    -------
    SensorProfile

    Raises
    ------
    ProfileError
        File, key, rule and what came.
    """
    content = _toml(text, name)
    ours = built_in.get(str(content.get("id"))) == text
    content = _with_base(spoken(content) if ours else content, name, built_in)
    table = _Table(content, name, "")
    profile = SensorProfile(
        id=_identifier(table),
        title=table.text("title"),
        contact=table.choice("contact", Contact),
        ratiometric=table.truth("ratiometric"),
        supply_v=table.number("supply_v", above=0.0, at_most=_LARGEST_SUPPLY_V),
        tracks=_tracks(table),
        second_track=_second_track(table),
        limits=_limits(table),
        heights=_heights(table),
    )
    table.refuse_unknown(*_KEYS)
    _check_together(profile, table)
    return profile


def _toml(text: str, name: str) -> dict[str, Any]:
    try:
        return tomllib.loads(text)
    except tomllib.TOMLDecodeError as error:
        raise ProfileError(
            say("{name} is not TOML: {error}", name=name, error=str(error)), say("correct that line")
        ) from error


def spoken(content: Mapping[str, Any]) -> dict[str, Any]:
    """The content of a built-in profile, with what people read of it (titles, sources) as wordings.

    A technician's own profile speaks the technician's words, which nobody translates.
    """
    said: dict[str, Any] = {}
    for key, value in content.items():
        if isinstance(value, dict):
            said[key] = spoken(value)
        else:
            said[key] = verbatim(str(value)) if key in ("title", "source") else value
    return said


def _with_base(content: dict[str, Any], name: str, built_in: Mapping[str, str]) -> dict[str, Any]:
    """The content over that of the built-in profile it is based on; id and title are never inherited."""
    if "based_on" not in content:
        return content
    base = content["based_on"]
    if base not in built_in:
        raise ProfileError(
            say("{name}: based_on must name a built-in profile, got {base!r}", name=name, base=base),
            say("choose one of: {known}", known=", ".join(built_in)),
        )
    file = f"{base}.toml"
    inherited = _with_base(spoken(_toml(built_in[base], file)), file, built_in)
    merged = _merged(inherited, content)
    return {key: value for key, value in merged.items() if key in content or key not in ("id", "title")}


def _merged(below: Mapping[str, Any], above: Mapping[str, Any]) -> dict[str, Any]:
    """Tables joined key by key, all else replaced; a limit, and a height, is replaced whole."""
    joined = dict(below)
    for key, value in above.items():
        old = joined.get(key)
        if isinstance(old, dict) and isinstance(value, dict) and not _is_whole(old):
            joined[key] = _merged(old, value)
        else:
            joined[key] = value
    return joined


def _is_whole(table: Mapping[str, Any]) -> bool:
    """Whether a table is a unit of its own: a limit, or a height."""
    return not table.keys().isdisjoint(("unit", "upper", "lower", "up"))


def _identifier(table: _Table) -> str:
    value = table.text("id")
    if not re.fullmatch(r"[a-z0-9]+(-[a-z0-9]+)*", value):
        raise table.error("id", say("lower-case letters, digits and single hyphens"), value)
    return value


def _tracks(table: _Table) -> dict[Role, Track]:
    tracks = table.table("tracks")
    tracks.refuse_unknown(*(role.value for role in _TRACK_ROLES))
    found = {role: _track(tracks.table(role.value)) for role in _TRACK_ROLES if role.value in tracks.content}
    if Role.SIGNAL not in found:
        raise tracks.error("signal", say("there"), say("no such table"))
    return found


def _track(table: _Table) -> Track:
    table.refuse_unknown("valid_v", "rest_v", "slope", "source")
    valid_v = table.range("valid_v")
    rest_v = table.range("rest_v") if "rest_v" in table.content else None
    if rest_v is not None and not valid_v.start <= rest_v.start <= rest_v.stop <= valid_v.stop:
        raise table.error(
            "rest_v",
            say("inside valid_v [{start}, {stop}]", start=valid_v.start, stop=valid_v.stop),
            table.content["rest_v"],
        )
    return Track(valid_v, rest_v, table.choice("slope", Slope), table.text("source"))


def _second_track(table: _Table) -> SecondTrack | None:
    if "second_track" not in table.content:
        return None
    relation = table.table("second_track")
    relation.refuse_unknown("factor", "offset_v", "tolerance_v", "hold_s", "source")
    factor = relation.number("factor")
    if factor == 0.0:
        raise relation.error("factor", say("other than {value}", value=0), factor)
    return SecondTrack(
        factor=factor,
        offset_v=relation.number("offset_v"),
        tolerance_v=relation.number("tolerance_v", above=0.0),
        hold_s=relation.number("hold_s", least=0.0),
        source=relation.text("source"),
    )


def _limits(table: _Table) -> dict[str, Limit]:
    if "limits" not in table.content:
        return {}
    limits = table.table("limits")
    limits.refuse_unknown(*LIMIT_UNITS)
    return {code: _limit(limits.table(code), LIMIT_UNITS[code]) for code in limits.content}


def _limit(table: _Table, unit: str) -> Limit:
    table.refuse_unknown("lower", "upper", "unit", "source", "hold_s")
    if table.text("unit") != unit:
        raise table.error("unit", say('"{unit}"', unit=unit), table.content["unit"])
    lower = table.number("lower") if "lower" in table.content else None
    upper = table.number("upper") if "upper" in table.content else None
    if lower is None and upper is None:
        raise table.error("upper", say("there where lower is not"), say("neither"))
    if lower is not None and upper is not None and lower > upper:
        raise table.error("lower", say("at most upper ({upper})", upper=upper), lower)
    hold_s = table.number("hold_s", least=0.0) if "hold_s" in table.content else 0.0
    return Limit(lower, upper, unit, table.text("source"), hold_s)


def _heights(table: _Table) -> VehicleHeights | None:
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
        raise ProfileError(f"{table.name}: {error.problem}", error.action) from error


_POINT_KEYS = ("points",)
_ARM_KEYS = ("arm_mm", "arm_angle_deg", "level_percent", "wheel_ratio")


def _geometry(height: _Table) -> Geometry:
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


def _check_together(profile: SensorProfile, table: _Table) -> None:
    """Rules that tie one part of a profile to another."""
    second = Role.SECOND_SIGNAL in profile.tracks
    if second != (profile.second_track is not None):
        raise table.error(
            "second_track", say("there if tracks.second_signal is, and only then"), say("one of the two")
        )
    for role, track in profile.tracks.items():
        if not 0.0 <= track.valid_v.start <= track.valid_v.stop <= profile.supply_v:
            came = [track.valid_v.start, track.valid_v.stop]
            raise table.error(
                f"tracks.{role.value}.valid_v",
                say("within {least} and supply_v ({supply_v})", least=0, supply_v=profile.supply_v),
                came,
            )
    level = profile.limit("reference_level")
    if level is not None:
        low = level.lower if level.lower is not None else 0.0
        high = level.upper if level.upper is not None else float("inf")
        if not low <= profile.supply_v <= high:
            rule = say("a range around supply_v ({supply_v})", supply_v=profile.supply_v)
            raise table.error("limits.reference_level", rule, [level.lower, level.upper])


@dataclass(frozen=True, slots=True)
class _Table:
    """A TOML table that knows its file and its place, so that every complaint can say both."""

    content: Mapping[str, Any]
    name: str
    prefix: str

    def error(self, key: str, rule: str, came: object) -> ProfileError:
        """File, key, rule, and what came."""
        return ProfileError(
            say(
                "{name}: {prefix}{key} must be {rule}, got {came!r}",
                name=self.name,
                prefix=self.prefix,
                key=key,
                rule=rule,
                came=came,
            ),
            say("correct it in the profile"),
        )

    def refuse_unknown(self, *known: str) -> None:
        """Refuse keys that nothing reads: a misspelt one would be ignored in silence."""
        for key in self.content:
            if key not in known:
                raise self.error(key, say("one of {known}", known=", ".join(known)), key)

    def table(self, key: str) -> _Table:
        """A table below this one."""
        value = self._get(key, say("a table"))
        if not isinstance(value, dict):
            raise self.error(key, say("a table"), value)
        return _Table(value, self.name, f"{self.prefix}{key}.")

    def text(self, key: str) -> str:
        """Text that says something."""
        value = self._get(key, say("text"))
        if not isinstance(value, str) or not value.strip():
            raise self.error(key, say("text"), value)
        return value

    def truth(self, key: str) -> bool:
        """A bare true or false."""
        value = self._get(key, say("true or false"))
        if not isinstance(value, bool):
            raise self.error(key, say("true or false"), value)
        return value

    def choice(self, key: str, kind: type[_Choice]) -> _Choice:
        """One of a few words."""
        words = [item.value for item in kind]
        value = self._get(key, say("one of {known}", known=", ".join(words)))
        if value not in words:
            raise self.error(key, say("one of {known}", known=", ".join(words)), value)
        return kind(value)

    def number(
        self,
        key: str,
        *,
        above: float | None = None,
        least: float | None = None,
        at_most: float | None = None,
    ) -> float:
        """A finite number, within bounds where they are given."""
        value = self._get(key, say("a number"))
        if isinstance(value, bool) or not isinstance(value, int | float) or not isfinite(value):
            raise self.error(key, say("a number"), value)
        if above is not None and not value > above:
            raise self.error(key, say("above {above:g}", above=above), value)
        if least is not None and value < least:
            raise self.error(key, say("at least {least:g}", least=least), value)
        if at_most is not None and value > at_most:
            raise self.error(key, say("at most {at_most:g}", at_most=at_most), value)
        return float(value)

    def range(self, key: str) -> Interval:
        """Two ascending numbers."""
        value = self._get(key, say("two ascending numbers"))
        numbers = isinstance(value, list) and all(
            isinstance(item, int | float) and not isinstance(item, bool) and isfinite(item) for item in value
        )
        if not numbers or len(value) != 2 or value[0] > value[1]:
            raise self.error(key, say("two ascending numbers"), value)
        return Interval(float(value[0]), float(value[1]))

    def points(self, key: str) -> tuple[tuple[float, float], tuple[float, float]]:
        """Two pairs of numbers."""
        value = self._get(key, say("two pairs of numbers"))
        pairs = value if isinstance(value, list) and len(value) == 2 else []
        numbers = [item for pair in pairs if isinstance(pair, list) and len(pair) == 2 for item in pair]
        sound = all(isinstance(item, int | float) and not isinstance(item, bool) for item in numbers)
        if len(numbers) != 4 or not sound:
            raise self.error(key, say("two pairs of numbers"), value)
        return (float(numbers[0]), float(numbers[1])), (float(numbers[2]), float(numbers[3]))

    def _get(self, key: str, rule: str) -> Any:
        if key not in self.content:
            raise self.error(key, rule, say("nothing"))
        return self.content[key]
