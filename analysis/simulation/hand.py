"""A hand on the arm.

A reach is a minimum-jerk stroke, ``10 s³ - 15 s⁴ + 6 s⁵`` (Flash & Hogan, J. Neurosci. 5, 1985). A clumsy
hand strings several together: it stalls, slips, turns back a little. On top lies physiological tremor,
8-12 Hz. The stops of the arm end a stroke with a knock: a bounce that rings down at 20-45 Hz. All paths are
sampled at `NODE_HZ`; everything but a knock lies below some 15 Hz.
"""

from __future__ import annotations

from dataclasses import dataclass, field

import numpy as np
from scipy.signal import butter, sosfilt

from analysis.intervals import Interval
from analysis.simulation.circuit import Floats

NODE_HZ = 1_000.0


@dataclass(frozen=True, slots=True)
class HandStyle:
    """How somebody moves an arm.

    Parameters
    ----------
    stroke_s : float
        Typical time of a full stroke.
    spread : float
        Share by which that varies (lognormal).
    tremor_percent : float
        Amplitude of the tremor, rms, in % of travel.
    tremor_hz : float
        Its middle frequency.
    stall, slip, turn_back, partial : float
        Chances a stroke: of a stop on the way, of a slip, of a short reversal, of not going all the way.
    knock_percent : float
        Bounce at the stops, in % of travel; 0 where the hand stops short of them.
    pause_s : float
        Rest between strokes.
    catch_percent : float or None
        Where the linkage catches on every stroke: the arm stops there and then jumps on. It really moves
        so, however much that looks like a bad place on the track.
    """

    stroke_s: float = 2.0
    spread: float = 0.3
    tremor_percent: float = 0.08
    tremor_hz: float = 10.0
    stall: float = 0.1
    slip: float = 0.05
    turn_back: float = 0.05
    partial: float = 0.0
    knock_percent: float = 0.0
    pause_s: float = 0.3
    catch_percent: float | None = None


@dataclass(slots=True)
class _Path:
    """A path that grows stroke by stroke."""

    at: float
    pieces: list[Floats] = field(default_factory=list)

    def move(self, target: float, seconds: float) -> None:
        count = max(int(seconds * NODE_HZ), 4)
        self.pieces.append(self.at + (target - self.at) * minimum_jerk(np.arange(1, count + 1) / count))
        self.at = target

    def hold(self, seconds: float) -> None:
        self.pieces.append(np.full(max(int(seconds * NODE_HZ), 1), self.at))

    def joined(self) -> Floats:
        return np.concatenate(self.pieces)


def minimum_jerk(share: Floats) -> Floats:
    """The minimum-jerk stroke from 0 to 1 (Flash & Hogan 1985), same shape as `share` (0..1)."""
    return np.asarray(share**3 * (10.0 - 15.0 * share + 6.0 * share**2), dtype=np.float64)


def sweep(
    rng: np.random.Generator, stops: Interval, crossings: int, style: HandStyle, *, start: float | None = None
) -> Floats:
    """Full strokes from stop to stop.

    Parameters
    ----------
    rng : Generator
        Source of chance.
    stops : Interval
        Range of the strokes in % of travel.
    crossings : int
        Number of strokes, at least 1; the first starts at whichever end lies nearer to `start`.
    style : HandStyle
        How.
    start : float, optional
        Where the arm stands at first; without it at one of the ends.

    Returns
    -------
    ndarray, shape (n,)
        Path in % of travel at `NODE_HZ`.
    """
    upward = bool(rng.random() < 0.5) if start is None else start < stops.centre
    low, high = stops.start, stops.stop
    path = _Path(start if start is not None else (low if upward else high))
    path.hold(0.2 + rng.random() * style.pause_s)
    if start is not None:
        path.move(low if upward else high, 0.4 * style.stroke_s + 0.15)
    for _ in range(crossings):
        short = rng.uniform(0.05, 0.3) * stops.length if rng.random() < style.partial else 0.0
        _stroke(path, high - short if upward else low + short, rng, style, stops)
        path.hold(rng.exponential(style.pause_s) + 0.02)
        upward = not upward
    return finished(path.joined(), rng, style, stops)


def _stroke(path: _Path, target: float, rng: np.random.Generator, style: HandStyle, stops: Interval) -> None:
    """One stroke with the mishaps of its style."""
    begin, distance = path.at, target - path.at
    seconds = max(style.stroke_s * float(np.exp(style.spread * rng.standard_normal())), 0.15)
    if rng.random() < style.stall:
        path.move(begin + rng.uniform(0.2, 0.8) * distance, 0.6 * seconds)
        path.hold(rng.exponential(0.3) + 0.05)
    if rng.random() < style.turn_back:
        path.move(path.at - rng.uniform(0.02, 0.12) * distance, max(0.25 * seconds, 0.15))
    if rng.random() < style.slip:
        path.move(path.at + rng.uniform(0.1, 0.5) * (target - path.at), rng.uniform(0.12, 0.2))
    _catch(path, target, rng, style)
    rest = abs(target - path.at) / max(abs(distance), 1e-9)
    path.move(target, max(seconds * rest, 0.12))
    path.at = min(max(path.at, stops.start), stops.stop)


def _catch(path: _Path, target: float, rng: np.random.Generator, style: HandStyle) -> None:
    """The linkage catches at its place, where the stroke passes it."""
    place = style.catch_percent
    if place is None or not min(path.at, target) < place < max(path.at, target):
        return
    path.move(place, max(0.5 * style.stroke_s * abs(place - path.at) / abs(target - path.at), 0.12))
    path.hold(rng.uniform(0.02, 0.12))
    jump = min(rng.uniform(2.0, 8.0), abs(target - place))
    path.move(place + np.sign(target - place) * jump, rng.uniform(0.1, 0.16))


def to_and_fro(
    rng: np.random.Generator,
    centre: float,
    reach_percent: float,
    count: int,
    style: HandStyle,
    stops: Interval,
) -> Floats:
    """Small strokes about a place: `count` of them, each up to `reach_percent` long; shape (n,)."""
    path = _Path(centre)
    path.hold(0.2)
    for number in range(count):
        side = 1.0 if number % 2 else -1.0
        path.move(centre + side * rng.uniform(0.3, 0.6) * reach_percent, rng.uniform(0.3, 1.0))
        path.hold(rng.exponential(0.15))
    return finished(path.joined(), rng, style, stops)


def hold(
    rng: np.random.Generator, place: float, seconds: float, style: HandStyle | None, stops: Interval
) -> Floats:
    """The arm held at a place, with tremor; without a style the hands are off and it stands still."""
    path = _Path(place)
    path.hold(seconds)
    return path.joined() if style is None else finished(path.joined(), rng, style, stops, drift=True)


def bounced(
    rng: np.random.Generator, rest: float, reach_percent: float, pushes: int, stops: Interval
) -> Floats:
    """A corner of the car pushed down `pushes` times and left to swing out at some 1.2 Hz, shape (n,).

    A negative reach is a sensor whose signal rises as the body sinks.
    """
    pieces = []
    for _ in range(pushes):
        hz, depth, seconds = (
            rng.uniform(1.1, 1.4),
            reach_percent * rng.uniform(0.8, 1.1),
            rng.uniform(2.2, 2.8),
        )
        time = np.arange(int(seconds * NODE_HZ)) / NODE_HZ
        rise = minimum_jerk(np.clip(time / 0.35, 0.0, 1.0))
        pieces.append(-depth * rise * np.cos(2.0 * np.pi * hz * (time - 0.35)) * np.exp(-time / 0.9))
        settle = np.linspace(float(pieces[-1][-1]), 0.0, 100)
        pieces.append(settle)
    path = rest + np.concatenate([np.zeros(500), *pieces, np.zeros(500)])
    return np.asarray(np.clip(path, stops.start, stops.stop), dtype=np.float64)


def joined(*paths: Floats) -> Floats:
    """Paths one after the other, a minimum-jerk stroke of 0.5 s between them; shape (n,)."""
    parts: list[Floats] = [paths[0]]
    for path in paths[1:]:
        bridge = _Path(float(parts[-1][-1]))
        bridge.move(float(path[0]), 0.5)
        parts += [bridge.joined(), path]
    return np.concatenate(parts)


def finished(
    path: Floats, rng: np.random.Generator, style: HandStyle, stops: Interval, *, drift: bool = False
) -> Floats:
    """A path with tremor, slow drift of a held hand, and the stops; same shape."""
    moved = path + style.tremor_percent * tremor(rng, path.shape[0], style.tremor_hz)
    if drift:
        sway = np.cumsum(rng.standard_normal(path.shape[0])) * (0.15 / np.sqrt(NODE_HZ))
        moved = moved + sway
    if style.knock_percent > 0.0:
        moved = moved + _knocks(path, rng, style, stops)
    low, high = stops.start, stops.stop
    return np.asarray(np.clip(moved, low, high), dtype=np.float64)


def tremor(rng: np.random.Generator, count: int, middle_hz: float) -> Floats:
    """Physiological tremor of unit rms, a 2 Hz band about `middle_hz` (8-12 Hz), shape (count,)."""
    sos = butter(2, [middle_hz - 1.0, middle_hz + 1.0], btype="bandpass", fs=NODE_HZ, output="sos")
    lead = int(1.5 * NODE_HZ)  # the filter's start is left out
    noise = np.asarray(sosfilt(sos, rng.standard_normal(count + lead)), dtype=np.float64)[lead:]
    gain = np.sqrt(2.0 * 2.0 / NODE_HZ * 1.11)  # noise bandwidth of that filter, in shares of the band
    return np.asarray(noise / gain, dtype=np.float64)


def _knocks(path: Floats, rng: np.random.Generator, style: HandStyle, stops: Interval) -> Floats:
    """Bounces where the path arrives at a stop, pointing away from it."""
    ringing = np.zeros_like(path)
    for stop, side in ((stops.start, 1.0), (stops.stop, -1.0)):
        arrived = np.flatnonzero(np.diff((np.abs(path - stop) < 0.3).astype(np.int8)) > 0)
        for at in arrived:
            after = np.arange(min(path.shape[0] - at, 300)) / NODE_HZ
            hz, decay = rng.uniform(20.0, 45.0), rng.uniform(0.015, 0.05)
            height = side * style.knock_percent * rng.uniform(0.4, 1.0)
            ringing[at : at + after.shape[0]] += (
                height * np.abs(np.sin(np.pi * hz * after)) * np.exp(-after / decay)
            )
    return ringing
