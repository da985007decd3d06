"""Small captures whose content is known, for the tests of this folder."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import h5py
import numpy as np
from numpy.typing import NDArray

from analysis.captures.memory import make_capture, make_channel, make_record
from analysis.captures.model import Capture, Role, Scaling, Step

TWELVE_BITS = Scaling(scale_factor=0.0025, add_offset=-0.5, fill_value=-32768, valid_min=-1, valid_max=4095)


def counts(n_samples: int = 1000, seed: int = 1) -> NDArray[np.int16]:
    return np.random.default_rng(seed).integers(0, 4000, n_samples).astype(np.int16)


def small_capture(n_samples: int = 1000) -> Capture:
    signal = make_channel(
        Role.SIGNAL,
        counts(n_samples, 1),
        TWELVE_BITS,
        gain_error=0.01,
        offset_error_v=0.005,
        attributes={"probe_point": "sensor end", "wire_colour": "grün", "pin": 3},
    )
    reference = make_channel(Role.REFERENCE, counts(n_samples, 2), TWELVE_BITS)
    sweep = make_record(
        "002", 1e-3, [signal, reference], step=Step.SWEEP, label="Schwenk µ", first_sample_s=-0.25
    )
    ground = make_record(
        "001",
        2e-3,
        {Role.GROUND: (counts(n_samples, 3).astype(np.float32), Scaling())},
        step=Step.GROUND,
        attributes={"plugged": 1, "engine": "off"},
    )
    return make_capture(
        [ground, sweep],
        title="Ride height, rear left",
        attributes={"created": "2024-05-06T07:08:09+00:00", "vehicle": "Larkspur 3", "odometer_km": 81_234},
        capture_id="1b671a64-40d5-491e-99b0-da01ff1f3341",
    )


def write_plain(path: Path, data: Any = None, **changes: Any) -> Path:
    """The least that the format asks for, as a stranger writes it with plain h5py.

    `changes` replaces attributes by name; None leaves one out.
    """
    words = {
        "format": "wornband-capture",
        "format_version": 1,
        "sample_interval": 1e-3,
        "role": "signal",
        "units": "V",
        "scale_factor": 0.0025,
    } | changes
    words = {key: value for key, value in words.items() if value is not None}
    with h5py.File(path, "w") as file:
        record = file.create_group("records/001")
        channel = record.create_dataset("sensor", data=counts() if data is None else data)
        for key, value in words.items():
            home = {"format": file, "format_version": file, "sample_interval": record, "first_sample": record}
            home.get(key, channel).attrs[key] = value
    return path
