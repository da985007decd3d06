"""Hand-made captures whose truth is known by construction; no simulation package behind them."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

import numpy as np

from analysis.captures.memory import make_capture, make_channel, make_record
from analysis.captures.model import Capture, Channel, Record, Role, Scaling, Step
from analysis.intervals import Interval
from tests.signals.examples import Floats, noise, rest, strokes

RATE_HZ = 2_000.0
STEP_V = 20.0 / 4096  # 12 bits over ±10 V
TOP = 2047.0
THREE = (Role.SIGNAL, Role.REFERENCE, Role.GROUND)


@dataclass(frozen=True, slots=True)
class Wires:
    """Volts of the wires during one record, each a number or one value a sample."""

    reference_v: Floats | float = 5.0
    ground_v: Floats | float = 0.012
    common_v: Floats | float = 0.0


@dataclass(frozen=True, slots=True)
class Meter:
    """The recorder: 12 bits over ±10 V, with its accuracy stated."""

    noise_v: float = 0.002
    step_v: float = STEP_V
    gain_error: float | None = 0.001
    offset_error_v: float | None = 0.002


GOOD = Wires()
METER = Meter()


def channel(
    role: Role,
    volts: Floats,
    *,
    seed: int = 0,
    meter: Meter = METER,
    attributes: Mapping[str, str | float] | None = None,
) -> Channel:
    """What the recorder makes of a voltage."""
    read = volts + noise(len(volts), meter.noise_v, seed * 31 + len(role.value))
    top = round(TOP * STEP_V / meter.step_v)
    counts = np.clip(np.rint(read / meter.step_v), -top, top).astype(np.int16)
    return make_channel(
        role,
        counts,
        Scaling(meter.step_v, valid_min=-float(top), valid_max=float(top)),
        gain_error=meter.gain_error,
        offset_error_v=meter.offset_error_v,
        attributes=attributes,
    )


def record(
    name: str,
    step: Step | None,
    travel: Floats,
    *,
    wires: Wires = GOOD,
    roles: Sequence[Role] = THREE,
    opened: Floats | None = None,
    seed: int = 0,
    attributes: Mapping[str, str | float] | None = None,
    meter: Meter = METER,
) -> Record:
    """A record of some wires.

    Parameters
    ----------
    travel : ndarray
        Where the arm is, in %.
    opened : ndarray, optional
        1 where the contact is open and the signal falls to ground, 0 where it is sound.
    """
    size = len(travel)
    ground = np.broadcast_to(np.asarray(wires.ground_v, np.float64), (size,))
    reference = np.broadcast_to(np.asarray(wires.reference_v, np.float64), (size,))
    share = travel / 100.0 if opened is None else travel / 100.0 * (1.0 - opened)
    volts = {
        Role.SIGNAL: ground + (reference - ground) * share,
        Role.REFERENCE: reference,
        Role.GROUND: ground,
    }
    channels = [
        channel(role, volts[role] + wires.common_v, seed=seed + index, meter=meter)
        for index, role in enumerate(roles)
    ]
    return make_record(name, 1.0 / RATE_HZ, channels, step=step, attributes=attributes)


def worn(travel: Floats, *bands: Interval, seed: int = 0, share: float = 0.5) -> Floats:
    """Openings of two milliseconds, `share` of the time, wherever the arm is in a band."""
    rng = np.random.default_rng(seed)
    chatter = np.repeat(rng.random(len(travel) // 4 + 1) < share, 4)[: len(travel)]
    inside = np.zeros(len(travel), np.bool_)
    for band in bands:
        inside |= (travel >= band.start) & (travel < band.stop)
    return np.asarray(chatter & inside, np.float64)


def bursts(size: int, *, per_s: float = 1.5, lasting_s: float = 0.02, seed: int = 0) -> Floats:
    """Openings that come whenever they like."""
    rng = np.random.default_rng(seed)
    opened = np.zeros(size)
    for first in rng.integers(0, size, rng.poisson(per_s * size / RATE_HZ)):
        opened[first : first + 1 + int(rng.exponential(lasting_s) * RATE_HZ)] = 1.0
    return opened


def sweep(count: int = 8, **settings: float) -> Floats:
    """Strokes over 10 to 90 % of travel, unless told otherwise."""
    return strokes(count, rate_hz=RATE_HZ, **settings)


def standing(
    *, wires: Wires = GOOD, place: float = 50.0, wiggled: Floats | None = None, meter: Meter = METER
) -> tuple[Record, ...]:
    """The records with the arm at rest: ground, reference, wiggle."""
    still = rest(place, 2.0, RATE_HZ)
    return (
        record("001", Step.GROUND, still, wires=wires, seed=11, meter=meter),
        record("002", Step.REFERENCE, still, wires=wires, seed=12, meter=meter),
        record("003", Step.WIGGLE, still, wires=wires, seed=13, opened=wiggled, meter=meter),
    )


def visit(
    *,
    bands: Sequence[Interval] = (),
    travel: Floats | None = None,
    opened: Floats | None = None,
    wires: Wires = GOOD,
    standing_place: float = 50.0,
    attributes: Mapping[str, str | float] | None = None,
    extra: Sequence[Record] = (),
    meter: Meter = METER,
) -> Capture:
    """A whole visit: the standing records, a slow and a brisk sweep, and what else was recorded."""
    paths = (sweep(6), sweep(6, seconds=0.6)) if travel is None else (travel,)
    swept = []
    for index, path in enumerate(paths):
        gone = worn(path, *bands, seed=21 + index) if opened is None else opened[: len(path)]
        swept.append(
            record(f"00{4 + index}", Step.SWEEP, path, opened=gone, wires=wires, seed=31 + index, meter=meter)
        )
    still = standing(wires=wires, place=standing_place, meter=meter)
    return make_capture((*still, *swept, *extra), attributes=attributes)
