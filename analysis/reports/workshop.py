"""Who makes the report."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Workshop:
    """Who makes the report, as the settings keep it.

    Parameters
    ----------
    name : str
        Of the workshop.
    lines : tuple of str
        Address, telephone and the like.
    logo : str
        Path of an image; empty for none.
    """

    name: str = ""
    lines: tuple[str, ...] = ()
    logo: str = ""
