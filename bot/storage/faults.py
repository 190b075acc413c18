"""Telling the database's own trouble from a fault in what it was given.

What the database cannot take now must come again; what it will never take is given up. The
five-letter codes are those of PostgreSQL's manual (appendix A); SQLite's errors carry none.
"""

import sqlite3

from sqlalchemy.exc import DBAPIError, InterfaceError, OperationalError
from sqlalchemy.exc import TimeoutError as PoolIsEmpty

from bot.mendable import Mendable

#: It is a copy for reading only, or its tables or rights are not those that the program needs.
NOT_AS_NEEDED = frozenset(
    {
        "25006",  # read_only_sql_transaction
        "25P02",  # in_failed_sql_transaction
        "25P03",  # idle_in_transaction_session_timeout
        "42501",  # insufficient_privilege
        "42P01",  # undefined_table
        "42703",  # undefined_column
    }
)
#: Two transactions waited for each other, and this one was chosen to give way.
GAVE_WAY = frozenset({"40P01", "40001"})  # deadlock_detected, serialization_failure


def is_outage(error: Exception) -> bool:
    """Whether the database failed, whatever was asked of it: full, locked, away, not ready, or
    so damaged that a person has to see to it (Mendable)."""
    if isinstance(error, OperationalError | InterfaceError | PoolIsEmpty | Mendable):
        return True
    return _code(error) in NOT_AS_NEEDED


def is_damage(error: BaseException) -> bool:
    """Whether SQLite's file is damaged: it raises the driver's most general error for that."""
    return isinstance(error, DBAPIError) and type(error.orig) is sqlite3.DatabaseError


def gave_way(error: Exception) -> bool:
    """Whether the same transaction may well succeed when it is run again."""
    return _code(error) in GAVE_WAY


def _code(error: Exception) -> str | None:
    return getattr(error.orig, "sqlstate", None) if isinstance(error, DBAPIError) else None
