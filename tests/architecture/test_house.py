"""The house keeps its order: who may import whom, what lies at the top, and how long a module grows."""

from __future__ import annotations

import ast
import pkgutil
import re
import subprocess
import sys
from pathlib import Path

import pytest

import analysis

ROOT = Path(__file__).resolve().parents[2]
TOP = {"README.md", "DEVELOPERS.md", "pyproject.toml", "app", "analysis", "tests", "sample_captures", "icons"}
SOURCES = sorted([*(ROOT / "analysis").rglob("*.py"), *(ROOT / "app").rglob("*.py")])
TESTS = sorted((ROOT / "tests").rglob("*.py"))
MACHINE_PATHS = re.compile(r"(?<![\w.])/(?:work|root)/\w|[A-Z]:\\{1,2}Users\\")


def _tracked() -> list[Path]:
    """Files that are under version control."""
    listed = subprocess.run(
        ["git", "-C", str(ROOT), "ls-files", "-z"], capture_output=True, text=True, check=False
    )
    if listed.returncode:
        pytest.skip("this is no checkout: there is no list of tracked files")
    return [ROOT / name for name in listed.stdout.split("\0") if name and (ROOT / name).is_file()]


def _imports(path: Path) -> set[str]:
    """Top-level packages that a module imports anywhere."""
    found: set[str] = set()
    for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
        if isinstance(node, ast.Import):
            found.update(alias.name.split(".")[0] for alias in node.names)
        elif isinstance(node, ast.ImportFrom) and node.module and node.level == 0:
            found.add(node.module.split(".")[0])
    return found


def _in_fresh_interpreter(code: str) -> str:
    done = subprocess.run(
        [sys.executable, "-c", code], capture_output=True, text=True, check=False, cwd=ROOT, timeout=120
    )
    assert done.returncode == 0, done.stderr
    return done.stdout


def test_analysis_never_loads_qt_nor_the_app() -> None:
    names = [module.name for module in pkgutil.walk_packages(analysis.__path__, "analysis.")]
    assert len(names) > 30
    names = [name for name in names if not name.endswith("_child")]  # that one is run, never imported
    code = (
        "import importlib, sys\n"
        f"for name in {names!r}: importlib.import_module(name)\n"
        "unwanted = ('PySide6', 'shiboken6', 'pyqtgraph', 'app')\n"
        "print([name for name in sys.modules if name.split('.')[0] in unwanted])"
    )
    assert _in_fresh_interpreter(code).strip() == "[]"


@pytest.mark.parametrize(
    "module",
    [
        "app.command_line",
        "app.errands.analysing",
        "app.errands.demonstration",
        "app.errands.verifying",
        "app.errands.comparing",
        "app.window",
        "app.pictures",
        "app.errands.reporting",
        "app.reporting.html",
    ],
)
def test_the_command_line_loads_no_qt_until_the_window_opens(module: str) -> None:
    qt = "('PySide6', 'shiboken6', 'pyqtgraph')"
    code = f"import sys, {module}\nprint([n for n in sys.modules if n.split('.')[0] in {qt}])"
    assert _in_fresh_interpreter(code).strip() == "[]"


def test_analysing_a_capture_loads_no_qt() -> None:
    code = (
        "import sys\n"
        "from app.command_line import main\n"
        "status = main(['analyse', 'sample_captures/W1041-rear-left-height.h5', '--json'])\n"
        "print(status, [n for n in sys.modules if n.split('.')[0] in ('PySide6', 'shiboken6', 'pyqtgraph')])"
    )
    assert _in_fresh_interpreter(code).splitlines()[-1] == "0 []"


def test_analysis_names_neither_qt_nor_the_app_in_any_import() -> None:
    for path in (ROOT / "analysis").rglob("*.py"):
        assert not _imports(path) & {"app", "tests", "PySide6", "pyqtgraph"}, path


def test_the_program_needs_nothing_that_its_wheel_does_not_ask_for() -> None:
    ours = {"analysis", "app", "__future__"}
    libraries = {"numpy", "scipy", "h5py", "isal", "PySide6", "shiboken6", "pyqtgraph", "pypdf", "pyarrow"}
    allowed = ours | libraries
    for path in SOURCES:
        assert not _imports(path) - allowed - set(sys.stdlib_module_names), path


@pytest.mark.parametrize("path", [*SOURCES, *TESTS], ids=lambda path: str(path.relative_to(ROOT)))
def test_no_widget_is_asked_for_one_that_pyside_would_hang_on_it(path: Path) -> None:
    # PySide 6.11 takes what these give for a child of the one that was asked (see `shiboken6.dump`). When
    # that one goes, what hangs on it counts as deleted, and Qt, which goes on with it, ends the program.
    hanging = {"nextInFocusChain", "previousInFocusChain", "focusProxy", "buddy", "nativeParentWidget"}
    tree = ast.parse(path.read_text(encoding="utf-8"))
    asked = {node.attr for node in ast.walk(tree) if isinstance(node, ast.Attribute)}
    assert not asked & hanging


def test_the_top_of_the_house_holds_what_was_agreed() -> None:
    visible = {path.relative_to(ROOT).parts[0] for path in _tracked()}
    assert {name for name in visible if not name.startswith(".")} == TOP


@pytest.mark.parametrize("path", [*SOURCES, *TESTS], ids=lambda path: str(path.relative_to(ROOT)))
def test_no_module_is_longer_than_400_lines(path: Path) -> None:
    assert len(path.read_text(encoding="utf-8").splitlines()) <= 400


@pytest.mark.parametrize("path", SOURCES, ids=lambda path: str(path.relative_to(ROOT)))
def test_every_module_says_what_it_is_for(path: Path) -> None:
    assert ast.get_docstring(ast.parse(path.read_text(encoding="utf-8")))


def test_nothing_tracked_names_a_folder_of_somebodys_machine() -> None:
    for path in _tracked():
        data = path.read_bytes()
        if b"\0" in data or path == Path(__file__).resolve():
            continue
        found = MACHINE_PATHS.search(data.decode("utf-8"))
        assert found is None, f"{path.relative_to(ROOT)} names {found.group() if found else ''}"


def test_the_search_for_machine_paths_finds_one() -> None:
    assert MACHINE_PATHS.search("see /root/captures")
    assert MACHINE_PATHS.search("C:\\Users\\somebody")
    assert not MACHINE_PATHS.search("what a day of /work is, https://example.org/work/x")


def test_no_test_is_skipped_or_expected_to_fail_without_a_reason() -> None:
    reasoned = ("pytest.skip", "pytest.mark.skip", "pytest.mark.skipif", "pytest.mark.xfail", "pytest.xfail")
    for path in TESTS:
        tree = ast.parse(path.read_text(encoding="utf-8"))
        called = {id(node.func): node for node in ast.walk(tree) if isinstance(node, ast.Call)}
        for node in ast.walk(tree):
            if isinstance(node, ast.Attribute) and ast.unparse(node) in reasoned:
                call = called.get(id(node))
                assert call is not None, f"{path}: line {node.lineno} gives no reason"
                said = call.args[-1:] if node.attr in ("skip", "xfail") else []
                given = [item for item in call.keywords if item.arg == "reason"]
                assert said or given, f"{path}: line {node.lineno} gives no reason"
