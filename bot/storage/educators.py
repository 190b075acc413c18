"""Educators within one transaction: their rows, and which participants are theirs."""

from datetime import datetime

from pydantic import TypeAdapter
from sqlalchemy import Connection, delete, insert, select, update

from bot.educator.alerts import forgotten
from bot.educator.educator import Educator
from bot.participants import Participant
from bot.storage import codec, tables
from bot.storage.backend import Backend
from bot.storage.codec import to_ms
from bot.storage.statements import EDUCATOR_LATER, EDUCATORS_DUE, FIRST_EDUCATOR

_EDUCATOR = TypeAdapter(Educator)


class Educators:
    """The educators of one database. What is theirs is asked of the participants' own rows, so
    that access ends in the transaction in which a participant takes it away."""

    def __init__(self, connection: Connection, backend: Backend) -> None:
        self._connection = connection
        self._backend = backend

    def get(self, id_: str) -> Educator | None:
        """Lock an educator for this turn; None if there is none."""
        table = tables.educator
        body = self._connection.execute(
            select(table.c.body).where(table.c.id == id_).with_for_update()
        ).scalar_one_or_none()
        return None if body is None else _EDUCATOR.validate_json(body)

    def save(self, educator: Educator, real_now: datetime, wake_at: datetime | None) -> None:
        """Keep an educator as they now are, with their next wake."""
        table = tables.educator
        values = {
            "body": _EDUCATOR.dump_json(educator).decode(),
            "deputy": educator.deputy,
            "next_wake_ms": None if wake_at is None else to_ms(wake_at),
        }
        known = self._connection.execute(
            update(table).where(table.c.id == educator.id).values(values)
        )
        if not known.rowcount:
            row = {"id": educator.id, "made_real": to_ms(real_now), **values}
            self._connection.execute(insert(table).values(row))

    def own(self, id_: str) -> tuple[Participant, ...]:
        """The participants who are this educator's now, in the order of joining."""
        table = tables.participant
        bodies = self._connection.execute(
            select(table.c.body)
            .where(table.c.educator == id_)
            .order_by(table.c.made_real, table.c.id)
        ).scalars()
        return tuple(codec.participant_of(body) for body in bodies)

    def deputized(self, id_: str) -> tuple[str, ...]:
        """The ids of the educators who named this one as deputy."""
        table = tables.educator
        return tuple(
            self._connection.execute(
                select(table.c.id).where(table.c.deputy == id_).order_by(table.c.id)
            ).scalars()
        )

    def next_wake(self, id_: str) -> datetime | None:
        """When an educator is to be looked at next."""
        table = tables.educator
        ms = self._connection.execute(
            select(table.c.next_wake_ms).where(table.c.id == id_)
        ).scalar_one_or_none()
        return None if ms is None else codec.from_ms(ms)

    def put_off(self, id_: str, until: datetime) -> None:
        """A wake-up failed: not again before then; nothing for somebody who is no educator."""
        table = tables.educator
        self._connection.execute(
            update(table).where(table.c.id == id_).values(next_wake_ms=to_ms(until))
        )

    def due(self, now: datetime, limit: int) -> tuple[tuple[str, ...], datetime | None]:
        """Who is due by now, the longest waiting first, and the earliest wake after now."""
        find, at = self._backend.find, to_ms(now)
        rows = find(self._connection, EDUCATORS_DUE, {"now": at, "most": limit})
        (later,) = find(self._connection, EDUCATOR_LATER, {"now": at})
        return tuple(row.id for row in rows), None if later.at is None else codec.from_ms(later.at)

    def earliest(self) -> tuple[datetime, str] | None:
        """Whose wake comes first, and when."""
        row = self._connection.execute(FIRST_EDUCATOR).one_or_none()
        return None if row is None else (codec.from_ms(row.next_wake_ms), row.id)

    def forget(self, id_: str, participant: str) -> Educator | None:
        """Keep nothing of somebody who has left an educator; gives the educator as they then are.

        What was written to the educator or their deputy may be about that person: what surely
        is goes altogether, and of everything else that was sent only the keys stay.
        """
        educator = self.get(id_)
        if educator is None:
            return None
        for reader in (educator.id, educator.deputy):
            if reader is not None:
                self._forget_messages(reader, participant)
        changed = forgotten(educator, participant)
        body = _EDUCATOR.dump_json(changed).decode()
        table = tables.educator
        self._connection.execute(update(table).where(table.c.id == id_).values(body=body))
        return changed

    def _forget_messages(self, reader: str, participant: str) -> None:
        box = tables.outbox
        theirs = box.c.reader == reader
        self._connection.execute(delete(box).where(theirs, box.c.key.contains(participant)))
        self._connection.execute(
            update(box).where(theirs, box.c.state != "pending").values(text="", extras=None)
        )
