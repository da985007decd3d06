"""``wornband report``: the report of one capture, as PDF or as one HTML file."""

from __future__ import annotations

from pathlib import Path
from typing import TextIO

from analysis.errors import WornbandError
from analysis.reports.workshop import Workshop
from app.errands.interrupts import Interrupts
from app.errands.progress_line import ProgressLine
from app.printable import error_line, printable
from app.reporting.languages import report_language
from app.reporting.making import ReportError, Wanted, check_target, make_report


def report(
    path: str,
    target: str,
    *,
    compare: str = "",
    language: str = "en",
    paper: str = "a4",
    out: TextIO,
    err: TextIO,
) -> int:
    """Make the report of one capture.

    Parameters
    ----------
    path : str
        The capture, as the caller named it.
    target : str
        Where to store it: ``.pdf`` or ``.html``.
    compare : str
        Another capture to set beside it; empty for none.
    language : str
        ``"en"`` or ``"de"``.
    paper : str
        ``"a4"`` or ``"letter"``.
    out, err : TextIO
        Standard output and standard error.

    Returns
    -------
    int
        0, 1 where it could not be made, 2 where `target` is no name for a report.
    """
    try:
        check_target(Path(target), [path, compare])
    except ReportError as error:
        print(error_line(target, str(error)), file=err)
        return 2
    workshop, chosen = _kept(Path(path).parent)
    wanted = Wanted(compare, report_language(language), paper, workshop, chosen=chosen)
    try:
        with Interrupts() as interrupts, ProgressLine(err) as progress:
            progress.begin(path)

            def tick(done: float) -> None:
                interrupts.check()
                progress.tick(done)

            made = make_report(path, Path(target), wanted, tick)
    except ReportError as error:
        print(error_line(target, str(error)), file=err)
        return 1
    except WornbandError as error:
        print(error_line(path, str(error)), file=err)
        return 1
    if made.altered:
        print(error_line(path, made.altered), file=err)
    for trouble in made.troubles:
        print(error_line(target, f"{trouble}; the report is made without it"), file=err)
    print(f"{printable(target)}: {printable(made.pages.title)}", file=out)
    return 0


def _kept(folder: Path) -> tuple[Workshop, frozenset[str]]:
    """Who makes it, and files chosen for this folder, as the window keeps them; none without Qt."""
    try:
        from app.settings import Settings
    except ImportError:
        return Workshop(), frozenset()
    settings = Settings()
    return settings.workshop, settings.chosen_files(folder)
