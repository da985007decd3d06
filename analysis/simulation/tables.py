"""The figures as Markdown: shares with their interval, breakdowns, reliability, what fails."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass
from itertools import pairwise
from math import isnan

import numpy as np
from numpy.typing import NDArray

from analysis.diagnosis.findings import VerdictCode
from analysis.intervals import Interval
from analysis.signals.calibration import brier_score, expected_calibration_error, reliability_table
from analysis.signals.proportions import wilson_interval
from analysis.simulation.scoring import (
    FAULTY,
    SURE,
    BandFigures,
    Judged,
    band_figures,
    edge_errors,
    matches_of,
    stated_bands,
    stated_verdicts,
    verdict_figures,
)
from analysis.simulation.traits import CONFOUNDERS, Traits
from analysis.simulation.truth import BandTruth

WIDTHS_PERCENT = (0.0, 1.5, 3.0, 6.0, 100.0)
"""Edges of the classes of band width."""


@dataclass(frozen=True, slots=True)
class Outcome:
    """One held-out capture: what it is like, what the analysis said and what the baseline said."""

    traits: Traits
    ours: Judged
    baseline: Judged


def markdown(head: Sequence[str], rows: Iterable[Sequence[str]]) -> str:
    """A table, the first column to the left and the others to the right."""
    rule = ["---", *["---:"] * (len(head) - 1)]
    return "\n".join("| " + " | ".join(cells) + " |" for cells in (head, rule, *rows))


def share(count: int, total: int) -> str:
    """A share with its 95 % Wilson interval; a dash for nothing counted."""
    if total == 0:
        return "–"
    interval = wilson_interval(count, total)
    return f"{count / total:.3f} ({interval.start:.3f}–{interval.stop:.3f}), {count}/{total}"


def number(value: float, digits: int = 3) -> str:
    """A number; a dash for NaN."""
    return "–" if isnan(value) else f"{value:.{digits}f}"


def overall(outcomes: Sequence[Outcome]) -> str:
    """The figures of all captures, beside the baseline's."""
    both = [[item.ours for item in outcomes], [item.baseline for item in outcomes]]
    columns = [{**_verdict_rows(items), **_band_rows(items)} for items in both]
    for row in ("calibration error of verdicts", "Brier score of verdicts"):
        columns[1][row] = "–"  # the baseline states no probability
    for row in ("calibration error of bands", "Brier score of bands"):
        columns[1][row] = "–"
    rows = [(name, columns[0][name], columns[1][name]) for name in columns[0]]
    return markdown(("figure", "analysis", "baseline"), rows)


def _verdict_rows(items: Sequence[Judged]) -> dict[str, str]:
    counts = verdict_figures(items)
    stated, right = stated_verdicts(items)
    alarms = sum(_alarms(item) for item in items if item.sound)
    return {
        "verdict as the truth has it": share(counts.strict, counts.cases),
        "verdict defensible": share(counts.acceptable, counts.cases),
        "sound sensors called faulty": share(counts.sound_called_faulty, counts.sound),
        "sound sensors called not measured": share(counts.sound_called_unmeasured, counts.sound),
        f"sound sensors with a band at {SURE:g} or more": share(alarms, counts.sound),
        "calibration error of verdicts": number(expected_calibration_error(stated, right)),
        "Brier score of verdicts": number(brier_score(stated, right)),
    }


def _band_rows(items: Sequence[Judged]) -> dict[str, str]:
    counts = band_figures(items)
    stated, outcomes = stated_bands(items)
    return {
        f"recall of bands at {SURE:g} or more": share(counts.recalled_sure, counts.asked),
        "recall of bands, any confidence": share(counts.recalled, counts.asked),
        f"precision of bands at {SURE:g} or more": share(
            counts.recalled_sure, counts.recalled_sure + counts.false_sure
        ),
        f"false bands at {SURE:g} or more; beside a true one": f"{counts.false_sure}; {counts.beside_sure}",
        "average precision of bands": number(counts.precision),
        **_edge_rows(counts),
        "both edges against where it broke up, median, % of travel": number(
            _error_against(items, lambda band: band.broken), 2
        ),
        "both edges against the wiper's position, median, % of travel": number(
            _error_against(items, lambda band: band.wiper), 2
        ),
        "calibration error of bands": number(expected_calibration_error(stated, outcomes)),
        "Brier score of bands": number(brier_score(stated, outcomes)),
    }


def _edge_rows(counts: BandFigures) -> dict[str, str]:
    error = np.array(counts.edge_error_percent).reshape(-1, 2)
    both = np.abs(error).sum(axis=1)
    near = (np.abs(error) <= 1.0).sum(axis=0)
    return {
        "error of both edges, median, % of travel": number(_quantile(both, 0.5), 2),
        "error of both edges, 90 % quantile, % of travel": number(_quantile(both, 0.9), 2),
        "too wide at both edges together, mean, % of travel": number(
            float(error.sum(axis=1).mean()) if len(error) else float("nan"), 2
        ),
        "lower edge within 1 %": share(int(near[0]), len(error)),
        "upper edge within 1 %": share(int(near[1]), len(error)),
    }


def _error_against(items: Sequence[Judged], edges: Callable[[BandTruth], Interval | None]) -> float:
    """Median error of both edges against other edges of the truth, such as where samples broke up."""
    errors = []
    for item in items:
        for match in matches_of(item):
            true = edges(match.true) if match.true is not None else None
            if true is not None:
                found = item.answer.bands[match.found].travel
                errors.append(sum(abs(error) for error in edge_errors(true, found)))
    return _quantile(np.array(errors), 0.5)


def _quantile(values: NDArray[np.float64], level: float) -> float:
    return float(np.quantile(values, level)) if values.size else float("nan")


def _alarms(item: Judged) -> bool:
    return any(band.confidence >= SURE for band in item.answer.bands)


def confusion(items: Sequence[Judged]) -> str:
    """Captures by truth (lines) and verdict (columns); codes that never occur are left out."""
    pairs = Counter((item.truth.code, item.answer.code) for item in items)
    said = [code for code in VerdictCode if any(answer is code for _, answer in pairs)]
    true = [code for code in VerdictCode if any(truth is code for truth, _ in pairs)]
    rows = [(code.value, *(str(pairs[code, answer] or "·") for answer in said)) for code in true]
    return markdown(("truth", *(code.value for code in said)), rows)


def reliability(stated: Sequence[float], outcomes: Sequence[bool]) -> str:
    """Stated confidence against what came true, in ten classes; empty ones are left out."""
    rows = [
        (
            f"{row.lower:.1f}–{row.upper:.1f}",
            number(row.mean_stated),
            share(round(row.share_true * row.count), row.count),
        )
        for row in reliability_table(stated, outcomes)
        if row.count
    ]
    return markdown(("confidence", "stated, mean", "true"), rows)


def breakdown(outcomes: Sequence[Outcome], name: str) -> str:
    """The main figures for each group of one breakdown, as `traits` names them."""
    groups: dict[str, list[Judged]] = {}
    for item in outcomes:
        groups.setdefault(item.traits.groups[name], []).append(item.ours)
    head = (name, "verdict right", "defensible", "sound called faulty", f"recall at {SURE:g}", *_BAND_HEAD)
    rows = []
    for group in sorted(groups, key=_in_order):
        items = groups[group]
        verdicts, bands = verdict_figures(items), band_figures(items)
        rows.append(
            (
                group,
                share(verdicts.strict, verdicts.cases),
                number(verdicts.acceptable / verdicts.cases),
                f"{verdicts.sound_called_faulty}/{verdicts.sound}",
                share(bands.recalled_sure, bands.asked),
                *_band_cells(bands),
            )
        )
    return markdown(head, rows)


_BAND_HEAD = ("average precision", "both edges, median", "90 %")


def _band_cells(bands: BandFigures) -> tuple[str, str, str]:
    both = np.abs(np.array(bands.edge_error_percent).reshape(-1, 2)).sum(axis=1)
    return number(bands.precision), number(_quantile(both, 0.5), 2), number(_quantile(both, 0.9), 2)


def _in_order(group: str) -> tuple[float, str]:
    """Numbers by size, thousands by their "k", words after them."""
    text = group.removeprefix("below ").removeprefix("±")
    digits = text.split(" ")[0].split("-")[0]
    try:
        return float(digits) * (1_000.0 if " k" in text else 1.0) - group.startswith("below"), group
    except ValueError:
        return float("inf"), group


def by_width(outcomes: Sequence[Outcome]) -> str:
    """Recall and edges for each class of true band width."""
    items = [item.ours for item in outcomes]
    classes = [Interval(low, high) for low, high in pairwise(WIDTHS_PERCENT)]
    rows = []
    for wide in classes:
        bands = band_figures(items, wide)
        rows.append(
            (
                f"{wide.start:g}–{wide.stop:g} %" if wide.stop < 100.0 else f"over {wide.start:g} %",
                share(bands.recalled_sure, bands.asked),
                share(bands.recalled, bands.asked),
                *_band_cells(bands)[1:],
            )
        )
    head = ("width of the band", f"recall at {SURE:g}", "recall, any confidence", *_BAND_HEAD[1:])
    return markdown(head, rows)


def by_confounder(outcomes: Sequence[Outcome]) -> str:
    """False alarms on sound sensors, with each confounder present."""
    rows = []
    for name in ("all", *CONFOUNDERS):
        held = [
            item
            for item in outcomes
            if item.traits.sound and (name == "all" or name in item.traits.confounders)
        ]
        ours = [item.ours for item in held]
        rows.append(
            (
                name,
                share(sum(item.answer.code in FAULTY for item in ours), len(ours)),
                share(sum(_alarms(item) for item in ours), len(ours)),
                share(sum(item.baseline.answer.code in FAULTY for item in held), len(held)),
            )
        )
    head = (
        "sound sensors with",
        "called faulty",
        f"with a band at {SURE:g}",
        "called faulty by the baseline",
    )
    return markdown(head, rows)


def failing_kinds(outcomes: Sequence[Outcome]) -> str:
    """Kinds of capture whose verdict is not defensible, or whose bands are missed or invented, counted."""
    faults: dict[str, Callable[[Judged], int]] = {
        "not as the truth": lambda item: item.answer.code is not item.truth.code,
        "not defensible": lambda item: item.answer.code not in item.truth.acceptable,
        f"bands missed at {SURE:g}": _missed,
        f"bands invented at {SURE:g}": lambda item: band_figures([item]).false_sure,
    }
    kinds = Counter(item.traits.kind for item in outcomes)
    counts: Mapping[str, Counter[str]] = {name: Counter() for name in faults}
    for item in outcomes:
        for name, fails in faults.items():
            counts[name][item.traits.kind] += int(fails(item.ours))
    failing = [kind for kind in kinds if any(counts[name][kind] for name in faults)]
    failing.sort(key=lambda kind: (-counts["not defensible"][kind], -counts["not as the truth"][kind], kind))
    rows = [
        (kind, str(kinds[kind]), *(str(counts[name][kind] or "·") for name in faults)) for kind in failing
    ]
    return markdown(("what was simulated", "captures", *faults), rows)


def _missed(item: Judged) -> int:
    counts = band_figures([item])
    return counts.asked - counts.recalled_sure


def accuracy_report(outcomes: Sequence[Outcome]) -> str:
    """Every table, with its heading."""
    ours = [item.ours for item in outcomes]
    parts = [
        ("All captures", overall(outcomes)),
        ("Verdicts", confusion(ours)),
        ("Reliability of verdict confidence", reliability(*stated_verdicts(ours))),
        ("Reliability of band confidence", reliability(*stated_bands(ours))),
        *((f"By {name}", breakdown(outcomes, name)) for name in outcomes[0].traits.groups),
        ("By width of the band", by_width(outcomes)),
        ("False alarms by what disturbs", by_confounder(outcomes)),
        ("What fails", failing_kinds(outcomes)),
    ]
    return "\n\n".join(f"### {title}\n\n{table}" for title, table in parts)
