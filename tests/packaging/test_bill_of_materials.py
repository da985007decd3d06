"""The bill of materials names what the wheel asks for, in the versions that are pinned, with licences."""

from __future__ import annotations

import importlib.util
import json
import re
import tomllib
from importlib.metadata import Distribution
from pathlib import Path
from typing import Any

import pytest

ROOT = Path(__file__).resolve().parents[2]
PINNED = dict(
    line.split("==")
    for line in (ROOT / ".ci/constraints.txt").read_text(encoding="utf-8").splitlines()
    if "==" in line and not line.startswith("#")
)


def key(name: str) -> str:
    return re.sub(r"[-_.]+", "-", name).lower()


@pytest.fixture(scope="module")
def bill() -> dict[str, Any]:
    stored: dict[str, Any] = json.loads((ROOT / ".ci/bill-of-materials.cdx.json").read_text(encoding="utf-8"))
    return stored


def test_every_dependency_of_the_program_is_in_the_bill(bill: dict[str, Any]) -> None:
    project = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))["project"]
    wanted = {key(re.split(r"[^\w.-]", item, maxsplit=1)[0]) for item in project["dependencies"]}
    assert wanted <= {key(item["name"]) for item in bill["components"]}
    assert bill["metadata"]["component"]["version"] == project["version"]


def test_the_versions_are_those_that_are_pinned(bill: dict[str, Any]) -> None:
    pinned = {key(name): version for name, version in PINNED.items()}
    assert {key(item["name"]): item["version"] for item in bill["components"]} == {
        key(item["name"]): pinned[key(item["name"])] for item in bill["components"]
    }


def test_every_part_states_a_licence(bill: dict[str, Any]) -> None:
    # CycloneDX 1.6, "licenses": an expression, or an object "license" with a name or an SPDX id.
    for item in bill["components"]:
        (licence,) = item["licenses"]
        assert licence.get("expression") or licence["license"]["name"], item["name"]
        assert item["purl"] == f"pkg:pypi/{key(item['name'])}@{item['version']}"


@pytest.fixture
def maker(monkeypatch: pytest.MonkeyPatch) -> Any:
    spec = importlib.util.spec_from_file_location("bill_of_materials", ROOT / ".ci/bill_of_materials.py")
    assert spec is not None
    assert spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


def test_every_part_that_is_installed_with_the_program_is_in_the_bill(
    maker: Any, bill: dict[str, Any]
) -> None:
    installed = {key(item["name"]) for item in maker.bill()["components"]}
    assert installed == {key(item["name"]) for item in bill["components"]}


def test_a_part_that_states_no_licence_cannot_be_entered(maker: Any, tmp_path: Path) -> None:
    folder = tmp_path / "nameless-1.0.dist-info"
    folder.mkdir()
    (folder / "METADATA").write_text("Metadata-Version: 2.1\nName: nameless\nVersion: 1.0\n")
    with pytest.raises(ValueError, match="nameless states no licence"):
        maker._licence(Distribution.at(folder))
    (folder / "METADATA").write_text("Metadata-Version: 2.1\nName: nameless\nVersion: 1.0\nLicense: MIT\n")
    assert maker._licence(Distribution.at(folder)) == [{"license": {"name": "MIT"}}]
