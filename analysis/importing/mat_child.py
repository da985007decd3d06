"""Reads a MAT file for `analysis.importing.binary`, in a process of its own: a damaged one can end SciPy.

Takes ``{"path": ..., "folder": ..., "kinds": [...], "most_bytes": ..., "most_arrays": ...}`` as JSON on
standard input, writes each array of numbers to the folder as ``<place>.npy``, and answers with
``{"names": [...]}`` in that order, or with ``{"too_much": bytes}``. It may crash: that is what it is for.
"""

from __future__ import annotations

import json
import sys
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import numpy as np
from numpy.typing import NDArray
from scipy import io

_MEMORY_BYTES = 2 * 1024**3  # of addresses, the libraries' own among them
_DEEPEST = 3  # of structs in structs
_TOGETHER_BYTES = 64 * 1024**2
_PROCESSOR_S = 5  # for a file of no length


def _limit(size: int) -> None:
    try:
        import resource
    except ImportError:  # Windows has no such limits; the time limit still stands
        return
    hard = resource.getrlimit(resource.RLIMIT_AS)[1]
    wanted = _MEMORY_BYTES + 20 * size
    resource.setrlimit(resource.RLIMIT_AS, (wanted if hard < 0 else min(wanted, hard), hard))
    most_s = _PROCESSOR_S + size // 5_000_000
    resource.setrlimit(resource.RLIMIT_CPU, (most_s, most_s))
    resource.setrlimit(resource.RLIMIT_CORE, (0, 0))


def main() -> None:
    """Answer one request."""
    request = json.load(sys.stdin)
    path, folder = Path(request["path"]), Path(request["folder"])
    _limit(path.stat().st_size)
    listed = io.whosmat(str(path))
    plain = [(name, shape) for name, shape, kind in listed if kind in request["kinds"]]
    structs = [name for name, shape, kind in listed if kind == "struct" and np.prod(shape) == 1]
    size = sum(8 * int(np.prod(shape, dtype=np.float64)) for _, shape in plain)
    if size > request["most_bytes"] or len(plain) > request["most_arrays"]:
        json.dump({"too_much": size}, sys.stdout)
        return
    names: list[str] = []
    # One at a time where they are large: no more than one of them is in memory then.
    sets = [[name] for name, _ in plain] if size > _TOGETHER_BYTES else [[name for name, _ in plain]]
    for some in sets:
        loaded = io.loadmat(str(path), variable_names=some)
        for name in some:
            values = np.asarray(loaded.get(name))
            if values.dtype.kind in "iufb":
                np.save(folder / f"{len(names)}.npy", values, allow_pickle=False)
                names.append(name)
    loaded = io.loadmat(str(path), variable_names=structs) if structs else {}
    for name in structs:
        for field, values in _fields(loaded.get(name), name):
            if len(names) < request["most_arrays"]:
                np.save(folder / f"{len(names)}.npy", values, allow_pickle=False)
                names.append(field)
    json.dump({"names": names}, sys.stdout)


def _fields(value: Any, name: str, depth: int = 0) -> Iterator[tuple[str, NDArray[Any]]]:
    """Arrays of numbers in a struct and in those inside it, with the names that lead there."""
    if not isinstance(value, np.ndarray) or value.size != 1 or not value.dtype.names or depth > _DEEPEST:
        return
    for field in value.dtype.names:
        inner = value.reshape(-1)[0][field]
        if isinstance(inner, np.ndarray) and inner.dtype.kind in "iufb":
            yield f"{name}/{field}", inner
        yield from _fields(inner, f"{name}/{field}", depth + 1)


if __name__ == "__main__":
    main()
