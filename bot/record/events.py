"""One event: something said by the participant or by the bot, kept for ever as it was.

An event is never changed. A value put right, an edit and a removal add a `Retracted` that names
the events that no longer stand; anything else put right adds an event that stands in its place.
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
    """The participant wrote something, understood or not.

    `album` is the chat's name for pictures that were sent together, each a message of its own.
    """

    album: str | None = None


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
    `go_on`, `erase`, `plate`), `about` what exactly it proposes. `events` are the ones that an
    answer completes.
    """

    ask: Ask | None = None
    topic: str | None = None
    about: str | None = None
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
    None for what the bot itself did. `mends` names the event in whose place this one stands (a
    moment, a start or a dish put right): what was said of that one holds for this one. A value
    put right is no such thing: it is a new event, with cautions of its own.
    """

    id: int
    at: datetime
    body: Body
    message: str | None = None
    mends: int | None = None

    @property
    def root(self) -> int:
        """The id by which the record knows it: that of the event it mends, or its own."""
        return self.id if self.mends is None else self.mends
