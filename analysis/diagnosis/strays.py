"""Disturbances of the signal: what weight each has, and how much of it no place explains."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from analysis.captures.model import Role, Step
from analysis.diagnosis.places import Place
from analysis.diagnosis.stillness import left_alone
from analysis.diagnosis.studies import Studies, Study
from analysis.signals.events import Disturbance

CERTAIN_PLACE = 2.0
"""Log odds from which a place explains the disturbances in it."""

BESIDE_PERCENT = 1.5
"""A disturbance this close to a place belongs to it: the path is unsure inside a bad spot."""

NEXT_TO_NOTHING = 1.0
"""Weight of one plain disturbance: less of it in all says little of where disturbances gather."""

SPARK_S = 0.001
"""An ignition spark is over in this time; a contact that opens seldom closes sooner."""

LEAST_DIRECTED = 6
"""Disturbances from which on their directions say something together."""

MOST_UNDIRECTED = 0.5
"""Weight of disturbances without a direction, however many."""

DEEP_PERCENT = 3.0
"""A contact that opens seldom moves the signal by less than this share of the feed."""

LASTING_S = 0.002
"""Supply disturbances shorter than this are interference, which every probe picks up."""


@dataclass(frozen=True, slots=True)
class Strays:
    """Weight of the disturbances of the signal that no place explains.

    Parameters
    ----------
    moving, resting : float
        While the arm moved, and while it was left alone.
    deepest_percent : float
        How deep the deepest went, in % of the feed.
    gathered : float
        Share of the weight of all disturbances that lies in or beside the certain places and the most certain
        one, however sure that is; little where there is next to no weight at all.
    """

    moving: float
    resting: float
    deepest_percent: float
    gathered: float

    def without(self, told: float) -> Strays:
        """With this share of the weight told by something else."""
        left = 1.0 - told
        return Strays(self.moving * left, self.resting * left, self.deepest_percent * left, self.gathered)


def strays_of(studies: Studies, places: Sequence[tuple[Role, Place]]) -> Strays:
    """Weigh the disturbances outside all places.

    Parameters
    ----------
    studies : Studies
    places : sequence of (Role, Place)
        Of all tracks, most certain first.

    Returns
    -------
    Strays
    """
    off, rest, inside, total = _Openings(), _Openings(), 0.0, 0.0
    certain = _certain(places)
    likely = certain if certain else places[:1]
    for item in studies.every:
        # A record of which nobody says what it is, and in which the arm did not move, is one at rest.
        named = left_alone(item.record) and item.record.step is not Step.HOLD
        still = named or (item.record.step is None and not item.swept)
        if not still and not item.swept:
            continue
        for role in item.surveys:
            events = item.disturbances(role)
            beside = BESIDE_PERCENT + (item.cells.step_percent[role] if still else 0.0)
            gathered, told = (_within(events, some, role, beside) for some in (likely, certain))
            for event, near, known in zip(events, gathered, told, strict=True):
                weight = substance(event, item, role)
                total += weight
                inside += weight * float(near)
                if weight > 0.0 and not known:
                    (rest if still else off).add(event, weight)
    deepest = max(off.depth, rest.depth)
    return Strays(off.weight(), rest.weight(), deepest, gathered=inside / (total + NEXT_TO_NOTHING))


def _certain(places: Sequence[tuple[Role, Place]]) -> Sequence[tuple[Role, Place]]:
    """The places that explain the disturbances in them."""
    return [item for item in places if item[1].log_odds >= CERTAIN_PLACE]


def _within(
    events: Sequence[Disturbance],
    places: Sequence[tuple[Role, Place]],
    role: Role,
    beside_percent: float = BESIDE_PERCENT,
) -> NDArray[np.bool_]:
    """Which disturbances of a track lie in or beside one of these places, shape (n_events,)."""
    travel_percent = np.array([event.travel_percent for event in events])
    within = np.zeros(travel_percent.shape, dtype=np.bool_)
    for track, place in places:
        if track is role:
            around = place.travel.widened(beside_percent)
            within |= (travel_percent >= around.start) & (travel_percent < around.stop)
    return within


def stray_weight(item: Study, places: Sequence[tuple[Role, Place]]) -> float:
    """Weight of one record's disturbances that no certain place explains."""
    certain, weight = _certain(places), 0.0
    for role in item.surveys:
        events = item.disturbances(role)
        told = _within(events, certain, role)
        weight += sum(
            substance(event, item, role) for event, known in zip(events, told, strict=True) if not known
        )
    return weight


def substance(event: Disturbance, item: Study, role: Role) -> float:
    """Weight of a disturbance, 0 to 1: a lone sample that hardly leaves the floor is next to nothing."""
    samples = event.cells * item.cells.samples_per_cell
    lasting = min(1.0, (samples - 1) / 4.0) if event.cells > 1 or item.cells.samples_per_cell == 1 else 0.25
    lasting *= share((event.cells * item.cells.cell_s - SPARK_S) / LASTING_S)
    # An open contact pulls towards one rail; what goes both ways is picked up from outside.
    one_way = 0.3 if event.shape == "ringing" else 1.0
    floor = item.surveys[role].floor.typical()
    plain = share(abs(event.depth) / floor - 1.0)
    return one_way * lasting * plain * min(1.0, abs(event.depth) / DEEP_PERCENT) ** 2


def share(value: float) -> float:
    """A value, no less than 0 and no more than 1."""
    return min(max(value, 0.0), 1.0)


class _Openings:
    """Disturbances of one kind of record, and whether they pull to one level as an open contact does."""

    def __init__(self) -> None:
        self.rows: list[tuple[float, float, float]] = []
        self.deepest = 0.0

    def add(self, event: Disturbance, weight: float) -> None:
        self.rows.append((event.travel_percent, float(np.sign(event.depth)), weight))
        self.deepest = max(self.deepest, weight * abs(event.depth))

    @property
    def depth(self) -> float:
        """How deep the deepest went, in %; less where the directions agree with no open contact."""
        total = sum(row[2] for row in self.rows)
        return self.deepest * self.weight() / total if total > 0.0 else 0.0

    def weight(self) -> float:
        """Sum of the weights, less where the directions agree with no level of an open contact.

        From above its open level the signal drops, from below it rises; interference does either anywhere.
        """
        if len(self.rows) < LEAST_DIRECTED:
            return sum(row[2] for row in self.rows)
        _, sign, weight = np.array(sorted(self.rows)).T
        rising, falling = np.where(sign > 0, weight, 0.0), np.where(sign < 0, weight, 0.0)
        total = float(weight.sum())
        # Rising below the level and falling above it, for a level before, between and behind all places.
        agreeing = np.concatenate([[0.0], np.cumsum(rising)]) + falling.sum()
        agreeing -= np.concatenate([[0.0], np.cumsum(falling)])
        share = float(agreeing.max()) / total
        return max(total * float(np.clip((share - 0.6) / 0.3, 0.0, 1.0)), min(0.1 * total, MOST_UNDIRECTED))
