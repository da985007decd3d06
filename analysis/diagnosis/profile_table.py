"""A table of a profile's TOML, read key by key; whatever is wrong is said with its file and place."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from enum import StrEnum
from typing import Any, TypeVar

from analysis.errors import ProfileError
from analysis.intervals import Interval
from analysis.wording import say

_Choice = TypeVar("_Choice", bound=StrEnum)
_LONGEST_SHOWN = 80
_LARGEST = 1e15  # whole numbers of TOML have no end, and those of a float do


class Shown(str):
    """What stood in a profile, as a sentence quotes it: as Python writes it, and no longer than a line."""

    __slots__ = ()

    def __new__(cls, came: object) -> Shown:
        """Quote a value."""
        try:
            whole = repr(came)
        except ValueError:  # Python writes no whole number of more than 4,300 digits
            whole = "…"
        return super().__new__(cls, whole if len(whole) <= _LONGEST_SHOWN else whole[:_LONGEST_SHOWN] + "…")

    def __repr__(self) -> str:
        return str(self)


def _is_number(value: object) -> bool:
    """Whether it is a finite number of a size that something in a car can have."""
    if isinstance(value, bool) or not isinstance(value, int | float):
        return False
    return abs(value) <= _LARGEST  # which NaN and the infinities are not either


@dataclass(frozen=True, slots=True)
class ProfileTable:
    """A TOML table that knows its file and its place, so that every complaint can say both."""

    content: Mapping[str, Any]
    name: str
    prefix: str

    def error(self, key: str, rule: str, came: object) -> ProfileError:
        """File, key, rule, and what came."""
        return ProfileError(
            say(
                "{name}: {prefix}{key} must be {rule}, got {came!r}",
                name=self.name,
                prefix=self.prefix,
                key=key,
                rule=rule,
                came=Shown(came),
            ),
            say("correct it in the profile"),
        )

    def refuse_unknown(self, *known: str) -> None:
        """Refuse keys that nothing reads: a misspelt one would be ignored in silence."""
        for key in self.content:
            if key not in known:
                raise self.error(key, say("one of {known}", known=", ".join(known)), key)

    def table(self, key: str) -> ProfileTable:
        """A table below this one."""
        value = self._get(key, say("a table"))
        if not isinstance(value, dict):
            raise self.error(key, say("a table"), value)
        return ProfileTable(value, self.name, f"{self.prefix}{key}.")

    def text(self, key: str) -> str:
        """Text that says something."""
        value = self._get(key, say("text"))
        if not isinstance(value, str) or not value.strip():
            raise self.error(key, say("text"), value)
        return value

    def truth(self, key: str) -> bool:
        """A bare true or false."""
        value = self._get(key, say("true or false"))
        if not isinstance(value, bool):
            raise self.error(key, say("true or false"), value)
        return value

    def choice(self, key: str, kind: type[_Choice]) -> _Choice:
        """One of a few words."""
        words = [item.value for item in kind]
        value = self._get(key, say("one of {known}", known=", ".join(words)))
        if value not in words:
            raise self.error(key, say("one of {known}", known=", ".join(words)), value)
        return kind(value)

    def number(
        self,
        key: str,
        *,
        above: float | None = None,
        least: float | None = None,
        at_most: float | None = None,
    ) -> float:
        """A finite number, within bounds where they are given."""
        value = self._get(key, say("a number"))
        if not _is_number(value):
            raise self.error(key, say("a number"), value)
        if above is not None and not value > above:
            raise self.error(key, say("above {above:g}", above=above), value)
        if least is not None and value < least:
            raise self.error(key, say("at least {least:g}", least=least), value)
        if at_most is not None and value > at_most:
            raise self.error(key, say("at most {at_most:g}", at_most=at_most), value)
        return float(value)

    def range(self, key: str) -> Interval:
        """Two ascending numbers."""
        value = self._get(key, say("two ascending numbers"))
        numbers = isinstance(value, list) and all(_is_number(item) for item in value)
        if not numbers or len(value) != 2 or value[0] > value[1]:
            raise self.error(key, say("two ascending numbers"), value)
        return Interval(float(value[0]), float(value[1]))

    def points(self, key: str) -> tuple[tuple[float, float], tuple[float, float]]:
        """Two pairs of numbers."""
        value = self._get(key, say("two pairs of numbers"))
        pairs = value if isinstance(value, list) and len(value) == 2 else []
        numbers = [item for pair in pairs if isinstance(pair, list) and len(pair) == 2 for item in pair]
        if len(numbers) != 4 or not all(_is_number(item) for item in numbers):
            raise self.error(key, say("two pairs of numbers"), value)
        return (float(numbers[0]), float(numbers[1])), (float(numbers[2]), float(numbers[3]))

    def _get(self, key: str, rule: str) -> Any:
        if key not in self.content:
            raise self.error(key, rule, say("nothing"))
        return self.content[key]
