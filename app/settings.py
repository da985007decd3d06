"""What the window remembers: its geometry, the last captures, lanes and colours, who makes the reports."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Protocol

from PySide6.QtCore import QByteArray, QSettings

from analysis.reports.pages import Workshop

_MOST_RECENT = 8


class Store(Protocol):
    """Where settings are kept: `QSettings`, or memory."""

    def value(self, key: str, default: object = None, /) -> object:
        """What is kept under a key, or the default."""

    def setValue(self, key: str, value: object, /) -> None:  # noqa: N802 - QSettings' own name
        """Keep a value under a key."""


class MemoryStore:
    """Settings that are forgotten with the process: for pictures and tests."""

    def __init__(self) -> None:
        self._kept: dict[str, object] = {}

    def value(self, key: str, default: object = None, /) -> object:
        """What is kept under a key, or the default."""
        return self._kept.get(key, default)

    def setValue(self, key: str, value: object, /) -> None:  # noqa: N802 - QSettings' own name
        """Keep a value under a key."""
        self._kept[key] = value


class Settings:
    """A thin, typed front of the store.

    Parameters
    ----------
    store : Store or None
        Where to keep it; the user's own by default.
    """

    def __init__(self, store: Store | None = None) -> None:
        self._store: Store = store if store is not None else QSettings("wornband", "wornband")

    @property
    def recent(self) -> tuple[Path, ...]:
        """The last captures that opened, newest first."""
        kept = self._store.value("recent", [])
        names = [kept] if isinstance(kept, str) else list(kept) if isinstance(kept, list) else []
        return tuple(Path(str(name)) for name in names)

    def remember_capture(self, path: Path) -> None:
        """Put a capture first among the last ones."""
        others = [str(item) for item in self.recent if item != path]
        self._store.setValue("recent", [str(path), *others][:_MOST_RECENT])

    def forget_capture(self, path: Path) -> None:
        """Drop a capture that could not be opened."""
        self._store.setValue("recent", [str(item) for item in self.recent if item != path])

    @property
    def known_good(self) -> dict[str, str]:
        """The capture that is kept as known good for each kind of sensor: its path, by the sensor's key."""
        try:
            kept = json.loads(str(self._store.value("known_good", "{}")))
        except ValueError:
            return {}
        return {str(key): str(path) for key, path in kept.items()} if isinstance(kept, dict) else {}

    @known_good.setter
    def known_good(self, value: dict[str, str]) -> None:
        self._store.setValue("known_good", json.dumps(value))

    @property
    def workshop(self) -> Workshop:
        """Who makes the reports."""
        lines = str(self._store.value("workshop/lines", "")).splitlines()
        return Workshop(
            name=str(self._store.value("workshop/name", "")),
            lines=tuple(line.strip() for line in lines if line.strip()),
            logo=str(self._store.value("workshop/logo", "")),
        )

    @workshop.setter
    def workshop(self, value: Workshop) -> None:
        self._store.setValue("workshop/name", value.name)
        self._store.setValue("workshop/lines", "\n".join(value.lines))
        self._store.setValue("workshop/logo", value.logo)

    @property
    def paper(self) -> str:
        """Paper of the reports: ``"a4"`` or ``"letter"``."""
        kept = str(self._store.value("paper", "a4"))
        return kept if kept in ("a4", "letter") else "a4"

    @paper.setter
    def paper(self, value: str) -> None:
        self._store.setValue("paper", value)

    @property
    def report_language(self) -> str:
        """Language of the reports, as in ISO 639-1; empty as long as it is that of the window."""
        return str(self._store.value("report_language", ""))

    @report_language.setter
    def report_language(self, value: str) -> None:
        self._store.setValue("report_language", value)

    @property
    def language(self) -> str:
        """Language of the window: ``"system"``, or a code as in ISO 639-1."""
        return str(self._store.value("language", "system"))

    @language.setter
    def language(self, value: str) -> None:
        self._store.setValue("language", value)

    @property
    def geometry(self) -> QByteArray:
        """The window's place and size; empty the first time."""
        kept = self._store.value("geometry")
        return kept if isinstance(kept, QByteArray) else QByteArray()

    @geometry.setter
    def geometry(self, value: QByteArray) -> None:
        self._store.setValue("geometry", value)

    @property
    def lanes(self) -> bool:
        """Whether Trace has a lane for each channel."""
        return str(self._store.value("lanes", "true")).lower() == "true"

    @lanes.setter
    def lanes(self, value: bool) -> None:
        self._store.setValue("lanes", "true" if value else "false")

    @property
    def colours(self) -> str:
        """``"system"``, ``"light"`` or ``"dark"``."""
        kept = str(self._store.value("colours", "system"))
        return kept if kept in ("system", "light", "dark") else "system"

    @colours.setter
    def colours(self, value: str) -> None:
        self._store.setValue("colours", value)
