"""A review from a stranger: whatever stands in its file, the capture opens and the file is kept aside."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from analysis.captures import layout
from analysis.captures.writing import write_capture
from analysis.review.sidecar import read_sidecar, write_sidecar
from tests.app.fakes import worn_capture

HOSTILE = {
    "nested too deeply": b"[" * 200_000,
    "objects nested too deeply": b'{"a":' * 200_000,
    "a number of a million digits": b'{"schema": ' + b"9" * 1_000_000 + b"}",
    "numbers that are none": b'{"schema": "wornband-review/1", "markers": [{"time_s": NaN, "x": Infinity}]}',
    "half a letter": json.dumps({"schema": "wornband-review/1", "markers": ["\\ud800"]}).encode(),
    "a list in place of an object": b"[]",
    "nothing": b"",
    "zeros": b"\0" * 4096,
    "far too long": b" " * 80_000_000,
}


@pytest.mark.parametrize("name", HOSTILE)
def test_a_hostile_review_is_told_and_the_next_one_begins_beside_it(name: str, tmp_path: Path) -> None:
    path = tmp_path / "worn.h5"
    write_capture(worn_capture(), path)
    review = layout.review_path(path)
    review.write_bytes(HOSTILE[name])
    found = read_sidecar(path)
    assert found.trouble, name
    assert "Traceback" not in found.trouble
    write_sidecar(found, found.review)
    assert not read_sidecar(path).trouble
    kept = [item for item in tmp_path.iterdir() if item not in (path, review)]
    assert [item.read_bytes() for item in kept] == [HOSTILE[name]]
