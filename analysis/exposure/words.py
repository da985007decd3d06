"""Why it comes and goes, in plain words with the numbers, what they rest on and how sure they are."""

from __future__ import annotations

import math
from collections.abc import Sequence

from analysis.captures.record_names import records_in_row
from analysis.control_unit.debounce import ContinuousTimer, Debounce
from analysis.control_unit.rules import ComparisonRule, ControlUnit, RangeRule, RateRule, RuleKind
from analysis.diagnosis.findings import CoverageSpan
from analysis.exposure.amounts import about_words, range_words, share_words, span_words, visits_words
from analysis.exposure.picture import LEFT_OUT, Exposure, RestExposure, hold_that_sets
from analysis.intervals import Interval
from analysis.vehicle.heights import RestKind, VehicleHeights
from analysis.vehicle.words import span_words as heights_span
from analysis.wording import Wording, joined, say

SELDOM_KM = 0.01
"""Fewer visits a kilometre than this are called none: once in a hundred kilometres."""

LIKELY, UNLIKELY = 0.5, 0.01
"""A code is expected from one on, and not below the other."""

RULE_NAMES = {
    RuleKind.RANGE: say("range"),
    RuleKind.RATE: say("rate of change"),
    RuleKind.COMPARISON: say("comparison with the other side"),
}
"""What the rules are called."""


REST_TITLES = {
    RestKind.PARKED: say("Parked"),
    RestKind.ACCESS: say("Access"),
    RestKind.NORMAL: say("Normal"),
    RestKind.LOADED: say("Loaded"),
    RestKind.OFF_ROAD: say("Off-road"),
    RestKind.CORNER: say("Corner"),
}
"""The heights as titles of rows."""


def caveats(exposures: Sequence[Exposure], *, left_out: bool = True) -> str:
    """What the numbers rest on, how sure they are, and what the model leaves out; of one vehicle and band."""
    exposure = exposures[0]
    contact, unit = exposure.contact, exposure.unit
    measured_s = max((item.measured_s for item in contact.moving), default=0.0)
    held = contact.held
    still = (
        say("while it stood ({records})", records=records_in_row(held))
        if held
        else say("while it stood: taken as while it moved, for no record was held there")
    )
    measured = say(
        "What the band does to a reading was measured on {crossings:d} crossings, {measured_s:.1f} s;"
        " {still}.",
        crossings=contact.crossings,
        measured_s=measured_s,
        still=still,
    )
    model = say(
        "The wheel is modelled as a quarter of a middling car (Golden Car) on a random road of ISO 8608 class"
        " {classes}; roads of one class differ by a factor of 1.4 either way in how far the wheel moves.",
        classes=", ".join(sorted({item.road.road_class.value for item in exposures})),
    )
    reads = say("The control unit is taken to read every {tick_ms:.0f} ms.", tick_ms=1e3 * unit.tick_s)
    heights = say("Heights: {source}.", source=exposure.heights.source) if exposure.heights.source else ""
    return joined([measured, model, reads, heights, LEFT_OUT if left_out else ""])


def band_place(exposure: Exposure) -> str:
    """Where the band lies, seen from the normal height."""
    return say("The band is {where}.", where=heights_span(exposure.band_mm))


def tested_place(coverage: Sequence[CoverageSpan], heights: VehicleHeights) -> str:
    """Which heights the captured travel reached, and which rest heights it did not; empty for no travel."""
    if not coverage:
        return ""
    spans = sorted(heights.span_mm(item.travel) for item in coverage)
    low_mm, high_mm = min(item.start for item in spans), max(item.stop for item in spans)
    tested = say("Tested was {where}.", where=heights_span(Interval(low_mm, high_mm)))
    missed = [
        item.kind
        for item in heights.every
        if not any(span.travel.contains(heights.travel_percent(item.height_mm)) for span in coverage)
    ]
    names = joined([say("{name}", name=REST_TITLES[kind]) for kind in missed], ", ")
    return joined([tested, say("Not tested: {names}.", names=names) if missed else ""])


def customer_words(exposures: Sequence[Exposure]) -> str:
    """In two or three sentences for the customer: where the place lies, when it is visited, when hardly."""
    (most, most_on), (least, least_on) = _most_and_least(exposures)
    where = say("The bad place lies {where}.", where=heights_span(exposures[0].band_mm))
    model = say(
        "This is calculated for a middling car, not measured on this one; the evidence page says what it"
        " rests on, and how sure it is."
    )
    if not may_come(most):
        never = say("By calculation no height that the car drives at takes the sensor there.")
        return joined([where, never, model])
    there = say(
        "By calculation the sensor works there {most} of the time at {high} on a {road}, and {least} of it at"
        " {low} {there}.",
        most=_about(most),
        high=_height(most),
        road=most_on.road.words,
        least=_about(least),
        low=_height(least),
        there=say("on the same road")
        if least_on is most_on
        else say("on a {road}", road=least_on.road.words),
    )
    return joined([where, there, _so(most, least), model])


def in_short(exposure: Exposure) -> str:
    """One road in one sentence: the height that is in the band most, and how it is at the normal one."""
    (most, _), (least, _) = _most_and_least([exposure])
    if not may_come(most):
        return say(
            "Calculated: at none of the heights that it drives at does the sensor reach the band on this"
            " road."
        )
    high, share = _height(most), _about(most)
    if least is most:
        return say(
            "Calculated: at {high} the sensor is in the band {most} of the time.", high=high, most=share
        )
    low = say("{name} height", name=least.rest.name)
    if not may_come(least):
        return say(
            "Calculated: at {high} the sensor is in the band {most} of the time, at {low} hardly ever.",
            high=high,
            most=share,
            low=low,
        )
    return say(
        "Calculated: at {high} the sensor is in the band {most} of the time, at {low} {least} of it.",
        high=high,
        most=share,
        low=low,
        least=_about(least),
    )


def what_follows(exposure: Exposure) -> str:
    """What follows from that for the complaint and for a code."""
    (most, _), (least, _) = _most_and_least([exposure])
    return joined([_so(most, least) if may_come(most) else "", _codes(exposure)])


def of_whom(exposure: Exposure) -> str:
    """Whose movement that is, and on which road."""
    return say(
        "Calculated for a middling car on a {road}, not measured on this one; the ranges reach from the"
        " smoothest to the roughest road of that kind.",
        road=exposure.road.words,
    )


def road_summary(exposure: Exposure) -> str:
    """One road in short: how much of the time each height is in the band, and whether a code would set."""
    come, never = _split(exposure)
    parts = [
        say(
            "{share} of the time at {height}",
            share=_about(item),
            height=_height(item),
        )
        for item in come
    ]
    on = say(
        "On a {road}, where the wheel moves {rms_mm:.1f} mm r.m.s.,",
        road=exposure.road.words,
        rms_mm=max((item.rms_mm for item in exposure.rests), default=0.0),
    )
    if not come:
        return joined([say("{on} by calculation the sensor is never in the band.", on=on), _codes(exposure)])
    there = say("{on} by calculation the sensor is in the band {parts}", on=on, parts=joined(parts, ", "))
    if never:
        there = say("{there}, and not at {heights}.", there=there, heights=_named(never))
    else:
        there = say("{there}.", there=there)
    return joined([there, _codes(exposure)])


def rest_details(exposure: Exposure, item: RestExposure) -> str:
    """Everything about one height."""
    if item.rest.standing:
        inside = item.visits.share > 0.0
        where = say("in the band") if inside else say("outside the band")
        return joined(
            [
                say("At {height} the vehicle stands {where}.", height=_height(item), where=where),
                _chance(exposure, item) if inside else "",
            ]
        )
    if not comes(item):
        return say("At {height} the arm does not come into the band.", height=_height(item))
    return joined([_visit(item), _chance(exposure, item)])


def what_would(exposures: Sequence[Exposure]) -> str:
    """Where no code sets on any road: what the band does to a reading, and the rule that would set one."""
    if any(item.chance >= UNLIKELY for one in exposures for item in one.rests):
        return ""
    contact = exposures[0].contact.of(RuleKind.RANGE)
    if contact.share <= 0.0:
        return say("In the band the reading never left the limits.")
    found = [(*held, one) for one in exposures if (held := hold_that_sets(one, RuleKind.RANGE)) is not None]
    broken = say(
        "In the band the reading is out of limits {share} of the time, {run} at a stretch",
        share=share_words(contact.share),
        run=span_words(contact.mean_run_s),
    )
    if not found:
        return say("{broken}: too seldom for any such rule.", broken=broken)
    hold_s, item, one = max(found, key=lambda each: each[0])
    where = say("at {height}", height=_height(item))
    if not item.rest.standing:
        where = say("{where} on a {road}", where=where, road=one.road.words)
    return say(
        "{broken}: a code would be more likely than not with a time of {hold} or less, {where}.",
        broken=broken,
        where=where,
        hold=span_words(hold_s) if hold_s > 0.0 else say("a single reading"),
    )


def rules_words(unit: ControlUnit) -> str:
    """The rules of a control unit."""
    return joined([_rule_words(rule) for _, rule in unit.rules]) or say("The control unit has no rule.")


_Seen = tuple[RestExposure, Exposure]


def _most_and_least(exposures: Sequence[Exposure]) -> tuple[_Seen, _Seen]:
    """The driven height that is in the band most, and the normal one; the least where that is the most."""
    driven = [(item, one) for one in exposures for item in one.rests if not item.rest.standing]
    most = max(driven, key=lambda each: each[0].visits.share)
    normal = [each for each in driven if each[0].rest.kind is RestKind.NORMAL and each[0] is not most[0]]
    return most, min(normal or driven, key=lambda each: each[0].visits.share)


def _so(most: RestExposure, least: RestExposure) -> str:
    apart = least.visits.share < 0.5 * most.visits.share
    return say("So the complaint can come and go with load and road.") if apart else ""


def _split(exposure: Exposure) -> tuple[list[RestExposure], list[RestExposure]]:
    """Heights that are in the band at times, most of it first, and driven heights that never are."""
    come = [item for item in exposure.rests if may_come(item)]
    never = [item for item in exposure.rests if not may_come(item) and not item.rest.standing]
    return sorted(come, key=lambda item: -item.visits.share), never


def comes(item: RestExposure) -> bool:
    """Whether the band is visited at a height, or stood in."""
    return item.visits.share > 0.5 or item.per_km >= SELDOM_KM


def may_come(item: RestExposure) -> bool:
    """Whether the band is visited at a height on some road of the class: what is not is called never."""
    return comes(item) or item.share_over_class.stop >= UNLIKELY


def _about(item: RestExposure) -> Wording:
    """The share of time in the band over the roads of the class; where the vehicle stands, all or none."""
    return share_words(item.visits.share) if item.rest.standing else about_words(item.share_over_class)


def _codes(exposure: Exposure) -> str:
    """Whether a code would set, in short."""
    told = [item for item in exposure.rests if item.chance_over_class.stop >= UNLIKELY]
    if not told:
        return say(
            "The calculated chance of a code within {minutes:.0f} min is below 1 % at every height.",
            minutes=exposure.minutes,
        )
    parts = [
        say("{chance} at {name} height", chance=about_words(item.chance_over_class), name=item.rest.name)
        for item in told
    ]
    return say(
        "The calculated chance of a code within {minutes:.0f} min is {parts}.",
        minutes=exposure.minutes,
        parts=joined(parts, ", "),
    )


def _chance(exposure: Exposure, item: RestExposure) -> Wording:
    over = range_words(item.chance_over_class)
    chance = share_words(item.chance)
    return say(
        "Chance of a code within {minutes:.0f} min: {chance}.",
        minutes=exposure.minutes,
        chance=_over_class(chance, over),
    )


def _visit(item: RestExposure) -> Wording:
    told = say(
        "At {height}: in the band {share}; the arm comes into it {per_km} times a kilometre, for {stay} on"
        " average",
        height=_height(item),
        share=_over_class(
            say("{share} of the time", share=share_words(item.visits.share)),
            range_words(item.share_over_class),
        ),
        per_km=visits_words(item.per_km),
        stay=span_words(item.visits.mean_stay_s),
    )
    if not math.isfinite(item.long_stay_s):
        return say("{told}.", told=told)
    return say("{told}, one in ten over {long_stay}.", told=told, long_stay=span_words(item.long_stay_s))


def _over_class(value: Wording, over: Wording | None) -> Wording:
    if over is None:
        return value
    return say("{value} ({over} over the roads of this class)", value=value, over=over)


def _height(item: RestExposure) -> Wording:
    """A height's name, and how far it is from the normal one."""
    return say("{name} height{away}", name=item.rest.name, away=_away(item))


def _away(item: RestExposure) -> Wording:
    height_mm = item.rest.height_mm
    if abs(height_mm) < 0.5:
        return say("")
    if height_mm < 0.0:
        return say(" ({down_mm:.0f} mm down)", down_mm=-height_mm)
    return say(" ({up_mm:.0f} mm up)", up_mm=height_mm)


def _named(items: list[RestExposure]) -> Wording:
    return joined([say("{height}", height=_height(item)) for item in items], ", ")


def _rule_words(rule: RangeRule | RateRule | ComparisonRule) -> Wording:
    patience = _patience(rule.debounce)
    if isinstance(rule, RangeRule):
        return say(
            "A control unit stores a code when the signal is below {low_v:.2f} V or above {high_v:.2f} V"
            " {patience}.",
            low_v=rule.limits_v.start,
            high_v=rule.limits_v.stop,
            patience=patience,
        )
    if isinstance(rule, RateRule):
        return say(
            "It stores one when the signal changes by more than {limit:.0f} V/s {patience}.",
            limit=rule.limit_v_per_s,
            patience=patience,
        )
    return say(
        "It stores one for both sides when they disagree by more than {tolerance_v:.2f} V {patience}.",
        tolerance_v=rule.tolerance_v,
        patience=patience,
    )


def _patience(debounce: Debounce) -> Wording:
    if isinstance(debounce, ContinuousTimer):
        return say("for {hold} without a break", hold=span_words(debounce.hold_s))
    return say(
        "until a counter, {up:d} up for a bad reading and {down:d} down for a good one, is at {limit:d}",
        up=debounce.up,
        down=debounce.down,
        limit=debounce.limit,
    )
