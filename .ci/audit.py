"""Prints what can be known about the parts of others, weaknesses too where a list of them lies at hand.

Run as ``.venv/bin/python .ci/audit.py``, after ``hashes.py`` where a version was pinned. It prints the
licences, and fails where a version is pinned without the hash of its file, where a hash belongs to no pinned
version, where an index has taken a version back ("yanked", most often for a weakness; the reason is printed),
where no file of that hash can be had any more, and where an installed part states no licence. ``--offline``
leaves the index out.

Weaknesses of versions that nobody has taken back are known from a list alone: ``--weaknesses PATH`` reads
one (`weaknesses.py`), and without it that is said. An index that hands out files alone does not say that a
version was taken back.
"""

from __future__ import annotations

import argparse
import re
import subprocess
import sys
from collections.abc import Callable
from importlib.metadata import Distribution, PackageNotFoundError, distribution
from importlib.util import module_from_spec, spec_from_file_location
from pathlib import Path
from types import ModuleType

HERE = Path(__file__).resolve().parent
PIN = re.compile(r"([\w.-]+)==([\w.+!-]+)")
HASH = re.compile(PIN.pattern + r" --hash=sha256:[0-9a-f]{64}")

STATED_ELSEWHERE = {"atheris": "Apache-2.0 (its source files say so, its metadata does not)"}


def lines(path: Path) -> list[str]:
    """What a list says, without its comments."""
    return [line for line in path.read_text(encoding="ascii").splitlines() if line and line[0] != "#"]


def known(line: str) -> str:
    """Name and version, with the name as the index spells it."""
    found = PIN.match(line)
    if found is None:
        return line
    return f"{re.sub(r'[-_.]+', '-', found[1]).lower()}=={found[2]}"


def differences(pins: Path, hashes: Path) -> list[str]:
    """Where the pinned versions and their hashes differ, and lines that are neither."""
    pinned, listed = ({known(line) for line in lines(path)} for path in (pins, hashes))
    return [
        *(f"{item} is pinned and has no hash: run .ci/hashes.py" for item in sorted(pinned - listed)),
        *(f"{item} has a hash and is not pinned: run .ci/hashes.py" for item in sorted(listed - pinned)),
        *(f"{line} is not pinned" for line in lines(pins) if not PIN.fullmatch(line)),
        *(f"{line} has no hash" for line in lines(hashes) if not HASH.fullmatch(line)),
    ]


def taken_back(said: str) -> list[str]:
    """What pip says of versions that were taken back, with the reasons."""
    found = re.findall(r"is a yanked version: (.+)\n?(Reason for being yanked: .*)?", said)
    return [" ".join(filter(None, item)) for item in found]


def of_the_index(hashes: Path) -> list[str]:
    """Ask pip for every file by its hash, without installing one; what it complains of."""
    command = [
        *(sys.executable, "-m", "pip", "install", "--dry-run", "--ignore-installed", "--no-deps", "--quiet"),
        *("--only-binary", ":all:", "--require-hashes", "-r", str(hashes)),
    ]
    done = subprocess.run(command, capture_output=True, text=True, check=False)
    failed = [line for line in done.stderr.splitlines() if line.startswith("ERROR")]
    return [*taken_back(done.stderr), *(failed or ["pip failed"] if done.returncode else [])]


def _beside(name: str) -> ModuleType:
    """A module of this folder, which is no package."""
    spec = spec_from_file_location(name, HERE / f"{name}.py")
    assert spec is not None
    assert spec.loader is not None
    module = module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


def _licence_of() -> Callable[[Distribution], list[dict[str, object]]]:
    """The rule by which the bill of materials names licences."""
    rule: Callable[[Distribution], list[dict[str, object]]] = _beside("bill_of_materials")._licence
    return rule


def known_weaknesses(pins: Path, known: Path | None) -> tuple[str, list[str]]:
    """What was held against which list, in a sentence; weaknesses of pinned versions."""
    if known is None:
        return "no list of known weaknesses was given (--weaknesses): none was looked for", []
    module = _beside("weaknesses")
    listed = list(module.records(known))
    return f"{len(listed)} known weaknesses were looked for", module.weaknesses(lines(pins), listed)


def licences(pins: Path) -> tuple[list[str], list[str]]:
    """A line for each pinned part that is installed here; parts that state no licence."""
    rule, said, silent = _licence_of(), [], []
    for line in lines(pins):
        name = line.partition("==")[0]
        try:
            (stated,) = rule(distribution(name))
        except PackageNotFoundError:
            said.append(f"{line}: not installed here")
        except ValueError as error:
            elsewhere = STATED_ELSEWHERE.get(name)
            silent += [] if elsewhere else [str(error)]
            said.append(f"{line}: {elsewhere or 'states no licence'}")
        else:
            held = stated.get("license")
            said.append(
                f"{line}: {stated.get('expression') or (held['name'] if isinstance(held, dict) else '')}"
            )
    return said, silent


def main() -> int:
    """Print the list of licences and what stands out."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--offline", action="store_true", help="leave the index out")
    parser.add_argument("--weaknesses", type=Path, help="folder or ZIP of records in the OSV schema")
    wanted = parser.parse_args()
    pins, listed = HERE / "constraints.txt", sorted(HERE.glob("hashes-*.txt"))
    said, bad = licences(pins)
    print("\n".join(said))
    for path in listed:
        bad += differences(pins, path)
        bad += [] if wanted.offline else of_the_index(path)
    looked, weak = known_weaknesses(pins, wanted.weaknesses)
    bad += weak
    print("\n".join(bad), file=sys.stderr)
    print(looked)
    print(f"{len(said)} parts, {len(listed)} lists of hashes, {len(bad)} complaints")
    return 1 if bad else 0


if __name__ == "__main__":
    sys.exit(main())
