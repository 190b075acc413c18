"""The backup scripts, run as the timer and the container run them."""

import contextlib
import os
import signal
import subprocess
import time
from pathlib import Path

import pytest
from sqlalchemy.engine import make_url

from bot.participants import Participant
from bot.storage.store import Store
from bot.units import Unit
from scheduler.clock import real_now
from tests.postgres import Server

CHECKOUT = Path(__file__).resolve().parents[2]


@pytest.fixture
def place(tmp_path: Path) -> Path:
    """A tree as it is installed, with a database in the working folder."""
    (tmp_path / "opt/deploy").mkdir(parents=True)
    for name in ("backup.sh", "backup-postgres.sh"):
        (tmp_path / "opt/deploy" / name).write_bytes((CHECKOUT / "deploy" / name).read_bytes())
    (tmp_path / "opt/.venv/bin").mkdir(parents=True)
    program = tmp_path / "opt/.venv/bin/afterplate"
    program.write_text(f'#!/bin/sh\nexec {CHECKOUT}/.venv/bin/python -m bot "$@"\n')
    program.chmod(0o755)
    (tmp_path / "backups").mkdir()
    return tmp_path


def run(place: Path, script: str, *arguments: str) -> subprocess.CompletedProcess[str]:
    return subprocess.run(
        ["sh", place / "opt/deploy" / script, *arguments],
        cwd=place,
        env={"PATH": f"{place / 'bin'}:/usr/bin:/bin", "PYTHONPATH": str(CHECKOUT)},
        capture_output=True,
        text=True,
        check=False,
    )


def old_ones(place: Path, kind: str, count: int) -> list[str]:
    names = [f"afterplate-202601{day:02d}T031500Z.{kind}" for day in range(1, count + 1)]
    for name in names:
        (place / "backups" / name).write_text("old")
    return names


def kept(place: Path) -> list[str]:
    return sorted(path.name for path in (place / "backups").iterdir())


def test_the_newest_are_kept_and_the_new_one_is_whole(place: Path) -> None:
    Store.open(f"sqlite:///{place / 'afterplate.db'}").close()
    old = old_ones(place, "db", 5)
    (place / "backups/notes.txt").write_text("somebody's own")
    ran = run(place, "backup.sh", "backups", "3")
    assert ran.returncode == 0, ran.stderr
    names = kept(place)
    assert names[:2] == old[-2:]
    assert len(names) == 4
    assert names[-1] == "notes.txt"
    fresh = place / "backups" / names[2]
    assert fresh.stat().st_mode & 0o077 == 0
    Store.open(f"sqlite:///{fresh}", upgrade=False).close()


def test_nothing_old_goes_when_no_new_one_came(place: Path) -> None:
    old = old_ones(place, "db", 5)
    ran = run(place, "backup.sh", "backups", "3")  # there is no database
    assert ran.returncode == 1
    assert "there is no database" in ran.stderr
    assert kept(place) == old


@pytest.mark.parametrize(
    ("arguments", "status", "words"),
    [
        ((), 2, "say which folder"),
        (("backups", "many"), 2, "how many to keep"),
        (("backups", "0"), 2, "how many to keep"),
        (("nowhere",), 1, "there is no folder"),
    ],
)
def test_wrong_usage_is_told(
    arguments: tuple[str, ...], status: int, words: str, place: Path
) -> None:
    ran = run(place, "backup.sh", *arguments)
    assert (ran.returncode, words in ran.stderr) == (status, True)


# ── PostgreSQL: once with its own tools, then with stand-ins that fail as they might ──────────


def test_a_dump_of_a_real_database_comes_back_whole(
    place: Path, postgres_server: Server, postgres_url: str, empty_postgres_url: str
) -> None:
    store = Store.open(postgres_url)
    with store.turn() as work:
        person = Participant(id="ana", unit=Unit.MG_DL, zone="UTC", joined_at=real_now())
        work.enrol(person, real_now())
    store.close()
    there, empty = make_url(postgres_url), make_url(empty_postgres_url)
    settings = {
        "PATH": f"{postgres_server.programs}:/usr/bin:/bin",
        "PGHOST": str(there.query["host"]),
        "PGUSER": str(there.username),
        "PGDATABASE": str(there.database),
    }
    made = subprocess.run(
        ["sh", place / "opt/deploy/backup-postgres.sh", place / "backups", "2", "0"],
        env=settings,
        capture_output=True,
        text=True,
        check=False,
    )
    assert made.returncode == 0, made.stderr
    (name,) = kept(place)
    # As docs/operators.md tells: into an empty database.
    back = subprocess.run(
        [
            *(postgres_server.programs / "pg_restore", "--no-owner", "--exit-on-error"),
            *("--dbname", str(empty.database), place / "backups" / name),
        ],
        env=settings,
        capture_output=True,
        text=True,
        check=False,
    )
    assert back.returncode == 0, back.stderr
    store = Store.open(empty_postgres_url, upgrade=False)
    with store.turn() as work:
        assert [enrolled.participant.id for enrolled in work.people()] == ["ana"]
    store.close()


DUMPS = 'for a in "$@"; do case "$a" in --file=*) echo dump > "${a#--file=}";; esac; done'


def tools(place: Path, dump: str = DUMPS, lists: str = "exit 0") -> None:
    (place / "bin").mkdir()
    for name, body in (("pg_dump", dump), ("pg_restore", lists)):
        (place / "bin" / name).write_text(f"#!/bin/sh\n{body}\n")
        (place / "bin" / name).chmod(0o755)


def test_a_dump_is_made_and_the_newest_are_kept(place: Path) -> None:
    tools(place)
    old = old_ones(place, "dump", 5)
    ran = run(place, "backup-postgres.sh", "backups", "2", "0")
    assert ran.returncode == 0, ran.stderr
    names = kept(place)
    assert len(names) == 2
    assert names[0] == old[-1]
    assert (place / "backups" / names[1]).stat().st_mode & 0o077 == 0


@pytest.mark.parametrize(
    ("dump", "lists"), [("exit 1", "exit 0"), (DUMPS, "exit 1")], ids=["no dump", "half a dump"]
)
def test_a_dump_that_failed_leaves_nothing_and_takes_nothing(
    dump: str, lists: str, place: Path
) -> None:
    tools(place, dump, lists)
    old = old_ones(place, "dump", 3)
    ran = run(place, "backup-postgres.sh", "backups", "2", "0")
    assert ran.returncode == 1
    assert "no backup was made" in ran.stderr
    assert kept(place) == old


def test_the_container_ends_at_once_when_told_to(place: Path) -> None:
    tools(place)
    process = subprocess.Popen(
        ["sh", place / "opt/deploy/backup-postgres.sh", place / "backups", "2", "3600"],
        env={"PATH": f"{place / 'bin'}:/usr/bin:/bin"},
        start_new_session=True,
    )
    try:
        end = time.monotonic() + 20  # noqa: TID251 - a test's patience
        while not any(name.endswith(".dump") for name in kept(place)):
            assert time.monotonic() < end  # noqa: TID251
            time.sleep(0.02)
        process.terminate()
        assert process.wait(5) == 0
    finally:
        with contextlib.suppress(ProcessLookupError):  # its `sleep` may have gone with it
            os.killpg(process.pid, signal.SIGKILL)
