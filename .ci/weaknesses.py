"""Holds pinned versions against a list of known weaknesses that lies on this machine.

The list is a folder or a ZIP of records in the OSV schema (Open Source Security Foundation, version 1.6: one
JSON file a weakness), as databases of that schema hand them out whole. Nothing is fetched.
"""

from __future__ import annotations

import json
import re
import zipfile
from collections.abc import Iterable, Iterator
from pathlib import Path
from typing import Any

from packaging.version import InvalidVersion, Version

Record = dict[str, Any]


def records(path: Path) -> Iterator[Record]:
    """Every weakness of a list that nobody has withdrawn."""
    for text in _texts(path):
        found = json.loads(text)
        if isinstance(found, dict) and not found.get("withdrawn"):
            yield found


def _texts(path: Path) -> Iterator[bytes]:
    if path.is_dir():
        yield from (item.read_bytes() for item in sorted(path.rglob("*.json")))
        return
    with zipfile.ZipFile(path) as archive:
        yield from (archive.read(name) for name in sorted(archive.namelist()) if name.endswith(".json"))


def weaknesses(pins: Iterable[str], known: Iterable[Record]) -> list[str]:
    """A line for each weakness of a pinned version.

    Parameters
    ----------
    pins : iterable of str
        ``name==version``.
    known : iterable of dict
        Records of the OSV schema.
    """
    pinned = {_spelled(name): Version(version) for name, _, version in (pin.partition("==") for pin in pins)}
    return [
        f"{name}=={pinned[name]}: {', '.join([record['id'], *record.get('aliases', ())])}"
        f" {record.get('summary', '')}".rstrip()
        for record in known
        for name in sorted({_name(item) for item in record.get("affected", ())} & pinned.keys())
        if any(_affects(item, pinned[name]) for item in record["affected"] if _name(item) == name)
    ]


def _spelled(name: str) -> str:
    """A name as the index spells it (PEP 503)."""
    return re.sub(r"[-_.]+", "-", name).lower()


def _name(affected: Record) -> str:
    package = affected.get("package", {})
    return _spelled(package.get("name", "")) if package.get("ecosystem") == "PyPI" else ""


def _affects(affected: Record, version: Version) -> bool:
    """Whether a version is named, or lies in a range; the schema's own rule ("Evaluation")."""
    named = (_version(item) for item in affected.get("versions", ()))
    return version in named or any(
        _within(item.get("events", ()), version)
        for item in affected.get("ranges", ())
        if item.get("type") == "ECOSYSTEM"
    )


def _within(events: Iterable[Record], version: Version) -> bool:
    """Events in the order of their versions turn it on and off; `last_affected` still counts as affected."""
    inside = False
    turns = ((_version(text), kind) for event in events for kind, text in event.items())
    for at, kind in sorted((at, kind) for at, kind in turns if at is not None):
        if kind == "introduced" and version >= at:
            inside = True
        elif (kind == "fixed" and version >= at) or (kind == "last_affected" and version > at):
            inside = False
    return inside


def _version(text: str) -> Version | None:
    try:
        return Version(text)
    except InvalidVersion:
        return None
