"""What the technician enters for the report, kept with the review: nothing here that is not printed."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from typing import Any

from analysis.captures.model import Capture
from analysis.errors import ReviewError

FACTS = (
    "job",
    "date",
    "technician",
    "vehicle",
    "registration",
    "vin",
    "odometer",
    "complaint",
    "fault_codes",
    "sensor",
    "mounting",
    "part_number",
    "load",
    "earlier_repairs",
)
"""Keys of the job facts, in the order in which they are asked for."""

PLACE = ("vehicle", "registration", "vin", "sensor", "mounting", "part_number")
"""Facts that say which sensor of which car it is."""

OFFER_AMOUNTS = ("part", "labour", "calibration")
"""Amounts of an offer, before tax."""

CLOSING = ("calibrated", "codes_cleared", "heights_measured", "road_test", "captured_again")
"""What is done after a repair, in that order."""


@dataclass(frozen=True, slots=True)
class Photo:
    """A photo of the customer's own car.

    Parameters
    ----------
    path : str
        Where it lies: beside the capture, or absolute.
    caption : str
        What it shows.
    """

    path: str
    caption: str = ""


@dataclass(frozen=True, slots=True)
class Job:
    """The job as the report prints it; everything is optional.

    Parameters
    ----------
    facts : mapping of str to str
        Of the keys `FACTS`; what is missing is taken from the capture.
    words : mapping of str to str
        The technician's wording of a paragraph, by its key; the program's stands where there is none.
    notes : str
        Free words, printed on page one.
    pictures : tuple of str
        The pictures chosen, in order; empty for the program's choice.
    photos : tuple of Photo
    offer : mapping of str to str
        ``part``, ``labour``, ``calibration`` (amounts), ``tax_percent`` and ``currency``; empty for no offer.
    closing : tuple of str
        Which of `CLOSING` are done.
    repaired : bool
        Whether the closing list is printed.
    show_number : bool
        Whether page one says the odds as a number beside the words.
    markers : bool
        Whether page two says what the markers read.
    other : str
        The capture that is set beside this one: beside it, or absolute; empty for none.
    kept : mapping
        Unknown keys of the file.
    """

    facts: Mapping[str, str] = field(default_factory=dict)
    words: Mapping[str, str] = field(default_factory=dict)
    notes: str = ""
    pictures: tuple[str, ...] = ()
    photos: tuple[Photo, ...] = ()
    offer: Mapping[str, str] = field(default_factory=dict)
    closing: tuple[str, ...] = ()
    repaired: bool = False
    show_number: bool = False
    markers: bool = False
    other: str = ""
    kept: Mapping[str, Any] = field(default_factory=dict)


def with_fact(job: Job, key: str, text: str) -> Job:
    """The job with another fact.

    Raises
    ------
    ValueError
        Where there is no such fact.
    """
    if key not in FACTS:
        raise ValueError(f"a fact must be one of {FACTS}, got {key!r}")
    return replace(job, facts={**job.facts, key: text})


def with_words(job: Job, key: str, text: str | None) -> Job:
    """The job with the technician's wording of a paragraph; None takes the program's again."""
    words = {name: words for name, words in job.words.items() if name != key}
    return replace(job, words=words if text is None else {**words, key: text})


def placed(capture: Capture, job: Job) -> Capture:
    """The capture, stated to be of the sensor and the car that the job says.

    Parameters
    ----------
    capture : Capture
    job : Job

    Returns
    -------
    Capture
        The same value where the job says nothing else of these.
    """
    said = {key: fact(job, capture, key) for key in PLACE if key in job.facts}
    other = {key: text for key, text in said.items() if text != capture.text(key).strip()}
    return replace(capture, attributes={**capture.attributes, **other}) if other else capture


def fact(job: Job, capture: Capture, key: str) -> str:
    """A fact as the technician entered it, else as the capture says it; empty where neither does."""
    if key in job.facts:
        return job.facts[key].strip()
    if key == "odometer":
        distance_km = capture.text("odometer_km").strip()
        return f"{distance_km} km" if distance_km else ""
    if key == "date":
        return capture.text("created")[:10]
    if key == "load":
        return "; ".join(
            dict.fromkeys(loads for item in capture.records if (loads := _load(item.attributes)))
        )
    return capture.text(key).strip()


def job_object(job: Job) -> dict[str, Any]:
    """The job as the review's file keeps it; empty where nothing was entered."""
    stored: dict[str, Any] = {
        "facts": dict(job.facts),
        "words": dict(job.words),
        "notes": job.notes,
        "pictures": list(job.pictures),
        "photos": [{"path": item.path, "caption": item.caption} for item in job.photos],
        "offer": dict(job.offer),
        "closing": list(job.closing),
        "repaired": job.repaired,
        "show_number": job.show_number,
        "markers": job.markers,
        "other": job.other,
    }
    return {**job.kept, **{key: value for key, value in stored.items() if value}}


def parse_job(stored: object) -> Job:
    """Read what `job_object` made; an empty job for None.

    Raises
    ------
    ReviewError
        Where it is damaged: one sentence that says where.
    """
    if stored is None:
        return Job()
    left = dict(_mapping(stored, "job"))
    texts = {key: _texts(left.pop(key, {}), key) for key in ("facts", "words", "offer")}
    photos = tuple(_photo(item) for item in _list(left.pop("photos", []), "photos"))
    rows = {key: tuple(_text(item, key) for item in _list(left.pop(key, []), key)) for key in _ROWS}
    switches = {key: _switch(left.pop(key, False), key) for key in _SWITCHES}
    return Job(
        facts=texts["facts"],
        words=texts["words"],
        notes=_text(left.pop("notes", ""), "notes"),
        pictures=rows["pictures"],
        photos=photos,
        offer=texts["offer"],
        closing=rows["closing"],
        repaired=switches["repaired"],
        show_number=switches["show_number"],
        markers=switches["markers"],
        other=_text(left.pop("other", ""), "other"),
        kept=left,
    )


_ROWS = ("pictures", "closing")
_SWITCHES = ("repaired", "show_number", "markers")


def _load(attributes: Mapping[str, str | float]) -> str:
    return str(attributes.get("loads", "")).strip()


def _photo(stored: object) -> Photo:
    item = _mapping(stored, "photos")
    return Photo(_text(item.get("path"), "path"), _text(item.get("caption", ""), "caption"))


def _texts(stored: object, key: str) -> dict[str, str]:
    return {name: _text(value, name) for name, value in _mapping(stored, key).items()}


def _mapping(stored: object, key: str) -> Mapping[str, object]:
    if not isinstance(stored, dict):
        raise _damaged(key, "an object")
    return stored


def _list(stored: object, key: str) -> list[object]:
    if not isinstance(stored, list):
        raise _damaged(key, "a list")
    return stored


def _text(stored: object, key: str) -> str:
    if not isinstance(stored, str):
        raise _damaged(key, "a text")
    return stored


def _switch(stored: object, key: str) -> bool:
    if not isinstance(stored, bool):
        raise _damaged(key, "true or false")
    return stored


def _damaged(key: str, wanted: str) -> ReviewError:
    return ReviewError(f"{key!r} of the job is not {wanted}", "begin a new review; the file is kept aside")
