"""The records of a capture, each reduced and followed once; everything the hypotheses look at."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field, replace

import numpy as np
from numpy.typing import NDArray

from analysis.captures.model import Capture, Record, Role, Step
from analysis.diagnosis.one_arm import on_one_arm
from analysis.diagnosis.profile_model import SensorProfile
from analysis.diagnosis.splitting import ONE_WIRE, split_by_wire
from analysis.diagnosis.stillness import left_alone, stands
from analysis.progress import Tick, ignore, part
from analysis.signals.cells import LEAST_FEED_V, Feed, RecordCells, reduce_record
from analysis.signals.companion import Traced, helped, relation_of, steadier_is_second
from analysis.signals.events import Disturbance, channel_disturbances
from analysis.signals.facts import TrackSurvey
from analysis.signals.floor import RecordSurvey
from analysis.signals.motion import Motion, follow
from analysis.signals.open_level import find_open_level
from analysis.signals.outline import Outline, outline
from analysis.signals.roughness import survey_record, survey_track
from analysis.signals.steadiness import Steadiness, steadiness
from analysis.signals.thinning import thinned

CALM_FACTOR = 1.5
"""An arm at rest is no noisier than a moving one, give or take."""

MOST_NOISE = 8.0
"""Hum may come with the hand that holds a probe; noise of a record at rest beyond this many times that of a
sweep is a bad contact."""

STEP_RTOL = 0.1
"""Each record measures its own feed, so that equal steps in volts differ a little in %."""

LEAST_SWEEP_PERCENT = 4.0
"""An arm that moved less than this was not swept."""

TRACKS = (Role.SIGNAL, Role.SECOND_SIGNAL)
WATCHED = (Role.GROUND, Role.REFERENCE, Role.SUPPLY)


@dataclass(frozen=True, slots=True)
class Study:
    """One record, reduced and followed.

    Parameters
    ----------
    record : Record
        As recorded, or a span of it.
    cells : RecordCells
        Volts and travel in cells; of the volts the means alone, since `steady` and `travel` tell how far
        they reach.
    steady : mapping of Role to Steadiness
        Ground, reference and supply, where recorded.
    surveys : mapping of Role to RecordSurvey
        Signal and second signal, where recorded and followed.
    swept : bool
        Whether the arm moved.
    """

    record: Record
    cells: RecordCells
    steady: Mapping[Role, Steadiness]
    surveys: Mapping[Role, RecordSurvey] = field(default_factory=dict)
    swept: bool = False

    def disturbances(self, role: Role) -> tuple[Disturbance, ...]:
        """Disturbances of a channel (volts) or of a track (%), in order of time."""
        if role in self.surveys:
            return self.surveys[role].disturbances
        if role not in self.steady:
            return ()
        signal = self.surveys.get(Role.SIGNAL)
        return channel_disturbances(
            self.steady[role],
            cell_s=self.cells.cell_s,
            start_s=self.cells.start_s,
            travel_percent=None if signal is None else signal.motion.travel_percent,
        )


@dataclass(frozen=True, slots=True)
class Studies:
    """All records of a capture, and what they say together.

    Parameters
    ----------
    capture : Capture
    profile : SensorProfile
    feed : Feed
        Reference and ground for the records that did not watch them.
    every : tuple of Study
        In the capture's order, records of the recorder's zero left out: they show nothing of the sensor.
    tracks : mapping of Role to TrackSurvey
        All crossings of all swept records.
    feed_measured : frozenset of Role
        Which of reference and ground the capture measured at all.
    """

    capture: Capture
    profile: SensorProfile
    feed: Feed
    every: tuple[Study, ...]
    tracks: Mapping[Role, TrackSurvey]
    feed_measured: frozenset[Role]

    @property
    def swept(self) -> tuple[Study, ...]:
        """Records in which the arm moved."""
        return tuple(item for item in self.every if item.swept)

    def with_channel(self, role: Role) -> tuple[Study, ...]:
        """Records that hold a channel of this role."""
        return tuple(item for item in self.every if role in item.cells.volts)


def study(capture: Capture, profile: SensorProfile, *, tick: Tick = ignore) -> Studies:
    """Reduce and follow every record of a capture.

    Parameters
    ----------
    capture : Capture
        With at least one record.
    profile : SensorProfile
        Gives the nominal supply where no reference was recorded.
    tick : Tick
        Told after every block of samples.

    Returns
    -------
    Studies

    Raises
    ------
    CaptureError
        Where the file is damaged or gone.
    Cancelled
        Where `tick` says so.
    """
    studies, feed, measured = _reduced(capture, profile, tick)
    motions = _motions(studies, {role: _traced(studies, role) for role in TRACKS})
    for role in TRACKS:
        studies = _all_surveyed(studies, motions[role], role, feed)
    tick(1.0)
    return Studies(capture, profile, feed, studies, _tracks(studies, feed), measured)


def _reduced(
    capture: Capture, profile: SensorProfile, tick: Tick
) -> tuple[tuple[Study, ...], Feed, frozenset[Role]]:
    """Every record as cells, with the feed to reckon with and which of its wires were measured."""
    records, whole = _split(capture.records)
    records = [item for item in records if len(item) and any(channel.role for channel in item.channels)]
    records = [item for item in records if item.step is not Step.ZERO]
    feed, measured = measured_feed(records, profile, tick=part(tick, 0.0, 0.1))
    total = sum(len(item) for item in records) or 1
    studies, done = [], 0
    for record in records:
        share = part(tick, 0.1 + 0.8 * done / total, 0.1 + 0.8 * (done + len(record)) / total)
        if whole is None or feed != Feed():
            studies.append(_steadied(record, reduce_record(record, feed, tick=share)))
        else:  # a lone record that was not split is reduced already, with the feed that stands in by default
            studies.append(_steadied(record, whole))
        done += len(record)
    return tuple(studies), feed, measured


def _split(records: Sequence[Record]) -> tuple[list[Record], RecordCells | None]:
    """Records, a lone one of one channel split by the wire that the probe was held to.

    Where it was held to one only, its cells come along, so that nobody need reduce it again.
    """
    if (
        len(records) != 1
        or len(records[0].channels) != 1
        or records[0].step not in (None, Step.SWEEP, Step.ROAD)
    ):
        return list(records), None
    record = records[0]
    if record.channels[0].role is not Role.SIGNAL or not len(record) or record.attributes.get(ONE_WIRE):
        return list(records), None
    cells = reduce_record(record, Feed())
    parts = split_by_wire(record, cells.volts[Role.SIGNAL], cells.cell_s)
    return list(parts), cells if len(parts) == 1 else None


def measured_feed(
    records: Sequence[Record], profile: SensorProfile, *, tick: Tick = ignore
) -> tuple[Feed, frozenset[Role]]:
    """Median reference and ground of some records, from at most a million samples each.

    Parameters
    ----------
    records : sequence of Record
        Of one capture.
    profile : SensorProfile
        Its supply is taken as the reference where none was measured, and as the whole travel of an output
        that does not go with the feed.
    tick : Tick
        Told after each of the two.

    Returns
    -------
    Feed
        For the records that did not watch them; nominal where none did.
    frozenset of Role
        Which of the two were measured at all.
    """
    found: dict[Role, float] = {}
    for role in (Role.REFERENCE, Role.GROUND):
        middles = [
            float(np.nanmedian(sample))
            for record in records
            if (channel := record.channel(role)) is not None
            and np.isfinite(sample := _some_volts(channel, len(record))).any()
        ]
        if middles:
            found[role] = float(np.median(middles))
        tick(1.0)
    fixed_v = None if profile.ratiometric else profile.supply_v
    feed = Feed(found.get(Role.REFERENCE, profile.supply_v), found.get(Role.GROUND, 0.0), fixed_v)
    return feed, frozenset(found)


def _some_volts(channel: object, length: int) -> NDArray[np.float64]:
    """Sixteen stretches of 4096 samples spread over a channel: enough for a median."""
    starts = np.unique(np.linspace(0, max(length - 4096, 0), 16).astype(int))
    return np.concatenate([channel.volts(start, min(start + 4096, length)) for start in starts])  # type: ignore[attr-defined]


def _steadied(record: Record, cells: RecordCells) -> Study:
    steady = {
        role: steadiness(cells.volts[role], cell_s=cells.cell_s, step_v=channel.step_v)
        for role in WATCHED
        if role in cells.volts and (channel := record.channel(role)) is not None
    }
    volts = {role: item.without_extremes() for role, item in cells.volts.items()}
    return Study(record, replace(cells, volts=volts), steady)


def _traced(studies: tuple[Study, ...], role: Role) -> list[Traced | None]:
    """Follow one track through all records, with the open level that they share."""
    outlines = _outlines(studies, role)
    moving = [
        drawn.cut
        for item, drawn in zip(studies, outlines, strict=True)
        if drawn is not None and not left_alone(item.record)
    ]
    open_level = find_open_level(moving)
    return [
        None
        if drawn is None
        else Traced(drawn, follow(drawn, open_level=open_level, resting=left_alone(item.record)))
        for item, drawn in zip(studies, outlines, strict=True)
    ]


def _motions(
    studies: tuple[Study, ...], traces: Mapping[Role, list[Traced | None]]
) -> dict[Role, list[Motion | None]]:
    """The motion of each track in each record; where there are two, each helps the other."""
    alone = {role: [None if item is None else item.motion for item in traces[role]] for role in TRACKS}
    first, second = (traces[role] for role in TRACKS)
    pairs = {
        index: (one, other)
        for index, (one, other) in enumerate(zip(first, second, strict=True))
        if one is not None and other is not None and on_one_arm(studies[index].record)
    }
    moving = [pair for index, pair in pairs.items() if not left_alone(studies[index].record)]
    relation = relation_of(moving)
    if relation is None:
        return alone
    believed = steadier_is_second(moving)
    for index, (one, other) in pairs.items():
        alone[TRACKS[0]][index] = helped(one, other, relation, other_is_steadier=believed)
        alone[TRACKS[1]][index] = helped(other, one, relation.inverted(), other_is_steadier=not believed)
    return alone


def _outlines(studies: Sequence[Study], role: Role) -> list[Outline | None]:
    """Outline one track in all records; those in which the arm moved say how much noise the others have."""
    found: dict[int, Outline | None] = {}
    for index, item in sorted(enumerate(studies), key=lambda pair: left_alone(pair[1].record)):
        still = left_alone(item.record)
        moving = [
            drawn.noise.typical()
            for other, drawn in found.items()
            if still and drawn is not None and _moving_alike(item, studies[other], role)
        ]
        most = MOST_NOISE * max(moving, default=float("inf"))
        found[index] = _outline(item, role, most)
    return [found[index] for index in range(len(studies))]


def _outline(item: Study, role: Role, most_noise_percent: float) -> Outline | None:
    if role not in item.cells.travel:
        return None
    return outline(
        item.cells.travel[role],
        record=item.record.name,
        start_s=item.cells.start_s,
        cell_s=item.cells.cell_s,
        step_percent=item.cells.step_percent[role],
        most_noise_percent=most_noise_percent,
    )


def _moving_alike(item: Study, other: Study, role: Role) -> bool:
    """Whether the arm may have moved in another record that was recorded as this one was."""
    if left_alone(other.record) or not (role in item.cells.travel and role in other.cells.travel):
        return False
    steps = item.cells.step_percent[role], other.cells.step_percent[role]
    return item.cells.cell_s == other.cells.cell_s and bool(np.isclose(*steps, rtol=STEP_RTOL))


def _all_surveyed(
    studies: Sequence[Study], motions: Sequence[Motion | None], role: Role, feed: Feed
) -> tuple[Study, ...]:
    """Survey one track in all records; those in which the arm moved say how calm one at rest must be."""
    done: dict[int, Study] = {}
    pairs = list(enumerate(zip(studies, motions, strict=True)))
    for index, (item, motion) in sorted(pairs, key=lambda pair: left_alone(pair[1][0].record)):
        if motion is not None:
            most_percent = _most_percent(item, role, done.values())
            done[index] = _surveyed(item, motion, role, feed, most_percent)
    return tuple(done.get(index, item) for index, item in enumerate(studies))


def _most_percent(item: Study, role: Role, done: Iterable[Study]) -> float:
    """What the floor of a record at rest may be, by those of the moving ones that were recorded alike."""
    alike = [other.surveys[role].floor.typical() for other in done if _moving_alike(item, other, role)]
    still = left_alone(item.record) and alike
    return CALM_FACTOR * max(alike) if still else float("inf")


def _surveyed(item: Study, motion: Motion, role: Role, feed: Feed, most_percent: float) -> Study:
    survey = survey_record(
        motion,
        cell_s=item.cells.cell_s,
        step_percent=item.cells.step_percent[role],
        other_percent=_others_percent(item, feed),
        most_percent=most_percent,
    )
    swept = item.swept or (not left_alone(item.record) and moved_far(motion))
    return Study(item.record, item.cells, item.steady, {**item.surveys, role: survey}, swept)


def moved_far(motion: Motion) -> bool:
    """Whether the arm went as far as a sweep goes."""
    reach = thinned(motion.travel_percent)[thinned(motion.truthful)]
    return bool(len(reach)) and float(np.ptp(np.quantile(reach, [0.005, 0.995]))) >= LEAST_SWEEP_PERCENT


def _others_percent(item: Study, feed: Feed) -> NDArray[np.float32] | None:
    """Largest disturbance of ground and reference in or beside each cell, in % of the feed."""
    levels = [
        np.where(steady.disturbed, steady.departure_v, np.float32(0.0))
        for role, steady in item.steady.items()
        if role in (Role.GROUND, Role.REFERENCE)
    ]
    if not levels:
        return None
    worst = np.maximum.reduce(levels)
    beside = worst.copy()
    np.maximum(beside[1:], worst[:-1], out=beside[1:])
    np.maximum(beside[:-1], worst[1:], out=beside[:-1])
    span_v = max(feed.whole_travel_v, LEAST_FEED_V)
    return np.asarray(beside * np.float32(100.0 / span_v))


_NODES_AT_REST = 4096
"""Of an arm that stands still few nodes tell as much as many; a long hold would keep megabytes of them."""


def _tracks(studies: Sequence[Study], feed: Feed) -> dict[Role, TrackSurvey]:
    traced = {role: [item for item in studies if role in item.surveys] for role in TRACKS}
    return {
        role: replace(
            survey_track([item.surveys[role] for item in own if item.swept], role, fixed_v=feed.fixed_v),
            resting=tuple(
                path.coarser(_NODES_AT_REST)
                for item in own
                if stands(item.record, path := item.surveys[role].motion.path)
            ),
        )
        for role, own in traced.items()
        if own
    }
