"""Which pictures a report shows, and what stands below them."""

from __future__ import annotations

from collections.abc import Iterator

from analysis.captures.model import Role
from analysis.captures.record_names import the_record
from analysis.diagnosis.findings import VerdictCode
from analysis.reports import track_picture
from analysis.reports.drawing import WIDTH
from analysis.reports.pages import Picture
from analysis.reports.quantities import share_of
from analysis.reports.subject import Beside, Subject
from analysis.reports.trace_picture import IN_TIME, WIRES, clearest_moment, limits_of, trace_drawing
from analysis.reports.verdicts import is_watched
from analysis.wording import Wording, say

TRACK, TRACE = "track", "trace"
PICTURES = (TRACK, TRACE)
"""Codes of the pictures that can be chosen."""

COLUMN_WIDTH = 470.0
"""Width of a picture that stands in a column: its letters are then as high as on a whole sheet."""

SIGNALS = (Role.SIGNAL, Role.SECOND_SIGNAL)
"""Wires whose picture holds the modelled course of a good sensor."""

NONE = "none"
"""Stands for no picture at all, where the technician wants none."""


def default_picture(subject: Subject, beside: Beside | None = None) -> str:
    """The picture that shows what the verdict says.

    Another capture is compared along the track. Without one, the signal in time stands beside its modelled
    course where it breaks up; where nothing does, the track shows what was tested.
    """
    findings = subject.findings
    if any(not is_watched(band) for band in findings.bands):
        return TRACK if beside is not None else TRACE
    if not findings.events or beside is not None:
        return TRACK
    return TRACE if findings.verdict.code in IN_TIME else TRACK


def chosen_pictures(subject: Subject, beside: Beside | None) -> Iterator[Picture]:
    """The pictures of page one; those that cannot be made are left out."""
    if subject.findings.verdict.code is VerdictCode.MEASUREMENT_PROBLEM and not subject.review.job.pictures:
        return
    if subject.review.job.pictures == (NONE,):
        return
    wanted = subject.review.job.pictures
    first = default_picture(subject, beside)
    made = [picture(subject, code, beside) for code in wanted or (first, *PICTURES)]
    there = [item for item in made if item is not None]
    yield from there if wanted else there[:1]


def other_picture(subject: Subject, beside: Beside | None) -> Picture | None:
    """The picture for page two: the first that page one does not show, for a column where it fits one."""
    if subject.findings.verdict.code is VerdictCode.MEASUREMENT_PROBLEM:
        return None  # a picture of what is no measurement would be held against the sensor
    shown = {made.code for made in chosen_pictures(subject, beside)}
    for code in PICTURES:
        made = picture(subject, code, beside, column=True) if code not in shown else None
        if made is not None:
            return made
    return None


def picture(subject: Subject, code: str, beside: Beside | None, *, column: bool = False) -> Picture | None:
    """One picture by its code; None where it cannot be made.

    Parameters
    ----------
    subject : Subject
        Samples are read for the signal in time.
    code : str
        One of `PICTURES`; others give None.
    beside : Beside or None
        For the track.
    column : bool
        For a column of page two: the track without a modelled one. With another capture beside it the track
        keeps its whole width.
    """
    if code == TRACK:
        return _track(subject, beside, column and beside is None)
    return _trace(subject, column) if code == TRACE else None


def _track(subject: Subject, beside: Beside | None, alone: bool) -> Picture | None:
    if alone:
        below = None
    elif beside is None:
        below = track_picture.Beside(say("A good sensor, as modelled (not measured)"))
    else:
        below = track_picture.Beside(beside.title(subject), beside.findings)
    other = below.findings if below is not None else None
    drawing = track_picture.track_drawing(
        subject.findings,
        title=say("This sensor"),
        beside=below,
        panel_height=128.0,
        width=COLUMN_WIDTH if alone else WIDTH,
    )
    if drawing is None:
        return None
    parts = say(
        "How far the signal breaks up, in % {of}, along the sensor's travel: flat is good. Each"
        " faint line is one stroke of the arm, the bold line the worst of them; a hatched stretch is a place"
        " where it breaks up again and again, and along a grey foot nothing was tested.",
        of=share_of(*subject.findings.surveys, *(other.surveys if other is not None else ())),
    )
    if not any(not is_watched(band) for band in subject.findings.bands):
        parts = say("{first} A line that stands out on one stroke alone is not held to be wear.", first=parts)
    if beside is None and below is not None:
        parts = say(
            "{first} The grey floor is what this recorder cannot see.",
            first=parts,
        )
    return Picture(TRACK, drawing, parts)


def _should(subject: Subject, role: Role) -> Wording:
    """What a good one does in the picture, where the picture shows it."""
    limits = len(limits_of(subject.findings, role))
    if role is Role.GROUND and limits == 1:
        return say(" It should stay below the dashed line.")
    if role is Role.REFERENCE and limits == 2:
        return say(" It should stay between the dashed lines.")
    return say(" It should follow the dashed line.") if role in SIGNALS else say("")


def _trace(subject: Subject, column: bool) -> Picture | None:
    width, height = (COLUMN_WIDTH, 150.0) if column else (WIDTH, 225.0)
    drawing = trace_drawing(subject.capture, subject.findings, height=height, width=width)
    moment = clearest_moment(subject.findings)
    if drawing is None or moment is None:
        return None
    if moment.band is not None:
        caption = say(
            "The signal while the arm passes the place (hatched), {record}: it should follow the"
            " dashed line.",
            record=the_record(moment.record),
        )
    else:
        caption = say(
            "The deepest disturbance of the {wire}, {record} at {time_s:.2f} s.{should}",
            wire=WIRES[moment.role],
            record=the_record(moment.record),
            time_s=moment.time.start,
            should=_should(subject, moment.role),
        )
    return Picture(TRACE, drawing, caption)
