"""The turn functions as the shell calls them, so that tests can serve it with small ones."""

from collections.abc import Callable
from dataclasses import dataclass
from datetime import datetime
from typing import Protocol

from bot.messages import Incoming
from bot.participants import Enrolment, Invitation, Participant
from bot.turns.turn import Joining, Opened, Turn


class Hear(Protocol):
    """`bot.turns.hearing.hear`."""

    def __call__(
        self, opened: Opened, incoming: Incoming, *, now: datetime, quoted: str | None
    ) -> Turn: ...


class Wake(Protocol):
    """`bot.turns.waking.wake`."""

    def __call__(self, opened: Opened, *, now: datetime) -> Turn: ...


class Start(Protocol):
    """`bot.turns.waking.start`."""

    def __call__(self, participant: Participant, *, now: datetime) -> datetime | None: ...


class Join(Protocol):
    """`bot.turns.enrolling.join`."""

    def __call__(
        self,
        enrolment: Enrolment | None,
        invitation: Invitation | None,
        incoming: Incoming,
        *,
        now: datetime,
        new_id: str,
        clock_speed: float,
        group_told: bool,
    ) -> Joining: ...


@dataclass(frozen=True, slots=True, kw_only=True)
class Turns:
    """The pure functions that decide."""

    hear: Hear
    wake: Wake
    start: Start
    join: Join
    code_in: Callable[[str], str | None]
