"""Whether the recorder kept up: some lose samples without a word, and the signal then seems to leap."""

from __future__ import annotations

from analysis.captures.record_names import record_alone
from analysis.diagnosis.findings import State, Statement
from analysis.diagnosis.seen import Seen
from analysis.diagnosis.studies import Study
from analysis.wording import listed, plural


def recorder_kept_up(seen: Seen) -> Statement | None:
    """The records in which samples were lost without a word; None where nothing speaks for that."""
    losing = [(item.record.name, count) for item in seen.studies.every if (count := _lost(item))]
    if not losing:
        return None
    names = tuple(name for name, _ in losing)
    text = plural(
        "The recorder seems to have lost samples without marking it, {count} time (in {records}): the"
        " signal leaps to where the motion goes. That is no fault of the sensor, and is not counted.",
        "The recorder seems to have lost samples without marking it, {count} times (in {records}): the"
        " signal leaps to where the motion goes. That is no fault of the sensor, and is not counted.",
        count=sum(count for _, count in losing),
        records=listed(map(record_alone, names)),
    )
    return Statement("recorder_kept_up", State.REFUTED, names, text)


def _lost(item: Study) -> int:
    """How often the recorder lost samples without a word in a record, as the track tells that tells most."""
    found = (survey.motion.leaps for survey in item.surveys.values())
    return max((len(leaps.cell) for leaps in found if leaps is not None), default=0)
