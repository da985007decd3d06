"""The errands ``import``, ``export`` and ``watch``: how they are called."""

from __future__ import annotations

import argparse
import math
from collections.abc import Callable
from pathlib import Path
from typing import TextIO

from analysis.captures.model import Role, Step
from analysis.importing.choices import ENCODINGS, MARKS
from analysis.importing.wishes import CONDITIONS, Blocks
from app.errands.parsers import Errands, add_errand

TABLE_ERRANDS = ("import", "export", "watch")


def add_table_errands(errands: Errands) -> None:
    """Say how the three are called."""
    _add_import(errands)
    _add_export(errands)
    watch = add_errand(
        errands,
        "watch",
        summary="import and analyse what a recorder saves in a folder, as it arrives",
        about="Import each file of a folder once it has stopped growing, analyse it and print what was"
        " found. Files that fail stay where they are. Stop it with Ctrl+C.",
    )
    watch.add_argument("folder", metavar="FOLDER", help="where the recorder saves")
    watch.add_argument("--recipe", metavar="RECIPE", help="a recipe that import --keep-recipe made")
    watch.add_argument("--profile", metavar="ID", help="sensor profile, or a TOML file")
    watch.add_argument("--step", action="append", default=[], type=_step, metavar="PATTERN=STEP",
                       help="what files of such names were taken for: '*wiggle*=wiggle'")  # fmt: skip
    watch.add_argument("--once", action="store_true", help="take what is there, and end")


def _add_import(errands: Errands) -> None:
    bring = add_errand(
        errands,
        "import",
        summary="make a capture out of tables, WAV, MAT, NumPy, Parquet, HDF5 and netCDF files",
        about="Make one capture out of recorded files; each becomes a record.",
    )
    bring.add_argument("sources", nargs="+", metavar="SOURCE", help="a file, or a folder of short ones")
    bring.add_argument("-o", "--output", required=True, metavar="OUT", help="OUT.h5")
    pair = _pair
    bring.add_argument("--channel", action="append", default=[], type=pair, metavar="COLUMN=ROLE",
                       help=f"what a column is: {', '.join(Role)}; columns count from 1")  # fmt: skip
    bring.add_argument(
        "--unit", action="append", default=[], type=pair, metavar="COLUMN=UNIT", help="V, mV, s, ms ..."
    )
    bring.add_argument("--time", metavar="COLUMN", help="the column of times")
    every = bring.add_mutually_exclusive_group()
    every.add_argument("--sample-interval", type=_positive, metavar="SECONDS", help="seconds between rows")
    every.add_argument("--sample-rate", type=_positive, metavar="HERTZ", help="rows a second")
    bring.add_argument("--full-scale", type=_positive, metavar="VOLTS", help="full scale of a WAV file")
    bring.add_argument("--dataset", action="append", default=[], metavar="NAME",
                       help="an array of an HDF5, netCDF, MAT or NPZ file; all unless given")  # fmt: skip
    bring.add_argument("--factor", action="append", default=[], type=_factor, metavar="COLUMN=FACTOR",
                       help="what a column is multiplied by: 10 for a probe that divides by ten")  # fmt: skip
    bring.add_argument("--offset", action="append", default=[], type=_offset, metavar="COLUMN=VOLTS",
                       help="what is added to a column after its factor")  # fmt: skip
    bring.add_argument("--step", choices=[*(str(step) for step in Step), "none"],
                       help="what it was taken for; none to leave it open")  # fmt: skip
    bring.add_argument("--blocks", choices=[str(item) for item in Blocks],
                       help="what blocks are that stand one below the other in a table")  # fmt: skip
    bring.add_argument("--resample", action="store_true", help="interpolate uneven times onto even ones")
    bring.add_argument(
        "--set", action="append", default=[], type=pair, metavar="KEY=VALUE", help="vehicle=..., profile=..."
    )
    bring.add_argument("--title", default="", help="of the capture")
    _add_places(bring)
    _add_dialect(bring)
    recipe = bring.add_mutually_exclusive_group()
    recipe.add_argument("--recipe", metavar="RECIPE", help="take what is decided from this file")
    recipe.add_argument("--no-recipe", action="store_true", help="follow no kept recipe")
    bring.add_argument("--keep-recipe", nargs="?", const="", metavar="RECIPE",
                       help="keep what was decided for the next file of this shape; with a name, there,"
                       " with car, step, probes and conditions too")  # fmt: skip


def _add_places(bring: argparse.ArgumentParser) -> None:
    """Where the probes sat, and under which conditions."""
    for name, what in (("probe", "where its probe sat"), ("return-point", "what it was measured against")):
        bring.add_argument(f"--{name}", action="append", default=[], type=_pair, metavar="CHANNEL=PLACE",
                           help=f"{what}; CHANNEL is a column, a role or all")  # fmt: skip
    bring.add_argument("--condition", action="append", default=[], type=_condition, metavar="KEY=VALUE",
                       help=f"of every record: {', '.join(CONDITIONS)}")  # fmt: skip


def _add_dialect(bring: argparse.ArgumentParser) -> None:
    """How a text is written, where it is not to be found out."""
    bring.add_argument("--delimiter", type=_mark, metavar="MARK",
                       help="between cells of a text: a mark, tab or space")  # fmt: skip
    bring.add_argument("--decimal", type=_mark, metavar="MARK", help="decimal mark: point or comma")
    bring.add_argument("--thousands", type=_mark, metavar="MARK", help="thousands mark, or none")
    bring.add_argument("--head-lines", type=_count, metavar="N", help="lines before the first sample")
    bring.add_argument("--encoding", choices=ENCODINGS, metavar="NAME", help=", ".join(ENCODINGS))


def _add_export(errands: Errands) -> None:
    out = add_errand(
        errands,
        "export",
        summary="write a record of a capture, or its findings, for other programs",
        about="Write samples as CSV, Parquet, MAT, NPZ or a capture, findings as JSON or CSV, or a picture.",
    )
    out.add_argument("file", metavar="FILE", help="a capture")
    out.add_argument(
        "-o",
        "--output",
        required=True,
        metavar="OUT",
        help="OUT.csv, .parquet, .mat, .npz, .h5 or .json; with --picture .svg or .png",
    )
    out.add_argument("--record", metavar="NAME", help="one record; all of them unless given")
    out.add_argument("--span", nargs=2, type=float, metavar=("FROM", "TO"), help="seconds of each record")
    instead = out.add_mutually_exclusive_group()
    instead.add_argument("--findings", action="store_true", help="what was found, instead of the samples")
    instead.add_argument(
        "--picture", choices=("trace", "track"), help="the report's picture of it, instead of the samples"
    )


def _pair(text: str) -> tuple[str, str]:
    name, mark, value = text.rpartition("=")
    if not mark or not name or not value:
        raise argparse.ArgumentTypeError("must read NAME=VALUE")
    return name, value


def _step(text: str) -> tuple[str, Step]:
    pattern, step = _pair(text)
    if step not in set(Step):
        raise argparse.ArgumentTypeError(f"there is no step {step}; there are {', '.join(Step)}")
    return pattern, Step(step)


def _condition(text: str) -> tuple[str, str]:
    key, value = _pair(text)
    if key not in CONDITIONS:
        raise argparse.ArgumentTypeError(f"there is no condition {key}; there are {', '.join(CONDITIONS)}")
    return key, {"yes": "1", "no": "0"}.get(value, value) if key == "plugged" else value


def _factor(text: str) -> tuple[str, float]:
    name, value = _pair(text)
    return name, _positive(value)


def _offset(text: str) -> tuple[str, float]:
    name, value = _pair(text)
    try:
        volts = float(value)
    except ValueError:
        volts = math.nan
    if not abs(volts) < 1e6:
        raise argparse.ArgumentTypeError(f"{value} is no number of volts")
    return name, volts


def _mark(text: str) -> str:
    return MARKS.get(text.lower(), text)


def _count(text: str) -> int:
    if not (text.isascii() and text.isdecimal()) or len(text) > 9:
        raise argparse.ArgumentTypeError("must be a whole number")
    return int(text)


def _positive(text: str) -> float:
    try:
        value = float(text)
    except ValueError:
        value = 0.0
    if not 0.0 < value < float("inf"):
        raise argparse.ArgumentTypeError("must be a positive number")
    return value


def run_table_errand(call: argparse.Namespace, *, out: TextIO, err: TextIO) -> int:
    """Do what was called; the exit status."""
    errand: Callable[..., int]
    if call.errand == "import":
        from app.errands.importing import import_files as errand
    elif call.errand == "export":
        from app.errands.exporting import export_file as errand
    else:
        from app.errands.watching import watch_folder

        recipe = None if call.recipe is None else Path(call.recipe)
        return watch_folder(
            Path(call.folder), recipe, call.profile, once=call.once, out=out, err=err, steps=call.step
        )
    return errand(call, out=out, err=err)
