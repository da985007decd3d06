"""Numbers as people enter them: with a point or a comma, with a unit or without."""

from __future__ import annotations

import math
import re

from analysis.importing.units import VOLTAGE, unit_of

_ENTERED = re.compile(r"([+\-]?[\d.,]+(?:[eE][+\-]?\d+)?)\s*(\S.*)?")
_NOUGHT = re.compile(r"[+\-]?0+(?:[.,]0*)?\s*V?")
_MOST = 1e12


def number_entered(text: str, quantity: str = "") -> float | None:
    """A number, in the base unit of a quantity.

    Parameters
    ----------
    text : str
        ``"0,001"``, ``"1 ms"``, ``"10 kHz"``.
    quantity : str
        As in `analysis.importing.units`; empty where no unit may stand behind the number.

    Returns
    -------
    float or None
        None where it is no number other than nought, or its unit is of another quantity.
    """
    found = _ENTERED.fullmatch(text.strip().replace("\N{MINUS SIGN}", "-"))
    if found is None:
        return None
    factor = 1.0
    if found.group(2):
        unit = unit_of(found.group(2))
        if unit is None or unit.quantity != quantity:
            return None
        factor = unit.factor
    try:
        value = float(found.group(1).replace(",", ".")) * factor
    except ValueError:
        return None
    return value if math.isfinite(value) and 0.0 < abs(value) < _MOST else None


def volts_entered(text: str) -> float | None:
    """A number of volts, nought among them; None where it is none."""
    value = number_entered(text, VOLTAGE)
    return 0.0 if value is None and _NOUGHT.fullmatch(text.strip()) else value


def positive_entered(text: str, quantity: str = "") -> float | None:
    """The same, above nought."""
    value = number_entered(text, quantity)
    return value if value is not None and value > 0.0 else None


def count_entered(text: str) -> int | None:
    """A whole number from nought, or None."""
    return int(text) if text.strip().isdecimal() and len(text.strip()) < 6 else None
