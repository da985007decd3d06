"""Where a sensor sits, as far as its capture states it: cured can only be what sits where it sat before."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass

from analysis.captures.known_words import known_word
from analysis.captures.model import Capture, Role
from analysis.wording import Wording, say

_SIDES = {"left": "left", "right": "right", "links": "left", "rechts": "right"}


@dataclass(frozen=True, slots=True)
class Position:
    """What a capture states of the place of its sensor; empty where it states nothing.

    Parameters
    ----------
    mounting : str
        Where in the car: ``"rear left"``.
    sensor, part_number : str
        What sits there.
    vehicle, registration, vin : str
        Which car.
    """

    mounting: str = ""
    sensor: str = ""
    part_number: str = ""
    vehicle: str = ""
    registration: str = ""
    vin: str = ""

    @property
    def side(self) -> str:
        """``"left"``, ``"right"``, or empty where the mounting names neither, or both."""
        named = {_SIDES[word] for word in _words(self.mounting) if word in _SIDES}
        return next(iter(named)) if len(named) == 1 else ""

    @property
    def axle(self) -> tuple[str, ...]:
        """The words of the mounting without its side."""
        return tuple(word for word in _words(self.mounting) if word not in _SIDES)


def position_of(capture: Capture, track: Role | None = None) -> Position:
    """Where a capture says that its sensor sits.

    Parameters
    ----------
    capture : Capture
    track : Role or None
        Where two corners stand in one capture, the channels of this track say where it sits; the capture
        where they do not, or for None.
    """
    channels = [item.channel(track) for item in capture.records] if track is not None else []
    own = (str(item.attributes.get("mounting", "")) for item in channels if item is not None)
    return Position(
        mounting=next((text for text in own if text), "") or capture.text("mounting"),
        sensor=capture.text("sensor"),
        part_number=capture.text("part_number"),
        vehicle=capture.text("vehicle"),
        registration=capture.text("registration"),
        vin=capture.text("vin"),
    )


def apart(one: Position, two: Position) -> tuple[Wording, ...]:
    """What both state, and differently, so that they are two sensors in two places; empty for none.

    A part number is another one after many a repair, and a vehicle's name is written in many ways: these two
    count only where nothing else says that it is one place, or one car.
    """
    return tuple(_apart(one, two))


def stated_as_one(one: Position, two: Position) -> bool:
    """Whether the captures say that it is one place: by the mounting, or by the car and the sensor."""
    if apart(one, two):
        return False
    return _same_words(one.mounting, two.mounting) or (
        _one_car(one, two) and _same_words(one.sensor, two.sensor)
    )


def same_mounting(one: Position, two: Position) -> bool:
    """Whether both state one mounting."""
    return _same_words(one.mounting, two.mounting)


def two_cars(one: Position, two: Position) -> bool:
    """Whether their numbers name two cars."""
    return any(_differ(_number(ours), _number(theirs)) for ours, theirs in _numbers(one, two))


def _apart(one: Position, two: Position) -> Iterator[Wording]:
    if two_cars(one, two):
        ours, theirs = next(pair for pair in _numbers(one, two) if _differ(*map(_number, pair)))
        yield say("of two cars, {one} and {two}", one=ours, two=theirs)
    elif not _one_car(one, two) and _differ(_words(one.vehicle), _words(two.vehicle)):
        yield say("of two cars, {one} and {two}", one=one.vehicle, two=two.vehicle)
    if _differ(_words(one.sensor), _words(two.sensor)):
        yield say("of two kinds, {one} and {two}", one=known_word(one.sensor), two=known_word(two.sensor))
    if _differ(sorted(_words(one.mounting)), sorted(_words(two.mounting))):
        yield say("mounted {one} and {two}", one=known_word(one.mounting), two=known_word(two.mounting))
    known = _same_words(one.mounting, two.mounting) or _one_car(one, two)
    if not known and _differ(_number(one.part_number), _number(two.part_number)):
        yield say("with part numbers {one} and {two}", one=one.part_number, two=two.part_number)


def _numbers(one: Position, two: Position) -> tuple[tuple[str, str], ...]:
    return (one.registration, two.registration), (one.vin, two.vin)


def _one_car(one: Position, two: Position) -> bool:
    if two_cars(one, two):
        return False
    return any(_number(ours) and _number(ours) == _number(theirs) for ours, theirs in _numbers(one, two))


def _same_words(one: str, two: str) -> bool:
    ours, theirs = sorted(_words(one)), sorted(_words(two))
    return bool(ours) and ours == theirs


def _differ(one: object, two: object) -> bool:
    """Whether both are stated, and differently."""
    return bool(one) and bool(two) and one != two


def _words(text: str) -> tuple[str, ...]:
    return tuple(re.findall(r"\w+", text.casefold()))


def _number(text: str) -> str:
    """A number as it is read, however it is spaced."""
    return "".join(_words(text))
