"""Attributes of one object, asked for by name, type and rule: the door where a file's words are checked."""

from __future__ import annotations

import math
from collections.abc import Collection
from dataclasses import dataclass

from analysis.captures import layout
from analysis.captures.strict import Attributes, Value
from analysis.errors import CaptureError
from analysis.wording import say


@dataclass(frozen=True, slots=True)
class Described:
    """The attributes of an object and where it stands.

    Parameters
    ----------
    where : str
        ``"record 001"``, for error messages.
    attributes : Attributes
        As read.
    """

    where: str
    attributes: Attributes

    def has(self, key: str) -> bool:
        """Whether the attribute is there, readable or not."""
        return key in self.attributes.values or key in self.attributes.odd

    def text(self, key: str, default: str = "") -> str:
        """A text; a number is taken at its word, as other programs store a part number as one.

        Raises
        ------
        CaptureError
            Where it is neither.
        """
        value = self._value(key, say("a text"))
        return default if value is None else str(value)

    def number(self, key: str) -> float | None:
        """A number, or None where the attribute is absent; NaN and infinity pass.

        Raises
        ------
        CaptureError
            Where it is no number.
        """
        value = self._value(key, say("a number"))
        if isinstance(value, str):
            raise CaptureError(
                say("{key} of {where} is the text {value!r}", key=key, where=self.where, value=value),
                say("store it as a number"),
            )
        return None if value is None else float(value)

    def finite(self, key: str) -> float | None:
        """As `number`, and neither NaN nor infinite.

        Raises
        ------
        CaptureError
            Where it is no finite number.
        """
        value = self.number(key)
        if value is not None and not math.isfinite(value):
            raise CaptureError(
                say("{key} of {where} is {value:g}", key=key, where=self.where, value=value),
                say("store a finite number"),
            )
        return value

    def rest(self, taken: Collection[str]) -> dict[str, Value]:
        """All readable attributes but those `taken`, in the file's order."""
        return {key: value for key, value in self.attributes.values.items() if key not in taken}

    def _value(self, key: str, wanted: str) -> Value | None:
        if key in self.attributes.odd:
            raise CaptureError(
                say(
                    "{key} of {where} is {value}, not {wanted}",
                    key=key,
                    where=self.where,
                    value=self.attributes.odd[key],
                    wanted=wanted,
                ),
                say("store {wanted} there", wanted=wanted),
            )
        return self.attributes.values.get(key)


def with_texts(attributes: Attributes, texts: dict[str, str]) -> Attributes:
    """The attributes with their variable-length texts filled in."""
    return Attributes({**attributes.values, **texts}, (), attributes.odd)


def interval_s(record: Described) -> float:
    """Seconds between the samples of a record.

    Raises
    ------
    CaptureError
        Where the record does not state it, or it is not positive and finite.
    """
    value = record.number(layout.INTERVAL_KEY)
    if value is None:
        raise CaptureError(
            say(
                "{where} does not state its {interval_key}",
                where=record.where,
                interval_key=layout.INTERVAL_KEY,
            ),
            say("store the seconds between samples in that attribute of {where}", where=record.where),
        )
    if not (math.isfinite(value) and value > 0.0):
        raise CaptureError(
            say(
                "the {interval_key} of {where} is {value:g} s",
                interval_key=layout.INTERVAL_KEY,
                where=record.where,
                value=value,
            ),
            say("store a positive number of seconds there"),
        )
    return value


def volts_a_unit(channel: Described) -> float:
    """Volts a unit of the channel.

    Raises
    ------
    CaptureError
        Where it states no unit, or none of voltage.
    """
    unit = channel.text(layout.UNITS_KEY).strip()
    if not unit:
        raise CaptureError(
            say("{where} states no {units_key}", where=channel.where, units_key=layout.UNITS_KEY),
            say('store "V" in that attribute'),
        )
    if unit not in layout.VOLTS_A_UNIT:
        raise CaptureError(
            say("{where} is in {unit!r}, which is no voltage", where=channel.where, unit=unit),
            say("store it in V, mV or kV"),
        )
    return layout.VOLTS_A_UNIT[unit]
