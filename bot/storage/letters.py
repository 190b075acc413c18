"""Rows of the outbox and the messages that they hold."""

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import datetime
from enum import StrEnum
from typing import Any

from sqlalchemy import Row
from sqlalchemy.sql.elements import ColumnElement

from bot.messages import Kind, Saying
from bot.storage import codec, tables
from bot.storage.codec import to_ms
from bot.storage.urgency import URGENCY


class End(StrEnum):
    """How a message ended."""

    SENT = "sent"
    UNSURE = "unsure"  # it may have arrived; no further copy may be sent
    EXPIRED = "expired"
    TOLD = "told"  # a caution that ended as one of the two before, said again since
    CANCELLED = "cancelled"  # its reader's chat takes no messages, or the prompt has no point now
    FAILED = "failed"  # the chat program will never take this message


def unwanted(kind: Kind) -> End:
    """How a message ends whose chat takes none. Cautions stay owed to whoever comes back."""
    return End.EXPIRED if kind is Kind.CAUTION else End.CANCELLED


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


def letter_of(row: Row[Any], chat: str) -> Letter:
    """A row of the outbox as a message to this chat."""
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


def row_of(saying: Saying, real_now: datetime) -> dict[str, Any]:
    """A saying as a new row of the outbox."""
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
        "until_real": None if urgency.worth is None else to_ms(real_now + urgency.worth),
    }


def is_stale(row: Row[Any], now: datetime, real_now: datetime) -> bool:
    """Whether a row is no longer worth sending."""
    by_bot_time = row.expires_ms is not None and row.expires_ms <= to_ms(now)
    return by_bot_time or (row.until_real is not None and row.until_real <= to_ms(real_now))


def mine(letter: Letter) -> tuple[ColumnElement[bool], ...]:
    """Claimed as often as when this sender claimed it, and not closed since."""
    box = tables.outbox
    return (
        box.c.id == letter.id,
        box.c.attempts == letter.attempts + 1,
        box.c.state.in_(("claimed", "sending")),
    )


def put_back(letter: Letter, retry_ms: int, may_have_arrived: bool) -> dict[str, Any]:
    """The columns of a row that is to be tried again."""
    return {
        "state": "pending",
        "lease_real": None,
        "retry_real": retry_ms,
        "copies": letter.copies + may_have_arrived,
    }
