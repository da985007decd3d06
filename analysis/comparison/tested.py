"""How hard each side tested a stretch of travel: a clean result of an easier test cures nothing."""

from __future__ import annotations

import math
from collections.abc import Iterator
from statistics import median

from analysis.captures.known_words import known_word
from analysis.comparison.model import Tested
from analysis.comparison.side import Side, survey_of
from analysis.diagnosis.findings import Band, CrossingTime
from analysis.intervals import Interval
from analysis.wording import Wording, listed, say

SIMILAR = 2.0
"""Speeds within this factor of each other, and sampling no slower than by it, are similar (common practice,
no source: a band is shown by the same crossings at half and at twice the speed)."""

SIMILAR_TEMPERATURE_C = 15.0
"""Temperatures further apart than this are another test (common practice, no source)."""

_CONDITIONS = ("engine", "loads", "ignition", "plugged")


def how_tested(side: Side, band: Band | None) -> Tested:
    """How a side crossed a stretch of travel, and what it saw.

    Parameters
    ----------
    side : Side
        For the sampling and the conditions of its records.
    band : Band or None
        The stretch as `analysis.diagnosis.assess` judges it on this side; None where the track was not swept.
    """
    if band is None or not band.passes:
        return Tested(0, 0)
    records = sorted({item.record for item in band.crossings})
    conditions, temperature = _conditions(side, records)
    rates = [1.0 / item.sample_interval_s for name in records if (item := side.record_named(name))]
    survey = survey_of(side.findings, band.track)
    return Tested(
        passes=band.passes,
        noisy_passes=band.noisy_passes,
        confidence=band.confidence,
        speed_percent_per_s=_median_speed(band.crossings, band.travel),
        sample_rate_hz=min(rates, default=float("nan")),
        floor_percent=survey.floor_percent if survey is not None else float("nan"),
        breakup_percent=band.output_smoothness_percent,
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
            said = {"state": _states(ours), "their_state": _states(theirs)}
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


def _states(said: frozenset[str]) -> Wording:
    """Conditions in a row; those that the program proposes can be said in any language."""
    return listed(known_word(item) for item in sorted(said))


def _state(value: str | float) -> str:
    """A condition as people say it; ``plugged`` is stored as 1 or 0."""
    if isinstance(value, str):
        return value.strip()
    return {1.0: "yes", 0.0: "no"}.get(float(value), f"{value:g}")


def _median_speed(crossings: tuple[CrossingTime, ...], travel: Interval) -> float:
    """Median over crossings of the stretch over the time spent there, in % a second; NaN for none."""
    spent_s = [item.time.length for item in crossings if item.time.length > 0.0]
    return travel.length / median(spent_s) if spent_s else float("nan")
