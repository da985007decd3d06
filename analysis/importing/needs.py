"""What has to be said before a source can be brought in, and why."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass
from enum import StrEnum

from analysis.errors import ImportingError
from analysis.wording import say


class Need(StrEnum):
    """What has to be said before a source can be brought in."""

    TABLE = "table"
    TIME_COLUMN = "time_column"
    TIME_UNIT = "time_unit"
    INTERVAL = "interval"
    RESAMPLE = "resample"
    FULL_SCALE = "full_scale"
    ROLES = "roles"
    BLOCKS = "blocks"
    UNIT = "unit"


@dataclass(frozen=True, slots=True)
class Problem:
    """Why a source cannot be brought in as it stands.

    Parameters
    ----------
    need : Need
        What would help.
    problem, action : str
        As in `WornbandError`; the action names options of the command line.
    """

    need: Need
    problem: str
    action: str

    def error(self) -> ImportingError:
        """The same, to be raised."""
        return ImportingError(self.problem, self.action)


_PLAIN_NAME = re.compile(r"[\w.:+/\-\u00b0]+")
_NO_QUOTES = re.compile(r"[\"$`\\!%^=]")  # what a shell reads inside quotes too


def options(names: Mapping[int, str], *forms: str) -> str:
    """Options of the command line for several columns, as they can be typed.

    Parameters
    ----------
    names : mapping of int to str
        Of the columns, by place.
    *forms : str
        Each with ``{}`` for the column, as ``"--factor {}=VOLTS"``.

    Returns
    -------
    str
        A name with blanks stands in quotes, and for one that no shell takes its number.
    """
    return " ".join(form.format(_typed(place, name)) for place, name in names.items() for form in forms)


def _typed(place: int, name: str) -> str:
    if _PLAIN_NAME.fullmatch(name):
        return name
    return str(place + 1) if _NO_QUOTES.search(name) else f'"{name}"'


def no_rows_so() -> ImportingError:
    """What is said where no row is left when a table is read as somebody chose."""
    return ImportingError(
        say("no row of numbers is left when it is read so"),
        say("choose other marks and head lines, or leave them to be found out"),
    )


def unbelievable(interval_s: float) -> Problem:
    """What is said where the rows would lie nanoseconds or hours apart."""
    return Problem(
        Need.TIME_UNIT,
        say("its rows would lie {interval_s:.3g} s apart", interval_s=interval_s),
        say("say the unit of its times with --unit COLUMN=UNIT, or the sample interval"),
    )


def no_unit(name: str) -> Problem:
    """What is said where a heading names a unit that nobody knows."""
    return Problem(
        Need.TIME_UNIT,
        say("the unit of the times in {name} is not known", name=name),
        say("say it with --unit COLUMN=UNIT: s, ms, us or min"),
    )


def doubtful_unit(name: str, step: float) -> Problem:
    """What is said where whole numbers may be seconds or milliseconds."""
    return Problem(
        Need.TIME_UNIT,
        say("the times in {name} go up by {step:,.6g}, and no unit is given", name=name, step=step),
        say("say it with --unit COLUMN=UNIT: s, ms, us or min"),
    )
