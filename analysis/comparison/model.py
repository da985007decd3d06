"""What a comparison says, as frozen values."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from enum import StrEnum

from analysis.captures.model import Match, Role
from analysis.captures.record_names import Names
from analysis.comparison.positions import Position
from analysis.diagnosis.findings import Band, Check, Statement, Verdict
from analysis.intervals import Interval
from analysis.wording import Wording

FISHER = "Fisher's exact test, two-sided"
"""How the counts of crossings are tested (Fisher, Statistical Methods for Research Workers; from memory)."""

CHANCE = 0.05
"""A difference counts where chance would show one as large in a smaller share of cases (common practice)."""


_NOWHERE = Position()


class Relation(StrEnum):
    """How the two sides belong together; it decides the words, not the numbers."""

    BEFORE_AFTER = "before_after"
    LEFT_RIGHT = "left_right"
    KNOWN_GOOD = "known_good"
    SIDE_BY_SIDE = "side_by_side"


class Change(StrEnum):
    """What became of a band from the first side to the second."""

    GONE = "gone"
    LESS = "less"
    STILL_THERE = "still_there"
    MORE = "more"
    APPEARED = "appeared"
    NOT_SHOWN = "not_shown"


@dataclass(frozen=True, slots=True)
class Tested:
    """How one side tested a stretch of travel, and what it saw there.

    Parameters
    ----------
    passes, noisy_passes : int
        Crossings, and those on which the output broke up.
    confidence : float
        Calibrated probability that the output breaks up there place-locked; NaN where it is not rated.
    speed_percent_per_s : float
        Median speed of the crossings; NaN where there is none.
    sample_rate_hz : float
        Of the slowest record that crossed it; NaN where there is none.
    floor_percent : float
        Break-up below this could not be seen, in % of the applied voltage; NaN without a survey.
    breakup_percent : float
        Worst break-up there; NaN where it was not crossed.
    conditions : mapping of str to frozenset of str
        What the records that crossed it say of engine, loads, ignition, plug; absent where nothing is said.
    temperature : Interval or None
        Lowest and highest temperature stated, in °C.
    """

    passes: int
    noisy_passes: int
    confidence: float = float("nan")
    speed_percent_per_s: float = float("nan")
    sample_rate_hz: float = float("nan")
    floor_percent: float = float("nan")
    breakup_percent: float = float("nan")
    conditions: Mapping[str, frozenset[str]] = field(default_factory=dict)
    temperature: Interval | None = None


@dataclass(frozen=True, slots=True)
class BandComparison:
    """One stretch of travel that breaks up on either side, looked up on both.

    Parameters
    ----------
    track : Role
    travel : Interval
        On the common axis, in %.
    first, second : Tested
    first_band, second_band : Band or None
        The band that was found there, on the common axis.
    p_value : float
        Of `FISHER`, for the counts of noisy crossings; 1 where a side has no crossing.
    share_difference : Interval
        95 % interval of the share of noisy crossings, second less first (Newcombe 1998, method 10); -1 to 1
        where a side has no crossing.
    change : Change
    reasons : tuple of Wording
        Why no more is claimed; empty where the change is shown.
    """

    track: Role
    travel: Interval
    first: Tested
    second: Tested
    first_band: Band | None
    second_band: Band | None
    p_value: float
    share_difference: Interval
    change: Change
    reasons: tuple[Wording, ...] = ()

    @property
    def confidence(self) -> float:
        """That of the surer of the two bands."""
        return max(item.confidence for item in (self.first_band, self.second_band) if item is not None)


@dataclass(frozen=True, slots=True)
class CheckComparison:
    """One check of either side, set against that of the other.

    Parameters
    ----------
    code, title, unit : str
    first, second : Check or None
        None where a side did not make it.
    difference : float
        Second less first, in `unit`; NaN where it cannot be taken.
    expanded_uncertainty : float
        Of the difference, k = 2.
    exceeds : bool or None
        Whether the difference is larger than its uncertainty; None where that cannot be told.
    worst_seen : bool
        Whether the value is the worst of many readings: that scatters from one capture to the next by more
        than the uncertainty of the reading says, so a difference alone is no finding.
    repeated : bool
        Whether a side made this check for several records.
    in_size : bool
        Whether sizes are compared, for which sign the values have is chance.
    """

    code: str
    title: str
    unit: str
    first: Check | None
    second: Check | None
    difference: float
    expanded_uncertainty: float
    exceeds: bool | None
    worst_seen: bool = False
    repeated: bool = False
    in_size: bool = False


@dataclass(frozen=True, slots=True)
class Compared:
    """Which capture one side was, where it says that its sensor sits, what was found, and by what.

    Its records are `called` as people read them; `record` is the one that counts, by its name in the file.
    """

    path: str
    capture_id: str
    sha256: str
    title: str
    record: str
    mirrored: bool
    verdict: Verdict
    content: Match | None = None
    evidence: tuple[Statement, ...] = ()
    position: Position = _NOWHERE
    called: Names = field(default_factory=dict)


@dataclass(frozen=True, slots=True)
class Comparison:
    """Two captures, or two records, set against each other.

    Parameters
    ----------
    relation : Relation
        As it is told: what was asked for, unless the captures state otherwise.
    asked : Relation
        As whoever compares them takes the sides to belong together.
    names, titles : pair of Wording
        Where each side is, as an adverb, and what to write above it.
    one_position : bool or None
        Whether both are of one sensor position: False where the captures state two, True where they state
        one, None where they do not say.
    first, second : Compared
    bands : tuple of BandComparison
        The likeliest first; empty where neither side shows one.
    checks : tuple of CheckComparison
        In the order of the first side's checks.
    tested_by_both : tuple of Interval
        Travel that both sides crossed, in %.
    summary : Wording
        What it comes down to, never stronger than the numbers.
    cautions : tuple of Wording
        What stands against reading more into it.
    analysis_version : str
    """

    relation: Relation
    asked: Relation
    names: tuple[Wording, Wording]
    titles: tuple[Wording, Wording]
    one_position: bool | None
    first: Compared
    second: Compared
    bands: tuple[BandComparison, ...]
    checks: tuple[CheckComparison, ...]
    tested_by_both: tuple[Interval, ...]
    summary: Wording
    cautions: tuple[Wording, ...]
    analysis_version: str
