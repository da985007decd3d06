"""The capture file, format version 1: every name and number of the layout, written down once.

::

    /                       attributes of the capture: `FORMAT_KEY`, `VERSION_KEY`, `ID_KEY`, ...
    /records/<NNN>          one group a record, attribute `INTERVAL_KEY` in seconds
        sample              the dimension (a netCDF dimension without a variable; holds no bytes)
        time                int32 ramp in s, for other programs; never read here
        <channel>           one-dimensional counts or floats, attributes `ROLE_KEY` and `UNITS_KEY`
        overview/<channel>/<level>   (n_blocks, 2) raw minimum and maximum, attribute `BLOCK_KEY`

A record at rest may say ``position_percent``, where the arm was set by a gauge, in % of travel: four of
these and more, no further apart than a tenth of it, and the linearity of the output can be judged.

The format is a contract with other writers: it may be extended, never broken. Conventions are those
of CF-1.11 (``scale_factor``, ``add_offset``, ``_FillValue``, ``valid_min``, ``valid_max``,
``coordinates``), so that netCDF programs decode the same volts.
"""

from __future__ import annotations

from pathlib import Path

FORMAT = "wornband-capture"
FORMAT_VERSION = 1
CONVENTIONS = "CF-1.11"
RECORDS_GROUP = "records"
OVERVIEW_GROUP = "overview"
DIMENSION_NAME = "sample"
TIME_NAME = "time"

FORMAT_KEY = "format"
VERSION_KEY = "format_version"
ID_KEY = "capture_id"
TITLE_KEY = "title"
CONVENTIONS_KEY = "Conventions"
CREATED_KEY = "created"
CONTENT_KEY = "content_sha256"
"""Content fingerprint of the file, see `analysis.captures.fingerprint`; optional."""

INTERVAL_KEY = "sample_interval"
FIRST_SAMPLE_KEY = "first_sample"
LABEL_KEY = "label"
STEP_KEY = "step"

ROLE_KEY = "role"
UNITS_KEY = "units"
SCALE_KEY = "scale_factor"
OFFSET_KEY = "add_offset"
FILL_KEY = "_FillValue"
VALID_MIN_KEY = "valid_min"
VALID_MAX_KEY = "valid_max"
GAIN_ERROR_KEY = "gain_error"
OFFSET_ERROR_KEY = "offset_error"
COORDINATES_KEY = "coordinates"
LONG_NAME_KEY = "long_name"
BLOCK_KEY = "block"

CAPTURE_KEYS = frozenset({FORMAT_KEY, VERSION_KEY, ID_KEY, TITLE_KEY, CONVENTIONS_KEY, CONTENT_KEY})
"""Attributes of ``/`` that have a place of their own in the model or are of the file, not the capture."""

RECORD_KEYS = frozenset({INTERVAL_KEY, FIRST_SAMPLE_KEY, LABEL_KEY, STEP_KEY})
"""Attributes of a record that have a field of their own in the model."""

CHANNEL_KEYS = frozenset(
    {
        ROLE_KEY,
        UNITS_KEY,
        SCALE_KEY,
        OFFSET_KEY,
        FILL_KEY,
        VALID_MIN_KEY,
        VALID_MAX_KEY,
        GAIN_ERROR_KEY,
        OFFSET_ERROR_KEY,
        COORDINATES_KEY,
    }
)
"""Attributes of a channel that have a field of their own in the model."""

MACHINERY_KEYS = frozenset(
    {
        "CLASS",
        "NAME",
        "DIMENSION_LIST",
        "REFERENCE_LIST",
        "DIMENSION_LABELS",
        "_Netcdf4Dimid",
        "_Netcdf4Coordinates",
        "_NCProperties",
        "_nc3_strict",
    }
)
"""Attributes by which HDF5 and netCDF tie dimensions together; never read, never the technician's."""

MEANING_KEYS = frozenset(
    {
        # the capture
        "format", "format_version", "capture_id", "created", "vehicle", "registration", "odometer_km",
        "complaint", "fault_codes", "vin", "job", "sensor", "part_number", "mounting", "profile",
        "recorder", "recorder_serial", "recorder_calibrated", "source_sha256",
        # a record
        "label", "step", "started", "sample_interval", "first_sample", "plugged", "ignition", "engine",
        "loads", "moved", "temperature", "position_percent",
        # a channel
        "role", "units", "scale_factor", "add_offset", "_FillValue", "valid_min", "valid_max",
        "gain_error", "offset_error", "probe_point", "return_point", "connector", "pin", "wire_colour",
        "attenuation", "coupling",
    }
)  # fmt: skip
"""Attributes that the content fingerprint covers: what the samples are, when, where and of which car."""

FILTERS = (1, 2, 3, 4, 5, 6, 32_000)
"""Filters of datasets that are read: deflate, shuffle, Fletcher32, SZIP, N-bit and scale-offset of HDF5
(H5Zpublic.h), and h5py's LZF. No other one is even asked for: HDF5 would look for it among its plugins."""

CHUNK_SAMPLES = 256 * 1024
"""Samples a chunk: a 4 Ki window costs 2 ms out of gzip (0.4 ms at 64 Ki, 6 ms at 1 Mi; measured)."""

GZIP_LEVEL = 1
"""Level 1 with shuffle: a quarter of the size at 170 million samples/s on reading (measured)."""

FIRST_BLOCK = 256
"""Samples a block of the finest overview level; finer ones cost 13 times as much to build (measured)."""

LEVEL_FACTOR = 16
"""Each overview level merges this many blocks of the one below: 0.83 % of extra space altogether."""

OVERVIEW_MIN_SAMPLES = 64 * 1024
"""Shorter channels are drawn from their samples faster than an overview is fetched."""

VOLTS_A_UNIT = {
    "V": 1.0,
    "volt": 1.0,
    "volts": 1.0,
    "mV": 1e-3,
    "millivolt": 1e-3,
    "millivolts": 1e-3,
    "kV": 1e3,
    "kilovolt": 1e3,
    "kilovolts": 1e3,
}
"""UDUNITS spellings of the voltage units that are converted on reading; files are written in V."""


def review_path(path: Path) -> Path:
    """Where the technician's decisions about a capture are kept: ``<name>.review.json`` beside it."""
    return path.with_suffix(".review.json")
