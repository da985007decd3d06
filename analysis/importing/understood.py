"""How one source was understood, for the technician and for a recipe."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

from analysis.importing.behaviour import StepGuess
from analysis.importing.plan import Plan
from analysis.importing.recipe import Recipe
from analysis.importing.shape import Shape
from analysis.importing.wishes import Wishes


@dataclass(frozen=True, slots=True)
class Understood:
    """How a source was understood.

    Parameters
    ----------
    path : Path
        The source.
    columns : tuple of str
        Names of its columns.
    plan : Plan
        What became of them, with reasons.
    notes : tuple of str
        What was assumed, left out or reported.
    shape : Shape or None
        What a recipe for the next file of its kind goes by.
    recipe : Recipe or None
        The one of the technician's own that fitted and was followed.
    step : StepGuess or None
        What it seems to have been taken for; None where somebody said so.
    wishes : Wishes or None
        Everything that was decided, by the technician or by that recipe.
    """

    path: Path
    columns: tuple[str, ...]
    plan: Plan
    notes: tuple[str, ...]
    shape: Shape | None = None
    recipe: Recipe | None = None
    step: StepGuess | None = None
    wishes: Wishes | None = None
