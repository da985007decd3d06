"""What can hurt somebody or break something while a sensor is being measured and swept."""

from __future__ import annotations

from analysis.wording import Wording, say

SUSPENSION = say(
    "A vehicle on air or height-adjustable suspension can drop without warning, and moving a live sensor"
    " makes it inflate or dump. Put it on stands rated for it, disable levelling by the maker's method, and"
    " only then connect and sweep."
)
THROTTLE = say(
    "An electronic throttle traps fingers: sweep pedals with the engine off and the intake closed, hands out"
    " of the bore."
)
PROBING = say(
    "Never probe airbag or high-voltage circuits with this procedure. Back-probe the plug; do not pierce the"
    " insulation."
)
AFTERWARDS = say("After a sensor is replaced the maker's height calibration applies.")
WHO_DECIDES = say(
    "The vehicle maker's procedure, local codes and a licensed technician's judgement stand above this tool."
)

_SUSPENSION_WORDS = ("height", "level", "suspension", "ride")
_PEDAL_WORDS = ("pedal", "throttle")


def cautions(described: str = "") -> tuple[Wording, ...]:
    """The cautions that apply, most dangerous first.

    Parameters
    ----------
    described : str
        Whatever the capture says about the sensor: its profile, sensor and title. Unless this tells a
        height sensor from a pedal, the cautions of both are given.
    """
    said = described.lower()
    height = any(word in said for word in _SUSPENSION_WORDS)
    pedal = any(word in said for word in _PEDAL_WORDS)
    lines = []
    if height or not pedal:
        lines.append(SUSPENSION)
    if pedal or not height:
        lines.append(THROTTLE)
    lines.append(PROBING)
    if height or not pedal:
        lines.append(AFTERWARDS)
    return (*lines, WHO_DECIDES)
