"""A JSON object of the review's file, read strictly: emptied key by key, and what is left over is kept."""

from __future__ import annotations

from collections.abc import Mapping
from enum import StrEnum
from typing import Any, NoReturn, TypeVar

from analysis.errors import ReviewError
from analysis.intervals import Interval
from analysis.wording import say

DAMAGED = say("begin a new review; the file is kept aside")
"""What to do about a review's file that cannot be read."""

_Kind = TypeVar("_Kind", bound=StrEnum)


class Taken:
    """A JSON object that is emptied key by key; what is left at the end is unknown, and kept."""

    def __init__(self, stored: object, where: str) -> None:
        if not isinstance(stored, dict):
            raise ReviewError(say("{where} is no object", where=where), DAMAGED)
        self._left: dict[str, Any] = dict(stored)
        self._where = where

    def inner(self, key: str, where: str) -> Taken | None:
        """An object inside this one, to be emptied in its turn; None where it is absent."""
        return Taken(self._left.pop(key), where) if key in self._left else None

    def take(self, key: str) -> Any:
        """A value that must be there."""
        if key not in self._left:
            raise ReviewError(say("{where} lacks {key!r}", where=self._where, key=key), DAMAGED)
        return self._left.pop(key)

    def optional(self, key: str) -> Any:
        """A value, or None where it is absent."""
        return self._left.pop(key, None)

    def text(self, key: str, default: str | None = None) -> str:
        """A text; the default where it is absent and there is one."""
        if default is not None and key not in self._left:
            return default
        value = self.take(key)
        if not isinstance(value, str):
            self.refuse(key, say("a text"))
        return value

    def number(self, key: str, default: float | None = None) -> float:
        """A finite number; the default where it is absent and there is one."""
        if default is not None and key not in self._left:
            return default
        return self.as_number(key, self.take(key))

    def as_number(self, key: str, value: object) -> float:
        """A value as a finite number."""
        if isinstance(value, bool) or not isinstance(value, int | float) or abs(value) > 1e15:
            self.refuse(key, say("a number"))
        return float(value)

    def interval(self, first: str, last: str) -> Interval:
        """Two numbers in order."""
        start, stop = self.number(first), self.number(last)
        if start > stop:
            self.refuse(last, say("at or after {first!r}", first=first))
        return Interval(start, stop)

    def choice(self, key: str, kinds: type[_Kind], wanted: str) -> _Kind:
        """One word of a few."""
        word = self.text(key)
        if word not in [item.value for item in kinds]:
            self.refuse(key, wanted)
        return kinds(word)

    def list(self, key: str) -> list[Any]:
        """A list; empty where it is absent."""
        value = self._left.pop(key, [])
        if not isinstance(value, list):
            self.refuse(key, say("a list"))
        return value

    def holds(self, key: str) -> bool:
        """Whether a key is there that nobody took yet."""
        return key in self._left

    def rest(self) -> Mapping[str, Any]:
        """What nobody took."""
        return self._left

    def refuse(self, key: str, wanted: str) -> NoReturn:
        """Say that a key holds something else than it must."""
        raise ReviewError(
            say("{key!r} of {where} is not {wanted}", key=key, where=self._where, wanted=wanted), DAMAGED
        )
