"""A participant lived through in a test: messages and wake-ups as pure turns, without a store."""

from dataclasses import dataclass, field
from datetime import datetime, time
from typing import Any

from bot.messages import Incoming, Kind, Saying
from bot.participants import Participant
from bot.record import Event, Record
from bot.turns.hearing import hear
from bot.turns.turn import Opened, Turn
from bot.turns.waking import start, wake
from bot.units import Unit


def person(joined: datetime, **changes: Any) -> Participant:
    """Somebody who can neither go low nor make ketones, unless said otherwise."""
    fields: dict[str, Any] = {
        "id": "ana",
        "unit": Unit.MG_DL,
        "zone": "Africa/Johannesburg",
        "joined_at": joined,
        "may_go_low": False,
        "ketone_risk": False,
        **changes,
    }
    return Participant(**fields)


@dataclass
class Life:
    """Plays messages in order; everything due before each is said first."""

    participant: Participant
    events: list[Event] = field(default_factory=list)
    said: list[tuple[datetime, Saying]] = field(default_factory=list)
    wakes: int = 0
    wake_at: datetime | None = None
    record: Record | None = None
    updates: int = 0
    wrote: list[datetime] = field(default_factory=list)

    def __post_init__(self) -> None:
        self.wake_at = start(self.participant, now=self.participant.joined_at)

    def until(self, instant: datetime, *, including: bool = True) -> None:
        """Wake whenever it is due, up to an instant."""
        while self.wake_at is not None and (
            self.wake_at < instant or (including and self.wake_at == instant)
        ):
            now = self.wake_at
            self.wakes += 1
            assert self.wakes < 5_000, "woken for ever"
            self._keep(wake(self._opened(), now=now), now)
            assert self.wake_at is None or self.wake_at > now, "woken for nothing"

    def says(self, at: datetime, text: str) -> None:
        """The participant writes."""
        self.until(at, including=False)
        self.updates += 1
        self.wrote.append(at)
        incoming = Incoming(
            update=self.updates, chat="ana", message=str(len(self.wrote)), at=at, text=text
        )
        self._keep(hear(self._opened(), incoming, now=at), at)

    def edits(self, at: datetime, number: int, text: str) -> None:
        """The participant changes a message (0 is the first)."""
        self.until(at, including=False)
        self.updates += 1
        incoming = Incoming(
            update=self.updates,
            chat="ana",
            message=str(number + 1),
            at=at,
            text=text,
            said_at=self.wrote[number],
            edits=True,
        )
        self._keep(hear(self._opened(), incoming, now=at), at)

    def prompts(self) -> list[tuple[datetime, Saying]]:
        """The prompts said."""
        return [(at, one) for at, one in self.said if one.kind is Kind.PROMPT]

    def _opened(self) -> Opened:
        events = tuple(self.events)
        return Opened(
            participant=self.participant,
            events=events,
            last_id=events[-1].id if events else 0,
            whole=lambda: events,
            record=self.record,
        )

    def _keep(self, turn: Turn, now: datetime) -> None:
        self.participant, self.record = turn.participant, turn.record
        self.events.extend(turn.events)
        self.said.extend((now, saying) for saying in turn.says)
        self.wake_at = turn.wake_at


def clock(text: str) -> time:
    """`22:30` as a time."""
    return time.fromisoformat(text)
