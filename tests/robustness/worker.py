"""Tries damaged files one after the other, in a process that may die of it.

Called as ``python -m tests.robustness.worker KIND FOLDER SEED FIRST COUNT``. Before each trial it prints
``+ NUMBER``, afterwards ``= NUMBER OUTCOME SECONDS MEGABYTES``: processor time and the highest memory, its
own and that of the processes that it started. Damage depends on kind, seed and number alone.
"""

from __future__ import annotations

import random
import resource
import shutil
import sys
import traceback
import warnings
from pathlib import Path

from analysis.errors import WornbandError
from tests.robustness.mutations import mutated
from tests.robustness.tasks import TASKS, Task

_MOST_BYTES = 4 * 1024**3  # spares the machine; what stays below is measured
_PEAK, _RESET = Path("/proc/self/status"), Path("/proc/self/clear_refs")


def damaged_file(task: Task, sources: list[Path], folder: Path, seed: str) -> Path:
    """The file of one trial."""
    chance = random.Random(seed)
    source = chance.choice(sources)
    victim = folder / f"victim{source.suffix}"
    victim.write_bytes(mutated(source.read_bytes(), task.damage, chance))
    return victim


def tried(task: Task, victim: Path) -> str:
    """How a trial ended: taken, refused with a sentence, or a traceback, which is printed."""
    try:
        task.use(victim)
    except WornbandError as error:
        return "refused" if error.problem and error.action and "\n" not in str(error) else "traceback"
    except Exception:  # what the whole trial looks for
        traceback.print_exc()
        return "traceback"
    return "taken"


def spent_s() -> float:
    """Processor time of this process and of those that it waited for."""
    own, children = resource.getrusage(resource.RUSAGE_SELF), resource.getrusage(resource.RUSAGE_CHILDREN)
    return own.ru_utime + own.ru_stime + children.ru_utime + children.ru_stime


def _peak_mb() -> int:
    """Highest memory since the last reset, or that of a child ever, in MB."""
    line = next(line for line in _PEAK.read_text().splitlines() if line.startswith("VmHWM"))
    return max(int(line.split()[1]), resource.getrusage(resource.RUSAGE_CHILDREN).ru_maxrss) // 1024


def main() -> None:
    """Run the trials that the command line asks for."""
    kind, folder, seed = sys.argv[1], Path(sys.argv[2]), sys.argv[3]
    first, count = int(sys.argv[4]), int(sys.argv[5])
    resource.setrlimit(resource.RLIMIT_AS, (_MOST_BYTES, _MOST_BYTES))
    resource.setrlimit(resource.RLIMIT_CORE, (0, 0))
    warnings.simplefilter("ignore")  # numbers out of a damaged file overflow, and are told as such
    task = TASKS[kind]
    whole = folder / "whole"
    shutil.rmtree(whole, ignore_errors=True)
    whole.mkdir()
    sources = sorted(task.make(whole))
    for number in range(first, first + count):
        victim = damaged_file(task, sources, folder, f"{kind} {seed} {number}")
        print("+", number, flush=True)
        _RESET.write_text("5")
        before_s = spent_s()
        outcome = tried(task, victim)
        print("=", number, outcome, f"{spent_s() - before_s:.3f}", _peak_mb(), flush=True)


if __name__ == "__main__":
    main()
