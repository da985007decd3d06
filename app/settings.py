"""What the window remembers: its geometry, the last captures, lanes and colours, who makes the reports."""

from __future__ import annotations

import json
from collections.abc import Callable, Mapping, Sequence
from pathlib import Path
from typing import Protocol

from PySide6.QtCore import QByteArray

from analysis.errors import WornbandError
from analysis.reports.workshop import Workshop
from app.review.playback import SPEEDS
from app.settings_file import SettingsFile

_MOST_RECENT = 8
_MOST_CHOSEN = 500


class Store(Protocol):
    """Where settings are kept, texts and lists of texts: a file, or memory."""

    @property
    def trouble(self) -> WornbandError | None:
        """Why the last change is kept in memory alone; None where it is kept."""

    def value(self, key: str, default: object = None, /) -> object:
        """What is kept under a key, or the default."""

    def set_values(self, values: Mapping[str, object]) -> None:
        """Keep several values, all or none."""


class MemoryStore:
    """Settings that are forgotten with the process: for pictures and tests."""

    trouble = None

    def __init__(self) -> None:
        self._kept: dict[str, object] = {}

    def value(self, key: str, default: object = None, /) -> object:
        """What is kept under a key, or the default."""
        return self._kept.get(key, default)

    def set_values(self, values: Mapping[str, object]) -> None:
        """Keep several values."""
        self._kept |= values


class Settings:
    """A thin, typed front of the store.

    Parameters
    ----------
    store : Store or None
        Where to keep it; the user's own file by default.

    Attributes
    ----------
    tell : callable or None
        Is called where what changed cannot be kept, once until it can.
    """

    def __init__(self, store: Store | None = None) -> None:
        self._store: Store = store if store is not None else SettingsFile()
        self.tell: Callable[[WornbandError], None] | None = None
        self._told = False

    def _keep(self, **values: object) -> None:
        """Keep values; where that fails it is told once, for nothing that matters is lost."""
        self._store.set_values(values)
        trouble = self._store.trouble
        if trouble is not None and self.tell is not None and not self._told:
            self._told = True
            self.tell(trouble)
        self._told = self._told and trouble is not None

    @property
    def recent(self) -> tuple[Path, ...]:
        """The last captures that opened, newest first."""
        kept = self._store.value("recent", [])
        names = [kept] if isinstance(kept, str) else list(kept) if isinstance(kept, list) else []
        return tuple(Path(str(name)) for name in names)

    def remember_capture(self, path: Path) -> None:
        """Put a capture first among the last ones."""
        others = [str(item) for item in self.recent if item != path]
        self._keep(recent=[str(path), *others][:_MOST_RECENT])

    def forget_capture(self, path: Path) -> None:
        """Drop a capture that could not be opened."""
        self._keep(recent=[str(item) for item in self.recent if item != path])

    @property
    def known_good(self) -> dict[str, str]:
        """The capture that is kept as known good for each kind of sensor: its path, by the sensor's key."""
        try:
            kept = json.loads(str(self._store.value("known_good", "{}")))
        except (ValueError, RecursionError):
            return {}
        return {str(key): str(path) for key, path in kept.items()} if isinstance(kept, dict) else {}

    @known_good.setter
    def known_good(self, value: dict[str, str]) -> None:
        self._keep(known_good=json.dumps(value))

    def chosen_files(self, folder: Path) -> frozenset[str]:
        """Names that the technician chose for the reviews of a folder, as these say them."""
        return frozenset(name for place, name in self._chosen() if place == str(folder.absolute()))

    def choose_files(self, folder: Path, names: Sequence[str]) -> None:
        """Remember what was chosen for the reviews of a folder; the oldest of very many are forgotten."""
        new = [(str(folder.absolute()), name) for name in names]
        kept = [item for item in self._chosen() if item not in new]
        self._keep(chosen_files=json.dumps([*kept, *new][-_MOST_CHOSEN:]))

    def _chosen(self) -> list[tuple[str, str]]:
        try:
            kept = json.loads(str(self._store.value("chosen_files", "[]")))
            return [(str(place), str(name)) for place, name in kept]
        except (ValueError, TypeError, RecursionError):
            return []

    @property
    def workshop(self) -> Workshop:
        """Who makes the reports."""
        lines = str(self._store.value("workshop_lines", "")).splitlines()
        return Workshop(
            name=str(self._store.value("workshop_name", "")),
            lines=tuple(line.strip() for line in lines if line.strip()),
            logo=str(self._store.value("workshop_logo", "")),
        )

    @workshop.setter
    def workshop(self, value: Workshop) -> None:
        lines = "\n".join(value.lines)
        self._keep(workshop_name=value.name, workshop_lines=lines, workshop_logo=value.logo)

    @property
    def report_folder(self) -> Path | None:
        """Where the last report was saved; None before the first one."""
        kept = str(self._store.value("report_folder", ""))
        return Path(kept) if kept else None

    @report_folder.setter
    def report_folder(self, value: Path) -> None:
        self._keep(report_folder=str(value.absolute()))

    @property
    def paper(self) -> str:
        """Paper of the reports: ``"a4"`` or ``"letter"``."""
        kept = str(self._store.value("paper", "a4"))
        return kept if kept in ("a4", "letter") else "a4"

    @paper.setter
    def paper(self, value: str) -> None:
        self._keep(paper=value)

    @property
    def report_language(self) -> str:
        """Language of the reports, as in ISO 639-1; empty as long as it is that of the window."""
        return str(self._store.value("report_language", ""))

    @report_language.setter
    def report_language(self, value: str) -> None:
        self._keep(report_language=value)

    @property
    def language(self) -> str:
        """Language of the window: ``"system"``, or a code as in ISO 639-1."""
        return str(self._store.value("language", "system"))

    @language.setter
    def language(self, value: str) -> None:
        self._keep(language=value)

    @property
    def geometry(self) -> QByteArray:
        """The window's place and size; empty the first time."""
        return QByteArray.fromBase64(QByteArray(str(self._store.value("geometry", "")).encode()))

    @geometry.setter
    def geometry(self, value: QByteArray) -> None:
        self._keep(geometry=value.toBase64().toStdString())

    @property
    def told_of_marks(self) -> bool:
        """Whether what can be done with a marker was said once."""
        return str(self._store.value("told_of_marks", "false")).lower() == "true"

    @told_of_marks.setter
    def told_of_marks(self, value: bool) -> None:
        self._keep(told_of_marks="true" if value else "false")

    @property
    def lanes(self) -> bool:
        """Whether Trace has a lane for each channel."""
        return str(self._store.value("lanes", "true")).lower() == "true"

    @lanes.setter
    def lanes(self, value: bool) -> None:
        self._keep(lanes="true" if value else "false")

    @property
    def arm_speed(self) -> float | None:
        """The chosen one of the arm's speeds; None for each crossing's own."""
        kept = str(self._store.value("arm_speed", ""))
        return next((item for item in SPEEDS if f"{item:g}" == kept), None)

    @arm_speed.setter
    def arm_speed(self, value: float | None) -> None:
        self._keep(arm_speed=f"{value:g}" if value is not None else "")

    @property
    def colours(self) -> str:
        """``"system"``, ``"light"`` or ``"dark"``."""
        kept = str(self._store.value("colours", "system"))
        return kept if kept in ("system", "light", "dark") else "system"

    @colours.setter
    def colours(self, value: str) -> None:
        self._keep(colours=value)
