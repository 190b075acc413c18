"""`copy`: everything of one database into another, row by row, resumable."""

import argparse
import contextlib
import sys
from collections.abc import Iterator
from itertools import islice
from pathlib import Path
from typing import Any

from sqlalchemy import Connection, Row, Table, and_, func, insert, select, text
from sqlalchemy.exc import DBAPIError
from tqdm import tqdm

from bot.mendable import Mendable
from bot.storage.sqlite import OneServer
from bot.storage.store import Store, file_of
from bot.storage.tables import METADATA

NAME = "copy"
HELP = "copy one database into another, row by row; run it again to go on where it stopped"

#: Rows a transaction: what is lost at most when it is interrupted.
BATCH = 500


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """From where, and to where; the settings name only one database."""
    parser.add_argument(
        "--from",
        dest="source",
        metavar="URL",
        required=True,
        help="stop its bot first",
    )
    parser.add_argument(
        "--to",
        dest="target",
        metavar="URL",
        required=True,
        help="made if there is none",
    )


def run(args: argparse.Namespace) -> int:
    """Copy, compare, say how much."""
    if args.source.startswith("sqlite") and not Path(file_of(args.source)).exists():
        raise Mendable(f"there is no database {file_of(args.source)}")
    if _place(args.source) == _place(args.target):
        raise Mendable("--from and --to are the same database")
    with _unserved(args.source, upgrade=False) as source, _unserved(args.target) as target:
        try:
            rows = _copy_all(source, target)
        except DBAPIError as error:
            raise Mendable(f"the copy stopped: {error.orig}; run it again to go on") from error
    sys.stdout.write(f"copied: {rows} rows, each read back and the same\n")
    return 0


def _place(url: str) -> str:
    return str(Path(file_of(url)).resolve()) if url.startswith("sqlite") else url


@contextlib.contextmanager
def _unserved(url: str, *, upgrade: bool = True) -> Iterator[Store]:
    """A store that no bot serves meanwhile (which only SQLite's mark can tell)."""
    store = Store.open(url, upgrade=upgrade)
    mark = OneServer(store.path) if store.path else None
    try:
        if mark:
            mark.take()
        try:
            yield store
        finally:
            if mark:
                mark.release()
    finally:
        store.close()


def _copy_all(source: Store, target: Store) -> int:
    # One transaction over all tables: the copy is of one instant.
    with source.engine.begin() as origin:
        total = sum(_count(origin, table) for table in METADATA.sorted_tables)
        with tqdm(total=total, disable=None, unit=" rows", desc="copying") as bar:
            for table in METADATA.sorted_tables:
                rows = iter(origin.execute(select(table).order_by(*table.primary_key)))
                while batch := list(islice(rows, BATCH)):
                    with target.engine.begin() as copy:
                        for row in batch:
                            _copy_row(copy, table, row)
                    bar.update(len(batch))
                with target.engine.begin() as copy:
                    if _count(copy, table) != _count(origin, table):
                        raise Mendable(
                            f"--to holds rows of `{table.name}` that --from does not have"
                        )
        with target.engine.begin() as copy:
            _count_on(copy)
    return total


def _copy_row(copy: Connection, table: Table, row: Row[Any]) -> None:
    same = and_(*(column == row._mapping[column.name] for column in table.primary_key))
    wanted = select(table).where(same)
    found = copy.execute(wanted).one_or_none()
    if found is None:
        copy.execute(insert(table).values(dict(row._mapping)))
        found = copy.execute(wanted).one()
    if tuple(found) != tuple(row):
        raise Mendable(f"--to holds another row of `{table.name}` under the same id")


def _count(connection: Connection, table: Table) -> int:
    return connection.execute(select(func.count()).select_from(table)).scalar_one()


def _count_on(copy: Connection) -> None:
    """PostgreSQL's counter does not see ids that were given: it would give them again."""
    if copy.dialect.name == "postgresql":
        copy.execute(
            text(
                "SELECT setval(pg_get_serial_sequence('outbox', 'id'), "
                "(SELECT coalesce(max(id), 0) + 1 FROM outbox), false)"
            )
        )
