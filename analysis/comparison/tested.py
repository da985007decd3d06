"""How hard each side tested a stretch of travel: a clean result of an easier test cures nothing."""

from __future__ import annotations

import math
from collections.abc import Iterator

import numpy as np
from numpy.typing import NDArray

from analysis.comparison.model import Tested
from analysis.comparison.side import Side
from analysis.diagnosis.findings import TrackSurvey
from analysis.diagnosis.visits import count_visits
from analysis.intervals import Interval
from analysis.wording import Wording, say

SIMILAR = 2.0
"""Speeds within this factor of each other, and sampling no slower than by it, are similar (common practice,
no source: a band is shown by the same crossings at half and at twice the speed)."""

SIMILAR_TEMPERATURE_C = 15.0
"""Temperatures further apart than this are another test (common practice, no source)."""

_CONDITIONS = ("engine", "loads", "ignition", "plugged")


def how_tested(side: Side, survey: TrackSurvey | None, travel: Interval, *, restless: bool) -> Tested:
    """How a side crossed a stretch of travel, and what it saw.

    Parameters
    ----------
    side : Side
        For the sampling and the conditions of its records.
    survey : TrackSurvey or None
        Of the track, on the common axis; None where the track was not swept.
    travel : Interval
        On the common axis, in %.
    restless : bool
        As in `count_visits`.
    """
    if survey is None:
        return Tested(0, 0)
    crossed, noisy = count_visits(survey, travel, restless=restless)
    rows = np.flatnonzero(crossed)
    records = sorted({survey.crossings[row].record for row in rows})
    conditions, temperature = _conditions(side, records)
    rates = [1.0 / item.sample_interval_s for name in records if (item := side.record_named(name))]
    return Tested(
        passes=len(rows),
        noisy_passes=int((crossed & noisy).sum()),
        speed_percent_per_s=_median_speed(survey, rows, travel),
        sample_rate_hz=min(rates, default=float("nan")),
        floor_percent=survey.floor_percent,
        breakup_percent=_worst(survey, rows, travel),
        conditions=conditions,
        temperature=temperature,
    )


def easier(
    present: Tested, absent: Tested, *, present_name: str, absent_name: str, as_often: bool
) -> tuple[Wording, ...]:
    """Why the side where the break-up is absent tested the stretch less hard; empty where it did not.

    Parameters
    ----------
    present, absent : Tested
        The side that shows the break-up, and the other.
    present_name, absent_name : str
        ``"before"``, ``"after"``: where, as an adverb.
    as_often : bool
        Whether it must have been crossed at least as often. A cure must be shown so; that a band is on one of
        two sensors alone is left to the test of the counts.
    """
    if absent.passes == 0:
        return (say("it was not crossed {where}", where=absent_name),)
    names = {"one": absent_name, "other": present_name}
    return tuple(_reasons(present, absent, names, as_often))


def _reasons(present: Tested, absent: Tested, names: dict[str, str], as_often: bool) -> Iterator[Wording]:
    if as_often and absent.passes < present.passes:
        counts = {"count": absent.passes, "more": present.passes}
        yield say("it was crossed {count} × {one}, {more} × {other}", **counts, **names)
    if _apart(absent.speed_percent_per_s, present.speed_percent_per_s):
        yield say(
            "it was crossed at {speed:.0f} % of travel a second {one}, at {their_speed:.0f} {other}",
            speed=absent.speed_percent_per_s,
            their_speed=present.speed_percent_per_s,
            **names,
        )
    if absent.sample_rate_hz * SIMILAR < present.sample_rate_hz:
        yield say(
            "it was sampled {rate_hz:.0f} times a second {one}, {their_rate_hz:.0f} times {other}",
            rate_hz=absent.sample_rate_hz,
            their_rate_hz=present.sample_rate_hz,
            **names,
        )
    if absent.floor_percent >= present.breakup_percent:
        yield say(
            "break-up of {depth:.1f} % could not have been seen {one}, where it shows from {floor:.1f} % up",
            depth=present.breakup_percent,
            floor=absent.floor_percent,
            **names,
        )
    yield from _conditions_apart(present, absent, names)


def _conditions_apart(present: Tested, absent: Tested, names: dict[str, str]) -> Iterator[Wording]:
    words = {
        "engine": say("engine"),
        "loads": say("consumers switched on"),
        "ignition": say("ignition"),
        "plugged": say("sensor plugged in"),
    }
    for key, word in words.items():
        ours, theirs = absent.conditions.get(key), present.conditions.get(key)
        if theirs is not None and ours is None:
            yield say("{what}: not stated {one}", what=word, **names)
        elif theirs is not None and ours is not None and not theirs <= ours:
            said = {"state": ", ".join(sorted(ours)), "their_state": ", ".join(sorted(theirs))}
            yield say("{what}: {state} {one}, {their_state} {other}", what=word, **said, **names)
    if present.temperature is not None and absent.temperature is not None:
        gap_c = abs(present.temperature.centre - absent.temperature.centre)
        if gap_c > SIMILAR_TEMPERATURE_C:
            yield say("the temperature differs by {gap_c:.0f} °C", gap_c=gap_c)


def _apart(one: float, other: float) -> bool:
    return bool(math.isfinite(one) and math.isfinite(other)) and not 1.0 / SIMILAR <= one / other <= SIMILAR


def _conditions(side: Side, records: list[str]) -> tuple[dict[str, frozenset[str]], Interval | None]:
    attributes = [item.attributes for name in records if (item := side.record_named(name))]
    said = {
        key: frozenset(_state(item[key]) for item in attributes if key in item)
        for key in _CONDITIONS
        if any(key in item for item in attributes)
    }
    stated = [item["temperature"] for item in attributes if "temperature" in item]
    degrees = [float(value) for value in stated if not isinstance(value, str) and math.isfinite(value)]
    return said, Interval(min(degrees), max(degrees)) if degrees else None


def _state(value: str | float) -> str:
    """A condition as people say it; ``plugged`` is stored as 1 or 0."""
    if isinstance(value, str):
        return value.strip()
    return {1.0: "yes", 0.0: "no"}.get(float(value), f"{value:g}")


def _inside(survey: TrackSurvey, travel: Interval) -> NDArray[np.bool_]:
    edges = survey.edges_percent
    return np.asarray((edges[1:] > travel.start) & (edges[:-1] < travel.stop))


def _worst(survey: TrackSurvey, rows: NDArray[np.intp], travel: Interval) -> float:
    found = survey.breakup_percent[rows][:, _inside(survey, travel)]
    return float(np.nanmax(found)) if np.isfinite(found).any() else float("nan")


def _median_speed(survey: TrackSurvey, rows: NDArray[np.intp], travel: Interval) -> float:
    """Median over crossings of the travel covered inside over the time spent there, in % a second."""
    if not len(rows):
        return float("nan")
    if survey.dwell_s.shape == survey.breakup_percent.shape:
        inside = _inside(survey, travel)
        width = float(survey.edges_percent[1] - survey.edges_percent[0])
        covered = np.isfinite(survey.breakup_percent[rows][:, inside]).sum(axis=1) * width
        spent_s = survey.dwell_s[rows][:, inside].sum(axis=1)
    else:
        covered = np.array([survey.crossings[row].travel.length for row in rows])
        spent_s = np.array([survey.crossings[row].time.length for row in rows])
    return float(np.median(covered / np.maximum(spent_s, 1e-6)))
