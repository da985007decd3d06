"""Writes the bill of materials: what the wheel runs with, its versions and licences, as CycloneDX 1.6 JSON.

Run as ``.venv/bin/python .ci/bill_of_materials.py`` where the versions of ``constraints.txt`` are installed;
the wheel takes along what lies in ``bill-of-materials.cdx.json``.
"""

from __future__ import annotations

import json
import re
import tomllib
from importlib.metadata import Distribution, distribution
from pathlib import Path
from typing import Any

HERE = Path(__file__).resolve().parent
TARGET = HERE / "bill-of-materials.cdx.json"


def _key(name: str) -> str:
    return re.sub(r"[-_.]+", "-", name).lower()


def _names(requirements: list[str]) -> list[str]:
    """Names of what is required always: nothing of an extra or of another system."""
    plain = [item for item in requirements if "extra ==" not in item and ";" not in item]
    return [re.split(r"[^\w.-]", item, maxsplit=1)[0] for item in plain]


def _closure(requirements: list[str]) -> list[Distribution]:
    found: dict[str, Distribution] = {}
    waiting = _names(requirements)
    while waiting:
        name = waiting.pop()
        if _key(name) not in found:
            found[_key(name)] = distribution(name)
            waiting += _names(found[_key(name)].requires or [])
    return [found[key] for key in sorted(found)]


def _licence(package: Distribution) -> list[dict[str, Any]]:
    about = package.metadata
    expression = about.get("License-Expression")
    if expression:
        return [{"expression": expression}]
    classifiers = [
        item.rpartition(" :: ")[2] for item in about.get_all("Classifier") or [] if "License ::" in item
    ]
    stated = (about.get("License") or "").splitlines()
    name = "; ".join(classifiers) or (stated[0] if stated else "")
    if not name:
        raise ValueError(f"{package.name} states no licence: find out which before it is entered")
    return [{"license": {"name": name}}]


def bill() -> dict[str, Any]:
    """The bill, without a date: the same packages give the same file."""
    project = tomllib.loads((HERE.parent / "pyproject.toml").read_text(encoding="utf-8"))["project"]
    components = [
        {
            "type": "library",
            "name": item.name,
            "version": item.version,
            "purl": f"pkg:pypi/{_key(item.name)}@{item.version}",
            "licenses": _licence(item),
        }
        for item in _closure(project["dependencies"])
    ]
    about = {"component": {"type": "application", "name": project["name"], "version": project["version"]}}
    return {
        "bomFormat": "CycloneDX",
        "specVersion": "1.6",
        "version": 1,
        "metadata": about,
        "components": components,
    }


if __name__ == "__main__":
    TARGET.write_text(json.dumps(bill(), indent=1) + "\n", encoding="utf-8")
