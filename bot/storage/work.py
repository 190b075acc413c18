"""What one transaction can do with people, their records and their chats."""

import hashlib
from collections import defaultdict
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Any

from sqlalchemy import Connection, Table, and_, delete, insert, or_, select, update

from bot.messages import Incoming
from bot.participants import Enrolment, Invitation, Participant, Role
from bot.record import Event
from bot.storage import codec, tables
from bot.storage.backend import Backend
from bot.storage.codec import to_ms
from bot.storage.educators import Educators
from bot.storage.outbox import Outbox
from bot.storage.records import Cache, Records
from bot.storage.statements import (
    ADD_EVENTS,
    CHAT,
    FIRST_PERSON,
    KEEP_PERSON,
    PEOPLE_DUE,
    PERSON_LATER,
    PERSON_OF_CHAT,
)
from bot.storage.urgency import CAUTION_OWED
from bot.turns.turn import Opened, Turn


@dataclass(frozen=True, slots=True, kw_only=True)
class ChatSeen:
    """What is known of a chat."""

    id: str
    participant: str | None = None
    role: Role = Role.PARTICIPANT
    enrolment: Enrolment | None = None
    group_told: bool = False
    blocked: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Met:
    """A participant who writes, whether their chat is marked as blocked, and whether a caution
    is owed to them."""

    opened: Opened
    blocked: bool
    owed: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class Enrolled:
    """A line of `people`: who is enrolled, without any value."""

    participant: Participant
    last_word: datetime | None
    next_wake: datetime | None


def code_hash(code: str) -> str:
    """What is kept of an invitation's code. Case, spaces and dashes do not count."""
    plain = "".join(letter for letter in code.upper() if letter.isalnum())
    return hashlib.sha256(plain.encode()).hexdigest()


class Work:
    """One open transaction."""

    def __init__(self, connection: Connection, cache: Cache, backend: Backend) -> None:
        self.connection = connection
        self.outbox = Outbox(connection, backend)
        self.educators = Educators(connection, backend)
        self._records = Records(connection, cache, backend)
        self._backend = backend
        self._kept: list[Turn] = []

    def committed(self) -> None:
        """Called by the store once the transaction stands."""
        for turn in self._kept:
            self._records.remember(turn)

    def undone(self) -> None:
        """Called by the store where nothing of it stands: what was seen in it is forgotten too."""
        self._records.forget(self._records.wakes)

    # --- updates ---------------------------------------------------------------------------

    def first_sight(self, update_id: int, real_now: datetime) -> bool:
        """Mark an update as handled by this transaction; False if it was before."""
        row = {"update": update_id, "at_real": to_ms(real_now), "error": None}
        return bool(self._insert_new(tables.seen, row))

    def park(self, update_id: int, real_now: datetime, error: str) -> None:
        """Mark an update as given up, with the error's class and place."""
        row = {"update": update_id, "at_real": to_ms(real_now), "error": error}
        self._insert_new(tables.seen, row)

    def parked(self) -> list[tuple[int, str]]:
        """Updates that were given up, and why."""
        seen = tables.seen
        rows = self.connection.execute(
            select(seen.c.update, seen.c.error)
            .where(seen.c.error.is_not(None))
            .order_by(seen.c.update)
        )
        return [(row.update, row.error) for row in rows]

    def keep_text(self, who: str, incoming: Incoming, now: datetime) -> None:
        """Keep a message as it came; an edited one takes the place of its first version."""
        heard = tables.heard
        row = {
            "participant": who,
            "message": incoming.message,
            "at_ms": to_ms(now),
            "text": incoming.text,
        }
        if incoming.edits:
            self.connection.execute(
                delete(heard).where(heard.c.participant == who, heard.c.message == incoming.message)
            )
        self._insert_new(heard, row)

    # --- chats -----------------------------------------------------------------------------

    def chat(self, id_: str) -> ChatSeen | None:
        """Lock a chat for this turn and tell what is known of it; None for a stranger's."""
        self._backend.lock_chat(self.connection, id_)
        row = self.connection.execute(CHAT, {"id_": id_}).one_or_none()
        if row is None:
            return None
        return ChatSeen(
            id=id_,
            participant=row.participant,
            role=Role(row.role),
            enrolment=codec.enrolment_of(row.enrolment) if row.enrolment else None,
            group_told=row.group_told,
            blocked=row.blocked,
        )

    def meet(self, chat: str, now: datetime, real_now: datetime) -> Met | None:
        """Lock a chat and the participant who writes from it, and load their last 35 days.

        None where it is no participant's: `chat` tells what is known of it.
        """
        self._backend.lock_chat(self.connection, chat)
        told = {"id_": chat, "since": to_ms(real_now - CAUTION_OWED)}
        rows = self._backend.find(self.connection, PERSON_OF_CHAT, told)
        if not rows:
            return None
        (row,) = rows
        opened = self._records.opened(rows, now)[row.id]
        return Met(opened=opened, blocked=bool(row.blocked), owed=bool(row.owed))

    def heard_since(self, who: str, moment: datetime) -> bool:
        """Whether a person has written at an instant or later."""
        people = tables.participant
        heard = select(people.c.last_word_ms >= to_ms(moment)).where(people.c.id == who)
        return bool(self.connection.scalar(heard))

    def keep_chat(self, seen: ChatSeen, real_now: datetime) -> None:
        """Keep a chat as it now stands, and make it the one that its person is written to."""
        self.forget_chat(seen.id)
        self.connection.execute(
            insert(tables.chat).values(
                id=seen.id,
                participant=seen.participant,
                role=seen.role.value,
                enrolment=codec.enrolment_json(seen.enrolment) if seen.enrolment else None,
                group_told=seen.group_told,
                blocked=seen.blocked,
                since_real=to_ms(real_now),
            )
        )

    def forget_chat(self, id_: str) -> None:
        """Keep nothing of a chat."""
        self.connection.execute(delete(tables.chat).where(tables.chat.c.id == id_))

    def set_blocked(self, chat: str, blocked: bool) -> None:
        """Note that a chat takes no messages from us, or takes them again."""
        self.connection.execute(
            update(tables.chat).where(tables.chat.c.id == chat).values(blocked=blocked)
        )

    # --- invitations -----------------------------------------------------------------------

    def invite(self, code: str, invitation: Invitation, expires: datetime) -> None:
        """Keep an invitation under its code (as a hash)."""
        self.connection.execute(
            insert(tables.invitation).values(
                code_hash=code_hash(code),
                body=codec.invitation_json(invitation),
                expires_real=to_ms(expires),
            )
        )

    def invitation(self, code: str, real_now: datetime) -> Invitation | None:
        """The invitation of a code, locked; None if unknown, used or expired."""
        table = tables.invitation
        body = self.connection.execute(
            select(table.c.body)
            .where(
                table.c.code_hash == code_hash(code),
                table.c.used_real.is_(None),
                table.c.expires_real > to_ms(real_now),
            )
            .with_for_update()
        ).scalar_one_or_none()
        return None if body is None else codec.invitation_of(body)

    def spend(self, code: str, real_now: datetime) -> None:
        """A code works once."""
        table = tables.invitation
        self.connection.execute(
            update(table)
            .where(table.c.code_hash == code_hash(code))
            .values(used_real=to_ms(real_now))
        )

    # --- people ----------------------------------------------------------------------------

    def open(self, who: str, now: datetime) -> Opened | None:
        """Lock a person for this turn and load their last 35 days; None if there is nobody."""
        return self.open_all((who,), now).get(who)

    def open_all(self, people: Iterable[str], now: datetime) -> dict[str, Opened]:
        """The same for several people together; whoever is nobody is left out."""
        return self._records.open_all(people, now)

    def next_wake(self, who: str) -> datetime | None:
        """When a person opened in this transaction was to be woken next; None for nobody."""
        return self._records.wakes.get(who)

    def enrol(
        self, participant: Participant, real_now: datetime, wake_at: datetime | None = None
    ) -> None:
        """A new person, with an empty record."""
        self.connection.execute(
            insert(tables.participant).values(
                id=participant.id,
                body=codec.participant_json(participant),
                state=participant.state.value,
                educator=participant.educator,
                made_real=to_ms(real_now),
                last_entry=0,
                next_wake_ms=_ms_or_none(wake_at),
            )
        )

    def save(self, turn: Turn, *, heard_at: datetime | None = None) -> None:
        """Keep what a turn brought about, but for its sayings: entries, person, next wake."""
        told = {} if heard_at is None else {"last_word_ms": to_ms(heard_at)}
        self._save((turn,), told)

    def save_all(self, turns: Sequence[Turn]) -> None:
        """The same for the turns of several people, none of them twice."""
        self._save(turns, {})

    def _save(self, turns: Sequence[Turn], told: dict[str, Any]) -> None:
        entries = [
            codec.event_row(turn.participant.id, event) for turn in turns for event in turn.events
        ]
        if entries:
            self._backend.change(self.connection, ADD_EVENTS, entries)
        alike: defaultdict[tuple[str, ...], list[dict[str, Any]]] = defaultdict(list)
        for turn in turns:
            changes = self._changes(turn) | told
            alike[tuple(changes)].append(changes)
        for changes_of_some in alike.values():
            self._backend.change(self.connection, KEEP_PERSON, changes_of_some)
        self._kept.extend(turns)

    def set_wake(self, who: str, wake_at: datetime | None) -> None:
        """Move a person's next wake."""
        self.connection.execute(KEEP_PERSON, {"who": who, "next_wake_ms": _ms_or_none(wake_at)})

    def _changes(self, turn: Turn) -> dict[str, Any]:
        """The columns of a person's row that a turn changes, with their id as `who`."""
        person = turn.participant
        changes: dict[str, Any] = {"who": person.id, "next_wake_ms": _ms_or_none(turn.wake_at)}
        if turn.events:
            changes["last_entry"] = turn.events[-1].id
        if self._records.changed(person):
            changes["body"] = codec.participant_json(person)
            changes["state"] = person.state.value
            changes["educator"] = person.educator
        return changes

    def due(self, now: datetime, limit: int) -> tuple[tuple[str, ...], datetime | None]:
        """Who is due by now, the longest waiting first, and the earliest wake after now."""
        find, at = self._backend.find, to_ms(now)
        educators, educators_later = self.educators.due(now, limit)
        told = {"now": at, "most": limit - len(educators)}
        who = [row.id for row in find(self.connection, PEOPLE_DUE, told)]
        (later,) = find(self.connection, PERSON_LATER, {"now": at})
        instants = [] if later.at is None else [codec.from_ms(later.at)]
        if educators_later is not None:
            instants.append(educators_later)
        return (*educators, *who), min(instants, default=None)

    def wake_everybody(self, now: datetime) -> None:
        """Look anew at everybody who is to be woken at all."""
        people = tables.participant
        later = update(people).where(people.c.next_wake_ms > to_ms(now))
        self.connection.execute(later.values(next_wake_ms=to_ms(now)))

    def earliest(self) -> tuple[datetime, str] | None:
        """Whose wake comes first of all, and when."""
        row = self.connection.execute(FIRST_PERSON).one_or_none()
        first = [] if row is None else [(codec.from_ms(row.next_wake_ms), str(row.id))]
        educator = self.educators.earliest()
        if educator is not None:
            first.append(educator)
        return min(first, default=None)

    def people(self) -> list[Enrolled]:
        """Everybody, in the order of joining."""
        table = tables.participant
        rows = self.connection.execute(select(table).order_by(table.c.made_real, table.c.id))
        return [
            Enrolled(
                participant=codec.participant_of(row.body),
                last_word=_or_none(row.last_word_ms),
                next_wake=_or_none(row.next_wake_ms),
            )
            for row in rows
        ]

    def events(self, who: str) -> tuple[Event, ...]:
        """The whole record of a person, as it was said."""
        return self._records.whole(who)

    def erase(self, who: str) -> bool:
        """Remove a person and everything of theirs; False if there is nobody.

        What is still to be said to them is removed too: queue the farewell to the chat.
        """
        people = tables.participant
        educator = self.connection.execute(
            select(people.c.educator).where(people.c.id == who).with_for_update()
        ).scalar_one_or_none()
        if educator is not None:
            self.educators.forget(educator, who)
        found = self.connection.execute(delete(people).where(people.c.id == who)).rowcount
        for table in (tables.entry, tables.heard, tables.chat):
            self.connection.execute(delete(table).where(table.c.participant == who))
        self.connection.execute(delete(tables.outbox).where(tables.outbox.c.reader == who))
        self._records.forget((who,))
        return bool(found)

    # --- facts and retention ---------------------------------------------------------------

    def fact(self, name: str) -> str | None:
        """What the bot remembers of itself under a name."""
        return self.connection.execute(
            select(tables.fact.c.value).where(tables.fact.c.name == name)
        ).scalar_one_or_none()

    def set_fact(self, name: str, value: str) -> None:
        """Remember it."""
        table = tables.fact
        known = self.connection.execute(
            update(table).where(table.c.name == name).values(value=value)
        )
        if not known.rowcount:
            self._insert_new(table, {"name": name, "value": value})

    def forget_texts(self, before: datetime, real_before: datetime) -> int:
        """Remove the texts of messages older than that; the record and the keys stay."""
        outbox, heard, seen = tables.outbox, tables.heard, tables.seen
        gone = self.connection.execute(delete(heard).where(heard.c.at_ms < to_ms(before))).rowcount
        gone += self.connection.execute(
            update(outbox)
            .where(
                outbox.c.settled_real < to_ms(real_before),
                or_(outbox.c.text != "", outbox.c.extras.is_not(None)),
            )
            .values(text="", extras=None)
        ).rowcount
        self.connection.execute(
            delete(seen).where(and_(seen.c.at_real < to_ms(real_before), seen.c.error.is_(None)))
        )
        return gone

    def _insert_new(self, table: Table, row: dict[str, Any]) -> int:
        """Leave an existing row alone; gives how many were added."""
        return self._backend.change(self.connection, self._backend.insert_new(table), (row,))


def _ms_or_none(moment: datetime | None) -> int | None:
    return None if moment is None else to_ms(moment)


def _or_none(ms: int | None) -> datetime | None:
    return None if ms is None else codec.from_ms(ms)
