"""What had to be left out of a text while it was read, counted, told, and refused where it is too much."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field

from analysis.errors import ImportingError
from analysis.wording import plural, say

_MOST_LOST, _LOST_SHARE = 20, 0.01  # lines of numbers, and their share of the rows
_MOST_SAID = 60  # letters of a line


@dataclass(slots=True)
class LeftOut:
    """What had to be left out, counted."""

    rows: int = 0
    cells: int = 0
    ragged: int = 0
    numbers: int = 0  # of the rows those that hold numbers all the same
    number: str = ""  # the first of them
    examples: list[str] = field(default_factory=list)

    def see_numbers(self, cells: Sequence[str]) -> None:
        """A line that is no row: it may be one all the same, written in another way."""
        told = [cell for cell in cells if cell.strip()]
        if len(told) > 1 and all(any(map(str.isdigit, cell)) for cell in told):
            self.numbers += 1
            self.number = self.number or "; ".join(told)[:_MOST_SAID]

    def check(self, rows: int) -> None:
        """Refuse a table of which much would be lost without a word."""
        if self.numbers > max(_MOST_LOST, _LOST_SHARE * rows):
            raise ImportingError(
                say(
                    "{count:,} of its lines hold numbers and cannot be read as the others are; the first is"
                    " {line!r}",
                    count=self.numbers,
                    line=self.number,
                ),
                say("say how it is written with --thousands, --decimal or --delimiter"),
            )

    def notes(self) -> list[str]:
        """Sentences for the technician."""
        said: list[str] = []
        if self.rows:
            said.append(
                plural("{count} line is no row of samples and was left out",
                       "{count:,} lines are no rows of samples and were left out", count=self.rows)
            )  # fmt: skip
        if self.ragged:
            said.append(
                plural("{count} row is cut short: what it lacks is missing",
                       "{count:,} rows are cut short: what they lack is missing", count=self.ragged)
            )  # fmt: skip
        if self.cells:
            said.append(
                plural("{count} cell is no number and counts as missing ({example})",
                       "{count:,} cells are no numbers and count as missing (the first is {example})",
                       count=self.cells, example=self.examples[0])
            )  # fmt: skip
        return said
