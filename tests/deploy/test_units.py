"""The units of systemd, with systemd's own tools where the machine has them, and with the bot
itself run under the limits that a unit sets. Without those tools a parser of our own holds the
directives that must be there."""

import re
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

from tests.deploy.confined import allowed_calls, directives

CHECKOUT = Path(__file__).resolve().parents[2]
DEPLOY = CHECKOUT / "deploy"
UNITS = sorted(path for kind in ("service", "timer") for path in DEPLOY.rglob(f"*.{kind}"))
SERVICES = [path for path in UNITS if path.suffix == ".service"]
OURS = [DEPLOY / "afterplate.service", DEPLOY / "afterplate-backup.service"]

needs_systemd = pytest.mark.skipif(
    shutil.which("systemd-analyze") is None,
    reason="no systemd-analyze here: only the directives are read, by the tests below",
)

#: What no service of ours may do without (systemd.exec(5), systemd.service(5)).
HARDENED = {
    "NoNewPrivileges": "yes",
    "PrivateTmp": "yes",
    "PrivateDevices": "yes",
    "ProtectSystem": "strict",
    "ProtectHome": "yes",
    "ProtectKernelTunables": "yes",
    "ProtectKernelModules": "yes",
    "ProtectControlGroups": "yes",
    "CapabilityBoundingSet": "",
    "RestrictNamespaces": "yes",
    "RestrictSUIDSGID": "yes",
    "SystemCallArchitectures": "native",
    "UMask": "0077",
}
#: Seconds that the bot takes at most to end (docs/delivery.md; tests/faults/test_process.py).
ENDS_WITHIN = 10


def named(paths: list[Path]) -> list[object]:
    return [pytest.param(path, id=str(path.relative_to(DEPLOY))) for path in paths]


@pytest.mark.parametrize("unit", named(SERVICES))
def test_service_is_hardened(unit: Path) -> None:
    told = dict(directives(unit))
    assert {name: told.get(name) for name in HARDENED} == HARDENED
    assert any(name == "SystemCallFilter" for name, _ in directives(unit))
    assert "StateDirectory" in told or "ReadWritePaths" in told or told.get("Type") == "oneshot"
    assert told.get("User") not in (None, "root") or told.get("DynamicUser") == "yes"


@pytest.mark.parametrize("unit", named(UNITS))
def test_unit_says_each_thing_once_in_known_sections(unit: Path) -> None:
    text = unit.read_text(encoding="utf-8")
    sections = re.findall(r"^\[(\w+)\]$", text, re.MULTILINE)
    assert set(sections) <= {"Unit", "Service", "Timer", "Install"}
    assert len(set(sections)) == len(sections)
    several = {"SystemCallFilter", "Environment", "ExecStartPre", "After", "ReadWritePaths"}
    names = [name for name, _ in directives(unit) if name not in several]
    assert sorted(set(names)) == sorted(names)


def test_the_bot_is_watched_restarted_and_given_time_to_end() -> None:
    told = dict(directives(DEPLOY / "afterplate.service"))
    assert told["Type"] == "notify"
    assert told["Restart"] == "on-failure"
    assert told["WatchdogSec"] == "3min"
    assert int(told["TimeoutStopSec"]) >= ENDS_WITHIN + 5
    assert told["LimitCORE"] == "0"


def test_the_watchdog_is_slower_than_any_round_of_a_loop_that_lives() -> None:
    from bot.delivery import LONGEST_ROUND  # noqa: PLC0415
    from bot.wiring import LONGEST_ALARM, LONGEST_FETCH  # noqa: PLC0415

    assert max(LONGEST_ROUND, LONGEST_ALARM, LONGEST_FETCH) < 3 * 60


def test_the_timer_asks_for_the_backup_of_its_name_and_makes_up_for_missed_ones() -> None:
    told = dict(directives(DEPLOY / "afterplate-backup.timer"))
    assert told["Persistent"] == "true"
    assert (DEPLOY / "afterplate-backup.service").exists()


@pytest.mark.parametrize("unit", named(SERVICES))
def test_what_a_unit_runs_is_there(unit: Path) -> None:
    command = dict(directives(unit))["ExecStart"]
    for place in re.findall(r"/opt/afterplate/(\S+)", command):
        assert place == ".venv/bin/afterplate" or (CHECKOUT / place).is_file(), place


@needs_systemd
@pytest.mark.parametrize("unit", named(UNITS))
def test_systemd_verifies_the_unit(unit: Path, tmp_path: Path) -> None:
    # The program is not installed on this machine: any other stands in its place. All units lie
    # side by side, as they will.
    for path in UNITS:
        text = path.read_text(encoding="utf-8")
        text = re.sub(r"^(ExecStart\w*=)\S+", r"\1/bin/true", text, flags=re.MULTILINE)
        (tmp_path / path.name).write_text(text, encoding="utf-8")
    found = subprocess.run(
        ["systemd-analyze", "verify", "--man=no", "--recursive-errors=no", tmp_path / unit.name],
        capture_output=True,
        text=True,
        check=False,
    )
    said = [line for line in found.stderr.splitlines() if unit.name in line or "warn" in line]
    assert (found.returncode, said) == (0, [])


@needs_systemd
@pytest.mark.parametrize("unit", named(SERVICES))
def test_systemd_finds_little_exposed(unit: Path) -> None:
    """From 0 (nothing) to 10; systemd itself calls up to 2 OK."""
    told = subprocess.run(
        ["systemd-analyze", "security", "--offline=true", "--no-pager", "--threshold=20", unit],
        capture_output=True,
        text=True,
        check=False,
    )
    assert told.returncode == 0, told.stdout.splitlines()[-1]


def confined(unit: Path, *command: str | Path, cwd: Path) -> subprocess.CompletedProcess[str]:
    return subprocess.run(
        [sys.executable, CHECKOUT / "tests/deploy/confined.py", unit, *command],
        cwd=cwd,
        env={"PATH": "/usr/bin:/bin", "PYTHONPATH": str(CHECKOUT), "HOME": str(cwd)},
        capture_output=True,
        text=True,
        check=False,
    )


@pytest.fixture
def seccomp(tmp_path: Path) -> None:
    """Skips where this machine cannot apply a filter of system calls."""
    if shutil.which("systemd-analyze") is None:
        pytest.skip("no systemd-analyze to resolve the sets of system calls")
    tried = confined(OURS[0], sys.executable, "-c", "print('runs')", cwd=tmp_path)
    last = tried.stderr.strip().rpartition("\n")[2]
    if last.startswith("OSError"):  # no libseccomp, or a kernel or container that filters nothing
        pytest.skip(f"no filter of system calls can be applied here: {last}")
    assert tried.stdout == "runs\n", tried.stderr


STORY = """\
{"at": "2026-03-02T08:00:00+00:00", "enrol": {"id": "ana", "unit": "mg/dL", "zone": "UTC"}}
{"at": "2026-03-02T12:31:00+00:00", "from": "ana", "text": "142 before, rice and beans"}
{"at": "2026-03-02T14:31:00+00:00", "from": "ana", "text": "171"}
{"at": "2026-03-08T18:00:00+00:00", "pass": true}
"""


@pytest.mark.slow
@pytest.mark.usefixtures("seccomp")
def test_the_whole_bot_works_under_the_units_limits(tmp_path: Path) -> None:
    """Fetching, keeping, waking, drawing in a process of its own, sending: a played week."""
    (tmp_path / "story.jsonl").write_text(STORY, encoding="utf-8")
    played = confined(
        OURS[0],
        *(sys.executable, "-m", "bot", "try", "--headless", "story.jsonl", "--out", "out"),
        cwd=tmp_path,
    )
    assert played.returncode == 0, played.stderr
    assert "171 mg/dL two hours after" in played.stdout
    (picture,) = (tmp_path / "out").glob("*.png")
    assert picture.stat().st_mode & 0o077 == 0


@pytest.mark.slow
@pytest.mark.usefixtures("seccomp")
def test_a_backup_works_under_the_limits_of_its_unit(tmp_path: Path) -> None:
    for arguments in (("migrate",), ("backup", "copy.db")):
        ran = confined(OURS[1], sys.executable, "-m", "bot", *arguments, cwd=tmp_path)
        assert ran.returncode == 0, ran.stderr


@pytest.mark.usefixtures("seccomp")
@pytest.mark.parametrize(
    "forbidden",
    [
        "import os; os.chroot('/')",
        "import os; os.setpriority(0, 0, 5)",
        "import socket; socket.socket(socket.AF_PACKET, socket.SOCK_RAW)",
    ],
)
def test_the_limits_bite(forbidden: str, tmp_path: Path) -> None:
    tried = confined(OURS[0], sys.executable, "-c", forbidden, cwd=tmp_path)
    assert tried.returncode == 1
    assert "PermissionError" in tried.stderr


@needs_systemd
def test_the_filter_takes_away_what_only_the_system_needs() -> None:
    allowed = allowed_calls(OURS[0])
    assert {"read", "write", "openat", "connect", "clone"} <= allowed
    assert not allowed & {"mount", "ptrace", "reboot", "init_module", "setuid", "bpf", "kexec_load"}


def test_the_account_and_the_journal_are_those_that_the_units_name() -> None:
    account = (DEPLOY / "afterplate.sysusers.conf").read_text(encoding="utf-8")
    assert re.search(r'^u +afterplate +- +"[^"]+" +/var/lib/afterplate$', account, re.MULTILINE)
    for unit in OURS:
        told = dict(directives(unit))
        assert told["User"] == "afterplate"
        assert (DEPLOY / f"journald@{told['LogNamespace']}.conf").exists()
    bounds = dict(directives(DEPLOY / "journald@afterplate.conf"))
    assert {"SystemMaxUse", "MaxRetentionSec"} <= set(bounds)
