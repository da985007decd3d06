"""Parsers under a fuzzer that follows which lines an input reaches (Atheris, on libFuzzer).

Called as ``python -m tests.robustness.fuzz PARSER RUNS SEED FOLDER``, which ends with libFuzzer's numbers.
A find is printed as the bytes that led to it; it becomes a case of ``test_parsers.py``.
"""

from __future__ import annotations

import importlib
import importlib.util
import os
import re
import subprocess
import sys
import tempfile
import time
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from tests.robustness.mutations import WORDS
from tests.robustness.trials import LIMIT_MB, LIMIT_S, ROOT

_FRESH = ("sh", "-c", '"$0" "$@"; exit $?')
"""A process begins with the peak memory of the one that started it (Linux counts it before exec), and the
fuzzer takes that for its own; a shell in between is small."""

_PATIENCE_S = 60  # by the clock, on a busy machine; `LIMIT_S` of processor time is checked besides


@dataclass(frozen=True, slots=True)
class Fuzzed:
    """What a fuzzer did.

    Parameters
    ----------
    runs, branches, kept : int
        Inputs tried; branches of our code that were reached; inputs that reached something new.
    seconds : float
    trouble : str
        What it found, with the input; empty where it found nothing.
    """

    runs: int
    branches: int
    kept: int
    seconds: float
    trouble: str


def folder_in_memory() -> tempfile.TemporaryDirectory[str]:
    """A folder for the files of a fuzzer, in memory where the system has such a place."""
    shared = Path("/dev/shm")
    return tempfile.TemporaryDirectory(dir=shared if shared.is_dir() else None)


def why_not() -> str:
    """Why there is no fuzzer here; empty where there is."""
    if importlib.util.find_spec("atheris") is None:
        return "atheris is not installed: it has wheels for Linux on x86-64 alone"
    return ""


def run_fuzz(parser: str, runs: int, seed: int = 1) -> Fuzzed:
    """Fuzz a parser, a key of `tests.robustness.parsers.PARSERS`, in a process of its own."""
    begun_s = time.monotonic()
    with tempfile.TemporaryFile("w+") as said, folder_in_memory() as folder:
        done = subprocess.run(
            [*_FRESH, sys.executable, "-m", "tests.robustness.fuzz", parser, str(runs), str(seed), folder],
            cwd=ROOT,
            stdout=said,
            stderr=subprocess.STDOUT,
            check=False,
            env=os.environ | {"OPENBLAS_NUM_THREADS": "1", "QT_QPA_PLATFORM": "offscreen"},
        )
        said.seek(0)
        finds = [path for path in Path(folder).iterdir() if path.is_file()]
        text = said.read() + "".join(f"\n{path.name}: {path.read_bytes()!r}" for path in finds)
    last = [line for line in text.splitlines() if "cov: " in line][-1:]
    numbers = dict(re.findall(r"(cov|corp): (\d+)", last[0])) if last else {}
    count = re.search(r"number_of_executed_units: (\d+)", text)
    return Fuzzed(
        int(count.group(1)) if count else 0,
        int(numbers.get("cov", 0)),
        int(numbers.get("corp", 0)),
        time.monotonic() - begun_s,
        _told(text) if done.returncode else "",
    )


def _told(text: str) -> str:
    """The end of what was printed, without what is printed of every run."""
    return "\n".join(line for line in text.splitlines() if not line.startswith(("INFO:", "#")))[-3000:]


def _dictionary(whole: list[bytes]) -> str:
    """Words of whole inputs, and those that readers stumble over, as libFuzzer takes them."""
    words = {word for data in whole for word in re.findall(rb"[A-Za-z_]{2,40}", data)}
    words |= {word for word in WORDS if len(word) <= 40}
    return "".join('"' + "".join(f"\\x{byte:02x}" for byte in word) + '"\n' for word in sorted(words)[:2000])


def main() -> None:
    """Fuzz one parser in this process, which libFuzzer ends."""
    name, runs, seed = sys.argv[1], int(sys.argv[2]), int(sys.argv[3])
    atheris: Any = importlib.import_module("atheris")  # without types of its own
    atheris.enabled_hooks.add("str")  # comparisons of texts lead it too
    with atheris.instrument_imports(include=["analysis", "app"]):
        from tests.robustness.parsers import PARSERS, refused

    parser, place = PARSERS[name], Path(sys.argv[4])
    for part in ("files", "corpus", "words"):
        (place / part).mkdir()
    whole = parser.begin(place / "files")
    for number, data in enumerate(whole):
        (place / "corpus" / f"whole-{number}").write_bytes(data)
    (place / "words" / "dictionary").write_text(_dictionary(whole), encoding="ascii")

    def one(data: bytes) -> None:
        before_s = time.process_time()
        refused(parser, data, place / "files")
        if time.process_time() - before_s > LIMIT_S:
            raise TimeoutError(f"this took over {LIMIT_S} s of processor time")

    options = {
        "runs": runs, "seed": seed, "max_len": parser.longest, "timeout": _PATIENCE_S,
        "rss_limit_mb": LIMIT_MB, "print_final_stats": 1, "artifact_prefix": f"{place}/",
        "dict": place / "words" / "dictionary",
    }  # fmt: skip
    said = [f"-{key}={value}" for key, value in options.items()]
    atheris.Setup([sys.argv[0], *said, str(place / "corpus")], one)
    atheris.Fuzz()


if __name__ == "__main__":
    main()
