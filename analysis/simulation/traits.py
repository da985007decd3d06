"""What a simulated capture is like, for tables broken down by it."""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping
from dataclasses import dataclass

import numpy as np
from scipy.signal import butter, sosfiltfilt

from analysis.captures.model import Step
from analysis.diagnosis.findings import VerdictCode
from analysis.simulation.corpus import Case
from analysis.simulation.hand import NODE_HZ
from analysis.simulation.scenario import RecordPlan, Scenario


@dataclass(frozen=True, slots=True)
class Traits:
    """Of one capture.

    Parameters
    ----------
    kind : str
        Recipe and what was simulated, in words without numbers.
    groups : mapping of str to str
        Group of each breakdown: ``{"physics": "other", "bits": "8-9", ...}``.
    confounders : frozenset of str
        Keys of `CONFOUNDERS` that it holds.
    sound : bool
        Whether nothing at all is wrong with sensor, wiring and measurement.
    """

    kind: str
    groups: Mapping[str, str]
    confounders: frozenset[str]
    sound: bool


def traits(made: Case, physics: str) -> Traits:
    """Describe one case of the corpus."""
    scenario = made.scenario
    return Traits(
        kind=f"{made.family}: {re.sub(r',? *[-+]?[0-9.]+ V', '', made.truth.story)}",
        groups={
            "physics": physics,
            "channels": "three or more" if len(_swept(scenario)[0].roles) >= 3 else "one at a time",
            "sampling rate": _rate(scenario.recorder.rate_hz),
            "bits": _bits(scenario.recorder.bits),
            "range": f"±{scenario.recorder.range_v:g} V",
            "profile": str(scenario.attributes.get("profile", "none named")),
        },
        confounders=frozenset(name for name, holds in CONFOUNDERS.items() if holds(scenario)),
        sound=scenario.code is VerdictCode.NO_FAULT_FOUND,
    )


def _swept(scenario: Scenario) -> list[RecordPlan]:
    moved = [plan for plan in scenario.plans if plan.step in (Step.SWEEP, Step.ROAD)]
    return moved or list(scenario.plans)


def _rate(rate_hz: float) -> str:
    if rate_hz < 500.0:
        return "below 500 S/s"
    return f"{rate_hz:g} S/s" if rate_hz < 1_000.0 else f"{rate_hz / 1_000.0:g} kS/s"


def _bits(bits: int) -> str:
    return "8-9" if bits < 10 else "10-11" if bits < 12 else "12-13" if bits < 14 else "14-16"


def _knocks(scenario: Scenario) -> bool:
    """Whether the arm bounced by 0.3 % of travel or more, above 18 Hz, where no hand moves it."""
    return any(_quick_percent(plan) > 0.3 for plan in _swept(scenario) if plan.step is Step.SWEEP)


def _quick_percent(plan: RecordPlan) -> float:
    if plan.arm_percent.shape[0] < 100:
        return 0.0
    sos = butter(4, 18.0, btype="highpass", fs=NODE_HZ, output="sos")
    return float(np.abs(sosfiltfilt(sos, plan.arm_percent)).max())


def _tremor_percent(plan: RecordPlan) -> float:
    if plan.arm_percent.shape[0] < 200:
        return 0.0
    sos = butter(2, [7.0, 13.0], btype="bandpass", fs=NODE_HZ, output="sos")
    return float(np.asarray(sosfiltfilt(sos, plan.arm_percent)).std())


CONFOUNDERS: dict[str, Callable[[Scenario], bool]] = {
    "ignition spikes": lambda scenario: scenario.interference.spark_v > 0.0,
    "mains hum": lambda scenario: scenario.interference.hum_v > 0.0,
    "reference ripple": lambda scenario: scenario.interference.ripple_v > 0.0,
    "noise that grows with the voltage": lambda scenario: scenario.recorder.noise_growth > 0.0,
    "every other sample off": lambda scenario: scenario.recorder.interleave_v != 0.0,
    "single wrong samples": lambda scenario: scenario.recorder.spikes_per_s > 0.0,
    "clock gaps, marked": lambda scenario: _gaps(scenario, "missing"),
    "clock gaps, held": lambda scenario: _gaps(scenario, "held"),
    "clock gaps, spliced": lambda scenario: _gaps(scenario, "spliced"),
    "channels read one after the other": lambda scenario: scenario.recorder.skew > 0.0,
    "recorder that averages": lambda scenario: scenario.recorder.averaging,
    "input filter": lambda scenario: scenario.recorder.corner_hz > 0.0,
    "60 counts or fewer over the travel": lambda scenario: scenario.recorder.step_v > 5.0 / 60.0,
    "knocks at the stops": _knocks,
    "trembling hand": lambda scenario: any(_tremor_percent(plan) > 0.15 for plan in _swept(scenario)),
    "driven on a road": lambda scenario: any(plan.step is Step.ROAD for plan in scenario.plans),
    "dwelling, held in one spot": lambda scenario: any(plan.step is Step.HOLD for plan in scenario.plans),
    "steps not told": lambda scenario: not all(plan.told for plan in scenario.plans),
    "one record from wire to wire": lambda scenario: any(plan.prelude for plan in scenario.plans),
}
"""What makes a sound sensor look bad, or a capture hard to read."""


def _gaps(scenario: Scenario, kind: str) -> bool:
    return scenario.recorder.gaps_per_s > 0.0 and scenario.recorder.gap_kind == kind
