"""What the review of a capture says of its records and its vehicle, for the errands that print."""

from __future__ import annotations

from dataclasses import dataclass, field
from pathlib import Path

from analysis.captures import layout
from analysis.own_folder import kept_reviews
from analysis.progress import Tick, ignore
from analysis.review.job import Job
from analysis.review.records import Edits, edits_told
from analysis.review.vehicle import Vehicle
from analysis.wording import say
from app.review_place import read_review


@dataclass(frozen=True, slots=True)
class Beside:
    """What is taken from the review beside a capture.

    Parameters
    ----------
    edits : tuple of RecordEdit
        Steps, roles, probe points and conditions of records; empty where it says nothing of them.
    told : tuple of str
        A line that says so, or why the review cannot be used; empty where there is nothing to say.
    vehicle : Vehicle
        Heights, road and rules that were entered.
    job : Job
        Facts of the job that were entered.
    """

    edits: Edits = ()
    told: tuple[str, ...] = ()
    vehicle: Vehicle = field(default_factory=Vehicle)
    job: Job = field(default_factory=Job)


ALONE = Beside()
"""The capture alone."""


def words_beside(path: str, tick: Tick = ignore) -> Beside:
    """Read what is said of the records of a capture; nothing where it has no review.

    As the window does: the review beside the capture, else the one that the window keeps elsewhere.

    Parameters
    ----------
    path : str
        The capture. It is hashed where there may be a review of it, to know whether that speaks of it.
    tick : Tick
        Progress.

    Raises
    ------
    CaptureError
        Where the capture cannot be read.
    """
    beside, elsewhere = layout.review_path(Path(path)), kept_reviews()
    if not beside.is_file() and not any(elsewhere.glob("*.review.json")):
        return ALONE
    sidecar = read_review(Path(path), tick)
    if sidecar.trouble:
        why = say("The review beside it is not used: {problem}.", problem=sidecar.trouble)
        return Beside(told=(why,))
    review = sidecar.review
    return Beside(review.records, edits_told(review.records), review.vehicle, review.job)
