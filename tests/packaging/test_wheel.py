"""The wheel brings along everything that the program opens, and works where there is no checkout."""

from __future__ import annotations

import os
import subprocess
import sys
import tomllib
import zipfile
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[2]


@pytest.fixture(scope="module")
def wheel(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The wheel, built by the back end that `pyproject.toml` names."""
    folder = tmp_path_factory.mktemp("wheel")
    command = [sys.executable, "-m", "hatchling", "build", "-t", "wheel", "-d", str(folder)]
    subprocess.run(command, cwd=ROOT, check=True, capture_output=True)
    (path,) = folder.glob("*.whl")
    return path


@pytest.fixture(scope="module")
def installed(wheel: Path, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A folder with the wheel installed in it, without what it depends on."""
    folder = tmp_path_factory.mktemp("installed")
    pip = [
        sys.executable,
        "-m",
        "pip",
        "install",
        "--quiet",
        "--no-index",
        "--no-deps",
        "--target",
        str(folder),
    ]
    subprocess.run([*pip, str(wheel)], check=True, capture_output=True)
    return folder


def _run(installed: Path, *arguments: str) -> subprocess.CompletedProcess[str]:
    """Python with the installed wheel, from a folder that holds nothing of the checkout."""
    return subprocess.run(
        [sys.executable, *arguments],
        cwd=installed.parent,
        env={**os.environ, "PYTHONPATH": str(installed)},
        capture_output=True,
        text=True,
        check=False,
        timeout=120,
    )


def test_the_wheel_holds_every_icon_sample_and_profile_of_the_checkout(wheel: Path) -> None:
    names = set(zipfile.ZipFile(wheel).namelist())
    for folder, inside in (
        ("icons", "app/icons"),
        ("sample_captures", "app/sample_captures"),
        ("analysis/diagnosis/sensor_profiles", "analysis/diagnosis/sensor_profiles"),
    ):
        files = [path.name for path in (ROOT / folder).iterdir() if path.is_file()]
        assert files, folder
        assert {f"{inside}/{name}" for name in files} <= names


def test_the_wheel_holds_its_bill_of_materials(wheel: Path) -> None:
    stored = zipfile.ZipFile(wheel).read("app/bill-of-materials.cdx.json")
    assert stored == (ROOT / ".ci/bill-of-materials.cdx.json").read_bytes()


def test_the_wheel_holds_every_module_and_no_test(wheel: Path) -> None:
    names = set(zipfile.ZipFile(wheel).namelist())
    for path in [*(ROOT / "app").rglob("*.py"), *(ROOT / "analysis").rglob("*.py")]:
        assert path.relative_to(ROOT).as_posix() in names
    assert not [name for name in names if name.startswith("tests/")]


def test_the_installed_program_finds_its_own_files(installed: Path) -> None:
    code = (
        "import app, analysis\n"
        "from app.resources import folder, sample_captures\n"
        "from analysis.diagnosis.profiles import built_in_ids\n"
        "print(app.__file__); print(folder('icons')); print(len(sample_captures())); print(*built_in_ids())"
    )
    done = _run(installed, "-c", code)
    assert done.returncode == 0, done.stderr
    where, icons, samples, profiles = done.stdout.splitlines()
    assert Path(where).is_relative_to(installed)
    assert Path(icons) == installed / "app" / "icons"
    assert int(samples) >= 9
    assert "ride-height" in profiles.split()


def test_the_installed_program_verifies_its_samples(installed: Path) -> None:
    samples = sorted(str(path) for path in (installed / "app" / "sample_captures").glob("*.h5"))
    done = _run(installed, "-m", "app", "verify", *samples)
    assert done.returncode == 0, done.stderr
    assert done.stdout.count("unchanged") >= 9


def test_the_command_is_declared(wheel: Path) -> None:
    names = zipfile.ZipFile(wheel).namelist()
    (entry,) = [name for name in names if name.endswith("entry_points.txt")]
    text = zipfile.ZipFile(wheel).read(entry).decode()
    assert "wornband = app.command_line:main" in text


def test_every_pinned_version_is_allowed_by_the_project_and_names_no_host_or_path() -> None:
    from packaging.requirements import Requirement
    from packaging.version import Version

    lines = (ROOT / ".ci" / "constraints.txt").read_text(encoding="utf-8").splitlines()
    pins = dict(line.split("==") for line in lines if line and not line.startswith("#"))
    assert not [line for line in pins if "/" in line or "@" in line]
    project = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))["project"]
    extras = project["optional-dependencies"].values()
    wanted = [*project["dependencies"], *(text for extra in extras for text in extra)]
    by_name = {name.lower().replace("_", "-"): version for name, version in pins.items()}
    for text in wanted:
        requirement = Requirement(text)
        pinned = by_name[requirement.name.lower().replace("_", "-")]
        assert Version(pinned) in requirement.specifier, text


@pytest.mark.parametrize("command", [" && .venv/bin/wornband demo", " && .venv/bin/pytest -n 2"])
def test_the_readme_and_the_continuous_check_run_the_same_command(command: str) -> None:
    def line(path: Path) -> str:
        (found,) = [item for item in path.read_text(encoding="utf-8").splitlines() if item.endswith(command)]
        return found

    assert line(ROOT / "README.md") == line(ROOT / ".ci" / "run")
