"""Moving house: every row of one database into another, compared row by row.

It may be killed at any instant and run again: what is there already is compared, not copied.
Until it is done the target bears a mark, and no bot opens it.
"""

import hashlib
from collections.abc import Callable, Iterable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from itertools import islice
from typing import Any

from sqlalchemy import (
    ColumnElement,
    Connection,
    Row,
    Table,
    delete,
    func,
    insert,
    select,
    text,
    true,
    tuple_,
)

from bot.mendable import Mendable
from bot.storage import tables
from bot.storage.migrations import HALF_MOVED
from bot.storage.store import Store
from bot.storage.tables import METADATA

#: Rows a transaction: what is lost at most when it is interrupted.
BATCH = 500
#: Facts that belong to running processes or to the copying itself.
OF_NO_USE_ELSEWHERE = ("part:%", HALF_MOVED)

SNAPSHOT: dict[str, Any] = {"isolation_level": "REPEATABLE READ"}

#: Told how many rows further it has come; each is told twice: copied, and read back.
Moved = Callable[[int], object]
Key = tuple[Any, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Content:
    """How many rows a table has, and the sum of their SHA-256 digests, whatever their order."""

    table: str
    rows: int
    digest: str


def move(source: Store, target: Store, *, moved: Moved) -> list[Content]:
    """Copy every row that is not there yet; gives what both databases hold in the end.

    One transaction reads the source, so that the copy is of one instant. Raises Mendable,
    before a row is written, where the target holds a row that the source does not have.
    """
    with _one_instant(source) as origin:
        for table in METADATA.sorted_tables:
            _refuse_strangers(table, target, origin)
        _mark(target)
        wanted = [_move_table(table, origin, target, moved) for table in METADATA.sorted_tables]
    with target.engine.begin() as connection:
        for content in wanted:
            found = _content(METADATA.tables[content.table], connection, moved)
            if found != content:
                raise Mendable(f"`{content.table}` is not the same in both: run it again")
        _count_on(connection)
        connection.execute(delete(tables.fact).where(tables.fact.c.name == HALF_MOVED))
    return wanted


@contextmanager
def _one_instant(store: Store) -> Iterator[Connection]:
    """Read a database as it is now, however long that takes."""
    with store.engine.connect() as plain:
        still = plain if store.is_sqlite else plain.execution_options(**SNAPSHOT)
        with still.begin():
            yield still


def rows_of(store: Store) -> int:
    """How many rows there are to copy."""
    with store.engine.begin() as connection:
        return sum(
            connection.execute(
                select(func.count()).select_from(table).where(_of_use(table))
            ).scalar_one()
            for table in METADATA.sorted_tables
        )


def _refuse_strangers(table: Table, target: Store, origin: Connection) -> None:
    """Raise Mendable if the target holds what the source does not."""
    with target.engine.begin() as connection:
        for batch in _batches(table, connection):
            known = _found(table, batch, origin)
            for row in batch:
                _refuse_other(table, known.get(_key(table, row)), row)


def _refuse_other(table: Table, known: Row[Any] | None, row: Row[Any]) -> None:
    if known is None:
        raise Mendable(f"--to holds rows of `{table.name}` that --from does not have")
    if tuple(known) != tuple(row):
        raise Mendable(f"--to holds another row of `{table.name}` under the same id")


def _mark(target: Store) -> None:
    with target.turn() as work:
        work.set_fact(HALF_MOVED, "yes")


def _move_table(table: Table, origin: Connection, target: Store, moved: Moved) -> Content:
    with target.engine.begin() as connection:
        begun = connection.execute(select(table).limit(1)).first() is not None
    rows, digests = 0, 0
    for batch in _batches(table, origin):
        with target.engine.begin() as connection:
            there = _found(table, batch, connection) if begun else {}
            missing = [row for row in batch if _key(table, row) not in there]
            if missing:
                connection.execute(insert(table), [dict(row._mapping) for row in missing])
        rows, digests = rows + len(batch), digests + sum(map(_digest, batch))
        moved(len(batch))
    return _told(table, rows, digests)


def _content(table: Table, connection: Connection, moved: Moved) -> Content:
    rows, digests = 0, 0
    for batch in _batches(table, connection):
        rows, digests = rows + len(batch), digests + sum(map(_digest, batch))
        moved(len(batch))
    return _told(table, rows, digests)


def _told(table: Table, rows: int, digests: int) -> Content:
    return Content(table=table.name, rows=rows, digest=f"{digests % 2**256:064x}")


def _digest(row: Row[Any]) -> int:
    # Every value is text, a whole number, a truth value or nothing, on both databases.
    return int.from_bytes(hashlib.sha256(repr(tuple(row)).encode()).digest(), "big")


def _batches(table: Table, connection: Connection) -> Iterator[list[Row[Any]]]:
    every = select(table).where(_of_use(table)).execution_options(yield_per=BATCH)
    rows = iter(connection.execute(every))
    while batch := list(islice(rows, BATCH)):
        yield batch


def _of_use(table: Table) -> ColumnElement[bool]:
    if table is not tables.fact:
        return true()
    part, mark = OF_NO_USE_ELSEWHERE
    return table.c.name.not_like(part) & (table.c.name != mark)


def _found(table: Table, rows: Iterable[Row[Any]], connection: Connection) -> dict[Key, Row[Any]]:
    keys = [_key(table, row) for row in rows]
    same = tuple_(*table.primary_key).in_(keys)
    return {_key(table, row): row for row in connection.execute(select(table).where(same))}


def _key(table: Table, row: Row[Any]) -> Key:
    return tuple(row._mapping[column.name] for column in table.primary_key)


def _count_on(copy: Connection) -> None:
    """PostgreSQL's counter does not see ids that were given: it would give them again."""
    if copy.dialect.name == "postgresql":
        copy.execute(
            text(
                "SELECT setval(pg_get_serial_sequence('outbox', 'id'), "
                "(SELECT coalesce(max(id), 0) + 1 FROM outbox), false)"
            )
        )
