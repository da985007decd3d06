"""The technician's own recipes: one for each shape, found again by the shape of the next file."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

from analysis.errors import ImportingError, WornbandError
from analysis.importing.choices import TextChoices
from analysis.importing.delimited import open_text
from analysis.importing.model import Table
from analysis.importing.opening import is_text, open_table
from analysis.importing.recipe import Recipe, keep_recipe, load_recipe, recipe_of
from analysis.importing.shape import Shape, shape_of
from analysis.importing.understood import Understood
from analysis.importing.wishes import Wishes, of_the_recorder, over
from analysis.own_folder import own_folder
from analysis.wording import say

_MOST_RECIPES = 500  # a workshop has a handful of recorders


@dataclass(frozen=True, slots=True)
class RecipeEntry:
    """One file of the recipes' folder.

    Parameters
    ----------
    path : Path
        The file.
    recipe : Recipe or None
        None where it cannot be used.
    problem : str
        Why; empty where it can.
    """

    path: Path
    recipe: Recipe | None
    problem: str = ""


def own_recipes_folder() -> Path:
    """Folder of the technician's own recipes; it need not exist."""
    return own_folder("recipes")


def kept_recipes(folder: Path) -> tuple[RecipeEntry, ...]:
    """All recipes of a folder, by name; those that cannot be used with the reason. Empty where it is none."""
    try:
        paths = sorted(item for item in folder.iterdir() if item.suffix == ".json")[:_MOST_RECIPES]
    except OSError:
        return ()
    return tuple(_entry(path) for path in paths)


def _entry(path: Path) -> RecipeEntry:
    try:
        return RecipeEntry(path, load_recipe(path))
    except ImportingError as error:
        return RecipeEntry(path, None, error.sentence)


def find_recipe(shape: Shape, folder: Path) -> Recipe | None:
    """The recipe for a shape that was kept last, or None.

    Parameters
    ----------
    shape : Shape
        Of a file, as `shape_of` gives it.
    folder : Path
        Of recipes; need not exist.
    """
    fitting = [
        entry.recipe
        for entry in kept_recipes(folder)
        if entry.recipe is not None and entry.recipe.shape == shape
    ]
    return max(fitting, key=lambda item: item.kept, default=None)


def open_by_recipe(path: Path, wishes: Wishes, folder: Path | None) -> tuple[Table, Wishes, Recipe | None]:
    """Open a source, read by the recipe that fits it and was kept last, should there be one.

    A recipe that says how a text is written fits a file that has its shape when it is read so: the file need
    not be understood without it.

    Parameters
    ----------
    path : Path
        The source.
    wishes : Wishes
        What is decided whatever a recipe says.
    folder : Path or None
        Of recipes; need not exist. None to follow none.

    Returns
    -------
    (Table, Wishes, Recipe or None)
        The table, everything that is decided about it, and the recipe that was followed.

    Raises
    ------
    ImportingError, CaptureError
        As `open_table` does.
    """
    recipes = [] if folder is None else [item.recipe for item in kept_recipes(folder) if item.recipe]
    for recipe in sorted(recipes, key=lambda item: item.kept, reverse=True):
        if recipe.shape is None or recipe.shape.kind != "text":
            continue
        choices = wishes.text.over(recipe.wishes.text)
        if _shape(path, choices) == recipe.shape:
            return open_table(path, choices), over(wishes, recipe.wishes), recipe
    table = open_table(path, wishes.text, wishes.datasets)
    if folder is None or table.kind == "text":
        return table, wishes, None
    for recipe in sorted(recipes, key=lambda item: item.kept, reverse=True):
        if recipe.shape is None or recipe.shape.kind != table.kind:
            continue
        by_it = table
        if recipe.wishes.datasets and not wishes.datasets:
            by_it = open_table(path, wishes.text, recipe.wishes.datasets)
        if shape_of(by_it) == recipe.shape:
            return by_it, over(wishes, recipe.wishes), recipe
        if by_it is not table:
            by_it.close()
    return table, wishes, None


def _shape(path: Path, choices: TextChoices) -> Shape | None:
    """The shape of a text that is read so; None where it cannot be."""
    try:
        table = open_text(path, choices) if is_text(path) else None
    except WornbandError:
        return None
    return None if table is None else shape_of(table)


def keep_for_shape(understood: Understood, wishes: Wishes, folder: Path) -> Path:
    """Keep what was decided about a source for the next file of its shape; an older one is replaced.

    Only what belongs to the recorder is kept (`of_the_recorder`): not the car, nor the step.

    Parameters
    ----------
    understood : Understood
        The source, as `import_capture` gave it.
    wishes : Wishes
        What was asked for.
    folder : Path
        Of recipes; made where it is missing.

    Returns
    -------
    Path
        Where it is kept.

    Raises
    ------
    ImportingError
        Where it cannot be written.
    """
    if understood.shape is None:
        raise ImportingError(say("its shape is not known"), say("import it again and keep the recipe then"))
    path = folder / f"{understood.shape.key}.json"
    try:
        folder.mkdir(parents=True, exist_ok=True)
    except OSError as error:
        raise ImportingError(
            say("the folder for recipes cannot be made"), say("check the rights of your own folder")
        ) from error
    keep_recipe(recipe_of(understood, of_the_recorder(wishes)), path)
    return path


def forget_recipe(recipe: Recipe) -> None:
    """Drop a kept recipe; nothing happens where it is gone already.

    Raises
    ------
    ImportingError
        Where it cannot be removed.
    """
    if recipe.path is None:
        return
    try:
        recipe.path.unlink(missing_ok=True)
    except OSError as error:
        raise ImportingError(
            say("the recipe cannot be removed"), say("check the rights of your own folder")
        ) from error
