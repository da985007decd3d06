"""The analysis as a library: its example runs as it stands, and its names lead where they should."""

from __future__ import annotations

import subprocess
import sys
import textwrap
from pathlib import Path

import pytest

import analysis

ROOT = Path(__file__).resolve().parents[2]


def _example() -> str:
    """The code in the docstring of the package."""
    text = analysis.__doc__ or ""
    lines = text.split("::\n", 1)[1].splitlines()
    block = [line for line in lines if not line.strip() or line.startswith("    ")]
    return textwrap.dedent("\n".join(block)).strip()


def test_the_example_is_five_lines_of_code_at_most() -> None:
    assert 3 <= len([line for line in _example().splitlines() if line.strip()]) <= 5


def test_the_example_runs_in_a_fresh_interpreter_and_finds_the_worn_band() -> None:
    done = subprocess.run(
        [sys.executable, "-c", _example()], capture_output=True, text=True, check=False, cwd=ROOT, timeout=120
    )
    assert done.returncode == 0, done.stderr
    assert done.stdout.startswith("The track is worn at ")
    assert "Interval(start=" in done.stdout


@pytest.mark.parametrize("name", analysis.__all__)
def test_every_public_name_is_there_documented_and_listed(name: str) -> None:
    found = getattr(analysis, name)
    assert found.__doc__
    assert found.__name__ == name
    assert name in dir(analysis)


def test_a_name_that_is_not_there_is_an_attribute_error_like_any_other() -> None:
    with pytest.raises(AttributeError, match="has no attribute 'verdict'"):
        analysis.verdict  # noqa: B018 - asked for on purpose


def test_asking_for_the_errors_alone_loads_no_scipy() -> None:
    code = "import sys, analysis, analysis.errors; print('scipy' in sys.modules)"
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True, cwd=ROOT)
    assert done.stdout.strip() == "False"


def test_the_package_says_that_it_is_typed() -> None:
    assert (Path(analysis.__file__).parent / "py.typed").is_file()  # PEP 561
