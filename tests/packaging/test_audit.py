"""The audit of the parts of others fails where it should, and holds now."""

from __future__ import annotations

import importlib.util
import json
import zipfile
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


def _record(name: str, *events: dict[str, str], **more: object) -> dict[str, object]:
    """A weakness as the OSV schema writes it, with what a test needs."""
    affected = {
        "package": {"ecosystem": more.pop("ecosystem", "PyPI"), "name": name},
        "ranges": [{"type": "ECOSYSTEM", "events": list(events)}],
        "versions": more.pop("versions", []),
    }
    return {"id": "X-1", "aliases": ["Y-1"], "summary": "reads too far", "affected": [affected], **more}


SINCE_EVER, FIXED, LAST = {"introduced": "0"}, {"fixed": "1.10"}, {"last_affected": "1.9"}


@pytest.mark.parametrize(
    ("pin", "record", "weak"),
    [
        ("a-b==1.9", _record("A_b", SINCE_EVER, FIXED), True),
        ("a-b==1.10", _record("A_b", SINCE_EVER, FIXED), False),
        ("a-b==1.9", _record("a.b", SINCE_EVER, LAST), True),
        ("a-b==1.9.1", _record("a.b", SINCE_EVER, LAST), False),
        ("a-b==2.1", _record("a-b", {"introduced": "2"}, FIXED, SINCE_EVER, {"fixed": "2.2"}), True),
        ("a-b==1.11", _record("a-b", {"introduced": "2"}, FIXED, SINCE_EVER, {"fixed": "2.2"}), False),
        ("a-b==7", _record("a-b", SINCE_EVER), True),  # nobody has mended it
        ("a-b==3", _record("a-b", versions=["3.0", "no version"]), True),
        ("a-b==1", _record("a-b", SINCE_EVER, withdrawn="2026-01-01T00:00:00Z"), False),
        ("a-b==1", _record("a-b", SINCE_EVER, ecosystem="npm"), False),
        ("a==1", _record("a-b", SINCE_EVER), False),
    ],
)
@pytest.mark.parametrize("packed", [False, True])
def test_a_known_weakness_of_a_pinned_version_is_found_in_a_list_on_this_machine(
    audit: ModuleType, pin: str, record: dict[str, object], weak: bool, packed: bool, tmp_path: Path
) -> None:
    known, pins = tmp_path / "known", tmp_path / "pins"
    pins.write_text(f"# parts\n{pin}\n")
    if packed:
        with zipfile.ZipFile(known, "w") as archive:
            archive.writestr("PyPI/X-1.json", json.dumps(record))
    else:
        known.mkdir()
        (known / "X-1.json").write_text(json.dumps(record))
    looked, found = audit.known_weaknesses(pins, known)
    assert looked == f"{0 if 'withdrawn' in record else 1} known weaknesses were looked for"
    assert found == ([f"{pin}: X-1, Y-1 reads too far"] if weak else [])


def test_without_a_list_it_is_said_that_no_weakness_was_looked_for(audit: ModuleType) -> None:
    said, found = audit.known_weaknesses(CI / "constraints.txt", None)
    assert "none was looked for" in said
    assert found == []
