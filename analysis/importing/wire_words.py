"""Which wire the words of a heading name, in the languages of the workshops around; never by colour."""

from __future__ import annotations

import re
import unicodedata

from analysis.captures.model import Role
from analysis.importing.units import without_accents

# Without accents, in small letters. Of "Sensormasse" the last part is the wire, the first says whose it is.
_DEVICES = (
    r"sensor(?:en|s)?|(?:signal|hohen|weg|winkel|pedalwert)?geber|givar(?:en|e)?|giver|gever|opnemer|fuhler|foler"
    r"|aufnehmer|czujnik(?:a|owa)?|capteur|anturi(?:n)?|snimac(?:e)?|cidlo|cidla|poti(?:meter)?|potentiometer"
    r"|signa(?:l|al)|bezugs?|referen[zt](?:ie)?|batterie|karosserie|motor"
)
_GROUNDS = r"masse?|massa|masa|minus|erde|erdung|aarde|jord|stel|maa|zem|gnd|ground|earth|mass"
_FEEDS = (
    r"(?:spannungs)?versorgung(?:sspannung)?|(?:spannungs)?speisung|speise?spannung|voeding(?:sspanning)?"
    r"|(?:spannings?)?matning|forsyning|napajeni|syotto|zasilanie|supply|feed(?!back)|plus|alimentation|besleme"
)
_OUTPUTS = r"signa(?:l|al|ali)|ausgang|uitgang|utgang|udgang|lahto|output|wiper|schleifer"
_REFERENCES = r"referen[zst]\w*|ref"
_OTHERS = r"temp(?:eratur\w*)?|strom|druck|drehzahl"
_PARTS = rf"(?:{_GROUNDS}|{_FEEDS}|{_OUTPUTS}|{_REFERENCES}|{_OTHERS}|spannung|spanning)"
_COMPOUND = re.compile(rf"\b({_DEVICES})(?=(?:en|s)?(?:{_PARTS})(?:\b|\d))")

_AGAINST = re.compile(  # what a voltage was measured against is not the wire
    r"\b(?:vs|versus|to|against|gegen|gegenuber|tegen|mot|wobec|contre|contra|contro|kontra)\b\.?"
    r"\s*(?:the |la |le |die )?(?:sensor\W?)?(?:gnd|ground|earth|mass[ea]?|masa|jord|chassis|0 ?v)\b"
)
_OWNERS = r"(?:sensor|capteur|czujnik|cidl|snimac|geber|fuhler|givar|gever|opnemer|センサ)"
_OF_A_SENSOR = rf"{_OWNERS}\w*\W?(?:{_FEEDS})"
_WORDS = (  # German, French, Spanish, Italian, Dutch, Nordic, Polish, Czech, Turkish, Russian, Japanese too
    (
        Role.GROUND,
        rf"\b(?:ref(?:erence|erenz)?|bezugs?)[ _]?(?:{_GROUNDS})\b|\bsig(?:na(?:l|al))?[ _]?(?:{_GROUNDS})\b",
    ),
    (Role.SECOND_SIGNAL, r"second.?signal|signal.?(?:2|b)\b|sig.?2"),
    (
        Role.REFERENCE,
        r"\bv?ref(?:eren[ct]\w*|erenz)?|\bu?ref\b|5 ?v\b|v5|excitation|\bfeed\b|riferimento|odniesieni|опорн"
        r"|bezugsspannung|\bviite|基準|参考电压|기준"
        rf"|{_OF_A_SENSOR}|センサー?(?:電源|供給)"
        r"|(?:aliment\w*|zasilani\w*|napajeni|voeding|versorgung|speis(?:ung|espannung)|matning|supply)\W+"
        rf"(?:\w{{1,3}}\W+)?{_OWNERS}",
    ),
    (
        Role.GROUND,
        r"\bgnd|ground|earth|\bmass[ea]\b(?!\W{0,2}d?\W?(?:air|aria))|\bmasa\b|tierra|\bterra\b|земля|масса"
        rf"|{_OWNERS}\W?minus|0 ?v\b|return"
        r"|bezugspoten|\bmasse(?:poten[tz]ial|leitung|anschluss|punkt)\b|\berd(?:e|ung)\b|\baarde\b|\bjord(?:ning)?\b|\bstel\b"
        r"|\bmaa(?:doitus)?\b|\bzem(?:e|nici)?\b|\bkostra\b|\bfold(?:eles)?\b|\bsase\b|\btoprak(?:lama)?\b|gnd|アース|接地|クラント|地线|접지",
    ),
    (
        Role.SUPPLY,
        r"batt|\bbat(?:eria)?\b|supply|12 ?v\b|24 ?v\b|u.?bat|bordnetz|versorgung|aliment"
        r"|speis(?:ung|espannung)"
        r"|zasilani|питани|\bvoeding|\bmatning|\bforsyning|napajeni|\btapfesz|\bsyotto|besleme|電源|电源|전원",
    ),
    (Role.SECOND_SIGNAL, r"sensor.?2|pos.?2|track.?2"),  # "sensor 2 ground" is none
    (
        Role.SIGNAL,
        r"sig(?:nal)?|segnal|senal|sinal|sinyal|semnal|sygnal|сигнал|\bjel\b|wiper|schleifer|curs(?:eur|or)|output"
        r"|\bausgang|\buitgang|\butgang|\budgang|\bsortie\b|\buscita\b|\bsalida\b|\bsaida\b|wyjsci|\bvystup"
        r"|\bkimenet|\bcikis|信号|出力|输出|신호",
    ),
)  # fmt: skip
_DEVICE = r"sensor|\b(?:geber|givare?n?|gever|opnemer|czujnik|capteur|anturi|snimac|cidlo)\b|датчик|センサ"
_QUANTITY = r"position|\bpos\b|height|level|pedal|throttle|hohe(?:nstand|ngeber)?|位置"
_SENSOR = re.compile(f"{_DEVICE}|{_QUANTITY}")  # of a signal, unless a wire is named beside it
_BESIDE = re.compile(  # words beside it that say nothing of the wire
    r"\b(?:voltage|volts?|spannung|spanning|tension|napiecie|left|right|front|rear|links|rechts|vorne?|hinten|upper"
    r"|lower|ch|chan|channel|kanal|analog|input|in|value|wert|no|nr|the|of|travel|angle|accelerator|body|ride|axle"
    r"|test|raw|adc|mv|v|dc)\b"
)
_LETTERS = re.compile(r"[^\W\d_]{2,}")

_NO_WIRE = re.compile(  # without accents
    r"\b(?:temp(?:erat\w*)?|rpm|drehzahl|speed|tempo|geschwindigkeit|vitesse|humidity|feuchte|pressure|druck"
    r"|pression|current|strom|courant|mileage|odometer)\b"
)


def said_role(words: str) -> Role | None:
    """The role that the words of a heading name, or None.

    Parameters
    ----------
    words : str
        A heading; "Sensormasse" and "sensor ground" name the ground of a sensor, "sensor" alone its signal.
    """
    # Of "second/signal" the last word counts before the group that it stands in.
    for said in dict.fromkeys((words.rpartition("/")[2], words)):
        plain = taken_apart(said)
        role = next((role for role, form in _WORDS if re.search(form, plain)), None)
        if role is not None:
            return role
        if _SENSOR.search(plain):
            return Role.SIGNAL
    return None


def names_known_wire(words: str) -> bool:
    """Whether words name a wire by itself, not only the sensor or what it measures."""
    plain = taken_apart(words)
    return any(re.search(form, plain) for _, form in _WORDS)


def is_vague(words: str) -> bool:
    """Whether a heading names a sensor and something of it that is not known here.

    Parameters
    ----------
    words : str
        "Sensor", "pedal left" and "sensor 1" are not vague; "sensor xyz" may be any of its wires.
    """
    return names_sensor_alone(words) and bool(
        _LETTERS.search(_BESIDE.sub(" ", _SENSOR.sub(" ", taken_apart(words))))
    )


def names_sensor_alone(words: str) -> bool:
    """Whether a heading names a sensor, and neither a wire that is known nor what is measured."""
    plain = taken_apart(words)
    return not names_known_wire(words) and bool(re.search(_DEVICE, plain)) and not re.search(_QUANTITY, plain)


def names_no_wire(words: str) -> bool:
    """Whether a heading names something else than a voltage."""
    return bool(_NO_WIRE.search(taken_apart(words)))


def names_another_of_a_sensor(words: str) -> bool:
    """Whether a heading names what a sensor has beside wires: "sensor temperature", not "speed sensor"."""
    plain = taken_apart(words)
    sensor, other = _SENSOR.search(plain), _NO_WIRE.search(plain)
    if sensor is None or other is None or names_known_wire(words):
        return False
    return sensor.start() < other.start()


def taken_apart(words: str) -> str:
    """Words in small letters and without accents, compounds of a sensor and a wire taken apart."""
    narrow = unicodedata.normalize("NFKC", words)  # of East Asian letters there are wide and narrow ones
    plain = without_accents(narrow.replace("_", " ")).replace("ł", "l").replace("ø", "o").replace("ı", "i")
    return _COMPOUND.sub(r"\1 ", _AGAINST.sub(" ", plain))
