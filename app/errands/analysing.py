"""``wornband analyse``: one answer a file, in the order given, whatever happens to the others."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from contextlib import closing, contextmanager
from dataclasses import dataclass
from functools import partial
from typing import TextIO

from analysis.captures.model import Capture
from analysis.captures.reading import open_capture, require_signal
from analysis.diagnosis.examine import examine
from analysis.diagnosis.findings import Findings
from analysis.diagnosis.profiles import load_profile, profile_for
from analysis.diagnosis.serialise import JsonObject, error_object, findings_object, json_line
from analysis.errors import Cancelled, WornbandError
from analysis.exposure.explain import Explanation
from analysis.exposure.serialise import exposure_object
from analysis.progress import Tick, ignore, part
from analysis.reports.cautions import cautions
from analysis.reports.document import Report, Section
from analysis.reports.findings_report import findings_report
from analysis.review.explained import explain_reviewed
from analysis.review.records import divided, edited
from app.errands.apart import done_apart
from app.errands.beside import ALONE, Beside, words_beside
from app.errands.interrupts import Interrupts
from app.errands.progress_line import ProgressLine
from app.errands.text_report import report_text, section_lines
from app.printable import error_line

_GAP = "\n" + "=" * 40 + "\n\n"
_ENDED = "the process that analysed it was ended from outside; try again with --jobs 1"
_CAUTIONS = Section("Before you connect or sweep", items=cautions())


@dataclass(frozen=True, slots=True)
class Examined:
    """A capture while it is open, with its findings.

    Parameters
    ----------
    capture : Capture
        Samples can be read until the context that gave this ends.
    findings : Findings
        Of that capture.
    assumptions : tuple of str
        What stood in for things that the file does not state.
    explanation : Explanation or None
        Why it comes and goes, where the profile gives heights and a band was found.
    """

    capture: Capture
    findings: Findings
    assumptions: tuple[str, ...]
    explanation: Explanation | None = None

    @property
    def why(self) -> tuple[str, ...]:
        """The explanation in words; empty where there is none."""
        return self.explanation.sentences if self.explanation is not None else ()

    @property
    def why_brief(self) -> str:
        """The same for the customer; empty where there is none."""
        return self.explanation.brief if self.explanation is not None else ""


@dataclass(frozen=True, slots=True)
class Answer:
    """What is printed of one file.

    Parameters
    ----------
    path : str
        The file as the caller named it.
    text : str
        For standard output; empty where there is nothing to print.
    error : str
        One sentence for standard error; empty where all went well.
    """

    path: str
    text: str
    error: str = ""


@dataclass(frozen=True, slots=True)
class Request:
    """How files are to be analysed.

    Parameters
    ----------
    profile : str or None
        Sensor profile; None for the capture's own.
    as_json : bool
        JSON instead of text.
    review : bool or None
        Whether the review beside a capture is heard; None: by people, who read text, and not by programs.
        The JSON object names the file's SHA-256 and the version of the analysis, and whoever keeps it
        relies on these two alone deciding what it says.
    """

    profile: str | None = None
    as_json: bool = False
    review: bool | None = None

    @property
    def hears_review(self) -> bool:
        """Whether the review beside a capture is heard."""
        return not self.as_json if self.review is None else self.review


@contextmanager
def examined(
    path: str, profile: str | None = None, tick: Tick = ignore, beside: Beside = ALONE
) -> Iterator[Examined]:
    """Open a capture, examine it with what a review says of its records and vehicle, and keep it open.

    Parameters
    ----------
    path : str
        The file.
    profile : str or None
        Instead of the one that the capture names.
    tick : Tick
        Progress.
    beside : Beside
        What is said of its records and vehicle; the capture alone unless given.

    Raises
    ------
    CaptureError
        Where the file cannot be read or holds no signal.
    ProfileError
        Where the profile is unknown or malformed.
    Cancelled
        Where `tick` says so.
    """
    with open_capture(path) as opened:
        require_signal(opened.capture)
        whole = opened.completed(part(tick, 0.0, 0.2))
        capture = edited(whole.capture, beside.edits)
        findings = examine(divided(capture, beside.edits), profile=profile, tick=part(tick, 0.2, 0.98))
        known = profile_for(capture, profile)
        explanation = explain_reviewed(capture, findings, known, beside.vehicle, beside.job)
        tick(1.0)
        yield Examined(capture, findings, (*whole.assumptions, *beside.told), explanation)


def answer(path: str, request: Request, tick: Tick = ignore) -> Answer:
    """The answer about one file; whatever goes wrong with it is part of the answer.

    Raises
    ------
    Cancelled
        Where `tick` says so.
    """
    try:
        beside = words_beside(path, part(tick, 0.0, 0.05)) if request.hears_review else ALONE
        with examined(path, request.profile, part(tick, 0.05, 1.0), beside) as one:
            return Answer(path, _rendered(path, one, request))
    except WornbandError as error:
        return _failed(path, str(error), request)
    except (Cancelled, BrokenPipeError):
        raise
    except Exception as error:  # the one place that meets the unforeseen: the other files go on
        problem = f"the analysis came to an unforeseen end ({type(error).__name__}: {error})"
        return _failed(path, f"{problem}; please report it together with the file", request)


def analyse(paths: Sequence[str], request: Request, *, jobs: int = 1, out: TextIO, err: TextIO) -> int:
    """Print the answers about some files, in their order.

    Parameters
    ----------
    paths : sequence of str
        Files as the caller named them.
    request : Request
        How.
    jobs : int
        Processes that share the work.
    out, err : TextIO
        Standard output and standard error.

    Returns
    -------
    int
        0 where every file was done, else 1.

    Raises
    ------
    ProfileError
        Where the profile that the caller named is unknown or malformed.
    """
    if request.profile is not None:
        load_profile(request.profile)
    printed, failed = 0, 0
    with ProgressLine(err) as progress:
        for one in _answers(paths, request, jobs, progress):
            progress.wipe()
            if one.text:
                print(one.text if request.as_json or not printed else _GAP + one.text, file=out, flush=True)
                printed += 1
            if one.error:
                print(error_line(one.path, one.error), file=err, flush=True)
                failed += 1
    if printed and not request.as_json:
        print("\n".join(["", *section_lines(_CAUTIONS)]), file=out)
    return 1 if failed else 0


def _rendered(path: str, one: Examined, request: Request) -> str:
    if request.as_json:
        return json_line(object_of(one, path))
    return report_text(report_of(one), path)


def object_of(one: Examined, path: str) -> JsonObject:
    """What was found, as the JSON object of the contract."""
    exposure = exposure_object(one.explanation) if one.explanation is not None else None
    return findings_object(
        one.findings, path=path, assumptions=one.assumptions, exposure=exposure, content=one.capture.content
    )


def report_of(one: Examined) -> Report:
    """What was found, as a report."""
    return findings_report(one.findings, one.capture, assumptions=one.assumptions, why=one.why)


def _failed(path: str, sentence: str, request: Request) -> Answer:
    return Answer(path, json_line(error_object(path, sentence)) if request.as_json else "", sentence)


def _answers(paths: Sequence[str], request: Request, jobs: int, progress: ProgressLine) -> Iterator[Answer]:
    if min(jobs, len(paths)) > 1:
        yield from _answers_of_processes(paths, request, min(jobs, len(paths)), progress)
        return
    with Interrupts() as interrupts:

        def tick(done: float) -> None:
            interrupts.check()
            progress.tick(done)

        for path in paths:
            interrupts.check()
            progress.begin(path)
            yield answer(path, request, tick)
        interrupts.check()


def _answers_of_processes(
    paths: Sequence[str], request: Request, jobs: int, progress: ProgressLine
) -> Iterator[Answer]:
    progress.begin(f"{len(paths)} files")
    with Interrupts() as interrupts:
        done = done_apart(partial(answer, request=request), paths, jobs, check=interrupts.check)
        with closing(done):
            for number, (path, one) in enumerate(zip(paths, done, strict=True)):
                progress.tick(number / len(paths))
                yield one if one is not None else _failed(path, _ENDED, request)
        interrupts.check()
