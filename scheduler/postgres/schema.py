"""The job engine's own tables: made once by whoever owns the database."""

import psycopg
from procrastinate.schema import SchemaManager

from scheduler.postgres.wire import connection_string

#: Made only for as long as somebody waits for it, so it need not survive the server.
RESULTS = """
CREATE UNLOGGED TABLE IF NOT EXISTS engine_result (
    job bigint PRIMARY KEY,
    made_at timestamptz NOT NULL DEFAULT now(),
    body bytea
)
"""
#: Any number of ours; two owners who prepare at once wait for each other.
PREPARING = 4_200_001


def prepare(url: str) -> None:
    """Make what the engine keeps in a database, where it is missing. Raises psycopg.Error."""
    with psycopg.connect(connection_string(url)) as connection:
        connection.execute("SELECT pg_advisory_xact_lock(%s)", [PREPARING])
        if not _has(connection, "procrastinate_jobs"):
            connection.execute(SchemaManager.get_schema())
        connection.execute(RESULTS)


def is_prepared(url: str) -> bool:
    """Whether the engine finds its tables. Raises psycopg.Error."""
    with psycopg.connect(connection_string(url)) as connection:
        return _has(connection, "procrastinate_jobs") and _has(connection, "engine_result")


def _has(connection: psycopg.Connection, table: str) -> bool:
    found = connection.execute("SELECT to_regclass(%s)", [table]).fetchone()
    return found is not None and found[0] is not None
