"""What a record was taken for, guessed from how its channels behave: level and movement, nothing else.

Only what cannot well be anything else counts as sure and goes into a capture; the rest is proposed.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from analysis.captures.model import Role, Step
from analysis.wording import Wording, say

_MOVES_V = 1.0
"""A signal that moves over more than this between the rails was moved on purpose. Ours."""

_SPREAD_OUT = 0.2
"""Share of that movement which the middle half of the samples covers in a sweep: a vehicle on the road rests
at its height most of the time, a hand does not. Ours."""

_SPIKE_V = 0.2
_SPIKE_SHARE = 0.05  # of the samples: shaking a plug opens a contact for moments


@dataclass(frozen=True, slots=True)
class StepGuess:
    """What a record seems to have been taken for.

    Parameters
    ----------
    step : Step or None
        None where the behaviour fits several.
    reason : Wording
        Why, for the technician.
    sure : bool
        Whether it goes into the capture where nobody says otherwise.
    """

    step: Step | None
    reason: Wording
    sure: bool = False


def guess_step(channels: Mapping[Role, NDArray[np.float64]]) -> StepGuess:
    """The step of a record.

    Parameters
    ----------
    channels : mapping of Role to ndarray, shape (n_samples,)
        Samples in volts from all over the record; NaN and infinite ones are left out.

    Returns
    -------
    StepGuess
    """
    finite = {role: volts[np.isfinite(volts)] for role, volts in channels.items()}
    finite = {role: volts for role, volts in finite.items() if len(volts)}
    signal = finite.get(Role.SIGNAL, finite.get(Role.SECOND_SIGNAL))
    if signal is not None:
        return _of_signal(signal)
    if len(finite) == 1:
        ((role, volts),) = finite.items()
        return _of_one_wire(role, volts)
    return StepGuess(None, say("no signal wire was recorded: what it was taken for does not show"))


def _of_signal(volts: NDArray[np.float64]) -> StepGuess:
    low, quarter, middle, three, high = (float(v) for v in np.quantile(volts, (0.02, 0.25, 0.5, 0.75, 0.98)))
    moved_v = high - low
    if moved_v > _MOVES_V:
        if three - quarter > _SPREAD_OUT * moved_v:
            reason = say("the signal moves over {moved_v:.2f} V: a sweep", moved_v=moved_v)
            return StepGuess(Step.SWEEP, reason, sure=True)
        reason = say(
            "the signal moves over {moved_v:.2f} V and mostly rests at {middle_v:.2f} V: perhaps a drive",
            moved_v=moved_v,
            middle_v=middle,
        )
        return StepGuess(Step.ROAD, reason)
    away = np.abs(volts - middle) > max(_SPIKE_V, 3.0 * moved_v)
    share = float(away.mean())
    if 0.0 < share < _SPIKE_SHARE:
        reason = say(
            "the signal rests at {middle_v:.2f} V with short spikes: perhaps shaken", middle_v=middle
        )
        return StepGuess(Step.WIGGLE, reason)
    return StepGuess(
        None,
        say("the signal rests at {middle_v:.2f} V: what it was taken for does not show", middle_v=middle),
    )


def _of_one_wire(role: Role, volts: NDArray[np.float64]) -> StepGuess:
    low, middle, high = (float(value) for value in np.quantile(volts, (0.02, 0.5, 0.98)))
    steady = high - low < _SPIKE_V
    if role is Role.GROUND and steady and abs(middle) < 0.5:
        reason = say("the only wire stays near 0 V, at {middle_v:.3f} V: ground", middle_v=middle)
        return StepGuess(Step.GROUND, reason, sure=True)
    if role is Role.REFERENCE and steady and 4.5 <= middle <= 5.5:
        reason = say("the only wire stays near 5 V, at {middle_v:.3f} V: reference", middle_v=middle)
        return StepGuess(Step.REFERENCE, reason, sure=True)
    return StepGuess(
        None,
        say("the only wire stays at {middle_v:.2f} V: what it was taken for does not show", middle_v=middle),
    )
