"""What one message or one wake-up brings about."""

from collections.abc import Callable
from dataclasses import dataclass
from datetime import datetime

from bot.messages import Saying
from bot.participants import Enrolment, Participant
from bot.record import Event, Record


@dataclass(frozen=True, slots=True, kw_only=True)
class Opened:
    """What a turn starts from.

    `events` are those of the last 35 days, and may be none; `last_id` is that of the newest event
    of all, 0 before the first. `whole` gives all events, and is only called by the few turns
    that look back further (a digest, a food asked about). `record` is `events` folded, if that
    is at hand from the turn before.
    """

    participant: Participant
    events: tuple[Event, ...]
    last_id: int
    whole: Callable[[], tuple[Event, ...]]
    record: Record | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Turn:
    """Entries to keep, things to say, and when to wake; committed together or not at all.

    `erase` asks the shell to remove the participant and everything of theirs; the sayings of
    such a turn are sent all the same. `record` is the record with this turn, for the next one.
    """

    participant: Participant
    events: tuple[Event, ...] = ()
    says: tuple[Saying, ...] = ()
    wake_at: datetime | None = None
    erase: bool = False
    record: Record | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Joining:
    """What a message brings about in a chat that belongs to nobody yet.

    `enrolment` None means that nothing is kept of the chat. With `participant` the person has
    joined: `events` open the record. `used` tells that the invitation's code is spent.
    """

    enrolment: Enrolment | None = None
    participant: Participant | None = None
    events: tuple[Event, ...] = ()
    says: tuple[Saying, ...] = ()
    wake_at: datetime | None = None
    used: bool = False
