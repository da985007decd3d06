"""Parsers that are ours: whole inputs are taken, any other bytes refused with a sentence."""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.robustness.__main__ import FUZZED
from tests.robustness.fuzz import run_fuzz, why_not
from tests.robustness.parsers import PARSERS, refused


@pytest.mark.parametrize("name", PARSERS)
def test_whole_inputs_are_taken(name: str, tmp_path: Path) -> None:
    parser = PARSERS[name]
    for data in parser.begin(tmp_path):
        assert not refused(parser, data, tmp_path)


@pytest.mark.parametrize("name", [name for name in PARSERS if name not in ("cells", "words", "settings")])
def test_bytes_of_another_kind_are_refused(name: str, tmp_path: Path) -> None:
    for data in (b"", b"\0" * 100, b"\xff\xfe\xfd", b"[" * 4000):
        assert refused(PARSERS[name], data, tmp_path)


@pytest.mark.skipif(bool(why_not()), reason=why_not() or "there is a fuzzer")
@pytest.mark.parametrize("name", PARSERS)
def test_a_fuzzer_that_is_led_by_coverage_finds_nothing(name: str) -> None:
    found = run_fuzz(name, FUZZED[0])
    assert found.trouble == ""
    assert found.runs >= FUZZED[0]
    assert found.branches > 10
