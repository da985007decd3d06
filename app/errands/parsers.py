"""How an errand is called: what all of them share."""

from __future__ import annotations

import argparse
from typing import TypeAlias

Errands: TypeAlias = "argparse._SubParsersAction[argparse.ArgumentParser]"
"""Where errands are added; argparse gives it no public name."""

EXIT_STATUSES = (
    """exit status: 0 all done; 1 some file could not be done, the others are; 2 the call was wrong"""
)


def add_errand(errands: Errands, name: str, *, summary: str, about: str) -> argparse.ArgumentParser:
    """Add an errand: options are written whole, and the help ends with what the exit status means.

    Parameters
    ----------
    errands
        Of the command.
    name : str
        What is typed.
    summary : str
        Its line in the list of errands.
    about : str
        The sentence above its options.
    """
    return errands.add_parser(name, help=summary, description=about, epilog=EXIT_STATUSES, allow_abbrev=False)
