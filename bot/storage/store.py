"""The store: opening a database, and one transaction a turn.

Everything here is synchronous. On SQLite there is one connection, and `turn` lets one thread
in at a time; callers in an event loop go through `Writer`, so that the loop never waits for
the disk. On PostgreSQL each turn takes a connection of the pool and locks its participant.
"""

import asyncio
import threading
from collections.abc import Callable, Iterator
from concurrent.futures import ThreadPoolExecutor
from contextlib import contextmanager
from typing import ParamSpec, TypeVar

from sqlalchemy import Engine, create_engine
from sqlalchemy.engine import make_url
from sqlalchemy.exc import ArgumentError, DatabaseError

from bot.mendable import Mendable
from bot.storage import migrations, sqlite
from bot.storage.tables import METADATA
from bot.storage.work import Cache, Work

P = ParamSpec("P")
R = TypeVar("R")


class Store:
    """One database, SQLite or PostgreSQL."""

    def __init__(self, engine: Engine, path: str | None) -> None:
        self.engine = engine
        self.path = path
        self._cache = Cache()
        self._one_at_a_time = threading.RLock()

    @classmethod
    def in_memory(cls) -> "Store":
        """A fresh SQLite database that ends with the store, for replay and tests."""
        engine = sqlite.open_engine(None)
        with engine.begin() as connection:
            METADATA.create_all(connection)
        return cls(engine, None)

    @classmethod
    def open(cls, url: str, *, upgrade: bool | None = None) -> "Store":
        """Open a database and see that it is of this version.

        `upgrade` brings an older one to this version first; None: on SQLite only. Raises
        Mendable if it cannot be reached, is damaged, newer, or older and not to be upgraded.
        """
        store = cls._reach(url)
        wanted = store.is_sqlite if upgrade is None else upgrade
        try:
            store._fit(upgrade=wanted)
        except DatabaseError as error:
            raise Mendable(store._fault(error)) from error
        return store

    @classmethod
    def _reach(cls, url: str) -> "Store":
        try:
            parsed = make_url(url)
        except ArgumentError as error:
            raise Mendable("AFTERPLATE_DATABASE is not a database URL") from error
        if parsed.get_backend_name() == "sqlite":
            path = parsed.database if parsed.database not in (None, "", ":memory:") else None
            return cls(sqlite.open_engine(path), path)
        if parsed.get_backend_name() != "postgresql":
            raise Mendable("AFTERPLATE_DATABASE must be sqlite:///... or postgresql://...")
        engine = create_engine(
            parsed.set(drivername="postgresql+psycopg"), hide_parameters=True, pool_pre_ping=True
        )
        return cls(engine, None)

    @property
    def is_sqlite(self) -> bool:
        """Whether this is a file of SQLite's."""
        return self.engine.dialect.name == "sqlite"

    def _fit(self, *, upgrade: bool) -> None:
        with self.engine.begin() as connection:
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

    def _fault(self, error: DatabaseError) -> str:
        if not self.is_sqlite:
            return f"the database cannot be used: {type(error.orig).__name__}"
        return f"the database {self.path} cannot be used: {error.orig}"

    @contextmanager
    def turn(self) -> Iterator[Work]:
        """One transaction: committed at the end of the block, or nothing of it.

        Raises sqlalchemy.exc.DBAPIError where the database refuses (full disk, lock).
        """
        if not self.is_sqlite:
            yield from self._turn()
            return
        with self._one_at_a_time:
            yield from self._turn()

    def _turn(self) -> Iterator[Work]:
        with self.engine.begin() as connection:
            work = Work(connection, self._cache)
            yield work
        work.committed()

    def wipe_log(self) -> None:
        """See that erased bytes are gone from SQLite's write-ahead log too."""
        if self.is_sqlite:
            with self._one_at_a_time:
                sqlite.wipe_log(self.engine)

    def close(self) -> None:
        """Close all connections."""
        self.engine.dispose()


def file_of(url: str) -> str:
    """The file of an SQLite database; raises Mendable for any other."""
    try:
        parsed = make_url(url)
    except ArgumentError as error:
        raise Mendable("AFTERPLATE_DATABASE is not a database URL") from error
    if parsed.get_backend_name() != "sqlite" or parsed.database in (None, "", ":memory:"):
        raise Mendable("this is for an SQLite file; use PostgreSQL's own tools for its databases")
    return str(parsed.database)


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
