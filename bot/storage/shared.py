"""What only several machines ask of their database: whose part it is, and who is due soon.

For PostgreSQL alone. A part that one process at a time may play (sending, fetching) is held by
a lease on the database's own clock, so that it does not matter how the hosts' clocks stand.
"""

from collections.abc import Mapping
from datetime import datetime
from typing import Any

from sqlalchemy import Connection, select, text, union_all

from bot.storage import codec, tables
from bot.storage.codec import to_ms
from bot.storage.letters import letter_of

_NOW = "floor(extract(epoch FROM clock_timestamp()) * 1000)::bigint"
_HOLDER = "split_part(fact.value, ' ', 1)"
_UNTIL = "split_part(fact.value, ' ', 2)::bigint"

# The words are this file's own, and what is told goes in as parameters.
_TAKE = text(
    "INSERT INTO fact (name, value) VALUES (:name, concat(CAST(:holder AS text), ' ', "  # noqa: S608
    f"{_NOW} + CAST(:ms AS bigint))) ON CONFLICT (name) DO UPDATE SET value = excluded.value "
    f"WHERE {_HOLDER} = :holder OR {_UNTIL} <= {_NOW}"
)
_HOLDS = text(
    f"SELECT 1 FROM fact WHERE name = :name AND {_HOLDER} = :holder "  # noqa: S608
    f"AND {_UNTIL} > {_NOW}"
)
_PLAYED = text(
    "SELECT 1 FROM fact WHERE name IN ('part:sending', 'part:fetching') "  # noqa: S608
    f"AND {_UNTIL} > {_NOW} LIMIT 1"
)
_LEAVE = text(f"DELETE FROM fact WHERE name = :name AND {_HOLDER} = :holder")  # noqa: S608


def take(connection: Connection, part: str, holder: str, seconds: float) -> bool:
    """Hold a part for so long from now on; False while another one holds it.

    `holder` is a word without spaces. Whoever holds it already holds it longer.
    """
    values = {"name": _name(part), "holder": holder, "ms": int(seconds * 1000)}
    return connection.execute(_TAKE, values).rowcount == 1


def holds(connection: Connection, part: str, holder: str) -> bool:
    """Whether the part is still this one's, at this very moment."""
    values = {"name": _name(part), "holder": holder}
    return connection.execute(_HOLDS, values).one_or_none() is not None


def anybody_plays(connection: Connection) -> bool:
    """Whether some process sends or fetches just now."""
    return connection.execute(_PLAYED).one_or_none() is not None


def leave(connection: Connection, part: str, holder: str) -> None:
    """Let the next one have it at once."""
    connection.execute(_LEAVE, {"name": _name(part), "holder": holder})


def _name(part: str) -> str:
    return f"part:{part}"


def due_until(connection: Connection, until: datetime, limit: int) -> list[tuple[str, datetime]]:
    """Who is to be woken by then, and when; the earliest first."""
    both = union_all(
        *(
            select(table.c.id, table.c.next_wake_ms)
            .where(table.c.next_wake_ms <= to_ms(until))
            .order_by(table.c.next_wake_ms)
            .limit(limit)
            for table in (tables.participant, tables.educator)
        )
    ).subquery()
    rows = connection.execute(select(both).order_by(both.c.next_wake_ms).limit(limit))
    return [(str(row.id), codec.from_ms(row.next_wake_ms)) for row in rows]


def picture_of(connection: Connection, row: int) -> Mapping[str, Any]:
    """The figures of the picture that goes with a row of the outbox. Raises LookupError."""
    box = tables.outbox
    found = connection.execute(select(box).where(box.c.id == row)).one_or_none()
    picture = None if found is None else letter_of(found, found.chat or "").picture
    if picture is None:
        raise LookupError("no picture is wanted here")
    return picture
