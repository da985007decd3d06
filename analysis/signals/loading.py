"""What a load on the wiper does to a potentiometer's output, and how to undo it."""

from __future__ import annotations

import numpy as np
from numpy.typing import ArrayLike, NDArray


def loaded_ratio(position_ratio: ArrayLike, *, load_ratio: float) -> NDArray[np.float64]:
    """Output over applied voltage with a load from the wiper to ground.

    Parameters
    ----------
    position_ratio : array_like
        Wiper position, 0 (ground end) to 1 (reference end); any shape.
    load_ratio : float
        Track resistance over load resistance, 0 for no load.

    Returns
    -------
    ndarray
        Same shape, 0 to 1.

    Notes
    -----
    ``V / V_T = x / (1 + k x (1 - x))``: Todd, The Potentiometer Handbook (Bourns, McGraw-Hill 1975).
    """
    position = np.asarray(position_ratio, dtype=np.float64)
    return position / (1.0 + load_ratio * position * (1.0 - position))


def unloaded_position(output_ratio: ArrayLike, *, load_ratio: float) -> NDArray[np.float64]:
    """Wiper position behind a loaded output: the inverse of `loaded_ratio`.

    Parameters
    ----------
    output_ratio : array_like
        Output over applied voltage, 0 to 1; any shape.
    load_ratio : float
        Track resistance over load resistance.

    Returns
    -------
    ndarray
        Same shape, 0 to 1.

    Notes
    -----
    The positive root of ``v k x**2 + (1 - v k) x - v = 0``, in the form that does not cancel.
    """
    output = np.asarray(output_ratio, dtype=np.float64)
    product = output * load_ratio
    linear = 1.0 - product
    root = np.sqrt(linear**2 + 4.0 * output * product)
    mild = 2.0 * output / np.where(linear >= 0.0, linear + root, 1.0)
    strong = (root - linear) / np.where(product > 0.0, 2.0 * product, 1.0)
    return np.where(linear >= 0.0, mild, strong)
