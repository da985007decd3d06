from __future__ import annotations

import json
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from analysis.errors import ReviewError
from analysis.review.job import (
    FACTS,
    Job,
    Photo,
    fact,
    job_object,
    parse_job,
    placed,
    with_fact,
    with_words,
)
from analysis.review.model import Review
from analysis.review.stored import parse_review, review_text
from tests.reports.examples import CAPTURE

words = st.text(max_size=12)
texts = st.dictionaries(words, words, max_size=3)
jobs = st.builds(
    Job,
    facts=texts,
    words=texts,
    notes=words,
    pictures=st.tuples(words),
    photos=st.tuples(st.builds(Photo, words, words)),
    offer=texts,
    closing=st.tuples(words),
    repaired=st.booleans(),
    show_number=st.booleans(),
    markers=st.booleans(),
    other=words,
    kept=st.dictionaries(st.sampled_from(["colour", "seen"]), words, max_size=2),
)


@given(jobs)
def test_a_job_is_read_back_as_it_was_written(job: Job) -> None:
    review = replace(Review(sha256="ab" * 32), job=job)
    assert parse_review(review_text(review)) == review


def test_a_review_without_a_job_is_written_as_it_was_before_there_were_jobs() -> None:
    assert "job" not in json.loads(review_text(Review(sha256="ab" * 32)))
    assert job_object(Job()) == {}


@pytest.mark.parametrize(
    ("stored", "where"),
    [
        ("text", "job"),
        ({"facts": []}, "facts"),
        ({"facts": {"vin": 7}}, "vin"),
        ({"photos": {"path": "a"}}, "photos"),
        ({"photos": [{"caption": "no path"}]}, "path"),
        ({"closing": [1]}, "closing"),
        ({"repaired": "yes"}, "repaired"),
        ({"notes": None}, "notes"),
    ],
)
def test_a_damaged_job_is_refused_with_its_place(stored: object, where: str) -> None:
    with pytest.raises(ReviewError, match=repr(where)):
        parse_job(stored)


def test_what_the_technician_enters_stands_before_what_the_capture_says() -> None:
    assert fact(Job(), CAPTURE, "vehicle") == "Halvorsen Tern 4"
    assert fact(Job(), CAPTURE, "odometer") == "148220 km"
    assert fact(with_fact(Job(), "vehicle", " Varsund Kite 3 "), CAPTURE, "vehicle") == "Varsund Kite 3"
    assert fact(with_fact(Job(), "vehicle", ""), CAPTURE, "vehicle") == ""


def test_an_unknown_fact_is_refused() -> None:
    with pytest.raises(ValueError, match="must be one of"):
        with_fact(Job(), "shoe size", "44")


def test_the_programs_words_come_back_when_the_technicians_are_taken_away() -> None:
    own = with_words(Job(), "meaning", "mine")
    assert own.words == {"meaning": "mine"}
    assert with_words(own, "meaning", None) == Job()


def test_every_fact_that_is_asked_for_is_printed() -> None:
    from analysis.reports.customer_page import customer_page
    from analysis.reports.evidence_page import evidence_page
    from analysis.reports.subject import Subject
    from tests.reports.examples import findings

    job = Job(facts={key: f"fact-{key}-fact" for key in FACTS})
    subject = Subject(CAPTURE, findings(), review=Review(job=job))
    printed = repr(customer_page(subject)) + repr(evidence_page(subject))
    for key in FACTS:
        assert f"fact-{key}-fact" in printed, key


def test_a_capture_is_placed_where_the_job_says_that_its_sensor_sits() -> None:
    job = with_fact(with_fact(Job(), "mounting", " front right "), "technician", "J. Halvorsen")
    moved = placed(CAPTURE, job)
    assert moved.text("mounting") == "front right"
    assert moved.text("technician") == CAPTURE.text("technician")
    assert moved.records is CAPTURE.records


def test_a_job_that_says_nothing_else_of_the_sensor_leaves_the_capture_as_it_is() -> None:
    assert placed(CAPTURE, Job()) is CAPTURE
    assert placed(CAPTURE, with_fact(Job(), "mounting", CAPTURE.text("mounting"))) is CAPTURE
    assert placed(CAPTURE, with_fact(Job(), "complaint", "sits low")) is CAPTURE
