"""What the database tells a monitor: counts and waits, nobody's name or words."""

from datetime import datetime

from sqlalchemy import Connection, func, select

from bot.messages import Kind
from bot.metrics.meter import Figures
from bot.storage import migrations, tables
from bot.storage.codec import to_ms
from bot.storage.statements import literal
from bot.storage.work import Work

#: Each of the two finds its rows by an index of their own (see the outbox's table).
_BOX = tables.outbox
_UNSETTLED = (_BOX.c.state == literal("pending"), _BOX.c.lease_real.is_not(None))


def figures(work: Work, now: datetime) -> Figures:
    """The figures of now (the bot's time). Costs what is due costs, however long the record is."""
    waiting: dict[Kind, int] = {}
    oldest: dict[Kind, float] = {}
    at = to_ms(now)
    for unsettled in _UNSETTLED:
        rows = work.connection.execute(
            select(_BOX.c.kind, func.count(), func.min(_BOX.c.due_ms))
            .where(unsettled, _BOX.c.due_ms <= at)
            .group_by(_BOX.c.kind)
        )
        for name, count, due in rows:
            kind = Kind(name)
            waiting[kind] = waiting.get(kind, 0) + count
            oldest[kind] = max(oldest.get(kind, 0), (at - due) / 1000)
    earliest = work.earliest()
    return Figures(
        at=now,
        waiting=waiting,
        oldest=oldest,
        participants=_count(work.connection),
        database=work.connection.dialect.name,
        schema=migrations.HEAD,
        next_due=earliest[0] if earliest else None,
    )


def _count(connection: Connection) -> int:
    return connection.execute(select(func.count()).select_from(tables.participant)).scalar_one()


def parked_count(work: Work) -> int:
    """How many updates were given up. Reads every update of a month: to be asked once."""
    seen = tables.seen
    statement = select(func.count()).select_from(seen).where(seen.c.error.is_not(None))
    return work.connection.execute(statement).scalar_one()
