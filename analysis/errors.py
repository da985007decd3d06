"""The error family, drawn once.

::

    WornbandError                one sentence that a technician can act on
    ├── CaptureError             a capture cannot be read or written: what, where, what to do
    │   ├── NewerFormatError     written by a later version of the format
    │   └── NoCaptureError       another kind of file, which may be brought in as a capture
    ├── ProfileError             a sensor profile is malformed or unknown
    ├── ReviewError              a review file cannot be used
    ├── ImportingError           a table of another program cannot be brought in as a capture
    ├── ExportingError           a capture or its findings cannot be written for another program
    ├── ControlUnitError         rules that no control unit can have
    └── VehicleError             heights, a road or a place on the travel that no vehicle can have
    Cancelled                    the user stopped the work; not an error

A lower library's exception (h5py, the operating system) is translated at one edge into one of these.
"""

from __future__ import annotations

from pathlib import Path

from analysis.wording import Wording, say


class WornbandError(Exception):
    """Base of every expected failure.

    Parameters
    ----------
    problem : str
        What is wrong and where, a clause without a full stop: ``"the file is cut short at 1,024 bytes"``.
    action : str
        What the technician can do about it: ``"save it from the recorder again"``.

    Attributes
    ----------
    sentence : Wording
        Both, as the string of the exception, which a view may say in another language.
    path : Path or None
        The file that it is about, where there are several.
    """

    def __init__(self, problem: str, action: str) -> None:
        self.sentence: Wording = say("{problem}; {action}", problem=problem, action=action)
        super().__init__(self.sentence)
        self.problem = problem
        self.action = action
        self.path: Path | None = None


class CaptureError(WornbandError):
    """A capture cannot be read or written."""


class NewerFormatError(CaptureError):
    """The capture was written by a later version of the format."""


class NoCaptureError(CaptureError):
    """The file is of another kind; it may be what a recorder saved, to be brought in as a capture."""


class ProfileError(WornbandError):
    """A sensor profile is malformed or unknown."""


class ReviewError(WornbandError):
    """A review file cannot be used."""


class ImportingError(WornbandError):
    """A table of another program cannot be brought in as a capture."""


class ExportingError(WornbandError):
    """A capture or its findings cannot be written for another program."""


class ControlUnitError(WornbandError):
    """Rules that no control unit can have."""


class VehicleError(WornbandError):
    """Heights, a road, or a place on the travel that no vehicle can have."""


class Cancelled(Exception):  # noqa: N818 - stopping is not an error, and the name says so
    """The user stopped the work. Raised by a `Tick`, never shown as a failure."""
