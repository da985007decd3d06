"""Where the explanation is told: text, JSON and the evidence page."""

from __future__ import annotations

import io
import json
from pathlib import Path

from app.errands.analysing import Request, analyse
from tests.reports.test_json_contract import CONTRACT, assert_keeps

SAMPLES = Path(__file__).resolve().parents[2] / "sample_captures"
WORN = str(SAMPLES / "W1041-rear-left-height.h5")


def _printed(path: str, request: Request) -> str:
    out, err = io.StringIO(), io.StringIO()
    assert analyse([path], request, out=out, err=err) == 0, err.getvalue()
    return out.getvalue()


def test_the_text_tells_why_it_comes_and_goes_where_heights_are_known() -> None:
    told = " ".join(_printed(WORN, Request()).split())
    assert "Why it comes and goes" in told
    assert "On a smooth motorway at 110 km/h" in told
    assert "mm of wheel travel below the normal height" in told
    without = _printed(WORN, Request("ride-height"))
    assert "Why it comes and goes" not in without


def test_the_json_gains_a_key_and_keeps_its_contract() -> None:
    made = json.loads(_printed(WORN, Request(as_json=True)))
    assert_keeps(made, CONTRACT)
    roads = made["exposure"]["roads"]
    assert [item["iso_8608_class"] for item in roads] == ["A", "C", "D"]
    loaded = next(item for item in roads[0]["heights"] if item["name"] == "loaded")
    assert 0.9 < loaded["share_in_band"] < 1.0
    assert made["exposure"]["paragraph"].startswith("The band is")
    without = json.loads(_printed(WORN, Request("ride-height", as_json=True)))
    assert "exposure" not in without
