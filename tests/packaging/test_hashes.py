"""Every version that is pinned has the hash of its file, on the platform that the build service runs on."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[2]
LISTS = sorted((ROOT / ".ci").glob("hashes-*.txt"))
LINE = re.compile(r"([\w.-]+)==([\w.+!-]+) --hash=sha256:([0-9a-f]{64})")


def lines(path: Path) -> list[str]:
    return [line for line in path.read_text(encoding="ascii").splitlines() if line and line[0] != "#"]


def test_there_is_a_list_for_the_build_service() -> None:
    assert [path.name for path in LISTS] == ["hashes-linux_x86_64-cp311.txt"]


@pytest.mark.parametrize("path", LISTS, ids=lambda path: path.name)
def test_every_pinned_version_has_one_hash_and_nothing_else_is_listed(path: Path) -> None:
    found = [LINE.fullmatch(line) for line in lines(path)]
    assert all(found)
    pinned = {line.replace("-", "_").lower() for line in lines(ROOT / ".ci/constraints.txt")}
    listed = [f"{item[1]}=={item[2]}".replace("-", "_").lower() for item in found if item]
    assert sorted(listed) == sorted(pinned)


def test_the_build_service_checks_them_and_fetches_nothing_else_afterwards() -> None:
    script = (ROOT / ".ci/run").read_text(encoding="utf-8")
    checked = script.index("--require-hashes")
    assert checked < script.index("PIP_NO_INDEX=1") < script.index("the README's first command")
