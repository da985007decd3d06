"""The signal's circuit: one node, one capacitor, solved exactly.

The wiper feeds a node through its contact and the wire. On the node hang a pull resistor to the control
unit's supply or ground (or none), a filter capacitor, and the recorder's input (1 MΩ beside the cable's
capacitance). With every resistance constant over one step of time the node is a first-order system,

    C dv/dt = Σ Gₖ (Vₖ - v)   ⇒   v(t + h) = v∞ + (v(t) - v∞) exp(-h / τ),   τ = C / ΣG,

which is an exact solution, not an approximation, whatever the step (any text on linear circuits). An
open contact so falls towards the pull's rail with τ = C·(R_pull ∥ R_probe) and recovers with C times the
resistance of the closed contact: fast one way, slow the other.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]


@dataclass(frozen=True, slots=True)
class Circuit:
    """What hangs on the signal wire.

    Parameters
    ----------
    pull_ohm : float or None
        Pull resistor in the control unit; None where there is none.
    pull_up : bool
        Towards the reference (True) or towards ground.
    filter_f : float
        Filter capacitor in farads; may be 0.
    series_ohm : float
        Protection resistor between wiper and plug.
    probe_ohm, cable_f : float
        The recorder's input: 1 MΩ and the cable's capacitance (common practice, no source).
    """

    pull_ohm: float | None = None
    pull_up: bool = True
    filter_f: float = 10e-9
    series_ohm: float = 0.0
    probe_ohm: float = 1e6
    cable_f: float = 150e-12

    @property
    def capacitance_f(self) -> float:
        """All capacitance on the node."""
        return self.filter_f + self.cable_f

    @property
    def load_s(self) -> float:
        """Conductance of everything but the wiper, in siemens."""
        return 1.0 / self.probe_ohm + (1.0 / self.pull_ohm if self.pull_ohm else 0.0)

    @property
    def open_time_constant_s(self) -> float:
        """Time constant of the fall after the contact opened."""
        return self.capacitance_f / self.load_s

    def parked_v(self, reference_v: float = 5.0) -> float:
        """Where the signal parks with the wiper open."""
        pull_s = 1.0 / self.pull_ohm if self.pull_ohm and self.pull_up else 0.0
        return reference_v * pull_s / self.load_s


def loaded_ratio(position: Floats, load_ratio: float) -> Floats:
    """Output of a loaded potentiometer as a share of the applied voltage.

    Parameters
    ----------
    position : ndarray
        Unloaded ratio, 0..1.
    load_ratio : float
        Track resistance over load resistance, k.

    Returns
    -------
    ndarray
        ``x / (1 + k x (1 - x))``. Source: Todd, The Potentiometer Handbook (Bourns, 1975), applications
        chapter (the page from memory).
    """
    return np.asarray(position / (1.0 + load_ratio * position * (1.0 - position)), dtype=np.float64)


def linear_recurrence(decay: Floats, drive: Floats, start: float) -> Floats:
    """Solve ``v[n] = decay[n] * v[n-1] + drive[n]`` with ``v[-1] = start``.

    Parameters
    ----------
    decay, drive : ndarray, shape (n,)
        May differ at every step; ``0 <= decay <= 1``.
    start : float
        The state before the first step.

    Returns
    -------
    ndarray, shape (n,)
        Exact up to rounding. Cut into √n blocks that advance side by side: the first round finds what each
        block does to its entry state, the second fills in the samples.
    """
    count = decay.shape[0]
    if count == 0:
        return np.zeros(0)
    length = math.isqrt(count) + 1
    blocks = -(-count // length)
    decay_rows, drive_rows = _blocked(decay, length, blocks), _blocked(drive, length, blocks)
    product, total = np.ones(blocks), np.zeros(blocks)
    for row in range(length):
        total *= decay_rows[row]
        total += drive_rows[row]
        product *= decay_rows[row]
    state = np.empty(blocks)
    state[0] = start
    for block in range(1, blocks):
        state[block] = product[block - 1] * state[block - 1] + total[block - 1]
    solved = np.empty((length, blocks))
    for row in range(length):
        state *= decay_rows[row]
        state += drive_rows[row]
        solved[row] = state
    return np.ascontiguousarray(solved.T).reshape(-1)[:count]


def _blocked(values: Floats, length: int, blocks: int) -> Floats:
    """Blocks as columns, the last one padded with zeros."""
    padded = np.zeros(length * blocks)
    padded[: values.shape[0]] = values
    return np.ascontiguousarray(padded.reshape(blocks, length).T)


def settled_voltage(circuit: Circuit, source_v: Floats, source_ohm: Floats, pull_v: Floats | float) -> Floats:
    """Voltage of the node once the capacitor has settled, same shape as `source_v`."""
    source_s = 1.0 / (source_ohm + circuit.series_ohm + 1.0)
    current = source_v * source_s
    if circuit.pull_ohm:
        current = current + np.asarray(pull_v) / circuit.pull_ohm
    return np.asarray(current / (source_s + circuit.load_s), dtype=np.float64)


def node_voltage(
    circuit: Circuit,
    *,
    source_v: Floats,
    source_ohm: Floats,
    pull_v: Floats | float,
    interval_s: float,
    shunt_s: Floats | None = None,
    shunt_v: float = 0.0,
    pickup_a: Floats | float = 0.0,
) -> Floats:
    """Voltage of the signal node against battery negative.

    Parameters
    ----------
    circuit : Circuit
        What hangs on the node.
    source_v, source_ohm : ndarray, shape (n,)
        Open voltage of the wiper, and everything between it and the node.
    pull_v : float or ndarray, shape (n,)
        The rail behind the pull resistor.
    interval_s : float
        Seconds between the values.
    shunt_s : ndarray, shape (n,), optional
        A leak or short to `shunt_v`, in siemens.
    shunt_v : float
        Where the leak goes.
    pickup_a : float or ndarray, shape (n,)
        Current that the surroundings couple into the wire: it shows only while the contact is open.

    Returns
    -------
    ndarray, shape (n,)
        Starts settled.
    """
    source_s = 1.0 / (source_ohm + circuit.series_ohm + 1.0)
    total_s = source_s + circuit.load_s
    current = source_v * source_s + pickup_a
    if circuit.pull_ohm:
        current = current + np.asarray(pull_v) / circuit.pull_ohm
    if shunt_s is not None:
        total_s, current = total_s + shunt_s, current + shunt_s * shunt_v
    target_v = current / total_s
    decay = np.exp(-interval_s / circuit.capacitance_f * total_s)
    if decay.max(initial=0.0) < 1e-9:
        return np.asarray(target_v, dtype=np.float64)
    return linear_recurrence(decay, (1.0 - decay) * target_v, float(target_v[0]))
