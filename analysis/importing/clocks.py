"""Times of day and dates of a whole block at once, where all are written with the same number of letters."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

import numpy as np
from numpy.typing import NDArray

from analysis.importing.instants import seconds_of

if TYPE_CHECKING:
    import pyarrow as pa

# The last minutes and seconds of a cell, and no zone.
_CLOCK = re.compile(rb"(?<![-+\d])(\d\d):(\d\d)(?:[.,](\d+))?(?=\D*$)")
_MOST_KEYS = 1000  # hours of a month: more different dates and hours are no recording
_DAY_S = 86_400.0


def seconds_of_all(cells: pa.Array) -> NDArray[np.float64] | None:
    """What `seconds_of` gives for each cell, or None where they are not all written alike.

    Parameters
    ----------
    cells : pyarrow.Array of string
        Without quotes and spaces around them.

    Returns
    -------
    ndarray, shape (n_cells,), or None
        Equal to the last bit to what is got cell by cell.
    """
    if not len(cells) or cells.null_count:
        return None
    first = cells[0].as_py().encode()
    found = _CLOCK.search(first)
    letters = _letters(cells, len(first))
    if found is None or letters is None or first.count(b":") > 2 or first[:1] in (b"+", b"-"):
        return None
    minutes, seconds = (_digits(letters, *found.span(group)) for group in (1, 2))
    fraction = _digits(letters, *found.span(3)) if found.group(3) else np.zeros(len(letters), dtype=np.int64)
    if minutes is None or seconds is None or fraction is None or max(minutes.max(), seconds.max()) > 99:
        return None
    if len(found.group(3) or b"") > 12:
        return None
    hours_s = _days_and_hours(letters, found)
    if hours_s is None:
        return None
    scale = 10 ** len(found.group(3) or b"")
    rest_s = (seconds * scale + fraction) / scale  # rounded once, as a decimal number is when it is read
    day_s = np.floor(hours_s / _DAY_S) * _DAY_S if _is_dated(first) else np.zeros(len(letters))
    return np.asarray(day_s + (hours_s - day_s + 60.0 * minutes + rest_s))


def _letters(cells: pa.Array, length: int) -> NDArray[np.uint8] | None:
    """One row of bytes a cell, or None where the lengths differ."""
    import pyarrow as pa

    try:
        fixed = cells.cast(pa.binary()).cast(pa.binary(length))
    except (pa.ArrowInvalid, pa.ArrowNotImplementedError):
        return None
    buffer = fixed.buffers()[1]
    raw = np.frombuffer(buffer, dtype=np.uint8)[fixed.offset * length :]
    return raw[: len(cells) * length].reshape(len(cells), length)


def _digits(letters: NDArray[np.uint8], start: int, stop: int) -> NDArray[np.int64] | None:
    """The number that letters of every cell spell, or None where one of them is no digit."""
    digits = letters[:, start:stop].astype(np.int64) - ord("0")
    if ((digits < 0) | (digits > 9)).any():
        return None
    return np.asarray(digits @ 10 ** np.arange(stop - start - 1, -1, -1, dtype=np.int64))


def _days_and_hours(letters: NDArray[np.uint8], found: re.Match[bytes]) -> NDArray[np.float64] | None:
    """Seconds of the full hours of every cell, dates included; everything beside the minutes says them."""
    keys = letters.copy()
    for group in (1, 2, 3):
        if found.group(group):
            keys[:, slice(*found.span(group))] = ord("0")
    changes = np.flatnonzero((keys[1:] != keys[:-1]).any(axis=1)) + 1
    starts = np.concatenate([[0], changes])
    if len(starts) > _MOST_KEYS:
        return None
    values: list[float] = []
    for start in starts:
        value = seconds_of(bytes(keys[start]).decode("utf-8", "replace"))
        if value is None:
            return None
        values.append(value)
    return np.repeat(values, np.diff([*starts, len(letters)]))


def _is_dated(first: bytes) -> bool:
    return re.search(rb"[-./](?:\d{1,2}|[A-Za-z]{3})[-./]", first) is not None
