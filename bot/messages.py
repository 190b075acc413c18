"""What comes in from a chat, and what is to be said to one. No I/O, no chat library."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import datetime
from enum import StrEnum
from typing import Any

from bot.entries import By


class Content(StrEnum):
    """What an incoming message carries."""

    TEXT = "text"
    PHOTO = "photo"
    OTHER = "other"  # voice, sticker, contact, place, file


@dataclass(frozen=True, slots=True, kw_only=True)
class Incoming:
    """One message from a chat.

    `edits` is set when the message mends an earlier version of itself (`message` is the id of
    both). `quotes` is the chat's id of the message that this one replies to. `update` orders and
    de-duplicates. `said_at` of an edit is when the first version was said; `at` is now. `album`
    is the chat's name for pictures that were sent together.
    """

    update: int
    chat: str
    message: str
    at: datetime
    text: str = ""
    content: Content = Content.TEXT
    said_at: datetime | None = None
    edits: bool = False
    quotes: str | None = None
    photo: str | None = None
    album: str | None = None
    private: bool = True
    by: By = By.SELF


class Kind(StrEnum):
    """Kinds of outgoing message, in the order of their urgency."""

    CAUTION = "caution"
    REPLY = "reply"
    PROMPT = "prompt"
    DIGEST = "digest"
    NOTE = "note"


#: What the bot says of its own accord, and not to whoever wants it to be silent.
UNASKED = (Kind.PROMPT, Kind.DIGEST, Kind.NOTE)


@dataclass(frozen=True, slots=True, kw_only=True)
class Saying:
    """One thing to say, as a turn decides it and the outbox keeps it.

    `key` is unique for ever within a participant and makes a second saying of the same thing
    impossible. `about` is what a prompt asks for or a caution's level. `due_at` is when it is
    due to be said, `expires_at` when it is no longer worth saying (None: never). `picture` holds
    the figures to draw (JSON), drawn by delivery. `buttons` are texts that a press types.
    `attachment` names a file to make when sending (`export`, `record`), of the reader's own record
    or, behind a colon, of the participant whose educator the reader is. `to` is the public id
    of the reader; a chat is found by it when the message is sent.
    """

    to: str
    kind: Kind
    text: str
    key: str
    due_at: datetime
    expires_at: datetime | None = None
    about: str | None = None
    picture: Mapping[str, Any] | None = None
    buttons: tuple[str, ...] = ()
    attachment: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Passed:
    """A text that a participant wrote, or the bot to them, while it is still kept."""

    at: datetime
    text: str
    by_bot: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Delivered:
    """What the chat said of a sent message: its id there."""

    message: str
    extra: Mapping[str, Any] = field(default_factory=dict)
