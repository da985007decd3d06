"""What a preview shows of a source: frozen values that a window draws and a test compares."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from pathlib import Path

import numpy as np
from numpy.typing import NDArray

from analysis.captures.model import Role
from analysis.importing.behaviour import StepGuess
from analysis.importing.choices import TextChoices
from analysis.importing.model import Dataset
from analysis.importing.needs import Need, Problem
from analysis.importing.recipe import Recipe
from analysis.importing.shape import Shape
from analysis.importing.wishes import Wishes
from analysis.wording import Wording


class TimeSource(StrEnum):
    """Where the time of the rows comes from."""

    COLUMN = "column"
    IN_FILE = "in_file"  # an interval or a rate beside the columns
    STATED = "stated"  # by the technician or a recipe
    UNKNOWN = "unknown"


@dataclass(frozen=True, slots=True)
class TimeSeen:
    """What is known of the time of the rows.

    Parameters
    ----------
    source : TimeSource
        Where it comes from.
    sentence : Wording
        All of it for the technician.
    place : int or None
        The column of times among `Preview.columns`.
    interval_s : float or None
        Seconds between rows; None where that is unknown.
    even : bool
        Whether the rows may be taken as evenly spaced.
    off_intervals : float
        How far the worst row lies off its even place, in intervals: rounding, drift and gaps together.
    gaps : int
        Places where rows are missing; each stretch between them becomes a record of its own.
    longest_gap_s : float
        The longest of them.
    """

    source: TimeSource
    sentence: Wording
    place: int | None = None
    interval_s: float | None = None
    even: bool = True
    off_intervals: float = 0.0
    gaps: int = 0
    longest_gap_s: float = 0.0

    @property
    def rate_hz(self) -> float | None:
        """Rows a second; None where that is unknown."""
        return None if self.interval_s is None else 1.0 / self.interval_s


@dataclass(frozen=True, slots=True)
class ColumnSeen:
    """A column of numbers as understood.

    Parameters
    ----------
    name, unit : str
        As in the file, or as wished for.
    cell : int
        Its place among the cells of `Preview.lines`.
    is_time : bool
        Whether it holds the times.
    role : Role or None
        None for the times, and where it would be left out.
    reason : Wording
        Why.
    factor : float
        Volts of one unit, or seconds.
    offset : float
        Volts that are added to that.
    low, high : float
        Least and greatest finite sample in volts, or seconds; NaN where there is none.
    missing, over_range : int
        Samples that are missing, and that are infinite.
    minimum, maximum : ndarray, shape (n_picture,)
        Extremes of equal stretches of rows, for a picture: in volts, or seconds.
    """

    name: str
    unit: str
    cell: int
    is_time: bool
    role: Role | None
    reason: Wording
    factor: float
    low: float
    high: float
    missing: int
    over_range: int
    minimum: NDArray[np.float64]
    maximum: NDArray[np.float64]
    offset: float = 0.0


@dataclass(frozen=True, slots=True)
class Preview:
    """A source as it would be brought in.

    Parameters
    ----------
    path : Path
        The source.
    kind : str
        As in `Table`.
    size_bytes : int
        Of the file.
    rows : int
        Rows that were looked at.
    whole : bool
        Whether these are all.
    lines : tuple of tuple of str
        The first lines as cells of text, headings among them; of a file that is no text, its first numbers.
    head_lines : int
        How many of these stand before the first sample.
    numbers : ndarray, shape (n_first, n_columns)
        The first rows as numbers, in the columns' own units.
    columns : tuple of ColumnSeen
        Columns of numbers; none where no table was found.
    time : TimeSeen
        Where the time comes from.
    step : StepGuess
        What it seems to have been taken for.
    datasets : tuple of Dataset
        Arrays to choose among, where a file holds named ones.
    blocks : int
        How many of them stand one below the other in a table; 1 of one course.
    text : TextChoices
        How a text was read, every choice filled in; nothing chosen for every other kind.
    wishes : Wishes
        Everything that is decided already, by the caller or by a recipe; wishes for columns that are not
        there are dropped.
    shape : Shape or None
        What a recipe goes by; None where no table was found.
    recipe : Recipe or None
        The kept one that fits, and was followed.
    problems : tuple of Problem
        What has to be said before it can be brought in; empty where nothing has.
    notes : tuple of str
        What was assumed or left out.
    """

    path: Path
    kind: str
    size_bytes: int
    rows: int
    whole: bool
    lines: tuple[tuple[str, ...], ...]
    head_lines: int
    numbers: NDArray[np.float64]
    columns: tuple[ColumnSeen, ...]
    time: TimeSeen
    step: StepGuess
    text: TextChoices
    wishes: Wishes
    shape: Shape | None
    recipe: Recipe | None
    problems: tuple[Problem, ...]
    notes: tuple[str, ...]
    datasets: tuple[Dataset, ...] = ()
    blocks: int = 1

    @property
    def ready(self) -> bool:
        """Whether it can be brought in as it stands."""
        return not self.problems

    def needs(self, need: Need) -> bool:
        """Whether something of that kind has to be said first."""
        return any(item.need is need for item in self.problems)
