"""Uncertainty of what was measured, after the GUM (JCGM 100:2008) and its supplement 1 (JCGM 101:2008).

Pure functions on numbers and small matrices. What a probability of conformance means for a check is
decided in `analysis.diagnosis.conformance`.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from itertools import product
from math import factorial, floor, hypot, isfinite, sqrt

import numpy as np
from numpy.typing import ArrayLike, NDArray
from scipy.optimize import brentq
from scipy.special import ndtr, ndtri
from scipy.stats import t as student_t

# Half-width over standard uncertainty: JCGM 100, 4.3.7 (rectangular), 4.3.9 (triangular), H.1.3.4 (U-shaped).
_DIVISORS = {"rectangular": sqrt(3.0), "triangular": sqrt(6.0), "u-shaped": sqrt(2.0)}

# A rectangular part below this share of the rest is as good as normal: the exact sum would lose more
# digits to cancellation than the shape is worth.
_NEGLIGIBLE_SHARE = 0.02

# The exact sum runs over 2**n corners; beyond that the smallest are merged (their sum is normal by then).
_MOST_RECTANGULAR_PARTS = 6


def standard_uncertainty(half_width: float, *, distribution: str, coverage_factor: float = 2.0) -> float:
    """Standard uncertainty of a quantity known to lie within ± `half_width`.

    Parameters
    ----------
    half_width : float
        Largest departure, in any unit; for ``"normal"`` an expanded uncertainty. NaN gives NaN.
    distribution : str
        ``"rectangular"``, ``"triangular"``, ``"u-shaped"`` or ``"normal"``.
    coverage_factor : float
        What an expanded uncertainty was multiplied with; used by ``"normal"`` alone.

    Returns
    -------
    float
        In the unit of `half_width`.

    Raises
    ------
    ValueError
        Where the distribution is unknown or the half-width negative.

    Notes
    -----
    JCGM 100:2008, 4.3.3 (normal), 4.3.7 (rectangular), 4.3.9 (triangular), H.1.3.4 (U-shaped).
    """
    if half_width < 0.0:
        raise ValueError(f"half_width must not be negative, got {half_width}")
    if distribution == "normal":
        return half_width / coverage_factor
    if distribution not in _DIVISORS:
        known = ", ".join([*_DIVISORS, "normal"])
        raise ValueError(f"distribution must be one of {known}, got {distribution!r}")
    return half_width / _DIVISORS[distribution]


def resolution_uncertainty(step: float) -> float:
    """Standard uncertainty of one reading that was rounded to a multiple of `step`: ``step / (2 sqrt 3)``.

    JCGM 100:2008, F.2.2.1.
    """
    return standard_uncertainty(0.5 * step, distribution="rectangular")


def combined(*components: float) -> float:
    """Root of the sum of squares of uncorrelated standard uncertainties (JCGM 100, eq. 10); 0 for none."""
    return hypot(*components)


def expanded(standard: float, *, coverage_factor: float = 2.0) -> float:
    """Expanded uncertainty, ``k u`` (JCGM 100, eq. 18)."""
    return coverage_factor * standard


def covariance_matrix(uncertainties: ArrayLike, correlation: ArrayLike) -> NDArray[np.float64]:
    """Covariances from standard uncertainties and correlation coefficients.

    Parameters
    ----------
    uncertainties : array_like, shape (n,)
        Standard uncertainties.
    correlation : array_like, shape (n, n)
        Correlation coefficients, ones on the diagonal, symmetric.

    Returns
    -------
    ndarray, shape (n, n)

    Raises
    ------
    ValueError
        Where the shapes do not fit each other.
    """
    spread = np.asarray(uncertainties, dtype=np.float64)
    coefficients = np.asarray(correlation, dtype=np.float64)
    if coefficients.shape != (spread.size, spread.size):
        raise ValueError(
            f"correlation must have shape {(spread.size, spread.size)}, got {coefficients.shape}"
        )
    return np.outer(spread, spread) * coefficients


def propagated(sensitivities: ArrayLike, covariance: ArrayLike) -> float:
    """Standard uncertainty of a result whose inputs are correlated: ``sqrt(c' V c)``.

    Parameters
    ----------
    sensitivities : array_like, shape (n,)
        Partial derivatives of the result.
    covariance : array_like, shape (n, n)
        Covariances of the inputs.

    Notes
    -----
    JCGM 100:2008, eq. 13. A variance that rounding made negative is taken as 0.
    """
    slope = np.asarray(sensitivities, dtype=np.float64)
    variance = float(slope @ np.asarray(covariance, dtype=np.float64) @ slope)
    return sqrt(max(variance, 0.0))


def sensitivities(
    function: Callable[[NDArray[np.float64]], float], values: ArrayLike, uncertainties: ArrayLike
) -> NDArray[np.float64]:
    """Partial derivatives by central differences over one standard uncertainty to each side.

    Parameters
    ----------
    function : callable
        Takes an array of shape (n,), returns a number.
    values, uncertainties : array_like, shape (n,)
        Where, and how far to step. An input with uncertainty 0 gets the derivative 0: it adds nothing.

    Returns
    -------
    ndarray, shape (n,)

    Notes
    -----
    JCGM 100:2008, 5.1.3, note 2.
    """
    centre = np.asarray(values, dtype=np.float64)
    steps = np.asarray(uncertainties, dtype=np.float64)
    result = np.zeros(centre.shape)
    for index in np.flatnonzero(steps):
        move = np.zeros(centre.shape)
        move[index] = steps[index]
        result[index] = (function(centre + move) - function(centre - move)) / (2.0 * steps[index])
    return result


def effective_degrees_of_freedom(components: Sequence[float], degrees_of_freedom: Sequence[float]) -> float:
    """Degrees of freedom of a combined uncertainty (Welch-Satterthwaite, JCGM 100, eq. G.2b).

    Parameters
    ----------
    components : sequence of float
        Uncertainty contributions ``|c_i| u(x_i)``.
    degrees_of_freedom : sequence of float
        One for each; infinite where the component is known exactly.

    Returns
    -------
    float
        Not rounded; infinite where no component has finite degrees of freedom.
    """
    total = combined(*components) ** 4
    share = sum(part**4 / dof for part, dof in zip(components, degrees_of_freedom, strict=True))
    return total / share if share > 0.0 else float("inf")


def coverage_factor(degrees_of_freedom: float, *, level: float = 0.95) -> float:
    """Two-sided t factor, the degrees of freedom truncated to the next lower integer first (JCGM 100, G.4.1).

    Parameters
    ----------
    degrees_of_freedom : float
        At least 1; may be infinite.
    level : float
        Probability inside the interval.

    Raises
    ------
    ValueError
        Below one degree of freedom.
    """
    if not degrees_of_freedom >= 1.0:
        raise ValueError(f"degrees_of_freedom must be at least 1, got {degrees_of_freedom}")
    whole = floor(degrees_of_freedom) if isfinite(degrees_of_freedom) else degrees_of_freedom
    return float(student_t.ppf(0.5 + 0.5 * level, whole))


def coverage_half_width(
    *, normal_u: float = 0.0, rectangular_half_widths: Sequence[float] = (), level: float = 0.95
) -> float:
    """Half-width of the symmetric coverage interval of a sum of one normal and several rectangular parts.

    Exact, so that one rectangular part alone gives ``0.95 a`` and never more than ``a``, where twice the
    standard uncertainty would give ``1.15 a``.

    Parameters
    ----------
    normal_u : float
        Standard uncertainty of the normal part.
    rectangular_half_widths : sequence of float
        Half-widths of the rectangular parts; may be empty.
    level : float
        Probability inside the interval, between 0 and 1.

    Returns
    -------
    float
        0 where every part is 0.

    Notes
    -----
    The model of JCGM 101:2008, 9.2. The distribution of the sum of rectangular parts is the
    inclusion-exclusion over the corners of a box (Feller, An Introduction to Probability Theory, vol. 2,
    I.9); the normal part turns each truncated power into its mean. More than six rectangular parts, or
    parts under 2 % of the whole, are merged into the normal one.
    """
    unit = max([normal_u, *rectangular_half_widths], default=0.0)
    if unit == 0.0:
        return 0.0
    parts, spread = _split_parts(normal_u / unit, [width / unit for width in rectangular_half_widths])
    if not parts:
        return unit * spread * float(ndtri(0.5 + 0.5 * level))
    reach = sum(parts) + 10.0 * spread
    wanted = 0.5 + 0.5 * level
    found = brentq(lambda x: _sum_distribution(x, parts, spread) - wanted, 0.0, reach, xtol=1e-12 * reach)
    return unit * float(found)


def _split_parts(normal_u: float, half_widths: Sequence[float]) -> tuple[list[float], float]:
    """Rectangular parts worth an exact treatment, and the standard uncertainty of everything else."""
    ordered = sorted((width for width in half_widths if width > 0.0), reverse=True)
    total = combined(normal_u, *(width / sqrt(3.0) for width in ordered))
    kept = [width for width in ordered if width >= _NEGLIGIBLE_SHARE * total][:_MOST_RECTANGULAR_PARTS]
    merged = ordered[len(kept) :]
    return kept, combined(normal_u, *(width / sqrt(3.0) for width in merged))


def _sum_distribution(x: float, half_widths: list[float], normal_u: float) -> float:
    """Probability that the sum lies at or below `x`."""
    count = len(half_widths)
    signs = np.array(list(product((1.0, -1.0), repeat=count)))
    powers = _mean_truncated_power(x + signs @ np.array(half_widths), normal_u, count)
    scale = factorial(count) * 2.0**count * float(np.prod(half_widths))
    return float(np.sum(np.prod(signs, axis=1) * powers)) / scale


def _mean_truncated_power(centre: NDArray[np.float64], spread: float, power: int) -> NDArray[np.float64]:
    """Mean of ``max(centre + spread Z, 0) ** power`` for a standard normal Z, by recurrence in the power."""
    if spread < 1e-9:  # of the widest part: nothing
        return np.maximum(centre, 0.0) ** power
    ratio = centre / spread
    previous = ndtr(ratio)
    current = centre * previous + spread * np.exp(-0.5 * ratio**2) / sqrt(2.0 * np.pi)
    for order in range(2, power + 1):
        previous, current = current, centre * current + (order - 1) * spread**2 * previous
    return np.asarray(current)


def travel_percent_uncertainty(
    *,
    signal_v: float,
    ground_v: float,
    reference_v: float,
    independent_u_v: tuple[float, float, float],
    gain_error: float = 0.0,
    offset_error_v: float = 0.0,
    correlation: float = 1.0,
) -> float:
    """Standard uncertainty of ``100 (signal - ground) / (reference - ground)``, in % of travel.

    Gain and offset errors of one recorder are the same on all three wires, and then all but cancel in the
    ratio; treated as independent they would make it look many times worse than it is.

    Parameters
    ----------
    signal_v, ground_v, reference_v : float
        What was read.
    independent_u_v : tuple of 3 floats
        Standard uncertainties of signal, ground and reference that are their own: noise, resolution.
    gain_error : float
        Largest share of reading (rectangular).
    offset_error_v : float
        Largest offset in volts (rectangular).
    correlation : float
        Between the channels, of gain and of offset error: 1 for one recorder channel moved from wire to
        wire, 0 for unrelated instruments.

    Raises
    ------
    ValueError
        Where reference and ground read alike, or the correlation lies outside 0 to 1.

    Notes
    -----
    JCGM 100:2008, eq. 13; a case like H.2, where leaving the covariance out makes u(R) 2.8 times too big.
    """
    span_v = reference_v - ground_v
    if span_v == 0.0:
        raise ValueError("reference_v and ground_v must differ, got the same voltage twice")
    if not 0.0 <= correlation <= 1.0:
        raise ValueError(f"correlation must lie in 0 to 1, got {correlation}")
    ratio = (signal_v - ground_v) / span_v
    slope = np.array([1.0, ratio - 1.0, -ratio]) * 100.0 / span_v
    shared = np.full((3, 3), correlation)
    np.fill_diagonal(shared, 1.0)
    voltages_v = np.array([signal_v, ground_v, reference_v])
    gain_u = standard_uncertainty(gain_error, distribution="rectangular")
    offset_u_v = standard_uncertainty(offset_error_v, distribution="rectangular")
    covariance = np.diag(np.square(independent_u_v)) + shared * (
        gain_u**2 * np.outer(voltages_v, voltages_v) + offset_u_v**2
    )
    return propagated(slope, covariance)
