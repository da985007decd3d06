"""What went wrong, as one sentence; the unforeseen is written to a file that the sentence names."""

from __future__ import annotations

import logging
import sys
from collections.abc import Callable
from pathlib import Path
from types import TracebackType

from PySide6.QtCore import QCoreApplication, QStandardPaths, QTimer

from analysis.errors import WornbandError
from analysis.wording import Wording
from app.language import said

_LOG = logging.getLogger("wornband")
_OPTION = " --"


def sentence(error: BaseException, doing: str) -> str:
    """One sentence for people.

    Parameters
    ----------
    error : BaseException
        An expected failure speaks for itself; the unforeseen is logged with its traceback.
    doing : str
        What was being done: ``"Opening rear-left.h5"``.
    """
    if isinstance(error, WornbandError):
        return in_window(error.sentence)
    _LOG.error("unforeseen while: %s", doing, exc_info=error)
    written = log_file()
    told = QCoreApplication.translate(
        "trouble", "{doing}: something unforeseen went wrong ({kind}: {text})."
    ).format(doing=doing, kind=type(error).__name__, text=str(error) or "–")
    if written is None:
        return told
    return f"{told} " + QCoreApplication.translate("trouble", "It was written to {file}.").format(
        file=written
    )


def in_window(text: str, action: str = "") -> str:
    """A sentence of the analysis as the window says it, with what to do here where it names an option.

    Parameters
    ----------
    text : str
        A clause; a `Wording` is said in the window's language.
    action : str
        What is said instead of advice that names an option; to import by hand where it is empty.
    """
    helps = action or QCoreApplication.translate(
        "trouble", "import it by hand, and say there how it is to be read"
    )
    return as_sentence(said(_without_options(text, helps)))


def _without_options(text: str, action: str) -> str:
    if not isinstance(text, Wording):
        return text
    if _OPTION in f" {text.template}":
        return action
    values = {
        name: _without_options(value, action) if isinstance(value, Wording) else value
        for name, value in text.values.items()
    }
    return Wording(text.template, values)


def as_sentence(text: str) -> str:
    """A clause with a capital at its beginning and a full stop at its end."""
    return text[:1].upper() + text[1:] + ("" if text.endswith(".") else ".")


def start_log(folder: Path | None = None) -> None:
    """Write what goes wrong to a file from now on; where that cannot be, nothing is written.

    Parameters
    ----------
    folder : Path or None
        Where; the user's own data folder by default.
    """
    place = folder or Path(
        QStandardPaths.writableLocation(QStandardPaths.StandardLocation.AppLocalDataLocation)
    )
    try:
        place.mkdir(parents=True, exist_ok=True)
        handler = logging.FileHandler(place / "wornband.log", encoding="utf-8", delay=True)
    except OSError:
        return
    handler.setFormatter(logging.Formatter("%(asctime)s %(levelname)s %(message)s"))
    _LOG.addHandler(handler)


def stop_log() -> None:
    """Close the file."""
    for handler in [item for item in _LOG.handlers if isinstance(item, logging.FileHandler)]:
        _LOG.removeHandler(handler)
        handler.close()


def log_file() -> Path | None:
    """The file that is written to, or None."""
    files = [Path(item.baseFilename) for item in _LOG.handlers if isinstance(item, logging.FileHandler)]
    return files[0] if files else None


def show_unforeseen(show: Callable[[str], None]) -> None:
    """Show what no one caught in the window instead of losing it on a terminal that nobody sees.

    It is shown in the next turn: in this one Qt may be laying out the very window that would be told anew.
    """

    def hook(kind: type[BaseException], error: BaseException, trace: TracebackType | None) -> None:
        if issubclass(kind, KeyboardInterrupt):
            sys.__excepthook__(kind, error, trace)
            return
        doing = getattr(error, "__notes__", [QCoreApplication.translate("trouble", "Working in the window")])
        told = sentence(error, doing[0])
        QTimer.singleShot(0, lambda: show(told))

    sys.excepthook = hook
