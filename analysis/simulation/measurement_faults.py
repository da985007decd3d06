"""What goes wrong at the probe: the vehicle may be sound, the capture is not."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

import numpy as np
from scipy.signal import lfilter

from analysis.captures.model import Role
from analysis.simulation.circuit import Floats
from analysis.simulation.track import coloured


class ProbeFaultKind(StrEnum):
    """What the technician did not notice."""

    IN_AIR = "in the air"
    SLIPPED_OFF = "slipped off"
    POOR_RETURN = "poor return clip"
    ATTENUATION = "wrong attenuation"
    AC_COUPLED = "AC coupled"
    SWAPPED = "leads swapped"


@dataclass(frozen=True, slots=True)
class ProbeFault:
    """A fault of one probe (or of the common return clip).

    Parameters
    ----------
    kind : ProbeFaultKind
        What.
    role : Role
        Whose probe; the return clip shifts them all.
    from_share : float
        Share of the record after which it acts.
    factor : float
        Wrong attenuation: what the reading is multiplied by.
    """

    kind: ProbeFaultKind
    role: Role = Role.SIGNAL
    from_share: float = 0.0
    factor: float = 0.1

    def applied(
        self, voltages: dict[Role, Floats], interval_s: float, rng: np.random.Generator
    ) -> dict[Role, Floats]:
        """Voltages as the recorder gets them, one array of shape (n,) for each role."""
        count = len(next(iter(voltages.values())))
        start = int(self.from_share * count)
        changed = dict(voltages)
        if self.kind is ProbeFaultKind.POOR_RETURN:
            wander = _poor_return(count, interval_s, rng)
            wander[:start] = 0.0
            return {role: voltage + wander for role, voltage in voltages.items()}
        if self.role in voltages:
            tail = self._tail(voltages[self.role][start:], interval_s, rng)
            changed[self.role] = np.concatenate([voltages[self.role][:start], tail])
        return changed

    def _tail(self, voltage_v: Floats, interval_s: float, rng: np.random.Generator) -> Floats:
        if self.kind in (ProbeFaultKind.IN_AIR, ProbeFaultKind.SLIPPED_OFF):
            return air(voltage_v.shape[0], interval_s, rng)
        if self.kind is ProbeFaultKind.ATTENUATION:
            return voltage_v * self.factor
        if self.kind is ProbeFaultKind.SWAPPED:
            return -voltage_v
        return ac_coupled(voltage_v, interval_s, 0.3)


def air(count: int, interval_s: float, rng: np.random.Generator) -> Floats:
    """What a probe in the air picks up: hum with harmonics, drift, a hand that comes near; shape (count,)."""
    time = np.arange(count) * interval_s
    hz = float(rng.choice([50.0, 60.0]))
    size = rng.uniform(0.01, 0.15)
    near = 1.0 + 0.6 * coloured(rng, count, 0.8, interval_s)
    angle = 2.0 * np.pi * hz * time + rng.uniform(0.0, 6.28)
    hum = size * near * (np.sin(angle) + 0.25 * np.sin(3.0 * angle) + 0.1 * np.sin(5.0 * angle))
    return np.asarray(
        hum + rng.uniform(0.005, 0.05) * coloured(rng, count, 2.0, interval_s), dtype=np.float64
    )


def ac_coupled(voltage_v: Floats, interval_s: float, constant_s: float) -> Floats:
    """A first-order high-pass that was settled before the record began; same shape."""
    keep = float(np.exp(-interval_s / constant_s))
    if voltage_v.shape[0] == 0:
        return voltage_v
    moved = voltage_v - voltage_v[0]
    return np.asarray(lfilter([keep, -keep], [1.0, -keep], moved), dtype=np.float64)


def duty_cycle(travel_percent: Floats, interval_s: float, hz: float = 200.0, high_v: float = 5.0) -> Floats:
    """A two-level signal whose duty cycle tells the position; same shape."""
    phase = (np.arange(travel_percent.shape[0]) * interval_s * hz) % 1.0
    return np.where(phase < 0.1 + 0.8 * travel_percent / 100.0, high_v, 0.05).astype(np.float64)


def _poor_return(count: int, interval_s: float, rng: np.random.Generator) -> Floats:
    """Common shift of a return clip on paint or rust: it jumps and wanders, shape (count,)."""
    loose = coloured(rng, count, 0.4, interval_s) > rng.uniform(-0.5, 0.3)
    level = rng.uniform(0.3, 2.0) * (1.0 + 0.3 * coloured(rng, count, 0.05, interval_s))
    return np.asarray(loose * level, dtype=np.float64)
