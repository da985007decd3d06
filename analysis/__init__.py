"""The numbers of Wornband: from a stored capture to findings. Never loads a user interface.

In a notebook::

    from analysis import examine, open_capture

    with open_capture("sample_captures/W1041-rear-left-height.h5") as opened:
        findings = examine(opened.capture)
    print(findings.verdict.summary, [(band.travel, band.confidence) for band in findings.bands])

`findings.surveys` holds what the sensor track shows, as arrays; `findings_object` makes the JSON of it.
"""

from __future__ import annotations

import os
from importlib import import_module
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from analysis.captures.memory import make_capture, make_channel, make_record
    from analysis.captures.model import Capture, Channel, Record, Role, Step
    from analysis.captures.reading import open_capture
    from analysis.captures.writing import write_capture
    from analysis.diagnosis.examine import examine
    from analysis.diagnosis.findings import Findings
    from analysis.diagnosis.profiles import available_profiles, load_profile
    from analysis.diagnosis.serialise import findings_object
    from analysis.errors import WornbandError
    from analysis.intervals import Interval

__version__ = "0.1.0"
"""Version of the analysis; every finding says which one made it."""

__all__ = [
    "Capture",
    "Channel",
    "Findings",
    "Interval",
    "Record",
    "Role",
    "Step",
    "WornbandError",
    "available_profiles",
    "examine",
    "findings_object",
    "load_profile",
    "make_capture",
    "make_channel",
    "make_record",
    "open_capture",
    "write_capture",
]

_HOMES = {
    "analysis.captures.memory": ("make_capture", "make_channel", "make_record"),
    "analysis.captures.model": ("Capture", "Channel", "Record", "Role", "Step"),
    "analysis.captures.reading": ("open_capture",),
    "analysis.captures.writing": ("write_capture",),
    "analysis.diagnosis.examine": ("examine",),
    "analysis.diagnosis.findings": ("Findings",),
    "analysis.diagnosis.profiles": ("available_profiles", "load_profile"),
    "analysis.diagnosis.serialise": ("findings_object",),
    "analysis.errors": ("WornbandError",),
    "analysis.intervals": ("Interval",),
}
"""Where the public names live. They are fetched when first asked for (PEP 562), so that `analysis.errors`
alone does not cost the time to load scipy."""


def _refuse_hdf5_plugins() -> None:
    """Keep HDF5 from running code that the environment names: filters, drivers, connectors.

    To ask whether a filter is at hand loads every library in the folder of plugins, whatever it is. HDF5
    looks at these variables when it is first loaded, which is after this package; child processes inherit
    them.
    """
    os.environ["HDF5_PLUGIN_PRELOAD"] = "::"  # HDF5's own word for no plugins of any kind (H5PLpublic.h)
    for name in ("HDF5_PLUGIN_PATH", "HDF5_VOL_CONNECTOR", "HDF5_DRIVER", "HDF5_DRIVER_CONFIG"):
        os.environ.pop(name, None)


_refuse_hdf5_plugins()


def __getattr__(name: str) -> Any:
    """A public name, from the module that it lives in."""
    for home, names in _HOMES.items():
        if name in names:
            return getattr(import_module(home), name)
    raise AttributeError(f"module {__name__!r} has no attribute {name!r}")


def __dir__() -> list[str]:
    """The public names, for completion in a notebook."""
    return sorted([*globals(), *__all__])
