"""Tapped, warm, cold, wet, unplugged: each record gives its statement, and only what it shows."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from scipy.stats import kendalltau

from analysis.captures.memory import make_capture
from analysis.captures.model import Capture, Record, Role, Step
from analysis.diagnosis.examine import examine
from analysis.diagnosis.findings import Findings, Result, State, Statement, VerdictCode
from analysis.intervals import Interval
from analysis.reports.consequences import meaning, recommended
from analysis.reports.customer_words import Kind, customer_sentence
from analysis.reports.verdicts import only_at_the_sensor, verdict_title
from analysis.simulation import hand
from analysis.simulation.bench import simulate
from analysis.simulation.circuit import Circuit
from analysis.simulation.disturbances import SupplyFault
from analysis.simulation.recorder import Recorder
from analysis.simulation.scenario import THREE, RecordPlan, Scenario
from analysis.simulation.track import Sensor, WornBand
from tests.diagnosis.examples import RATE_HZ, Wires, bursts, record, standing, sweep, visit, worn
from tests.signals.examples import rest

BAND = Interval(42.0, 48.0)
TESTED = {
    Step.TAP: "tapping_quiet",
    Step.HEAT: "warm_quiet",
    Step.COLD: "cold_quiet",
    Step.WET: "wet_quiet",
}
DONE = {
    Step.TAP: "only while the sensor was tapped",
    Step.HEAT: "only while the sensor was warm",
    Step.COLD: "only while the sensor was cold",
    Step.WET: "only while the sensor was wet",
}


def _said(found: Findings, code: str) -> Statement | None:
    return next((item for item in found.evidence if item.code == code), None)


def _state(found: Findings, code: str) -> State | None:
    said = _said(found, code)
    return None if said is None else said.state


def _text(found: Findings, code: str) -> str:
    said = _said(found, code)
    assert said is not None
    return said.text


def _under(step: Step, *, loose: bool, roles: tuple[Role, ...] = THREE) -> Record:
    still = rest(50.0, 4.0, RATE_HZ)
    opened = bursts(len(still), per_s=5.0, lasting_s=0.01, seed=8) if loose else None
    return record("009", step, still, opened=opened, seed=8, roles=roles)


@pytest.mark.parametrize("step", TESTED)
def test_a_quiet_record_under_a_condition_proves_that_and_one_that_breaks_up_refutes_it(step: Step) -> None:
    quiet = examine(visit(travel=sweep(6), extra=[_under(step, loose=False)]))
    loose = examine(visit(travel=sweep(6), extra=[_under(step, loose=True)]))
    assert _state(quiet, TESTED[step]) is State.PROVED
    assert _state(loose, TESTED[step]) is State.REFUTED
    for found in (quiet, loose):
        said = _said(found, TESTED[step])
        assert said is not None
        assert said.records == ("009",)


@pytest.mark.parametrize(
    ("step", "words"),
    [
        (Step.TAP, "left alone it is quiet"),
        (Step.HEAT, "only when warm"),
        (Step.COLD, "only when cold"),
        (Step.WET, "only when wet"),
    ],
)
def test_only_is_said_where_all_other_records_are_quiet(step: Step, words: str) -> None:
    alone = examine(visit(travel=sweep(6), extra=[_under(step, loose=True)]))
    assert words in _text(alone, TESTED[step])
    path = sweep(6)
    also = examine(visit(opened=bursts(len(path), seed=3), extra=[_under(step, loose=True)]))
    assert words not in _text(also, TESTED[step])
    assert "too" in _text(also, TESTED[step])
    # Tapped or warmed, a contact inside the sensor opens as a wire does: the verdict must not leave it out.
    assert alone.verdict.code is also.verdict.code is VerdictCode.SIGNAL_WIRING
    assert "a contact inside it" in alone.verdict.summary
    assert "a contact inside the sensor" in alone.verdict.possible_causes
    assert "inside" not in also.verdict.summary
    # What the customer reads does not lay it on the wire either, and names what was done.
    assert only_at_the_sensor(alone)
    assert not only_at_the_sensor(also)
    assert "the signal wire" in customer_sentence(also)
    told = customer_sentence(alone)
    assert "a bad contact in the position sensor" in told
    assert "wire" not in told
    assert DONE[step] in told
    assert DONE[step] in meaning(alone, Kind.HEIGHT)[1]
    assert verdict_title(alone) == "Bad contact at the sensor"
    assert verdict_title(also) == "Signal wiring faulty"
    assert "wire" not in recommended(alone)


@pytest.mark.parametrize("step", TESTED)
def test_a_record_that_did_not_watch_the_signal_shows_nothing(step: Step) -> None:
    found = examine(visit(travel=sweep(2), extra=[_under(step, loose=False, roles=(Role.REFERENCE,))]))
    assert _state(found, TESTED[step]) is State.NOT_SHOWN


def test_a_visit_without_such_records_says_nothing_of_them() -> None:
    found = examine(visit(travel=sweep(2)))
    for code in (*TESTED.values(), "unplugged_quiet", "open_level_known", "depends_on_temperature"):
        assert _said(found, code) is None


# -- unplugged ------------------------------------------------------------------------------------


def _simulated(circuit: Circuit, *, worn_at: Interval | None = None, pulled: float = 0.0) -> Capture:
    """A round that ends with the sensor unplugged, out of the simulated circuit."""
    rng = np.random.default_rng(5)
    bands = () if worn_at is None else (WornBand(worn_at, severity=0.8),)
    sensor = Sensor(bands=bands)
    style = hand.HandStyle(stroke_s=1.2)
    still = hand.hold(rng, 50.0, 2.0, None, sensor.stops)
    plans = (
        RecordPlan(Step.REFERENCE, still, THREE),
        RecordPlan(Step.SWEEP, hand.sweep(rng, sensor.stops, 8, style), THREE),
        RecordPlan(Step.UNPLUGGED, still, THREE, plugged=False),
    )
    reference = SupplyFault("static", -pulled) if pulled else None
    made = Scenario(
        sensor,
        circuit,
        Recorder(rate_hz=2_000.0),
        plans,
        VerdictCode.WORN_TRACK if bands else VerdictCode.NO_FAULT_FOUND,
        reference=reference,
    )
    return simulate(made, 5)[0]


# Unplugged, below 0.3 V: Chevrolet Traverse 2009, DTC P2122 to P2138, Circuit/System Testing.
@pytest.mark.parametrize(
    ("circuit", "words"),
    [
        (Circuit(pull_ohm=200e3, pull_up=True), "pull-up: 4.17 V"),
        (Circuit(pull_ohm=50e3, pull_up=True), "pull-up: 4.76 V"),
        (Circuit(pull_ohm=200e3, pull_up=False), "pull-down, or none: 0.00 V"),
        (Circuit(pull_ohm=None), "pull-down, or none: 0.0"),
    ],
)
def test_unplugged_the_wire_shows_its_pull_as_the_divider_with_the_probe_has_it(
    circuit: Circuit, words: str
) -> None:
    # A pull-up of R beside the probe's 1 MΩ leaves 5 V times 1 M / (1 M + R).
    found = examine(_simulated(circuit))
    assert _state(found, "open_level_known") is State.PROVED
    assert words in _text(found, "open_level_known")
    assert _state(found, "unplugged_quiet") is State.PROVED


@pytest.mark.parametrize("up", [True, False])
def test_break_ups_that_go_where_the_unplugged_wire_stands_are_those_of_a_contact_that_opens(
    up: bool,
) -> None:
    # Below the rail that the wire is pulled to, so that there is somewhere to go.
    place = Interval(30.0, 34.0) if up else Interval(60.0, 64.0)
    found = examine(_simulated(Circuit(pull_ohm=100e3, pull_up=up), worn_at=place))
    assert found.verdict.code is VerdictCode.WORN_TRACK
    assert found.bands[0].falls_towards == ("reference" if up else "ground")
    assert _state(found, "contact_opens") is State.PROVED


def test_break_ups_that_go_the_other_way_are_more_than_an_open_contact() -> None:
    path = sweep(8)
    swept = record("004", Step.SWEEP, path, opened=worn(path, BAND, seed=4), seed=5)
    high = record("005", Step.UNPLUGGED, rest(95.0, 2.0, RATE_HZ))
    found = examine(make_capture([*standing(), swept, high]))
    assert found.bands[0].falls_towards == "ground"
    assert _state(found, "contact_opens") is State.REFUTED


def test_a_level_between_high_and_low_is_not_explained() -> None:
    odd = record("009", Step.UNPLUGGED, rest(30.0, 2.0, RATE_HZ))
    assert _state(examine(visit(travel=sweep(2), extra=[odd])), "open_level_known") is State.NOT_SHOWN


def test_a_wire_that_is_disturbed_without_the_sensor_clears_the_sensor_of_that() -> None:
    still = rest(95.0, 4.0, RATE_HZ)
    opened = bursts(len(still), per_s=5.0, lasting_s=0.01, seed=8)
    found = examine(visit(travel=sweep(6), extra=[record("009", Step.UNPLUGGED, still, opened=opened)]))
    assert _state(found, "unplugged_quiet") is State.REFUTED


# 4.8 to 5.2 V: Saturn Sky 2009, DTC P2122 or P2123, Circuit/System Testing.
@pytest.mark.parametrize(("alone_v", "state"), [(5.0, State.PROVED), (4.3, State.REFUTED)])
def test_whether_a_reference_returns_without_the_sensor_is_said(alone_v: float, state: State) -> None:
    loose = record("009", Step.UNPLUGGED, rest(0.5, 2.0, RATE_HZ), wires=Wires(reference_v=alone_v))
    low = Wires(reference_v=4.3)
    found = examine(visit(travel=sweep(4), wires=low, extra=[loose]))
    assert _state(found, "reference_returns_unplugged") is state
    assert _said(examine(visit(travel=sweep(4), extra=[loose])), "reference_returns_unplugged") is None


def test_a_ground_that_was_read_unplugged_only_is_not_shown_under_load() -> None:
    still = rest(50.0, 2.0, RATE_HZ)
    ground = record("001", Step.GROUND, still, roles=(Role.GROUND,), attributes={"plugged": 0})
    swept = record("002", Step.SWEEP, sweep(6), roles=(Role.SIGNAL,))
    found = examine(make_capture([ground, swept]))
    assert _state(found, "ground_good") is State.NOT_SHOWN
    assert "unplugged: not shown under load" in _text(found, "ground_good")
    (made,) = (item for item in found.checks if item.code == "ground_drop")
    assert made.title == "Sensor ground, unplugged"
    assert made.result is Result.PASS


# -- temperature of the sweeps, stated conditions, probe points -------------------------------------


def _at(temperatures: dict[float, bool]) -> Findings:
    """Sweeps at temperatures, each worn or quiet."""
    records = []
    for number, (celsius, bad) in enumerate(temperatures.items(), 4):
        path = sweep(6)
        opened = worn(path, BAND, seed=number) if bad else None
        told: dict[str, str | float] = {"temperature": celsius, "engine": "off"}
        records.append(record(f"{number:03d}", Step.SWEEP, path, opened=opened, seed=number, attributes=told))
    return examine(make_capture([*standing(), *records]))


def test_a_band_that_shows_on_warm_sweeps_only_depends_on_the_temperature() -> None:
    found = _at({15.0: False, 18.0: False, 60.0: True, 65.0: True})
    assert _state(found, "depends_on_temperature") is State.PROVED
    assert "0 of 12 crossings break up below 39 °C, 12 of 12 above" in _text(found, "depends_on_temperature")


def test_a_band_at_every_temperature_does_not_depend_on_it() -> None:
    assert _state(_at({15.0: True, 60.0: True}), "depends_on_temperature") is State.NOT_SHOWN


def test_temperatures_that_hardly_differ_say_nothing() -> None:
    assert _said(_at({18.0: False, 24.0: True}), "depends_on_temperature") is None


def test_stated_conditions_and_probe_points_are_carried_into_the_evidence() -> None:
    path = sweep(4)
    told: dict[str, str | float] = {
        "ignition": "on",
        "engine": "running",
        "loads": "headlights {on}",
        "temperature": 60.0,
    }
    made = record("004", Step.SWEEP, path, attributes=told)
    where = {"probe_point": "sensor end", "return_point": "battery negative"}
    made = replace(made, channels=tuple(replace(item, attributes=where) for item in made.channels))
    found = examine(make_capture([*standing(), made]))
    text = _text(found, "conditions_stated")
    for words in ("ignition on", "engine running", "loads headlights {on}", "60 °C"):
        assert words in text
    assert "sensor end; against: battery negative" in _text(found, "probed_at")
    assert "only the sensor end was probed" in _text(found, "far_end_probed")
    bare = examine(visit(travel=sweep(2)))
    assert _said(bare, "conditions_stated") is None
    assert _said(bare, "probed_at") is None


# -- wear or dirt -----------------------------------------------------------------------------------


def test_wear_breaks_up_alike_from_the_first_crossing_to_the_last() -> None:
    path = sweep(12)
    swept = record("004", Step.SWEEP, path, opened=worn(path, BAND, seed=4), seed=5)
    found = examine(make_capture([*standing(), swept]))
    assert _state(found, "constant_over_crossings") is State.PROVED
    depth = [item.breakup_percent for item in found.bands[0].crossings]
    assert kendalltau(np.arange(len(depth)), depth).pvalue > 0.01


def test_dirt_breaks_up_less_from_crossing_to_crossing() -> None:
    path = sweep(12)
    fading = np.clip(1.0 - 0.11 * np.floor(np.arange(len(path)) / len(path) * 12.0), 0.0, 1.0)
    swept = record("004", Step.SWEEP, path, opened=worn(path, BAND, seed=4) * fading, seed=5)
    found = examine(make_capture([*standing(), swept]))
    assert _state(found, "constant_over_crossings") is State.REFUTED
    assert "less from crossing to crossing" in _text(found, "constant_over_crossings")
    depth = [item.breakup_percent for item in found.bands[0].crossings]
    reference = kendalltau(np.arange(len(depth)), depth)
    assert reference.statistic < -0.5
    assert reference.pvalue < 0.01


def test_few_crossings_tell_nothing_of_wear_or_dirt() -> None:
    path = sweep(4)
    swept = record("004", Step.SWEEP, path, opened=worn(path, BAND, seed=4), seed=5)
    assert _state(examine(make_capture([*standing(), swept])), "constant_over_crossings") is State.NOT_SHOWN
