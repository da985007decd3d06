"""Advice about a record, by what the record is called where the advice is read."""

from __future__ import annotations

from collections.abc import Mapping

from analysis.diagnosis.findings import MEASURE_AGAIN
from analysis.wording import Template, Wording

_BY_NAME = Template("{record}: {action}.")


def called(advice: str, names: Mapping[str, str]) -> str:
    """A sentence of advice with a record by another name than the file's.

    Parameters
    ----------
    advice : str
        Of `Findings.advice`.
    names : mapping of str to str
        What the records are called, by their names in the file.

    Returns
    -------
    str
        ``"Sweep 1: put the probe back and repeat."``; any other advice as it is.
    """
    if not isinstance(advice, Wording) or advice.template != MEASURE_AGAIN.text:
        return advice
    record = advice.values["record"]
    return _BY_NAME(**{**advice.values, "record": names[record]}) if record in names else advice
