"""Statements on what the recorder let see: how fast it sampled, what all of its probes picked up alike."""

from __future__ import annotations

import numpy as np

from analysis.captures.model import Role
from analysis.diagnosis.findings import Result, State, Statement
from analysis.diagnosis.seen import PLAIN, Seen, names_of
from analysis.diagnosis.studies import Study
from analysis.wording import plural, say

SPARK_S = 0.004
"""A spark with all its ringing is over in this time; what lasts longer on all wires is a ground that lifts
(common practice, no source)."""


def sampled_fast_enough(seen: Seen) -> Statement | None:
    """Where the sampling is too slow to see a break-up, that; None where it is fast enough."""
    check = seen.check("sample_rate")
    if check is None or check.result is not Result.FAIL:
        return None
    text = say(
        "Only {rate_hz:.0f} samples a second were taken: between them a fast stroke passes a bad spot"
        " unseen.",
        rate_hz=check.value,
    )
    return Statement("sampled_fast_enough", State.REFUTED, (check.record,), text)


def interference(seen: Seen) -> Statement | None:
    """What ground and reference showed alike for an instant; None where they did not."""
    if any(problem.strength >= PLAIN for problem in seen.problems):
        return None
    found = [(item, *_alike(item)) for item in seen.studies.every]
    items = [item for item, count, _ in found if count]
    if not items:
        return None
    text = plural(
        "At {count} moment all probes showed the same disturbance, of up to {size_v:.2f} V: interference. It"
        " is taken out of what is said of the signal.",
        "At {count} moments all probes showed the same disturbance, of up to {size_v:.2f} V: interference. It"
        " is taken out of what is said of the signal.",
        count=sum(count for _, count, _ in found),
        size_v=max(size_v for _, _, size_v in found),
    )
    return Statement("interference", State.PROVED, names_of(items), text)


def _alike(item: Study) -> tuple[int, float]:
    """How often ground and reference were disturbed alike and briefly, and by how many volts at most."""
    ground, reference = item.steady.get(Role.GROUND), item.steady.get(Role.REFERENCE)
    if ground is None or reference is None:
        return 0, 0.0
    both_v = np.minimum(ground.departure_v, reference.departure_v)
    marks = both_v > max(ground.threshold_v, reference.threshold_v)
    edges = np.flatnonzero(np.diff(marks.astype(np.int8), prepend=0, append=0)).reshape(-1, 2)
    brief = edges[(edges[:, 1] - edges[:, 0]) * item.cells.cell_s <= SPARK_S]
    size_v = max((float(both_v[start:stop].max()) for start, stop in brief), default=0.0)
    return len(brief), size_v
