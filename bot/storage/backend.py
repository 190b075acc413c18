"""What differs between the two databases, and nothing else knows."""

from collections.abc import Mapping, Sequence
from contextlib import AbstractContextManager
from datetime import datetime
from typing import Any, Protocol

from sqlalchemy import Connection, Engine, Insert, Select, Table, Update
from sqlalchemy.exc import DBAPIError
from sqlalchemy.sql.elements import ColumnElement


class Backend(Protocol):
    """One kind of database, opened."""

    @property
    def engine(self) -> Engine:
        """Its connections."""

    @property
    def path(self) -> str | None:
        """Its file; None where there is none of its own."""

    @property
    def upgrades_itself(self) -> bool:
        """Whether opening it makes or upgrades its tables: whoever opens it owns it."""

    def transaction(self) -> AbstractContextManager[Connection]:
        """Committed at the end of the block, or nothing of it. One at a time where it must be."""

    def close(self) -> None:
        """Close all connections."""

    def change(
        self, connection: Connection, statement: Insert | Update, rows: Sequence[dict[str, Any]]
    ) -> int:
        """Run a statement of every turn for each of these rows, all of the same columns; gives
        how many it changed."""

    def find(
        self, connection: Connection, statement: Select[Any], told: Mapping[str, Any]
    ) -> Sequence[Any]:
        """The rows of a statement of every turn, their columns by name. Its `IN` takes a list."""

    def insert_new(self, table: Table) -> Insert:
        """An insert that leaves existing rows alone, theirs that are being made too."""

    def lock_chat(self, connection: Connection, chat: str) -> None:
        """Let no other transaction take a message of this chat until this one ends."""

    def lock_upgrade(self, connection: Connection) -> None:
        """Let no other transaction make or upgrade tables until this one ends."""

    def real_ms(self, real_now: datetime) -> int | ColumnElement[int]:
        """The real time by which leases run, in a statement: UTC milliseconds.

        `real_now` is what the caller's own machine believes.
        """

    def database_time(self) -> datetime | None:
        """The database's own clock; None where it is the machine's."""

    def told(self, connection: Connection) -> list[str]:
        """What an operator may want to know of it. Raises Mendable for what must be mended."""

    def fault(self, error: DBAPIError) -> str:
        """One clear line about why the database cannot be used, without a secret."""

    def wipe_log(self) -> None:
        """See that erased bytes are gone from the database's log too, where that can be done."""
