"""Prints how the program stands up to damaged files, to being killed and to long use.

``python -m tests.robustness`` is the short form, which also runs among the tests; ``--long`` takes about an
hour, and ``--only WORD`` the parts whose name holds the word.
"""

from __future__ import annotations

import argparse
import sys
from dataclasses import astuple

from tests.robustness import every_call, fuzz, small_disk
from tests.robustness.kills import run_kills
from tests.robustness.parsers import PARSERS
from tests.robustness.savings import KINDS
from tests.robustness.soak import run_soak
from tests.robustness.trials import LIMIT_MB, LIMIT_S, run_trials

COUNTS = {  # short, long
    "capture, oldest layout": (150, 9000),
    "capture, newest layout": (150, 9000),
    "capture, foreign texts": (5, 1000),
    "capture, examined": (40, 1000),
    "table": (40, 5000),
    "review": (150, 5000),
    "profile": (150, 5000),
    "recipe": (150, 5000),
    "settings": (100, 5000),
    "photo": (100, 5000),
    "stored report": (40, 2000),
}
KILLS = {kind: (10, {"review": 400, "capture": 300, "report": 300}.get(kind, 100)) for kind in KINDS}
ROUNDS = (8, 500)
FUZZED = (1500, 60_000)


def damaged_files(long: bool, only: str, seed: int) -> list[str]:
    """Print the table of the damaged files; what must not be."""
    bad = []
    print("| damaged files | tried | taken | refused | crashes | hangs | memory | tracebacks | s | MB |")
    print("| --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: |")
    for kind, counts in COUNTS.items():
        if only in kind:
            found = run_trials(kind, counts[long], seed)
            troubles = (found.crashes, found.hangs, found.swollen, found.tracebacks)
            cells = [kind, found.count, found.taken, found.refused, *map(len, troubles)]
            print(
                "|",
                " | ".join(map(str, cells)),
                f"| {found.slowest_s:.2f} | {found.largest_mb:.0f} |",
                flush=True,
            )
            bad += found.bad
    print(f"\nHang: over {LIMIT_S:g} s of processor time. Memory: over {LIMIT_MB} MB. Seed {seed}.\n")
    return bad


def killed_savings(long: bool, only: str, seed: int) -> list[str]:
    """Print the table of the killed savings; what must not be."""
    bad = []
    print("| killed while saving | kills | in the midst of writing | damaged | lost |")
    print("| --- | ---: | ---: | ---: | ---: |")
    for kind, counts in KILLS.items():
        if only in f"killed {kind}":
            found = run_kills(kind, counts[long], seed)
            print(f"| {kind} | {found.count} | {found.midway} | {found.damaged} | {found.lost} |", flush=True)
            bad += [f"{kind}: {found}"] if found.damaged or found.lost else []
    return bad


def calls_disturbed(only: str) -> list[str]:
    """Print the table of the savings that were disturbed at each system call; what must not be."""
    reason = every_call.why_not()
    if reason:
        print(f"\nNot killed at each system call: {reason}.")
        return []
    bad = []
    print("\n| at each system call | calls | kills | damaged | strays | stuck | full | told | silent | bad |")
    print("| --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: |")
    for kind in KINDS:
        if only in f"calls of {kind}":
            found = every_call.run_every_call([kind])[kind]
            print("|", " | ".join(map(str, (kind, *astuple(found)))), "|", flush=True)
            bad += [f"{kind}: {found}"] if found.bad else []
    return bad


def full_disks(only: str) -> list[str]:
    """Print the table of the savings on a disk without room; what must not be."""
    reason = small_disk.why_not()
    if reason:
        print(f"\nNo full disk: {reason}.")
        return []
    bad = []
    print("\n| on a full disk | tried | told | saved | damaged | anything left | not saved later |")
    print("| --- | ---: | ---: | ---: | ---: | ---: | ---: |")
    for kind in KINDS:
        if only in f"full disk {kind}":
            found = small_disk.run_small_disk([kind])[kind]
            print("|", " | ".join(map(str, (kind, *found))), "|", flush=True)
            bad += [f"{kind}: {found}"] if any(found[3:]) else []
    return bad


def fuzzed_parsers(long: bool, only: str, seed: int) -> list[str]:
    """Print the table of the parsers under a fuzzer that is led by coverage; what it found."""
    reason = fuzz.why_not()
    if reason:
        print(f"\nNo fuzzer that is led by coverage: {reason}.")
        return []
    bad = []
    print("\n| fuzzed parser | inputs | branches reached | inputs kept | found | s |")
    print("| --- | ---: | ---: | ---: | ---: | ---: |")
    for name in PARSERS:
        if only in f"fuzz {name}":
            found = fuzz.run_fuzz(name, FUZZED[long], seed)
            cells = (name, found.runs, found.branches, found.kept, int(bool(found.trouble)))
            print("|", " | ".join(map(str, cells)), f"| {found.seconds:.0f} |", flush=True)
            bad += [f"{name}: {found.trouble}"] if found.trouble else []
    return bad


def long_use(long: bool, only: str) -> list[str]:
    """Print what long use costs; what must not be."""
    if only not in "soak":
        return []
    found = run_soak(ROUNDS[long])
    print(f"\n{found}")
    return [f"soak: {found}"] if found.grows else []


def main() -> int:
    """Run what the command line asks for; 1 where something stands out."""
    parser = argparse.ArgumentParser(prog="python -m tests.robustness", description=__doc__)
    parser.add_argument("--long", action="store_true", help="the counts of a release")
    parser.add_argument("--only", default="", metavar="WORD", help="parts whose name holds this")
    parser.add_argument("--seed", type=int, default=1)
    wanted = parser.parse_args()
    bad = damaged_files(wanted.long, wanted.only, wanted.seed)
    bad += killed_savings(wanted.long, wanted.only, wanted.seed)
    bad += calls_disturbed(wanted.only) + full_disks(wanted.only)
    bad += fuzzed_parsers(wanted.long, wanted.only, wanted.seed)
    bad += long_use(wanted.long, wanted.only)
    print("\n".join(bad), file=sys.stderr)
    return 1 if bad else 0


if __name__ == "__main__":
    sys.exit(main())
