"""Every text for people, found in the sources: what a catalogue must hold.

Found are the literals given to ``self.tr``, to a module's own ``_tr``, to ``QCoreApplication.translate`` and
to ``_spec`` or put into a table ``..._SPECS`` (an action's words), the templates given to ``say``, ``plural``
and ``Template``, and titles and sources of the built-in sensor profiles. A text that
is no literal cannot be found: that is an error.
"""

from __future__ import annotations

import ast
import tomllib
from collections.abc import Iterable, Iterator
from pathlib import Path
from string import Formatter

from app.translations.catalogue import ANALYSIS, Message

ROOT = Path(__file__).resolve().parents[2]
_TEMPLATES = {"say": 1, "Template": 1, "plural": 2}  # how many of the first arguments are templates
_ACTIONS = "actions"
_WORDING = "analysis/wording.py"
_SPOKEN_KEYS = ("title", "source")


def messages_of_sources(root: Path = ROOT) -> tuple[Message, ...]:
    """Every message that a catalogue must hold, in the order of files and lines.

    Raises
    ------
    ValueError
        Where a text is no literal: file, line, and what to do.
    """
    found: dict[tuple[str, str], list[str]] = {}
    for context, source, file in (*_of_modules(root), *_of_profiles(root)):
        files = found.setdefault((context, source), [])
        if file not in files:
            files.append(file)
    return tuple(
        Message(context, source, note=", ".join(files)) for (context, source), files in found.items()
    )


def messages_of_text(text: str, file: str) -> tuple[tuple[str, str], ...]:
    """Context and source of every text in one module.

    Parameters
    ----------
    text : str
        Python.
    file : str
        For the error.

    Raises
    ------
    ValueError
        As `messages_of_sources`.
    """
    tree = ast.parse(text)
    own = set(_TEMPLATES) if file == _WORDING else _of_wording(tree)  # it speaks for itself
    return tuple(_Finder(file, _own_context(tree), own).found_in(tree))


def field_names(template: str) -> list[tuple[str, str, str]]:
    """Name, conversion and format of each field of a template, sorted."""
    return sorted(
        (name, conversion or "", spec or "")
        for _, name, spec, conversion in Formatter().parse(template)
        if name is not None
    )


def free_text(template: str) -> str:
    """A template without its fields."""
    return "".join(literal for literal, *_ in Formatter().parse(template))


def _of_modules(root: Path) -> Iterator[tuple[str, str, str]]:
    for package in ("analysis", "app"):
        for path in sorted((root / package).rglob("*.py")):
            file = path.relative_to(root).as_posix()
            for context, source in messages_of_text(path.read_text(encoding="utf-8"), file):
                yield context, source, file


def _of_profiles(root: Path) -> Iterator[tuple[str, str, str]]:
    for path in sorted((root / "analysis" / "diagnosis" / "sensor_profiles").glob("*.toml")):
        content = tomllib.loads(path.read_text(encoding="utf-8"))
        for text in _spoken_values(content):
            doubled = text.replace("{", "{{").replace("}", "}}")
            yield ANALYSIS, doubled, path.relative_to(root).as_posix()


def _spoken_values(content: dict[str, object]) -> Iterator[str]:
    for key, value in content.items():
        if isinstance(value, dict):
            yield from _spoken_values(value)
        elif key in _SPOKEN_KEYS:
            yield str(value)


def _own_context(tree: ast.Module) -> str:
    """The context of a module's own ``_tr``; empty where it has none."""
    for node in tree.body:
        if isinstance(node, ast.FunctionDef) and node.name == "_tr":
            for call in ast.walk(node):
                if isinstance(call, ast.Call) and _called(call) == "translate":
                    return next(iter(_literals(call.args[0])), "")
    return ""


def _of_wording(tree: ast.Module) -> set[str]:
    """What a module takes from `analysis.wording`: elsewhere ``say`` may be anything."""
    imports = (node for node in ast.walk(tree) if isinstance(node, ast.ImportFrom))
    return {
        name.asname or name.name
        for node in imports
        if node.module == "analysis.wording"
        for name in node.names
    }


def _called(call: ast.Call) -> str:
    """The bare name of what is called."""
    if isinstance(call.func, ast.Attribute):
        return call.func.attr
    return call.func.id if isinstance(call.func, ast.Name) else ""


def _literals(node: ast.expr) -> list[str]:
    """The texts that an argument may be; empty where one of them is no literal."""
    if isinstance(node, ast.Constant) and isinstance(node.value, str):
        return [node.value]
    if isinstance(node, ast.IfExp):
        both = [_literals(node.body), _literals(node.orelse)]
        return [text for texts in both for text in texts] if all(both) else []
    return []


class _Finder:
    """Walks one module, knowing the class that it is in."""

    def __init__(self, file: str, own_context: str, of_wording: set[str]) -> None:
        self._file = file
        self._templates = {name: count for name, count in _TEMPLATES.items() if name in of_wording}
        self._own_context = own_context

    def found_in(self, node: ast.AST, context: str = "") -> Iterator[tuple[str, str]]:
        for child in ast.iter_child_nodes(node):
            if isinstance(child, ast.FunctionDef) and child.name == "_tr":
                continue  # it hands on what it is given
            inner = child.name if isinstance(child, ast.ClassDef) else context
            if isinstance(child, ast.Call):
                yield from self._of_call(child, context)
            elif isinstance(child, ast.Assign | ast.AnnAssign) and _is_table_of_actions(child):
                yield from self._of_table(child.value)
            yield from self.found_in(child, inner)

    def _of_call(self, call: ast.Call, context: str) -> Iterator[tuple[str, str]]:
        name = _called(call)
        if name in self._templates and isinstance(call.func, ast.Name):
            for text in self._texts(call, call.args[: self._templates[name]]):
                if any(letter.isalpha() for letter in free_text(text)):
                    yield ANALYSIS, text
        elif name == "tr" and isinstance(call.func, ast.Attribute):
            yield from ((context, text) for text in self._texts(call, call.args[:1]))
        elif name == "_tr":
            yield from ((self._own_context, text) for text in self._texts(call, call.args[:1]))
        elif name in ("translate", "QT_TRANSLATE_NOOP") and len(call.args) == 2:
            (where,) = _literals(call.args[0]) or [""]
            if where:
                yield from ((where, text) for text in self._texts(call, call.args[1:2]))
        elif name == "_spec":
            yield from ((_ACTIONS, text) for text in self._texts(call, call.args[1:4]))

    def _of_table(self, table: ast.expr | None) -> Iterator[tuple[str, str]]:
        """Rows that `_spec` is given one by one; those that are calls of it speak for themselves."""
        for row in table.elts if isinstance(table, ast.Tuple) else []:
            if isinstance(row, ast.Tuple):
                yield from ((_ACTIONS, text) for item in row.elts[1:4] for text in _literals(item) if text)

    def _texts(self, call: ast.Call, arguments: Iterable[ast.expr]) -> Iterator[str]:
        for argument in arguments:
            if _is_of_a_table(argument):
                continue
            texts = _literals(argument)
            if not texts:
                raise ValueError(
                    f"{self._file}:{call.lineno}: {ast.unparse(call)[:60]} must be given a literal, or nobody"
                    " can translate it"
                )
            yield from (text for text in texts if text)


def _is_table_of_actions(node: ast.Assign | ast.AnnAssign) -> bool:
    targets = node.targets if isinstance(node, ast.Assign) else [node.target]
    return any(isinstance(target, ast.Name) and target.id.endswith("SPECS") for target in targets)


def _is_of_a_table(argument: ast.expr) -> bool:
    """Words of an action: `_spec` has them as literals, and what makes the action hands them on."""
    return ast.unparse(argument) in ("spec.text", "spec.tip", "menu")
