"""Whether both tracks of a sensor tell one position, as its profile relates them."""

from __future__ import annotations

from collections.abc import Iterator

import numpy as np
from numpy.typing import NDArray

from analysis.captures.model import Role
from analysis.diagnosis.findings import Check
from analysis.diagnosis.judging import decided, feed_of, reading_of
from analysis.diagnosis.profile_model import Limit, SecondTrack
from analysis.diagnosis.studies import Studies, Study
from analysis.signals.several import Share, result_uncertainty
from analysis.wording import say


def track_agreement(studies: Studies) -> Iterator[Check]:
    """Largest lasting disagreement of each sweep; none where the profile relates no second track."""
    relation = studies.profile.second_track
    if relation is None:
        return
    limit = Limit(None, relation.tolerance_v, "V", relation.source, relation.hold_s)
    for item in studies.swept:
        if item.cells.travel.get(Role.SIGNAL) is None or item.cells.travel.get(Role.SECOND_SIGNAL) is None:
            continue
        gap_v = np.nan_to_num(np.abs(_gap_v(studies, item, relation)))
        where = _worst_stretch(gap_v, max(1, round(relation.hold_s / item.cells.cell_s)))
        value = float(gap_v[where].mean()) if len(gap_v) else 0.0
        unsure = result_uncertainty(_shares(studies, item, relation, where))
        yield decided(
            "track_agreement", say("Both tracks agree"), item.record.name, value, unsure, "V", limit
        )


def _volts(studies: Studies, item: Study, role: Role) -> NDArray[np.float32]:
    """A track against ground, in volts, cell by cell."""
    return np.asarray(item.cells.travel[role].mean * np.float32(studies.feed.whole_travel_v / 100.0))


def _offset_per_feed(studies: Studies, relation: SecondTrack) -> float:
    return relation.offset_v / studies.profile.supply_v


def _gap_v(studies: Studies, item: Study, relation: SecondTrack) -> NDArray[np.float32]:
    """Second track less what it should read beside the first."""
    first, second = (_volts(studies, item, role) for role in (Role.SIGNAL, Role.SECOND_SIGNAL))
    offset_v = _offset_per_feed(studies, relation) * studies.feed.whole_travel_v
    return np.asarray(second - (relation.factor * first + offset_v))


def _worst_stretch(gap_v: NDArray[np.float32], cells: int) -> slice:
    """The `cells` cells of the largest mean disagreement; all of a shorter record."""
    if len(gap_v) <= cells:
        return slice(0, len(gap_v))
    total = np.concatenate([[0.0], np.cumsum(gap_v, dtype=np.float64)])
    start = int(np.argmax(total[cells:] - total[:-cells]))
    return slice(start, start + cells)


def _shares(studies: Studies, item: Study, relation: SecondTrack, where: slice) -> tuple[Share, ...]:
    """Both tracks, the ground that both are held against, and the feed that sets their offset.

    ``gap = (second - ground) - factor (first - ground) - offset / supply (reference - ground)``
    """
    per_feed = _offset_per_feed(studies, relation) if studies.profile.ratiometric else 0.0
    ground_v = studies.feed.ground_v
    levels_v = [
        float(np.nan_to_num(_volts(studies, item, role)[where]).mean()) + ground_v
        for role in (Role.SIGNAL, Role.SECOND_SIGNAL)
    ]
    return (
        *reading_of(item, Role.SIGNAL, levels_v[0], sensitivity=-relation.factor),
        *reading_of(item, Role.SECOND_SIGNAL, levels_v[1]),
        *feed_of(studies, item, Role.REFERENCE, sensitivity=-per_feed),
        *feed_of(studies, item, Role.GROUND, sensitivity=relation.factor - 1.0 + per_feed),
    )
