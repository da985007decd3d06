"""Reads variable-length text attributes for `analysis.captures.variable_text`, in a process of its own.

Takes ``{"path": ..., "wanted": [[object, attribute], ...]}`` as JSON on standard input and answers with a
JSON list of texts. It may crash: that is what it is for.
"""

from __future__ import annotations

import json
import signal
import sys

import h5py

_MEMORY_BYTES = 1024 * 1024 * 1024  # a damaged length can ask for any amount
_PROCESSOR_S = 0.5  # texts take milliseconds, and a damaged heap can be walked round for ever


def _limit() -> None:
    try:
        import resource
    except ImportError:  # Windows has no such limits; the time limit still stands
        return
    hard = resource.getrlimit(resource.RLIMIT_AS)[1]
    if hard == resource.RLIM_INFINITY or hard > _MEMORY_BYTES:
        resource.setrlimit(resource.RLIMIT_AS, (_MEMORY_BYTES, hard))
    resource.setrlimit(resource.RLIMIT_CORE, (0, 0))
    # Its signal ends the process, also where it is deep inside the library; a limit on processor time by
    # `resource` counts whole seconds, with what the start took.
    signal.setitimer(signal.ITIMER_PROF, _PROCESSOR_S)


def _text(value: object) -> str:
    raw = value if isinstance(value, bytes) else str(value).encode("utf-8", "surrogateescape")
    try:
        return raw.decode("utf-8")
    except UnicodeDecodeError:
        return raw.decode("latin-1")


def main() -> None:
    """Answer one request."""
    request = json.load(sys.stdin)
    _limit()
    texts = []
    with h5py.File(request["path"], "r", locking="best-effort") as file:
        for path, name in request["wanted"]:
            value = file[path].attrs[name]
            texts.append(_text(value if isinstance(value, str | bytes) else value.item()))
    json.dump(texts, sys.stdout)


if __name__ == "__main__":
    main()
