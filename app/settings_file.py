"""The file of the settings: read with care, replaced as a whole, shared by windows that are open at once."""

from __future__ import annotations

import json
from collections.abc import Mapping
from contextlib import suppress
from pathlib import Path
from typing import Any

from analysis.captures.replacing import replaced_at_the_end
from analysis.errors import WornbandError
from analysis.own_folder import own_folder

SCHEMA = "wornband-settings/1"
_MOST_BYTES = 1_000_000
_MOST_KEYS, _MOST_ITEMS, _LONGEST = 200, 200, 100_000


class SettingsError(WornbandError):
    """The settings cannot be kept."""


def settings_path() -> Path:
    """The user's own file of settings, which need not exist."""
    return own_folder("settings.json")


class SettingsFile:
    """A store of texts and lists of texts, each written as soon as it changes.

    What cannot be used (damaged, too large, of a later version) counts as nothing, and is kept under another
    name when something is written. What another window wrote meanwhile stays, but for what is written here.

    Parameters
    ----------
    path : Path or None
        The file, which need not exist; the user's own by default.
    """

    def __init__(self, path: Path | None = None) -> None:
        self._path = path or settings_path()
        self._kept, _ = _read(self._path)
        self._changed: dict[str, Any] = {}
        self.trouble: SettingsError | None = None

    def value(self, key: str, default: object = None, /) -> object:
        """What is kept under a key, or the default."""
        return self._kept.get(key, default)

    def set_values(self, values: Mapping[str, object]) -> None:
        """Keep several at once; `trouble` says afterwards why they are kept in memory alone."""
        new = {key: value for key, value in values.items() if self._kept.get(key) != value}
        if not new:
            return
        self._changed |= new
        self._kept |= new
        try:
            self._write()
        except SettingsError as error:
            self.trouble = error
        else:
            self.trouble = None

    def _write(self) -> None:
        kept, usable = _read(self._path)
        if not usable:
            with suppress(OSError):
                self._path.replace(self._path.with_suffix(".damaged.json"))
        self._kept = kept | self._changed
        with suppress(OSError):  # where it cannot be made, writing says so
            self._path.parent.mkdir(parents=True, exist_ok=True)
        text = json.dumps({"schema": SCHEMA, "values": self._kept}, indent=1)
        with replaced_at_the_end(self._path, SettingsError) as temporary:
            temporary.write_text(text + "\n", encoding="utf-8")


def _read(path: Path) -> tuple[dict[str, Any], bool]:
    """What a file holds that can be used, and whether it is one of ours, or none at all."""
    try:
        if not path.exists():
            return {}, True
        if not path.is_file():  # never wait for a pipe
            return {}, False
        with path.open("rb") as file:
            raw = file.read(_MOST_BYTES + 1)
        held = json.loads(raw.decode("utf-8")) if len(raw) <= _MOST_BYTES else None
    except (OSError, ValueError, RecursionError):
        return {}, False
    if not isinstance(held, dict) or held.get("schema") != SCHEMA or not isinstance(held.get("values"), dict):
        return {}, False
    values = list(held["values"].items())[:_MOST_KEYS]
    return {key: value for key, value in values if _is_usable(value)}, True


def _is_usable(value: object) -> bool:
    if isinstance(value, list):
        return len(value) <= _MOST_ITEMS and all(_is_text(item) for item in value)
    return _is_text(value)


def _is_text(value: object) -> bool:
    return isinstance(value, str) and len(value) <= _LONGEST
