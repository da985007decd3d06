"""``wornband compare``: two captures set against each other, before and after."""

from __future__ import annotations

from dataclasses import replace
from typing import TextIO

from analysis.comparison.compare import compare
from analysis.comparison.serialise import comparison_error, comparison_object
from analysis.comparison.side import Side
from analysis.diagnosis.serialise import json_line
from analysis.errors import Cancelled, WornbandError
from analysis.progress import Tick, part
from analysis.reports.cautions import cautions
from analysis.reports.comparison_report import comparison_report
from analysis.reports.document import Section
from analysis.review.job import placed
from analysis.wording import say
from app.errands.analysing import Request, examined
from app.errands.beside import ALONE, Beside, words_beside
from app.errands.interrupts import Interrupts
from app.errands.progress_line import ProgressLine
from app.errands.text_report import report_text, section_lines
from app.printable import error_line


def compare_files(
    before: str,
    after: str,
    *,
    as_json: bool = False,
    review: bool | None = None,
    mirrored: frozenset[str] = frozenset(),
    out: TextIO,
    err: TextIO,
) -> int:
    """Print what differs between two captures.

    Parameters
    ----------
    before, after : str
        Files as the caller named them.
    as_json : bool
        One JSON object instead of text.
    review : bool or None
        Whether the reviews beside the captures are heard; None: in text alone, as `Request` has it.
    mirrored : frozenset of str
        ``"before"``, ``"after"`` or both: sensors that are mounted the other way round.
    out, err : TextIO
        Standard output and standard error.

    Returns
    -------
    int
        0 where both could be compared, else 1.
    """
    hears_review = Request(as_json=as_json, review=review).hears_review
    sides, failures, told = _sides((before, after), mirrored, hears_review, err)
    for path, sentence in failures:
        print(error_line(path, sentence), file=err, flush=True)
    if failures:
        if as_json:
            print(json_line(comparison_error((before, after), *failures[0])), file=out)
        return 1
    comparison = compare(*sides)
    if as_json:
        print(json_line(comparison_object(comparison, paths=(before, after))), file=out)
        return 0
    print(report_text(comparison_report(comparison), f"{before} - {after}"), file=out)
    if told:
        print("\n".join(["", *section_lines(Section(say("Taken as given"), items=tuple(told)))]), file=out)
    about = " ".join(item.capture.text(key) for item in sides for key in ("profile", "sensor"))
    print(
        "\n".join(["", *section_lines(Section(say("Before you connect or sweep"), items=cautions(about)))]),
        file=out,
    )
    return 0


def _sides(
    paths: tuple[str, str], mirrored: frozenset[str], hears_review: bool, err: TextIO
) -> tuple[list[Side], list[tuple[str, str]], list[str]]:
    """Both sides as far as they could be examined, what went wrong with the others, what reviews say."""
    sides, failures, told = [], [], []
    with ProgressLine(err) as progress, Interrupts() as interrupts:

        def tick(done: float) -> None:
            interrupts.check()
            progress.tick(done)

        for path, name in zip(paths, ("before", "after"), strict=True):
            progress.begin(path)
            try:
                beside = words_beside(path, part(tick, 0.0, 0.05)) if hears_review else ALONE
                side = _side(path, name in mirrored, part(tick, 0.05, 1.0), beside)
                moved = placed(side.capture, beside.job)
                sides.append(replace(side, capture=moved))
                lines = beside.told if moved is side.capture else (*beside.told, _PLACED)
                told += [f"{path}: {line}" for line in lines]
            except WornbandError as error:
                failures.append((path, str(error)))
            except (Cancelled, BrokenPipeError):
                raise
            except Exception as error:  # what nobody foresaw is said in one sentence too
                failures.append((path, _unforeseen(error)))
        interrupts.check()
    return sides, failures, told


def _side(path: str, mirrored: bool, tick: Tick, beside: Beside) -> Side:
    with examined(path, tick=tick, beside=beside) as one:
        return Side(one.capture, one.findings, mirrored)


_PLACED = say("Which sensor of which car it is: as its review says, where that differs from the file.")


def _unforeseen(error: Exception) -> str:
    problem = f"the analysis came to an unforeseen end ({type(error).__name__}: {error})"
    return f"{problem}; please report it together with the file"
