"""The JSON object keeps its contract: every key and type, and nothing that JSON (RFC 8259) does not know."""

from __future__ import annotations

import json
import math
from dataclasses import replace
from typing import Any

import numpy as np
from hypothesis import given
from hypothesis import strategies as st

from analysis.captures.model import Role
from analysis.diagnosis.findings import (
    Band,
    Check,
    CoverageSpan,
    CrossingTime,
    Event,
    Findings,
    Result,
    State,
    Statement,
    Verdict,
    VerdictCode,
)
from analysis.diagnosis.serialise import SCHEMA, error_object, findings_object, json_line
from analysis.intervals import Interval
from tests.reports.examples import findings

NUMBER = (int, float, type(None))
CONTRACT: dict[str, Any] = {
    "schema": str,
    "capture": {"path": str, "capture_id": str, "sha256": str},
    "analysis_version": str,
    "verdict": {"code": str, "confidence": NUMBER, "summary": str, "possible_causes": [str]},
    "bands": [
        {
            "start_percent": NUMBER,
            "end_percent": NUMBER,
            "start_v": NUMBER,
            "end_v": NUMBER,
            "start_uncertainty_percent": NUMBER,
            "end_uncertainty_percent": NUMBER,
            "confidence": NUMBER,
            "passes": int,
            "noisy_passes": int,
            "output_smoothness_percent": NUMBER,
            "falls_towards": str,
            "record": str,
            "crossings_s": [[NUMBER]],
        }
    ],
    "checks": [
        {
            "code": str,
            "record": str,
            "value": NUMBER,
            "expanded_uncertainty": NUMBER,
            "unit": str,
            "lower_limit": NUMBER,
            "upper_limit": NUMBER,
            "result": str,
            "source": str,
        }
    ],
    "evidence": [{"code": str, "state": str, "records": [str], "text": str}],
    "coverage": [{"start_percent": NUMBER, "end_percent": NUMBER, "passes": int}],
    "advice": [str],
}


def assert_keeps(item: Any, contract: Any, where: str = "$") -> None:
    """Every key of the contract is there with its type; further keys are allowed."""
    if isinstance(contract, dict):
        assert isinstance(item, dict), where
        for key, inner in contract.items():
            assert key in item, f"{where}.{key} is missing"
            assert_keeps(item[key], inner, f"{where}.{key}")
    elif isinstance(contract, list):
        assert isinstance(item, list), where
        for index, inner in enumerate(item):
            assert_keeps(inner, contract[0], f"{where}[{index}]")
    else:
        assert isinstance(item, contract), f"{where} is {item!r}"
        assert not isinstance(item, bool), f"{where} is {item!r}"


def test_every_key_of_the_contract_is_there_in_its_order_with_its_type() -> None:
    item = json.loads(json_line(findings_object(findings())))
    assert_keeps(item, CONTRACT)
    assert [key for key in item if key in CONTRACT] == list(CONTRACT)
    assert item["schema"] == "wornband-findings/1" == SCHEMA


def test_the_values_are_those_of_the_findings() -> None:
    item = findings_object(findings(), path="./as/named.h5", assumptions=("no step",))
    assert item["capture"]["path"] == "./as/named.h5"
    assert item["verdict"]["code"] == "worn_track"
    assert item["verdict"]["possible_causes"] == ["worn track", "dirt"]
    band = item["bands"][0]
    assert (band["start_percent"], band["end_percent"], band["start_v"], band["end_v"]) == (
        41.9,
        47.7,
        2.09,
        2.37,
    )
    assert item["checks"][0]["lower_limit"] is None
    assert item["checks"][0]["upper_limit"] == 0.1
    assert item["evidence"][0]["records"] == ["001"]
    assert item["coverage"] == [{"start_percent": 4.0, "end_percent": 95.5, "passes": 3}]
    assert item["assumptions"] == ["no step"]


def test_crossing_times_are_of_the_record_that_is_named_beside_them_and_all_others_are_listed_too() -> None:
    band = findings_object(findings())["bands"][0]
    assert band["record"] == "004"
    assert band["crossings_s"] == [[1.31, 1.52], [3.02, 3.2]]
    assert [item["record"] for item in band["crossings"]] == ["004", "004", "005"]


def test_results_and_states_are_the_words_of_the_contract() -> None:
    for result, word in zip(Result, ("pass", "fail", "cannot_tell"), strict=True):
        changed = replace(findings(), checks=(replace(findings().checks[0], result=result),))
        assert findings_object(changed)["checks"][0]["result"] == word
    for state, word in zip(State, ("proved", "refuted", "not_shown"), strict=True):
        changed = replace(findings(), evidence=(Statement("x", state, (), ""),))
        assert findings_object(changed)["evidence"][0]["state"] == word


def test_numpy_numbers_become_plain_ones_and_what_is_not_finite_becomes_null() -> None:
    check = replace(findings().checks[0], value=float(np.float32("nan")), upper_limit=math.inf)
    verdict = replace(findings().verdict, confidence=np.float64(0.5))
    item = findings_object(replace(findings(), checks=(check,), verdict=verdict))
    assert item["checks"][0]["value"] is None
    assert item["checks"][0]["upper_limit"] is None
    assert type(item["verdict"]["confidence"]) is float


def test_a_file_that_cannot_be_analysed_has_its_own_object() -> None:
    item = json.loads(json_line(error_object("b\u00e4d.h5", "the file is cut short; save it again")))
    assert item == {
        "schema": SCHEMA,
        "capture": {"path": "b\u00e4d.h5"},
        "error": "the file is cut short; save it again",
    }


def test_one_object_is_one_line_of_ascii_whatever_the_words_hold() -> None:
    words = replace(findings().verdict, summary="line\nbreak \u2028 \x1b[2J \udcff é")
    line = json_line(findings_object(replace(findings(), verdict=words), path="bad\udcff.h5"))
    assert line.isascii()
    assert len(line.splitlines()) == 1
    assert json.loads(line)["verdict"]["summary"] == words.summary


any_number = st.floats(allow_nan=True, allow_infinity=True)
texts = st.text(max_size=12)


@st.composite
def intervals(draw: st.DrawFn) -> Interval:
    first, second = sorted(draw(st.tuples(*[st.floats(-1e9, 1e9)] * 2)))
    return Interval(first, second)


crossings = st.builds(CrossingTime, st.sampled_from(["001", "002"]), intervals(), st.booleans(), any_number)
bands = st.builds(
    Band,
    travel=intervals(),
    volts=intervals(),
    start_uncertainty_percent=any_number,
    stop_uncertainty_percent=any_number,
    confidence=any_number,
    passes=st.integers(0, 99),
    noisy_passes=st.integers(0, 99),
    output_smoothness_percent=any_number,
    falls_towards=st.sampled_from(["ground", "reference", "both"]),
    record=st.sampled_from(["001", "002"]),
    crossings=st.lists(crossings, max_size=3).map(tuple),
    track=st.sampled_from(Role),
)
limits = st.none() | any_number
checks = st.builds(
    Check, texts, texts, any_number, any_number, texts, limits, limits, st.sampled_from(Result), texts, texts
)
events = st.builds(
    Event,
    texts,
    intervals(),
    st.lists(st.sampled_from(Role), max_size=2).map(tuple),
    any_number,
    limits,
    texts,
    st.booleans(),
)
any_findings = st.builds(
    Findings,
    path=texts,
    capture_id=texts,
    sha256=texts,
    analysis_version=texts,
    profile=texts,
    verdict=st.builds(Verdict, st.sampled_from(VerdictCode), any_number, texts, st.tuples(texts)),
    bands=st.lists(bands, max_size=2).map(tuple),
    checks=st.lists(checks, max_size=2).map(tuple),
    evidence=st.lists(
        st.builds(Statement, texts, st.sampled_from(State), st.tuples(texts), texts), max_size=2
    ).map(tuple),
    coverage=st.lists(st.builds(CoverageSpan, intervals(), st.integers(0, 99)), max_size=2).map(tuple),
    advice=st.lists(texts, max_size=2).map(tuple),
    events=st.lists(events, max_size=2).map(tuple),
    surveys=st.just(()),
    record_outcomes=st.just(()),
)


@given(any_findings)
def test_whatever_the_findings_hold_the_object_comes_back_equal_and_keeps_the_contract(
    made: Findings,
) -> None:
    item = findings_object(made)
    back = json.loads(json.dumps(item, allow_nan=False))
    assert back == item
    assert_keeps(back, CONTRACT)
    assert len(back["bands"]) == len(made.bands)
    for band, source in zip(back["bands"], made.bands, strict=True):
        assert (band["confidence"] is None) == (not math.isfinite(source.confidence))
