"""Run a command under the limits that a unit of systemd sets, without systemd:

    python tests/deploy/confined.py UNIT COMMAND ...

Applied by the same kernel calls as systemd's: the filter of system calls (with its sets as the
installed systemd resolves them), families of sockets, no memory that is written and then run, no
new privileges, the mask of new files. The tests' way to see that the bot works within its unit.
"""

import ctypes
import os
import subprocess
import sys
from pathlib import Path

ALLOW, EPERM = 0x7FFF0000, 0x00050001  # SCMP_ACT_ALLOW, SCMP_ACT_ERRNO(EPERM): seccomp.h
EQUAL = 4  # SCMP_CMP_EQ
PR_SET_NO_NEW_PRIVS, PR_SET_MDWE = 38, 65  # linux/prctl.h
FAMILIES = {"AF_UNIX": 1, "AF_INET": 2, "AF_INET6": 10}  # sys/socket.h, Linux


class Comparison(ctypes.Structure):
    """`struct scmp_arg_cmp` of libseccomp."""

    _fields_ = (
        ("arg", ctypes.c_uint),
        ("op", ctypes.c_int),
        ("datum_a", ctypes.c_uint64),
        ("datum_b", ctypes.c_uint64),
    )


def directives(unit: Path) -> list[tuple[str, str]]:
    """The `Name=value` lines of a unit, in order."""
    lines = [line.strip() for line in unit.read_text(encoding="utf-8").splitlines()]
    pairs = [line.split("=", 1) for line in lines if "=" in line and not line.startswith("#")]
    return [(name.strip(), value.strip()) for name, value in pairs]


def calls_of(name: str) -> set[str]:
    """A system call, or those of a set such as `@system-service`."""
    if not name.startswith("@"):
        return {name}
    told = subprocess.run(
        ["systemd-analyze", "syscall-filter", name], capture_output=True, text=True, check=True
    ).stdout
    members = [line.strip() for line in told.splitlines()[1:]]
    return {call for member in members if member and member[0] != "#" for call in calls_of(member)}


def allowed_calls(unit: Path) -> set[str]:
    """What SystemCallFilter leaves: sets are added, and taken away after a tilde."""
    allowed = calls_of("@default")
    for value in (value for name, value in directives(unit) if name == "SystemCallFilter"):
        taken = value.startswith("~")
        for name in value.lstrip("~").split():
            allowed = allowed - calls_of(name) if taken else allowed | calls_of(name)
    return allowed


def confine(unit: Path) -> None:
    """Put this process under the unit's limits, for good."""
    told = dict(directives(unit))
    os.umask(int(told["UMask"], 8))
    libc = ctypes.CDLL(None, use_errno=True)
    if libc.prctl(PR_SET_NO_NEW_PRIVS, 1, 0, 0, 0):
        raise OSError(ctypes.get_errno(), "no new privileges")
    if told["MemoryDenyWriteExecute"] == "yes":
        libc.prctl(PR_SET_MDWE, 1, 0, 0, 0)  # since Linux 6.3; an older kernel goes without
    seccomp = ctypes.CDLL("libseccomp.so.2")
    seccomp.seccomp_init.restype = ctypes.c_void_p
    families = [FAMILIES[name] for name in told["RestrictAddressFamilies"].split()]
    ours = ctypes.c_void_p(seccomp.seccomp_init(EPERM))
    for name in sorted(allowed_calls(unit)):
        number = seccomp.seccomp_syscall_resolve_name(name.encode())
        if number < 0:
            continue  # of another architecture
        if name == "socket":
            for family in families:
                same = Comparison(0, EQUAL, family, 0)
                _done(seccomp.seccomp_rule_add_array(ours, ALLOW, number, 1, ctypes.byref(same)))
        else:
            _done(seccomp.seccomp_rule_add(ours, ALLOW, number, 0))
    _done(seccomp.seccomp_load(ours))


def _done(status: int) -> None:
    if status:
        raise OSError(-status, os.strerror(-status))


if __name__ == "__main__":
    confine(Path(sys.argv[1]))
    os.execvp(sys.argv[2], sys.argv[2:])  # noqa: S606 - the command that was asked for
