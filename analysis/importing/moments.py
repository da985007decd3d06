"""When a record began, where its times say so: then its own times count from there."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta

DAY_S = 86_400.0
_CLOCKS_FROM = datetime(2000, 1, 1)  # `analysis.importing.instants.seconds_of` counts dates from there
_SPREADSHEETS_FROM = datetime(1899, 12, 30)  # of day 0; the wrong leap day of 1900 is in it
_SINCE_1970_S = (1e9, 5e9)  # 2001 to 2128
_SPREADSHEET_DAYS = (20_000.0, 80_000.0)  # 1954 to 2119


def moment_of(time_s: float, *, clock: bool, factor: float, day: datetime | None = None) -> str:
    """A moment as ISO 8601 writes it, or an empty text where the time counts from anywhere.

    Parameters
    ----------
    time_s : float
        As it was read, in seconds.
    clock : bool
        Whether it was written as a time of day or a date.
    factor : float
        Seconds of one unit of its column.
    day : datetime or None
        On which day the clock counts from midnight, where a column beside it says so.

    Returns
    -------
    str
        ``"09:14:07.500"`` where no date is known, ``"2026-03-04T09:14:07.500"`` by the recorder's clock, and
        with ``+00:00`` where it was counted since 1970.
    """
    if clock and time_s <= 0.0:
        return ""  # it counts from its first row: a span, no time of day
    if clock:
        dated = time_s >= 7.0 * DAY_S
        moment = (_CLOCKS_FROM if dated or day is None else day) + timedelta(seconds=time_s)
        return (moment if dated or day is not None else moment.time()).isoformat(timespec="milliseconds")
    if factor == DAY_S and _SPREADSHEET_DAYS[0] < time_s / DAY_S < _SPREADSHEET_DAYS[1]:
        return (_SPREADSHEETS_FROM + timedelta(seconds=time_s)).isoformat(timespec="milliseconds")
    if _SINCE_1970_S[0] < time_s < _SINCE_1970_S[1]:
        return datetime.fromtimestamp(time_s, UTC).isoformat(timespec="milliseconds")
    return ""
