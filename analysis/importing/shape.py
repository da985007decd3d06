"""The shape of a source: what the next file of the same recorder has in common with it."""

from __future__ import annotations

import hashlib
import json
from dataclasses import dataclass

from analysis.importing.model import Table


@dataclass(frozen=True, slots=True)
class Shape:
    """What files of one recorder, saved in one manner, have in common; not how long or how fast they are.

    Parameters
    ----------
    kind : str
        As in `Table`.
    columns, units : tuple of str
        Names and units of its columns of numbers. A file that holds one nameless array has numbers for names.
    delimiter : str
        Of a text; empty for every other kind.
    """

    kind: str
    columns: tuple[str, ...]
    units: tuple[str, ...]
    delimiter: str = ""

    @property
    def key(self) -> str:
        """The same shape in few letters, as a file name takes them."""
        said = json.dumps([self.kind, self.columns, self.units, self.delimiter])
        return f"{self.kind}-{hashlib.sha256(said.encode()).hexdigest()[:16]}"


def shape_of(table: Table) -> Shape:
    """The shape of a table, by how it was understood."""
    named = table.kind != "npy"  # its columns are called after the file
    names = [item.name if named else str(place + 1) for place, item in enumerate(table.columns)]
    delimiter = table.dialect.delimiter if table.dialect else ""
    return Shape(table.kind, tuple(names), tuple(item.unit for item in table.columns), delimiter)
