"""Was it measured at all? A measurement problem outranks every fault of the vehicle.

Each test looks for one way in which a capture is no measurement of the sensor, and says how plainly it
shows, from 0 to 1. What the probe touched is judged by behaviour, never by wire colour.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from analysis.captures.model import Role, Step
from analysis.diagnosis.measurement_outcome import NOTHING, Outcome, known_v, ramp, signal_v
from analysis.diagnosis.probe_contact import in_the_air, slipped_off
from analysis.diagnosis.stillness import left_alone, said_to_move
from analysis.diagnosis.studies import Studies, Study
from analysis.signals.levels import is_regular_two_level, is_two_level
from analysis.signals.thinning import thinned
from analysis.wording import say

ASLEEP_V = 0.6
"""A reference below this is not fed: ignition off or module asleep (common practice, no source)."""

STILL_SHARE = 0.012
"""A signal that moves by less than this share of the supply, 60 mV of 5 V, does not follow a sweep."""

END_V = 0.06
"""A ground or a reference is at nought or at the supply, as far as the end of a range lets see."""

TWO_LEVEL_SAMPLES = 200_000


@dataclass(frozen=True, slots=True)
class Problem:
    """One way in which a record is no measurement of the sensor.

    Parameters
    ----------
    code : str
        ``"leads_swapped"``, ``"ac_coupling"``, ...
    record : str
        Name of the record.
    strength : float
        How plainly it shows, 0 to 1.
    text : str
        What is wrong, a clause without a full stop.
    action : str
        What to do about it.
    """

    code: str
    record: str
    strength: float
    text: str
    action: str


def find_problems(studies: Studies) -> tuple[Problem, ...]:
    """Everything that speaks against the capture as a measurement, plainest first.

    Parameters
    ----------
    studies : Studies

    Returns
    -------
    tuple of Problem
        Empty for a capture that was measured properly.
    """
    found = [problem for item in studies.every for problem in _of_record(item, studies)]
    return tuple(sorted(found, key=lambda problem: -problem.strength))


def _of_record(item: Study, studies: Studies) -> Iterator[Problem]:
    for test in _TESTS:
        strength, text, action = test(item, studies)
        if strength > 0.0:
            yield Problem(test.__name__.strip("_"), item.record.name, min(strength, 1.0), text, action)


def _no_samples(item: Study, studies: Studies) -> Outcome:
    lost = max(item.cells.missing.values(), default=0.0)
    return (
        ramp(lost, 0.5, 0.9),
        say("{lost:.0%} of the samples are missing", lost=lost),
        say("save the record again"),
    )


def _over_range(item: Study, studies: Studies) -> Outcome:
    over = max(
        (lost for role, lost in item.cells.over_range.items() if not _at_its_end(item, role, studies)),
        default=0.0,
    )
    strength = ramp(over, 0.005, 0.02)
    return (
        strength,
        say("{over:.0%} of the samples are beyond the recorder's range", over=over),
        say("choose a larger range"),
    )


def _at_its_end(item: Study, role: Role, studies: Studies) -> bool:
    """Whether a wire reads the end of the recorder's range and is good there, or as good as can be told.

    A recorder of one polarity cannot read a ground below nought, and one whose range is the supply cannot
    read a reference above it: neither is a reading of the signal.
    """
    known = known_v(item.cells.volts[role])
    if role not in (Role.GROUND, Role.REFERENCE) or not len(known):
        return False
    level = float(np.median(known))
    if role is Role.GROUND:
        return abs(level) < END_V
    return abs(level - studies.profile.supply_v) < END_V


def _leads_swapped(item: Study, studies: Studies) -> Outcome:
    volts = [known_v(series) for role, series in item.cells.volts.items() if role is not Role.GROUND]
    levels = [np.percentile(known, [2, 50]) for known in volts if len(known)]
    strength = max((ramp(-middle, 0.1, 0.3) for _, middle in levels), default=0.0)
    if strength and _ac_coupling(item, studies)[0] > strength:
        return NOTHING
    return strength, say("the voltage is negative"), say("swap the probe and the return lead")


def _ac_coupling(item: Study, studies: Studies) -> Outcome:
    volts = signal_v(item)
    if volts is None:
        return NOTHING
    low, middle, high = np.percentile(volts, [1, 50, 99])
    both = min(ramp(-float(low), 0.1, 0.25), ramp(float(high), 0.1, 0.25))
    strength = both * ramp(1.2 - abs(float(middle)), 0.0, 0.3)
    return (
        strength,
        say("the voltage swings about nought and falls back"),
        say("set the input to DC coupling"),
    )


def _attenuation(item: Study, studies: Studies) -> Outcome:
    supply = studies.profile.supply_v
    every = [known_v(series) for series in item.cells.volts.values()]
    highest = max((float(np.percentile(known, 98)) for known in every if len(known)), default=0.0)
    action = say("set the probe's attenuation to what the probe is")
    if Role.SUPPLY not in item.cells.volts and highest > 1.8 * supply:
        return ramp(highest / supply, 1.8, 2.5), say("the readings are ten times too large"), action
    volts = signal_v(item)
    if volts is None or not item.cells.travel or not said_to_move(item.record):
        return NOTHING
    low, high = (float(value) for value in np.percentile(volts, [1, 99]))
    small = ramp(0.16 * supply - high, 0.0, 0.03 * supply) * ramp(low, 0.0, 0.01)
    if not small:
        return NOTHING
    moving = ramp(high - low, 0.03 * supply, 0.055 * supply) * _smooth_share(item)
    return moving * small, say("the readings are ten times too small"), action


def _smooth_share(item: Study) -> float:
    """1 where the signal moves as an arm does, 0 where it hums."""
    series = item.cells.volts[Role.SIGNAL].mean
    block = max(1, round(0.1 / item.cells.cell_s))
    whole = len(series) // block
    if whole < 3:
        return 0.0
    blocks = np.nan_to_num(series[: whole * block]).reshape(whole, block)
    slow = float(np.ptp(np.median(blocks, axis=1)))
    fast = float(np.median(np.ptp(blocks, axis=1)))
    return ramp(slow / max(slow + fast, 1e-6), 0.5, 0.8)


def _slow_reach_v(item: Study, role: Role = Role.SIGNAL) -> float:
    """Range of the medians of twentieths of a second, in volts: what moved, disturbances left out."""
    known = known_v(item.cells.volts[role]) if role in item.cells.volts else np.empty(0, np.float32)
    if not len(known):
        return 0.0
    block = max(1, round(0.05 / item.cells.cell_s))
    whole = len(known) // block
    if whole < 2:
        return float(np.ptp(np.percentile(known, [2, 98])))
    medians = np.median(known[: whole * block].reshape(whole, block), axis=1)
    return float(np.ptp(np.percentile(medians, [2, 98])))


def _deaf(item: Study, studies: Studies) -> Outcome:
    if Role.SIGNAL not in item.cells.volts or not said_to_move(item.record) or left_alone(item.record):
        return NOTHING
    reach = _slow_reach_v(item)
    strength = ramp(STILL_SHARE - reach / studies.profile.supply_v, 0.0, 0.5 * STILL_SHARE)
    action = say("check that the plug is on, the probe sits on the signal wire and the arm really moves")
    return strength, say("the signal does not change while the arm is said to move"), action


def _unplugged(item: Study, studies: Studies) -> Outcome:
    plugged = item.record.attributes.get("plugged", 1)
    if (
        item.record.step is Step.UNPLUGGED
        or str(plugged) not in ("0", "0.0")
        or not said_to_move(item.record)
    ):
        return NOTHING
    return 1.0, say("the sensor was unplugged while it was swept"), say("plug it in and sweep again")


def _asleep(item: Study, studies: Studies) -> Outcome:
    series = item.cells.volts.get(Role.REFERENCE)
    if series is None or item.record.step is Step.UNPLUGGED or not len(known := known_v(series)):
        return NOTHING
    level = float(np.median(known))
    strength = ramp(ASLEEP_V - abs(level), 0.0, 0.2)
    return (
        strength,
        say("the reference reads {level:.2f} V: no feed", level=level),
        say("switch the ignition on, wake the module"),
    )


def _poor_return(item: Study, studies: Studies) -> Outcome:
    ground, reference = item.steady.get(Role.GROUND), item.steady.get(Role.REFERENCE)
    if ground is None or reference is None:
        return NOTHING
    level = _offset_together(item, studies.profile.supply_v)
    least = max(2.0 * max(ground.threshold_v, reference.threshold_v), 0.08)
    together = np.zeros(len(item.cells), dtype=np.bool_)
    for one, other in ((ground.above_v, reference.above_v), (ground.below_v, reference.below_v)):
        # A recorder of one polarity cuts the ground off at nought; upwards it shows both.
        together |= (np.minimum(one, other) > least) & (np.abs(one - other) < 0.3 * np.maximum(one, other))
    lasting = _lasting(together, max(1, round(0.004 / item.cells.cell_s)))
    strength = max(ramp(float(np.mean(lasting)), 0.005, 0.03), level)
    text = say("all channels move by the same volts: the return clip is poor")
    return strength, text, say("clip the return to clean metal and repeat")


def _offset_together(item: Study, supply_v: float) -> float:
    """How plainly ground and reference stand off by the same volts throughout."""
    ground = float(np.median(thinned(item.steady[Role.GROUND].course_v)))
    reference = float(np.median(thinned(item.steady[Role.REFERENCE].course_v)))
    alike = abs((reference - supply_v) - ground)
    return ramp(abs(ground), 0.25, 0.4) * ramp(0.5 * abs(ground) - alike, 0.0, 0.1 * abs(ground) + 1e-6)


def _lasting(marks: NDArray[np.bool_], least: int) -> NDArray[np.bool_]:
    """Marks that belong to runs of at least `least` cells."""
    edges = np.flatnonzero(np.diff(marks.astype(np.int8), prepend=0, append=0))
    kept = np.zeros(len(marks), dtype=np.bool_)
    for start, stop in edges.reshape(-1, 2):
        if stop - start >= least:
            kept[start:stop] = True
    return kept


def _contradiction(item: Study, studies: Studies) -> Outcome:
    signal, reference = item.cells.volts.get(Role.SIGNAL), item.cells.volts.get(Role.REFERENCE)
    if signal is None or reference is None or item.record.step is Step.UNPLUGGED:
        return NOTHING
    above = np.nan_to_num(signal.mean - reference.mean, nan=0.0) > 0.08 * studies.profile.supply_v
    lasting = _lasting(above, max(1, round(0.05 / item.cells.cell_s)))
    text = say("the signal stands above the reference, which no sensor can do: a probe is on the wrong wire")
    return ramp(float(np.mean(lasting)), 0.02, 0.08), text, _WHICH_WIRE


def _feed_exchanged(item: Study, studies: Studies) -> Outcome:
    """Ground reads what the feed should, and the feed next to nothing."""
    ground, reference = item.steady.get(Role.GROUND), item.steady.get(Role.REFERENCE)
    if ground is None or reference is None or item.record.step is Step.UNPLUGGED:
        return NOTHING
    supply = studies.profile.supply_v
    low, high = (float(np.median(thinned(wire.course_v))) for wire in (reference, ground))
    text = say("ground reads {high:.2f} V and the reference {low:.2f} V: their probes are exchanged",
               high=high, low=low)  # fmt: skip
    return min(ramp(high / supply, 0.6, 0.8), ramp(ASLEEP_V - abs(low), 0.0, 0.2)), text, _WHICH_WIRE


def _arm_on_another_wire(item: Study, studies: Studies) -> Outcome:
    """Ground or reference goes where an arm goes while the signal stands still."""
    if Role.SIGNAL not in item.cells.volts or not said_to_move(item.record) or left_alone(item.record):
        return NOTHING
    supply = studies.profile.supply_v
    still = ramp(STILL_SHARE - _slow_reach_v(item) / supply, 0.0, 0.5 * STILL_SHARE)
    moved = max(
        (_slow_reach_v(item, role) for role in (Role.GROUND, Role.REFERENCE) if role in item.cells.volts),
        default=0.0,
    )
    text = say("the signal stands still while ground or reference moves as an arm does: a probe is on the"
               " wrong wire")  # fmt: skip
    return still * ramp(moved / supply, 0.1, 0.3), text, _WHICH_WIRE


_WHICH_WIRE = say("check which wire each probe touches, and repeat")


def _two_level(item: Study, studies: Studies) -> Outcome:
    channel = item.record.channel(Role.SIGNAL)
    if channel is None or left_alone(item.record):
        return NOTHING
    start = max(0, (len(channel) - TWO_LEVEL_SAMPLES) // 2)
    volts = channel.volts(start, start + TWO_LEVEL_SAMPLES)
    two = is_two_level(volts, sample_interval_s=item.record.sample_interval_s) or is_regular_two_level(
        item.cells.volts[Role.SIGNAL].mean, sample_interval_s=item.cells.cell_s
    )
    action = say("this is a duty-cycle or digital sensor, which this method does not judge")
    return float(two), say("the signal knows two levels only"), action


_TESTS: tuple[Callable[[Study, Studies], Outcome], ...] = (
    _no_samples,
    _over_range,
    in_the_air,
    slipped_off,
    _leads_swapped,
    _ac_coupling,
    _attenuation,
    _feed_exchanged,
    _arm_on_another_wire,
    _asleep,
    _poor_return,
    _contradiction,
    _deaf,
    _unplugged,
    _two_level,
)
"""Of two that show alike the first is told: hum of some tenths of a volt swings about nought as an input of
AC coupling does, and what has no feed, or is the wrong wire, does not follow the arm either."""
