"""``wornband demo``: the main job on a sample capture, its results left in a folder to look at."""

from __future__ import annotations

import json
import multiprocessing
import os
import shutil
import sys
from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path
from typing import TextIO

from analysis.captures.model import Capture
from analysis.diagnosis.findings import Findings
from analysis.errors import WornbandError
from analysis.reports.document import Report
from analysis.reports.findings_report import cautions_section
from analysis.reports.subject import Subject
from app.errands.analysing import examined, object_of, report_of
from app.errands.progress_line import ProgressLine
from app.errands.text_report import report_text, section_lines
from app.printable import error_line, printable
from app.reporting.making import Wanted, pages_of, store
from app.reporting.materials import gather
from app.resources import sample_captures
from app.window import NoWindowError, open_workbench, require_screen
from app.x_display import require_answer

SAMPLE = "W1041-rear-left-height.h5"
"""A worn ride-height sensor with ground, reference, wiggle, sweeps and a hold."""

FOLDER = "wornband-demo"
PRINTED = "report.pdf"
"""The printed report, beside the picture: both need Qt."""

_PICTURE_S = 120.0


@dataclass(frozen=True, slots=True)
class Made:
    """What the demonstration left: the files with what they are, the capture, and what failed."""

    files: tuple[tuple[Path, str], ...]
    capture: Path
    verdict: tuple[str, ...]
    picture_error: str


def demonstrate(
    folder: Path,
    *,
    window: bool = True,
    out: TextIO,
    err: TextIO,
    environment: Mapping[str, str] = os.environ,
) -> int:
    """Analyse a sample, leave the results in a folder, and open the workbench where there is a screen.

    Parameters
    ----------
    folder : Path
        Made where it is missing; files of the demonstration's names in it are replaced.
    window : bool
        Whether the workbench may open.
    out, err : TextIO
        Standard output and standard error.
    environment : mapping
        As `os.environ`.

    Returns
    -------
    int
        0, or 1 where something could not be made.
    """
    try:
        with ProgressLine(err) as progress:
            progress.begin("analysing the sample")
            made = _make(folder, progress)
    except WornbandError as error:
        print(error_line(str(folder), str(error)), file=err)
        return 1
    except OSError as error:
        reason = f"cannot be written ({error.strerror or error}); name another folder: wornband demo FOLDER"
        print(error_line(str(folder), reason), file=err)
        return 1
    _tell(made, folder, out)
    if made.picture_error:
        print(error_line(str(folder / "review.png"), made.picture_error), file=err)
    if window and not made.picture_error and screen_here(environment):
        print("\nThe workbench opens with the sample.", file=out, flush=True)
        return open_workbench([made.capture])
    return 1 if made.picture_error else 0


def screen_here(environment: Mapping[str, str], platform: str = sys.platform) -> bool:
    """Whether somebody would see the window: there is a screen, and this is no automatic run.

    Parameters
    ----------
    environment : mapping
        As `os.environ`. ``CI`` set to anything but nothing, 0 or false marks an automatic run (common
        practice of build services); a Qt platform that draws nowhere has no screen.
    platform : str
        As `sys.platform`.
    """
    if environment.get("CI", "").lower() not in ("", "0", "false"):
        return False
    if environment.get("QT_QPA_PLATFORM", "").split(":")[0] in ("offscreen", "minimal", "vnc"):
        return False
    try:
        require_screen(environment, platform)
        require_answer(environment, platform)
    except NoWindowError:
        return False
    return True


def _make(folder: Path, progress: ProgressLine) -> Made:
    folder.mkdir(parents=True, exist_ok=True)
    capture_path = folder / SAMPLE
    shutil.copyfile(_sample(), capture_path)
    with examined(str(capture_path), tick=progress.tick) as one:
        report = report_of(one)
        texts = folder / "findings.txt", folder / "findings.json"
        texts[0].write_text(_full_text(report, one.capture, str(capture_path)), encoding="utf-8")
        object_ = object_of(one, str(capture_path))
        texts[1].write_text(_indented(object_), encoding="utf-8")
        picture, page = folder / "review.png", folder / "report.html"
        picture_error = draw_apart(capture_path, one.findings, picture, one.why, one.why_brief)
        subject = Subject(one.capture, one.findings, one.assumptions, why=one.why, why_brief=one.why_brief)
        store(gather(pages_of(subject, None, Wanted()), folder), page, "a4")
    pictures = (
        ()
        if picture_error
        else (
            (picture, "the review as the window shows it"),
            (picture.with_name(PRINTED), "the report to print"),
        )
    )
    files = (
        (capture_path, "the sample capture"),
        (texts[0], "the findings to read"),
        (texts[1], "the findings for other programs"),
        *pictures,
        (page, "the report, one file for any browser"),
    )
    return Made(files, capture_path, (report.headline, *report.lead), picture_error)


def _sample() -> Path:
    for path in sample_captures():
        if path.name == SAMPLE:
            return path
    raise WornbandError("the sample captures are missing", "install Wornband again")


def _indented(item: object) -> str:
    return json.dumps(item, allow_nan=False, indent=1) + "\n"


def _full_text(report: Report, capture: Capture, path: str) -> str:
    return "\n".join([report_text(report, path), "", *section_lines(cautions_section(capture)), ""])


def draw_apart(
    capture_path: Path, findings: Findings, picture: Path, why: tuple[str, ...] = (), brief: str = ""
) -> str:
    """Draw the review and print the report without a screen, in a process of its own.

    A process has one Qt, with a screen or without; and Qt ends its process where a system library is
    missing, which must not end the demonstration.

    Returns
    -------
    str
        Why there is no picture; empty where there is one.
    """
    picture.unlink(missing_ok=True)
    context = multiprocessing.get_context("spawn")
    near, far = context.Pipe(duplex=False)
    child = context.Process(target=_draw, args=(capture_path, findings, picture, why, brief, far))
    child.start()
    far.close()
    child.join(_PICTURE_S)
    if child.is_alive():
        child.terminate()
        child.join()
        return "drawing took too long and was stopped; open the capture in the workbench instead"
    with near:
        try:
            said = str(near.recv()) if near.poll() else ""
        except EOFError:
            said = ""
    if child.exitcode == 0 and picture.is_file():
        return ""
    return said or "Qt ended before the picture was drawn; README.md lists the system libraries that it needs"


def _draw(
    capture_path: Path, findings: Findings, picture: Path, why: tuple[str, ...], brief: str, answers: object
) -> None:
    """Run in the other process: draw, and answer with a sentence where that fails."""
    from analysis.captures.reading import open_capture
    from app.pictures import review_picture
    from app.window import application

    os.environ["QT_QPA_PLATFORM"] = "offscreen"
    try:
        application()
        _silence_qt()
        with open_capture(capture_path) as opened:
            whole = opened.completed()
            review_picture(whole.capture, findings, picture)
            pages = pages_of(
                Subject(whole.capture, findings, whole.assumptions, why=why, why_brief=brief), None, Wanted()
            )
            store(gather(pages, picture.parent), picture.with_name(PRINTED), "a4")
    except (WornbandError, OSError) as error:
        answers.send(str(error))  # type: ignore[attr-defined]
        sys.exit(1)


def _silence_qt() -> None:
    """Qt's remarks about a platform without a screen are of no use to anybody."""
    from PySide6.QtCore import QMessageLogContext, QtMsgType, qInstallMessageHandler

    def say(kind: QtMsgType, context: QMessageLogContext, message: str | None) -> None:
        if kind in (QtMsgType.QtCriticalMsg, QtMsgType.QtFatalMsg):
            print(message, file=sys.stderr)

    qInstallMessageHandler(say)


def _tell(made: Made, folder: Path, out: TextIO) -> None:
    print("\n".join(printable(line) for line in made.verdict), file=out)
    print(f"\nMade in {printable(str(folder.resolve()))}:", file=out)
    width = max(len(path.name) for path, _ in made.files)
    for path, what in made.files:
        print(f"  {path.name.ljust(width)}  {what}", file=out)
    out.flush()
