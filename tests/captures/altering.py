"""Captures that somebody changed after they were written."""

from __future__ import annotations

from pathlib import Path

import h5py

ALTERATIONS = ("nothing", "a sample", "a meaning", "the packing")
"""The first and the last leave what the capture says as it was."""


def alter(path: Path, what: str) -> None:
    """Change one thing in the last record of a capture file."""
    with h5py.File(path, "a") as file:
        record = file["records"][max(file["records"])]
        channel = next(item for item in record.values() if "role" in item.attrs)
        if what == "a sample":
            channel[10] = channel[11] + 1
        elif what == "a meaning":
            record.attrs["sample_interval"] *= 2
        elif what == "the packing":
            words, samples, name = dict(channel.attrs), channel[()], channel.name
            del file[name]
            file.create_dataset(name, data=samples).attrs.update(words)
