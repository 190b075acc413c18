"""The engine for several machines: procrastinate on PostgreSQL.

Who is due stands in our own table, here as on one machine. Only who is due within two minutes
is handed to the job engine, so that a hundred thousand wakes of next week cost nothing. What
lives here: handing over, waking, making pictures and files on any worker, ringing other
machines, keeping up with the database's clock. What it must not know: the bot.
"""

from scheduler.postgres.engine import PostgresEngine
from scheduler.postgres.making import Make, NotMade
from scheduler.postgres.schema import is_prepared, prepare
from scheduler.postgres.wire import MISSED, Wire

__all__ = ["MISSED", "Make", "NotMade", "PostgresEngine", "Wire", "is_prepared", "prepare"]
