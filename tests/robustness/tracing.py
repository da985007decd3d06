"""A piece of work watched at every system call of its process: it can be killed there, or refused the disk.

Linux alone: ptrace(2), with the request that gives a call's number on every processor (Linux 5.3 and later).
It forks and waits for whatever ends, so it must run in a process of its own, without other children.
"""

from __future__ import annotations

import ctypes
import os
import platform
import signal
import struct
import sys
import traceback
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

from analysis.errors import WornbandError

# ptrace(2), <sys/ptrace.h>.
_TRACEME, _POKEUSER, _SYSCALL, _SETOPTIONS, _GET_SYSCALL_INFO = 0, 6, 24, 0x4200, 0x420E
_OPTIONS = 0x1 | 0x2 | 0x4 | 0x8 | 0x100000  # marked stops; forks, vforks and threads too; ends with us
_ALL = 0x40000000  # __WALL of waitpid(2): threads too
_ENTRY, _EXIT = 1, 2
_ORIG_RAX, _RAX = 15 * 8, 10 * 8  # <sys/user.h> of x86-64

_CHANGING = {
    "x86_64": {
        1: "write", 2: "open", 18: "pwrite64", 20: "writev", 74: "fsync", 75: "fdatasync", 76: "truncate",
        77: "ftruncate", 82: "rename", 83: "mkdir", 84: "rmdir", 85: "creat", 86: "link", 87: "unlink",
        88: "symlink", 257: "openat", 258: "mkdirat", 263: "unlinkat", 264: "renameat", 265: "linkat",
        285: "fallocate", 296: "pwritev", 316: "renameat2", 437: "openat2",
    },
    "aarch64": {
        34: "mkdirat", 35: "unlinkat", 36: "symlinkat", 37: "linkat", 38: "renameat", 45: "truncate",
        46: "ftruncate", 47: "fallocate", 56: "openat", 64: "write", 66: "writev", 68: "pwrite64",
        70: "pwritev", 82: "fsync", 83: "fdatasync", 276: "renameat2", 437: "openat2",
    },
}  # fmt: skip
"""Calls that can change what lies on a disk, by their number in the kernel's own tables. Between two of them
nothing changes, so that a kill at the entry of each is a kill between any two calls."""

_TAKING_ROOM = frozenset(
    {
        "write",
        "pwrite64",
        "writev",
        "pwritev",
        "ftruncate",
        "fallocate",
        "fsync",
        "fdatasync",
        "mkdir",
        "mkdirat",
    }
)
"""Of these, those that a full disk refuses."""

TOLD, STUMBLED = 3, 4
"""Exit status of a work that ended with a sentence; with anything else."""


@dataclass(frozen=True, slots=True)
class Trace:
    """What was seen of a piece of work.

    Parameters
    ----------
    calls : tuple of str
        Those that can change a disk, in order, up to the end.
    status : int
        0 done, `TOLD` or `STUMBLED`; negative: the signal that ended it.
    """

    calls: tuple[str, ...]
    status: int


def may_trace() -> str:
    """Why nothing can be traced here; empty where it can."""
    if not sys.platform.startswith("linux") or platform.machine() not in _CHANGING:
        return "system calls are watched on Linux alone, on x86-64 and aarch64"
    child = os.fork()
    if child == 0:
        os._exit(0 if _libc().ptrace(_TRACEME, 0, None, None) == 0 else 1)
    _, status = os.waitpid(child, 0)
    return "" if status == 0 else "this system does not let a process trace its child"


def may_refuse() -> str:
    """Why no call can be refused here; empty where it can."""
    return may_trace() or ("" if platform.machine() == "x86_64" else "calls are refused on x86-64 alone")


def traced(
    work: Callable[[], object], *, kill_at: int | None = None, refuse_from: int | None = None, error: int = 0
) -> Trace:
    """Do a piece of work in a process that is watched.

    Parameters
    ----------
    work : callable
    kill_at : int or None
        Kill it as it enters the call of this number, counted from 0 over those of `Trace.calls`.
    refuse_from : int or None
        Let this call and all later ones fail that a full disk refuses.
    error : int
        The error number that they fail with.
    """
    child = os.fork()
    if child == 0:
        status = STUMBLED
        try:
            status = _watched(work)
        finally:  # whatever happens, it does not go on in the parent's code
            os._exit(status)
    os.waitpid(child, 0)
    libc, known = _libc(), _CHANGING[platform.machine()]
    libc.ptrace(_SETOPTIONS, child, None, _OPTIONS)
    libc.ptrace(_SYSCALL, child, None, None)
    calls: list[str] = []
    refused: set[int] = set()
    while True:
        thread, status = os.waitpid(-1, _ALL)
        if os.WIFEXITED(status) or os.WIFSIGNALED(status):
            if thread == child:
                return Trace(tuple(calls), os.waitstatus_to_exitcode(status))
            continue
        passed_on = 0
        if os.WSTOPSIG(status) == signal.SIGTRAP | 0x80:
            place, number, handle = _call(libc, thread)
            if place == _ENTRY and number in known:
                if len(calls) == kill_at:
                    os.kill(child, signal.SIGKILL)
                    continue
                full = refuse_from is not None and len(calls) >= refuse_from
                if full and _takes_room(thread, known[number], handle):
                    libc.ptrace(_POKEUSER, thread, _ORIG_RAX, ctypes.c_void_p(-1))
                    refused.add(thread)
                calls.append(known[number])
            elif place == _EXIT and thread in refused:
                libc.ptrace(_POKEUSER, thread, _RAX, ctypes.c_void_p(-error))
                refused.discard(thread)
        elif os.WSTOPSIG(status) not in (signal.SIGTRAP, signal.SIGSTOP):
            passed_on = os.WSTOPSIG(status)
        libc.ptrace(_SYSCALL, thread, None, passed_on)


def _watched(work: Callable[[], object]) -> int:
    """What the child does."""
    _libc().ptrace(_TRACEME, 0, None, None)
    os.kill(os.getpid(), signal.SIGSTOP)
    try:
        work()
    except WornbandError as told:
        return TOLD if told.problem and told.action else STUMBLED
    except Exception:  # what is looked for
        traceback.print_exc()
        return STUMBLED
    return 0


def _takes_room(thread: int, call: str, handle: int) -> bool:
    """Whether a call would take room on a disk: none in memory, in a pipe, on a terminal."""
    if call not in _TAKING_ROOM or call.startswith("mkdir"):
        return call in _TAKING_ROOM
    try:
        name = str(Path(f"/proc/{thread}/fd/{handle}").readlink())
    except OSError:
        return False
    return name.startswith("/") and not name.startswith(("/memfd:", "/dev/", "/proc/"))


def _call(libc: ctypes.CDLL, thread: int) -> tuple[int, int, int]:
    """Whether a stopped thread enters or leaves a call, and at the entry its number and first argument."""
    info = ctypes.create_string_buffer(88)
    libc.ptrace(_GET_SYSCALL_INFO, thread, ctypes.c_void_p(len(info)), ctypes.cast(info, ctypes.c_void_p))
    return info.raw[0], *struct.unpack_from("<QQ", info.raw, 24)


def _libc() -> ctypes.CDLL:
    libc = ctypes.CDLL(None, use_errno=True)
    libc.ptrace.argtypes = [ctypes.c_long, ctypes.c_long, ctypes.c_void_p, ctypes.c_void_p]
    libc.ptrace.restype = ctypes.c_long
    return libc
