"""Bring every catalogue up to date with the sources: ``python -m app.translations [--drop]``."""

from __future__ import annotations

import argparse
from dataclasses import replace

from app.translations.catalogue import TONGUES, Message, State, catalogue_path, read_messages, write_messages
from app.translations.extract import messages_of_sources


def updated(
    known: tuple[Message, ...], wanted: tuple[Message, ...], *, drop: bool = False
) -> tuple[Message, ...]:
    """A catalogue after a change of the sources.

    Parameters
    ----------
    known : tuple of Message
        What the catalogue holds.
    wanted : tuple of Message
        What the sources say.
    drop : bool
        Leave out what has vanished; otherwise it is kept at the end and marked.

    Returns
    -------
    tuple of Message
        In the order of the sources. A new message is unfinished; where another context translates the same
        text, that translation is proposed.
    """
    before = {item.key: item for item in known}
    elsewhere = {item.source: item.translation for item in known if item.translation}
    made = []
    for item in wanted:
        old = before.pop(item.key, None)
        if old is None:
            made.append(replace(item, translation=elsewhere.get(item.source, "")))
        else:
            back = State.UNFINISHED if old.state is State.VANISHED else old.state
            made.append(replace(item, translation=old.translation, state=back))
    gone = () if drop else (replace(item, state=State.VANISHED) for item in before.values())
    return (*made, *gone)


def main() -> None:
    """Update the files, and print what is left to do in each."""
    parser = argparse.ArgumentParser(prog="python -m app.translations", description=__doc__)
    parser.add_argument("--drop", action="store_true", help="leave out messages that no source says any more")
    drop = parser.parse_args().drop
    wanted = messages_of_sources()
    for code in (code for code in TONGUES if code != "en"):
        path = catalogue_path(code)
        messages = updated(read_messages(path), wanted, drop=drop)
        write_messages(path, code, messages)
        counts = {state: sum(item.state is state for item in messages) for state in State}
        print(f"{path.name}: " + ", ".join(f"{count} {state}" for state, count in counts.items()))
        for item in messages:
            if item.state is State.UNFINISHED:
                print(f"  unfinished, {item.context} ({item.note}): {item.source!r}")


if __name__ == "__main__":
    main()
