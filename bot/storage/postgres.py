"""What only PostgreSQL needs: how it is reached, how turns on several hosts keep out of each
other's way, and whose clock counts.

A turn runs at READ COMMITTED. What it changes is locked first: a chat by an advisory lock
(a chat that is nobody's has no row), a person by their row, a message in the outbox by its row.
"""

import contextlib
import importlib.util
from collections.abc import Mapping, Sequence
from datetime import UTC, datetime
from functools import cache
from typing import Any

from sqlalchemy import (
    URL,
    BigInteger,
    Connection,
    Engine,
    Insert,
    Select,
    Table,
    Update,
    bindparam,
    create_engine,
    func,
    literal_column,
    select,
    text,
)
from sqlalchemy.dialects.postgresql import insert
from sqlalchemy.exc import DBAPIError
from sqlalchemy.sql.elements import ColumnElement

from bot.mendable import Mendable
from bot.storage.codec import to_ms
from bot.storage.tables import METADATA

# An index of some rows only is one of the same rows here.
for _table in METADATA.tables.values():
    for _index in _table.indexes:
        if (_rows := _index.dialect_kwargs.get("sqlite_where")) is not None:
            _index.dialect_kwargs["postgresql_where"] = _rows

#: Turns that one process may have open at a time, and how many more for a moment.
POOL, MORE = 8, 8
#: A dead network is noticed within half a minute, on both sides (libpq's and the server's own
#: parameters of these names); a transaction left open by a frozen host ends after a minute.
CONNECT = {
    "connect_timeout": 5,
    "keepalives_idle": 10,
    "keepalives_interval": 5,
    "keepalives_count": 3,
    "tcp_user_timeout": 25_000,
    "application_name": "afterplate",
}
SESSION = {
    "lock_timeout": "5s",  # as long as a writer waits on SQLite
    "idle_in_transaction_session_timeout": "60s",
    "tcp_keepalives_idle": "10",
    "tcp_keepalives_interval": "5",
    "tcp_keepalives_count": "3",
}

#: The two number spaces of advisory locks: this program's own marks, and chats.
UPGRADE = 0x41465445
_LOCK_CHAT = select(func.pg_advisory_xact_lock(func.hashtextextended(bindparam("chat"), 0)))
_LOCK_UPGRADE = select(func.pg_advisory_xact_lock(UPGRADE))

#: Older ones are no longer mended by those who make PostgreSQL (its versioning policy).
OLDEST = 150_000
_NATURE = text(
    "SELECT current_setting('server_version') AS version, current_user AS role, "
    "CAST(current_setting('server_version_num') AS int) AS number, "
    "current_setting('synchronous_commit') AS commit, current_setting('fsync') AS fsync, "
    "has_schema_privilege(current_schema(), 'CREATE') AS makes"
)

#: The server's clock as it is, not as it was when the transaction began.
_TIME = select(func.clock_timestamp())
_CLOCK_MS: ColumnElement[int] = literal_column(
    "floor(extract(epoch FROM clock_timestamp()) * 1000)::bigint", BigInteger()
)


@cache
def _insert_new(table: Table) -> Insert:
    return insert(table).on_conflict_do_nothing().execution_options(preserve_rowcount=True)


class Postgres:
    """A PostgreSQL database, reached by several hosts."""

    path = None
    upgrades_itself = False

    def __init__(self, url: URL, *, own_clock: bool = True) -> None:
        """Raises Mendable where the driver is missing. Without `own_clock` leases run by the
        caller's clock, for stories on virtual time."""
        if importlib.util.find_spec("psycopg") is None:
            raise Mendable("for postgresql:// install the extra `postgres` (psycopg)")
        self._own_clock = own_clock
        options = " ".join(f"-c {name}={value}" for name, value in SESSION.items())
        self.engine: Engine = create_engine(
            url.set(drivername="postgresql+psycopg"),
            hide_parameters=True,
            pool_pre_ping=True,
            pool_size=POOL,
            max_overflow=MORE,
            connect_args={**CONNECT, "options": options},
        )

    def transaction(self) -> contextlib.AbstractContextManager[Connection]:
        """Turns of different people run side by side, each on a connection of the pool."""
        return self.engine.begin()

    def close(self) -> None:
        """The pool."""
        self.engine.dispose()

    def change(
        self, connection: Connection, statement: Insert | Update, rows: Sequence[dict[str, Any]]
    ) -> int:
        """One journey for all rows."""
        return connection.execute(statement, rows[0] if len(rows) == 1 else rows).rowcount

    def find(
        self, connection: Connection, statement: Select[Any], told: Mapping[str, Any]
    ) -> Sequence[Any]:
        """As everything else is asked."""
        return connection.execute(statement, told).all()

    def insert_new(self, table: Table) -> Insert:
        """ON CONFLICT waits for another's row until it stands or is gone."""
        return _insert_new(table)

    def lock_chat(self, connection: Connection, chat: str) -> None:
        """In the order of asking. Two chats of one hash wait for each other: harmless."""
        connection.execute(_LOCK_CHAT, {"chat": chat})

    def lock_upgrade(self, connection: Connection) -> None:
        """Whoever comes second waits as long as it takes, and finds it done.

        What a step then changes is waited for no longer than by a turn: turns would wait behind.
        """
        connection.exec_driver_sql("SET LOCAL lock_timeout = 0")
        connection.execute(_LOCK_UPGRADE)
        connection.exec_driver_sql(f"SET LOCAL lock_timeout = '{SESSION['lock_timeout']}'")

    def real_ms(self, real_now: datetime) -> int | ColumnElement[int]:
        """The database's clock: hosts may differ by minutes."""
        return _CLOCK_MS if self._own_clock else to_ms(real_now)

    def database_time(self) -> datetime:
        """The database's own clock."""
        with self.engine.connect() as connection:
            moment: datetime = connection.execute(_TIME).scalar_one()
        return moment.astimezone(UTC)

    def told(self, connection: Connection) -> list[str]:
        """The server's version, our role, and whether what was answered outlives a power cut."""
        found = connection.execute(_NATURE).one()
        if found.number < OLDEST:
            raise Mendable(f"PostgreSQL {found.version} is too old: 15 or newer is needed")
        if found.commit == "off":
            raise Mendable("synchronous_commit is off: what the bot has answered may be lost")
        told = [f"PostgreSQL {found.version}", f"reached as {found.role}"]
        if found.makes:
            told.append("which may change tables: let `serve` have a role that may not")
        if found.fsync == "off":
            told.append("fsync is off: for trials only, a power cut destroys the database")
        return told

    def fault(self, error: DBAPIError) -> str:
        """The driver's first line names host, port and role, never the password."""
        first = str(error.orig).strip().partition("\n")[0]
        return f"the database cannot be used: {first or type(error.orig).__name__}"

    def wipe_log(self) -> None:
        """PostgreSQL's own cleaning does it in its time; docs/postgresql.md tells more."""
