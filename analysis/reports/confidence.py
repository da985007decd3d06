"""Confidence in words. The words come from the number and never read stronger than it."""

from __future__ import annotations

import math
from enum import StrEnum

from analysis.wording import Wording, say


class Grade(StrEnum):
    """How sure something is, in the words that a customer reads."""

    VERY_LIKELY = "very likely"
    LIKELY = "likely"
    MORE_LIKELY_THAN_NOT = "more likely than not"
    POSSIBLE = "possible"
    NOT_RATED = "not rated"


_WORDS = {
    Grade.VERY_LIKELY: say("very likely"),
    Grade.LIKELY: say("likely"),
    Grade.MORE_LIKELY_THAN_NOT: say("more likely than not"),
    Grade.POSSIBLE: say("possible"),
    Grade.NOT_RATED: say("not rated"),
}

_UNLIKELY = say("very unlikely")
_UNLIKELY_BELOW = 0.05  # as far from certain as "very likely" is

# The steps follow common usage of such words, no source: "very likely" allows one error in twenty.
_LEAST = ((0.95, Grade.VERY_LIKELY), (0.8, Grade.LIKELY), (0.5, Grade.MORE_LIKELY_THAN_NOT))


def grade(probability: float) -> Grade:
    """The words for a calibrated probability; `NOT_RATED` where it is not a number."""
    if not math.isfinite(probability):
        return Grade.NOT_RATED
    return next((words for least, words in _LEAST if probability >= least), Grade.POSSIBLE)


def grade_words(probability: float) -> Wording:
    """The words for a calibrated probability without the odds: ``"very likely"``."""
    return _WORDS[grade(probability)]


def odds(probability: float) -> int:
    """How many in a hundred, 1 to 99: a calibrated probability is never a certainty.

    Raises
    ------
    ValueError
        Where the probability is not a number.
    """
    return min(max(round(100 * probability), 1), 99)


def in_words(probability: float) -> Wording:
    """Words and odds: ``"very likely (98 in 100)"``.

    A bare per cent figure would read as a degree of wear.
    """
    words = grade(probability)
    if words is Grade.NOT_RATED:
        return _WORDS[words]
    return say("{words} ({odds} in 100)", words=_WORDS[words], odds=odds(probability))


def place_words(probability: float, *, with_odds: bool = True) -> Wording:
    """The same of a place that somebody asked about: ``"very unlikely (3 in 100)"`` of one that is sound.

    A band that was found is never called less than possible, since something was seen there.
    """
    if not probability < _UNLIKELY_BELOW:
        return in_words(probability) if with_odds else grade_words(probability)
    return say("{words} ({odds} in 100)", words=_UNLIKELY, odds=odds(probability)) if with_odds else _UNLIKELY


def verdict_odds_words(probability: float, *, causes: bool) -> Wording:
    """What the odds of a verdict are odds of, in one sentence; of more causes than one they say nothing.

    Raises
    ------
    ValueError
        Where the probability is not a number.
    """
    if causes:
        return say(
            "Of 100 verdicts said with this confidence about {odds} proved right on simulated captures; it"
            " does not tell the possible causes apart.",
            odds=odds(probability),
        )
    return say(
        "Of 100 verdicts said with this confidence about {odds} proved right on simulated captures.",
        odds=odds(probability),
    )


def band_odds_words(probability: float) -> Wording:
    """What the odds of a band are odds of, in one sentence.

    Raises
    ------
    ValueError
        Where the probability is not a number.
    """
    return say(
        "Of 100 bands found with this confidence about {odds} proved to be there on simulated captures.",
        odds=odds(probability),
    )
