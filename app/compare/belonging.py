"""How the two sides of Compare belong together, as their captures state it, and what that rules out."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from analysis.captures.model import Role
from analysis.comparison.model import Relation
from analysis.comparison.pairing import Pairing, pairing_of, why_not
from analysis.comparison.positions import Position, position_of, stated_as_one
from analysis.comparison.together import Taken, why_not_together
from analysis.diagnosis.profiles import load_profile
from analysis.wording import Wording
from app.compare.side import CompareSide


def pairing(asked: Relation, sides: Sequence[CompareSide]) -> Pairing:
    """How both sides are told of; as was asked while there are not two."""
    stated = positions(sides)
    return pairing_of(asked, *stated) if stated is not None else Pairing(asked)


def ruled_out(sides: Sequence[CompareSide]) -> Mapping[Relation, Wording]:
    """What both sides cannot be, each with the reason."""
    stated = positions(sides)
    if stated is None:
        return {}
    asked = (Relation.BEFORE_AFTER, Relation.LEFT_RIGHT)
    reasons = {relation: why_not(relation, *stated) for relation in asked}
    return {relation: reason for relation, reason in reasons.items() if reason is not None}


def on_one_place(sides: Sequence[CompareSide]) -> bool:
    """Whether both are stated to be of one sensor position and part: then neither is mounted otherwise."""
    stated = positions(sides)
    if stated is None or not stated_as_one(*stated):
        return False
    parts = {" ".join(item.part_number.casefold().split()) for item in stated} - {""}
    return len(parts) < 2 and sides[0].track is sides[1].track


def why_no_corners(sides: Sequence[CompareSide]) -> Wording | None:
    """Why both sides are not two corners recorded together; None where nothing stands against it."""
    taken = [_taken(side, position) for side, position in zip(sides, positions(sides) or (), strict=False)]
    if len(taken) < 2 or taken[0] is None or taken[1] is None:
        return None
    return why_not_together(taken[0], taken[1])


def mountings(sides: Sequence[CompareSide]) -> tuple[str, str]:
    """Where each side sits, as far as it is stated; nothing while there are not two."""
    stated = positions(sides)
    return (stated[0].mounting, stated[1].mounting) if stated is not None else ("", "")


def positions(sides: Sequence[CompareSide]) -> tuple[Position, Position] | None:
    """Where each side's sensor sits, as far as it is stated; None while there are not two."""
    first, second = (side.placed for side in sides)
    if first is None or second is None:
        return None
    tracks: tuple[Role | None, Role | None] = (sides[0].track, sides[1].track)
    if tracks[0] is tracks[1]:
        tracks = (None, None)
    return position_of(first, tracks[0]), position_of(second, tracks[1])


def _taken(side: CompareSide, position: Position) -> Taken | None:
    if side.record is None or side.track is None or side.capture is None or side.findings is None:
        return None
    two_tracks = load_profile(side.findings.profile or None).second_track is not None
    return Taken(side.record, side.track, position, side.capture.text("recorder_serial"), two_tracks)
