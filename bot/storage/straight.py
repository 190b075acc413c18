"""The statements of every turn, straight to SQLite's driver.

SQLAlchemy writes their text, once for each shape, and opens and closes the transaction that they
run in. What it does around each statement (a context, a result, its events) takes several times
as long as SQLite takes to run it: half of what keeping a turn cost.
"""

import sqlite3
from collections import namedtuple
from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass
from typing import Any, NoReturn, cast

from sqlalchemy import Connection, Insert, Select, Update
from sqlalchemy.dialects.sqlite import dialect
from sqlalchemy.exc import DBAPIError

#: What is asked has its parameters by name, as it is told; what is changed by place: the driver
#: takes longer to look twenty names up for a row than SQLite to write it.
_DIALECT, _BY_PLACE = dialect(paramstyle="named"), dialect(paramstyle="qmark")


@dataclass(frozen=True, slots=True)
class _Asking:
    """A question's text, the values that it holds itself (an offset of none), and what makes a
    row's columns known by name."""

    text: str
    held: Mapping[str, Any]
    row: Callable[[Iterable[Any]], Any]


@dataclass(frozen=True, slots=True)
class _Changing:
    """A change's text, its parameters in their order, and the columns that it fills by itself."""

    text: str
    names: Sequence[str]
    defaults: Mapping[str, Any]


class Straight:
    """What was written so far. A statement is known by being the same object."""

    def __init__(self) -> None:
        self._asked: dict[tuple[Select[Any], tuple[int, ...]], _Asking] = {}
        self._changes: dict[tuple[Insert | Update, tuple[str, ...]], _Changing] = {}

    def find(
        self, connection: Connection, statement: Select[Any], told: Mapping[str, Any]
    ) -> list[Any]:
        """Its rows, their columns by name. A list that is told stands for so many parameters."""
        lists = {name: value for name, value in told.items() if isinstance(value, list)}
        shape = (statement, tuple(map(len, lists.values())))
        asking = self._asked.get(shape)
        if asking is None:
            asking = self._asked[shape] = _asking(statement, told)
        if asking.held:
            told = {**asking.held, **told}
        for name, values in lists.items():
            told = {**told, **{f"{name}_{place}": one for place, one in enumerate(values, 1)}}
        try:
            rows = _driver(connection).execute(asking.text, told).fetchall()
        except sqlite3.Error as error:
            _raise(asking.text, error)
        return [*map(asking.row, rows)]

    def change(
        self, connection: Connection, statement: Insert | Update, rows: Sequence[dict[str, Any]]
    ) -> int:
        """Run it for each of these rows, all of the same columns; gives how many it changed."""
        shape = (statement, tuple(rows[0]))
        changing = self._changes.get(shape)
        if changing is None:
            changing = self._changes[shape] = _changing(*shape)
        if changing.defaults:
            rows = [{**changing.defaults, **row} for row in rows]
        values = [[row[name] for name in changing.names] for row in rows]
        try:
            return _driver(connection).executemany(changing.text, values).rowcount
        except sqlite3.Error as error:
            _raise(changing.text, error)


def _asking(statement: Select[Any], told: Mapping[str, Any]) -> _Asking:
    in_full = {"render_postcompile": True}  # every place of a list, which it wants to see for it
    written = statement.params(told).compile(dialect=_DIALECT, compile_kwargs=in_full)
    row = namedtuple("Row", statement.selected_columns.keys())  # type: ignore[misc]
    untold = statement.compile(dialect=_DIALECT).params
    held = {name: value for name, value in untold.items() if value is not None}
    return _Asking(written.string, held, row._make)


def _changing(statement: Insert | Update, columns: tuple[str, ...]) -> _Changing:
    written = statement.compile(dialect=_BY_PLACE, column_keys=columns)
    defaults = {column.key: cast("Any", column.default).arg for column in written.insert_prefetch}
    return _Changing(written.string, written.positiontup or (), defaults)


def _driver(connection: Connection) -> sqlite3.Connection:
    return cast("sqlite3.Connection", connection.connection.driver_connection)


def _raise(text: str, error: sqlite3.Error) -> NoReturn:
    """The error that SQLAlchemy makes of it: an outage is told by its class."""
    raise DBAPIError.instance(
        text, None, error, sqlite3.Error, hide_parameters=True, dialect=_DIALECT
    ) from error
