"""What the technician, or a recipe, has decided about a source; whatever is left open is guessed."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from enum import StrEnum

from analysis.captures.model import Role, Step
from analysis.importing.choices import NOTHING_CHOSEN, TextChoices


class Blocks(StrEnum):
    """What blocks of a table are that stand one below the other."""

    JOINED = "joined"  # one course that goes on
    RECORDS = "records"
    CHANNELS = "channels"


CONDITIONS = ("plugged", "ignition", "engine", "loads", "moved", "temperature")
"""Attributes of a record that say under which conditions it was taken."""

EVERY_CHANNEL = "all"
"""In the place of a column: whatever channel is not named itself."""

_RECORDER = ("recorder", "recorder_serial", "recorder_calibrated")


@dataclass(frozen=True, slots=True)
class Wishes:
    """What the technician, or a recipe, has decided; whatever is left open is guessed.

    Parameters
    ----------
    channels : mapping of str to Role
        Roles by column, named or counted from 1. Where there are any, other columns are left out.
    time_column : str or None
        The column of times.
    interval_s : float or None
        Seconds between rows; a column of times is then not looked at.
    units : mapping of str to str
        Units by column, where the file says none or the wrong one.
    full_scale_v : float or None
        Volts at full scale of a WAV file.
    step : Step or None
        What the records were taken for.
    resample : bool
        Whether times that are not evenly spaced may be interpolated onto even ones.
    attributes : mapping
        Of the capture: ``vehicle``, ``complaint`` and the rest.
    text : TextChoices
        How a text table is written, as far as it is not to be found out.
    factors : mapping of str to float
        By column, what its samples are multiplied by beside their unit: a probe's attenuation that the
        recorder did not know of. It counts in the place of what the file states above its samples.
    offsets : mapping of str to float
        By column, the volts that are added to its samples after the factor.
    probe_points, return_points : mapping of str to str
        By column, or by role, or for `EVERY_CHANNEL`: where the probe sat, and what it measured against.
    conditions : mapping of str to str
        Of every record, by `CONDITIONS`.
    datasets : tuple of str
        Which of the named arrays of a file are to be used; empty where that is found out.
    guess_step : bool
        Whether a step that nobody states may be taken from how the channels behave.
    blocks : Blocks or None
        What blocks of a table are that stand one below the other.
    """

    channels: Mapping[str, Role] = field(default_factory=dict)
    time_column: str | None = None
    interval_s: float | None = None
    units: Mapping[str, str] = field(default_factory=dict)
    full_scale_v: float | None = None
    step: Step | None = None
    resample: bool = False
    attributes: Mapping[str, str] = field(default_factory=dict)
    text: TextChoices = NOTHING_CHOSEN
    factors: Mapping[str, float] = field(default_factory=dict)
    offsets: Mapping[str, float] = field(default_factory=dict)
    probe_points: Mapping[str, str] = field(default_factory=dict)
    return_points: Mapping[str, str] = field(default_factory=dict)
    conditions: Mapping[str, str] = field(default_factory=dict)
    guess_step: bool = True
    datasets: tuple[str, ...] = ()
    blocks: Blocks | None = None


def over(stated: Wishes, base: Wishes) -> Wishes:
    """What was stated, with what `base` says where it leaves something open.

    Parameters
    ----------
    stated : Wishes
        Of the technician, now.
    base : Wishes
        Of a recipe.

    Returns
    -------
    Wishes
        Stated roles replace all roles of the base; a stated interval replaces its column of times, and the
        reverse.
    """
    by_column, by_interval = stated.time_column is not None, stated.interval_s is not None
    return Wishes(
        channels=stated.channels or base.channels,
        time_column=stated.time_column if by_column or by_interval else base.time_column,
        interval_s=stated.interval_s if by_column or by_interval else base.interval_s,
        units={**base.units, **stated.units},
        full_scale_v=stated.full_scale_v if stated.full_scale_v is not None else base.full_scale_v,
        step=stated.step or base.step,
        resample=stated.resample or base.resample,
        attributes={**base.attributes, **stated.attributes},
        text=stated.text.over(base.text),
        factors={**base.factors, **stated.factors},
        offsets={**base.offsets, **stated.offsets},
        probe_points={**base.probe_points, **stated.probe_points},
        return_points={**base.return_points, **stated.return_points},
        conditions={**base.conditions, **stated.conditions},
        guess_step=stated.guess_step and base.guess_step,
        datasets=stated.datasets or base.datasets,
        blocks=stated.blocks or base.blocks,
    )


def of_the_recorder(wishes: Wishes) -> Wishes:
    """What of the wishes holds for the recorder's next file too, whatever car it comes from.

    Vehicle, complaint, step, conditions and probe points belong to one visit: a recipe that fits by itself
    must not claim them of the next one.
    """
    return replace(
        wishes,
        step=None,
        attributes={key: value for key, value in wishes.attributes.items() if key in _RECORDER},
        probe_points={},
        return_points={},
        conditions={},
    )
