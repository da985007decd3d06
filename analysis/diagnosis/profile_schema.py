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
from enum import StrEnum
from typing import Any, TypeVar

from analysis.captures.model import Role
from analysis.diagnosis.height_schema import parse_heights
from analysis.diagnosis.profile_model import Contact, Limit, SecondTrack, SensorProfile, Slope, Track
from analysis.diagnosis.profile_table import ProfileTable, Shown
from analysis.errors import ProfileError
from analysis.wording import say, verbatim

LIMIT_UNITS = {
    "ground_drop": "V",
    "reference_level": "V",
    "reference_steadiness": "V",
    "signal_range": "V",
    "rest_variation": "V",
    "low_end": "V",
    "high_end": "V",
    "signal_span": "V",
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
    table = ProfileTable(content, name, "")
    profile = SensorProfile(
        id=_identifier(table),
        title=table.text("title"),
        contact=table.choice("contact", Contact),
        ratiometric=table.truth("ratiometric"),
        supply_v=table.number("supply_v", above=0.0, at_most=_LARGEST_SUPPLY_V),
        tracks=_tracks(table),
        second_track=_second_track(table),
        limits=_limits(table),
        heights=parse_heights(table),
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
    except (RecursionError, ValueError) as error:  # brackets without end; a number of thousands of digits
        raise ProfileError(
            say("{name} is nested too deeply or holds a number that is none", name=name),
            say("write it anew from a built-in profile"),
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
    if not isinstance(base, str) or base not in built_in:
        raise ProfileError(
            say("{name}: based_on must name a built-in profile, got {base!r}", name=name, base=Shown(base)),
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


def _identifier(table: ProfileTable) -> str:
    value = table.text("id")
    if not re.fullmatch(r"[a-z0-9]+(-[a-z0-9]+)*", value):
        raise table.error("id", say("lower-case letters, digits and single hyphens"), value)
    return value


def _tracks(table: ProfileTable) -> dict[Role, Track]:
    tracks = table.table("tracks")
    tracks.refuse_unknown(*(role.value for role in _TRACK_ROLES))
    found = {role: _track(tracks.table(role.value)) for role in _TRACK_ROLES if role.value in tracks.content}
    if Role.SIGNAL not in found:
        raise tracks.error("signal", say("there"), say("no such table"))
    return found


def _track(table: ProfileTable) -> Track:
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


def _second_track(table: ProfileTable) -> SecondTrack | None:
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


def _limits(table: ProfileTable) -> dict[str, Limit]:
    if "limits" not in table.content:
        return {}
    limits = table.table("limits")
    limits.refuse_unknown(*LIMIT_UNITS)
    return {code: _limit(limits.table(code), LIMIT_UNITS[code]) for code in limits.content}


def _limit(table: ProfileTable, unit: str) -> Limit:
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


def _check_together(profile: SensorProfile, table: ProfileTable) -> None:
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
