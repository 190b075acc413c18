"""What only SQLite needs: how its file is opened, guarded and checked."""

import contextlib
import fcntl
import os
import sqlite3
import threading
from collections.abc import Iterator
from datetime import datetime
from functools import cache
from pathlib import Path
from typing import IO

from sqlalchemy import Connection, Engine, Insert, Table, create_engine, event
from sqlalchemy.dialects.sqlite import insert
from sqlalchemy.exc import DBAPIError
from sqlalchemy.pool import PoolProxiedConnection, StaticPool

from bot.mendable import Mendable
from bot.storage.codec import to_ms
from bot.storage.straight import Straight

#: How long a writer waits for another one (a command beside `serve`).
BUSY_SECONDS = 5

#: The race of checkpoint and commit in WAL mode is mended from here on (SQLite's release
#: history, 3.51.3; back-ported to the two others). With one writing connection, which also
#: does the checkpoints, it cannot come about.
WAL_RACE_MENDED = (3, 51, 3)
WAL_RACE_BACKPORTS = ((3, 44, 6), (3, 50, 7))


def library_warning() -> str | None:
    """Say what the version of the SQLite library asks for; None if nothing."""
    version = sqlite3.sqlite_version_info
    mended = version >= WAL_RACE_MENDED or any(
        version[:2] == fixed[:2] and version >= fixed for fixed in WAL_RACE_BACKPORTS
    )
    if mended:
        return None
    return (
        f"SQLite {sqlite3.sqlite_version} has the WAL race mended in 3.51.3: "
        "never open the database for writing with another program while the bot serves"
    )


@cache
def _insert_new(table: Table) -> Insert:
    return insert(table).on_conflict_do_nothing()


class Sqlite:
    """An SQLite file (`path` None: in memory) with one connection, which one thread uses at a
    time; the file is its only user's, who makes and upgrades its tables.
    """

    upgrades_itself = True

    def __init__(self, path: str | None) -> None:
        """Raises Mendable if it cannot be opened."""
        self.path = path
        self.engine: Engine = open_engine(path)
        self._one_at_a_time = threading.RLock()
        self._connection: Connection | None = None
        straight = Straight()
        self.change, self.find = straight.change, straight.find

    @contextlib.contextmanager
    def transaction(self) -> Iterator[Connection]:
        """One thread at a time, on the one connection: to take it anew each time costs more than
        to begin."""
        with self._one_at_a_time:
            if self._connection is None:
                self._connection = self.engine.connect()
            with self._connection.begin():
                yield self._connection

    def close(self) -> None:
        """The one connection."""
        if self._connection is not None:
            self._connection.close()
            self._connection = None
        self.engine.dispose()

    def insert_new(self, table: Table) -> Insert:
        """Nobody else is writing."""
        return _insert_new(table)

    def lock_chat(self, connection: Connection, chat: str) -> None:
        """A transaction has the whole file."""

    def lock_upgrade(self, connection: Connection) -> None:
        """A transaction has the whole file."""

    def real_ms(self, real_now: datetime) -> int:
        """There is one machine, and this is its clock."""
        return to_ms(real_now)

    def database_time(self) -> datetime | None:
        """The file has none."""
        return None

    def told(self, connection: Connection) -> list[str]:
        """What the library's version asks for."""
        warning = library_warning()
        return [] if warning is None else [warning]

    def fault(self, error: DBAPIError) -> str:
        """Which file, and what SQLite says of it."""
        return f"the database {self.path} cannot be used: {error.orig}"

    def wipe_log(self) -> None:
        """Empty the write-ahead log."""
        with self._one_at_a_time:
            wipe_log(self.engine)


def open_engine(path: str | None) -> Engine:
    """Open a database file (None: in memory) with one connection, made safe by pragmas.

    The file is made readable and writable by its owner only. Raises Mendable if it cannot be
    opened or is damaged.
    """
    if path is not None:
        _refuse_lost(Path(path))
        _make_private(Path(path))
    engine = create_engine(
        "sqlite://" if path is None else f"sqlite:///{path}",
        poolclass=StaticPool,
        connect_args={"check_same_thread": False, "timeout": BUSY_SECONDS},
        hide_parameters=True,
    )
    event.listen(engine, "connect", _on_connect)
    # Not by a "begin" event: an engine with one looks for listeners at every statement.
    engine.dialect.do_begin = _begin  # type: ignore[method-assign]
    return engine


def _refuse_lost(path: Path) -> None:
    """A log without its database: SQLite would begin an empty one and throw the log away."""
    log = Path(f"{path}-wal")
    if _size(log) and not _size(path):
        raise Mendable(f"{path} is missing or empty, but {log} is not: bring the file back first")


def _size(path: Path) -> int:
    return path.stat().st_size if path.exists() else 0


def _make_private(path: Path) -> None:
    try:
        os.close(os.open(path, os.O_RDWR | os.O_CREAT, 0o600))
        path.chmod(0o600)
    except OSError as error:
        raise Mendable(f"the database {path} cannot be opened: {error.strerror}") from error


def _on_connect(connection: sqlite3.Connection, _record: object) -> None:
    # The driver's own transactions begin late and deferred, which fails under two writers.
    connection.isolation_level = None
    cursor = connection.cursor()
    for pragma in (
        f"busy_timeout = {BUSY_SECONDS * 1000}",
        "journal_mode = WAL",
        "synchronous = FULL",
        "secure_delete = ON",
        "foreign_keys = ON",
    ):
        cursor.execute(f"PRAGMA {pragma}")
    cursor.close()


def _begin(dbapi_connection: PoolProxiedConnection) -> None:
    dbapi_connection.cursor().execute("BEGIN IMMEDIATE")


def wipe_log(engine: Engine) -> None:
    """Fold the write-ahead log into the file and empty it, so that erased bytes are gone."""
    pooled = engine.raw_connection()
    try:
        pooled.cursor().execute("PRAGMA wal_checkpoint(TRUNCATE)")
    finally:
        pooled.close()


def damage(path: str, *, quickly: bool = False) -> str | None:
    """Say what is wrong with a database file; None if nothing is (reads all of it).

    `quickly` does not see whether the indexes hold what the tables do.
    """
    pragma = "quick_check" if quickly else "integrity_check"
    try:
        with sqlite3.connect(f"file:{path}?mode=ro", uri=True) as connection:
            (verdict,) = connection.execute(f"PRAGMA {pragma}(1)").fetchone()
    except sqlite3.DatabaseError as error:
        return str(error)
    return None if verdict == "ok" else " ".join(str(verdict).split())


def refuse_damaged(path: str, *, quickly: bool = False) -> None:
    """Raises Mendable where `damage` finds any."""
    if (wrong := damage(path, quickly=quickly)) is not None:
        raise Mendable(f"{path} is damaged ({wrong}): stop the bot and `restore` a backup")


class OneServer:
    """The mark of the one process that serves a database file; gone when the process ends."""

    def __init__(self, path: str) -> None:
        self._path = Path(f"{os.path.realpath(path)}.lock")  # one file by whatever name
        self._file: IO[str] | None = None

    def take(self) -> None:
        """Take the mark; raises Mendable if another process has it."""
        descriptor = os.open(self._path, os.O_RDWR | os.O_CREAT, 0o600)
        file = os.fdopen(descriptor, "r+")
        try:
            fcntl.flock(file, fcntl.LOCK_EX | fcntl.LOCK_NB)
        except OSError as error:
            holder = file.read().strip() or "unknown"
            file.close()
            raise Mendable(
                f"another bot serves this database already (process {holder})"
            ) from error
        file.truncate(0)
        file.write(str(os.getpid()))
        file.flush()
        self._file = file

    def release(self) -> None:
        """Give the mark back."""
        if self._file is not None:
            self._file.close()
            self._file = None
