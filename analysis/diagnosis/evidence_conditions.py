"""Under which conditions it was seen: tapped, warm, cold, wet, unplugged; where and how it was probed."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

import numpy as np
from scipy.stats import fisher_exact

from analysis.captures.known_words import known_word
from analysis.captures.model import Role, Step
from analysis.captures.record_names import record_alone
from analysis.diagnosis.findings import Band, Result, State, Statement
from analysis.diagnosis.judging import unplugged
from analysis.diagnosis.seen import QUIET_WEIGHT, Seen, names_of
from analysis.diagnosis.strays import substance
from analysis.diagnosis.studies import Study
from analysis.wording import Template, Wording, joined, say

APART_C = 10.0
"""Sweeps are compared as cooler and warmer where their temperatures leave a gap as wide as this."""

UNLIKELY = 0.05
"""Cooler and warmer crossings differ where chance alone would do so less often (Fisher's exact test)."""

PULLED_UP = 0.6
"""Unplugged, a signal above this share of the feed is pulled up: a probe of 1 MΩ beside a pull-up of 470 kΩ
leaves 0.68 of it."""

PULLED_DOWN = 0.06
"""...and below this share down, or by nothing but the probe: at most 0.3 V of 5 (Chevrolet Traverse 2009, DTC
P2122, P2123, P2127, P2128 or P2138, Circuit/System Testing)."""

_QUIET: Mapping[Step, Wording] = {
    Step.TAP: say("Tapping the sensor does not disturb the output."),
    Step.HEAT: say("Warm, the output stays quiet."),
    Step.COLD: say("Cold, the output stays quiet."),
    Step.WET: say("Wet, the output stays quiet."),
}
_ONLY: Mapping[Step, Wording] = {
    Step.TAP: say("Tapping the sensor disturbs the output; left alone it is quiet."),
    Step.HEAT: say("It breaks up only when warm; the other records are quiet."),
    Step.COLD: say("It breaks up only when cold; the other records are quiet."),
    Step.WET: say("It breaks up only when wet; the other records are quiet."),
}
_ALSO: Mapping[Step, Wording] = {
    Step.TAP: say("It breaks up while the sensor is tapped, and without it too."),
    Step.HEAT: say("It breaks up when warm, and otherwise too."),
    Step.COLD: say("It breaks up when cold, and otherwise too."),
    Step.WET: say("It breaks up when wet, and otherwise too."),
}
_CODES = {
    Step.TAP: "tapping_quiet",
    Step.HEAT: "warm_quiet",
    Step.COLD: "cold_quiet",
    Step.WET: "wet_quiet",
}


def condition_statements(seen: Seen) -> Iterator[Statement]:
    """All statements on conditions that have a place in this capture."""
    for step in _CODES:
        yield from _under(seen, step)
    yield from _temperature(seen)
    yield from _unplugged_level(seen)
    yield from _unplugged_wire(seen)
    yield from _reference_returns(seen)
    yield from _recorded_under(seen)
    yield from _probed_at(seen)


def _weight(items: Sequence[Study]) -> float:
    """Weight of all disturbances of the signals, whatever place they lie at."""
    return sum(
        substance(event, item, role)
        for item in items
        for role in item.surveys
        for event in item.disturbances(role)
    )


def _under(seen: Seen, step: Step) -> Iterator[Statement]:
    own = [item for item in seen.studies.every if item.record.step is step]
    if not own:
        return
    watched = [item for item in own if item.surveys]
    if not watched:
        alone = joined(map(record_alone, names_of(own)), ", ")
        text = say("The signal was not watched in the record taken for this: {records}.", records=alone)
        yield Statement(_CODES[step], State.NOT_SHOWN, names_of(own), text)
        return
    if _weight(watched) < QUIET_WEIGHT:
        yield Statement(_CODES[step], State.PROVED, names_of(watched), _QUIET[step])
        return
    others = [
        item for item in seen.studies.every if item.surveys and item.record.step not in (step, Step.UNPLUGGED)
    ]
    only = bool(others) and _weight(others) < QUIET_WEIGHT and not seen.sure_bands
    yield Statement(_CODES[step], State.REFUTED, names_of(watched), (_ONLY if only else _ALSO)[step])


def _temperature(seen: Seen) -> Iterator[Statement]:
    """A band that breaks up on warmer sweeps and not on cooler ones, or the other way round."""
    told = {
        item.record.name: float(value)
        for item in seen.studies.swept
        if isinstance(value := item.record.attributes.get("temperature"), (int, float))
    }
    border = _border(sorted(set(told.values())))
    if border is None or not seen.sure_bands:
        return
    band = max(seen.sure_bands, key=lambda item: item.confidence)
    cooler, warmer = (_counts(band, told, border, warm=warm) for warm in (False, True))
    records = tuple(told)
    if min(sum(cooler), sum(warmer)) < 1:
        return
    if float(fisher_exact(np.array([cooler, warmer])).pvalue) >= UNLIKELY:
        text = say(
            "It breaks up on {cool} of {cool_all} crossings below {border:.0f} °C and on "
            "{warm} of {warm_all} above: no difference is shown.",
            cool=cooler[0],
            cool_all=sum(cooler),
            warm=warmer[0],
            warm_all=sum(warmer),
            border=border,
        )
        yield Statement("depends_on_temperature", State.NOT_SHOWN, records, text)
        return
    text = say(
        "It depends on the temperature: {cool} of {cool_all} crossings break up below "
        "{border:.0f} °C, {warm} of {warm_all} above.",
        cool=cooler[0],
        cool_all=sum(cooler),
        warm=warmer[0],
        warm_all=sum(warmer),
        border=border,
    )
    yield Statement("depends_on_temperature", State.PROVED, records, text)


def _border(temperatures_c: Sequence[float]) -> float | None:
    """Middle of the widest gap between the temperatures; None where none is wide enough."""
    if len(temperatures_c) < 2:
        return None
    gaps = np.diff(temperatures_c)
    widest = int(np.argmax(gaps))
    if gaps[widest] < APART_C:
        return None
    return float(temperatures_c[widest] + 0.5 * gaps[widest])


def _counts(band: Band, told: Mapping[str, float], border: float, *, warm: bool) -> tuple[int, int]:
    """Crossings that broke up and that did not, of the sweeps on one side of a temperature."""
    noisy = [
        item.noisy for item in band.crossings if item.record in told and (told[item.record] > border) == warm
    ]
    return sum(noisy), len(noisy) - sum(noisy)


def _median_v(items: Sequence[Study], role: Role) -> float | None:
    levels = [float(np.nanmedian(item.cells.volts[role].mean)) for item in items if _holds(item, role)]
    return float(np.median(levels)) if levels else None


def _holds(item: Study, role: Role) -> bool:
    series = item.cells.volts.get(role)
    return series is not None and bool(np.isfinite(series.mean).any())


def _loose(seen: Seen) -> list[Study]:
    return [item for item in seen.studies.every if item.record.step is Step.UNPLUGGED]


def _unplugged_level(seen: Seen) -> Iterator[Statement]:
    """Where the signal wire stands alone, and whether break-ups go there as an open contact's do."""
    items = [item for item in _loose(seen) if _holds(item, Role.SIGNAL)]
    level_v = _median_v(items, Role.SIGNAL)
    feed_v = seen.studies.feed.reference_v - seen.studies.feed.ground_v
    if level_v is None or feed_v <= 0.0:
        return
    share = (level_v - seen.studies.feed.ground_v) / feed_v
    side = "reference" if share >= PULLED_UP else "ground" if share <= PULLED_DOWN else ""
    if not side:
        text = say(
            "Unplugged, the signal wire stands at {level_v:.2f} V, neither high nor low: "
            "something else feeds it.",
            level_v=level_v,
        )
        yield Statement("open_level_known", State.NOT_SHOWN, names_of(items), text)
        return
    text = (
        say("Unplugged, the signal wire shows its pull-up: {level_v:.2f} V.", level_v=level_v)
        if side == "reference"
        else say("Unplugged, the signal wire shows its pull-down, or none: {level_v:.2f} V.", level_v=level_v)
    )
    yield Statement("open_level_known", State.PROVED, names_of(items), text)
    band = max(seen.sure_bands, key=lambda item: item.confidence, default=None)
    if band is None or band.falls_towards == "both":
        return
    if band.falls_towards == side:
        text = say("The break-ups go where the unplugged wire stands: the contact opens.")
        yield Statement("contact_opens", State.PROVED, (*names_of(items), band.record), text)
    else:
        text = say("The break-ups go the other way than the unplugged wire: more than a contact that opens.")
        yield Statement("contact_opens", State.REFUTED, (*names_of(items), band.record), text)


def _unplugged_wire(seen: Seen) -> Iterator[Statement]:
    """A wire that is disturbed without the sensor: then the sensor did not do it."""
    items = [item for item in _loose(seen) if item.surveys]
    if not items:
        return
    if _weight(items) < QUIET_WEIGHT:
        text = say("With the sensor unplugged the signal wire is quiet.")
        yield Statement("unplugged_quiet", State.PROVED, names_of(items), text)
        return
    text = say("The signal wire is disturbed with the sensor unplugged too: that is not the sensor's doing.")
    yield Statement("unplugged_quiet", State.REFUTED, names_of(items), text)


def _reference_returns(seen: Seen) -> Iterator[Statement]:
    """Whether a reference that is off comes back once this sensor is unplugged."""
    check, limit = seen.check("reference_level"), seen.studies.profile.limit("reference_level")
    items = [item for item in _loose(seen) if _holds(item, Role.REFERENCE)]
    level_v = _median_v(items, Role.REFERENCE)
    if check is None or limit is None or check.result is not Result.FAIL or level_v is None:
        return
    low = limit.lower if limit.lower is not None else -np.inf
    high = limit.upper if limit.upper is not None else np.inf
    if low <= level_v <= high:
        text = say(
            "Unplugged, the reference returns to {level_v:.2f} V: this sensor, or its load, pulls it.",
            level_v=level_v,
        )
        yield Statement("reference_returns_unplugged", State.PROVED, names_of(items), text)
        return
    text = say("Unplugged, the reference stays at {level_v:.2f} V: it is not this sensor.", level_v=level_v)
    yield Statement("reference_returns_unplugged", State.REFUTED, names_of(items), text)


def _recorded_under(seen: Seen) -> Iterator[Statement]:
    """The conditions that the sweeps state; what they do not state is not claimed."""
    swept = seen.studies.swept or seen.studies.every
    parts = [template(told=_told(swept, key)) for key, template in _CONDITIONS.items() if _told(swept, key)]
    if any(unplugged(item.record) for item in swept):
        parts.append(say("sensor unplugged"))
    if parts:
        text = say("What is said holds for these conditions: {conditions}.", conditions=joined(parts, ", "))
        yield Statement("conditions_stated", State.PROVED, names_of(swept), text)


def _told(items: Sequence[Study], key: str) -> str:
    """What the records state of a condition, each value once; the technician's own words stay as they are."""
    values = (item.record.attributes.get(key, "") for item in items)
    shown = (f"{value:g}" if isinstance(value, (int, float)) else str(value).strip() for value in values)
    return joined(map(known_word, dict.fromkeys(value for value in shown if value)), ", ")


_CONDITIONS = {
    "ignition": Template("ignition {told}"),
    "engine": Template("engine {told}"),
    "loads": Template("loads {told}"),
    "moved": Template("moved {told}"),
    "temperature": Template("{told} °C"),
}


def _probed_at(seen: Seen) -> Iterator[Statement]:
    """Where the probe on the signal sat and against what it was measured."""
    swept = seen.studies.swept or seen.studies.every
    points, returns = (_places(swept, key) for key in ("probe_point", "return_point"))
    if points and returns:
        text = say("The signal was probed at: {points}; against: {returns}.", points=points, returns=returns)
    elif points:
        text = say("The signal was probed at: {points}; against what is not stated.", points=points)
    else:
        return
    yield Statement("probed_at", State.PROVED, names_of(swept), text)


def _places(items: Sequence[Study], key: str) -> str:
    values = (
        str(channel.attributes.get(key, "")).strip()
        for item in items
        for channel in item.record.channels
        if channel.role in (Role.SIGNAL, Role.SECOND_SIGNAL)
    )
    return joined(map(known_word, dict.fromkeys(value for value in values if value)), ", ")
