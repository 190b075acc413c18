"""What an engine promises.

An engine is an alarm clock, not a store: who is due stands in the database, so a crash costs
the engine nothing. It never wakes early; late rather than never; at least once. A wake-up of
somebody for whom nothing is due any more does no harm, so nothing is ever cancelled.
"""

from collections.abc import Awaitable, Callable
from dataclasses import dataclass
from datetime import datetime
from typing import Protocol


@dataclass(frozen=True, slots=True, kw_only=True)
class Due:
    """Who is due by an instant (up to a limit), and the earliest instant of those who are not.

    `at` is when each of them is due, for engines that ask ahead of time.
    """

    who: tuple[str, ...] = ()
    next_at: datetime | None = None
    at: tuple[datetime, ...] = ()


#: `due(until, limit)` asks the database.
AskDue = Callable[[datetime, int], Awaitable[Due]]
#: `on_wake(people, now)` does what is due for each of them and moves their next wakes on. It may
#: leave some of several for later: they are still due, and found again.
OnWake = Callable[[tuple[str, ...], datetime], Awaitable[None]]


class Engine(Protocol):
    """Wakes people when they are due."""

    async def run(self, due: AskDue, on_wake: OnWake) -> None:
        """Wake whoever is due, now and from now on, until cancelled."""

    def nudge(self, at: datetime | None) -> None:
        """Tell that somebody is to be woken at `at`, perhaps earlier than known (None: look)."""
