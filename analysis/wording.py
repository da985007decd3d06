"""Sentences for people that remember what they were made of, so that they can be said in another language.

The analysis speaks English: a `Wording` is an ordinary string, and JSON, logs and tests see just that. A view
or a report that speaks another language hands it to `Language.say`, which looks up the template and fills in
the values again, in that language's way of writing numbers.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from numbers import Integral, Number
from string import Formatter
from typing import Any


class Wording(str):
    """A string made from a template and values.

    Attributes
    ----------
    template : str
        What the translator sees: format fields with names, as `str.format` takes them.
    values : mapping of str to object
        What the fields were filled with. A value may itself be a `Wording`.
    """

    __slots__ = ("template", "values")
    template: str
    values: Mapping[str, Any]

    def __new__(cls, template: str, values: Mapping[str, Any]) -> Wording:  # noqa: D102 - see the class
        made = super().__new__(cls, template.format(**values))
        made.template = template
        made.values = dict(values)
        return made

    def __reduce__(self) -> tuple[Any, ...]:
        return Wording, (self.template, self.values)


def say(template: str, /, **values: object) -> Wording:
    """Fill a template for people; the template must be a literal, so that the translator's list is complete.

    Parameters
    ----------
    template : str
        English, with named fields: ``say("{wire} reads {level_v:.2f} V.", wire=name, level_v=4.98)``. Numbers
        go in as numbers, with their format in the template: another language writes them its own way.
    **values : object
        What the fields stand for; a `Wording` among them is translated with the sentence.

    Returns
    -------
    Wording

    Raises
    ------
    KeyError
        A field of the template has no value.
    """
    return Wording(template, values)


@dataclass(frozen=True, slots=True)
class Template:
    """A sentence whose values come later: kept in a table, filled by calling it."""

    text: str

    def __call__(self, **values: object) -> Wording:
        """Fill it, as `say` does."""
        return Wording(self.text, values)


def plural(one: str, several: str, /, *, count: int, **values: object) -> Wording:
    """One of two templates, as `count` has it; both are literals, with the field ``{count}``.

    Parameters
    ----------
    one, several : str
        ``"{count} crossing"`` and ``"{count} crossings"``. Each is translated on its own, which serves the
        languages that tell one from several, as English and German do.
    count : int
        How many.
    **values : object
        As in `say`.
    """
    return Wording(one if count == 1 else several, {"count": count, **values})


def joined(parts: Iterable[str], separator: str = " ") -> Wording:
    """Several wordings in a row, each translated on its own; an empty wording for none."""
    every = [part for part in parts if part]
    names = {f"part{place}": part for place, part in enumerate(every)}
    return Wording("{gap}".join("{" + name + "}" for name in names), {**names, "gap": separator})


def listed(parts: Iterable[str]) -> Wording:
    """Wordings as people list them: ``"a and b and c"``; an empty wording for none."""
    said: Wording | None = None
    for part in parts:
        said = (
            say("{one}", one=part) if said is None else say("{first} and {second}", first=said, second=part)
        )
    return joined([]) if said is None else said


def verbatim(text: str) -> Wording:
    """A text that stands in a data file of our own and is translated as a whole, braces and all."""
    return Wording(text.replace("{", "{{").replace("}", "}}"), {})


class _Shown(float):
    """A number that knows its digits: a true minus sign, and none before a nought."""

    digits: int

    def __format__(self, format_spec: str) -> str:
        text = f"{float(self):.{self.digits}f}"
        if not text.startswith("-"):
            return text
        return text[1:] if float(text) == 0.0 else "\N{MINUS SIGN}" + text[1:]

    def __reduce__(self) -> tuple[Any, ...]:
        return _shown, (float(self), self.digits)


def _shown(value: float, digits: int) -> _Shown:
    made = _Shown(value)
    made.digits = digits
    return made


def number(value: float, digits: int) -> Wording:
    """A finite number with so many digits after the decimal mark, whichever that is in a language."""
    return Wording("{value}", {"value": _shown(value, digits)})


class _Numbers(Formatter):
    """`str.format` with a true minus sign (ISO 80000-2, 2-10.2) and a language's own decimal mark.

    Beside a decimal comma a narrow space parts thousands (ISO 80000-1, 7.3.1).
    """

    def __init__(self, decimal_mark: str) -> None:
        self._decimal_mark = decimal_mark

    def format_field(self, value: Any, format_spec: str) -> str:
        text = str(super().format_field(value, format_spec))
        if not isinstance(value, Number):
            return text
        text = text.replace("-", "\N{MINUS SIGN}", 1) if text.lstrip().startswith("-") else text
        if self._decimal_mark == ".":
            return text
        text = text.replace(",", "\N{NARROW NO-BREAK SPACE}")
        return text if isinstance(value, Integral) else text.replace(".", self._decimal_mark)


@dataclass(frozen=True, slots=True)
class Language:
    """A language that sentences can be said in.

    Parameters
    ----------
    code : str
        As in ISO 639-1.
    messages : mapping of str to str
        The translation of each template, with the same fields; what is not there is said in English.
    decimal_mark : str
        What stands between a number's units and tenths.
    """

    code: str = "en"
    messages: Mapping[str, str] = field(default_factory=dict)
    decimal_mark: str = "."

    def say(self, text: str) -> str:
        """A wording in this language.

        Parameters
        ----------
        text : str
            A `Wording` is translated with everything in it; other text (a vehicle's name, a technician's
            note) is somebody's own words and is returned as it is.

        Returns
        -------
        str
        """
        if not isinstance(text, Wording):
            return text
        template = self.messages.get(text.template, text.template)
        values = {
            name: self.say(value) if isinstance(value, Wording) else value
            for name, value in text.values.items()
        }
        return _Numbers(self.decimal_mark).vformat(template, (), values)


ENGLISH = Language()
