"""The audit of the parts of others fails where it should, and holds now."""

from __future__ import annotations

import importlib.util
from pathlib import Path
from types import ModuleType

import pytest

CI = Path(__file__).resolve().parents[2] / ".ci"
HASH = "--hash=sha256:" + "a" * 64


@pytest.fixture(scope="module")
def audit() -> ModuleType:
    spec = importlib.util.spec_from_file_location("audit", CI / "audit.py")
    assert spec is not None
    assert spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


def test_every_pinned_version_has_its_hash_and_every_part_a_licence(audit: ModuleType) -> None:
    for path in CI.glob("hashes-*.txt"):
        assert audit.differences(CI / "constraints.txt", path) == []
    assert audit.licences(CI / "constraints.txt")[1] == []


@pytest.mark.parametrize(
    ("pins", "hashes", "said"),
    [
        ("a==2", f"a==1 {HASH}", ["a==2 is pinned and has no hash", "a==1 has a hash and is not pinned"]),
        ("a==1\nb==1", f"a==1 {HASH}", ["b==1 is pinned and has no hash"]),
        ("a>=1", f"a==1 {HASH}", ["a>=1 is pinned and has no hash", "a==1 has a hash", "a>=1 is not pinned"]),
        ("a==1", "a==1", ["a==1 has no hash"]),
        ("A_b==1", f"a-b==1 {HASH}", []),
    ],
)
def test_what_is_pinned_and_what_is_hashed_must_be_the_same(
    audit: ModuleType, pins: str, hashes: str, said: list[str], tmp_path: Path
) -> None:
    (tmp_path / "pins").write_text(pins)
    (tmp_path / "hashes").write_text(hashes)
    found = audit.differences(tmp_path / "pins", tmp_path / "hashes")
    assert len(found) == len(said)
    assert all(line.startswith(start) for line, start in zip(found, said, strict=True))


def test_a_version_that_was_taken_back_is_told_with_the_reason(audit: ModuleType) -> None:
    # The words of pip, src/pip/_internal/resolution/resolvelib/resolver.py.
    said = (
        "WARNING: The candidate selected for download or install is a yanked version: 'a' candidate (version"
        " 1 at a-1-py3-none-any.whl)\nReason for being yanked: a weakness\n"
    )
    (line,) = audit.taken_back(said)
    assert "'a' candidate (version 1" in line
    assert "a weakness" in line
    assert audit.taken_back("WARNING: something else") == []
