"""Recipes: what was decided about a table, kept so that the next one of the same shape imports by itself.

JSON, not TOML as the sensor profiles are: people write profiles, the program writes recipes, and Python's
standard library writes the one and only reads the other. A line a decision, so it can be read all the same.
"""

from __future__ import annotations

import json
from collections.abc import Mapping
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path
from typing import TYPE_CHECKING, Any

from analysis.captures.model import Role, Step
from analysis.captures.replacing import replaced_at_the_end
from analysis.errors import ImportingError
from analysis.importing.choices import TextChoices, checked_choices
from analysis.importing.model import MOST_COLUMNS
from analysis.importing.shape import Shape
from analysis.importing.wishes import CONDITIONS, Blocks, Wishes
from analysis.wording import say

if TYPE_CHECKING:
    from analysis.importing.understood import Understood

SCHEMA = "wornband-recipe/1"
_MOST_BYTES = 200_000
_LONGEST = 300  # letters of a name or a word
_LONGEST_NOTE = 5000  # of an attribute of the capture


@dataclass(frozen=True, slots=True)
class Recipe:
    """What was decided about files of one shape.

    Parameters
    ----------
    shape : Shape or None
        Of these files; None in recipes that were made before shapes were kept, which fit only when named.
    wishes : Wishes
        What was decided.
    kept : str
        When, as in ISO 8601; empty where it does not say.
    path : Path or None
        Where it is kept.
    """

    shape: Shape | None
    wishes: Wishes
    kept: str = ""
    path: Path | None = None

    @property
    def day(self) -> str:
        """The day it was kept on; empty where it does not say."""
        return self.kept[:10]


def recipe_of(understood: Understood, wishes: Wishes) -> dict[str, Any]:
    """Everything that was decided about a source, guesses included, as a JSON object.

    Parameters
    ----------
    understood : Understood
        The source.
    wishes : Wishes
        What was asked for, a recipe that was followed included.
    """
    plan, shape = understood.plan, understood.shape
    alike = shape is not None and len(shape.columns) == len(understood.columns)
    names = shape.columns if shape is not None and alike else understood.columns
    text = wishes.text
    return {
        "schema": SCHEMA,
        "kept": datetime.now().astimezone().isoformat(timespec="microseconds"),
        "shape": None
        if shape is None
        else {
            "kind": shape.kind,
            "columns": list(shape.columns),
            "units": list(shape.units),
            "delimiter": shape.delimiter,
        },
        "columns": list(names),
        "time_column": None if plan.time_place is None else names[plan.time_place],
        "sample_interval_s": wishes.interval_s,
        "channels": {names[item.place]: str(item.role) for item in plan.channels},
        "units": dict(wishes.units),
        "factors": dict(wishes.factors),
        "offsets": dict(wishes.offsets),
        "full_scale_v": wishes.full_scale_v,
        "datasets": list(wishes.datasets),
        "step": None if wishes.step is None else str(wishes.step),
        "resample": wishes.resample,
        "blocks": None if wishes.blocks is None else str(wishes.blocks),
        "text": {
            "delimiter": text.delimiter,
            "decimal": text.decimal,
            "thousands": text.thousands,
            "head_lines": text.head_lines,
            "encoding": text.encoding,
        },
        "probe_points": dict(wishes.probe_points),
        "return_points": dict(wishes.return_points),
        "conditions": dict(wishes.conditions),
        "attributes": dict(wishes.attributes),
    }


def keep_recipe(recipe: dict[str, Any], path: Path) -> None:
    """Write a recipe, whole or not at all; an older recipe of that name is replaced, any other file is not.

    Raises
    ------
    ImportingError
        Where it cannot be written.
    """
    check_place(path)
    with replaced_at_the_end(path, ImportingError) as temporary:
        temporary.write_text(json.dumps(recipe, indent=1, ensure_ascii=False) + "\n", encoding="utf-8")


def check_place(path: Path) -> None:
    """Whether a recipe may be kept there.

    Raises
    ------
    ImportingError
        Where a file of that name exists that is no recipe.
    """
    if not path.exists():
        return
    try:
        load_recipe(path)
    except ImportingError as error:
        raise ImportingError(
            say("{name} exists and is no recipe", name=path.name), say("choose another name for the recipe")
        ) from error


def read_recipe(path: Path) -> Wishes:
    """The wishes that a recipe holds.

    Raises
    ------
    ImportingError
        Where it is no recipe.
    """
    return load_recipe(path).wishes


def load_recipe(path: Path) -> Recipe:
    """A recipe out of its file; nothing in it is taken on trust.

    Raises
    ------
    ImportingError
        Where it is no recipe.
    """
    try:
        if not path.is_file():  # never wait for a pipe
            raise FileNotFoundError(path)
        with path.open("rb") as file:
            raw = file.read(_MOST_BYTES + 1)
        if len(raw) > _MOST_BYTES:
            raise _no_recipe()
        held = json.loads(raw.decode("utf-8"), parse_constant=_no_number)
    except OSError as error:
        raise ImportingError(say("there is no such recipe"), say("check the name and the folder")) from error
    except (ValueError, RecursionError) as error:
        raise _no_recipe() from error
    if not isinstance(held, dict) or held.get("schema") != SCHEMA:
        raise _no_recipe()
    try:
        kept = _word(held.get("kept", ""))
        return Recipe(_shape(held.get("shape")), _wishes(held), kept, path)
    except (TypeError, ValueError, KeyError, AttributeError, OverflowError, ImportingError) as error:
        raise _no_recipe() from error


def _no_number(word: str) -> float:
    raise ValueError(f"{word} is no number of JSON (RFC 8259)")


def _shape(held: Any) -> Shape | None:
    if held is None:
        return None
    columns, units = _words(held["columns"]), _words(held["units"])
    if len(columns) != len(units) or not columns:
        raise ValueError("a shape has a unit for every column")
    return Shape(_word(held["kind"]), columns, units, _word(held.get("delimiter", "")))


def _wishes(held: Mapping[str, Any]) -> Wishes:
    time, step, blocks = held.get("time_column"), held.get("step"), held.get("blocks")
    text = held.get("text") or {}
    conditions = _table(held, "conditions")
    if not set(conditions) <= set(CONDITIONS):
        raise ValueError("conditions have names of their own")
    return Wishes(
        channels={name: Role(role) for name, role in _table(held, "channels").items()},
        time_column=None if time is None else _word(time),
        interval_s=_positive(held.get("sample_interval_s")),
        units=_table(held, "units"),
        full_scale_v=_positive(held.get("full_scale_v")),
        datasets=_words(held.get("datasets") or []),
        step=None if step is None else Step(step),
        resample=held.get("resample") is True,
        blocks=None if blocks is None else Blocks(blocks),
        attributes=_table(held, "attributes", _LONGEST_NOTE),
        text=_choices(text),
        factors={_word(name): _number(value) for name, value in _mapping(held, "factors").items()},
        offsets={
            _word(name): 0.0 if value == 0 else _number(value)
            for name, value in _mapping(held, "offsets").items()
        },
        probe_points=_table(held, "probe_points"),
        return_points=_table(held, "return_points"),
        conditions=conditions,
    )


def _choices(held: Mapping[str, Any]) -> TextChoices:
    words = {key: held.get(key) for key in ("delimiter", "decimal", "thousands", "encoding")}
    lines = held.get("head_lines")
    if lines is not None and type(lines) is not int:
        raise TypeError("lines are counted in whole numbers")
    chosen = {key: None if word is None else _word(word) for key, word in words.items()}
    return checked_choices(TextChoices(head_lines=lines, **chosen))


def _mapping(held: Mapping[str, Any], key: str) -> Mapping[str, Any]:
    found = held.get(key) or {}
    if not isinstance(found, dict) or len(found) > MOST_COLUMNS:
        raise TypeError(f"{key} is no table, or too long")
    return found


def _table(held: Mapping[str, Any], key: str, longest: int = _LONGEST) -> dict[str, str]:
    return {_word(name): _word(value, longest) for name, value in _mapping(held, key).items()}


def _words(held: Any) -> tuple[str, ...]:
    if not isinstance(held, list) or len(held) > MOST_COLUMNS:
        raise TypeError("no list of names, or too long")
    return tuple(_word(item) for item in held)


def _word(value: Any, longest: int = _LONGEST) -> str:
    if not isinstance(value, str) or len(value) > longest or "\0" in value:
        raise TypeError("no word, or too long")
    return value


def _number(value: Any) -> float:
    if isinstance(value, bool) or not isinstance(value, int | float) or not abs(value) < 1e12 or not value:
        raise TypeError("no number that can be used")
    return float(value)


def _positive(value: Any) -> float | None:
    if value is None:
        return None
    if _number(value) <= 0.0:
        raise ValueError("not positive")
    return float(value)


def _no_recipe() -> ImportingError:
    return ImportingError(say("it is no recipe for tables"), say("make one with --keep-recipe"))
