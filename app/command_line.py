"""The ``wornband`` command. Each errand is done in its own module; Qt loads for the window alone."""

from __future__ import annotations

import argparse
import os
import sys
from collections.abc import Sequence
from importlib import metadata
from pathlib import Path

from analysis.errors import Cancelled, ProfileError, WornbandError
from app.errands.parsers import EXIT_STATUSES, Errands, add_errand
from app.errands.tables import TABLE_ERRANDS, add_table_errands, run_table_errand
from app.printable import printable

DONE, SOME_FAILED, WRONG_CALL, INTERRUPTED = 0, 1, 2, 130
"""Exit statuses; 130 is 128 + SIGINT, common practice of shells."""

ERRANDS = ("analyse", "compare", "demo", "export", "import", "report", "verify", "watch")

_ABOUT = """Find the worn band on a position sensor's track in stored voltage captures, and prove it.

With files, or with nothing, the workbench opens. The rest needs no screen."""


def main(argv: Sequence[str] | None = None) -> int:
    """Run the command.

    Parameters
    ----------
    argv : sequence of str or None
        Without the program's name; None for the process's own.

    Returns
    -------
    int
        Exit status.
    """
    _print_anything()
    try:
        return _run(list(sys.argv[1:] if argv is None else argv))
    except SystemExit as error:  # argparse has printed what is wrong, or the help
        return error.code if isinstance(error.code, int) else WRONG_CALL
    except WornbandError as error:
        print(f"wornband: {printable(str(error))}", file=sys.stderr)
        return WRONG_CALL if isinstance(error, ProfileError) else SOME_FAILED
    except (KeyboardInterrupt, Cancelled):
        return INTERRUPTED
    except BrokenPipeError:
        # Whoever read our output has gone (``| head``): nothing is left to say, not even at exit.
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return SOME_FAILED


def parser() -> argparse.ArgumentParser:
    """What can be called, and how."""
    top = argparse.ArgumentParser(
        prog="wornband",
        usage=f"wornband [FILE...]\n       wornband {{{','.join(ERRANDS)}}} ...",
        description=_ABOUT,
        epilog=EXIT_STATUSES,
        formatter_class=argparse.RawDescriptionHelpFormatter,
        allow_abbrev=False,
    )
    top.add_argument("--version", action="version", version=f"wornband {_version()}")
    errands = top.add_subparsers(dest="errand", metavar="", title="errands")
    _add_analyse(errands)
    _add_compare(errands)
    _add_demo(errands)
    add_table_errands(errands)
    _add_report(errands)
    verify = add_errand(
        errands,
        "verify",
        summary="does a capture still match its fingerprint and its review?",
        about="Compare a capture with its stored fingerprint and with its review.",
    )
    verify.add_argument("files", nargs="+", metavar="FILE", help="a capture")
    verify.add_argument(
        "--report",
        metavar="REPORT",
        help="a stored report, or the fingerprint printed on one: was it made from this capture?",
    )
    return top


def _add_analyse(errands: Errands) -> None:
    analyse = add_errand(
        errands,
        "analyse",
        summary="examine captures and print what was found",
        about="Examine captures and print verdict, bands, evidence and checks of each.",
    )
    analyse.add_argument("files", nargs="+", metavar="FILE", help="a capture")
    analyse.add_argument("--json", action="store_true", help="one JSON object a line, a file a line")
    _add_review(analyse)
    analyse.add_argument(
        "--profile",
        metavar="ID",
        help="sensor profile instead of the one that the capture names, or a TOML file",
    )
    analyse.add_argument(
        "--jobs", type=_jobs, default=1, metavar="N", help="processes that share the files (1 unless given)"
    )


def _add_compare(errands: Errands) -> None:
    compare = add_errand(
        errands,
        "compare",
        summary="what differs between two captures, and whether it is more than chance",
        about="Compare two captures of one sensor, before and after: bands, with the crossings of both,"
        " and every reading with its difference.",
    )
    compare.add_argument("before", metavar="BEFORE", help="a capture")
    compare.add_argument("after", metavar="AFTER", help="a capture")
    compare.add_argument("--json", action="store_true", help="one JSON object")
    _add_review(compare)
    compare.add_argument(
        "--mirrored",
        action="append",
        default=[],
        choices=("before", "after"),
        help="this sensor is mounted the other way round: its travel counts from the other end",
    )


def _add_review(errand: argparse.ArgumentParser) -> None:
    errand.add_argument(
        "--review",
        action=argparse.BooleanOptionalAction,
        help="take steps, roles, probe points, conditions, heights and rules as the review beside a capture"
        " says; text does unless told otherwise, JSON does not",
    )


def _add_report(errands: Errands) -> None:
    report = add_errand(
        errands,
        "report",
        summary="write the report of a capture as PDF or HTML",
        about="Write the report of a capture: a page for the customer, and the evidence.",
    )
    report.add_argument("file", metavar="FILE", help="a capture; its review is used where there is one")
    report.add_argument("-o", "--output", required=True, metavar="OUT", help="OUT.pdf or OUT.html")
    report.add_argument("--compare", default="", metavar="OTHER", help="another capture to set beside it")
    report.add_argument("--language", choices=("en", "de"), default="en", help="en unless given")
    report.add_argument("--paper", choices=("a4", "letter"), default="a4", help="a4 unless given")


def _add_demo(errands: Errands) -> None:
    demo = add_errand(
        errands,
        "demo",
        summary="analyse a sample capture and leave findings, picture and report in a folder",
        about="Analyse a sample capture; leave findings, a picture and a report in a folder; open the"
        " workbench where there is a screen.",
    )
    demo.add_argument(
        "folder", nargs="?", default="wornband-demo", metavar="FOLDER", help="wornband-demo unless given"
    )
    demo.add_argument("--no-window", action="store_true", help="do not open the workbench")


def _run(arguments: list[str]) -> int:
    first = arguments[0] if arguments else "--"
    if first == "--" or (first not in ERRANDS and not first.startswith("-")):
        return _open_window(arguments)
    call = parser().parse_args(arguments)
    if call.errand == "analyse":
        from app.errands.analysing import Request, analyse

        request = Request(call.profile, call.json, call.review)
        return analyse(call.files, request, jobs=call.jobs, out=sys.stdout, err=sys.stderr)
    if call.errand == "compare":
        from app.errands.comparing import compare_files

        return compare_files(
            call.before,
            call.after,
            as_json=call.json,
            review=call.review,
            mirrored=frozenset(call.mirrored),
            out=sys.stdout,
            err=sys.stderr,
        )
    if call.errand == "demo":
        from app.errands.demonstration import demonstrate

        return demonstrate(Path(call.folder), window=not call.no_window, out=sys.stdout, err=sys.stderr)
    if call.errand == "verify":
        from app.errands.verifying import verify

        return verify(call.files, report=call.report or "", out=sys.stdout, err=sys.stderr)
    if call.errand in TABLE_ERRANDS:
        return run_table_errand(call, out=sys.stdout, err=sys.stderr)
    if call.errand == "report":
        from app.errands.reporting import report

        return report(
            call.file,
            call.output,
            compare=call.compare,
            language=call.language,
            paper=call.paper,
            out=sys.stdout,
            err=sys.stderr,
        )
    return _open_window([])


def _open_window(files: list[str]) -> int:
    wrong = [item for item in files if item.startswith("-")]
    if wrong and files[0] != "--":
        parser().error(f"unrecognized arguments: {' '.join(printable(item) for item in wrong)}")
    from app.window import open_workbench
    from app.x_display import require_answer

    require_answer(os.environ, sys.platform)
    return open_workbench([Path(item) for item in files if item != "--"])


def _jobs(text: str) -> int:
    try:
        jobs = int(text)
    except ValueError:
        jobs = 0
    if jobs < 1:
        raise argparse.ArgumentTypeError(f"must be a whole number from 1 upwards, got {printable(text)!r}")
    return jobs


def _version() -> str:
    try:
        return metadata.version("wornband")
    except metadata.PackageNotFoundError:
        return "of a checkout that is not installed"


def _print_anything() -> None:
    """Let no character stop the output: what a terminal cannot show is written as its code."""
    for stream in (sys.stdout, sys.stderr):
        reconfigure = getattr(stream, "reconfigure", None)
        if reconfigure is not None:
            reconfigure(errors="backslashreplace")
