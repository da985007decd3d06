"""Values that a capture states in words which the program proposes: these can be said in any language."""

from __future__ import annotations

from analysis.wording import Wording, say

_KNOWN: dict[str, Wording] = {
    "on": say("on"),
    "off": say("off"),
    "idling": say("idling"),
    "running": say("running"),
    "control-unit end": say("control-unit end"),
    "sensor end": say("sensor end"),
    "battery negative": say("battery negative"),
    "sensor ground": say("sensor ground"),
    "by hand": say("by hand"),
    "suspension": say("suspension"),
    "road": say("road"),
    "ride height sensor": say("ride height sensor"),
    "throttle position sensor": say("throttle position sensor"),
    "accelerator pedal position sensor": say("accelerator pedal position sensor"),
    "front left": say("front left"),
    "front right": say("front right"),
    "rear left": say("rear left"),
    "rear right": say("rear right"),
    "Front left": say("Front left"),
    "Front right": say("Front right"),
    "Rear left": say("Rear left"),
    "Rear right": say("Rear right"),
    "left": say("left"),
    "right": say("right"),
    "front": say("front"),
    "rear": say("rear"),
    "front axle": say("front axle"),
    "rear axle": say("rear axle"),
}


def known_word(value: str) -> str:
    """A stated value as a wording where it is one of ours; anybody's own words as they are.

    Parameters
    ----------
    value : str
        Of an attribute such as ``ignition``, ``moved`` or ``probe_point``; may be empty.
    """
    return _KNOWN.get(value, value)
