"""What the technician said of a found band, in words."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

from analysis.reports.quantities import travel
from analysis.review.model import Choice, Decision
from app.language import said as words_of


def _tr(text: str) -> str:
    return QCoreApplication.translate("decisions", text)


def choice_name(choice: Choice) -> str:
    """A decision in one word."""
    return {
        Choice.ACCEPTED: _tr("accepted"),
        Choice.ADJUSTED: _tr("adjusted"),
        Choice.DISMISSED: _tr("dismissed"),
    }[choice]


def accepted_name() -> str:
    """What the button that accepts is called once that is done."""
    return _tr("Accepted")


def accepted_tip() -> str:
    """What pressing it does then."""
    return _tr("You accepted this band as it was found; pressed again, you give no answer on it")


def said_of(decision: Decision | None) -> str:
    """What was said, as the technician's own words; empty where nothing was.

    The reason stands at the end: it may be long.
    """
    if decision is None:
        return ""
    if decision.choice is Choice.ACCEPTED:
        said = _tr("You: accepted as found")
    elif decision.adjusted is not None:
        said = _tr("You: adjusted to {span}").format(span=words_of(travel(decision.adjusted)))
    else:
        said = _tr("You: dismissed")
    return f"{said} · {decision.reason}" if decision.reason else said
