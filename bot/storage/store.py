"""The store: opening a database, and one transaction a turn.

Everything here is synchronous. On SQLite there is one connection, and `turn` lets one thread
in at a time; callers in an event loop go through `Writer`, so that the loop never waits for
the disk. On PostgreSQL each turn takes a connection of the pool and locks its participant.
"""

import asyncio
from collections.abc import Callable, Iterator
from concurrent.futures import ThreadPoolExecutor
from contextlib import contextmanager
from datetime import datetime
from typing import ParamSpec, Self, TypeVar

from sqlalchemy import URL, Connection, Engine
from sqlalchemy.engine import make_url
from sqlalchemy.exc import ArgumentError, DatabaseError, DBAPIError

from bot.mendable import Mendable
from bot.storage import migrations
from bot.storage.backend import Backend
from bot.storage.faults import gave_way, is_damage
from bot.storage.records import Cache
from bot.storage.sqlite import Sqlite
from bot.storage.tables import METADATA
from bot.storage.work import Work

P = ParamSpec("P")
R = TypeVar("R")

#: How often a turn steps aside for others before it fails.
TIMES_TO_GIVE_WAY = 3


class Store:
    """One database, SQLite or PostgreSQL."""

    def __init__(self, backend: Backend) -> None:
        self._backend = backend
        self._cache = Cache()

    @classmethod
    def in_memory(cls) -> Self:
        """A fresh SQLite database that ends with the store, for replay and tests."""
        backend = Sqlite(None)
        with backend.engine.begin() as connection:
            METADATA.create_all(connection)
        return cls(backend)

    @classmethod
    def open(cls, url: str, *, upgrade: bool | None = None, own_clock: bool = True) -> Self:
        """Open a database and see that it is of this version.

        `upgrade` brings an older one to this version first; None: on SQLite only. Without
        `own_clock` leases run by the caller's clock on PostgreSQL too (for virtual time).
        Raises Mendable if it cannot be reached, is damaged, newer, or older and not to be
        upgraded.
        """
        store = cls(backend_of(url, own_clock=own_clock))
        store.fit(upgrade=store.is_sqlite if upgrade is None else upgrade)
        return store

    @property
    def engine(self) -> Engine:
        """The database's connections."""
        return self._backend.engine

    @property
    def path(self) -> str | None:
        """The file; None where the database has none of its own."""
        return self._backend.path

    @property
    def is_sqlite(self) -> bool:
        """Whether this is SQLite's: one process serves it."""
        return self._backend.upgrades_itself

    def database_time(self) -> datetime | None:
        """The clock that all hosts share, the database's; None where there is one host."""
        return self._backend.database_time()

    def told(self) -> list[str]:
        """What an operator may want to know of the database. Raises Mendable."""
        with self.turn() as work:
            return self._backend.told(work.connection)

    def fault(self, error: DBAPIError) -> str:
        """One clear line about why the database cannot be used, without a secret."""
        return self._backend.fault(error)

    def fit(self, *, upgrade: bool, half_moved: bool = False) -> None:
        """See that the database is of this version; `upgrade` brings it there.

        `half_moved` allows one that is being copied into. Raises Mendable and closes it where
        it cannot be used.
        """
        try:
            with self.engine.begin() as connection:
                self._fit(connection, upgrade=upgrade)
                if not half_moved:
                    migrations.refuse_half_moved(connection)
        except DatabaseError as error:
            self.close()
            raise Mendable(self._backend.fault(error)) from error
        except Mendable:
            self.close()
            raise

    def _fit(self, connection: Connection, *, upgrade: bool) -> None:
        if upgrade:
            self._backend.lock_upgrade(connection)
        found = migrations.version(connection)
        migrations.refuse_newer(found)
        if found == migrations.HEAD:
            return
        if not upgrade:
            raise Mendable(
                f"this database is of version {found or 'none'}, this program needs "
                f"{migrations.HEAD}: run migrate first"
            )
        if found is None:
            migrations.create(connection)
        else:
            migrations.upgrade(connection)

    @contextmanager
    def turn(self) -> Iterator[Work]:
        """One transaction: committed at the end of the block, or nothing of it.

        Raises sqlalchemy.exc.DBAPIError where the database refuses (full disk, lock), and
        Mendable where its file is damaged: nothing that is asked of it then can be trusted.
        """
        work: Work | None = None
        try:
            with self._backend.transaction() as connection:
                work = Work(connection, self._cache, self._backend)
                yield work
        except BaseException as error:
            if work is not None:
                work.undone()
            if is_damage(error):
                raise Mendable(f"{self.path} is damaged: stop, and restore a backup") from error
            raise
        work.committed()

    def attempt(self, turn: Callable[[Work], R]) -> R:
        """One transaction, run again where the database chose it to give way to another.

        `turn` may so be called several times: it keeps nothing outside the database.
        """
        for _ in range(TIMES_TO_GIVE_WAY):
            try:
                with self.turn() as work:
                    return turn(work)
            except DBAPIError as error:
                if not gave_way(error):
                    raise
        with self.turn() as work:
            return turn(work)

    def wipe_log(self) -> None:
        """See that erased bytes are gone from SQLite's write-ahead log too."""
        self._backend.wipe_log()

    def close(self) -> None:
        """Close all connections."""
        self._backend.close()


def backend_of(url: str, *, own_clock: bool = True) -> Backend:
    """The database of a URL, not yet looked at; raises Mendable for what is none of ours."""
    parsed = _parsed(url)
    if parsed.get_backend_name() == "sqlite":
        return Sqlite(_file(parsed))
    if parsed.get_backend_name() != "postgresql":
        raise Mendable("AFTERPLATE_DATABASE must be sqlite:///... or postgresql://...")
    from bot.storage.postgres import Postgres  # noqa: PLC0415 - most bots never meet it

    return Postgres(parsed, own_clock=own_clock)


def file_of(url: str) -> str:
    """The file of an SQLite database; raises Mendable for any other."""
    parsed = _parsed(url)
    path = _file(parsed) if parsed.get_backend_name() == "sqlite" else None
    if path is None:
        raise Mendable(
            "this is for an SQLite file: for PostgreSQL use pg_dump and pg_restore "
            "(docs/postgresql.md)"
        )
    return path


def _parsed(url: str) -> URL:
    try:
        return make_url(url)
    except ArgumentError as error:
        raise Mendable("AFTERPLATE_DATABASE is not a database URL") from error


def _file(parsed: URL) -> str | None:
    return None if parsed.database in (None, "", ":memory:") else parsed.database


class Writer:
    """The one thread in which the event loop's turns run, in the order asked for."""

    def __init__(self) -> None:
        self._thread = ThreadPoolExecutor(max_workers=1, thread_name_prefix="turns")

    async def run(self, call: Callable[P, R], *args: P.args, **kwargs: P.kwargs) -> R:
        """Run a synchronous call there and give its result."""
        loop = asyncio.get_running_loop()
        return await loop.run_in_executor(self._thread, lambda: call(*args, **kwargs))

    def close(self) -> None:
        """Finish what was asked for, then end the thread."""
        self._thread.shutdown(wait=True)
