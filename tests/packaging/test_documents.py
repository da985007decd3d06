"""What the front documents name exists: files, modules, commands, verdicts."""

from __future__ import annotations

import importlib.util
import re
import shlex
from pathlib import Path

import pytest

from analysis.diagnosis.findings import VerdictCode
from app import window
from app.command_line import ERRANDS, parser

ROOT = Path(__file__).resolve().parents[2]
README = (ROOT / "README.md").read_text(encoding="utf-8")
DEVELOPERS = (ROOT / "DEVELOPERS.md").read_text(encoding="utf-8")
BOTH = README + DEVELOPERS
MADE = {"wornband-demo/review.png", ".readme/"}
"""Named in the documents, made by their commands."""


def test_every_link_leads_to_a_file() -> None:
    links = re.findall(r"\]\(([^)#]+)\)", BOTH)
    assert len(links) > 3
    for link in links:
        assert not link.startswith("http")
        assert (ROOT / link).exists(), link


def test_every_path_in_code_marks_is_there() -> None:
    names = re.findall(r"`((?:analysis|app|tests|sample_captures|\.ci)/[\w./-]*)`", BOTH)
    assert len(names) > 15
    for name in names:
        assert (ROOT / name).exists(), name


def test_the_files_to_start_reading_at_are_in_their_folders() -> None:
    rows = re.findall(r"^\| `((?:analysis|app)/\S*)` \|.*\| ([^|]+) \|$", DEVELOPERS, re.MULTILINE)
    assert len(rows) >= 8
    for folder, files in rows:
        for name in re.findall(r"`([\w.]+)`", files):
            assert (ROOT / folder / name).is_file(), f"{folder}{name}"


def test_every_module_that_is_to_be_run_can_be_found() -> None:
    modules = re.findall(r"python -m ([\w.]+)", BOTH)
    assert "analysis.simulation.samples" in modules
    for module in set(modules) - {"venv", "build"}:
        assert importlib.util.find_spec(module) is not None, module


@pytest.mark.parametrize("line", re.findall(r"^(?:\.venv/bin/)?wornband .*$", README, re.MULTILINE))
def test_every_call_in_the_readme_is_understood(line: str) -> None:
    words = shlex.split(line.replace("[", "").replace("]", "").replace("...", "").replace(" N", " 2"))[1:]
    if words[0] in ERRANDS:
        assert parser().parse_args(words).errand == words[0]
    else:
        assert words == ["FILE"]


def test_the_readme_explains_every_verdict() -> None:
    assert set(re.findall(r"^\| `(\w+)` \|", README, re.MULTILINE)) == {code.value for code in VerdictCode}


def test_the_readme_begins_with_the_job_and_shows_the_window() -> None:
    first = README.split("\n\n")[1]
    for word in ("technician", "customer", "worn", "wiring"):
        assert word in first
    assert (ROOT / ".readme" / "review.png").read_bytes().startswith(b"\x89PNG\r\n")


def test_readme_program_and_continuous_check_ask_for_the_same_system_libraries() -> None:
    asked = {*window._QT_PACKAGES.split(), *window._SCREEN_LIBRARIES.values()}
    readme = " ".join(re.findall(r"^sudo apt install (.*)$", README, re.MULTILINE)).split()
    assert set(readme) == asked | {"python3-venv"}
    script = (ROOT / ".ci" / "run").read_text(encoding="utf-8")
    listed = re.search(r"packages=\(([^)]*)\)", script)
    assert listed is not None
    assert set(listed[1].split()) == asked | {"python3-venv", "xvfb"}
    libraries = re.search(r"libraries=\(([^)]*)\)", script)
    assert libraries is not None
    assert set(window._SCREEN_LIBRARIES) <= set(libraries[1].split())
