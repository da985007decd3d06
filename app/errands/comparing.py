"""``wornband compare``: two captures set against each other, before and after."""

from __future__ import annotations

from typing import TextIO

from analysis.comparison.compare import compare
from analysis.comparison.serialise import comparison_error, comparison_object
from analysis.comparison.side import Side
from analysis.diagnosis.serialise import json_line
from analysis.errors import Cancelled, WornbandError
from analysis.progress import Tick
from analysis.reports.cautions import cautions
from analysis.reports.comparison_report import comparison_report
from analysis.reports.document import Section
from analysis.wording import say
from app.errands.analysing import examined
from app.errands.interrupts import Interrupts
from app.errands.progress_line import ProgressLine
from app.errands.text_report import report_text, section_lines
from app.printable import error_line


def compare_files(
    before: str,
    after: str,
    *,
    as_json: bool = False,
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
    mirrored : frozenset of str
        ``"before"``, ``"after"`` or both: sensors that are mounted the other way round.
    out, err : TextIO
        Standard output and standard error.

    Returns
    -------
    int
        0 where both could be compared, else 1.
    """
    sides, failures = _sides((before, after), mirrored, err)
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
    about = " ".join(item.capture.text(key) for item in sides for key in ("profile", "sensor"))
    print(
        "\n".join(["", *section_lines(Section(say("Before you connect or sweep"), items=cautions(about)))]),
        file=out,
    )
    return 0


def _sides(
    paths: tuple[str, str], mirrored: frozenset[str], err: TextIO
) -> tuple[list[Side], list[tuple[str, str]]]:
    """Both sides as far as they could be examined, and what went wrong with the others."""
    sides, failures = [], []
    with ProgressLine(err) as progress, Interrupts() as interrupts:

        def tick(done: float) -> None:
            interrupts.check()
            progress.tick(done)

        for path, name in zip(paths, ("before", "after"), strict=True):
            progress.begin(path)
            try:
                sides.append(_side(path, name in mirrored, tick))
            except WornbandError as error:
                failures.append((path, str(error)))
            except (Cancelled, BrokenPipeError):
                raise
            except Exception as error:  # what nobody foresaw is said in one sentence too
                failures.append((path, _unforeseen(error)))
        interrupts.check()
    return sides, failures


def _side(path: str, mirrored: bool, tick: Tick) -> Side:
    with examined(path, tick=tick) as one:
        return Side(one.capture, one.findings, mirrored)


def _unforeseen(error: Exception) -> str:
    problem = f"the analysis came to an unforeseen end ({type(error).__name__}: {error})"
    return f"{problem}; please report it together with the file"
