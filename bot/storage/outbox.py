"""The outbox: what is to be said, from the turn that decided it to the chat's receipt.

A row is claimed with a lease before it is sent and settled afterwards; in between lies the
only window in which a crash leaves it open whether the message arrived.
"""

from collections.abc import Collection, Iterable, Mapping
from dataclasses import dataclass
from datetime import datetime, timedelta
from enum import StrEnum
from typing import Any

from sqlalchemy import Connection, Row, delete, func, or_, select, update
from sqlalchemy.dialects import postgresql
from sqlalchemy.dialects import sqlite as sqlite_dialect

from bot.messages import Kind, Saying
from bot.storage import codec, tables
from bot.storage.codec import to_ms
from bot.storage.urgency import URGENCY

#: The reader of a message to a chat that is nobody's is this and the chat's id.
TO_CHAT = "chat:"

#: How long a sender may keep a row before another one may take it.
LEASE = timedelta(minutes=2)

#: How long after it expired unsent a caution is still told when its reader writes again.
CAUTION_OWED = timedelta(hours=24)


class End(StrEnum):
    """How a message ended."""

    SENT = "sent"
    UNSURE = "unsure"  # it may have arrived; no further copy may be sent
    EXPIRED = "expired"
    CANCELLED = "cancelled"  # its reader's chat takes no messages
    FAILED = "failed"  # the chat program will never take this message


@dataclass(frozen=True, slots=True, kw_only=True)
class Letter:
    """A message on its way, and the chat that it goes to (its reader's newest)."""

    id: int
    reader: str
    chat: str
    kind: Kind
    about: str | None
    key: str
    text: str
    due_at: datetime
    expires_at: datetime | None
    picture: Mapping[str, Any] | None
    buttons: tuple[str, ...]
    attachment: str | None
    attempts: int
    copies: int
    parts_done: int

    @property
    def is_plain(self) -> bool:
        """Nothing has to be made before it can be sent."""
        return self.picture is None and self.attachment is None


class Outbox:
    """The outbox within one transaction."""

    def __init__(self, connection: Connection) -> None:
        self._connection = connection

    def queue(self, says: Iterable[Saying], real_now: datetime) -> int:
        """Add what is not in it yet (by reader and key); gives how many were added."""
        added = 0
        make = (
            sqlite_dialect.insert
            if self._connection.dialect.name == "sqlite"
            else postgresql.insert
        )
        for saying in says:
            statement = make(tables.outbox).values(_row(saying, real_now))
            added += self._connection.execute(statement.on_conflict_do_nothing()).rowcount
        return added

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
        box = tables.outbox
        wanted = (
            select(box)
            .where(
                box.c.state == "pending",
                box.c.due_ms <= to_ms(now),
                box.c.retry_real <= to_ms(real_now),
            )
            .order_by(box.c.rank, box.c.id)
            .limit(1)
            .with_for_update(skip_locked=True)
        )
        if closed:
            wanted = wanted.where(box.c.reader.not_in(sorted(closed)))
        if plain_only:
            wanted = wanted.where(box.c.to_make.is_(False))
        while (row := self._connection.execute(wanted).one_or_none()) is not None:
            if _is_stale(row, now, real_now):
                self._end(row.id, row.reader, End.EXPIRED, real_now)
                continue
            chat = self._chat_of(row.reader)
            if chat is None:
                self._end(row.id, row.reader, End.CANCELLED, real_now)
                continue
            letter = _letter(row, chat)
            self._lease(letter, real_now)
            return letter
        return None

    def _lease(self, letter: Letter, real_now: datetime) -> None:
        self._set(
            letter.id,
            state="sending" if letter.is_plain else "claimed",
            attempts=letter.attempts + 1,
            lease_real=to_ms(real_now + LEASE),
            chat=letter.chat,
        )

    def sending(self, letter: Letter, real_now: datetime) -> None:
        """From here on the message may have arrived, whatever happens."""
        self._set(letter.id, state="sending", lease_real=to_ms(real_now + LEASE))

    def part_sent(self, letter: Letter, parts_done: int) -> None:
        """One part of a message that goes out in several has arrived."""
        self._set(letter.id, parts_done=parts_done)

    def settle(
        self, letter: Letter, end: End, real_now: datetime, *, message: str | None = None
    ) -> None:
        """Close a message. `message` is the chat's id of what was sent."""
        self._end(letter.id, letter.reader, end, real_now, message=message, chat=letter.chat)

    def give_back(self, letter: Letter, retry_at: datetime, *, may_have_arrived: bool) -> None:
        """Put a message back, to be tried again from `retry_at` (real time) on."""
        self._set(
            letter.id,
            state="pending",
            lease_real=None,
            retry_real=to_ms(retry_at),
            copies=letter.copies + may_have_arrived,
        )

    def recover(self, real_now: datetime, *, all_leases: bool = False) -> int:
        """Take back what a vanished sender had claimed; gives how many rows.

        `all_leases`: no other sender can be alive, so leases that still run count too.
        """
        box = tables.outbox
        leased = select(box).where(box.c.lease_real.is_not(None)).with_for_update()
        if not all_leases:
            leased = leased.where(box.c.lease_real <= to_ms(real_now))
        rows = self._connection.execute(leased).all()
        for row in rows:
            may_have_arrived = row.state == "sending"
            letter = _letter(row, row.chat)
            if may_have_arrived and row.copies + 1 >= URGENCY[letter.kind].copies:
                self._end(row.id, row.reader, End.UNSURE, real_now)
            else:
                self.give_back(letter, real_now, may_have_arrived=may_have_arrived)
        return len(rows)

    def expire(self, now: datetime, real_now: datetime) -> int:
        """Close what is no longer worth saying; gives how many rows."""
        box = tables.outbox
        stale = or_(box.c.expires_ms <= to_ms(now), box.c.until_real <= to_ms(real_now))
        rows = self._connection.execute(
            select(box.c.id, box.c.reader).where(box.c.state == "pending", stale)
        ).all()
        for row in rows:
            self._end(row.id, row.reader, End.EXPIRED, real_now)
        return len(rows)

    def cancel_for(self, reader: str, real_now: datetime) -> None:
        """Close everything that waits for a reader whose chat takes no messages."""
        box = tables.outbox
        self._connection.execute(
            update(box)
            .where(box.c.reader == reader, box.c.state == "pending")
            .values(state=End.CANCELLED.value, settled_real=to_ms(real_now))
        )

    def owe_cautions(self, reader: str, real_now: datetime) -> int:
        """A caution that expired unsent is owed: say it now that its reader writes again."""
        box = tables.outbox
        return self._connection.execute(
            update(box)
            .where(
                box.c.reader == reader,
                box.c.kind == Kind.CAUTION.value,
                box.c.state == End.EXPIRED.value,
                box.c.made_real > to_ms(real_now - CAUTION_OWED),
            )
            .values(
                state="pending",
                settled_real=None,
                retry_real=0,
                until_real=_until(Kind.CAUTION, real_now),
            )
        ).rowcount

    def receipt(self, chat: str, message: str) -> str | None:
        """The key of the saying that a chat knows as this message."""
        box = tables.outbox
        return self._connection.execute(
            select(box.c.key).where(box.c.chat == chat, box.c.message == message)
        ).scalar()

    def pending(self) -> list[Letter]:
        """Everything that waits, in the order of its making (for replay)."""
        box = tables.outbox
        rows = self._connection.execute(
            select(box).where(box.c.state == "pending").order_by(box.c.id)
        ).all()
        return [_letter(row, self._chat_of(row.reader) or row.reader) for row in rows]

    def next_try(self, real_now: datetime) -> datetime | None:
        """When (real time) the next message that was put back may be tried again."""
        box = tables.outbox
        ms = self._connection.execute(
            select(func.min(box.c.retry_real)).where(
                box.c.state == "pending", box.c.retry_real > to_ms(real_now)
            )
        ).scalar_one()
        return None if ms is None else codec.from_ms(ms)

    def counts(self) -> dict[str, int]:
        """How many rows stand in each state."""
        box = tables.outbox
        rows = self._connection.execute(select(box.c.state, func.count()).group_by(box.c.state))
        return {row[0]: row[1] for row in rows}

    def _chat_of(self, reader: str) -> str | None:
        if reader.startswith(TO_CHAT):
            return reader.removeprefix(TO_CHAT)
        chat = tables.chat
        row = self._connection.execute(
            select(chat.c.id, chat.c.blocked)
            .where(chat.c.participant == reader)
            .order_by(chat.c.since_real.desc(), chat.c.id)
            .limit(1)
        ).one_or_none()
        return None if row is None or row.blocked else row.id

    def _end(
        self, id_: int, reader: str, end: End, real_now: datetime, **values: str | None
    ) -> None:
        if reader.startswith(TO_CHAT):  # nothing is kept of a chat that is nobody's
            self._connection.execute(delete(tables.outbox).where(tables.outbox.c.id == id_))
            return
        self._set(
            id_, state=end.value, lease_real=None, settled_real=to_ms(real_now), **values
        )

    def _set(self, id_: int, **values: Any) -> None:
        self._connection.execute(
            update(tables.outbox).where(tables.outbox.c.id == id_).values(values)
        )


def _letter(row: Row[Any], chat: str) -> Letter:
    extras = codec.extras_of(row.extras)
    return Letter(
        id=row.id,
        reader=row.reader,
        chat=chat,
        kind=Kind(row.kind),
        about=row.about,
        key=row.key,
        text=row.text,
        due_at=codec.from_ms(row.due_ms),
        expires_at=None if row.expires_ms is None else codec.from_ms(row.expires_ms),
        picture=extras.get("picture"),
        buttons=tuple(extras.get("buttons", ())),
        attachment=extras.get("attachment"),
        attempts=row.attempts,
        copies=row.copies,
        parts_done=row.parts_done,
    )


def _row(saying: Saying, real_now: datetime) -> dict[str, Any]:
    urgency = URGENCY[saying.kind]
    return {
        "reader": saying.to,
        "key": saying.key,
        "kind": saying.kind.value,
        "about": saying.about,
        "text": saying.text,
        "extras": codec.extras_json(saying),
        "to_make": saying.picture is not None or saying.attachment is not None,
        "rank": to_ms(real_now + urgency.handicap),
        "due_ms": to_ms(saying.due_at),
        "expires_ms": None if saying.expires_at is None else to_ms(saying.expires_at),
        "made_real": to_ms(real_now),
        "until_real": _until(saying.kind, real_now),
    }


def _until(kind: Kind, real_now: datetime) -> int | None:
    worth = URGENCY[kind].worth
    return None if worth is None else to_ms(real_now + worth)


def _is_stale(row: Row[Any], now: datetime, real_now: datetime) -> bool:
    by_bot_time = row.expires_ms is not None and row.expires_ms <= to_ms(now)
    return by_bot_time or (row.until_real is not None and row.until_real <= to_ms(real_now))
