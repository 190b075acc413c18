"""One event: something said by the participant or by the bot, kept for ever as it was.

An event is never changed. An edit, a correction and a removal add a `Retracted` that names
the events that no longer stand.
"""

from dataclasses import dataclass
from datetime import datetime

from bot.entries import (
    Activity,
    Answer,
    Ask,
    Asked,
    Doubt,
    Meal,
    Reading,
    Request,
    Skip,
    StepTaken,
    Strips,
    Symptom,
    Treatment,
)
from bot.messages import Kind


@dataclass(frozen=True, slots=True, kw_only=True)
class Wrote:
    """The participant wrote something, understood or not."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Retracted:
    """These events no longer stand."""

    ids: tuple[int, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Spoke:
    """The bot decided to say something. `key` is the outbox's; `cause` the event it is about."""

    kind: Kind
    about: str | None
    key: str
    cause: int | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Wondered:
    """The bot asked a question back and waits for its answer.

    `ask` is the reader's; `topic` names a question of the conversation's own (`which_meal`,
    `go_on`, `erase`, `plate`). `events` are the ones that an answer completes.
    """

    ask: Ask | None = None
    topic: str | None = None
    doubt: Doubt | None = None
    asked: Asked | None = None
    events: tuple[int, ...] = ()


Body = (
    Reading
    | Meal
    | Treatment
    | Activity
    | Symptom
    | Skip
    | Strips
    | StepTaken
    | Answer
    | Request
    | Wrote
    | Retracted
    | Spoke
    | Wondered
)


@dataclass(frozen=True, slots=True, kw_only=True)
class Event:
    """One thing in a participant's record.

    `id` counts up within the participant; `at` is when it was said (with the offset that the
    participant's clock had then); `message` is the chat's id of the message that brought it,
    None for what the bot itself did.
    """

    id: int
    at: datetime
    body: Body
    message: str | None = None
