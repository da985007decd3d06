"""What disturbs the three wires: interference, and faults of wiring, ground and reference.

Interference stands on every probe alike, apart from a slightly different coupling; a fault has its own
wire. Each fault turns the time, the arm and the step of a record into ohms or volts along that time.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from analysis.captures.model import Step
from analysis.simulation.circuit import Floats
from analysis.simulation.track import coloured

OPEN_OHM = 1e9


@dataclass(frozen=True, slots=True)
class Scene:
    """A record while it is being simulated.

    Parameters
    ----------
    time_s, travel_percent, speed_percent_s : ndarray, shape (n,)
        The inner time base, and the arm along it.
    interval_s : float
        Inner interval.
    step : Step or None
        What the record is taken for: a wiggle shakes the harness.
    """

    time_s: Floats
    travel_percent: Floats
    speed_percent_s: Floats
    interval_s: float
    step: Step | None

    @property
    def shaken(self) -> bool:
        """Whether somebody shakes the harness."""
        return self.step is Step.WIGGLE


@dataclass(frozen=True, slots=True)
class WireFault:
    """A bad signal wire or plug.

    Parameters
    ----------
    kind : str
        ``"random"`` whenever it likes; ``"moving"`` only while the arm moves; ``"wiggle"`` only while the
        harness is shaken; ``"loom"`` where the loom is stretched, beyond `place_percent`.
    per_s : float
        Bursts a second while it acts.
    burst_s : float
        Mean length of a burst.
    ohm : float
        Series resistance while open (a corroded contact has less than a broken wire).
    chatter_s : float
        Correlation time of the chattering inside a burst; 0 for one clean opening.
    short_to_v : float or None
        Not a break but a short of some ohms to that voltage.
    wander : float
        Above 0 it acts all the time: a corroded plug whose resistance wanders about `ohm` by this standard
        deviation of its logarithm, one half within a third of a second and the other within a hundredth.
    """

    kind: str = "random"
    per_s: float = 0.5
    burst_s: float = 0.05
    ohm: float = OPEN_OHM
    chatter_s: float = 0.0
    short_to_v: float | None = None
    place_percent: float = 70.0
    wander: float = 0.0

    def series_ohm(self, scene: Scene, rng: np.random.Generator) -> Floats:
        """Resistance that it adds to the wire, shape (n,)."""
        if self.wander > 0.0:
            count = scene.time_s.shape[0]
            slow, fast = (coloured(rng, count, within_s, scene.interval_s) for within_s in (0.3, 0.01))
            spread = self.wander * np.sqrt(0.5) * (slow + fast)
            return np.asarray(self.ohm * np.exp(spread), dtype=np.float64)
        return np.asarray(self.active(scene, rng) * self.ohm, dtype=np.float64)

    def active(self, scene: Scene, rng: np.random.Generator) -> NDArray[np.bool_]:
        """Where the fault acts, shape (n,)."""
        rate = np.full(scene.time_s.shape[0], self.per_s)
        if scene.shaken:
            rate *= 3.0
        elif self.kind == "moving":
            rate *= np.clip(np.abs(scene.speed_percent_s) / 20.0, 0.0, 2.0) * (
                np.abs(scene.speed_percent_s) > 2.0
            )
        elif self.kind == "wiggle":
            rate *= 0.0
        elif self.kind == "loom":
            rate *= 4.0 * (scene.travel_percent > self.place_percent)
        acting = bursts(rng, rate, self.burst_s, scene.interval_s)
        if self.chatter_s > 0.0 and acting.any():
            acting &= coloured(rng, acting.shape[0], self.chatter_s, scene.interval_s) > -0.3
        return acting


@dataclass(frozen=True, slots=True)
class SupplyFault:
    """A fault of the ground or of the reference.

    Parameters
    ----------
    kind : str
        ``"static"``, ``"intermittent"`` or ``"load"`` (follows the current of other consumers).
    volts : float
        By how much: the lift of the ground, or the change of the reference (negative: it sags).
    per_s, burst_s : float
        Rate and mean length where it is intermittent.
    """

    kind: str = "static"
    volts: float = 0.3
    per_s: float = 0.5
    burst_s: float = 0.2

    def shift_v(self, scene: Scene, rng: np.random.Generator) -> Floats:
        """Volts added to the wire, shape (n,)."""
        count = scene.time_s.shape[0]
        if self.kind == "static":
            return np.full(count, self.volts)
        rate = np.full(count, self.per_s * (3.0 if scene.shaken else 1.0))
        acting = bursts(rng, rate, self.burst_s, scene.interval_s).astype(np.float64)
        if self.kind == "load":  # consumers switch on and off; their current has a little ripple
            ripple = 1.0 + 0.05 * np.sin(2.0 * np.pi * 130.0 * scene.time_s)
            acting = (0.3 + 0.7 * acting) * ripple
        else:
            acting *= 0.6 + 0.4 * np.abs(coloured(rng, count, 0.01, scene.interval_s)).clip(0.0, 1.0)
        return acting * self.volts


@dataclass(frozen=True, slots=True)
class Interference:
    """What couples into every probe.

    Parameters
    ----------
    spark_v, spark_hz : float
        Size and rate of ignition spikes; each rings at `ring_hz` and dies away within `decay_s`.
    hum_v, hum_hz : float
        Mains or alternator hum.
    ripple_v, ripple_hz : float
        Ripple on the reference alone; the ratio does not see it.
    pickup_a : float
        Hum current into the signal wire, which makes volts of it only while the wire is open.
    """

    spark_v: float = 0.0
    spark_hz: float = 30.0
    ring_hz: float = 4_000.0
    decay_s: float = 0.0003
    hum_v: float = 0.0
    hum_hz: float = 50.0
    ripple_v: float = 0.0
    ripple_hz: float = 400.0
    pickup_a: float = 0.0

    def pickup(self, scene: Scene) -> Floats | float:
        """Current coupled into a high-resistance wire at the hum's frequency, in amperes."""
        return self.pickup_a * np.sin(2.0 * np.pi * self.hum_hz * scene.time_s) if self.pickup_a else 0.0

    def common_v(self, scene: Scene, rng: np.random.Generator) -> Floats:
        """Volts on every probe, shape (n,)."""
        total = np.zeros(scene.time_s.shape[0])
        if self.hum_v:
            angle = 2.0 * np.pi * self.hum_hz * scene.time_s + rng.uniform(0.0, 6.28)
            total += self.hum_v * (np.sin(angle) + 0.3 * np.sin(3.0 * angle))
        if self.spark_v:
            self._add_sparks(total, scene.interval_s, rng)
        return total

    def _add_sparks(self, total: Floats, interval_s: float, rng: np.random.Generator) -> None:
        gaps_s = rng.gamma(
            20.0, 1.0 / (20.0 * self.spark_hz), int(total.shape[0] * interval_s * self.spark_hz * 1.3)
        )
        for begin_s in np.cumsum(gaps_s):
            first = int(begin_s / interval_s) + 1
            span = np.arange(first, min(first + int(6.0 * self.decay_s / interval_s) + 1, total.shape[0]))
            after = span * interval_s - begin_s
            size = self.spark_v * rng.uniform(0.3, 1.0) * rng.choice([-1.0, 1.0])
            total[span] += size * np.cos(2.0 * np.pi * self.ring_hz * after) * np.exp(-after / self.decay_s)

    def ripple(self, scene: Scene) -> Floats:
        """Volts on the reference alone, shape (n,)."""
        return self.ripple_v * np.sin(2.0 * np.pi * self.ripple_hz * scene.time_s)


def bursts(
    rng: np.random.Generator, rate_per_s: Floats, mean_s: float, interval_s: float
) -> NDArray[np.bool_]:
    """Bursts of exponential length that begin at random, shape (n,).

    Parameters
    ----------
    rng : Generator
        Source of chance.
    rate_per_s : ndarray, shape (n,)
        Bursts a second, at each point.
    mean_s : float
        Mean length.
    interval_s : float
        Seconds between the points.
    """
    acting = np.zeros(rate_per_s.shape[0], dtype=np.bool_)
    expected = np.cumsum(rate_per_s) * interval_s
    if expected.shape[0] == 0 or expected[-1] <= 0.0:
        return acting
    for begin in np.searchsorted(expected, rng.uniform(0.0, expected[-1], rng.poisson(expected[-1]))):
        acting[begin : begin + 1 + int(rng.exponential(mean_s) / interval_s)] = True
    return acting
