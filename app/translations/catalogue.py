"""One catalogue: a Qt Linguist file as messages, and messages as the file. No Qt is needed."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from enum import StrEnum
from functools import cache
from html import escape
from itertools import groupby
from pathlib import Path

from analysis.wording import ENGLISH, Language

ANALYSIS = "analysis"
"""Context of the templates that `analysis.wording.say` fills, wherever they stand."""

FOLDER = Path(__file__).resolve().parent


class State(StrEnum):
    """How far a message has come; the values are Qt Linguist's own."""

    FINISHED = "finished"
    UNFINISHED = "unfinished"
    VANISHED = "vanished"


@dataclass(frozen=True, slots=True)
class Message:
    """One text and its translation.

    Parameters
    ----------
    context : str
        The class or module that the text stands in, as Qt has it; `ANALYSIS` for templates.
    source : str
        The text in English.
    translation : str
        Empty where there is none.
    state : State
        Vanished: no source says it any more.
    note : str
        The files that say it, for the translator.
    """

    context: str
    source: str
    translation: str = ""
    state: State = State.UNFINISHED
    note: str = ""

    @property
    def key(self) -> tuple[str, str]:
        """What the message is found by."""
        return self.context, self.source


@dataclass(frozen=True, slots=True)
class Tongue:
    """A language that the program can speak: how it calls itself, and its decimal mark."""

    name: str
    decimal_mark: str


TONGUES = {"en": Tongue("English", "."), "de": Tongue("Deutsch", ",")}
"""By ISO 639-1 code; each but English has its catalogue beside this module."""


def catalogue_path(code: str) -> Path:
    """Where the catalogue of a language stands."""
    return FOLDER / f"wornband_{code}.ts"


def read_messages(path: Path) -> tuple[Message, ...]:
    """The messages of a catalogue in the file's order; none where there is no file.

    Raises
    ------
    ValueError
        Where the file is no Qt Linguist file.
    """
    # Loaded here: a window that speaks English pays nothing.
    from xml.etree import ElementTree

    if not path.exists():
        return ()
    root = ElementTree.parse(path).getroot()
    if root.tag != "TS":
        raise ValueError(f"{path.name} must be a Qt Linguist file, got <{root.tag}>")
    found = []
    for context in root.iter("context"):
        name = context.findtext("name", "")
        for item in context.iter("message"):
            target = item.find("translation")
            kind = target.get("type", "finished") if target is not None else "unfinished"
            state = State.VANISHED if kind == "obsolete" else State(kind)
            text = (target.text or "") if target is not None else ""
            found.append(
                Message(name, item.findtext("source", ""), text, state, item.findtext("extracomment", ""))
            )
    return tuple(found)


def write_messages(path: Path, code: str, messages: Iterable[Message]) -> None:
    """Write a catalogue; contexts in order of their names, messages as they come."""
    lines = [
        '<?xml version="1.0" encoding="utf-8"?>',
        "<!DOCTYPE TS>",
        f'<TS version="2.1" language="{code}" sourcelanguage="en">',
    ]
    by_context = sorted(messages, key=lambda item: item.context)
    for context, group in groupby(by_context, key=lambda item: item.context):
        lines += ["<context>", f"    <name>{escape(context, quote=False)}</name>"]
        for item in group:
            kind = "" if item.state is State.FINISHED else f' type="{item.state}"'
            lines += [
                "    <message>",
                f"        <source>{escape(item.source, quote=False)}</source>",
                f"        <extracomment>{escape(item.note, quote=False)}</extracomment>",
                f"        <translation{kind}>{escape(item.translation, quote=False)}</translation>",
                "    </message>",
            ]
        lines.append("</context>")
    path.write_text("\n".join([*lines, "</TS>", ""]), encoding="utf-8")


def translated(messages: Iterable[Message]) -> dict[tuple[str, str], str]:
    """Translations that can be shown, by context and source."""
    return {item.key: item.translation for item in messages if item.translation}


@cache
def load_language(code: str) -> Language:
    """The language for what the analysis says; English, and any that is not known, without reading a file.

    A catalogue is read once in a process: the preview of a report asks for it at every edit.

    Parameters
    ----------
    code : str
        A key of `TONGUES`.
    """
    if code == ENGLISH.code or code not in TONGUES:
        return ENGLISH
    return language_of(code, translated(read_messages(catalogue_path(code))))


def language_of(code: str, texts: dict[tuple[str, str], str]) -> Language:
    """The part of a catalogue that the analysis' sentences need."""
    templates = {source: text for (context, source), text in texts.items() if context == ANALYSIS}
    return Language(code, templates, TONGUES[code].decimal_mark)
