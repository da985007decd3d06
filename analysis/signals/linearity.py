"""Linearity of a track against a true position, and the play between its two directions.

Linearity needs to know where the wiper really was. A capture alone does not: without a position
reference, or where the visited travel has gaps, it is refused and not guessed. Ask `why_refused`
first; the functions raise ValueError with the same sentence.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray
from scipy.optimize import linprog

from analysis.intervals import Interval
from analysis.wording import say

# Steps of a linearity test must not exceed 10 % of the electrical travel: MIL-PRF-39002C, 4.6.8.
LARGEST_GAP_PERCENT = 10.0

_WHOLE_TRAVEL = Interval(0.0, 100.0)


@dataclass(frozen=True, slots=True)
class Linearity:
    """How far an output departs from a straight line.

    Parameters
    ----------
    kind : str
        ``"independent"``, ``"zero-based"``, ``"terminal-based"`` or ``"absolute"``.
    slope : float
        Per cent of the applied voltage a per cent of travel.
    intercept_percent : float
        Of the line at position 0, in % of the applied voltage.
    deviation_percent : float
        Largest departure to either side, in % of the applied voltage.
    at_percent : float
        Where it is, in % of travel.
    """

    kind: str
    slope: float
    intercept_percent: float
    deviation_percent: float
    at_percent: float


@dataclass(frozen=True, slots=True)
class Hysteresis:
    """Play between the two directions, in % of the applied voltage.

    Parameters
    ----------
    largest_percent, median_percent : float
        Of up less down, without sign, over the travel that both directions visited.
    at_percent : float
        Where it is largest, in % of travel.
    """

    largest_percent: float
    median_percent: float
    at_percent: float


def why_refused(
    position_percent: ArrayLike,
    *,
    position_known: bool,
    span: Interval = _WHOLE_TRAVEL,
    largest_gap_percent: float = LARGEST_GAP_PERCENT,
) -> str:
    """Why linearity cannot be judged; empty where it can.

    Parameters
    ----------
    position_percent : array_like, shape (n,)
        Visited positions, in % of travel, in any order; NaN counts nothing.
    position_known : bool
        Whether they come from a position reference, not from the output itself.
    span : Interval
        The travel that is to be judged; a stretch at its ends that was not visited is a gap too.
    largest_gap_percent : float
        In % of travel.
    """
    if not position_known:
        return say("the true position was not measured beside the output")
    position = np.sort(np.asarray(position_percent, dtype=np.float64).ravel())
    position = position[(position >= span.start) & (position <= span.stop)]
    if position.size < 2:
        return say(
            "fewer than two positions were visited from {start:g} to {stop:g} % of travel",
            start=span.start,
            stop=span.stop,
        )
    stops = np.concatenate([[span.start], position, [span.stop]])
    gaps = np.diff(stops)
    widest = int(np.argmax(gaps))
    if gaps[widest] > largest_gap_percent * (1.0 + 1e-9):
        return say(
            "nothing was visited between {start:.1f} and {stop:.1f} % of travel, more than {largest:g} %",
            start=float(stops[widest]),
            stop=float(stops[widest + 1]),
            largest=largest_gap_percent,
        )
    return ""


def independent_linearity(
    position_percent: ArrayLike, output_percent: ArrayLike, *, span: Interval = _WHOLE_TRAVEL
) -> Linearity:
    """Departure from the straight line that makes the largest departure smallest.

    Parameters
    ----------
    position_percent, output_percent : array_like, shape (n,)
        True position in % of travel; output in % of the applied voltage. NaN in either counts nothing.
        Bin longer sweeps first: 20,000 points take a tenth of a second.
    span : Interval
        The travel that is judged.

    Returns
    -------
    Linearity

    Raises
    ------
    ValueError
        Where the shapes differ or `why_refused` gives a reason.

    Notes
    -----
    Minimax, not least squares: ``min over P, Q of max |V / V_T - (P W + Q)|`` (Bourns, glossary
    "independent linearity"), solved as a linear programme.
    """
    position, output = _judged(position_percent, output_percent, span)
    slope, intercept = _minimax_line(position - position[0], output, pinned_at=None)
    return _linearity("independent", position, output, slope, intercept - slope * float(position[0]))


def zero_based_linearity(
    position_percent: ArrayLike, output_percent: ArrayLike, *, span: Interval = _WHOLE_TRAVEL
) -> Linearity:
    """Departure from the best straight line through the output at the lowest position.

    Parameters, result and errors as in `independent_linearity`. Bourns, glossary "zero-based linearity".
    """
    position, output = _judged(position_percent, output_percent, span)
    pinned = float(output[0])
    slope, _ = _minimax_line(position - position[0], output, pinned_at=pinned)
    return _linearity("zero-based", position, output, slope, pinned - slope * float(position[0]))


def terminal_based_linearity(
    position_percent: ArrayLike, output_percent: ArrayLike, *, span: Interval = _WHOLE_TRAVEL
) -> Linearity:
    """Departure from the straight line through the outputs at both ends of the visited travel.

    Parameters, result and errors as in `independent_linearity`. Bourns, glossary "terminal-based linearity".
    """
    position, output = _judged(position_percent, output_percent, span)
    slope = float((output[-1] - output[0]) / (position[-1] - position[0]))
    return _linearity("terminal-based", position, output, slope, float(output[0] - slope * position[0]))


def absolute_linearity(
    position_percent: ArrayLike,
    output_percent: ArrayLike,
    *,
    slope: float = 1.0,
    intercept_percent: float = 0.0,
    span: Interval = _WHOLE_TRAVEL,
) -> Linearity:
    """Departure from a line that is given whole; the position needs an index point.

    Other parameters, result and errors as in `independent_linearity`.
    ``max |V / V_T - (A W + B)|`` (potentiometer trade glossary, "absolute conformity").
    """
    position, output = _judged(position_percent, output_percent, span)
    return _linearity("absolute", position, output, slope, intercept_percent)


def hysteresis(
    up_position_percent: ArrayLike,
    up_output_percent: ArrayLike,
    down_position_percent: ArrayLike,
    down_output_percent: ArrayLike,
    *,
    step_percent: float = 0.5,
) -> Hysteresis | None:
    """Difference of the outputs of two directions at the same position.

    Parameters
    ----------
    up_position_percent, up_output_percent : array_like, shape (n,)
        While the position rose; in any order.
    down_position_percent, down_output_percent : array_like, shape (m,)
        While it fell; in any order.
    step_percent : float
        Distance of the positions at which both are compared.

    Returns
    -------
    Hysteresis or None
        None where the two directions share no travel.

    Raises
    ------
    ValueError
        Where a position and its output differ in shape.
    """
    up = _ascending(up_position_percent, up_output_percent)
    down = _ascending(down_position_percent, down_output_percent)
    if up[0].size == 0 or down[0].size == 0:
        return None
    start, stop = max(up[0][0], down[0][0]), min(up[0][-1], down[0][-1])
    if start > stop:
        return None
    grid = np.linspace(start, stop, max(round((stop - start) / step_percent), 1) + 1)
    play = np.abs(np.interp(grid, *up) - np.interp(grid, *down))
    worst = int(np.argmax(play))
    return Hysteresis(float(play[worst]), float(np.median(play)), float(grid[worst]))


def _judged(
    position_percent: ArrayLike, output_percent: ArrayLike, span: Interval
) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """Pairs inside the span, by rising position; refused where they have gaps."""
    position, output = _ascending(position_percent, output_percent)
    inside = (position >= span.start) & (position <= span.stop)
    refusal = why_refused(position[inside], position_known=True, span=span)
    if refusal:
        raise ValueError(f"linearity cannot be judged: {refusal}")
    return position[inside], output[inside]


def _ascending(
    position_percent: ArrayLike, output_percent: ArrayLike
) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """Finite pairs by rising position."""
    position = np.asarray(position_percent, dtype=np.float64)
    output = np.asarray(output_percent, dtype=np.float64)
    if position.shape != output.shape:
        raise ValueError(f"position and output must have one shape, got {position.shape} and {output.shape}")
    finite = np.isfinite(position) & np.isfinite(output)
    order = np.argsort(position[finite], kind="stable")
    return position[finite][order], output[finite][order]


def _minimax_line(
    position: NDArray[np.float64], output: NDArray[np.float64], *, pinned_at: float | None
) -> tuple[float, float]:
    """Slope and intercept of the line of smallest largest departure; the intercept given where pinned."""
    one = np.ones(position.size)
    rows = np.vstack([np.column_stack([position, one, -one]), np.column_stack([-position, -one, -one])])
    intercept = (None, None) if pinned_at is None else (pinned_at, pinned_at)
    solved = linprog(
        [0.0, 0.0, 1.0],
        A_ub=rows,
        b_ub=np.concatenate([output, -output]),
        bounds=[(None, None), intercept, (0.0, None)],
        method="highs",
    )
    slope, at_zero, _ = np.asarray(solved.x, dtype=np.float64)
    return float(slope), float(at_zero)


def _linearity(
    kind: str, position: NDArray[np.float64], output: NDArray[np.float64], slope: float, intercept: float
) -> Linearity:
    """The departures from a line, put together."""
    departure = np.abs(output - (slope * position + intercept))
    worst = int(np.argmax(departure))
    return Linearity(kind, slope, intercept, float(departure[worst]), float(position[worst]))
