"""How two sides belong together, as it may be told: as was asked, unless the captures state otherwise."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from analysis.captures.known_words import known_word
from analysis.comparison.model import Relation
from analysis.comparison.positions import Position, apart, same_mounting, stated_as_one
from analysis.wording import Wording, joined, say

NAMES: Mapping[Relation, tuple[Wording, Wording]] = {
    Relation.BEFORE_AFTER: (say("before"), say("after")),
    Relation.LEFT_RIGHT: (say("on the left"), say("on the right")),
    Relation.KNOWN_GOOD: (say("on the known good one"), say("on this one")),
    Relation.SIDE_BY_SIDE: (say("on this one"), say("on the other one")),
}
"""Where each side is, as an adverb."""

TITLES: Mapping[Relation, tuple[Wording, Wording]] = {
    Relation.BEFORE_AFTER: (say("Before"), say("After")),
    Relation.LEFT_RIGHT: (say("Left"), say("Right")),
    Relation.KNOWN_GOOD: (say("Known good"), say("This one")),
    Relation.SIDE_BY_SIDE: (say("This one"), say("The other one")),
}
"""What to write above each side."""


@dataclass(frozen=True, slots=True)
class Pairing:
    """How the two sides are told of.

    Parameters
    ----------
    relation : Relation
    turned : bool
        Whether the names change places: the first side is the right one.
    """

    relation: Relation
    turned: bool = False

    @property
    def names(self) -> tuple[Wording, Wording]:
        """Where each side is, as an adverb."""
        return self._placed(NAMES[self.relation])

    @property
    def titles(self) -> tuple[Wording, Wording]:
        """What to write above each side."""
        return self._placed(TITLES[self.relation])

    def _placed(self, pair: tuple[Wording, Wording]) -> tuple[Wording, Wording]:
        return (pair[1], pair[0]) if self.turned else pair


def pairing_of(asked: Relation, one: Position, two: Position) -> Pairing:
    """How two sides may be told of.

    Parameters
    ----------
    asked : Relation
        How whoever compares them takes them to belong together.
    one, two : Position
        What the captures state.

    Returns
    -------
    Pairing
        Never before and after for two places, never left and right for one: as two corners of an axle where
        they are that, else side by side.
    """
    corners = {one.side, two.side} == {"left", "right"}
    if asked is Relation.BEFORE_AFTER and apart(one, two):
        axle = corners and one.axle == two.axle and len(apart(one, two)) == 1
        return Pairing(Relation.LEFT_RIGHT, one.side == "right") if axle else Pairing(Relation.SIDE_BY_SIDE)
    if asked is Relation.LEFT_RIGHT and same_mounting(one, two):
        return Pairing(Relation.SIDE_BY_SIDE)
    return Pairing(asked, asked is Relation.LEFT_RIGHT and corners and one.side == "right")


def why_not(asked: Relation, one: Position, two: Position) -> Wording | None:
    """Why two sides are not told of as was asked; None where they are."""
    if asked is Relation.BEFORE_AFTER and (parts := apart(one, two)):
        return say(
            "These are two different sensors, {what}: not one before and after a repair.",
            what=joined(parts, ", "),
        )
    if asked is Relation.LEFT_RIGHT and same_mounting(one, two):
        return say(
            "Both are stated to be mounted {mounting}: not left and right.", mounting=known_word(one.mounting)
        )
    return None


def taken_as_one(relation: Relation, one: Position, two: Position) -> Wording | None:
    """That nothing states that before and after are of one place; None where something does."""
    if relation is not Relation.BEFORE_AFTER or stated_as_one(one, two):
        return None
    return say("That both are of one and the same sensor position is taken as given: it is not stated.")
