"""The words of the Import page: uses of a column, marks of a text, and what helps against what is missing."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

from analysis.captures.model import Role, Step
from analysis.errors import WornbandError
from analysis.importing.choices import ENCODINGS
from analysis.importing.needs import Need, Problem
from analysis.importing.wishes import Blocks
from app.importing.draft import NO_STEP, OUT, TIME
from app.language import said
from app.trouble import as_sentence, in_window
from app.words import role_name, step_name


def _tr(text: str) -> str:
    return QCoreApplication.translate("import_page", text)


def use_names() -> dict[str, str]:
    """What a column may be used for."""
    return {
        **{str(role): role_name(role) for role in Role},
        TIME: _tr("Time"),
        OUT: _tr("Leave out"),
    }


def step_names() -> dict[str, str]:
    """What a record may have been taken for; the first is the guess."""
    return {
        "": _tr("As guessed"),
        **{str(step): step_name(step) for step in Step},
        NO_STEP: _tr("not told"),
    }


def unit_names() -> dict[str, str]:
    """Units that a column may be in; the first is the file's own."""
    units = ("V", "mV", "µV", "kV", "s", "ms", "µs", "min")
    return {"": _tr("as found"), **{unit: unit for unit in units}}


def block_names() -> dict[str, str]:
    """What blocks of a table may be that stand one below the other; the first is what was found."""
    return {
        "": _tr("As found"),
        str(Blocks.CHANNELS): _tr("a channel each"),
        str(Blocks.RECORDS): _tr("a record each"),
        str(Blocks.JOINED): _tr("one course that goes on"),
    }


def mark_names() -> dict[str, str]:
    """Marks of a text table, in words."""
    return {
        "\t": _tr("tab"),
        ";": _tr("semicolon ;"),
        ",": _tr("comma ,"),
        ".": _tr("point ."),
        "|": _tr("bar |"),
        " ": _tr("space"),
        "'": _tr("apostrophe '"),
        "": _tr("none"),
    }


def mark_name(mark: str) -> str:
    """One mark in words; itself where it has no name."""
    return mark_names().get(mark, mark)


def encoding_names() -> dict[str, str]:
    """Encodings of a text by the names of their standards."""
    return {name: name.upper().replace("_", " ") for name in ENCODINGS}


def fact_names() -> dict[str, str]:
    """Attributes of a capture that are asked for."""
    return {
        "vehicle": _tr("Vehicle"),
        "registration": _tr("Registration"),
        "mounting": _tr("Mounting"),
        "complaint": _tr("Complaint"),
        "recorder": _tr("Recorder"),
        "recorder_serial": _tr("Recorder's number"),
    }


def problem_sentence(problem: Problem) -> str:
    """What is missing, and what helps on this page."""
    return said_with(problem.problem, _actions()[problem.need])


def error_sentence(error: WornbandError) -> str:
    """Why a file cannot be opened."""
    return in_window(error.sentence, _actions()[Need.TABLE])


def said_with(problem: str, action: str) -> str:
    """A clause and what to do about it, as one sentence."""
    return as_sentence(_tr("{problem}; {action}").format(problem=said(problem), action=action))


def _actions() -> dict[Need, str]:
    return {
        Need.TABLE: _tr("say at the right how it is written, or remove the file"),
        Need.TIME_COLUMN: _tr("choose where the time comes from"),
        Need.TIME_UNIT: _tr("say the unit of its times, or how far the rows lie apart"),
        Need.INTERVAL: _tr("say how far the rows lie apart"),
        Need.RESAMPLE: _tr("let them be interpolated, or say how far the rows lie apart"),
        Need.FULL_SCALE: _tr("say it here"),
        Need.ROLES: _tr("say which column is which wire"),
        Need.BLOCKS: _tr("say what the blocks are"),
        Need.UNIT: _tr("say the unit of the column, or what its numbers are multiplied by"),
    }
