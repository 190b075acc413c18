"""The tables, the same for SQLite and PostgreSQL.

Instants are UTC milliseconds in 64 bits (SQLite forgets offsets); where the offset matters it
stands beside. Columns ending in `_ms` are on the bot's time, those ending in `_real` on real
time. Bodies are JSON written by `codec`.
"""

from typing import ClassVar

from sqlalchemy import BigInteger, Column, Index, Integer, MetaData, Table
from sqlalchemy import text as sql
from sqlmodel import Field, SQLModel

METADATA: MetaData = SQLModel.metadata

#: Cautions that did not surely reach their reader.
OWED = sql("kind = 'caution' AND state IN ('expired', 'unsure')")

#: SQLite counts up by itself only for a column of exactly this type.
Counting = BigInteger().with_variant(Integer(), "sqlite")


class Participant(SQLModel, table=True):
    """A person. `made_real` tells one life of an id from another (erased, imported again)."""

    id: str = Field(primary_key=True)
    body: str
    state: str
    educator: str | None = Field(default=None, index=True)
    made_real: int = Field(sa_type=BigInteger)
    last_entry: int = Field(default=0, sa_type=BigInteger)
    last_word_ms: int | None = Field(default=None, sa_type=BigInteger)
    next_wake_ms: int | None = Field(default=None, sa_type=BigInteger, index=True)


class Educator(SQLModel, table=True):
    """An educator. `body` holds their alerts too; whose participants are theirs is asked of
    the participants' rows."""

    id: str = Field(primary_key=True)
    body: str
    deputy: str | None = Field(default=None, index=True)
    made_real: int = Field(sa_type=BigInteger)
    next_wake_ms: int | None = Field(default=None, sa_type=BigInteger, index=True)


class Chat(SQLModel, table=True):
    """A chat: whose it is, or how far it has come in joining.

    `since_real` is when it was last taken up: the newest chat of a person is written to.
    `blocked` is set when the chat refused us, and cleared when a message comes from it.
    """

    id: str = Field(primary_key=True)
    participant: str | None = Field(default=None, index=True)
    role: str = "participant"
    enrolment: str | None = None
    group_told: bool = False
    blocked: bool = False
    since_real: int = Field(sa_type=BigInteger)


class Invitation(SQLModel, table=True):
    """A one-time code, kept as its SHA-256 only."""

    code_hash: str = Field(primary_key=True)
    body: str
    expires_real: int = Field(sa_type=BigInteger)
    used_real: int | None = Field(default=None, sa_type=BigInteger)


class Entry(SQLModel, table=True):
    """One event of a record; never changed."""

    participant: str = Field(primary_key=True)
    id: int = Field(primary_key=True, sa_type=BigInteger)
    at_ms: int = Field(sa_type=BigInteger)
    offset_s: int
    message: str | None = None
    mends: int | None = Field(default=None, sa_type=BigInteger)
    kind: str
    body: str


class Outbox(SQLModel, table=True):
    """One thing to say, from the turn that decided it to the chat's receipt.

    `reader` is a person's id, or `chat:` and a chat's id for a chat that is nobody's; such a
    row is deleted once it is settled. `to_make`: a picture or a file
    is made before it is sent. `rank` orders by urgency with ageing. `state` is one of
    pending, claimed (being drawn: certainly not sent), sending, sent, unsure, expired,
    told (a caution said again under another key), cancelled, failed. `copies` counts sends
    that may have arrived.
    """

    id: int | None = Field(default=None, sa_column=Column(Counting, primary_key=True))
    reader: str
    key: str
    kind: str
    about: str | None = None
    text: str
    extras: str | None = None
    to_make: bool = False
    rank: int = Field(sa_type=BigInteger)
    due_ms: int = Field(sa_type=BigInteger)
    expires_ms: int | None = Field(default=None, sa_type=BigInteger)
    made_real: int = Field(sa_type=BigInteger)
    until_real: int | None = Field(default=None, sa_type=BigInteger)
    state: str = "pending"
    attempts: int = 0
    copies: int = 0
    parts_done: int = 0
    retry_real: int = Field(default=0, sa_type=BigInteger)
    lease_real: int | None = Field(default=None, sa_type=BigInteger)
    chat: str | None = None
    message: str | None = None
    settled_real: int | None = Field(default=None, sa_type=BigInteger)

    # `postgres.py` says the same for PostgreSQL: naming it here would load all of its dialect.
    __table_args__: ClassVar[tuple[Index, ...]] = (
        Index("outbox_said_once", "reader", "key", unique=True),
        Index(
            "outbox_waiting",
            "rank",
            "id",
            sqlite_where=sql("state = 'pending'"),
        ),
        Index(
            "outbox_leased",
            "lease_real",
            sqlite_where=sql("lease_real IS NOT NULL"),
        ),
        Index(
            "outbox_receipt",
            "chat",
            "message",
            sqlite_where=sql("message IS NOT NULL"),
        ),
        Index("outbox_owed", "reader", sqlite_where=OWED),
    )


class Seen(SQLModel, table=True):
    """An update that was handled, or parked with its error (a class and a place, no text)."""

    update: int = Field(
        primary_key=True, sa_type=BigInteger, sa_column_kwargs={"autoincrement": False}
    )
    at_real: int = Field(sa_type=BigInteger)
    error: str | None = None


class Heard(SQLModel, table=True):
    """The text of a message as it came, for 30 days."""

    participant: str = Field(primary_key=True)
    message: str = Field(primary_key=True)
    at_ms: int = Field(sa_type=BigInteger, index=True)
    text: str


class Fact(SQLModel, table=True):
    """What the bot must remember of itself, by name."""

    name: str = Field(primary_key=True)
    value: str


def _table(name: str) -> Table:
    return METADATA.tables[name]


participant = _table("participant")
educator = _table("educator")
chat = _table("chat")
invitation = _table("invitation")
entry = _table("entry")
outbox = _table("outbox")
seen = _table("seen")
heard = _table("heard")
fact = _table("fact")
