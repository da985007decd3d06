"""What a column is, guessed from the words of its heading and from how it behaves; never from colour."""

from __future__ import annotations

import re
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from analysis.captures.model import Role
from analysis.importing.units import TIME, TIME_NAMES, VOLTAGE, is_other_unit, unit_of, without_accents
from analysis.importing.wire_words import names_another_of_a_sensor, names_no_wire, said_role
from analysis.wording import Wording, say

_SAYS_SO = say("its heading says so")
_TIME_WORDS = re.compile(
    rf"^(?:(?:(?:rel|abs|elapsed|sample)[ ._]?)?{TIME_NAMES}\b|elapsed\W*$)", re.IGNORECASE
)
_COUNTER_WORDS = re.compile(
    r"^(?:no|nr|#|n|index|idx|sample|samples|row|point|count|zeile|number)\.?$", re.IGNORECASE
)
_CHANNEL = re.compile(  # without accents; in the languages of the workshops around
    r"^\W*(?:(?:analog\w*|input|measuring|mess)\W?)?"
    r"(?:ch|chan|channel|input|analog|ain?|kanal|eingang|probe|tastkopf|voie|canale?|kanaal|kanal|wire|leitung"
    r"|trace|track|spur|column|spalte|voltage|spannung|u|v|y)"
    r"(?:\W*(?:no|nr)?\W*)(?:\d{1,2}|[a-h])\b|^\W*[a-h]\W*(?:[\[(][^\])]*[\])])?\W*$"
)
_CHANNEL_WORDS = re.compile(  # in the languages of the workshops around
    r"^(?:ch|chan|channel|kanal|canale?|voie|kanaal|kanal|input|eingang|wire|leitung|probe|source|quelle|name"
    r"|signal name|label)\W*(?:no|nr|number|nummer|name|id)?\W*$",
    re.IGNORECASE,
)

_SUMMARY_WORDS = re.compile(r"(?<=\w )(?:min|max|minimum|maximum|peak|std)\.?$", re.IGNORECASE)
_LEAST_LEVELS = 8  # samples: a signal that was measured takes more than two values
_MOST_WORDS = 3  # of the name of a wire
_MOST_VOLTS = 60.0  # whole numbers above are counts; a battery of a vehicle has less
_MOST_SIGNAL_V, _LEAST_V = 7.0, 0.3  # of a signal of 5 V: what it reaches, and how far it moves in a sweep
_BEYOND = 20.0  # per cent
_POSITION_WORDS = re.compile(
    r"\b(?:posi\w*|pos|stellung|height|hohe|level|pedal|throttle|travel|weg|angle)\b"
)
_COUNT_WORDS = re.compile(r"\b(?:adc|raw|counts?|lsb|digits?)(?:\b|\d|$)", re.IGNORECASE)


@dataclass(frozen=True, slots=True)
class Guess:
    """What a column seems to be.

    Parameters
    ----------
    role : Role or None
        None where nothing fits: the column is left out unless a role is named.
    reason : Wording
        Why, for the technician.
    sure : bool
        Whether the heading says so: another column that merely behaves so stands back.
    """

    role: Role | None
    reason: Wording
    sure: bool = False


def is_time(name: str, unit: str) -> bool:
    """Whether heading or unit say that a column holds times."""
    known = unit_of(unit)
    if known is not None:
        return known.quantity == TIME
    return not is_other_unit(unit) and bool(
        _TIME_WORDS.match(without_accents(name))
    )  # "T [°C]" is a temperature


def is_counter(name: str, values: NDArray[np.float64]) -> bool:
    """Whether a column counts its rows."""
    if not np.isfinite(values).all():
        return False
    steps = np.diff(values)
    return bool(len(steps)) and bool((steps == 1.0).all()) and (
        bool(_COUNTER_WORDS.match(name.strip())) or bool(values[0] in (0.0, 1.0))
    )  # fmt: skip


def counts_cycles(name: str, unit: str, values: NDArray[np.float64]) -> bool:
    """Whether a column without a unit counts something slower than rows: whole numbers that never fall.

    A wire that was recorded in counts falls now and then, if only by its noise.
    """
    finite = values[np.isfinite(values)]
    if unit or names_channel(name) or len(np.unique(finite)) < 2:
        return False
    return bool((finite == np.round(finite)).all()) and bool((np.diff(finite) >= 0.0).all())


def counts_by_name(name: str) -> bool:
    """Whether a heading says that a column counts rows."""
    return bool(_COUNTER_WORDS.match(name.strip()))


def names_channel(words: str) -> bool:
    """Whether words name a channel of a recorder, or a wire."""
    plain = without_accents(words).lower()
    return bool(_CHANNEL.match(plain)) or (len(plain.split()) <= _MOST_WORDS and said_role(words) is not None)


def numbers_channels(name: str) -> bool:
    """Whether a heading says that a column tells which channel a row belongs to."""
    return bool(_CHANNEL_WORDS.match(without_accents(name).strip()))


def rises(values: NDArray[np.float64]) -> bool:
    """Whether a column rises from row to row by nearly the same amount, as a time does."""
    if not np.isfinite(values).all():
        return False
    steps = np.diff(values)
    return (
        len(steps) > 2 and bool((steps > 0).all()) and float(np.ptp(steps)) <= 0.5 * float(np.median(steps))
    )


def guess(name: str, unit: str, volts: NDArray[np.float64]) -> Guess:
    """The role of a column that is no time.

    Parameters
    ----------
    name, unit : str
        As in the file.
    volts : ndarray, shape (n_samples,)
        Some of its samples all over the record, in volts.

    Returns
    -------
    Guess
    """
    known = unit_of(unit)
    if unit and (known is None or known.quantity != VOLTAGE) and unit.upper() not in ("-", "1"):
        return Guess(None, say("its unit {unit} is no voltage", unit=unit))
    if _SUMMARY_WORDS.search(name.replace("_", " ")):
        return Guess(None, say("it holds the least or the greatest of several samples"))
    role = None if names_another_of_a_sensor(name) else said_role(name)
    if role is not None:
        return _supply_of_what(volts) if role is Role.SUPPLY else Guess(role, _SAYS_SO, sure=True)
    if names_no_wire(name):
        return Guess(None, say("its heading names something else than a voltage"))
    finite = volts[np.isfinite(volts)]
    if 2 * len(finite) < len(volts):
        return Guess(None, say("most of its cells are empty"))
    return by_behaviour(finite)


def counts_by_word(name: str) -> bool:
    """Whether a heading speaks of raw counts of a converter."""
    return bool(_COUNT_WORDS.search(name.replace("_", " ")))


def is_count(name: str, unit: str, values: NDArray[np.float64]) -> bool:
    """Whether heading and numbers say that a column holds counts of a converter, not volts."""
    if unit or not counts_by_word(name):
        return False
    finite = values[np.isfinite(values)]
    return len(finite) > 0 and float(finite.max()) > _MOST_VOLTS and bool((finite == np.round(finite)).all())


def is_per_cent(name: str, values: NDArray[np.float64], factor: float) -> bool:
    """Whether a column of positions without a unit of its own goes from 0 to 100 and not from 0 to 5 V.

    Parameters
    ----------
    name : str
        Of the column.
    values : ndarray, shape (n_samples,)
        Some of its samples, as the file has them.
    factor : float
        Volts of one of them if they were volts.
    """
    finite = values[np.isfinite(values)]
    if not len(finite) or not _POSITION_WORDS.search(without_accents(name.replace("_", " "))):
        return False
    low, high = (float(value) for value in np.quantile(finite, (0.02, 0.98)))
    wide_v = (high - low) * factor
    share = low > -_BEYOND and _MOST_SIGNAL_V < high < 100.0 + _BEYOND and high - low > _BEYOND
    return share and not _LEAST_V < wide_v < _MOST_SIGNAL_V


def _supply_of_what(volts: NDArray[np.float64]) -> Guess:
    """A supply at 5 V is that of the sensor."""
    finite = volts[np.isfinite(volts)]
    middle = float(np.median(finite)) if len(finite) else 0.0
    if 4.5 <= middle <= 5.5:
        reason = say("its heading says supply: at {middle_v:.3f} V that of the sensor", middle_v=middle)
        return Guess(Role.REFERENCE, reason, sure=True)
    return Guess(Role.SUPPLY, _SAYS_SO, sure=True)


def by_behaviour(volts: NDArray[np.float64]) -> Guess:
    """The role of a column by its level and movement alone.

    Parameters
    ----------
    volts : ndarray, shape (n_samples,)
        Finite ones.
    """
    if not len(volts):
        return Guess(None, say("it holds no finite sample"))
    low, middle, high = (float(value) for value in np.quantile(volts, (0.02, 0.5, 0.98)))
    said = {"middle_v": middle, "spread_v": high - low}
    if len(volts) >= _LEAST_LEVELS and len(np.unique(volts)) == 2:
        return Guess(None, say("it only switches between two values"))
    if high - low > 0.3 and low > -1.0 and high < 7.0:
        return Guess(Role.SIGNAL, say("it moves by {spread_v:.2f} V between the rails", **said))
    if abs(middle) < 0.5:
        return Guess(Role.GROUND, say("it stays near zero, at {middle_v:.3f} V", **said))
    if 4.5 <= middle <= 5.5:
        return Guess(Role.REFERENCE, say("it stays near 5 V, at {middle_v:.3f} V", **said))
    if 9.0 <= middle <= 32.0:
        return Guess(Role.SUPPLY, say("it stays at {middle_v:.1f} V, as a battery does", **said))
    return Guess(None, say("it stays at {middle_v:.2f} V, which fits no wire of a sensor", **said))
