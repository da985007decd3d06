"""Sensor profiles: what a kind of sensor should read, and whose limits these are.

Profiles are TOML files: the built-in ones beside this module in `sensor_profiles`, a technician's own
in a folder of the user's configuration. `analysis.diagnosis.profile_schema` reads one file.
"""

from __future__ import annotations

import os
import sys
from collections.abc import Mapping
from dataclasses import dataclass, replace
from functools import cache
from importlib import resources
from pathlib import Path

from analysis.captures.model import Capture
from analysis.diagnosis.profile_model import Contact, Limit, SecondTrack, SensorProfile, Slope, Track
from analysis.diagnosis.profile_schema import parse_profile
from analysis.errors import ProfileError
from analysis.own_folder import own_folder
from analysis.wording import say

__all__ = [
    "ASSUMED_PROFILE",
    "Contact",
    "Limit",
    "ProfileEntry",
    "SecondTrack",
    "SensorProfile",
    "Slope",
    "Track",
    "available_profiles",
    "built_in_ids",
    "built_in_text",
    "load_profile",
    "own_profiles_folder",
    "profile_for",
]

_MOST_BYTES = 1024 * 1024  # a built-in profile has some 3,000

ASSUMED_PROFILE = "generic-ratiometric"
"""What is assumed where no profile is named."""


@dataclass(frozen=True, slots=True)
class ProfileEntry:
    """One line of the list of profiles.

    Parameters
    ----------
    id, title : str
        As in `SensorProfile`; of a file that cannot be read, its name and an empty title.
    path : Path or None
        The technician's own file; None for a built-in profile.
    problem : str
        Why it cannot be used; empty where it can.
    """

    id: str
    title: str
    path: Path | None = None
    problem: str = ""


def own_profiles_folder(environment: Mapping[str, str] = os.environ, *, platform: str = sys.platform) -> Path:
    """Folder of the technician's own profiles; it need not exist. See `own_folder`."""
    return own_folder("profiles", environment, platform=platform)


def load_profile(id_or_path: str | Path | None = None, *, folder: Path | None = None) -> SensorProfile:
    """A profile by its id, or from a TOML file.

    Parameters
    ----------
    id_or_path : str, Path or None
        None or empty for the assumed one. A Path, and text that ends in ``.toml``, is a file.
    folder : Path or None
        The technician's own profiles; None for `own_profiles_folder`.

    Returns
    -------
    SensorProfile
        With `assumed` set where none was named.

    Raises
    ------
    ProfileError
        Where it is unknown, cannot be read, or breaks the schema.
    """
    if not id_or_path:
        return replace(_built_in(ASSUMED_PROFILE), assumed=True)
    if isinstance(id_or_path, Path) or id_or_path.lower().endswith(".toml"):
        return _own(Path(id_or_path))
    if id_or_path in built_in_ids():
        return _built_in(id_or_path)
    entries = [entry for entry in available_profiles(folder=folder) if entry.path is not None]
    for entry in entries:
        if entry.id == id_or_path and entry.path is not None:
            return _own(entry.path)
    known = ", ".join([*built_in_ids(), *(entry.id for entry in entries if not entry.problem)])
    raise ProfileError(
        say("there is no sensor profile {id_or_path!r}", id_or_path=str(id_or_path)),
        say("choose one of: {known}", known=known),
    )


def profile_for(
    capture: Capture, wanted: SensorProfile | str | Path | None = None, *, folder: Path | None = None
) -> SensorProfile:
    """The profile that a capture is examined with.

    Parameters
    ----------
    capture : Capture
        That may name one.
    wanted : SensorProfile, str, Path or None
        What the caller asks for; None for the one that the capture names, or else the assumed one.
    folder : Path or None
        The technician's own profiles; None for `own_profiles_folder`.

    Returns
    -------
    SensorProfile
        With `assumed` set where none was named, or one that this PC does not have.

    Raises
    ------
    ProfileError
        Where the one that is asked for is unknown or malformed.
    """
    if isinstance(wanted, SensorProfile):
        return wanted
    if wanted is not None:
        return load_profile(wanted, folder=folder)
    named = capture.text("profile")
    if not named:
        return load_profile()
    try:
        return load_profile(named, folder=folder)
    except ProfileError:  # a file from elsewhere may name a profile that this PC does not have
        return replace(load_profile(), assumed=True)


def available_profiles(*, folder: Path | None = None) -> tuple[ProfileEntry, ...]:
    """Every profile: the built-in ones, then the technician's own by file name.

    Parameters
    ----------
    folder : Path or None
        The technician's own profiles; None for `own_profiles_folder`. It need not exist.

    Returns
    -------
    tuple of ProfileEntry
        A file that cannot be used stands in it with its problem, so that nobody wonders where it went.
    """
    built_in = [ProfileEntry(name, _built_in(name).title) for name in built_in_ids()]
    place = own_profiles_folder() if folder is None else folder
    files = sorted(place.glob("*.toml")) if place.is_dir() else []
    return (*built_in, *(_entry(path) for path in files))


def built_in_ids() -> tuple[str, ...]:
    """Ids of the profiles that come with the program, sorted."""
    return tuple(_built_in_texts())


def built_in_text(profile_id: str) -> str:
    """Text of a built-in profile; a pattern to start an own one from.

    Raises
    ------
    ProfileError
        Where there is none of that id.
    """
    texts = _built_in_texts()
    if profile_id not in texts:
        raise ProfileError(
            say("there is no built-in sensor profile {profile_id!r}", profile_id=profile_id),
            say("choose one of: {known}", known=", ".join(texts)),
        )
    return texts[profile_id]


@cache
def _built_in_texts() -> dict[str, str]:
    """Text of each built-in profile by its id; they cannot change while the program runs."""
    files = (resources.files("analysis.diagnosis") / "sensor_profiles").iterdir()
    texts = {
        item.name.removesuffix(".toml"): item.read_text(encoding="utf-8")
        for item in files
        if item.name.endswith(".toml")
    }
    return dict(sorted(texts.items()))


def _built_in(profile_id: str) -> SensorProfile:
    return parse_profile(built_in_text(profile_id), name=f"{profile_id}.toml", built_in=_built_in_texts())


def _own(path: Path) -> SensorProfile:
    """A technician's own profile.

    Its id must not be a built-in one's, or nobody could tell which of the two was meant.
    """
    try:
        text = _text(path)
    except UnicodeDecodeError as error:
        raise ProfileError(
            say("the sensor profile {name} is not UTF-8 text", name=path.name), say("save it as UTF-8")
        ) from error
    except OSError as error:
        problem = say(
            "the sensor profile {name} cannot be read ({strerror})", name=path.name, strerror=error.strerror
        )
        raise ProfileError(problem, say("check that the file is there and may be read")) from error
    profile = replace(parse_profile(text, name=path.name, built_in=_built_in_texts()), path=path)
    if profile.id in built_in_ids():
        problem = say("{name}: the id {id!r} belongs to a built-in profile", name=path.name, id=profile.id)
        raise ProfileError(problem, say("choose another id"))
    return profile


def _text(path: Path) -> str:
    """A file's text; what is no regular file, or far too long, is not read."""
    if path.exists() and not (path.is_file() or path.is_dir()):  # opening a pipe waits for ever
        raise ProfileError(say("{name} is no file", name=path.name), say("choose a TOML file"))
    with path.open("rb") as file:
        raw = file.read(_MOST_BYTES + 1)
    if len(raw) > _MOST_BYTES:
        raise ProfileError(
            say("the sensor profile {name} is far too long", name=path.name), say("choose another file")
        )
    return raw.decode("utf-8-sig")


def _entry(path: Path) -> ProfileEntry:
    try:
        profile = _own(path)
    except ProfileError as error:
        return ProfileEntry(path.stem, "", path, str(error))
    return ProfileEntry(profile.id, profile.title, path)
