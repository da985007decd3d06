"""Recipes: what was decided about a table, kept so that the next one of the same shape imports by itself."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

from analysis.captures.model import Role, Step
from analysis.captures.replacing import replaced_at_the_end
from analysis.errors import ImportingError
from analysis.importing.bring_in import Understood
from analysis.importing.plan import Wishes
from analysis.wording import say

SCHEMA = "wornband-recipe/1"
_MOST_BYTES = 200_000


def recipe_of(understood: Understood, wishes: Wishes) -> dict[str, Any]:
    """Everything that was decided about a source, guesses included, as a JSON object."""
    plan, names = understood.plan, understood.columns
    return {
        "schema": SCHEMA,
        "columns": list(names),
        "time_column": None if plan.time_place is None else names[plan.time_place],
        "sample_interval_s": wishes.interval_s,
        "channels": {names[item.place]: str(item.role) for item in plan.channels},
        "units": dict(wishes.units),
        "full_scale_v": wishes.full_scale_v,
        "step": None if wishes.step is None else str(wishes.step),
        "resample": wishes.resample,
        "attributes": dict(wishes.attributes),
    }


def keep_recipe(recipe: dict[str, Any], path: Path) -> None:
    """Write a recipe, whole or not at all.

    Raises
    ------
    ImportingError
        Where it cannot be written.
    """
    with replaced_at_the_end(path, ImportingError) as temporary:
        temporary.write_text(json.dumps(recipe, indent=1, ensure_ascii=False) + "\n", encoding="utf-8")


def read_recipe(path: Path) -> Wishes:
    """The wishes that a recipe holds.

    Raises
    ------
    ImportingError
        Where it is no recipe.
    """
    try:
        if path.stat().st_size > _MOST_BYTES:
            raise _no_recipe()
        held = json.loads(path.read_text(encoding="utf-8"))
    except OSError as error:
        raise ImportingError(say("there is no such recipe"), say("check the name and the folder")) from error
    except (ValueError, RecursionError) as error:
        raise _no_recipe() from error
    if not isinstance(held, dict) or held.get("schema") != SCHEMA:
        raise _no_recipe()
    try:
        return _wishes(held)
    except (TypeError, ValueError, AttributeError, OverflowError) as error:
        raise _no_recipe() from error


def _wishes(held: dict[str, Any]) -> Wishes:
    def number(key: str) -> float | None:
        value = held.get(key)
        return None if value is None else float(value)

    time, step = held.get("time_column"), held.get("step")
    return Wishes(
        channels={str(name): Role(role) for name, role in held.get("channels", {}).items()},
        time_column=None if time is None else str(time),
        interval_s=number("sample_interval_s"),
        units={str(name): str(unit) for name, unit in held.get("units", {}).items()},
        full_scale_v=number("full_scale_v"),
        step=None if step is None else Step(step),
        resample=held.get("resample") is True,
        attributes={str(key): str(value) for key, value in held.get("attributes", {}).items()},
    )


def _no_recipe() -> ImportingError:
    return ImportingError(say("it is no recipe for tables"), say("make one with --keep-recipe"))
