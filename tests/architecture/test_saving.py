"""No module writes over a file in place: what a person would miss goes through `replaced_at_the_end`."""

from __future__ import annotations

import ast
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[2]
SOURCES = [path for folder in ("app", "analysis") for path in sorted((ROOT / folder).rglob("*.py"))]
ELSEWHERE = {
    "analysis/captures/steady_file.py": "writes the temporary file of a capture",
    "analysis/exporting/samples.py": "writers are handed the temporary file",
    "analysis/importing/binary.py": "unpacks into a folder that goes with the table",
    "analysis/simulation/calibrate.py": "a developer's tool",
    "analysis/simulation/samples.py": "a developer's tool",
    "app/translations/catalogue.py": "a developer's tool",
    "app/errands/demonstration.py": "a demonstration, made anew whenever it is asked for",
}


def writes(path: Path) -> list[int]:
    """Lines that write to a file outside a ``with replaced_at_the_end(...)``."""
    found: list[int] = []

    def look(node: ast.AST, guarded: bool) -> None:
        if isinstance(node, ast.With):
            guarded = guarded or "replaced_at_the_end" in ast.dump(
                ast.Tuple([i.context_expr for i in node.items])
            )
        if isinstance(node, ast.Call) and not guarded and _writes(node):
            found.append(node.lineno)
        for child in ast.iter_child_nodes(node):
            look(child, guarded)

    look(ast.parse(path.read_text(encoding="utf-8")), False)
    return found


def _writes(call: ast.Call) -> bool:
    name = call.func.attr if isinstance(call.func, ast.Attribute) else getattr(call.func, "id", "")
    if name in ("write_text", "write_bytes"):
        return True
    modes = [
        item.value for item in call.args if isinstance(item, ast.Constant) and isinstance(item.value, str)
    ]
    return name == "open" and any(set(mode) & set("wax+") and len(mode) <= 3 for mode in modes)


@pytest.mark.parametrize("path", SOURCES, ids=lambda path: str(path.relative_to(ROOT)))
def test_no_file_is_written_in_place(path: Path) -> None:
    if path.relative_to(ROOT).as_posix() not in ELSEWHERE:
        assert writes(path) == []


@pytest.mark.parametrize("name", ELSEWHERE)
def test_every_exception_is_still_one(name: str) -> None:
    assert writes(ROOT / name) != []


def test_the_search_finds_what_is_written_in_place(tmp_path: Path) -> None:
    code = tmp_path / "a.py"
    code.write_text(
        "with replaced_at_the_end(a) as b:\n    b.write_text('x')\n"
        "a.write_text('x')\nopen(a, 'w')\na.open('rb')\n"
    )
    assert writes(code) == [3, 4]
