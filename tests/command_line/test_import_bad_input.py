"""Whatever is handed to ``wornband import``: status 1, one line on standard error, nothing left behind."""

from __future__ import annotations

from pathlib import Path

import pytest

from app.command_line import main
from tests.importing.test_bad_input import BAD


@pytest.mark.parametrize("kind", BAD)
def test_bad_input_costs_one_line_and_leaves_nothing(
    kind: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    make, _ = BAD[kind]
    source, out = tmp_path / "source", tmp_path / "out"
    make(source)
    out.mkdir()
    assert main(["import", str(source), "-o", str(out / "a.h5")]) == 1
    said = capsys.readouterr()
    assert said.out == ""
    (line,) = said.err.splitlines()
    assert line.startswith(str(source))
    assert "; " in line  # what is wrong; what to do
    assert list(out.iterdir()) == []
