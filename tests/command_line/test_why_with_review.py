"""Why it comes and goes on the command line, with what a review beside the capture says of the vehicle."""

from __future__ import annotations

import json
import shutil
from dataclasses import replace
from pathlib import Path
from typing import Any

import pytest
from pypdf import PdfReader

from analysis.captures import layout
from analysis.reports.workshop import Workshop
from analysis.review.sidecar import read_sidecar, write_sidecar
from analysis.review.vehicle import Vehicle
from analysis.vehicle.geometry import TwoPoints
from analysis.vehicle.heights import Rest, RestKind, VehicleHeights
from analysis.vehicle.road import Road, RoadClass
from analysis.vehicle.words import ENTERED
from app.command_line import main

HEIGHTS = VehicleHeights(
    TwoPoints((20.0, -80.0), (80.0, 80.0)), 50.0, (Rest(RestKind.LOADED, -10.0),), ENTERED
)
ENTERED_HERE = Vehicle(HEIGHTS, Road(RoadClass.E, 15.0), 45.0)


@pytest.fixture
def capture(sample: Path, tmp_path: Path) -> Path:
    return Path(shutil.copy(sample, tmp_path / "worn.h5"))


def keep(capture: Path, vehicle: Vehicle) -> None:
    sidecar = read_sidecar(capture)
    write_sidecar(sidecar, replace(sidecar.review, vehicle=vehicle))


def exposure_of(capture: Path, capsys: pytest.CaptureFixture[str]) -> dict[str, Any]:
    assert main(["analyse", str(capture), "--json", "--review"]) == 0
    found: dict[str, Any] = json.loads(capsys.readouterr().out)
    return dict(found["exposure"])


def test_the_heights_and_road_of_a_review_take_the_place_of_the_profiles(
    capture: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    before = exposure_of(capture, capsys)
    keep(capture, ENTERED_HERE)
    after = exposure_of(capture, capsys)
    assert before["heights_source"] != after["heights_source"] == "entered by the technician"
    assert after["minutes"] == 45.0
    assert [item["iso_8608_class"] for item in after["roads"]] == ["E", "A", "C", "D"]
    assert [item["name"] for item in after["roads"][0]["heights"]] == ["normal", "loaded"]
    assert main(["analyse", str(capture), "--json", "--review"]) == 0
    low, high = after["band_mm"]
    band = json.loads(capsys.readouterr().out)["bands"][0]
    slope = 160.0 / 60.0  # the line through both points, by hand
    assert low == pytest.approx((band["start_percent"] - 50.0) * slope, abs=0.3)
    assert high == pytest.approx((band["end_percent"] - 50.0) * slope, abs=0.3)


def test_the_report_says_what_was_entered(
    capture: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("app.errands.reporting._kept", lambda folder: (Workshop(), frozenset()))
    keep(capture, ENTERED_HERE)
    assert main(["report", str(capture), "-o", str(tmp_path / "r.html")]) == 0
    text = (tmp_path / "r.html").read_text(encoding="utf-8")
    assert "On a farm track at 15 km/h" in text
    assert "Heights: entered by the technician." in text
    assert main(["report", str(capture), "-o", str(tmp_path / "d.html"), "--language", "de"]) == 0
    assert "vom Techniker eingegeben" in (tmp_path / "d.html").read_text(encoding="utf-8")


@pytest.mark.parametrize("text", ["{", '{"schema": "wornband-review/9"}', "[]"])
def test_a_review_that_cannot_be_used_is_told_and_the_analysis_goes_on(
    capture: Path, capsys: pytest.CaptureFixture[str], text: str
) -> None:
    layout.review_path(capture).write_text(text, encoding="utf-8")
    assert main(["analyse", str(capture)]) == 0
    said = " ".join(capsys.readouterr().out.split())
    assert "The review beside it is not used: " in said
    assert "loaded height (13 mm down)" in said


def test_a_review_of_another_capture_lends_no_heights(
    capture: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    keep(capture, ENTERED_HERE)
    beside = layout.review_path(capture)
    told = json.loads(beside.read_text(encoding="utf-8"))
    told["capture"] = {"capture_id": "other", "sha256": "0" * 64}
    beside.write_text(json.dumps(told), encoding="utf-8")
    assert exposure_of(capture, capsys)["heights_source"] != "entered by the technician"


@pytest.mark.parametrize("language", ["en", "de"])
@pytest.mark.parametrize("paper", ["a4", "letter"])
def test_page_one_tells_the_customer_why_it_comes_and_goes_and_stays_one_sheet(
    capture: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, language: str, paper: str
) -> None:
    monkeypatch.setattr("app.errands.reporting._kept", lambda folder: (Workshop(), frozenset()))
    target = tmp_path / "r.pdf"
    call = ["report", str(capture), "-o", str(target), "--language", language, "--paper", paper]
    assert main(call) == 0
    first, second = (" ".join(page.extract_text().split()) for page in PdfReader(target).pages[:2])
    why, calculated, last = {
        "en": (
            "Why it comes and goes",
            "calculated for a middling car, not measured",
            "What that does not include",
        ),
        "de": (
            "Warum es kommt und geht",
            "für ein mittleres Auto gerechnet, nicht an diesem",
            "Was das nicht umfasst",
        ),
    }[language]
    assert why in first
    assert calculated in first
    assert last in first
    assert last not in second
