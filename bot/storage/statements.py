"""The statements of every turn, built once: building one costs more than running it.

States and kinds stand in them as literals where a partial index is to be used: SQLite looks
for the index before it knows the value of a parameter.
"""

from functools import cache
from typing import Any

from sqlalchemy import Select, bindparam, exists, func, insert, literal_column, select, update
from sqlalchemy.sql.elements import ColumnElement

from bot.storage import tables

_CHAT, _ENTRY, _OUTBOX = tables.chat, tables.entry, tables.outbox
_PERSON, _EDUCATOR = tables.participant, tables.educator


def literal(word: str) -> ColumnElement[str]:
    """A word of ours in a statement's own text."""
    return literal_column(f"'{word}'")


CHAT = select(_CHAT).where(_CHAT.c.id == bindparam("id_"))

_OPENED = (
    _PERSON.c.id,
    _PERSON.c.body,
    _PERSON.c.made_real,
    _PERSON.c.last_entry,
    _PERSON.c.next_wake_ms,
)
#: Locked in the order of their ids.
PEOPLE = (
    select(*_OPENED)
    .where(_PERSON.c.id.in_(bindparam("people", expanding=True)))
    .order_by(_PERSON.c.id)
    .with_for_update()
)
#: Cautions that did not surely reach their reader. The words are those of the index.
_OWED = (
    _OUTBOX.c.kind == literal("caution"),
    _OUTBOX.c.state.in_((literal("expired"), literal("unsure"))),
    _OUTBOX.c.made_real > bindparam("since"),
)
OWED = select(_OUTBOX).where(_OUTBOX.c.reader == bindparam("reader"), *_OWED)
#: A participant by the chat that they write from, and whether a caution is owed to them.
PERSON_OF_CHAT = (
    select(
        *_OPENED,
        _CHAT.c.blocked,
        exists().where(_OUTBOX.c.reader == _PERSON.c.id, *_OWED).label("owed"),
    )
    .join_from(_CHAT, _PERSON, _CHAT.c.participant == _PERSON.c.id)
    .where(_CHAT.c.id == bindparam("id_"), _CHAT.c.role == literal("participant"))
    .with_for_update(of=_PERSON)
)
#: Executed with `who` and the columns that change.
KEEP_PERSON = update(_PERSON).where(_PERSON.c.id == bindparam("who"))
#: The columns of an event, in the order in which `codec.event_of` takes them.
EVENT = (
    _ENTRY.c.id,
    _ENTRY.c.at_ms,
    _ENTRY.c.offset_s,
    _ENTRY.c.message,
    _ENTRY.c.mends,
    _ENTRY.c.kind,
    _ENTRY.c.body,
)
EVENTS = (
    select(*EVENT)
    .where(_ENTRY.c.participant == bindparam("who"), _ENTRY.c.id > bindparam("since"))
    .order_by(_ENTRY.c.id)
)
_FIRST = (
    select(_ENTRY.c.participant, func.min(_ENTRY.c.id).label("id"))
    .where(
        _ENTRY.c.participant.in_(bindparam("people", expanding=True)),
        _ENTRY.c.at_ms >= bindparam("since"),
    )
    .group_by(_ENTRY.c.participant)
    .subquery("first")
)
#: Of several people: from the first event that was said at or after an instant on.
RECENT_EVENTS = (
    select(*EVENT, _ENTRY.c.participant)
    .join_from(
        _FIRST,
        _ENTRY,
        (_ENTRY.c.participant == _FIRST.c.participant) & (_ENTRY.c.id >= _FIRST.c.id),
    )
    .order_by(_ENTRY.c.participant, _ENTRY.c.id)
)
ADD_EVENTS = insert(_ENTRY)

FIRST_PERSON, FIRST_EDUCATOR = (
    select(table.c.next_wake_ms, table.c.id)
    .where(table.c.next_wake_ms.is_not(None))
    .order_by(table.c.next_wake_ms, table.c.id)
    .limit(1)
    for table in (_PERSON, _EDUCATOR)
)
#: Not ordered further: with a hundred thousand due at one instant each batch would sort them all.
PEOPLE_DUE, EDUCATORS_DUE = (
    select(table.c.id)
    .where(table.c.next_wake_ms <= bindparam("now"))
    .order_by(table.c.next_wake_ms)
    .limit(bindparam("most"))
    .with_for_update(skip_locked=True)  # whoever is in a turn just now is looked at there
    for table in (_PERSON, _EDUCATOR)
)
PERSON_LATER, EDUCATOR_LATER = (
    select(func.min(table.c.next_wake_ms).label("at")).where(
        table.c.next_wake_ms > bindparam("now")
    )
    for table in (_PERSON, _EDUCATOR)
)

#: A reader's chat: the one that was taken up last, of those that take messages if any does.
CHAT_OF = (
    select(_CHAT.c.id, _CHAT.c.blocked)
    .where(_CHAT.c.participant == bindparam("reader"))
    .order_by(_CHAT.c.blocked, _CHAT.c.since_real.desc(), _CHAT.c.id)
    .limit(1)
)


@cache
def next_message(*, some_closed: bool, plain_only: bool) -> Select[Any]:
    """The most urgent message that may leave: executed with `now`, `real` and, where some
    readers may not be written to, `closed`."""
    wanted = select(_OUTBOX).where(
        _OUTBOX.c.state == literal("pending"),
        _OUTBOX.c.due_ms <= bindparam("now"),
        _OUTBOX.c.retry_real <= bindparam("real"),
    )
    if some_closed:
        wanted = wanted.where(_OUTBOX.c.reader.not_in(bindparam("closed", expanding=True)))
    if plain_only:
        wanted = wanted.where(_OUTBOX.c.to_make.is_(False))
    return wanted.order_by(_OUTBOX.c.rank, _OUTBOX.c.id).limit(1).with_for_update(skip_locked=True)


#: Executed with `row` and the columns that change.
KEEP_MESSAGE = update(_OUTBOX).where(_OUTBOX.c.id == bindparam("row"))
RECEIPT = select(_OUTBOX.c.key).where(
    _OUTBOX.c.chat == bindparam("chat"), _OUTBOX.c.message == bindparam("message")
)
PENDING = select(_OUTBOX).where(_OUTBOX.c.state == literal("pending")).order_by(_OUTBOX.c.id)
NEXT_TRY = select(func.min(_OUTBOX.c.retry_real)).where(
    _OUTBOX.c.state == literal("pending"), _OUTBOX.c.retry_real > bindparam("now")
)
#: Every message that ends; several in one call.
SETTLE = (
    update(_OUTBOX)
    .where(_OUTBOX.c.id == bindparam("row"))
    .values(
        state=bindparam("state_"),
        lease_real=None,
        settled_real=bindparam("settled"),
        message=bindparam("message_"),
        chat=bindparam("chat_"),
    )
)
