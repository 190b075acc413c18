"""The outbox: what is to be said, from the turn that decided it to the chat's receipt.

A row is claimed with a lease before it is sent and settled afterwards; in between lies the
only window in which a crash leaves it open whether the message arrived.
"""

from collections.abc import Callable, Collection, Iterable, Sequence
from datetime import datetime, timedelta
from typing import Any

from sqlalchemy import Connection, case, delete, func, or_, select, update
from sqlalchemy.sql.elements import ColumnElement

from bot.messages import Kind, Saying
from bot.storage import codec, tables
from bot.storage.backend import Backend
from bot.storage.codec import MILLISECOND, to_ms
from bot.storage.letters import (
    End,
    Letter,
    is_stale,
    letter_of,
    mine,
    put_back,
    row_of,
    unwanted,
)
from bot.storage.statements import (
    CHAT_OF,
    KEEP_MESSAGE,
    NEXT_TRY,
    OWED,
    PENDING,
    RECEIPT,
    SETTLE,
    literal,
    next_message,
)
from bot.storage.urgency import CAUTION_OWED, URGENCY

#: The reader of a message to a chat that is nobody's is this and the chat's id.
TO_CHAT = "chat:"

#: How long a sender may keep a row before another one may take it.
LEASE = timedelta(minutes=2)

#: Rows closed in one transaction: whoever writes meanwhile waits for it.
EXPIRED_TOGETHER = 200

#: What a caution that is said again has before the key of its first saying.
OWED_KEY = "owed:"


class Outbox:
    """The outbox within one transaction."""

    def __init__(self, connection: Connection, backend: Backend) -> None:
        self._connection = connection
        self._backend = backend

    def queue(self, says: Iterable[Saying], real_now: datetime) -> int:
        """Add what is not in it yet (by reader and key); gives how many were added."""
        rows = [row_of(saying, real_now) for saying in says]
        if not rows:
            return 0
        statement = self._backend.insert_new(tables.outbox)
        return self._backend.change(self._connection, statement, rows)

    def claim(
        self,
        now: datetime,
        real_now: datetime,
        *,
        closed: Collection[str] = (),
        plain_only: bool = False,
    ) -> Letter | None:
        """Take the most urgent message whose reader is not in `closed`; None if there is none.

        `plain_only` leaves those for which something has to be made.

        A plain one is marked as being sent at once; one with something to make is marked so
        by `sending`, so that a crash while it is made cannot be mistaken for a lost answer.
        """
        wanted = next_message(some_closed=bool(closed), plain_only=plain_only)
        told: dict[str, Any] = {"now": to_ms(now), "real": to_ms(real_now)}
        if closed:
            told["closed"] = sorted(closed)
        while (row := self._connection.execute(wanted, told).one_or_none()) is not None:
            if is_stale(row, now, real_now):
                self._end(row.id, row.reader, End.EXPIRED, real_now)
                continue
            chat = self.chat_of(row.reader)
            if chat is None:
                self._end(row.id, row.reader, unwanted(Kind(row.kind)), real_now)
                continue
            letter = letter_of(row, chat)
            self._lease(letter, real_now)
            return letter
        return None

    def _lease(self, letter: Letter, real_now: datetime) -> None:
        self._set(
            letter.id,
            state="sending" if letter.is_plain else "claimed",
            attempts=letter.attempts + 1,
            lease_real=self._lease_end(real_now),
            chat=letter.chat,
        )

    def _lease_end(self, real_now: datetime) -> int | ColumnElement[int]:
        return self._backend.real_ms(real_now) + LEASE // MILLISECOND

    def sending(self, letter: Letter, real_now: datetime) -> None:
        """From here on the message may have arrived, whatever happens.

        Raises LookupError where the lease ran out and another sender has taken it over.
        """
        values = {"state": "sending", "lease_real": self._lease_end(real_now)}
        if not self._set_mine(letter, values):
            raise LookupError("another sender has this message now")

    def part_sent(self, letter: Letter, parts_done: int) -> None:
        """One part of a message that goes out in several has arrived."""
        self._set(letter.id, parts_done=parts_done)

    def settle(
        self, letter: Letter, end: End, real_now: datetime, *, message: str | None = None
    ) -> None:
        """Close a message. `message` is the chat's id of what was sent.

        One that another sender has taken over is left to it, unless it has arrived.
        """
        if end is End.SENT or self._is_mine(letter):
            self._end(letter.id, letter.reader, end, real_now, message=message, chat=letter.chat)

    def give_back(self, letter: Letter, retry_at: datetime, *, may_have_arrived: bool) -> None:
        """Put a message back, to be tried again from `retry_at` (real time) on.

        One that another sender has taken over is left to it.
        """
        self._set_mine(letter, put_back(letter, to_ms(retry_at), may_have_arrived))

    def recover(self, real_now: datetime, *, all_leases: bool = False) -> int:
        """Take back what a vanished sender had claimed; gives how many rows.

        `all_leases`: no other sender can be alive, so leases that still run count too.
        """
        box = tables.outbox
        leased = select(box).where(box.c.lease_real.is_not(None))
        leased = leased.with_for_update(skip_locked=True)  # what is being settled just now
        if not all_leases:
            leased = leased.where(box.c.lease_real <= self._backend.real_ms(real_now))
        rows = self._connection.execute(leased).all()
        for row in rows:
            may_have_arrived = row.state == "sending"
            letter = letter_of(row, row.chat)
            if may_have_arrived and row.copies + 1 >= URGENCY[letter.kind].copies:
                self._end(row.id, row.reader, End.UNSURE, real_now)
            else:
                self._set(row.id, **put_back(letter, to_ms(real_now), may_have_arrived))
        return len(rows)

    def expire(self, now: datetime, real_now: datetime) -> int:
        """Close some of what is no longer worth saying; gives how many rows, 0 once all are."""
        box = tables.outbox
        stale = or_(box.c.expires_ms <= to_ms(now), box.c.until_real <= to_ms(real_now))
        rows = self._connection.execute(
            select(box.c.id, box.c.reader)
            .where(box.c.state == literal("pending"), stale)
            .limit(EXPIRED_TOGETHER)
            .with_for_update(skip_locked=True)  # what is being claimed just now is seen there
        ).all()
        for row in rows:
            self._end(row.id, row.reader, End.EXPIRED, real_now)
        return len(rows)

    def clock_went_back(self, now: datetime, real_now: datetime, before: datetime) -> None:
        """The clock was set back: its bot's time was `before` and is `now`. What was put back to
        be tried later may leave now, and what was due when it was made is due."""
        waiting = update(tables.outbox).where(tables.outbox.c.state == literal("pending"))
        box, real = tables.outbox, to_ms(real_now)
        self._connection.execute(waiting.where(box.c.retry_real > real).values(retry_real=real))
        made_ahead = box.c.made_real > real
        due_then = box.c.due_ms.between(to_ms(now) + 1, to_ms(before))
        self._connection.execute(waiting.where(made_ahead, due_then).values(due_ms=to_ms(now)))

    def cancel_for(self, reader: str, real_now: datetime) -> None:
        """Close everything that waits for a reader whose chat takes no messages.

        A caution is closed as one that is owed: it is said once they write again.
        """
        box = tables.outbox
        if reader.startswith(TO_CHAT):  # nothing is kept of a chat that is nobody's
            self._connection.execute(delete(box).where(box.c.reader == reader))
            return
        self._connection.execute(
            update(box)
            .where(box.c.reader == reader, box.c.state == literal("pending"))
            .values(
                state=case({kind.value: unwanted(kind).value for kind in Kind}, value=box.c.kind),
                settled_real=to_ms(real_now),
            )
        )

    def withdraw(
        self,
        reader: str,
        real_now: datetime,
        kinds: Collection[Kind] = (Kind.PROMPT,),
        keys: Collection[str] | None = None,
    ) -> None:
        """Close what waits unclaimed for a reader, of these kinds: all of it, or `keys`."""
        box = tables.outbox
        waiting = (
            update(box)
            .where(box.c.reader == reader, box.c.kind.in_([kind.value for kind in kinds]))
            .where(box.c.state == literal("pending"))
            .values(state=End.CANCELLED.value, settled_real=to_ms(real_now))
        )
        self._connection.execute(waiting if keys is None else waiting.where(box.c.key.in_(keys)))

    def say_owed_cautions(
        self,
        reader: str,
        now: datetime,
        real_now: datetime,
        words: Callable[[str, datetime], str],
    ) -> int:
        """Queue once more the cautions of a day that did not surely reach their reader.

        `words` makes the new text of the first one and of when it was due. Gives how many.
        """
        since = to_ms(real_now - CAUTION_OWED)
        rows = self._connection.execute(OWED, {"reader": reader, "since": since}).all()
        for row in rows:
            self._set(row.id, state=End.TOLD.value)
        return self.queue(
            (
                Saying(
                    to=reader,
                    kind=Kind.CAUTION,
                    about=row.about,
                    text=words(row.text, codec.from_ms(row.due_ms)),
                    key=OWED_KEY + row.key,
                    due_at=now,
                )
                for row in sorted(rows, key=lambda row: int(row.id))
            ),
            real_now,
        )

    def receipt(self, chat: str, message: str) -> str | None:
        """The key of the saying that a chat knows as this message."""
        key = self._connection.execute(RECEIPT, {"chat": chat, "message": message}).scalar()
        return None if key is None else str(key).rpartition(OWED_KEY)[2]

    def pending(self) -> list[Letter]:
        """Everything that waits, in the order of its making (for replay)."""
        rows = self._connection.execute(PENDING).all()
        chats = {reader: self.chat_of(reader) for reader in {row.reader for row in rows}}
        return [letter_of(row, chats[row.reader] or row.reader) for row in rows]

    def all_sent(self, receipts: Sequence[tuple[Letter, str]], real_now: datetime) -> None:
        """Close several messages as sent, each with the chat's id of it (for replay)."""
        strangers = [letter.id for letter, _ in receipts if letter.reader.startswith(TO_CHAT)]
        if strangers:
            self._connection.execute(delete(tables.outbox).where(tables.outbox.c.id.in_(strangers)))
        rows = [
            {
                "row": letter.id,
                "state_": End.SENT.value,
                "settled": to_ms(real_now),
                "message_": message,
                "chat_": letter.chat,
            }
            for letter, message in receipts
        ]
        if rows:
            self._connection.execute(SETTLE, rows)

    def next_try(self, real_now: datetime) -> datetime | None:
        """When (real time) the next message that was put back may be tried again."""
        ms = self._connection.execute(NEXT_TRY, {"now": to_ms(real_now)}).scalar_one()
        return None if ms is None else codec.from_ms(ms)

    def counts(self) -> dict[str, int]:
        """How many rows stand in each state."""
        box = tables.outbox
        rows = self._connection.execute(select(box.c.state, func.count()).group_by(box.c.state))
        return {row[0]: row[1] for row in rows}

    def dues(self) -> list[datetime]:
        """When (the bot's time) each message that has not left yet is or was due."""
        box = tables.outbox
        left = (box.c.state == literal(state) for state in ("pending", "claimed", "sending"))
        return [
            codec.from_ms(row.due_ms)
            for row in self._connection.execute(select(box.c.due_ms).where(or_(*left)))
        ]

    def chat_of(self, reader: str) -> str | None:
        """The chat in which a reader is written to; None if there is none that takes messages."""
        if reader.startswith(TO_CHAT):
            return reader.removeprefix(TO_CHAT)
        row = self._connection.execute(CHAT_OF, {"reader": reader}).one_or_none()
        return None if row is None or row.blocked else row.id

    def _end(
        self, id_: int, reader: str, end: End, real_now: datetime, **values: str | None
    ) -> None:
        if reader.startswith(TO_CHAT):  # nothing is kept of a chat that is nobody's
            self._connection.execute(delete(tables.outbox).where(tables.outbox.c.id == id_))
            return
        self._set(id_, state=end.value, lease_real=None, settled_real=to_ms(real_now), **values)

    def _set_mine(self, letter: Letter, values: dict[str, Any]) -> bool:
        """Change a message that this sender still has; gives whether it has."""
        changed = update(tables.outbox).where(*mine(letter)).values(values)
        return self._connection.execute(changed).rowcount == 1

    def _is_mine(self, letter: Letter) -> bool:
        held = select(tables.outbox.c.id).where(*mine(letter)).with_for_update()
        return self._connection.execute(held).one_or_none() is not None

    def _set(self, id_: int, **values: Any) -> None:
        if any(isinstance(value, ColumnElement) for value in values.values()):
            self._connection.execute(KEEP_MESSAGE.values(values), {"row": id_})
        else:
            self._connection.execute(KEEP_MESSAGE, {"row": id_, **values})
